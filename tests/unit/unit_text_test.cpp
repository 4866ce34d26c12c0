#include <algorithm>
#include <doctest/doctest.h>

#include <cmath>
#include <string>

#include "tauten/base/unit_text.hpp"

#include "near.hpp"

namespace unit_text_test {

using namespace tauten;

namespace {

double read(const char* text, Dim dimension) {
  const auto outcome = try_read_quantity("torque", text, dimension);
  REQUIRE_MESSAGE(outcome, text, ": ", outcome.error().what());
  return *outcome;
}

std::string refusal(const char* text, Dim dimension) {
  const auto outcome = try_read_quantity("torque", text, dimension);
  REQUIRE_FALSE_MESSAGE(outcome, text);
  CHECK(std::string(outcome.error().argument()) == "torque");
  return outcome.error().what();
}

doctest::Approx about(double x) { return doctest::Approx(x).epsilon(4e-16).scale(1e-300); }

}  // namespace

TEST_CASE("a torque in every spelling of the trade") {
  for (const char* text :
       {"48N.m", "48 N.m", "48Nm", "48 N m", "48N*m", "48 N * m", "48N-m", "48 N\u00b7m", "48\u00a0N\u22c5m",
        "48\u202fN m", "0.048kN.m", "0.048 kNm", "4800N.cm", "48000N.mm", "+48N.m", "4.8e1N.m", "48,0N.m", "48.N.m"}) {
    CAPTURE(std::string(text));
    CHECK(read(text, Dim::torque) == about(48));
  }
  // NIST SP 811 (2008), appendix B: the exact inch and pound-force.
  const double foot_pound = 4.4482216152605 * 0.3048;
  for (const char* text : {"35lbf.ft", "35 lbf ft", "35ft.lbf", "35 ft-lb", "35lb.ft", "420lbf.in", "420 in-lb",
                           "420 in.lbf", "0.42kip.in"}) {
    CAPTURE(std::string(text));
    CHECK(read(text, Dim::torque) == about(35 * foot_pound));
  }
  CHECK(read("5kgf.m", Dim::torque) == about(49.03325));
  CHECK(read("500kgf.cm", Dim::torque) == about(49.03325));
}

TEST_CASE("lengths, with inch fractions") {
  CHECK(read("12mm", Dim::length) == about(0.012));
  CHECK(read("1,25 mm", Dim::length) == about(1.25e-3));
  CHECK(read("0,125 mm", Dim::length) == about(0.125e-3));
  CHECK_FALSE(try_read_quantity("force", "1,250N", Dim::force));
  CHECK_FALSE(try_read_quantity("force", "12,250 N", Dim::force));
  CHECK(read("30\u00b5m", Dim::length) == about(30e-6));
  CHECK(read("30 \u03bcm", Dim::length) == about(30e-6));
  CHECK(read("5/8in", Dim::length) == about(0.625 * 0.0254));
  CHECK(read("5/8\"", Dim::length) == about(0.625 * 0.0254));
  CHECK(read("1-1/8in", Dim::length) == about(1.125 * 0.0254));
  CHECK(read("-1-1/8in", Dim::length) == about(-1.125 * 0.0254));
  CHECK(read("-5/8in", Dim::length) == about(-0.625 * 0.0254));
  CHECK(read(".5in", Dim::length) == about(0.0127));
  CHECK(read("2ft", Dim::length) == about(0.6096));
}

TEST_CASE("the other dimensions") {
  const double pi = std::acos(-1.0);
  CHECK(read("90deg", Dim::angle) == about(pi / 2));
  CHECK(read("90\u00b0", Dim::angle) == about(pi / 2));
  CHECK(read("1/4turn", Dim::angle) == about(pi / 2));
  CHECK(read("58mm\u00b2", Dim::area) == about(58e-6));
  CHECK(read("640N/mm2", Dim::stress) == about(640e6));
  CHECK(read("640 N / mm\u00b2", Dim::stress) == about(640e6));
  // NIST SP 811 (2008), appendix B.8: psi 6.894 757 E+03 Pa.
  CHECK(read("1psi", Dim::stress) == near(6894.757).epsilon(1e-7));
  CHECK(read("30Mpsi", Dim::stress) == near(30e6 * 6894.757).epsilon(1e-7));
  CHECK(read("2.1um/kN", Dim::compliance) == about(2.1e-9));
  CHECK(read("470kN/mm", Dim::stiffness) == about(470e6));
  CHECK(read("11.5um/m/K", Dim::expansion) == about(11.5e-6));
  CHECK(read("11.5e-6 1/K", Dim::expansion) == about(11.5e-6));
  CHECK(read("60K", Dim::temperature) == 60);
  CHECK(read("12J", Dim::energy) == 12);
  CHECK(read("2500kgf", Dim::force) == about(24516.625));
  CHECK(read("1kip", Dim::force) == about(4448.2216152605));
  CHECK(read("0.14", Dim::number) == 0.14);
  CHECK(read("75%", Dim::number) == about(0.75));
  CHECK(read("3/4", Dim::number) == 0.75);
}

TEST_CASE(
    "a value without unit, with a wrong one or an unknown one is refused, and the sentence says how to write it") {
  CHECK(refusal("48", Dim::torque) == "torque '48' has no unit; write a torque like 48N.m");
  CHECK(refusal("48J", Dim::torque) == "torque '48J' is an energy, not a torque; write a torque like 48N.m");
  CHECK(refusal("12mm", Dim::torque) == "torque '12mm' is a length, not a torque; write a torque like 48N.m");
  CHECK(refusal("48Nn", Dim::torque) == "torque '48Nn' has the unknown unit 'Nn'; write a torque like 48N.m");
  CHECK(refusal("48 n.m", Dim::torque) == "torque '48 n.m' has the unknown unit 'n.m'; write a torque like 48N.m");
  CHECK(refusal("0.14mm", Dim::number) ==
        "torque '0.14mm' is a length, not a plain number; write a plain number like 0.14");
}

TEST_CASE("what is not a finite number is refused") {
  for (const char* text : {"", " ", "N.m", "nanN.m", "infN.m", "1e400N.m", "-1e400N.m", "e5N.m", "--5N.m", "+-5N.m",
                           "-N.m", ".N.m", ",5N.m,"}) {
    CAPTURE(std::string(text));
    CHECK_FALSE(try_read_quantity("torque", text, Dim::torque));
  }
  CHECK(refusal("1e400N.m", Dim::torque).find("does not start with a finite number") != std::string::npos);
  CHECK(refusal("1e308kN.m", Dim::torque).find("is too large") != std::string::npos);
}

TEST_CASE("signs and separators that belong nowhere are refused") {
  for (const char* text :
       {"1,234.5N.m", "1.2.3N.m", "5-8in", "5/0in", "1-1/0in", "5//8in", "1-2N.m", "48N..", "48N.m.", "48.5.N.m"}) {
    CAPTURE(std::string(text));
    CHECK_FALSE(try_read_quantity("torque", text, Dim::torque));
    CHECK_FALSE(try_read_quantity("torque", text, Dim::length));
  }
}

TEST_CASE("a long text is cut off in the message, never within a character") {
  std::string text = "48";
  for (int i = 0; i < 300; ++i) text += "\u00e9";
  const std::string message = refusal(text.c_str(), Dim::torque);
  const auto continues = [](char c) { return (static_cast<unsigned char>(c) & 0xc0u) == 0x80u; };
  CHECK(message.size() - static_cast<std::size_t>(std::count_if(message.begin(), message.end(), continues)) < 200);
  // Every continuation byte follows a lead byte: 0xc3 0xa9, 0xc3 0xa9, ...
  for (std::size_t i = 0; i < message.size(); ++i)
    if (static_cast<unsigned char>(message[i]) == 0xc3) CHECK(static_cast<unsigned char>(message[i + 1]) == 0xa9);
}

TEST_CASE("torques are read as people write them") {
  // 1 lbf = 4.4482216152605 N, 1 ft = 0.3048 m, 1 kgf = 9.80665 N: exact by definition.
  const double foot_pound = 4.4482216152605 * 0.3048;
  for (const char* unit :
       {"ft.lbs", "ft lbs", "ft-lbs", "lbft", "lb ft", "FT.LB", "ftlb", "lbfft", "lbs-ft", "Lb.Ft"}) {
    CAPTURE(std::string(unit));
    CHECK(read((std::string("48") + unit).c_str(), Dim::torque) == doctest::Approx(48 * foot_pound).epsilon(1e-12));
  }
  CHECK(read("400in-lbs", Dim::torque) == doctest::Approx(400 * foot_pound / 12).epsilon(1e-12));
  CHECK(read("48nm", Dim::torque) == 48);
  CHECK(read("48NM", Dim::torque) == 48);
  for (const char* kilopond_metres : {"4.8kgm", "4.8 kg.m", "4.8 kg m"})
    CHECK(read(kilopond_metres, Dim::torque) == doctest::Approx(47.07192).epsilon(1e-12));
  CHECK(refusal("48nm", Dim::length).find("is a torque, not a length") != std::string::npos);
}

TEST_CASE("every listed spelling is read back as what it stands for") {
  for (const UnitSpelling& spelling : unit_spellings) {
    CAPTURE(std::string(spelling.text));
    CHECK(read((std::string("2 ") + spelling.text).c_str(), spelling.dimension) == 2 * spelling.si);
  }
}

}  // namespace unit_text_test
