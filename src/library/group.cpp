// What each bolt of a group carries, compiled.
#include "tauten/question/group.hpp"
#include "tauten/question/workings/group.hpp"
#include "tauten/question/workings/group_derivation.hpp"
