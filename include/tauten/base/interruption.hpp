// Long work that can be ended from outside: somebody's interrupt key is heard while a question is answered.
#pragma once

#include <atomic>
#include <chrono>

#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

/// What the long work of a thread listens to.
struct Attention {
  void (*ask)(void* who) = nullptr;
  void* who = nullptr;
  const std::atomic<bool>* ended = nullptr;  ///< another thread that shares the work has ended it
  std::chrono::steady_clock::time_point next{};
};

#if defined(__cpp_exceptions)
inline thread_local Attention attention;

/// Thrown where a thread that shares work ends because another one has.
struct Ended {};

/// Called every few microseconds of long work; throws where it has to end.
inline void attend() {
  if (attention.ended != nullptr && attention.ended->load(std::memory_order_relaxed)) throw Ended();
  if (attention.ask == nullptr) return;
  if (const auto now = std::chrono::steady_clock::now(); now > attention.next) {
    attention.next = now + std::chrono::milliseconds(50);
    attention.ask(attention.who);
  }
}
#else
inline void attend() noexcept {}
#endif

}  // namespace detail

#if defined(__cpp_exceptions)
/// While it lives, long work that this thread begins calls a function some twenty times a second; what this throws ends the
/// work and comes out of it.
class Interruption {
 public:
  Interruption(void (*ask)(void* who), void* who) : before_(detail::attention) {
    detail::attention = {ask, who, before_.ended};
  }
  /// \param ended  what another thread sets to end the work of this one
  explicit Interruption(const std::atomic<bool>& ended) : before_(detail::attention) {
    detail::attention = {nullptr, nullptr, &ended};
  }
  ~Interruption() { detail::attention = before_; }
  Interruption(const Interruption&) = delete;
  Interruption& operator=(const Interruption&) = delete;

 private:
  detail::Attention before_;
};
#endif

}  // namespace tauten::TAUTEN_ABI
