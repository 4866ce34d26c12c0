#include <doctest/doctest.h>

#include <cctype>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <string>
#include <vector>

#include "sample.hpp"
#include "tauten/explain/expression.hpp"

#include "near.hpp"

namespace expression_test {

using namespace tauten;

namespace {

// A reader of the printed form, written on its own: sums, products, powers, calls, with the typical precedence
// (a minus sign binds less than a power, more than a product).
class Reader {
 public:
  Reader(const std::string& text, std::span<const Arg> inputs, const std::vector<double>& x)
      : at_(text.c_str()), inputs_(inputs), x_(x) {}
  double read() {
    const double value = sum();
    return *at_ == '\0' ? value : std::nan("");  // something is left over: not an expression
  }

 private:
  void blanks() {
    while (*at_ == ' ') ++at_;
  }
  bool take(const char* token) {
    blanks();
    const std::size_t length = std::strlen(token);
    if (std::strncmp(at_, token, length) != 0) return false;
    at_ += length;
    return true;
  }
  double sum() {
    double value = product();
    for (;;) {
      if (take("+"))
        value += product();
      else if (take("-"))
        value -= product();
      else
        return value;
    }
  }
  double product() {
    double value = signed_one();
    for (;;) {
      blanks();
      if (at_[0] == '*' && at_[1] != '*') {
        ++at_;
        value *= signed_one();
      } else if (take("/")) {
        value /= signed_one();
      } else {
        return value;
      }
    }
  }
  double signed_one() { return take("-") ? -signed_one() : raised(); }
  double raised() {
    const double base = atom();
    return take("**") ? std::pow(base, signed_one()) : base;
  }
  double atom() {
    blanks();
    if (take("(")) {
      const double value = sum();
      return take(")") ? value : std::nan("");
    }
    if ((*at_ >= '0' && *at_ <= '9') || *at_ == '.') {
      char* end = nullptr;
      const double value = std::strtod(at_, &end);
      at_ = end;
      return value;
    }
    std::string word;
    while (std::isalnum(static_cast<unsigned char>(*at_)) != 0 || *at_ == '_') word += *at_++;
    if (word == "pi") return std::acos(-1.0);
    if (take("(")) {
      const double a = sum();
      if (!take(")")) return std::nan("");
      if (word == "sqrt") return std::sqrt(a);
      if (word == "sin") return std::sin(a);
      if (word == "cos") return std::cos(a);
      if (word == "tan") return std::tan(a);
      if (word == "atan") return std::atan(a);
      if (word == "asin") return std::asin(a);
      if (word == "acos") return std::acos(a);
      if (word == "exp") return std::exp(a);
      if (word == "log") return std::log(a);
      return std::nan("");
    }
    for (std::size_t i = 0; i < inputs_.size(); ++i)
      if (word == inputs_[i].name) return x_[i];
    return std::nan("");
  }

