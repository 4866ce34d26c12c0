// The derivation of a whole answer, as data: from the inputs over the steps to the verdict.
#pragma once

#include <vector>

#include "tauten/base/figure.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/step.hpp"

namespace tauten::TAUTEN_ABI {

/// The derivation of an answer. Each question has its own function `derivation_of` that makes one;
/// `explain/derivation.hpp` writes it as text, Markdown, LaTeX or HTML.
struct Derivation {
  std::string title;            ///< what it is about: "M16, class 8.8, 130 N.m"
  std::vector<Figure> given;    ///< what it starts from
  std::vector<Step> steps;      ///< what was computed, in order
  std::vector<Figure> found;    ///< what comes out, with its band
  std::string verdict;          ///< the same in words
  std::vector<Notice> notices;  ///< warnings and cautions

  /// Lists the members, for bindings and JSON.
  template <class V>
  static void fields(V&& visit) {
    visit("title", &Derivation::title);
    visit("given", &Derivation::given);
    visit("steps", &Derivation::steps);
    visit("found", &Derivation::found);
    visit("verdict", &Derivation::verdict);
    visit("notices", &Derivation::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
