// What the answers have in common.
#pragma once

#include <span>
#include <string>

#include "arguments.hpp"
#include "tauten/base/step.hpp"

namespace tauten::python {

/// \param format  text, markdown or latex
/// \return how the figures came about, after a heading
/// \throws Error  for another format
std::string explanation(const std::string& heading, std::span<const Step> steps, const std::string& format);

/// \param thread  designation
/// \param key     true: of the hexagon key of a socket head cap screw
/// \return the width across flats of the usual head, ISO 4014 or ISO 4762, or an error if there is none
Length usual_width(const std::string& thread, bool key);

}  // namespace tauten::python
