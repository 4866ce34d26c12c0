// Runs every published figure through the registry and prints what was checked, how close it came, and what was left
// out. A row fails if it is further from print than half a unit of its last place, plus what half a unit of the
// source's own rounded inputs (marked ~) explains. A row with an excuse fails as well if the excuse is not needed.
// A formula without a published figure needs a reason in no_figure.csv, and the test that holds it instead.
// If TAUTEN_PUBLISHED_REPORT names a file, every comparison is written there for the verification page.
#include <doctest/doctest.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "shared/registry.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/thread/size_table.hpp"

namespace {

using namespace tauten;

std::vector<std::string> split(const std::string& text, char separator) {
  std::vector<std::string> parts;
  std::istringstream stream(text);
  for (std::string part; std::getline(stream, part, separator);) {
    const auto first = part.find_first_not_of(' ');
    parts.push_back(first == std::string::npos ? "" : part.substr(first, part.find_last_not_of(' ') - first + 1));
  }
  if (text.ends_with(separator)) parts.emplace_back();
  return parts;
}

/// Half a unit of the last printed place of "46.8", "292e2" or "30.80e6".
double half_last_place(const std::string& printed) {
  const auto exponent_at = printed.find_first_of("eE");
  const std::string mantissa = printed.substr(0, exponent_at);
  const int exponent = exponent_at == std::string::npos ? 0 : std::stoi(printed.substr(exponent_at + 1));
  const auto point = mantissa.find('.');
  const int decimals = point == std::string::npos ? 0 : static_cast<int>(mantissa.size() - point - 1);
  return 0.5 * std::pow(10, exponent - decimals);
}

/// The inputs of one row. A name that is not given is looked up as a formula of the same name.
class Scope {
 public:
  explicit Scope(const std::string& given) {
    for (const std::string& part : split(given, ';')) {
      if (part.empty()) continue;
      const auto equals = part.find('=');
      REQUIRE_MESSAGE(equals != std::string::npos, "no '=' in " << part);
      const std::string name = part.substr(0, equals);
      const std::string value = part.substr(equals + 1);
      if (name == "thread")
        set_thread(value);
      else
        text_[name] = value;
    }
  }

  std::vector<std::string> rounded_inputs() const {
    std::vector<std::string> names;
    for (const auto& [name, value] : text_)
      if (value.starts_with('~')) names.push_back(name);
    return names;
  }
  /// Moves a rounded input by half a unit of its last place.
  void shift(const std::string& name, double halves) { shift_[name] = halves; }
  /// Formulas that gave an input: the printed figure holds them as well.
  const std::set<std::string>& through() const { return through_; }

  double value_of(const std::string& name, Dim dimension, int depth = 0) const {
    REQUIRE_MESSAGE(depth < 9, "circular inputs at " << name);
    if (const auto found = text_.find(name); found != text_.end()) {
      const std::string& text = found->second;
      if (shared::formula_named(text)) return evaluate(text, depth + 1);
      return number_of(name, text, dimension);
    }
    if (const auto found = number_.find(name); found != number_.end()) return found->second;
    return evaluate(name, depth + 1);
  }

  double evaluate(const std::string& formula, int depth = 0) const {
    const Entry* entry = shared::formula_named(formula);
    REQUIRE_MESSAGE(entry, "neither an input nor a formula: " << formula);
    if (depth > 0) through_.insert(formula);
    std::vector<double> x;
    for (const Arg& arg : entry->inputs) x.push_back(value_of(arg.name, arg.dimension, depth));
    return entry->value(x.data());
  }

 private:
  double number_of(const std::string& name, const std::string& text, Dim dimension) const {
    const std::string bare = text.starts_with('~') ? text.substr(1) : text;
    const auto read = try_read_quantity(name.c_str(), bare, dimension);
    REQUIRE_MESSAGE(read, read.error().what());
    double value = *read;
    if (const auto shifted = shift_.find(name); shifted != shift_.end()) {
      double number = 0;
      const std::string digits = bare.substr(0, detail::read_number(bare, number));
      value *= (number + shifted->second * half_last_place(digits)) / number;
    }
    return value;
  }

