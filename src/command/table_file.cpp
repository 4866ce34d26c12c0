#include "command/table_file.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <future>
#include <thread>

#include "command/refusal.hpp"
#include "rows/csv.hpp"
#include "rows/rows.hpp"

namespace tauten::command {

namespace {

using shared::RowCell;

constexpr std::size_t block_size = 1 << 20;
constexpr std::size_t longest_record = 1 << 20;
constexpr std::string_view byte_order_mark = "\xef\xbb\xbf";

struct Closer {
  void operator()(std::FILE* file) const {
    if (file != stdin && file != stdout) std::fclose(file);
  }
};
using File = std::unique_ptr<std::FILE, Closer>;

[[noreturn]] void refuse_table(const std::string& path, const std::string& why) {
  throw Error("file", ("file " + path_text(path) + " " + why).c_str());
}

/// Hands out a file in blocks of whole records.
class Source {
 public:
  explicit Source(const std::string& path) : path_(path), file_(path == "-" ? stdin : nullptr) {
    std::error_code problem;
    if (!file_ && std::filesystem::is_directory(path, problem)) refuse_table(path, "is a folder; give a CSV file");
    errno = 0;
    if (!file_) file_.reset(std::fopen(path.c_str(), "rb"));
    if (!file_) refuse_table(path, std::string("cannot be read: ") + std::strerror(errno));
    size_ = path == "-" ? 0 : static_cast<double>(std::filesystem::file_size(path, problem));
    if (problem) size_ = 0;
  }

  /// Takes the first record, which names the columns.
  std::vector<std::string> header() {
    std::string text = whole_records(1);
    if (text.starts_with(byte_order_mark)) text.erase(0, byte_order_mark.size());
    std::vector<std::string_view> cells;
    char* first = text.data();
    if (const char* wrong = shared::csv_take_record(first, text.data() + text.size(), cells); *wrong != '\0')
      refuse_table(path_, std::string("has no good header: ") + wrong);
    std::vector<std::string> names(cells.begin(), cells.end());
    if (names == std::vector<std::string>{""})
      refuse_table(path_, "has no header; name the columns in its first line, like thread,class,torque");
    if (names.size() == 1 && names[0].find_first_of(";\t") != std::string::npos)
      refuse_table(path_, "has no commas in its first line; save it with commas between the columns");
    for (const std::string& name : names)
      if (std::count(names.begin(), names.end(), name) > 1)
        refuse_table(path_, "has two columns called " + in_quotes(name));
    rows_ = 0;
    return names;
  }

  /// The next records; "" at the end of the file.
  /// \param first_row  number of the first of them
  std::string block(std::size_t& first_row) {
    first_row = rows_ + 1;
    return whole_records(0);
  }

  /// \return how much of the file has been handed out, from 0 to 1; 0 if its length is not known
  double share() const { return size_ > 0 ? std::min(1.0, static_cast<double>(bytes_) / size_) : 0; }

 private:
  /// \param most  records, 0 for a block
  std::string whole_records(std::size_t most) {
    while (true) {
      shared::CsvRecords whole = shared::csv_whole_records(rest_);
      if (most == 1 && whole.count > 1) whole = {shared::csv_record_end(rest_), 1};
      if (whole.count > 0 && (most == 1 || rest_.size() >= block_size)) return taken(whole);
      if (whole.count == 0 && rest_.size() > longest_record)
        refuse_table(path_, fmt::format("has more than 1 MB in row {}; is a quote left open there?", rows_ + 1));
      if (!more()) {
        if (whole.size < rest_.size()) ++whole.count;  // the last line has no line break
        if (whole.size < rest_.size() && shared::csv_record_end(rest_.substr(whole.size) + "\n") == std::string::npos)
          refuse_table(path_, fmt::format("ends within a quote that row {} opens", rows_ + whole.count));
        whole.size = rest_.size();
        return taken(whole);
      }
    }
  }

  std::string taken(shared::CsvRecords whole) {
    std::string rest = rest_.substr(whole.size);
    rest_.resize(whole.size);
    std::swap(rest, rest_);
    rows_ += whole.count;
    bytes_ += whole.size;
    return rest;
  }

  bool more() {
    const std::size_t had = rest_.size();
    rest_.resize(had + block_size);
    const std::size_t read = std::fread(rest_.data() + had, 1, block_size, file_.get());
    rest_.resize(had + read);
    if (std::ferror(file_.get()) != 0) refuse_table(path_, "cannot be read to its end");
    if (rest_.find('\0', had) != std::string::npos) refuse_table(path_, "is no text; give a CSV file");
    return read > 0;
  }

