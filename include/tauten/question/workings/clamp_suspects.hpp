// The fasteners that a job may mean, from socket, thread and head standard.
#pragma once

#include <optional>

#include "tauten/part/inch_head.hpp"
#include "tauten/question/identify.hpp"
#include "tauten/question/workings/clamp_conditions.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// A fastener that the job may mean, before its strength is known.
struct Suspect {
  Thread thread;
  std::string heads;
  std::string look;
  int commonness;
  Length socket;
  double bearing_diameter;
  bool bearing_estimated;
  bool head_assumed = false;  ///< neither tool nor head is known, so the bearing face is that of the typical head
  std::optional<BearingDiameter> face = std::nullopt;  ///< where the bearing diameter comes from, unless it is given
  HeadKind kind = HeadKind::hexagon_bolt;
};

/// \return the refusal for a screw that does not clamp by a flat face, or nothing
inline std::optional<Error> no_flat_face(const char* argument, const Head& part) {
  if (clamps_by_flat_face(part.kind)) return std::nullopt;
  return refuse(argument,
                part.size + " " + part.standard +
                    " has no flat face under a head, which the formulas need; take its torque from its maker");
}

inline Outcome<Suspect> suspect_of(const ClampJob& job, const Thread& t, const Head& part, const std::string& heads,
                                   const std::string& look, int commonness) {
  Suspect s{t, heads, look, commonness, part.width, 0, false};
  s.kind = part.kind;
  if (job.bearing_diameter) {
    s.bearing_diameter = job.bearing_diameter->si;
    return s;
  }
  const Outcome<BearingDiameter> face = try_bearing_diameter(part);
  if (!face) return face.error();
  s.bearing_diameter = face->value.si;
  s.bearing_estimated = face->estimated;
  s.face = *face;
  return s;
}

/// The fastener of a thread that is named, with the head that is named or else the typical one.
inline Outcome<Suspect> suspect_of_thread(const ClampJob& job) {
  const Outcome<Thread> thread = try_parse_thread(job.thread);
  if (!thread) return thread.error();
  const Outcome<Head> part = try_head(*thread, job.head.empty() ? "ISO 4014" : job.head);
  if (!part && !job.bearing_diameter) return part.error();
  if (part)
    if (auto error = no_flat_face("head", *part)) return *error;
  const Head known = part ? *part : Head{};
  const Outcome<Suspect> made = suspect_of(job, *thread, known, known.standard, known.look, known.commonness);
  if (!made) return made.error();
  Suspect s = *made;
  s.head_assumed = job.head.empty() && !job.bearing_diameter;
  return s;
}

/// \return what to make of an inch tool, "" for a metric one
inline std::string inch_text(const std::optional<Length>& tool, bool key, bool thread_known) {
  const std::string bolt = tool ? inch_bolt(*tool, key) : "";
  if (bolt.empty()) return "";
  return std::string("The ") + (key ? "key" : "socket") + " has an inch size: the bolt is probably an inch bolt" +
         (bolt == "of unknown size" ? std::string() : " (" + bolt + ")") +
         ", which the tables do not have. Take its torque and strength from its maker" +
         (thread_known ? ", unless its thread is metric for certain."
                       : ". The figures hold only if the thread is metric: check it with a pitch gauge.");
}
inline std::string inch_text(const ClampJob& job) {
  return inch_text(job.socket, job.inner_hexagon, !job.thread.empty());
}

/// Every fastener that fits socket, thread and head standard of the job, the most common first.
inline Outcome<std::vector<Suspect>> suspects_of(const ClampJob& job) {
  if (!job.socket) {
    if (job.thread.empty()) return Error("thread", "give a thread like M10x1.25, or a socket like 16mm");
    const Outcome<Suspect> named = suspect_of_thread(job);
    if (!named) return named.error();
    return std::vector<Suspect>{*named};
  }
  std::optional<Thread> wanted;
  if (!job.thread.empty()) {
    const Outcome<Thread> read = try_parse_thread(job.thread);
    if (!read) return read.error();
    wanted = *read;
  }
  std::vector<Suspect> found;
  std::optional<Error> refused;
  IdentifyOptions options;
  options.worn = Length(0);
  options.drive = job.inner_hexagon ? Drive::hexagon_key : Drive::hexagon;
  const Outcome<std::vector<Candidate>> candidates = try_identify(*job.socket, options);
  if (!candidates) return candidates.error();
  for (const Candidate& c : *candidates) {
    if (wanted &&
        !(same_length(c.thread.diameter.si, wanted->diameter.si) && same_length(c.thread.pitch.si, wanted->pitch.si)))
      continue;
    if (!job.head.empty() && !names_standard(c.standard, name_key(job.head))) continue;
    if (!clamps_by_flat_face(c.kind)) {
      if (!refused) refused = no_flat_face(wanted ? "thread" : "socket", c.heads.front());
      continue;
    }
    const Outcome<Suspect> s = suspect_of(job, c.thread, c.heads.front(), c.standard, c.look, c.commonness);
    if (!s) return s.error();
    found.push_back(*s);
  }
  if (found.empty() && refused) return *refused;
  if (found.empty())
    return Error("thread", ("no head in the tables joins socket " + mm_text(job.socket->si) + " mm with " +
                            (job.thread.empty() ? "head " + shown(job.head) : "thread " + shown(job.thread)) +
                            "; leave one of them out to see what fits")
                               .c_str());
  return found;
}

}  // namespace tauten::TAUTEN_ABI::detail
