// Work that is shared among threads and gives the same result on any number of them.
#pragma once

#include <algorithm>
#include <cstdint>
#include <thread>
#include <vector>

namespace tauten::detail {

/// Calls `work(i)` for every i below `count`. The calls must not depend on each other. With one thread none is started.
template <class Work>
void share_out(std::uint64_t count, int threads, const Work& work) {
  const auto workers = std::min(count, static_cast<std::uint64_t>(std::clamp(threads, 1, 256)));
  const auto from = [&](std::uint64_t first) {
    for (std::uint64_t i = first; i < count; i += workers) work(i);
  };
  std::vector<std::thread> others;
  for (std::uint64_t first = 1; first < workers; ++first) others.emplace_back(from, first);
  from(0);
  for (std::thread& other : others) other.join();
}

}  // namespace tauten::detail
