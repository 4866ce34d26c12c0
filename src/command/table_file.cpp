#include "command/table_file.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <atomic>
#include <charconv>
#include <chrono>
#include <cmath>
#include <condition_variable>
#include <cstdio>
#include <future>
#include <mutex>
#include <thread>

#include "command/refusal.hpp"
#include "command/stop_signal.hpp"
#include "command/table_source.hpp"
#include "command/table_target.hpp"
#include "rows/csv.hpp"
#include "rows/rows.hpp"
#include "tauten/explain/page.hpp"

namespace tauten::command {

namespace {

using shared::RowCell;

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
  bool shop = false;  ///< figures in the units of a workshop, which stand in the names of their columns
  char separator = ',';
  std::size_t kept_torque = absent_column;  ///< a column of torques beside those that are answered

  static constexpr std::size_t absent_column = static_cast<std::size_t>(-1);
  /// Where semicolons stand between the cells, numbers have a comma.
  bool decimal_comma() const { return separator == ';'; }
};

/// What a column of figures is called.
std::string name_of(const shared::AnswerColumn& figure, bool shop) {
  const std::string unit = describe(figure.dimension).shop_unit;
  const bool has_unit = shop && figure.kind == shared::AnswerColumn::Kind::number && !unit.empty();
  return has_unit ? figure.name + "_" + unit : figure.name;
}

/// How answering went, of a block or of all of them.
struct Tally {
  std::size_t rows = 0;
  std::size_t last_row = 0;
  std::size_t failed = 0;
  std::size_t first_failed = 0;
  std::size_t line_failed = 0;  ///< the line of the file with the first of them
  std::string first_error;
  bool stopped = false;  ///< before the last row

  void add(const Tally& next) {
    if (next.rows > 0) last_row = next.last_row;
    if (failed == 0 && next.failed > 0) {
      first_failed = next.first_failed;
      line_failed = next.line_failed;
      first_error = next.first_error;
    }
    rows += next.rows;
    failed += next.failed;
    stopped |= next.stopped;
  }
};

/// A block: its text, and the records that answer it.
struct Work {
  std::string text;
  std::size_t first_row = 0;
  std::size_t first_line = 0;  ///< of the file
  std::string records;
  Tally tally;
  bool done = false;
};

void add_cell(std::string& record, const shared::AnswerColumn& figure, const shared::Cell& cell, const Layout& layout) {
  const bool shop = layout.shop;
  const std::size_t had = record.size();
  if (figure.kind == shared::AnswerColumn::Kind::text) return shared::csv_add(record, cell.text, layout.separator);
  if (figure.kind == shared::AnswerColumn::Kind::number && shop && std::isfinite(cell.number))
    record += PlainNumber(cell.number / describe(figure.dimension).shop_unit_in_si, 6).c_str();
  else if (figure.kind == shared::AnswerColumn::Kind::number)
    shared::csv_add(record, cell.number);
  else if (cell.number == cell.number)
    record += cell.number != 0 ? "true" : "false";
  if (layout.decimal_comma()) std::replace(record.begin() + static_cast<std::ptrdiff_t>(had), record.end(), '.', ',');
}

/// Puts a point for each comma between two digits.
void make_points(std::string& cell) {
  const auto digit = [&](std::size_t at) { return at < cell.size() && cell[at] >= '0' && cell[at] <= '9'; };
  for (std::size_t at = 1; at < cell.size(); ++at)
    if (cell[at] == ',' && digit(at - 1) && digit(at + 1)) cell[at] = '.';
}

class Worker {
 public:
  Worker(const Layout& layout, std::size_t threads)
      : layout_(layout), loop_(layout.question, layout.wanted, layout.said, threads) {}

