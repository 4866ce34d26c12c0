// The pages of a job sheet, in the order of the work. Figures are the answers of questions.
#include <algorithm>
#include <cmath>
#include <ctime>
#include <functional>
#include <map>

#include "shared/clamp_inputs.hpp"
#include "shared/free_inputs.hpp"
#include "shared/pages.hpp"
#include "shared/pattern_inputs.hpp"
#include "shared/questions.hpp"
#include "shared/reach_inputs.hpp"
#include "shared/sequence_inputs.hpp"
#include "shared/thread_inputs.hpp"
#include "shared/turn_inputs.hpp"
#include "sheet/sheet.hpp"
#include "tauten/base/caution.hpp"
#include "tauten/friction/condition.hpp"
#include "tauten/question/pattern_page.hpp"
#include "tauten/question/sequence_page.hpp"
#include "tauten/question/workings/clamp_conditions.hpp"
#include "tauten/question/workings/clamp_verdict.hpp"

namespace tauten::sheet {

namespace {

void add_all(SaidWords& to, const SaidWords& from, std::initializer_list<std::string_view> without = {}) {
  for (const shared::Assignment& pair : from.said)
    if (std::find(without.begin(), without.end(), pair.key) == without.end() && !shared::has(to.said, pair.key))
      to.add(pair.key.data(), std::string(pair.value.text));
}

/// \return what somebody types to be given the figure once more
std::string command_of(const char* question, const SaidWords& words) {
  std::string text = std::string("tauten ") + question;
  const auto keys = shared::try_question(question).value()->inputs();
  for (const shared::Assignment& pair : words.said) {
    const bool is_flag = std::any_of(keys.begin(), keys.end(), [&](const shared::InputFacts* key) {
      return pair.key == key->option() && key->takes == shared::Takes::flag;
    });
    const std::string value(pair.value.text);
    const bool quoted = value.find_first_of(" ;'*") != std::string::npos;
    text += " --" + std::string(pair.key);
    if (!is_flag) text += quoted ? " \"" + value + "\"" : " " + value;
  }
  return text;
}

/// The hazards among notices.
std::string hazards_of(const std::vector<Notice>& notices, std::initializer_list<std::string_view> without = {}) {
  std::string text;
  for (const Notice& notice : notices)
    if (tauten::kind_of(notice.code, notice.is_estimate) == NoticeKind::hazard &&
        std::find(without.begin(), without.end(), notice.code) == without.end() &&
        text.find(notice.text) == std::string::npos)
      text += (text.empty() ? "" : " ") + notice.text;
  return text;
}

std::string joined(const std::vector<std::string>& parts, const char* between = ", ") {
  std::string text;
  for (const std::string& part : parts) text += (text.empty() ? "" : between) + part;
  return text;
}

/// Those that are there, one after another.
std::string joined_with_space(std::initializer_list<std::string> sentences) {
  std::string text;
  for (const std::string& one : sentences)
    if (!one.empty()) text += (text.empty() ? "" : " ") + one;
  return text;
}

std::string now() {
  const std::time_t seconds = std::time(nullptr);
  std::tm parts{};
  localtime_r(&seconds, &parts);
  char text[32];
  std::strftime(text, sizeof text, "%Y-%m-%d %H:%M", &parts);
  return text;
}

/// One joint with all its answers.
struct Worked {
  const SheetJoint* joint = nullptr;
  const SheetWrench* wrench = nullptr;
  std::string torque;  ///< full torque, as it is written on the sheet
  shared::ClampAnswer clamp;
  shared::SequenceAnswer sequence;
  shared::PatternAnswer pattern;
  shared::ThreadAnswer thread;
  std::optional<shared::FreeAnswer> free;
  std::optional<TurnAnswer> turn;
  std::vector<shared::ReachAnswer> settings;  ///< of each pass

  const ClampCandidate& bolt() const { return clamp.candidates.front(); }
  bool is_suggested() const { return joint->maker_torque.empty(); }
  std::string source() const {
    if (is_suggested()) return "suggested by this sheet, no figure of the maker was given";
    return joint->maker_source.empty() ? "figure of the maker" : joint->maker_source;
  }
  std::string nut() const { return joint->turned.empty() ? "nut" : joint->turned; }
  bool turns_head() const { return nut().find("head") != std::string::npos; }
  bool left_hand() const { return joint->direction.starts_with("left"); }
  bool has(std::string_view notice) const {
    return std::any_of(sequence.notices.begin(), sequence.notices.end(),
                       [&](const Notice& one) { return one.code == notice; });
  }
  /// In which turn of a pass a bolt is tightened, alone or with others at once.
  int turn_of(int bolt) const {
    for (std::size_t i = 0; i < sequence.sets.size(); ++i)
      if (std::find(sequence.sets[i].begin(), sequence.sets[i].end(), bolt) != sequence.sets[i].end())
        return static_cast<int>(i) + 1;
    return sequence.labels[static_cast<std::size_t>(bolt) - 1];
  }
  /// Whether fluid may be behind it although nothing was given about pressure.
  bool may_hold_pressure() const {
    return !sequence.job.pressurised && (has(cautions::pressurised_flange.code) || !joint->gasket.empty());
  }
};

class Composer {
 public:
  Composer(const SheetPlan& plan, const std::string& time) : plan_(plan), time_(time) {
    for (const SheetJoint& joint : plan.joints) {
      if (!joint.maker_torque.empty()) units_.take_unit_of(joint.maker_torque);
      for (const SaidWords* words : {&joint.torque, &joint.reach, &joint.free})
        for (const shared::Assignment& pair : words->said) units_.take_unit_of(pair.value.text);
    }
    for (const SheetJoint& joint : plan.joints) work_out(joint);
  }

