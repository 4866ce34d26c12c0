// Numbers and quantities as text, for all that writes.
#pragma once

#include "tauten/base/number_text.hpp"
#include "tauten/base/quantity_text.hpp"
