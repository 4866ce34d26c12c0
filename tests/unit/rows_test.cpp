// Rows of a table against the same questions asked one by one.
#include <doctest/doctest.h>

#include <bit>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

#include "rows/rows.hpp"
#include "shared/clamp_inputs.hpp"
#include "shared/free_inputs.hpp"
#include "shared/reach_inputs.hpp"
#include "tauten/base/quantity_text.hpp"

#include "near.hpp"

namespace rows_test {

namespace {

using namespace tauten;
using namespace tauten::shared;

using Pairs = std::vector<std::pair<std::string, std::string>>;

const RowQuestion& question(const char* name) { return *try_row_question(name).value(); }

std::vector<RowCell> cells_of(const RowQuestion& asked, const Pairs& pairs) {
  std::vector<RowCell> cells;
  for (const auto& [key, text] : pairs) cells.push_back({static_cast<std::size_t>(key_called(asked, key)), text});
  return cells;
}

std::size_t place_of(const RowQuestion& asked, const std::string& figure) {
  for (std::size_t i = 0; i < asked.figures.size(); ++i)
    if (asked.figures[i].name == figure) return i;
  FAIL("no figure " << figure);
  return 0;
}

std::vector<std::size_t> all_of(const RowQuestion& asked) {
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < asked.figures.size(); ++i) places.push_back(i);
  return places;
}

bool same_bits(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b); }

std::vector<Assignment> said_of(const Pairs& pairs) {
  std::vector<Assignment> said;
  for (const auto& [key, text] : pairs) said.push_back({key, text});
  return said;
}

}  // namespace

TEST_CASE("a row of clamp is the answer to the question, whatever rows came before it") {
  const RowQuestion& asked = question("clamp");
  const auto wanted = all_of(asked);
  const auto rows = asked.start(asked, wanted, 1);
  std::mt19937 random(7);
  const auto pick = [&](const auto& list) { return std::string(list[random() % std::size(list)]); };
  const char* threads[] = {"M8", "M10x1.25", "M16", "M24", "M99"};
  const char* classes[] = {"", "4.6", "8.8", "10.9", "A2-70"};
  const char* conditions[] = {"dry", "oiled", "unknown"};
  const char* torques[] = {"4N.m", "10N.m", "10.001N.m", "35lbf.ft", "900N.m", "0N.m", "7", "5000kgf.cm"};
  const char* prevailing[] = {"", "", "9N.m"};
  int answered = 0;
  for (int i = 0; i < 3000; ++i) {
    Pairs pairs = {{"thread", pick(threads)}, {"torque", pick(torques)}, {"condition", pick(conditions)}};
    if (const std::string text = pick(classes); !text.empty()) pairs.emplace_back("class", text);
    if (const std::string text = pick(prevailing); !text.empty()) pairs.emplace_back("prevailing-torque", text);
    const auto row = cells_of(asked, pairs);
    const std::span<const Cell> cells = rows->answer(row);
    const auto answer = try_clamp(said_of(pairs));
    const std::string error(cells.back().text);
    CHECK(error == answer.error().what());
    const auto number = [&](const char* figure) { return cells[place_of(asked, figure)].number; };
    const auto text = [&](const char* figure) { return std::string(cells[place_of(asked, figure)].text); };
    if (!answer) {
      CHECK(std::isnan(number("clamp_load_low")));
      CHECK(text("verdict").empty());
      continue;
    }
    ++answered;
    const ClampCandidate& c = answer->candidates.front();
    CHECK(same_bits(number("torque"), c.torque.si));
    CHECK(same_bits(number("nut_factor_low"), c.nut_factor.low));
    CHECK(same_bits(number("clamp_load_low"), c.clamp_load.low.si));
    CHECK(same_bits(number("clamp_load_nominal"), c.clamp_load.nominal.si));
    CHECK(same_bits(number("clamp_load_high"), c.clamp_load.high.si));
    CHECK(same_bits(number("proof_share_nominal"), c.proof_share.nominal));
    CHECK(same_bits(number("yield_utilisation_low"), c.yield_utilisation.low));
    CHECK(same_bits(number("yield_utilisation_high"), c.yield_utilisation.high));
    CHECK(same_bits(number("suggested_torque"), c.suggested_torque.si));
    CHECK(same_bits(number("suggested_clamp_load_high"), c.suggested_clamp_load.high.si));
    CHECK(same_bits(number("worst_case_low"), c.worst_case.low.si));
    CHECK(same_bits(number("worst_case_high"), c.worst_case.high.si));
    CHECK(same_bits(number("chance_of_yield"), c.chance_of_yield));
    CHECK(same_bits(number("chance_of_yield_as_sold"), c.chance_of_yield_as_sold));
    CHECK(same_bits(number("chance_of_breaking"), c.chance_of_breaking));
    CHECK(same_bits(number("chance_of_breaking_as_sold"), c.chance_of_breaking_as_sold));
    CHECK(same_bits(number("chance_of_slack"), c.chance_of_slack));
    CHECK(text("summary") == c.summary);
    CHECK(text("suggested_limit") == c.suggested_limit);
    CHECK(text("thread") == c.thread);
    CHECK(text("property_class") == c.property_class);
    CHECK(text("verdict") == c.verdict);
    CHECK(text("meaning") == c.meaning);
    CHECK(text("least_class") == c.least_class);
    std::string codes;
    add_codes(c, codes);
    add_codes(answer->notices, codes);
    CHECK(text("warnings") == codes);
  }
  CHECK(answered > 1000);
}

