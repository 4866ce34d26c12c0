// The C interface against the C++ library behind it, and its promises: no pointer, word or thread brings it down.
#include "tauten.h"

#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <cstring>
#include <new>
#include <string>
#include <thread>
#include <utility>
#include <vector>

#include "shared/registry.hpp"
#include "tauten/question/clamp.hpp"

// Memory that runs out after a number of allocations of this thread; below zero it never does.
static thread_local int allocations_left = -1;

// Kept apart from their callers, or g++ takes one half of a pair for a mistake.
[[gnu::noinline]] void* operator new(std::size_t size) {
  if (allocations_left == 0) throw std::bad_alloc();
  if (allocations_left > 0) --allocations_left;
  if (void* memory = std::malloc(size)) return memory;
  throw std::bad_alloc();
}
[[gnu::noinline]] void operator delete(void* memory) noexcept { std::free(memory); }
[[gnu::noinline]] void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }

namespace {

using Pairs = std::vector<tauten_pair>;

class Answer {
 public:
  Answer(const char* question, const Pairs& job) {
    status = tauten_ask(question, job.data(), job.size(), &handle, &error);
  }
  ~Answer() { tauten_answer_free(handle); }
  Answer(const Answer&) = delete;
  Answer& operator=(const Answer&) = delete;

  std::string json(const char* path) const {
    std::string text(tauten_answer_json(handle, path, nullptr, 0) + 1, '?');
    tauten_answer_json(handle, path, text.data(), text.size());
    text.pop_back();
    return text;
  }

  tauten_answer* handle = nullptr;
  tauten_status status = TAUTEN_OK;
  tauten_error error{};
};

const Pairs pump_foot = {
    {"name", "pump foot"}, {"thread", "M16"}, {"class", "8.8"}, {"torque", "130N.m"}, {"condition", "oiled"}};

}  // namespace

TEST_CASE("formulas are found by name and by place, with their inputs and units") {
  REQUIRE(tauten_formula_count() == tauten::shared::registry().size());
  for (std::size_t i = 0; i < tauten_formula_count(); ++i) {
    const tauten_formula* formula = tauten_formula_at(i);
    const tauten::Entry& entry = tauten::shared::registry()[i];
    CHECK(std::string(tauten_formula_name(formula)) == entry.name);
    CHECK(tauten_formula_named(entry.name) == formula);
    REQUIRE(tauten_formula_arity(formula) == entry.inputs.size());
    for (std::size_t k = 0; k < entry.inputs.size(); ++k)
      CHECK(std::string(tauten_argument_name(tauten_formula_input(formula, k))) == entry.inputs[k].name);
    CHECK(tauten_formula_input(formula, entry.inputs.size()) == nullptr);
    CHECK(tauten_formula_text(formula, TAUTEN_LATEX, nullptr, 0) > 0);
  }
  const tauten_formula* torque = tauten_formula_named("bearing_torque");
  CHECK(std::string(tauten_argument_unit(tauten_formula_output(torque))) == "N.m");
  CHECK(std::string(tauten_argument_symbol(tauten_formula_input(torque, 1))) == "mu_K");
  CHECK(tauten_formula_named("no_such_formula") == nullptr);
  CHECK(tauten_formula_at(tauten_formula_count()) == nullptr);
  CHECK(tauten_c_version() == TAUTEN_C_VERSION);
}

