#include "shared/thread_inputs.hpp"

#include "tauten/question/workings/taken.hpp"

#include "shared/class_words.hpp"

namespace tauten::shared {

namespace {
namespace of_thread {

using In = Declares<ThreadJob>;

constexpr Input<ThreadJob> inputs[] = {
    In::input<&ThreadJob::thread>("thread", "M16", "Designation of ISO 261: M16, M16x1.5, M16-6g")
        .read_by(put_thread<&ThreadJob::thread>),
    In::input<&ThreadJob::property_class>("property_class", "8.8",
                                          "Only bolts of this class; default: all that are made today")
        .read_by(put_class<&ThreadJob::property_class>)
        .with_option("class")
        .with_words(class_words),
};

constexpr Rule rules[] = {one_of("thread")};

}  // namespace of_thread
}  // namespace

std::span<const Input<ThreadJob>> thread_inputs() { return of_thread::inputs; }

Outcome<ThreadAnswer> try_thread(const Call& call) {
  const auto given = try_read<ThreadJob>(of_thread::inputs, call, of_thread::rules);
  if (!given) return given.error();
  const Outcome<ThreadFacts> found = try_thread_facts(given->job);
  if (!found) return given->in_words(found.error());
  ThreadAnswer answer{*found, given->job};
  tauten::detail::add_thread_taken(answer.notices, given->job.thread);
  tauten::detail::add_class_taken(answer.notices, given->job.property_class);
  return answer;
}

}  // namespace tauten::shared