  std::string path_;
  File file_;
  std::string rest_;
  std::size_t rows_ = 0;
  std::size_t bytes_ = 0;
  double size_ = 0;
};

/// Where the records go: standard output, or a file that has its name only once it is whole.
class Target {
 public:
  explicit Target(const std::string& path) : path_(path), part_(path + ".part") {
    if (!path.empty()) file_.reset(std::fopen(part_.c_str(), "wb"));
    if (!path.empty() && !file_)
      throw Error("output", ("output " + path_text(path) + " cannot be written: " + std::strerror(errno)).c_str());
  }
  Target(const Target&) = delete;
  Target& operator=(const Target&) = delete;
  ~Target() {
    if (!file_) return;
    file_.reset();
    if (!keep_) std::remove(part_.c_str());
  }

  /// The header goes out with the first records, so that a file that is refused leaves nothing behind.
  void begin(std::string header) { header_ = std::move(header); }

  void write(const std::string& records) {
    if (records.empty()) return;
    const std::string text = std::exchange(header_, "") + records;
    std::FILE* to = file_ ? file_.get() : stdout;
    errno = 0;
    if (std::fwrite(text.data(), 1, text.size(), to) != text.size() || std::fflush(to) != 0)
      throw std::runtime_error(std::string("the answer could not be written: ") + std::strerror(errno));
  }
  /// Gives the file its name.
  void finish() {
    if (!file_) return;
    keep_ = true;
    errno = 0;
    if (std::fclose(file_.release()) != 0 || std::rename(part_.c_str(), path_.c_str()) != 0)
      throw std::runtime_error(std::string("the answer could not be written: ") + std::strerror(errno));
  }
  /// Leaves what is written under another name.
  /// \return that name, "" for standard output
  std::string leave() {
    keep_ = true;
    return path_.empty() ? "" : part_;
  }

 private:
  std::string path_;
  std::string part_;
  std::string header_;
  File file_;
  bool keep_ = false;
};

/// What is the same for every block.
struct Layout {
  const shared::RowQuestion& question;
  std::vector<int> keys;            ///< of each column of the file, -1 for none
  std::vector<int> fill;            ///< the figure that fills an empty cell of a column, -1 for none
  std::vector<bool> kept;           ///< columns of the file that are copied
  std::vector<std::size_t> wanted;  ///< figures
  std::vector<std::size_t> added;   ///< figures that the file does not have itself
  std::vector<std::string> said_texts;
  std::vector<RowCell> said;
  std::size_t from_row;
};

/// One thread's block: its text, and the records that answer it.
struct Work {
  std::string text;
  std::size_t first_row = 0;
  std::string records;
  std::size_t rows = 0;
  std::size_t last_row = 0;
  std::size_t failed = 0;
  std::size_t first_failed = 0;
  std::string first_error;
};

void add_cell(std::string& record, const shared::Figure& figure, const shared::Cell& cell) {
  if (figure.kind == shared::Figure::Kind::text)
    shared::csv_add(record, cell.text);
  else if (figure.kind == shared::Figure::Kind::number)
    shared::csv_add(record, cell.number);
  else if (cell.number == cell.number)
    record += cell.number != 0 ? "true" : "false";
}

class Worker {
 public:
  explicit Worker(const Layout& layout) : layout_(layout), loop_(layout.question, layout.wanted, layout.said) {}

  void answer(Work& work) {
    work.records.clear();
    work.rows = work.failed = 0;
    char* at = work.text.data();
    const char* last = at + work.text.size();
    for (std::size_t row = work.first_row; at != last; ++row) {
      const char* wrong = shared::csv_take_record(at, last, cells_);
      if (row < layout_.from_row || (cells_.size() == 1 && cells_[0].empty())) continue;
      ++work.rows;
      work.last_row = row;
      fmt::format_to(std::back_inserter(work.records), FMT_STRING("{}"), row);
      if (*wrong == '\0' && cells_.size() == layout_.keys.size()) {
        answer_row(work, row);
      } else {
        const std::string why = *wrong != '\0' ? wrong
                                               : fmt::format("the row has {} cells, but the header has {}",
                                                             cells_.size(), layout_.keys.size());
        cells_.resize(layout_.keys.size());
        add_record(work, row, nullptr, why);
      }
    }
  }

 private:
  void answer_row(Work& work, std::size_t row) {
    columns_.clear();
    for (std::size_t i = 0; i < cells_.size(); ++i)
      if (layout_.keys[i] >= 0 && !cells_[i].empty())
        columns_.push_back({static_cast<std::size_t>(layout_.keys[i]), &cells_[i]});
    const std::span<const shared::Cell> figures = loop_.row(columns_, 0);
    add_record(work, row, figures.data(), figures.back().text);
  }

