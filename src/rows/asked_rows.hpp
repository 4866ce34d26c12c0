// Rows answered by asking a question in words.
#pragma once

#include <algorithm>
#include <unordered_map>

#include "rows/rows.hpp"

namespace tauten::shared {

/// Answers by asking the question in words, and remembers the answers: tables hold many rows that say the same.
template <class Answer>
class AskedRows : public RowAnswers {
 public:
  using Ask = Outcome<Answer> (*)(const Call&);
  AskedRows(const RowQuestion& question, Ask ask, std::size_t threads)
      : question_(question), ask_(ask), most_remembered_(std::clamp<std::size_t>(1024 / threads, 4, 256)) {}

  std::span<const Cell> answer(std::span<const RowCell> row) override {
    identify_row(row, question_.keys.size(), bytes_);
    const auto found = met_.find(bytes_);
    if (found != met_.end()) return found->second.cells;
    if (met_.size() >= most_remembered_) met_.clear();
    Row& made = met_.try_emplace(bytes_, ask_(words_.of(question_, row))).first->second;
    made.cells.resize(question_.figures.size());
    Cell* next = made.cells.data();
    put_cells<Answer>(made.answer ? &*made.answer : nullptr, next);
    if (made.answer)
      add_codes(*made.answer, made.codes);
    else
      made.cells.back().text = made.answer.error().what();
    made.cells[made.cells.size() - 2].text = made.codes;
    return made.cells;
  }

 private:
  struct Row {
    explicit Row(Outcome<Answer> found) : answer(std::move(found)) {}
    Outcome<Answer> answer;
    std::string codes;
    std::vector<Cell> cells;
  };

  const RowQuestion& question_;
  Ask ask_;
  std::size_t most_remembered_;
  RowWords words_;
  std::string bytes_;
  std::unordered_map<std::string, Row> met_;  // its rows stay where they are
};

template <class Answer, Outcome<Answer> (*ask)(const Call&)>
std::unique_ptr<RowAnswers> start_asking(const RowQuestion& question, std::span<const std::size_t>,
                                         std::size_t threads) {
  return std::make_unique<AskedRows<Answer>>(question, ask, threads);
}

/// What is wrong with the texts of some keys, whatever is said under the others.
template <class Job, std::span<const Input<Job>> (*keys)()>
Problem check_words(const Call& call) {
  const auto given = try_read<Job>(keys(), call);
  return given ? Problem() : given.error();
}

/// All that it takes to ask a question of tables.
/// \tparam Answer  lists its members; their figures are the columns
/// \tparam ask     answers what is said in words
/// \param needs    lists of keys; of each list one must be a column
template <class Job, class Answer, std::span<const Input<Job>> (*keys)(), Outcome<Answer> (*ask)(const Call&)>
RowQuestion question_of(const char* name, std::vector<std::vector<const char*>> needs) {
  return {name, row_keys(keys()),          std::move(needs),      row_figures<Answer>(),
          {},   start_asking<Answer, ask>, check_words<Job, keys>};
}

}  // namespace tauten::shared