  Sheet sheet() {
    Sheet out;
    out.title = plan_.title.empty() ? "Job sheet" : plan_.title;
    out.subtitle = joined({plan_.place, plan_.machine}, plan_.place.empty() || plan_.machine.empty() ? "" : ": ");
    out.note = plan_.note;
    out.stamp = "Printed " + time_ + ", tauten " TAUTEN_VERSION ", inputs " + plan_.fingerprint;
    out.sections = {start(), undo(), look(), assemble(), check(), record(), origins()};
    return out;
  }

 private:
  template <class Answer>
  Answer ask(const char* question, Outcome<Answer> (*answer)(const shared::Call&), const SaidWords& words,
             const SheetJoint& joint, const std::string& figure,
             const std::function<std::string(const Answer&)>& shown) {
    auto found = answer(words.said);
    if (!found)
      throw Error(found.error().argument(),
                  ("joint " + in_quotes(joint.name) + ", " + question + ": " + found.error().what()).c_str());
    if (!figure.empty()) ledger_.push_back({joint.name, figure, shown(*found), command_of(question, words)});
    return std::move(*found);
  }
  static std::string in_quotes(const std::string& name) { return tauten::detail::shown(name); }

  void work_out(const SheetJoint& joint) {
    Worked& w = worked_.emplace_back();
    w.joint = &joint;
    for (const SheetWrench& wrench : plan_.wrenches)
      if (wrench.name == joint.wrench) w.wrench = &wrench;
    if (w.wrench == nullptr && !joint.wrench.empty())
      throw Error("wrench", ("joint " + in_quotes(joint.name) + ": there is no [[wrench]] with the name " +
                             in_quotes(joint.wrench))
                                .c_str());
    const auto first = [&](const shared::ClampAnswer& answer) {
      return units_.settable(answer.candidates.front().torque);
    };
    w.torque = joint.maker_torque;
    if (w.is_suggested()) {
      SaidWords fastener;
      add_all(fastener, joint.torque, {"torque", "specified"});
      const auto wanted =
          ask<shared::ClampAnswer>("torque", shared::try_torque_for, fastener, joint, "Full torque, suggested", first);
      w.torque = first(wanted);
    }
    SaidWords clamp;
    clamp.add("torque", w.torque);
    add_all(clamp, joint.torque, {"clamp-load", "share"});
    w.clamp =
        ask<shared::ClampAnswer>("clamp", shared::try_clamp, clamp, joint, "Clamp load of a bolt",
                                 [&](const auto& a) { return units_.rough_range(a.candidates.front().clamp_load); });
    if (w.bolt().verdict == Verdict::breaks || w.bolt().verdict == Verdict::strips)
      throw Error("maker-torque", ("joint " + in_quotes(joint.name) + ": " + w.bolt().summary +
                                   " No sheet is made for it; check maker-torque, thread and class")
                                      .c_str());
    if (!w.is_suggested()) w.torque = units_.typed(w.bolt().torque);
    SaidWords pattern;
    pattern.add("pattern", joint.pattern);
    if (!joint.hole.empty()) pattern.add("hole", joint.hole);
    w.pattern = ask<shared::PatternAnswer>("pattern", shared::try_pattern, pattern, joint, "Ways round",
                                           [](const auto& a) { return std::to_string(a.ways_round); });
    SaidWords thread;
    thread.add("thread", w.bolt().thread);
    w.thread = ask<shared::ThreadAnswer>("thread", shared::try_thread, thread, joint, "Pitch",
                                         [&](const auto& a) { return units_.text(a.pitch); });
    SaidWords sequence;
    sequence.add("pattern", joint.pattern);
    sequence.add("torque", w.torque);
    add_all(sequence, joint.sequence, {"pattern", "torque"});
    w.sequence = ask<shared::SequenceAnswer>(
        "sequence", shared::try_sequence, sequence, joint, "Order and passes",
        [](const auto& a) { return order_text(a.order) + "; " + std::to_string(a.passes.size()) + " passes"; });
    for (std::size_t i = 0; i < w.sequence.passes.size(); ++i) {
      SaidWords reach;
      reach.add("torque", pass_torque(w, i));
      add_all(reach, joint.reach, {"torque", "setting"});
      if (w.wrench) add_all(reach, w.wrench->reach, {"torque", "setting"});
      const bool seen = i > 0 && pass_torque(w, i) == pass_torque(w, i - 1);
      w.settings.push_back(ask<shared::ReachAnswer>("reach", shared::try_reach, reach, joint,
                                                    seen ? "" : "Wrench setting, pass " + std::to_string(i + 1),
                                                    [&](const auto& a) { return units_.settable(a.setting); }));
    }
    if (!joint.free.said.empty()) {
      SaidWords free;
      add_all(free, joint.free);
      for (const shared::Assignment& pair : joint.torque.said)
        for (const char* shared_key : {"thread", "class", "socket", "key"})
          if (pair.key == shared_key && !shared::has(free.said, shared_key))
            free.add(shared_key, std::string(pair.value.text));
      if (!shared::has(free.said, "thread")) free.add("thread", w.bolt().thread);
      w.free = ask<shared::FreeAnswer>("free", shared::try_free, free, joint, "Stop torque",
                                       [&](const auto& a) { return units_.settable(stop_of(a)); });
    }
    if (!joint.turn.said.empty()) {
      SaidWords turn;
      add_all(turn, joint.turn);
      for (const shared::Assignment& pair : joint.torque.said)
        for (const char* shared_key : {"thread", "class", "condition", "face-condition"})
          if (pair.key == shared_key && !shared::has(turn.said, shared_key))
            turn.add(shared_key, std::string(pair.value.text));
      if (!shared::has(turn.said, "snug-torque")) turn.add("snug-torque", w.torque);
      w.turn = ask<TurnAnswer>("turn", shared::try_turn, turn, joint, "Angle from snug",
                               [&](const auto& a) { return units_.text(a.handle_angle); });
      // An angle on top of passes that already went beyond snug overtightens every bolt.
      if (std::fabs(w.turn->snug_torque.si - w.bolt().torque.si) > 0.01 * w.bolt().torque.si)
        throw Error("snug-torque", ("joint " + in_quotes(joint.name) + ": the angle counts from " +
                                    units_.text(w.turn->snug_torque) + ", but the passes end at " + w.torque +
                                    "; give the snug torque as maker-torque, or leave snug-torque out")
                                       .c_str());
    }
  }

