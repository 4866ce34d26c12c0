// Where the answers to a table go: standard output, a pipe, or a file that has its name only once it is whole.
#pragma once

#include <string>

#include "command/table_source.hpp"

namespace tauten::command {

/// A file is written under its name with `.part` behind it, by one run at a time. What an earlier run left there is resumed,
/// never overwritten; what was written before a disk was full stays.
class Target {
 public:
  /// \param path      "" for standard output
  /// \param header    the record that names the columns
  /// \param from_row  the first row that will be written
  /// \param source    the table that is read
  /// \throws Error  if the answers cannot go there
  Target(const std::string& path, std::string header, std::size_t from_row, const std::string& source);
  Target(const Target&) = delete;
  Target& operator=(const Target&) = delete;
  ~Target();

  /// The header goes out with the first records, so that a table that is refused leaves nothing behind.
  void write(const std::string& records);
  bool holds_rows() const { return holds_rows_; }
  /// Gives the file its name.
  void finish();
  /// Leaves what is written as it is.
  /// \return the file that holds it, "" if there is none
  std::string leave();

 private:
  void take_alone();
  void resume(std::size_t from_row);
  [[noreturn]] void fail_to_write();

  std::string path_;
  std::string file_name_;  ///< behind the links
  std::string part_;       ///< "" for what is written straight away
  std::string header_;
  File file_;
  bool holds_rows_ = false;
  bool keep_ = false;
};

}  // namespace tauten::command
