// The derivation of an answer as text, Markdown, LaTeX or HTML: what is given, numbered steps, result, verdict, cautions.
#pragma once

#include <algorithm>

#include "tauten/base/derivation.hpp"
#include "tauten/base/plain_words.hpp"
#include "tauten/base/visible_text.hpp"
#include "tauten/base/vocabulary.hpp"
#include "tauten/explain/latex_lines.hpp"
#include "tauten/explain/paragraph.hpp"
#include "tauten/explain/step_text.hpp"

namespace tauten::TAUTEN_ABI {

/// How a derivation is laid out.
enum class Layout : unsigned char {
  text,      ///< for a terminal of 100 columns; formulas may be wider
  markdown,  ///< with formulas between dollar signs
  latex,     ///< a fragment for a document that uses amsmath
  html       ///< a fragment with MathML, which needs no script
};
template <>
struct Words<Layout> {
  static constexpr const char* list[] = {"text", "markdown", "latex", "html"};
};

/// \return the notation of the formulas in a layout
constexpr Notation notation_of(Layout layout) noexcept {
  return layout == Layout::text ? Notation::text : layout == Layout::html ? Notation::mathml : Notation::latex;
}

/// \return the layout of that name, or an error that lists the names
inline Outcome<Layout> try_layout(std::string_view name) {
  std::string known;
  for (int i = 0; i < 4; ++i) {
    if (name == Words<Layout>::list[i]) return static_cast<Layout>(i);
    known += (i == 0 ? "" : i == 3 ? " or " : ", ") + std::string(Words<Layout>::list[i]);
  }
  return Error("format", ("format " + detail::shown(name) + " is not known; write " + known).c_str());
}

/// The derivation of a single formula.
/// \param inputs  SI, in the order of the formula's inputs
inline Derivation derivation_of(const Entry& entry, std::span<const double> inputs) {
  Derivation out;
  out.title = entry.name;
  for (std::size_t i = 0; i < entry.inputs.size(); ++i) {
    const Arg& arg = entry.inputs[i];
    out.given.push_back({arg.name, arg.dimension, {inputs[i], inputs[i], inputs[i]}});
  }
  out.steps.push_back({entry.name, {inputs.begin(), inputs.end()}, entry.value(inputs.data()), ""});
  return out;
}

namespace detail {

inline const Entry* entry_named(std::span<const Entry> registry, std::string_view name) {
  for (const Entry& entry : registry)
    if (name == entry.name) return &entry;
  return nullptr;
}

/// Calls `visit(name, dimension)` for every quantity of a derivation.
template <class Visit>
void each_quantity(const Derivation& d, std::span<const Entry> registry, const Visit& visit) {
  for (const auto* figures : {&d.given, &d.found})
    for (const Figure& f : *figures)
      if (f.text.empty()) visit(std::string_view(f.name), f.dimension);
  for (const Step& step : d.steps)
    if (const Entry* entry = entry_named(registry, step.formula)) {
      for (const Arg& arg : entry->inputs) visit(std::string_view(arg.name), arg.dimension);
      visit(std::string_view(entry->output.name), entry->output.dimension);
    }
}

/// Writes one derivation in one layout.
class DerivationWriter {
 public:
  DerivationWriter(std::span<const Entry> registry, Layout layout, const Style& style)
      : registry_(registry), style_(style), layout_(layout) {}

  std::string operator()(const Derivation& d) {
    if (layout_ == Layout::html) out_ += "<div class=\"tauten-derivation\">\n";
    if (!d.title.empty()) heading(d.title);
    if (!d.given.empty()) figures("Given", d.given);
    steps(d.steps);
    if (!d.found.empty()) figures("Result", d.found);
    if (!d.verdict.empty()) verdict(d.verdict);
    if (!d.notices.empty()) notices(d.notices);
    if (layout_ == Layout::html) out_ += "</div>\n";
    return std::move(out_);
  }

 private:
  /// Plain text in the layout.
  std::string plain(std::string_view text) const {
    switch (layout_) {
      case Layout::text: break;
      case Layout::markdown: return markdown_text(text);
      case Layout::latex: return latex_text(text);
      case Layout::html: return html_text(text);
    }
    return std::string(text);
  }

