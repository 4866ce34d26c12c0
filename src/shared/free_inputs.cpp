#include "shared/free_inputs.hpp"

#include "tauten/question/workings/taken.hpp"

#include "shared/class_words.hpp"
#include "shared/free_items.hpp"

namespace tauten::shared {

namespace {
namespace of_free {

using In = Declares<FreeQuestion>;
using FreeInput = Input<FreeQuestion>;

Problem put_surroundings(const FreeInput&, const char* called, const Value& value, FreeQuestion& question) {
  if (value.kind != Value::Kind::list) return read_surroundings(called, value, question.job.surroundings);
  for (const Value& item : value.items)
    if (auto problem = read_surroundings(called, item, question.job.surroundings)) return problem;
  return {};
}

Problem put_bit(const FreeInput&, const char* called, const Value& value, FreeQuestion& question) {
  return read_bit(called, value, question.names.bit.emplace());
}

constexpr auto thread_name = [](auto& j) -> auto& { return j.names.thread; };
constexpr auto class_name = [](auto& j) -> auto& { return j.names.property_class; };
constexpr auto tapped = [](auto& j) -> auto& { return j.job.tapped; };
constexpr auto quenched = [](auto& j) -> auto& { return j.job.surroundings.quenched; };

constexpr FreeInput inputs[] = {
    In::input<thread_name>("thread", "M16", "Thread").read_by(put_thread<thread_name>),
    In::input<class_name>("property_class", "8.8", "Mark on the head: property class")
        .read_by(put_class<class_name>)
        .with_option("class"),
    In::input<[](auto& j) -> auto& { return j.names.socket; }>("socket", "24mm",
                                                               "Socket or spanner that fits; default: that of ISO 4014")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.names.key; }>("key", "14mm",
                                                            "Hexagon key that fits into the head, instead of a socket")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.width_across_flats; }>(
        "width_across_flats", "24mm", "Width of the head, instead of a socket that fits")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.names.bit; }>(
        "bit", "30", "Number of the six-lobed bit that fits, instead of a socket")
        .read_by(put_bit)
        .in_library("drive_number"),
    In::input<[](auto& j) -> auto& { return j.job.rust; }>("rust", "rusted",
                                                           "State of rust, from clean to heavy_rust; default: rusted"),
    In::input<[](auto& j) -> auto& { return j.job.limit; }>("limit", "200N.m", "Torque that will not be exceeded"),
    In::input<[](auto& j) -> auto& { return j.names.drive; }>(
        "drive", "six_point", "six_point, else twelve_point, open_end, internal_hexagon, hexalobular"),
    In::input<[](auto& j) -> auto& { return j.job.loosened; }>(
        "loosened", "freed:85N.m", "One of the flange, and its torque; freed:60N.m:treated if after done")
        .with_words(Words<Neighbour::How>::list),
    In::input<[](auto& j) -> auto& { return j.job.held; }>("held", "150N.m",
                                                           "Torque that this very bolt was pulled to and has not moved")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.held_untreated; }>(
        "held_untreated", "yes", "It was pulled to it before what was done, not after")
        .as_flag(),
    In::input<[](auto& j) -> auto& { return j.job.aids; }>(
        "aids", "fluid:24h", "Aid already used, in order: fluid:24h, heat:150K, brush, ...")
        .with_option("aid")
        .with_words(Words<Aid>::list),
    In::input<[](auto& j) -> auto& { return j.surroundings; }>(
        "surroundings", "fire_or_burst", "What limits heat, such as fire_or_burst or rubber_or_plastic")
        .read_by(put_surroundings)
        .with_words(surroundings_words),
    In::input<quenched>("quenched", "yes", "yes or no: quenched and tempered; default: as the class"),
    In::input<[](auto& j) -> auto& { return j.job.surroundings.reused; }>("reused", "yes",
                                                                          "The bolt will be used again")
        .as_flag(),
    In::input<[](auto& j) -> auto& { return j.job.preload; }>(
        "preload", "55kN", "What it was tightened to; without it a share of yield with a wide band"),
    In::input<[](auto& j) -> auto& { return j.job.years; }>("years", "20", "Years in place; goes with first-year-loss")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.first_year_loss; }>("first_year_loss", "0.05mm",
                                                                      "Corrosion of the first year at this place"),
    In::input<[](auto& j) -> auto& { return j.job.corner_loss; }>(
        "corner_loss", "0.5mm", "Radial wear of the corners, or of the ridges between lobes"),
    In::input<[](auto& j) -> auto& { return j.job.drive_clearance; }>(
        "drive_clearance", "0.2mm", "Play of the tool; default: 0.2 mm, inside a head 0.1 mm"),
    In::input<[](auto& j) -> auto& { return j.job.drive_square; }>("drive_square", "12.7mm",
                                                                   "Smallest square drive in the chain")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.handle_length; }>("handle_length", "600mm",
                                                                    "Length of the handle, if turned by hand")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.hand_force; }>("hand_force", "350N", "Median pull of the hand"),
    In::input<[](auto& j) -> auto& { return j.job.hand_variation; }>("hand_variation", "35%", "Scatter of that pull"),
    In::input<[](auto& j) -> auto& { return j.job.shear_risk; }>("shear_risk", "5%", "Accepted chance of shearing"),
    In::input<[](auto& j) -> auto& { return j.job.wanted_chance; }>(
        "wanted_chance", "90%", "Chance of release at which no stronger aid is looked for"),
    In::input<[](auto& j) -> auto& { return j.job.thread_friction; }>("thread_friction", "0.14",
                                                                      "Coefficient in the thread of the clean joint"),
    In::input<[](auto& j) -> auto& { return j.job.bearing_friction; }>("bearing_friction", "0.14",
                                                                       "Coefficient under the head of the clean joint"),
    In::input<[](auto& j) -> auto& { return j.job.prevailing_torque; }>("prevailing_torque", "4N.m",
                                                                        "Prevailing torque of a locking nut or insert"),
    In::input<[](auto& j) -> auto& { return j.job.engaged_length; }>("engaged_length", "13mm",
                                                                     "Engaged length of thread; default: 0.8 d")
        .above_zero(),
    In::input<tapped>("tapped", "yes", "yes or no: the thread is in the part; default: only inside a head"),
    In::input<[](auto& j) -> auto& { return j.job.thread_direction; }>(
        "thread_direction", "left", "right or left: which way the thread turns; asked for if not given"),
    In::input<[](auto& j) -> auto& { return j.job.head_height; }>(
        "head_height", "10mm", "Height that the tool engages; default: 0.64 d, inside a head 0.5 d")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.bearing_diameter; }>("bearing_diameter", "20mm",
                                                                       "Effective diameter of the bearing face")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.nut_diameter; }>(
        "nut_diameter", "24mm", "What surrounds the thread; default: the width across flats")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.nut_yield; }>("nut_yield", "600MPa",
                                                                "Yield strength of the nut; default: as the bolt")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.diameter; }>("diameter", "16mm",
                                                               "Diameter, instead of a thread of the tables")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.pitch; }>("pitch", "2mm", "Pitch, instead of a thread of the tables")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.tensile_strength; }>("tensile_strength", "800MPa",
                                                                       "Tensile strength, instead of a class")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.yield_strength; }>("yield_strength", "640MPa",
                                                                     "Yield strength, instead of a class")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.job.torsion_ratio; }>(
        "torsion_ratio", "0.8", "Breaking shear stress over tensile strength, instead of a class"),
    In::input<[](auto& j) -> auto& { return j.job.trials; }>("trials", "200000", "Trials of the simulation"),
    In::input<[](auto& j) -> auto& { return j.job.seed; }>("seed", "1",
                                                           "Seed of the simulation; the same gives the same answer"),
    In::input<&FreeQuestion::instructions>("instructions", "yes",
                                           "The page has how each step is done: what, how long, what to watch")
        .as_flag(),
};

