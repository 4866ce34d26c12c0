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

/// \return names of standards in at most so many columns: the first, and how many more there are
std::string standards_text(const std::string& list, std::size_t most);

/// \param looks  how to recognise each of several things, parts with semicolons between them
/// \return the parts that all of them share; they are taken out of `looks`
std::string take_shared_look(std::vector<std::string>& looks);

}  // namespace tauten::shared