  void answer(Work& work) {
    work.records.clear();
    work.tally = {};
    char* at = work.text.data();
    const char* last = at + work.text.size();
    std::size_t line = work.first_line;
    const char* begins = at;
    for (std::size_t row = work.first_row; at != last; ++row, begins = at) {
      line_ = line;
      const char* wrong = shared::csv_take_record(at, last, cells_, layout_.separator);
      line += static_cast<std::size_t>(std::count(begins, static_cast<const char*>(at), '\n'));
      if ((cells_.size() == 1 && cells_[0].empty()) || cells_[0].starts_with('#')) continue;  // blank, or a comment
      // Looked at for each row: one may take a tenth of a second.
      if ((work.tally.stopped = StopSignal::is_raised())) return;
      ++work.tally.rows;
      work.tally.last_row = row;
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
    asked_ = cells_;
    pointed_.resize(cells_.size());
    for (std::size_t i = 0; i < cells_.size(); ++i) {
      if (layout_.keys[i] < 0 || cells_[i].empty()) continue;
      if (layout_.decimal_comma() && cells_[i].find(',') != std::string_view::npos) {
        make_points(pointed_[i] = cells_[i]);
        asked_[i] = pointed_[i];
      }
      columns_.push_back({static_cast<std::size_t>(layout_.keys[i]), &asked_[i]});
    }
    const std::span<const shared::Cell> figures = loop_.row(columns_, 0);
    add_record(work, row, figures.data(), figures.back().text);
  }

  void add_record(Work& work, std::size_t row, const shared::Cell* figures, std::string_view error) {
    std::string& out = work.records;
    const std::vector<shared::AnswerColumn>& all = layout_.question.figures;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
      if (!layout_.kept[i]) continue;
      out += layout_.separator;
      if (cells_[i].empty() && layout_.fill[i] >= 0 && figures && error.empty()) {
        const auto place = static_cast<std::size_t>(layout_.fill[i]);
        add_cell(out, all[place], figures[place], layout_);
        const DimensionText unit = describe(all[place].dimension);
        if (all[place].kind == shared::AnswerColumn::Kind::number && figures[place].number == figures[place].number)
          out += layout_.shop ? unit.shop_unit : unit.si_unit;
      } else {
        shared::csv_add(out, cells_[i], layout_.separator);
      }
    }
    for (const std::size_t place : layout_.added) {
      out += layout_.separator;
      if (figures) add_cell(out, all[place], figures[place], layout_);
    }
    if (!figures) shared::csv_add(out, error, layout_.separator);
    out += '\n';
    if (error.empty()) return;
    if (work.tally.failed++ == 0) {
      work.tally.first_failed = row;
      work.tally.line_failed = line_;
      work.tally.first_error = error;
    }
  }

