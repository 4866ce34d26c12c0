// error: tauten: the argument 'torque' must be a torque, for example 48.0_N_m
// Force times length is an energy. A torque is a dimension of its own.
#include "tauten/tightening/torque.hpp"
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  const auto preload = tauten::preload_from_torque(48.0_N_m, 1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm);
  return preload.value() > 0 ? 0 : 1;
#else
  const auto preload = tauten::preload_from_torque(48.0_kN * 1.0_mm, 1.5_mm, 9.026_mm, 0.12, 0.12, 12.8_mm);
  return preload.value() > 0 ? 0 : 1;
#endif
}
