// Whole answers on tables: columns in, columns out, the loop over the rows without Python.
#include <pybind11/numpy.h>

#include <algorithm>
#include <chrono>
#include <cstdint>
#include <deque>
#include <future>
#include <unordered_map>

#include "arguments.hpp"
#include "bindings.hpp"
#include "listener.hpp"
#include "rows/csv.hpp"
#include "rows/rows.hpp"
#include "tauten/uncertainty/pulse.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

using shared::AnswerColumn;
using shared::RowCell;
using shared::Takes;

/// \param types  how the names of types end, of modules that may not even be there
bool is_a(py::handle value, std::initializer_list<std::string_view> types) {
  const std::string_view type = Py_TYPE(value.ptr())->tp_name;
  return std::any_of(types.begin(), types.end(), [&](std::string_view one) { return type.ends_with(one); });
}

[[noreturn]] void refuse_type(const std::string& column, const shared::RowKey& key, py::handle value) {
  std::string sentence = column + " takes one text or number, like " + key.example + ", not " +
                         std::string(py::str(py::type::of(value).attr("__name__")));
  if (PyBytes_Check(value.ptr())) sentence += "; decode it";
  if (key.takes == Takes::several_values) sentence += "; several stand in one text with semicolons between them";
  throw py::type_error(sentence);
}

double number_of(const std::string& column, const shared::RowKey& key, py::handle value) {
  const double number = PyFloat_AsDouble(value.ptr());
  if (number != -1 || PyErr_Occurred() == nullptr) return number;
  const py::error_already_set problem;
  if (problem.matches(PyExc_OverflowError))
    throw Error(column.c_str(), (column + " is beyond 1.8e308, the largest number that can be written").c_str());
  refuse_type(column, key, value);
}

double number_of_quantity(const std::string& column, const shared::RowKey& key, py::handle value) {
  const py::object si = py::module_::import("tauten._pint").attr("of_column")(column, value, key.unit, key.example);
  return number_of(column, key, si);
}

/// What one Python object says in a cell. Missing values (None, NaN, pandas.NA) say nothing.
/// \param texts  keeps the texts that the object itself does not keep
/// \throws Error, TypeError  for what no cell can hold
RowCell cell_of(const shared::RowQuestion& question, const std::string& column, std::size_t place, py::handle value,
                std::deque<std::string>& texts) {
  RowCell cell{place, {}};
  const shared::RowKey& key = question.keys[place];
  if (PyUnicode_Check(value.ptr())) {
    Py_ssize_t size = 0;
    const char* text = PyUnicode_AsUTF8AndSize(value.ptr(), &size);
    if (text == nullptr) {
      PyErr_Clear();
      throw Error(column.c_str(), (column + " holds half a character (a lone surrogate); write the text anew").c_str());
    }
    cell.text = shared::detail::without_blanks({text, static_cast<std::size_t>(size)});
  } else if (PyFloat_Check(value.ptr())) {
    cell.number = PyFloat_AS_DOUBLE(value.ptr());
  } else if (value.is_none() || is_a(value, {"NAType", "NaTType"})) {
    return cell;
  } else if (PyBool_Check(value.ptr())) {
    cell.text = value.cast<bool>() ? "yes" : "no";
  } else if (py::hasattr(value, "_REGISTRY")) {
    cell.number = number_of_quantity(column, key, value);
  } else if (PyNumber_Check(value.ptr()) && !py::hasattr(value, "__len__") &&
             !is_a(value, {"timedelta64", "datetime64"})) {
    cell.number = number_of(column, key, value);
  } else {
    try {
      cell.text = texts.emplace_back(read_text(column, value));
    } catch (const py::type_error&) {
      refuse_type(column, key, value);
    }
  }
  return cell;
}

/// What is wrong with the cells of a table, by row: of each row the first.
using Refusals = std::unordered_map<std::size_t, std::string>;

/// A column of the caller, and what it takes to read it without Python.
struct ReadColumn {
  std::vector<std::string_view> texts;
  std::vector<double> own_numbers;
  const double* numbers = nullptr;
};

void read_objects(const shared::RowQuestion& question, const std::string& name, std::size_t key,
                  const py::array& values, ReadColumn& column, std::deque<std::string>& texts, Refusals& refusals) {
  const auto rows = static_cast<std::size_t>(values.size());
  auto* const* items = static_cast<PyObject* const*>(values.data());
  column.texts.resize(rows);
  for (std::size_t row = 0; row < rows; ++row) {
    RowCell cell{key, {}};
    try {
      cell = cell_of(question, name, key, items[row], texts);
    } catch (py::error_already_set& problem) {
      if (!problem.matches(PyExc_Exception)) throw;  // an interrupt is no matter of the row
      refusals.try_emplace(row, py::str(problem.value()));
    } catch (const std::exception& problem) {
      refusals.try_emplace(row, problem.what());
    }
    column.texts[row] = cell.text;
    if (!cell.text.empty() || !cell.is_said()) continue;
    if (column.own_numbers.empty()) column.own_numbers.assign(rows, absent);
    column.own_numbers[row] = cell.number;
  }
  if (!column.own_numbers.empty()) column.numbers = column.own_numbers.data();
}

