// Tightening by angle and its curve, compiled.
#include "tauten/question/turn.hpp"
#include "tauten/question/curve.hpp"
#include "tauten/question/turn_uncertainty.hpp"
#include "tauten/question/workings/curve.hpp"
#include "tauten/question/workings/turn.hpp"
#include "tauten/question/workings/turn_derivation.hpp"
#include "tauten/question/workings/turn_uncertainty.hpp"
