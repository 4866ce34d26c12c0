// The registry in little code, for the network. It offers what the header of this name in include/ offers and gives the
// same numbers, but nothing is compiled for each formula: its `eval` is called once, while the module is built, on a
// scalar that notes what is done, and what it noted is a program of some 20 bytes. One loop works the programs through,
// on numbers, dual numbers or symbols.
#pragma once

#include <array>
#include <cstddef>
#include <cstring>
#include <span>
#include <type_traits>
#include <vector>

#include "tauten/base/formula.hpp"
#include "tauten/base/symbolic.hpp"

namespace tauten {

namespace detail {

inline constexpr int most_inputs = 12;

enum class Note : unsigned char {
  // The numbers up to here mean the input of that place.
  end = most_inputs,
  number,        ///< a whole number follows, in a byte
  exact_number,  ///< the bytes of a double follow
  constant,      ///< its place in `named_constants` follows
  negate,
  add,
  subtract,
  multiply,
  divide,
  smaller,  ///< of requirements alone, which are worked on numbers
  square,
  cube,
  power,  ///< the bytes of the exponent follow
  sqrt,
  sin,
  cos,
  tan,
  atan,
  exp,
  log,
  log1p
};

inline constexpr const NamedConstant* named_constants[] = {&pi_constant,    &cos30_constant, &tan30_constant,
                                                           &cos15_constant, &tan15_constant, &millimetre_constant};

/// The scalar that notes what is done with it: operands first, as for a stack.
class Recorded {
 public:
  constexpr Recorded(double x) {  // NOLINT(google-explicit-constructor): numbers are constants
    const int whole = x > -128 && x < 128 ? static_cast<int>(x) : 0;
    if (static_cast<double>(whole) == x && (whole != 0 || __builtin_bit_cast(std::uint64_t, x) == 0)) {
      note(Note::number);
      steps_.push_back(static_cast<unsigned char>(whole));
    } else {
      note(Note::exact_number);
      note_bytes(x);
    }
  }
  static constexpr Recorded of_input(int place) { return Recorded(static_cast<Note>(place)); }
  static constexpr Recorded of_constant(const NamedConstant& constant) {
    Recorded r(Note::constant);
    for (unsigned char i = 0; i < std::size(named_constants); ++i)
      if (named_constants[i] == &constant) r.steps_.push_back(i);
    return r;
  }

  friend constexpr Recorded operator-(const Recorded& a) { return a.then(Note::negate); }
  friend constexpr Recorded operator+(const Recorded& a, const Recorded& b) { return a.with(b, Note::add); }
  friend constexpr Recorded operator-(const Recorded& a, const Recorded& b) { return a.with(b, Note::subtract); }
  friend constexpr Recorded operator*(const Recorded& a, const Recorded& b) { return a.with(b, Note::multiply); }
  friend constexpr Recorded operator/(const Recorded& a, const Recorded& b) { return a.with(b, Note::divide); }
  friend constexpr Recorded smaller(const Recorded& a, const Recorded& b) { return a.with(b, Note::smaller); }
  friend constexpr Recorded square(const Recorded& a) { return a.then(Note::square); }
  friend constexpr Recorded cube(const Recorded& a) { return a.then(Note::cube); }
  friend constexpr Recorded sqrt(const Recorded& a) { return a.then(Note::sqrt); }
  friend constexpr Recorded sin(const Recorded& a) { return a.then(Note::sin); }
  friend constexpr Recorded cos(const Recorded& a) { return a.then(Note::cos); }
  friend constexpr Recorded tan(const Recorded& a) { return a.then(Note::tan); }
  friend constexpr Recorded atan(const Recorded& a) { return a.then(Note::atan); }
  friend constexpr Recorded exp(const Recorded& a) { return a.then(Note::exp); }
  friend constexpr Recorded log(const Recorded& a) { return a.then(Note::log); }
  friend constexpr Recorded log1p(const Recorded& a) { return a.then(Note::log1p); }
  friend constexpr Recorded pow(const Recorded& a, double exponent) {
    Recorded r = a.then(Note::power);
    r.note_bytes(exponent);
    return r;
  }