  void add_record(Work& work, std::size_t row, const shared::Cell* figures, std::string_view error) {
    std::string& out = work.records;
    const std::vector<shared::Figure>& all = layout_.question.figures;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
      if (!layout_.kept[i]) continue;
      out += ',';
      if (cells_[i].empty() && layout_.fill[i] >= 0 && figures && error.empty()) {
        const auto place = static_cast<std::size_t>(layout_.fill[i]);
        add_cell(out, all[place], figures[place]);
        if (all[place].kind == shared::Figure::Kind::number && figures[place].number == figures[place].number)
          out += describe(all[place].dimension).si_unit;
      } else {
        shared::csv_add(out, cells_[i]);
      }
    }
    for (const std::size_t place : layout_.added) {
      out += ',';
      if (figures) add_cell(out, all[place], figures[place]);
    }
    if (!figures) shared::csv_add(out, error);
    out += '\n';
    if (error.empty()) return;
    if (work.failed++ == 0) {
      work.first_failed = row;
      work.first_error = error;
    }
  }

  const Layout& layout_;
  shared::RowLoop loop_;
  std::vector<std::string_view> cells_;
  std::vector<shared::RowColumn> columns_;
};

Layout layout_of(const TableOptions& options, const shared::RowQuestion& question,
                 const std::vector<std::string>& names, const std::vector<std::pair<std::string, std::string>>& said) {
  Layout out{question, {}, {}, {}, {}, {}, {}, {}, options.from_row};
  out.said_texts.reserve(said.size());  // the cells point into it
  for (const auto& [key, text] : said)
    if (const int place = shared::key_called(question, key); place >= 0)
      out.said.push_back({static_cast<std::size_t>(place), out.said_texts.emplace_back(text)});
  out.keys = shared::try_columns(question, names, out.said).value();
  std::vector<std::string> wanted;
  for (const std::string_view name : shared::split(options.columns, ','))
    if (!name.empty()) wanted.emplace_back(name);
  out.wanted = shared::try_figures(question, wanted).value();
  const auto is_figure = [&](std::size_t place, std::size_t column) {
    const std::string& figure = question.figures[place].name;
    return names[column] == figure ||
           (out.keys[column] >= 0 && shared::key_called(question, figure) == out.keys[column]);
  };
  for (std::size_t i = 0; i < names.size(); ++i) {
    int fill = -1;
    bool kept = names[i] != "row";  // what an earlier run wrote gives way
    for (const std::size_t place : out.wanted) {
      if (!is_figure(place, i)) continue;
      kept &= out.keys[i] >= 0;
      fill = static_cast<int>(place);
    }
    out.fill.push_back(fill);
    out.kept.push_back(kept);
  }
  for (const std::size_t place : out.wanted) {
    bool has = false;
    for (std::size_t i = 0; i < names.size(); ++i) has |= out.kept[i] && is_figure(place, i);
    if (!has) out.added.push_back(place);
  }
  return out;
}

std::string header_of(const Layout& layout, const std::vector<std::string>& names) {
  std::string header = "row";
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (!layout.kept[i]) continue;
    header += ',';
    shared::csv_add(header, names[i]);
  }
  for (const std::size_t place : layout.added) header += "," + layout.question.figures[place].name;
  return header + "\n";
}

/// Tells on a terminal how far it is; says nothing elsewhere.
class Progress {
 public:
  explicit Progress(const Source& source) : source_(source) {}
  ~Progress() {
    if (shown_) std::fputs("\r\033[K", stderr);
  }
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;

  void show(std::size_t rows) {
    const auto now = std::chrono::steady_clock::now();
    if (!terminal_ || now < next_) return;
    next_ = now + std::chrono::milliseconds(200);
    const double seconds = std::chrono::duration<double>(now - start_).count();
    std::string line = fmt::format("\r\033[K{} rows", rows);
    if (const double share = source_.share(); share > 0)
      line += fmt::format(", {:.0f} %, {:.0f} s left", 100 * share, seconds * (1 - share) / share);
    std::fputs(line.c_str(), stderr);
    std::fflush(stderr);
    shown_ = true;
  }

 private:
  const Source& source_;
  const bool terminal_ = isatty(STDERR_FILENO) != 0;
  const std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
  std::chrono::steady_clock::time_point next_ = start_ + std::chrono::milliseconds(200);
  bool shown_ = false;
};

std::atomic<bool> interrupted = false;

