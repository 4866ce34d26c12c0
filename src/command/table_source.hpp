// A table as it is read: a CSV file, a pipe or standard input, in blocks of whole records.
#pragma once

#include <cstdio>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "rows/csv.hpp"

namespace tauten::command {

struct FileCloser {
  void operator()(std::FILE* file) const {
    if (file != stdin && file != stdout) std::fclose(file);
  }
};
using File = std::unique_ptr<std::FILE, FileCloser>;

/// \throws Error  "file 'x.csv' ..."
[[noreturn]] void refuse_table(const std::string& path, const std::string& why);

/// Hands out a file in blocks of whole records, each of which ends in a line break. Once a StopSignal is raised it hands
/// out nothing more.
class Source {
 public:
  /// \param path  "-" for standard input
  explicit Source(const std::string& path);

  /// Takes the first record that is not a comment; it names the columns, and shows what stands between cells.
  std::vector<std::string> header();

  /// Goes over the rows before `row`.
  void skip_to(std::size_t row);

  /// The next records; "" at the end.
  /// \param first_row  number of the first of them
  /// \param size       bytes that the records may have; a longer one comes alone
  std::string block(std::size_t& first_row, std::size_t size);

  /// \return true if all rows have been handed out
  bool at_end() const { return ended_ && rest().empty(); }
  /// \return the number of the row that comes next
  std::size_t row() const { return row_; }
  /// \return the line of the file in which it begins
  std::size_t line() const { return line_; }
  /// \return what stands between the cells
  char separator() const { return separator_; }
  /// \return bytes that have been handed out or skipped
  std::size_t taken() const { return taken_; }
  /// \return bytes of the whole file; 0 if that is not known
  std::size_t size() const { return size_; }

 private:
  std::string_view rest() const { return std::string_view(text_).substr(at_); }
  shared::CsvRecords next_records(std::size_t size);
  void take(const shared::CsvRecords& records);
  bool fill();
  void close_last_record();

  std::string path_;
  File file_;
  std::string text_;
  std::size_t at_ = 0;   ///< where in the text the records begin that are not yet handed out
  std::size_t row_ = 0;  ///< the number of the first of them; the header is row 0
  std::size_t line_ = 1;
  char separator_ = ',';
  std::size_t taken_ = 0;
  std::size_t size_ = 0;
  bool ended_ = false;
};

}  // namespace tauten::command