constexpr Rule rules[] = {excludes("property_class", "torsion_ratio"), needs("years", "first_year_loss"),
                          needs("first_year_loss", "years"), needs("hand_force", "handle_length"),
                          needs("hand_variation", "handle_length")};

}  // namespace of_free
}  // namespace

/// The library has the name width_across_flats for whatever tool was given.
Error in_words(const GivenJob<FreeQuestion>& given, const Error& error) {
  const char* tool = given.has("width_across_flats") ? "width_across_flats"
                     : given.has("key")              ? "key"
                     : given.has("socket")           ? "socket"
                                                     : "width_across_flats";
  const Error named = renamed(given.in_words(error), "width_across_flats", tool);
  if (given.spelling == Spelling::argument || std::string_view(named.argument()) != "width_across_flats") return named;
  return renamed(named, "width_across_flats", given.has("width_across_flats") ? "width-across-flats" : "socket");
}

std::span<const Input<FreeQuestion>> free_inputs() { return of_free::inputs; }

Outcome<GivenJob<FreeQuestion>> try_read_free(const Call& call) {
  auto given = try_read<FreeQuestion>(of_free::inputs, call, of_free::rules);
  if (!given) return given.error();
  GivenJob<FreeQuestion> found = *std::move(given);
  FreeJob& job = found.job.job;
  if (const auto error = assume(found.job.names, job)) return in_words(found, *error);
  if (const auto error = look_up(found.job.names, job))
    return in_words(found,
                    renamed(*error, "property_class", found.spelling == Spelling::option ? "class" : "property_class"));
  return found;
}

Outcome<FreeJob> try_free_job(const Call& call) {
  const auto given = try_read_free(call);
  if (!given) return given.error();
  return given->job.job;
}

FreeAnswer answer_of(const GivenJob<FreeQuestion>& given, const Free& found) {
  FreeAnswer answer{found, given.job.job, given.job.instructions};
  tauten::detail::add_thread_taken(answer.notices, given.job.names.thread);
  tauten::detail::add_class_taken(answer.notices, given.job.names.property_class);
  return answer;
}

Outcome<FreeAnswer> try_free(const Call& call) {
  const auto given = try_read_free(call);
  if (!given) return given.error();
  const FreeJob& job = given->job.job;
  const auto found = try_free_joint(job);
  if (!found) return in_words(*given, found.error());
  return answer_of(*given, *found);
}

}  // namespace tauten::shared
