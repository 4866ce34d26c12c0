// Symbols, numbers, units and plain text in LaTeX, MathML, HTML and Markdown.
#pragma once

#include <array>
#include <cstdio>
#include <string>
#include <string_view>
#include <utility>

#include "tauten/base/dimension.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// Greek letters by their names, with their code points.
struct GreekLetter {
  std::string_view name;
  unsigned code;
};
inline constexpr GreekLetter greek_letters[] = {
    {"alpha", 0x3B1}, {"beta", 0x3B2},  {"gamma", 0x3B3}, {"delta", 0x3B4},  {"epsilon", 0x3B5}, {"zeta", 0x3B6},
    {"eta", 0x3B7},   {"theta", 0x3B8}, {"kappa", 0x3BA}, {"lambda", 0x3BB}, {"mu", 0x3BC},      {"nu", 0x3BD},
    {"xi", 0x3BE},    {"rho", 0x3C1},   {"sigma", 0x3C3}, {"tau", 0x3C4},    {"phi", 0x3C6},     {"chi", 0x3C7},
    {"psi", 0x3C8},   {"omega", 0x3C9}, {"Gamma", 0x393}, {"Delta", 0x394},  {"Theta", 0x398},   {"Lambda", 0x39B},
    {"Xi", 0x39E},    {"Pi", 0x3A0},    {"Sigma", 0x3A3}, {"Phi", 0x3A6},    {"Psi", 0x3A8},     {"Omega", 0x3A9}};

inline const GreekLetter* find_greek(std::string_view word) {
  for (const GreekLetter& letter : greek_letters)
    if (word == letter.name) return &letter;
  return nullptr;
}

inline std::string entity(unsigned code) {
  char text[16];
  std::snprintf(text, sizeof text, "&#x%X;", code);
  return text;
}

/// \return `text` with every occurrence of some characters replaced
template <std::size_t N>
std::string replaced(std::string_view text, const std::array<std::pair<char, const char*>, N>& pairs) {
  std::string out;
  for (const char c : text) {
    const char* instead = nullptr;
    for (const auto& [from, to] : pairs)
      if (c == from) instead = to;
    if (instead != nullptr)
      out += instead;
    else
      out += c;
  }
  return out;
}

}  // namespace detail

/// \return plain text for LaTeX
inline std::string latex_text(std::string_view text) {
  return detail::replaced(text, std::array<std::pair<char, const char*>, 13>{{{'\\', "\\textbackslash{}"},
                                                                              {'&', "\\&"},
                                                                              {'%', "\\%"},
                                                                              {'$', "\\$"},
                                                                              {'#', "\\#"},
                                                                              {'_', "\\_"},
                                                                              {'{', "\\{"},
                                                                              {'}', "\\}"},
                                                                              {'~', "\\textasciitilde{}"},
                                                                              {'^', "\\textasciicircum{}"},
                                                                              {'<', "\\textless{}"},
                                                                              {'>', "\\textgreater{}"},
                                                                              {'|', "\\textbar{}"}}});
}

/// \return plain text for HTML and MathML
inline std::string html_text(std::string_view text) {
  return detail::replaced(text, std::array<std::pair<char, const char*>, 4>{
                                    {{'&', "&amp;"}, {'<', "&lt;"}, {'>', "&gt;"}, {'"', "&quot;"}}});
}

/// \return plain text for Markdown, cells of tables included
inline std::string markdown_text(std::string_view text) {
  return detail::replaced(text, std::array<std::pair<char, const char*>, 8>{{{'\\', "\\\\"},
                                                                             {'*', "\\*"},
                                                                             {'`', "\\`"},
                                                                             {'|', "\\|"},
                                                                             {'<', "&lt;"},
                                                                             {'$', "\\$"},
                                                                             {'[', "\\["},
                                                                             {']', "\\]"}}});
}

