#include "rows/rows.hpp"

#include <algorithm>
#include <cmath>
#include <cstring>

#include "rows/asked_rows.hpp"
#include "shared/free_inputs.hpp"
#include "shared/group_inputs.hpp"
#include "shared/identification.hpp"
#include "shared/pattern_inputs.hpp"
#include "shared/prying_inputs.hpp"
#include "shared/reach_inputs.hpp"
#include "shared/sequence_inputs.hpp"
#include "shared/thread_inputs.hpp"
#include "shared/turn_inputs.hpp"
#include "tauten/base/spelling.hpp"

namespace tauten::shared {

namespace {

/// What is said once for a whole table: as a column it would be left out without a word.
constexpr std::string_view said_once[] = {"jobs", "columns"};

/// What a row answers of a tool: the most likely fastener, and how many there are.
struct IdentifiedRow : Identified {
  double candidates = 0;
  std::optional<ClassMark> property_class;

  template <class V>
  static void fields(V&& visit) {
    Identified::fields([&](const char* name, auto member) { visit(name, member); });
    visit("candidates", &IdentifiedRow::candidates);
    visit("property_class", &IdentifiedRow::property_class);
  }
};

Outcome<IdentifiedRow> try_identified_row(const Call& call) {
  const Outcome<Identification> answer = try_identify(call);
  if (!answer) return answer.error();
  if (answer->candidates.empty()) return Error("socket", "say which tool fits: a socket, a key or a bit");
  return IdentifiedRow{answer->candidates.front(), static_cast<double>(answer->candidates.size()),
                       answer->property_class};
}

std::string with_dashes(std::string_view name) {
  std::string text(name);
  for (char& c : text) c = c == '_' || c == ' ' ? '-' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return text;
}

std::string either_of(const std::vector<const char*>& names) {
  std::string text;
  for (const char* name : names) text += (text.empty() ? "" : name == names.back() ? " or " : ", ") + std::string(name);
  return text;
}

/// \param name  of a column that the answer does not have
/// \return the columns that may have been meant, or as many as a sentence can hold
std::string known_instead(const RowQuestion& question, const std::string& name) {
  std::vector<const char*> meant;
  std::size_t least = std::max<std::size_t>(1, name.size() / 4) + 1;
  for (const AnswerColumn& figure : question.figures) {
    const std::size_t apart = name.size() < 40 ? tauten::detail::letters_apart(name, figure.name) : least;
    if (figure.name.starts_with(name + "_")) meant.push_back(figure.name.c_str());
    if (apart < least) least = apart, meant.assign(1, figure.name.c_str());
  }
  if (!meant.empty() && meant.size() < 7) return "did you mean " + either_of(meant) + "?";
  if (meant.empty())
    for (const AnswerColumn& figure : question.figures) meant.push_back(figure.name.c_str());
  std::string known;
  std::size_t count = 0;
  for (; count < meant.size() && known.size() + std::strlen(meant[count]) < 280; ++count)
    known += (count > 0 ? ", " : "") + std::string(meant[count]);
  const std::size_t more = question.figures.size() - count;
  return "it has " + known + (more > 0 ? " and " + std::to_string(more) + " more" : "") +
         "; the guide to many joints lists their names";
}

/// A number as a key reads it: in digits if it is whole.
std::string said_number(double x, const char* unit) {
  char text[32];
  const bool whole = x == std::floor(x) && std::fabs(x) < 1e15;
  const auto [end, problem] = whole ? std::to_chars(text, text + sizeof text, static_cast<long long>(x))
                                    : std::to_chars(text, text + sizeof text, x);
  return problem == std::errc() ? std::string(text, end) + unit : "nan";
}

bool means_yes(std::string_view text) { return text == "yes" || text == "true" || text == "True" || text == "1"; }
bool means_no(std::string_view text) { return text == "no" || text == "false" || text == "False" || text == "0"; }

/// \return whether `name` is one of the words that a key takes; heavy-rust is taken for heavy_rust
bool takes_word(const RowKey& key, std::string_view name) {
  const std::string word = with_dashes(name);
  return std::any_of(key.words.begin(), key.words.end(), [&](const char* one) { return word == with_dashes(one); });
}

}  // namespace

std::span<const RowQuestion* const> row_questions() {
  static const RowQuestion reach =
      question_of<ReachJob, ReachAnswer, reach_inputs, try_reach>("reach", {{"torque", "setting"}});
  static const RowQuestion free =
      question_of<FreeQuestion, FreeAnswer, free_inputs, try_free>("free", {{"thread", "diameter", "socket", "key"}});
  static const RowQuestion turn = question_of<CurveJob, TurnAnswer, turn_inputs, try_turn>("turn", {{"thread"}});
  static const RowQuestion identify = question_of<IdentifyJob, IdentifiedRow, identify_inputs, try_identified_row>(
      "identify", {{"socket", "key", "bit"}});
  static const RowQuestion thread =
      question_of<ThreadJob, ThreadAnswer, thread_inputs, try_thread>("thread", {{"thread"}});
  static const RowQuestion curve = question_of<CurveJob, CurveAnswer, curve_inputs, try_curve>("curve", {{"thread"}});
  static const RowQuestion pattern =
      question_of<PatternJob, PatternAnswer, pattern_inputs, try_pattern>("pattern", {{"pattern", "chords", "name"}});
  static const RowQuestion group = question_of<GroupJob, GroupAnswer, group_inputs, try_group>("group", {{"pattern"}});
  static const RowQuestion sequence =
      question_of<SequenceJob, SequenceAnswer, sequence_inputs, try_sequence>("sequence", {{"pattern"}});
  static const RowQuestion prying =
      question_of<PryingJob, PryingAnswer, prying_inputs, try_prying>("prying", {{"tributary", "effective-length"}});
  static const RowQuestion* const all[] = {&identify, &thread, &clamp_rows(), &torque_rows(), &reach,    &free,
                                           &turn,     &curve,  &pattern,      &group,         &sequence, &prying};
  return all;
}

Outcome<const RowQuestion*> try_row_question(std::string_view name) {
  for (const RowQuestion* question : row_questions())
    if (name == question->name) return question;
  return Error("question", ("no table can ask " + tauten::detail::shown(name)).c_str());
}

int key_called(const RowQuestion& question, std::string_view name) {
  const std::string wanted = with_dashes(name);
  for (int i = 0; const RowKey& key : question.keys) {
    if (wanted == key.name || wanted == with_dashes(key.argument)) return i;
    ++i;
  }
  return -1;
}

Outcome<std::vector<int>> try_columns(const RowQuestion& question, std::span<const std::string> names,
                                      std::span<const RowCell> said) {
  std::vector<int> places;
  const auto size_apart = [](std::string_view a, std::string_view b) {
    return std::max(a.size(), b.size()) - std::min(a.size(), b.size());
  };
  for (const std::string& name : names) {
    const int place = key_called(question, name);
    const std::string shown = tauten::detail::shown(name), dashed = with_dashes(name);
    if (std::find(std::begin(said_once), std::end(said_once), name) != std::end(said_once))
      return Error(name.c_str(), ("column " + shown +
                                  " cannot differ from row to row; give it once for the whole table, "
                                  "or give the column another name if it is something else")
                                     .c_str());
    if (place >= 0 && std::find(places.begin(), places.end(), place) != places.end())
      return Error(question.keys[static_cast<std::size_t>(place)].name.c_str(),
                   ("column " + shown + " is there twice, or under two names; leave one of them out").c_str());
    // As the name of a column it would be left out without a word, and heat planned beside fuel.
    for (const RowKey& key : question.keys)
      if (place < 0 && key.takes == Takes::several_values && takes_word(key, name))
        return Error(key.name.c_str(),
                     ("column " + shown + " has the name of a word of " + key.name + "; write it into a column " +
                      key.name + ", or give it another name if it is something else")
                         .c_str());
    // A slip of the pen must not go for a column of somebody else's: what it says would be left out without a word.
    const std::size_t near = std::max<std::size_t>(1, name.size() / 4);
    for (const RowKey& key : question.keys)
      if (place < 0 && name.size() > 3 && name.size() < 40 && size_apart(dashed, key.name) <= near &&
          tauten::detail::letters_apart(dashed, key.name) <= near)
        return Error(shown.c_str(), ("column " + shown + " is not a key; did you mean " + key.name +
                                     "? If it is something else, give it a name that is less alike")
                                        .c_str());
    places.push_back(place);
  }
  for (const std::vector<const char*>& group : question.needs) {
    const auto is_there = [&](const char* name) {
      const int place = key_called(question, name);
      const auto same = [&](const RowCell& cell) { return static_cast<int>(cell.key) == place; };
      return std::find(places.begin(), places.end(), place) != places.end() ||
             std::any_of(said.begin(), said.end(), same);
    };
    if (std::none_of(group.begin(), group.end(), is_there))
      return Error(
          group.front(),
          (std::string("no column is named ") + either_of(group) + "; name the columns after what they hold").c_str());
  }
  return places;
}

Outcome<std::vector<std::size_t>> try_figures(const RowQuestion& question, std::span<const std::string> names) {
  std::vector<std::string> wanted(names.begin(), names.end());
  if (wanted.empty()) wanted.assign(question.standard.begin(), question.standard.end());
  std::vector<std::size_t> places;
  for (const std::string& name : wanted) {
    const auto found = std::find_if(question.figures.begin(), question.figures.end(),
                                    [&](const AnswerColumn& one) { return one.name == name; });
    if (found == question.figures.end())
      return Error(
          "columns",
          ("the answer has no column " + tauten::detail::shown(name) + "; " + known_instead(question, name)).c_str());
    const auto place = static_cast<std::size_t>(found - question.figures.begin());
    if (place + 2 < question.figures.size() && std::find(places.begin(), places.end(), place) == places.end())
      places.push_back(place);
  }
  if (wanted.empty())
    for (std::size_t i = 0; i + 2 < question.figures.size(); ++i) places.push_back(i);
  places.push_back(question.figures.size() - 2);
  places.push_back(question.figures.size() - 1);
  return places;
}

std::span<const Assignment> RowWords::of(const RowQuestion& question, std::span<const RowCell> row) {
  texts_.clear();
  texts_.reserve(row.size());  // what is said points into it
  said_.clear();
  for (const RowCell& cell : row) {
    const RowKey& key = question.keys[cell.key];
    std::string_view text = cell.text;
    if (text.empty()) text = texts_.emplace_back(said_number(cell.number, key.unit));
    if (key.takes == Takes::flag) {
      if (means_no(text)) continue;
      said_.push_back({key.name, means_yes(text) ? "yes" : text});
    } else if (key.takes == Takes::several_values) {
      for (std::string_view part : split(text, ';')) {
        part.remove_prefix(std::min(part.find_first_not_of(' '), part.size()));
        said_.push_back({key.name, part});
      }
    } else {
      said_.push_back({key.name, text});
    }
  }
  return said_;
}

void identify_row(std::span<const RowCell> row, std::size_t without, std::string& bytes) {
  bytes.clear();
  for (const RowCell& cell : row) {
    if (cell.key == without) continue;
    bytes += static_cast<char>(cell.key + 1);
    if (cell.text.empty()) {
      bytes += '\0';
      bytes.append(reinterpret_cast<const char*>(&cell.number), sizeof cell.number);
    } else {
      const std::size_t size = cell.text.size();
      bytes.append(reinterpret_cast<const char*>(&size), sizeof size);
      bytes += cell.text;
    }
  }
}

const char* unit_of_example(std::string_view example) {
  double value = 0;
  const std::string unit = tauten::detail::plain_unit(example.substr(tauten::detail::read_number(example, value)));
  for (const UnitSpelling& known : unit_spellings)
    if (unit == known.text) return describe(known.dimension).si_unit;
  return "";
}

}  // namespace tauten::shared
