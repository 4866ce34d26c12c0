// One step of a computation in every form in which it may be shown: formula, values put in, result, source, validity.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "tauten/base/step.hpp"
#include "tauten/explain/expression.hpp"
#include "tauten/explain/range_text.hpp"

namespace tauten::TAUTEN_ABI {

/// The parts of a step as text in one notation. What is not a formula is plain text.
struct StepText {
  std::string title;        ///< what the formula gives
  std::string symbol;       ///< M_A
  std::string expression;   ///< F_M*(...)
  std::string with_values;  ///< 25 kN*(...)
  std::string result;       ///< 48 N.m
  std::string source;       ///< document, place, and how it was seen
  std::string validity;     ///< "" or the ranges that the source states
  std::string note;
  std::vector<std::string> warnings;  ///< why the value needs care

  /// Lists the members, for bindings and JSON.
  template <class V>
  static void fields(V&& visit) {
    visit("title", &StepText::title);
    visit("symbol", &StepText::symbol);
    visit("expression", &StepText::expression);
    visit("with_values", &StepText::with_values);
    visit("result", &StepText::result);
    visit("source", &StepText::source);
    visit("validity", &StepText::validity);
    visit("note", &StepText::note);
    visit("warnings", &StepText::warnings);
  }
};

/// \return the ranges that the source of a formula states; "" if it states none
inline std::string validity_text(const Entry& entry) {
  std::string text;
  for (const Arg& arg : entry.inputs)
    if (has_validity_range(arg))
      text += (text.empty() ? "" : ", ") + std::string(arg.name) + " " + range_text(arg.validity, arg.dimension);
  return text;
}

/// \param x  inputs in SI
/// \return a sentence on each input outside the range that the source states, or outside which there is no value
inline std::vector<std::string> input_warnings(const Entry& entry, std::span<const double> x, const Style& style = {}) {
  std::vector<std::string> found;
  for (std::size_t i = 0; i < entry.inputs.size(); ++i) {
    const Arg& arg = entry.inputs[i];
    const bool possible = arg.domain.contains(x[i]);
    if (possible && arg.validity.contains(x[i])) continue;
    found.push_back(std::string(arg.name) + " is " + shown(style, x[i], arg.name, arg.dimension).text() +
                    (possible ? ", outside the stated range " : ", but must be ") +
                    range_text(possible ? arg.validity : arg.domain, arg.dimension));
  }
  if (found.empty() && entry.check(x.data()).status == Status::impossible)
    found.push_back(std::string("no ") + entry.output.name + " fits these inputs together");
  return found;
}

/// \param entry     the step's formula
/// \param step      its inputs and value
/// \param notation  text, LaTeX or MathML
/// \param style     units and digits
inline StepText step_text(const Entry& entry, const Step& step, Notation notation, const Style& style = {}) {
  const Symbolic expression = entry.expression();
  StepText text;
  text.title = entry.summary;
  text.symbol = symbol_text(entry.output.symbol, notation);
  text.expression = ExpressionWriter(entry.inputs, notation)(expression);
  text.with_values = ExpressionWriter(entry.inputs, notation, step.inputs, style)(expression);
  text.result = shown_in(shown(style, step.value, entry.output.name, entry.output.dimension), notation);
  for (const Source& source : entry.sources) text.source += (text.source.empty() ? "" : "; ") + source_text(source);
  text.validity = validity_text(entry);
  text.note = step.note;
  text.warnings = input_warnings(entry, step.inputs, style);
  return text;
}

}  // namespace tauten::TAUTEN_ABI
