// What heads say, and what a silent head must be taken for.
#include "tauten/part/head_mark.hpp"

#include <doctest/doctest.h>

namespace head_mark_test {

using namespace tauten;

TEST_CASE("the mark of a class is its name") {
  for (const table::PropertyClassRow& row : table::property_classes) {
    const std::string name(row.name);
    CAPTURE(name);
    CHECK(head_marks(name).starts_with("'" + name.substr(0, name.find(' ')) + "' and the maker's mark"));
  }
  CHECK(head_marks("8.8 structural").find("HV") != std::string::npos);
  CHECK(head_marks("A4-80").find("magnet") != std::string::npos);
  CHECK(head_marks("4.6") != head_marks("10.9"));
  CHECK_FALSE(try_head_marks("7.7"));
  CHECK_THROWS_AS((void)head_marks("7.7"), Error);
}

TEST_CASE("an unmarked head counts as the weakest class that is still made") {
  const PropertyClass lowest = property_class(unmarked_class);
  CHECK_FALSE(lowest.withdrawn);
  for (const table::PropertyClassRow& row : table::property_classes)
    if (!row.withdrawn && row.name[0] != 'A') CHECK(row.tensile_strength >= lowest.tensile_strength.si);
}

}  // namespace head_mark_test
