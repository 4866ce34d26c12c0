// error: tauten: this must be a text, in quotes
// A property class is what is stamped on the head, not a number.
#define TAUTEN_COMPILED  // declarations are enough
#include "tauten/question/clamp.hpp"
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  return tauten::clamp({.socket = 24_mm, .property_class = "8.8", .torque = 150_N_m}).candidates.empty();
#else
  return tauten::clamp({.socket = 24_mm, .property_class = 8.8, .torque = 150_N_m}).candidates.empty();
#endif
}
