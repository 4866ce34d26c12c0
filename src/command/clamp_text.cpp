#include "command/clamp_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <span>

#include "command/table.hpp"
#include "shared/identification_page.hpp"
#include "tauten/base/caution.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/question/workings/clamp_notices.hpp"

namespace tauten::command {

namespace {

/// Three figures, the last ones too if they are zeros, so that a column reads evenly.
std::string three_figures(double x) {
  const double size = std::fabs(x);
  if (!std::isfinite(x)) return "-";
  return fmt::format("{:.{}f}", x, size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3);
}

std::string load_text(Force load) { return three_figures(load.shop()); }
std::string torque_text(Torque torque) { return three_figures(torque.shop()); }
std::string percent_text(double share) { return std::isfinite(share) ? fmt::format("{:.0f}", 100 * share) : "-"; }
std::string class_text(const ClampCandidate& c) { return c.property_class + (c.class_assumed ? " ?" : ""); }

std::string band_text(const Band<double>& band) {
  if (band.low == band.high) return number_text(band.nominal, 3);
  return fmt::format("{} to {}, typically {}", number_text(band.low, 3), number_text(band.high, 3),
                     number_text(band.nominal, 3));
}

std::string friction_text(const ClampJob& job, const Clamp& answer) {
  const std::string on_thread = job.thread_friction ? "measured" : thread_condition(job.condition).title;
  const std::string& face = job.face_condition.empty() ? job.condition : job.face_condition;
  const std::string on_face = job.bearing_friction ? "measured" : thread_condition(face).title;
  const std::string in_thread = band_text(answer.thread_friction);
  const std::string under_head = band_text(answer.bearing_friction);
  if (on_thread == on_face && in_thread == under_head)
    return fmt::format("Friction of thread and bearing face: {} ({}).", in_thread, on_thread);
  return fmt::format("Friction of the thread: {} ({}). Of the bearing face: {} ({}).", in_thread, on_thread, under_head,
                     on_face);
}

std::string notice_text(const Notice& notice) { return notice.text + (notice.is_estimate ? " (Estimate.)" : ""); }

/// What is said about several candidates, each sentence once, with the numbers of those that it is about.
class Sayings {
 public:
  void add(const std::string& text, const std::string& who) {
    const auto found = std::find_if(list_.begin(), list_.end(), [&](const auto& item) { return item.first == text; });
    if (found == list_.end())
      list_.push_back({text, {who}});
    else
      found->second.push_back(who);
  }
  /// \param everybody  a sentence about that many needs no numbers
  std::string text(std::size_t everybody) const {
    std::string out;
    for (const auto& [sentence, who] : list_) {
      const std::string about = who.size() == everybody ? "" : fmt::format("{}: ", fmt::join(who, ", "));
      out += paragraph(about + sentence, "- ");
    }
    return out;
  }

