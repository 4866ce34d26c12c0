#include "command/toml_file.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <string_view>

#include "command/refusal.hpp"
#include "tauten/base/visible_text.hpp"

namespace tauten::command {

void refuse_file(const std::string& path, const std::string& why) {
  throw Error("file", ("file " + path_text(path) + " " + why).c_str());
}

namespace {

constexpr std::size_t most_bytes = 1'000'000;

std::string content_of(const std::string& path) {
  std::error_code problem;
  if (std::filesystem::is_directory(path, problem))
    refuse_file(path, "is a folder; give a TOML file with [[joint]] tables");
  errno = 0;
  std::ifstream stream(path, std::ios::binary);
  if (!stream) refuse_file(path, std::string("cannot be read: ") + std::strerror(errno));
  std::string content(most_bytes + 1, '\0');
  stream.read(content.data(), static_cast<std::streamsize>(content.size()));
  if (stream.bad()) refuse_file(path, "cannot be read to its end");
  content.resize(static_cast<std::size_t>(stream.gcount()));
  if (content.size() > most_bytes) refuse_file(path, "is larger than 1 MB, too large for a list of joints");
  if (content.find('\0') != std::string::npos) refuse_file(path, "is not text; give a TOML file with [[joint]] tables");
  return content;
}

constexpr int most_levels = 32;

/// What the parser is not given, as it would not survive it: deep nesting, keys of many parts, a header with three
/// brackets, letters outside ASCII in a bare key. It passes over texts and comments.
class Scan {
 public:
  explicit Scan(std::string_view text) : text_(text) {
    if (text_.starts_with("\xef\xbb\xbf")) place_ = 3;
  }

  /// \return what is wrong with the line that `line` tells then, or ""
  const char* problem() {
    while (place_ < text_.size()) {
      const char c = text_[place_];
      if (c == '"' || c == '\'') {
        pass_text(c);
        begins_line_ = false;
        continue;
      }
      ++place_;
      if (c == '#') place_ = std::min(text_.find('\n', place_), text_.size());
      if (c == '\n') begin_line();
      if (c == '\n' || c == '#' || c == ' ' || c == '\t' || c == '\r') continue;
      if (begins_line_ && levels_ == 0 && c == '[') is_header_ = true;
      begins_line_ = false;
      if (static_cast<unsigned char>(c) >= 0x80) return "a name with other letters than a to z must be in quotes";
      if (c == '[' || c == '{') ++levels_;
      if (c == ']' || c == '}') --levels_;
      if (is_header_ && levels_ > 2) return "a header has two brackets at most, as in [[joint]]";
      if (levels_ > most_levels) return "it is nested too deep";
      dots_ = c == '.' ? dots_ + 1 : c == ',' || c == '=' || c == '{' ? 0 : dots_;
      if (dots_ > most_levels) return "a name has too many parts";
    }
    return "";
  }
  int line() const { return 1 + static_cast<int>(std::count(text_.begin(), text_.begin() + place_of_problem(), '\n')); }

 private:
  std::ptrdiff_t place_of_problem() const { return static_cast<std::ptrdiff_t>(place_ - 1); }
  void begin_line() {
    if (is_header_ || levels_ < 0) levels_ = 0;  // the parser refuses a header without an end by itself
    begins_line_ = true;
    is_header_ = false;
    dots_ = 0;
  }
  /// Passes over a text in quotes; one without its end over the rest of the line, which the parser refuses.
  void pass_text(char quote) {
    const std::string three(3, quote);
    const bool is_long = text_.substr(place_, 3) == three;
    place_ += is_long ? 3 : 1;
    for (; place_ < text_.size(); ++place_) {
      if (quote == '"' && text_[place_] == '\\') {
        ++place_;
      } else if (is_long ? text_.substr(place_, 3) == three : text_[place_] == quote) {
        place_ += is_long ? 3 : 1;
        for (int more = 0; is_long && more < 2 && place_ < text_.size() && text_[place_] == quote; ++more) ++place_;
        return;
      } else if (!is_long && text_[place_] == '\n') {
        return;
      }
    }
    place_ = text_.size();
  }

  std::string_view text_;
  std::size_t place_ = 0;
  int levels_ = 0;
  int dots_ = 0;
  bool begins_line_ = true;
  bool is_header_ = false;
};

toml::table table_of(const std::string& path, const std::string& content) {
  Scan scan(content);
  if (const std::string why = scan.problem(); !why.empty())
    refuse_file(path, fmt::format("is not valid TOML in line {}: {}", scan.line(), why));
  try {
    return toml::parse(content);
  } catch (const toml::parse_error& problem) {
    refuse_file(path, fmt::format("is not valid TOML in line {}: {}", problem.source().begin.line,
                                  detail::visible(problem.description(), 160)));
  }
}

}  // namespace

toml::table toml_file(const std::string& path, std::string& content) {
  content = content_of(path);
  return table_of(path, content);
}

}  // namespace tauten::command
