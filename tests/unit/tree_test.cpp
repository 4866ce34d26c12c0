#include "tauten/explain/tree.hpp"

#include <doctest/doctest.h>

#include <cmath>
#include <limits>
#include <optional>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/explain/json_text.hpp"

namespace tree_test {

using namespace tauten;

namespace {

struct Pump {
  std::string name = "pump \"1\"";
  bool runs = true;
  int feet = 4;
  Band<Force> load{Force(1e3), Force(2.5e3), Force(std::nan(""))};
  std::optional<Torque> torque{};
  std::vector<double> readings{0.1, 1e300, std::numeric_limits<double>::infinity()};
  Source source{"plate on the pump", "front", Seen::once};

  template <class V>
  static void fields(V&& visit) {
    visit("name", &Pump::name);
    visit("runs", &Pump::runs);
    visit("feet", &Pump::feet);
    visit("load", &Pump::load);
    visit("torque", &Pump::torque);
    visit("readings", &Pump::readings);
    visit("source", &Pump::source);
  }
};

}  // namespace

TEST_CASE("an answer becomes a tree that is walked by path") {
  const Tree tree = tree_of(Pump{});
  REQUIRE(find(tree, "load/nominal"));
  CHECK(find(tree, "load/nominal")->number == 2.5e3);
  CHECK(find(tree, "load/nominal")->dimension == Dim::force);
  CHECK(find(tree, "load/high")->kind == Tree::Kind::nothing);
  CHECK(find(tree, "torque")->kind == Tree::Kind::nothing);
  CHECK(find(tree, "runs")->kind == Tree::Kind::truth);
  CHECK(find(tree, "readings/1")->number == 1e300);
  CHECK(find(tree, "") == &tree);
  for (const char* nowhere : {"readings/3", "readings/-1", "readings/1x", "load/", "name/0", "lo", "/load"})
    CHECK(find(tree, nowhere) == (std::string(nowhere) == "load/" ? find(tree, "load") : nullptr));
}

TEST_CASE("a tree as JSON") {
  CHECK(json_text(tree_of(Pump{})) ==
        R"({"name":"pump \"1\"","runs":true,"feet":4,"load":{"low":1000,"nominal":2500,"high":null},"torque":null,)"
        R"("readings":[0.1,1e+300,null],"source":{"document":"plate on the pump","place":"front","seen":"once"}})");
  CHECK(json_text(tree_of(std::vector<int>{1, 2}), 2) == "[\n  1,\n  2\n]");
  CHECK(json_text(tree_of(std::vector<int>{}), 2) == "[]");
  // Unicode 15, table 3-7: the shortest and longest well-formed characters, and bytes that are none.
  CHECK(json_text(tree_of("\xc2\x80\xf4\x8f\xbf\xbf")) == "\"\xc2\x80\xf4\x8f\xbf\xbf\"");
  CHECK(json_text(tree_of("\xc1\x80")) == "\"\ufffd\ufffd\"");
  CHECK(json_text(tree_of("\xe2\x82")) == "\"\ufffd\ufffd\"");
  CHECK(json_text(tree_of("\xf4\x90\x80\x80")) == "\"\ufffd\ufffd\ufffd\ufffd\"");
}

}  // namespace tree_test
