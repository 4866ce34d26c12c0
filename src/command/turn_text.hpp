// The answers to `turn` and `curve` as pages for people, and the curve as comma-separated values.
#pragma once

#include <string>

#include "tauten/question/turn_answer.hpp"

namespace tauten::command {

std::string page_of(const TurnAnswer& answer);
std::string page_of(const CurveAnswer& answer);

/// One row for each point, all numbers in SI, under a header that names column and unit.
std::string csv_of(const CurveAnswer& answer);

}  // namespace tauten::command
