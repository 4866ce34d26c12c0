#include <tauten/eigen.hpp>
#include <tauten/tightening/nut_factor_torque.hpp>

#if defined(BOOST_VERSION)
#error "the glue to Eigen brought Boost with it"
#endif

int main() {
  // F = T/(K d) by hand: 80 N.m over 0.2 x 16 mm are 25 kN.
  const Eigen::ArrayXd torque = Eigen::ArrayXd::LinSpaced(5, 0, 320);
  const Eigen::ArrayXd preload = tauten::evaluate(tauten::preload_from_nut_factor, torque, 16e-3, 0.2);
  if (preload.size() != 5 || !(preload - 25e3 * Eigen::ArrayXd::LinSpaced(5, 0, 4)).isZero(1e-9)) return 1;

  // A block of a matrix stored by rows, an expression, and one number; a row outside the domain.
  Eigen::Array<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor> table(3, 4);
  table << 0, 80, 160, 0, 0, -80, 320, 0, 0, 240, 400, 0;
  const auto block = table.block(0, 1, 3, 2);
  const Eigen::ArrayXXd diameter = Eigen::ArrayXXd::Constant(3, 2, 8e-3);
  const auto loads = tauten::evaluate(tauten::preload_from_nut_factor, block, 2 * diameter, 0.2);
  for (int row = 0; row < 3; ++row)
    for (int column = 0; column < 2; ++column) {
      const double expected = block(row, column) / (0.2 * 16e-3);
      const bool has_value = block(row, column) >= 0;
      if (has_value ? !(std::abs(loads(row, column) - expected) < 1e-9) : loads(row, column) == loads(row, column))
        return 2;
    }

  const Eigen::Vector3f few(80, 160, 240);
  const Eigen::Vector3f rough = tauten::evaluate(tauten::preload_from_nut_factor, few, 16e-3, 0.2);
  if (!(std::abs(rough[2] - 75e3f) < 0.1f)) return 3;

  try {
    tauten::evaluate(tauten::preload_from_nut_factor, torque, preload.head(2), 0.2);
  } catch (const tauten::Error&) {
    return 0;
  }
  return 4;
}
