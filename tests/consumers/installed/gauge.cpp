#include <tauten/tauten.hpp>

int main() {
  using namespace tauten::literals;
  // F = T/(K d) by hand: 80 N.m over 0.2 x 16 mm are 25 kN.
  const tauten::Force load = tauten::preload_from_nut_factor(80.0_N_m, 16.0_mm, 0.2);
  return load.si > 24'999 && load.si < 25'001 ? 0 : 1;
}
