// An answer laid out for people, as data: renderers turn it into text for a terminal, Markdown and HTML.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "tauten/base/caution.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/notice_kind.hpp"

namespace tauten {

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

/// The same picture twice, for a terminal and for a screen or paper.
struct PageDrawing {
  std::string text{};
  std::string svg{};
};

/// Cautions on one page, so that they are read.
inline constexpr std::size_t most_cautions = 7;

/// The layout of an answer, in the order in which it is read.
struct Page {
  std::string name{};                                        ///< what the person calls the joint; "" if it has no name
  std::string headline{};                                    ///< line 1: the answer as a person at the bench wants it
  std::vector<std::string> actions;                          ///< what to do, in order
  std::vector<std::pair<std::string, std::string>> figures;  ///< name and value
  PageDrawing drawing{};
  std::vector<PageTable> tables;
  std::vector<std::string> findings;  ///< what stands out about these numbers
  std::vector<std::string> cautions;  ///< what can hurt, only what this answer triggers
  bool standing_cautions = true;      ///< a line names those that hold always
  std::vector<std::string> trust;     ///< assumptions and estimates

  /// \return line 1, with the name of the joint
  std::string first_line() const { return name.empty() ? headline : name + ": " + headline; }
  /// Puts each notice where its kind belongs; a sentence stands once.
  void add(const std::vector<Notice>& notices);
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

}  // namespace detail

inline void Page::add(const std::vector<Notice>& notices) {
  for (const Notice& notice : notices) switch (kind_of(notice.code, notice.is_estimate)) {
      case NoticeKind::standing: break;
      case NoticeKind::hazard: detail::add_once(cautions, notice.text); break;
      case NoticeKind::finding: detail::add_once(findings, notice.text); break;
      case NoticeKind::trust: detail::add_once(trust, notice.text); break;
    }
}

}  // namespace tauten
