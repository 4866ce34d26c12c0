// error: tauten: each input of a column call is one number or a column of the same numbers as the output
// A column of float for an output of double.
#include <span>

#include "tauten/base/column.hpp"
#include "tauten/tightening/nut_factor_torque.hpp"

int main() {
  double out[2] = {};
#if defined(FIXED)
  const double torque[2] = {48, 60};
#else
  const float torque[2] = {48, 60};
#endif
  return evaluate(tauten::preload_from_nut_factor, std::span<double>(out), torque, 10e-3, 0.2) ? 0 : 1;
}
