// The page of prying: what plate and bolts bear together, what gives way, which thickness is needed.
#pragma once

#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"
#include "tauten/question/prying_answer.hpp"

namespace tauten::TAUTEN_ABI {

/// \param job     what was asked
/// \param answer  what came of it
/// \return the answer laid out for people
inline Page page_of(const PryingJob& job, const PlatePrying& answer, const PageUnits& units = {}) {
  Page page;
  page.standing_cautions = false;  // nothing is turned
  const std::string bolts = std::to_string(job.bolts) + (job.bolts == 1 ? " bolt" : " bolts");
  constexpr const char* gives_way[] = {"the plate bends", "plate and bolts give way together", "the bolts break"};
  if (answer.mode) {
    page.headline = "Plate " + units.typed(*job.thickness) + " with " + bolts + ": bears " +
                    units.text(answer.strength) + ", " + PageUnits::percent(answer.strength_share) +
                    " of the bolts alone; " + gives_way[static_cast<int>(*answer.mode)] + ".";
    if (job.pull) page.headline += " The pull is " + PageUnits::percent(answer.utilisation) + " of that.";
  } else {
    page.headline = bolts + " and a pull of " + units.typed(*job.pull) + ": plate at least " +
                    units.text(answer.minimum_thickness) + " thick.";
  }
  if (answer.utilisation > 1)
    page.actions.push_back("Take a plate of at least " + units.text(answer.minimum_thickness) +
                           ", move the bolts nearer to the web, or use stronger bolts.");
  else
    page.actions.push_back("Check welds, web and shear as the code asks; this is plate and bolts in tension alone.");
  if (answer.presses && *answer.presses)
    page.actions.push_back(
        "The bolts carry the press of the edge on top of the pull: choose and tighten them for both.");
  const auto add = [&](const char* name, const auto& figure) {
    if (figure.si == figure.si) page.figures.push_back({name, units.text(figure, 4)});
  };
  add("Strength of the bolts alone", answer.bolts_alone);
  add("Mode 1, flange", answer.flange);
  add("Mode 2, flange and bolts", answer.combined);
  if (answer.form == PryingForm::t_stub) add("Mode 3, bolts", answer.bolts_alone);
  add("Press of the edges at the pull", answer.edge_force);
  add("Load of one bolt with it", answer.bolt_load);
  add("Minimum thickness for the pull", answer.minimum_thickness);
  add("Thickness from which the bolts keep their strength", answer.no_prying_thickness);
  add("Lever to the web", answer.bolt_lever);
  add("Lever to the edge", answer.edge_lever);
  if (answer.bending_share == answer.bending_share)
    page.figures.push_back({"Moment at the bolts over that at the web, alpha'", number_text(answer.bending_share, 4)});
  page.add(answer.notices);
  page.trust.push_back(std::string("After ") + word_of(answer.form) +
                       (answer.form == PryingForm::aisc ? ", a strip of plate for each bolt." : ", Table 6.2."));
  return page;
}

}  // namespace tauten::TAUTEN_ABI
