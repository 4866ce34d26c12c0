// Strength of each part, with its band and where the figure comes from.
#pragma once

#include <string>
#include <vector>

#include "tauten/loosening/torque_sample.hpp"
#include "tauten/question/free_answer.hpp"
#include "tauten/question/workings/capacity.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline constexpr Source bolt_capacity_source{
    "ISO 898-7:1992",
    "torque at the wrench: shank strength (12 % above minimum, reduced by rust, tension "
    "and heat) plus friction under the head",
    Seen::judgement};
inline constexpr Source corner_capacity_source{
    "Contact model", "strength of the head on the flank that the tool reaches", Seen::judgement};
inline constexpr Source recess_capacity_source{
    "Contact model", "strength of the head on three quarters of the flank of each lobe", Seen::judgement};
inline constexpr Source bit_capacity_source{
    "Textbook plasticity", "section of ISO 10664 at a shear strength of 1400 MPa, that of 54 to 60 HRC",
    Seen::judgement};
inline constexpr Source socket_capacity_source{"ISO 1711-1", "test torque of rings and sockets, breaking 30 % above it",
                                               Seen::judgement};
inline constexpr Source open_end_capacity_source{"ISO 1711-1", "test torque of open ends, breaking 30 % above it",
                                                 Seen::judgement};
inline constexpr Source key_capacity_source{
    "ISO 2936", "torsional strength of hexagon keys, 353 MPa s^3, less above 8 mm as they are softer", Seen::memory};
inline constexpr Source square_capacity_source{"ISO 3315", "test torque of driving squares, breaking 30 % above it",
                                               Seen::memory};
inline constexpr Source arm_capacity_source{"Pull of the hand", "median and scatter as given, times the handle",
                                            Seen::judgement};

/// \return how the drive gives way
inline std::string end_of_drive(DriveFit drive) {
  return drive == DriveFit::hexalobular ? "recess strips" : "corners round off";
}

/// \param bolt  band of the torque at the head at which the bolt shears
/// \param grip  the same of corners or recess
/// \param held  torque that all of them are known to have borne
/// \return what each part of a job takes; parts that are not there are left out
inline std::vector<Capacity> capacities_of(const FreeJob& job, const ReleaseModel& m, const Band<Torque>& bolt,
                                           const Band<Torque>& grip, Torque held) {
  const auto band = [held](const Lognormal& x) {
    // Of those alone that lie above what was held.
    const double below = held.si > 0 ? x.chance_below(held.si) : 0;
    const auto at = [&](double chance) { return Torque(x.quantile(below + (1 - below) * chance)); };
    return Band<Torque>{at(0.05), at(0.5), at(0.95)};
  };
  std::vector<Capacity> list = {{"bolt", bolt, bolt_capacity_source}};
  const auto drive = [&](const char* held_by, const Source& of_grip, const char* tool, const Source& of_tool) {
    list.push_back({held_by, grip, of_grip});
    list.push_back({tool, band(m.socket), of_tool});
  };
  switch (job.drive) {
    case DriveFit::hexalobular: drive("recess", recess_capacity_source, "bit", bit_capacity_source); break;
    case DriveFit::internal_hexagon: drive("corners", corner_capacity_source, "key", key_capacity_source); break;
    case DriveFit::open_end: drive("corners", corner_capacity_source, "socket", open_end_capacity_source); break;
    default: drive("corners", corner_capacity_source, "socket", socket_capacity_source);
  }
  if (m.square.median < never_reached.median) list.push_back({"square", band(m.square), square_capacity_source});
  if (m.arm.median < never_reached.median) list.push_back({"arm", band(m.arm), arm_capacity_source});
  return list;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
