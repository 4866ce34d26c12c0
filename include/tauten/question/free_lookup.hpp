// A stuck fastener by the names on it: thread, mark and tool give its dimensions and strengths.
#pragma once

#include "tauten/base/error.hpp"
#include "tauten/base/mode.hpp"
#include "tauten/question/free_names.hpp"

namespace tauten::TAUTEN_ABI {

/// Fills thread and class where only a tool is given, as `clamp` assumes them: the most common thread that takes socket or
/// key, and the class of an unmarked head. The job keeps that they are assumed.
/// \return that nothing in the tables takes the tool, or nothing
std::optional<Error> assume(FreeNames& names, FreeJob& job);

/// Fills diameter, pitch, width or drive number, and strengths of a job from names, and whether the bolt is quenched from
/// its class.
/// \return what is missing, unknown or said twice, or nothing
std::optional<Error> look_up(const FreeNames& names, FreeJob& job);

}  // namespace tauten::TAUTEN_ABI

#ifndef TAUTEN_COMPILED
#include "tauten/question/workings/free_lookup.hpp"
#endif
