// error: tauten: an argument is neither a plain number nor a known quantity
// The truth is no coefficient of friction.
#include "tauten/tightening/torque.hpp"
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  const auto preload = tauten::preload_from_torque(48.0_N_m, 1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm);
  return preload.value() > 0 ? 0 : 1;
#else
  const auto preload = tauten::preload_from_torque(48.0_N_m, 1.5_mm, 9.026_mm, true, 0.12, 12.8_mm);
  return preload.value() > 0 ? 0 : 1;
#endif
}
