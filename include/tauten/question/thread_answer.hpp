// What can be asked about a thread, and what is answered.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/base/notice.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/text.hpp"

namespace tauten::TAUTEN_ABI {

/// What is asked about a thread.
struct ThreadJob {
  Text thread{};          ///< designation of ISO 261, M1 to M64: "M16", "M16x1.5", "M16-6g"
  Text property_class{};  ///< "8.8"; "" for every class that is made today
};

/// Maximum and minimum of a diameter.
struct DiameterLimits {
  Length minimum;
  std::optional<Length> maximum;  ///< none for the major diameter of a nut thread

  template <class V>
  static void fields(V&& visit) {
    visit("minimum", &DiameterLimits::minimum);
    visit("maximum", &DiameterLimits::maximum);
  }
};

/// Limits of size of one of the two threads, after ISO 965-1.
struct ThreadLimits {
  std::string tolerance_class;    ///< "6g" of a bolt, "6H" of a nut
  DiameterLimits diameter;        ///< major diameter
  DiameterLimits pitch_diameter;  ///< measured with three wires or a thread micrometer
  DiameterLimits minor_diameter;  ///< of a bolt that of its root, d_3

  template <class V>
  static void fields(V&& visit) {
    visit("tolerance_class", &ThreadLimits::tolerance_class);
    visit("diameter", &ThreadLimits::diameter);
    visit("pitch_diameter", &ThreadLimits::pitch_diameter);
    visit("minor_diameter", &ThreadLimits::minor_diameter);
  }
};

/// What bolts of one class bear in this thread, and the nut that belongs to them.
struct ClassLoads {
  std::string property_class;
  Force proof_load;                       ///< borne without lasting extension; of austenitic steel the load at R_p0.2
  Force tensile_load;                     ///< no bolt of the class breaks below it
  std::optional<Torque> breaking_torque;  ///< no bolt of the class is twisted off below it, when it is only twisted
  bool breaking_torque_is_estimate = false;  ///< it rests on figures from memory or on judgement
  std::string nut_class;                     ///< lowest class of a nut that belongs to it; "" where none does
  std::optional<Force> nut_proof_load;
  std::string source;  ///< of the proof load

  template <class V>
  static void fields(V&& visit) {
    visit("property_class", &ClassLoads::property_class);
    visit("proof_load", &ClassLoads::proof_load);
    visit("tensile_load", &ClassLoads::tensile_load);
    visit("breaking_torque", &ClassLoads::breaking_torque);
    visit("breaking_torque_is_estimate", &ClassLoads::breaking_torque_is_estimate);
    visit("nut_class", &ClassLoads::nut_class);
    visit("nut_proof_load", &ClassLoads::nut_proof_load);
    visit("source", &ClassLoads::source);
  }
};

/// A thread with what follows from its designation. What no standard here gives is left out.
struct ThreadFacts {
  std::string name;         ///< "M16", "M16x1.5"
  std::string designation;  ///< with the tolerance class, if one was given
  Length diameter;
  Length pitch;
  bool coarse;    ///< it has the coarse pitch of its diameter
  bool selected;  ///< in the selection of ISO 262
  std::string tolerance_class;
  Length pitch_diameter;  ///< basic, as all without limits
  Length minor_diameter;  ///< of the nut thread
  Length root_diameter;   ///< of the bolt thread
  Length stress_diameter;
  Area stress_area;
  Angle lead_angle;
  std::optional<Length> socket;     ///< width across flats of a hexagon head or nut of ISO 4014 and ISO 4032
  std::optional<Length> key;        ///< hexagon key of a cap screw of ISO 4762
  std::optional<Length> fine_hole;  ///< clearance holes of ISO 273
  std::optional<Length> medium_hole;
  std::optional<Length> coarse_hole;
  std::optional<ThreadLimits> bolt;  ///< of the tolerance class given, else 6g
  std::optional<ThreadLimits> nut;   ///< of the tolerance class given, else 6H
  std::vector<ClassLoads> classes;   ///< from the weakest to the strongest steel, then stainless
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("name", &ThreadFacts::name);
    visit("designation", &ThreadFacts::designation);
    visit("diameter", &ThreadFacts::diameter);
    visit("pitch", &ThreadFacts::pitch);
    visit("coarse", &ThreadFacts::coarse);
    visit("selected", &ThreadFacts::selected);
    visit("tolerance_class", &ThreadFacts::tolerance_class);
    visit("pitch_diameter", &ThreadFacts::pitch_diameter);
    visit("minor_diameter", &ThreadFacts::minor_diameter);
    visit("root_diameter", &ThreadFacts::root_diameter);
    visit("stress_diameter", &ThreadFacts::stress_diameter);
    visit("stress_area", &ThreadFacts::stress_area);
    visit("lead_angle", &ThreadFacts::lead_angle);
    visit("socket", &ThreadFacts::socket);
    visit("key", &ThreadFacts::key);
    visit("fine_hole", &ThreadFacts::fine_hole);
    visit("medium_hole", &ThreadFacts::medium_hole);
    visit("coarse_hole", &ThreadFacts::coarse_hole);
    visit("bolt", &ThreadFacts::bolt);
    visit("nut", &ThreadFacts::nut);
    visit("classes", &ThreadFacts::classes);
    visit("notices", &ThreadFacts::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
