// Which fastener does a socket fit?
#include "tauten/question/identify.hpp"

#include <doctest/doctest.h>

#include <map>
#include <set>
#include <string>
#include <utility>

#include "near.hpp"

namespace identify_test {

using namespace tauten;

namespace {

using Found = std::set<std::pair<std::string, std::string>>;

/// Thread size and single standard of all candidates.
Found flat(const std::vector<Candidate>& list) {
  Found all;
  for (const Candidate& c : list) {
    std::string rest = c.standard;
    while (!rest.empty()) {
      const std::size_t comma = rest.find(", ");
      all.insert({c.thread.size(), rest.substr(0, comma)});
      rest = comma == std::string::npos ? "" : rest.substr(comma + 2);
    }
  }
  return all;
}

/// Adds the size with each of the standards, written "ISO 4014|ISO 4017".
void add(Found& all, const char* size, std::string standards) {
  while (!standards.empty()) {
    const std::size_t bar = standards.find('|');
    all.insert({size, standards.substr(0, bar)});
    standards = bar == std::string::npos ? "" : standards.substr(bar + 1);
  }
}

constexpr const char* plain = "ISO 4014|ISO 4017|ISO 4032";
constexpr const char* older = "DIN 931|DIN 933|DIN 934|JIS B 1180 annex|JIS B 1181 annex";
constexpr const char* small_form = "JIS B 1180 annex|JIS B 1181 annex";
constexpr const char* small_flange = "ISO 15071|ISO 15072|ISO 4162";
constexpr const char* small_flange_coarse = "ISO 15071|ISO 4162";  // M5 and M6 are not made with fine pitch
constexpr const char* flange = "EN 1665|DIN 6921|ISO 4161|DIN 6923";
constexpr const char* structural = "EN 14399-3|ISO 7411|EN 14399-4";
constexpr const char* structural_hr = "EN 14399-3|ISO 7411";

struct Expected {
  double socket_mm;
  const char* size;
  const char* standards;
};

// Typed by hand from the widths across flats of ISO 4014/4017/4032, DIN 931/933/934, the annexes of JIS B 1180 and
// B 1181 (seen in print), ISO 4162/15071/15072, EN 1665, DIN 6921, ISO 4161:1999, DIN 6923, EN 1661, EN 14399-3 and -4.
constexpr Expected expected[] = {
    {7, "M4", plain},
    {7, "M5", small_flange_coarse},
    {8, "M5", plain},
    {8, "M6", small_flange_coarse},
    {8, "M5", flange},
    {10, "M6", plain},
    {10, "M8", small_flange},
    {10, "M6", flange},
    {12, "M8", small_form},
    {13, "M8", plain},
    {13, "M10", small_flange},
    {13, "M8", flange},
    {14, "M10", small_form},
    {15, "M12", small_flange},
    {15, "M10", "DIN 6921|ISO 4161|DIN 6923"},
    {16, "M10", plain},
    {16, "M10", "EN 1665|EN 1661"},
    {17, "M10", older},
    {17, "M12", small_form},
    {18, "M12", plain},
    {18, "M14", small_flange},
    {18, "M12", flange},
    {19, "M12", older},
    {19, "M14", small_form},
    {21, "M14", plain},
    {21, "M16", small_flange},
    {21, "M14", flange},
    {22, "M14", older},
    {22, "M16", small_form},
    {22, "M12", structural},
    {24, "M16", plain},
    {24, "M18", small_form},
    {24, "M16", flange},
    {24, "M14", structural_hr},
    {27, "M18", plain},
    {27, "M20", small_form},
    {27, "M16", structural},
    {30, "M20", plain},
    {30, "M22", small_form},
    {30, "M20", flange},
    {30, "M18", structural_hr},
    {32, "M22", older},
    {32, "M24", small_form},
    {32, "M20", structural},
    {34, "M22", plain},
    {36, "M24", plain},
    {36, "M27", small_form},
    {36, "M22", structural},
};

bool says(const Error& error, const char* part) { return std::string(error.what()).find(part) != std::string::npos; }
bool has(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

}  // namespace

TEST_CASE("each socket finds exactly the fasteners of the standards") {
  std::map<double, Found> by_socket;
  for (const Expected& row : expected) add(by_socket[row.socket_mm], row.size, row.standards);
  CHECK(by_socket.size() == 19);
  for (const auto& [socket, all] : by_socket) {
    CAPTURE(socket);
    const Found found = flat(identify(Length(socket * 1e-3)));
    for (const auto& [size, standard] : all) {
      CAPTURE(size);
      CAPTURE(standard);
      CHECK(found.count({size, standard}) == 1);
    }
    CHECK(found.size() == all.size());
  }
}

TEST_CASE("the list is ordered by how common, coarse pitch before fine") {
  const std::vector<Candidate> list = identify(Length(16e-3));
  CHECK(list.front().thread.name() == "M10");
  CHECK(list.front().standard == "ISO 4014, ISO 4017, ISO 4032");
  CHECK(list.front().heads.size() == 2);
  CHECK(list.front().heads.front().kind == HeadKind::hexagon_bolt);
  for (const double socket : {8e-3, 10e-3, 13e-3, 17e-3, 19e-3, 24e-3, 36e-3}) {
    const std::vector<Candidate> all = identify(Length(socket));
    int last = 0;
    for (std::size_t i = 0; i < all.size(); ++i) {
      CHECK(all[i].rank == static_cast<int>(i) + 1);
      CHECK(all[i].commonness >= last);
      CHECK(all[i].commonness <= 4);
      last = all[i].commonness;
      // The coarse thread of the same heads stands before every fine one, and selected pitches before the others.
      for (std::size_t k = 0; k < i; ++k)
        if (all[k].standard == all[i].standard && all[k].thread.diameter == all[i].thread.diameter) {
          CHECK_FALSE(all[i].thread.coarse);
          CHECK((all[k].thread.coarse || all[k].thread.selected || !all[i].thread.selected));
        }
    }
  }
}

TEST_CASE("no line appears twice, and structural bolts have coarse thread only") {
  for (const Expected& row : expected) {
    std::set<std::string> lines;
    for (const Candidate& c : identify(Length(row.socket_mm * 1e-3))) {
      CHECK(lines.insert(c.thread.name() + c.standard).second);
      if (c.kind == HeadKind::heavy_structural_bolt) CHECK(c.thread.coarse);
      for (const Head& h : c.heads) {
        CHECK(h.width == c.width);
        CHECK(h.size == c.thread.size());
      }
    }
  }
}

TEST_CASE("parts of different regions stay on lines of their own") {
  std::map<std::string, std::string> region;
  for (const Candidate& c : identify(Length(22e-3)))
    if (c.kind == HeadKind::heavy_structural_bolt) region[c.standard] = c.heads.front().region;
  CHECK(region == std::map<std::string, std::string>{{"EN 14399-3, ISO 7411", "worldwide"}, {"EN 14399-4", "Europe"}});
}

TEST_CASE("worn heads and sockets that nearly fit") {
  // 3/4 in is 19.05 mm: as good as 19 mm.
  const std::vector<Candidate> inch = identify(Length(19.05e-3));
  CHECK(inch.front().fit == Fit::exact);
  CHECK(inch.front().width.shop() == near(19));
  CHECK(has(inch.front().look, "3/4 in (19.05 mm) is nearly the same width"));
  // 5/8 in is 15.875 mm: goes on a 16 mm head only if that is worn.
  const std::vector<Candidate> tight = identify(Length(15.875e-3));
  CHECK(tight.front().fit == Fit::tight);
  CHECK(tight.front().width.shop() == near(16));
  CHECK(has(tight.front().look, "worn"));
  // 7/8 in is 22.225 mm: loose on 22 mm.
  const std::vector<Candidate> loose = identify(Length(22.225e-3));
  CHECK(loose.front().fit == Fit::loose);
  CHECK(loose.front().width.shop() == near(22));
  CHECK(has(loose.front().look, "round the corners"));
  IdentifyOptions strict;
  strict.worn = Length(0.1e-3);
  CHECK_FALSE(try_identify(Length(22.225e-3), strict));
  IdentifyOptions wide;
  wide.worn = Length(1e-3);
  const std::vector<Candidate> many = identify(Length(18e-3), wide);
  CHECK(many.front().fit == Fit::exact);
  CHECK(many.back().fit != Fit::exact);
  CHECK(flat(many).count({"M12", "DIN 931"}) == 1);
}

TEST_CASE("what to look at") {
  const std::vector<Candidate> list = identify(Length(10e-3));
  for (const Candidate& c : list) {
    CHECK(has(c.look, "pitch gauge"));
    CHECK(has(c.look, detail::mm_text(c.thread.pitch.si).c_str()));
  }
  CHECK(has(identify(Length(14e-3)).front().look, "Japan"));
  bool marked = false;
  for (const Candidate& c : identify(Length(27e-3))) marked = marked || has(c.look, "marked HR");
  CHECK(marked);
}

TEST_CASE("keys, bits and shapes") {
  IdentifyOptions key;
  key.drive = Drive::hexagon_key;
  const std::vector<Candidate> keyed = identify(Length(8e-3), key);  // ISO 4762: 8 mm key for M10
  CHECK(keyed.front().thread.name() == "M10");
  CHECK(keyed.front().kind == HeadKind::socket_head_cap);
  CHECK(flat(identify(Length(14e-3), key)) == Found{{"M16", "ISO 4762"}, {"M18", "JIS B 1176"}, {"M18", "DIN 912"}});
  IdentifyOptions flanged;
  flanged.kind = HeadKind::flange_bolt;
  CHECK(flat(identify(Length(13e-3), flanged)).count({"M8", "ISO 4014"}) == 0);
  CHECK(flat(identify(Length(13e-3), flanged)).count({"M10", "ISO 4162"}) == 1);
  IdentifyOptions selected;
  selected.only_selected_pitches = true;
  for (const Candidate& c : identify(Length(16e-3), selected)) CHECK((c.thread.coarse || c.thread.selected));
  CHECK(identify(Length(16e-3), selected).size() < identify(Length(16e-3)).size());
  // ISO 14579 with ISO 10664: number 30 is M6.
  CHECK(identify_drive_number(30).front().thread.name() == "M6");
  CHECK(says(try_identify_drive_number(31).error(), "the numbers are 6, 8, 10, 20, 25, 30"));
}

TEST_CASE("widths that fit nothing, or make no sense") {
  CHECK(says(try_identify(Length(20e-3)).error(),
             "no head in the tables takes 20 mm; the nearest widths are 19 mm and 21 mm"));
  CHECK(says(try_identify(Length(150e-3)).error(), "95 mm"));
  CHECK(says(try_identify(Length(1e-3)).error(), "3.2 mm"));
  for (const double width : {0.0, -16e-3, 0.201, __builtin_nan(""), __builtin_inf()}) {
    const Outcome<std::vector<Candidate>> found = try_identify(Length(width));
    REQUIRE_FALSE(found);
    CHECK(says(found.error(), "must be above 0 and at most 200 mm"));
    CHECK(std::string(found.error().argument()) == "width_across_flats");
  }
  IdentifyOptions options;
  options.worn = Length(-1e-3);
  CHECK(says(try_identify(Length(16e-3), options).error(), "worn"));
  options = {};
  options.drive = Drive::hexalobular;
  CHECK(says(try_identify(Length(16e-3), options).error(), "identify_drive_number"));
  options = {};
  options.kind = HeadKind::socket_head_cap;
  CHECK(says(try_identify(Length(16e-3), options).error(), "leave the shape or the tool open"));
  CHECK_THROWS_AS((void)identify(Length(20e-3)), Error);
  CHECK_THROWS_AS((void)identify_drive_number(31), Error);
}

}  // namespace identify_test
