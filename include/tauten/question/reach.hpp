// The setting of a wrench that reaches a fastener over extensions, joints and multipliers.
#pragma once

#include "tauten/question/reach_job.hpp"
#include "tauten/question/workings/reach.hpp"
#include "tauten/question/workings/reach_derivation.hpp"
