// Header-only or compiled: in which of its two modes a program uses the library.
#pragma once

#include "tauten/base/version.hpp"

/// A program that links `tauten::compiled` defines TAUTEN_COMPILED. The header of a question then declares its functions and
/// the library holds them; without it they are defined, inline, at the end of that header. TAUTEN_FUNCTION stands before such
/// a function where it is defined.
#ifdef TAUTEN_COMPILED
#define TAUTEN_FUNCTION
#define TAUTEN_MODE "tauten_compiled_mode"
#else
#define TAUTEN_FUNCTION inline
#define TAUTEN_MODE "tauten_header_only_mode"
#endif

namespace tauten::TAUTEN_ABI::detail {

// One program, one mode: else a function would be inline here and not there, against the one-definition rule. Files of one
// mode share one definition of a symbol, those of the other mode another one, and no linker takes both: it names the symbol.
// Assembly, since C++ has only weak definitions to share; in a function, so that link-time optimisation sees one, too.
#ifdef __ELF__
#ifdef TAUTEN_COMPILED
[[gnu::used]] inline void compiled_mode() noexcept {
#else
[[gnu::used]] inline void header_only_mode() noexcept {
#endif
  __asm__ volatile(".ifndef ." TAUTEN_MODE "\n.set ." TAUTEN_MODE
                   ", 1\n"
                   ".pushsection .tauten_mode,\"G\",%%progbits," TAUTEN_MODE
                   ",comdat\n"
                   ".globl tauten_header_only_and_compiled_modes_are_mixed\n"
                   ".hidden tauten_header_only_and_compiled_modes_are_mixed\n"
                   "tauten_header_only_and_compiled_modes_are_mixed: .byte 0\n"
                   ".popsection\n"
                   ".endif" ::);
}
#endif

}  // namespace tauten::TAUTEN_ABI::detail
