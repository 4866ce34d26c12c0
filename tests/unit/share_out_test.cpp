#include <doctest/doctest.h>

#include <atomic>

#include "tauten/base/error.hpp"
#include "tauten/base/share_out.hpp"

namespace share_out_test {

TEST_CASE("every piece of work is done once, with any number of threads") {
  for (const int threads : {-1, 0, 1, 2, 5, 300}) {
    std::vector<std::atomic<int>> done(101);
    tauten::detail::share_out(done.size(), threads, [&](std::uint64_t i) { ++done[i]; });
    for (const auto& count : done) CHECK(count == 1);
  }
  tauten::detail::share_out(0, 4, [](std::uint64_t) { FAIL("there is nothing to do"); });
}

TEST_CASE("what the work throws arrives after all threads have ended") {
  for (const int threads : {1, 4}) {
    std::atomic<int> busy{0};
    const auto work = [&](std::uint64_t i) {
      ++busy;
      if (i == 37) {
        --busy;
        throw tauten::Error("model", "has no value");
      }
      --busy;
    };
    CHECK_THROWS_AS(tauten::detail::share_out(1000, threads, work), tauten::Error);
    CHECK(busy == 0);
  }
}

}  // namespace share_out_test
