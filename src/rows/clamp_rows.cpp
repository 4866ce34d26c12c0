// Tightening torques by the table.
#include <algorithm>
#include <unordered_map>

#include "tauten/question/workings/clamp_series.hpp"

#include "rows/asked_rows.hpp"
#include "shared/clamp_inputs.hpp"

namespace tauten::shared {

namespace {

/// What a row answers beside the most likely fastener that fits.
struct OfAll {
  double candidates = 0;
  Band<double> thread_friction;
  Band<double> bearing_friction;

  template <class V>
  static void fields(V&& visit) {
    visit("candidates", &OfAll::candidates);
    visit("thread_friction", &OfAll::thread_friction);
    visit("bearing_friction", &OfAll::bearing_friction);
  }
};

struct ClampRow : ClampCandidate, OfAll {
  template <class V>
  static void fields(V&& visit) {
    ClampCandidate::fields(visit);
    OfAll::fields(visit);
  }
};

Outcome<ClampRow> row_of(const Outcome<ClampAnswer>& answer) {
  if (!answer) return answer.error();
  ClampRow row{answer->candidates.front(),
               {static_cast<double>(answer->candidates.size()), answer->thread_friction, answer->bearing_friction}};
  row.notices.insert(row.notices.end(), answer->notices.begin(), answer->notices.end());
  return row;
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
      wanted_.least_class |= name == "least_class";
      wanted_.meaning |= name == "meaning";
      wanted_.summary |= name == "summary";
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
    if (!(torque > 0)) return asked(row);
    identify_row(row, torque_key_, bytes_);
    auto found = met_.find(bytes_);
    if (found == met_.end()) {
      if (met_.size() >= most_remembered_) met_.clear();
      found = met_.try_emplace(bytes_).first;
      learn(row, found->second);
    }
    Known& known = found->second;
    if (!known.error.empty()) return failed(known.error);
    if (!known.series) return asked(row);
    const auto [answer, fastener] = known.series->at(Torque(torque), wanted_);
    if (answer == nullptr) return asked(row);
    codes_ = known.codes[fastener];
    for (const char* code : ClampSeries::torque_codes(*answer))
      if (code) add_codes(Notice{code, ""}, codes_);
    add_codes(known.series->common().notices, codes_);
    return told(*answer, known.of_all);
  }

 private:
  /// All rows that say the same but for the torque.
  struct Known {
    std::string error;                  ///< if it is wrong whatever the torque
    std::optional<ClampSeries> series;  ///< none if the first torque was wrong
    OfAll of_all{};
    std::vector<std::string> codes{};  ///< of each fastener, whatever the torque
  };

  void learn(std::span<const RowCell> row, Known& known) {
    const auto said = words_.of(question_, row);
    const auto given = try_clamp_job(said);
    const Outcome<ClampSeries> series = given ? ClampSeries::try_make(given->job) : Outcome<ClampSeries>(given.error());
    if (!series) {
      const Error error = given ? given->in_words(series.error()) : series.error();
      if (std::string_view(error.argument()) != "torque") known.error = error.what();
      return;
    }
    known.series = *series;
    const Clamp& common = series->common();
    known.of_all = {static_cast<double>(series->fasteners()), common.thread_friction, common.bearing_friction};
    for (std::size_t i = 0; i < series->fasteners(); ++i)
      add_codes(series->fastener(i).notices, known.codes.emplace_back());
  }

  /// The long way: all of the question, for its error.
  std::span<const Cell> asked(std::span<const RowCell> row) {
    const auto said = words_.of(question_, row);
    const auto answer = try_clamp(said);
    if (!answer) return failed(message_ = answer.error().what());
    last_ = *row_of(answer);
    codes_.clear();
    add_codes(last_, codes_);
    return told(last_, last_);
  }

  std::span<const Cell> told(const ClampCandidate& row, const OfAll& of_all) {
    Cell* next = cells_.data();
    put_cells(&row, next);
    put_cells(&of_all, next);
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
  tauten::detail::WantedFigures wanted_{false, false, false, false, false};
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
    "thread",          "property_class",  "torque",  "clamp_load_low",   "clamp_load_nominal",
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
