// The setting of a wrench, compiled.
#include "tauten/question/reach.hpp"
#include "tauten/question/workings/reach.hpp"
#include "tauten/question/workings/reach_derivation.hpp"
