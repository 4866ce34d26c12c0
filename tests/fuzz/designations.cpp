// Names of threads, classes, tolerances, heads, conditions, materials and patterns as people write them.
#include <string>

#include "tauten/friction/condition.hpp"
#include "tauten/group/pattern_words.hpp"
#include "tauten/joint/material.hpp"
#include "tauten/part/head.hpp"
#include "tauten/part/nut.hpp"
#include "tauten/part/property_class.hpp"
#include "tauten/thread/tolerance.hpp"

#include "fuzz.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tauten;
  const std::string text(reinterpret_cast<const char*>(data), size);
  const auto look = [](const auto& found) {
    if (!found) fuzz::must_be_plain(found.error());
    return static_cast<bool>(found);
  };
  const auto read = try_parse_thread(text);
  if (look(read)) {
    fuzz::must(static_cast<bool>(try_parse_thread(read->name())), "a thread is read back by its name");
    look(try_bolt_limits(*read));
    look(try_nut_limits(*read));
  }
  static const Thread m16 = thread("M16");
  look(try_property_class(text, m16.diameter));
  look(try_bolt_limits(m16, text));
  look(try_head(m16, text));
  look(try_thread_condition(text));
  look(try_material(text));
  look(try_pattern_from_words(text));
  return 0;
}
