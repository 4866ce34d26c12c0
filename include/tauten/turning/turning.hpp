// A bolt on the wrench, step by step: turning, springing back, loosening, turning again, past yield as well.
#pragma once

#include <algorithm>

#include "tauten/tightening/angle.hpp"
#include "tauten/tightening/screw_torque.hpp"
#include "tauten/turning/curve_points.hpp"
#include "tauten/turning/plastic_section.hpp"

namespace tauten::TAUTEN_ABI {

/// What turning needs to know of bolt and joint. `turned_bolt` makes one from a joint.
struct TurnedBolt {
  Length pitch{};
  Length pitch_diameter{};
  Length section_diameter{};  ///< of the weakest section: the stress diameter, or that of a reduced shank
  Length section_length{};    ///< over which the section can turn plastic: free thread, or reduced shank
  Quantity<Dim::compliance> bolt_resilience{};
  Quantity<Dim::compliance> plate_resilience{};
  double twist_per_torque = 0;  ///< elastic twist of the whole bolt, rad per N.m of thread torque

  template <class V>
  static void fields(V&& visit) {
    visit("pitch", &TurnedBolt::pitch);
    visit("pitch_diameter", &TurnedBolt::pitch_diameter);
    visit("section_diameter", &TurnedBolt::section_diameter);
    visit("section_length", &TurnedBolt::section_length);
    visit("bolt_resilience", &TurnedBolt::bolt_resilience);
    visit("plate_resilience", &TurnedBolt::plate_resilience);
    visit("twist_per_torque", &TurnedBolt::twist_per_torque);
  }
};

/// Friction while turning: one pair of coefficients, and where the face rubs.
struct TurningFriction {
  double thread = 0.14;       ///< mu_G
  double bearing = 0.14;      ///< mu_K
  Length bearing_diameter{};  ///< D_Km

  template <class V>
  static void fields(V&& visit) {
    visit("thread", &TurningFriction::thread);
    visit("bearing", &TurningFriction::bearing);
    visit("bearing_diameter", &TurningFriction::bearing_diameter);
  }
};

/// The state of one bolt under the wrench. The weakest section follows `RoundSection`; all else is elastic. The thread
/// torque stands to the preload in a fixed ratio while the wrench turns.
class Turning {
 public:
  /// \param bolt, steel, friction  checked by `try_tightening_curve`
  /// \param rings  of the section
  Turning(const TurnedBolt& bolt, const BoltSteel& steel, const TurningFriction& friction, int rings = 15)
      : section_(bolt.section_diameter.si / 2, steel, rings),
        length_(bolt.section_length.si),
        per_turn_(bolt.pitch.si / (2 * pi<double>())),
        thread_lever_(ThreadIncline::lever(bolt.pitch.si, bolt.pitch_diameter.si, friction.thread)),
        face_lever_(friction.bearing * LeverParts::face(friction.bearing_diameter.si)) {
    const SectionLoad soft = section_.respond(0, 0);
    rest_ = bolt.bolt_resilience.si + bolt.plate_resilience.si - length_ / soft.force_by_e;
    rest_twist_ = bolt.twist_per_torque - length_ / soft.torque_by_k;
    yield_force_ = section_.area() * section_.yield_start();
    stiffness_ = soft;
  }

  /// Turns on to an angle, counted from the start of this tightening.
  /// \return false if no equilibrium was found
  bool turn_to(double angle, int halvings = 12) {
    if (step_to(angle)) return true;
    return halvings > 0 && turn_to((angle_ + angle) / 2, halvings - 1) && turn_to(angle, halvings - 1);
  }

  // Both begin their search where an elastic section would end.

  /// Takes the wrench off: thread and clamp hold, the bolt untwists until a share of its torque is left.
  bool spring_back(double torque_left) {
    const double stretch = rest_ * force_ + length_ * strain_;
    const bool done = solve({0, 1, 0, 0, torque_left * torque_}, {rest_, 0, length_, 0, stretch}, strain_,
                            twist_ - (1 - torque_left) * torque_ / stiffness_.torque_by_k);
    begin_again();
    return done;
  }

  /// Loosens fully. The next `turn_to` starts a new tightening from zero.
  bool loosen() {
    const bool done = solve({1, 0, 0, 0, 0}, {0, 1, 0, 0, 0}, strain_ - force_ / stiffness_.force_by_e,
                            twist_ - torque_ / stiffness_.torque_by_k);
    start_strain_ = strain_;
    start_twist_ = twist_;
    angle_ = 0;
    begin_again();
    return done;
  }

  double angle() const noexcept { return angle_; }
  double preload() const noexcept { return force_; }
  double thread_torque() const noexcept { return torque_; }
  double torque() const noexcept { return force_ * wrench_lever(); }
  double wrench_lever() const noexcept { return thread_lever_ + face_lever_; }
  double twist() const noexcept { return rest_twist_ * torque_ + length_ * (twist_ - start_twist_); }
  /// \return what the bolt would be longer by once loosened
  double lasting_stretch() const noexcept {
    // Where nothing or next to nothing has flowed the difference is rounding noise.
    return section_.surface_strain() > 0 ? std::max(0.0, length_ * (strain_ - force_ / stiffness_.force_by_e)) : 0;
  }
  const RoundSection& section() const noexcept { return section_; }

