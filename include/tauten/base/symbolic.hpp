// The symbolic scalar: `eval` called with it yields the formula itself as an expression.
#pragma once

#include <memory>
#include <utility>

#include "tauten/base/math.hpp"

namespace tauten::TAUTEN_ABI {

/// An expression in the inputs of a formula. Nodes are shared and never change.
class Symbolic {
 public:
  enum class Kind : unsigned char { number, constant, input, negate, add, subtract, multiply, divide, power, call };

  struct Node {
    Kind kind;
    double number = 0;                        ///< of a number; the exponent of a power
    const NamedConstant* constant = nullptr;  ///< of a named constant
    int input = 0;                            ///< of an input: its place in the formula's list
    const char* function = "";                ///< of a call: "sqrt", "tan", ...
    std::shared_ptr<const Node> left = {};    ///< the operand of a call or negation
    std::shared_ptr<const Node> right = {};
  };
  using Pointer = std::shared_ptr<const Node>;

  Symbolic() : Symbolic(0) {}
  Symbolic(double x)
      : node_(make({.kind = Kind::number, .number = x})) {
  }  // NOLINT(google-explicit-constructor): numbers are constants
  Symbolic(int x) : Symbolic(static_cast<double>(x)) {}  // NOLINT(google-explicit-constructor)

  static Symbolic of_input(int place) { return Symbolic(make({.kind = Kind::input, .input = place})); }
  static Symbolic of_constant(const NamedConstant& constant) {
    return Symbolic(make({.kind = Kind::constant, .constant = &constant}));
  }

  const Node& node() const noexcept { return *node_; }
  explicit Symbolic(Pointer node) noexcept : node_(std::move(node)) {}

  // What adds or multiplies nothing is left out, numbers are worked out, and to multiply by a reciprocal is to divide, so
  // that a formula built on a wider one prints as its source does.
  friend Symbolic operator-(const Symbolic& a) {
    if (a.is_number()) return -a.node_->number;
    return Symbolic(make({.kind = Kind::negate, .left = a.node_}));
  }
  friend Symbolic operator+(const Symbolic& a, const Symbolic& b) {
    if (a.is_number() && b.is_number()) return a.node_->number + b.node_->number;
    return a.is(0) ? b : b.is(0) ? a : binary(Kind::add, a, b);
  }
  friend Symbolic operator-(const Symbolic& a, const Symbolic& b) {
    if (a.is_number() && b.is_number()) return a.node_->number - b.node_->number;
    return b.is(0) ? a : binary(Kind::subtract, a, b);
  }
  friend Symbolic operator*(const Symbolic& a, const Symbolic& b) {
    if (a.is_number() && b.is_number()) return a.node_->number * b.node_->number;
    if (a.is(1) || b.is(1)) return a.is(1) ? b : a;
    if (b.is_reciprocal()) return a / Symbolic(b.node_->right);
    return binary(Kind::multiply, a, b);
  }
  friend Symbolic operator/(const Symbolic& a, const Symbolic& b) {
    if (a.is_number() && b.is_number()) return a.node_->number / b.node_->number;
    return b.is(1) ? a : binary(Kind::divide, a, b);
  }

  friend Symbolic square(const Symbolic& a) { return power(a, 2); }
  friend Symbolic cube(const Symbolic& a) { return power(a, 3); }
  friend Symbolic sqrt(const Symbolic& a) { return call("sqrt", a); }
  friend Symbolic sin(const Symbolic& a) { return call("sin", a); }
  friend Symbolic cos(const Symbolic& a) { return call("cos", a); }
  friend Symbolic tan(const Symbolic& a) { return call("tan", a); }
  friend Symbolic atan(const Symbolic& a) { return call("atan", a); }
  friend Symbolic exp(const Symbolic& a) { return call("exp", a); }
  friend Symbolic log(const Symbolic& a) { return call("log", a); }
  friend Symbolic log1p(const Symbolic& a) { return log(1 + a); }
  friend Symbolic pow(const Symbolic& a, double exponent) { return power(a, exponent); }

 private:
  static Pointer make(Node node) { return std::make_shared<const Node>(std::move(node)); }
  static Symbolic binary(Kind kind, const Symbolic& a, const Symbolic& b) {
    return Symbolic(make({.kind = kind, .left = a.node_, .right = b.node_}));
  }
  static Symbolic power(const Symbolic& a, double exponent) {
    return Symbolic(make({.kind = Kind::power, .number = exponent, .left = a.node_}));
  }
  static Symbolic call(const char* function, const Symbolic& a) {
    return Symbolic(make({.kind = Kind::call, .function = function, .left = a.node_}));
  }
  bool is_number() const noexcept { return node_->kind == Kind::number; }
  bool is_reciprocal() const noexcept { return node_->kind == Kind::divide && Symbolic(node_->left).is(1); }
  bool is(double x) const noexcept { return node_->kind == Kind::number && node_->number == x; }

  Pointer node_;
};

template <>
struct Constant<Symbolic> {
  static Symbolic on(const NamedConstant& constant) { return Symbolic::of_constant(constant); }
};

}  // namespace tauten::TAUTEN_ABI
