#pragma once

#include "tauten/explain/tree.hpp"

namespace tauten::c_api {

/// \return every formula by name: summary, inputs, output, sources
Tree formulas_tree();

}  // namespace tauten::c_api
