#include "bindings.hpp"
#include "shared/registry.hpp"

namespace tauten::python {

std::span<const Entry> entries() noexcept { return shared::registry(); }
const char* room_of(const Entry& entry) noexcept { return shared::room_of(entry); }

}  // namespace tauten::python
