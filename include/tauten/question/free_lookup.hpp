// A stuck fastener by the names on it: thread, mark and tool give its dimensions and strengths.
#pragma once

#include <string>

#include "tauten/part/head.hpp"
#include "tauten/part/head_mark.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/question/free_job.hpp"
#include "tauten/question/identify.hpp"
#include "tauten/thread/designation.hpp"

namespace tauten {

/// What is read off a stuck fastener and its tool. What is left out stands in the `FreeJob` as plain figures.
struct FreeNames {
  std::string thread{};          ///< designation, "M16"; else `diameter` and `pitch`
  std::string property_class{};  ///< mark on the head; else `tensile_strength` and `yield_strength`
  Length socket{};           ///< that fits; else `key`, `bit`, `width_across_flats` or the typical head of the thread
  Length key{};              ///< hexagon key that fits into the head
  std::optional<int> bit{};  ///< number of the six-lobed bit that fits into the head
  std::optional<DriveFit> drive{};
};

namespace detail {

/// \return that a plain figure stands beside the name that it follows from, or nothing
inline std::optional<Error> plain_beside_name(const FreeNames& names, const FreeJob& job) {
  const auto both = [](bool name, double plain, const char* argument, const char* what) -> std::optional<Error> {
    if (!name || plain == 0) return std::nullopt;
    return refuse(argument, std::string(argument) + " is given beside a " + what + "; leave one of them out");
  };
  const bool thread = !names.thread.empty(), strength = !names.property_class.empty();
  const bool socket = names.socket.si > 0, key = names.key.si > 0;
  if (auto e = both(thread, job.diameter.si, "diameter", "thread")) return e;
  if (auto e = both(thread, job.pitch.si, "pitch", "thread")) return e;
  if (auto e = both(strength, job.tensile_strength.si, "tensile_strength", "property class")) return e;
  if (auto e = both(strength, job.yield_strength.si, "yield_strength", "property class")) return e;
  if (auto e = both(socket, names.key.si, "key", "socket")) return e;
  if (auto e = both(socket || key, names.bit.value_or(0), "bit", socket ? "socket" : "key")) return e;
  return both(socket || key || names.bit, job.width_across_flats.si, "width_across_flats", "socket, key or bit");
}

/// Fills the drive: as it is said, else that into which the tool goes.
inline std::optional<Error> look_up_drive(const FreeNames& names, FreeJob& job) {
  const bool key = names.key.si > 0;
  if (names.drive) job.drive = *names.drive;
  if (!key && !names.bit) return std::nullopt;
  job.drive = key ? DriveFit::internal_hexagon : DriveFit::hexalobular;
  if (!names.drive || *names.drive == job.drive) return std::nullopt;
  return refuse("drive", std::string("drive is given beside a ") + (key ? "hexagon key" : "six-lobed bit") +
                             ", but is not " + word_of(job.drive) + "; leave one of them out");
}

/// Fills the width across flats or the drive number: that of the tool, else that of the typical head.
inline std::optional<Error> look_up_size(const FreeNames& names, FreeJob& job) {
  if (auto error = look_up_drive(names, job)) return error;
  const bool lobes = job.drive == DriveFit::hexalobular;
  if (names.key.si > 0) job.width_across_flats = names.key;
  if (names.socket.si > 0) job.width_across_flats = names.socket;
  if (names.bit) job.drive_number = *names.bit;
  if (lobes && job.width_across_flats.si != 0)
    return Error("drive", "a hexalobular drive goes by its number, not by a width; give the bit, for example 30");
  if (lobes ? names.bit || job.drive_number != 0 : job.width_across_flats.si != 0) return std::nullopt;
  if (names.thread.empty())
    return lobes ? Error("bit", "give the bit that fits, or a thread; write a bit like 30")
                 : Error("socket", "give the socket, key or bit that fits, or a thread; write a socket like 24mm");
  const char* standard = lobes ? "ISO 14579" : job.drive == DriveFit::internal_hexagon ? "ISO 4762" : "ISO 4014";
  const auto thread = try_parse_thread(names.thread);
  if (!thread) return thread.error();
  const auto typical = try_head(*thread, standard);
  if (!typical)
    return refuse(lobes ? "bit" : "socket", std::string(standard) + " has no head for " + names.thread.substr(0, 40) +
                                                (lobes ? "; give the bit that fits, for example 30"
                                                       : "; give the socket or key that fits, for example 24mm"));
  job.width_across_flats = typical->width;
  job.drive_number = typical->drive_number;
  return std::nullopt;
}

}  // namespace detail

/// Fills thread and class where only a tool is given, as `clamp` assumes them: the most common thread that takes socket or
/// key, and the class of an unmarked head. The job keeps that they are assumed.
/// \return that nothing in the tables takes the tool, or nothing
inline std::optional<Error> assume(FreeNames& names, FreeJob& job) {
  const Length tool = names.socket.si > 0 ? names.socket : names.key;
  if (names.thread.empty() && job.diameter.si == 0 && job.pitch.si == 0 && tool.si > 0) {
    IdentifyOptions options;
    options.worn = Length(0);
    options.drive = names.key.si > 0 ? Drive::hexagon_key : Drive::hexagon;
    const auto found = try_identify(tool, options);
    if (!found) return found.error();
    if (found->empty())
      return detail::refuse("thread", "no head in the tables takes a tool of " + detail::shop_text(tool) +
                                          "; give a thread like M16, or diameter and pitch");
    names.thread = job.assumed_thread = found->front().thread.name();
  }
  if (!job.assumed_thread.empty() && names.property_class.empty() && job.tensile_strength.si == 0 &&
      job.yield_strength.si == 0) {
    names.property_class = unmarked_class;
    job.class_assumed = true;
  }
  return std::nullopt;
}

/// Fills diameter, pitch, width or drive number, and strengths of a job from names, and whether the bolt is quenched from
/// its class.
/// \return what is missing, unknown or said twice, or nothing
inline std::optional<Error> look_up(const FreeNames& names, FreeJob& job) {
  if (auto error = detail::plain_beside_name(names, job)) return error;
  if (!names.thread.empty()) {
    const auto thread = try_parse_thread(names.thread);
    if (!thread) return thread.error();
    job.diameter = thread->diameter;
    job.pitch = thread->pitch;
  } else if (job.diameter.si == 0 || job.pitch.si == 0) {
    return Error("thread", "give a thread like M16, or diameter and pitch; identify tells it from the tool that fits");
  }
  if (auto error = detail::look_up_size(names, job)) return error;
  if (names.property_class.empty()) {
    if (job.tensile_strength.si == 0 || job.yield_strength.si == 0)
      return Error("property_class", "give a property class like 8.8, or tensile and yield strength");
    return std::nullopt;
  }
  const auto strength = try_property_class(names.property_class, job.diameter);
  if (!strength) return strength.error();
  job.tensile_strength = strength->tensile_strength;
  job.yield_strength = strength->yield_strength;
  if (strength->torsion_ratio > 0) job.torsion_ratio = strength->torsion_ratio;
  // Classes below 8.8 are not quenched and tempered, and stainless steel is not either (ISO 898-1, ISO 3506-1).
  job.surroundings.quenched = !strength->stainless && strength->tensile_strength.si >= 800e6;
  return std::nullopt;
}

}  // namespace tauten
