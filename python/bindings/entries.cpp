#include "bindings.hpp"
#include "tauten/formulas.hpp"

namespace tauten::python {

std::span<const Entry> entries() noexcept { return formulas; }

}  // namespace tauten::python