TEST_CASE("values, warnings and errors of a formula") {
  // M_K = F mu_K D_Km/2 by hand: 25 kN, 0.12, 20 mm.
  const tauten_formula* formula = tauten_formula_named("bearing_torque");
  double value = 0;
  double slopes[3] = {};
  tauten_error error{};
  const double x[] = {25e3, 0.12, 20e-3};
  CHECK(tauten_evaluate(formula, x, &value, &error) == TAUTEN_OK);
  CHECK(value == doctest::Approx(30));
  CHECK(error.message[0] == '\0');
  CHECK(tauten_gradient(formula, x, &value, slopes, nullptr) == TAUTEN_OK);
  CHECK(slopes[0] == doctest::Approx(1.2e-3));
  CHECK(slopes[1] == doctest::Approx(250));
  CHECK(slopes[2] == doctest::Approx(1500));

  const double negative[] = {-1, 0.12, 20e-3};
  CHECK(tauten_evaluate(formula, negative, &value, &error) == TAUTEN_OUTSIDE_DOMAIN);
  CHECK(std::isnan(value));
  CHECK(std::string(error.argument) == "preload");
  CHECK(std::string(error.message).find("at least") != std::string::npos);

  const double slippery[] = {25e3, 1.9, 20e-3};
  CHECK(tauten_evaluate(formula, slippery, &value, &error) == TAUTEN_UNUSUAL);
  CHECK(value == doctest::Approx(475));
  CHECK(std::string(error.argument) == "bearing_friction");

  double si = 0;
  CHECK(tauten_argument_read(tauten_formula_output(formula), "35lbf.ft", &si, &error) == TAUTEN_OK);
  CHECK(si == doctest::Approx(47.453628).epsilon(1e-7));  // 1 lbf.ft = 1.3558179483314004 N.m, NIST SP 811
  CHECK(tauten_argument_read(tauten_formula_output(formula), "35", &si, &error) == TAUTEN_WRONG_INPUT);
  CHECK(std::isnan(si));
  CHECK(std::string(error.message).find("has no unit") != std::string::npos);
}

TEST_CASE("columns take any step and put NaN where a row has no value") {
  const tauten_formula* formula = tauten_formula_named("bearing_torque");
  struct Row {
    double preload, other, bearing_diameter;
  };
  std::vector<Row> table(1000);
  for (std::size_t i = 0; i < table.size(); ++i) table[i] = {1e3 * (static_cast<double>(i) - 10), 7, 20e-3};
  const double friction = 0.12;
  const double* columns[] = {&table.back().preload, &friction, &table.front().bearing_diameter};
  const std::ptrdiff_t width = sizeof(Row);
  const std::ptrdiff_t steps[] = {-width, 0, width};
  std::vector<double> out(table.size());
  REQUIRE(tauten_evaluate_columns(formula, columns, steps, out.data(), sizeof(double), out.size()) == TAUTEN_OK);
  for (std::size_t i = 0; i < out.size(); ++i) {
    const double x[] = {table[table.size() - 1 - i].preload, friction, table[i].bearing_diameter};
    double one = 0;
    tauten_evaluate(formula, x, &one, nullptr);
    CHECK((out[i] == one || (std::isnan(out[i]) && std::isnan(one))));
  }
  CHECK(std::isnan(out.back()));
  CHECK(tauten_evaluate_columns(formula, nullptr, steps, out.data(), sizeof(double), 1) == TAUTEN_WRONG_INPUT);

  const float preload = 25e3f, mu = 0.12f, diameter = 20e-3f;
  const float* floats[] = {&preload, &mu, &diameter};
  const std::ptrdiff_t none[] = {0, 0, 0};
  float rows[3] = {};
  REQUIRE(tauten_evaluate_columns_float(formula, floats, none, rows, sizeof(float), 3) == TAUTEN_OK);
  CHECK(rows[2] == doctest::Approx(30));
}

TEST_CASE("text is cut to the buffer and its whole size returned") {
  const tauten_formula* formula = tauten_formula_named("bearing_torque");
  char buffer[8] = "#######";
  const std::size_t whole = tauten_formula_text(formula, TAUTEN_ALGEBRA, buffer, 5);
  CHECK(whole > 20);
  CHECK(std::strlen(buffer) == 4);
  CHECK(buffer[5] == '#');
  std::string text(whole + 1, '?');
  CHECK(tauten_formula_text(formula, TAUTEN_ALGEBRA, text.data(), text.size()) == whole);
  CHECK(text.find("bearing_friction") != std::string::npos);
  const double x[] = {25e3, 0.12, 20e-3};
  std::string why(tauten_explain(formula, x, TAUTEN_TEXT, nullptr, 0) + 1, '?');
  tauten_explain(formula, x, TAUTEN_TEXT, why.data(), why.size());
  CHECK(why.find("30 N.m") != std::string::npos);
  std::string page(tauten_explain(formula, x, TAUTEN_MATHML, nullptr, 0) + 1, '?');
  tauten_explain(formula, x, TAUTEN_MATHML, page.data(), page.size());
  CHECK(page.starts_with("<div"));
  CHECK(page.find("<math") != std::string::npos);
  CHECK(tauten_formula_text(formula, TAUTEN_MATHML, nullptr, 0) > 100);
  CHECK(tauten_explain(formula, x, TAUTEN_ALGEBRA, nullptr, 0) == 0);
}

