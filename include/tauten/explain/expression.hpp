// A formula as text: plain, LaTeX, or the input of a computer-algebra system, with symbols or with values.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "tauten/base/registry.hpp"
#include "tauten/explain/number_text.hpp"

namespace tauten {

/// How an expression is written.
enum class Notation : unsigned char {
  text,    ///< F_M*P/(2 pi), for people in a terminal
  latex,   ///< for a page
  algebra  ///< Python syntax with argument names, for a computer-algebra system
};

namespace detail {

inline bool is_greek(std::string_view word) {
  for (const char* greek : {"alpha", "beta", "gamma", "delta", "epsilon", "zeta", "eta", "theta", "kappa", "lambda",
                            "mu",    "nu",   "xi",    "rho",   "sigma",   "tau",  "phi", "chi",   "psi",   "omega"})
    if (word == greek) return true;
  return false;
}

}  // namespace detail

/// \return a plain symbol in LaTeX: mu_G becomes \mu_{G}, R_p0.2 becomes R_{p0.2}
inline std::string latex_symbol(std::string_view symbol) {
  if (const auto slash = symbol.find('/'); slash != std::string_view::npos)
    return latex_symbol(symbol.substr(0, slash)) + "/" + latex_symbol(symbol.substr(slash + 1));
  const auto underscore = symbol.find('_');
  std::string base(symbol.substr(0, underscore));
  if (detail::is_greek(base)) base = "\\" + base;
  if (underscore == std::string_view::npos) return base;
  std::string index(symbol.substr(underscore + 1));
  return base + "_{" + (index.size() > 1 ? "\\mathrm{" + index + "}" : index) + "}";
}

/// \return a printed number in LaTeX: 1.5e-05 becomes 1.5 \cdot 10^{-5}
inline std::string latex_number(const std::string& text) {
  const auto e = text.find('e');
  if (e == std::string::npos) return text == "inf" ? "\\infty" : text == "-inf" ? "-\\infty" : text;
  return text.substr(0, e) + " \\cdot 10^{" + std::to_string(std::stoi(text.substr(e + 1))) + "}";
}

/// Writes expressions of one formula.
class ExpressionWriter {
 public:
  /// \param inputs    the formula's inputs
  /// \param notation  how to write
  /// \param values    SI values to put in place of the symbols or names; empty for symbols. They are written in the
  ///                  units a workshop reads, and as plain SI numbers in algebra
  ExpressionWriter(std::span<const Arg> inputs, Notation notation, std::span<const double> values = {})
      : inputs_(inputs), values_(values), notation_(notation) {}

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

  std::string bracket(const std::string& inner) const {
    return notation_ == Notation::latex ? "\\left(" + inner + "\\right)" : "(" + inner + ")";
  }

  std::string write(const Node& node, int outer) const {
    const bool latex_fraction = notation_ == Notation::latex && node.kind == Kind::divide && outer < 3;
    const std::string inner = bare(node);
    return binding(node.kind) < outer && !latex_fraction ? bracket(inner) : inner;
  }

  /// What follows a sign: in brackets too if it begins with a minus of its own, be it of a number or of a value.
  std::string after_sign(const Node& node, int outer) const {
    const std::string text = write(node, outer);
    return text.starts_with('-') ? bracket(text) : text;
  }

  /// What stands below a fraction bar or a power: a value keeps its unit, 48 N.m/(1.5 mm), (1.5 mm)^2.
  std::string as_one(const Node& node, int outer) const {
    const std::string text = write(node, outer);
    const bool value = node.kind == Kind::input && !values_.empty() && *describe(dimension(node)).shop_unit != '\0';
    return text.starts_with('-') || value ? bracket(text) : text;
  }

  Dim dimension(const Node& node) const { return inputs_[static_cast<std::size_t>(node.input)].dimension; }

  std::string bare(const Node& node) const {
    switch (node.kind) {
      case Kind::number: return number(node.number, 6);
      case Kind::constant: return notation_ == Notation::latex ? node.constant->latex : node.constant->text;
      case Kind::input: return input(static_cast<std::size_t>(node.input));
      case Kind::negate: return "-" + after_sign(*node.left, 3);
      case Kind::add: return write(*node.left, 1) + " + " + after_sign(*node.right, 1);
      case Kind::subtract: return write(*node.left, 1) + " - " + after_sign(*node.right, 2);
      case Kind::multiply: return product(node);
      case Kind::divide:
        if (notation_ == Notation::latex) return "\\frac{" + write(*node.left, 0) + "}{" + write(*node.right, 0) + "}";
        return write(*node.left, 2) + "/" + as_one(*node.right, 3);
      case Kind::power: return power(node);
      case Kind::call: return call(node);
    }
    return "";
  }

  std::string product(const Node& node) const {
    const std::string right = after_sign(*node.right, 2);
    if (notation_ != Notation::latex) return write(*node.left, 2) + "*" + right;
    // A thin space is a product only between symbols: 2\,2 would read as 22.
    const bool symbols = values_.empty() && right.find_first_of("0123456789") != 0;
    return write(*node.left, 2) + (symbols ? "\\," : " \\cdot ") + right;
  }

  std::string power(const Node& node) const {
    std::string base = as_one(*node.left, 4);
    // LaTeX allows no second superscript: (\tan 30^\circ)^2.
    const bool leaf = node.left->left == nullptr;
    if (notation_ == Notation::latex && leaf && base.find('^') != std::string::npos && !base.starts_with("\\left("))
      base = bracket(base);
    const std::string exponent = number(node.number, 6);
    if (notation_ == Notation::latex) return base + "^{" + exponent + "}";
    return base + (notation_ == Notation::text ? "^" : "**") + (node.number < 0 ? bracket(exponent) : exponent);
  }

  std::string call(const Node& node) const {
    const std::string argument = write(*node.left, 0);
    if (notation_ != Notation::latex) return std::string(node.function) + "(" + argument + ")";
    if (std::string_view(node.function) == "sqrt") return "\\sqrt{" + argument + "}";
    const std::string name = std::string_view(node.function) == "atan"  ? "arctan"
                             : std::string_view(node.function) == "log" ? "ln"
                                                                        : node.function;
    return "\\" + name + "\\left(" + argument + "\\right)";
  }

  std::string input(std::size_t place) const {
    const Arg& arg = inputs_[place];
    if (notation_ == Notation::algebra) return values_.empty() ? arg.name : exact_text(values_[place]);
    if (values_.empty()) return notation_ == Notation::latex ? latex_symbol(arg.symbol) : arg.symbol;
    const DimensionText unit = describe(arg.dimension);
    const std::string value = number(values_[place] / unit.shop_unit_in_si, 4);
    if (*unit.shop_unit == '\0') return value;
    return notation_ == Notation::latex ? value + "\\," + unit.latex_unit : value + " " + unit.shop_unit;
  }

  std::string number(double x, int digits) const {
    if (notation_ == Notation::algebra) return exact_text(x);
    const std::string text = number_text(x, digits);
    return notation_ == Notation::latex ? latex_number(text) : text;
  }

  std::span<const Arg> inputs_;
  std::span<const double> values_;
  Notation notation_;
};

/// \return the right-hand side of a formula with its symbols
inline std::string expression_text(const Entry& entry, Notation notation) {
  return ExpressionWriter(entry.inputs, notation)(entry.expression());
}

}  // namespace tauten
