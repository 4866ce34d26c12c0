// What a call costs: a typed call, a plain kernel and a column of the library, each beside a function written by hand
// that makes the same promise, and beside the bare arithmetic. `instructions.py` counts their instructions; run on its
// own, this program times them, and a million trials of a stuck fastener.
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <limits>
#include <vector>

#include "release.hpp"
#include "tauten/base/column.hpp"
#include "tauten/joint/build.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/tightening/torque.hpp"
#include "tauten/turning/tightening_curve.hpp"
#include "tauten/turning/turned_bolt.hpp"
#include "tauten/units.hpp"

#define MEASURED extern "C" [[gnu::noinline]]

namespace {

constexpr double pi = 3.14159265358979323846;
constexpr double cos30 = 0.86602540378443864676;
constexpr double tan30 = 0.57735026918962576451;
constexpr double largest = 1e30;

// The arithmetic of the two formulas as a textbook has it, with constants inverted beforehand.
inline double bare_linear(double torque, double pitch, double pitch_diameter, double thread, double bearing,
                          double face) {
  return torque / (pitch * (1 / (2 * pi)) + thread * (pitch_diameter * (1 / (2 * cos30))) + bearing * (face / 2));
}
inline double bare_exact(double torque, double pitch, double pitch_diameter, double thread, double bearing,
                         double face) {
  const double rise = pitch / (pi * pitch_diameter);
  const double friction = thread * __builtin_sqrt(1 + tan30 * tan30 / (1 + rise * rise));
  return torque / (pitch_diameter / 2 * ((friction + rise) / (1 - friction * rise)) + bearing * (face / 2));
}

// The promise of the library: every input inside its domain, the answer too, and none of them NaN or without end.
inline bool positive(double x) { return (int{x > 0} & int{x <= largest}) != 0; }
inline bool non_negative(double x) { return (int{x >= 0} & int{x <= largest}) != 0; }
inline bool inside(double torque, double pitch, double pitch_diameter, double thread, double bearing, double face,
                   double answer) {
  return (int{non_negative(torque)} & int{positive(pitch)} & int{positive(pitch_diameter)} & int{non_negative(thread)} &
          int{non_negative(bearing)} & int{non_negative(face)} & int{non_negative(answer)}) != 0;
}

inline bool promised_linear(double a, double b, double c, double d, double e, double f, double answer) {
  return inside(a, b, c, d, e, f, answer);
}
// The exact form asks as well that friction leaves the thread room to turn.
inline bool promised_exact(double a, double b, double c, double d, double e, double f, double answer) {
  const double rise = b / (pi * c);
  const double room = 1 - d * __builtin_sqrt(1 + tan30 * tan30 / (1 + rise * rise)) * rise;
  return (int{inside(a, b, c, d, e, f, answer)} & int{room > 0}) != 0;
}

[[gnu::cold, gnu::noinline]] double refuse(double torque, double pitch, double pitch_diameter, double thread,
                                           double bearing, double face) {
  const double values[] = {torque, pitch, pitch_diameter, thread, bearing, face};
  const char* names[] = {"torque",           "pitch",           "pitch_diameter", "thread_friction",
                         "bearing_friction", "bearing_diameter"};
  for (int i = 0; i < 6; ++i)
    if (i == 1 || i == 2 ? !positive(values[i]) : !non_negative(values[i]))
      throw tauten::Error(names[i], "lies outside its domain");
  throw tauten::Error("", "no preload fits");
}

}  // namespace

#define INPUTS double a, double b, double c, double d, double e, double f
#define GIVEN a, b, c, d, e, f
#define COLUMNS double *out, const double *const *in, const double *x, std::size_t rows

// Each formula in nine ways. `bare_...` above is the arithmetic, `tauten::...` the formula of the library.
#define WAYS(form, formula)                                                                                            \
  MEASURED double typed_library_##form(INPUTS) {                                                                       \
    const auto metre = [](double si) { return tauten::BoostQuantity<tauten::Dim::length>::from_value(si); };           \
    const auto torque = tauten::BoostQuantity<tauten::Dim::torque>::from_value(a);                                     \
    return formula(torque, metre(b), metre(c), d, e, metre(f)).value();                                                \
  }                                                                                                                    \
  MEASURED double typed_by_hand_##form(INPUTS) {                                                                       \
    const double answer = bare_##form(GIVEN);                                                                          \
    if (promised_##form(GIVEN, answer)) [[likely]]                                                                     \
      return answer;                                                                                                   \
    return refuse(GIVEN);                                                                                              \
  }                                                                                                                    \
  MEASURED double kernel_library_##form(INPUTS) { return formula.si(GIVEN); }                                          \
  MEASURED double kernel_by_hand_##form(INPUTS) {                                                                      \
    const double answer = bare_##form(GIVEN);                                                                          \
    return promised_##form(GIVEN, answer) ? answer : std::numeric_limits<double>::quiet_NaN();                         \
  }                                                                                                                    \
  MEASURED double kernel_bare_##form(INPUTS) { return bare_##form(GIVEN); }                                            \
  MEASURED void column_library_##form(COLUMNS) {                                                                       \
    const auto column = [&](int i) { return std::span<const double>(in[i], rows); };                                   \
    evaluate(formula, std::span<double>(out, rows), column(0), x[1], x[2], column(1), column(2), x[5]);                \
  }                                                                                                                    \
  MEASURED void column_by_hand_##form(COLUMNS) {                                                                       \
    const double *a = in[0], *d = in[1], *e = in[2];                                                                   \
    const double b = x[1], c = x[2], f = x[5];                                                                         \
    TAUTEN_ROWS_ARE_INDEPENDENT                                                                                        \
    for (std::size_t i = 0; i < rows; ++i) {                                                                           \
      const double answer = bare_##form(a[i], b, c, d[i], e[i], f);                                                    \
      out[i] = promised_##form(a[i], b, c, d[i], e[i], f, answer) ? answer : std::numeric_limits<double>::quiet_NaN(); \
    }                                                                                                                  \
  }                                                                                                                    \
  MEASURED void column_bare_##form(COLUMNS) {                                                                          \
    const double *a = in[0], *d = in[1], *e = in[2];                                                                   \
    const double b = x[1], c = x[2], f = x[5];                                                                         \
    TAUTEN_ROWS_ARE_INDEPENDENT                                                                                        \
    for (std::size_t i = 0; i < rows; ++i) out[i] = bare_##form(a[i], b, c, d[i], e[i], f);                            \
  }

