#include "shared/free_items.hpp"

namespace tauten::shared {

namespace {

/// \param text  "24h"
Problem read_hours(const char* key, std::string_view text, double& hours) {
  const std::string_view number = text.substr(0, text.size() - (text.ends_with("h") ? 1 : 0));
  if (number.size() == text.size() || shared::read(key, number, hours))
    return refuse_text(key, text, " is not a time in hours; write it like 24h");
  return {};
}

}  // namespace

Problem Form<Neighbour>::read(const char* key, std::string_view text, Neighbour& one) {
  const auto parts = split(text, ':');
  if (parts.size() < 2 || parts.size() > 3 || (parts.size() == 3 && parts[2] != "treated"))
    return refuse_text(
        key, text,
        " is not understood; write what became of it and the torque, like freed:85N.m, or freed:85N.m:treated "
        "if it had the aids already used");
  if (shared::read(key, parts[0], one.how))
    return refuse_text(key, parts[0], " is not known; write freed, sheared, rounded or unmoved");
  one.treated = parts.size() == 3;
  double bare = 0;
  if (!parts[1].empty() && tauten::detail::read_number(parts[1], bare) == parts[1].size())
    return refuse_text(key, text,
                       " has no unit; write it like " + std::string(parts[0]) + ":" + std::string(parts[1]) + "N.m" +
                           (one.treated ? ":treated" : ""));
  return shared::read(key, parts[1], one.torque);
}

Problem Form<AidUse>::read(const char* key, std::string_view text, AidUse& use) {
  const auto parts = split(text, ':');
  // A thin fluid has a name of its own, as on the plan.
  const bool thin = parts[0] == "thin_fluid" || parts[0] == "thin-fluid" || parts[0] == "thin fluid";
  if (thin) {
    use.aid = Aid::fluid;
    use.thin_fluid = true;
    if (parts.size() > 2) return refuse_text(key, text, " is not understood; write thin_fluid:24h");
    return parts.size() == 2 ? read_hours(key, parts[1], use.soak_hours) : Problem();
  }
  if (auto problem = shared::read(key, parts[0], use.aid)) return problem;
  const std::size_t most = use.aid == Aid::fluid || use.aid == Aid::heat ? 3 : use.aid == Aid::cold ? 2 : 1;
  if (parts.size() > most)
    return refuse_text(key, text, " says too much; write it like brush, fluid:24h, heat:150K or cold:30K");
  if (parts.size() == 1) return {};
  if (use.aid == Aid::cold) return shared::read(key, parts[1], use.bolt_rise);
  if (use.aid == Aid::heat) {
    if (auto problem = shared::read(key, parts[1], use.nut_rise)) return problem;
    // The bolt follows the nut as it does where nothing is said.
    const AidUse nominal;
    use.bolt_rise.si = use.nut_rise.si * nominal.bolt_rise.si / nominal.nut_rise.si;
    return parts.size() == 3 ? shared::read(key, parts[2], use.bolt_rise) : Problem();
  }
  use.thin_fluid = parts.size() == 3;
  if (use.thin_fluid && parts[2] != "thin") return refuse_text(key, text, " is not understood; write fluid:24h:thin");
  return read_hours(key, parts[1], use.soak_hours);
}

Problem read_surroundings(const char* called, const Value& value, HeatSurroundings& surroundings) {
  constexpr bool HeatSurroundings::* members[] = {&HeatSurroundings::fire_or_burst,
                                                  &HeatSurroundings::rubber_or_plastic,
                                                  &HeatSurroundings::zinc_or_cadmium, &HeatSurroundings::adhesive};
  static_assert(std::size(members) == std::size(surroundings_words));
  std::size_t place = 0;
  if (auto problem = read_word(called, value, surroundings_words, place)) return problem;
  surroundings.*members[place] = true;
  return {};
}

}  // namespace tauten::shared
