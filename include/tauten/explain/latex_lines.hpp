// A formula in LaTeX, broken into lines that fit a printed page. LaTeX itself breaks no formula that stands by itself.
#pragma once

#include <algorithm>
#include <string>
#include <string_view>
#include <vector>

#include "tauten/explain/markup.hpp"

namespace tauten::TAUTEN_ABI {

/// Width of a formula's lines in em: an article on A4 or letter paper has 34.5, of which the left-hand side takes some.
inline constexpr double latex_page_width = 31;

namespace detail {

/// Reads the LaTeX that `ExpressionWriter` writes, and adds up how wide it is set. Widths are those of typical text fonts.
class LatexRuler {
 public:
  explicit LatexRuler(std::string_view text) : rest_(text) {}

  /// \param deep  bars of fractions and indices above this: from the second bar on, letters are small
  double width(int deep = 0) {
    double sum = 0;
    while (!rest_.empty() && !rest_.starts_with('}')) sum += next(deep);
    return sum;
  }

 private:
  static double scale(int deep) { return deep > 1 ? 0.7 : 1; }
  static bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

  /// What stands between braces.
  double group(int deep) {
    if (!rest_.starts_with('{')) return next(deep);
    rest_.remove_prefix(1);
    const double found = width(deep);
    if (!rest_.empty()) rest_.remove_prefix(1);
    return found;
  }

  double next(int deep) {
    const char c = rest_.front();
    if (c == '{') return group(deep);
    rest_.remove_prefix(1);
    switch (c) {
      case ' ':
      case '&': return 0;
      case '_':
      case '^': return group(std::max(deep + 1, 2));
      case '+':
      case '-': return deep > 1 ? 0.55 : 1.22;
      case '.': return 0.28 * scale(deep);
      case '\\': return command(deep);
      default: return (c >= 'A' && c <= 'Z' ? 0.75 : 0.55) * scale(deep);
    }
  }

  double command(int deep) {
    std::size_t size = 0;
    while (size < rest_.size() && is_letter(rest_[size])) ++size;
    const std::string_view name = rest_.substr(0, std::max<std::size_t>(size, 1));
    rest_.remove_prefix(std::min(name.size(), rest_.size()));
    if (name == "frac") {
      const double above = group(deep + 1);
      return std::max(above, group(deep + 1)) + 0.24;
    }
    if (name == "begin") return stacked_lines(deep);
    if (name == "sqrt") return 0.9 * scale(deep) + group(deep);
    if (name == "mathrm") return 0;
    if (name == "left" || name == "right") return deep > 1 ? 0 : 0.2;  // brackets grow with what they hold
    if (name == ",") return 0.17;
    if (name == "cdot") return deep > 1 ? 0.2 : 0.72;
    if (find_greek(name) != nullptr || name == "pi" || name == "circ") return 0.6 * scale(deep);
    return (0.5 * static_cast<double>(name.size()) + 0.17) * scale(deep);  // a function: tan, arctan
  }

  /// Lines between \begin{aligned} and \end{aligned}: as wide as the widest.
  double stacked_lines(int deep) {
    constexpr std::string_view name = "{aligned}", end = "\\end{aligned}";
    rest_.remove_prefix(name.size());
    double widest = 0;
    double line = 0;
    while (!rest_.starts_with(end)) {
      const bool breaks = rest_.starts_with("\\\\");
      if (breaks) rest_.remove_prefix(2);
      line = breaks ? 0 : line + next(deep);
      widest = std::max(widest, line);
    }
    rest_.remove_prefix(end.size());
    return widest;
  }

  std::string_view rest_;
};

/// \return `text` cut before each of the `signs` that stands in no bracket, the first one excepted
inline std::vector<std::string> latex_pieces(std::string_view text, std::initializer_list<std::string_view> signs) {
  std::vector<std::string> pieces;
  std::size_t begin = 0;
  int open = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const std::string_view rest = text.substr(at);
    if (rest.starts_with('{') || rest.starts_with("\\left(")) ++open;
    if (rest.starts_with('}') || rest.starts_with("\\right)")) --open;
    const bool sign = std::any_of(signs.begin(), signs.end(), [&](auto s) { return rest.starts_with(s); });
    if (open > 0 || !sign || at == 0) continue;
    pieces.emplace_back(text.substr(begin, at - begin));
    begin = at + 1;  // each sign begins with a blank
  }
  pieces.emplace_back(text.substr(begin));
  return pieces;
}

/// \return `text` with the widest sum above or below a fraction bar set in lines; as it was, if there is none
inline std::string with_sum_in_lines(const std::string& text) {
  std::string_view widest;
  std::vector<std::size_t> open;
  for (std::size_t at = 0; at < text.size(); ++at) {
    if (text[at] == '{') open.push_back(at + 1);
    if (text[at] != '}') continue;
    const std::string_view group = std::string_view(text).substr(open.back(), at - open.back());
    const std::string_view before = std::string_view(text).substr(0, open.back() - 1);
    open.pop_back();
    const bool at_bar = before.ends_with("\\frac") || before.ends_with('}');
    if (at_bar && latex_pieces(group, {" + ", " - "}).size() > 1 && group.size() > widest.size()) widest = group;
  }
  if (widest.empty()) return text;
  std::string lines;
  for (const std::string& term : latex_pieces(widest, {" + ", " - "}))
    lines += (lines.empty() ? "&" : " \\\\ &") + term;
  const auto place = static_cast<std::size_t>(widest.data() - text.data());
  return std::string(text).replace(place, widest.size(), "\\begin{aligned} " + lines + " \\end{aligned}");
}

}  // namespace detail

/// \param formula  one side of a formula, as `expression_text` writes it
/// \return how wide it is set in a line of its own, in em, to a tenth or so
inline double latex_width(std::string_view formula) { return detail::LatexRuler(formula).width(); }

/// \param formula  one side of a formula, as `expression_text` writes it
/// \param most     width of a line in em
/// \return the formula, broken before plus and minus signs outside brackets. Where that is not enough, a sum at a fraction
///         bar is set in lines, or the formula is broken before dots. What cannot be broken there stays in one line
inline std::vector<std::string> latex_lines(const std::string& formula, double most = latex_page_width) {
  std::vector<std::string> lines;
  const auto add = [&](const std::string& piece) {
    if (lines.empty() || latex_width(lines.back() + " " + piece) > most)
      lines.push_back(piece);
    else
      lines.back() += " " + piece;
  };
  for (const std::string& term : detail::latex_pieces(formula, {" + ", " - "}))
    if (latex_width(term) <= most)
      add(term);
    else if (const std::string stacked = detail::with_sum_in_lines(term); latex_width(stacked) <= most)
      add(stacked);
    else
      for (const std::string& factor : detail::latex_pieces(term, {" \\cdot "})) add(factor);
  return lines;
}

}  // namespace tauten::TAUTEN_ABI
