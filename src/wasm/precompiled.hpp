// What most sources of the modules include, read once for all of them.
#pragma once

#include "shared/clamp_inputs.hpp"
#include "shared/free_inputs.hpp"
#include "shared/group_inputs.hpp"
#include "shared/identification_page.hpp"
#include "shared/pages.hpp"
#include "shared/pattern_inputs.hpp"
#include "shared/prying_inputs.hpp"
#include "shared/questions.hpp"
#include "shared/reach_inputs.hpp"
#include "shared/sequence_inputs.hpp"
#include "shared/thread_inputs.hpp"
#include "shared/turn_inputs.hpp"
