#include "shared/turn_inputs.hpp"

#include "tauten/joint/material.hpp"

#include "shared/bar_text.hpp"
#include "shared/class_words.hpp"
#include "shared/friction_text.hpp"
#include "tauten/joint/material.hpp"

namespace tauten::shared {

/// 20mm:grey_cast_iron:70mm:18mm, from the thickness on as far as it is known. A modulus may stand for the material.
template <>
struct Form<TurnLayer> {
  static Problem read(const char* called, std::string_view text, TurnLayer& layer) {
    const auto parts = split(text, ':');
    if (parts.size() > 4)
      return refuse_text(called, text,
                         " says too much; write thickness, material, width and hole like 20mm:steel:70mm:18mm");
    if (auto problem = read_above_zero(called, parts[0], layer.thickness)) return problem;
    if (parts.size() > 1) {
      if (!parts[1].empty() && parts[1][0] >= '0' && parts[1][0] <= '9') {
        if (auto problem = read_above_zero(called, parts[1], layer.elastic_modulus)) return problem;
      } else if (const auto known = try_material(parts[1]); known) {
        layer.material = known->name;
      } else {
        return Error(called, (std::string(known.error().what()) + ", or a modulus like 110GPa").c_str());
      }
    }
    if (parts.size() > 2)
      if (auto problem = read_above_zero(called, parts[2], layer.outer_diameter)) return problem;
    return parts.size() > 3 ? read_above_zero(called, parts[3], layer.hole_diameter) : Problem();
  }
  static Problem check(const char*, const TurnLayer&) { return {}; }  // the library does
};

namespace {
namespace of_turn {

using In = Declares<CurveJob>;
using TurnInput = Input<CurveJob>;
using Line = std::string_view;

template <Text TurnJob::* member>
Problem put_condition(const TurnInput&, const char* called, const Value& value, CurveJob& job) {
  return read_condition(called, value, job.joint.*member);
}

constexpr const char* washer_words[] = {"1", "2"};

// First what only `turn` is asked, then what both are, then what only `curve` is.
constexpr auto thread_name = [](auto& j) -> auto& { return j.joint.thread; };
constexpr auto class_name = [](auto& j) -> auto& { return j.joint.property_class; };

constexpr TurnInput inputs[] = {
    In::input<[](auto& j) -> auto& { return j.joint.angle; }>(
        "angle", "90deg", "Angle to be turned from snug; without it that is the answer")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.joint.angle_at_handle; }>(
        "angle_at_handle", "yes", "The angle is read at the handle, with the bars in between")
        .with_option("at-handle")
        .as_flag(),
    In::input<[](auto& j) -> auto& { return j.joint.clamp_load; }>("clamp_load", "60kN", "Clamp load that is wanted")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.joint.share; }>("share", "75%",
                                                              "Share of the proof load that is wanted; default: 75 %"),
    In::input<[](auto& j) -> auto& { return j.joint.utilisation; }>(
        "utilisation", "90%", "Share of yield that is wanted while the wrench turns"),
    In::input<[](auto& j) -> auto& { return j.joint.to_yield; }>("to_yield", "yes", "Maker or code tightens past yield")
        .as_flag(),
    In::input<[](auto& j) -> auto& { return j.joint.bars; }>(
        "bars", "square:250mm:12.7mm", "Straight bar between handle and fastener: section, length, size")
        .with_option("bar"),
    In::input<[](auto& j) -> auto& { return j.joint.wrench_accuracy; }>(
        "wrench_accuracy", "4%", "Accuracy of the snug torque; 6% up to 10 N.m, 4% above"),
    In::input<[](auto& j) -> auto& { return j.joint.angle_tolerance; }>(
        "angle_tolerance", "5deg", "How far the angle may be off; 5deg, an estimate"),
    In::input<[](auto& j) -> auto& { return j.joint.resilience_tolerance; }>(
        "resilience_tolerance", "10%", "How far the resilience may be off; 10% or 15%, estimates"),
    In::input<[](auto& j) -> auto& { return j.joint.strength_surplus; }>(
        "strength_surplus", "20%", "By how much a bolt may exceed its class; 20%, an estimate"),
    In::input<[](auto& j) -> auto& { return j.joint.after.roughness; }>(
        "roughness", "0.016mm", "R_z of the roughest face, for embedding; default: 0.01mm"),
    In::input<[](auto& j) -> auto& { return j.joint.after.load_across; }>("load_across", "yes",
                                                                          "The working load acts across the bolt")
        .as_flag(),
    In::input<[](auto& j) -> auto& { return j.joint.after.bolt_warming; }>("bolt_warming", "60K",
                                                                           "By how much the bolt is warmer in service"),
    In::input<[](auto& j) -> auto& { return j.joint.after.plate_warming; }>(
        "plate_warming", "60K", "By how much the layers are warmer in service"),
    In::input<[](auto& j) -> auto& { return j.joint.after.creep_share; }>("creep_share", "10%",
                                                                          "Share that soft layers take off with time"),
    In::input<[](auto& j) -> auto& { return j.joint.after.neighbours; }>("neighbours", "2kN",
                                                                         "Taken off by bolts that are tightened later"),
    In::input<[](auto& j) -> auto& { return j.joint.after.working_load; }>("working_load", "15kN",
                                                                           "Load that pulls the joint apart"),
    In::input<[](auto& j) -> auto& { return j.joint.after.load_introduction; }>(
        "load_introduction", "0.5", "Where it acts: 1 under head and nut, 0 in the parting line"),
    In::input<[](auto& j) -> auto& { return j.joint.structural; }>("structural", "yes",
                                                                   "Compare with the turns of structural bolting")
        .as_flag(),
    In::input<[](auto& j) -> auto& { return j.joint.k_factor; }>(
        "k_factor", "0.125", "Declared mean k-value of a structural bolt set, class K1 or K2"),
    In::input<[](auto& j) -> auto& { return j.joint.sloping_faces; }>(
        "sloping_faces", "1", "Outer faces that slope, up to 1 in 20, for that comparison"),

