// The sheet that goes to the machine: what somebody describes in a file, and what is printed, page by page.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "tauten/explain/page.hpp"
#include "tauten/explain/page_format.hpp"

#include "shared/said_words.hpp"

namespace tauten::sheet {

using shared::SaidWords;

/// A torque wrench on the sheet.
struct SheetWrench {
  std::string name, serial, due;
  SaidWords reach;  ///< keys of `reach`
};

/// One joint on the sheet.
struct SheetJoint {
  std::string name, carries, pattern, hole, mark, turned, held, direction, length, washers, locking, gasket;
  std::string maker_torque, maker_source, lubricate, load_state, final_state, retighten, wrench;
  std::vector<std::string> unload, take_off, reload, release, new_parts, not_reused, look;
  SaidWords torque;    ///< keys of `torque`: the fastener, what is on it, and what it is meant to reach
  SaidWords reach;     ///< keys of `reach`: what is between wrench and fastener here
  SaidWords sequence;  ///< keys of `sequence`
  SaidWords free;      ///< keys of `free`, where it may be stuck
  SaidWords turn;      ///< keys of `turn`, where it is turned by angle
};

/// What a file describes.
struct SheetPlan {
  std::string title, place, machine, note;
  std::vector<std::string> before, fetch, after;
  std::vector<SheetWrench> wrenches;
  std::vector<SheetJoint> joints;  ///< in the order of undoing
  std::string fingerprint;         ///< of the file, to tell two sheets apart
};

/// \param file         a record: what a TOML file holds
/// \param called       what it is called in errors: the name of the file
/// \param fingerprint  of what was given
/// \throws Error  if it cannot be used
SheetPlan sheet_plan_of(const shared::Value& file, const std::string& called, const std::string& fingerprint);

/// \return a short text to tell apart two sheets that somebody holds in hand
std::string fingerprint_of(const std::string& content);

/// Something to do, with an empty box in front and the caution that belongs to it beside.
struct SheetStep {
  std::string text;
  std::string caution{};
};

/// A piece of a page.
struct SheetBlock {
  std::string title{};
  std::vector<std::string> lines{};
  std::vector<SheetStep> steps{};
  std::optional<PageTable> table{};
  bool new_page = false;  ///< on paper
  bool to_fill = false;   ///< the table has room for handwriting
  PageDrawing drawing{};
  std::vector<std::string> boxes{};  ///< room for handwriting, each with its title
};

/// Pages that belong together; they begin on a new sheet of paper.
struct SheetSection {
  std::string title;
  std::vector<SheetBlock> blocks;
};

struct Sheet {
  std::string title, subtitle, note, stamp;
  std::vector<SheetSection> sections;
};

/// Every figure on it is the answer of a question, and a list at its end names the command that asks it again.
/// \param time  when it is printed, as people write it; "": now
Sheet sheet_of(const SheetPlan& plan, const std::string& time);

std::string sheet_as(const Sheet& sheet, PageFormat format);

}  // namespace tauten::sheet
