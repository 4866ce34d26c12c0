#include "tauten.hpp"
// A second time, as it happens behind other headers.
#include "tauten.hpp"

double other_load();

int main() {
  const tauten::Clamp answer =
      tauten::clamp({.thread = "M16", .property_class = "8.8", .torque = tauten::Torque(130), .condition = "oiled"});
  return answer.candidates.front().verdict == "may be slack" && other_load() == answer.candidates.front().clamp_load.low.si ? 0
                                                                                                                   : 1;
}
