// What can be asked about the loads of a group of bolts, and what is answered.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/base/notice.hpp"
#include "tauten/group/terms.hpp"
#include "tauten/question/pattern_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// How a load is shared: the first two in the plane of the joint, the others across it.
enum class GroupModel : unsigned char { elastic, instantaneous_centre, centroid, contact, tilting, plastic };

template <>
struct Words<GroupModel> {
  static constexpr const char* list[] = {"elastic", "instantaneous_centre", "centroid", "contact", "tilting",
                                         "plastic"};
};

/// A force in the plane of the joint.
struct PlaneForce {
  Force x{};  ///< to the right
  Force y{};  ///< up
};

/// Moments that lift a part off.
struct LiftingMoment {
  Torque right{};  ///< pulls on the bolts on the right
  Torque up{};     ///< pulls on the bolts at the top
};

/// What is asked about a group. A load in the plane of the joint, or one across it, or both are given.
struct GroupJob {
  std::vector<Position> positions{};
  std::optional<PlaneForce> load{};
  std::optional<Position> at{};    ///< a place on its line; the centroid of the bolts if not given
  std::optional<Torque> torque{};  ///< in the plane, counter-clockwise, on top of that of the load
  std::vector<double> weights{};   ///< for bolts that differ: areas in bearing, clamp loads in friction
  std::optional<Force> force{};    ///< across the plane at the centroid; negative: presses
  std::optional<LiftingMoment> moment{};
  std::vector<Position> outline{};              ///< corners of the part, in order, for contact and tilting
  std::optional<Length> outside{};              ///< diameter of a round part, instead of the outline
  bool worst_clocking = false;                  ///< the moment may act in any direction: each bolt at its worst
  std::optional<Area> bolt_area{};              ///< stress area of one bolt, for contact
  double modular_ratio = 1;                     ///< modulus of the bolts over that of the support
  std::optional<GroupModel> model{};            ///< elastic in the plane, centroid across it if not given
  std::optional<TensionModel> tension_model{};  ///< across the plane, where `model` is that in it
  std::optional<Force> preload{};               ///< of every bolt
  double load_factor = 0.2;                     ///< share of an external load that reaches the bolt
  std::optional<double> friction{};             ///< between the parts
};

/// What one of the other models gives.
struct ModelLoad {
  std::string model;
  Force largest;        ///< NaN where the model has no answer
  std::string why_not;  ///< "" if it has one

  template <class V>
  static void fields(V&& visit) {
    visit("model", &ModelLoad::model);
    visit("largest", &ModelLoad::largest);
    visit("why_not", &ModelLoad::why_not);
  }
};

/// What each bolt of a group carries. Bolts are numbered from 1; figures that the load does not have are NaN or empty.
struct BoltGroup {
  std::string model;
  std::vector<Force> loads;  ///< shear, tension, or the equivalent tension of both
  Force largest;
  int worst = 0;                      ///< number of the bolt with the largest
  double coefficient = absent;        ///< load over that of the worst bolt; by instantaneous centre over its strength
  Length torque_coefficient{absent};  ///< the same of a torque that acts alone
  Coordinates centre;                 ///< of the bolts; by instantaneous centre the place about which the part turns
  std::vector<std::vector<Force>> forces;  ///< x and y in the plane
  std::vector<Force> tension;              ///< negative: the place is pressed
  Stress edge_pressure{absent};            ///< maximum pressure on the support, by contact
  std::vector<ModelLoad> models;           ///< all models of the load beside each other
  std::vector<Force> bolt_loads;           ///< with preload: in the bolts
  std::vector<Force> clamp_loads;          ///< with preload: between the parts
  std::vector<bool> open;                  ///< where the parts separate
  double slip = absent;                    ///< worst utilisation of friction
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("model", &BoltGroup::model);
    visit("loads", &BoltGroup::loads);
    visit("largest", &BoltGroup::largest);
    visit("worst", &BoltGroup::worst);
    visit("coefficient", &BoltGroup::coefficient);
    visit("torque_coefficient", &BoltGroup::torque_coefficient);
    visit("centre", &BoltGroup::centre);
    visit("forces", &BoltGroup::forces);
    visit("tension", &BoltGroup::tension);
    visit("edge_pressure", &BoltGroup::edge_pressure);
    visit("models", &BoltGroup::models);
    visit("bolt_loads", &BoltGroup::bolt_loads);
    visit("clamp_loads", &BoltGroup::clamp_loads);
    visit("open", &BoltGroup::open);
    visit("slip", &BoltGroup::slip);
    visit("notices", &BoltGroup::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
