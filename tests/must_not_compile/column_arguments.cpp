// error: tauten: wrong number of arguments for this formula
// A column for each input.
#include <span>

#include "tauten/base/column.hpp"
#include "tauten/tightening/torque.hpp"

int main() {
#if defined(FIXED)
  double out[3] = {};
  const double preload[3] = {25e3, 30e3, 35e3};
  return evaluate(tauten::bearing_torque, std::span<double>(out), preload, 0.12, 12.8e-3) ? 0 : 1;
#else
  double out[3] = {};
  const double preload[3] = {25e3, 30e3, 35e3};
  return evaluate(tauten::bearing_torque, std::span<double>(out), preload, 0.12) ? 0 : 1;
#endif
}
