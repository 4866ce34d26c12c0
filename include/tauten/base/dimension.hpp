// The dimensions that quantities of threaded fasteners have, and the factors of their units.
#pragma once

#include "tauten/base/version.hpp"

// How a dimension is asked for in a compiler message.
#define TAUTEN_ASK_number "a plain number, for example 0.14"
#define TAUTEN_ASK_length "a length, for example 1.5_mm"
#define TAUTEN_ASK_area "an area, for example 58.0_mm2"
#define TAUTEN_ASK_angle "an angle, for example 90.0_deg"
#define TAUTEN_ASK_force "a force, for example 25.0_kN"
#define TAUTEN_ASK_torque "a torque, for example 48.0_N_m"
#define TAUTEN_ASK_stress "a stress, for example 640.0_MPa"
#define TAUTEN_ASK_compliance "a compliance, in metres per newton"
#define TAUTEN_ASK_stiffness "a stiffness, in newtons per metre"
#define TAUTEN_ASK_temperature "a temperature difference, in kelvin"
#define TAUTEN_ASK_energy "an energy, in joules"
#define TAUTEN_ASK_expansion "a thermal expansion coefficient, per kelvin"

/// Factors between the units of the trade and SI, once, for texts, literals and printing. Kept with more digits than a
/// double has, and rounded where they are used.
namespace tauten::TAUTEN_ABI::unit_factor {

inline constexpr long double inch = 25.4e-3L;                 ///< m, by definition
inline constexpr long double foot = 12 * inch;                ///< m
inline constexpr long double pound_force = 4.4482216152605L;  ///< N: 0.45359237 kg at 9.80665 m/s2
inline constexpr long double kilogram_force = 9.80665L;       ///< N, by definition
inline constexpr long double degree = 3.141592653589793238462643383279502884L / 180;  ///< rad

}  // namespace tauten::TAUTEN_ABI::unit_factor

namespace tauten::TAUTEN_ABI {

/// Dimension tag. Torque is a dimension of its own: a torque is never an energy.
enum class Dim : unsigned char {
  number,
  length,
  area,
  angle,
  force,
  torque,
  stress,
  compliance,
  stiffness,
  temperature,
  energy,
  expansion
};

inline constexpr int dimension_count = 12;

/// How a dimension is named, which SI unit kernels use, and which unit a workshop reads.
struct DimensionText {
  const char* name;          ///< with article, for sentences: "a force"
  const char* si_unit;       ///< unit of every plain number in the library
  const char* shop_unit;     ///< unit in which results are printed
  double shop_unit_in_si;    ///< 1 shop unit in SI
  const char* how_to_write;  ///< an example of a value on the command line
};

/// \param dimension  the tag
/// \return texts and the factor between shop unit and SI unit
constexpr DimensionText describe(Dim dimension) noexcept {
  switch (dimension) {
    case Dim::number: return {"a plain number", "", "", 1, "0.14"};
    case Dim::length: return {"a length", "m", "mm", 1e-3, "12mm"};
    case Dim::area: return {"an area", "m2", "mm2", 1e-6, "58mm2"};
    case Dim::angle: return {"an angle", "rad", "deg", static_cast<double>(unit_factor::degree), "90deg"};
    case Dim::force: return {"a force", "N", "kN", 1e3, "25kN"};
    case Dim::torque: return {"a torque", "N.m", "N.m", 1, "48N.m"};
    case Dim::stress: return {"a stress", "Pa", "MPa", 1e6, "640MPa"};
    case Dim::compliance: return {"a compliance", "m/N", "um/kN", 1e-9, "2.1um/kN"};
    case Dim::stiffness: return {"a stiffness", "N/m", "kN/mm", 1e6, "470kN/mm"};
    case Dim::temperature: return {"a temperature difference", "K", "K", 1, "60K"};
    case Dim::energy: return {"an energy", "J", "J", 1, "12J"};
    case Dim::expansion: return {"a thermal expansion coefficient", "1/K", "um/m/K", 1e-6, "11.5um/m/K"};
  }
  return {"a quantity", "", "", 1, ""};
}

}  // namespace tauten::TAUTEN_ABI
