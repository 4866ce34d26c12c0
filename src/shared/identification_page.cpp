#include "shared/identification_page.hpp"

#include <algorithm>

#include "tauten/part/inch_head.hpp"
#include "tauten/question/looks.hpp"

namespace tauten::shared {

namespace {

std::string title_of(const Identified& c, const PageUnits& units) {
  if (c.socket) return units.typed(*c.socket) + (c.kind.find("socket") == std::string::npos ? " across flats" : " key");
  return c.drive_number ? "Bit " + std::to_string(*c.drive_number) : std::string("This tool");
}

void add_candidates(Page& page, const Identification& answer, const PageUnits& units, bool all) {
  const std::size_t shown = all ? answer.candidates.size() : std::min(shown_candidates, answer.candidates.size());
  const std::size_t others = answer.candidates.size() - 1;
  const Identified& first = answer.candidates.front();
  const bool key = first.kind.find("socket") != std::string::npos;
  const std::string inch = answer.tool ? inch_bolt(*answer.tool, key) : "";
  page.headline = inch.empty() ? title_of(first, units) : units.typed(*answer.tool) + (key ? " key" : " across flats");
  if (!inch.empty())
    page.headline += ": probably an inch bolt" + (inch.starts_with("of") ? "" : " (" + inch + ")") +
                     ", which the tables do not have. If the thread is metric";
  if (answer.property_class) page.headline += ", class " + answer.property_class->name;
  page.headline += ": most often " + first.thread + " (" + first.kind + "). ";
  page.headline += others == 0
                       ? "No other fastener in the tables takes this tool."
                       : std::to_string(others) + (others == 1 ? " other fastener takes" : " other fasteners take") +
                             " this tool; check thread and head.";
  PageTable table{"Which one is it?",
                  {{"#", "", true},
                   {"Thread"},
                   {"Pitch", "mm", true},
                   {"Head or nut", "", false, 24},
                   {"Standard"},
                   {"Width", "mm", true},
                   {"Match"},
                   {"How common"}},
                  {},
                  {}};
  std::vector<tauten::detail::Look> looks;
  for (std::size_t i = 0; i < shown; ++i) {
    const Identified& c = answer.candidates[i];
    table.rows.push_back({std::to_string(c.rank), c.thread, number_text(c.pitch.shop()), c.kind,
                          tauten::detail::standards_text(c.head, 30), c.socket ? number_text(c.socket->shop()) : "-",
                          c.fit, c.how_common});
    looks.push_back({std::to_string(c.rank), c.thread, c.look});
  }
  if (answer.candidates.size() > shown)
    table.legend.push_back(std::to_string(answer.candidates.size() - shown) +
                           " less likely ones are left out; --all shows them.");
  page.tables.push_back(std::move(table));
  if (PageTable look = tauten::detail::look_table(looks); !look.rows.empty() || !look.legend.empty())
    page.tables.push_back(std::move(look));
}

}  // namespace

Page page_of(const Identification& answer, const PageUnits& units, bool all) {
  Page page;
  if (!answer.candidates.empty()) add_candidates(page, answer, units, all);
  if (answer.property_class) {
    const ClassMark& mark = *answer.property_class;
    const std::string sentence = "Class " + mark.name + ": " + mark.marks + ".";
    if (page.headline.empty())
      page.headline = sentence;
    else
      page.findings.push_back(sentence);
    page.figures.push_back({"Tensile strength", "at least " + units.text(mark.tensile_strength)});
    page.figures.push_back({"Yield strength", "at least " + units.text(mark.yield_strength)});
    if (mark.withdrawn) page.findings.push_back("Class " + mark.name + " is no longer in the standard.");
  }
  if (!answer.candidates.empty())
    page.actions.push_back("Measure the outside of the thread and its pitch, and compare the head with the list.");
  if (!answer.property_class)
    page.actions.push_back("Treat an unmarked steel head as class " + answer.unmarked_class + ".");
  page.standing_cautions = false;  // nothing is turned yet
  return page;
}

}  // namespace tauten::shared
