#include "shared/place_inputs.hpp"

#include "tauten/group/pattern_words.hpp"

namespace tauten::shared {

namespace {

using Kind = Value::Kind;

constexpr std::pair<const char*, Length FlangeOnGasket::*> gasket_lengths[] = {
    {"ring_width", &FlangeOnGasket::ring_width},
    {"ring_thickness", &FlangeOnGasket::ring_thickness},
    {"gasket_width", &FlangeOnGasket::gasket_width},
    {"gasket_thickness", &FlangeOnGasket::gasket_thickness},
    {"bolt_length", &FlangeOnGasket::bolt_length}};
constexpr std::pair<const char*, Stress FlangeOnGasket::*> gasket_moduli[] = {
    {"ring_modulus", &FlangeOnGasket::ring_modulus},
    {"gasket_modulus", &FlangeOnGasket::gasket_modulus},
    {"bolt_modulus", &FlangeOnGasket::bolt_modulus}};

/// Reads one figure of a gasket.
/// \return whether there is one of that name
bool read_figure(const char* called, std::string_view name, const Value& value, FlangeOnGasket& into,
                 Problem& problem) {
  const std::string place = std::string(called) + "." + tauten::detail::visible(name, 40);
  for (const auto& [known, member] : gasket_lengths)
    if (name == known) return problem = shared::read(place.c_str(), value, into.*member), true;
  for (const auto& [known, member] : gasket_moduli)
    if (name == known) return problem = shared::read(place.c_str(), value, into.*member), true;
  if (name != "bolt_area") return false;
  return problem = shared::read(place.c_str(), value, into.bolt_area), true;
}

}  // namespace

Problem read_pair(const char* called, const Value& value, Dim dimension, double& x, double& y) {
  const std::string name = called;
  if (value.kind == Kind::text) {
    const auto parts = split(value.text, ':');
    if (parts.size() != 2)
      return refuse_text(called, value.text,
                         std::string(" is not two numbers; write them with a colon between, like ") +
                             (dimension == Dim::length  ? "100mm:-20mm"
                              : dimension == Dim::force ? "0kN:-16kN"
                                                        : "0N.m:2kN.m"));
    if (auto problem = read_si(called, parts[0], dimension, x)) return problem;
    return read_si(called, parts[1], dimension, y);
  }
  if (value.kind != Kind::list) return value.refusal(called, "two numbers, (x, y)");
  if (value.items.size() != 2)
    return Error(
        called,
        (name + " has " + std::to_string(value.items.size()) + " items, but must have two; write it (x, y)").c_str());
  if (auto problem = read_si((name + "[0]").c_str(), value.items[0], dimension, x)) return problem;
  return read_si((name + "[1]").c_str(), value.items[1], dimension, y);
}

Problem read(const char* called, const Value& value, FlangeOnGasket& into) {
  const auto refuse = [&] {
    std::string known;
    for (const auto& [name, member] : gasket_lengths) known += std::string(name) + ", ";
    for (const auto& [name, member] : gasket_moduli) known += std::string(name) + ", ";
    return Error(called, (std::string(called) + " must be a dict of " + known +
                          "bolt_area, or a text like ring_width:50mm;bolt_length:55mm; leave the others out")
                             .c_str());
  };
  Problem problem;
  if (value.kind == Kind::record) {
    for (std::size_t i = 0; i < value.items.size() && !problem; ++i)
      if (!read_figure(called, value.names[i], value.items[i], into, problem)) return refuse();
    return problem;
  }
  if (value.kind != Kind::text) return refuse();
  for (std::string_view part : split(value.text, ';')) {
    part.remove_prefix(std::min(part.find_first_not_of(' '), part.size()));
    const auto sides = split(part, ':');
    if (sides.size() != 2 || !read_figure(called, sides[0], sides[1], into, problem)) return refuse();
    if (problem) return problem;
  }
  return {};
}

namespace {

bool is_count(const Value& value) {
  return value.kind == Kind::whole || (value.kind == Kind::text && !value.text.empty() &&
                                       value.text.find_first_not_of("0123456789") == std::string_view::npos);
}

Problem take(const char* called, const Outcome<Pattern>& found, std::vector<Position>& into) {
  if (!found) return Error(called, (std::string(called) + ": " + found.error().what()).c_str());
  into = found->positions();
  return {};
}

}  // namespace

Problem read_pattern(const char* called, const Value& value, std::vector<Position>& into) {
  into.clear();
  if (is_count(value))
    return Error(called,
                 (std::string(called) + " is a number of bolts alone, which does not say where they are; write " +
                  "it like circle:8:160mm, or as places 0mm:0mm;120mm:0mm")
                     .c_str());
  if (value.kind != Kind::text) return read_each(called, value, into);
  // Words begin with a letter, places with a number.
  const std::size_t first = value.text.find_first_not_of(' ');
  if (first != std::string_view::npos && std::string_view("+-.0123456789").find(value.text[first]) < 13)
    return read_list(called, value, into);
  return take(called, try_pattern_from_words(value.text), into);
}

Problem read_pattern_or_count(const char* called, const Value& value, std::vector<Position>& into) {
  if (!is_count(value)) return read_pattern(called, value, into);
  std::size_t count = 0;
  if (auto problem = read_whole(called, value, "8", count)) return problem;
  return take(called, try_circle_pattern(count, Length(0.1)), into);
}

}  // namespace tauten::shared
