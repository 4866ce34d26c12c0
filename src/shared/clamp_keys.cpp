#include "shared/clamp_keys.hpp"

#include "shared/friction_text.hpp"

namespace tauten::shared {

namespace {

using ClampKey = Key<ClampJob>;
using Words = std::string_view;

/// For quantities of which the library takes zero for "not known": here zero was said, and is wrong.
template <Dim D>
Problem read_above_zero(const char* key, Words text, Quantity<D>& into, double most) {
  if (auto problem = read(key, text, into)) return problem;
  const auto fine = tauten::detail::inside(key, into.si, D, {0, most, true});
  return fine ? Problem() : fine.error();
}

constexpr ClampKey keys[] = {
    {"name", "\"pump feet\"", "How the joint is called in lists",
     [](const ClampKey&, Words text, ClampJob& job) {
       job.name = text;
       return Problem();
     }},
    {"socket", "16mm", "Socket or spanner that fits: 16mm, 5/8in",
     [](const ClampKey& key, Words text, ClampJob& job) { return read_above_zero(key.name, text, job.socket, 0.2); },
     "width_across_flats"},
    {"key", "8mm", "Hexagon key that fits into the head, in place of a socket",
     [](const ClampKey& key, Words text, ClampJob& job) {
       job.inner_hexagon = true;
       return read_above_zero(key.name, text, job.socket, 0.2);
     },
     "width_across_flats"},
    {"thread", "M10x1.25", "Thread, if it is known",
     [](const ClampKey&, Words text, ClampJob& job) {
       job.thread = text;
       const auto found = try_parse_thread(job.thread);
       return found ? Problem() : found.error();
     }},
    {"head", "\"ISO 4014\"", "Standard of the turned head or nut",
     [](const ClampKey&, Words text, ClampJob& job) {
       job.head = text;
       return Problem();
     },
     "standard"},
    {"class", "10.9", "Mark on the head: property class; without it the weakest is assumed",
     [](const ClampKey& key, Words text, ClampJob& job) {
       job.property_class = text;
       const auto found = try_property_class(job.property_class);
       return found ? Problem() : renamed(found.error(), key.argument, key.name);
     },
     "property_class"},
    {"torque", "48N.m", "Setting of the wrench",
     [](const ClampKey& key, Words text, ClampJob& job) { return read_above_zero(key.name, text, job.torque, 1e5); }},
    {"clamp-load", "25kN", "Clamp load that is wanted",
     [](const ClampKey& key, Words text, ClampJob& job) {
       return read_above_zero(key.name, text, job.clamp_load, 1e7);
     },
     "clamp_load"},
    {"share", "75%", "Share of the proof load that is wanted",
     [](const ClampKey& key, Words text, ClampJob& job) { return read(key.name, text, job.share); }},
    {"condition", "oiled", "What is on the threads; without it the band is wide",
     [](const ClampKey& key, Words text, ClampJob& job) { return read_condition(key.name, text, job.condition); }},
    {"face", "dry", "What is under head or nut, if not the same",
     [](const ClampKey& key, Words text, ClampJob& job) { return read_condition(key.name, text, job.face_condition); }},
    {"specified", "dry", "The condition that the torque figure is meant for",
     [](const ClampKey& key, Words text, ClampJob& job) {
       return read_condition(key.name, text, job.specified_condition);
     }},
    {"wrench", "4%", "Accuracy of the wrench, plus and minus; without it 6% up to 10 N.m, 4% above",
     [](const ClampKey& key, Words text, ClampJob& job) { return read(key.name, text, job.wrench_accuracy); },
     "wrench_accuracy"},
    {"prevailing", "4N.m", "Prevailing torque of a locking nut or insert",
     [](const ClampKey& key, Words text, ClampJob& job) { return read(key.name, text, job.prevailing_torque); },
     "prevailing_torque"},
    {"shank", "2N.m", "Friction torque of the shank in its hole, where the head is turned",
     [](const ClampKey& key, Words text, ClampJob& job) { return read(key.name, text, job.shank_torque); },
     "shank_torque"},
    {"thread-friction", "0.08..0.12..0.16", "Coefficient in the thread, if measured: 0.12, or a band",
     [](const ClampKey& key, Words text, ClampJob& job) { return read_band(key.name, text, job.thread_friction); },
     "thread_friction"},
    {"bearing-friction", "0.08..0.12..0.16", "Coefficient under head or nut, if measured",
     [](const ClampKey& key, Words text, ClampJob& job) { return read_band(key.name, text, job.bearing_friction); },
     "bearing_friction"},
    {"bearing-diameter", "13mm", "Effective diameter of the bearing face, if not the standard's",
     [](const ClampKey& key, Words text, ClampJob& job) {
       return read_above_zero(key.name, text, job.bearing_diameter, 0.5);
     },
     "bearing_diameter"},
    {"torsion", "plastic", "How the section carries torsion: plastic (today) or elastic (before 2001)",
     [](const ClampKey& key, Words text, ClampJob& job) {
       job.torsion = text == "elastic" ? Torsion::elastic : Torsion::plastic;
       if (text == "plastic" || text == "elastic") return Problem();
       const std::string sentence =
           "torsion " + tauten::detail::shown(text) + " is not known; write plastic or elastic";
       return Problem(Error(key.name, sentence.c_str()));
     }},
};

Problem exclude(std::span<const Said> said, const char* one, const char* other) {
  if (!has(said, one) || !has(said, other)) return {};
  return Error(one, (std::string(one) + " and " + other + " exclude each other; leave one of them out").c_str());
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
