// A point of a plan or of the paper it is drawn on.
#pragma once

namespace tauten {

/// On the plan x runs in the wrench's direction and y to the side of positive angles; on paper x runs to the right and
/// y downward.
struct PlanPoint {
  double x;
  double y;
};

}  // namespace tauten
