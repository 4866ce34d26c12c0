// An answer laid out for people, as data: renderers turn it into text for a terminal, Markdown and HTML.
#pragma once

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

#include "tauten/base/caution.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/notice_kind.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/explain/paragraph.hpp"

namespace tauten::TAUTEN_ABI {

/// A column of a table on a page. Text stands left, numbers right.
struct PageColumn {
  std::string title;
  std::string unit{};  ///< below the title
  bool number = false;
  std::size_t most = 0;  ///< a terminal wraps longer cells; 0 for never
};

/// A table on a page.
struct PageTable {
  std::string title{};
  std::vector<PageColumn> columns{};
  std::vector<std::vector<std::string>> rows{};
  std::vector<std::string> legend{};  ///< sentences below it
};

/// Sentences under a title.
struct PageList {
  std::string title;
  std::vector<std::string> items;
};

/// The same picture twice, for a terminal and for a screen or paper.
struct PageDrawing {
  std::string text{};
  std::string svg{};  ///< "" to show the text everywhere
};

/// The layout of an answer, in the order in which it is read.
struct Page {
  std::string name{};                                        ///< what the person calls the joint; "" if it has no name
  std::string headline{};                                    ///< line 1: the answer as a person at the bench wants it
  std::vector<std::string> actions;                          ///< what to do, in order
  std::vector<std::pair<std::string, std::string>> figures;  ///< name and value
  PageDrawing drawing{};
  std::vector<PageTable> tables;
  std::vector<PageList> lists;        ///< what belongs to this question only
  std::vector<std::string> findings;  ///< what stands out about these numbers
  std::vector<std::string> cautions;  ///< what can hurt, only what this answer triggers, the gravest first
  bool standing_cautions = true;      ///< a line names those that hold always
  std::vector<std::string> trust;     ///< assumptions and estimates

  /// \return line 1, with the name of the joint
  std::string first_line() const { return name.empty() ? headline : name + ": " + headline; }
  /// Puts each notice where its kind belongs; a sentence stands once.
  void add(const std::vector<Notice>& notices, const PageUnits& units = {});
  /// Leaves the gravest cautions where they are; those beyond `most_cautions` lead the findings.
  void limit_cautions();
};

/// Cautions that are read before somebody stops reading.
inline constexpr std::size_t most_cautions = 7;

/// Notices of several answers, each once, with the numbers of those that it is about.
class SharedNotices {
 public:
  void add(const Notice& notice, const std::string& number) {
    for (auto& [known, numbers] : list_)
      if (known.text == notice.text) {
        if (numbers.back() != number) numbers.push_back(number);
        return;
      }
    list_.push_back({notice, {number}});
  }
  /// \param everybody  a notice about that many needs no numbers
  /// \return "3, 4: The clamp load may be ..."
  std::vector<Notice> notices(std::size_t everybody) const {
    std::vector<Notice> out;
    for (const auto& [notice, numbers] : list_) {
      std::string about;
      if (numbers.size() < everybody)
        for (const std::string& number : numbers) about += (about.empty() ? "" : ", ") + number;
      out.push_back({notice.code, (about.empty() ? "" : about + ": ") + notice.text, notice.is_estimate});
    }
    return out;
  }

 private:
  std::vector<std::pair<Notice, std::vector<std::string>>> list_;
};

/// \return the cautions that hold for every job, in one paragraph
inline std::string standing_cautions_line() {
  std::string out = "Always: ";
  for (const Caution& caution :
       {cautions::line_of_slip, cautions::eye_protection, cautions::no_pipe, cautions::no_release})
    out += caution.text + std::string(" ");
  return out + "All cautions: tauten cautions.";
}

namespace detail {

inline void add_once(std::vector<std::string>& list, const std::string& text) {
  for (const std::string& other : list)
    if (other == text) return;
  list.push_back(text);
}

/// \return the figures as a table without titles
inline PageTable figure_table(const Page& page) {
  PageTable table{{}, {{""}, {""}}, {}, {}};
  std::size_t names = 0;
  for (const auto& [name, value] : page.figures) {
    table.rows.push_back({name, value});
    names = std::max(names, width_of(name));
  }
  table.columns.back().most = page_width - std::min(names + 2, page_width / 2);
  return table;
}

/// \return the cautions that the answer triggers, then those that hold always
inline std::vector<std::string> all_cautions(const Page& page) {
  std::vector<std::string> list = page.cautions;
  if (page.standing_cautions) list.push_back(standing_cautions_line());
  return list;
}

}  // namespace detail

inline void Page::add(const std::vector<Notice>& notices, const PageUnits& units) {
  for (const Notice& notice : notices) switch (kind_of(notice.code, notice.is_estimate)) {
      case NoticeKind::standing: break;
      case NoticeKind::hazard: detail::add_once(cautions, units.restated(notice.text)); break;
      case NoticeKind::finding: detail::add_once(findings, units.restated(notice.text)); break;
      case NoticeKind::trust: detail::add_once(trust, units.restated(notice.text)); break;
    }
}

inline void Page::limit_cautions() {
  if (cautions.size() <= most_cautions) return;
  const auto beyond = cautions.begin() + static_cast<std::ptrdiff_t>(most_cautions);
  findings.insert(findings.begin(), beyond, cautions.end());
  cautions.erase(beyond, cautions.end());
}

}  // namespace tauten::TAUTEN_ABI