    In::input<[](auto& j) -> auto& { return j.joint.name; }>("name", "\"pump foot\"", "Name of the joint"),
    In::input<thread_name>("thread", "M16", "Thread").read_by(put_thread<thread_name>),
    In::input<class_name>("property_class", "8.8", "Mark on the head; without it the weakest class is assumed")
        .read_by(put_class<class_name>)
        .with_option("class")
        .with_words(class_words),
    In::input<[](auto& j) -> auto& { return j.joint.head; }>("head", "\"ISO 4014\"",
                                                             "Standard of head or nut; default: ISO 4014")
        .in_library("standard"),
    In::input<[](auto& j) -> auto& { return j.joint.kind; }>(
        "kind", "through_bolt", "through_bolt, tapped_hole or stud; default: through_bolt"),
    In::input<[](auto& j) -> auto& { return j.joint.length; }>("length", "80mm",
                                                               "Length of the bolt; default: the shortest that reaches")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.joint.shank_diameter; }>("shank_diameter", "13mm",
                                                                       "Diameter of a reduced shank")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.joint.layers; }>(
        "layers", "20mm:grey_cast_iron:70mm", "Clamped layer from the head down: thickness, material, width, hole")
        .with_option("layer"),
    In::input<[](auto& j) -> auto& { return j.joint.grip; }>("grip", "55mm",
                                                             "So much steel is clamped, instead of layers")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.joint.washers; }>(
        "washers", "1", "Washers of ISO 7089: 1 under the turned face, 2 at both ends")
        .with_words(washer_words),
    In::input<[](auto& j) -> auto& { return j.joint.tapped_material; }>("tapped_material", "grey_cast_iron",
                                                                        "What the tapped hole is in; default: steel"),
    In::input<[](auto& j) -> auto& { return j.joint.engagement; }>(
        "engagement", "20mm", "Engaged thread in a tapped hole; default: what the bolt needs")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.joint.nut_class; }>(
        "nut_class", "8", "Class of the nut; default: the one that matches the bolt"),
    In::input<[](auto& j) -> auto& { return j.joint.nut_height; }>("nut_height", "14.8mm",
                                                                   "Height of the nut; default: ISO 4032")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.joint.plate_model; }>(
        "plate_model", "deformation_cone", "Model of the layers; default: chosen by their width"),
    In::input<[](auto& j) -> auto& { return j.joint.snug_torque; }>(
        "snug_torque", "60N.m", "Torque that closes all gaps; from there the angle counts")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.joint.condition; }>("condition", "oiled",
                                                                  "What is on the threads; without it the band is wide")
        .read_by(put_condition<&TurnJob::condition>)
        .with_words(condition_words),
    In::input<[](auto& j) -> auto& { return j.joint.face_condition; }>("face_condition", "dry",
                                                                       "What is under head or nut, if not the same")
        .with_option("face")
        .read_by(put_condition<&TurnJob::face_condition>)
        .with_words(condition_words),
    In::input<[](auto& j) -> auto& { return j.joint.thread_friction; }>(
        "thread_friction", "0.08..0.12..0.16", "Coefficient in the thread, if measured: 0.12, or a band"),
    In::input<[](auto& j) -> auto& { return j.joint.bearing_friction; }>("bearing_friction", "0.08..0.12..0.16",
                                                                         "Coefficient under head or nut, if measured"),
    In::input<[](auto& j) -> auto& { return j.joint.prevailing_torque; }>(
        "prevailing_torque", "4N.m", "Prevailing torque of a locking nut or insert"),
    In::input<[](auto& j) -> auto& { return j.joint.bearing_diameter; }>(
        "bearing_diameter", "20mm", "Effective diameter of the bearing face, if not standard")
        .above_zero(),

    In::input<[](auto& j) -> auto& { return j.end_angle; }>("end_angle", "120deg",
                                                            "Where the curve ends; default: at the uniform elongation")
        .above_zero(),
    In::input<[](auto& j) -> auto& { return j.points; }>("points", "200", "Points of each curve"),
    In::input<[](auto& j) -> auto& { return j.slope_share; }>(
        "slope_share", "50%", "Yield point: slope of the torque down to this share; default: 50%"),
};

