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

}  // namespace tauten::python
