// The page of an identification: which fastener it most often is, and how to tell it from the others.
#pragma once

#include "shared/identification.hpp"
#include "tauten/explain/page.hpp"
#include "tauten/explain/page_units.hpp"

namespace tauten::shared {

/// Candidates that a page shows unless all are asked for.
inline constexpr std::size_t shown_candidates = 8;

/// \param all  show every candidate, not only the most likely
Page page_of(const Identification& answer, const PageUnits& units = {}, bool all = false);

}  // namespace tauten::shared
