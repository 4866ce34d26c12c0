// A program that embeds the library may have set a locale with a decimal comma. What the library says stays the same.
#include <doctest/doctest.h>

#include <cstdlib>

#include <cmath>

#include <charconv>
#include <clocale>
#include <cstdio>
#include <cstring>
#include <locale>
#include <random>
#include <string>
#include <string_view>

#include "shared/registry.hpp"
#include "tauten/base/c_number_chars.hpp"
#include "tauten/base/math.hpp"
#include "tauten/explain/derivation.hpp"
#include "tauten/explain/json_text.hpp"
#include "tauten/joint/build.hpp"
#include "tauten/question/clamp.hpp"
#include "tauten/question/free.hpp"
#include "tauten/question/identify.hpp"
#include "tauten/question/reach.hpp"
#include "tauten/question/workings/reach_drawing.hpp"
#include "tauten/tightening/torque.hpp"
#include "tauten/uncertainty/monte_carlo.hpp"

namespace locale_test {

using namespace tauten;

namespace {

class Comma : public std::numpunct<char> {
  char do_decimal_point() const override { return ','; }
  char do_thousands_sep() const override { return '.'; }
  std::string do_grouping() const override { return "\3"; }
};

/// While it lives, streams write a comma, and so does printf if a locale that does so is installed.
class CommaLocale {
 public:
  CommaLocale() : streams_(std::locale::global(std::locale(std::locale::classic(), new Comma))) {
    for (const char* name : {"de_DE.UTF-8", "de_DE.utf8", "fr_FR.UTF-8", "it_IT.UTF-8", "es_ES.UTF-8", "nl_NL.UTF-8"})
      if (!installed_) installed_ = std::setlocale(LC_ALL, name) != nullptr;
  }
  ~CommaLocale() {
    std::setlocale(LC_ALL, "C");
    std::locale::global(streams_);
  }
  CommaLocale(const CommaLocale&) = delete;
  CommaLocale& operator=(const CommaLocale&) = delete;

  bool installed() const { return installed_; }