TEST_CASE("clamp answers as the C++ library does") {
  const Answer answer("clamp", pump_foot);
  REQUIRE_MESSAGE(answer.status == TAUTEN_OK, answer.error.message);
  const auto same = tauten::try_clamp({.name = "pump foot",
                                       .thread = "M16",
                                       .property_class = "8.8",
                                       .torque = tauten::Torque(130),
                                       .condition = "oiled"});
  REQUIRE(same);
  const tauten::ClampCandidate& c = same->candidates.front();
  CHECK(tauten_answer_number(answer.handle, "candidates/0/clamp_load/low") == c.clamp_load.low.si);
  CHECK(tauten_answer_number(answer.handle, "candidates/0/clamp_load/high") == c.clamp_load.high.si);
  CHECK(std::string(tauten_answer_unit(answer.handle, "candidates/0/clamp_load/low")) == "N");
  CHECK(tauten_answer_words(answer.handle, "candidates/0/verdict") == c.verdict);
  CHECK(tauten_answer_kind(answer.handle, "candidates/0/class_assumed") == TAUTEN_TRUTH);
  CHECK(tauten_answer_kind(answer.handle, "candidates") == TAUTEN_LIST);
  CHECK(tauten_answer_size(answer.handle, "candidates") == same->candidates.size());
  CHECK(std::string(tauten_answer_key(answer.handle, "thread_friction", 2)) == "high");
  CHECK(answer.json("name") == "\"pump foot\"");
  CHECK(answer.json("candidates/0/class_assumed") == "false");
  CHECK(std::stod(answer.json("candidates/0/clamp_load/nominal")) == c.clamp_load.nominal.si);
  for (const char* nowhere : {"candidates/7", "candidates/-1", "candidates/x", "name/0", "/", "candidates//0"})
    CHECK(tauten_answer_kind(answer.handle, nowhere) == TAUTEN_ABSENT);
}

TEST_CASE("torque and identify answer too") {
  const Answer torque("torque", {{"thread", "M16"}, {"class", "8.8"}, {"clamp-load", "45kN"}, {"condition", "oiled"}});
  REQUIRE_MESSAGE(torque.status == TAUTEN_OK, torque.error.message);
  CHECK(tauten_answer_number(torque.handle, "candidates/0/clamp_load/nominal") == doctest::Approx(45e3));
  const Answer found("identify", {{"socket", "24mm"}, {"class", "8.8"}});
  REQUIRE_MESSAGE(found.status == TAUTEN_OK, found.error.message);
  CHECK(std::string(tauten_answer_words(found.handle, "candidates/0/thread")) == "M16");  // ISO 4014: s = 24 mm
  CHECK(tauten_answer_number(found.handle, "property_class/tensile_strength") == 800e6);
}

TEST_CASE("reach answers too") {
  // 40 lbf.ft with a wrench of 12 in and an extension of 4 in: set 30 lbf.ft (US Army TM 9-2350-277-40&P).
  const Answer answer("reach", {{"torque", "40lbf.ft"}, {"wrench-length", "12in"}, {"extension", "4in"}});
  REQUIRE_MESSAGE(answer.status == TAUTEN_OK, answer.error.message);
  CHECK(tauten_answer_number(answer.handle, "setting") == doctest::Approx(30 * 1.3558179483314004));
  CHECK(std::string(tauten_answer_unit(answer.handle, "setting")) == "N.m");
}

