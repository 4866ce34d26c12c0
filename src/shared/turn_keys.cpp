#include "shared/turn_keys.hpp"

#include "shared/bar_text.hpp"
#include "shared/class_words.hpp"
#include "shared/friction_text.hpp"

namespace tauten::shared {

namespace {

using TurnKey = Key<CurveJob>;
using Line = std::string_view;

template <std::string TurnJob::* member>
Problem put_text(const TurnKey&, Line text, CurveJob& job) {
  job.joint.*member = text;
  return {};
}

template <int TurnJob::* member>
Problem put_count(const TurnKey& key, Line text, CurveJob& job) {
  return read_whole(key.name, text, key.example, job.joint.*member);
}

template <std::string TurnJob::* member>
Problem put_condition(const TurnKey& key, Line text, CurveJob& job) {
  return read_condition(key.name, text, job.joint.*member);
}

template <std::optional<Band<double>> TurnJob::* member>
Problem put_band(const TurnKey& key, Line text, CurveJob& job) {
  return read_band(key.name, text, job.joint.*member);
}

/// 20mm:grey_cast_iron:70mm:18mm, from the thickness on as far as it is known. A modulus may stand for the material.
Problem put_layer(const TurnKey& key, Line text, CurveJob& job) {
  const auto parts = split(text, ':');
  TurnLayer& layer = job.joint.layers.emplace_back();
  if (parts.size() > 4)
    return Error(key.name, (std::string(key.name) + " " + tauten::detail::shown(text) +
                            " says too much; write thickness, material, width and hole like 20mm:steel:70mm:18mm")
                               .c_str());
  if (auto problem = read_above_zero(key.name, parts[0], layer.thickness)) return problem;
  if (parts.size() > 1) {
    if (!parts[1].empty() && parts[1][0] >= '0' && parts[1][0] <= '9') {
      if (auto problem = read_above_zero(key.name, parts[1], layer.elastic_modulus)) return problem;
    } else if (const auto known = try_material(parts[1]); known) {
      layer.material = known->name;
    } else {
      return Error(key.name, (std::string(known.error().what()) + ", or a modulus like 110GPa").c_str());
    }
  }
  if (parts.size() > 2)
    if (auto problem = read_above_zero(key.name, parts[2], layer.outer_diameter)) return problem;
  return parts.size() > 3 ? read_above_zero(key.name, parts[3], layer.hole_diameter) : Problem();
}

constexpr const char* washer_words[] = {"1", "2"};

// First what only `turn` is asked, then what both are, then what only `curve` is.
constexpr TurnKey keys[] = {
    {"angle", "90deg", "Angle to be turned from snug; without it that is the answer",
     put_above_zero<[](auto& q) -> auto& { return q.joint.angle; }>},
    {"at-handle",
     "yes",
     "The angle is read at the handle, with the bars in between",
     put<[](auto& q) -> auto& { return q.joint.angle_at_handle; }>,
     "angle_at_handle",
     {},
     Takes::flag},
    {"clamp-load", "60kN", "Clamp load that is wanted",
     put_above_zero<[](auto& q) -> auto& { return q.joint.clamp_load; }>, "clamp_load"},
    {"share", "75%", "Share of the proof load that is wanted; 75% if nothing is said",
     put<[](auto& q) -> auto& { return q.joint.share; }>},
    {"utilisation", "90%", "Share of yield that is wanted while the wrench turns",
     put<[](auto& q) -> auto& { return q.joint.utilisation; }>},
    {"bar",
     "square:250mm:12.7mm",
     "Straight bar between handle and fastener: section, length, size",
     [](const TurnKey& key, Line text, CurveJob& q) { return read_bar(key.name, text, q.joint.bars.emplace_back()); },
     "bars",
     {},
     Takes::several_values},
    {"wrench-accuracy", "4%", "Accuracy of the snug torque; 6% up to 10 N.m, 4% above",
     put<[](auto& q) -> auto& { return q.joint.wrench_accuracy; }>, "wrench_accuracy"},
    {"angle-tolerance", "5deg", "How far the angle may be off; 5deg, an estimate",
     put<[](auto& q) -> auto& { return q.joint.angle_tolerance; }>, "angle_tolerance"},
    {"resilience-tolerance", "10%", "How far the resilience may be off; 10% or 15%, estimates",
     put<[](auto& q) -> auto& { return q.joint.resilience_tolerance; }>, "resilience_tolerance"},
    {"strength-surplus", "20%", "By how much a bolt may exceed its class; 20%, an estimate",
     put<[](auto& q) -> auto& { return q.joint.strength_surplus; }>, "strength_surplus"},
    {"roughness", "0.016mm", "R_z of the roughest face, for embedding; 0.01mm if not said",
     put<[](auto& q) -> auto& { return q.joint.after.roughness; }>},
    {"load-across",
     "yes",
     "The working load acts across the bolt",
     put<[](auto& q) -> auto& { return q.joint.after.load_across; }>,
     "load_across",
     {},
     Takes::flag},
    {"bolt-warming", "60K", "By how much the bolt is warmer in service",
     put<[](auto& q) -> auto& { return q.joint.after.bolt_warming; }>, "bolt_warming"},
    {"plate-warming", "60K", "By how much the layers are warmer in service",
     put<[](auto& q) -> auto& { return q.joint.after.plate_warming; }>, "plate_warming"},
    {"creep-share", "10%", "Share that soft layers take off with time",
     put<[](auto& q) -> auto& { return q.joint.after.creep_share; }>, "creep_share"},
    {"neighbours", "2kN", "Taken off by bolts that are tightened later",
     put<[](auto& q) -> auto& { return q.joint.after.neighbours; }>},
    {"working-load", "15kN", "Load that pulls the joint apart",
     put<[](auto& q) -> auto& { return q.joint.after.working_load; }>, "working_load"},
    {"load-introduction", "0.5", "Where it acts: 1 under head and nut, 0 in the parting line",
     put<[](auto& q) -> auto& { return q.joint.after.load_introduction; }>, "load_introduction"},
    {"structural",
     "yes",
     "Compare with the turns of structural bolting",
     put<[](auto& q) -> auto& { return q.joint.structural; }>,
     "",
     {},
     Takes::flag},
    {"k-factor", "0.125", "Declared mean k-value of a structural bolt set, class K1 or K2",
     put<[](auto& q) -> auto& { return q.joint.k_factor; }>, "k_factor"},
    {"sloping-faces", "1", "Outer faces that slope, up to 1 in 20, for that comparison",
     put_count<&TurnJob::sloping_faces>, "sloping_faces"},

    {"name", "\"pump foot\"", "How the joint is called", put_text<&TurnJob::name>},
    {"thread", "M16", "Thread", put_text<&TurnJob::thread>},
    {"class", "8.8", "Mark on the head; without it the weakest class is assumed", put_text<&TurnJob::property_class>,
     "property_class", class_words},
    {"head", "\"ISO 4014\"", "Standard of head or nut; ISO 4014 if not said", put_text<&TurnJob::head>, "standard"},
    {"kind", "through_bolt", "through_bolt, tapped_hole or stud; through_bolt if not said",
     put<[](auto& q) -> auto& { return q.joint.kind; }>, "", Words<JointKind>::list},
    {"length", "80mm", "Length of the bolt; the shortest that reaches if not said",
     put_above_zero<[](auto& q) -> auto& { return q.joint.length; }>},
    {"shank-diameter", "13mm", "Diameter of a reduced shank",
     put_above_zero<[](auto& q) -> auto& { return q.joint.shank_diameter; }>, "shank_diameter"},
    {"layer",
     "20mm:grey_cast_iron:70mm",
     "Clamped layer from the head down: thickness, material, width, hole",
     put_layer,
     "layers",
     {},
     Takes::several_values},
    {"grip", "55mm", "So much steel is clamped, in place of layers",
     put_above_zero<[](auto& q) -> auto& { return q.joint.grip; }>},
    {"washers", "1", "Washers of ISO 7089: 1 under the turned face, 2 at both ends", put_count<&TurnJob::washers>, "",
     washer_words},
    {"tapped-material", "grey_cast_iron", "What the tapped hole is in; steel if not said",
     put_text<&TurnJob::tapped_material>, "tapped_material"},
    {"engagement", "20mm", "Engaged thread in a tapped hole; default: what the bolt needs",
     put_above_zero<[](auto& q) -> auto& { return q.joint.engagement; }>},
    {"nut-class", "8", "Class of the nut; default: the one that matches the bolt", put_text<&TurnJob::nut_class>,
     "nut_class"},
    {"nut-height", "14.8mm", "Height of the nut; default: ISO 4032",
     put_above_zero<[](auto& q) -> auto& { return q.joint.nut_height; }>, "nut_height"},
    {"plate-model", "deformation_cone", "Model of the layers; chosen by their width if not said",
     put<[](auto& q) -> auto& { return q.joint.plate_model; }>, "plate_model", Words<PlateModel>::list},
    {"snug-torque", "60N.m", "Torque that closes all gaps; from there the angle counts",
     put_above_zero<[](auto& q) -> auto& { return q.joint.snug_torque; }>, "snug_torque"},
    {"condition", "oiled", "What is on the threads; without it the band is wide", put_condition<&TurnJob::condition>,
     "", condition_words},
    {"face", "dry", "What is under head or nut, if not the same", put_condition<&TurnJob::face_condition>, "",
     condition_words},
    {"thread-friction", "0.08..0.12..0.16", "Coefficient in the thread, if measured: 0.12, or a band",
     put_band<&TurnJob::thread_friction>, "thread_friction"},
    {"bearing-friction", "0.08..0.12..0.16", "Coefficient under head or nut, if measured",
     put_band<&TurnJob::bearing_friction>, "bearing_friction"},
    {"prevailing-torque", "4N.m", "Prevailing torque of a locking nut or insert",
     put<[](auto& q) -> auto& { return q.joint.prevailing_torque; }>, "prevailing_torque"},
    {"bearing-diameter", "20mm", "Effective diameter of the bearing face, if not standard",
     put_above_zero<[](auto& q) -> auto& { return q.joint.bearing_diameter; }>, "bearing_diameter"},

    {"end-angle", "120deg", "Where the curve ends; at the uniform elongation if not said",
     put_above_zero<[](auto& q) -> auto& { return q.end_angle; }>, "end_angle"},
    {"points", "200", "Points of each curve",
     [](const TurnKey& key, Line text, CurveJob& q) { return read_whole(key.name, text, key.example, q.points); }},
    {"slope-share", "50%", "Yield point: slope of the torque down to this share; 50% if not said",
     put<[](auto& q) -> auto& { return q.slope_share; }>, "slope_share"},
};

/// \return the place of a key in the list
constexpr std::size_t place_of(Line name) {
  std::size_t place = 0;
  while (name != keys[place].name) ++place;
  return place;
}

Outcome<CurveJob> job_of(std::span<const TurnKey> allowed, std::span<const Assignment> said) {
  CurveJob job;
  if (auto problem = set_all<CurveJob>(allowed, said, job)) return *problem;
  return job;
}

/// One of several bars has a name of its own in the library, and a layer is no more than a layer here.
Error in_words(std::span<const TurnKey> allowed, std::span<const Assignment> said, const Error& error) {
  const Line argument = error.argument();
  if (argument.starts_with("bar_")) return {"bar", error.what()};
  if (!has(said, "layer") && argument == "layers") return {"layer", error.what()};
  if (!has(said, "snug-torque") && argument == "snug_torque") return renamed(error, argument, "snug-torque");
  if (has(said, "layer"))
    for (const char* of_layer : {"thickness", "outer_diameter", "hole_diameter", "elastic_modulus", "grip_length"})
      if (argument == of_layer) return {"layer", error.what()};
  if (has(said, "grip") && argument == "grip_length") return {"grip", error.what()};
  return in_words_of<CurveJob>(allowed, said, error);
}

}  // namespace

std::span<const TurnKey> turn_keys() { return std::span(keys).first(place_of("end-angle")); }

std::span<const TurnKey> curve_keys() { return std::span(keys).subspan(place_of("name")); }

Outcome<TurnJob> try_turn_job(std::span<const Assignment> said) {
  const Outcome<CurveJob> job = job_of(turn_keys(), said);
  if (!job) return job.error();
  return job->joint;
}

Outcome<TurnAnswer> try_turn(std::span<const Assignment> said) {
  const Outcome<CurveJob> job = job_of(turn_keys(), said);
  if (!job) return job.error();
  auto found = tauten::try_turn(job->joint);
  if (!found) return in_words(turn_keys(), said, found.error());
  return found;
}

Outcome<CurveAnswer> try_curve(std::span<const Assignment> said) {
  const Outcome<CurveJob> job = job_of(curve_keys(), said);
  if (!job) return job.error();
  auto found = tauten::try_curve(*job);
  if (!found) return in_words(curve_keys(), said, found.error());
  return found;
}

}  // namespace tauten::shared
