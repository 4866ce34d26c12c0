// The inputs of a question, declared once: from the table of a question follow the options of the command line, columns of
// tables, keys of C and WebAssembly, arguments of Python with their signature and documentation, and the tables of the manual.
#pragma once

#include <algorithm>
#include <charconv>
#include <concepts>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "tauten/base/band.hpp"
#include "tauten/base/example_text.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/base/spelling.hpp"
#include "tauten/base/text.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/base/words.hpp"

#include "shared/value.hpp"

namespace tauten::shared {

/// Which names a caller uses.
enum class Spelling : unsigned char {
  option,   ///< clamp-load, class: command line; tables, job files and C take clamp_load and property_class as well
  argument  ///< clamp_load, property_class: the library and Python
};

/// \return whether two names are one, a dash for an underscore or not
constexpr bool same_name(std::string_view a, std::string_view b) {
  const auto dashed = [](char c) { return c == '_' ? '-' : c; };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), [=](char x, char y) { return dashed(x) == dashed(y); });
}

/// What is given for one input.
struct Assignment {
  std::string_view key;
  Value value;
};

/// All that is given in one call.
struct Call {
  std::span<const Assignment> said;
  Spelling spelling = Spelling::option;

  Call(std::span<const Assignment> all, Spelling names = Spelling::option)  // NOLINT(google-explicit-constructor)
      : said(all), spelling(names) {}
  Call(const std::vector<Assignment>& all) : said(all) {}  // NOLINT(google-explicit-constructor)
};

using Problem = std::optional<Error>;

/// How often an input may be given, and what stands beside its option.
enum class Takes : unsigned char {
  one_value,
  several_values,  ///< it may be given again
  flag             ///< it is given or not; as text it takes yes
};

/// What the member behind an input holds.
enum class Holds : unsigned char { quantity, band, text, truth, whole, word, list };

/// A name with dashes in place of underscores.
struct Dashed {
  char text[32]{};

  constexpr explicit Dashed(const char* name) {
    for (std::size_t i = 0; name[i] != '\0'; ++i) text[i] = name[i] == '_' ? '-' : name[i];
  }
};

/// What is told about an input, whatever the job.
struct InputFacts {
  const char* name;     ///< "clamp_load", as the library and Python call it
  const char* example;  ///< "25kN"
  const char* help;
  Holds holds;
  Dim dimension = Dim::number;
  Dashed dashed;                            ///< "clamp-load"
  const char* library = name;               ///< what the library calls it in its errors
  std::span<const char* const> words = {};  ///< the words that it takes, if it takes words only
  Takes takes = Takes::one_value;
  bool positive = false;                                       ///< zero is refused
  void (*members)(std::vector<const char*>& names) = nullptr;  ///< of each item of a list

  constexpr const char* option() const { return dashed.text; }
  constexpr const char* called(Spelling spelling) const { return spelling == Spelling::option ? option() : name; }
  constexpr bool is_called(std::string_view key, Spelling spelling) const {
    return spelling == Spelling::option ? same_name(key, option()) || same_name(key, name) : key == name;
  }
};

/// \return the input that a file means by a word, or null
inline const InputFacts* input_called(std::span<const InputFacts* const> inputs, std::string_view word) {
  for (const InputFacts* input : inputs)
    if (input->is_called(word, Spelling::option)) return input;
  return nullptr;
}

/// Something that can be given about a `Job`.
template <class Job>
struct Input : InputFacts {
  using Put = Problem (*)(const Input& input, const char* called, const Value& value, Job& job);

  Put put;  ///< reads a value into the job; `called` is the name for errors

