// The one list of the questions. Whatever names a question or its inputs is made from it: verbs and help of the command line,
// the catalogue of C and WebAssembly, functions, signatures and stubs of Python, tables of the manual.
#pragma once

#include <span>
#include <string_view>
#include <vector>

#include "shared/inputs.hpp"
#include "tauten/base/derivation.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/explain/tree.hpp"

namespace tauten::shared {

struct Question {
  const char* name;      ///< "free": the verb of the command line, in C and of tables
  const char* function;  ///< "free_joint", in Python
  const char* result;    ///< "Free", the class of its answer in Python
  const char* topic;     ///< the WebAssembly module that it stands in
  const char* summary;   ///< what it answers, in 72 characters at most, as verbs stand in a list
  std::vector<const InputFacts*> (*inputs)() = nullptr;  ///< null in a module that does not have the question
  Outcome<Tree> (*answer)(const Call& call) = nullptr;
  Outcome<Page> (*page)(const Call& call, const PageUnits& units) = nullptr;
  Outcome<Derivation> (*derivation)(const Call& call) = nullptr;  ///< null where no formula leads to the answer

  bool is_here() const { return inputs != nullptr; }
};

/// \return all questions, in the order in which help and catalogue list them
std::span<const Question> questions() noexcept;

/// \return the question of that name, or its refusal
Outcome<const Question*> try_question(std::string_view name);

/// \return how the answer comes about, or the refusal of a question that no formula leads to
Outcome<Derivation> try_derivation(const Question& question, const Call& call);

}  // namespace tauten::shared
