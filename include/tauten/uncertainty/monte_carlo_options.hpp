// Options of a Monte Carlo run.
#pragma once

#include <cstdint>
#include <functional>
#include <string>

#include "tauten/base/error.hpp"
#include "tauten/base/refusal.hpp"

namespace tauten::TAUTEN_ABI {

/// Where the ends of a coverage interval lie.
enum class Coverage : unsigned char {
  symmetric,  ///< as much chance below as above
  shortest    ///< the shortest interval that holds its share; the more apt one for skewed results
};

/// How far a run has come.
struct Progress {
  std::uint64_t done = 0;      ///< trials
  std::uint64_t expected = 0;  ///< trials that will be needed, as far as can be told by now
};

/// Called now and then, on the thread that asked; false stops the run, and what it has found by then is the result.
using ProgressCall = std::function<bool(const Progress&)>;

/// How a Monte Carlo run is done.
struct MonteCarloOptions {
  double coverage = 0.95;                   ///< share that a coverage interval holds
  Coverage interval = Coverage::symmetric;  ///< the one whose ends must be certain; the shortest takes more trials
  int digits = 2;            ///< significant digits of the standard uncertainty that must be certain, 1 to 5
  std::uint64_t trials = 0;  ///< as many and no more; 0: until the digits are certain
  std::uint64_t most_trials = 10'000'000;  ///< when to give up otherwise; each takes 8 bytes of memory
  std::uint64_t seed = 1;
  int jobs = 1;  ///< the result does not depend on it; the model must then be safe to call from several threads
  ProgressCall progress = nullptr;
};

namespace detail {

inline Error too_few_jobs(int threads) {
  return refusal("jobs", threads, "but must be at least 1; give the number of worker threads");
}

}  // namespace detail

}  // namespace tauten::TAUTEN_ABI
