// Text into cells, by RFC 4180 and by what spreadsheets and people make of it.
#include <doctest/doctest.h>

#include <string>
#include <vector>

#include "rows/csv.hpp"

namespace csv_test {

namespace {

using namespace tauten::shared;
using Cells = std::vector<std::string>;

Cells cells_of(std::string text, std::string* wrong = nullptr, std::string* rest = nullptr) {
  std::vector<std::string_view> cells;
  char* first = text.data();
  const char* last = first + text.size();
  const char* found = csv_take_record(first, last, cells);
  if (wrong) *wrong = found;
  if (rest) *rest = std::string(static_cast<const char*>(first), last);
  return {cells.begin(), cells.end()};
}

}  // namespace

TEST_CASE("cells stand between commas, without the blanks around them") {
  CHECK(cells_of("M16,8.8,130N.m\n") == Cells{"M16", "8.8", "130N.m"});
  CHECK(cells_of(" M16 ,\t8.8, \r\n") == Cells{"M16", "8.8", ""});
  CHECK(cells_of(",,\n") == Cells{"", "", ""});
  CHECK(cells_of("\n") == Cells{""});
  CHECK(cells_of("a,b") == Cells{"a", "b"});
  CHECK(cells_of("a,") == Cells{"a", ""});
}

TEST_CASE("quotes hold commas, line breaks and doubled quotes (RFC 4180, rules 5 to 7)") {
  CHECK(cells_of("\"a,b\",c\n") == Cells{"a,b", "c"});
  CHECK(cells_of("\"a \"\"b\"\"\",\"\"\"\"\n") == Cells{"a \"b\"", "\""});
  CHECK(cells_of("\"a\r\nb\",c\r\n") == Cells{"a\r\nb", "c"});
  CHECK(cells_of("\"\",x\n") == Cells{"", "x"});
  CHECK(cells_of("\"a\"\n") == Cells{"a"});
}

TEST_CASE("an inch mark is not a quote") { CHECK(cells_of("5/8\",dry\n") == Cells{"5/8\"", "dry"}); }

TEST_CASE("a cell that goes on behind its quote is told, and the next record is found") {
  std::string wrong, rest;
  CHECK(cells_of("\"M16\"x,8.8\nM12,8.8\n", &wrong, &rest) == Cells{"M16", "8.8"});
  CHECK(wrong == "a cell goes on behind its closing quote");
  CHECK(rest == "M12,8.8\n");
}

TEST_CASE("one record after the other is taken until nothing is left") {
  std::string text = "a,b\r\n\"c\nd\",e\n\nf";
  std::vector<std::string_view> cells;
  std::vector<Cells> all;
  char* first = text.data();
  const char* last = first + text.size();
  while (first != last) {
    csv_take_record(first, last, cells);
    all.push_back({cells.begin(), cells.end()});
  }
  CHECK(all == std::vector<Cells>{{"a", "b"}, {"c\nd", "e"}, {""}, {"f"}});
}

TEST_CASE("whole records end at line breaks outside quotes") {
  struct Case {
    std::string text;
    std::size_t size, count;
  };
  for (const auto& [text, size, count] :
       {Case{"a,b\nc,d\ne", 8, 2}, Case{"a,\"b\nc\"\nd", 8, 1}, Case{"", 0, 0}, Case{"a", 0, 0}, Case{"\n\n", 2, 2},
        Case{"a,\"b\n", 0, 0}, Case{"5/8\"\n1\"\n", 8, 2}, Case{"\"a\"\"\nb\"\n", 8, 1}}) {
    const CsvRecords whole = csv_whole_records(text);
    CHECK_MESSAGE(whole.size == size, text);
    CHECK_MESSAGE(whole.count == count, text);
  }
}

TEST_CASE("what is written is read back as it was") {
  for (const std::string text : {"plain", "with, comma", "with \"quotes\"", "two\nlines", " blank before", "", "\""}) {
    std::string record;
    csv_add(record, text);
    record += ",end\n";
    CHECK(csv_record_end(record) == record.size());
    Cells expected{text, "end"};
    if (text == " blank before") expected[0] = "blank before";  // blanks around a cell are not part of it
    CHECK(cells_of(record) == expected);
  }
  for (const double x : {0.0, -1.5, 1.0 / 3, 6.02e23, 1e-300}) {
    std::string record;
    csv_add(record, x);
    CHECK(std::stod(record) == x);
  }
  std::string record;
  csv_add(record, __builtin_nan(""));
  CHECK(record.empty());
}

}  // namespace csv_test
