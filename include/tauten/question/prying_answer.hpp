// What can be asked about a plate that its bolts pull off, and what is answered.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "tauten/base/notice.hpp"
#include "tauten/base/source.hpp"
#include "tauten/group/prying.hpp"

namespace tauten::TAUTEN_ABI {

/// After which standard.
enum class PryingForm : unsigned char {
  aisc,   ///< a strip of plate for each bolt
  t_stub  ///< a T-stub of EN 1993-1-8
};

template <>
struct Words<PryingForm> {
  static constexpr const char* list[] = {"AISC", "EN 1993-1-8"};
};

/// What is asked about prying. One of `tributary` and `effective_length` is given: it decides after which standard.
struct PryingJob {
  std::optional<Length> tributary{};         ///< AISC: length of plate for one bolt
  std::optional<Length> effective_length{};  ///< T-stub: sum of l_eff of its rows
  Length bolt_to_web{};               ///< AISC: b, to the face of the web; T-stub: m, to 0.8 of the fillet's radius
  Length bolt_to_edge{};              ///< to the free edge, as measured
  std::optional<Length> thickness{};  ///< of the plate
  Stress plate_strength{};            ///< AISC: F_u; T-stub: f_y over gamma_M0
  Force bolt_strength{};              ///< of one bolt in tension, factors of the standard included
  std::size_t bolts = 2;              ///< of the T-stub or plate, all rows
  std::optional<Length> diameter{}, hole{};  ///< AISC: of the bolt, and of its hole
  double resistance_factor = 0.9;            ///< AISC: phi on the plate
  std::optional<Length> washer{};  ///< T-stub: outside diameter of the washer, for the stronger form of mode 1
  std::optional<Length>
      elongation_length{};          ///< T-stub: L_b of the bolts, with `bolt_area`: whether edges press at all
  std::optional<Area> bolt_area{};  ///< T-stub: stress area of one bolt
  std::optional<Force> pull{};      ///< on all bolts together
};

/// How plate and bolts carry a pull. What the standard or the question does not have is NaN.
struct PlatePrying {
  PryingForm form = PryingForm::aisc;
  Force strength{absent};            ///< of plate and bolts together; NaN without a thickness
  Force bolts_alone{};               ///< of the bolts, if nothing pried
  double strength_share = absent;    ///< the first over the second
  std::optional<TeeMode> mode{};     ///< what gives way
  std::optional<bool> presses{};     ///< whether the edge presses when it does
  Torque plastic_moment{absent};     ///< of the plate; AISC: for one bolt
  Length no_prying_thickness{};      ///< as thick, the plate leaves the bolts their full strength
  Length bolt_lever{absent};         ///< AISC: b' = b - d/2; T-stub: m
  Length edge_lever{absent};         ///< AISC: a' = min(a, 1.25 b) + d/2; T-stub: n = min(e, 1.25 m)
  double bending_share = absent;     ///< AISC: alpha'
  Force flange{absent};              ///< T-stub: mode 1
  Force combined{absent};            ///< T-stub: mode 2
  double utilisation = absent;       ///< pull over strength
  Force edge_force{absent};          ///< AISC: with which all edges press at the pull
  Force bolt_load{absent};           ///< AISC: of one bolt at the pull, with that
  Length minimum_thickness{absent};  ///< for the pull
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("form", &PlatePrying::form);
    visit("strength", &PlatePrying::strength);
    visit("bolts_alone", &PlatePrying::bolts_alone);
    visit("strength_share", &PlatePrying::strength_share);
    visit("mode", &PlatePrying::mode);
    visit("presses", &PlatePrying::presses);
    visit("plastic_moment", &PlatePrying::plastic_moment);
    visit("no_prying_thickness", &PlatePrying::no_prying_thickness);
    visit("bolt_lever", &PlatePrying::bolt_lever);
    visit("edge_lever", &PlatePrying::edge_lever);
    visit("bending_share", &PlatePrying::bending_share);
    visit("flange", &PlatePrying::flange);
    visit("combined", &PlatePrying::combined);
    visit("utilisation", &PlatePrying::utilisation);
    visit("edge_force", &PlatePrying::edge_force);
    visit("bolt_load", &PlatePrying::bolt_load);
    visit("minimum_thickness", &PlatePrying::minimum_thickness);
    visit("notices", &PlatePrying::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
