// Tightening torques by the table.
#include <algorithm>
#include <unordered_map>

#include "tauten/question/workings/clamp_candidate.hpp"

#include "rows/asked_rows.hpp"
#include "shared/clamp_inputs.hpp"

namespace tauten::shared {

namespace {

/// What a row answers: the most common fastener that fits, and how many there are.
struct ClampRow : ClampCandidate {
  double candidates = 0;
  Band<double> thread_friction;
  Band<double> bearing_friction;

  template <class V>
  static void fields(V&& visit) {
    ClampCandidate::fields([&](const char* name, auto member) { visit(name, member); });
    visit("candidates", &ClampRow::candidates);
    visit("thread_friction", &ClampRow::thread_friction);
    visit("bearing_friction", &ClampRow::bearing_friction);
  }
};

ClampRow row_of(const ClampAnswer& answer, const ClampCandidate& candidate) {
  ClampRow row{candidate, static_cast<double>(answer.candidates.size()), answer.thread_friction,
               answer.bearing_friction};
  row.notices.insert(row.notices.end(), answer.notices.begin(), answer.notices.end());
  return row;
}

Outcome<ClampRow> row_of(const Outcome<ClampAnswer>& answer) {
  if (!answer) return answer.error();
  return row_of(*answer, answer->candidates.front());
}

Outcome<ClampRow> try_clamp_row(const Call& call) { return row_of(try_clamp(call)); }
Outcome<ClampRow> try_torque_row(const Call& call) { return row_of(try_torque_for(call)); }

/// Reads quantities with the unit that the last one had, without looking it up again.
class QuantityReader {
 public:
  explicit QuantityReader(Dim dimension) : dimension_(dimension) {}

  /// \return the value in SI; NaN for what the key itself must refuse
  double read(std::string_view text) {
    double value = 0;
    const std::size_t length = tauten::detail::read_number(text, value);
    if (length == 0) return absent;
    if (text.substr(length) != unit_ || unit_.empty()) {
      const Outcome<double> scale = try_read_quantity("", "1" + std::string(text.substr(length)), dimension_);
      if (!scale) return absent;
      unit_ = text.substr(length);
      scale_ = *scale;
    }
    return value * scale_;
  }

 private:
  Dim dimension_;
  std::string unit_;
  double scale_ = 1;
};

/// Rows that say the same but for the torque share everything that is looked up; the torque only needs arithmetic.
class ClampRows : public RowAnswers {
 public:
  ClampRows(const RowQuestion& question, std::span<const std::size_t> wanted, std::size_t threads)
      : question_(question),
        torque_key_(static_cast<std::size_t>(key_called(question, "torque"))),
        most_remembered_(std::clamp<std::size_t>(8192 / threads, 16, 2048)) {
    for (const std::size_t place : wanted) {
      const std::string& name = question.figures[place].name;
      wants_least_class_ |= name == "least_class";
      wants_meaning_ |= name == "meaning";
      wants_summary_ |= name == "summary";
      wanted_.as_sold |= name.ends_with("_as_sold") || name == "meaning";
      for (const char* of_load : {"clamp_load_", "worst_case_", "proof_share_", "summary"})
        wanted_.clamp_load |= name.starts_with(of_load);
    }
    cells_.resize(question.figures.size());
  }

  std::span<const Cell> answer(std::span<const RowCell> row) override {
    double torque = absent;
    for (const RowCell& cell : row)
      if (cell.key == torque_key_) torque = cell.text.empty() ? cell.number : reader_.read(cell.text);
    if (!(torque > 0 && torque <= 1e5)) return asked(row);
    identify_row(row, torque_key_, bytes_);
    bytes_ += torque <= 10 ? 'a' : 'b';  // the typical accuracy of a wrench differs
    auto found = met_.find(bytes_);
    if (found == met_.end()) {
      if (met_.size() >= most_remembered_) met_.clear();
      found = met_.try_emplace(bytes_).first;
      learn(row, found->second);
    }
    Known& known = found->second;
    if (!known.error.empty()) return failed(known.error);
    if (known.parts.empty()) return asked(row);
    const auto likely = std::find_if(known.parts.begin(), known.parts.end(), [&](const Parts& one) {
      return tauten::detail::is_likely(one.suspect, one.usual, torque);
    });
    Parts& parts = likely == known.parts.end() ? known.parts.front() : *likely;
    if (!tauten::detail::something_is_left(torque, parts.conditions)) return asked(row);
    ClampRow& out = parts.row;
    out.torque = Torque(torque);
    out.corrected_torque = tauten::detail::corrected_setting(torque, parts.conditions.lost, parts.condition_ratio);
    tauten::detail::put_figures(out, parts.bolt, parts.chance, parts.conditions, torque, wanted_);
    if (wants_least_class_)
      out.least_class = tauten::detail::least_class(parts.bolt, parts.chance, parts.conditions, torque);
    if (out.class_assumed) out.typical_class = parts.usual.lowest_class(torque);
    if (wants_meaning_) out.meaning = tauten::detail::meaning_of(out);
    if (wants_summary_) out.summary = tauten::detail::summary_of(out, parts.conditions);
    codes_ = parts.codes;
    for (const char* code : tauten::detail::torque_codes(out, true))
      if (code) add_codes(Notice{code, ""}, codes_);
    if (!codes_.empty() && !parts.common_codes.empty()) codes_ += ';';
    codes_ += parts.common_codes;
    return told(out);
  }

