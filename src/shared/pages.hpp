// The pages of answers, compiled once for the command line and Python.
#pragma once

#include "tauten/question/uncertainty_page.hpp"

#include "shared/clamp_inputs.hpp"
#include "shared/free_inputs.hpp"
#include "shared/group_inputs.hpp"
#include "shared/pattern_inputs.hpp"
#include "shared/prying_inputs.hpp"
#include "shared/reach_inputs.hpp"
#include "shared/sequence_inputs.hpp"
#include "shared/thread_inputs.hpp"
#include "shared/turn_inputs.hpp"

namespace tauten::shared {

Page page_of(const ClampAnswer& answer, const PageUnits& units, bool all);
Page page_of(const FreeAnswer& answer, const PageUnits& units);
Page page_of(const GroupAnswer& answer, const PageUnits& units);
Page page_of(const PatternAnswer& answer, const PageUnits& units);
Page page_of(const PryingAnswer& answer, const PageUnits& units);
Page page_of(const ReachAnswer& answer, const PageUnits& units);
Page page_of(const SequenceAnswer& answer, const PageUnits& units);
Page page_of(const ThreadAnswer& answer, const PageUnits& units);
Page page_of(const TurnAnswer& answer, const PageUnits& units);
Page page_of(const CurveAnswer& answer, const PageUnits& units);
Page page_of(const Curve& curve, const PageUnits& units);
Page page_of(const Budget& budget, const PageUnits& units);
Page page_of(const MonteCarlo& run, Dim dimension, const PageUnits& units);
Page page_of(const Sobol& sobol, const PageUnits& units);
Page page_of(const UncertaintyQuestion& question, const std::vector<UncertaintyResult>& results,
             const PageUnits& units);

}  // namespace tauten::shared