  constexpr const std::vector<unsigned char>& steps() const { return steps_; }

 private:
  constexpr explicit Recorded(Note step) { note(step); }
  constexpr void note(Note step) { steps_.push_back(static_cast<unsigned char>(step)); }
  constexpr void note_bytes(double x) {
    for (const unsigned char byte : __builtin_bit_cast(std::array<unsigned char, sizeof x>, x)) steps_.push_back(byte);
  }
  constexpr Recorded then(Note step) const {
    Recorded r = *this;
    r.note(step);
    return r;
  }
  constexpr Recorded with(const Recorded& b, Note step) const {
    Recorded r = *this;
    r.steps_.insert(r.steps_.end(), b.steps_.begin(), b.steps_.end());
    r.note(step);
    return r;
  }

  std::vector<unsigned char> steps_;
};

/// What a call of `Call` notes, as bytes that stand in the module.
template <class Call>
constexpr auto program_of(Call) {
  std::array<unsigned char, Call{}().steps().size() + 1> program{};
  std::size_t place = 0;
  const Recorded noted = Call{}();
  for (const unsigned char byte : noted.steps()) program[place++] = byte;
  program[place] = static_cast<unsigned char>(Note::end);
  return program;
}

/// The arithmetic of a formula, and its requirement if it has one.
template <class F, std::size_t... I>
struct Programs {
  static_assert(static_cast<int>(sizeof...(I)) <= most_inputs);
  static constexpr bool has_requirement = requires(double x) { F::requirement((static_cast<void>(I), x)...); };
  static constexpr auto value = program_of([] { return F::eval(Recorded::of_input(static_cast<int>(I))...); });
  static constexpr auto requirement = program_of([] {
    if constexpr (has_requirement)
      return F::requirement(Recorded::of_input(static_cast<int>(I))...);
    else
      return Recorded(1);
  });
};

inline double read_double(const unsigned char*& step) noexcept {
  double x;
  std::memcpy(&x, step, sizeof x);
  step += sizeof x;
  return x;
}

/// Works a program through; `x` are the inputs.
template <class Real>
[[gnu::noinline]] Real run(const unsigned char* step, const Real* x) {
  Real stack[16];
  Real* top = stack - 1;
  for (;;) {
    const auto code = static_cast<Note>(*step++);
    if (code < Note::end) {
      *++top = x[static_cast<int>(code)];
      continue;
    }
    // What takes two operands leaves its result in the place of the left one.
    if (code >= Note::add && code <= Note::smaller) --top;
    switch (code) {
      case Note::number: *++top = Real(static_cast<double>(static_cast<signed char>(*step++))); break;
      case Note::exact_number: *++top = Real(read_double(step)); break;
      case Note::constant: *++top = Constant<Real>::on(*named_constants[*step++]); break;
      case Note::negate: *top = -*top; break;
      case Note::add: *top = *top + top[1]; break;
      case Note::subtract: *top = *top - top[1]; break;
      case Note::multiply: *top = *top * top[1]; break;
      case Note::divide: *top = *top / top[1]; break;
      case Note::smaller:
        if constexpr (std::is_same_v<Real, double>) *top = smaller(*top, top[1]);
        break;
      case Note::square: *top = square(*top); break;
      case Note::cube: *top = cube(*top); break;
      case Note::power: *top = pow(*top, read_double(step)); break;
      case Note::sqrt: *top = sqrt(*top); break;
      case Note::sin: *top = sin(*top); break;
      case Note::cos: *top = cos(*top); break;
      case Note::tan: *top = tan(*top); break;
      case Note::atan: *top = atan(*top); break;
      case Note::exp: *top = exp(*top); break;
      case Note::log: *top = log(*top); break;
      case Note::log1p: *top = log1p(*top); break;
      default: return *top;
    }
  }
}

}  // namespace detail

template <>
struct Constant<detail::Recorded> {
  static constexpr detail::Recorded on(const NamedConstant& constant) {
    return detail::Recorded::of_constant(constant);
  }
};

/// A formula without its type, as in the header that this one stands for.
struct Entry {
  const char* name;
  const char* summary;
  std::span<const Arg> inputs;
  const Arg& output;
  std::span<const Source> sources;
  const unsigned char* program;
  const unsigned char* requirement;  ///< a program too