  std::string bold(std::string_view text) const {
    switch (layout_) {
      case Layout::text: break;
      case Layout::markdown: return "**" + plain(text) + "**";
      case Layout::latex: return "\\textbf{" + plain(text) + "}";
      case Layout::html: return "<strong>" + plain(text) + "</strong>";
    }
    return std::string(text);
  }

  void heading(std::string_view text) {
    switch (layout_) {
      case Layout::text: out_ += paragraph(std::string(text)); break;
      case Layout::markdown: out_ += bold(text) + "\n\n"; break;
      case Layout::latex: out_ += "\\par\\medskip\\noindent" + bold(text) + "\\par\n"; break;
      case Layout::html: out_ += "<p>" + bold(text) + "</p>\n"; break;
    }
  }
  void section(std::string_view text) {
    if (layout_ == Layout::text && !out_.empty()) out_ += "\n";
    heading(text);
  }

  /// Blanks may stretch: figures with units leave TeX few places to break a line.
  static constexpr const char* latex_list = "\\begin{itemize}\\emergencystretch=1em\n";

  /// The symbol of a word of the nomenclature; "" if it has none.
  static const char* symbol_of(const Figure& f) {
    for (const Term& term : vocabulary)
      if (f.name == term.name) return term.symbol;
    return "";
  }

  /// "0.1 to 0.16, typically 0.13", or one number, with its unit.
  std::string value(const Figure& f) const {
    if (!f.text.empty()) return plain(f.text);
    const auto number = [&](double si, bool with_unit = true) {
      Shown s = shown(style_, si, f.name, f.dimension, f.unit);
      if (!with_unit) s.unit.clear();
      if (layout_ == Layout::text) return s.text();
      if (layout_ == Layout::html)
        return html_text(s.number) + (s.spaced() ? "&#x2009;" : "") + (s.unit.empty() ? "" : html_unit(s.unit));
      return "$" + shown_in(s, Notation::latex) + "$";
    };
    const Band<double>& v = f.value;
    if (v.low == v.high) return number(v.nominal);
    return number(v.low, false) + " to " + number(v.high) + ", typically " + number(v.nominal);
  }

  static std::string note(const Figure& f) {
    return f.assumed ? "assumed" + (f.note.empty() ? "" : ": " + f.note) : f.note;
  }

  void figures(const char* title, const std::vector<Figure>& list) {
    section(title);
    const Notation notation = notation_of(layout_);
    std::size_t symbols = 0, names = 0, values = 0;
    for (const Figure& f : list) {
      symbols = std::max(symbols, std::string_view(symbol_of(f)).size());
      names = std::max(names, f.name.size());
      // A long value does not push all notes to the right.
      if (const std::size_t width = width_of(value(f)); width <= 40) values = std::max(values, width);
    }
    const auto padded = [](std::string text, std::size_t width) {
      return text + std::string(width > width_of(text) ? width - width_of(text) : 0, ' ');
    };
    if (layout_ == Layout::markdown) out_ += "| symbol | quantity | value | |\n|---|---|---|---|\n";
    if (layout_ == Layout::latex) out_ += latex_list;
    if (layout_ == Layout::html) out_ += "<div style=\"overflow-x:auto\"><table>\n";
    for (const Figure& f : list) {
      const std::string name = plain_words(f.name), about = note(f), symbol = symbol_of(f);
      const std::string formula = symbol.empty() ? "" : symbol_text(symbol.c_str(), notation);
      switch (layout_) {
        case Layout::text: {
          const std::string mark =
              "  " + padded(symbol, symbols) + (symbols > 0 ? "  " : "") + padded(name, names) + "  ";
          out_ += paragraph(about.empty() ? value(f) : value(f) + gap(width_of(value(f)), values) + about, mark);
          break;
        }
        case Layout::markdown:
          out_ += "| " + (symbol.empty() ? "" : "$" + formula + "$") + " | " + plain(name) + " | " + value(f) + " | " +
                  plain(about) + " |\n";
          break;
        case Layout::latex:
          out_ += "\\item " + (symbol.empty() ? "" : "$" + formula + "$, ") + plain(name) + ": " + value(f) +
                  (about.empty() ? "" : " (" + plain(about) + ")") + "\n";
          break;
        case Layout::html:
          out_ += "<tr><td>" + (symbol.empty() ? "" : math(formula)) + "</td><td>" + plain(name) + "</td><td>" +
                  value(f) + "</td><td>" + plain(about) + "</td></tr>\n";
          break;
      }
    }
    if (layout_ == Layout::markdown) out_ += "\n";
    if (layout_ == Layout::latex) out_ += "\\end{itemize}\n";
    if (layout_ == Layout::html) out_ += "</table></div>\n";
  }

