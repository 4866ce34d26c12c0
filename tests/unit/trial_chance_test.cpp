// Chances with the digits that the trials support.
#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>

#include "tauten/uncertainty/trial_chance.hpp"

namespace trial_chance_test {

using namespace tauten;

TEST_CASE("a chance has no digit that the next run would change") {
  CHECK(trial_chance_text(0.0802, 10'000) == "8 %");         // standard error 0.27 %
  CHECK(trial_chance_text(0.0802, 100'000) == "8.0 %");      // 0.086 %
  CHECK(trial_chance_text(0.0802, 10'000'000) == "8.02 %");  // 0.0086 %
  CHECK(trial_chance_text(0.5, 100) == "50 %");
  CHECK(trial_chance_text(0, 10'000) == "below 0.03 %");  // the rule of three
  CHECK(trial_chance_text(1, 10'000) == "above 99.97 %");
  // The digit dropped last would count less than the error, the one kept last at least as much.
  for (const double chance : {0.001, 0.03, 0.2, 0.5, 0.9, 0.999})
    for (const double trials : {1e3, 1e5, 1e7}) {
      const std::string text = trial_chance_text(chance, static_cast<std::uint64_t>(trials));
      const auto point = text.find('.');
      const int decimals = point == std::string::npos ? 0 : static_cast<int>(text.find(' ') - point - 1);
      const double error = 100 * std::sqrt(chance * (1 - chance) / trials);
      CHECK(std::fabs(std::atof(text.c_str()) - 100 * chance) <= 0.5 * std::pow(10.0, -decimals) * (1 + 1e-9));
      if (decimals > 0) CHECK(std::pow(10.0, -decimals) >= error * (1 - 1e-6));
      if (error < 1) CHECK(std::pow(10.0, -decimals - 1) < error);
    }
}

}  // namespace trial_chance_test
