#include <tauten/tightening/torque.hpp>

int main() {
  // What the torque leaves, put back in, is the torque.
  const double load = tauten::preload_from_torque.si(130.0, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3);
  const double torque = tauten::tightening_torque.si(load, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3);
  return torque > 129.999 && torque < 130.001 ? 0 : 1;
}