  int arity() const noexcept { return static_cast<int>(inputs.size()); }

  double value(const double* x) const noexcept {
    double found;
    judge(x, found);
    return found;
  }
  Check check(const double* x) const noexcept {
    double found;
    return judge(x, found);
  }
  double gradient(const double* x, double* slopes) const noexcept;
  Symbolic expression() const;
  bool rows_double(char* const* columns, const std::ptrdiff_t* steps, std::size_t rows) const noexcept {
    return each_row<double>(columns, steps, rows);
  }
  /// Rows of float are worked out in double and rounded.
  bool rows_float(char* const* columns, const std::ptrdiff_t* steps, std::size_t rows) const noexcept {
    return each_row<float>(columns, steps, rows);
  }

 private:
  Check judge(const double* x, double& found) const noexcept;
  template <class Real>
  bool each_row(char* const* columns, const std::ptrdiff_t* steps, std::size_t rows) const noexcept;
};

/// \param found  the value; NaN outside the domain
[[gnu::noinline]] inline Check Entry::judge(const double* x, double& found) const noexcept {
  found = detail::nan;
  for (int i = 0; i < arity(); ++i)
    if (!inputs[static_cast<std::size_t>(i)].domain.contains(x[i])) return {Status::outside_domain, i};
  const double result = detail::run(program, x);
  if (!output.domain.contains(result) || !(detail::run(requirement, x) > 0)) return {Status::impossible, -1};
  found = result;
  for (int i = 0; i < arity(); ++i)
    if (!inputs[static_cast<std::size_t>(i)].validity.contains(x[i])) return {Status::unusual, i};
  return {};
}

/// One derivative at a time.
[[gnu::noinline]] inline double Entry::gradient(const double* x, double* slopes) const noexcept {
  using Slope = Dual<1>;
  const double result = value(x);
  Slope variables[detail::most_inputs];
  for (int i = 0; i < arity(); ++i) variables[i] = Slope(x[i]);
  for (int i = 0; i < arity(); ++i) {
    variables[i] = Slope::variable(x[i], 0);
    slopes[i] = result == result ? detail::run(program, variables).slope[0] : detail::nan;
    variables[i] = Slope(x[i]);
  }
  return result;
}

[[gnu::noinline]] inline Symbolic Entry::expression() const {
  Symbolic symbols[detail::most_inputs];
  for (int i = 0; i < arity(); ++i) symbols[i] = Symbolic::of_input(i);
  return detail::run(program, symbols);
}

template <class Real>
[[gnu::noinline]] bool Entry::each_row(char* const* columns, const std::ptrdiff_t* steps,
                                       std::size_t rows) const noexcept {
  double x[detail::most_inputs];
  bool in_order = true;
  for (std::size_t row = 0; row < rows; ++row) {
    const auto at = [&](int i) {
      return reinterpret_cast<Real*>(columns[i] + static_cast<std::ptrdiff_t>(row) * steps[i]);
    };
    for (int i = 0; i < arity(); ++i) x[i] = static_cast<double>(*at(i));
    double found;
    in_order &= judge(x, found).status == Status::ok;
    *at(arity()) = static_cast<Real>(found);
  }
  return in_order;
}

/// The entry of a formula: `entry_of(preload_from_torque)`.
template <class F, std::size_t... I>
constexpr Entry entry_of(Formula<F, std::index_sequence<I...>>) noexcept {
  using P = detail::Programs<F, I...>;
  return {F::name, F::summary, F::inputs, F::output, F::sources, P::value.data(), P::requirement.data()};
}

}  // namespace tauten
