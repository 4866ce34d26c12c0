// A formula as text: plain, LaTeX, MathML, or the input of a computer-algebra system, with symbols or with values.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "tauten/base/registry.hpp"
#include "tauten/explain/markup.hpp"
#include "tauten/explain/style.hpp"

namespace tauten::TAUTEN_ABI {

/// How an expression is written.
enum class Notation : unsigned char {
  text,     ///< F_M*P/(2 pi), for people in a terminal
  latex,    ///< for a page
  algebra,  ///< Python syntax with argument names, for a computer-algebra system
  mathml    ///< for a browser, without a script
};

/// \return a symbol in a notation for people
inline std::string symbol_text(const char* symbol, Notation notation) {
  return notation == Notation::latex    ? latex_symbol(symbol)
         : notation == Notation::mathml ? mathml_symbol(symbol)
                                        : std::string(symbol);
}

/// \return a number with its unit in a notation for people
inline std::string shown_in(const Shown& shown, Notation notation) {
  if (notation == Notation::latex)
    return latex_number(shown.number) + (shown.spaced() ? "\\," : "") +
           (shown.unit.empty() ? "" : latex_unit(shown.unit));
  if (notation != Notation::mathml) return shown.text();
  const std::string unit = shown.unit.empty() ? ""
                                              : std::string("<mtext>") + (shown.spaced() ? "&#x2009;" : "") +
                                                    html_unit(shown.unit) + "</mtext>";
  return mathml_number(shown.number) + unit;
}

/// Writes expressions of one formula.
class ExpressionWriter {
 public:
  /// \param inputs    the formula's inputs
  /// \param notation  how to write
  /// \param values    SI values to put instead of the symbols or names; empty for symbols. They are written in the
  ///                  units of the style, and as plain SI numbers in algebra
  /// \param style     units and digits of the values
  ExpressionWriter(std::span<const Arg> inputs, Notation notation, std::span<const double> values = {},
                   const Style& style = {})
      : inputs_(inputs), values_(values), notation_(notation), style_(style) {}

  std::string operator()(const Symbolic& expression) const { return write(expression.node(), 0); }

 private:
  using Node = Symbolic::Node;
  using Kind = Symbolic::Kind;

  static int binding(Kind kind) {
    switch (kind) {
      case Kind::add:
      case Kind::subtract: return 1;
      case Kind::negate:
      case Kind::multiply:
      case Kind::divide: return 2;
      case Kind::power: return 3;
      default: return 4;
    }
  }

  bool latex() const { return notation_ == Notation::latex; }
  bool mathml() const { return notation_ == Notation::mathml; }

  static std::string row(const std::string& inner) { return "<mrow>" + inner + "</mrow>"; }

  std::string bracket(const std::string& inner) const {
    if (mathml()) return row("<mo>(</mo>" + inner + "<mo>)</mo>");
    return latex() ? "\\left(" + inner + "\\right)" : "(" + inner + ")";
  }

  std::string sign(char plus_or_minus) const {
    if (mathml()) return plus_or_minus == '+' ? "<mo>+</mo>" : minus;
    return {' ', plus_or_minus, ' '};
  }

  std::string write(const Node& node, int outer) const {
    const bool bar = (latex() || mathml()) && node.kind == Kind::divide && outer < 3;
    const std::string inner = bare(node);
    return binding(node.kind) < outer && !bar ? bracket(inner) : inner;
  }

  static bool is_signed(const std::string& text) { return text.starts_with('-') || text.starts_with(minus); }

  /// What follows a sign: in brackets too if it begins with a minus of its own, be it of a number or of a value.
  std::string after_sign(const Node& node, int outer) const {
    const std::string text = write(node, outer);
    return is_signed(text) ? bracket(text) : text;
  }

  /// What stands below a fraction bar or a power: a value keeps its unit, 48 N.m/(1.5 mm), (1.5 mm)^2.
  std::string as_one(const Node& node, int outer) const {
    const std::string text = write(node, outer);
    const bool value = node.kind == Kind::input && !values_.empty() && notation_ != Notation::algebra &&
                       !shown_input(static_cast<std::size_t>(node.input)).unit.empty();
    return is_signed(text) || value ? bracket(text) : text;
  }

  Shown shown_input(std::size_t place) const {
    const Arg& arg = inputs_[place];
    return shown(style_, values_[place], arg.name, arg.dimension);
  }

