// Torque and angle: how far to turn, and what it leaves: what is asked, what is answered, and how to ask.
#pragma once

#include "tauten/question/turn_answer.hpp"
#include "tauten/question/turn_job.hpp"
#include "tauten/question/workings/turn.hpp"
#include "tauten/question/workings/turn_derivation.hpp"
