// The questions in words, and what there is to ask.
#include <vector>

#include "c_api/boundary.hpp"
#include "c_api/catalogue.hpp"
#include "shared/questions.hpp"
#include "shared/registry.hpp"
#include "tauten/base/interruption.hpp"
#include "tauten/explain/derivation.hpp"
#include "tauten/explain/page_format.hpp"

namespace {

using namespace tauten;
using namespace tauten::c_api;
using shared::Assignment;

Tree keys_of(const shared::Question& question) {
  Tree keys;
  for (const shared::InputFacts* input : question.inputs()) {
    Tree about;
    about.add("name", tree_of(input->name))
        .add("example", tree_of(input->example))
        .add("help", tree_of(input->help))
        .add("words", tree_of(input->words));
    about.add("repeats", tree_of(input->takes == shared::Takes::several_values));
    keys.add(input->option(), about);
  }
  return keys;
}

#if defined(__cpp_exceptions)
/// Who watches over a long answer.
struct Watch {
  tauten_watch call;
  void* context;
};

/// Thrown through a question that its watch has stopped.
struct Stopped {};

void look_up(void* who) {
  const auto* watch = static_cast<const Watch*>(who);
  if (watch->call(watch->context) != 0) throw Stopped();
}
#endif

/// Reads what is said and answers with what a question has to say to it.
template <class Say>
tauten_status asked(const char* question, const tauten_pair* pairs, size_t count, tauten_answer** answer,
                    tauten_error* error, Say say) {
  if (answer != nullptr) *answer = nullptr;
  return guarded_status(error, [&] {
    if (question == nullptr || answer == nullptr || (pairs == nullptr && count > 0)) return null_pointer(error);
    std::vector<Assignment> said;
    for (const tauten_pair& pair : std::span(pairs, count)) {
      if (pair.key == nullptr || pair.text == nullptr) return null_pointer(error);
      said.push_back({pair.key, pair.text});
    }
    const auto found = shared::try_question(question);
    if (!found) return fail(error, TAUTEN_WRONG_INPUT, found.error());
    Outcome<Tree> tree = say(**found, said);
    if (!tree) return fail(error, TAUTEN_WRONG_INPUT, tree.error());
    *answer = new tauten_answer{std::move(tree).value()};
    return TAUTEN_OK;
  });
}

}  // namespace

extern "C" {

tauten_status tauten_ask(const char* question, const tauten_pair* pairs, size_t count, tauten_answer** answer,
                         tauten_error* error) {
  return asked(question, pairs, count, answer, error,
               [](const shared::Question& q, std::span<const Assignment> said) { return q.answer(said); });
}

tauten_status tauten_ask_watched(const char* question, const tauten_pair* pairs, size_t count, tauten_watch watch,
                                 void* context, tauten_answer** answer, tauten_error* error) {
#if defined(__cpp_exceptions)
  if (watch != nullptr) {
    Watch who{watch, context};
    bool stopped = false;
    const auto status = asked(question, pairs, count, answer, error,
                              [&](const shared::Question& q, std::span<const Assignment> said) -> Outcome<Tree> {
                                try {
                                  const Interruption heard(look_up, &who);
                                  return q.answer(said);
                                } catch (const Stopped&) {
                                  stopped = true;
                                  return Error("", "stopped by the watch");
                                }
                              });
    return stopped ? TAUTEN_STOPPED : status;
  }
#endif
  return tauten_ask(question, pairs, count, answer, error);
}

tauten_status tauten_page(const char* question, const tauten_pair* pairs, size_t count, const char* format,
                          tauten_answer** answer, tauten_error* error) {
  return asked(question, pairs, count, answer, error,
               [&](const shared::Question& q, std::span<const Assignment> said) -> Outcome<Tree> {
                 const auto form = try_page_format(format == nullptr ? "text" : format);
                 if (!form) return form.error();
                 PageUnits units;
                 for (const Assignment& pair : said) units.take_unit_of(pair.value.text);
                 const Outcome<Page> page = q.page(said, units);
                 if (!page) return page.error();
                 return tree_of(page_as(*page, *form));
               });
}

tauten_status tauten_explain_answer(const char* question, const tauten_pair* pairs, size_t count, const char* format,
                                    tauten_answer** answer, tauten_error* error) {
  return asked(question, pairs, count, answer, error,
               [&](const shared::Question& q, std::span<const Assignment> said) -> Outcome<Tree> {
                 const auto layout = try_layout(format == nullptr ? "text" : format);
                 if (!layout) return layout.error();
                 const Outcome<Derivation> found = try_derivation(q, said);
                 if (!found) return found.error();
                 const auto text = try_derivation_text(*found, shared::registry(), *layout);
                 return text ? Outcome<Tree>(tree_of(*text)) : text.error();
               });
}

tauten_status tauten_catalogue(tauten_answer** answer, tauten_error* error) {
  if (answer != nullptr) *answer = nullptr;
  return guarded_status(error, [&] {
    if (answer == nullptr) return null_pointer(error);
    Tree asked;
    asked.kind = Tree::Kind::record;
    for (const shared::Question& q : shared::questions()) {
      if (!q.is_here()) continue;
      Tree about;
      about.add("summary", tree_of(q.summary)).add("keys", keys_of(q));
      asked.add(q.name, about);
    }
    Tree all;
    all.add("version", tree_of(TAUTEN_VERSION)).add("formulas", formulas_tree()).add("questions", asked);
    *answer = new tauten_answer{std::move(all)};
    return TAUTEN_OK;
  });
}

}  // extern "C"
