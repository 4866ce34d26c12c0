// A job sheet for a terminal, as Markdown, and as HTML that prints on A4.
#include "sheet/sheet.hpp"
#include "tauten/explain/page_markup.hpp"
#include "tauten/explain/page_text.hpp"

namespace tauten::sheet {

namespace {

std::string as_text(const Sheet& sheet) {
  std::string out = paragraph(sheet.title) + (sheet.subtitle.empty() ? "" : paragraph(sheet.subtitle));
  if (!sheet.note.empty()) out += paragraph(sheet.note);
  out += paragraph(sheet.stamp);
  for (const SheetSection& section : sheet.sections) {
    out += "\n" + section.title + "\n" + std::string(section.title.size(), '=') + "\n";
    std::size_t step_number = 0;
    for (const SheetBlock& block : section.blocks) {
      out += "\n";
      if (!block.title.empty()) out += block.title + "\n";
      for (const std::string& line : block.lines) out += paragraph(line);
      for (const SheetStep& step : block.steps) {
        out += paragraph(std::to_string(++step_number) + ". " + step.text, "[ ] ");
        if (!step.caution.empty()) out += paragraph("Take care: " + step.caution, "      ! ");
      }
      if (block.table) out += table_text(*block.table);
      out += block.drawing.text;
      for (const std::string& box : block.boxes) out += box + ":\n\n" + std::string(page_width, '_') + "\n";
    }
  }
  return out;
}

std::string as_markdown(const Sheet& sheet) {
  std::string out = "# " + markdown_text(sheet.title) + "\n";
  for (const std::string* line : {&sheet.subtitle, &sheet.note, &sheet.stamp})
    if (!line->empty()) out += "\n" + markdown_text(*line) + "\n";
  for (const SheetSection& section : sheet.sections) {
    out += "\n## " + markdown_text(section.title) + "\n";
    std::size_t step_number = 0;
    for (const SheetBlock& block : section.blocks) {
      if (!block.title.empty()) out += "\n### " + markdown_text(block.title) + "\n";
      for (const std::string& line : block.lines) out += "\n" + markdown_text(line) + "\n";
      if (!block.steps.empty()) out += "\n";
      for (const SheetStep& step : block.steps) {
        out += "- [ ] " + std::to_string(++step_number) + "\\. " + markdown_text(step.text);
        out += step.caution.empty() ? "\n" : " **Take care: " + markdown_text(step.caution) + "**\n";
      }
      if (block.table) out += detail::markdown_table(*block.table);
      if (!block.drawing.text.empty()) out += "\n```text\n" + block.drawing.text + "```\n";
      for (const std::string& box : block.boxes) out += "\n" + markdown_text(box) + ":\n\n\\_\\_\\_\\_\\_\\_\\_\\_\n";
    }
  }
  return out;
}

/// More rows to fill do not fit on one sheet of paper with what stands above them; such a table goes on overleaf.
constexpr std::size_t rows_of_a_page = 20;

constexpr const char* style = R"(
@page { size: A4; margin: 13mm 14mm 17mm 14mm; @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 8pt "Liberation Sans", Arial, sans-serif; } }
* { box-sizing: border-box; }
body { font: 10.5pt/1.35 "Liberation Sans", Arial, Helvetica, sans-serif; color: #111; max-width: 182mm; margin: 8mm auto; padding: 0 4mm; }
h1 { font-size: 21pt; margin: 0 0 1mm; }
h2 { font-size: 15pt; margin: 0 0 3mm; padding: 1.5mm 3mm; background: #111; color: #fff; }
h3 { font-size: 12.5pt; margin: 5mm 0 2mm; border-bottom: 1.5pt solid #111; break-after: avoid; }
h3.new { break-before: page; }
p { margin: 1mm 0; }
section { break-before: page; margin-top: 10mm; }
section:first-of-type { break-before: auto; margin-top: 4mm; }
.stamp { font-size: 8.5pt; color: #444; margin: 0 0 2mm; }
.note { border: 1.5pt solid #111; padding: 1.5mm 3mm; margin: 2mm 0; }
.step { display: grid; grid-template-columns: 7mm 8mm 1fr; margin: 1.6mm 0; break-inside: avoid; }
.box { width: 5mm; height: 5mm; border: 1.2pt solid #111; margin-top: .4mm; }
.n { font-weight: bold; text-align: right; padding-right: 2mm; }
.care { grid-column: 3; font-size: 9.5pt; border-left: 4pt solid #d55e00; background: #fdf0e6; padding: .6mm 2.5mm; margin-top: .8mm;
  -webkit-print-color-adjust: exact; print-color-adjust: exact; }
h2, .care b { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
table { border-collapse: collapse; width: 100%; margin: 2mm 0; font-size: 10pt; }
.wide + p { break-before: avoid; }
.fill { break-inside: avoid; }
caption { text-align: left; font-weight: bold; padding: 1mm 0; }
th, td { border: .8pt solid #555; padding: 1mm 2mm; vertical-align: top; text-align: left; overflow-wrap: break-word; }
th { background: #eee; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
th.r, td.r { text-align: right; white-space: nowrap; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
.long { break-inside: auto; }
.fill td { height: 8.5mm; vertical-align: middle; }
.fill th.e, .fill td.e { min-width: 20mm; }
.origins td { font-size: 8pt; padding: .5mm 1.5mm; }
.drawing { text-align: center; break-inside: avoid; margin: 2mm 0; }
.drawing svg { max-width: 100%; width: auto; height: 68mm; margin-bottom: -9mm; }
.keep { break-inside: avoid; }
.keep .drawing svg { height: 92mm; margin-bottom: -9mm; }
.write { break-inside: avoid; margin: 3mm 0; }
.write div { border: 1.2pt solid #111; height: 20mm; margin-top: 1mm; }
@media screen and (max-width: 700px) { body { font-size: 16px; } .wide { overflow-x: auto; } }
@media print { body { max-width: none; margin: 0; padding: 0; } section { margin-top: 0; } }
)";

std::string html_table_of(const PageTable& table, bool to_fill, bool small) {
  std::string out = std::string("<div class=\"wide\"><table class=\"") +
                    (to_fill ? table.rows.size() > rows_of_a_page ? "fill long" : "fill"
                     : small ? "origins"
                             : "") +
                    "\">";
  if (!table.title.empty()) out += "<caption>" + html_text(table.title) + "</caption>";
  out += "<thead><tr>";
  std::vector<std::string> kinds;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    const PageColumn& column = table.columns[i];
    const bool empty = !table.rows.empty() && table.rows.front()[i].empty();
    kinds.push_back(empty ? "e" : column.number ? "r" : "");
    out += "<th class=\"" + kinds.back() + "\">" + html_text(column.title) +
           (column.unit.empty() ? "" : "<br>" + html_text(column.unit)) + "</th>";
  }
  out += "</tr></thead><tbody>";
  for (const auto& row : table.rows) {
    out += "<tr>";
    for (std::size_t i = 0; i < row.size(); ++i) out += "<td class=\"" + kinds[i] + "\">" + html_text(row[i]) + "</td>";
    out += "</tr>";
  }
  out += "</tbody></table></div>";
  for (const std::string& sentence : table.legend) out += "<p>" + html_text(sentence) + "</p>";
  return out;
}

/// A text between quotes in a style sheet; whatever somebody wrote, it ends neither them nor the sheet.
std::string css_text(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    const bool plain =
        byte >= 0x80 || c == ' ' || (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
    constexpr const char* digits = "0123456789abcdef";
    if (plain)
      out += c;
    else
      ((((out += "\\0000") += digits[byte >> 4]) += digits[byte & 15]) += ' ');  // the space ends the number
  }
  return out;
}

std::string as_html(const Sheet& sheet) {
  std::string out =
      "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
      "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><title>" +
      html_text(sheet.title) + "</title><style>" + style + "@page { @bottom-left { content: \"" +
      css_text(sheet.title + " - " + sheet.stamp) +
      "\"; font: 8pt \"Liberation Sans\", Arial, sans-serif; } }\n</style></head><body>\n<h1>" +
      html_text(sheet.title) + "</h1>";
  if (!sheet.subtitle.empty()) out += "<p>" + html_text(sheet.subtitle) + "</p>";
  if (!sheet.note.empty()) out += "<p class=\"note\"><b>" + html_text(sheet.note) + "</b></p>";
  for (const SheetSection& section : sheet.sections) {
    const bool last = &section == &sheet.sections.back();
    out += "\n<section><p class=\"stamp\">" + html_text(sheet.title + " - " + sheet.stamp) + "</p><h2>" +
           html_text(section.title) + "</h2>";
    std::size_t step_number = 0;
    for (const SheetBlock& block : section.blocks) {
      const bool together =
          block.table && (block.to_fill || !block.drawing.svg.empty()) && block.table->rows.size() <= rows_of_a_page;
      if (together) out += "\n<div class=\"keep\">";
      if (!block.title.empty())
        out += std::string("\n<h3") + (block.new_page ? " class=\"new\"" : "") + ">" + html_text(block.title) + "</h3>";
      if (!block.drawing.svg.empty()) out += "\n<div class=\"drawing\">" + block.drawing.svg;
      for (const std::string& line : block.lines) out += "<p>" + html_text(line) + "</p>";
      if (!block.drawing.svg.empty()) out += "</div>";
      for (const SheetStep& step : block.steps) {
        out += "\n<div class=\"step\"><div class=\"box\"></div><div class=\"n\">" + std::to_string(++step_number) +
               "</div><div>" + html_text(step.text) + "</div>";
        if (!step.caution.empty()) out += "<div class=\"care\"><b>Take care:</b> " + html_text(step.caution) + "</div>";
        out += "</div>";
      }
      if (block.table) out += html_table_of(*block.table, block.to_fill, last);
      if (together) out += "</div>";
      for (const std::string& box : block.boxes)
        out += "\n<div class=\"write\">" + html_text(box) + "<div></div></div>";
    }
    out += "</section>";
  }
  return out + "\n</body></html>\n";
}

}  // namespace

std::string sheet_as(const Sheet& sheet, PageFormat format) {
  switch (format) {
    case PageFormat::markdown: return as_markdown(sheet);
    case PageFormat::html: return as_html(sheet);
    case PageFormat::text: break;
  }
  return as_text(sheet);
}

}  // namespace tauten::sheet
