#include <tauten/tightening/torque.hpp>
#include <tauten/units.hpp>

double other_load() {
  using namespace tauten::literals;
  return tauten::Force(tauten::preload_from_torque(130.0_N_m, 2.0_mm, 14.7_mm, 0.12, 0.12, 20.0_mm)).si;
}
