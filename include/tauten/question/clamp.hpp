// The clamp load that a torque leaves, and the torque for a clamp load: what is asked, what is answered, and how to ask.
#pragma once

#include "tauten/question/clamp_answer.hpp"
#include "tauten/question/workings/clamp.hpp"
#include "tauten/question/workings/clamp_derivation.hpp"
