// Numbers as strings.
#pragma once

#include <string>

#include "tauten/base/plain_number.hpp"

namespace tauten {

/// \param x       any number
/// \param digits  significant digits
/// \return plain decimal notation between 1e-4 and 1e7, scientific outside; "nan" for NaN. The point is a point in
///         every locale, so that what is printed can be read again
inline std::string number_text(double x, int digits = 4) { return PlainNumber(x, digits).c_str(); }

/// \return the shortest text that is read back as the very same number
inline std::string exact_text(double x) {
  char text[32];
  return {text, std::to_chars(text, text + sizeof text, x).ptr};
}

}  // namespace tauten
