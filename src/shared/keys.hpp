// A job said in words: pairs of key and text, as on a command line, in a form or across the C interface.
#pragma once

#include <algorithm>
#include <charconv>
#include <concepts>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "tauten/base/quantity.hpp"
#include "tauten/base/quantity_text.hpp"
#include "tauten/base/shown_text.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/base/words.hpp"

namespace tauten::shared {

/// One pair as somebody said it.
struct Assignment {
  std::string_view key;
  std::string_view text;
};

using Problem = std::optional<Error>;

/// How often a key may be said, and what stands beside it.
enum class Takes : unsigned char {
  one_value,
  several_values,  ///< it may be said again
  flag             ///< it is said or not; as text it takes yes
};

/// Something that can be said about a `Job`.
template <class Job>
struct Key {
  const char* name;     ///< "clamp-load"
  const char* example;  ///< "25kN"
  const char* help;
  Problem (*set)(const Key& key, std::string_view text, Job& job);
  const char* argument = "";                ///< what the library calls it in its errors, if not by `name`
  std::span<const char* const> words = {};  ///< the words that it takes, if it takes words only
  Takes takes = Takes::one_value;
};

/// \return the error with what the library calls `from` named `to`, as the key is called
inline Error renamed(const Error& error, std::string_view from, const char* to) {
  if (from.empty() || error.argument() != from) return error;
  const std::string_view message = error.what();
  if (!message.starts_with(from)) return {to, error.what()};
  return {to, (to + std::string(message.substr(from.size()))).c_str()};
}

/// Reads a quantity of the dimension of `into`.
template <Dim D>
Problem read(const char* key, std::string_view text, Quantity<D>& into) {
  const Outcome<double> si = try_read_quantity(key, text, D);
  if (!si) return si.error();
  into = Quantity<D>(*si);
  return {};
}

inline Problem read(const char* key, std::string_view text, double& into) {
  Quantity<Dim::number> number;
  if (auto problem = read(key, text, number)) return problem;
  into = number.si;
  return {};
}

inline Problem read(const char* key, std::string_view text, bool& into) {
  if (text != "yes")
    return Error(key,
                 (std::string(key) + " " + tauten::detail::shown(text) + " is not yes; else leave it out").c_str());
  into = true;
  return {};
}

/// Reads a word of an enumeration; light-rust is taken for light_rust.
template <Worded E>
Problem read(const char* key, std::string_view text, E& into) {
  std::string known, word(text);
  std::replace(word.begin(), word.end(), '-', '_');
  for (std::size_t i = 0; i < std::size(Words<E>::list); ++i) {
    if (word == Words<E>::list[i]) return into = static_cast<E>(i), Problem();
    known += (known.empty() ? "" : ", ") + std::string(Words<E>::list[i]);
  }
  return Error(key, (std::string(key) + " " + tauten::detail::shown(text) + " is not known; write " + known).c_str());
}

template <class T>
Problem read(const char* key, std::string_view text, std::optional<T>& into) {
  return read(key, text, into.emplace());
}

/// For quantities of which the library takes zero for "not known": here zero was said, and is wrong.
template <Dim D>
Problem read_above_zero(const char* key, std::string_view text, Quantity<D>& into) {
  if (auto problem = read(key, text, into)) return problem;
  if (into.si > 0) return {};
  const std::string sentence = std::string(key) + " is " + quantity_text(into.si, D) + ", but must be above 0; " +
                               "write it like " + describe(D).how_to_write;
  return Error(key, sentence.c_str());
}

/// \return the refusal of a text that cannot be read
/// \param rest  what is wrong with it and how to write it, after a blank
inline Error refuse_text(const char* key, std::string_view text, const std::string& rest) {
  return Error(key, (std::string(key) + " " + tauten::detail::shown(text) + rest).c_str());
}

/// Reads a whole number.
/// \param example  how to write it
template <std::integral T>
Problem read_whole(const char* key, std::string_view text, const char* example, T& into) {
  const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), into);
  if (problem == std::errc() && end == text.data() + text.size()) return {};
  return refuse_text(key, text, std::string(" is no whole number; write it like ") + example);
}

/// Reads the number of a six-lobed bit.
inline Problem read_bit(const char* key, std::string_view text, int& into) {
  if (!read_whole(key, text, "30", into)) return {};
  return refuse_text(key, text, " is not the number of a six-lobed drive; write it like 30");
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

/// Reads into the member of a job that `member` returns.
template <auto member, class Job>
Problem put(const Key<Job>& key, std::string_view text, Job& job) {
  return read(key.name, text, member(job));
}

/// The same for quantities of which the library takes zero for "not known".
template <auto member, class Job>
Problem put_above_zero(const Key<Job>& key, std::string_view text, Job& job) {
  return read_above_zero(key.name, text, member(job));
}

/// Puts all that was said into a job.
/// \return what is wrong with the first pair that is wrong, or nothing
template <class Job>
Problem set_all(std::span<const Key<Job>> keys, std::span<const Assignment> said, Job& job) {
  const auto refuse = [](std::string_view key, const std::string& sentence) {
    return Error(std::string(key.substr(0, 40)).c_str(), sentence.c_str());
  };
  for (std::size_t i = 0; i < said.size(); ++i) {
    const Key<Job>* key = nullptr;
    std::string known;
    for (const Key<Job>& k : keys) {
      if (said[i].key == k.name) key = &k;
      known += (known.empty() ? "" : ", ") + std::string(k.name);
    }
    const std::string name(said[i].key.substr(0, 40));
    if (key == nullptr) return refuse(name, "there is no key '" + name + "'; the keys are " + known);
    for (const Assignment& other : said.first(i))
      if (other.key == key->name && key->takes != Takes::several_values)
        return refuse(name, name + " is given twice; give it once");
    if (said[i].text.empty()) return refuse(name, name + " is empty; write it like " + key->example);
    if (auto problem = key->set(*key, said[i].text, job)) {
      if (key->takes != Takes::several_values || said[i].text.find_first_of(",;") == std::string_view::npos)
        return problem;
      return Error(problem->argument(), (problem->what() + ("; for several say " + name) + " again for each").c_str());
    }
  }
  return {};
}

/// \return the error of the library in the words of the keys that were said
template <class Job>
Error in_words_of(std::span<const Key<Job>> keys, std::span<const Assignment> said, const Error& error) {
  for (const Assignment& pair : said)
    for (const Key<Job>& key : keys)
      if (pair.key == key.name && std::string_view(key.argument) == error.argument())
        return renamed(error, key.argument, key.name);
  return error;
}

inline bool has(std::span<const Assignment> said, std::string_view key) {
  for (const Assignment& pair : said)
    if (pair.key == key) return true;
  return false;
}

}  // namespace tauten::shared