WAYS(linear, tauten::preload_from_torque)
WAYS(exact, tauten::preload_from_torque_exact)

namespace {

using Scalar = double (*)(INPUTS);
using Column = void (*)(COLUMNS);
struct Way {
  const char* name;
  Scalar scalar;
  Column column;
};
#define SCALAR(name) {#name, name, nullptr}
#define COLUMN(name) {#name, nullptr, name}
#define ALL(form)                                                                               \
  SCALAR(typed_library_##form), SCALAR(typed_by_hand_##form), SCALAR(kernel_library_##form),    \
      SCALAR(kernel_by_hand_##form), SCALAR(kernel_bare_##form), COLUMN(column_library_##form), \
      COLUMN(column_by_hand_##form), COLUMN(column_bare_##form)
constexpr Way ways[] = {ALL(linear), ALL(exact)};

/// \return the least time of `rounds` calls in microseconds
template <class Work>
double best_time(int rounds, Work work) {
  double best = 1e9;
  for (int round = 0; round < rounds; ++round) {
    const auto start = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double, std::micro> time = std::chrono::steady_clock::now() - start;
    best = time.count() < best ? time.count() : best;
  }
  return best;
}

/// A thousand points of the tightening curve, from snug past yield to the end of uniform elongation, beside as many of
/// the elastic one, which is two formulas for each point.
bool curves(int rounds) {
  using namespace tauten;
  const Bolt bolt{.diameter = Length(16e-3), .pitch = Length(2e-3), .length = Length(80e-3)};
  const TurnedBolt turned = turned_bolt(through_bolt(bolt, {{Length(55e-3), Length(70e-3)}}));
  const BoltSteel steel = bolt_steel(Stress(640e6), Stress(800e6), 0.12);
  const TurningFriction friction{0.12, 0.12, Length(20e-3)};
  constexpr int points = 1000;
  Curve curve;
  const double plastic = best_time(rounds, [&] {
    curve = tightening_curve(turned, steel, friction, {.snug_torque = Torque(60), .points = points});
  });
  std::vector<CurvePoint> elastic(points);
  const double plain = best_time(rounds, [&] {
    for (int i = 0; i < points; ++i) {
      const double angle = 0.5 * i / points;
      const double preload = preload_from_angle.si(angle, turned.bolt_resilience.si, turned.plate_resilience.si, 2e-3);
      CurvePoint& point = elastic[static_cast<std::size_t>(i)];
      point.angle = Angle(angle);
      point.preload = Force(preload);
      point.torque = Torque(tightening_torque.si(preload, 2e-3, turned.pitch_diameter.si, 0.12, 0.12, 20e-3));
    }
  });
  std::printf("%-24s %6.0f us for %d points, %.0f times the elastic curve (%.1f us)\n", "tightening_curve", plastic,
              points, plastic / plain, plain);
  return curve.points.back().preload.si > 100e3 && elastic.back().preload.si > 50e3;
}

}  // namespace

int main(int count, char** words) {
  const std::size_t rows = 4096;
  const int rounds = count > 1 ? std::atoi(words[1]) : 2000;
  const double x[] = {48, 1.5e-3, 9.026e-3, 0.12, 0.14, 12.8e-3};
  std::vector<double> torque(rows), thread(rows), bearing(rows), out(rows);
  for (std::size_t i = 0; i < rows; ++i) {
    torque[i] = x[0] + static_cast<double>(i % 97);
    thread[i] = x[3] + 1e-3 * static_cast<double>(i % 31);
    bearing[i] = x[4] + 1e-3 * static_cast<double>(i % 41);
  }
  const double* const in[] = {torque.data(), thread.data(), bearing.data()};
  double first = 0;  // every way gives the same answer, or the comparison is worth nothing
  for (const Way& way : ways) {
    double best = 1e9;
    for (int round = 0; round < rounds; ++round) {
      const auto start = std::chrono::steady_clock::now();
      if (way.column != nullptr)
        way.column(out.data(), in, x, rows);
      else
        for (std::size_t i = 0; i < rows; ++i) out[i] = way.scalar(torque[i], x[1], x[2], thread[i], bearing[i], x[5]);
      const std::chrono::duration<double, std::nano> time = std::chrono::steady_clock::now() - start;
      best = time.count() < best ? time.count() : best;
    }
    double sum = 0;
    for (const double preload : out) sum += preload;
    if (way.scalar == typed_library_linear || way.scalar == typed_library_exact) first = sum;
    if (!(sum > 0.999999999 * first && sum < 1.000000001 * first)) return std::printf("%s differs\n", way.name), 1;
    std::printf("%-24s %6.2f ns for each row\n", way.name, best / static_cast<double>(rows));
  }
  if (!curves(rounds / 10 + 1)) return std::printf("a curve does not reach its load\n"), 1;
  // Counting instructions takes one round and looks at the kernels alone.
  return rounds == 1 || time_release(20) ? 0 : 1;
}