  void set_thread(const std::string& designation) {
    // A coarse thread may be written with its pitch or without.
    for (const table::MetricSize& size : table::metric_sizes)
      if (designation == size.designation ||
          (size.coarse && designation.starts_with(std::string(size.designation) + "x") &&
           std::fabs(std::stod(designation.substr(designation.find('x') + 1)) * 1e-3 - size.pitch) < 1e-9)) {
        number_["diameter"] = size.diameter;
        number_["pitch"] = size.pitch;
        return;
      }
    FAIL("no such thread: " << designation);
  }

  std::map<std::string, std::string> text_;
  std::map<std::string, double> number_;
  std::map<std::string, double> shift_;
  mutable std::set<std::string> through_;
};

struct Row {
  std::string id, formula, given, published, unit, allow, why, source, confidence;
};

std::vector<Row> read_rows(const std::filesystem::path& file) {
  std::ifstream stream(file);
  std::string line;
  std::getline(stream, line);
  REQUIRE(line == "id,formula,given,published,unit,allow,why,source,confidence");
  std::vector<Row> rows;
  while (std::getline(stream, line)) {
    if (line.empty()) continue;
    const auto f = split(line, ',');
    REQUIRE_MESSAGE(f.size() == 9, file.filename().string() << ": 9 fields wanted in " << line);
    rows.push_back({f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7], f[8]});
  }
  return rows;
}

struct Tally {
  int rows = 0;
  int excused = 0;
  int from_memory = 0;
  double worst = 0;          ///< deviation over tolerance, rows without excuse
  double worst_excused = 0;  ///< percent
};

/// What is written for the verification page.
struct Report {
  std::ofstream file;
  std::map<std::string, int> through;  ///< figures that a formula holds as the source of an input

  Report() {
    const char* name = std::getenv("TAUTEN_PUBLISHED_REPORT");
    if (!name) return;
    file.open(name);
    REQUIRE_MESSAGE(file, "cannot write " << name);
    file << "table,id,formula,through,given,published,unit,ours,deviation,tolerance,why,source,confidence\n";
  }

  void add(const std::string& table, const Row& row, const Scope& scope, double ours, double deviation,
           double tolerance) {
    std::string names;
    for (const std::string& name : scope.through()) {
      ++through[name];
      names += (names.empty() ? "" : " ") + name;
    }
    if (file.is_open())
      file << table << ',' << row.id << ',' << row.formula << ',' << names << ',' << row.given << ',' << row.published
           << ',' << row.unit << ',' << number_text(ours, 6) << ',' << number_text(deviation, 3) << ','
           << number_text(tolerance, 3) << ',' << row.why << ',' << row.source << ',' << row.confidence << '\n';
  }
};

void check_row(const std::string& table, const Row& row, Tally& tally, Report& report) {
  CAPTURE(row.id);
  const Entry* entry = shared::formula_named(row.formula);
  REQUIRE_MESSAGE(entry, "no such formula: " << row.formula);
  const auto unit = try_read_quantity("published", row.published + row.unit, entry->output.dimension);
  REQUIRE_MESSAGE(unit, unit.error().what());
  double printed = 0;
  detail::read_number(row.published, printed);
  const double in_si = *unit / printed;

  Scope scope(row.given);
  const double ours = scope.evaluate(row.formula) / in_si;
  double tolerance = half_last_place(row.published);
  for (const std::string& name : scope.rounded_inputs()) {
    Scope moved = scope;
    moved.shift(name, 1);
    tolerance += std::fabs(moved.evaluate(row.formula) / in_si - ours);
  }
  // The last bits of the arithmetic may fall on either side of an exact tie.
  tolerance *= 1 + 1e-9;
  const double deviation = std::fabs(ours - printed);
  CAPTURE(row.given);
  CAPTURE(printed);
  CAPTURE(ours);
  report.add(table, row, scope, ours, ours - printed, tolerance);

  ++tally.rows;
  if (row.confidence == "memory") ++tally.from_memory;
  if (row.allow.empty()) {
    tally.worst = std::max(tally.worst, deviation / tolerance);
    CHECK_MESSAGE(deviation <= tolerance, row.source);
  } else {
    ++tally.excused;
    const double percent = 100 * deviation / std::fabs(printed);
    tally.worst_excused = std::max(tally.worst_excused, percent);
    CHECK_MESSAGE(!row.why.empty(), "an excuse needs its reason");
    CHECK_MESSAGE(percent <= std::stod(row.allow) * (1 + 1e-9), row.why);
    CHECK_MESSAGE(deviation > tolerance, "the excuse is not needed: " << row.why);
  }
}

}  // namespace

