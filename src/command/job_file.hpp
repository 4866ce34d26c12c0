// Joints from a TOML file: [[joint]] tables whose keys are the options of a question.
#pragma once

#include <functional>

#include "command/page_options.hpp"
#include "command/table_file.hpp"

namespace tauten::command {

/// What is printed for one joint of a list.
using PageFor = std::function<Page(const SaidWords& words, const PageUnits& units)>;

/// Answers for every row of a table or every joint of a list; those that are wrong do not spoil the others.
/// \param said      what was said beside --file: it holds for all rows, and a list has none of it
/// \param page_for  the page of a joint; without it the one that every question has
/// \throws Error  if the file as a whole cannot be used
void answer_file(Program& program, std::string_view question, const TableOptions& table, const SaidWords& said,
                 const PageOptions& page, const PageFor& page_for = {});

}  // namespace tauten::command
