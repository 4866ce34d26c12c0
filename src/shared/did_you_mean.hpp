// The end of a sentence that refuses a word: what may have been meant.
#pragma once

#include <algorithm>
#include <cctype>
#include <string>
#include <vector>

#include "tauten/base/spelling.hpp"

namespace tauten::shared {

/// \return `otherwise` ("the verbs are ...") as the end of a sentence; before it, if one of the known words is like
///         `word`, the question whether that was meant
inline std::string did_you_mean(const std::string& word, const std::vector<std::string>& known, std::string otherwise) {
  if (word.size() > 40) return "; " + otherwise;
  const std::string* best = nullptr;
  std::size_t least = (word.size() - std::min(word.size(), word.find_first_not_of('-'))) / 3 + 1;
  const auto mean = [&](const std::string& candidate) {
    otherwise[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(otherwise[0])));
    return "; did you mean " + candidate + "? " + otherwise;
  };
  // An option that begins or ends like the other is meant: --property-class for --class.
  const auto within = [](const std::string& name, const std::string& part) {
    return part.size() > 5 && part.starts_with("--") && (name.starts_with(part) || name.ends_with(part.substr(1)));
  };
  // How it begins tells more than how it ends: --specified-condition is --specified, not --condition.
  const auto first = std::find_if(known.begin(), known.end(), [&](const std::string& candidate) {
    return within(word, candidate) && word.starts_with(candidate);
  });
  if (first != known.end()) return mean(*first);
  for (const std::string& candidate : known)
    if (within(word, candidate) || within(candidate, word))
      best = &candidate, least = 0;
    else if (const std::size_t apart = tauten::detail::letters_apart(word, candidate); apart < least)
      best = &candidate, least = apart;
  return best ? mean(*best) : "; " + otherwise;
}

/// \return `words` with commas between them
inline std::string listed(const std::vector<std::string>& words) {
  std::string list;
  for (const std::string& word : words) list += (list.empty() ? "" : ", ") + word;
  return list;
}

}  // namespace tauten::shared
