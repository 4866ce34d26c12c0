// Tables as text: cut into records and cells, and written again.
#include <string>
#include <vector>

#include "rows/csv.hpp"

#include "fuzz.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace tauten;
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const char separator = shared::csv_separator(text.substr(0, text.find('\n')));
  const shared::CsvRecords whole = shared::csv_whole_records(text, separator);
  fuzz::must(whole.size <= size && whole.last <= whole.size, "whole records lie within the text");
  std::size_t ends = 0, count = 0;
  for (std::size_t end; (end = shared::csv_record_end(text.substr(ends), separator)) != std::string_view::npos; ++count)
    ends += end;
  fuzz::must(ends == whole.size && count == whole.count, "records end one by one where all of them end");

  std::string own(text.substr(0, whole.size));
  char* at = own.data();
  std::vector<std::string_view> cells;
  for (std::size_t i = 0; i < count; ++i) {
    const bool wrong = *shared::csv_take_record(at, own.data() + own.size(), cells, separator) != '\0';
    std::string record;
    std::vector<std::string> kept;
    for (const std::string_view cell : cells) {
      if (!kept.empty()) record += separator;
      shared::csv_add(record, cell, separator);
      kept.emplace_back(cell);
    }
    if (wrong) continue;
    record += '\n';
    fuzz::must(shared::csv_record_end(record, separator) == record.size(), "what is written is one record");
    char* again = record.data();
    std::vector<std::string_view> back;
    const bool fine = *shared::csv_take_record(again, record.data() + record.size(), back, separator) == '\0';
    fuzz::must(fine && std::vector<std::string>(back.begin(), back.end()) == kept, "what is written is read back");
  }
  fuzz::must(at == own.data() + own.size(), "all records are taken");
  return 0;
}
