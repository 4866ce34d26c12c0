#include "c_api/catalogue.hpp"

#include "shared/registry.hpp"

namespace tauten::c_api {

namespace {

/// \return lowest and highest value; null where there is no bound
Tree range_tree(const Interval& range) {
  const auto bound = [](double x) { return tree_of(x <= -largest || x >= largest ? absent : x); };
  Tree tree;
  tree.add("low", bound(range.low)).add("high", bound(range.high));
  return tree.add("excludes_low", tree_of(range.excludes_low));
}

Tree arg_tree(const Arg& arg) {
  const DimensionText unit = describe(arg.dimension);
  Tree tree;
  tree.add("symbol", tree_of(arg.symbol)).add("unit", tree_of(unit.si_unit)).add("shop_unit", tree_of(unit.shop_unit));
  tree.add("shop_unit_in_si", tree_of(unit.shop_unit_in_si)).add("example", tree_of(unit.how_to_write));
  return tree.add("domain", range_tree(arg.domain)).add("validity", range_tree(arg.validity));
}

}  // namespace

Tree formulas_tree() {
  Tree all;
  all.kind = Tree::Kind::record;
  for (const Entry& entry : shared::registry()) {
    Tree inputs;
    for (const Arg& arg : entry.inputs) inputs.add(arg.name, arg_tree(arg));
    Tree output = arg_tree(entry.output);
    output.add("name", tree_of(entry.output.name));
    Tree formula;
    formula.add("summary", tree_of(entry.summary)).add("inputs", inputs).add("output", output);
    all.add(entry.name, formula.add("sources", tree_of(entry.sources)));
  }
  return all;
}

}  // namespace tauten::c_api
