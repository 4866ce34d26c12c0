// Comparison by relative deviation alone. doctest::Approx adds 1 to its scale, so that two different lengths in metres
// would always count as equal.
#pragma once

#include <doctest/doctest.h>

inline doctest::Approx near(double x) { return doctest::Approx(x).scale(1e-300); }