/// \return a plain symbol in LaTeX: mu_G becomes \mu_{G}, R_p0.2 becomes R_{p0.2}
inline std::string latex_symbol(std::string_view symbol) {
  if (const auto slash = symbol.find('/'); slash != std::string_view::npos)
    return latex_symbol(symbol.substr(0, slash)) + "/" + latex_symbol(symbol.substr(slash + 1));
  const auto underscore = symbol.find('_');
  std::string base(symbol.substr(0, underscore));
  if (detail::find_greek(base) != nullptr)
    base = "\\" + base;
  else if (base.size() > 1)
    base = "\\mathrm{" + base + "}";  // dL is one symbol and no product
  if (underscore == std::string_view::npos) return base;
  std::string index(symbol.substr(underscore + 1));
  return base + "_{" + (index.size() > 1 ? "\\mathrm{" + index + "}" : index) + "}";
}

/// \return a plain symbol in MathML
inline std::string mathml_symbol(std::string_view symbol) {
  if (const auto slash = symbol.find('/'); slash != std::string_view::npos)
    return mathml_symbol(symbol.substr(0, slash)) + "<mo>/</mo>" + mathml_symbol(symbol.substr(slash + 1));
  const auto underscore = symbol.find('_');
  const std::string_view base = symbol.substr(0, underscore);
  const detail::GreekLetter* greek = detail::find_greek(base);
  const std::string letter = "<mi>" + (greek != nullptr ? detail::entity(greek->code) : html_text(base)) + "</mi>";
  if (underscore == std::string_view::npos) return letter;
  const std::string_view index = symbol.substr(underscore + 1);
  const char* tag = index.size() > 1 ? "mtext" : "mi";
  return "<msub>" + letter + "<" + tag + ">" + html_text(index) + "</" + tag + "></msub>";
}

/// \return a printed number in LaTeX: 1.5e-05 becomes 1.5 \cdot 10^{-5}
inline std::string latex_number(const std::string& text) {
  const auto e = text.find('e');
  if (e == std::string::npos) return text == "inf" ? "\\infty" : text == "-inf" ? "-\\infty" : text;
  return text.substr(0, e) + " \\cdot 10^{" + std::to_string(std::stoi(text.substr(e + 1))) + "}";
}

/// \return a printed number in MathML
inline std::string mathml_number(const std::string& text) {
  if (text.starts_with('-')) return "<mo>&#x2212;</mo>" + mathml_number(text.substr(1));
  const auto e = text.find('e');
  if (e == std::string::npos) return text == "inf" ? "<mi>&#x221E;</mi>" : "<mn>" + text + "</mn>";
  const int power = std::stoi(text.substr(e + 1));
  const std::string exponent = mathml_number(std::to_string(power));
  return "<mn>" + text.substr(0, e) + "</mn><mo>&#x22C5;</mo><msup><mn>10</mn><mrow>" + exponent + "</mrow></msup>";
}

/// \return a unit in LaTeX: `N.m` becomes an upright N and m with a thin space between
inline std::string latex_unit(std::string_view unit) {
  if (unit == "deg") return "{}^\\circ";
  std::string out = "\\mathrm{";
  int bars = 0;
  for (std::size_t i = 0; i < unit.size(); ++i) {
    const char c = unit[i];
    if (c == '.')
      out += "\\,";
    else if (c == '2')
      out += "^2";
    else if (c == '%')
      out += "\\%";
    else if (c == 'u' && unit.substr(i, 2) == "um")
      out += "\\mu ";
    else if (c == '/' && ++bars == 1 && unit.find('/', i + 1) != std::string_view::npos)
      out += "/(";
    else if (c == '/' && bars == 2)
      out += "\\,";
    else
      out += c;
  }
  return out + (bars == 2 ? ")}" : "}");
}

/// \return a unit in HTML and MathML: N.m with a raised dot, mm2 with a raised 2
inline std::string html_unit(std::string_view unit) {
  if (unit == "deg") return "&#xB0;";
  std::string out;
  for (std::size_t i = 0; i < unit.size(); ++i) {
    const char c = unit[i];
    if (c == '.')
      out += "&#xB7;";
    else if (c == '2')
      out += "&#xB2;";
    else if (c == 'u' && unit.substr(i, 2) == "um")
      out += "&#xB5;";
    else
      out += html_text({&c, 1});
  }
  return out;
}

}  // namespace tauten::TAUTEN_ABI
