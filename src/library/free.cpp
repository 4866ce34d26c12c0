// Stuck fasteners, compiled.
#include "tauten/question/free.hpp"
#include "tauten/question/free_lookup.hpp"
#include "tauten/question/free_uncertainty.hpp"
#include "tauten/question/workings/free.hpp"
#include "tauten/question/workings/free_derivation.hpp"
#include "tauten/question/workings/free_lookup.hpp"
#include "tauten/question/workings/free_uncertainty.hpp"
