// Which pattern the holes are, compiled.
#include "tauten/question/pattern.hpp"
#include "tauten/question/workings/pattern.hpp"
#include "tauten/question/workings/pattern_derivation.hpp"
