// Inch bolts by the tool that fits, to name what a metric table must not take for its own.
#pragma once

#include <string>

#include "tauten/base/quantity.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

struct InchHead {
  int thirty_seconds;  ///< width across flats, 1/32 in
  const char* bolt;
};

/// Hexagon heads of ASME B18.2.1 and nuts of ASME B18.2.2, from memory: widths are 1.5 d, of heavy ones 1.5 d + 1/8 in.
inline constexpr InchHead inch_hexagons[] = {
    {14, "1/4 in"},          {16, "5/16 in"},        {18, "3/8 in"},          {20, "7/16 in"},
    {24, "1/2 in"},          {26, "9/16 in"},        {28, "1/2 in, heavy"},   {30, "5/8 in"},
    {34, "5/8 in, heavy"},   {36, "3/4 in"},         {40, "3/4 in, heavy"},   {42, "7/8 in"},
    {46, "7/8 in, heavy"},   {48, "1 in"},           {52, "1 in, heavy"},     {54, "1-1/8 in"},
    {58, "1-1/8 in, heavy"}, {60, "1-1/4 in"},       {64, "1-1/4 in, heavy"}, {66, "1-3/8 in"},
    {72, "1-1/2 in"},        {76, "1-1/2 in, heavy"}};
/// Hexagon keys of ASME B18.3, from memory.
inline constexpr InchHead inch_keys[] = {{6, "1/4 in"},  {8, "5/16 in"}, {10, "3/8 in"},
                                         {12, "1/2 in"}, {16, "5/8 in"}, {20, "3/4 in"}};

}  // namespace detail

/// \param width  of the tool
/// \param key    it is a hexagon key
/// \return "1/2 in" for the bolt that most likely takes a tool of 3/4 in; "of unknown size" for another inch size; "" for
///         a width that is not a whole number of 1/32 in
inline std::string inch_bolt(Length width, bool key) {
  const double parts = width.si / (25.4e-3 / 32);
  const int whole = static_cast<int>(parts + 0.5);
  const double off = parts - whole;
  if (!(off < 1e-4 && off > -1e-4) || whole < 4 || whole > 128) return "";
  const auto find = [&](const auto& heads) -> std::string {
    for (const detail::InchHead& head : heads)
      if (head.thirty_seconds == whole) return head.bolt;
    return "of unknown size";
  };
  return key ? find(detail::inch_keys) : find(detail::inch_hexagons);
}

/// How line 1 begins where the tool has an inch size and the thread is not known.
inline constexpr const char* inch_headline =
    "Probably an inch bolt, which the tables do not have. If the thread is metric: ";

}  // namespace tauten::TAUTEN_ABI