  constexpr Input with_option(const char* text) const {
    Input input = *this;
    input.dashed = Dashed(text);
    return input;
  }
  constexpr Input in_library(const char* text) const {
    Input input = *this;
    input.library = text;
    return input;
  }
  constexpr Input with_words(std::span<const char* const> list) const {
    Input input = *this;
    input.words = list;
    return input;
  }
  constexpr Input above_zero() const {
    Input input = *this;
    input.positive = true;
    return input;
  }
  constexpr Input as_flag() const {
    Input input = *this;
    input.takes = Takes::flag;
    return input;
  }
  constexpr Input read_by(Put other) const {
    Input input = *this;
    input.put = other;
    return input;
  }
};

/// \return what is told about the inputs of a question
template <class Job>
std::vector<const InputFacts*> facts_of(std::span<const Input<Job>> inputs) {
  std::vector<const InputFacts*> all;
  for (const Input<Job>& input : inputs) all.push_back(&input);
  return all;
}

/// \return the error with what the library calls `from` named `to`
inline Error renamed(const Error& error, std::string_view from, const char* to) {
  if (from.empty() || error.argument() != from || from == to) return error;
  const std::string_view message = error.what();
  if (!message.starts_with(from)) return {to, error.what()};
  return {to, (to + std::string(message.substr(from.size()))).c_str()};
}

/// \return the refusal of a text that cannot be read
/// \param rest  what is wrong with it and how to write it, after a blank
inline Error refuse_text(const char* called, std::string_view text, const std::string& rest) {
  return Error(called, (std::string(called) + " " + tauten::detail::shown(text) + rest).c_str());
}

/// \return the parts of `text` between the marks
inline std::vector<std::string_view> split(std::string_view text, char mark) {
  std::vector<std::string_view> parts;
  for (std::size_t end = 0; end != std::string_view::npos; text.remove_prefix(std::min(end + 1, text.size()))) {
    end = text.find(mark);
    parts.push_back(text.substr(0, end));
  }
  return parts;
}

/// Reads one number of a dimension: text with its unit, or a number in SI.
Problem read_si(const char* called, const Value& value, Dim dimension, double& into);
Problem read(const char* called, const Value& value, bool& into);
/// Reads yes or no, where no is something else than to leave it out.
Problem read(const char* called, const Value& value, std::optional<bool>& into);
/// Reads text; of what was looked up before its name.
Problem read(const char* called, const Value& value, std::string& into);
/// Reads one letter; of more a blank, which the library refuses.
Problem read(const char* called, const Value& value, char& into);
/// Reads 0.12, or low..nominal..high as in 0.08..0.12..0.16; of two numbers in a list the middle is typical.
Problem read(const char* called, const Value& value, Band<double>& into);
/// Reads a whole number within bounds.
/// \param example  how to write it
Problem read_whole(const char* called, const Value& value, const char* example, long long least, long long most,
                   long long& into);
/// Reads the number of a six-lobed bit.
Problem read_bit(const char* called, const Value& value, int& into);
/// Reads the place of a word; light-rust is taken for light_rust.
/// \param aliases  other words, each with the one that it stands for
Problem read_word(const char* called, const Value& value, std::span<const char* const> words, std::size_t& into,
                  std::span<const std::pair<const char*, const char*>> aliases = {});
/// \return that a number is not above zero, or nothing
Problem refuse_zero(const char* called, double si, Dim dimension);

template <Dim D>
Problem read(const char* called, const Value& value, Quantity<D>& into) {
  return read_si(called, value, D, into.si);
}

inline Problem read(const char* called, const Value& value, double& into) {
  return read_si(called, value, Dim::number, into);
}

template <Dim D>
Problem read_above_zero(const char* called, const Value& value, Quantity<D>& into) {
  if (auto problem = read(called, value, into)) return problem;
  return refuse_zero(called, into.si, D);
}

template <class T>
Problem read_above_zero(const char* called, const Value& value, std::optional<T>& into) {
  return read_above_zero(called, value, into.emplace());
}

/// Other words that are taken for those of an enumeration: `static constexpr std::pair<const char*, const char*> list[]`.
template <class E>
struct Aliases {
  static constexpr std::span<const std::pair<const char*, const char*>> list{};
};

