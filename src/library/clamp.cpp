// Clamp load and torque, compiled: what their headers declare.
#include "tauten/question/clamp.hpp"
#include "tauten/question/clamp_uncertainty.hpp"
#include "tauten/question/workings/clamp.hpp"
#include "tauten/question/workings/clamp_derivation.hpp"
#include "tauten/question/workings/clamp_uncertainty.hpp"
