// The tables of a TOML file.
#pragma once

#include <toml++/toml.h>

#include <string>

namespace tauten::command {

/// \throws Error  that the file is of no use
[[noreturn]] void refuse_file(const std::string& path, const std::string& why);

/// \param content  receives the bytes of the file
/// \throws Error  if it cannot be read, or is not TOML that the parser survives
toml::table toml_file(const std::string& path, std::string& content);

}  // namespace tauten::command
