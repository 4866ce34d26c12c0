// What was not typed as the tables have it, and what it was taken for.
#pragma once

#include <string>
#include <vector>

#include "tauten/base/notice.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/friction/condition.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/thread/designation.hpp"

namespace tauten::TAUTEN_ABI::detail {

// What is not given was taken for nothing.

/// Notes what a text was taken for, if that is another one.
inline void add_taken(std::vector<Notice>& notices, const char* what, const std::string& typed,
                      const std::string& taken) {
  if (!taken.empty())
    notices.push_back({"taken_as", std::string(what) + " " + shown(typed) + " is taken as " + taken + ".", false});
}
inline void add_thread_taken(std::vector<Notice>& notices, const std::string& typed) {
  if (typed.empty()) return;
  if (const Outcome<Thread> thread = try_parse_thread(typed))
    add_taken(notices, "Thread", typed, thread_taken(typed, *thread));
}
inline void add_class_taken(std::vector<Notice>& notices, const std::string& typed) {
  if (typed.empty()) return;
  const Outcome<PropertyClass> found = try_property_class(typed);
  if (!found || name_key(typed) == name_key(found->name)) return;
  add_taken(notices, "Class", typed, found->name);
}
inline void add_condition_taken(std::vector<Notice>& notices, const std::string& typed) {
  if (typed.empty()) return;
  const Outcome<ThreadCondition> found = try_thread_condition(typed);
  if (found && found->key != typed) add_taken(notices, "Condition", typed, found->key + ": " + found->title);
}

}  // namespace tauten::TAUTEN_ABI::detail
