// Which fastener it is, compiled.
#include "tauten/question/identify.hpp"
#include "tauten/question/workings/identify.hpp"
