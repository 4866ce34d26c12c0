// The tightening curve of a joint as somebody describes it.
#pragma once

#include "tauten/question/turn_job.hpp"
#include "tauten/question/workings/curve.hpp"
