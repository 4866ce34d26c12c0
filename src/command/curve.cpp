// tauten curve: torque and preload against the angle, from snug past yield.
#include <fmt/format.h>

#include "command/job_file.hpp"
#include "command/page_options.hpp"
#include "command/said_options.hpp"
#include "shared/pages.hpp"
#include "tauten/question/curve_page.hpp"

namespace tauten::command {

namespace {

/// One row for each point, under a header that names column and unit.
/// \param shop  in the units of a workshop with six digits, else all in SI
std::string csv_of(const CurveAnswer& a, bool shop) {
  std::string out = "friction";
  CurvePoint::fields([&]<class T>(const char* name, T CurvePoint::*) {
    const DimensionText unit = describe(QuantityTraits<T>::dimension);
    const bool plain = std::is_arithmetic_v<T> || (shop && *unit.shop_unit == '\0');
    out += "," + std::string(name) +
           (plain  ? ""
            : shop ? std::string("_") + unit.shop_unit
                   : fmt::format(" [{}]", unit.si_unit));
  });
  out += "\n";
  for (const auto& line : tauten::detail::lines_of(a))
    for (const CurvePoint& point : line.curve.points) {
      out += line.friction;
      CurvePoint::fields([&]<class T>(const char*, T CurvePoint::* member) {
        const double si = QuantityTraits<T>::si(point.*member);
        out +=
            "," + (shop ? number_text(si / describe(QuantityTraits<T>::dimension).shop_unit_in_si, 6) : exact_text(si));
      });
      out += "\n";
    }
  return out;
}

}  // namespace

void add_curve(Program& program, CLI::App* verb) {
  const auto words = add_said_options(program, *verb, shared::curve_inputs());
  const auto page = add_page_options(program, *verb);
  auto csv = std::make_shared<bool>(false);
  verb->add_flag("--csv", *csv, "Answer in comma-separated values, all numbers in SI");
  auto shop = std::make_shared<bool>(false);
  verb->add_flag("--shop", *shop, "Of --csv: figures in shop units, named like preload_kN")->needs("--csv");
  const auto table = add_file_option(*verb);
  verb->callback([&program, words, page, csv, shop, table] {
    if (*csv && table->given())
      throw Error("csv", "--csv has the points of one curve; leave it out of a list of joints");
    if (table->given()) return answer_file(program, "curve", *table, *words, *page);
    if (*csv && program.json) throw Error("csv", "csv and json exclude each other; leave one of them out");
    const CurveAnswer answer = shared::try_curve(words->said).value();
    if (program.json)
      program.say(json_of(answer));
    else if (*csv)
      program.out += csv_of(answer, *shop);
    else
      print(program, *page, shared::page_of(answer, page->page_units(words->pairs())));
  });
}

}  // namespace tauten::command
