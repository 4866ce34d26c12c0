// A tightening curve as data.
#pragma once

#include <vector>

#include "tauten/base/quantity.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// Where the work of the torque has gone, in joules.
struct TurningEnergy {
  double torque = 0;    ///< put in at the wrench
  double friction = 0;  ///< heat in thread and bearing face
  double elastic = 0;   ///< stored in bolt and clamped parts
  double plastic = 0;   ///< left in the bolt

  template <class V>
  static void fields(V&& visit) {
    visit("torque", &TurningEnergy::torque);
    visit("friction", &TurningEnergy::friction);
    visit("elastic", &TurningEnergy::elastic);
    visit("plastic", &TurningEnergy::plastic);
  }
};

/// A point of the curve.
struct CurvePoint {
  Angle angle{};  ///< of the wrench, from snug
  Torque torque{};
  Force preload{};
  Torque thread_torque{};
  Stress tension{};           ///< preload over the section
  Stress equivalent{};        ///< von Mises, at the surface of the section
  double plastic_strain = 0;  ///< equivalent, at the surface
  double elastic_core = 1;    ///< share of the radius that is still elastic
  Length lasting_stretch{};   ///< by which the bolt would stay longer

  template <class V>
  static void fields(V&& visit) {
    visit("angle", &CurvePoint::angle);
    visit("torque", &CurvePoint::torque);
    visit("preload", &CurvePoint::preload);
    visit("thread_torque", &CurvePoint::thread_torque);
    visit("tension", &CurvePoint::tension);
    visit("equivalent", &CurvePoint::equivalent);
    visit("plastic_strain", &CurvePoint::plastic_strain);
    visit("elastic_core", &CurvePoint::elastic_core);
    visit("lasting_stretch", &CurvePoint::lasting_stretch);
  }
};

/// Where a curve has come to.
enum class CurveEnd : unsigned char {
  at_angle,           ///< the angle asked for
  uniform_elongation  ///< the surface of the section has used up the uniform elongation; from here on the bolt necks
};

template <>
struct Words<CurveEnd> {
  static constexpr const char* list[] = {"at_angle", "uniform_elongation"};
};

/// A tightening curve with its marks.
struct Curve {
  std::vector<CurvePoint> points;
  CurvePoint first_yield;  ///< the surface of the section begins to flow
  CurvePoint yield_point;  ///< slope drop, where a yield-controlled tool stops
  bool has_first_yield = false;
  bool has_yield_point = false;
  CurveEnd end = CurveEnd::at_angle;
  TurningEnergy energy;  ///< from zero to the last point

  template <class V>
  static void fields(V&& visit) {
    visit("points", &Curve::points);
    visit("first_yield", &Curve::first_yield);
    visit("yield_point", &Curve::yield_point);
    visit("has_first_yield", &Curve::has_first_yield);
    visit("has_yield_point", &Curve::has_yield_point);
    visit("end", &Curve::end);
    visit("energy", &Curve::energy);
  }
};

}  // namespace tauten::TAUTEN_ABI
