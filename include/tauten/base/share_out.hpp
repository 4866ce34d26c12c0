// Work that is shared among threads and gives the same result on any number of them.
#pragma once

#include <algorithm>
#include <atomic>
#include <cstdint>
#include <exception>
#include <vector>
#if defined(__STDCPP_THREADS__)
#include <thread>
#endif

#include "tauten/base/interruption.hpp"
#include "tauten/base/version.hpp"

namespace tauten::TAUTEN_ABI::detail {

/// \return what `act` throws, or nothing
template <class Act>
std::exception_ptr thrown_by(const Act& act) noexcept {
#if defined(__cpp_exceptions)
  try {
    act();
  } catch (...) {
    return std::current_exception();
  }
#else
  act();
#endif
  return {};
}

/// Calls `work(i)` for every i below `count`. The calls must not depend on each other. With one thread none is started.
/// Where a thread cannot be had, those that run do its share. What a call throws is thrown here, after all have ended;
/// those that call `attend` do so soon.
template <class Work>
void share_out(std::uint64_t count, [[maybe_unused]] int threads, const Work& work) {
  std::atomic<std::uint64_t> next{0};
  std::atomic<bool> failed{false};
  const auto take = [&] {
    for (std::uint64_t i; !failed && (i = next++) < count;) work(i);
  };
#if defined(__STDCPP_THREADS__)
  std::exception_ptr problem;
  const auto run = [&]() noexcept {
    if (const std::exception_ptr thrown = thrown_by(take); thrown && !failed.exchange(true)) problem = thrown;
  };
  {
    std::vector<std::jthread> others;  // joined at the end of this block, however it is left
    const auto workers = std::min(count, static_cast<std::uint64_t>(std::clamp(threads, 1, 256)));
    thrown_by([&] {
      while (others.size() + 1 < workers)
        others.emplace_back([&]() noexcept {
#if defined(__cpp_exceptions)
          const Interruption with_the_others(failed);
#endif
          run();
        });
    });
    run();
  }
  if (problem) std::rethrow_exception(problem);
#else
  take();
#endif
}

}  // namespace tauten::TAUTEN_ABI::detail
