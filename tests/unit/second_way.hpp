// Second, independent ways to what the formulas of thread, friction and tightening say: geometry by bisection, torque
// by vector statics, sections and rings by numerical integration. Nothing here uses a formula of the library.
#pragma once

#include <array>
#include <cmath>

namespace second_way {

inline const double pi = std::acos(-1.0);

/// Where an increasing function crosses `target` between `low` and `high`.
template <class Function>
double bisect(Function f, double low, double high, double target) {
  for (int i = 0; i < 200; ++i) {
    const double middle = (low + high) / 2;
    if (middle == low || middle == high) break;  // no number lies between them
    (f(middle) < target ? low : high) = middle;
  }
  return (low + high) / 2;
}

/// Integral from `low` to `high` by Simpson's rule; exact for cubics.
template <class Function>
double integral(Function f, double low, double high, int halves = 64) {
  const double step = (high - low) / (2 * halves);
  double sum = f(low) + f(high);
  for (int i = 1; i < 2 * halves; ++i) sum += f(low + i * step) * (i % 2 == 1 ? 4 : 2);
  return sum * step / 3;
}

// ---- thread profile, ISO 68-1: a ridge with flanks at 60 degrees to each other and a flat crest of P/8 ----

/// Thickness of the ridge of the bolt thread at a diameter, flanks extended without end.
inline double ridge(double at, double diameter, double pitch) { return pitch / 8 + (diameter - at) * std::tan(pi / 6); }
/// Diameter at which the ridge has a thickness; it grows towards the axis.
inline double diameter_at_ridge(double thickness, double diameter, double pitch) {
  return bisect([&](double at) { return -ridge(at, diameter, pitch); }, diameter - 3 * pitch, diameter + pitch,
                -thickness);
}
/// Lowest point of an arc that touches both flanks of the groove whose flanks meet at the diameter `apex`.
inline double arc_bottom(double apex, double radius) { return apex + 2 * (radius / std::sin(pi / 6) - radius); }

// ---- statics of the thread ----

using Vector = std::array<double, 3>;
inline double dot(const Vector& a, const Vector& b) { return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]; }
inline Vector cross(const Vector& a, const Vector& b) {
  return {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
}

/// Torque about the axis that makes a nut slide on the flank under an axial load: normal force and friction on one turn
/// of the helix, summed over its length. `sense` +1 raises (tightens), -1 lowers (loosens).
inline double flank_torque(double load, double pitch, double pitch_diameter, double friction, double flank_angle,
                           int sense) {
  const int pieces = 6;  // all alike but for their place around the axis
  const double radius = pitch_diameter / 2;
  double axial = 0;
  double torque = 0;
  for (int i = 0; i < pieces; ++i) {
    const double turn = 2 * pi * i / pieces;
    const Vector outward = {std::cos(turn), std::sin(turn), 0};
    // Along the helix, and along the flank in the plane of the axis. Both lie in the surface.
    const double length = std::hypot(2 * pi * radius, pitch);
    const Vector along = {-std::sin(turn) * 2 * pi * radius / length, std::cos(turn) * 2 * pi * radius / length,
                          pitch / length};
    const Vector slope = {outward[0] * std::cos(flank_angle), outward[1] * std::cos(flank_angle),
                          -std::sin(flank_angle)};
    Vector normal = cross(slope, along);
    const double size = std::sqrt(dot(normal, normal));
    Vector force{};
    for (std::size_t k = 0; k < 3; ++k) force[k] = normal[k] / size - sense * friction * along[k];
    axial += force[2];
    // What the flank does to the nut has to be overcome by the wrench.
    const Vector arm = {radius * outward[0], radius * outward[1], 0};
    torque -= cross(arm, force)[2];
  }
  // Tightening climbs the flank; the normal force follows from carrying the load.
  return sense * torque * load / axial;
}

/// The linear torque, by superposition: climbing without friction, and friction on a thread of no pitch.
inline double linear_thread_torque(double load, double pitch, double pitch_diameter, double friction, int sense) {
  const double climbing = flank_torque(load, pitch, pitch_diameter, 0, pi / 6, +1);
  const double flat = pitch * 1e-12;
  const double rubbing = flank_torque(load, flat, pitch_diameter, friction, pi / 6, +1) -
                         flank_torque(load, flat, pitch_diameter, 0, pi / 6, +1);
  return rubbing + sense * climbing;
}

/// Friction torque on a ring of diameters `inner` to `outer` under a pressure p(r), for a load.
template <class Pressure>
double ring_torque(Pressure pressure, double load, double friction, double outer, double inner) {
  const auto force = [&](double r) { return pressure(r) * 2 * pi * r; };
  const auto moment = [&](double r) { return friction * pressure(r) * r * 2 * pi * r; };
  return load * integral(moment, inner / 2, outer / 2) / integral(force, inner / 2, outer / 2);
}
/// The same on a ring so narrow that it has one diameter.
inline double narrow_ring_torque(double load, double friction, double diameter) {
  double moment = 0;
  for (int i = 0; i < 12; ++i) {
    const double turn = 2 * pi * i / 12;
    const Vector arm = {diameter / 2 * std::cos(turn), diameter / 2 * std::sin(turn), 0};
    moment += cross(arm, {-friction * load / 12 * std::sin(turn), friction * load / 12 * std::cos(turn), 0})[2];
  }
  return moment;
}

// ---- the section under tension and torsion ----

inline double disc_area(double diameter) {
  return integral([](double r) { return 2 * pi * r; }, 0, diameter / 2, 1);
}
/// Shear stress at the surface; elastic: it grows with the radius; plastic: it is the same everywhere.
inline double shear(double torque, double diameter, bool plastic) {
  const double radius = diameter / 2;
  return torque / integral([&](double r) { return (plastic ? 1 : r / radius) * r * 2 * pi * r; }, 0, radius, 1);
}
/// Equivalent stress after von Mises, from the principal stresses.
inline double equivalent_stress(double load, double torque, double diameter, bool plastic) {
  const double half = load / disc_area(diameter) / 2;
  const double circle = std::hypot(half, shear(torque, diameter, plastic));
  const double first = half + circle;
  const double second = half - circle;
  return std::sqrt(first * first - first * second + second * second);
}

}  // namespace second_way
