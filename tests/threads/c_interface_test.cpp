// The functions of the C interface from several threads, each with its own questions and all with one shared answer.
#if __has_include("tauten.h")
#include <doctest/doctest.h>

#include <string>
#include <thread>
#include <vector>

#include "tauten.h"

namespace {

template <class Write>
std::string written(Write write) {
  std::string text(write(nullptr, 0) + 1, '\0');
  write(text.data(), text.size());
  text.pop_back();
  return text;
}

std::string json(const tauten_answer* answer) {
  return written([&](char* buffer, std::size_t size) { return tauten_answer_json(answer, "", buffer, size); });
}

std::string asked(const char* question, const std::vector<tauten_pair>& pairs) {
  tauten_answer* answer = nullptr;
  tauten_error error;
  if (tauten_ask(question, pairs.data(), pairs.size(), &answer, &error) != TAUTEN_OK) return error.message;
  const std::string text = json(answer);
  tauten_answer_free(answer);
  return text;
}

std::string formulas() {
  std::string out = tauten_version();
  for (std::size_t i = 0; i < tauten_formula_count(); i += 9) {
    const tauten_formula* formula = tauten_formula_at(i);
    out += tauten_formula_named(tauten_formula_name(formula)) == formula ? tauten_formula_summary(formula) : "";
    std::vector<double> inputs(tauten_formula_arity(formula), 0.05), slopes(inputs.size());
    double value = 0;
    tauten_error error;
    double si = 0;
    const tauten_argument* first = tauten_formula_input(formula, 0);
    tauten_argument_read(first, "3", &si, &error);
    out += tauten_argument_name(first) + std::string(tauten_argument_symbol(first)) + tauten_argument_unit(first);
    if (tauten_gradient(formula, inputs.data(), &value, slopes.data(), &error) > TAUTEN_UNUSUAL) out += error.message;
    if (tauten_evaluate(formula, inputs.data(), &value, &error) <= TAUTEN_UNUSUAL) out += std::to_string(value);
    std::vector<const double*> columns;
    for (const double& input : inputs) columns.push_back(&input);
    const std::vector<std::ptrdiff_t> steps(inputs.size(), 0);
    std::vector<double> rows(300);
    tauten_evaluate_columns(formula, columns.data(), steps.data(), rows.data(), sizeof(double), rows.size());
    out += std::to_string(rows.back());
    for (const tauten_notation notation : {TAUTEN_TEXT, TAUTEN_LATEX, TAUTEN_ALGEBRA})
      out +=
          written([&](char* buffer, std::size_t size) { return tauten_formula_text(formula, notation, buffer, size); });
    out += written([&](char* buffer, std::size_t size) {
      return tauten_explain(formula, inputs.data(), TAUTEN_TEXT, buffer, size);
    });
  }
  return out;
}

const std::vector<tauten_pair> foot = {
    {"thread", "M16"}, {"class", "8.8"}, {"torque", "130N.m"}, {"condition", "oiled"}};

std::string everything(const tauten_answer* shared) {
  std::string out = formulas();
  out += asked("clamp", foot);
  out += asked("torque", {{"thread", "M16"}, {"class", "8.8"}, {"clamp-load", "50kN"}});
  out += asked("identify", {{"socket", "24mm"}});
  const std::vector<tauten_pair> by_angle = {
      {"thread", "M16"}, {"class", "8.8"}, {"grip", "55mm"}, {"angle", "60deg"}, {"snug-torque", "60N.m"}};
  out += asked("turn", by_angle);
  out += asked("reach", {{"torque", "130N.m"}, {"wrench-length", "400mm"}, {"extension", "100mm@30deg"}});
  out += asked("free", {{"thread", "M16"}, {"class", "8.8"}, {"trials", "2000"}, {"jobs", "2"}});
  out += asked("clamp", {{"torque", "130"}});  // refused
  out += json(shared) + tauten_answer_unit(shared, "candidates/0/clamp_load/low") +
         std::to_string(tauten_answer_number(shared, "candidates/0/clamp_load/low")) +
         tauten_answer_words(shared, "candidates/0/verdict") + tauten_answer_key(shared, "", 0) +
         std::to_string(tauten_answer_size(shared, "candidates")) + std::to_string(tauten_answer_kind(shared, "x"));
  tauten_answer* catalogue = nullptr;
  if (tauten_catalogue(&catalogue, nullptr) == TAUTEN_OK) out += json(catalogue);
  tauten_answer_free(catalogue);
  return out;
}

}  // namespace

TEST_CASE("eight threads speak to the C interface at once") {
  tauten_answer* shared = nullptr;
  REQUIRE(tauten_ask("clamp", foot.data(), foot.size(), &shared, nullptr) == TAUTEN_OK);
  std::vector<std::string> answers(8);
  std::vector<std::thread> pool;
  for (std::string& answer : answers) pool.emplace_back([&answer, shared] { answer = everything(shared); });
  for (std::thread& thread : pool) thread.join();
  const std::string alone = everything(shared);
  CHECK(alone.size() > 10'000);
  for (const std::string& answer : answers) CHECK(answer == alone);
  tauten_answer_free(shared);
}
#endif
