// The questions. A new one is a row in the table below.
#include <array>
#include <memory>
#include <vector>

#include "c_api/boundary.hpp"
#include "c_api/catalogue.hpp"
#include "shared/clamp_inputs.hpp"
#include "shared/free_inputs.hpp"
#include "shared/identification.hpp"
#include "shared/reach_inputs.hpp"
#include "shared/turn_inputs.hpp"

namespace {

using namespace tauten;
using namespace tauten::c_api;
using shared::Assignment;

/// \return an answer of any type as a tree
template <auto ask>
Outcome<Tree> tree_by(std::span<const Assignment> said) {
  const auto answer = ask(said);
  if (!answer) return answer.error();
  return tree_of(*answer);
}

template <auto list>
Tree keys_by() {
  Tree keys;
  for (const auto& key : list()) {
    Tree about;
    about.add("example", tree_of(key.example)).add("help", tree_of(key.help)).add("words", tree_of(key.words));
    about.add("repeats", tree_of(key.takes == shared::Takes::several_values));
    keys.add(key.option(), about);
  }
  return keys;
}

struct QuestionEntry {
  const char* name;
  const char* topic;
  const char* summary = nullptr;
  Outcome<Tree> (*answer)(std::span<const Assignment> said) = nullptr;
  Tree (*keys)() = nullptr;
};

#if defined(TAUTEN_TOPIC)  // for pages that load little: the questions of one topic; of a topic without any, none
constexpr bool is_here(std::string_view topic) { return topic == TAUTEN_TOPIC; }
#else
constexpr bool is_here(std::string_view) { return true; }
#endif

// Of a question that is not here only name and topic are left, so that the linker drops the rest.
constexpr auto questions = [] {
  auto all = std::to_array<QuestionEntry>({
      {"clamp", "clamp", "The clamp load that a torque leaves, how hard the bolt is worked, and a verdict",
       tree_by<shared::try_clamp>, keys_by<shared::clamp_inputs>},
      {"torque", "clamp",
       "The torque for a clamp load or a share of the proof load; without either, the suggested torque",
       tree_by<shared::try_torque_for>, keys_by<shared::clamp_inputs>},
      {"identify", "clamp", "Which fastener it is, from the tool that fits; what the mark on a head says",
       tree_by<shared::try_identify>, keys_by<shared::identify_inputs>},
      {"turn", "turn", "How far to turn for a load, or what a snug torque and an angle leave",
       tree_by<shared::try_turn>, keys_by<shared::turn_inputs>},
      {"curve", "turn", "Torque and clamp load against the angle, from snug to yield and beyond",
       tree_by<shared::try_curve>, keys_by<shared::curve_inputs>},
      {"reach", "reach", "What to set on a wrench with extensions, joints and bars, or what arrives at the fastener",
       tree_by<shared::try_reach>, keys_by<shared::reach_inputs>},
      {"free", "free", "Whether a stuck fastener comes free before something gives, where to stop, and what to do next",
       tree_by<shared::try_free>, keys_by<shared::free_inputs>},
  });
  for (QuestionEntry& q : all)
    if (!is_here(q.topic)) q = {q.name, q.topic};
  return all;
}();

Outcome<Tree> answer_to(const char* question, std::span<const Assignment> said) {
  std::string why = "there is no question " + detail::shown(question);
  std::string known;
  for (const QuestionEntry& q : questions) {
    const bool is_asked = std::string_view(question) == q.name;
    if (is_asked && q.answer != nullptr) return q.answer(said);
    if (is_asked) why += " here, but in " + std::string(q.topic) + ".wasm and tauten.wasm";
    if (q.answer != nullptr) known += (known.empty() ? "; ask " : ", ") + std::string(q.name);
  }
  return Error("question", (why + (known.empty() ? "; here are formulas only" : known)).c_str());
}

}  // namespace

extern "C" {

tauten_status tauten_ask(const char* question, const tauten_pair* pairs, size_t count, tauten_answer** answer,
                         tauten_error* error) {
  if (answer != nullptr) *answer = nullptr;
  return guarded_status(error, [&] {
    if (question == nullptr || answer == nullptr || (pairs == nullptr && count > 0)) return null_pointer(error);
    std::vector<Assignment> said;
    for (const tauten_pair& pair : std::span(pairs, count)) {
      if (pair.key == nullptr || pair.text == nullptr) return null_pointer(error);
      said.push_back({pair.key, pair.text});
    }
    Outcome<Tree> found = answer_to(question, said);
    if (!found) return fail(error, TAUTEN_WRONG_INPUT, found.error());
    *answer = new tauten_answer{std::move(found).value()};
    return TAUTEN_OK;
  });
}

tauten_status tauten_catalogue(tauten_answer** answer, tauten_error* error) {
  if (answer != nullptr) *answer = nullptr;
  return guarded_status(error, [&] {
    if (answer == nullptr) return null_pointer(error);
    Tree asked;
    asked.kind = Tree::Kind::record;
    for (const QuestionEntry& q : questions) {
      if (q.answer == nullptr) continue;
      Tree about;
      about.add("summary", tree_of(q.summary)).add("keys", q.keys());
      asked.add(q.name, about);
    }
    Tree all;
    all.add("version", tree_of(TAUTEN_VERSION)).add("formulas", formulas_tree()).add("questions", asked);
    *answer = new tauten_answer{std::move(all)};
    return TAUTEN_OK;
  });
}

}  // extern "C"