  const Layout& layout_;
  shared::RowLoop loop_;
  std::size_t line_ = 0;  ///< of the file, where the row begins
  std::vector<std::string_view> cells_;
  std::vector<std::string_view> asked_;  ///< the same with points in numbers
  std::vector<std::string> pointed_;     ///< what those point to
  std::vector<shared::RowColumn> columns_;
};

/// The names that the columns have for the question.
/// \param renamed  each `name in the table=name of the question`
std::vector<std::string> names_for(const shared::RowQuestion& question, std::vector<std::string> names,
                                   const std::vector<std::string>& renamed) {
  for (const std::string& pair : renamed) {
    const std::size_t sign = pair.rfind('=');
    if (sign == std::string::npos || sign == 0)
      throw Error("rename", ("rename is " + in_quotes(pair) + "; write it like --rename GRADE=class").c_str());
    const std::string column = pair.substr(0, sign), key = pair.substr(sign + 1);
    if (shared::key_called(question, key) < 0) {
      std::vector<std::string> keys;
      for (const shared::RowKey& one : question.keys) keys.push_back(one.name);
      throw Error("rename",
                  ("rename gives " + in_quotes(column) + " the name " + in_quotes(key) + ", which is not a key" +
                   did_you_mean(key, keys, "the keys are those of the options, without the dashes"))
                      .c_str());
    }
    const auto found = std::find(names.begin(), names.end(), column);
    if (found == names.end())
      throw Error("rename", ("rename has no column " + in_quotes(column) + " to work on" +
                             did_you_mean(column, names, "the first line names the columns"))
                                .c_str());
    *found = key;
  }
  return names;
}

Layout layout_of(const TableOptions& options, const shared::RowQuestion& question,
                 const std::vector<std::string>& names, const std::vector<std::pair<std::string, std::string>>& said,
                 char separator) {
  Layout out{question, {}, {}, {}, {}, {}, {}, {}, options.shop, separator};
  out.said_texts.reserve(said.size());  // the cells point into it
  for (const auto& [key, text] : said)
    if (const int place = shared::key_called(question, key); place >= 0)
      out.said.push_back({static_cast<std::size_t>(place), out.said_texts.emplace_back(text)});
  out.keys = shared::try_columns(question, names_for(question, names, options.renamed), out.said).value();
  // Torques in a table that asks for torques stay beside the answers.
  if (std::string_view(question.name) == "torque")
    for (std::size_t i = 0; i < names.size(); ++i)
      if (out.keys[i] >= 0 && out.keys[i] == shared::key_called(question, "torque"))
        out.keys[i] = -1, out.kept_torque = i;
  std::vector<std::string> wanted;
  for (const std::string_view name : shared::split(options.columns, ','))
    if (!name.empty()) wanted.emplace_back(name);
  out.wanted = shared::try_figures(question, wanted).value();
  const auto is_figure = [&](std::size_t place, std::size_t column) {
    const std::string& figure = question.figures[place].name;
    return names[column] == figure || names[column] == name_of(question.figures[place], true) ||
           (out.keys[column] >= 0 && shared::key_called(question, figure) == out.keys[column]);
  };
  for (std::size_t i = 0; i < names.size(); ++i) {
    int fill = -1;
    bool kept = names[i] != "row";  // what an earlier run wrote gives way
    if (i == out.kept_torque) {
      out.fill.push_back(-1);
      out.kept.push_back(true);
      continue;
    }
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
    for (std::size_t i = 0; i < names.size(); ++i) has |= out.kept[i] && i != out.kept_torque && is_figure(place, i);
    if (!has) out.added.push_back(place);
  }
  return out;
}

/// Tells which columns only go along: one that was meant for a key shows there.
std::string unread_note(const Layout& layout, const std::vector<std::string>& names) {
  std::vector<std::string> unread;
  for (std::size_t i = 0; i < names.size(); ++i)
    if (layout.kept[i] && layout.keys[i] < 0 && !names[i].empty()) unread.push_back(in_quotes(names[i]));
  const std::size_t more = unread.size() - std::min<std::size_t>(unread.size(), 8);
  unread.resize(unread.size() - more);
  return unread.empty() ? ""
                        : fmt::format("tauten: not read, only copied: {}{}\n", listed(unread),
                                      more > 0 ? fmt::format(" and {} more columns", more) : "");
}

std::string header_of(const Layout& layout, const std::vector<std::string>& names) {
  std::string header = "row";
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (!layout.kept[i]) continue;
    header += layout.separator;
    shared::csv_add(header, names[i], layout.separator);
  }
  for (const std::size_t place : layout.added) {
    std::string name = name_of(layout.question.figures[place], layout.shop);
    if (layout.kept_torque != Layout::absent_column && layout.question.figures[place].name == "torque")
      name.insert(0, "answered_");
    header += layout.separator + name;
  }
  return header + "\n";
}

/// Tells on a terminal how far it is; says nothing elsewhere.
class ProgressLine {
 public:
  /// \param skipped  bytes of the file before the first row that is answered
  /// \param size     bytes of the file, 0 if that is not known
  ProgressLine(std::size_t skipped, std::size_t size)
      : skipped_(static_cast<double>(skipped)), size_(static_cast<double>(size)) {}
  ~ProgressLine() {
    if (shown_) std::fputs("\r\033[K", stderr);
  }
  ProgressLine(const ProgressLine&) = delete;
  ProgressLine& operator=(const ProgressLine&) = delete;

  /// \param bytes  of the file that are answered
  void show(std::size_t rows, std::size_t bytes) {
    const auto now = std::chrono::steady_clock::now();
    if (!terminal_ || now < next_) return;
    next_ = now + std::chrono::milliseconds(200);
    const double seconds = std::chrono::duration<double>(now - start_).count();
    std::string line = fmt::format("\r\033[K{} rows", rows);
    if (const double all = size_ - skipped_, done = std::min(all, static_cast<double>(bytes)); done > 0)
      line += fmt::format(", {:.0f} %, {:.0f} s left", 100 * (skipped_ + done) / size_, seconds * (all - done) / done);
    std::fputs(line.c_str(), stderr);
    std::fflush(stderr);
    shown_ = true;
  }

 private:
  const double skipped_;
  const double size_;
  const bool terminal_ = isatty(STDERR_FILENO) != 0;
  const std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
  std::chrono::steady_clock::time_point next_ = start_ + std::chrono::milliseconds(200);
  bool shown_ = false;
};

