#include "tauten/question/workings/reach_drawing.hpp"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <random>
#include <regex>
#include <sstream>

#include "tauten/question/reach.hpp"

#include "near.hpp"

namespace reach_drawing_test {

namespace {

using namespace tauten;

constexpr double degree = 3.14159265358979323846 / 180;

ReachJob job_with(std::vector<ExtensionLink> links) {
  ReachJob job;
  job.torque = Torque(80.0);
  job.wrench.length = Length(0.35);
  job.extensions = std::move(links);
  return job;
}

struct Words {
  double left, right, top, bottom;
  std::string text;
};

std::vector<Words> words_of(const std::string& svg) {
  std::vector<Words> all;
  const std::regex pattern("<text x=\"([-0-9.]+)\" y=\"([-0-9.]+)\">([^<]*)</text>");
  for (std::sregex_iterator i(svg.begin(), svg.end(), pattern), end; i != end; ++i) {
    // A sans-serif letter is on average half as wide as high.
    const double half = 0.5 * 15 * static_cast<double>((*i)[3].length()) / 2;
    const double x = std::atof((*i)[1].str().c_str());
    const double baseline = std::atof((*i)[2].str().c_str());
    all.push_back({x - half, x + half, baseline - 11, baseline + 3, (*i)[3]});
  }
  return all;
}

TEST_CASE("drawing: no words of the SVG cover others or leave the page, whatever the chain") {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> length(0.003, 0.3), angle(-180, 180);
  int drawn = 0;
  for (int trial = 0; trial < 300; ++trial) {
    std::vector<ExtensionLink> links;
    for (int i = 0; i < trial % 5; ++i) links.push_back({Length(length(random)), Angle(angle(random) * degree)});
    const ReachJob job = job_with(links);
    const auto result = try_reach(job);
    if (!result) continue;
    ++drawn;
    const std::string svg = reach_drawing_svg(job, *result);
    const auto words = words_of(svg);
    CHECK(words.size() >= 3 + links.size());
    const double height = std::atof(svg.substr(svg.find("height=\"") + 8).c_str());
    for (std::size_t i = 0; i < words.size(); ++i) {
      CAPTURE(words[i].text);
      CHECK(words[i].left >= 0);
      CHECK(words[i].right <= 760);
      CHECK(words[i].top >= 0);
      CHECK(words[i].bottom <= height);
      for (std::size_t j = 0; j < i; ++j) {
        CAPTURE(words[j].text);
        CHECK_FALSE((words[i].left < words[j].right && words[j].left < words[i].right &&
                     words[i].top < words[j].bottom && words[j].top < words[i].bottom));
      }
    }
  }
  CHECK(drawn > 200);
}

TEST_CASE("drawing: the SVG is to scale") {
  const ReachJob job = job_with({{Length(0.15), Angle(60 * degree)}, {Length(0.1), Angle(-45 * degree)}});
  const std::string svg = reach_drawing_svg(job, reach(job));
  double x[4], y[4];
  std::size_t n = 0;
  const std::regex line("<line x1=\"([-0-9.]+)\" y1=\"([-0-9.]+)\" x2=\"([-0-9.]+)\" y2=\"([-0-9.]+)\" [^>]*round");
  for (std::sregex_iterator i(svg.begin(), svg.end(), line), end; i != end; ++i, ++n) {
    REQUIRE(n < 3);
    x[n] = std::atof((*i)[1].str().c_str());
    y[n] = std::atof((*i)[2].str().c_str());
    x[n + 1] = std::atof((*i)[3].str().c_str());
    y[n + 1] = std::atof((*i)[4].str().c_str());
  }
  REQUIRE(n == 3);
  const double scale = (x[1] - x[0]) / 0.35;
  CHECK(y[0] == y[1]);
  // Numbers are written to a tenth, so lengths of some hundred units are good to a thousandth.
  CHECK((x[2] - x[1]) / scale == near(0.075).epsilon(5e-3));
  CHECK((y[1] - y[2]) / scale == near(0.1299).epsilon(5e-3));
  CHECK((x[3] - x[2]) / scale == near(0.07071).epsilon(5e-3));
  CHECK((y[3] - y[2]) / scale == near(0.07071).epsilon(5e-3));
}

TEST_CASE("drawing: the text shows every part once, with its length and angle, and keeps to the width") {
  const ReachJob job = job_with({{Length(0.05), Angle(30 * degree)}});
  const std::string text = reach_drawing_text(job, reach(job), 60);
  for (const char* piece : {"wrench 350 mm", "extension 50 mm at 30 deg", "fastener 80 N.m", "set to 71.19 N.m"}) {
    CAPTURE(piece);
    CHECK(text.find(piece) != std::string::npos);
  }
  std::istringstream lines(text);
  std::string picture;
  for (std::string line; std::getline(lines, line) && line.find("hand") == std::string::npos;) {
    CHECK(line.size() <= 60);
    picture += line;
  }
  for (char mark : {'H', 'D', '1', 'F'}) CHECK(std::count(picture.begin(), picture.end(), mark) == 1);
}

TEST_CASE("drawing: no width is too small, no chain too long") {
  std::vector<ExtensionLink> links;
  for (int i = 0; i < 14; ++i) links.push_back({Length(0.02), Angle(i * 20 * degree)});
  const ReachJob job = job_with(links);
  const Reach result = reach(job);
  for (int columns : {-5, 0, 1, 20, 100000})
    CHECK(reach_drawing_text(job, result, columns).find("14") != std::string::npos);
  CHECK(words_of(reach_drawing_svg(job, result)).size() >= 14);
}

}  // namespace

}  // namespace reach_drawing_test
