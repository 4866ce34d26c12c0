// Breaking formulas into lines: nothing is lost, nothing is broken inside a bracket, and widths are those of a page that
// was set. The widths in points are what pdfTeX measures with its typical ten-point font: \setbox0\hbox{$\displaystyle ...$}.
#include <doctest/doctest.h>

#include <string>

#include "tauten/explain/latex_lines.hpp"

namespace latex_lines_test {

using namespace tauten;

TEST_CASE("width of a formula as it is set") {
  struct Set {
    const char* formula;
    double points;
  };
  constexpr Set measured[] = {
      {"10\\,\\mathrm{mm} - \\frac{3 \\cdot \\cos 30^\\circ \\cdot 1.5\\,\\mathrm{mm}}{4}", 123.2},
      {"F_{M}\\,\\left(\\frac{P}{2\\,\\pi} + \\mu_{G}\\,\\frac{d_{2}}{2\\,\\cos 30^\\circ} + "
       "\\mu_{K}\\,\\frac{D_{\\mathrm{Km}}}{2}\\right)",
       167.0},
      {"55.15\\,\\mathrm{kN} \\cdot \\left(2.3 \\cdot 0.14 \\cdot \\frac{14.7\\,\\mathrm{mm}}{2 \\cdot \\cos "
       "30^\\circ} - \\frac{2\\,\\mathrm{mm}}{2 \\cdot \\pi}\\right)",
       186.4},
      {"\\sqrt{\\left(\\frac{s}{2\\,\\cos 30^\\circ} - w\\right)^{2} - \\frac{\\left(s + D\\right)^{2}}{4}}", 138.8},
      {"\\frac{10\\,\\mathrm{mm} - \\frac{3 \\cdot \\cos 30^\\circ \\cdot 1.5\\,\\mathrm{mm}}{4} + 10\\,\\mathrm{mm} - "
       "\\frac{17 \\cdot \\cos 30^\\circ \\cdot 1.5\\,\\mathrm{mm}}{12}}{2}",
       220.2},
      {"\\arctan\\left(\\frac{2\\,\\mathrm{mm}}{\\pi \\cdot 14.7\\,\\mathrm{mm}}\\right) + 1.5 \\cdot 10^{-5}", 148.9},
  };
  for (const Set& set : measured) {
    CAPTURE(set.formula);
    CHECK(10 * latex_width(set.formula) == doctest::Approx(set.points).epsilon(0.12));
  }
  CHECK(latex_width("") == 0);
}

TEST_CASE("a formula is broken outside brackets only, and only where it must be") {
  const std::string sum = "\\left(a + b\\right)\\,c + \\frac{d - e}{f} - g";
  CHECK(latex_lines(sum) == std::vector<std::string>{sum});
  CHECK(latex_lines(sum, 9) == std::vector<std::string>{"\\left(a + b\\right)\\,c + \\frac{d - e}{f}", "- g"});
  CHECK(latex_lines(sum, 1) == std::vector<std::string>{"\\left(a + b\\right)\\,c", "+ \\frac{d - e}{f}", "- g"});
  CHECK(latex_lines("-5 \\cdot \\left(1 - 2 \\cdot 3\\right) \\cdot 7", 1) ==
        std::vector<std::string>{"-5", "\\cdot \\left(1 - 2 \\cdot 3\\right)", "\\cdot 7"});
  // A sum at a bar is set in lines before a product is torn apart.
  CHECK(latex_lines("2 \\cdot f\\left(\\frac{a}{b + c - d}\\right)", 6) ==
        std::vector<std::string>{
            "2 \\cdot f\\left(\\frac{a}{\\begin{aligned} &b \\\\ &+ c \\\\ &- d \\end{aligned}}\\right)"});
  CHECK(latex_width("\\begin{aligned} &a + b + c \\\\ &+ d \\end{aligned}") == latex_width("a + b + c"));
  CHECK(latex_lines("", 1) == std::vector<std::string>{""});
}

}  // namespace latex_lines_test
