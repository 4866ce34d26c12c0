// Quantities as people write them, the units and digits of a style, and numbers.
#include <cmath>

#include "tauten/base/quantity_text.hpp"
#include "tauten/base/unit_text.hpp"
#include "tauten/explain/style.hpp"

#include "fuzz.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tauten;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  for (int i = 0; i < dimension_count; ++i) {
    const auto read = try_read_quantity("torque", text, static_cast<Dim>(i));
    if (read) {
      fuzz::must(std::isfinite(*read), "what is read is finite");
      fuzz::must_be_plain(quantity_text(*read, static_cast<Dim>(i)));
    } else {
      fuzz::must_be_plain(read.error());
    }
  }
  fuzz::must_be_plain(detail::visible(text));
  fuzz::must_be_plain(detail::shown(text));
  return 0;
}
