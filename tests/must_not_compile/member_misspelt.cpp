// error: '?tauten::(v\w+::)?ClampJob'? has no non-static data member named '?sockt'?|field designator 'sockt' does not refer to any field in type 'tauten::ClampJob'; did you mean 'socket'\?
// A misspelt member. GCC names it where the type of the job is written.
#define TAUTEN_COMPILED  // declarations are enough
#include "tauten/question/clamp.hpp"
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  return tauten::clamp(tauten::ClampJob{.socket = 24_mm, .torque = 150_N_m}).candidates.empty();
#else
  return tauten::clamp(tauten::ClampJob{.sockt = 24_mm, .torque = 150_N_m}).candidates.empty();
#endif
}
