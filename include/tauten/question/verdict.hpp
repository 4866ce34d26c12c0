// What an answer comes to, in a word.
#pragma once

#include <string_view>

#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// The verdicts of `clamp`, `torque_for` and `turn`. Answers hold the word, which compares with these:
/// `bolt.verdict == Verdict::within_limits`.
enum class Verdict : unsigned char {
  within_limits,
  may_be_slack,
  slack,
  may_yield,
  yields,
  yields_as_intended,
  may_break,
  breaks,
  may_neck,
  necks,
  may_strip,
  strips,
  may_open_in_service,
  opens_in_service,
  may_yield_in_service,
  yields_in_service,
  may_break_in_service,
  breaks_in_service
};
template <>
struct Words<Verdict> {
  static constexpr const char* list[] = {"within limits",
                                         "may be slack",
                                         "slack",
                                         "may yield",
                                         "yields",
                                         "yields as intended",
                                         "may break",
                                         "breaks",
                                         "may neck",
                                         "necks",
                                         "may strip",
                                         "strips",
                                         "may open in service",
                                         "opens in service",
                                         "may yield in service",
                                         "yields in service",
                                         "may break in service",
                                         "breaks in service"};
};

/// \return true if the word of an answer is that of the verdict
constexpr bool operator==(std::string_view word, Verdict verdict) noexcept { return word == word_of(verdict); }

}  // namespace tauten::TAUTEN_ABI
