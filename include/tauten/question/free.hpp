// Will it come loose before it shears: what is asked, what is answered, and how to ask.
#pragma once

#include "tauten/question/free_job.hpp"
#include "tauten/question/workings/free.hpp"
#include "tauten/question/workings/free_derivation.hpp"
