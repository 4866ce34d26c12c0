// A notice on a result: a warning or a caution, as data.
#pragma once

#include <string>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

/// A warning or a caution. Programs look at the code, people read the text.
struct Notice {
  const char* code;          ///< snake_case, stable: "hand_off_mark"
  std::string text;          ///< one or two plain sentences
  bool is_estimate = false;  ///< true if it rests on judgement or memory and not on a published figure

  /// Lists the members, for bindings and JSON.
  template <class V>
  static void fields(V&& visit) {
    visit("code", &Notice::code);
    visit("text", &Notice::text);
    visit("is_estimate", &Notice::is_estimate);
  }
};

}  // namespace tauten::TAUTEN_ABI
