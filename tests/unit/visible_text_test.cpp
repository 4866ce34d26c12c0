// Texts of others for people: whole characters, and nothing that acts on a terminal.
#include "tauten/base/visible_text.hpp"

#include <doctest/doctest.h>

#include <string>

#include "tauten/base/error.hpp"

namespace visible_text_test {

using namespace tauten;
using detail::character_size;
using detail::visible;

TEST_CASE("characters of UTF-8 and nothing else") {
  CHECK(character_size("a") == 1);
  CHECK(character_size("\xc3\xa4") == 2);
  CHECK(character_size("\xe2\x82\xac") == 3);
  CHECK(character_size("\xf0\x9f\x94\xa9") == 4);
  for (const char* none : {"\xc3", "\xc3(", "\x80", "\xc0\xaf", "\xe0\x80\xaf", "\xe0\x9f\xbf", "\xed\xa0\x80",
                           "\xf0\x80\x80\xaf", "\xf4\x90\x80\x80", "\xf5\x80\x80\x80", "\xff", "\xe2\x82"}) {
    CAPTURE(none);
    CHECK(character_size(none) == 0);
  }
}

TEST_CASE("what acts on a terminal, and what is no UTF-8, is shown by its bytes") {
  CHECK(visible("M16, 48 N·m \xe2\x82\xac") == "M16, 48 N·m \xe2\x82\xac");
  CHECK(visible("a\x1b[31mb\n") == "a\\x1b[31mb\\x0a");
  CHECK(visible("\x7f") == "\\x7f");
  CHECK(visible("\xc2\x9b"
                "2J") == "\\xc2\\x9b2J");  // one character that begins a sequence
  CHECK(visible("\xe2\x80\xae"
                "tun") == "\\xe2\\x80\\xaetun");  // turns the direction
  CHECK(visible("\xe2\x81\xa6") == "\\xe2\\x81\\xa6");
  CHECK(visible("\xe2\x80\x8b") == "\\xe2\\x80\\x8b");  // takes no room
  CHECK(visible("\xe2\x80\x93 \xe2\x80\xb3") == "\xe2\x80\x93 \xe2\x80\xb3");
  CHECK(visible("\xef\xbb\xbfx") == "\\xef\\xbb\\xbfx");
  CHECK(visible("\xff\xc3") == "\\xff\\xc3");
  CHECK(visible("") == "");
}

TEST_CASE("a text is shortened between characters, and says so") {
  std::string text;
  for (int i = 0; i < 40; ++i) text += "\xc3\xa4";
  CHECK(visible(text, 40) == text);
  CHECK(visible(text + "x", 40) == text + "...");
  CHECK(detail::shown(text + "x") == "'" + text + "...'");
  CHECK(visible("\xff\xff\xff", 2) == "\\xff\\xff...");
}

TEST_CASE("an error never ends in the midst of a character") {
  for (std::size_t begin = 505; begin < 512; ++begin) {
    const std::string text = std::string(begin, 'a') + "\xf0\x9f\x94\xa9\xe2\x82\xac\xc3\xa4";
    const std::string kept = Error("", text.c_str()).what();
    CHECK(kept.size() <= 511);
    CHECK(kept.size() >= 508);
    CHECK(visible(kept) == kept);
    CHECK(text.starts_with(kept));
  }
  CHECK(std::string(Error("", std::string(511, 'a').c_str()).what()).size() == 511);
}

}  // namespace visible_text_test
