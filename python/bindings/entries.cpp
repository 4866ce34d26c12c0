#include "bindings.hpp"
#include "shared/registry.hpp"

namespace tauten::python {

std::span<const Entry> entries() noexcept { return shared::registry(); }

}  // namespace tauten::python