  /// Where to stop, never above a limit that was given: the first line of the plan, as the page of the fastener has it.
  static Torque stop_of(const shared::FreeAnswer& free) { return free.steps.front().stop_at; }

  std::string pass_torque(const Worked& w, std::size_t i) const {
    const TighteningPass& pass = w.sequence.passes[i];
    return pass.share == 1.0 ? w.torque : units_.settable(pass.torque);
  }

  std::string number(const Worked& w) const { return std::to_string(&w - worked_.data() + 1); }
  std::string title(const Worked& w) const { return number(w) + ". " + w.joint->name; }
  std::string socket(const Worked& w) const { return units_.text(w.bolt().socket); }

  SheetSection start() {
    SheetSection section{"What, where, and before you start", {}};
    SheetBlock joints;
    joints.table = PageTable{"Joints, in the order in which they are undone",
                             {{"No.", "", true},
                              {"Joint", "", false, 18},
                              {"Carries", "", false, 22},
                              {"Bolts", "", false, 14},
                              {"Full torque", "", true},
                              {"From", "", false, 24}},
                             {},
                             {}};
    std::vector<std::string> back;
    for (const Worked& w : worked_) {
      joints.table->rows.push_back(
          {number(w), w.joint->name, w.joint->carries.empty() ? "-" : w.joint->carries,
           std::to_string(w.pattern.count) + " x " + w.bolt().thread + " " + w.bolt().property_class, w.torque,
           w.source()});
      back.insert(back.begin(), number(w));
    }
    if (worked_.size() > 1) joints.table->legend.push_back("Assemble in the order " + joined(back) + ".");
    section.blocks.push_back(std::move(joints));

    SheetBlock before{"Before you start"};
    before.steps.push_back({"Read this sheet to its end before the first nut is turned.",
                            std::string(cautions::eye_protection.text) + " " + cautions::line_of_slip.text});
    before.steps.push_back({"Switch the machine off, lock it and hang up your tag."});
    before.steps.push_back({"Try to start it: it must stay dead."});
    for (const std::string& line : plan_.before) before.steps.push_back({line});
    if (std::any_of(worked_.begin(), worked_.end(), [](const Worked& w) { return w.sequence.job.pressurised; }))
      before.steps.push_back({"Shut off, vent and drain. Prove that the pressure is zero.",
                              "A gauge at zero may be broken or blocked: see an open vent run dry."});
    before.steps.push_back({"Let it cool until a hand can rest on it."});
    before.steps.push_back({"Support what the joints carry.", cautions::stored_energy.text});
    section.blocks.push_back(std::move(before));

    SheetBlock fetch{"Fetch"};
    std::map<std::string, std::vector<std::string>> sockets;
    for (const Worked& w : worked_) sockets[socket(w)].push_back(number(w));
    for (const auto& [size, numbers] : sockets)
      fetch.steps.push_back(
          {"Socket or spanner " + size + ", and one to hold the other side (joint " + joined(numbers) + ")."});
    fetch.steps.push_back({"Breaker bar with these sockets, for loosening.",
                           "A torque wrench is for tightening; loosen with it only if its maker allows it."});
    if (std::any_of(worked_.begin(), worked_.end(), [](const Worked& w) { return w.turn.has_value(); }))
      fetch.steps.push_back({"Angle gauge."});
    for (const SheetWrench& wrench : plan_.wrenches) fetch.steps.push_back(wrench_step(wrench));
    for (const Worked& w : worked_) {
      if (w.wrench == nullptr)
        fetch.steps.push_back({"Torque wrench whose range holds " + units_.settable(w.settings.front().setting) +
                               " to " + units_.settable(w.settings.back().setting) + " (joint " + number(w) + ")."});
      if (!w.settings.front().job.extensions.empty()) {
        std::vector<std::string> links;
        for (const ExtensionLink& link : w.settings.front().job.extensions)
          links.push_back(units_.typed(link.length) +
                          (link.angle.si != 0 ? " at " + units_.text(link.angle) : " in line"));
        fetch.steps.push_back(
            {"Extension " + joined(links) + " (joint " + number(w) + "): the wrench settings below hold for it only."});
      }
      if (!w.joint->new_parts.empty())
        fetch.steps.push_back({"New for joint " + number(w) + ": " + joined(w.joint->new_parts) + "."});
      if (!w.joint->lubricate.empty())
        fetch.steps.push_back({"For joint " + number(w) + ": " + w.joint->lubricate + "."});
    }
    for (const std::string& line : plan_.fetch) fetch.steps.push_back({line});
    section.blocks.push_back(std::move(fetch));
    return section;
  }

