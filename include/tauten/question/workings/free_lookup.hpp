// Dimensions and strengths of a stuck fastener from the tables.
#pragma once

#include <algorithm>

#include "tauten/base/mode.hpp"
#include "tauten/base/shop_text.hpp"
#include "tauten/part/head.hpp"
#include "tauten/part/head_mark.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/question/free_names.hpp"
#include "tauten/question/identify.hpp"
#include "tauten/question/workings/key_screws.hpp"
#include "tauten/thread/designation.hpp"
#include "tauten/tool/drive_sizes.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// \return that a plain figure stands beside the name that it follows from, or nothing
inline std::optional<Error> plain_beside_name(const FreeNames& names, const FreeJob& job) {
  const auto both = [](bool name, bool plain, const char* argument, const char* what) -> std::optional<Error> {
    if (!name || !plain) return std::nullopt;
    return refuse(argument, std::string(argument) + " is given beside a " + what + "; leave one of them out");
  };
  const bool thread = !names.thread.empty(), strength = !names.property_class.empty();
  const bool socket = names.socket.has_value(), key = names.key.has_value();
  if (auto e = both(thread, job.diameter.has_value(), "diameter", "thread")) return e;
  if (auto e = both(thread, job.pitch.has_value(), "pitch", "thread")) return e;
  if (auto e = both(strength, job.tensile_strength.has_value(), "tensile_strength", "property class")) return e;
  if (auto e = both(strength, job.yield_strength.has_value(), "yield_strength", "property class")) return e;
  if (auto e = both(strength && !job.class_assumed, job.torsion_ratio.has_value(), "torsion_ratio", "property class"))
    return e;
  if (auto e = both(socket, key, "key", "socket")) return e;
  if (auto e = both(socket || key, names.bit.has_value(), "bit", socket ? "socket" : "key")) return e;
  return both(socket || key || names.bit, job.width_across_flats.has_value(), "width_across_flats",
              "socket, key or bit");
}

/// Fills the drive: as it is said, else that into which the tool goes.
inline std::optional<Error> look_up_drive(const FreeNames& names, FreeJob& job) {
  const bool key = names.key.has_value();
  if (names.drive) job.drive = *names.drive;
  if (!key && !names.bit) return std::nullopt;
  job.drive = key ? DriveFit::internal_hexagon : DriveFit::hexalobular;
  if (!names.drive || *names.drive == job.drive) return std::nullopt;
  return refuse("drive", std::string("drive is given beside a ") + (key ? "hexagon key" : "six-lobed bit") +
                             ", but is not " + word_of(job.drive) + "; leave one of them out");
}

/// Depth of the recess of a button head over its key, the least: 0.52 of ISO 7380-1 (M8 2.6 mm, M10 3.12 mm, M12
/// 4.16 mm, from memory). Countersunk heads are little deeper (ISO 10642, M10 3.6 mm, from memory).
inline constexpr double low_recess = 0.52;

/// What a hexagon key says of the head in a thread: a low one has a low recess, and a screw without a head is refused.
inline std::optional<Error> look_at_key(const FreeNames& names, FreeJob& job) {
  if (job.drive != DriveFit::internal_hexagon || !job.width_across_flats || !job.diameter) return std::nullopt;
  const KeyScrews same = key_screws(*job.width_across_flats,
                                    [&](const Thread& t) { return same_length(t.diameter.si, job.diameter->si); });
  if (!same.cap.empty()) return std::nullopt;
  if (!same.button.empty() || !same.sunk.empty()) {
    if (!job.head_height) job.head_height = Length(low_recess * job.width_across_flats->si);
    return std::nullopt;
  }
  if (same.set.empty()) return std::nullopt;
  return refuse(names.key ? "key" : "width_across_flats",
                same.set + " with a key of " + shop_text(*job.width_across_flats) +
                    " is a set screw: it has no head and no property class, and what is known here holds for neither. "
                    "Clean the recess, drive the key home, soak or warm the part, and stop at the torque to which the "
                    "key is tested" +
                    (find_hexagon_key(*job.width_across_flats)
                         ? ", " + shop_text(find_hexagon_key(*job.width_across_flats)->test_torque)
                         : std::string()));
}