/// How many bytes a block has. A row takes a microsecond or a tenth of a second, after what is asked: blocks are to take
/// a tenth of a second each, so that no thread waits long for another and answers are seen soon.
class BlockSize {
 public:
  explicit BlockSize(unsigned threads) : most_(std::min<std::size_t>(1 << 16, (1 << 21) / threads)) {}

  std::size_t bytes() const { return bytes_; }
  void learn(std::size_t bytes, double seconds) {
    // What was answered before is remembered and costs nothing: quick blocks tell little of those that come.
    seconds_per_byte_ = std::max(seconds / static_cast<double>(bytes), 0.8 * seconds_per_byte_);
    const double wanted = std::min(0.1 / seconds_per_byte_, 16 * static_cast<double>(bytes));
    bytes_ = static_cast<std::size_t>(std::clamp(wanted, 1.0, static_cast<double>(most_)));
  }

 private:
  const std::size_t most_;  // memory goes with the number of threads
  std::size_t bytes_ = 1;   // one row, until it is known how long that takes
  double seconds_per_byte_ = 0;
};

/// Threads take block after block; who calls writes their records in the order of the file.
class Answering {
 public:
  Answering(Source& source, const Layout& layout, unsigned threads)
      : source_(source), layout_(layout), threads_(threads), size_(threads), ring_(2 * std::size_t{threads}) {}

  Tally write_to(Target& target) {
    ProgressLine progress(source_.taken(), source_.size());
    std::vector<std::future<void>> running;  // its end waits for the threads
    const Ender ender{this};
    for (unsigned i = 0; i < threads_; ++i)
      running.push_back(std::async(std::launch::async, [this] { answer_blocks(); }));
    Tally all;
    std::size_t bytes = 0;
    while (const Work* work = next_answered()) {
      target.write(work->records);
      all.add(work->tally);
      bytes += work->text.size();
      progress.show(all.rows, bytes);
      if (all.stopped) break;  // the rows of later blocks do not follow on this one's
      release();
    }
    if (all.stopped) end();
    for (std::future<void>& one : running) one.get();  // throws what stopped a thread, which stops the others too
    all.stopped |= !source_.at_end();
    return all;
  }

 private:
  /// However the writing ends, the threads end too.
  struct Ender {
    Answering* all;
    ~Ender() {
      StopSignal::raise();
      all->end();
    }
  };

  void answer_blocks() {
    try {
      Worker worker(layout_, threads_);
      while (Work* work = take()) {
        const auto start = std::chrono::steady_clock::now();
        worker.answer(*work);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
        const std::lock_guard lock(state_);
        size_.learn(work->text.size(), took.count());
        work->done = true;
        changed_.notify_all();
      }
    } catch (...) {
      failed_ = true;
      StopSignal::raise();  // another thread may wait at a pipe that nobody writes to
      end();
      throw;
    }
  }

  /// \return the next block of the file, nullptr if there is none
  Work* take() {
    const std::lock_guard turn(reading_);
    Work* work = nullptr;
    std::size_t size = 0;
    {
      std::unique_lock lock(state_);
      changed_.wait(lock, [&] { return ended_ || taken_ - written_ < ring_.size(); });
      if (ended_) return nullptr;
      work = &ring_[taken_ % ring_.size()];
      size = size_.bytes();
    }
    work->first_line = source_.line();
    work->text = source_.block(work->first_row, size);
    if (work->text.empty()) return end();
    const std::lock_guard lock(state_);
    ++taken_;
    return work;
  }

  /// \return the block that is to be written next, nullptr if there is none
  const Work* next_answered() {
    std::unique_lock lock(state_);
    const Work& work = ring_[written_ % ring_.size()];
    changed_.wait(lock, [&] { return work.done || failed_ || (ended_ && written_ == taken_); });
    return work.done ? &work : nullptr;
  }

  void release() {
    const std::lock_guard lock(state_);
    ring_[written_++ % ring_.size()].done = false;
    changed_.notify_all();
  }

  std::nullptr_t end() {
    const std::lock_guard lock(state_);
    ended_ = true;
    changed_.notify_all();
    return nullptr;
  }

  Source& source_;  // one thread reads at a time
  const Layout& layout_;
  const unsigned threads_;
  std::mutex reading_;
  std::mutex state_;  // guards all below
  std::condition_variable changed_;
  BlockSize size_;
  std::vector<Work> ring_;
  std::size_t taken_ = 0;
  std::size_t written_ = 0;
  bool ended_ = false;
  std::atomic<bool> failed_ = false;
};

