// The C interface: a question and its pairs, each on a line of the input as key=text; the answer, its page and its JSON, or a
// refusal in a sentence. Formulas are evaluated at the bytes as numbers.
#include <cmath>
#include <cstring>
#include <string>
#include <vector>

#include "tauten.h"

#include "fuzz.hpp"

namespace {

using tauten::fuzz::must;

void must_be_plain(tauten_status status, const tauten_error& error) {
  must(status <= TAUTEN_NO_MEMORY, "a status of the list");
  if (status == TAUTEN_OK) return;
  tauten::fuzz::must_be_plain(error.argument);
  tauten::fuzz::must_be_plain(error.message);
  must(error.message[0] != '\0', "an error says why");
}

void ask(const std::string& question, const std::vector<tauten_pair>& pairs) {
  tauten_error error{};
  tauten_answer* answer = nullptr;
  const tauten_status status = tauten_ask(question.c_str(), pairs.data(), pairs.size(), &answer, &error);
  must_be_plain(status, error);
  must((status == TAUTEN_OK) == (answer != nullptr), "an answer or an error");
  if (answer != nullptr) {
    std::string json(tauten_answer_json(answer, "", nullptr, 0) + 1, '?');
    must(tauten_answer_json(answer, "", json.data(), json.size()) + 1 == json.size(), "JSON is as long as it says");
    must(json.find("nan") == std::string::npos || json.find(":nan") == std::string::npos, "no bare NaN in JSON");
  }
  tauten_answer_free(answer);
  answer = nullptr;
  must((tauten_page(question.c_str(), pairs.data(), pairs.size(), "text", &answer, &error) == TAUTEN_OK) ==
           (status == TAUTEN_OK),
       "a page where there is an answer");
  if (answer != nullptr) must(std::strlen(tauten_answer_words(answer, "")) > 40, "a page has something to say");
  tauten_answer_free(answer);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  std::string text(reinterpret_cast<const char*>(data), size);
  if (!text.empty() && text[0] == '#') {
    const std::size_t place = size > 1 ? data[1] % tauten_formula_count() : 0;
    const tauten_formula* formula = tauten_formula_at(place);
    std::vector<double> inputs(tauten_formula_arity(formula), 1.0), slopes(inputs.size());
    std::memcpy(inputs.data(), text.data() + std::min<std::size_t>(2, size),
                std::min(size - std::min<std::size_t>(2, size), inputs.size() * sizeof(double)));
    double value = 0;
    tauten_error error{};
    const tauten_status status = tauten_evaluate(formula, inputs.data(), &value, &error);
    must_be_plain(status, error);
    must((status >= TAUTEN_OUTSIDE_DOMAIN) == std::isnan(value), "NaN where there is no result, and only there");
    must(tauten_gradient(formula, inputs.data(), &value, slopes.data(), &error) == status, "the same with slopes");
    return 0;
  }
  std::vector<std::string> lines(1);
  for (const char c : text)
    if (c == '\n')
      lines.emplace_back();
    else if (c != '\0')
      lines.back() += c;
  if (lines.size() > 40) return 0;
  std::vector<std::string> keys(lines.size()), texts(lines.size());
  std::vector<tauten_pair> pairs;
  const std::string question = lines[0];
  const bool drawn = question == "free" || question == "sequence";
  for (std::size_t i = 1; i < lines.size(); ++i) {
    const std::size_t sign = lines[i].find('=');
    if (sign == std::string::npos) continue;
    keys[i] = lines[i].substr(0, sign), texts[i] = lines[i].substr(sign + 1);
    if (keys[i] == "trials" || keys[i] == "points" || keys[i] == "rounds")
      continue;  // how long it takes is another question
    pairs.push_back({keys[i].c_str(), texts[i].c_str()});
  }
  if (drawn) pairs.push_back({"trials", "1000"});
  ask(question, pairs);
  return 0;
}