template <Worded E>
Problem read(const char* called, const Value& value, E& into) {
  std::size_t place = 0;
  if (auto problem = read_word(called, value, Words<E>::list, place, Aliases<E>::list)) return problem;
  into = static_cast<E>(place);
  return {};
}

template <std::integral T>
Problem read_whole(const char* called, const Value& value, const char* example, T& into) {
  constexpr long long most = sizeof(T) < 8 ? static_cast<long long>(std::numeric_limits<T>::max()) : (1LL << 62);
  long long number = 0;
  if (auto problem = read_whole(called, value, example, std::is_signed_v<T> ? -most : 0, most, number)) return problem;
  into = static_cast<T>(number);
  return {};
}

template <class T>
Problem read(const char* called, const Value& value, std::optional<T>& into) {
  return read(called, value, into.emplace());
}

/// How a record is written as one text: `static Problem read(const char* called, std::string_view text, T& into)`, and what
/// is wrong with one that was given by members: `static Problem check(const char* called, const T& record)`.
template <class T>
struct Form;

/// Reads the members of a record that is a list, in its order, or has names.
template <class T>
Problem read_members(const char* called, const Value& value, T& into) {
  std::vector<std::string_view> members;
  T::fields([&](const char* member, auto) { members.emplace_back(member); });
  std::string known;
  for (const std::string_view member : members) known += (known.empty() ? "" : ", ") + std::string(member);
  const auto refuse = [&](const std::string& sentence) {
    return Error(called, (std::string(called) + " " + sentence + known).c_str());
  };
  const bool is_record = value.kind == Value::Kind::record;
  if (value.items.size() > members.size() && !is_record) return refuse("has too many values; they are ");
  for (const std::string_view name : value.names)
    if (is_record && std::find(members.begin(), members.end(), name) == members.end())
      return refuse("has no member " + tauten::detail::shown(name) + "; the members are ");
  Problem problem;
  std::size_t place = 0;
  T::fields([&](const char* member, auto pointer) {
    const std::size_t at =
        is_record
            ? static_cast<std::size_t>(std::find(value.names.begin(), value.names.end(), member) - value.names.begin())
            : place++;
    if (!problem && at < value.items.size())
      problem = read((std::string(called) + "." + member).c_str(), value.items[at], into.*pointer);
  });
  return problem;
}

/// Reads a record: as text in its own form, as list or with names, or its first member alone.
template <class T>
  requires requires { &Form<T>::read; }
Problem read(const char* called, const Value& value, T& into) {
  if (value.kind == Value::Kind::text) return Form<T>::read(called, value.text, into);
  if (value.is({Value::Kind::list, Value::Kind::record})) {
    if (auto problem = read_members(called, value, into)) return problem;
  } else {
    Value alone;
    alone.kind = Value::Kind::list;
    alone.items.push_back(value);
    if (auto problem = read_members(called, alone, into)) return problem;
  }
  return Form<T>::check(called, into);
}

/// Reads each item of a list, or one that stands alone.
template <class T>
Problem read_each(const char* called, const Value& value, std::vector<T>& into) {
  if (value.is({Value::Kind::text, Value::Kind::record})) return read(called, value, into.emplace_back());
  if (value.kind != Value::Kind::list) return value.refusal(called, "a list");
  for (std::size_t i = 0; i < value.items.size(); ++i) {
    const std::string place = std::string(called) + "[" + std::to_string(i) + "]";
    if (auto problem = read(place.c_str(), value.items[i], into.emplace_back())) return problem;
  }
  return {};
}

