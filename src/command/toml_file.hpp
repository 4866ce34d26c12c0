// The tables of a TOML file.
#pragma once

#include <toml++/toml.h>

#include <string>

namespace tauten::command {

/// \param content  receives the bytes of the file
/// \throws Error  if it cannot be read, or is not TOML that the parser survives
toml::table toml_file(const std::string& path, std::string& content);

}  // namespace tauten::command
