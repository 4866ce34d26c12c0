// Conditions of the threads: named states with a friction band for the thread and for the bearing face.
#pragma once

#include <string>

#include "tauten/base/band.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/source.hpp"
#include "tauten/friction/condition_table.hpp"

namespace tauten {

/// A state of thread and bearing face.
struct ThreadCondition {
  std::string key;                ///< short name: "oiled"
  std::string title;              ///< what it is
  std::string group;              ///< bare, coated, paste, stainless, locked or field
  Band<double> thread_friction;   ///< mu_G
  Band<double> bearing_friction;  ///< mu_K
  bool lubricated = false;        ///< a fluid, paste or wax is on the surface
  std::string note;
  Source source{"", "", Seen::judgement};

  template <class V>
  static void fields(V&& visit) {
    visit("key", &ThreadCondition::key);
    visit("title", &ThreadCondition::title);
    visit("group", &ThreadCondition::group);
    visit("thread_friction", &ThreadCondition::thread_friction);
    visit("bearing_friction", &ThreadCondition::bearing_friction);
    visit("lubricated", &ThreadCondition::lubricated);
    visit("note", &ThreadCondition::note);
    visit("source", &ThreadCondition::source);
  }
};

/// \param key  name of a state, "oiled"; `table::thread_conditions` lists them all
/// \return the state with its bands, or an error that lists the names
inline Outcome<ThreadCondition> try_thread_condition(const std::string& key) {
  std::string names;
  for (const table::ThreadConditionRow& row : table::thread_conditions) {
    if (key == row.key)
      return ThreadCondition{row.key,
                             row.title,
                             row.group,
                             {row.thread_low, row.thread_nominal, row.thread_high},
                             {row.face_low, row.face_nominal, row.face_high},
                             row.lubricated,
                             row.note,
                             table::condition_sources[row.source]};
    names += (names.empty() ? "" : ", ") + std::string(row.key);
  }
  return Error("condition", ("condition '" + key.substr(0, 40) + "' is not known; give one of " + names).c_str());
}

/// \copydoc try_thread_condition
/// \throws Error  if there is no such state
inline ThreadCondition thread_condition(const std::string& key) { return try_thread_condition(key).value(); }

}  // namespace tauten