TEST_CASE("free answers too") {
  const Answer answer("free", {{"thread", "M16"}, {"class", "8.8"}, {"rust", "rusted"}, {"trials", "20000"}});
  REQUIRE_MESSAGE(answer.status == TAUTEN_OK, answer.error.message);
  // One of the ways comes first: their chances add up to one.
  double sum = 0;
  for (std::size_t i = 0; i < tauten_answer_size(answer.handle, "chances"); ++i) {
    const std::string way = std::string("chances/") + tauten_answer_key(answer.handle, "chances", i);
    if (way != "chances/limit") sum += tauten_answer_number(answer.handle, way.c_str());
  }
  CHECK(sum == doctest::Approx(1));
  CHECK(tauten_answer_number(answer.handle, "breakaway/low") < tauten_answer_number(answer.handle, "breakaway/high"));
  CHECK(tauten_answer_kind(answer.handle, "steps/1/aids/0/aid") == TAUTEN_WORDS);
  const Answer lobes("free", {{"thread", "M10"}, {"class", "10.9"}, {"bit", "50"}, {"trials", "20000"}});
  REQUIRE_MESSAGE(lobes.status == TAUTEN_OK, lobes.error.message);
  CHECK(std::string(tauten_answer_words(lobes.handle, "capacities/1/part")) == "recess");
  CHECK(std::string(tauten_answer_words(lobes.handle, "capacities/2/part")) == "bit");
}

TEST_CASE("an answer is laid out for people, in the units that are typed") {
  const auto page = [](const char* format, tauten_status* status = nullptr) {
    const Pairs job = {{"thread", "M16"}, {"class", "8.8"}, {"torque", "96lbf.ft"}, {"condition", "oiled"}};
    tauten_answer* answer = nullptr;
    tauten_error error{};
    const tauten_status found = tauten_page("clamp", job.data(), job.size(), format, &answer, &error);
    if (status != nullptr) *status = found;
    const std::string text = found == TAUTEN_OK ? tauten_answer_words(answer, "") : error.message;
    tauten_answer_free(answer);
    return text;
  };
  CHECK(page("text").starts_with("M16 8.8, oiled, 96 lbf.ft: clamp load "));
  CHECK(page(nullptr) == page("text"));
  CHECK(page("html").find("<strong>M16 8.8, oiled, 96 lbf.ft: clamp load ") != std::string::npos);
  tauten_status status = TAUTEN_OK;
  CHECK(page("braille", &status).find("text, markdown, html") != std::string::npos);
  CHECK(status == TAUTEN_WRONG_INPUT);
}

TEST_CASE("an answer is explained, from what is given to the verdict") {
  const auto explained = [](const char* question, const char* format, tauten_status* status = nullptr) {
    const Pairs job = {{"thread", "M16"}, {"class", "8.8"}, {"torque", "96lbf.ft"}, {"condition", "oiled"}};
    tauten_answer* answer = nullptr;
    tauten_error error{};
    const tauten_status found = tauten_explain_answer(question, job.data(), job.size(), format, &answer, &error);
    if (status != nullptr) *status = found;
    const std::string text = found == TAUTEN_OK ? tauten_answer_words(answer, "") : error.message;
    tauten_answer_free(answer);
    return text;
  };
  const std::string text = explained("clamp", "text");
  for (const char* part : {"\nGiven", "\nSteps", "\n1. ", "\nResult", "\nVerdict: "})
    CHECK(text.find(part) != std::string::npos);
  CHECK(explained("clamp", nullptr) == text);
  CHECK(explained("clamp", "html").find("<math") != std::string::npos);
  CHECK(explained("clamp", "latex").find("\\begin{align*}") != std::string::npos);
  tauten_status status = TAUTEN_OK;
  CHECK(explained("clamp", "braille", &status).find("markdown, latex or html") != std::string::npos);
  CHECK(status == TAUTEN_WRONG_INPUT);
  CHECK(explained("thread", "text", &status).find("thread has no derivation") != std::string::npos);
  CHECK(status == TAUTEN_WRONG_INPUT);
  tauten_error error{};
  CHECK(tauten_explain_answer(nullptr, nullptr, 0, nullptr, nullptr, &error) == TAUTEN_WRONG_INPUT);
}

