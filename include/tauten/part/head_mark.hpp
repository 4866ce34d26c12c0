// What the mark on a head says, and what a head without one must be taken for.
#pragma once

#include <string>
#include <string_view>

#include "tauten/part/property_class.hpp"

namespace tauten::TAUTEN_ABI {

/// The class that a metric steel bolt without a mark must be taken for: the lowest that is still made. A missing mark
/// promises nothing, so no more may be assumed. Common practice, no source.
inline constexpr const char* unmarked_class = "4.6";

/// What to look for on a bolt of a class.
/// \param name  "10.9", "A4-80"
/// \return what to read on the head, or an error that lists the classes. Marking rules of ISO 898-1:1999, clause 9, and
///         ISO 3506-1, from memory.
inline Outcome<std::string> try_head_marks(std::string_view name) {
  const Outcome<PropertyClass> found = try_property_class(name);
  if (!found) return found.error();
  std::string mark = found->name;
  const bool structural = mark.find("structural") != std::string::npos;
  if (structural) mark = mark.substr(0, mark.find(' '));
  std::string text = "'" + mark + "' and the maker's mark, raised or sunk on the head";
  if (structural) return text + ", with HR, HV or S beside it";
  if (found->stainless) return text + "; M5 and larger; a magnet hardly pulls, though cold-formed heads pull a little";
  if (found->tensile_strength.si < 700e6) return text + "; hexagon heads M5 and larger; often left out on other heads";
  return text + "; hexagon and socket heads M5 and larger";
}

/// \copydoc try_head_marks
/// \throws Error  in place of returning one
inline std::string head_marks(std::string_view name) { return try_head_marks(name).value(); }

}  // namespace tauten::TAUTEN_ABI