TEST_CASE("a socket that several fasteners fit gives the most common one and their count") {
  const RowQuestion& asked = question("clamp");
  const auto rows = asked.start(asked, all_of(asked), 1);
  const Pairs pairs = {{"socket", "16mm"}, {"torque", "48N.m"}, {"class", "8.8"}};
  const auto row = cells_of(asked, pairs);
  const auto cells = rows->answer(row);
  const Clamp answer = try_clamp(said_of(pairs)).value();
  REQUIRE(answer.candidates.size() > 1);
  CHECK(cells[place_of(asked, "thread")].text == answer.candidates.front().thread);
  CHECK(cells[place_of(asked, "candidates")].number == static_cast<double>(answer.candidates.size()));
}

TEST_CASE("numbers are SI and mean the same as texts with units") {
  const RowQuestion& asked = question("clamp");
  const auto rows = asked.start(asked, all_of(asked), 1);
  const auto key = [&](const char* name) { return static_cast<std::size_t>(key_called(asked, name)); };
  const std::vector<RowCell> texts = {{key("thread"), "M16"},
                                      {key("class"), "8.8"},
                                      {key("torque"), "130N.m"},
                                      {key("bearing-diameter"), "0.02m"},
                                      {key("thread-friction"), "0.1"}};
  const std::vector<RowCell> numbers = {{key("thread"), "M16"},
                                        {key("class"), {}, 8.8},
                                        {key("torque"), {}, 130},
                                        {key("bearing-diameter"), {}, 0.02},
                                        {key("thread-friction"), {}, 0.1}};
  const auto first = rows->answer(texts);
  const std::vector<Cell> kept(first.begin(), first.end());
  const auto second = rows->answer(numbers);
  REQUIRE(second.back().text.empty());
  for (const char* figure : {"clamp_load_low", "clamp_load_high", "suggested_torque"})
    CHECK(same_bits(kept[place_of(asked, figure)].number, second[place_of(asked, figure)].number));
}

TEST_CASE("the unit of a column of numbers follows the example of its key") {
  CHECK(std::string(unit_of_example("48N.m")) == "N.m");
  CHECK(std::string(unit_of_example("16mm")) == "m");
  CHECK(std::string(unit_of_example("25kN")) == "N");
  CHECK(std::string(unit_of_example("90deg")) == "rad");
  CHECK(std::string(unit_of_example("600MPa")) == "Pa");
  CHECK(std::string(unit_of_example("10.9")).empty());
  CHECK(std::string(unit_of_example("oiled")).empty());
}

TEST_CASE("every question answers a row as it answers words") {
  struct Case {
    const char* name;
    Pairs said;
    const char* figure;
    double value;
  };
  const Pairs stuck = {{"thread", "M16"}, {"class", "8.8"}, {"rust", "rusted"}, {"aid", "brush"}, {"aid", "fluid:24h"}};
  const Pairs line = {
      {"torque", "130N.m"}, {"wrench-length", "400mm"}, {"extension", "100mm@30deg"}, {"extension", "50mm"}};
  const Pairs wish = {{"thread", "M16"}, {"class", "8.8"}, {"clamp-load", "50kN"}, {"condition", "oiled"}};
  const std::vector<Case> cases = {
      {"free", stuck, "stop_at", try_free(said_of(stuck)).value().stop_at.si},
      {"reach", line, "setting", try_reach(said_of(line)).value().setting.si},
      {"torque", wish, "torque", try_torque_for(said_of(wish)).value().candidates.front().torque.si}};
  for (const auto& [name, said, figure, value] : cases) {
    const RowQuestion& asked = question(name);
    Pairs joined;  // what is said twice stands in one cell
    for (const auto& [key, text] : said)
      if (!joined.empty() && joined.back().first == key)
        joined.back().second += "; " + text;
      else
        joined.emplace_back(key, text);
    const auto row = cells_of(asked, joined);
    const auto rows = asked.start(asked, all_of(asked), 1);
    for (int again = 0; again < 2; ++again) {
      const auto cells = rows->answer(row);
      REQUIRE_MESSAGE(cells.back().text.empty(), std::string(cells.back().text));
      CHECK(same_bits(cells[place_of(asked, figure)].number, value));
    }
  }
}