/// Texts of one column of an answer as numbers, for there are few different ones.
class Dictionary {
 public:
  std::uint32_t code(std::string_view text) {
    if (text == last_) return last_code_;
    const auto [found, is_new] = codes_.try_emplace(std::string(text), static_cast<std::uint32_t>(texts_.size()));
    if (is_new) texts_.push_back(&found->first);
    last_ = found->first;
    return last_code_ = found->second;
  }
  const std::vector<const std::string*>& texts() const { return texts_; }

 private:
  std::unordered_map<std::string, std::uint32_t> codes_{{"", 0}};
  std::vector<const std::string*> texts_{&codes_.begin()->first};
  std::string_view last_;
  std::uint32_t last_code_ = 0;
};

/// A column of the answer.
struct MadeColumn {
  py::array array;
  double* numbers = nullptr;
  bool* truths = nullptr;
  std::vector<std::uint32_t> codes;
};

/// The rows from `first` to `last`, answered by one thread.
struct Part {
  std::size_t first;
  std::size_t last;
  std::vector<Dictionary> dictionaries;
};

void answer_part(Part& part, shared::RowLoop& loop, std::span<const shared::RowColumn> columns,
                 const Refusals& refusals, std::span<const std::size_t> wanted, std::vector<MadeColumn>& made,
                 tauten::detail::Pulse& pulse) {
  constexpr std::size_t rows_between = 8;             // a row takes from half a microsecond to a tenth of a second
  std::vector<shared::Cell> none(wanted.back() + 1);  // the error is the last of all figures
  for (std::size_t row = part.first; row < part.last; ++row) {
    if ((row - part.first) % rows_between == 0 && !pulse.go_on(rows_between)) return;
    const auto refusal = refusals.empty() ? refusals.end() : refusals.find(row);
    if (refusal != refusals.end()) none.back().text = refusal->second;
    const std::span<const shared::Cell> cells = refusal != refusals.end() ? none : loop.row(columns, row);
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      const shared::Cell& cell = cells[wanted[i]];
      if (made[i].numbers != nullptr)
        made[i].numbers[row] = cell.number;
      else if (made[i].truths != nullptr)
        made[i].truths[row] = cell.number > 0;
      else
        made[i].codes[row] = part.dictionaries[i].code(cell.text);
    }
  }
}

MadeColumn made_column(const AnswerColumn& figure, std::size_t rows) {
  MadeColumn column;
  if (figure.kind == AnswerColumn::Kind::number) {
    py::array_t<double> array(static_cast<py::ssize_t>(rows));
    column.numbers = array.mutable_data();
    column.array = std::move(array);
  } else if (figure.kind == AnswerColumn::Kind::truth) {
    py::array_t<bool> array(static_cast<py::ssize_t>(rows));
    column.truths = array.mutable_data();
    column.array = std::move(array);
  } else {
    column.codes.resize(rows);
  }
  return column;
}

/// Rows with the same text share one Python object.
py::array texts_of(const MadeColumn& column, std::size_t place, const std::vector<Part>& parts) {
  py::array array(py::dtype("O"), static_cast<py::ssize_t>(column.codes.size()));
  auto** items = static_cast<PyObject**>(array.mutable_data());  // they are null, or None
  std::unordered_map<std::string_view, py::str> shared;
  for (const Part& part : parts) {
    std::vector<PyObject*> objects;
    for (const std::string* text : part.dictionaries[place].texts())
      objects.push_back(shared.try_emplace(*text, *text).first->second.ptr());
    for (std::size_t row = part.first; row < part.last; ++row) {
      PyObject* text = objects[column.codes[row]];
      Py_INCREF(text);
      Py_XDECREF(std::exchange(items[row], text));
    }
  }
  return array;
}

