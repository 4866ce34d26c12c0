// What `clamp` and `torque_for` are asked, and what they answer.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/base/figure.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/step.hpp"
#include "tauten/base/text.hpp"
#include "tauten/joint/service.hpp"
#include "tauten/question/verdict.hpp"

namespace tauten::TAUTEN_ABI {

/// How the thread section is taken to carry torsion. The editions of VDI 2230 differ, so it is a choice.
enum class Torsion : unsigned char {
  plastic,  ///< fully plastic, torsion factor 3/2: editions from 2001 on
  elastic  ///< elastic at the surface, torsion factor 2: editions before; torques 4 to 16 % lower, more at high friction
};
template <>
struct Words<Torsion> {
  static constexpr const char* list[] = {"plastic", "elastic"};
};

/// Another pair of rubbing faces under the turned part, such as a washer. The pair that rubs least slides.
struct Face {
  Length bearing_diameter{};  ///< effective diameter D_Km
  Text condition{};           ///< what is between the faces

  template <class V>
  static void fields(V&& visit) {
    visit("bearing_diameter", &Face::bearing_diameter);
    visit("condition", &Face::condition);
  }
};

/// A joint to be tightened, as a person knows it. What is not known stays absent: zero and NaN are values, and refused.
struct ClampJob {
  Text name{};                        ///< how the joint is called in lists
  std::optional<Length> socket{};     ///< width across flats that fits, or the size of the hexagon key
  bool inner_hexagon = false;         ///< `socket` is a hexagon key that fits into the head
  Text thread{};                      ///< designation, "M10x1.25"; may be "" if a socket is given
  Text head{};                        ///< standard of the turned head or nut, "ISO 4014"; "" for any
  Text property_class{};              ///< "10.9"; "" if there is no mark
  std::optional<Torque> torque{};     ///< wrench torque, of `clamp`
  std::optional<Force> clamp_load{};  ///< wanted clamp load, of `torque_for`; absent: by `share`
  std::optional<double> share{};      ///< share of the proof load that the suggested torque aims at; absent: 0.75
  Text condition = "unknown";         ///< what is on the threads, a key of `thread_condition`
  Text face_condition{};              ///< what is under head or nut, if not the same
  Text specified_condition{};         ///< the condition that the torque figure was meant for; "" if not known
  std::optional<Band<double>> thread_friction{};   ///< mu_G, measured; goes before `condition`
  std::optional<Band<double>> bearing_friction{};  ///< mu_K, measured; goes before `face_condition`
  std::optional<bool> friction_together{};         ///< thread and face rub much or little together, as under one film
                                                   ///< of oil; absent: if one condition names both and none is measured
  std::optional<double>
      wrench_accuracy{};       ///< relative, 0.04 for +-4 %; absent: ISO 6789-1, 6 % up to 10 N.m, 4 % above
  Torque prevailing_torque{};  ///< of a locking nut or insert; twists the bolt, does not stretch it
  Torque shank_torque{};       ///< friction of the shank in its hole, when the head is turned and not the nut
  std::optional<Length> bearing_diameter{};  ///< effective diameter D_Km; absent: that of the head's standard
  std::vector<Face> more_faces{};            ///< washers and the like under the turned part
  Torsion torsion = Torsion::plastic;
  Text seat_material{};                ///< what head or nut bears on, "grey_cast_iron"; "": the pressure is not checked
  Text nut_class{};                    ///< "8"; "": taken as the one that matches the bolt
  Text tapped_material{};              ///< what the thread is tapped in, "aluminium"; "" for a nut
  std::optional<Length> engagement{};  ///< engaged thread in `tapped_material`
};

/// What one fastener does at the torque if a certain condition is on thread and face.
struct ConditionCase {
  std::string condition;       ///< "oiled"
  Band<Force> clamp_load;      ///< as in `ClampCandidate`
  double chance_of_yield = 0;  ///< the same
  double chance_of_breaking = 0;
  Torque suggested_torque;
  std::string verdict;

