#include "shared/pattern_inputs.hpp"

#include "shared/place_inputs.hpp"

namespace tauten::shared {

namespace {
namespace of_pattern {

using In = DeclaresLists<PatternJob>;

constexpr Input<PatternJob> inputs[] = {
    In::pattern<&PatternJob::positions>("positions", "circle:8:180mm",
                                        "Holes: circle:8:180mm, or places 0mm:0mm;120mm:0mm")
        .with_option("pattern"),
    In::list<&PatternJob::chords>("chords", "80mm;81mm;79mm", "Distances of neighbours, clockwise, back to hole 1"),
    In::input<&PatternJob::edges>("edges", "near", "Chords are between near or far edges of the holes, not centres"),
    In::input<&PatternJob::name>("name", "EN 1092-1 PN16 DN100", "A standard drilling by name, instead of positions"),
    In::input<&PatternJob::hole>("hole", "18mm", "Diameter of the holes: it narrows the candidates").above_zero(),
    In::input<&PatternJob::outside>("outside", "220mm", "Outside diameter of the flange, which does so as well")
        .above_zero(),
    In::input<&PatternJob::height>("height", "132mm", "Shaft height of a motor, which does so as well").above_zero(),
    In::input<&PatternJob::tolerance>("tolerance", "0.5mm",
                                      "How far off a hole may measure; default: 0.5 mm, a caliper")
        .above_zero(),
    In::pattern<&PatternJob::on>("on", "circle:8:180mm", "Holes that the part is to go on, as in pattern"),
    In::input<&PatternJob::flipped>("flipped", "yes", "It goes on turned over").as_flag(),
};

constexpr Rule rules[] = {one_of("positions", "chords", "name"),
                          excludes("positions", "chords"),
                          excludes("positions", "name"),
                          excludes("chords", "name"),
                          needs("flipped", "on"),
                          needs("edges", "chords"),
                          needs("edges", "hole")};

}  // namespace of_pattern
}  // namespace

std::span<const Input<PatternJob>> pattern_inputs() { return of_pattern::inputs; }

Outcome<PatternAnswer> try_pattern(const Call& call) {
  const auto given = try_read<PatternJob>(of_pattern::inputs, call, of_pattern::rules);
  if (!given) return given.error();
  const Outcome<PatternFacts> found = try_pattern_facts(given->job);
  if (!found) return given->in_words(found.error());
  return PatternAnswer{*found, given->job};
}

}  // namespace tauten::shared
