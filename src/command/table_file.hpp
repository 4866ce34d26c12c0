// A question asked for every row of a CSV file, of any length.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "command/program.hpp"

namespace tauten::command {

/// What is said about the table.
struct TableOptions {
  std::string file;                  ///< "-" for standard input
  std::string output;                ///< "" for standard output
  std::string columns;               ///< figures with commas between them; "" for the typical ones
  std::vector<std::string> renamed;  ///< each `column=key`
  std::size_t from_row = 1;
  bool shop = false;              ///< figures in the units of a workshop
  unsigned jobs = 0;              ///< 0: as many as the machine has
  CLI::Option* option = nullptr;  ///< --file

  bool given() const { return option->count() > 0; }
  /// \return true if the file is a table, as any is that does not end in `.toml`
  bool is_table() const;
};

inline constexpr const char* table_help = "Answer for each [[joint]] of a TOML file or row of a CSV table";

/// Adds --file alone.
std::shared_ptr<TableOptions> add_file_option(CLI::App& verb);

/// Adds --file and what belongs to it.
std::shared_ptr<TableOptions> add_table_options(CLI::App& verb);

/// Answers every row; those that are wrong have their error in a column.
/// \param question  "clamp"
/// \param said      keys and texts that hold for all rows that do not say them themselves
/// \throws Error  if the file cannot be used
void answer_table(Program& program, const TableOptions& options, std::string_view question,
                  const std::vector<std::pair<std::string, std::string>>& said);

}  // namespace tauten::command
