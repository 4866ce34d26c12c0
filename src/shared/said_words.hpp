// What is said to a question in words, with the texts that it points to.
#pragma once

#include <deque>
#include <string>
#include <utility>
#include <vector>

#include "shared/inputs.hpp"

namespace tauten::shared {

struct SaidWords {
  std::deque<std::string> texts;  // a deque keeps its items where they are
  std::vector<Assignment> said;

  SaidWords() = default;
  SaidWords(const SaidWords&) = delete;  // what was said points into `texts`
  SaidWords(SaidWords&&) = default;

  void add(const char* key, const std::string& text) {
    texts.push_back(text);
    said.push_back({key, texts.back()});
  }
  std::vector<std::pair<std::string, std::string>> pairs() const {
    std::vector<std::pair<std::string, std::string>> all;
    for (const Assignment& pair : said) all.emplace_back(pair.key, pair.value.text);
    return all;
  }
};

}  // namespace tauten::shared
