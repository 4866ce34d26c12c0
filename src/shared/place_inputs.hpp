// Places, patterns and lists of numbers as somebody gives them: in one text, as list or as record.
#pragma once

#include "tauten/group/flexibility.hpp"
#include "tauten/question/group_answer.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// Reads two numbers of a dimension: "100mm:-20mm", or a list of two.
Problem read_pair(const char* called, const Value& value, Dim dimension, double& x, double& y);

inline Problem read(const char* called, const Value& value, Position& into) {
  return read_pair(called, value, Dim::length, into.x, into.y);
}
inline Problem read(const char* called, const Value& value, PlaneForce& into) {
  return read_pair(called, value, Dim::force, into.x.si, into.y.si);
}
inline Problem read(const char* called, const Value& value, LiftingMoment& into) {
  return read_pair(called, value, Dim::torque, into.right.si, into.up.si);
}
/// Reads figures with names: "ring_width:50mm;bolt_area:157mm2", or a record.
Problem read(const char* called, const Value& value, FlangeOnGasket& into);
/// Reads the number of a bolt.
inline Problem read(const char* called, const Value& value, std::size_t& into) {
  return read_whole(called, value, "3", into);
}

/// Reads a list: a text with the mark between the items, a list, or one item alone.
template <class T>
Problem read_list(const char* called, const Value& value, std::vector<T>& into, char mark = ';') {
  if (value.kind == Value::Kind::list) return read_each(called, value, into);
  if (value.kind != Value::Kind::text) return read(called, value, into.emplace_back());
  for (std::string_view part : split(value.text, mark)) {
    part.remove_prefix(std::min(part.find_first_not_of(' '), part.size()));
    Value item(part);
    item.foreign = value.foreign;
    if (auto problem = read(called, item, into.emplace_back())) return problem;
  }
  return {};
}

/// Reads a row of a matrix: a text with commas, or a list.
template <class T>
Problem read(const char* called, const Value& value, std::vector<T>& into) {
  return read_list(called, value, into, ',');
}

/// Reads a pattern: words like circle:8:160mm, or places like 0mm:0mm;120mm:0mm.
Problem read_pattern(const char* called, const Value& value, std::vector<Position>& into);
/// The same, or the number of bolts on a circle whose size does not matter.
Problem read_pattern_or_count(const char* called, const Value& value, std::vector<Position>& into);

namespace detail {

template <>
struct MemberOf<Position> {
  static constexpr Holds holds = Holds::text;
  static constexpr Dim dimension = Dim::length;
};
template <>
struct MemberOf<PlaneForce> {
  static constexpr Holds holds = Holds::text;
  static constexpr Dim dimension = Dim::force;
};
template <>
struct MemberOf<LiftingMoment> {
  static constexpr Holds holds = Holds::text;
  static constexpr Dim dimension = Dim::torque;
};
template <>
struct MemberOf<FlangeOnGasket> : MemberOf<std::string> {};

template <auto member, class Job>
Problem put_list(const Input<Job>&, const char* called, const Value& value, Job& job) {
  auto& list = at<member>(job);
  list.clear();  // what is given takes the place of the default
  return read_list(called, value, list);
}
template <auto member, auto read_it, class Job>
Problem put_pattern(const Input<Job>&, const char* called, const Value& value, Job& job) {
  return read_it(called, value, at<member>(job));
}

inline void x_and_y(std::vector<const char*>& names) { names = {"x", "y"}; }
inline void right_and_up(std::vector<const char*>& names) { names = {"right", "up"}; }

}  // namespace detail

/// Declares inputs that hold several numbers and stand in one text all the same, as one cell of a table holds it.
template <class Job>
struct DeclaresLists : Declares<Job> {
  /// A list with semicolons.
  template <auto member>
  static constexpr Input<Job> list(const char* name, const char* example, const char* help) {
    Input<Job> made = Declares<Job>::template input<member>(name, example, help);
    made.takes = Takes::one_value;
    made.put = detail::put_list<member, Job>;
    return made;
  }
  /// Places with semicolons.
  template <auto member>
  static constexpr Input<Job> places(const char* name, const char* example, const char* help) {
    Input<Job> made = list<member>(name, example, help);
    made.members = detail::x_and_y;
    return made;
  }
  /// Words for a pattern, or places.
  template <auto member, auto read_it = read_pattern>
  static constexpr Input<Job> pattern(const char* name, const char* example, const char* help) {
    Input<Job> made = places<member>(name, example, help);
    made.put = detail::put_pattern<member, read_it, Job>;
    return made;
  }
  /// Two numbers with a colon.
  template <auto member>
  static constexpr Input<Job> pair(const char* name, const char* example, const char* help) {
    Input<Job> made = Declares<Job>::template input<member>(name, example, help);
    made.holds = Holds::list;
    made.members = made.dimension == Dim::torque ? detail::right_and_up : detail::x_and_y;
    return made;
  }
};

}  // namespace tauten::shared
