#include <tauten/question/clamp.hpp>
#include <tauten/question/free.hpp>
#include <tauten/question/identify.hpp>
#include <tauten/question/reach.hpp>
#include <tauten/question/turn.hpp>

// Each question once, from the library; the figures are held elsewhere.
int main() {
  using namespace tauten;
  const Clamp answer = clamp({.thread = "M16", .property_class = "8.8", .torque = Torque(130), .condition = "oiled"});
  TurnJob turned;
  turned.thread = "M16";
  turned.property_class = "8.8";
  turned.grip = Length(0.04);
  turned.snug_torque = Torque(60);
  turned.angle = Angle(0.8);
  ReachJob line;
  line.torque = Torque(100);
  FreeJob stuck;  // says nothing yet, and is refused
  return answer.candidates.front().verdict == "may be slack" && try_turn(turned) && try_reach(line) &&
                 !try_free_joint(stuck) && identify(Length(0.024)).front().thread.name() == "M16"
             ? 0
             : 1;
}
