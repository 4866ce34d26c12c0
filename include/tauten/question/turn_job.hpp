// A bolt that is to be turned by an angle, as somebody describes joint and tightening.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/base/text.hpp"
#include "tauten/joint/kind.hpp"
#include "tauten/question/clamp_answer.hpp"
#include "tauten/tool/drive_bar.hpp"

namespace tauten::TAUTEN_ABI {

/// A clamped layer in a few words.
struct TurnLayer {
  Length thickness{};
  Text material = "steel";                  ///< a name of `try_material`
  std::optional<Length> outer_diameter{};   ///< of the part around this bolt; absent: three bearing faces wide
  std::optional<Length> hole_diameter{};    ///< absent: medium clearance hole of ISO 273
  std::optional<Stress> elastic_modulus{};  ///< absent: that of the material

  template <class V>
  static void fields(V&& visit) {
    visit("thickness", &TurnLayer::thickness);
    visit("material", &TurnLayer::material);
    visit("outer_diameter", &TurnLayer::outer_diameter);
    visit("hole_diameter", &TurnLayer::hole_diameter);
    visit("elastic_modulus", &TurnLayer::elastic_modulus);
  }
};

/// What happens to the joint after the wrench is off. Zero: it does not happen.
struct AfterTurn {
  Length roughness{10e-6};                     ///< R_z of the roughest face
  bool load_across = false;                    ///< the working load acts across the bolt
  Quantity<Dim::temperature> bolt_warming{};   ///< in service, against tightening
  Quantity<Dim::temperature> plate_warming{};  ///< the same of the clamped layers
  double creep_share = 0;                      ///< of the load left, for gaskets, paint and other soft layers
  Force neighbours{};                          ///< taken off by bolts that are tightened later
  Force working_load{};                        ///< that pulls the joint apart along the bolt
  double load_introduction = 1;                ///< 1 under head and nut, 0 in the parting line
};

/// A joint to be tightened by angle. What is not known stays absent: zero and NaN are values, and refused. One of `angle`, `clamp_load`, `share` and `utilisation` says what is asked for;
/// without any it is a share of the proof load, 0.75.
struct TurnJob {
  Text name{};            ///< how the joint is called in lists
  Text thread{};          ///< designation, "M16"
  Text property_class{};  ///< "8.8"; "" if there is no mark
  Text head{};            ///< standard of the turned head or nut; "" for ISO 4014. ISO 4017 is threaded to the head
  JointKind kind = JointKind::through_bolt;
  std::optional<Length> length{};          ///< of the bolt under its head; absent: the shortest of ISO 888 that reaches
  std::optional<Length> shank_diameter{};  ///< of a reduced shank; absent: full
  std::vector<TurnLayer> layers{};         ///< from the turned face down
  std::optional<Length> grip{};            ///< instead of layers: so much steel
  int washers = 0;                         ///< of ISO 7089: 1 under the turned face, 2 at both ends of a through bolt
  Text tapped_material = "steel";          ///< of the part with the tapped hole
  std::optional<Length> engagement{};  ///< in the tapped hole; absent: what the length leaves, or what the bolt needs
  Text nut_class{};                    ///< "8"; "" for the class that matches the bolt
  std::optional<Length> nut_height{};  ///< absent: ISO 4032
  PlateModel plate_model = PlateModel::chosen;

  std::optional<Torque> snug_torque{};  ///< at which all gaps are closed; absent: that for a quarter of the load wanted
  std::optional<Angle> angle{};         ///< to be turned from snug
  bool angle_at_handle = false;       ///< `angle` is read at the handle, with the bars in between; else at the fastener
  std::optional<Force> clamp_load{};  ///< wanted
  std::optional<double> share{};      ///< wanted share of the proof load
  std::optional<double> utilisation{};  ///< wanted share of the yield strength while the wrench turns, torsion counted
  bool to_yield = false;  ///< the maker's procedure for this joint, or the code of its structure, tightens past yield

  Text condition = "unknown";                      ///< what is on the threads, a key of `thread_condition`
  Text face_condition{};                           ///< what is under head or nut, if not the same
  std::optional<Band<double>> thread_friction{};   ///< mu_G, measured; goes before `condition`
  std::optional<Band<double>> bearing_friction{};  ///< mu_K, measured; goes before `face_condition`
  Torque prevailing_torque{};                      ///< of a locking nut or insert
  std::optional<Length> bearing_diameter{};        ///< effective diameter D_Km; absent: that of the head's standard
  std::vector<DriveBar> bars{};                    ///< between handle and fastener

  std::optional<double> wrench_accuracy{};       ///< of the snug torque; absent: 6 % up to 10 N.m, 4 % above
  Angle angle_tolerance{0.0872664626};           ///< how far the angle may be off, 5 degrees; an estimate
  std::optional<double> resilience_tolerance{};  ///< of bolt and layers; absent: 10 %, 15 % where a width is assumed;
                                                 ///< estimates
  double strength_surplus = 0.2;                 ///< of a bolt from the box over the least of its class; an estimate

  AfterTurn after{};
  bool structural = false;           ///< also compare with the turns of structural bolting
  std::optional<double> k_factor{};  ///< mean k-value declared for a structural bolt set, k_m; absent: by the friction.
                                     ///< EN 1090-2 takes 0.125 for class K1
  int sloping_faces = 0;             ///< outer faces that slope, at most 1 in 20, for that comparison
};

/// How the curve of a joint is drawn. Without a snug torque it begins at none. What a `TurnJob` says of an angle or load wanted does not count.
struct CurveJob {
  TurnJob joint{};
  std::optional<Angle> end_angle{};  ///< from snug; absent: to the end of uniform elongation
  int points = 200;                  ///< of each curve
  double slope_share = 0.5;  ///< yield point: slope of torque over angle down to this share of its greatest value
};

}  // namespace tauten::TAUTEN_ABI
