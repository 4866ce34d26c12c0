// What somebody gives for an input, in whatever language: a text with its unit, a number in SI, a truth, or a list or record
// of such values.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "tauten/base/dimension.hpp"
#include "tauten/base/outcome.hpp"

namespace tauten::shared {

/// An object of another language behind a value.
class Foreign {
 public:
  Foreign() = default;
  Foreign(const Foreign&) = delete;
  Foreign& operator=(const Foreign&) = delete;
  virtual ~Foreign() = default;
  /// \return the SI value of a quantity of that dimension, or why it is none
  virtual Outcome<double> si(const char* input, Dim dimension) const = 0;
  /// \return that a value of this kind cannot be `wanted`; it may throw what the other language throws instead
  virtual Error refusal(const char* input, const char* wanted) const = 0;
};

/// Points into what it was made of, which must outlive it.
struct Value {
  enum class Kind : unsigned char {
    text,
    number,    ///< in SI
    whole,     ///< without a fraction
    truth,     ///< true or false
    quantity,  ///< a number that brings its unit along, behind `foreign`
    list,
    record,  ///< `items` with `names`
    other    ///< of no use here
  };
  Kind kind = Kind::text;
  bool truth = false;
  std::string_view text{};
  double number = 0;
  long long whole = 0;
  std::vector<Value> items{};
  std::vector<std::string_view> names{};
  const Foreign* foreign = nullptr;  ///< none where a value can be a text only, as on a command line

  Value() = default;
  Value(std::string_view said) : text(said) {}    // NOLINT(google-explicit-constructor)
  Value(const char* said) : text(said) {}         // NOLINT(google-explicit-constructor)
  Value(const std::string& said) : text(said) {}  // NOLINT(google-explicit-constructor)

  bool is(std::initializer_list<Kind> kinds) const {
    for (const Kind one : kinds)
      if (kind == one) return true;
    return false;
  }
  /// \return the refusal of a value of this kind
  Error refusal(const char* input, const char* wanted) const {
    if (foreign != nullptr) return foreign->refusal(input, wanted);
    return {input, (std::string(input) + " takes " + wanted).c_str()};
  }
};

}  // namespace tauten::shared
