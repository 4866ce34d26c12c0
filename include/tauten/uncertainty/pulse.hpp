// Progress of a round of work that several threads share: asked for now and then, and a stop that all of them hear.
#pragma once

#include <algorithm>
#include <atomic>
#include <chrono>
#if defined(__STDCPP_THREADS__)
#include <thread>
#endif

#include "tauten/uncertainty/monte_carlo_options.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// A model may be slow, so that a single block of trials takes seconds. Every thread calls `go_on` between a few trials;
/// the one that made the pulse asks the progress call, ten times a second.
class Pulse {
 public:
  explicit Pulse(const ProgressCall& call) : call_(call) {}

  /// A round begins.
  /// \param done      trials before it
  /// \param expected  trials that will be needed, as far as can be told
  void begin(std::uint64_t done, std::uint64_t expected) {
    done_ = done, expected_ = expected;
    rows_ = 0;
  }
  /// \param rows  trials that this thread has done since it asked last
  /// \return false once the run must stop
  bool go_on(std::uint64_t rows) {
    rows_ += rows;
    const std::uint64_t done = done_ + rows_;
    if (call_ && !stopped_ && at_home() && done > said_ && Clock::now() - last_ > std::chrono::milliseconds(100))
      report(done, std::max(done, expected_));
    return !stopped_;
  }
  /// Asks the progress call, on the thread that made the pulse.
  void report(std::uint64_t done, std::uint64_t expected) {
    if (!call_({done, expected})) stopped_ = true;
    said_ = done;
    last_ = Clock::now();
  }
  bool stopped() const noexcept { return stopped_; }

 private:
  using Clock = std::chrono::steady_clock;

#if defined(__STDCPP_THREADS__)
  bool at_home() const noexcept { return std::this_thread::get_id() == home_; }
  std::thread::id home_ = std::this_thread::get_id();
#else
  static bool at_home() noexcept { return true; }
#endif

  const ProgressCall& call_;
  Clock::time_point last_ = Clock::now();
  std::uint64_t done_ = 0, expected_ = 0;
  std::uint64_t said_ = 0;  ///< trials that the call has heard of; it hears of more, or of nothing
  std::atomic<std::uint64_t> rows_{0};
  std::atomic<bool> stopped_{false};
};

}  // namespace tauten::TAUTEN_ABI::detail
