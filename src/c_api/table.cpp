// Questions over columns.
#include <chrono>
#include <unordered_set>
#include <vector>

#include "c_api/boundary.hpp"
#include "rows/rows.hpp"

struct tauten_table {
  struct Column {
    std::string name;
    const char* unit = nullptr;   // none for texts
    std::vector<double> numbers;  // or
    std::vector<const std::string*> texts;
  };
  std::size_t rows = 0;
  std::vector<Column> columns;
  std::unordered_set<std::string> texts;  // few different ones: verdicts, notices, threads
};

namespace {

using namespace tauten;
using namespace tauten::c_api;
using shared::AnswerColumn;
using shared::RowCell;

/// What is asked of a table, checked.
struct Asked {
  const shared::RowQuestion* question;
  std::vector<RowCell> same;
  std::vector<shared::RowColumn> columns;
  std::vector<std::size_t> figures;
  std::vector<std::vector<std::string_view>> texts;
};

Outcome<Asked> try_asked(const char* name, std::span<const tauten_pair> same, std::span<const tauten_column> columns,
                         std::size_t rows, std::span<const char* const> figures) {
  const auto question = shared::try_row_question(name);
  if (!question) return question.error();
  Asked asked{*question, {}, {}, {}, {}};
  for (const tauten_pair& pair : same) {
    const int place = shared::key_called(**question, pair.key);
    if (place < 0)
      return Error(pair.key, (std::string(pair.key) + " cannot be said for all rows; leave it out").c_str());
    asked.same.push_back({static_cast<std::size_t>(place), pair.text});
  }
  shared::RowWords words;
  if (const auto problem = (*question)->check(words.of(**question, asked.same))) return *problem;
  std::vector<std::string> keys, wanted(figures.begin(), figures.end());
  for (const tauten_column& column : columns) keys.push_back(column.key);
  const auto places = shared::try_columns(**question, keys, asked.same);
  if (!places) return places.error();
  const auto found = shared::try_figures(**question, wanted);
  if (!found) return found.error();
  asked.figures = *found;
  asked.texts.resize(columns.size());  // so that they stay where they are
  for (std::size_t i = 0; i < columns.size(); ++i) {
    if ((*places)[i] < 0) continue;
    shared::RowColumn column{static_cast<std::size_t>((*places)[i]), nullptr, columns[i].numbers};
    if (columns[i].texts != nullptr) {
      for (std::size_t row = 0; row < rows; ++row)
        asked.texts[i].emplace_back(columns[i].texts[row] == nullptr ? "" : columns[i].texts[row]);
      column.texts = asked.texts[i].data();
    }
    asked.columns.push_back(column);
  }
  return asked;
}

/// \return false if it was asked to stop
bool answer(const Asked& asked, tauten_progress progress, void* context, tauten_table& table) {
  using Clock = std::chrono::steady_clock;
  for (const std::size_t place : asked.figures) {
    const AnswerColumn& figure = asked.question->figures[place];
    const bool is_text = figure.kind == AnswerColumn::Kind::text;
    tauten_table::Column& column = table.columns.emplace_back();
    column.name = figure.name;
    column.unit = is_text ? nullptr : describe(figure.dimension).si_unit;
    is_text ? column.texts.resize(table.rows) : column.numbers.resize(table.rows);
  }
  shared::RowLoop loop(*asked.question, asked.figures, asked.same);
  auto last = Clock::now();
  for (std::size_t row = 0; row < table.rows; ++row) {
    if (progress != nullptr && Clock::now() - last > std::chrono::milliseconds(200)) {
      if (progress(row, table.rows, context) != 0) return false;
      last = Clock::now();
    }
    const std::span<const shared::Cell> cells = loop.row(asked.columns, row);
    for (std::size_t i = 0; i < asked.figures.size(); ++i) {
      const shared::Cell& cell = cells[asked.figures[i]];
      tauten_table::Column& column = table.columns[i];
      if (column.unit == nullptr)
        column.texts[row] = &*table.texts.emplace(cell.text).first;
      else
        column.numbers[row] = cell.number;
    }
  }
  return true;
}

const tauten_table::Column* column_at(const tauten_table* table, size_t column) noexcept {
  return table == nullptr || column >= table->columns.size() ? nullptr : &table->columns[column];
}

/// \return true if a pointer that is needed is null
bool lacks(std::span<const tauten_pair> same, std::span<const tauten_column> columns, std::size_t rows,
           std::span<const char* const> figures) noexcept {
  for (const tauten_pair& pair : same)
    if (pair.key == nullptr || pair.text == nullptr) return true;
  for (const tauten_column& column : columns)
    if (column.key == nullptr || (rows > 0 && (column.texts == nullptr) == (column.numbers == nullptr))) return true;
  for (const char* figure : figures)
    if (figure == nullptr) return true;
  return false;
}

}  // namespace

extern "C" {

tauten_status tauten_ask_columns(const char* question, const tauten_pair* same, size_t same_count,
                                 const tauten_column* columns, size_t column_count, size_t rows,
                                 const char* const* figures, size_t figure_count, tauten_progress progress,
                                 void* context, tauten_table** table, tauten_error* error) {
  if (table != nullptr) *table = nullptr;
  return guarded_status(error, [&] {
    if (question == nullptr || table == nullptr || (same == nullptr && same_count > 0) ||
        (columns == nullptr && column_count > 0) || (figures == nullptr && figure_count > 0))
      return null_pointer(error);
    const std::span pairs(same, same_count);
    const std::span given(columns, column_count);
    const std::span wanted(figures, figure_count);
    if (lacks(pairs, given, rows, wanted)) return null_pointer(error);
    const Outcome<Asked> asked = try_asked(question, pairs, given, rows, wanted);
    if (!asked) return fail(error, TAUTEN_WRONG_INPUT, asked.error());
    auto made = std::make_unique<tauten_table>();
    made->rows = rows;
    if (!answer(*asked, progress, context, *made))
      return fail(error, TAUTEN_STOPPED, Error("", "stopped by the progress call"));
    *table = made.release();
    return TAUTEN_OK;
  });
}

void tauten_table_free(tauten_table* table) { delete table; }

size_t tauten_table_rows(const tauten_table* table) { return table == nullptr ? 0 : table->rows; }

size_t tauten_table_columns(const tauten_table* table) { return table == nullptr ? 0 : table->columns.size(); }

const char* tauten_table_name(const tauten_table* table, size_t column) {
  const auto* found = column_at(table, column);
  return found == nullptr ? nullptr : found->name.c_str();
}

const char* tauten_table_unit(const tauten_table* table, size_t column) {
  const auto* found = column_at(table, column);
  return found == nullptr ? nullptr : found->unit;
}

const double* tauten_table_numbers(const tauten_table* table, size_t column) {
  const auto* found = column_at(table, column);
  return found == nullptr || found->unit == nullptr ? nullptr : found->numbers.data();
}

const char* tauten_table_text(const tauten_table* table, size_t column, size_t row) {
  const auto* found = column_at(table, column);
  return found == nullptr || found->unit != nullptr || row >= table->rows ? nullptr : found->texts[row]->c_str();
}

}  // extern "C"
