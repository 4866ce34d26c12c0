#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <limits>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "sample.hpp"
#include "tauten/tightening/torque.hpp"

#include "near.hpp"

namespace registry_test {

using namespace tauten;

namespace {

template <class Real>
bool same(Real a, Real b) {
  return a == b || (std::isnan(a) && std::isnan(b));
}

// Room for `rows` numbers every `step` bytes, forwards or backwards; with step 0 one number for all rows.
template <class Real>
class Strided {
 public:
  Strided(std::size_t rows, std::ptrdiff_t step)
      : step_(step),
        memory_((rows + 1) * (static_cast<std::size_t>(std::abs(step)) / sizeof(Real) + 1), Real(-123)),
        first_(reinterpret_cast<char*>(step < 0 ? memory_.data() + memory_.size() - 1 : memory_.data())) {}
  char* first() { return first_; }
  Real& at(std::size_t row) { return *reinterpret_cast<Real*>(first_ + static_cast<std::ptrdiff_t>(row) * step_); }

 private:
  std::ptrdiff_t step_;
  std::vector<Real> memory_;
  char* first_;
};

template <class Real>
void compare_rows(const Entry& entry, std::size_t rows, const std::vector<std::ptrdiff_t>& widths) {
  std::mt19937_64 random(7);
  const std::size_t arity = entry.inputs.size();
  std::vector<Strided<Real>> columns;
  std::vector<char*> first;
  std::vector<std::ptrdiff_t> steps;
  for (std::size_t i = 0; i <= arity; ++i) {
    steps.push_back(widths[i % widths.size()] * static_cast<std::ptrdiff_t>(sizeof(Real)));
    if (i == arity && steps.back() == 0) steps.back() = 2 * static_cast<std::ptrdiff_t>(sizeof(Real));
    columns.emplace_back(rows, steps.back());
  }
  for (auto& column : columns) first.push_back(column.first());
  std::vector<double> last = sample::inputs(entry, random);
  for (std::size_t row = 0; row < rows; ++row) {
    const std::vector<double> x = row % 5 == 4 ? last : sample::inputs(entry, random);
    for (std::size_t i = 0; i < arity; ++i) columns[i].at(row) = static_cast<Real>(x[i]);
    if (row % 7 == 3 && steps[0] != 0) columns[0].at(row) = std::numeric_limits<Real>::quiet_NaN();
    last = x;
  }
  const auto loop = [&] {
    if constexpr (std::is_same_v<Real, double>)
      return entry.rows_double(first.data(), steps.data(), rows);
    else
      return entry.rows_float(first.data(), steps.data(), rows);
  };
  const bool in_order = loop();
  bool each_in_order = true;
  for (std::size_t row = 0; row < rows; ++row) {
    std::vector<double> x;
    for (std::size_t i = 0; i < arity; ++i) x.push_back(static_cast<double>(columns[i].at(row)));
    const double expected = entry.value(x.data());
    each_in_order &= entry.check(x.data()).status == Status::ok;
    const Real found = columns[arity].at(row);
    CAPTURE(row);
    if constexpr (std::is_same_v<Real, double>) {
      CHECK(same(found, expected));
    } else {
      if (std::isnan(found)) continue;  // near the end of a domain float may round across it
      // A difference of two near inputs keeps fewer of the seven digits.
      CHECK(static_cast<double>(found) == near(expected).epsilon(1e-3));
    }
  }
  if constexpr (std::is_same_v<Real, double>) CHECK(in_order == each_in_order);
}

}  // namespace

TEST_CASE("rows of any stride give what the scalar gives, for every formula") {
  for (const Entry& entry : shared::registry()) {
    CAPTURE(std::string(entry.name));
    compare_rows<double>(entry, 600, {1});            // packed, more than two blocks
    compare_rows<double>(entry, 257, {3, 0, -2, 1});  // gaps, one number, backwards, packed
    compare_rows<double>(entry, 256, {-1, 2, 0});
    compare_rows<double>(entry, 3, {0});
    compare_rows<float>(entry, 300, {1, 0, -3});
  }
}

TEST_CASE("rows tell whether there is anything to be said about one of them") {
  const Entry& entry = *shared::formula_named("bearing_torque");
  double preload[700];
  double friction[700];
  const double diameter = 20e-3;
  double out[700];
  char* columns[] = {reinterpret_cast<char*>(preload), reinterpret_cast<char*>(friction),
                     reinterpret_cast<char*>(const_cast<double*>(&diameter)), reinterpret_cast<char*>(out)};
  const std::ptrdiff_t steps[] = {sizeof(double), sizeof(double), 0, sizeof(double)};
  const auto in_order = [&](double one_preload, double one_friction) {
    std::fill_n(preload, 700, 25e3);
    std::fill_n(friction, 700, 0.12);
    preload[511] = one_preload;
    friction[511] = one_friction;
    return entry.rows_double(columns, steps, 700);
  };
  CHECK(in_order(25e3, 0.12));
  CHECK(!in_order(-1, 0.12));   // no value
  CHECK(!in_order(25e3, 1.9));  // a value, from an unusual friction
  CHECK(!in_order(std::nan(""), 0.12));
}

TEST_CASE_TEMPLATE("long columns give what short ones give, and have their bad rows seen", Real, double, float) {
  const Entry& entry = *shared::formula_named("bearing_torque");
  const std::size_t rows = (std::size_t{5} << 20) / sizeof(Real) + 77;
  std::vector<Real> preload(rows), out(rows + 1, Real(-7));
  for (std::size_t row = 0; row < rows; ++row) preload[row] = static_cast<Real>(1000 + row % 1777);
  Real friction = Real(0.12), diameter = Real(20e-3);
  char* columns[] = {reinterpret_cast<char*>(preload.data()), reinterpret_cast<char*>(&friction),
                     reinterpret_cast<char*>(&diameter), reinterpret_cast<char*>(out.data())};
  const std::ptrdiff_t steps[] = {sizeof(Real), 0, 0, sizeof(Real)};
  const auto work = [&] {
    if constexpr (std::is_same_v<Real, double>)
      return entry.rows_double(columns, steps, rows);
    else
      return entry.rows_float(columns, steps, rows);
  };
  for (const bool bad : {false, true}) {
    if (bad) preload[rows - 300] = -1;
    CHECK(work() == !bad);
    std::size_t equal = 0;
    for (std::size_t row = 0; row < rows; ++row)
      equal += same(out[row], bearing_torque.si(preload[row], friction, diameter));
    CHECK(equal == rows);
    CHECK(out[rows] == -7);
  }
  CHECK(std::isnan(out[rows - 300]));
}

TEST_CASE("no rows: nothing is read and nothing is written") {
  char* columns[] = {nullptr, nullptr, nullptr};
  const std::ptrdiff_t steps[] = {0, 8, 8};
  shared::formula_named("setting_with_prevailing")->rows_double(columns, steps, 0);
  shared::formula_named("setting_with_prevailing")->rows_float(columns, steps, 0);
}

TEST_CASE("rows may be worked in place, whatever the stride") {
  for (const std::ptrdiff_t width : {1, 3, -1}) {
    const std::ptrdiff_t step = width * static_cast<std::ptrdiff_t>(sizeof(double));
    Strided<double> torque(700, step);
    for (std::size_t row = 0; row < 700; ++row) torque.at(row) = static_cast<double>(row);
    double prevailing = 5;
    char* columns[] = {torque.first(), reinterpret_cast<char*>(&prevailing), torque.first()};
    const std::ptrdiff_t steps[] = {step, 0, step};
    shared::formula_named("setting_with_prevailing")->rows_double(columns, steps, 700);
    for (std::size_t row = 0; row < 700; ++row) CHECK(torque.at(row) == static_cast<double>(row) + 5);
  }
}

TEST_CASE("names are unique, plain snake_case and found again") {
  std::set<std::string> names;
  for (const Entry& entry : shared::registry()) {
    CHECK_MESSAGE(names.insert(entry.name).second, entry.name);
    CHECK(shared::formula_named(entry.name) == &entry);
    CHECK_MESSAGE(
        std::string(entry.name).find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == std::string::npos,
        entry.name);
  }
  CHECK(shared::formula_named("no_such_formula") == nullptr);
  CHECK(shared::formula_named("") == nullptr);
}

TEST_CASE("every formula says what it is and where it comes from") {
  for (const Entry& entry : shared::registry()) {
    CAPTURE(std::string(entry.name));
    CHECK(std::strlen(entry.summary) > 0);
    CHECK(std::string(entry.summary).back() != '.');
    CHECK_FALSE(entry.sources.empty());
    for (const Source& source : entry.sources) {
      CHECK(std::strlen(source.place) > 0);
      CHECK((std::strlen(source.document) > 0 || source.seen == Seen::judgement || source.seen == Seen::memory));
    }
    CHECK(entry.arity() > 0);
    CHECK(std::strlen(entry.output.symbol) > 0);
  }
}

TEST_CASE("a formula's inputs have different names and symbols, and its ranges make sense") {
  for (const Entry& entry : shared::registry()) {
    CAPTURE(std::string(entry.name));
    std::set<std::string> names;
    std::set<std::string> symbols;
    for (const Arg& arg : entry.inputs) {
      CAPTURE(std::string(arg.name));
      CHECK(names.insert(arg.name).second);
      CHECK(symbols.insert(arg.symbol).second);
      CHECK(arg.domain.low < arg.domain.high);
      CHECK(arg.validity.low < arg.validity.high);
      const bool stated = arg.validity.high < largest;
      if (stated) {
        CHECK(arg.domain.contains(arg.validity.high));
        CHECK(arg.validity.low >= arg.domain.low);
      }
    }
    CHECK(symbols.insert(entry.output.symbol).second);  // F_M = F_M K/K_new is no sentence
  }
}

TEST_CASE("a word means the same in all formulas: one symbol and one dimension, those of the nomenclature") {
  std::map<std::string, const Arg*> seen;
  std::map<std::string, Dim> output;
  for (const Entry& entry : shared::registry()) {
    CAPTURE(std::string(entry.name));
    for (const Arg& arg : entry.inputs) {
      CAPTURE(std::string(arg.name));
      const Arg* first = seen.emplace(arg.name, &arg).first->second;
      CHECK(std::string(first->symbol) == arg.symbol);
      CHECK(first->dimension == arg.dimension);
      CHECK_MESSAGE(word_of(arg.name) != Word::unlisted, "missing in the nomenclature: ", arg.name);
    }
    // An output may carry a symbol of its own (the preload left, F_V), but never another dimension.
    CHECK(output.emplace(entry.output.name, entry.output.dimension).first->second == entry.output.dimension);
    if (const auto input = seen.find(entry.output.name); input != seen.end())
      CHECK(input->second->dimension == entry.output.dimension);
  }
  for (const Term& term : vocabulary) {
    CAPTURE(std::string(term.name));
    CHECK(static_cast<int>(word_of(term.name)) == &term - vocabulary + 1);
    if (const auto used = seen.find(term.name); used != seen.end()) {
      CHECK(std::string(used->second->symbol) == term.symbol);
      CHECK(used->second->dimension == term.dimension);
    }
  }
}

TEST_CASE("the entry is the formula: value, check and gradient agree with the typed object") {
  const double x[] = {48, 1.5e-3, 9.026e-3, 0.12, 0.12, 12.8e-3};
  const Entry& entry = *shared::formula_named("preload_from_torque");
  CHECK(entry.value(x) == preload_from_torque.si(x[0], x[1], x[2], x[3], x[4], x[5]));
  double slopes[6];
  CHECK(entry.gradient(x, slopes) == entry.value(x));
  CHECK(slopes[0] == near(entry.value(x) / 48).epsilon(1e-14));
  const double bad[] = {48, 1.5e-3, -9.026e-3, 0.12, 0.12, 12.8e-3};
  CHECK(entry.check(bad).argument == 2);
  CHECK(std::isnan(entry.value(bad)));
}

}  // namespace registry_test
