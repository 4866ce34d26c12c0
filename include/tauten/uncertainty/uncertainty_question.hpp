// A question about uncertainty: a formula, a chain of formulas, or a whole answer, with the spread of its inputs.
#pragma once

#include <algorithm>

#include "tauten/base/notice.hpp"
#include "tauten/uncertainty/formula_model.hpp"
#include "tauten/uncertainty/joint_distribution.hpp"

namespace tauten::TAUTEN_ABI {

/// One or several results of the same inputs. A whole answer brings the spread of its inputs along; a formula does not.
struct UncertaintyQuestion {
  std::string title;                        ///< what it is about
  std::vector<Model> outputs;               ///< all of the same inputs in the same order
  std::vector<InputDistribution> inputs{};  ///< what is taken unless given
  std::vector<Correlation> correlations{};  ///< of inputs that go together, unless one of the two is given
  std::vector<Notice> notices{};
  std::vector<std::string> others{};  ///< what else it may be about, as in `title`, the likeliest first; not answered
};

/// \param known  the registry: `formulas`
/// \param chain  formulas by name, as for `try_chain_model`
inline Outcome<UncertaintyQuestion> try_formula_question(std::span<const Entry> known, const std::vector<Link>& chain) {
  const Outcome<Model> model = try_chain_model(known, chain);
  if (!model) return model.error();
  std::string title;
  for (const Link& link : chain) title += (title.empty() ? "" : ", ") + link.formula;
  return UncertaintyQuestion{title, {*model}};
}

/// The inputs of a question.
/// \param said          goes before what the question brings along
/// \param correlations  what goes together
/// \return the inputs in the order of the models, or an error that names the one at fault
inline Outcome<JointDistribution> try_joint(const UncertaintyQuestion& question,
                                            const std::vector<InputDistribution>& said,
                                            const std::vector<Correlation>& correlations = {}) {
  std::vector<InputDistribution> all = said;
  for (const InputDistribution& own : question.inputs)
    if (std::none_of(said.begin(), said.end(), [&](const InputDistribution& each) { return each.name == own.name; }))
      all.push_back(own);
  std::vector<Correlation> pairs = correlations;
  for (const Correlation& own : question.correlations) {
    // What was measured apart goes its own way; what was said of a pair holds.
    const bool is_given = std::any_of(said.begin(), said.end(), [&](const InputDistribution& each) {
      return each.name == own.first || each.name == own.second;
    });
    const bool is_said = std::any_of(correlations.begin(), correlations.end(), [&](const Correlation& each) {
      return (each.first == own.first && each.second == own.second) ||
             (each.first == own.second && each.second == own.first);
    });
    if (!is_given && !is_said) pairs.push_back(own);
  }
  return try_joint(question.outputs.front(), all, pairs);
}

/// The same for Sobol indices, which belong to independent inputs: those that go together by the question are taken apart.
inline Outcome<JointDistribution> try_joint_apart(UncertaintyQuestion question,
                                                  const std::vector<InputDistribution>& said,
                                                  const std::vector<Correlation>& correlations = {}) {
  question.correlations.clear();
  return try_joint(question, said, correlations);
}

/// \param name  of a result; "" for the first
/// \return the model of that result, or an error that lists the results
inline Outcome<Model> try_output(const UncertaintyQuestion& question, std::string_view name) {
  std::string known;
  for (const Model& model : question.outputs) {
    if (name.empty() || name == model.output.name) return model;
    known += (known.empty() ? "" : ", ") + model.output.name;
  }
  return Error("output", ("output " + detail::shown(name) + " is not known; there is " + known).c_str());
}

}  // namespace tauten::TAUTEN_ABI
