// Whether the thread that holds a bolt, and the face below head or nut, bear the clamp load: as far as the job says what
// they are.
#pragma once

#include "tauten/base/shop_text.hpp"
#include "tauten/joint/engagement.hpp"
#include "tauten/question/workings/clamp_bolt.hpp"
#include "tauten/question/workings/clamp_suspects.hpp"
#include "tauten/tool/drive_sizes.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// \return true if the job says what holds the thread, or what lies below head or nut
inline bool names_parts(const ClampJob& job) {
  return !job.seat_material.empty() || !job.nut_class.empty() || !job.tapped_material.empty();
}

/// \return the error of what such a part is, or nothing
inline std::optional<Error> part_error(const ClampJob& job) {
  if (job.engagement.has_value() == job.tapped_material.empty())
    return job.engagement
               ? refuse("tapped_material",
                        "engagement goes with what the thread is tapped in; write "
                        "tapped_material like grey_cast_iron, or leave engagement out")
               : refuse("engagement", "tapped_material goes with the engaged length; write engagement like 20mm");
  if (!job.nut_class.empty() && !job.tapped_material.empty())
    return refuse("nut_class", "nut_class and tapped_material exclude each other; leave one of them out");
  if (auto e = range_error("engagement", job.engagement, {0, 1, true})) return e;
  for (const auto& [argument, name] :
       {std::pair("seat_material", &job.seat_material), {"tapped_material", &job.tapped_material}})
    if (!name->empty())
      if (const Outcome<Material> found = try_material(*name); !found) return Error(argument, found.error().what());
  return std::nullopt;
}

/// \return the thread that holds a bolt, as far as the job says what it is
inline Outcome<std::optional<ThreadEngagement>> try_holder(const ClampJob& job, const Suspect& s,
                                                           const ClampBolt& bolt) {
  using Holder = std::optional<ThreadEngagement>;
  if (!job.tapped_material.empty()) {
    const Outcome<RatedLoad> tensile = try_tensile_load(s.thread, bolt.strength.name);
    if (!tensile) return tensile.error();
    return Holder(tapped_engagement(s.thread, bolt.strength, tensile->value, *try_material(job.tapped_material),
                                    *job.engagement));
  }
  if (job.nut_class.empty()) return Holder();
  const Outcome<ThreadEngagement> nut =
      try_nut_engagement(s.thread, bolt.strength.name, job.nut_class, Length(), s.thread.diameter);
  return nut ? Outcome<Holder>(*nut) : nut.error();
}

/// Share of the tensile load of its class at which the head of a screw of reduced loadability may break off, as the
/// standards of these screws have it (ISO 7380-1:2011, from memory).
inline constexpr double reduced_loadability = 0.8;

/// `bolt_of` with the load at which the thread that holds the bolt strips, or its head breaks off.
inline Outcome<ClampBolt> held_bolt_of(const ClampJob& job, const Suspect& s, const Conditions& c) {
  const Outcome<ClampBolt> bolt = bolt_of(job, s.thread, s.bearing_diameter, c);
  if (!bolt) return bolt;
  const auto holder = try_holder(job, s, *bolt);
  if (!holder) return holder.error();
  ClampBolt made = *bolt;
  if (const std::optional<ThreadEngagement>& held = *holder; held && !held->breaks_first)
    made.strip = {held->strip_load.low.si, held->strip_load.nominal.si};
  if (s.kind == HeadKind::socket_button_head) {
    const Outcome<RatedLoad> tensile = try_tensile_load(s.thread, bolt->strength.name);
    if (!tensile) return tensile.error();
    if (const double head = reduced_loadability * tensile->value.si; head < made.strip.low)
      made.strip = {head, head, true};
  }
  return made;
}

/// What else bounds a torque: that to which the key in the head is tested, which is small for the thread of a button head;
/// infinite for other drives.
inline double key_bound(const Suspect& s) {
  const bool keyed = s.kind == HeadKind::socket_button_head || s.kind == HeadKind::socket_head_cap;
  const HexagonKey* key = keyed ? find_hexagon_key(s.socket) : nullptr;
  return key ? key->test_torque.si : std::numeric_limits<double>::infinity();
}

/// Writes down what holds the bolt, and notes what strips or is pressed in below the highest clamp load.
/// \param out  its clamp load, written down
inline std::optional<Error> add_parts(ClampCandidate& out, const ClampJob& job, const Suspect& s,
                                      const ClampBolt& bolt) {
  const auto holder = try_holder(job, s, bolt);
  if (!holder) return holder.error();
  const std::optional<ThreadEngagement>& held = *holder;
  const Band<Force>& load = out.clamp_load;
  std::vector<Notice>& notices = out.notices;
  out.engagement = held;
  // Where bolt or thread gives way there is no load; what the bolt is held by and lies on is told all the same.
  const bool holds = is_given(load.high.si);
  const Force highest = holds ? load.high : Force(bolt.proof_load);
  constexpr double last_bit = 1 + 1e-6;  // a suggested torque sits on the bound
  if (held && !held->breaks_first && (!holds || held->strip_load.low.si * last_bit < highest.si))
    notices.push_back({"may_strip",
                       "The thread in the " + held->holder + " strips from " + shop_text(held->strip_load.low) +
                           (holds ? ", below the load of " + shop_text(highest) + " that the bolt may reach: "
                                  : std::string("; it or the bolt gives way before this torque is reached: ")) +
                           (held->needed_length.si > 0 ? "engage at least " + shop_text(held->needed_length) +
                                                             ", fit a thread insert, or tighten less."
                                                       : std::string("fit a nut of the matching class.")),
                       false});
  if (held && job.tapped_material == material::aluminium.name)
    if (const Outcome<RatedLoad> tensile = try_tensile_load(s.thread, bolt.strength.name))
      notices.push_back(aluminium_notice(
          tapped_engagement(s.thread, bolt.strength, tensile->value, material::cast_aluminium, *job.engagement),
          highest));
  if (held && !held->breaks_first && !job.nut_class.empty())
    notices.push_back({"weak_nut",
                       "The nut, class " + job.nut_class + ", is below the bolt, class " + bolt.strength.name +
                           ": overtightened, its thread strips where nobody sees it, before the bolt breaks. Fit a nut "
                           "of the matching class.",
                       false});
  if (!job.seat_material.empty() && s.face) {
    const Material below = *try_material(job.seat_material);
    const Stress pressure(bearing_pressure.si(highest.si, s.face->outer_diameter.si, s.face->inner_diameter.si));
    if (pressure > below.limiting_pressure)
      notices.push_back({"pressure",
                         "The pressure on " + std::string(below.name) + " may reach " + shop_text(pressure) +
                             ", above its limit of " + shop_text(below.limiting_pressure) +
                             ": the face is pressed in and clamp load is lost. Fit a hard washer or a flange head.",
                         false});
  }
  return std::nullopt;
}

}  // namespace tauten::TAUTEN_ABI::detail
