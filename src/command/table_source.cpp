#include "command/table_source.hpp"

#include <fmt/format.h>
#include <poll.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <cstring>
#include <filesystem>
#include <unordered_set>

#include "command/refusal.hpp"
#include "command/stop_signal.hpp"

namespace tauten::command {

namespace {

// A file up to this size is read to its end before the first row is answered: one that is refused leaves nothing behind.
constexpr std::size_t chunk_size = 1 << 20;
constexpr std::size_t longest_record = 1 << 20;
constexpr std::string_view byte_order_mark = "\xef\xbb\xbf";

}  // namespace

void refuse_table(const std::string& path, const std::string& why) {
  throw Error("file", ("file " + path_text(path) + " " + why).c_str());
}

Source::Source(const std::string& path) : path_(path), file_(path == "-" ? stdin : nullptr) {
  std::error_code problem;
  if (!file_ && std::filesystem::is_directory(path, problem)) refuse_table(path, "is a folder; give a CSV file");
  errno = 0;
  if (!file_) file_.reset(std::fopen(path.c_str(), "rb"));
  if (!file_) refuse_table(path, std::string("cannot be read: ") + std::strerror(errno));
  const std::uintmax_t size = path == "-" ? 0 : std::filesystem::file_size(path, problem);
  if (!problem) size_ = size;
}

std::vector<std::string> Source::header() {
  std::string text;
  do {
    const shared::CsvRecords first = next_records(1);
    text = rest().substr(0, first.size);
    if (text.starts_with(byte_order_mark)) text.erase(0, byte_order_mark.size());
    take(first);
  } while (text.starts_with('#'));
  row_ = 1;
  separator_ = shared::csv_separator(text);
  std::vector<std::string_view> cells;
  char* at = text.data();
  if (const char* wrong = shared::csv_take_record(at, text.data() + text.size(), cells, separator_); *wrong != '\0')
    refuse_table(path_, std::string("has an invalid header: ") + wrong);
  std::vector<std::string> names(cells.begin(), cells.end());
  if (names == std::vector<std::string>{""})
    refuse_table(path_, "has no header; name the columns in its first line, like thread,class,torque");
  if (names.size() == 1 && names[0].find('\t') != std::string::npos)
    refuse_table(path_, "has no commas in its first line; save it with commas between the columns");
  std::unordered_set<std::string_view> seen;
  for (const std::string& name : names)
    if (!name.empty() && !seen.insert(name).second) refuse_table(path_, "has two columns named " + in_quotes(name));
  return names;
}

void Source::skip_to(std::size_t row) {
  while (row_ < row) {
    shared::CsvRecords records = next_records(chunk_size);
    if (records.count == 0) return;
    if (records.count > row - row_) {
      records = {};
      for (; records.count < row - row_; ++records.count)
        records.size += shared::csv_record_end(rest().substr(records.size), separator_);
    }
    take(records);
  }
}

std::string Source::block(std::size_t& first_row, std::size_t size) {
  first_row = row_;
  const shared::CsvRecords records = next_records(size);
  std::string text(rest().substr(0, records.size));
  take(records);
  return text;
}

shared::CsvRecords Source::next_records(std::size_t size) {
  if (rest().size() < size) fill();
  while (!StopSignal::is_raised()) {
    const shared::CsvRecords whole = shared::csv_whole_records(rest().substr(0, size), separator_);
    if (whole.count > 0) return whole;
    if (const std::size_t end = shared::csv_record_end(rest(), separator_); end != std::string::npos) return {end, 1};
    if (rest().size() > longest_record)
      refuse_table(path_, fmt::format("has more than 1 MB in row {}; check for a quote left open there", row_));
    if (!fill() && ended_) break;
  }
  return {};
}

void Source::take(const shared::CsvRecords& records) {
  const std::string_view text = rest().substr(0, records.size);
  line_ += static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
  at_ += records.size;
  row_ += records.count;
  taken_ += records.size;
}

/// Reads on. Once there is something to hand out, a pipe is not waited for longer than a second: what comes slowly is
/// answered as it comes.
/// \return true if there is more than before
bool Source::fill() {
  using Clock = std::chrono::steady_clock;
  if (ended_) return false;
  text_.erase(0, at_);
  at_ = 0;
  const std::size_t had = text_.size();
  std::size_t has = had;
  text_.resize(had + chunk_size);
  Clock::time_point first_came = Clock::now();
  while (has < text_.size() && !StopSignal::is_raised() &&
         (has == 0 || Clock::now() - first_came < std::chrono::seconds(1))) {
    // Asking first, for a moment only: a thread that slept in read() would not hear of the stop.
    pollfd asked{fileno(file_.get()), POLLIN, 0};
    if (poll(&asked, 1, 100) <= 0) continue;
    const ssize_t came = ::read(asked.fd, text_.data() + has, text_.size() - has);
    if (came < 0 && (errno == EINTR || errno == EAGAIN)) continue;
    if (came < 0) refuse_table(path_, std::string("cannot be read to its end: ") + std::strerror(errno));
    if (has == 0) first_came = Clock::now();
    if (std::memchr(text_.data() + has, '\0', static_cast<std::size_t>(came)))
      refuse_table(path_, "is not text; give a CSV file");
    has += static_cast<std::size_t>(came);
    ended_ = came == 0;
    if (ended_) break;
  }
  text_.resize(has);
  if (ended_) close_last_record();
  return text_.size() > had;
}

/// The last line may have no line break.
void Source::close_last_record() {
  if (text_.empty()) return;
  const shared::CsvRecords whole = shared::csv_whole_records(text_, separator_);
  if (whole.size == text_.size()) return;
  text_ += '\n';
  if (shared::csv_record_end(std::string_view(text_).substr(whole.size), separator_) == std::string::npos)
    refuse_table(path_, fmt::format("ends within a quote that row {} opens", row_ + whole.count));
}

}  // namespace tauten::command
