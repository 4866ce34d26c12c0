#include "shared/group_inputs.hpp"

#include "shared/place_inputs.hpp"

namespace tauten::shared {

namespace {
namespace of_group {

using In = DeclaresLists<GroupJob>;

constexpr Input<GroupJob> inputs[] = {
    In::pattern<&GroupJob::positions>("positions", "rectangle:200mm:150mm",
                                      "Bolts: rectangle:200mm:150mm, or places 0mm:0mm;120mm:0mm")
        .with_option("pattern"),
    In::pair<&GroupJob::load>("load", "0kN:-16kN", "Force in the plane of the joint: to the right, up"),
    In::pair<&GroupJob::at>("at", "425mm:0mm", "A place on its line; default: the centroid of the bolts"),
    In::input<&GroupJob::torque>("torque", "2kN.m", "Torque in the plane, counter-clockwise, on top of the load's"),
    In::list<&GroupJob::weights>("weights", "1;1;2;2", "Of bolts that differ, elastic model: areas or clamp loads"),
    In::input<&GroupJob::force>("force", "12kN", "Pull across the plane at the centroid; negative: presses"),
    In::pair<&GroupJob::moment>("moment", "0N.m:2kN.m", "Moments that pull on the right bolts and the top bolts"),
    In::places<&GroupJob::outline>("outline", "-85mm:-145mm;85mm:-145mm;85mm:145mm;-85mm:145mm",
                                   "Corners of the part, in order; for contact and tilting"),
    In::input<&GroupJob::outside>("outside", "220mm", "Diameter of a round part, instead of outline").above_zero(),
    In::input<&GroupJob::worst_clocking>("worst_clocking", "yes", "The moment may act in any direction: the worst")
        .as_flag(),
    In::input<&GroupJob::bolt_area>("bolt_area", "157mm2", "Stress area of one bolt; for contact").above_zero(),
    In::input<&GroupJob::modular_ratio>("modular_ratio", "10",
                                        "Modulus of bolts over support; concrete 8 to 15; default: 1"),
    In::input<&GroupJob::model>("model", "contact", "How the load is shared; default: elastic and centroid"),
    In::input<&GroupJob::tension_model>("tension_model", "contact",
                                        "The same for the pull, where model is that of the shear"),
    In::input<&GroupJob::preload>("preload", "40kN", "Preload of every bolt: adds bolt and clamp loads"),
    In::input<&GroupJob::load_factor>("load_factor", "0.2", "Share of a pull that reaches the bolt; default: 0.2"),
    In::input<&GroupJob::friction>("friction", "0.15", "Between the parts: adds the utilisation against slip")
        .above_zero(),
};

constexpr Rule rules[] = {one_of("positions"),
                          needs("at", "load"),
                          needs("load_factor", "preload"),
                          needs("friction", "preload"),
                          excludes("outline", "outside"),
                          needs("worst_clocking", "moment")};

}  // namespace of_group
}  // namespace

std::span<const Input<GroupJob>> group_inputs() { return of_group::inputs; }

Outcome<GroupAnswer> try_group(const Call& call) {
  const auto given = try_read<GroupJob>(of_group::inputs, call, of_group::rules);
  if (!given) return given.error();
  const Outcome<BoltGroup> found = try_bolt_group(given->job);
  if (!found) return given->in_words(found.error());
  return GroupAnswer{*found, given->job};
}

}  // namespace tauten::shared