  /// What stands between a value and its note. `paragraph` takes a second blank for a word of no letters and keeps it.
  static std::string gap(std::size_t width, std::size_t column) {
    return std::string((column > width ? column - width : 0) + 2, ' ');
  }

  static std::string math(const std::string& inner) {
    return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\">" + inner + "</math>";
  }

  /// The lines of a formula, one below the other at their equals signs.
  std::string equations(const std::string& symbol, const std::vector<std::string>& right) const {
    std::string out;
    for (std::size_t i = 0; i < right.size(); ++i) {
      const std::string left = i == 0 ? symbol : "";
      switch (layout_) {
        case Layout::text: {
          const std::string mark = "   " + (i == 0 ? symbol : std::string(symbol.size(), ' ')) + " = ";
          out += mark + right[i] + "\n";
          break;
        }
        case Layout::markdown:
        case Layout::latex: {
          std::string mark = left + " &= ";
          for (const std::string& line : latex_lines(right[i])) {
            out += (out.empty() ? "" : " \\\\[0.7ex]\n") + mark + line;
            mark = " &\\quad ";
          }
          break;
        }
        case Layout::html:  // lines stand apart, so that fractions do not touch
          out += "<mtr><mtd style=\"text-align:right;padding:0.6ex 0\"><mrow>" + left +
                 "</mrow></mtd><mtd><mo>=</mo></mtd><mtd style=\"text-align:left;padding:0.6ex 0\"><mrow>" + right[i] +
                 "</mrow></mtd></mtr>\n";
          break;
      }
    }
    switch (layout_) {
      case Layout::text: break;
      case Layout::markdown: return "$$\\begin{aligned}\n" + out + "\n\\end{aligned}$$\n";
      case Layout::latex: return "\\begin{align*}\n" + out + "\n\\end{align*}\n";
      case Layout::html:
        return "<div style=\"overflow-x:auto\">" + math("<mtable displaystyle=\"true\">\n" + out + "</mtable>") +
               "</div>\n";
    }
    return out;
  }

  /// A line below a formula: "Source: ..."
  void detail(const char* label, const std::string& text) {
    if (text.empty()) return;
    switch (layout_) {
      case Layout::text: out_ += paragraph(text, std::string("   ") + label + ": "); break;
      case Layout::markdown: out_ += std::string("*") + label + ":* " + plain(text) + "\n\n"; break;
      case Layout::latex: out_ += std::string("\\noindent\\emph{") + label + ":} " + plain(text) + "\\par\n"; break;
      case Layout::html: out_ += std::string("<p><em>") + label + ":</em> " + plain(text) + "</p>\n"; break;
    }
  }

  void steps(const std::vector<Step>& list) {
    const auto known = [&](const Step& step) { return entry_named(registry_, step.formula) != nullptr; };
    if (std::none_of(list.begin(), list.end(), known)) return;
    if (!out_.empty()) section("Steps");
    std::vector<std::string_view> seen;  // formulas in the order of their steps
    for (const Step& step : list) {
      const Entry* entry = entry_named(registry_, step.formula);
      if (entry == nullptr) continue;
      const StepText text = step_text(*entry, step, notation_of(layout_), style_);
      const auto before = std::find(seen.begin(), seen.end(), step.formula);
      const bool again = before != seen.end();
      const std::string number = std::to_string(seen.size() + 1) + ". ";
      std::string head = text.title;
      if (!text.note.empty()) head += "; " + text.note;
      if (again) head += ", as in step " + std::to_string(before - seen.begin() + 1);
      seen.push_back(step.formula);
      if (layout_ == Layout::text)
        out_ += paragraph(head, number);
      else if (layout_ == Layout::latex)
        out_ += "\\par\\medskip\\noindent" + bold(number + head) + "\n";  // no page ends between it and its formula
      else
        heading(number + head);
      out_ += again ? equations(text.symbol, {text.with_values, text.result})
                    : equations(text.symbol, {text.expression, text.with_values, text.result});
      if (layout_ == Layout::markdown) out_ += "\n";
      if (!again) {
        detail("Source", text.source);
        detail("Stated range", text.validity);
      }
      for (const std::string& warning : text.warnings) detail("Take care", warning);
    }
  }

