#include <tauten/tauten.hpp>

int main() {
  using namespace tauten::literals;
  const tauten::Clamp answer =
      tauten::clamp({.thread = "M16", .property_class = "8.8", .torque = 130.0_N_m, .condition = "oiled"});
  return answer.candidates.front().verdict == "may be slack" ? 0 : 1;
}
