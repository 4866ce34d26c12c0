// The inputs of a stuck fastener.
#pragma once

#include "tauten/question/free.hpp"
#include "tauten/question/free_lookup.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// A stuck fastener as somebody names and describes it.
struct FreeQuestion {
  FreeNames names;
  FreeJob job;
  std::vector<std::string> surroundings;  ///< what is read into the job at once
  bool instructions = false;              ///< the page has how each step is done as well
};

std::span<const Input<FreeQuestion>> free_inputs();

/// The answer with the job, filled in.
struct FreeAnswer : Free {
  FreeJob job;
  bool instructions = false;  ///< of the page

  template <class V>
  static void kept(V&& visit) {
    visit(&FreeAnswer::instructions);
  }
};
/// \return the answer with what belongs to it: the job, and what a thread or class was taken for
FreeAnswer answer_of(const GivenJob<FreeQuestion>& given, const Free& found);
inline Derivation derivation_of(const FreeAnswer& answer) { return tauten::derivation_of(answer.job, answer); }

/// \return what is given, names looked up
Outcome<GivenJob<FreeQuestion>> try_read_free(const Call& call);
/// \return an error of the library in the words of what was given
Error in_words(const GivenJob<FreeQuestion>& given, const Error& error);

/// \return the job that is given, names looked up
Outcome<FreeJob> try_free_job(const Call& call);

/// Whether it comes free before something gives, where to stop, and what to do next.
Outcome<FreeAnswer> try_free(const Call& call);

}  // namespace tauten::shared