namespace detail {

/// What is known of a member by its type.
template <class T>
struct MemberOf {
  static constexpr Holds holds = Worded<T> ? Holds::word : Holds::whole;
  static constexpr Dim dimension = Dim::number;
};
template <Dim D>
struct MemberOf<Quantity<D>> {
  static constexpr Holds holds = Holds::quantity;
  static constexpr Dim dimension = D;
};
template <>
struct MemberOf<double> : MemberOf<Quantity<Dim::number>> {};
template <>
struct MemberOf<Band<double>> {
  static constexpr Holds holds = Holds::band;
  static constexpr Dim dimension = Dim::number;
};
template <>
struct MemberOf<std::string> {
  static constexpr Holds holds = Holds::text;
  static constexpr Dim dimension = Dim::number;
};
template <>
struct MemberOf<Text> : MemberOf<std::string> {};
template <>
struct MemberOf<char> : MemberOf<std::string> {};
template <>
struct MemberOf<bool> {
  static constexpr Holds holds = Holds::truth;
  static constexpr Dim dimension = Dim::number;
};
template <class T>
struct MemberOf<std::vector<T>> {
  static constexpr Holds holds = Holds::list;
  static constexpr Dim dimension = Dim::number;
};
template <class T>
struct MemberOf<std::optional<T>> : MemberOf<T> {};

/// \return what a pointer to a member, or a function object without state, names of a job
template <auto member, class Job>
constexpr auto& at(Job& job) {
  if constexpr (std::is_member_object_pointer_v<decltype(member)>)
    return job.*member;
  else  // not `member` itself, which unoptimised objects of several files would share by name
    return decltype(member){}(job);
}

/// Lists the members of a record.
template <class T>
void list_members(std::vector<const char*>& names) {
  T::fields([&](const char* name, auto) { names.push_back(name); });
}

/// \return the value of a quantity or plain number, which may stand in an optional
template <class T>
double si_of(const T& given) {
  if constexpr (requires { *given; })
    return si_of(*given);
  else
    return QuantityTraits<T>::si(given);
}

template <auto member, class Job>
Problem put(const Input<Job>& input, const char* called, const Value& value, Job& job) {
  auto& into = at<member>(job);
  using T = std::remove_cvref_t<decltype(into)>;
  constexpr Holds holds = MemberOf<T>::holds;
  if constexpr (holds == Holds::list) {
    return read_each(called, value, into);
  } else if constexpr (holds == Holds::whole) {
    if constexpr (requires { into.emplace(); })
      return read_whole(called, value, input.example, into.emplace());
    else
      return read_whole(called, value, input.example, into);
  } else {
    if (auto problem = read(called, value, into)) return problem;
    if constexpr (holds == Holds::quantity) {
      if (!input.positive) return {};
      return refuse_zero(called, si_of(into), MemberOf<T>::dimension);
    }
    return {};
  }
}

}  // namespace detail

inline constexpr const char* truth_words[] = {"yes", "no"};

/// Declares inputs of a job.
template <class Job>
struct Declares {
  /// \tparam member  of a job, that takes the value, or a function that returns it
  template <auto member>
  static constexpr Input<Job> input(const char* name, const char* example, const char* help) {
    using T = std::remove_cvref_t<decltype(detail::at<member>(std::declval<Job&>()))>;
    constexpr Holds holds = detail::MemberOf<T>::holds;
    Input<Job> made{{name, example, help, holds, detail::MemberOf<T>::dimension, Dashed(name)},
                    detail::put<member, Job>};
    if constexpr (holds == Holds::list) {
      made.takes = Takes::several_values;
      if constexpr (requires { &Form<typename T::value_type>::read; })
        made.members = detail::list_members<typename T::value_type>;
    }
    if constexpr (std::is_same_v<T, std::optional<bool>>) made.words = truth_words;
    if constexpr (holds == Holds::word && requires { Words<T>::list; }) made.words = Words<T>::list;
    return made;
  }
};

