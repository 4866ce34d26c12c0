// A stuck fastener as somebody describes it.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "tauten/loosening/aid_use.hpp"
#include "tauten/loosening/heat_limit.hpp"
#include "tauten/loosening/neighbour.hpp"
#include "tauten/loosening/rust_state.hpp"
#include "tauten/tool/hand.hpp"

namespace tauten::TAUTEN_ABI {

/// How the torque gets into the fastener.
enum class DriveFit : unsigned char {
  six_point,         ///< socket or ring on an external hexagon
  twelve_point,      ///< the same with an opening of two hexagons turned by 30 degrees
  open_end,          ///< open-ended wrench on an external hexagon: two corners
  internal_hexagon,  ///< key in the head
  hexalobular        ///< six-lobed bit in the head
};
template <>
struct Words<DriveFit> {
  static constexpr const char* list[] = {"six_point", "twelve_point", "open_end", "internal_hexagon", "hexalobular"};
};

/// Which way the thread turns.
enum class ThreadDirection : unsigned char { right, left };
template <>
struct Words<ThreadDirection> {
  static constexpr const char* list[] = {"right", "left"};
};

/// \return true if the tool goes into the head
constexpr bool is_internal(DriveFit drive) noexcept {
  return drive == DriveFit::internal_hexagon || drive == DriveFit::hexalobular;
}

/// One stuck fastener. What is not known stays absent, and lengths are then those of a typical hexagon bolt: zero and NaN
/// are values, and refused.
struct FreeJob {
  std::optional<Length> diameter{};  ///< asked for; `look_up` finds it by the thread
  std::optional<Length> pitch{};     ///< the same
  std::optional<Length>
      width_across_flats{};           ///< of the head or nut; of the key for an internal hexagon. Asked for, but of a
                                      ///< hexalobular drive
  std::optional<int> drive_number{};  ///< of a hexalobular drive, and asked for of it
  std::optional<Stress> tensile_strength{};  ///< asked for; `look_up` finds it by the class
  std::optional<Stress> yield_strength{};    ///< the same
  std::optional<double> torsion_ratio{};     ///< breaking shear stress over tensile strength, on pi d^3/16; absent: 0.8

  Rust rust = Rust::rusted;
  std::optional<Force> preload{};            ///< what it was tightened to; unknown: a share of yield, with a wide band
  double thread_friction = 0.14;             ///< of the clean joint
  double bearing_friction = 0.14;            ///< of the clean joint
  std::optional<Length> engaged_length{};    ///< absent: 0.8 d
  std::optional<Length> bearing_diameter{};  ///< absent: from width and diameter
  std::optional<Length> nut_diameter{};      ///< what surrounds the thread; absent: the width across flats
  std::optional<Stress> nut_yield{};         ///< absent: as the bolt, 200 MPa of aluminium
  Torque prevailing_torque{};
  std::string assumed_thread{};                       ///< the thread that was taken because none was given
  bool class_assumed = false;                         ///< the class was taken because none was given
  std::optional<ThreadDirection> thread_direction{};  ///< none: not known, and asked for
  std::optional<double> years{};  ///< in place; with `first_year_loss` it replaces the metal loss of the state
  std::optional<Length> first_year_loss{};  ///< corrosion of the first year at this place; goes with `years`

  DriveFit drive = DriveFit::six_point;
  std::optional<Length> head_height{};  ///< that the tool engages; absent: 0.64 d, inside a head 0.5 d
  std::optional<Length>
      drive_clearance{};                 ///< width of the opening less that of what goes into it; none: the typical one
  Length corner_loss{};                  ///< radial wear of the corners, or of the ridges between lobes
  std::optional<bool> tapped{};          ///< the thread is in the part, not in a nut; none: only inside a head
  std::optional<Length> drive_square{};  ///< smallest square drive in the chain; absent: it sets no limit
  std::optional<Length> handle_length{};  ///< absent: not turned by hand
  Force hand_force = median_pull;
  double hand_variation = 0.35;

  std::optional<Torque> limit{};  ///< torque that will not be exceeded; none: the advised one
  double shear_risk = 0.05;       ///< accepted chance of shearing, and of damage to the drive
  double wanted_chance = 0.9;     ///< chance of coming free at which no stronger aid is looked for

  std::vector<AidUse> aids{};    ///< aids already used
  std::optional<Torque> held{};  ///< this very fastener was pulled to it and has not moved
  bool held_untreated = false;   ///< that was before the aids already used; else after them
  HeatSurroundings surroundings{};
  std::vector<Neighbour>
      loosened{};  ///< like fasteners of the same flange; without the aids already used, unless they say so
  int trials = 200'000;
  std::uint64_t seed = 1;
  int jobs = 1;
};

}  // namespace tauten::TAUTEN_ABI
