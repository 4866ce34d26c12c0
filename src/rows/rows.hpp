// A question asked for every row of a table: columns of texts and numbers in, columns of figures out.
//
// The keys of the question (`clamp_inputs` and the like) name the columns of the table, the members of its answer name the
// columns of figures. A wrong row has its error in the column `error` and spoils no other row.
#pragma once

#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "rows/row_figures.hpp"
#include "shared/inputs.hpp"

namespace tauten::shared {

/// A key of a question, as a column that a table may have.
struct RowKey {
  std::string name;      ///< "clamp-load"
  std::string argument;  ///< "clamp_load", as the library and Python call it
  const char* unit;      ///< SI unit of a column of numbers; "" where they have none
  Takes takes;
  const char* example;                 ///< "25kN"
  std::span<const char* const> words;  ///< those that it takes, if it takes words only
};

/// What a row says under one key: text, or a number in SI.
struct RowCell {
  std::size_t key;        ///< place among the keys
  std::string_view text;  ///< empty where a number is said
  double number = absent;

  bool is_said() const { return !text.empty() || number == number; }
};

/// Answers rows one after the other. Not shared between threads: it remembers what it has met.
class RowAnswers {
 public:
  RowAnswers() = default;
  RowAnswers(const RowAnswers&) = delete;
  RowAnswers& operator=(const RowAnswers&) = delete;
  virtual ~RowAnswers() = default;
  /// \param row  what is said, each key once
  /// \return a cell for each figure of the question, valid until the next call
  virtual std::span<const Cell> answer(std::span<const RowCell> row) = 0;
};

/// A question with everything that is the same for all tables.
struct RowQuestion {
  const char* name;  ///< "clamp"
  std::vector<RowKey> keys;
  std::vector<std::vector<const char*>> needs;  ///< of each list one key must be a column
  std::vector<AnswerColumn> figures;            ///< all columns of the answer; `warnings` and `error` are the last
  std::vector<const char*> standard;            ///< the figures that are given if none are named; empty for all
  std::unique_ptr<RowAnswers> (*start)(const RowQuestion& question, std::span<const std::size_t> wanted,
                                       std::size_t threads);
  Problem (*check)(const Call& call);  ///< what is wrong with it, whatever else a row says
};

/// \return every question that tables can ask
std::span<const RowQuestion* const> row_questions();

/// \return the question of that name
Outcome<const RowQuestion*> try_row_question(std::string_view name);

/// Which keys the columns of a table are. Names may be written with - or _, and as the library calls an argument.
/// \param said  keys that are said for all rows beside the table
/// \return for each column the place of its key, or -1 for a column that is not a key; an error for a column that is nearly
///         a key, for two columns of one key, and if a column that is needed is missing
Outcome<std::vector<int>> try_columns(const RowQuestion& question, std::span<const std::string> names,
                                      std::span<const RowCell> said);

/// \return the place of the key that is called `name`, or -1
int key_called(const RowQuestion& question, std::string_view name);

/// \param names  of figures; empty for the standard ones. `warnings` and `error` always come last
/// \return the places of the figures
Outcome<std::vector<std::size_t>> try_figures(const RowQuestion& question, std::span<const std::string> names);

/// A column of a table.
struct RowColumn {
  std::size_t key;
  const std::string_view* texts = nullptr;  ///< of the first row; or else
  const double* numbers = nullptr;          ///< in SI
  std::ptrdiff_t step = 1;                  ///< from row to row
};

/// One thread's way through a table.
class RowLoop {
 public:
  /// \param wanted  places of figures
  /// \param said    what holds for all rows that do not say it themselves; outlives the loop
  /// \param threads  how many such loops run: together they may remember no more than a few would
  RowLoop(const RowQuestion& question, std::span<const std::size_t> wanted, std::span<const RowCell> said,
          std::size_t threads = 1)
      : answers_(question.start(question, wanted, threads)), said_(said) {}

  /// \return a cell for each figure of the question, valid until the next call
  std::span<const Cell> row(std::span<const RowColumn> columns, std::size_t row) {
    cells_.clear();
    for (const RowColumn& column : columns) {
      const std::ptrdiff_t at = static_cast<std::ptrdiff_t>(row) * column.step;
      RowCell cell{column.key, {}};
      if (column.texts) cell.text = column.texts[at];
      if (column.numbers) cell.number = column.numbers[at];
      if (cell.is_said()) cells_.push_back(cell);
    }
    const std::size_t own = cells_.size();
    for (const RowCell& cell : said_) {
      bool again = false;
      for (std::size_t i = 0; i < own; ++i) again |= cells_[i].key == cell.key;
      if (!again) cells_.push_back(cell);
    }
    return answers_->answer(cells_);
  }

 private:
  std::unique_ptr<RowAnswers> answers_;
  std::span<const RowCell> said_;
  std::vector<RowCell> cells_;
};

/// What a row says in the words of the keys.
class RowWords {
 public:
  /// \return the pairs, valid until the next call
  std::span<const Assignment> of(const RowQuestion& question, std::span<const RowCell> row);

 private:
  std::vector<std::string> texts_;
  std::vector<Assignment> said_;
};

/// \return `row` as bytes that two rows share only if they say the same
/// \param without  a key that does not count
void identify_row(std::span<const RowCell> row, std::size_t without, std::string& bytes);

/// \return the SI unit in which a key takes numbers, after its example: "N.m" for 48N.m
const char* unit_of_example(std::string_view example);

/// The keys of a question as columns. What a joint is called is not a part of the question: a table may call it as it likes.
template <class Job>
std::vector<RowKey> row_keys(std::span<const Input<Job>> keys) {
  std::vector<RowKey> rows;
  for (const Input<Job>& key : keys)
    if (std::string_view(key.help) != "Name of the joint")  // a drilling has a name too, which is a part
      rows.push_back({key.option(), key.name, unit_of_example(key.example), key.takes, key.example, key.words});
  return rows;
}

/// The figures of an answer, with `warnings` and `error`.
template <class Answer>
std::vector<AnswerColumn> row_figures() {
  std::vector<AnswerColumn> figures;
  add_figures<Answer>("", figures);
  figures.push_back({"warnings", AnswerColumn::Kind::text});
  figures.push_back({"error", AnswerColumn::Kind::text});
  return figures;
}

/// The clamp load that a torque leaves; figures of the most common fastener that fits.
const RowQuestion& clamp_rows();
/// The torque for a clamp load, for a share of the proof load or, without either, the suggested torque.
const RowQuestion& torque_rows();

}  // namespace tauten::shared