TEST_CASE("published figures") {
  const std::filesystem::path folder = std::filesystem::path(TAUTEN_TESTS_FOLDER) / "published";
  std::map<std::string, Tally> tallies;
  std::map<std::string, int> checks_of;
  Report report;
  for (const auto& file : std::filesystem::directory_iterator(folder)) {
    const std::string name = file.path().stem().string();
    if (file.path().extension() != ".csv" || name == "left_out" || name == "no_figure") continue;
    CAPTURE(name);
    for (const Row& row : read_rows(file.path())) {
      check_row(name, row, tallies[name], report);
      ++checks_of[row.formula];
    }
  }

  std::printf("\n%-30s %6s %8s %7s  %s  %s\n", "table", "rows", "excused", "memory", "worst/tolerance",
              "worst excused");
  Tally sum;
  for (const auto& [name, tally] : tallies) {
    std::printf("%-30s %6d %8d %7d  %15.3f  %11.2f %%\n", name.c_str(), tally.rows, tally.excused, tally.from_memory,
                tally.worst, tally.worst_excused);
    sum.rows += tally.rows;
    sum.excused += tally.excused;
    sum.from_memory += tally.from_memory;
  }
  std::printf("%-30s %6d %8d %7d\n", "all", sum.rows, sum.excused, sum.from_memory);
  CHECK(sum.rows > 2000);

  std::printf("\nFormulas without a published figure, and what holds them:\n");
  std::set<std::string> excused;
  std::string line;
  std::ifstream no_figure(folder / "no_figure.csv");
  std::getline(no_figure, line);
  while (std::getline(no_figure, line)) {
    const auto f = split(line, ',');
    REQUIRE_MESSAGE(f.size() == 3, line);
    CHECK_MESSAGE(shared::formula_named(f[0]), "no such formula: " << f[0]);
    CHECK_MESSAGE(excused.insert(f[0]).second, f[0]);
    CHECK_MESSAGE(!f[1].empty(), f[0]);
    CHECK_MESSAGE(std::filesystem::exists(folder.parent_path() / f[2]), f[2]);
    std::printf("  %s: %s (%s)\n", f[0].c_str(), f[1].c_str(), f[2].c_str());
  }
  int held = 0;
  for (const Entry& entry : shared::registry()) {
    const bool checked = checks_of.contains(entry.name) || report.through.contains(entry.name);
    held += checked;
    const std::string message =
        std::string(entry.name) + (checked ? ": has a figure now; take it out of no_figure.csv"
                                           : ": no published figure and no reason in no_figure.csv");
    CHECK_MESSAGE(checked != excused.contains(entry.name), message);
  }
  std::printf("%d formulas with a published figure, %d with a reason why not\n", held,
              static_cast<int>(excused.size()));

  std::printf("\nLeft out, and why:\n");
  std::ifstream left_out(folder / "left_out.csv");
  std::getline(left_out, line);
  int reasons = 0;
  while (std::getline(left_out, line)) {
    const auto f = split(line, ',');
    REQUIRE(f.size() == 3);
    CHECK_FALSE(f[2].empty());
    ++reasons;
    std::printf("  %s: %.80s%s: %s\n", f[0].c_str(), f[1].c_str(), f[1].size() > 80 ? "..." : "", f[2].c_str());
  }
  CHECK(reasons > 0);
}
