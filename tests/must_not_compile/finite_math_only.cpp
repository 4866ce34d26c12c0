// error: tauten: build without -ffast-math and -ffinite-math-only, for it relies on NaN and on IEEE arithmetic
// with: -ffinite-math-only
#include "tauten/tightening/torque.hpp"

int main() { return tauten::preload_from_torque.si(48.0, 1.5e-3, 9.026e-3, 0.12, 0.12, 12.8e-3) > 0 ? 0 : 1; }