  TurningEnergy energy() const noexcept {
    return {work_, heat_,
            length_ * section_.stored_energy() + (rest_ * square(force_) + rest_twist_ * square(torque_)) / 2,
            length_ * section_.plastic_work()};
  }
  /// \return false where the resilience given is less than that of the section alone
  bool is_sound() const noexcept { return rest_ >= 0 && rest_twist_ >= 0 && stiffness_.force_by_e > 0; }
  double thread_lever() const noexcept { return thread_lever_; }
  /// Angle that a preload would need if nothing yielded; the twist of the bolt is in it.
  double elastic_angle(double preload) const noexcept {
    return preload * (rest_ + length_ / stiffness_.force_by_e) / per_turn_ +
           preload * thread_lever_ * (rest_twist_ + length_ / stiffness_.torque_by_k);
  }

 private:
  /// A linear condition on the state: force, torque, strain and twist per length, each times its factor, make `sum`.
  struct Condition {
    double force, torque, strain, twist, sum;
  };

  /// The way so far of one unknown: a parabola through the last steps is where the next one is sought.
  struct Path {
    double run = 0, step = 0, run_before = 0, step_before = 0;

    double guess(double next) const noexcept {
      if (run == 0) return 0;
      const double slope = step / run;
      const double bend = run_before > 0 ? (slope - step_before / run_before) / (run + run_before) : 0;
      return next * (slope + bend * (next + run));
    }
    void add(double next, double way) noexcept {
      run_before = run;
      step_before = step;
      run = next;
      step = way;
    }
  };

  bool step_to(double angle) {
    const Condition friction{-thread_lever_, 1, 0, 0, 0};
    const Condition lead{rest_ / per_turn_, rest_twist_, length_ / per_turn_, length_,
                         angle + length_ * (start_strain_ / per_turn_ + start_twist_)};
    const double old_force = force_;
    const double old_torque = torque_;
    const double old_twist = twist();
    const double run = angle - angle_;
    const double from_strain = strain_;
    const double from_twist = twist_;
    if (!solve(friction, lead, strain_ + strain_path_.guess(run), twist_ + twist_path_.guess(run))) return false;
    strain_path_.add(run, strain_ - from_strain);
    twist_path_.add(run, twist_ - from_twist);
    angle_ = angle;
    // Work by the mean loads of the step; the thread turns by what the bolt does not twist.
    const double force = (old_force + force_) / 2;
    const double torque = (old_torque + torque_) / 2;
    work_ += (torque + force * face_lever_) * run;
    heat_ += force * face_lever_ * run + (torque - force * per_turn_) * (run - twist() + old_twist);
    return true;
  }

  /// Newton iteration on strain and twist with the exact tangent of the section.
  bool solve(const Condition& one, const Condition& two, double strain, double twist) {
    const double scale_one = one.torque != 0 ? yield_force_ * thread_lever_ : yield_force_;
    const double scale_two = two.strain != 0 ? yield_force_ * (two.force + two.strain / stiffness_.force_by_e)
                                             : yield_force_ * thread_lever_;
    for (int i = 0; i < 40; ++i) {
      const SectionLoad at = section_.respond(strain, twist);
      const double miss_one =
          one.force * at.force + one.torque * at.torque + one.strain * strain + one.twist * twist - one.sum;
      const double miss_two =
          two.force * at.force + two.torque * at.torque + two.strain * strain + two.twist * twist - two.sum;
      if (small(miss_one / scale_one) && small(miss_two / scale_two)) {
        section_.keep();
        strain_ = strain;
        twist_ = twist;
        force_ = at.force;
        torque_ = at.torque;
        return true;
      }
      const double a = one.force * at.force_by_e + one.torque * at.torque_by_e + one.strain;
      const double b = one.force * at.force_by_k + one.torque * at.torque_by_k + one.twist;
      const double c = two.force * at.force_by_e + two.torque * at.torque_by_e + two.strain;
      const double d = two.force * at.force_by_k + two.torque * at.torque_by_k + two.twist;
      const double det = a * d - b * c;
      if (!(det > 0 || det < 0)) return false;
      strain -= (miss_one * d - b * miss_two) / det;
      twist -= (a * miss_two - c * miss_one) / det;
    }
    return false;
  }
  static bool small(double x) noexcept { return x < 1e-7 && x > -1e-7; }
  void begin_again() noexcept { strain_path_ = twist_path_ = {}; }

  RoundSection section_;
  SectionLoad stiffness_{};
  double length_;
  double per_turn_;
  double thread_lever_;
  double face_lever_;
  double rest_ = 0;        ///< resilience of all but the section
  double rest_twist_ = 0;  ///< the same for twist
  double yield_force_ = 0;
  double strain_ = 0, twist_ = 0, force_ = 0, torque_ = 0, angle_ = 0;
  double start_strain_ = 0, start_twist_ = 0;
  Path strain_path_, twist_path_;
  double work_ = 0, heat_ = 0;
};

}  // namespace tauten::TAUTEN_ABI
