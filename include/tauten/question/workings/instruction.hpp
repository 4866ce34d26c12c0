// How each step of releasing a stuck fastener is done: what to do, how long, what to watch.
#pragma once

#include <string>
#include <vector>

#include "tauten/question/free_answer.hpp"
#include "tauten/question/free_job.hpp"
#include "tauten/question/workings/free_checks.hpp"

namespace tauten::TAUTEN_ABI {

inline constexpr Instruction instructions[] = {
    {"pull", "Pull", "Seat the tool fully and square. Pull slowly and steadily up to the stop, and hold it there.",
     "10 to 20 s at the stop.",
     "Keep everyone out of the path of the tool. Stop when the torque falls or the head turns without a crack: the "
     "shank may be yielding."},
    {"tap", "Tap the head", "Hit the head squarely, along the axis, with a hammer and a brass drift.",
     "Ten to twenty blows, then pull again.", "Wear eye protection. Do not hit cast iron, thin flanges or the thread."},
    {"hold_and_tap", "Hold the torque while tapping",
     "Hold the stop torque with a breaker bar; a second person taps the head along the axis.",
     "About a minute, then rest and repeat twice.",
     "The bar may slip when the bolt moves: keep the hammer hand out of its path. Do not use a torque wrench for "
     "this."},
    {"tighten_first", "Tighten first",
     "Turn in the tightening direction to no more than the torque the bolt was tightened with, until it just moves or "
     "that torque is reached; then loosen.",
     "By 2 to 5 degrees at most, once or twice.",
     "Stop at the stop torque in this direction too. Do not tighten a leaking joint under pressure."},
    {"back_and_forth", "Back and forth after the first movement",
     "Once it moves, turn an eighth of a turn out and half of that back; put oil on the thread each time.",
     "Until it runs freely; allow 5 to 10 min a bolt.",
     "Most bolts break at this stage: stop when the torque rises, go back, oil and wait."},
    {"brush", "Clean", "Wire-brush the exposed thread towards the nut. Pick head, recess and thread end clean.",
     "5 min.", "Dust: wear eye protection and a mask. No dry brushing of cadmium."},
    {"fluid", "Soak",
     "Put penetrating fluid on both ends of the thread and under the head; tap, and wet it again every hour.",
     "One hour at least, better overnight.",
     "Keep it off brake linings, electrics and oxygen lines. No flame or heat until it has dried off."},
    {"impact", "Impact wrench",
     "Use an impact-rated six-point socket straight on the drive, with impact-rated bars and joints only. Choose a "
     "wrench or a setting whose rated torque stays below the stop.",
     "Bursts of 2 to 3 s, five at most.",
     "An impact wrench shows no torque: the torque that arrives is an estimate. Wear eye and ear protection."},
    {"heat", "Heat",
     "Heat the nut or the part around the thread quickly and evenly, keep the bolt cool, and turn while it is hot.",
     "1 to 3 min with a torch, less by induction.",
     "Clear the area of fuel, gas and sealed cavities; keep an extinguisher at hand. No heat on cadmium or zinc above "
     "200 \u00b0C. Let it cool before touching or wetting it."},
    {"heat_cycles", "Heat cycles with wax",
     "Heat, let it cool until wax just melts on it, and touch wax or oil to the edge of the thread: it is drawn in.",
     "Two to four cycles of 10 min.", "Wax smokes and can catch fire on hot metal: let it cool further if it smokes."},
    {"cold", "Chill", "Spray the bolt, not the nut, with a freezing spray, then pull at once.", "1 min of spray.",
     "Cold burns: wear gloves. Some sprays burn. Steel is brittle when cold: no blows."},
    {"welded_nut", "Welded nut", "Weld a nut onto the rounded head or stub through its bore; turn it while it is warm.",
     "10 min, then pull.",
     "Hot work permit. Disconnect electronics. Never near fuel, gas or sealed cavities, nor on zinc or cadmium."},
    {"double_nut", "Double nut or stud tool",
     "On a stud, lock two nuts against each other, or clamp a stud tool, and turn by the inner nut.", "5 min.",
     "The stud still carries the stop torque of its own thread."},
    {"nut_splitter", "Nut splitter", "Set the chisel of the splitter on a flat and tighten it until the nut cracks.",
     "5 min.", "Pieces may fly: wear a face shield. Stop before the chisel reaches the thread."},
    {"left_hand_drill", "Left-hand drill",
     "Centre-punch the stub exactly, then drill with a left-hand drill: it often turns the stub out.",
     "Slowly, with cutting oil.", "A drill that runs off the centre ruins the thread. Chips: eye protection."},
    {"extractor", "Extractor",
     "Drill to the size marked on the extractor and turn it out with a steady hand, after soaking or heat.", "10 min.",
     "Not in a bolt that sheared by torque: what sheared the bolt breaks the extractor. A broken extractor is too hard "
     "to drill."},
    {"drill_and_insert", "Drill and fit an insert",
     "Drill the stub out on a machine or with a guide bush and fit a thread insert.", "30 to 60 min.",
     "Ask the owner of the design first: pressure parts, lifting points and structures need approval."},
    {"cut", "Saw or grind off", "Saw or grind the nut or the head off, clear of the part.", "10 to 30 min.",
     "Sparks, dust and noise: eye, ear and breathing protection, fire watch. Near fuel or gas only by hand, cold and "
     "wet."},
};

namespace detail {

/// \return whether the thread is held by a nut, which can be heated and split, and not by the part itself
inline bool has_nut(const FreeJob& job) noexcept { return !job.tapped.value_or(is_internal(job.drive)); }

/// \return how the last step of a line is done
inline std::vector<Instruction> instructions_of(const FreeJob& job, const std::vector<AidUse>& aids) {
  std::vector<Instruction> list;
  const auto add = [&](std::initializer_list<const char*> keys) {
    for (const char* key : keys)
      for (const Instruction& one : instructions)
        if (std::string(key) == one.key) list.push_back(one);
  };
  const bool nut = has_nut(job), sparks = !job.surroundings.fire_or_burst;
  if (aids.empty()) {
    add({"pull", "tap", "hold_and_tap", "back_and_forth"});
    return list;
  }
  switch (aids.back().aid) {
    case Aid::brush: add({"brush"}); break;
    case Aid::fluid: add({"fluid", "back_and_forth"}); break;
    case Aid::tighten_first: add({"tighten_first", "back_and_forth"}); break;
    case Aid::impact: add({"impact"}); break;
    case Aid::heat: add({"heat", "heat_cycles"}); break;
    case Aid::cold: add({"cold"}); break;
    case Aid::another_tool: add({"pull", "double_nut"}); break;
    case Aid::cooled: break;
    case Aid::cut:
      if (nut) add({"nut_splitter"});
      if (sparks) add({"welded_nut"});
      add({"left_hand_drill", "extractor", "drill_and_insert", "cut"});
  }
  return list;
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