  const char* at_;
  std::span<const Arg> inputs_;
  const std::vector<double>& x_;
};

constexpr Arg letters[] = {{"a", "a", Dim::length, any_sign},
                           {"b", "b", Dim::length, any_sign},
                           {"c", "mu_G", Dim::number, any_sign},
                           {"d", "R_p0.2", Dim::compliance, any_sign}};
const Symbolic a = Symbolic::of_input(0);
const Symbolic b = Symbolic::of_input(1);
const Symbolic c = Symbolic::of_input(2);
const Symbolic d = Symbolic::of_input(3);

std::string text(const Symbolic& s) { return ExpressionWriter(letters, Notation::text)(s); }
std::string latex(const Symbolic& s) { return ExpressionWriter(letters, Notation::latex)(s); }
std::string algebra(const Symbolic& s) { return ExpressionWriter(letters, Notation::algebra)(s); }
std::string with_values(const Symbolic& s, const std::vector<double>& x, Notation notation = Notation::text) {
  return ExpressionWriter(letters, notation, x)(s);
}

std::string printed(const char* formula, Notation notation) {
  return expression_text(*shared::formula_named(formula), notation);
}

}  // namespace

TEST_CASE("brackets stand where they are needed, and nowhere else") {
  CHECK(text(a / (b * c)) == "a/(b*mu_G)");
  CHECK(text(a / (b / c)) == "a/(b/mu_G)");
  CHECK(text(a / b / c) == "a/b/mu_G");
  CHECK(text(a * b / c) == "a*b/mu_G");
  CHECK(text(a * (b / c)) == "a*b/mu_G");
  CHECK(text(a - (b - c)) == "a - (b - mu_G)");
  CHECK(text(a - (b + c)) == "a - (b + mu_G)");
  CHECK(text(a - b - c) == "a - b - mu_G");
  CHECK(text(a + (b - c)) == "a + b - mu_G");
  CHECK(text((a + b) * c) == "(a + b)*mu_G");
  CHECK(text(a * (b - c)) == "a*(b - mu_G)");
  CHECK(text(a - b * c) == "a - b*mu_G");
  CHECK(text(square(a + b)) == "(a + b)^2");
  CHECK(text(square(a * b)) == "(a*b)^2");
  CHECK(text(square(cube(a))) == "(a^3)^2");
  CHECK(text(cube(sqrt(a))) == "sqrt(a)^3");
  CHECK(text(a / square(b)) == "a/b^2");
  CHECK(text(sqrt(a * (b + c))) == "sqrt(a*(b + mu_G))");
}

TEST_CASE("powers that are no whole number") {
  CHECK(text(pow(a, 2.34)) == "a^2.34");
  CHECK(text(pow(a, -0.5)) == "a^(-0.5)");
  CHECK(algebra(pow(a / b, 1.0 / 3)) == "(a/b)**0.3333333333333333");
  CHECK(latex(pow(a, -0.5)) == "a^{-0.5}");
}

TEST_CASE("minus signs: of a term, of a number, under a power") {
  CHECK(text(-a) == "-a");
  CHECK(text(-(a + b)) == "-(a + b)");
  CHECK(text(-square(a)) == "-a^2");
  CHECK(text(square(-a)) == "(-a)^2");
  CHECK(text(a * (-b)) == "a*(-b)");
  CHECK(text(a / (-b)) == "a/(-b)");
  CHECK(text(a - (-b)) == "a - (-b)");
  CHECK(text(a + (-b)) == "a + (-b)");
  CHECK(text((-a) * b) == "-a*b");
  CHECK(text(-(-a)) == "-(-a)");
  CHECK(text(a * Symbolic(-0.5)) == "a*(-0.5)");
  CHECK(text(square(Symbolic(-2))) == "(-2)^2");
  CHECK(algebra(square(Symbolic(-2) * a)) == "(-2*a)**2");
}

TEST_CASE("numbers are worked out and what changes nothing is left out") {
  CHECK(text(Symbolic(2) * 3 * a) == "6*a");
  CHECK(text(1 * a / 1 + 0) == "a");
  CHECK(text(a - 0) == "a");
  CHECK(text(-Symbolic(2) + 5) == "3");
}

TEST_CASE("LaTeX: fractions, symbols, roots, no doubled superscript") {
  CHECK(latex(a / (b * c)) == "\\frac{a}{b\\,\\mu_{G}}");
  CHECK(latex(square(a / b)) == "\\left(\\frac{a}{b}\\right)^{2}");
  CHECK(latex(sqrt(a) * d) == "\\sqrt{a}\\,R_{\\mathrm{p0.2}}");
  CHECK(latex(atan(a / b)) == "\\arctan\\left(\\frac{a}{b}\\right)");
  CHECK(latex(log(c)) == "\\ln\\left(\\mu_{G}\\right)");
  CHECK(latex(log1p(c)) == "\\ln\\left(1 + \\mu_{G}\\right)");
  CHECK(latex(square(tan30<Symbolic>())) == "\\left(\\tan 30^\\circ\\right)^{2}");
  CHECK(latex(square(pi<Symbolic>())) == "\\pi^{2}");
  CHECK(latex(2 * (3 * a)) == "2 \\cdot 3\\,a");
  CHECK(latex(Symbolic(1.5e-5) * a) == "1.5 \\cdot 10^{-5}\\,a");
  for (const Entry& entry : shared::registry()) {
    const std::string written = expression_text(entry, Notation::latex);
    CAPTURE(written);
    // TeX refuses x^a^b: between a superscript and the next there is a closing bracket or an operator.
    CHECK(written.find("^\\circ^") == std::string::npos);
    CHECK(written.find("}^{2}^") == std::string::npos);
    int depth = 0;
    for (const char sign : written) {
      depth += sign == '{' ? 1 : sign == '}' ? -1 : 0;
      REQUIRE(depth >= 0);
    }
    CHECK(depth == 0);
  }
}

TEST_CASE("symbols in LaTeX") {
  CHECK(latex_symbol("F_M") == "F_{M}");
  CHECK(latex_symbol("mu_G") == "\\mu_{G}");
  CHECK(latex_symbol("D_Km") == "D_{\\mathrm{Km}}");
  CHECK(latex_symbol("alpha") == "\\alpha");
  CHECK(latex_symbol("omega") == "\\omega");
  CHECK(latex_symbol("Phi_n") == "\\Phi_{n}");
  CHECK(mathml_symbol("Phi_n").find("&#x3A6;") != std::string::npos);
  CHECK(latex_symbol("dL") == "\\mathrm{dL}");
  // A symbol of several letters is a Greek letter or a difference; any other would be set as a word.
  for (const Entry& entry : shared::registry()) {
    std::vector<std::string> symbols = {entry.output.symbol};
    for (const Arg& arg : entry.inputs) symbols.emplace_back(arg.symbol);
    for (const std::string& symbol : symbols) {
      const std::string base = symbol.substr(0, symbol.find('_'));
      CAPTURE(symbol);
      CHECK((base.size() == 1 || base[0] == 'd' || detail::find_greek(base) != nullptr));
    }
  }
  CHECK(latex_symbol("T_off/T_on") == "T_{\\mathrm{off}}/T_{\\mathrm{on}}");
}

TEST_CASE("formulas print as their sources do") {
  CHECK(printed("tightening_torque", Notation::text) == "F_M*(P/(2*pi) + mu_G*d_2/(2*cos(pi/6)) + mu_K*D_Km/2)");
  CHECK(printed("tightening_torque", Notation::latex) ==
        "F_{M}\\,\\left(\\frac{P}{2\\,\\pi} + \\mu_{G}\\,\\frac{d_{2}}{2\\,\\cos 30^\\circ} + "
        "\\mu_{K}\\,\\frac{D_{\\mathrm{Km}}}{2}\\right)");
  CHECK(printed("preload_from_nut_factor", Notation::algebra) == "torque/(nut_factor*diameter)");
  CHECK(printed("stress_area_unified", Notation::text) == "pi*(d - 0.9743*P)^2/4");
  CHECK(printed("pitch_diameter", Notation::text) == "d - 3*cos(pi/6)*P/4");
  // A fit to figures in mm: no bare 0.001 that nobody could read as a length.
  CHECK(printed("ring_test_torque", Notation::text) == "0.2658*(s/(1 mm))^2.34");
  CHECK(printed("ring_test_torque", Notation::latex) == "0.2658\\,\\left(\\frac{s}{1\\,\\mathrm{mm}}\\right)^{2.34}");
  CHECK(printed("ring_test_torque", Notation::algebra) == "0.2658*(width_across_flats/0.001)**2.34");
}

TEST_CASE("values stand in shop units, and keep their unit under a power or a fraction bar") {
  const std::vector<double> x = {1.5e-3, 12e-3, 0.14, 2.1e-9};
  CHECK(with_values(a * b, x) == "1.5 mm*12 mm");
  CHECK(with_values(square(a), x) == "(1.5 mm)^2");
  CHECK(with_values(square(c), x) == "0.14^2");
  CHECK(with_values(b / a, x) == "12 mm/(1.5 mm)");
  CHECK(with_values(a / c, x) == "1.5 mm/0.14");
  CHECK(with_values(a / d, x) == "1.5 mm/(2.1 um/kN)");
  CHECK(with_values(square(a), x, Notation::latex) == "\\left(1.5\\,\\mathrm{mm}\\right)^{2}");
  CHECK(with_values(c * a, x, Notation::latex) == "0.14 \\cdot 1.5\\,\\mathrm{mm}");
  CHECK(with_values(b / a, x, Notation::latex) == "\\frac{12\\,\\mathrm{mm}}{1.5\\,\\mathrm{mm}}");
  CHECK(with_values(a / c, x, Notation::algebra) == "0.0015/0.14");
  const std::vector<double> negative = {-1.5e-3, -12e-3, -0.14, 2e-9};
  CHECK(with_values(a - b, negative) == "-1.5 mm - (-12 mm)");
  CHECK(with_values(square(c), negative) == "(-0.14)^2");
  CHECK(with_values(a / b * c, negative) == "-1.5 mm/(-12 mm)*(-0.14)");
  CHECK(with_values(square(a), negative, Notation::latex) == "\\left(-1.5\\,\\mathrm{mm}\\right)^{2}");
}

TEST_CASE("numbers as text") {
  CHECK(number_text(29934.56) == "29935");
  CHECK(number_text(29.93456) == "29.93");
  CHECK(number_text(0.14) == "0.14");
  CHECK(number_text(9.99996) == "10");
  CHECK(number_text(-0.0) == "0");
  CHECK(number_text(0.0001) == "0.0001");
  CHECK(number_text(2.1e-9) == "2.1e-09");
  CHECK(number_text(1.5e7) == "1.5e+07");
  CHECK(number_text(-1250) == "-1250");
  CHECK(number_text(std::nan("")) == "nan");
  CHECK(number_text(-std::nan("")) == "nan");
  CHECK(number_text(HUGE_VAL) == "inf");
  CHECK(quantity_text(29934.56, Dim::force) == "29.93 kN");
  CHECK(quantity_text(0.14, Dim::number) == "0.14");
  CHECK(exact_text(0.1406) == "0.1406");
  for (const double x : {0.1, 0.1406, 1.0 / 3, 2e-9 / 7, 6.02e23 / 7, 9007199254740993.0})
    CHECK(std::strtod(exact_text(x).c_str(), nullptr) == x);
}

TEST_CASE("the algebra of every formula, read by a reader of its own, gives the kernel's value") {
  std::mt19937_64 random(11);
  for (const Entry& entry : shared::registry()) {
    CAPTURE(std::string(entry.name));
    const std::string algebra_text = expression_text(entry, Notation::algebra);
    CAPTURE(algebra_text);
    for (int round = 0; round < 30; ++round) {
      const std::vector<double> x = sample::inputs(entry, random);
      REQUIRE(x.size() == entry.inputs.size());
      const double value = entry.value(x.data());
      CHECK(Reader(algebra_text, entry.inputs, x).read() == near(value).epsilon(1e-12));
      const std::string figures = ExpressionWriter(entry.inputs, Notation::algebra, x)(entry.expression());
      CHECK(Reader(figures, {}, {}).read() == near(value).epsilon(1e-12));
    }
  }
}

}  // namespace expression_test
