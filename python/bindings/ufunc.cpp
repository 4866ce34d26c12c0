// Every formula as a NumPy function, and the count of the rows that it could not answer or that lie outside a range of validity.
#include <numpy/ndarraytypes.h>
#include <numpy/ufuncobject.h>

#include <algorithm>
#include <cfenv>
#include <type_traits>
#include <utility>
#include <vector>

#include "bindings.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

struct Findings {
  std::size_t count = 0;
  double first = 0;  ///< the first value that was found, in SI
  void add(double value) {
    if (count++ == 0) first = value;
  }
};

/// What the rows of a call had wrong. Rows with a missing value (NaN) in an input are in order: they stay missing.
struct Tally {
  std::size_t rows = 0;
  std::size_t impossible = 0;
  Findings outside[most_inputs];
  Findings unusual[most_inputs];
};

// NumPy runs the loop in the thread that calls, so a count per thread is the count of the call.
thread_local Tally tally;

template <class Real>
struct Column {
  char* first;
  std::ptrdiff_t step;
  Real& operator[](std::size_t row) const noexcept {
    return *reinterpret_cast<Real*>(first + static_cast<std::ptrdiff_t>(row) * step);
  }
};

/// Counts row by row; few calls have anything to count. What has no value shows in `out`, as only the loop over rows
/// knows how an input compares with the end of a domain in its own precision.
template <class Real>
void look_at_rows(const Entry& entry, const Column<Real>* in, Column<Real> out, std::size_t rows) noexcept {
  double x[most_inputs];
  for (std::size_t row = 0; row < rows; ++row) {
    bool missing = false;
    for (int i = 0; i < entry.arity(); ++i) {
      x[i] = static_cast<double>(in[i][row]);
      missing |= x[i] != x[i];
    }
    if (missing) continue;
    if (out[row] == out[row]) {
      for (int i = 0; i < entry.arity(); ++i)
        if (!entry.inputs[static_cast<std::size_t>(i)].validity.contains(in[i][row])) tally.unusual[i].add(x[i]);
    } else if (const Check found = entry.check(x); found.status == Status::outside_domain) {
      tally.outside[found.argument].add(x[found.argument]);
    } else {
      ++tally.impossible;
    }
  }
}

template <class Real>
void work_rows(const Entry& entry, char* const* columns, const std::ptrdiff_t* steps, std::size_t rows,
               Column<Real> out) noexcept {
  const int arity = entry.arity();
  bool in_order;
  char* at[most_inputs + 1];
  std::ptrdiff_t step[most_inputs + 1];
  std::copy_n(columns, arity, at);
  std::copy_n(steps, arity, step);
  at[arity] = out.first;
  step[arity] = out.step;
  if constexpr (sizeof(Real) == sizeof(double))
    in_order = entry.rows_double(at, step, rows);
  else
    in_order = entry.rows_float(at, step, rows);
  if (in_order) return;
  Column<Real> in[most_inputs];
  for (int i = 0; i < arity; ++i) in[i] = {at[i], step[i]};
  look_at_rows(entry, in, out, rows);
}

/// The loop that NumPy calls.
template <class Real>
void loop(char** columns, npy_intp const* dimensions, npy_intp const* steps, void* data) noexcept {
  const Entry& entry = *static_cast<const Entry*>(data);
  const int arity = entry.arity();
  const auto rows = static_cast<std::size_t>(dimensions[0]);
  tally.rows += rows;
  const Column<Real> out{columns[arity], steps[arity]};
  if (std::find(columns, columns + arity, columns[arity]) == columns + arity) {
    work_rows(entry, columns, steps, rows, out);
  } else {
    // Where the result takes the place of an input, it waits until the input has been looked at.
    constexpr std::size_t block = 2048;
    Real waiting[block];
    for (std::size_t start = 0; start < rows; start += block) {
      const std::size_t count = std::min(rows - start, block);
      char* at[most_inputs];
      for (int i = 0; i < arity; ++i) at[i] = columns[i] + static_cast<std::ptrdiff_t>(start) * steps[i];
      work_rows(entry, at, steps, count, Column<Real>{reinterpret_cast<char*>(waiting), sizeof(Real)});
      for (std::size_t row = 0; row < count; ++row) out[start + row] = waiting[row];
    }
  }
  // Rows outside the domain are seen after they were computed. Their floating-point flags would make NumPy warn
  // in its own words; the caller warns in ours.
  std::feclearexcept(FE_ALL_EXCEPT);
}

/// NumPy keeps pointers to these tables.
struct Tables {
  PyUFuncGenericFunction loops[2] = {loop<float>, loop<double>};
  void* data[2];
  char types[2 * (most_inputs + 1)];
};

py::object make_ufunc(const Entry& entry, Tables& tables) {
  const auto columns = entry.arity() + 1;
  if (entry.arity() > most_inputs) throw py::value_error("a formula has too many inputs");
  for (int i = 0; i < columns; ++i) {
    tables.types[i] = NPY_FLOAT;
    tables.types[columns + i] = NPY_DOUBLE;
  }
  for (void*& data : tables.data) data = const_cast<Entry*>(&entry);
  PyObject* made = PyUFunc_FromFuncAndData(tables.loops, tables.data, tables.types, 2, entry.arity(), 1, PyUFunc_None,
                                           entry.name, entry.summary, 0);
  if (made == nullptr) throw py::error_already_set();
  return py::reinterpret_steal<py::object>(made);
}

py::list list_of(const Findings* findings) {
  py::list list;
  for (int i = 0; i < most_inputs; ++i)
    if (findings[i].count > 0) list.append(py::make_tuple(i, findings[i].count, findings[i].first));
  return list;
}

py::object take_count() {
  if (nothing_counted()) return py::none();
  const Tally counted = std::exchange(tally, Tally());
  return py::make_tuple(counted.rows, list_of(counted.outside), counted.impossible, list_of(counted.unusual));
}

}  // namespace

void start_count() noexcept { tally = {}; }

bool nothing_counted() noexcept {
  const auto found = [](const Findings& findings) { return findings.count > 0; };
  return tally.impossible == 0 && std::none_of(tally.outside, tally.outside + most_inputs, found) &&
         std::none_of(tally.unusual, tally.unusual + most_inputs, found);
}

void add_ufuncs(py::module_& module) {
  if (_import_umath() < 0) throw py::error_already_set();
  static std::vector<Tables> tables(entries().size());
  std::size_t place = 0;
  // Under its own name in the module, a NumPy function can be pickled.
  for (const Entry& entry : entries()) module.attr(entry.name) = make_ufunc(entry, tables[place++]);

  module.def("start_count", start_count, "Starts to count the rows of this thread");
  module.def("take_count", take_count,
             "None if all rows are in order; else the number of rows, (input, count, first value) outside the domain, "
             "the number of rows without a solution, and (input, count, first value) outside the range of validity");
}

}  // namespace tauten::python
