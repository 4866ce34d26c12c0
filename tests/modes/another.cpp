#include "tauten/question/identify.hpp"

int others() { return static_cast<int>(tauten::identify(tauten::Length(0.019)).size()); }
