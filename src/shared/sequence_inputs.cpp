#include "shared/sequence_inputs.hpp"

#include "shared/place_inputs.hpp"

namespace tauten::shared {

namespace {
namespace of_sequence {

using In = DeclaresLists<SequenceJob>;

constexpr Input<SequenceJob> inputs[] = {
    In::pattern<&SequenceJob::pattern, read_pattern_or_count>(
        "pattern", "circle:8:160mm", "Bolts: circle:8:160mm, places 0mm:0mm;120mm:0mm, or their number"),
    In::input<&SequenceJob::method>("method", "crosswise", "How the order is found; default: crosswise"),
    In::pair<&SequenceJob::start>("start", "0mm:0mm", "The stiffest place, for middle_out; default: the centroid"),
    In::list<&SequenceJob::order>("order", "1;3;2;4", "An order of your own, by numbers of the bolts"),
    In::list<&SequenceJob::labels>("labels", "1;3;2;4", "Numbers written on the flange, going clockwise"),
    In::input<&SequenceJob::at_once>("at_once", "2", "Bolts that several tools tighten at once"),
    In::list<&SequenceJob::shares>("shares", "30%;60%;100%", "Of the full torque in each pass; default: 0.3, 0.6, 1"),
    In::input<&SequenceJob::rounds>("rounds", "1", "Circular rounds at the full torque after that; default: 1"),
    In::input<&SequenceJob::most>("most", "110%", "Maximum share, where the maker asks for more than all; default: 1"),
    In::input<&SequenceJob::torque>("torque", "120N.m", "The full torque"),
    In::input<&SequenceJob::pressurised>("pressurised", "yes", "Pressure may be trapped").as_flag(),
    In::pair<&SequenceJob::person>("person", "0mm:-500mm", "Where the person stands: bolts away from it come first"),
    In::list<&SequenceJob::interaction>("interaction", "0.2",
                                        "What a neighbour loses per load gained; or rows 1,0.2;0.2,1"),
    In::input<&SequenceJob::gasket>("gasket",
                                    "ring_width:50mm;ring_thickness:20mm;gasket_width:20mm;gasket_thickness:2mm;"
                                    "gasket_modulus:300MPa;bolt_length:55mm;bolt_area:157mm2",
                                    "Flange and gasket instead, for an order of magnitude"),
    In::list<&SequenceJob::readings>("readings", "40kN,0kN;36kN,40kN",
                                     "Or loads measured: of all bolts, after each turn of the order"),
    In::input<&SequenceJob::load>("load", "40kN", "Load that the full torque gives; with interaction").above_zero(),
    In::input<&SequenceJob::shortfall>("shortfall", "5%", "How far below the load a bolt may end: passes needed"),
    In::input<&SequenceJob::limit>("limit", "70kN", "Yield load of a bolt, for the loads of a one-pass plan")
        .above_zero(),
    In::input<&SequenceJob::friction_scatter>("friction_scatter", "10%",
                                              "Standard deviation of the load that stays with a bolt"),
    In::input<&SequenceJob::act_scatter>("act_scatter", "5%", "The same, of each act anew"),
    In::input<&SequenceJob::wrench_scatter>("wrench_scatter", "2%", "The same, of the wrench"),
    In::input<&SequenceJob::trials>("trials", "10000", "Trials of the simulation of scatter; default: 10000"),
    In::input<&SequenceJob::seed>("seed", "1", "Seed of its random numbers; default: 1"),
};

constexpr Rule rules[] = {one_of("pattern"), excludes("order", "labels"), excludes("interaction", "gasket"),
                          excludes("interaction", "readings"), excludes("gasket", "readings")};

}  // namespace of_sequence
}  // namespace

std::span<const Input<SequenceJob>> sequence_inputs() { return of_sequence::inputs; }

Outcome<SequenceAnswer> try_sequence(const Call& call) {
  const auto given = try_read<SequenceJob>(of_sequence::inputs, call, of_sequence::rules);
  if (!given) return given.error();
  const Outcome<TighteningSequence> found = try_tightening_sequence(given->job);
  if (!found) return given->in_words(found.error());
  return SequenceAnswer{*found, given->job};
}

}  // namespace tauten::shared
