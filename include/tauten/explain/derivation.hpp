// Steps of a computation as text, Markdown or LaTeX: formula, values put in, result, source, and warnings.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "tauten/base/step.hpp"
#include "tauten/explain/expression.hpp"

namespace tauten {

/// One step in every form in which it may be shown.
struct StepText {
  std::string title;        ///< what the formula gives
  std::string formula;      ///< M_A = F_M*(...)
  std::string with_values;  ///< = 25 kN*(...)
  std::string result;       ///< = 48 N.m
  std::string source;       ///< document, place, and how it was seen
  std::string note;
  std::string warning;  ///< "" or why the value is to be treated with care
};

/// \return how a figure was seen, in words
inline const char* seen_text(Seen seen) noexcept {
  switch (seen) {
    case Seen::in_print: return "seen in print";
    case Seen::once: return "seen once in print";
    case Seen::memory: return "from memory";
    case Seen::judgement: return "estimate";
  }
  return "";
}

inline std::string source_text(const Source& source) {
  return std::string(source.document) + ", " + source.place + " (" + seen_text(source.seen) + ")";
}

/// \return an admissible range in shop units: "from 0.02 to 1", "above 0 mm"
inline std::string range_text(const Arg& arg, const Interval& range) {
  if (range.low <= -largest) return "any finite value";
  const std::string low = quantity_text(range.low, arg.dimension);
  if (range.high >= largest) return (range.excludes_low ? "above " : "at least ") + low;
  return "from " + low + " to " + quantity_text(range.high, arg.dimension);
}

/// \param entry     the step's formula
/// \param step      its inputs and value
/// \param notation  text or LaTeX
inline StepText step_text(const Entry& entry, const Step& step, Notation notation) {
  const bool latex = notation == Notation::latex;
  const std::string symbol = latex ? latex_symbol(entry.output.symbol) : entry.output.symbol;
  const Symbolic expression = entry.expression();
  StepText text;
  text.title = entry.summary;
  text.formula = symbol + " = " + ExpressionWriter(entry.inputs, notation)(expression);
  text.with_values = "= " + ExpressionWriter(entry.inputs, notation, step.inputs)(expression);
  const DimensionText unit = describe(entry.output.dimension);
  text.result = latex && *unit.shop_unit != '\0'
                    ? "= " + number_text(step.value / unit.shop_unit_in_si) + "\\," + unit.latex_unit
                    : "= " + quantity_text(step.value, entry.output.dimension);
  if (!entry.sources.empty()) text.source = source_text(entry.sources.front());
  text.note = step.note;
  if (const Check check = entry.check(step.inputs.data()); check.status != Status::ok && check.argument >= 0) {
    const Arg& arg = entry.inputs[static_cast<std::size_t>(check.argument)];
    const bool unusual = check.status == Status::unusual;
    text.warning = std::string(arg.name) + " is " +
                   quantity_text(step.inputs[static_cast<std::size_t>(check.argument)], arg.dimension) +
                   (unusual ? ", outside the stated range " : ", but must be ") +
                   range_text(arg, unusual ? arg.usual : arg.domain);
  }
  return text;
}

/// How a derivation is laid out.
enum class Layout : unsigned char { text, markdown, latex };

/// \param steps     what was computed, in order
/// \param registry  the formulas that may occur: `formulas`
/// \param layout    plain text, Markdown with formulas, or LaTeX
/// \return the whole derivation; a step whose formula is not in the registry is left out
inline std::string derivation(std::span<const Step> steps, std::span<const Entry> registry, Layout layout) {
  const Notation notation = layout == Layout::text ? Notation::text : Notation::latex;
  std::string out;
  int number = 0;
  for (const Step& step : steps)
    for (const Entry& entry : registry) {
      if (step.formula != entry.name) continue;
      const StepText text = step_text(entry, step, notation);
      const std::string head =
          std::to_string(++number) + ". " + text.title + (text.note.empty() ? "" : " (" + text.note + ")");
      switch (layout) {
        case Layout::text:
          out += head + "\n   " + text.formula + "\n   " + std::string(std::string(entry.output.symbol).size(), ' ') +
                 " " + text.with_values + "\n   " + std::string(std::string(entry.output.symbol).size(), ' ') + " " +
                 text.result + "\n   Source: " + text.source + "\n";
          if (!text.warning.empty()) out += "   Take care: " + text.warning + "\n";
          break;
        case Layout::markdown:
          out += head + "\n\n   $$" + text.formula + "$$\n   $$" + text.with_values + " " + text.result + "$$\n\n   *" +
                 text.source + "*\n";
          if (!text.warning.empty()) out += "\n   **Take care:** " + text.warning + "\n";
          out += "\n";
          break;
        case Layout::latex:
          out += "% " + head + "; " + text.source + "\n\\begin{align*}\n" + text.formula + " \\\\\n" +
                 text.with_values + " \\\\\n" + text.result + "\n" + "\\end{align*}\n";
          if (!text.warning.empty()) out += "\\emph{Take care: " + text.warning + "}\n";
          break;
      }
    }
  return out;
}

}  // namespace tauten