TEST_CASE("there is a cell for every figure, and the last two are warnings and error") {
  for (const RowQuestion* asked : row_questions()) {
    const auto rows = asked->start(*asked, all_of(*asked), 1);
    const auto cells = rows->answer({});
    REQUIRE(cells.size() == asked->figures.size());
    CHECK(asked->figures[cells.size() - 2].name == "warnings");
    CHECK(asked->figures.back().name == "error");
    CHECK(!cells.back().text.empty());
    CHECK(try_figures(*asked, {}));
  }
}

TEST_CASE("columns are found under the names of keys and of arguments") {
  const RowQuestion& asked = question("clamp");
  const auto name_of = [&](const char* column) {
    const int place = key_called(asked, column);
    return place < 0 ? std::string() : asked.keys[static_cast<std::size_t>(place)].name;
  };
  CHECK(name_of("class") == "class");
  CHECK(name_of("property_class") == "class");
  CHECK(name_of("face_condition") == "face");
  CHECK(name_of("clamp_load") == "clamp-load");
  CHECK(name_of("clamp-load") == "clamp-load");
  CHECK(name_of("wrench_accuracy") == "wrench-accuracy");
  CHECK(name_of("prevailing_torque") == "prevailing-torque");
  CHECK(name_of("width_across_flats").empty());  // of socket and key: it would not say which
  CHECK(name_of("place").empty());
}

TEST_CASE("a column with a slip of the pen is refused, one of somebody else is let alone") {
  const RowQuestion& asked = question("clamp");
  const auto told = [&](std::vector<std::string> names) {
    return std::string(try_columns(asked, names, {}).error().what());
  };
  CHECK(told({"thread", "torque", "place", "serial", "name"}).empty());
  CHECK(told({"thread", "torqe"}).find("did you mean torque?") != std::string::npos);
  CHECK(told({"thread", "torque", "condtion"}).find("did you mean condition?") != std::string::npos);
  CHECK(told({"thread", "torque", "class", "property_class"}).find("under two names") != std::string::npos);
  CHECK(told({"thread"}).find("no column is named torque") != std::string::npos);
  CHECK(told({"torque"}).find("thread, socket or key") != std::string::npos);
}

TEST_CASE("what limits heat is said under one name") {
  const auto job = [](const Pairs& more) {
    Pairs pairs{{"thread", "M16"}, {"class", "8.8"}};
    pairs.insert(pairs.end(), more.begin(), more.end());
    return try_free_job(said_of(pairs));
  };
  CHECK_FALSE(job({}).value().surroundings.fire_or_burst);
  CHECK(job({{"surroundings", "fire_or_burst"}}).value().surroundings.fire_or_burst);
  const HeatSurroundings both =
      job({{"surroundings", "fire-or-burst"}, {"surroundings", "adhesive"}}).value().surroundings;
  CHECK(both.fire_or_burst);
  CHECK(both.adhesive);
  CHECK_FALSE(both.rubber_or_plastic);
  CHECK(std::string(job({{"surroundings", "perhaps"}}).error().argument()) == "surroundings");
  CHECK(job({}).value().surroundings.quenched == true);  // ISO 898-1: class 8.8 is quenched and tempered
  CHECK(job({{"quenched", "no"}}).value().surroundings.quenched == false);
  CHECK(std::string(job({{"torsion-ratio", "0.7"}}).error().argument()) == "torsion-ratio");
}

TEST_CASE("a column that is called like what a list takes is refused: it would be left out without a word") {
  const std::vector<std::string> needed = {"thread"};
  for (const char* name : {"fire_or_burst", "fire-or-burst", "adhesive"}) {
    const auto found = try_columns(question("free"), std::vector<std::string>{"thread", name}, {});
    REQUIRE_FALSE(found);
    CHECK(std::string(found.error().argument()) == "surroundings");
  }
}

TEST_CASE("what is said once for a table is refused as a column") {
  for (const RowQuestion* asked : row_questions())
    for (const char* name : {"jobs", "columns"}) {
      const std::vector<std::string> names{name};
      const auto found = try_columns(*asked, names, {});
      CHECK(std::string(found.error().argument()) == name);
    }
}

}  // namespace rows_test
