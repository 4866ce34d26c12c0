// error: tauten: this must be an energy, in joules
// A torque is not an energy.
#include "tauten/units.hpp"

using namespace tauten::literals;

int main() {
#if defined(FIXED)
  const tauten::Quantity<tauten::Dim::energy> value = 48_N_m * 1_rad;
#else
  const tauten::Quantity<tauten::Dim::energy> value = 48_N_m;
#endif
  return value.si > 0 ? 0 : 1;
}