/// Blocks are answered by all threads while the blocks before them are written and those after them are read.
/// \return all work as one, without its texts
Work answer_blocks(Source& source, Target& target, const Layout& layout, unsigned threads) {
  std::vector<std::unique_ptr<Worker>> workers;
  for (unsigned i = 0; i < threads; ++i) workers.push_back(std::make_unique<Worker>(layout));
  std::vector<Work> coming(threads), going(threads), gone(threads);
  Progress progress(source);
  Work all;
  const auto read = [&] {
    std::size_t count = 0;
    while (count < threads && !interrupted && !(coming[count].text = source.block(coming[count].first_row)).empty())
      ++count;
    return count;
  };
  const auto write = [&](std::size_t count) {
    for (const Work& work : std::span(gone).first(count)) {
      target.write(work.records);
      if (work.rows > 0) all.last_row = work.last_row;
      all.rows += work.rows;
      if (all.failed == 0 && work.failed > 0) {
        all.first_failed = work.first_failed;
        all.first_error = work.first_error;
      }
      all.failed += work.failed;
    }
    progress.show(all.rows);
  };
  std::size_t read_in = read();
  std::size_t answered = 0;
  while (read_in > 0 || answered > 0) {
    std::swap(coming, going);
    std::vector<std::future<void>> running;
    for (std::size_t i = 0; i < read_in; ++i)
      running.push_back(std::async(threads > 1 ? std::launch::async : std::launch::deferred,
                                   [&, i] { workers[i]->answer(going[i]); }));
    write(answered);
    answered = read_in;
    read_in = read();
    for (std::future<void>& one : running) one.get();
    std::swap(going, gone);
  }
  return all;
}

}  // namespace

bool TableOptions::is_table() const {
  std::string ending = file.size() < 4 ? "" : file.substr(file.size() - 4);
  for (char& c : ending) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return file == "-" || ending == ".csv";
}

std::shared_ptr<TableOptions> add_table_options(CLI::App& verb, const char* type_name, const char* help) {
  auto options = std::make_shared<TableOptions>();
  options->option = verb.add_option("--file", options->file, help);
  options->option->type_name(type_name);
  const auto beside = [&](CLI::Option* option, const char* type) { option->type_name(type)->needs(options->option); };
  beside(verb.add_option("--output", options->output, "Where the answers go"), "OUT.csv");
  beside(verb.add_option("--columns", options->columns, "Columns of the answer, if not the usual ones"),
         "verdict,right_torque");
  beside(verb.add_option("--from-row", options->from_row, "Go on at this row of the table")
             ->check(CLI::Range(std::size_t{1}, ~std::size_t{0} >> 1)),
         "1");
  beside(verb.add_option("--threads", options->threads, "How many work at a table; all if not said")
             ->check(CLI::Range(1u, 256u)),
         "2");
  return options;
}

void answer_table(Program& program, const TableOptions& options, std::string_view name,
                  const std::vector<std::pair<std::string, std::string>>& said) {
  if (program.json) throw Error("json", "a table is answered by a table; leave --json out");
  const shared::RowQuestion& question = *shared::try_row_question(name).value();
  std::vector<shared::Said> words;
  for (const auto& [key, text] : said) words.push_back({key, text});
  if (const auto problem = question.check(words)) throw *problem;
  Source source(options.file);
  const std::vector<std::string> names = source.header();
  const Layout layout = [&] {
    try {
      return layout_of(options, question, names, said);
    } catch (const Error& error) {
      throw Error(error.argument(), ("file " + path_text(options.file) + ": " + error.what()).c_str());
    }
  }();
  Target target(options.output);
  target.begin(header_of(layout, names));
  const unsigned machine = std::max(1u, std::thread::hardware_concurrency());
  interrupted = false;
  std::signal(SIGINT, [](int) { interrupted = true; });
  const Work all = answer_blocks(source, target, layout, options.threads > 0 ? options.threads : machine);
  std::signal(SIGINT, SIG_DFL);
  if (interrupted) {
    const std::string left = target.leave();
    program.code = other_failure;
    program.complaints += fmt::format("tauten: stopped after row {}{}; go on with --from-row {}\n", all.last_row,
                                      left.empty() ? "" : ", rows so far are in " + path_text(left), all.last_row + 1);
    return;
  }
  if (all.rows == 0) refuse_table(options.file, fmt::format("has no row {}", options.from_row));
  target.finish();
  if (all.failed == 0) return;
  program.code = some_joints_failed;
  program.complaints +=
      fmt::format("tauten: {} of {} rows have no answer; the column error says why, first in row {}: {}\n", all.failed,
                  all.rows, all.first_failed, all.first_error);
}

}  // namespace tauten::command