  /// A wrench whose range holds every setting, or what it does not hold.
  SheetStep wrench_step(const SheetWrench& wrench) const {
    double low = 0, high = 0;
    std::vector<std::string> numbers;
    std::optional<Torque> scale_low, scale_high;
    for (const Worked& w : worked_) {
      if (w.wrench != &wrench) continue;
      numbers.push_back(number(w));
      for (const shared::ReachAnswer& reach : w.settings) {
        low = low == 0 ? reach.setting.si : std::min(low, reach.setting.si);
        high = std::max(high, reach.setting.si);
        scale_low = reach.job.wrench.scale_low;
        scale_high = reach.job.wrench.scale_high;
      }
    }
    SheetStep step{"Torque wrench " + wrench.name};
    if (!wrench.serial.empty()) step.text += ", no. " + wrench.serial;
    if (!wrench.due.empty()) step.text += ", calibration due " + wrench.due;
    if (numbers.empty()) return step.text += ".", step;
    step.text += ": settings from " + units_.settable(Torque(low)) + " to " + units_.settable(Torque(high)) +
                 " (joint " + joined(numbers) + ").";
    std::string outside;
    if (scale_low && low < scale_low->si)
      outside = units_.settable(Torque(low)) + " is below its lowest mark, " + units_.text(*scale_low);
    if (scale_high && high > scale_high->si)
      outside += (outside.empty() ? "" : "; ") + units_.settable(Torque(high)) + " is above its scale, " +
                 units_.text(*scale_high);
    if (!outside.empty()) step.caution = outside + ". Fetch another wrench for these settings.";
    if (!wrench.due.empty())
      step.caution += (step.caution.empty() ? "" : " ") + std::string("Do not use it after that date.");
    return step;
  }

  SheetBlock sketch(const Worked& w, bool passes) const {
    const bool with_turns = passes && w.pattern.count <= 20;  // more words would stand on one another
    PatternSketch sketch = sketch_of(w.sequence.job, w.sequence);
    sketch.mark = "mark";
    sketch.words.clear();
    for (int bolt = 1; with_turns && bolt <= w.pattern.count; ++bolt)
      sketch.words.push_back("turn " + std::to_string(w.turn_of(bolt)));
    if (w.pattern.circle_diameter.si == w.pattern.circle_diameter.si) {
      sketch.circle = w.pattern.circle_diameter.si;
      sketch.centre = {w.pattern.centre[0].si, w.pattern.centre[1].si};
    }
    SheetBlock block;
    block.drawing = {sketch_text(sketch), sketch_svg(sketch)};
    block.lines.push_back(
        "Position 1: " +
        (w.joint->mark.empty() ? std::string("make a mark, and write here where: ____________________")
                               : w.joint->mark) +
        ". Seen from the side that is tightened" + (with_turns ? "; 'turn' is the order within a pass." : "."));
    return block;
  }

