// Numbers as text that reads the same in every locale. printf would write the decimal comma of the program that embeds
// the library.
#pragma once

#include "tauten/base/number_chars.hpp"

namespace tauten::TAUTEN_ABI {

/// A number as text in a buffer of its own, for messages that allocate nothing.
class PlainNumber {
 public:
  /// \param x       any number
  /// \param digits  significant digits, up to 17; trailing zeros are left out. Plain decimal notation between 1e-4 and
  ///                1e7, scientific outside; "nan" for NaN
  explicit PlainNumber(double x, int digits = 6) noexcept {
    if (x != x) {
      write("nan");
      return;
    }
    if (x == 0) x = 0;  // no minus
    end_ = detail::write_chars(text_, last(), x, std::chars_format::general, digits).ptr;
    // More digits before the point than were asked for: they are shown all the same.
    if (scientific() && (x >= 1 || x <= -1) && x < 1e7 && x > -1e7)
      end_ = detail::write_chars(text_, last(), x, std::chars_format::fixed, 0).ptr;
    *end_ = '\0';
  }
  /// \return `x` with a fixed number of decimals; as above if it has no room
  static PlainNumber fixed(double x, int decimals) noexcept {
    PlainNumber number;
    const auto [end, problem] = detail::write_chars(number.text_, number.last(), x, std::chars_format::fixed, decimals);
    if (problem != std::errc()) return PlainNumber(x);
    *(number.end_ = end) = '\0';
    return number;
  }
  const char* c_str() const noexcept { return text_; }

 private:
  PlainNumber() noexcept = default;
  char* last() noexcept { return text_ + sizeof text_ - 1; }
  bool scientific() const noexcept {
    for (const char* c = text_; c != end_; ++c)
      if (*c == 'e') return true;
    return false;
  }
  void write(const char* words) noexcept {
    for (end_ = text_; *words != '\0'; ++words) *end_++ = *words;
    *end_ = '\0';
  }

  char text_[40];
  char* end_ = text_;
};

}  // namespace tauten::TAUTEN_ABI
