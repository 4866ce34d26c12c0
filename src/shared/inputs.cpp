#include "shared/inputs.hpp"

#include <algorithm>
#include <cmath>

#include "tauten/base/plain_number.hpp"

namespace tauten::shared {

namespace {

using Kind = Value::Kind;

Problem refuse(const char* called, const std::string& sentence) {
  return Error(called, (std::string(called) + " " + sentence).c_str());
}

}  // namespace

std::string nearest_name(std::string_view name, const std::vector<const char*>& known) {
  const char* best = "";
  std::size_t least = std::max<std::size_t>(1, name.size() / 4) + 1;
  for (const char* one : known)
    if (const std::size_t apart = tauten::detail::letters_apart(name, one); apart < least) best = one, least = apart;
  return best;
}

Problem read_si(const char* called, const Value& value, Dim dimension, double& into) {
  if (value.kind == Kind::text) {
    const Outcome<double> si = try_read_quantity(called, value.text, dimension);
    if (!si) return si.error();
    into = *si;
  } else if (value.kind == Kind::quantity) {
    const Outcome<double> si = value.foreign->si(called, dimension);
    if (!si) return si.error();
    into = *si;
  } else if (value.is({Kind::number, Kind::whole})) {
    into = value.number;
  } else {
    return value.refusal(called, "one number, text with a unit or a quantity");
  }
  if (std::isfinite(into)) return {};
  return refuse(called, std::string("is ") + PlainNumber(into).c_str() +
                            ", but must be a finite number; write it like " + example_of(called, dimension));
}

Problem read(const char* called, const Value& value, bool& into) {
  if (value.kind == Kind::truth) return into = value.truth, Problem();
  if (value.kind != Kind::text || value.foreign != nullptr) return value.refusal(called, "True or False");
  if (value.text != "yes") return refuse_text(called, value.text, " is not yes; else leave it out");
  into = true;
  return {};
}

Problem read(const char* called, const Value& value, std::optional<bool>& into) {
  bool& truth = into.emplace();
  if (value.kind != Kind::text || value.foreign != nullptr) return read(called, value, truth);
  truth = value.text == "yes" || value.text == "true" || value.text == "True" || value.text == "1";
  if (truth || value.text == "no" || value.text == "false" || value.text == "False" || value.text == "0") return {};
  return refuse_text(called, value.text, " is not known; write yes or no");
}

Problem read(const char* called, const Value& value, std::string& into) {
  if (value.kind != Kind::text) return value.refusal(called, "text in quotes");
  into = value.text;
  return {};
}

Problem read(const char* called, const Value& value, char& into) {
  std::string letters;
  if (auto problem = read(called, value, letters)) return problem;
  into = letters.size() == 1 ? letters[0] : ' ';
  return {};
}

Problem read_word(const char* called, const Value& value, std::span<const char* const> words, std::size_t& into,
                  std::span<const std::pair<const char*, const char*>> aliases) {
  if (value.kind != Kind::text) return value.refusal(called, "a word");
  std::string known, word(value.text);
  std::replace(word.begin(), word.end(), '-', '_');
  for (const auto& [other, meant] : aliases)
    if (word == other) word = meant;
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (word == words[i]) return into = i, Problem();
    known += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + std::string(words[i]);
  }
  return refuse_text(called, value.text, " is not known; write " + known);
}

Problem read_whole(const char* called, const Value& value, const char* example, long long least, long long most,
                   long long& into) {
  if (value.kind == Kind::text) {
    const std::string_view text = value.text;
    const auto [end, problem] = std::from_chars(text.data(), text.data() + text.size(), into);
    if (problem != std::errc() || end != text.data() + text.size())
      return refuse_text(called, text, std::string(" is not a whole number; write it like ") + example);
  } else if (value.kind == Kind::whole) {
    into = value.whole;
  } else {
    return value.refusal(called, "a whole number");
  }
  if (into >= least && into <= most) return {};
  return refuse(called, "is " + std::to_string(into) + ", but must be at least " + std::to_string(least) +
                            " and at most " + std::to_string(most));
}

Problem read_bit(const char* called, const Value& value, int& into) {
  const auto problem = read_whole(called, value, "30", into);
  if (!problem || value.kind != Kind::text) return problem;
  return refuse_text(called, value.text, " is not the number of a six-lobed drive; write it like 30");
}

Problem read(const char* called, const Value& value, Band<double>& into) {
  double parts[3] = {};
  std::size_t count = 0;
  if (value.kind == Kind::text && value.foreign != nullptr && value.text.find("..") != std::string_view::npos) {
    Value list;  // where lists are at home, a text with dots is one
    list.kind = Kind::list;
    std::string_view rest = value.text;
    for (std::size_t dots = 0; dots != std::string_view::npos; rest.remove_prefix(std::min(dots + 2, rest.size()))) {
      dots = rest.find("..");
      list.items.emplace_back(rest.substr(0, dots));
    }
    return read(called, list, into);
  }
  if (value.kind == Kind::text) {
    for (std::string_view rest = value.text; count < 3; ++count) {
      const std::size_t dots = rest.find("..");
      if (read(called, rest.substr(0, dots), parts[count])) break;
      if (dots == std::string_view::npos) {
        if (count == 1) break;
        into = {parts[0], parts[count / 2], parts[count]};
        return {};
      }
      rest.remove_prefix(dots + 2);
    }
    return refuse_text(called, value.text,
                       " is neither one number nor three; write it like 0.12 or, low..nominal..high, 0.08..0.12..0.16");
  }
  if (value.kind != Kind::list) {
    if (auto problem = read(called, value, parts[0])) return problem;
    into = {parts[0], parts[0], parts[0]};
    return {};
  }
  const std::string how = "; give one number, or low, typical and high like 0.08..0.12..0.16";
  count = value.items.size();
  if (count == 0) return refuse(called, "has no number" + how);
  if (count > 3) return refuse(called, "has more than three numbers" + how);
  for (std::size_t i = 0; i < count; ++i)
    if (auto problem = read(called, value.items[i], parts[i])) return problem;
  const double nominal = count == 2 ? (parts[0] + parts[1]) / 2 : parts[count / 2];
  into = {parts[0], nominal, parts[count - 1]};
  return {};
}

Problem refuse_zero(const char* called, double si, Dim dimension) {
  if (si > 0) return {};
  return refuse(called, "is " + quantity_text(si, dimension) + ", but must be above 0; write it like " +
                            describe(dimension).how_to_write);
}

}  // namespace tauten::shared