/// \return the place of an input in the list
constexpr std::size_t place_in_list(Line name) {
  std::size_t place = 0;
  while (name != inputs[place].name) ++place;
  return place;
}

}  // namespace of_turn
}  // namespace

/// One of several bars has a name of its own in the library, and a layer is no more than a layer here.
Error in_words(const GivenJob<CurveJob>& given, const Error& error) {
  const std::string_view argument = error.argument();
  const bool options = given.spelling == Spelling::option;
  if (options && argument.starts_with("bar_")) return {"bar", error.what()};
  if (options && argument == "layers") return {"layer", error.what()};
  if (options && argument == "snug_torque") return renamed(error, argument, "snug-torque");
  if (options && given.has("layers"))
    for (const char* of_layer : {"thickness", "outer_diameter", "hole_diameter", "elastic_modulus", "grip_length"})
      if (argument == of_layer) return {"layer", error.what()};
  if (given.has("grip") && argument == "grip_length") return {"grip", error.what()};
  return given.in_words(error);
}

std::span<const Input<CurveJob>> turn_inputs() {
  return std::span(of_turn::inputs).first(of_turn::place_in_list("end_angle"));
}

std::span<const Input<CurveJob>> curve_inputs() {
  return std::span(of_turn::inputs).subspan(of_turn::place_in_list("name"));
}

Outcome<GivenJob<CurveJob>> try_turn_job(const Call& call) { return try_read(turn_inputs(), call); }

Outcome<TurnAnswer> try_turn(const Call& call) {
  const auto given = try_turn_job(call);
  if (!given) return given.error();
  auto found = tauten::try_turn(given->job.joint);
  if (!found) return in_words(*given, found.error());
  return found;
}

Outcome<CurveAnswer> try_curve(const Call& call) {
  const auto given = try_read(curve_inputs(), call);
  if (!given) return given.error();
  auto found = tauten::try_curve(given->job);
  if (!found) return in_words(*given, found.error());
  return found;
}

}  // namespace tauten::shared
