// Prints formula values at random inputs as the bits of doubles, one case in a line: name, value, slopes, inputs.
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include "sample.hpp"
#include "tauten.h"

namespace {

void print(double x) {
  std::uint64_t bits = 0;
  std::memcpy(&bits, &x, sizeof bits);
  std::printf(" %016llx", static_cast<unsigned long long>(bits));
}

}  // namespace

int main(int count, char** words) {
  const int cases = count > 1 ? std::atoi(words[1]) : 80;
  std::mt19937_64 random(20);
  for (const tauten::Entry& entry : tauten::shared::registry()) {
    const tauten_formula* formula = tauten_formula_named(entry.name);
    for (int i = 0; i < cases; ++i) {
      const std::vector<double> x = sample::inputs(entry, random);
      std::vector<double> slopes(x.size());
      double value = 0;
      if (x.empty() || tauten_evaluate(formula, x.data(), &value, nullptr) > TAUTEN_UNUSUAL) return 1;
      double again = 0;
      if (tauten_gradient(formula, x.data(), &again, slopes.data(), nullptr) > TAUTEN_UNUSUAL || again != value)
        return 1;
      std::printf("%s", entry.name);
      print(value);
      for (const double slope : slopes) print(slope);
      for (const double input : x) print(input);
      std::printf("\n");
    }
  }
}
