// A tightening by angle from the snug torque to the verdict.
#pragma once

#include "tauten/base/derivation.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/question/turn_answer.hpp"

namespace tauten::TAUTEN_ABI {

TAUTEN_FUNCTION Derivation derivation_of(const TurnAnswer& a) {
  const TurnJoint& joint = a.joint;
  Derivation out;
  out.title = (a.name.empty() ? "" : a.name + ": ") + joint.thread + ", " + joint.head + ", class " +
              joint.property_class + (joint.class_assumed ? " (assumed)" : "");
  out.given.push_back(figure_in_words("thread", joint.thread));
  out.given.push_back(figure_in_words("property_class", joint.property_class,
                                      joint.class_assumed ? "no mark is known" : "", joint.class_assumed));
  out.given.push_back(figure("length", joint.length, "of the bolt", joint.length_assumed));
  out.given.push_back(figure("grip_length", joint.grip, "clamped"));
  out.given.push_back(figure("bolt_resilience", joint.bolt_resilience, "sum over the segments of the bolt"));
  out.given.push_back(
      figure("plate_resilience", joint.plate_resilience, std::string("clamped layers, ") + word_of(joint.plate_model)));
  out.given.push_back(figure("proof_load", joint.proof_load));
  out.given.push_back(figure("thread_friction", a.thread_friction));
  out.given.push_back(figure("bearing_friction", a.bearing_friction));
  out.given.push_back(figure("wrench_accuracy", a.wrench_accuracy, "of the snug torque, to either side", false, "%"));
  out.given.push_back(figure("snug_torque", a.snug_torque));
  out.steps = a.steps;
  const auto found = [&](const char* name, const auto& q, const char* note) {
    out.found.push_back(figure(name, q, note));
  };
  found("angle_of_turn", a.angle, "at the fastener, from snug");
  if (a.tool_twist.si > 0) found("handle_angle", a.handle_angle, "to be read at the handle");
  found("clamping", a.clamping, "part of it that stretches bolt and layers");
  found("bolt_twist", a.bolt_twist, "part that twists the bolt");
  found("snug_load", a.snug_load, "clamp load at snug");
  // A load that may not be left is not shown.
  if (a.may_neck) {
    out.found.push_back(figure_in_words("clamp_load", "none is sure: the bolt may neck and break"));
  } else {
    found("clamp_load", a.clamp_load, "after the turn");
    out.found.push_back(figure("proof_share", a.proof_share, "clamp load over proof load", false, "%"));
  }
  out.found.push_back(
      figure("yield_utilisation", a.yield_utilisation, "stress while the wrench turns over yield", false, "%"));
  found("torque", a.torque, "at the end of the turn");
  if (!a.may_neck) found("residual_load", a.residual.clamp_load, "left after embedding and all other losses");
  if (a.by_torque.nominal.si == a.by_torque.nominal.si)
    found("by_torque", a.by_torque, "what that torque alone would leave");
  out.verdict = a.verdict + ". " + a.meaning;
  out.notices = a.notices;
  return out;
}

}  // namespace tauten::TAUTEN_ABI
