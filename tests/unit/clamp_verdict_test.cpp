#include "tauten/question/workings/clamp_verdict.hpp"

#include <doctest/doctest.h>

#include <string>

using namespace tauten;

TEST_CASE("the first verdict that applies is given") {
  struct Case {
    double breaks, yields, slack;
    const char* verdict;
  };
  for (const Case& c : {Case{0.5, 1, 0, "breaks"}, Case{0.051, 0.9, 0, "may break"}, Case{0.05, 0.5, 0, "yields"},
                        Case{0, 0.0101, 1, "may yield"}, Case{0, 0.01, 0.5, "slack"}, Case{0, 0, 0.051, "may be slack"},
                        Case{0, 0.01, 0.05, "within limits"}}) {
    ClampCandidate bolt;
    bolt.chance_of_breaking = c.breaks;
    bolt.chance_of_yield = c.yields;
    bolt.chance_of_slack = c.slack;
    bolt.yield_utilisation = {0.5, 0.7, 0.9};
    CHECK(detail::verdict_of(bolt, false) == std::string(c.verdict));
    const std::string unknown = detail::verdict_of(bolt, true);
    CHECK(unknown == (c.verdict == std::string("within limits") ? "may be slack" : c.verdict));
    bolt.yield_utilisation.high = 1.1;
    if (c.verdict == std::string("within limits")) CHECK(detail::verdict_of(bolt, true) == std::string("may yield"));
  }
}
