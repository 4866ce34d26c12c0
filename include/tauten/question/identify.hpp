// Which fastener is this: candidates for the socket, key or bit that fits.
#pragma once

#include "tauten/question/workings/identify.hpp"
