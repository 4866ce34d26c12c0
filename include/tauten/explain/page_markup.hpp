// A page as Markdown and as HTML, which notebooks show too.
#pragma once

#include <algorithm>

#include "tauten/explain/markup.hpp"
#include "tauten/explain/page.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline std::string markdown_list(const char* title, const std::vector<std::string>& items) {
  std::string out;
  for (const std::string& item : items) out += "- " + markdown_text(item) + "\n";
  return items.empty() ? out : std::string("\n**") + title + "**\n\n" + out;
}

inline std::string markdown_table(const PageTable& table) {
  std::string head = "|", rule = "|", body;
  for (const PageColumn& column : table.columns) {
    head += " " + markdown_text(column.title + (column.unit.empty() ? "" : ", " + column.unit)) + " |";
    rule += column.number ? "---:|" : "---|";
  }
  for (const auto& row : table.rows) {
    body += "|";
    for (const std::string& cell : row) body += " " + markdown_text(cell) + " |";
    body += "\n";
  }
  std::string out = table.title.empty() ? "" : "\n**" + markdown_text(table.title) + "**\n";
  out += "\n" + head + "\n" + rule + "\n" + body;
  for (const std::string& sentence : table.legend) out += "\n" + markdown_text(sentence) + "\n";
  return out;
}

inline std::string html_paragraph(const std::string& text) { return "<p>" + html_text(text) + "</p>"; }

inline std::string html_list(const char* title, const std::vector<std::string>& items) {
  std::string out;
  for (const std::string& item : items) out += "<li>" + html_text(item) + "</li>";
  return items.empty() ? out : std::string("<p><strong>") + title + "</strong></p><ul>" + out + "</ul>";
}

/// What may be wider than the page scrolls by itself. A column stays wide enough for a few words of a sentence.
inline std::string html_table(const PageTable& table) {
  constexpr std::size_t widest = 34;
  std::string head, body;
  bool titled = false;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const PageColumn& column = table.columns[i];
    const std::string title = column.title + (column.unit.empty() ? "" : ", " + column.unit);
    titled |= !title.empty();
    std::size_t width = title.size();
    for (const auto& row : table.rows) width = std::max(width, row[i].size());
    const std::size_t tenths = std::min(width, widest) * 6;
    head += std::string("<th style=\"text-align:") + (column.number ? "right" : "left") +
            ";min-width:" + std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + "em\">" +
            html_text(title) + "</th>";
  }
  for (const auto& row : table.rows) {
    body += "<tr>";
    for (std::size_t i = 0; i < row.size(); ++i)
      body += std::string("<td style=\"text-align:") + (table.columns[i].number ? "right" : "left") + "\">" +
              html_text(row[i]) + "</td>";
    body += "</tr>";
  }
  std::string out = "<div style=\"overflow-x:auto\"><table>";
  if (!table.title.empty()) out += "<caption style=\"text-align:left\">" + html_text(table.title) + "</caption>";
  if (titled) out += "<thead><tr>" + head + "</tr></thead>";
  out += "<tbody>" + body + "</tbody></table></div>";
  for (const std::string& sentence : table.legend) out += html_paragraph(sentence);
  return out;
}

}  // namespace detail

/// \return the page in Markdown
inline std::string page_markdown(const Page& page) {
  std::string out = "**" + markdown_text(page.first_line()) + "**\n";
  out += detail::markdown_list("What to do", page.actions);
  if (!page.figures.empty()) out += detail::markdown_table(detail::figure_table(page));
  if (!page.drawing.text.empty())
    out += "\n```text\n" + page.drawing.text + (page.drawing.text.ends_with('\n') ? "" : "\n") + "```\n";
  for (const PageTable& table : page.tables) out += detail::markdown_table(table);
  for (const PageList& list : page.lists) out += detail::markdown_list(list.title.c_str(), list.items);
  out += detail::markdown_list("What stands out", page.findings);
  out += detail::markdown_list("Take care", detail::all_cautions(page));
  return out + detail::markdown_list("How far to trust this", page.trust);
}

/// \return the page as a piece of HTML, without head and body
inline std::string page_html(const Page& page) {
  std::string out = "<p><strong>" + html_text(page.first_line()) + "</strong></p>";
  out += detail::html_list("What to do", page.actions);
  if (!page.figures.empty()) out += detail::html_table(detail::figure_table(page));
  const std::string drawing = page.drawing.svg.empty() && !page.drawing.text.empty()
                                  ? "<pre style=\"width:max-content\">" + html_text(page.drawing.text) + "</pre>"
                                  : page.drawing.svg;
  if (!drawing.empty()) out += "<div style=\"overflow-x:auto\">" + drawing + "</div>";
  for (const PageTable& table : page.tables) out += detail::html_table(table);
  for (const PageList& list : page.lists) out += detail::html_list(list.title.c_str(), list.items);
  out += detail::html_list("What stands out", page.findings);
  out += detail::html_list("Take care", detail::all_cautions(page));
  return out + detail::html_list("How far to trust this", page.trust);
}

}  // namespace tauten::TAUTEN_ABI
