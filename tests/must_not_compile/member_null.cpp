// error: tauten: this must be a text, in quotes
// A null pointer is no text; leave the member out.
#define TAUTEN_COMPILED  // declarations are enough
#include "tauten/question/clamp.hpp"
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  return tauten::clamp({.socket = 24_mm, .torque = 150_N_m}).candidates.empty();
#else
  return tauten::clamp({.socket = 24_mm, .property_class = nullptr, .torque = 150_N_m}).candidates.empty();
#endif
}
