// error: tauten: torque_of takes a force and a lever, for example torque_of(350.0_N, 400.0_mm)
// Force and lever have changed places.
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  return tauten::torque_of(350_N, 400_mm).value() > 0 ? 0 : 1;
#else
  return tauten::torque_of(400_mm, 350_N).value() > 0 ? 0 : 1;
#endif
}