CLI::Validator from_one_to(unsigned long long most) {
  const auto check = [most](const std::string& text) -> std::string {
    unsigned long long value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    if (read.ec == std::errc() && read.ptr == text.data() + text.size() && value >= 1 && value <= most) return "";
    return fmt::format("must be a whole number from 1 to {}", most);
  };
  return CLI::Validator(check, "");
}

}  // namespace

bool TableOptions::is_table() const {
  std::string ending = file.size() < 5 ? "" : file.substr(file.size() - 5);
  for (char& c : ending) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return ending != ".toml";
}

std::shared_ptr<TableOptions> add_file_option(CLI::App& verb) {
  auto options = std::make_shared<TableOptions>();
  options->option = verb.add_option("--file", options->file, table_help);
  options->option->type_name("JOINTS");
  return options;
}

std::shared_ptr<TableOptions> add_table_options(CLI::App& verb) {
  auto options = add_file_option(verb);
  const auto beside = [&](CLI::Option* option, const char* type) { option->type_name(type)->needs(options->option); };
  beside(verb.add_option("--output", options->output, "Where the answers go"), "OUT.csv");
  beside(verb.add_option("--columns", options->columns, "Columns of the answer, if not the standard ones"),
         "verdict,suggested_torque");
  verb.add_flag("--shop", options->shop, "Figures in shop units, named like clamp_load_low_kN")->needs(options->option);
  beside(verb.add_option("--from-row", options->from_row, "Resume at this row of the table")
             ->check(from_one_to(1'000'000'000'000'000)),
         "1");
  beside(verb.add_option("--jobs", options->jobs, "Worker threads of a table; default: all processors")
             ->check(from_one_to(256)),
         "2");
  verb.add_option("--rename", options->renamed, "Map table columns to option names")
      ->type_name("GRADE=class")
      ->delimiter(',')
      ->needs(options->option);
  return options;
}

void answer_table(Program& program, const TableOptions& options, std::string_view name,
                  const std::vector<std::pair<std::string, std::string>>& said) {
  const shared::RowQuestion& question = *shared::try_row_question(name).value();
  std::vector<shared::Assignment> words;
  for (const auto& [key, text] : said) words.push_back({key, text});
  if (const auto problem = question.check(words)) throw *problem;
  Source source(options.file);
  const std::vector<std::string> names = source.header();
  if (program.json) throw Error("json", "--json does not apply to tables; leave it out");
  const Layout layout = [&] {
    try {
      return layout_of(options, question, names, said, source.separator());
    } catch (const Error& error) {
      throw Error(error.argument(), ("file " + path_text(options.file) + ": " + error.what()).c_str());
    }
  }();
  program.complaints += unread_note(layout, names);
  Target target(options.output, header_of(layout, names), options.from_row, options.file);
  const StopSignal signal;
  source.skip_to(options.from_row);
  const unsigned machine = std::max(1u, std::thread::hardware_concurrency());
  const Tally all = Answering(source, layout, options.jobs > 0 ? options.jobs : machine).write_to(target);
  if (all.stopped) {
    const std::string left = target.leave();
    program.code = other_failure;
    program.complaints += fmt::format("tauten: stopped {} row {}{}; resume with --from-row {}\n",
                                      all.rows > 0 ? "after" : "before", all.rows > 0 ? all.last_row : options.from_row,
                                      left.empty() ? "" : ", rows so far are in " + path_text(left),
                                      all.rows > 0 ? all.last_row + 1 : options.from_row);
    return;
  }
  const bool nothing_left = target.holds_rows() && source.row() == options.from_row;
  if (all.rows == 0 && !nothing_left) refuse_table(options.file, fmt::format("has no row {}", options.from_row));
  target.finish();
  program.complaints += "tauten: " + standing_cautions_line() + "\n";
  if (all.failed == 0) return;
  program.code = some_joints_failed;
  program.complaints += fmt::format(
      "tauten: {} of {} rows have no answer; the column error gives the reason, first in row {}{}: {}\n", all.failed,
      all.rows, all.first_failed,
      all.line_failed == all.first_failed + 1 ? "" : fmt::format(" (line {})", all.line_failed), all.first_error);
}

}  // namespace tauten::command
