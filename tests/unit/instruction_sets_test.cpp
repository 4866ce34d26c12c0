// The loops over rows give the same bits whatever instructions the machine has, and tell alike whether all is in order.
#if defined(__x86_64__) && defined(__GNUC__)
#define TAUTEN_WIDE_ROWS
#include <doctest/doctest.h>

#include <cmath>
#include <cstring>
#include <limits>
#include <vector>

#include "tauten/base/registry.hpp"
#include "tauten/friction/measured_friction.hpp"
#include "tauten/thread/profile.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/tightening/stress.hpp"
#include "tauten/tightening/torque.hpp"

using namespace tauten;

namespace {

constexpr std::size_t rows = 203;  // no whole number of packs

template <class Real>
using Packed = bool (*)(const Real* const*, Real*, std::size_t) noexcept;

template <class Real>
Real nth(Real from, Real to, std::size_t row, std::size_t step) {
  return from + (to - from) * static_cast<Real>((row * step) % 101) / 101;
}

template <class Real, class F, class Indices>
void compare(Formula<F, Indices>) {
  using E = detail::Erased<F, Indices>;
  CAPTURE(std::string(F::name));
  std::vector<std::vector<Real>> columns;
  std::vector<const Real*> in;
  for (const Arg& arg : F::inputs) {
    const Interval nominal = arg.domain.meet(arg.validity);
    const Real low = static_cast<Real>(nominal.low > 1e-3 ? nominal.low * 1.01 : 1e-3);
    const Real high = static_cast<Real>(nominal.high < 1 ? nominal.high * 0.99 : 1);
    columns.emplace_back();
    for (std::size_t row = 0; row < rows; ++row) columns.back().push_back(nth(low, high, row, columns.size()));
  }
  for (const auto& column : columns) in.push_back(column.data());

  std::vector<Packed<Real>> sets{E::template packed<Real>};
  if (__builtin_cpu_supports("avx2")) sets.push_back(E::template packed_avx2<Real>);
  if (__builtin_cpu_supports("avx512dq") && __builtin_cpu_supports("avx512bw") && __builtin_cpu_supports("avx512vl"))
    sets.push_back(E::template packed_avx512<Real>);
  std::vector<Real> first(rows), out(rows);
  const bool fine = sets[0](in.data(), first.data(), rows);
  for (const Packed<Real> packed : sets) {
    CHECK(packed(in.data(), out.data(), rows) == fine);
    CHECK(std::memcmp(out.data(), first.data(), rows * sizeof(Real)) == 0);
  }
  // One bad number anywhere, in the packs or behind them, of any kind.
  const Real infinity = std::numeric_limits<Real>::infinity();
  const Real nan = std::numeric_limits<Real>::quiet_NaN();
  for (std::size_t i = 0; i < columns.size(); ++i)
    for (const std::size_t row : {std::size_t{0}, std::size_t{6}, rows - 1})
      for (const Real bad : {nan, -nan, infinity, -infinity, Real(-1), std::numeric_limits<Real>::lowest(),
                             std::numeric_limits<Real>::max()}) {
        const Real was = columns[i][row];
        columns[i][row] = bad;
        for (const Packed<Real> packed : sets) CHECK(!packed(in.data(), out.data(), rows));
        columns[i][row] = was;
      }
}

}  // namespace

TEST_CASE("every set of instructions gives the same bits and sees every bad row") {
  compare<double>(preload_from_torque);
  compare<double>(preload_from_torque_exact);
  compare<double>(tightening_torque);
  compare<double>(stress_area);
  compare<double>(lead_angle);
  compare<double>(assembly_stress);
  compare<double>(thread_friction_from_test);
  compare<float>(preload_from_torque);
  compare<float>(preload_from_torque_exact);
  compare<float>(tightening_torque);
  compare<float>(stress_area);
}

TEST_CASE("a number outside a range shows in the topmost bit") {
  const double infinity = std::numeric_limits<double>::infinity();
  const double tiny = std::numeric_limits<double>::denorm_min();
  const Interval ranges[] = {positive, non_negative, any_sign, within(0.2e-3, 8e-3), within(-2, 3), {0.5, 2, true}};
  const double numbers[] = {
      tiny,  1e-300, 0.2e-3, 8e-3, 0.5,    1,     2,        3,         1e30,         1.0000000000000002e30,
      1e300, -tiny,  -1,     -2,   -1e300, -1e30, infinity, -infinity, std::nan(""), -std::nan(""),
      0.0};
  for (const Interval& range : ranges)
    for (const double number : numbers)
      for (const double x : {number, std::nextafter(number, infinity), std::nextafter(number, -infinity)}) {
        CAPTURE(x);
        if (!(x == 0 && std::signbit(x))) CHECK((range.outside_bit(x) >> 63 == 0) == range.contains(x));
        const auto y = static_cast<float>(x);
        if (!(y == 0 && std::signbit(y))) CHECK((range.outside_bit(y) >> 31 == 0) == range.contains(y));
      }
}
#endif
