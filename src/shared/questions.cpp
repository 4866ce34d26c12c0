#include "shared/questions.hpp"

#include <array>

#include "shared/clamp_inputs.hpp"
#include "shared/free_inputs.hpp"
#include "shared/group_inputs.hpp"
#include "shared/identification_page.hpp"
#include "shared/pages.hpp"
#include "shared/pattern_inputs.hpp"
#include "shared/prying_inputs.hpp"
#include "shared/reach_inputs.hpp"
#include "shared/sequence_inputs.hpp"
#include "shared/thread_inputs.hpp"
#include "shared/turn_inputs.hpp"

namespace tauten::shared {

namespace {

#if defined(TAUTEN_TOPIC)  // for pages that load little: the questions of one topic; of a topic without any, none
constexpr bool is_here(std::string_view topic) { return topic == TAUTEN_TOPIC; }
constexpr bool are_explained = false;  // there are no formulas to write down
#else
constexpr bool is_here(std::string_view) { return true; }
constexpr bool are_explained = true;
#endif

/// Adds what the question takes and how it is asked.
template <auto inputs, auto ask>
constexpr Question by(Question question) {
  question.inputs = [] { return facts_of(inputs()); };
  question.answer = [](const Call& call) -> Outcome<Tree> {
    const auto answer = ask(call);
    if (!answer) return answer.error();
    return tree_of(*answer);
  };
  question.page = [](const Call& call, const PageUnits& units) -> Outcome<Page> {
    const auto answer = ask(call);
    if (!answer) return answer.error();
    if constexpr (requires { page_of(*answer, units); })
      return page_of(*answer, units);
    else
      return page_of(*answer, units, false);  // the short one of two
  };
  using Answer = std::remove_cvref_t<decltype(*ask(std::declval<const Call&>()))>;
  if constexpr (are_explained && requires(const Answer& answer) { derivation_of(answer); })
    question.derivation = [](const Call& call) -> Outcome<Derivation> {
      const auto answer = ask(call);
      if (!answer) return answer.error();
      return derivation_of(*answer);
    };
  return question;
}

// Of a question that is not here only its names are left, so that the linker drops the rest.
constexpr auto list = [] {
  auto all = std::to_array<Question>({
      by<identify_inputs, try_identify>({"identify", "identify", "Identification", "clamp",
                                         "Which fastener it is, from the tool that fits or the mark on its head"}),
      by<thread_inputs, try_thread>({"thread", "thread", "Thread", "thread",
                                     "All about a thread: sizes, limits, tools, what bolts and nuts bear"}),
      by<clamp_inputs, try_clamp>(
          {"clamp", "clamp", "Clamp", "clamp", "The clamp load that a torque leaves, its limits, and a verdict"}),
      by<torque_inputs, try_torque_for>(
          {"torque", "torque_for", "Clamp", "clamp", "The torque for a wanted clamp load, or else the suggested one"}),
      by<turn_inputs, try_turn>(
          {"turn", "turn", "Turn", "turn", "How far to turn from snug for a clamp load, or what an angle leaves"}),
      by<curve_inputs, try_curve>({"curve", "curve", "TighteningCurve", "curve",
                                   "Torque and preload against the angle, from snug to yield and beyond"}),
      by<reach_inputs, try_reach>({"reach", "reach", "Reach", "reach",
                                   "What to set on a wrench with extensions and the like, and what arrives"}),
      by<free_inputs, try_free>({"free", "free_joint", "Free", "free",
                                 "Whether a stuck fastener comes free, where to stop, what to do next"}),
      by<pattern_inputs, try_pattern>({"pattern", "pattern", "Pattern", "pattern",
                                       "Which pattern the holes are, how many ways round, which drillings"}),
      by<group_inputs, try_group>({"group", "group", "BoltGroup", "group",
                                   "What each bolt of a group carries, by named models beside each other"}),
      by<sequence_inputs, try_sequence>({"sequence", "sequence", "TighteningSequence", "group",
                                         "In which order and passes to tighten a joint, and how to undo it"}),
      by<prying_inputs, try_prying>(
          {"prying", "prying", "Prying", "group", "What a plate that bends at its bolts leaves of their strength"}),
  });
  for (Question& q : all)
    if (!is_here(q.topic)) q.inputs = nullptr, q.answer = nullptr, q.page = nullptr, q.derivation = nullptr;
  return all;
}();

}  // namespace

std::span<const Question> questions() noexcept { return list; }

Outcome<const Question*> try_question(std::string_view name) {
  std::string why = "there is no question " + tauten::detail::shown(name);
  std::string known;
  for (const Question& q : list) {
    const bool is_asked = name == q.name;
    if (is_asked && q.is_here()) return &q;
    if (is_asked) why += " here, but in " + std::string(q.topic) + ".wasm and tauten.wasm";
    if (q.is_here()) known += (known.empty() ? "; ask " : ", ") + std::string(q.name);
  }
  return Error("question", (why + (known.empty() ? "; here are formulas only" : known)).c_str());
}

Outcome<Derivation> try_derivation(const Question& question, const Call& call) {
  if (question.derivation != nullptr) return question.derivation(call);
  std::string known;
  for (const Question& q : list)
    if (q.derivation != nullptr) known += (known.empty() ? "; explain " : ", ") + std::string(q.name);
  return Error("question", (std::string(question.name) + " has no derivation here" + known).c_str());
}

}  // namespace tauten::shared
