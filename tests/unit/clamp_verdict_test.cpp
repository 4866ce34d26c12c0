#include "tauten/question/workings/clamp_verdict.hpp"

#include <doctest/doctest.h>

#include <string>

namespace clamp_verdict_test {

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
    CHECK(detail::verdict_of(bolt, {}, false) == std::string(c.verdict));
    const std::string unknown = detail::verdict_of(bolt, {}, true);
    CHECK(unknown == (c.verdict == std::string("within limits") ? "may be slack" : c.verdict));
    bolt.yield_utilisation.high = 1.1;
    if (c.verdict == std::string("within limits"))
      CHECK(detail::verdict_of(bolt, {}, true) == std::string("may yield"));
  }
}

TEST_CASE("a thread that strips goes before what the bolt does") {
  ClampCandidate bolt;
  bolt.clamp_load = {Force(20e3), Force(30e3), Force(40e3)};
  bolt.yield_utilisation = {0.5, 0.7, 0.9};
  const auto verdict = [&](double low, double nominal) {
    return std::string(detail::verdict_of(bolt, {low, nominal}, false));
  };
  CHECK(verdict(41e3, 45e3) == "within limits");
  CHECK(verdict(39e3, 45e3) == "may strip");
  CHECK(verdict(25e3, 29e3) == "strips");
  bolt.chance_of_breaking = 0.2;
  bolt.chance_of_yield = 0.6;
  CHECK(verdict(39e3, 45e3) == "may strip");
  CHECK(verdict(41e3, 45e3) == "may break");
  bolt.chance_of_breaking = 0.6;  // no load is left to compare; the thread bears less than the bolt
  bolt.clamp_load = {Force(absent), Force(absent), Force(absent)};
  CHECK(verdict(41e3, 45e3) == "strips");
}

}  // namespace clamp_verdict_test
