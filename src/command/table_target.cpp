#include "command/table_target.hpp"

#include <fmt/format.h>
#include <sys/file.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <utility>

#include "command/refusal.hpp"

namespace tauten::command {

namespace {

namespace fs = std::filesystem;

[[noreturn]] void refuse_output(const std::string& path, const std::string& why) {
  throw Error("output", ("output " + path_text(path) + " " + why).c_str());
}

/// \return the file that a name means, be there one or not
std::string behind_links(fs::path path) {
  std::error_code problem;
  for (int i = 0; i < 40 && fs::is_symlink(path, problem); ++i) path = path.parent_path() / fs::read_symlink(path);
  return path;
}

/// What an earlier run wrote.
struct Saved {
  bool is_foreign = false;   ///< something else than answers with this header
  std::size_t last_row = 0;  ///< 0 if it holds no row
  std::size_t size = 0;      ///< bytes up to the end of that row; a power cut may leave half a row behind it
};

Saved saved_in(const std::string& part, const std::string& header) {
  Saved saved;
  const File file(std::fopen(part.c_str(), "rb"));
  if (!file) return saved;
  std::string text;
  bool begun = false;
  while (true) {
    const std::size_t had = text.size();
    text.resize(had + (1 << 20));
    text.resize(had + std::fread(text.data() + had, 1, 1 << 20, file.get()));
    if (text.size() == had) return saved;
    if (!std::exchange(begun, true)) {
      saved.is_foreign = !text.starts_with(header) && !header.starts_with(text);
      if (!text.starts_with(header)) return saved;
      saved.size = header.size();
      text.erase(0, header.size());
    }
    const shared::CsvRecords whole = shared::csv_whole_records(text, header[3]);  // behind "row"
    if (whole.count == 0) continue;
    const auto read = std::from_chars(text.data() + whole.last, text.data() + whole.size, saved.last_row);
    saved.is_foreign = read.ec != std::errc();
    if (saved.is_foreign) return saved;
    saved.size += whole.size;
    text.erase(0, whole.size);
  }
}

}  // namespace

Target::Target(const std::string& path, std::string header, std::size_t from_row, const std::string& source)
    : path_(path), header_(std::move(header)) {
  if (path.empty()) return;
  std::error_code problem;
  const fs::file_status status = fs::status(path, problem);
  if (fs::is_directory(status)) refuse_output(path, "is a folder; give the name of a file");
  const bool straight = fs::exists(status) && !fs::is_regular_file(status);  // a pipe, a device: no name to be given
  file_name_ = straight ? path : behind_links(path);
  for (const std::string& name : {file_name_, file_name_ + ".part"})
    if (!straight && fs::equivalent(name, source, problem))
      refuse_output(path, "would be written over the table that is read; give the answers another name");
  if (!straight) part_ = file_name_ + ".part";
  errno = 0;
  file_.reset(std::fopen((straight ? file_name_ : part_).c_str(), straight ? "wb" : "ab"));
  if (!file_) refuse_output(path, std::string("cannot be written: ") + std::strerror(errno));
  if (straight) return;
  take_alone();
  resume(from_row);
}

Target::~Target() {
  if (!file_) return;
  if (!keep_ && !part_.empty()) std::remove(part_.c_str());
  file_.reset();  // last, as it ends the lock
}

/// Refuses a file that another run writes. The lock ends with the process, however that ends.
void Target::take_alone() {
  const int descriptor = fileno(file_.get());
  struct stat opened{};
  struct stat named{};
  const bool alone = flock(descriptor, LOCK_EX | LOCK_NB) == 0;
  const bool still_there = fstat(descriptor, &opened) == 0 && stat(part_.c_str(), &named) == 0 &&
                           opened.st_ino == named.st_ino && opened.st_dev == named.st_dev;
  if (!alone || !still_there)
    refuse_output(path_, "is being written by another run; wait for its end, or give these answers another name");
}

/// Looks what an earlier run left, and makes ready to write behind it.
void Target::resume(std::size_t from_row) {
  const Saved saved = saved_in(part_, header_);
  const std::string remove = ", or remove " + path_text(part_);
  if (saved.is_foreign)
    refuse_output(path_, "was started in " + path_text(part_) + " with other columns; ask for the same ones" + remove);
  if (saved.last_row > 0 && from_row != saved.last_row + 1)
    refuse_output(path_, fmt::format("has its rows up to {} from an earlier run; resume with --from-row {}{}",
                                     saved.last_row, saved.last_row + 1, remove));
  std::error_code problem;
  fs::resize_file(part_, saved.last_row > 0 ? saved.size : 0, problem);
  if (problem) refuse_output(path_, "cannot be resumed: " + problem.message());
  holds_rows_ = keep_ = saved.last_row > 0;
}

void Target::fail_to_write() {
  const int problem = errno;
  std::string what = "the answer could not be written";
  if (!part_.empty()) {
    what = "output " + path_text(path_) + " could not be written to its end";
    if (file_) std::fflush(file_.get());
    const Saved saved = saved_in(part_, header_);
    keep_ = saved.last_row > 0;
    if (keep_)
      what += fmt::format("; its rows up to {} are in {}, resume with --from-row {}", saved.last_row, path_text(part_),
                          saved.last_row + 1);
  }
  throw std::system_error(problem, std::generic_category(), what);
}

void Target::write(const std::string& records) {
  if (records.empty()) return;
  const std::string text = (holds_rows_ ? "" : header_) + records;
  std::FILE* to = file_ ? file_.get() : stdout;
  errno = 0;
  if (std::fwrite(text.data(), 1, text.size(), to) != text.size() || std::fflush(to) != 0) fail_to_write();
  holds_rows_ = true;
}

void Target::finish() {
  if (!file_) return;
  keep_ = true;
  errno = 0;
  if (std::fclose(file_.release()) != 0) fail_to_write();
  if (!part_.empty() && std::rename(part_.c_str(), file_name_.c_str()) != 0) fail_to_write();
}

std::string Target::leave() {
  keep_ = holds_rows_;
  return holds_rows_ ? part_ : "";
}

}  // namespace tauten::command
