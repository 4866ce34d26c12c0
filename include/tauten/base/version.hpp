// The version of the library, and the inline namespace that keeps two versions in one program apart.
#pragma once

#define TAUTEN_VERSION_MAJOR 0
#define TAUTEN_VERSION_MINOR 1
#define TAUTEN_VERSION_PATCH 0

/// 100 for 0.1.0, 10203 for 1.2.3: for `#if`.
#define TAUTEN_VERSION_NUMBER (TAUTEN_VERSION_MAJOR * 10000 + TAUTEN_VERSION_MINOR * 100 + TAUTEN_VERSION_PATCH)
/// "0.1.0"
#define TAUTEN_VERSION TAUTEN_VERSION_TEXT(TAUTEN_VERSION_MAJOR, TAUTEN_VERSION_MINOR, TAUTEN_VERSION_PATCH)
#define TAUTEN_VERSION_TEXT(major, minor, patch) TAUTEN_VERSION_JOINED(major, minor, patch)
#define TAUTEN_VERSION_JOINED(major, minor, patch) #major "." #minor "." #patch

/// What opens the namespace of everything in these headers: `namespace tauten::TAUTEN_ABI {`. Their functions are inline, and
/// differ between versions, and with and without exceptions. The name of this inline namespace is part of theirs, so a linker
/// keeps them apart: two header-only parts of a program work side by side, and the compiled library of another version, or
/// without the exceptions that its user has, is not found by name.
#define TAUTEN_ABI TAUTEN_ABI_OF(TAUTEN_VERSION_MAJOR, TAUTEN_VERSION_MINOR, TAUTEN_VERSION_PATCH)
#define TAUTEN_ABI_OF(major, minor, patch) TAUTEN_ABI_NAMED(major, minor, patch)
#if defined(__cpp_exceptions)
#define TAUTEN_ABI_NAMED(major, minor, patch) inline v##major##_##minor##_##patch
#else
#define TAUTEN_ABI_NAMED(major, minor, patch) inline v##major##_##minor##_##patch##_no_exceptions
#endif