/// \param columns  pairs of a name and an array of float64 or objects, one-dimensional and packed, all of the same
///                 length; None for a column that is not a key
/// \param said     what holds for all rows that do not say it themselves
/// \param wanted   names of figures; empty for the standard ones
/// \param threads  how many may work at it, 1 to 256
/// \return name and array of each figure
py::dict answer_rows(const std::string& name, const py::list& columns, const py::dict& said, const py::tuple& wanted,
                     std::size_t rows, py::handle threads) {
  const shared::RowQuestion& question = *shared::try_row_question(name).value();
  const auto workers = std::clamp<std::size_t>(rows, 1, static_cast<std::size_t>(read_whole("jobs", threads, 1, 256)));
  std::deque<std::string> texts;
  std::vector<RowCell> constants;
  for (const auto& [key, value] : said) {
    const auto word = py::str(key).cast<std::string>();
    const int place = shared::key_called(question, word);
    if (place < 0) throw Error(word.c_str(), (word + " cannot be said for a table; leave it out").c_str());
    constants.push_back(cell_of(question, word, static_cast<std::size_t>(place), value, texts));
    if (!constants.back().is_said())
      throw Error(word.c_str(), (word + " is empty; leave it out if it is not known").c_str());
  }
  shared::RowWords words;
  if (const auto problem = question.check(words.of(question, constants))) throw *problem;

  std::vector<std::string> names;
  for (const py::handle pair : columns) names.push_back(pair.cast<py::tuple>()[0].cast<std::string>());
  std::vector<std::string> wishes;
  for (const py::handle wish : wanted) wishes.push_back(wish.cast<std::string>());
  const std::vector<int> places = shared::try_columns(question, names, constants).value();
  const std::vector<std::size_t> figures = shared::try_figures(question, wishes).value();
  std::deque<ReadColumn> read;
  Refusals refusals;
  std::vector<shared::RowColumn> table;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (places[i] < 0) continue;
    const auto key = static_cast<std::size_t>(places[i]);
    const auto array = columns[i].cast<py::tuple>()[1].cast<py::array>();
    if (static_cast<std::size_t>(array.size()) != rows) throw py::value_error("columns differ in length");
    ReadColumn& column = read.emplace_back();
    if (array.dtype().kind() == 'O')
      read_objects(question, names[i], key, array, column, texts, refusals);
    else
      column.numbers = static_cast<const double*>(array.data());
    table.push_back({key, column.texts.empty() ? nullptr : column.texts.data(), column.numbers});
  }

  std::vector<MadeColumn> made;
  for (const std::size_t place : figures) made.push_back(made_column(question.figures[place], rows));
  std::vector<Part> parts;
  for (std::size_t i = 0; i < workers; ++i)
    parts.push_back({rows * i / workers, rows * (i + 1) / workers, std::vector<Dictionary>(figures.size())});
  Listener listener;
  const ProgressCall interrupted = listener.progress();
  tauten::detail::Pulse pulse(interrupted);
  {
    const py::gil_scoped_release others_may_run;
    const auto work = [&](Part& part) {
      shared::RowLoop loop(question, figures, constants);
      try {
        answer_part(part, loop, table, refusals, figures, made, pulse);
      } catch (const tauten::detail::Ended&) {  // in the midst of a row
      }
    };
    const auto work_elsewhere = [&](Part& part) {
      const Interruption with_the_others(listener.failed());
      work(part);
    };
    const Interruption here(Listener::end, &listener);
    std::vector<std::future<void>> others;
    for (std::size_t i = 1; i < parts.size(); ++i)
      // A part whose thread cannot be started waits until it is asked for.
      others.push_back(std::async(std::launch::async | std::launch::deferred, work_elsewhere, std::ref(parts[i])));
    work(parts.front());
    for (std::future<void>& other : others) {
      while (other.wait_for(std::chrono::milliseconds(100)) == std::future_status::timeout) pulse.go_on(0);
      other.get();
    }
  }
  listener.look();
  py::dict answer;
  for (std::size_t i = 0; i < figures.size(); ++i) {
    const AnswerColumn& figure = question.figures[figures[i]];
    if (figure.kind == AnswerColumn::Kind::text) made[i].array = texts_of(made[i], i, parts);
    answer[figure.name.c_str()] = made[i].array;
  }
  return answer;
}

}  // namespace

void add_rows(py::module_& module) {
  module.def("answer_rows", answer_rows, "Answers every row of a table; see tauten/_rows.py");
  module.def(
      "unit_of_column",
      [](const std::string& question, const std::string& name) -> py::object {
        const shared::RowQuestion& asked = *shared::try_row_question(question).value();
        const int place = shared::key_called(asked, name);
        if (place < 0) return py::none();
        const shared::RowKey& key = asked.keys[static_cast<std::size_t>(place)];
        return py::make_tuple(key.unit, key.example);
      },
      "SI unit of a column of numbers, and how to write a text of it; None if the question has no such key");
  module.def(
      "key_of_column",
      [](const std::string& question, const std::string& name) -> py::object {
        const shared::RowQuestion& asked = *shared::try_row_question(question).value();
        const int place = shared::key_called(asked, name);
        return place < 0 ? py::object(py::none()) : py::str(asked.keys[static_cast<std::size_t>(place)].name);
      },
      "What the command line calls a column or an argument; None if the question has no such key");
}

}  // namespace tauten::python