TEST_CASE("wrong words are refused with a sentence") {
  const auto refused = [](const char* question, const Pairs& job, const char* argument) {
    const Answer answer(question, job);
    CAPTURE(answer.error.message);
    CHECK(answer.status == TAUTEN_WRONG_INPUT);
    CHECK(answer.handle == nullptr);
    CHECK(std::string(answer.error.argument) == argument);
    CHECK(std::strlen(answer.error.message) > 20);
  };
  refused("clamp", {{"thread", "M16"}}, "torque");
  refused("clamp", {{"thread", "M16"}, {"torque", "130"}}, "torque");
  refused("clamp", {{"thread", "M16"}, {"torque", "130mm"}}, "torque");
  refused("clamp", {{"thread", "M16"}, {"torque", "0N.m"}}, "torque");
  refused("clamp", {{"thread", "M16"}, {"torque", "130N.m"}, {"torque", "130N.m"}}, "torque");
  refused("clamp", {{"thread", "M16"}, {"torque", "130N.m"}, {"colour", "red"}}, "colour");
  refused("clamp", {{"thread", "M16"}, {"torque", "130N.m"}, {"face", "jam"}}, "face");
  refused("clamp", {{"thread", "M16"}, {"torque", "130N.m"}, {"thread-friction", "0.1..0.2"}}, "thread-friction");
  refused("clamp", {{"thread", ""}, {"torque", "130N.m"}}, "thread");
  refused("clamp", {{"socket", "24mm"}, {"key", "8mm"}, {"torque", "130N.m"}}, "key");
  refused("clamp", {{"socket", "23.4mm"}, {"torque", "130N.m"}}, "socket");
  refused("identify", {{"bit", "3x"}}, "bit");
  refused("identify", {}, "socket");
  refused("free", {{"thread", "M10"}, {"class", "10.9"}, {"bit", "31"}}, "bit");
  refused("weigh", pump_foot, "question");
}

TEST_CASE("JSON stays JSON whatever bytes come in") {
  Pairs job = pump_foot;
  job[0].text = "\"\\\n\x01\xff\xc3\xa9\xed\xa0\x80 foot";
  const Answer answer("clamp", job);
  REQUIRE(answer.status == TAUTEN_OK);
  CHECK(answer.json("name") == "\"\\\"\\\\\\u000a\\u0001\ufffd\u00e9\ufffd\ufffd\ufffd foot\"");
}

TEST_CASE("null pointers are refused or answered with nothing") {
  double value = 0;
  tauten_error error{};
  const double x[] = {1, 1, 1};
  CHECK(tauten_evaluate(nullptr, x, &value, &error) == TAUTEN_WRONG_INPUT);
  CHECK(std::string(error.message).find("null") != std::string::npos);
  CHECK(tauten_evaluate(tauten_formula_at(0), nullptr, &value, nullptr) == TAUTEN_WRONG_INPUT);
  CHECK(tauten_ask("clamp", nullptr, 2, nullptr, nullptr) == TAUTEN_WRONG_INPUT);
  const tauten_pair half = {"thread", nullptr};
  tauten_answer* answer = nullptr;
  CHECK(tauten_ask("clamp", &half, 1, &answer, &error) == TAUTEN_WRONG_INPUT);
  CHECK(tauten_catalogue(nullptr, nullptr) == TAUTEN_WRONG_INPUT);
  CHECK(tauten_formula_named(nullptr) == nullptr);
  CHECK(tauten_formula_arity(nullptr) == 0);
  CHECK(tauten_answer_kind(nullptr, "") == TAUTEN_ABSENT);
  CHECK(std::isnan(tauten_answer_number(nullptr, nullptr)));
  CHECK(tauten_answer_json(nullptr, "", nullptr, 0) == 0);
  tauten_answer_free(nullptr);
}

