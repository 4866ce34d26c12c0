#include "tauten.hpp"

double other_load() {
  return tauten::clamp({.thread = "M16", .property_class = "8.8", .torque = tauten::Torque(130), .condition = "oiled"})
      .candidates.front()
      .clamp_load.low.si;
}
