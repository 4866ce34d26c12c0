// Tables as text: RFC 4180, with lines that end in LF or CRLF; cells stand between commas or semicolons.
#pragma once

#include <algorithm>
#include <charconv>
#include <string>
#include <string_view>
#include <vector>

namespace tauten::shared {

namespace detail {

/// \param text  begins with a quote
/// \return the place behind the quote that closes it, or npos
inline std::size_t behind_quotes(std::string_view text) {
  for (std::size_t at = 1; (at = text.find('"', at)) != std::string_view::npos; at += 2)
    if (text.substr(at + 1, 1) != "\"") return at + 1;
  return std::string_view::npos;
}

inline std::string_view without_blanks(std::string_view text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t')) text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.back() == '\r')) text.remove_suffix(1);
  return text;
}

}  // namespace detail

/// \return what stands between the cells of a table, by its first line
inline char csv_separator(std::string_view header) {
  return header.find(',') == std::string_view::npos && header.find(';') != std::string_view::npos ? ';' : ',';
}

/// \return where the first record of `text` ends, behind its line break; npos if it does not end within the text
inline std::size_t csv_record_end(std::string_view text, char separator = ',') {
  const char ends[] = {separator, '\n', '\0'};
  for (std::size_t at = 0;;) {
    // A quote opens a cell only at its start; elsewhere it is a plain character, as the inch mark in 5/8".
    if (text.substr(at, 1) == "\"") {
      const std::size_t behind = detail::behind_quotes(text.substr(at));
      if (behind == std::string_view::npos) return behind;
      at += behind;
    }
    at = text.find_first_of(ends, at);
    if (at == std::string_view::npos) return at;
    if (text[at++] == '\n') return at;
  }
}

/// Whole records at the start of a text.
struct CsvRecords {
  std::size_t size = 0;   ///< bytes up to the end of the last whole record
  std::size_t count = 0;  ///< records, empty lines among them
  std::size_t last = 0;   ///< where the last of them begins
};

inline CsvRecords csv_whole_records(std::string_view text, char separator = ',') {
  CsvRecords whole;
  if (text.find('"') == std::string_view::npos) {
    whole.size = text.rfind('\n') + 1;  // npos + 1 is 0
    const auto lines = std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(whole.size), '\n');
    whole.count = static_cast<std::size_t>(lines);
    if (whole.size > 1) whole.last = text.rfind('\n', whole.size - 2) + 1;
    return whole;
  }
  for (std::size_t end; (end = csv_record_end(text.substr(whole.size), separator)) != std::string_view::npos;
       ++whole.count) {
    whole.last = whole.size;
    whole.size += end;
  }
  return whole;
}

/// Takes the first record off `rest` and cuts it into cells without the blanks around them.
/// \param rest   text of whole records; doubled quotes are made single in place
/// \param cells  point into the text
/// \return "", or what is wrong with the record
inline const char* csv_take_record(char*& first, const char* last, std::vector<std::string_view>& cells,
                                   char separator = ',') {
  const char ends[] = {separator, '\n', '\0'};
  cells.clear();
  const char* wrong = "";
  while (true) {
    const std::string_view rest(first, static_cast<std::size_t>(last - first));
    std::size_t at = 0;
    if (rest.substr(0, 1) == "\"") {
      at = std::min(detail::behind_quotes(rest), rest.size());
      char* to = first + 1;
      for (std::size_t from = 1; from + 1 < at; ++from) {
        *to++ = rest[from];
        if (rest[from] == '"') ++from;
      }
      cells.push_back(detail::without_blanks({first + 1, static_cast<std::size_t>(to - first - 1)}));
      std::fill(to, first + at, ' ');  // a line break that moved up must not be counted twice
      const std::size_t end = std::min(rest.find_first_of(ends, at), rest.size());
      if (!detail::without_blanks(rest.substr(at, end - at)).empty()) wrong = "a cell goes on behind its closing quote";
      at = end;
    } else {
      while (at < rest.size() && rest[at] != separator && rest[at] != '\n') ++at;
      cells.push_back(detail::without_blanks(rest.substr(0, at)));
    }
    const bool more = at < rest.size() && rest[at] == separator;
    first += std::min(at + 1, rest.size());
    if (!more) return wrong;
  }
}

/// Adds a cell to a record, in quotes if it needs them. The commas stand between the calls.
inline void csv_add(std::string& record, std::string_view text, char separator = ',') {
  const char quoted[] = {separator, '"', '\r', '\n', '\0'};
  if (text.find_first_of(quoted) == std::string_view::npos &&
      (text.empty() || (text.front() != ' ' && text.back() != ' '))) {
    record += text;
    return;
  }
  record += '"';
  for (const char c : text) {
    if (c == '"') record += '"';
    record += c;
  }
  record += '"';
}

/// Adds a number that is read back as the very same; nothing for NaN.
inline void csv_add(std::string& record, double number) {
  if (number != number) return;
  char text[32];
  record.append(text, std::to_chars(text, text + sizeof text, number).ptr);
}

}  // namespace tauten::shared
