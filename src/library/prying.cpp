// Prying, compiled.
#include "tauten/question/prying.hpp"
#include "tauten/question/workings/prying.hpp"
