#include <tauten/tightening/nut_factor_torque.hpp>
#include <tauten/units.hpp>

#include <cmath>

#if defined(EIGEN_CORE_H)
#error "the glue to Boost.Units brought Eigen with it"
#endif

int main() {
  using namespace tauten::literals;
  // F = T/(K d) by hand: 80 N.m over 0.2 x 16 mm are 25 kN.
  const auto preload = tauten::preload_from_nut_factor(80.0_N_m, 16.0_mm, 0.2);
  const boost::units::quantity<boost::units::si::force> force = preload;
  return std::abs(force.value() - 25e3) < 1e-9 ? 0 : 1;
}
