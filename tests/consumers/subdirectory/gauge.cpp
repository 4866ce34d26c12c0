#include <tauten/tightening/torque.hpp>

double other_load();

int main() {
  const double here = tauten::preload_from_torque.si(130.0, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3);
  return here == other_load() ? 0 : 1;
}
