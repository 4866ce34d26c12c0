#include "shared/clamp_keys.hpp"

#include "shared/class_words.hpp"
#include "shared/friction_text.hpp"

namespace tauten::shared {

namespace {

using ClampKey = Key<ClampJob>;
using Words = std::string_view;

constexpr const char* torsion_words[] = {"plastic", "elastic"};

template <auto member>
Problem put_band(const ClampKey& key, Words text, ClampJob& job) {
  return read_band(key.name, text, member(job));
}

template <auto member>
Problem put_text(const ClampKey&, Words text, ClampJob& job) {
  member(job) = text;
  return {};
}

/// A name that the library knows; an error is in the words of the key.
template <auto member, auto look_up>
Problem put_name(const ClampKey& key, Words text, ClampJob& job) {
  member(job) = text;
  const auto found = look_up(member(job));
  return found ? Problem() : renamed(found.error(), found.error().argument(), key.name);
}

Problem put_key(const ClampKey& key, Words text, ClampJob& job) {
  job.inner_hexagon = true;
  return read_above_zero(key.name, text, job.socket);
}

/// 26mm:oiled, the effective diameter of the face and what is on it.
Problem put_face(const ClampKey& key, Words text, ClampJob& job) {
  const auto parts = split(text, ':');
  if (parts.size() != 2)
    return refuse_text(key.name, text,
                       " is not understood; write its effective diameter and condition like 26mm:oiled");
  Face& face = job.more_faces.emplace_back();
  if (auto problem = read_above_zero(key.name, parts[0], face.bearing_diameter)) return problem;
  face.condition = parts[1];
  const auto found = try_thread_condition(face.condition);
  return found ? Problem() : renamed(found.error(), found.error().argument(), key.name);
}

Problem put_torsion(const ClampKey& key, Words text, ClampJob& job) {
  job.torsion = text == "elastic" ? Torsion::elastic : Torsion::plastic;
  if (text == "plastic" || text == "elastic") return {};
  return Error(key.name,
               ("torsion " + tauten::detail::shown(text) + " is not known; write plastic or elastic").c_str());
}

constexpr auto any_class = [](const std::string& name) { return try_property_class(name); };

constexpr ClampKey keys[] = {
    {"name", "\"pump feet\"", "How the joint is called in lists", put_text<[](auto& j) -> auto& { return j.name; }>},
    {"socket", "16mm", "Socket or spanner that fits: 16mm, 5/8in",
     put_above_zero<[](auto& j) -> auto& { return j.socket; }>, "width_across_flats"},
    {"key", "8mm", "Hexagon key that fits into the head, in place of a socket", put_key, "width_across_flats"},
    {"thread", "M10x1.25", "Thread, if it is known",
     put_name<[](auto& j) -> auto& { return j.thread; }, try_parse_thread>},
    {"head", "\"ISO 4014\"", "Standard of the turned head or nut", put_text<[](auto& j) -> auto& { return j.head; }>,
     "standard"},
    {"class", "10.9", "Mark on the head: property class; without it the weakest is assumed",
     put_name<[](auto& j) -> auto& { return j.property_class; }, any_class>, "property_class", class_words},
    {"torque", "48N.m", "Setting of the wrench", put_above_zero<[](auto& j) -> auto& { return j.torque; }>},
    {"clamp-load", "25kN", "Clamp load that is wanted", put_above_zero<[](auto& j) -> auto& { return j.clamp_load; }>,
     "clamp_load"},
    {"share", "75%", "Share of the proof load: wanted, or what the right torque aims at",
     put<[](auto& j) -> auto& { return j.share; }>},
    {"condition", "oiled", "What is on the threads; without it the band is wide",
     put_name<[](auto& j) -> auto& { return j.condition; }, try_thread_condition>, "", condition_words},
    {"face", "dry", "What is under head or nut, if not the same",
     put_name<[](auto& j) -> auto& { return j.face_condition; }, try_thread_condition>, "", condition_words},
    {"specified", "dry", "The condition that the torque figure is meant for",
     put_name<[](auto& j) -> auto& { return j.specified_condition; }, try_thread_condition>, "", condition_words},
    {"wrench-accuracy", "4%", "Accuracy of the wrench; without it 6% up to 10 N.m, 4% above",
     put<[](auto& j) -> auto& { return j.wrench_accuracy; }>, "wrench_accuracy"},
    {"prevailing-torque", "4N.m", "Prevailing torque of a locking nut or insert",
     put<[](auto& j) -> auto& { return j.prevailing_torque; }>, "prevailing_torque"},
    {"shank-torque", "2N.m", "Friction torque of the shank in its hole, where the head is turned",
     put<[](auto& j) -> auto& { return j.shank_torque; }>, "shank_torque"},
    {"thread-friction", "0.08..0.12..0.16", "Coefficient in the thread, if measured: 0.12, or a band",
     put_band<[](auto& j) -> auto& { return j.thread_friction; }>, "thread_friction"},
    {"bearing-friction", "0.08..0.12..0.16", "Coefficient under head or nut, if measured",
     put_band<[](auto& j) -> auto& { return j.bearing_friction; }>, "bearing_friction"},
    {"bearing-diameter", "13mm", "Effective diameter of the bearing face, if not the standard's",
     put_above_zero<[](auto& j) -> auto& { return j.bearing_diameter; }>, "bearing_diameter"},
    {"more-face",
     "26mm:oiled",
     "A washer under the turned part: effective diameter, condition",
     put_face,
     "more_faces",
     {},
     Takes::several_values},
    {"torsion", "plastic", "Torsion of the section: plastic (today) or elastic (before 2001)", put_torsion, "",
     torsion_words},
};

Problem exclude(std::span<const Said> said, const char* one, const char* other) {
  if (!has(said, one) || !has(said, other)) return {};
  return Error(other, (std::string(one) + " and " + other + " exclude each other; leave one of them out").c_str());
}

Outcome<Clamp> answer(std::span<const Said> said, Outcome<Clamp> (*ask)(const ClampJob&)) {
  const Outcome<ClampJob> job = try_clamp_job(said);
  if (!job) return job.error();
  Outcome<Clamp> found = ask(*job);
  if (!found) return in_words_of<ClampJob>(keys, said, found.error());
  return found;
}

}  // namespace

std::span<const ClampKey> clamp_keys() { return keys; }

Outcome<ClampJob> try_clamp_job(std::span<const Said> said) {
  ClampJob job;
  if (auto problem = set_all<ClampJob>(keys, said, job)) return *problem;
  for (const auto& [one, other] :
       {std::pair("socket", "key"), std::pair("torque", "clamp-load"), std::pair("clamp-load", "share")})
    if (auto problem = exclude(said, one, other)) return *problem;
  return job;
}

Outcome<Clamp> try_clamp(std::span<const Said> said) {
  if (!has(said, "torque")) return Error("torque", "torque is missing; write it like 48N.m");
  return answer(said, tauten::try_clamp);
}

Outcome<Clamp> try_torque_for(std::span<const Said> said) {
  if (has(said, "torque")) return Error("torque", "the torque is what is asked for; leave it out");
  return answer(said, tauten::try_torque_for);
}

}  // namespace tauten::shared
