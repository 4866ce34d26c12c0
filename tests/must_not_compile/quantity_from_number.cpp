// error: tauten: this must be a torque, for example 48.0_N_m
// A number turns into a torque only where the type is written, which then counts newton metres.
#include "tauten/base/quantity.hpp"

int main() {
#if defined(FIXED)
  const tauten::Torque torque{48};
#else
  const tauten::Torque torque = 48;
#endif
  return torque.si > 0 ? 0 : 1;
}