TEST_CASE("where memory runs out there is a status, wherever that happens") {
  const double negative[] = {-1, 0.12, 20e-3};
  const tauten_formula* formula = tauten_formula_named("bearing_torque");
  tauten_error error{};
  tauten_answer* answer = nullptr;
  int failures = 0;
  // Step by step to the first call that goes through.
  const auto until_it_works = [&](auto call) {
    for (int allowed = 0;; allowed += 1 + allowed / 40) {
      allocations_left = allowed;
      const bool works = call();
      allocations_left = -1;
      if (works) return;
      ++failures;
      REQUIRE(allowed < 100'000);
    }
  };
  const auto asked = [&](tauten_status status) {
    if (status == TAUTEN_OK) return true;
    allocations_left = -1;
    CHECK(status == TAUTEN_NO_MEMORY);
    CHECK(answer == nullptr);
    CHECK(std::string(error.message) == "there is not enough memory");
    return false;
  };
  const struct {
    const char* question;
    Pairs job;
  } jobs[] = {{"clamp", pump_foot},
              {"identify", {{"socket", "24mm"}, {"class", "8.8"}}},
              {"reach", {{"torque", "40N.m"}, {"wrench-length", "300mm"}, {"extension", "100mm"}}},
              {"free", {{"thread", "M16"}, {"class", "8.8"}, {"trials", "10000"}}}};
  for (const auto& [question, job] : jobs) {
    CAPTURE(question);
    until_it_works(
        [&, ask = question, &said = job] { return asked(tauten_ask(ask, said.data(), said.size(), &answer, &error)); });
    until_it_works([&] { return tauten_answer_json(answer, "", nullptr, 0) > 0; });
    tauten_answer_free(answer);
  }
  until_it_works([&] { return asked(tauten_catalogue(&answer, &error)); });
  tauten_answer_free(answer);
  double value = 0;
  until_it_works([&] { return tauten_evaluate(formula, negative, &value, &error) == TAUTEN_OUTSIDE_DOMAIN; });
  CHECK(failures > 300);
  CHECK(std::string(error.argument) == "preload");
}

TEST_CASE("the catalogue lists formulas and questions") {
  tauten_answer* all = nullptr;
  REQUIRE(tauten_catalogue(&all, nullptr) == TAUTEN_OK);
  CHECK(tauten_answer_size(all, "formulas") == tauten::shared::registry().size());
  CHECK(std::string(tauten_answer_words(all, "formulas/bearing_torque/inputs/preload/unit")) == "N");
  CHECK(std::string(tauten_answer_words(all, "questions/clamp/keys/torque/example")) == "48N.m");
  // Every example of a key is itself understood.
  for (const char* question : {"clamp", "torque", "identify"}) {
    const std::string keys = std::string("questions/") + question + "/keys";
    for (std::size_t i = 0; i < tauten_answer_size(all, keys.c_str()); ++i) {
      const std::string key = tauten_answer_key(all, keys.c_str(), i);
      std::string example = tauten_answer_words(all, (keys + "/" + key + "/example").c_str());
      if (example.starts_with('"')) example = example.substr(1, example.size() - 2);
      const bool own_tool = key == "socket" || key == "key" || key == "bit" || key == "thread";
      Pairs job = {{key.c_str(), example.c_str()}};
      if (!own_tool && question == std::string("identify")) job.push_back({"socket", "16mm"});
      if (!own_tool && question != std::string("identify")) job.push_back({"thread", "M10"});
      if (question == std::string("clamp") && key != "torque") job.push_back({"torque", "20N.m"});
      if (question != std::string("clamp") && key == "torque") continue;
      if (question == std::string("clamp") && key == "clamp-load") continue;
      if (key == "engagement") job.push_back({"tapped-material", "grey_cast_iron"});
      if (key == "tapped-material") job.push_back({"engagement", "20mm"});
      const Answer answer(question, job);
      CHECK_MESSAGE(answer.status == TAUTEN_OK, question, " ", key, ": ", answer.error.message);
    }
  }
  tauten_answer_free(all);
}

TEST_CASE("eight threads at once get what one gets") {
  const Answer alone("clamp", pump_foot);
  const std::string expected = alone.json("");
  std::vector<int> wrong(8);
  std::vector<std::jthread> threads;  // should one of them not start, the others are waited for all the same
  for (int& count : wrong)
    threads.emplace_back([&] {
      for (int i = 0; i < 20; ++i) {
        const Answer answer("clamp", pump_foot);
        count += answer.json("") != expected || alone.json("") != expected;
        tauten_error error{};
        double value = 0;
        const double x[] = {-1, 0.12, 20e-3};
        count += tauten_evaluate(tauten_formula_named("bearing_torque"), x, &value, &error) != TAUTEN_OUTSIDE_DOMAIN;
        count += tauten_formula_text(tauten_formula_named("nut_factor"), TAUTEN_LATEX, nullptr, 0) == 0;
      }
    });
  threads.clear();
  for (const int count : wrong) CHECK(count == 0);
}

namespace {

/// Rows of one question, freed at the end.
struct Table {
  Table() = default;
  ~Table() { tauten_table_free(handle); }
  Table(const Table&) = delete;
  Table& operator=(const Table&) = delete;

  std::size_t column(const std::string& name) const {
    for (std::size_t i = 0; i < tauten_table_columns(handle); ++i)
      if (tauten_table_name(handle, i) == name) return i;
    return std::size_t(-1);
  }
  double number(const std::string& name, std::size_t row) const {
    return tauten_table_numbers(handle, column(name))[row];
  }
  std::string text(const std::string& name, std::size_t row) const {
    return tauten_table_text(handle, column(name), row);
  }

  tauten_table* handle = nullptr;
  tauten_error error{};
};

int stop_at_once(std::size_t, std::size_t, void* asked) { return ++*static_cast<int*>(asked); }

}  // namespace

TEST_CASE("a question over columns answers each row as the question alone does") {
  const char* const conditions[] = {"oiled", "dry", "", nullptr, "wine"};
  const double torques[] = {130, 90, 130, std::nan(""), 130};
  const tauten_pair same[] = {{"thread", "M16"}, {"property_class", "8.8"}, {"condition", "zinc"}};
  const tauten_column columns[] = {{"condition", conditions, nullptr}, {"torque", nullptr, torques}};
  const char* const figures[] = {"clamp_load_low", "verdict"};
  Table table;
  REQUIRE(tauten_ask_columns("clamp", same, 3, columns, 2, 5, figures, 2, nullptr, nullptr, &table.handle,
                             &table.error) == TAUTEN_OK);
  CHECK(tauten_table_rows(table.handle) == 5);
  CHECK(tauten_table_columns(table.handle) == 4);
  CHECK(tauten_table_name(table.handle, 3) == std::string("error"));
  CHECK(tauten_table_unit(table.handle, 0) == std::string("N"));
  CHECK(tauten_table_unit(table.handle, 1) == nullptr);
  const char* const torque_texts[] = {"130N.m", "90N.m", "130N.m"};
  const char* const conditions_said[] = {"oiled", "dry", "zinc"};
  for (std::size_t row = 0; row < 3; ++row) {
    CAPTURE(row);
    const Answer alone(
        "clamp",
        {{"thread", "M16"}, {"class", "8.8"}, {"torque", torque_texts[row]}, {"condition", conditions_said[row]}});
    REQUIRE(alone.status == TAUTEN_OK);
    CHECK(table.number("clamp_load_low", row) == tauten_answer_number(alone.handle, "candidates/0/clamp_load/low"));
    CHECK(table.text("verdict", row) == tauten_answer_words(alone.handle, "candidates/0/verdict"));
    CHECK(table.text("error", row).empty());
  }
  CHECK(table.text("error", 3).find("torque is missing") != std::string::npos);
  CHECK(std::isnan(table.number("clamp_load_low", 3)));
  CHECK(table.text("error", 4).find("wine") != std::string::npos);
}

TEST_CASE("questions over columns refuse what is wrong with all rows, stop when asked, and take null pointers") {
  const double one[] = {130};
  const tauten_column torque[] = {{"torque", nullptr, one}};
  const tauten_column unknown[] = {{"torqe", nullptr, one}};
  const tauten_column neither[] = {{"torque", nullptr, nullptr}};
  const tauten_pair same[] = {{"thread", "M16"}, {"class", "8.8"}};
  const char* const no_figure[] = {"clamp_lod_low"};
  Table table;
  const auto ask = [&](const char* question, const tauten_column* columns, const char* const* figures) {
    return tauten_ask_columns(question, same, 2, columns, 1, 1, figures, figures ? 1 : 0, nullptr, nullptr,
                              &table.handle, &table.error);
  };
  CHECK(ask("clamp", unknown, nullptr) == TAUTEN_WRONG_INPUT);
  CHECK(std::string(table.error.message).find("torque") != std::string::npos);
  CHECK(ask("clamp", torque, no_figure) == TAUTEN_WRONG_INPUT);
  CHECK(ask("clasp", torque, nullptr) == TAUTEN_WRONG_INPUT);
  CHECK(ask("clamp", neither, nullptr) == TAUTEN_WRONG_INPUT);
  CHECK(ask(nullptr, torque, nullptr) == TAUTEN_WRONG_INPUT);
  CHECK(ask("clamp", nullptr, nullptr) == TAUTEN_WRONG_INPUT);
  CHECK(table.handle == nullptr);
  CHECK(tauten_ask_columns("clamp", same, 2, torque, 1, 1, nullptr, 0, nullptr, nullptr, nullptr, nullptr) ==
        TAUTEN_WRONG_INPUT);
  // No rows are an empty table.
  REQUIRE(tauten_ask_columns("clamp", same, 2, torque, 1, 0, nullptr, 0, nullptr, nullptr, &table.handle, nullptr) ==
          TAUTEN_OK);
  CHECK(tauten_table_rows(table.handle) == 0);
  CHECK(tauten_table_text(table.handle, 0, 0) == nullptr);
  CHECK(tauten_table_name(table.handle, 1000) == nullptr);
  CHECK(tauten_table_numbers(nullptr, 0) == nullptr);
  tauten_table_free(std::exchange(table.handle, nullptr));
  // A row of its own each, so that none is remembered: more than the fifth of a second that passes before the first call.
  std::vector<double> torques(2'000'000);
  for (std::size_t i = 0; i < torques.size(); ++i) torques[i] = 100 + 1e-5 * static_cast<double>(i);
  const tauten_column many[] = {{"torque", nullptr, torques.data()}};
  int asked = 0;
  CHECK(tauten_ask_columns("clamp", same, 2, many, 1, torques.size(), nullptr, 0, stop_at_once, &asked, &table.handle,
                           &table.error) == TAUTEN_STOPPED);
  CHECK(asked == 1);
  CHECK(table.handle == nullptr);
}

TEST_CASE("a long question is stopped by its watch, and one that is let alone gives the same answer") {
  const tauten_pair pairs[] = {{"thread", "M16"}, {"class", "8.8"}, {"rust", "rusted"}, {"trials", "20000"}};
  const auto ask = [&](tauten_watch watch, void* context, tauten_answer** answer, tauten_error* error) {
    return tauten_ask_watched("free", pairs, 4, watch, context, answer, error);
  };
  tauten_answer* answer = nullptr;
  tauten_error error;
  int calls = 0;
  const auto at_once = [](void* count) { return ++*static_cast<int*>(count); };
  CHECK(ask(at_once, &calls, &answer, &error) == TAUTEN_STOPPED);
  CHECK(calls == 1);
  CHECK(answer == nullptr);
  CHECK(std::string(error.message) == "stopped by the watch");
  CHECK(ask(at_once, &calls, &answer, nullptr) == TAUTEN_STOPPED);
  const auto never = [](void* count) { return ++*static_cast<int*>(count), 0; };
  const auto json_of = [&] {
    std::string text(tauten_answer_json(answer, "", nullptr, 0) + 1, '\0');
    tauten_answer_json(answer, "", text.data(), text.size());
    tauten_answer_free(std::exchange(answer, nullptr));
    return text;
  };
  calls = 0;
  REQUIRE(ask(never, &calls, &answer, &error) == TAUTEN_OK);
  CHECK(calls > 0);
  const std::string watched = json_of();
  REQUIRE(ask(nullptr, nullptr, &answer, &error) == TAUTEN_OK);
  CHECK(json_of() == watched);
  CHECK(tauten_ask_watched("fre", pairs, 4, never, &calls, &answer, &error) == TAUTEN_WRONG_INPUT);
}

TEST_CASE("a key has the name of the library, or that of the command line") {
  const Answer named("torque", {{"thread", "M16"}, {"class", "8.8"}, {"clamp_load", "45kN"}, {"condition", "oiled"}});
  const Answer dashed("torque", {{"thread", "M16"}, {"class", "8.8"}, {"clamp-load", "45kN"}, {"condition", "oiled"}});
  REQUIRE(named.status == TAUTEN_OK);
  CHECK(named.json("") == dashed.json(""));
}