/// What holds between the inputs of one question.
struct Rule {
  enum class Kind : unsigned char {
    excludes,  ///< the first and the second are not given together
    needs,     ///< the first is given only with the second
    one_of     ///< one of them is given
  };
  Kind kind;
  const char* inputs[3]{};
  const char* why = "";  ///< the sentence behind the names, where the typical one does not fit
};
constexpr Rule excludes(const char* one, const char* other) { return {Rule::Kind::excludes, {one, other}}; }
constexpr Rule needs(const char* one, const char* other) { return {Rule::Kind::needs, {one, other}}; }
constexpr Rule one_of(const char* one, const char* other = nullptr, const char* third = nullptr) {
  return {Rule::Kind::one_of, {one, other, third}};
}

/// A job with what was given for it.
template <class Job>
struct GivenJob {
  Job job{};
  std::vector<const Input<Job>*> inputs{};
  Spelling spelling = Spelling::option;

  /// \param name  as the library calls the input
  bool has(std::string_view name) const {
    return std::any_of(inputs.begin(), inputs.end(), [&](const Input<Job>* input) { return name == input->name; });
  }
  /// \return the error of the library in the words of the inputs that were given
  Error in_words(const Error& error) const {
    const std::string_view argument = error.argument();
    for (const Input<Job>* input : inputs)
      if (argument == input->library) return renamed(error, input->library, input->called(spelling));
    return error;
  }
};

/// \return the place of the input that a caller means, or -1
template <class Job>
int place_of(std::span<const Input<Job>> inputs, std::string_view key, Spelling spelling) {
  for (std::size_t i = 0; i < inputs.size(); ++i)
    if (inputs[i].is_called(key, spelling)) return static_cast<int>(i);
  return -1;
}

/// All errors of a call as one, the first of them first.
class Errors {
 public:
  void add(const Error& error) {
    if (!first_)
      first_ = error;
    else
      first_ = Error(first_->argument(), (std::string(first_->what()) + ". Also: " + error.what()).c_str());
  }
  const Problem& found() const { return first_; }

 private:
  Problem first_;
};

/// \return the first rule that a call breaks, as sentence
/// \param called  name of an input for the sentence; null for one that the question does not have
/// \param is_given  whether a caller gave an input
template <class Job>
Problem broken_rule(std::span<const Input<Job>> inputs, std::span<const Rule> rules, const GivenJob<Job>& given) {
  const auto input_of = [&](const char* name) -> const Input<Job>& {
    return *std::find_if(inputs.begin(), inputs.end(),
                         [&](const Input<Job>& input) { return std::string_view(name) == input.name; });
  };
  const auto called = [&](const char* name) -> std::string { return input_of(name).called(given.spelling); };
  for (const Rule& rule : rules) {
    const char* const* const names = rule.inputs;
    switch (rule.kind) {
      case Rule::Kind::excludes:
        if (given.has(names[0]) && given.has(names[1]))
          return Error(
              called(names[1]).c_str(),
              (called(names[0]) + " and " + called(names[1]) + " exclude each other; leave one of them out").c_str());
        break;
      case Rule::Kind::needs:
        if (given.has(names[0]) && !given.has(names[1]))
          return Error(called(names[1]).c_str(),
                       (called(names[0]) + " goes with " + called(names[1]) + "; write " + called(names[1]) + " like " +
                        input_of(names[1]).example + ", or leave " + called(names[0]) + " out")
                           .c_str());
        break;
      case Rule::Kind::one_of: {
        std::string all;
        bool is_given = false;
        for (const char* name : rule.inputs)
          if (name != nullptr) all += (all.empty() ? "" : " or ") + called(name), is_given |= given.has(name);
        if (!is_given)
          return Error(called(names[0]).c_str(),
                       (all + " is missing; write it like " + input_of(names[0]).example).c_str());
        break;
      }
    }
  }
  return {};
}

/// \return the name among `known` that was likely meant, "" if none is near
std::string nearest_name(std::string_view name, const std::vector<const char*>& known);

