#include "command/clamp_text.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <span>

#include "command/table.hpp"
#include "tauten/base/caution.hpp"
#include "tauten/base/quantity_text.hpp"

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

std::string right_text(const ClampCandidate& c) {
  if (!detail::is_given(c.right_torque.si))
    return fmt::format("No torque is right for {}, class {}.", c.thread, c.property_class);
  std::string text =
      fmt::format("Right torque for {}, class {}: {} N.m; it leaves {} to {} kN, typically {} kN.", c.thread,
                  c.property_class, torque_text(c.right_torque), load_text(c.right_clamp_load.low),
                  load_text(c.right_clamp_load.high), load_text(c.right_clamp_load.nominal));
  // A steel class is no advice for a stainless joint.
  const bool too_much = c.verdict != "fit" && c.verdict != "slack" && !c.property_class.starts_with('A');
  if (too_much && !c.least_class.empty())
    text += fmt::format(" The lowest class whose utilisation stays below nine tenths of yield at {} N.m is {}.",
                        torque_text(c.torque), c.least_class);
  if (too_much && c.least_class.empty())
    text +=
        fmt::format(" No class of ISO 898-1 stays below nine tenths of yield at {} N.m here.", torque_text(c.torque));
  return text;
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

bool leaves_none(const ClampCandidate& c) { return c.limited_by_strength; }
constexpr const char* none_left = "The mark - stands where the bolt may shear, which leaves no clamp load.\n";

std::string verdict_text(const ClampCandidate& c) { return c.verdict + ". " + c.meaning; }

std::vector<std::string> parts_of(const std::string& look) {
  std::vector<std::string> parts;
  for (std::size_t at = 0; at < look.size();) {
    const std::size_t end = std::min(look.find("; ", at), look.size());
    parts.push_back(look.substr(at, end - at));
    at = end + 2;
  }
  return parts;
}

}  // namespace

std::string standards_text(const std::string& list, std::size_t most) {
  if (list.size() <= most) return list;
  const auto more = std::count(list.begin(), list.end(), ',');
  return more == 0 ? list : fmt::format("{} and {} more", list.substr(0, list.find(',')), more);
}

std::string looks_of(const std::vector<std::pair<std::string, std::string>>& named_looks) {
  std::map<std::string, std::size_t> seen;
  for (const auto& [name, look] : named_looks)
    for (const std::string& part : parts_of(look)) ++seen[part];
  const auto shared = [&](const std::string& part) {
    return named_looks.size() > 1 && seen[part] == named_looks.size();
  };
  std::string out;
  std::string common;
  for (const auto& [name, look] : named_looks) {
    std::string own;
    for (const std::string& part : parts_of(look)) {
      if (!shared(part))
        own += (own.empty() ? "" : "; ") + part;
      else if (&look == &named_looks.front().second)
        common += (common.empty() ? "" : "; ") + part;
    }
    if (!own.empty()) out += paragraph(own, name);
  }
  if (!common.empty()) out += paragraph("All of them: " + common);
  return out;
}

std::string page_of(const ClampJob& job, const Clamp& answer, bool all) {
  const std::size_t shown = all ? answer.candidates.size() : std::min(shown_candidates, answer.candidates.size());
  const std::span candidates(answer.candidates.data(), shown);
  const ClampCandidate& first = candidates.front();
  const bool one_torque = job.torque.si > 0;

  std::string question = job.name.empty() ? "" : job.name + ": ";
  if (one_torque)
    question += fmt::format("{} N.m", number_text(job.torque.shop()));
  else if (job.clamp_load.si > 0)
    question += fmt::format("Torque for {} kN", number_text(job.clamp_load.shop()));
  else if (detail::is_given(job.share))
    question += fmt::format("Torque for {} % of the proof load", number_text(100 * job.share));
  else
    question += "Right torque";
  if (first.socket.si > 0)
    question += fmt::format(" on {} {} mm", job.inner_hexagon ? "hexagon key" : "width across flats",
                            number_text(first.socket.shop()));
  question += ", wrench " + wrench_text(candidates) + ".";
  std::string out = paragraph(question + " " + friction_text(job, answer)) + "\n";

  std::vector<Column> columns = {
      {"#", "", true}, {"Thread", ""}, {"Head or nut", "", false, 20}, {"Class", "", false, 10}};
  if (!one_torque) columns.push_back({"Torque", "N.m", true});
  for (const char* load : {"Low", "Typical", "High"}) columns.push_back({load, "kN", true});
  columns.push_back({"Proof", "%", true});
  columns.push_back({"Yield", "%", true});
  if (one_torque) columns.push_back({"Right", "N.m", true});
  columns.push_back({"Verdict", ""});
  Table table(columns);
  Sayings verdicts;
  Sayings cautions;
  std::vector<std::pair<std::string, std::string>> looks;
  for (std::size_t i = 0; i < shown; ++i) {
    const ClampCandidate& c = candidates[i];
    const std::string number = std::to_string(i + 1);
    std::vector<std::string> row = {number, c.thread, c.head.empty() ? "-" : standards_text(c.head, 20), class_text(c)};
    if (!one_torque) row.push_back(torque_text(c.torque));
    for (const Force load : {c.clamp_load.low, c.clamp_load.nominal, c.clamp_load.high}) row.push_back(load_text(load));
    row.push_back(percent_text(c.proof_share.nominal));
    row.push_back(percent_text(c.yield_utilisation.high));
    if (one_torque) row.push_back(torque_text(c.right_torque));
    row.push_back(c.verdict);
    table.row(std::move(row));
    verdicts.add(verdict_text(c), number);
    for (const Notice& notice : c.notices) cautions.add(notice_text(notice), number);
    looks.emplace_back(fmt::format("{}  {:9} ", number, c.thread), c.look);
  }
  out += table.text();
  out += "Low, Typical, High: clamp load. Proof: typical share of the proof load. Yield: worst case of yield.\n";
  if (std::any_of(candidates.begin(), candidates.end(), leaves_none)) out += none_left;
  if (const std::size_t more = answer.candidates.size() - shown; more > 0)
    out += fmt::format("{} less common {} this tool too; --all shows {}.\n", more,
                       more == 1 ? "fastener fits" : "fasteners fit", more == 1 ? "it" : "them");
  out += "\nVerdict\n" + verdicts.text(shown) + paragraph(right_text(first), "- ");
  for (const Notice& notice : answer.notices)
    for (std::size_t i = 0; i < shown; ++i) cautions.add(notice_text(notice), std::to_string(i + 1));
  out += "\nTake care\n" + cautions.text(shown);
  if (shown > 1) out += "\nWhich one is it?\n" + looks_of(looks);
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
               {"Yield", "%", true},
               {"Right", "N.m", true},
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
    table.row({number, joints[i].name, c.thread + " " + class_text(c), torque_text(c.torque),
               load_text(c.clamp_load.low), load_text(c.clamp_load.nominal), load_text(c.clamp_load.high),
               percent_text(c.yield_utilisation.high), torque_text(c.right_torque), c.verdict});
    below += fmt::format("\n{} {}\n", number, joints[i].name);
    below += paragraph(verdict_text(c), "- ") + paragraph(right_text(c), "- ");
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
  out += "Low, Typical, High: clamp load. Yield: worst corner of yield. A ? marks an assumed class.\n";
  const auto leaves_none_here = [](const Joint& joint) {
    const auto* answer = std::get_if<Clamp>(&joint.answer);
    return answer && leaves_none(answer->candidates.front());
  };
  if (std::any_of(joints.begin(), joints.end(), leaves_none_here)) out += none_left;
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
