// Derivations as text: what they must contain, that every layout is well formed, and that the printed numbers follow
// from each other. Figures are held against ISO 724, ISO 898-1 and ISO 16047 arithmetic written out here.
#include <doctest/doctest.h>

#include <cmath>
#include <cstdlib>
#include <string>
#include <vector>

#include "shared/registry.hpp"
#include "tauten/explain/derivation.hpp"
#include "tauten/question/clamp.hpp"
#include "tauten/question/free.hpp"
#include "tauten/question/reach.hpp"
#include "tauten/question/turn.hpp"

#include "near.hpp"

namespace derivation_test {

using namespace tauten;

namespace {

constexpr Layout layouts[] = {Layout::text, Layout::markdown, Layout::latex, Layout::html};

ClampJob pump_foot(double torque = 130) {
  ClampJob job;
  job.thread = "M16";
  job.property_class = "8.8";
  if (torque > 0) job.torque = Torque(torque);
  job.condition = "oiled";
  return job;
}

std::string written(const Derivation& d, Layout layout = Layout::text, const Style& style = {}) {
  return derivation_text(d, shared::registry(), layout, style);
}

bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

/// The first step of a formula whose note begins so.
const Step& step_of(const Derivation& d, const std::string& formula, const std::string& note = "") {
  for (const Step& step : d.steps)
    if (step.formula == formula && step.note.starts_with(note)) return step;
  FAIL("no step " << formula << " " << note);
  return d.steps.front();
}

std::size_t count(const std::string& text, const std::string& part) {
  std::size_t found = 0;
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++found;
  return found;
}

/// Tags close in the order in which they were opened, and nothing else stands between < and >.
bool is_well_formed(const std::string& xml) {
  std::vector<std::string> open;
  for (std::size_t at = 0; (at = xml.find('<', at)) != std::string::npos;) {
    const std::size_t end = xml.find('>', at);
    if (end == std::string::npos) return false;
    std::string tag = xml.substr(at + 1, end - at - 1);
    at = end;
    if (tag.starts_with('/')) {
      if (open.empty() || open.back() != tag.substr(1)) return false;
      open.pop_back();
    } else if (!tag.ends_with('/')) {
      open.push_back(tag.substr(0, tag.find(' ')));
    }
  }
  for (std::size_t at = 0; (at = xml.find('&', at)) != std::string::npos; ++at)
    if (xml.find(';', at) > at + 8) return false;
  return open.empty();
}

/// Braces, environments and \left...\right are balanced, and no special character stands bare in text.
bool is_balanced_latex(const std::string& latex) {
  int depth = 0;
  for (std::size_t i = 0; i < latex.size(); ++i) {
    const bool escaped = i > 0 && latex[i - 1] == '\\' && (i < 2 || latex[i - 2] != '\\');
    if (latex[i] == '{' && !escaped) ++depth;
    if (latex[i] == '}' && !escaped) --depth;
    if (depth < 0) return false;
    if ((latex[i] == '%' || latex[i] == '#') && !escaped) return false;
  }
  return depth == 0 && count(latex, "\\begin{") == count(latex, "\\end{") &&
         count(latex, "\\left") == count(latex, "\\right") && count(latex, "$") % 2 == 0;
}

std::vector<Derivation> all_kinds() {
  ClampJob locked = pump_foot();
  locked.prevailing_torque = Torque(9);
  ClampJob wish = pump_foot(0);
  wish.condition = "unknown";
  wish.shank_torque = Torque(2);
  ReachJob reach_job;
  reach_job.torque = Torque(130);
  reach_job.extensions = {{Length(0.1), Angle(0.5)}, {Length(0.05), Angle(0)}};
  reach_job.universal_joint = Angle(0.2);
  reach_job.bars = {{DriveBar::Section::square, Length(0.25), Length(12.7e-3)},
                    {DriveBar::Section::hexagon, Length(0.1), Length(10e-3)}};
  reach_job.multiplier = TorqueMultiplier{.ratio = 4, .efficiency = 0.9, .efficiency_range = 0.02, .arm = Length(0.3)};
  FreeJob free_job;
  free_job.diameter = Length(16e-3), free_job.pitch = Length(2e-3), free_job.width_across_flats = Length(24e-3);
  free_job.tensile_strength = Stress(800e6), free_job.yield_strength = Stress(640e6);
  free_job.trials = 5000;
  free_job.aids = {{.aid = Aid::tighten_first}};
  TurnJob turn_job{.thread = "M16", .property_class = "8.8", .grip = Length(40e-3), .snug_torque = Torque(40)};
  turn_job.angle = Angle(1);
  turn_job.prevailing_torque = Torque(5);
  turn_job.bars = reach_job.bars;
  return {derivation_of(turn(turn_job)),
          derivation_of(clamp(pump_foot())),
          derivation_of(clamp(locked)),
          derivation_of(clamp(pump_foot(600))),
          derivation_of(torque_for(wish)),
          derivation_of(reach_job, reach(reach_job)),
          derivation_of(free_job, free_joint(free_job))};
}

}  // namespace

TEST_CASE("from socket to verdict: the printed load follows from the printed lines") {
  ClampJob job = pump_foot();
  job.thread = "";
  job.socket = Length(24e-3);
  job.prevailing_torque = Torque(9);
  const Derivation d = derivation_of(clamp(job));
  const std::string text = written(d);
  // ISO 4014 d_w 22.49 mm, ISO 273 hole 17.5 mm, ISO 724 d_2 14.701 mm; what is left of 130 N.m is 121 N.m.
  const double slope = std::atan(2 / (std::acos(-1.0) * 14.701));
  const double flank = std::atan(std::tan(std::acos(-1.0) / 6) * std::cos(slope));
  const double lever = 14.701 / 2 * std::tan(slope + std::atan(0.12 / std::cos(flank))) + 0.12 * 19.995 / 2;
  CHECK(step_of(d, "effective_torque").value == near(121).epsilon(1e-12));
  CHECK(step_of(d, "preload_from_torque_exact").value == near(121 / lever * 1e3).epsilon(1e-4));
  for (const char* part : {"socket             24 mm", "assumed: fits the tool", "prevailing torque  9 N.m",
                           "M_A = M_S*(1 + e_W) - M_P - M_D", "= 130 N.m*(1 + 0) - 9 N.m - 0 N.m", "= 121 N.m",
                           "M_T = M_G + M_P", "maximum friction and weak wrench", "minimum friction and strong wrench",
                           "Result", "Verdict: may be slack. ", "Take care", "approve a joint for service",
                           "Source: VDI 2230", "Stated range: pitch 0.2 mm to 8 mm", "clamp load"})
    CHECK_MESSAGE(has(text, part), part);
  // The order of a derivation.
  std::size_t before = 0;
  for (const char* part :
       {"M16, ", "\nGiven\n", "\nSteps\n", "\n1. ", "\n2. ", "\nResult\n", "\nVerdict: ", "\nTake care\n"}) {
    const std::size_t at = text.find(part);
    REQUIRE_MESSAGE(at != std::string::npos, part);
    CHECK(at >= before);
    before = at;
  }
}

TEST_CASE("the corners of the derivation are the ends of the bands of the answer") {
  for (const double torque : {60.0, 130.0, 200.0})
    for (const double prevailing : {0.0, 12.0})
      for (const char* condition : {"oiled", "unknown", "moly-paste"}) {
        ClampJob job = pump_foot(torque);
        job.condition = condition;
        job.prevailing_torque = Torque(prevailing);
        const Clamp answer = clamp(job);
        const ClampCandidate& c = answer.candidates.front();
        if (c.tensile_utilisation.high >= 1) continue;
        const Derivation d = derivation_of(answer);
        CHECK(step_of(d, "preload_from_torque_exact", "at nominal").value == near(c.clamp_load.nominal.si));
        CHECK(step_of(d, "preload_from_torque_exact", "worst case, maximum friction").value ==
              near(c.worst_case.low.si));
        CHECK(step_of(d, "preload_from_torque_exact", "worst case, minimum friction").value ==
              near(c.worst_case.high.si));
        double worst = 0;
        for (const Step& step : d.steps)
          if (step.formula == "yield_utilisation") worst = std::max(worst, step.value);
        CHECK(worst == near(c.yield_utilisation.high));
      }
}

TEST_CASE("every step is its formula at its inputs, and its inputs come from before") {
  for (const Derivation& d : all_kinds())
    for (const Step& step : d.steps) {
      CAPTURE(step.formula);
      const Entry* entry = shared::formula_named(step.formula.c_str());
      REQUIRE(entry != nullptr);
      CHECK(step.value == entry->value(step.inputs.data()));
    }
}

TEST_CASE("a clamp load that is not left is not shown") {
  for (const double torque : {250.0, 400.0, 600.0, 3000.0}) {
    CAPTURE(torque);
    const Clamp answer = clamp(pump_foot(torque));
    const ClampCandidate& c = answer.candidates.front();
    if (c.verdict != "breaks") continue;
    const Derivation d = derivation_of(answer);
    // Breaking load of M16 8.8 by ISO 898-1 is 125 kN; no shown load may reach it.
    for (const Step& step : d.steps)
      if (step.formula == "preload_from_torque_exact") CHECK(step.value < 125e3);
    for (const Figure& f : d.found) {
      if (f.name != "clamp_load") continue;
      const std::string said = f.text + f.note;
      CHECK(has(said, "none"));
      CHECK_FALSE(f.value.high >= 125e3);  // a word has no number
      if (c.tensile_utilisation.low >= 1) CHECK(f.text.starts_with("none"));
    }
    CHECK(has(written(d), "here the bolt breaks before the"));
    // It breaks below the torque of the wrench.
    CHECK(step_of(d, "tightening_torque_exact", "here the bolt").value < 1.04 * torque);
  }
}

TEST_CASE("torque: from the wish to the setting") {
  ClampJob job = pump_foot(0);
  job.clamp_load = Force(50e3);
  job.prevailing_torque = Torque(9);
  job.shank_torque = Torque(2);
  const Clamp answer = torque_for(job);
  const Derivation d = derivation_of(answer);
  const double asked = step_of(d, "tightening_torque_exact").value;
  CHECK(answer.candidates.front().torque.si == near(asked + 9 + 2).epsilon(1e-12));
  CHECK(step_of(d, "setting_with_prevailing").value == near(asked + 9).epsilon(1e-12));
  CHECK(step_of(d, "setting_with_prevailing", "friction of the shank").value == near(asked + 11).epsilon(1e-12));
  // The suggested torque of an unknown condition is held back, and says so.
  ClampJob right = pump_foot(0);
  right.condition = "unknown";
  CHECK(has(written(derivation_of(torque_for(right))), "held back"));
}

TEST_CASE("every layout of every answer is well formed") {
  for (const Derivation& d : all_kinds()) {
    CAPTURE(d.title);
    const std::string latex = written(d, Layout::latex), html = written(d, Layout::html);
    CHECK(is_well_formed(html));
    CHECK_FALSE(has(html, "<script"));
    CHECK_FALSE(has(html, "http://www.w3.org/1998/Math/MathML\"><mi></mi>"));
    CHECK(is_balanced_latex(latex));
    CHECK(count(latex, "\\begin{align*}") == d.steps.size());
    CHECK(count(html, "<mtable") == d.steps.size());
    CHECK(count(latex, " &= ") >= 2 * d.steps.size());
    for (const Layout layout : layouts) {
      const std::string text = written(d, layout);
      CHECK(has(text, "Given"));
      CHECK(has(text, "Verdict"));
      CHECK(has(text, "Take care"));
      CHECK_FALSE(has(text, "nan"));
      for (const Notice& notice : d.notices)
        if (layout == Layout::html && notice.text.find_first_of("&<>\"'") == std::string::npos)
          CHECK_MESSAGE(has(text, notice.text), notice.text);
    }
  }
}

TEST_CASE("every formula of the registry has every layout") {
  for (const Entry& entry : shared::registry()) {
    CAPTURE(entry.name);
    std::vector<double> x;
    for (const Arg& arg : entry.inputs) {
      const Interval range = has_validity_range(arg) ? arg.validity : arg.domain;
      x.push_back(range.high < largest && range.low > -largest ? (range.low + range.high) / 2 : 0.02);
    }
    const Derivation d = derivation_of(entry, x);
    CHECK(is_well_formed(written(d, Layout::html)));
    CHECK(is_balanced_latex(written(d, Layout::latex)));
    CHECK(has(written(d), std::string(entry.output.symbol) + " = "));
  }
}

TEST_CASE("text in a layout keeps its special characters") {
  Derivation d;
  d.title = "50% of A_s & <b>|$x$ {y} #1 ~ ^ \\";
  CHECK(written(d, Layout::latex) ==
        "\\par\\medskip\\noindent\\textbf{50\\% of A\\_s \\& \\textless{}b\\textgreater{}\\textbar{}\\$x\\$ "
        "\\{y\\} \\#1 \\textasciitilde{} \\textasciicircum{} \\textbackslash{}}\\par\n");
  CHECK(has(written(d, Layout::html), "50% of A_s &amp; &lt;b&gt;|$x$"));
  CHECK(has(written(d, Layout::markdown), "&lt;b>\\|\\$x\\$"));
  CHECK(has(written(d), d.title));
}

TEST_CASE("MathML of a formula") {
  const Entry& entry = *shared::formula_named("stress_diameter");
  const std::string html = written(derivation_of(entry, std::vector{10e-3, 1.5e-3}), Layout::html);
  CHECK(has(html, "<msub><mi>d</mi><mi>s</mi></msub>"));
  CHECK(has(html, "<mfrac displaystyle=\"true\">"));
  CHECK(has(html, "<mn>10</mn><mtext>&#x2009;mm</mtext>"));
  CHECK(mathml_symbol("mu_G") == "<msub><mi>&#x3BC;</mi><mi>G</mi></msub>");
  CHECK(mathml_symbol("R_p0.2") == "<msub><mi>R</mi><mtext>p0.2</mtext></msub>");
  CHECK(
      mathml_number("-1.5e-05") ==
      "<mo>&#x2212;</mo><mn>1.5</mn><mo>&#x22C5;</mo><msup><mn>10</mn><mrow><mo>&#x2212;</mo><mn>5</mn></mrow></msup>");
  CHECK(html_unit("N.m") == "N&#xB7;m");
  CHECK(html_unit("mm2") == "mm&#xB2;");
  CHECK(latex_unit("um/m/K") == "\\mathrm{\\mu m/(m\\,K)}");
  CHECK(latex_unit("%") == "\\mathrm{\\%}");
}

TEST_CASE("units and digits of one quantity, of a dimension, of all") {
  const Derivation d = derivation_of(clamp(pump_foot()));
  Style style;
  REQUIRE_FALSE(set_unit(style, "length=in"));
  REQUIRE_FALSE(set_unit(style, "preload=lbf"));
  REQUIRE_FALSE(set_unit(style, "torque=lbf.ft"));
  REQUIRE_FALSE(set_digits(style, "6"));
  REQUIRE_FALSE(set_digits(style, "preload=3"));
  const std::string text = written(d, Layout::text, style);
  CHECK(has(text, "0.0787402 in"));  // 2 mm
  CHECK(has(text, "kN"));            // proof load, which is not a preload
  // 51.24 kN at the typical friction are 11 520 lbf.
  CHECK(has(text, "= 11521 lbf") == false);
  const double pounds = clamp(pump_foot()).candidates.front().clamp_load.nominal.si / 4.4482216152605;
  CHECK(has(text, "= " + number_text(pounds, 3) + " lbf"));
  CHECK(has(written(d, Layout::latex, style), "\\mathrm{lbf}"));
  // A name goes before its dimension, whatever the order.
  REQUIRE_FALSE(set_unit(style, "pitch=mm"));
  REQUIRE_FALSE(set_unit(style, "length=cm"));
  CHECK(shown(style, 2e-3, "pitch", Dim::length).text() == "2 mm");
  CHECK(shown(style, 2e-3, "diameter", Dim::length).text() == "0.2 cm");
}

TEST_CASE("a style that does not fit is refused in a sentence") {
  const auto refused = [](std::optional<Error> error, const char* argument, const char* word) {
    REQUIRE(error);
    CHECK(std::string(error->argument()) == argument);
    CHECK_MESSAGE(has(error->what(), word), error->what());
  };
  Style style;
  refused(set_digits(style, "0"), "digits", "1 to 17");
  refused(set_digits(style, "18"), "digits", "1 to 17");
  refused(set_digits(style, "3.5"), "digits", "1 to 17");
  refused(set_digits(style, "=3"), "digits", "names no quantity");
  refused(set_digits(style, ""), "digits", "1 to 17");
  refused(set_unit(style, "length"), "unit", "length=in");
  refused(set_unit(style, "length=parsec"), "unit", "unknown unit");
  refused(set_unit(style, "length=lbf"), "unit", "not for a length");
  refused(set_unit(style, "Leng th=mm"), "unit", "names no quantity");
  const Derivation d = derivation_of(clamp(pump_foot()));
  REQUIRE_FALSE(set_unit(style, "preload=in"));
  auto found = try_derivation_text(d, shared::registry(), Layout::text, style);
  REQUIRE_FALSE(found);
  CHECK(has(found.error().what(), "preload is a force, but in is for a length"));
  Style unknown;
  REQUIRE_FALSE(set_digits(unknown, "prelood=3"));
  found = try_derivation_text(d, shared::registry(), Layout::text, unknown);
  REQUIRE_FALSE(found);
  CHECK(has(found.error().what(), "'prelood'"));
  CHECK_FALSE(try_layout("wax"));
}

TEST_CASE("text stays within a hundred columns, formulas excepted") {
  for (const Derivation& d : all_kinds()) {
    const std::string text = written(d);
    for (std::size_t at = 0; at < text.size();) {
      const std::size_t end = text.find('\n', at);
      const std::string line = text.substr(at, end - at);
      if (!has(line, " = ")) CHECK_MESSAGE(width_of(line) <= 100, line);
      at = end + 1;
    }
  }
}

}  // namespace derivation_test
