// Accuracy of hand torque tools: types, classes and permissible deviations.
#pragma once

#include "tauten/base/interval.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/shop_text.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// A tool that is further off than this does not control a torque (judgement).
inline constexpr double maximum_wrench_accuracy = 0.5;

/// How the tool shows that the torque is reached: type I shows the torque, type II is set and releases or clicks.
enum class WrenchType : unsigned char { indicating, setting };
template <>
struct Words<WrenchType> {
  static constexpr const char* list[] = {"indicating", "setting"};
};

/// A class of hand torque tools with the deviation that the standard permits.
struct WrenchClass {
  WrenchType type;
  char letter;
  const char* description;
  bool is_screwdriver;
  double deviation;        ///< of the reading or setting, both ways, above 10 N.m
  double small_deviation;  ///< for tools whose maximum torque is 10 N.m or less
};

// From memory. Two versions of the rule are known; where they differ the wider deviation stands here.
inline constexpr WrenchClass wrench_classes[] = {
    {WrenchType::indicating, 'A', "wrench with torsion or flexion bar", false, 0.06, 0.06},
    {WrenchType::indicating, 'B', "wrench with rigid housing and scale, dial or display", false, 0.04, 0.06},
    {WrenchType::indicating, 'C', "wrench with rigid housing and electronic measurement", false, 0.04, 0.06},
    {WrenchType::indicating, 'D', "screwdriver with scale, dial or display", true, 0.06, 0.06},
    {WrenchType::indicating, 'E', "screwdriver with electronic measurement", true, 0.04, 0.06},
    {WrenchType::setting, 'A', "adjustable wrench, graduated or with display", false, 0.04, 0.06},
    {WrenchType::setting, 'B', "wrench with fixed adjustment", false, 0.04, 0.06},
    {WrenchType::setting, 'C', "adjustable wrench, not graduated", false, 0.04, 0.06},
    {WrenchType::setting, 'D', "adjustable screwdriver, graduated or with display", true, 0.06, 0.06},
    {WrenchType::setting, 'E', "screwdriver with fixed adjustment", true, 0.06, 0.06},
    {WrenchType::setting, 'F', "adjustable screwdriver, not graduated", true, 0.06, 0.06},
    {WrenchType::setting, 'G', "adjustable wrench with flexion bar, graduated", false, 0.06, 0.06},
};
inline constexpr Source wrench_class_source = {"ISO 6789-1:2017", "clause 4 and table of deviations", Seen::memory};

/// Torque up to which the wider deviation of small tools holds.
inline constexpr Torque small_tool_torque{10.0};
/// Share of the maximum torque below which the 2003 edition tests no tool.
inline constexpr double lowest_tested_share = 0.2;

/// \param type    indicating (I) or setting (II)
/// \param letter  class, 'A' to 'G'
/// \return the class, or an error that lists the letters
inline Outcome<WrenchClass> try_wrench_class(WrenchType type, char letter) {
  for (const WrenchClass& known : wrench_classes)
    if (known.type == type && known.letter == letter) return known;
  const bool shows = type == WrenchType::indicating;
  // A letter that cannot be printed is left out of the sentence.
  const std::string given = letter > ' ' && letter < 127 ? std::string(" '") + letter + "'" : "";
  return Error("wrench_class", ("wrench_class" + given + " is unknown for type " + (shows ? "I" : "II") +
                                " tools; write a letter from A to " + (shows ? "E" : "G"))
                                   .c_str());
}

/// \param tool      the class
/// \param greatest  maximum torque of the tool; 0 if not known, which counts as above 10 N.m
/// \return permissible deviation, as a share of the setting, both ways
constexpr double permissible_deviation(const WrenchClass& tool, Torque greatest) noexcept {
  return greatest.si > 0 && greatest <= small_tool_torque ? tool.small_deviation : tool.deviation;
}

}  // namespace tauten::TAUTEN_ABI