 private:
  std::vector<std::pair<std::string, std::vector<std::string>>> list_;
};

/// What the suggested torque rests on.
std::string limit_text(const ClampJob& job, const ClampCandidate& c) {
  if (c.suggested_limit == "chance of yield") return "held back to a chance of yielding of 1 in 100";
  if (c.suggested_limit == "worst case") return "held back to where the worst case just yields";
  return fmt::format("{} % of the proof load at nominal friction",
                     number_text(100 * job.share.value_or(default_proof_share), 3));
}

std::string suggestion_text(const ClampJob& job, const ClampCandidate& c) {
  if (!detail::is_given(c.suggested_torque.si))
    return fmt::format("No torque can be suggested for {}, class {}.", c.thread, c.property_class);
  std::string text = fmt::format("Suggested torque for {}, class {}: {} N.m, {}.", c.thread, c.property_class,
                                 detail::settable_text(c.suggested_torque), limit_text(job, c));
  if (c.suggested_torque.si != c.torque.si)
    text += fmt::format(" Clamp load {} to {} kN, typically {} kN.", load_text(c.suggested_clamp_load.low),
                        load_text(c.suggested_clamp_load.high), load_text(c.suggested_clamp_load.nominal));
  // A steel class is no advice for a stainless joint.
  const bool too_much = c.chance_of_yield > accepted_chance_of_yield && !c.property_class.starts_with('A');
  if (too_much && !c.least_class.empty() && c.least_class != c.property_class)
    text += fmt::format(
        " Class {} would bear {} N.m; check nut, thread, embrittlement and maker before a stronger bolt goes in.",
        c.least_class, torque_text(c.torque));
  if (too_much && c.least_class.empty())
    text += fmt::format(" No class of ISO 898-1 bears {} N.m here.", torque_text(c.torque));
  return text;
}

std::string worst_case_text(const ClampCandidate& c) {
  const std::string yield = fmt::format("{} % of yield", percent_text(c.yield_utilisation.high));
  if (c.verdict == "breaks") return fmt::format("Worst case: up to {}.", yield);
  return fmt::format("Worst case of friction and wrench: {} to {} kN, up to {}.", load_text(c.worst_case.low),
                     load_text(c.worst_case.high), yield);
}

/// The answer for what is likely to be on the threads.
std::string cases_text(const ClampCandidate& c) {
  std::string out;
  for (const ConditionCase& here : c.by_condition) {
    const std::string load =
        detail::is_given(here.clamp_load.nominal.si)
            ? fmt::format("{} kN ({} to {} kN)", detail::rough_load_text(here.clamp_load.nominal),
                          detail::rough_load_text(here.clamp_load.low), detail::rough_load_text(here.clamp_load.high))
            : "no clamp load";
    const std::string suggested = detail::is_given(here.suggested_torque.si)
                                      ? fmt::format("; suggested {} N.m", detail::settable_text(here.suggested_torque))
                                      : "";
    out += paragraph(fmt::format("If {}: {}, {}{}.", here.condition, load, here.verdict, suggested), "- ");
  }
  return out;
}

/// Without a stated accuracy the wrench may be good to one share for small settings and to another for large ones.
std::string wrench_text(std::span<const ClampCandidate> candidates) {
  std::vector<std::string> shares;
  for (const ClampCandidate& c : candidates)
    if (const std::string share = number_text(100 * c.wrench_accuracy, 3);
        std::find(shares.begin(), shares.end(), share) == shares.end())
      shares.push_back(share);
  return fmt::format("+-{} %{}", fmt::join(shares, " or "), shares.size() > 1 ? " by its setting" : "");
}

/// Notices that tell what to do now stand at the top of the page.
bool is_to_do(const Notice& notice) {
  static constexpr std::string_view codes[] = {"corrected_torque", "torque_suggests_class", "may_break", "stretched",
                                               "may_have_yielded"};
  return std::find(std::begin(codes), std::end(codes), notice.code) != std::end(codes);
}

bool has_none(const ClampCandidate& c) { return c.verdict == "breaks"; }
constexpr const char* none_text = "\"-\": the bolt breaks, so no clamp load is given.\n";
constexpr const char* legend_text =
    "Low to high: clamp load in 19 of 20 cases. Yield: chance that a bolt that just meets its class stretches for "
    "good.";

/// A chance in a narrow column.
std::string chance_cell(double chance) {
  return chance < 0.01 ? "<1 %" : chance > 0.95 ? fmt::format(">{} %", chance > 0.99 ? 99 : 95) : chance_text(chance);
}
std::string suggested_cell(const ClampCandidate& c) {
  return detail::is_given(c.suggested_torque.si) ? detail::settable_text(c.suggested_torque) : "-";
}
std::string torque_cell(const ClampCandidate& c) {
  return c.torque.si == c.suggested_torque.si ? suggested_cell(c) : torque_text(c.torque);
}

/// \return "1  M10: look", one paragraph each; what all of them share stands once below
std::string looks_of(const std::vector<std::string>& names, std::vector<std::string> looks) {
  const std::string common = shared::take_shared_look(looks);
  std::string out;
  for (std::size_t i = 0; i < looks.size(); ++i)
    if (!looks[i].empty()) out += paragraph(looks[i], names[i]);
  return common.empty() ? out : out + paragraph("All of them: " + common);
}

}  // namespace

std::string page_of(const ClampJob& job, const Clamp& answer, bool all) {
  const std::size_t shown = all ? answer.candidates.size() : std::min(shown_candidates, answer.candidates.size());
  const std::span candidates(answer.candidates.data(), shown);
  const ClampCandidate& first = candidates.front();
  const bool one_torque = job.torque.has_value();

  std::string headline = job.name.empty() ? "" : job.name + ": ";
  if (!one_torque)
    headline += job.clamp_load ? fmt::format("Torque for {} kN. ", number_text(job.clamp_load->shop()))
                               : std::string("Suggested torque. ");
  std::string out = paragraph(headline + first.summary) + "\nWhat to do\n";
  if (answer.candidates.size() > 1) {
    const std::string tool = fmt::format("{} {} mm", job.inner_hexagon ? "hexagon key" : "width across flats",
                                         number_text(first.socket.shop()));
    out += paragraph(fmt::format("Make sure that it is {}: {} more {} {}.", first.thread, answer.candidates.size() - 1,
                                 answer.candidates.size() == 2 ? "fastener fits" : "fasteners fit", tool),
                     "- ");
  }
  for (const Notice& notice : first.notices)
    if (is_to_do(notice)) out += paragraph(notice_text(notice), "- ");
  out += paragraph(first.meaning, "- ") + paragraph(suggestion_text(job, first), "- ") + cases_text(first) +
         paragraph(worst_case_text(first), "- ") + "\n";

  std::vector<Column> columns = {
      {"#", "", true}, {"Thread", ""}, {"Head or nut", "", false, 20}, {"Class", "", false, 10}};
  if (!one_torque) columns.push_back({"Torque", "N.m", true});
  for (const char* load : {"Low", "Typical", "High"}) columns.push_back({load, "kN", true});
  const bool for_load = job.clamp_load.has_value();
  if (!for_load) columns.push_back({"Proof", "%", true});
  columns.push_back({"Yield", "", true});
  if (one_torque || for_load) columns.push_back({"Suggest", "N.m", true});
  columns.push_back({"Verdict", ""});
  Table table(columns);
  Sayings cautions;
  std::vector<std::string> names, looks;
  for (std::size_t i = 0; i < shown; ++i) {
    const ClampCandidate& c = candidates[i];
    const std::string number = std::to_string(i + 1);
    std::vector<std::string> row = {number, c.thread, c.head.empty() ? "-" : shared::standards_text(c.head, 20),
                                    class_text(c)};
    if (!one_torque) row.push_back(torque_cell(c));
    for (const Force load : {c.clamp_load.low, c.clamp_load.nominal, c.clamp_load.high}) row.push_back(load_text(load));
    if (!for_load) row.push_back(percent_text(c.proof_share.nominal));
    row.push_back(chance_cell(c.chance_of_yield));
    if (one_torque || for_load) row.push_back(suggested_cell(c));
    row.push_back(c.verdict);
    table.row(std::move(row));
    for (const Notice& notice : c.notices)
      if (i > 0 || !is_to_do(notice)) cautions.add(notice_text(notice), number);
    names.push_back(fmt::format("{}  {:9} ", number, c.thread));
    looks.push_back(c.look);
  }
  out += table.text();
  out += paragraph(std::string(legend_text) + (for_load ? "" : " Proof: typical share of the proof load."));
  if (std::any_of(candidates.begin(), candidates.end(), has_none)) out += none_text;
  if (const std::size_t more = answer.candidates.size() - shown; more > 0)
    out += fmt::format("{} less common {} this tool too; --all shows {}.\n", more,
                       more == 1 ? "fastener fits" : "fasteners fit", more == 1 ? "it" : "them");
  out += paragraph(fmt::format("{} Wrench {}.", friction_text(job, answer), wrench_text(candidates)));
  for (const Notice& notice : answer.notices)
    for (std::size_t i = 0; i < shown; ++i) cautions.add(notice_text(notice), std::to_string(i + 1));
  out += "\nTake care\n" + cautions.text(shown);
  if (shown > 1) out += "\nWhich one is it?\n" + looks_of(names, looks);
  return out;
}

std::string page_of(const std::vector<Joint>& joints) {
  Table table({{"#", "", true},
               {"Joint", "", false, 24},
               {"Fastener", "", false, 13},
               {"Torque", "N.m", true},
               {"Low", "kN", true},
               {"Typical", "kN", true},
               {"High", "kN", true},
               {"Yield", "", true},
               {"Suggest", "N.m", true},
               {"Verdict", ""}});
  std::string below;
  for (std::size_t i = 0; i < joints.size(); ++i) {
    const std::string number = std::to_string(i + 1);
    if (const auto* error = std::get_if<Error>(&joints[i].answer)) {
      table.row({number, joints[i].name, "-", "-", "-", "-", "-", "-", "-", "error"});
      below += fmt::format("\n{} {}\n", number, joints[i].name) + paragraph(error->what(), "- ");
      continue;
    }
    const auto& answer = std::get<Clamp>(joints[i].answer);
    const ClampCandidate& c = answer.candidates.front();
    table.row({number, joints[i].name, c.thread + " " + class_text(c), torque_cell(c), load_text(c.clamp_load.low),
               load_text(c.clamp_load.nominal), load_text(c.clamp_load.high), chance_cell(c.chance_of_yield),
               suggested_cell(c), c.verdict});
    below += fmt::format("\n{} {}\n", number, joints[i].name);
    below += paragraph(c.summary, "- ") + paragraph(c.meaning, "- ") +
             paragraph(suggestion_text(joints[i].job, c), "- ") + cases_text(c);
    if (answer.candidates.size() > 1)
      below +=
          paragraph(fmt::format("{} other fasteners fit this tool; {} is the most common. Name the thread to be sure.",
                                answer.candidates.size() - 1, c.thread),
                    "- ");
    for (const Notice& notice : c.notices) below += paragraph(notice_text(notice), "- ");
    for (const Notice& notice : answer.notices)
      if (!cautions::is_one(notice.code)) below += paragraph(notice_text(notice), "- ");
  }
  std::string out = table.text();
  out += paragraph(std::string(legend_text) + " A ? marks an assumed class.");
  const auto has_none_here = [](const Joint& joint) {
    const auto* answer = std::get_if<Clamp>(&joint.answer);
    return answer && has_none(answer->candidates.front());
  };
  if (std::any_of(joints.begin(), joints.end(), has_none_here)) out += none_text;
  out += below;
  // What holds for every joint is said once.
  for (const Joint& joint : joints)
    if (const auto* answer = std::get_if<Clamp>(&joint.answer)) {
      out += "\nTake care\n";
      for (const Notice& notice : answer->notices)
        if (cautions::is_one(notice.code)) out += paragraph(notice_text(notice), "- ");
      break;
    }
  return out;
}

}  // namespace tauten::command
