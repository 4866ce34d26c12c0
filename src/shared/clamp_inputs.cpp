#include "shared/clamp_inputs.hpp"

#include "shared/class_words.hpp"
#include "shared/friction_text.hpp"

namespace tauten::shared {

/// 26mm:oiled, the effective diameter of the face and what is on it.
template <>
struct Form<Face> {
  static Problem read(const char* called, std::string_view text, Face& face) {
    const auto parts = split(text, ':');
    if (parts.size() != 2)
      return refuse_text(called, text,
                         " is not understood; write its effective diameter and condition like 26mm:oiled");
    if (auto problem = read_above_zero(called, parts[0], face.bearing_diameter)) return problem;
    return read_condition(called, parts[1], face.condition);
  }
  static Problem check(const char* called, const Face& face) {
    if (auto problem = refuse_zero(called, face.bearing_diameter.si, Dim::length)) return problem;
    std::string condition;
    return read_condition(called, face.condition, condition);
  }
};

namespace {
namespace of_clamp {

using In = Declares<ClampJob>;
using ClampInput = Input<ClampJob>;

/// A condition that the library knows; an error is in the words of the input.
template <auto member>
Problem put_condition(const ClampInput&, const char* called, const Value& value, ClampJob& job) {
  return read_condition(called, value, job.*member);
}

Problem put_key(const ClampInput&, const char* called, const Value& value, ClampJob& job) {
  job.inner_hexagon = true;
  return read_above_zero(called, value, job.socket);
}

template <auto member>
constexpr ClampInput condition(const char* name, const char* example, const char* help) {
  return In::input<member>(name, example, help).read_by(put_condition<member>).with_words(condition_words);
}

constexpr ClampInput inputs[] = {
    // First what `torque` is not asked.
    In::input<&ClampJob::torque>("torque", "48N.m", "Setting of the wrench").above_zero(),
    condition<&ClampJob::specified_condition>("specified_condition", "dry",
                                              "The condition that the torque figure is meant for")
        .with_option("specified"),

    In::input<&ClampJob::name>("name", "\"pump feet\"", "Name of the joint"),
    In::input<&ClampJob::socket>("socket", "16mm", "Socket or spanner that fits: 16mm, 5/8in")
        .above_zero()
        .in_library("width_across_flats"),
    In::input<&ClampJob::socket>("key", "8mm", "Hexagon key that fits into the head, instead of a socket")
        .above_zero()
        .read_by(put_key)
        .in_library("width_across_flats"),
    In::input<&ClampJob::thread>("thread", "M10x1.25", "Thread, if it is known; alone it has the head of ISO 4014")
        .read_by(put_thread<&ClampJob::thread>),
    In::input<&ClampJob::head>("head", "\"ISO 4014\"", "Standard of the turned head or nut").in_library("standard"),
    In::input<&ClampJob::property_class>("property_class", "10.9",
                                         "Mark on the head: property class; without it the weakest is assumed")
        .read_by(put_class<&ClampJob::property_class>)
        .with_option("class")
        .with_words(class_words),
    In::input<&ClampJob::share>("share", "75%", "Share of the proof load that the suggested torque aims at"),
    condition<&ClampJob::condition>("condition", "oiled", "What is on the threads; without it the band is wide"),
    condition<&ClampJob::face_condition>("face_condition", "dry", "What is under head or nut, if not the same")
        .with_option("face"),
    In::input<&ClampJob::thread_friction>("thread_friction", "0.08..0.12..0.16",
                                          "Coefficient in the thread, if measured: 0.12, or a band"),
    In::input<&ClampJob::bearing_friction>("bearing_friction", "0.08..0.12..0.16",
                                           "Coefficient under head or nut, if measured"),
    In::input<&ClampJob::friction_together>("friction_together", "no",
                                            "yes or no: thread and face rub alike; default: if of one condition"),
    In::input<&ClampJob::wrench_accuracy>("wrench_accuracy", "4%",
                                          "Accuracy of the wrench; default: 6 % up to 10 N.m, 4 % above"),
    In::input<&ClampJob::prevailing_torque>("prevailing_torque", "4N.m",
                                            "Prevailing torque of a locking nut or insert"),
    In::input<&ClampJob::shank_torque>("shank_torque", "2N.m",
                                       "Friction torque of the shank in its hole, where the head is turned"),
    In::input<&ClampJob::bearing_diameter>("bearing_diameter", "13mm",
                                           "Effective diameter of the bearing face, if not the standard's")
        .above_zero(),
    In::input<&ClampJob::more_faces>("more_faces", "26mm:oiled",
                                     "A washer under the turned part: effective diameter, condition")
        .with_option("more-face"),
    In::input<&ClampJob::torsion>("torsion", "plastic",
                                  "Torsion of the section: plastic (default) or elastic (before 2001)"),
    In::input<&ClampJob::seat_material>("seat_material", "grey_cast_iron",
                                        "What head or nut bears on; without it pressure is not checked"),
    In::input<&ClampJob::nut_class>("nut_class", "8", "Class of the nut; default: the one that matches the bolt"),
    In::input<&ClampJob::tapped_material>("tapped_material", "cast_aluminium",
                                          "What the thread is tapped in, if not a nut"),
    In::input<&ClampJob::engagement>("engagement", "20mm", "Engaged thread in what it is tapped in").above_zero(),

    // Last what `clamp` is not asked.
    In::input<&ClampJob::clamp_load>("clamp_load", "25kN", "Clamp load that is wanted").above_zero(),
};

constexpr Rule rules[] = {excludes("socket", "key"), excludes("torque", "clamp_load"), excludes("clamp_load", "share")};

Outcome<ClampAnswer> answer(const Call& call, Outcome<Clamp> (*ask)(const ClampJob&)) {
  const auto given = try_clamp_job(call);
  if (!given) return given.error();
  const Outcome<Clamp> found = ask(given->job);
  if (!found) return given->in_words(found.error());
  return ClampAnswer{*found, given->job};
}

}  // namespace of_clamp
}  // namespace

std::span<const Input<ClampJob>> joint_inputs() { return of_clamp::inputs; }
std::span<const Input<ClampJob>> clamp_inputs() {
  return std::span(of_clamp::inputs).first(std::size(of_clamp::inputs) - 1);
}
std::span<const Input<ClampJob>> torque_inputs() { return std::span(of_clamp::inputs).subspan(2); }

Outcome<GivenJob<ClampJob>> try_clamp_job(const Call& call) {
  return try_read<ClampJob>(of_clamp::inputs, call, of_clamp::rules);
}

Outcome<ClampAnswer> try_clamp(const Call& call) { return of_clamp::answer(call, tauten::try_clamp); }

Outcome<ClampAnswer> try_torque_for(const Call& call) { return of_clamp::answer(call, tauten::try_torque_for); }

}  // namespace tauten::shared
