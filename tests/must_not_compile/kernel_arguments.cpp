// error: tauten: wrong number of arguments; the formula's header lists its inputs
// The plain kernel counts its arguments too.
#include "tauten/tightening/torque.hpp"

int main() {
#if defined(FIXED)
  return tauten::bearing_torque.si(25e3, 0.12, 12.8e-3) > 0 ? 0 : 1;
#else
  return tauten::bearing_torque.si(25e3, 0.12) > 0 ? 0 : 1;
#endif
}
