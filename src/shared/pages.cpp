#include "shared/pages.hpp"

#include "tauten/question/clamp_page.hpp"
#include "tauten/question/curve_page.hpp"
#include "tauten/question/free_page.hpp"
#include "tauten/question/group_page.hpp"
#include "tauten/question/pattern_page.hpp"
#include "tauten/question/prying_page.hpp"
#include "tauten/question/reach_page.hpp"
#include "tauten/question/sequence_page.hpp"
#include "tauten/question/thread_page.hpp"
#include "tauten/question/turn_page.hpp"

namespace tauten::shared {

Page page_of(const ClampAnswer& answer, const PageUnits& units, bool all) {
  return tauten::page_of(answer.job, answer, units, all);
}
Page page_of(const FreeAnswer& answer, const PageUnits& units) {
  return tauten::page_of(answer.job, answer, units, answer.instructions);
}
Page page_of(const GroupAnswer& answer, const PageUnits& units) { return tauten::page_of(answer.job, answer, units); }
Page page_of(const PatternAnswer& answer, const PageUnits& units) { return tauten::page_of(answer.job, answer, units); }
Page page_of(const SequenceAnswer& answer, const PageUnits& units) {
  return tauten::page_of(answer.job, answer, units);
}
Page page_of(const PryingAnswer& answer, const PageUnits& units) { return tauten::page_of(answer.job, answer, units); }
Page page_of(const ReachAnswer& answer, const PageUnits& units) { return tauten::page_of(answer.job, answer, units); }
Page page_of(const ThreadAnswer& answer, const PageUnits& units) { return tauten::page_of(answer.job, answer, units); }
Page page_of(const TurnAnswer& answer, const PageUnits& units) { return tauten::page_of(answer, units); }
Page page_of(const CurveAnswer& answer, const PageUnits& units) { return tauten::page_of(answer, units); }
Page page_of(const Curve& curve, const PageUnits& units) { return tauten::page_of(curve, units); }
Page page_of(const Budget& budget, const PageUnits& units) { return tauten::page_of(budget, units); }
Page page_of(const MonteCarlo& run, Dim dimension, const PageUnits& units) {
  return tauten::page_of(run, dimension, units);
}
Page page_of(const Sobol& sobol, const PageUnits& units) { return tauten::page_of(sobol, units); }
Page page_of(const UncertaintyQuestion& question, const std::vector<UncertaintyResult>& results,
             const PageUnits& units) {
  return tauten::page_of(question, results, units);
}

}  // namespace tauten::shared