  static bool is_about_bar(const std::string& action) { return action.starts_with("On a breaker bar"); }

  SheetSection undo() {
    SheetSection section{"Undo", {}};
    for (const Worked& w : worked_) {
      SheetBlock block{title(w)};
      block.new_page = &w != &worked_.front();
      std::string energy = cautions::stored_energy.text;
      for (const std::string& line : w.joint->unload) block.steps.push_back({line, std::exchange(energy, "")});
      block.steps.push_back(
          {"Mark part and base at position 1" +
               (w.joint->mark.empty() ? std::string(".") : ": " + w.joint->mark + ".") +
               (w.pattern.ways_round == 1 ? " The holes let it go back one way only."
                                          : " The holes let it go back in " + std::to_string(w.pattern.ways_round) +
                                                " ways; only the mark shows the old one."),
           energy});
      std::vector<std::string> steps = undoing_steps(w.sequence.job, w.sequence);
      if (w.sequence.job.pressurised) {  // before any wrench is on
        block.steps.push_back({steps.front(), hazards_of(w.sequence.notices, {"stored_energy", "order_goes_round"})});
        steps.erase(steps.begin());
      } else if (w.may_hold_pressure()) {
        block.steps.push_back({"Make sure that nothing is behind the joint.", cautions::pressurised_flange.text});
      }
      std::string turn = "Socket " + socket(w) + " on the " + w.nut() + ", loosen " +
                         (w.left_hand() ? "CLOCKWISE: left-hand thread" : "counter-clockwise") + ".";
      if (!w.joint->held.empty()) turn += " Hold the " + w.joint->held + ".";
      block.steps.push_back({turn, cautions::line_of_slip.text});
      if (w.free) {
        const Page page = shared::page_of(*w.free, units_);
        std::string stop = page.headline;
        if (const auto at = stop.find(", your limit"); at != std::string::npos)
          stop.replace(at, std::string_view(", your limit").size(), ", the limit given for this job");
        for (const std::string& action : page.actions)
          if (is_about_bar(action)) stop += " " + action;
        block.steps.push_back({"Pull no harder than this. " + stop,
                               "That is the torque at the fastener, with this socket. A bolt that did not move "
                               "may be close to breaking: stop there."});
      }
      for (const std::string& step : steps) block.steps.push_back({step});
      if (w.pattern.count > 2)
        block.steps.back().caution = "Stand clear of where the part drops or swings when the last two come out.";
      for (const std::string& line : w.joint->take_off) block.steps.push_back({line});
      block.steps.push_back({"Keep the parts of this joint together, marked as joint " + number(w) + "."});
      section.blocks.push_back(std::move(block));
      section.blocks.push_back(sketch(w, false));
      if (w.free) {
        shared::FreeAnswer in_full = *w.free;
        in_full.instructions = true;
        const Page page = shared::page_of(in_full, units_);
        SheetBlock stuck{"When one does not move: " + w.joint->name};
        std::vector<std::string> cautions;
        const bool flange = w.sequence.job.pressurised || w.may_hold_pressure();
        for (const std::string& caution : page.cautions)
          if (caution != cautions::stored_energy.text && (flange || caution != cautions::pressurised_flange.text))
            cautions.push_back(caution);
        stuck.steps.push_back({"Stop at " + units_.settable(stop_of(*w.free)) +
                                   ". Take the lines of the plan from the top, each only as far as it says.",
                               joined(cautions, " ")});
        for (const std::string& action : page.actions)  // what is not about how to ask, and does not stand above
          if (action.find('_') == std::string::npos && !action.starts_with("Stop at") && !action.starts_with("Next:") &&
              !action.starts_with("Check which way") && !is_about_bar(action))
            stuck.steps.push_back({action});
        for (const PageList& list : page.lists)
          if (list.title == "Take care in the later steps")
            stuck.steps.push_back(
                {"Before a line with heat, fluid, impact or a cut: read this and follow it.", joined(list.items, " ")});
        for (const PageTable& table : page.tables)
          if (table.title == "The plan") {
            stuck.table = table;  // without the column that points to the next line: nothing has been tried yet
            stuck.table->columns.erase(stuck.table->columns.begin());
            for (auto& row : stuck.table->rows) row.erase(row.begin());
          }
        section.blocks.push_back(std::move(stuck));
      } else {
        SheetBlock stuck{"When one does not move: " + w.joint->name};
        stuck.steps.push_back({"Stop at " + w.torque +
                                   ", the torque that it is tightened with. Brush the thread, soak it with penetrating "
                                   "fluid, wait a day and try once more; then ask who is in charge.",
                               "No longer lever and no pipe: it may break."});
        section.blocks.push_back(std::move(stuck));
      }
    }
    return section;
  }

