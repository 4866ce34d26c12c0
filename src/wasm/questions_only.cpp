// What a module that only answers questions does without.
#if __has_include(<__verbose_abort>)
#include <__verbose_abort>
#endif
#include <limits>

#include "shared/registry.hpp"

namespace tauten::shared {

// No formula can be had by name, so that none takes room.
std::span<const Entry> registry() noexcept { return {}; }

const Entry* formula_named(std::string_view) noexcept { return nullptr; }

}  // namespace tauten::shared

/// What the standard library says before it ends the program, with which the writing of files would come along: 2 kB.
#if __has_include(<__verbose_abort>)
void std::__libcpp_verbose_abort(const char*, ...) { __builtin_trap(); }
#endif

// Instead of functions of the C library (musl) that come along and are never called. They are used by what is linked
// after the optimizer has looked.
extern "C" {

/// The remainder of angles beyond a million radians: 4 kB over the network. Questions refuse angles of many turns.
[[gnu::used]] int __rem_pio2_large(double*, double* remainder, int, int, int) {
  remainder[0] = remainder[1] = std::numeric_limits<double>::quiet_NaN();
  return 0;
}

/// What the runtime of C++ says before it ends the program: 3 kB, for the writing of files comes along.
[[gnu::used]] void abort_message(const char*, ...) { __builtin_trap(); }

/// The texts of errors of a system, for a directive of printf that is not used: 1 kB.
[[gnu::used]] char* strerror(int) {
  static char none[] = "";
  return none;
}

}  // extern "C"
