// What can be asked about the order of tightening and undoing, and what is answered.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/notice.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"
#include "tauten/group/terms.hpp"

namespace tauten::TAUTEN_ABI {

/// How the order is found.
enum class OrderMethod : unsigned char {
  crosswise,
  circular,
  legacy,     ///< the order that legacy labels mean
  middle_out  ///< from the stiffest place outward: splice plates, heads, housings
};

template <>
struct Words<OrderMethod> {
  static constexpr const char* list[] = {"crosswise", "circular", "legacy", "middle_out"};
};

/// What is asked about an order. Bolts are numbered from 1.
struct SequenceJob {
  std::vector<Position> pattern{};
  OrderMethod method = OrderMethod::crosswise;
  std::optional<Position> start{};          ///< the stiffest place, for middle_out; the centroid if not given
  std::vector<std::size_t> order{};         ///< an order of one's own
  std::vector<std::size_t> labels{};        ///< going clockwise, the bolt at each place carries the number of its turn
  std::optional<std::size_t> at_once{};     ///< bolts that several tools tighten at once
  std::vector<double> shares{0.3, 0.6, 1};  ///< of the full torque, for each pass
  std::size_t rounds = 1;                   ///< circular rounds at the full torque after that
  double most = 1;                          ///< maximum share
  std::optional<Torque> torque{};           ///< the full one
  bool pressurised = false;                 ///< pressure may be trapped: undo away from the person first
  std::optional<Position> person{};         ///< where that one stands
  std::vector<std::vector<double>> interaction{};  ///< one number: what a neighbour loses; else count x count
  std::optional<FlangeOnGasket> gasket{};      ///< geometry instead of it; count and circle are those of the pattern
  std::vector<std::vector<Force>> readings{};  ///< or loads of all bolts, measured after each turn of the order
  std::optional<Force> load{};                 ///< that the full torque gives; 1 if not given
  std::optional<double> shortfall{};           ///< how far below the load the lowest bolt may end
  std::optional<Force> limit{};                ///< yield load of a bolt
  std::optional<double> friction_scatter{};    ///< relative standard deviation of what stays with a bolt
  std::optional<double> act_scatter{};         ///< of each act anew
  std::optional<double> wrench_scatter{};      ///< of the wrench
  std::size_t trials = 10000;
  std::uint64_t seed = 1;
};

/// One pass.
struct TighteningPass {
  double share = 0;  ///< of the full torque
  Torque torque;     ///< NaN if the full torque was not given
  std::vector<int> order;
  std::vector<Force> loads;  ///< after it, of all bolts; with interaction

  template <class V>
  static void fields(V&& visit) {
    visit("share", &TighteningPass::share);
    visit("torque", &TighteningPass::torque);
    visit("order", &TighteningPass::order);
    visit("loads", &TighteningPass::loads);
  }
};

/// In which order to tighten and undo. Bolts are numbered from 1.
struct TighteningSequence {
  std::vector<int> order;
  std::vector<int> labels;             ///< for the places, going by number
  std::vector<std::vector<int>> sets;  ///< bolts that are tightened at once
  std::vector<TighteningPass> passes;
  std::vector<int> ease;                    ///< all of them by a quarter turn first
  std::vector<int> remove;                  ///< the last two are opposite each other
  std::vector<std::vector<Force>> history;  ///< with interaction: loads after each step
  double neighbour_loss = absent;
  std::optional<int> passes_needed;   ///< for the evenness that was wished
  std::optional<int> passes_by_rule;  ///< by ln(t/2)/ln(c)
  std::vector<Force> first_loads;     ///< with which one pass ends even
  std::string why_no_first_loads;
  std::vector<Band<Force>> scattered;  ///< load of each bolt at the end
  std::optional<Band<Force>> lowest, highest;
  double relieved = absent;  ///< share of joints in which a bolt went to zero on the way
  std::vector<Notice> notices;

  template <class V>
  static void fields(V&& visit) {
    visit("order", &TighteningSequence::order);
    visit("labels", &TighteningSequence::labels);
    visit("sets", &TighteningSequence::sets);
    visit("passes", &TighteningSequence::passes);
    visit("ease", &TighteningSequence::ease);
    visit("remove", &TighteningSequence::remove);
    visit("history", &TighteningSequence::history);
    visit("neighbour_loss", &TighteningSequence::neighbour_loss);
    visit("passes_needed", &TighteningSequence::passes_needed);
    visit("passes_by_rule", &TighteningSequence::passes_by_rule);
    visit("first_loads", &TighteningSequence::first_loads);
    visit("why_no_first_loads", &TighteningSequence::why_no_first_loads);
    visit("scattered", &TighteningSequence::scattered);
    visit("lowest", &TighteningSequence::lowest);
    visit("highest", &TighteningSequence::highest);
    visit("relieved", &TighteningSequence::relieved);
    visit("notices", &TighteningSequence::notices);
  }
};

}  // namespace tauten::TAUTEN_ABI
