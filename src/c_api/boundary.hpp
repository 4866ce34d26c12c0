// What every function of the C interface does at the border: no exception leaves, errors become a status.
#pragma once

#include <cstring>
#include <new>
#include <string>

#include "c_api/tauten.h"
#include "tauten/explain/tree.hpp"

struct tauten_answer {
  tauten::Tree tree;
};

namespace tauten::c_api {

inline tauten_status fail(tauten_error* error, tauten_status status, const Error& why) noexcept {
  if (error != nullptr) {
    std::snprintf(error->argument, sizeof error->argument, "%s", why.argument());
    std::snprintf(error->message, sizeof error->message, "%s", why.what());
  }
  return status;
}

inline tauten_status null_pointer(tauten_error* error) noexcept {
  return fail(error, TAUTEN_WRONG_INPUT, Error("", "a pointer is null; give a valid address"));
}

/// \return what `body` returns, or `otherwise` if memory ran out
template <class Result, class Body>
Result guarded(Result otherwise, Body body) noexcept {
#if defined(__cpp_exceptions)
  try {
    return body();
  } catch (...) {  // nothing else is thrown: every call below is one of the `try_` functions
    return otherwise;
  }
#else
  (void)otherwise;
  return body();
#endif
}

/// The same for functions that return a status.
template <class Body>
tauten_status guarded_status(tauten_error* error, Body body) noexcept {
  if (error != nullptr) error->argument[0] = error->message[0] = '\0';
  const tauten_status status = guarded(TAUTEN_NO_MEMORY, body);
  if (status == TAUTEN_NO_MEMORY) fail(error, status, Error("", "there is not enough memory"));
  return status;
}

/// Writes as much of `text` as there is room for, and a zero.
/// \return the size of the whole text
inline std::size_t write(const std::string& text, char* buffer, std::size_t size) noexcept {
  if (buffer != nullptr && size > 0) {
    const std::size_t count = text.size() < size ? text.size() : size - 1;
    std::memcpy(buffer, text.data(), count);
    buffer[count] = '\0';
  }
  return text.size();
}

}  // namespace tauten::c_api