 private:
  /// A fastener under its conditions: all of the answer that does not change with the torque.
  struct Parts {
    tauten::detail::Suspect suspect;
    tauten::detail::Conditions conditions;
    tauten::detail::ClampBolt bolt;
    tauten::detail::BoltChance chance;
    tauten::detail::TypicalTorques usual;
    ClampRow row;
    double condition_ratio;    ///< for the corrected torque
    std::string codes;         ///< of the fastener, whatever the torque
    std::string common_codes;  ///< of what holds for every candidate
  };
  struct Known {
    std::string error;         ///< if it is wrong whatever the torque
    std::vector<Parts> parts;  ///< of each fastener that fits, in the order in which they are met
  };

  void learn(std::span<const RowCell> row, Known& known) {
    const auto said = words_.of(question_, row);
    const auto answer = try_clamp(said);
    if (!answer) {
      if (std::string_view(answer.error().argument()) != "torque") known.error = answer.error().what();
      return;
    }
    const auto given = try_clamp_job(said);
    const ClampJob& job = given->job;
    if (tauten::detail::names_parts(job)) return;  // what they bear is compared with each load
    const auto conditions = tauten::detail::conditions_of(job);
    const auto suspects = tauten::detail::suspects_of(job);
    // The order depends on the torque: of two that are the same in all else, one candidate answers for one suspect.
    const auto ranked = tauten::detail::ranked_suspects(job, *conditions);
    std::vector<const ClampCandidate*> candidates;
    for (const tauten::detail::Suspect& suspect : *suspects) {
      std::size_t place = 0;
      for (const tauten::detail::Suspect& other : *ranked) {
        const bool made = static_cast<bool>(tauten::detail::bolt_of(job, other, *conditions));
        if (other.is(suspect)) {
          candidates.push_back(made ? &answer->candidates[place] : nullptr);
          break;
        }
        place += made ? 1 : 0;
      }
    }
    for (std::size_t i = 0; i < suspects->size(); ++i) {
      const tauten::detail::Suspect& suspect = (*suspects)[i];
      if (candidates[i] == nullptr) continue;  // the class is not made in this size
      const ClampCandidate& candidate = *candidates[i];
      const auto bolt = tauten::detail::bolt_of(job, suspect, *conditions);
      tauten::detail::BoltChance chance(*bolt, conditions->lost);
      chance.prepare(conditions->accuracy_at(candidate.torque.si));
      Parts& parts = known.parts.emplace_back(
          Parts{suspect, *conditions, *bolt, chance, tauten::detail::TypicalTorques(job, suspect, *conditions),
                row_of(*answer, candidate), tauten::detail::condition_ratio(job, suspect, *bolt), "", ""});
      const auto of_torque = tauten::detail::torque_codes(candidate, true);
      for (const Notice& notice : candidate.notices)
        if (std::find(of_torque.begin(), of_torque.end(), notice.code) == of_torque.end())
          add_codes(notice, parts.codes);
      add_codes(answer->notices, parts.common_codes);
    }
  }

  /// The long way: all of the question, for its error.
  std::span<const Cell> asked(std::span<const RowCell> row) {
    const auto said = words_.of(question_, row);
    const auto answer = try_clamp(said);
    if (!answer) return failed(message_ = answer.error().what());
    last_ = *row_of(answer);
    codes_.clear();
    add_codes(last_, codes_);
    return told(last_);
  }

  std::span<const Cell> told(const ClampRow& row) {
    Cell* next = cells_.data();
    put_cells(&row, next);
    *next++ = {absent, codes_};
    *next = {};
    return cells_;
  }

  std::span<const Cell> failed(std::string_view message) {
    Cell* next = cells_.data();
    put_cells<ClampRow>(nullptr, next);
    *next++ = {};
    *next = {absent, message};
    return cells_;
  }

  const RowQuestion& question_;
  std::size_t torque_key_;
  std::size_t most_remembered_;
  bool wants_least_class_ = false;
  bool wants_meaning_ = false;
  bool wants_summary_ = false;
  tauten::detail::WantedFigures wanted_{false, false};
  QuantityReader reader_{Dim::torque};
  RowWords words_;
  std::string bytes_;
  std::unordered_map<std::string, Known> met_;
  std::vector<Cell> cells_;
  std::string codes_;
  std::string message_;
  ClampRow last_{};
};

std::unique_ptr<RowAnswers> start_clamp(const RowQuestion& question, std::span<const std::size_t> wanted,
                                        std::size_t threads) {
  return std::make_unique<ClampRows>(question, wanted, threads);
}

constexpr const char* standard_figures[] = {
    "thread",          "class",           "torque",  "clamp_load_low",   "clamp_load_nominal",
    "clamp_load_high", "chance_of_yield", "verdict", "suggested_torque", "candidates"};

RowQuestion with_standard_figures(RowQuestion question) {
  question.standard.assign(std::begin(standard_figures), std::end(standard_figures));
  return question;
}

RowQuestion make_clamp_rows() {
  RowQuestion question = with_standard_figures(
      question_of<ClampJob, ClampRow, joint_inputs, try_clamp_row>("clamp", {{"torque"}, {"thread", "socket", "key"}}));
  question.start = start_clamp;
  return question;
}

}  // namespace

const RowQuestion& clamp_rows() {
  static const RowQuestion question = make_clamp_rows();
  return question;
}

const RowQuestion& torque_rows() {
  static const RowQuestion question = with_standard_figures(
      question_of<ClampJob, ClampRow, joint_inputs, try_torque_row>("torque", {{"thread", "socket", "key"}}));
  return question;
}

}  // namespace tauten::shared