  std::string bare(const Node& node) const {
    switch (node.kind) {
      case Kind::number: return number(node.number, 6);
      case Kind::constant: return constant(*node.constant);
      case Kind::input: return input(static_cast<std::size_t>(node.input));
      case Kind::negate: return (mathml() ? minus : "-") + after_sign(*node.left, 3);
      case Kind::add: return write(*node.left, 1) + sign('+') + after_sign(*node.right, 1);
      case Kind::subtract: return write(*node.left, 1) + sign('-') + after_sign(*node.right, 2);
      case Kind::multiply: return product(node);
      case Kind::divide: return fraction(node);
      case Kind::power: return power(node);
      case Kind::call: return call(node);
    }
    return "";
  }

  std::string constant(const NamedConstant& c) const {
    if (notation_ == Notation::algebra && c.algebra != nullptr) return c.algebra;
    return latex() ? c.latex : mathml() ? c.mathml : c.text;
  }

  std::string fraction(const Node& node) const {
    if (latex()) return "\\frac{" + write(*node.left, 0) + "}{" + write(*node.right, 0) + "}";
    if (mathml())
      return "<mfrac displaystyle=\"true\">" + row(write(*node.left, 0)) + row(write(*node.right, 0)) + "</mfrac>";
    return write(*node.left, 2) + "/" + as_one(*node.right, 3);
  }

  std::string product(const Node& node) const {
    const std::string left = write(*node.left, 2), right = after_sign(*node.right, 2);
    // A thin space is a product only between symbols: 2\,2 would read as 22.
    const bool symbols = values_.empty() && right.find_first_of("0123456789") != 0 && !right.starts_with("<mn>");
    if (latex()) return left + (symbols ? "\\," : " \\cdot ") + right;
    if (mathml()) return left + (symbols ? "<mo rspace=\"0.17em\">&#x2062;</mo>" : "<mo>&#x22C5;</mo>") + right;
    return left + "*" + right;
  }

  std::string power(const Node& node) const {
    std::string base = as_one(*node.left, 4);
    // LaTeX allows no second superscript: (\tan 30^\circ)^2. On a page 30 degrees would be squared.
    const bool leaf = node.left->left == nullptr;
    const bool raised = base.find('^') != std::string::npos || base.find("<msup>") != std::string::npos ||
                        (node.left->kind == Kind::constant && base.find("<mn>") != std::string::npos);
    if ((latex() || mathml()) && leaf && raised && !base.starts_with(bracket("").substr(0, 6))) base = bracket(base);
    const std::string exponent = number(node.number, 6);
    if (latex()) return base + "^{" + exponent + "}";
    if (mathml()) return "<msup>" + row(base) + row(exponent) + "</msup>";
    return base + (notation_ == Notation::text ? "^" : "**") + (node.number < 0 ? bracket(exponent) : exponent);
  }

  std::string call(const Node& node) const {
    const std::string argument = write(*node.left, 0);
    const std::string_view function = node.function;
    if (function == "sqrt" && latex()) return "\\sqrt{" + argument + "}";
    if (function == "sqrt" && mathml()) return "<msqrt>" + row(argument) + "</msqrt>";
    if (!latex() && !mathml()) return std::string(function) + "(" + argument + ")";
    const std::string name(function == "atan" ? "arctan" : function == "log" ? "ln" : function);
    return (latex() ? "\\" + name : "<mi>" + name + "</mi><mo>&#x2061;</mo>") + bracket(argument);
  }

  std::string input(std::size_t place) const {
    const Arg& arg = inputs_[place];
    if (notation_ == Notation::algebra) return values_.empty() ? arg.name : exact_text(values_[place]);
    if (values_.empty()) return symbol_text(arg.symbol, notation_);
    return shown_in(shown_input(place), notation_);
  }

  std::string number(double x, int digits) const {
    if (notation_ == Notation::algebra) return exact_text(x);
    const std::string text = number_text(x, digits);
    return latex() ? latex_number(text) : mathml() ? mathml_number(text) : text;
  }

  static constexpr const char* minus = "<mo>&#x2212;</mo>";

  std::span<const Arg> inputs_;
  std::span<const double> values_;
  Notation notation_;
  Style style_;
};

/// \return the right-hand side of a formula with its symbols
inline std::string expression_text(const Entry& entry, Notation notation) {
  return ExpressionWriter(entry.inputs, notation)(entry.expression());
}

}  // namespace tauten::TAUTEN_ABI
