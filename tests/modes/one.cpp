// Compiled in either mode, and linked with another.cpp in the same or the other one.
#include "tauten/question/identify.hpp"

int others();

int main() { return tauten::try_identify(tauten::Length(0.024)) && others() > 0 ? 0 : 1; }
