// Lists of joints in TOML: what the scan lets through the parser survives, and what it refuses is told in a sentence.
#include <sys/mman.h>
#include <unistd.h>

#include <string>

#include "command/toml_file.hpp"
#include "tauten/base/error.hpp"

#include "fuzz.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const int file = memfd_create("list.toml", 0);
  static const std::string path = "/proc/self/fd/" + std::to_string(file);
  tauten::fuzz::must(ftruncate(file, 0) == 0 && pwrite(file, data, size, 0) == static_cast<ssize_t>(size), "memory");
  std::string content;
  try {
    for (const auto& [name, node] : tauten::command::toml_file(path, content)) {
      node.visit([](const auto&) {});
      tauten::fuzz::must(!content.empty() && name.str().size() <= size, "names come from the file");
    }
  } catch (const tauten::Error& error) {
    tauten::fuzz::must_be_plain(error);
  }
  return 0;
}
