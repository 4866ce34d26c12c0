#include "shared/prying_inputs.hpp"

#include "shared/place_inputs.hpp"

namespace tauten::shared {

namespace {
namespace of_prying {

using In = Declares<PryingJob>;

constexpr Input<PryingJob> inputs[] = {
    In::input<&PryingJob::tributary>("tributary", "70mm", "AISC form: length of plate for one bolt").above_zero(),
    In::input<&PryingJob::effective_length>("effective_length", "200mm",
                                            "T-stub of EN 1993-1-8 instead: l_eff of all rows")
        .above_zero(),
    In::input<&PryingJob::bolt_to_web>("bolt_to_web", "49mm", "Bolt axis to web; T-stub: m, to 0.8 of the fillet")
        .above_zero(),
    In::input<&PryingJob::bolt_to_edge>("bolt_to_edge", "41mm", "Bolt axis to the free edge").above_zero(),
    In::input<&PryingJob::thickness>("thickness", "25mm", "Of the plate; left out: the one that the pull needs")
        .above_zero(),
    In::input<&PryingJob::plate_strength>("plate_strength", "250MPa", "AISC: F_u of the plate; T-stub: f_y/gamma_M0")
        .above_zero(),
    In::input<&PryingJob::bolt_strength>("bolt_strength", "163kN", "Of one bolt in tension, with the code's factors")
        .above_zero(),
    In::input<&PryingJob::bolts>("bolts", "2", "How many share the pull; default: 2"),
    In::input<&PryingJob::pull>("pull", "111.6kN", "On all bolts together").above_zero(),
    In::input<&PryingJob::diameter>("diameter", "20mm", "AISC form: of the bolt").above_zero(),
    In::input<&PryingJob::hole>("hole", "22mm", "AISC form: of its hole").above_zero(),
    In::input<&PryingJob::resistance_factor>("resistance_factor", "0.9", "AISC form: on the plate; default: 0.9"),
    In::input<&PryingJob::washer>("washer", "37mm", "T-stub: outside diameter of the washer, makes mode 1 stronger")
        .above_zero(),
    In::input<&PryingJob::elongation_length>("elongation_length", "60mm",
                                             "T-stub: length of the bolts that stretches, to see if edges press")
        .above_zero(),
    In::input<&PryingJob::bolt_area>("bolt_area", "245mm2", "T-stub: stress area of one bolt, with that").above_zero(),
};

constexpr Rule rules[] = {one_of("tributary", "effective_length"),
                          excludes("tributary", "effective_length"),
                          one_of("bolt_to_web"),
                          one_of("bolt_to_edge"),
                          one_of("plate_strength"),
                          one_of("bolt_strength"),
                          one_of("thickness", "pull"),
                          needs("diameter", "tributary"),
                          needs("hole", "tributary"),
                          needs("resistance_factor", "tributary"),
                          needs("washer", "effective_length"),
                          needs("elongation_length", "bolt_area"),
                          needs("bolt_area", "elongation_length")};

}  // namespace of_prying
}  // namespace

std::span<const Input<PryingJob>> prying_inputs() { return of_prying::inputs; }

Outcome<PryingAnswer> try_prying(const Call& call) {
  const auto given = try_read<PryingJob>(of_prying::inputs, call, of_prying::rules);
  if (!given) return given.error();
  const Outcome<PlatePrying> found = try_plate_prying(given->job);
  if (!found) return given->in_words(found.error());
  return PryingAnswer{*found, given->job};
}

}  // namespace tauten::shared