  template <class V>
  static void fields(V&& visit) {
    visit("condition", &ConditionCase::condition);
    visit("clamp_load", &ConditionCase::clamp_load);
    visit("chance_of_yield", &ConditionCase::chance_of_yield);
    visit("chance_of_breaking", &ConditionCase::chance_of_breaking);
    visit("suggested_torque", &ConditionCase::suggested_torque);
    visit("verdict", &ConditionCase::verdict);
  }
};

/// What one fastener does at the torque.
struct ClampCandidate {
  std::string thread;          ///< "M10x1.25"
  std::string head;            ///< standards of head and nut
  std::string look;            ///< how to tell it from the others
  int commonness = 1;          ///< 1 everyday .. 4 rare; common practice, no source
  Length socket;               ///< width across flats or key size
  std::string property_class;  ///< as given, or what an unmarked head must be taken for
  bool class_assumed = false;  ///< true if there was no mark to go by
  Torque torque;               ///< wrench setting
  double wrench_accuracy = 0;  ///< relative, at this setting
  Band<double> nut_factor;     ///< K = T/(F d)
  Band<Force> clamp_load;      ///< right after tightening, in 19 of 20 cases among bolts that hold, and typical;
                               ///< `absent` if half of the bolts break or more, or the thread strips
  Band<Force> worst_case;      ///< the same at the ends of friction and wrench, among bolts that hold
  double chance_of_yield = 0;  ///< that a bolt that just meets its class stretches for good. Chances below 0.01
                               ///< depend on the shape of the bands: read them as "below 1 in 100"
  double chance_of_yield_as_sold = 0;  ///< the same of bolts as they are sold, 12 % stronger (varies by 6 %); judgement
  double chance_of_breaking = 0;       ///< that a bolt that just meets its class breaks before the torque is reached
  double chance_of_breaking_as_sold = 0;  ///< the same of bolts as they are sold
  double chance_of_slack = 0;             ///< that the clamp load ends below half of the proof load, if the bolt holds
  Band<double> proof_share;               ///< clamp load over proof load
  Band<double> yield_utilisation;    ///< stress while the wrench turns over yield strength, at its best and worst case
  Band<double> tensile_utilisation;  ///< the same over tensile strength, section fully plastic; from 1 on it breaks
  Force proof_load;
  Torque suggested_torque;      ///< setting for this condition: the target torque, held back; `absent` if there is none
  std::string suggested_limit;  ///< what it rests on: "share" (of the proof load), "chance of yield" (1 in 100) or
                                ///< "worst case" (just yields; where friction is unknown), "thread" (that holds
                                ///< the bolt, bears it in 19 of 20 cases), "head" (of a button head, the same) or
                                ///< "key" (of a button head, is tested to it); "" if there is none
  Band<Torque>
      typical_torque;  ///< what such fasteners are tightened to: typically 75 % of the proof load (class 8.8 if none
                       ///< is given), from a third of that of the weakest class to 1.5 times that of the strongest
  std::string typical_class;  ///< without a mark: the lowest class for which the torque is usual; "" if there is none
  Torque target_torque;       ///< setting that gives the share of the proof load at nominal friction, whatever the risk
  Band<Force> suggested_clamp_load;  ///< clamp load at `suggested_torque`
  std::optional<Torque>
      corrected_torque;     ///< setting here for the clamp load that the torque means under the specified condition, at
                            ///< nominal friction; for `torque_for` the setting there. `absent` if none is specified
  std::string least_class;  ///< the lowest class of ISO 898-1 of which fewer than 1 in 100 yield at the torque (unknown
                            ///< friction: none in the worst case); "" if there is none
  std::string
      verdict;  ///< the word of a `Verdict`: slack, may be slack, within limits, may yield, yields, may break, may strip, breaks,
                ///< strips; the thread that holds the bolt counts as far as the job says what it is
  std::string meaning;                      ///< the verdict in a sentence
  std::string summary;                      ///< the answer in one line
  std::vector<ConditionCase> by_condition;  ///< unknown friction only: the answer if threads are dry, oiled or pasted
  std::optional<ThreadEngagement> engagement;  ///< the thread that holds the bolt, as far as the job says what it is
  std::vector<Notice> notices;
  std::vector<Figure> given;  ///< what the figures start from, with what was assumed
  std::vector<Step> steps;    ///< how they came about: at nominal friction, then in the worst cases

  template <class V>
  static void fields(V&& visit) {
    visit("thread", &ClampCandidate::thread);
    visit("head", &ClampCandidate::head);
    visit("look", &ClampCandidate::look);
    visit("commonness", &ClampCandidate::commonness);
    visit("socket", &ClampCandidate::socket);
    visit("property_class", &ClampCandidate::property_class);
    visit("class_assumed", &ClampCandidate::class_assumed);
    visit("torque", &ClampCandidate::torque);
    visit("wrench_accuracy", &ClampCandidate::wrench_accuracy);
    visit("nut_factor", &ClampCandidate::nut_factor);
    visit("clamp_load", &ClampCandidate::clamp_load);
    visit("worst_case", &ClampCandidate::worst_case);
    visit("chance_of_yield", &ClampCandidate::chance_of_yield);
    visit("chance_of_yield_as_sold", &ClampCandidate::chance_of_yield_as_sold);
    visit("chance_of_breaking", &ClampCandidate::chance_of_breaking);
    visit("chance_of_breaking_as_sold", &ClampCandidate::chance_of_breaking_as_sold);
    visit("chance_of_slack", &ClampCandidate::chance_of_slack);
    visit("proof_share", &ClampCandidate::proof_share);
    visit("yield_utilisation", &ClampCandidate::yield_utilisation);
    visit("tensile_utilisation", &ClampCandidate::tensile_utilisation);
    visit("proof_load", &ClampCandidate::proof_load);
    visit("suggested_torque", &ClampCandidate::suggested_torque);
    visit("suggested_limit", &ClampCandidate::suggested_limit);
    visit("target_torque", &ClampCandidate::target_torque);
    visit("typical_torque", &ClampCandidate::typical_torque);
    visit("typical_class", &ClampCandidate::typical_class);
    visit("suggested_clamp_load", &ClampCandidate::suggested_clamp_load);
    visit("corrected_torque", &ClampCandidate::corrected_torque);
    visit("least_class", &ClampCandidate::least_class);
    visit("verdict", &ClampCandidate::verdict);
    visit("meaning", &ClampCandidate::meaning);
    visit("summary", &ClampCandidate::summary);
    visit("by_condition", &ClampCandidate::by_condition);
    visit("engagement", &ClampCandidate::engagement);
    visit("notices", &ClampCandidate::notices);
    visit("given", &ClampCandidate::given);
    visit("steps", &ClampCandidate::steps);
  }
};

/// All fasteners that it can be, the most common first, and what holds for every one of them.
struct Clamp {
  std::string name;
  Band<double> thread_friction;
  Band<double> bearing_friction;
  double wrench_accuracy = 0;  ///< for the most common one
  std::vector<ClampCandidate> candidates;
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("name", &Clamp::name);
    visit("thread_friction", &Clamp::thread_friction);
    visit("bearing_friction", &Clamp::bearing_friction);
    visit("wrench_accuracy", &Clamp::wrench_accuracy);
    visit("candidates", &Clamp::candidates);
    visit("notices", &Clamp::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