/// \return "torque", or "socket, key or bearing-diameter": inputs that can read a text that another one refuses, and no
///         nonsense; "" if there are none
template <class Job>
std::string meant_for(std::span<const Input<Job>> inputs, const Input<Job>& refused, const Value& text,
                      Spelling spelling) {
  std::vector<std::string> names;
  if (refused.holds == Holds::quantity && try_read_quantity("", text.text, refused.dimension)) return "";
  for (const Input<Job>& input : inputs) {
    const bool has_unit = input.holds == Holds::quantity && input.dimension != Dim::number;
    const bool is_name = input.holds == Holds::text || input.holds == Holds::word;
    if (&input == &refused || !(has_unit || is_name)) continue;
    Job scratch{};
    if (input.put(input, input.name, text, scratch)) continue;
    if (has_unit || input.put(input, input.name, "~", scratch)) names.emplace_back(input.called(spelling));
    if (names.size() == 3) break;
  }
  std::string all;
  for (std::size_t i = 0; i < names.size(); ++i)
    all += (i == 0 ? "" : i + 1 == names.size() ? " or " : ", ") + names[i];
  return all;
}

/// \return a refusal without a long list of what could be given instead
inline std::string without_choices(std::string_view message) {
  return std::string(message.size() > 200 ? message.substr(0, message.find("; ")) : message);
}

/// Puts all that was given into a job.
/// \return all that is wrong with it, or the job
template <class Job>
Outcome<GivenJob<Job>> try_read(std::span<const Input<Job>> inputs, const Call& call,
                                std::span<const Rule> rules = {}) {
  GivenJob<Job> given;
  given.spelling = call.spelling;
  Errors errors;
  for (const Assignment& said : call.said) {
    const int place = place_of(inputs, said.key, call.spelling);
    const std::string name = place < 0 ? tauten::detail::visible(said.key, 40)
                                       : inputs[static_cast<std::size_t>(place)].called(call.spelling);
    if (place < 0) {
      std::vector<const char*> keys;
      std::string known;
      for (const Input<Job>& input : inputs) {
        keys.push_back(input.called(call.spelling));
        known += (known.empty() ? "" : ", ") + std::string(keys.back());
      }
      const std::string near = nearest_name(name, keys);
      errors.add(
          Error(name.c_str(), ("there is no key '" + name + "'; " +
                               (near.empty() ? "the keys are " : "did you mean " + near + "? The keys are ") + known)
                                  .c_str()));
      continue;
    }
    const Input<Job>& input = inputs[static_cast<std::size_t>(place)];
    const bool again = given.has(input.name);
    if (again && input.takes != Takes::several_values) {
      errors.add(Error(name.c_str(), (name + " is given twice; give it once").c_str()));
      continue;
    }
    if (!again) given.inputs.push_back(&input);
    const bool is_text = said.value.kind == Value::Kind::text;
    if (is_text && said.value.text.empty()) {
      errors.add(
          Error(name.c_str(), (name + " is empty; " +
                               (call.spelling == Spelling::option ? std::string("write it like ") + input.example
                                                                  : std::string("leave it out if it is not known")))
                                  .c_str()));
      continue;
    }
    if (auto problem = input.put(input, input.called(call.spelling), said.value, given.job)) {
      if (is_text && input.takes == Takes::several_values &&
          said.value.text.find_first_of(",;") != std::string_view::npos)
        problem =
            Error(problem->argument(), (problem->what() + ("; for several say " + name) + " again for each").c_str());
      else if (const std::string other = is_text ? meant_for(inputs, input, said.value, call.spelling) : "";
               !other.empty())
        problem = Error(problem->argument(), (without_choices(problem->what()) + "; " +
                                              tauten::detail::shown(said.value.text) + " reads as " + other)
                                                 .c_str());
      errors.add(*problem);
    }
  }
  if (errors.found()) return *errors.found();
  if (auto problem = broken_rule(inputs, rules, given)) return *problem;
  return given;
}

inline bool has(std::span<const Assignment> said, std::string_view key) {
  for (const Assignment& pair : said)
    if (pair.key == key) return true;
  return false;
}

}  // namespace tauten::shared