  void verdict(const std::string& text) {
    if (layout_ == Layout::text) out_ += "\n";
    detail_free("Verdict", text);
  }
  void detail_free(const char* label, const std::string& text) {
    switch (layout_) {
      case Layout::text: out_ += paragraph(text, std::string(label) + ": "); break;
      case Layout::markdown: out_ += bold(label) + ": " + plain(text) + "\n\n"; break;
      case Layout::latex: out_ += "\\noindent" + bold(label) + ": " + plain(text) + "\\par\n"; break;
      case Layout::html: out_ += "<p>" + bold(label) + ": " + plain(text) + "</p>\n"; break;
    }
  }

  void notices(const std::vector<Notice>& list) {
    section("Take care");
    if (layout_ == Layout::latex) out_ += latex_list;
    if (layout_ == Layout::html) out_ += "<ul>\n";
    for (const Notice& notice : list) {
      const std::string text = notice.text + (notice.is_estimate ? " (Estimate.)" : "");
      switch (layout_) {
        case Layout::text: out_ += paragraph(text, "- "); break;
        case Layout::markdown: out_ += "- " + plain(text) + "\n"; break;
        case Layout::latex: out_ += "\\item " + plain(text) + "\n"; break;
        case Layout::html: out_ += "<li>" + plain(text) + "</li>\n"; break;
      }
    }
    if (layout_ == Layout::latex) out_ += "\\end{itemize}\n";
    if (layout_ == Layout::html) out_ += "</ul>\n";
  }

  std::span<const Entry> registry_;
  const Style& style_;
  Layout layout_;
  std::string out_;
};

}  // namespace detail

/// \param d         the derivation
/// \param registry  the formulas that may occur: `formulas`; a step whose formula is not among them is left out
/// \param layout    text, Markdown, LaTeX or HTML
/// \param style     units and digits
/// \return the text; or an error if the style names a quantity that the derivation does not have, or gives it a unit of
///         another dimension
inline Outcome<std::string> try_derivation_text(const Derivation& d, std::span<const Entry> registry, Layout layout,
                                                const Style& style = {}) {
  for (const Style::Choice& choice : style.choices) {
    Dim dimension{};
    if (detail::is_dimension(choice.quantity, dimension)) continue;
    const char* argument = choice.unit.empty() ? "digits" : "unit";
    bool met = false;
    std::string known;
    detail::each_quantity(d, registry, [&](std::string_view name, Dim of) {
      if (name == choice.quantity) met = true, dimension = of;
      if ((", " + known + ",").find(", " + std::string(name) + ",") == std::string::npos)
        known += (known.empty() ? "" : ", ") + std::string(name);
    });
    if (!met)
      return Error(argument, (std::string(argument) + " is given for '" + choice.quantity +
                              "', which is not a quantity here; there are " + known)
                                 .c_str());
    if (const UnitSpelling* unit = choice.unit.empty() ? nullptr : detail::find_unit(choice.unit);
        unit != nullptr && unit->dimension != dimension)
      return Error("unit", (choice.quantity + " is " + describe(dimension).name + ", but " + choice.unit + " is for " +
                            describe(unit->dimension).name)
                               .c_str());
  }
  return detail::DerivationWriter(registry, layout, style)(d);
}

/// \copydoc try_derivation_text
/// \throws Error  instead of returning one
inline std::string derivation_text(const Derivation& d, std::span<const Entry> registry, Layout layout,
                                   const Style& style = {}) {
  return try_derivation_text(d, registry, layout, style).value();
}

}  // namespace tauten::TAUTEN_ABI
