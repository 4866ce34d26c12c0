#include "command/job.hpp"

#include <algorithm>

#include "command/refusal.hpp"
#include "tauten/base/unit_text.hpp"

namespace tauten::command {

namespace {

template <Dim D>
void read(const JobKey& key, const std::string& text, Quantity<D>& into) {
  into = Quantity<D>(try_read_quantity(key.name, text, D).value());
}

/// For quantities of which the library takes zero for "not known": here zero was said, and is wrong.
template <Dim D>
void read_above_zero(const JobKey& key, const std::string& text, Quantity<D>& into, double most) {
  read(key, text, into);
  (void)detail::inside(key.name, into.si, D, {0, most, true}).value();
}

/// 0.12, or low..usual..high as in 0.08..0.12..0.16
Band<double> read_band(const JobKey& key, const std::string& text) {
  std::vector<double> parts;
  for (std::size_t at = 0; at <= text.size();) {
    const std::size_t end = std::min(text.find("..", at), text.size());
    const std::string part = text.substr(at, end - at);
    const Outcome<double> number = try_read_quantity(key.name, part, Dim::number);
    if (!number || parts.size() == 3) break;
    parts.push_back(*number);
    at = end == text.size() ? end + 1 : end + 2;
    if (at > text.size()) {
      if (parts.size() == 1) return {parts[0], parts[0], parts[0]};
      if (parts.size() == 3) return {parts[0], parts[1], parts[2]};
    }
  }
  throw Error(key.name, (std::string(key.name) + " " + in_quotes(text) +
                         " is neither one number nor three; write it like 0.12 or, low..usual..high, 0.08..0.12..0.16")
                            .c_str());
}

/// A name of a thread condition, or an error in the words of the key.
std::string read_condition(const JobKey& key, const std::string& text) {
  const Outcome<ThreadCondition> found = try_thread_condition(text);
  if (!found) throw renamed(found.error(), "condition", key.name);
  return text;
}

std::vector<std::string> condition_names() {
  std::vector<std::string> names;
  for (const table::ThreadConditionRow& row : table::thread_conditions) names.push_back(row.key);
  return names;
}

std::vector<std::string> class_names() {
  std::vector<std::string> names;
  for (const table::PropertyClassRow& row : table::property_classes)
    if (names.empty() || names.back() != row.name) names.push_back(row.name);
  return names;
}

using Text = const std::string&;
using Key = const JobKey&;

constexpr JobKey keys[] = {
    {"name", "", "\"pump feet\"", "How the joint is called in lists",
     [](Key, Text text, ClampJob& job) { job.name = text; }},
    {"socket", "width_across_flats", "16mm", "Socket or spanner that fits: 16mm, 5/8in",
     [](Key key, Text text, ClampJob& job) { read_above_zero(key, text, job.socket, 0.2); }},
    {"key", "width_across_flats", "8mm", "Hexagon key that fits into the head, in place of a socket",
     [](Key key, Text text, ClampJob& job) {
       read_above_zero(key, text, job.socket, 0.2);
       job.inner_hexagon = true;
     }},
    {"thread", "thread", "M10x1.25", "Thread, if it is known",
     [](Key, Text text, ClampJob& job) {
       (void)thread(text);
       job.thread = text;
     }},
    {"head", "standard", "\"ISO 4014\"", "Standard of the turned head or nut",
     [](Key, Text text, ClampJob& job) { job.head = text; }},
    {"class", "property_class", "10.9", "Mark on the head; without it the weakest class is assumed",
     [](Key key, Text text, ClampJob& job) {
       const Outcome<PropertyClass> found = try_property_class(text);
       if (!found) throw renamed(found.error(), key.argument, key.name);
       job.property_class = text;
     },
     class_names},
    {"torque", "torque", "48N.m", "Setting of the wrench",
     [](Key key, Text text, ClampJob& job) { read_above_zero(key, text, job.torque, 1e5); }},
    {"clamp-load", "clamp_load", "25kN", "Clamp load that is wanted",
     [](Key key, Text text, ClampJob& job) { read_above_zero(key, text, job.clamp_load, 1e7); }},
    {"share", "share", "75%", "Share of the proof load that is wanted",
     [](Key key, Text text, ClampJob& job) { job.share = try_read_quantity(key.name, text, Dim::number).value(); }},
    {"condition", "condition", "oiled", "What is on the threads; without it the band is wide",
     [](Key key, Text text, ClampJob& job) { job.condition = read_condition(key, text); }, condition_names},
    {"face", "condition", "dry", "What is under head or nut, if not the same",
     [](Key key, Text text, ClampJob& job) { job.face_condition = read_condition(key, text); }, condition_names},
    {"specified", "condition", "dry", "The condition that the torque figure is meant for",
     [](Key key, Text text, ClampJob& job) { job.specified_condition = read_condition(key, text); }, condition_names},
    {"wrench", "wrench_accuracy", "4%", "Accuracy of the wrench; without it 6% up to 10 N.m, 4% above",
     [](Key key, Text text, ClampJob& job) {
       job.wrench_accuracy = try_read_quantity(key.name, text, Dim::number).value();
       (void)detail::inside(key.name, job.wrench_accuracy, Dim::number, within(0, 0.5)).value();
     }},
    {"prevailing", "prevailing_torque", "4N.m", "Prevailing torque of a locking nut or insert",
     [](Key key, Text text, ClampJob& job) { read(key, text, job.prevailing_torque); }},
    {"shank", "shank_torque", "2N.m", "Friction torque of the shank in its hole, if the head is turned",
     [](Key key, Text text, ClampJob& job) { read(key, text, job.shank_torque); }},
    {"thread-friction", "thread_friction", "0.08..0.12..0.16",
     "Coefficient in the thread, if measured: a number or a band",
     [](Key key, Text text, ClampJob& job) { job.thread_friction = read_band(key, text); }},
    {"bearing-friction", "bearing_friction", "0.08..0.12..0.16", "Coefficient under head or nut, if measured",
     [](Key key, Text text, ClampJob& job) { job.bearing_friction = read_band(key, text); }},
    {"bearing-diameter", "bearing_diameter", "13mm", "Effective diameter of the bearing face, if not the standard's",
     [](Key key, Text text, ClampJob& job) { read_above_zero(key, text, job.bearing_diameter, 0.5); }},
    {"torsion", "torsion", "plastic", "How the section carries torsion: plastic, or elastic (before 2001)",
     [](Key key, Text text, ClampJob& job) {
       if (text != "plastic" && text != "elastic")
         throw Error(key.name, ("torsion " + in_quotes(text) + " is not known; write plastic or elastic").c_str());
       job.torsion = text == "plastic" ? Torsion::plastic : Torsion::elastic;
     },
     [] { return std::vector<std::string>{"plastic", "elastic"}; }},
};

}  // namespace

std::span<const JobKey> job_keys() { return keys; }

std::vector<std::string> job_key_names() {
  std::vector<std::string> names;
  for (const JobKey& key : keys) names.push_back(key.name);
  return names;
}

std::shared_ptr<Said> add_job_options(Program& program, CLI::App& verb, const std::vector<std::string>& without) {
  auto said = std::make_shared<Said>();
  for (const JobKey& key : keys) {
    if (std::find(without.begin(), without.end(), key.name) != without.end()) continue;
    CLI::Option* option = verb.add_option_function<std::string>(
        std::string("--") + key.name, [said, &key](Text text) { said->emplace_back(&key, text); }, key.help);
    option->type_name(key.example);
    program.choices[option] = key.choices ? key.choices() : std::vector<std::string>{};
  }
  return said;
}

bool has(const Said& said, const std::string& name) {
  return std::any_of(said.begin(), said.end(), [&](const auto& item) { return item.first->name == name; });
}

std::vector<std::pair<std::string, std::string>> texts_of(const Said& said) {
  std::vector<std::pair<std::string, std::string>> texts;
  for (const auto& [key, text] : said) texts.emplace_back(key->name, text);
  return texts;
}

ClampJob job_of(const Said& said) {
  ClampJob job;
  for (const auto& [key, text] : said) {
    if (text.empty())
      throw Error(key->name, (std::string(key->name) + " is empty; write it like " + key->example).c_str());
    key->set(*key, text, job);
  }
  if (has(said, "socket") && has(said, "key"))
    throw Error("key",
                "a socket and a key are given; a tool goes around the head or into it, so leave one of them out");
  if (has(said, "torque") && has(said, "clamp-load"))
    throw Error("clamp-load",
                "a torque and a clamp load are given; one follows from the other, so leave one of them out");
  return job;
}

Clamp answer_of(const Said& said) {
  const ClampJob job = job_of(said);
  Outcome<Clamp> answer = has(said, "torque") ? try_clamp(job) : try_torque_for(job);
  if (answer) return *answer;
  for (const auto& [key, text] : said) {
    const Error error = renamed(answer.error(), key->argument, key->name);
    if (std::string(error.argument()) != answer.error().argument()) throw error;
  }
  throw answer.error();
}

}  // namespace tauten::command
