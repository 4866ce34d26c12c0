// error: tauten: this must be a torque, for example 48.0_N_m
// The product of a force and a lever is an energy; torque_of makes a torque of them.
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  const tauten::Torque value = tauten::torque_of(1_kN, 48_mm);
#else
  const tauten::Torque value = 1_kN * 48_mm;
#endif
  return value.si > 0 ? 0 : 1;
}
