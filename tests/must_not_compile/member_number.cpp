// error: tauten: this must be a length, for example 1.5_mm
// A bare number in a job: nobody knows whether millimetres or inches are meant.
#define TAUTEN_COMPILED  // declarations are enough
#include "tauten/question/clamp.hpp"
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  return tauten::clamp({.socket = 24_mm, .torque = 150_N_m}).candidates.empty();
#else
  return tauten::clamp({.socket = 24, .torque = 150_N_m}).candidates.empty();
#endif
}
