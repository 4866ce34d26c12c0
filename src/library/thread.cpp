// All about a thread, compiled.
#include "tauten/question/thread.hpp"
#include "tauten/question/workings/thread.hpp"