  SheetSection look() {
    SheetSection section{"Look at the parts: old beside new", {}};
    for (const Worked& w : worked_) {
      SheetBlock block{title(w)};
      const ClampCandidate& bolt = w.bolt();
      block.table = PageTable{{}, {{"Compare", "", false, 22}, {"Must be", "", false, 40}, {"Old"}, {"New"}}, {}, {}};
      block.to_fill = true;
      const auto row = [&](const std::string& what, const std::string& must) {
        if (!must.empty()) block.table->rows.push_back({what, must, "", ""});
      };
      row("Holes", tauten::detail::pattern_words(w.pattern, units_) +
                       (w.pattern.job.hole ? ", diameter " + units_.text(*w.pattern.job.hole) : std::string()));
      row("Way round",
          w.pattern.ways_round == 1 ? "one way only" : std::to_string(w.pattern.ways_round) + " ways: by the mark");
      row("Mark on the head", bolt.property_class + (bolt.class_assumed ? " (assumed: there was no mark)" : ""));
      row("Thread", bolt.thread + ", pitch " + units_.text(w.thread.pitch) + " by the gauge" +
                        (w.left_hand() ? ", LEFT-HAND" : ""));
      row("Length", w.joint->length);
      for (const ClassLoads& one : w.thread.classes)
        if (one.property_class == bolt.property_class && !one.nut_class.empty())
          row("Nut", "class " + one.nut_class + " or higher");
      row("Washers", w.joint->washers);
      row("Locking", w.joint->locking);
      row("Gasket", w.joint->gasket);
      for (const std::string& line : w.joint->look) row("Also", line);
      if (!w.joint->not_reused.empty())
        block.steps.push_back({"Not used again: " + joined(w.joint->not_reused) + ".", cautions::replace_used_up.text});
      section.blocks.push_back(std::move(block));
    }
    return section;
  }

  /// What is on the threads, by the library's name for it.
  static std::string condition_of(const Worked& w) {
    return tauten::detail::conditions_of(w.clamp.job).value().thread.key;
  }

  /// What other things on the threads would make of the same torque.
  std::string lubrication(const Worked& w) {
    const std::string on = condition_of(w);
    std::vector<const char*> likely = {"dry", "oiled", "moly-paste"};
    if (w.bolt().property_class.starts_with("A")) likely = {"stainless", "stainless-oiled", "stainless-paste"};
    if (on.starts_with("zinc")) likely = {"zinc", "zinc-oiled", "moly-paste"};
    if (on.starts_with("galvanised")) likely = {"galvanised", "galvanised-waxed", "moly-paste"};
    std::vector<std::string> others;
    for (const char* condition : likely) {
      if (on == condition) continue;
      SaidWords words;
      words.add("torque", w.torque);
      words.add("condition", condition);
      add_all(words, w.joint->torque, {"clamp-load", "share", "face-condition", "specified"});
      const auto found = shared::try_clamp(words.said);
      if (!found) continue;
      const ClampCandidate& bolt = found->candidates.front();
      ledger_.push_back({w.joint->name, "Clamp load if " + std::string(condition),
                         units_.rough(bolt.clamp_load.nominal), command_of("clamp", words)});
      others.push_back(condition + (bolt.clamp_load.nominal.si > 0 ? " " + units_.rough(bolt.clamp_load.nominal) : "") +
                       " (" + bolt.verdict + ")");
    }
    return others.empty() ? "" : "The same torque on threads that are otherwise: " + joined(others, "; ") + ".";
  }

