#include <tauten/tauten.hpp>

#include <cstring>

int main(int count, char** words) {
  tauten::ClampJob job{.thread = "M16", .property_class = "8.8", .condition = "oiled"};
  const auto none = tauten::try_clamp(job);
  if (none) return 1;  // no torque was given
  if (count > 1 && std::strcmp(words[1], "star") == 0) return none->candidates.empty();
  if (count > 1) return none.value().candidates.empty();
  job.torque = tauten::Torque(130);
  const auto answer = tauten::try_clamp(job);
  if (!answer || answer->candidates.front().verdict != "may be slack") return 2;
  // Where nothing can be thrown, a bad input gives NaN and a status.
  const double load = tauten::preload_from_torque(tauten::Torque(-1), tauten::Length(2e-3), tauten::Length(14.7e-3),
                                                  0.12, 0.12, tauten::Length(20e-3))
                          .si;
  const auto check = tauten::preload_from_torque.check(-1.0, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3);
  return load != load && check.status == tauten::Status::outside_domain && check.argument == 0 ? 0 : 3;
}
