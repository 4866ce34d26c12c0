#include <cstdio>
#include <tauten/tauten.hpp>

int main() {
  using namespace tauten::literals;
  const tauten::Clamp answer = tauten::clamp(
      {.socket = 24.0_mm, .property_class = "8.8", .torque = 150.0_N_m, .condition = "oiled"});
  const tauten::ClampCandidate& bolt = answer.candidates.front();
  std::printf("%s: %.0f to %.0f kN, %s\n", bolt.thread.c_str(), bolt.clamp_load.low.shop(),
              bolt.clamp_load.high.shop(), bolt.verdict.c_str());
  // Every formula is a function too. A length in place of the torque does not compile.
  const tauten::Force load = tauten::preload_from_torque(150.0_N_m, 2.0_mm, 14.7_mm, 0.12, 0.12, 20.0_mm);
  std::printf("%.0f kN at the typical friction\n", load.shop());
}
