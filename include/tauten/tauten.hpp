// The whole library, with units.
#pragma once

#include "tauten/explain/derivation.hpp"
#include "tauten/formulas.hpp"
#include "tauten/tightening/clamp.hpp"
#include "tauten/units.hpp"