 private:
  std::locale streams_;
  bool installed_ = false;
};

/// Whatever the library turns into text: answers, derivations, drawings, refusals.
std::string everything() {
  std::string out;
  const auto refused = [&](const auto& outcome) {
    CAPTURE(out.size() < 200 ? out : out.substr(out.size() - 200));
    REQUIRE_FALSE(outcome);
    out += std::string(outcome.error().what()) + "\n";
  };

  ClampJob joint;
  joint.thread = "M16";
  joint.property_class = "8.8";
  joint.torque = Torque(130.5);
  joint.condition = "oiled";
  const Clamp load = clamp(joint);
  out += json_text(tree_of(load), 1) + derivation_text(derivation_of(load), shared::registry(), Layout::text);
  joint.wrench_accuracy = 0.755;
  refused(try_clamp(joint));
  joint.wrench_accuracy = 0.04;
  joint.thread_friction = Band<double>{0.145, 0.125, 0.165};
  refused(try_clamp(joint));
  joint.thread_friction.reset();
  joint.prevailing_torque = Torque(140.25);
  refused(try_clamp(joint));
  refused(try_identify(Length(-3.125e-3)));

  ReachJob tool;
  tool.torque = Torque(130.5);
  tool.wrench.length = Length(0.4125);
  tool.wrench.scale_high = Torque(1000.5);
  tool.extensions = {{Length(0.0825), Angle(0.7)}};
  tool.hand_offset = Length(0.0125);
  tool.universal_joint = Angle(0.3);
  tool.bars = {{DriveBar::Section::square, Length(0.4), Length(9.5e-3), Stress(79e9)}};
  const Reach reached = reach(tool);
  out += json_text(tree_of(reached), 1) + reach_drawing_text(tool, reached, 72) + reach_drawing_svg(tool, reached);
  tool.tilt = Angle(0.3125);
  refused(try_reach(tool));

  FreeJob stuck;
  stuck.diameter = Length(16e-3);
  stuck.pitch = Length(2e-3);
  stuck.width_across_flats = Length(24e-3);
  stuck.tensile_strength = Stress(800e6);
  stuck.yield_strength = Stress(640e6);
  stuck.limit = Torque(899.5);
  stuck.drive_square = Length(15.5e-3);
  stuck.trials = 2000;
  out += json_text(tree_of(free_joint(stuck)), 1) +
         derivation_text(derivation_of(stuck, free_joint(stuck)), shared::registry(), Layout::html);
  stuck.loosened = {{Neighbour::How::freed, Torque(-20.5)}};
  refused(try_free_joint(stuck));
  stuck.loosened.clear();
  stuck.corner_loss = Length(7.25e-3);
  refused(try_free_joint(stuck));

  refused(try_through_bolt({.diameter = Length(16e-3), .pitch = Length(2e-3), .length = Length(30.5e-3)},
                           {{Length(30.25e-3), Length(60e-3)}}));
  refused(Distribution::try_normal(0.5, -1.25));
  refused(Distribution::try_two_piece(1.5, 1.25, 2.5));
  const Model sum = model_of<2>({"sum"}, {{{"x"}, {"y"}}}, [](auto x) { return x[0] + x[1]; });
  const Distribution some = Distribution::uniform(1, 2.5);
  refused(try_joint(sum, {{"x", some}, {"y", some}}, {{"x", "y", 1.25}}));
  MonteCarloOptions options;
  options.trials = 10;
  refused(try_monte_carlo(sum, joint_distribution(sum, {{"x", some}, {"y", some}}), options));

  for (const Entry& entry : shared::registry()) {
    out += expression_text(entry, Notation::text);
    for (const Arg& arg : entry.inputs)
      out += range_text(arg.domain, arg.dimension) + range_text(arg.validity, arg.dimension);
  }
#if defined(__cpp_exceptions)
  try {
    (void)preload_from_torque(Torque(-48.5), Length(1.5e-3), Length(9.026e-3), 0.12, 0.12, Length(13.5e-3));
  } catch (const Error& error) {
    out += error.what();
  }
#endif
  return out + number_text(1.5) + exact_text(0.1) + quantity_text(12.5e3, Dim::force) + detail::mm_text(12.25e-3) +
         PlainNumber(2.5).c_str() + PlainNumber::fixed(1234.5, 1).c_str();
}

}  // namespace

TEST_CASE("answers, derivations, drawings and refusals are the same in a locale with a decimal comma") {
  const std::string before = everything();
  CHECK(before.find("130.5") != std::string::npos);
  std::string after;
  {
    const CommaLocale comma;
    char text[8];
    std::snprintf(text, sizeof text, "%.1f", 1.5);
    if (comma.installed())
      REQUIRE(std::string(text) == "1,5");  // or the comparison is worth nothing
    else
      MESSAGE("no locale with a decimal comma is installed; only streams write one");
    after = everything();
  }
  CHECK(after == before);
}

// What small machines and web pages take (TAUTEN_C_NUMBERS) against what all others do, in either locale.
TEST_CASE("numbers by the C library: the texts of std::to_chars, read as std::from_chars does") {
  std::mt19937_64 random(16);
  const auto same = [&] {
    for (int i = 0; i < 4000; ++i) {
      // Figures as they occur, and any double at all.
      const auto bits = random();
      double x = static_cast<double>(bits % 1'000'000) / std::pow(10.0, i % 9);
      if (i % 2 == 0) std::memcpy(&x, &bits, sizeof x);
      if (!std::isfinite(x) || std::fpclassify(x) == FP_SUBNORMAL) continue;
      CAPTURE(x);
      char ours[400], theirs[400];
      const auto text = [](const char* first, std::to_chars_result end) {
        return std::string(first, end.ec == std::errc() ? end.ptr : first);
      };
      for (const auto format : {std::chars_format::general, std::chars_format::fixed})
        for (const int precision : {0, 2, 6, 17})
          CHECK(text(ours, detail::write_chars_in_c(ours, ours + 41, x, format, precision)) ==
                text(theirs, std::to_chars(theirs, theirs + 40, x, format, precision)));
      // The shortest of several may differ in its last figure or in its form; it is read back all the same.
      const std::string shortest = text(ours, detail::write_chars_in_c(ours, ours + 40, x));
      CHECK(shortest.size() <= 24);
      double back = 0;
      CHECK(std::from_chars(shortest.data(), shortest.data() + shortest.size(), back).ec == std::errc());
      CHECK(back == x);
    }
    for (const std::string_view text : {"0",
                                        "-0.0",
                                        "1",
                                        "16",
                                        "1.25",
                                        "-3.5e2",
                                        ".5",
                                        "5.",
                                        "1e3",
                                        "1e",
                                        "1e+",
                                        "1.2.3",
                                        "1,5",
                                        "1,5.2",
                                        "0x10",
                                        "+5",
                                        "-+5",
                                        "--5",
                                        "-",
                                        ".",
                                        "",
                                        " 5",
                                        "5 ",
                                        "1e999",
                                        "-1e999",
                                        "1e-999",
                                        "0e-999",
                                        "0.0e9",
                                        "12mm",
                                        "e5",
                                        "1/2",
                                        "1.7976931348623157e308",
                                        "0.000000000000000000000000000000000000000001"}) {
      CAPTURE(text);
      double ours = 7, theirs = 7;
      const char* const end = text.data() + text.size();
      const auto in_c = detail::read_chars_in_c(text.data(), end, ours);
      const auto plain = std::from_chars(text.data(), end, theirs);
      CHECK(in_c.ec == plain.ec);
      CHECK(in_c.ptr - text.data() == plain.ptr - text.data());
      CHECK(ours == theirs);
    }
    double none = 7;
    const std::string endless(200, '1');
    CHECK(detail::read_chars_in_c(endless.data(), endless.data() + endless.size(), none).ec ==
          std::errc::invalid_argument);
    CHECK(none == 7);
  };
  same();
  const CommaLocale comma;
  same();
}

TEST_CASE("numbers as text: what printf writes in the plain locale") {
  for (const double x : {0.0, -0.0, 1.0, -2.5, 0.00012345, 123456.0, 0.1, 1e-9, -3.25e22, 99999.96}) {
    char text[64];
    std::snprintf(text, sizeof text, "%.6g", x == 0 ? 0.0 : x);
    CHECK(std::string(PlainNumber(x).c_str()) == text);
    std::snprintf(text, sizeof text, "%.2f", x);
    CHECK(std::string(PlainNumber::fixed(x, 2).c_str()) == text);
  }
  CHECK(std::string(PlainNumber(1234567.0, 3).c_str()) == "1234567");  // digits before the point are shown
  CHECK(std::string(PlainNumber(-__builtin_nan("")).c_str()) == "nan");
  CHECK(std::string(PlainNumber::fixed(1e300, 2).c_str()) == "1e+300");  // no room: not cut
}

TEST_CASE("powers of ten are exact as far as a double has them, and have ends") {
  for (int n = -22; n <= 22; ++n)
    CHECK(tauten::power_of_ten(n) == std::strtod(("1e" + std::to_string(n)).c_str(), nullptr));
  CHECK(tauten::power_of_ten(300) == doctest::Approx(1e300).epsilon(1e-12));
  CHECK(std::isinf(tauten::power_of_ten(1e9)));
  CHECK(tauten::power_of_ten(-1e9) == 0);
  CHECK(std::isnan(tauten::power_of_ten(std::nan(""))));
}

}  // namespace locale_test
