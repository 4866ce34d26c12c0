// The order of tightening, compiled.
#include "tauten/question/sequence.hpp"
#include "tauten/question/workings/sequence.hpp"
#include "tauten/question/workings/sequence_derivation.hpp"
