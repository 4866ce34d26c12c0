// A page in the form that is asked for.
#pragma once

#include <string>
#include <string_view>

#include "tauten/base/outcome.hpp"
#include "tauten/base/visible_text.hpp"
#include "tauten/base/words.hpp"
#include "tauten/explain/page_markup.hpp"
#include "tauten/explain/page_text.hpp"

namespace tauten::TAUTEN_ABI {

/// What a page is written as. Notebooks take HTML.
enum class PageFormat : unsigned char { text, markdown, html };

template <>
struct Words<PageFormat> {
  static constexpr const char* list[] = {"text", "markdown", "html"};
};

/// \return the form with this name, or an error with all names
inline Outcome<PageFormat> try_page_format(std::string_view name) {
  std::string known;
  for (std::size_t i = 0; i < std::size(Words<PageFormat>::list); ++i) {
    if (name == Words<PageFormat>::list[i]) return static_cast<PageFormat>(i);
    known += (i > 0 ? ", " : "") + std::string(Words<PageFormat>::list[i]);
  }
  return Error("format", ("format " + detail::shown(name) + " is not known; write " + known).c_str());
}

/// \param paint  colours words in the tables of a text
inline std::string page_as(const Page& page, PageFormat format, PaintCell paint = nullptr) {
  switch (format) {
    case PageFormat::markdown: return page_markdown(page);
    case PageFormat::html: return page_html(page);
    default: return page_text(page, paint);
  }
}

}  // namespace tauten::TAUTEN_ABI