/// Fills the width across flats or the drive number: that of the tool, else that of the typical head.
inline std::optional<Error> look_up_size(const FreeNames& names, FreeJob& job) {
  if (auto error = look_up_drive(names, job)) return error;
  const bool lobes = job.drive == DriveFit::hexalobular;
  if (names.key) job.width_across_flats = names.key;
  if (names.socket) job.width_across_flats = names.socket;
  if (names.bit) job.drive_number = names.bit;
  if (lobes && job.width_across_flats)
    return Error("drive", "a hexalobular drive goes by its number, not by a width; give the bit, for example 30");
  if (lobes ? job.drive_number.has_value() : job.width_across_flats.has_value()) return std::nullopt;
  if (names.thread.empty())
    return lobes ? Error("bit", "give the bit that fits, or a thread; write a bit like 30")
                 : Error("socket", "give the socket, key or bit that fits, or a thread; write a socket like 24mm");
  const char* standard = lobes ? "ISO 14579" : job.drive == DriveFit::internal_hexagon ? "ISO 4762" : "ISO 4014";
  const auto thread = try_parse_thread(names.thread);
  if (!thread) return thread.error();
  const auto typical = try_head(*thread, standard);
  if (!typical)
    return refuse(lobes ? "bit" : "socket", std::string(standard) + " has no head for " + visible(names.thread, 40) +
                                                (lobes ? "; give the bit that fits, for example 30"
                                                       : "; give the socket or key that fits, for example 24mm"));
  if (lobes)
    job.drive_number = typical->drive_number;
  else
    job.width_across_flats = typical->width;
  return std::nullopt;
}

}  // namespace detail

TAUTEN_FUNCTION std::optional<Error> assume(FreeNames& names, FreeJob& job) {
  const std::optional<Length> tool = names.socket ? names.socket : names.key;
  if (names.thread.empty() && !job.diameter && !job.pitch && tool) {
    IdentifyOptions options;
    options.worn = Length(0);
    options.drive = names.key ? Drive::hexagon_key : Drive::hexagon;
    const auto found = try_identify(*tool, options);
    if (!found) return found.error();
    if (found->empty())
      return detail::refuse("thread", "no head in the tables takes a tool of " + detail::shop_text(*tool) +
                                          "; give a thread like M16, or diameter and pitch");
    const auto screw = std::find_if(found->begin(), found->end(),
                                    [](const Candidate& c) { return c.kind != HeadKind::socket_set_screw; });
    if (screw == found->end())
      return detail::refuse("thread", "a key of " + detail::shop_text(*tool) +
                                          " fits set screws only; give a thread like M16, or diameter and pitch");
    names.thread = job.assumed_thread = screw->thread.name();
  }
  if (!job.assumed_thread.empty() && names.property_class.empty() && !job.tensile_strength && !job.yield_strength) {
    names.property_class = unmarked_class;
    job.class_assumed = true;
  }
  return std::nullopt;
}

TAUTEN_FUNCTION std::optional<Error> look_up(const FreeNames& names, FreeJob& job) {
  if (auto error = detail::plain_beside_name(names, job)) return error;
  if (!names.thread.empty()) {
    const auto thread = try_parse_thread(names.thread);
    if (!thread) return thread.error();
    job.diameter = thread->diameter;
    job.pitch = thread->pitch;
  } else if (!job.diameter || !job.pitch) {
    return Error("thread", "give a thread like M16, or diameter and pitch; identify finds it from the tool that fits");
  }
  if (auto error = detail::look_up_size(names, job)) return error;
  if (auto error = detail::look_at_key(names, job)) return error;
  if (names.property_class.empty()) {
    if (!job.tensile_strength || !job.yield_strength)
      return Error("property_class", "give a property class like 8.8, or tensile and yield strength");
    return std::nullopt;
  }
  const auto strength = try_property_class(names.property_class, *job.diameter);
  if (!strength) return strength.error();
  job.tensile_strength = strength->tensile_strength;
  job.yield_strength = strength->yield_strength;
  if (!job.torsion_ratio && strength->torsion_ratio > 0) job.torsion_ratio = strength->torsion_ratio;
  // Classes below 8.8 are not quenched and tempered, and stainless steel is not either (ISO 898-1, ISO 3506-1).
  if (!job.surroundings.quenched)
    job.surroundings.quenched = !strength->stainless && strength->tensile_strength.si >= 800e6;
  return std::nullopt;
}

}  // namespace tauten::TAUTEN_ABI
