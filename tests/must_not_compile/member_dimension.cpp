// error: tauten: this must be a torque, for example 48.0_N_m
// A length where a job wants a torque, which is not in an optional.
#define TAUTEN_COMPILED  // declarations are enough
#include "tauten/question/clamp.hpp"
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  return tauten::clamp({.socket = 24_mm, .torque = 150_N_m, .prevailing_torque = 4_N_m}).candidates.empty();
#else
  return tauten::clamp({.socket = 24_mm, .torque = 150_N_m, .prevailing_torque = 4_mm}).candidates.empty();
#endif
}
