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
  for (const char* greek :
       {"alpha", "beta", "delta", "epsilon", "eta", "mu", "nu", "phi", "rho", "sigma", "tau", "theta"})
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

/// Writes expressions of one formula.
class ExpressionWriter {
 public:
  /// \param inputs    the formula's inputs
  /// \param notation  how to write
  /// \param values    SI values to put in place of the symbols; empty for symbols
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

  std::string bare(const Node& node) const {
    switch (node.kind) {
      case Kind::number:
        return notation_ == Notation::algebra ? number_text(node.number, 17) : number_text(node.number, 6);
      case Kind::constant: return notation_ == Notation::latex ? node.constant->latex : node.constant->text;
      case Kind::input: return input(static_cast<std::size_t>(node.input));
      case Kind::negate: return "-" + write(*node.left, 3);
      case Kind::add: return write(*node.left, 1) + " + " + write(*node.right, 1);
      case Kind::subtract: return write(*node.left, 1) + " - " + write(*node.right, 2);
      case Kind::multiply: return product(node);
      case Kind::divide:
        if (notation_ == Notation::latex) return "\\frac{" + write(*node.left, 0) + "}{" + write(*node.right, 0) + "}";
        return write(*node.left, 2) + "/" + write(*node.right, 3);
      case Kind::power: return power(node);
      case Kind::call: return call(node);
    }
    return "";
  }

  std::string product(const Node& node) const {
    const char* sign = notation_ != Notation::latex ? "*" : values_.empty() ? "\\," : " \\cdot ";
    return write(*node.left, 2) + sign + write(*node.right, 2);
  }

  std::string power(const Node& node) const {
    const bool value_with_unit = node.left->kind == Kind::input && !values_.empty();
    const std::string bare_base = write(*node.left, 4);
    const std::string base = value_with_unit ? bracket(bare_base) : bare_base;
    const std::string exponent = number_text(node.number);
    if (notation_ == Notation::latex) return base + "^{" + exponent + "}";
    return base + (notation_ == Notation::text ? "^" : "**") + exponent;
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
    if (notation_ == Notation::algebra) return arg.name;
    if (values_.empty()) return notation_ == Notation::latex ? latex_symbol(arg.symbol) : arg.symbol;
    const DimensionText unit = describe(arg.dimension);
    const std::string number = number_text(values_[place] / unit.shop_unit_in_si);
    if (*unit.shop_unit == '\0') return number;
    return notation_ == Notation::latex ? number + "\\," + unit.latex_unit : number + " " + unit.shop_unit;
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
