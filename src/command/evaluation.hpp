// One formula at values from the command line: what `eval` and `explain` have in common.
#pragma once

#include <string>
#include <vector>

#include "command/json.hpp"
#include "tauten/base/registry.hpp"
#include "tauten/base/step.hpp"

namespace tauten::command {

struct Evaluation {
  const Entry* entry;
  Step step;
  std::vector<std::string> warnings;  ///< inputs outside the range that the source states
};

std::span<const Entry> all_formulas();

/// \throws Error  naming the formulas that are like `name`
const Entry& formula_named(const std::string& name);

/// \param words  "torque=48N.m", in any order
/// \throws Error  naming the argument at fault
Evaluation evaluation_of(const std::string& name, const std::vector<std::string>& words);

/// \return "pitch=1.1mm": how the input is written, inside the range that its source states
std::string example_of(const Arg& arg);

/// {"formula","value","unit","inputs","sources","warnings"}
Json json_of_evaluation(const Evaluation& evaluation);

/// \return names of all formulas, for completion
std::vector<std::string> formula_names();

}  // namespace tauten::command
