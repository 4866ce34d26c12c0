// The keys of a stuck fastener.
#pragma once

#include "tauten/loosening/free.hpp"
#include "tauten/loosening/free_lookup.hpp"

#include "shared/keys.hpp"

namespace tauten::shared {

/// A stuck fastener as somebody names and describes it.
struct FreeQuestion {
  FreeNames names;
  FreeJob job;
  std::optional<bool> quenched;  ///< as it is said; else it follows from the class
};

std::span<const Key<FreeQuestion>> free_keys();

/// The answer with the job, filled in.
struct FreeAnswer : Free {
  FreeJob job;
};

/// \return the job that is said, names looked up
Outcome<FreeJob> try_free_job(std::span<const Assignment> said);

/// Whether it comes free before something gives, where to stop, and what to do next.
Outcome<FreeAnswer> try_free(std::span<const Assignment> said);

}  // namespace tauten::shared