  SheetSection assemble() {
    SheetSection section{"Clean, lubricate and assemble", {}};
    section.blocks.push_back(stop_signs());
    for (auto at = worked_.rbegin(); at != worked_.rend(); ++at) {
      const Worked& w = *at;
      const ClampCandidate& bolt = w.bolt();
      SheetBlock block{title(w)};
      block.new_page = &w != &worked_.back();
      block.lines.push_back((w.turn ? "Snug torque " : "Full torque ") + w.torque + ", " + w.source() + ". It leaves " +
                            units_.rough_range(bolt.clamp_load) + " clamp load in a bolt, " + bolt.verdict + ".");
      if (!w.is_suggested() && bolt.suggested_torque.si > 0)
        block.lines.push_back("Suggested by this sheet for comparison: " + units_.settable(bolt.suggested_torque) +
                              (bolt.chance_of_yield > accepted_chance_of_yield
                                   ? ". Ask the maker before using theirs: it may be for another bolt or lubricant."
                                   : ". The maker's figure takes precedence."));
      block.steps.push_back({"Clean threads and faces under head and nut with brush and cloth; blow out blind holes.",
                             cautions::eye_protection.text});
      if (!w.joint->gasket.empty())
        block.steps.push_back({"Take all of the old gasket off both sealing faces without scratching them."});
      block.steps.push_back({w.joint->lubricate.empty()
                                 ? "Leave the threads as the torque takes them: " + condition_of(w) + "."
                                 : "Lubricate: " + w.joint->lubricate + "; nothing else.",
                             lubrication(w)});
      for (const std::string& line : w.joint->reload) block.steps.push_back({line});
      if (!w.joint->new_parts.empty()) block.steps.push_back({"Fit new: " + joined(w.joint->new_parts) + "."});
      block.steps.push_back(
          {"Fit the part with its mark at position 1" +
           (w.joint->gasket.empty() ? std::string(".") : "; gasket centred, dry unless its maker says otherwise.")});
      if (!w.joint->washers.empty()) block.steps.push_back({"Washers: " + w.joint->washers + "."});
      if (!w.joint->load_state.empty())
        block.steps.push_back({"Load state for tightening: " + w.joint->load_state + "."});
      block.steps.push_back({"Run all " + std::string(w.turns_head() ? "bolts" : w.nut() + "s") + " down by hand" +
                                 (w.left_hand() ? ", COUNTER-CLOCKWISE: left-hand thread" : "") +
                                 ", then snug them in the order below. The gap must be even at four points.",
                             "One that does not run by hand comes off again: clean or replace it."});
      const std::string verdict = bolt.verdict == Verdict::within_limits ? "" : bolt.meaning;
      std::string tighten = "Socket " + socket(w) + " on the " + w.nut() + ", tighten " +
                            (w.left_hand() ? "COUNTER-CLOCKWISE: left-hand thread" : "clockwise") + ", ";
      if (!w.joint->held.empty()) tighten += "hold the " + w.joint->held + ", ";
      tighten += "pass by pass as in the table. Pull slowly and stop at the click. Tick each bolt in the record.";
      const std::string order =
          hazards_of(w.sequence.notices, {"stored_energy", "pressurised_flange", "pressure_trapped"});
      block.steps.push_back({tighten, joined_with_space({verdict, hazards_of(bolt.notices), order})});
      if (!w.joint->gasket.empty()) block.steps.push_back({"After each pass: the gap is even at four points."});
      if (!w.joint->final_state.empty())
        block.steps.push_back({"Before the last pass: " + w.joint->final_state + ".",
                               "Tightened fully in another position, the part stays strained."});
      section.blocks.push_back(std::move(block));
      section.blocks.push_back(passes(w));
      if (w.turn) {
        const Page page = shared::page_of(*w.turn, units_);
        SheetBlock turn{"Then turn by angle"};
        turn.lines.push_back(page.headline);
        for (std::size_t i = 0; i < page.actions.size(); ++i)
          turn.steps.push_back({page.actions[i], i == 0 ? joined(page.cautions, " ") : ""});
        section.blocks.push_back(std::move(turn));
      }
      if (w.joint->release.empty()) continue;
      SheetBlock done{"When all passes are done"};
      for (const std::string& line : w.joint->release) done.steps.push_back({line});
      section.blocks.push_back(std::move(done));
    }
    return section;
  }

  /// \return "1 5; 3 7; 2 6; 4 8"
  static std::string sets_text(const std::vector<std::vector<int>>& sets) {
    std::vector<std::string> texts;
    for (const std::vector<int>& set : sets) texts.push_back(order_text(set));
    return joined(texts, "; ");
  }

  SheetBlock passes(const Worked& w) const {
    SheetBlock block = sketch(w, true);
    block.title = "Tighten: " + title(w);  // it may be on a page of its own
    block.to_fill = true;
    block.table = PageTable{
        "Passes" + (w.wrench ? ": " + w.wrench->name : std::string()),
        {{"Pass"}, {"At the fastener", "", true}, {"Set the wrench to", "", true}, {"Order", "", false, 40}, {"Done"}},
        {},
        {}};
    const std::size_t own = w.sequence.passes.size() - w.sequence.job.rounds;
    for (std::size_t i = 0; i < w.sequence.passes.size(); ++i)
      block.table->rows.push_back(
          {i < own ? std::to_string(i + 1) : "settling round", pass_torque(w, i),
           units_.settable(w.settings[i].setting),
           i < own && !w.sequence.sets.empty() ? sets_text(w.sequence.sets) : order_text(w.sequence.passes[i].order),
           ""});
    if (!w.sequence.sets.empty())
      block.table->legend.push_back("Bolts between two semicolons are tightened at once, each with a tool of its own.");
    if (!w.settings.front().job.extensions.empty())
      block.table->legend.push_back(
          "The settings hold for this wrench with this extension, at its angle and with the hand on the mark.");
    if (w.sequence.job.rounds > 0)
      block.table->legend.push_back("Repeat the settling round until no bolt turns any more.");
    return block;
  }

