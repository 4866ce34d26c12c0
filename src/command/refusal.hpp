// Wrong input in one sentence, in the words that the user typed.
#pragma once

#include <string>
#include <vector>

#include "shared/did_you_mean.hpp"
#include "tauten/base/error.hpp"

namespace CLI {
class App;
class ParseError;
}  // namespace CLI

namespace tauten::command {

using shared::did_you_mean;
using shared::listed;

/// \return `text` in quotes for a message: cut short, and what is no printable ASCII shown as ?
std::string in_quotes(const std::string& text);

/// \return a path in quotes; of a long one the end, which tells more
std::string path_text(const std::string& path);

/// \return what was wrong with the words on the command line
Error refusal_of(const CLI::App& app, const CLI::ParseError& problem);

}  // namespace tauten::command