  static SheetBlock stop_signs() {
    SheetBlock block;
    block.table = PageTable{
        "Stop, whatever the torque, in every joint", {{"When", "", false, 46}, {"Then", "", false, 46}}, {}, {}};
    block.table->rows = {
        {"a bolt keeps turning and the torque no longer rises: it yields or the thread strips",
         "Take it out; replace bolt and nut."},
        {"it squeals, jerks or gets hot: the threads seize", "Back off, clean, lubricate again, begin again."},
        {"the torque comes in less turn than at its neighbours: it bottoms or binds",
         "Take it out; look at length, hole and thread."},
        {"the gap is no longer even, or a gasket moves",
         "Ease all by a quarter turn in the same order; begin again with pass 1."},
        {"a wrench was set wrong and a bolt got too much",
         "Do not just back it off: replace it, and say so in the record."}};
    return block;
  }

  SheetSection check() {
    SheetSection section{"Check", {}};
    for (const Worked& w : worked_) {
      SheetBlock block{title(w)};
      block.to_fill = true;
      block.table = PageTable{
          "Gap or height at four points", {{"At position", "", false}, {"When snug"}, {"After the last pass"}}, {}, {}};
      const int n = w.pattern.count;
      for (int quarter = 0; quarter < std::min(4, n); ++quarter)
        block.table->rows.push_back({std::to_string(1 + quarter * n / std::min(4, n)), "", ""});
      block.steps.push_back({std::string(w.turn ? "Every bolt was turned by its angle."
                                                : "Settling round at the full setting: no bolt turned.") +
                             " Yes / no, and which: ____________________"});
      const std::string hot =
          w.joint->gasket.empty() ? "" : "Never retighten a gasketed joint that is hot or under pressure.";
      if (w.turn)  // a wrench at the snug torque shows nothing of what an angle gave
        block.steps.push_back({w.joint->retighten.empty() ? "Do not retighten by torque what was tightened by angle."
                                                          : "Retighten " + w.joint->retighten + ".",
                               hot});
      else
        block.steps.push_back(
            {(w.joint->retighten.empty() ? std::string("Retightening: as the maker asks. When: ____________________.")
                                         : "Retighten " + w.joint->retighten + ".") +
                 " Set the wrench to " + units_.settable(w.settings.back().setting) +
                 (w.settings.back().job.extensions.empty() ? ", as in the last pass."
                                                           : ", with the extension, as in the last pass.") +
                 " Done on, initials: ____________________",
             hot});
      section.blocks.push_back(std::move(block));
    }
    if (!plan_.after.empty()) {
      SheetBlock after{"Last"};
      for (const std::string& line : plan_.after) after.steps.push_back({line});
      section.blocks.push_back(std::move(after));
    }
    return section;
  }

  SheetSection record() {
    SheetSection section{"Record", {}};
    for (const Worked& w : worked_) {
      SheetBlock block{title(w)};
      block.to_fill = true;
      PageTable table{{}, {{"Position", "", true}, {"Turn", "", true}}, {}, {}};
      const std::size_t own = w.sequence.passes.size() - w.sequence.job.rounds;
      for (std::size_t i = 0; i < w.sequence.passes.size(); ++i)
        table.columns.push_back({(i < own ? "Pass " + std::to_string(i + 1) : std::string("Settling")),
                                 "set " + units_.settable(w.settings[i].setting)});
      table.columns.push_back({"Angle or length"});
      table.columns.push_back({"Initials"});
      for (int i = 1; i <= w.pattern.count; ++i) {
        table.rows.emplace_back(table.columns.size());
        table.rows.back()[0] = std::to_string(i);
        table.rows.back()[1] = std::to_string(w.turn_of(i));
      }
      block.table = std::move(table);
      section.blocks.push_back(std::move(block));
    }
    SheetBlock boxes;
    boxes.boxes = {"Deviations from this sheet, and why", "Parts that were replaced",
                   "Wrench, serial number, calibration due", "Done by: name, date, signature",
                   "Checked by: name, date, signature"};
    section.blocks.push_back(std::move(boxes));
    return section;
  }

  SheetSection origins() {
    SheetSection section{"Where the figures come from", {}};
    SheetBlock block;
    block.lines = {"Each command shows its answer, and with explain in front of the question how it came about.",
                   cautions::no_release.text};
    block.table = PageTable{
        {},
        {{"Joint", "", false, 16}, {"Figure", "", false, 18}, {"Value", "", false, 16}, {"Asked with", "", false, 46}},
        {},
        {}};
    block.table->rows = ledger_;
    section.blocks.push_back(std::move(block));
    return section;
  }

  const SheetPlan& plan_;
  std::string time_;
  PageUnits units_;
  std::vector<Worked> worked_;
  std::vector<std::vector<std::string>> ledger_;
};

}  // namespace

Sheet sheet_of(const SheetPlan& plan, const std::string& time) {
  return Composer(plan, time.empty() ? now() : time).sheet();
}

}  // namespace tauten::sheet
