// Puts what a Python caller says into the members of a job.
//
// A quantity may be a plain number in SI, text with its unit or a Pint quantity; a record in a list may be a dict, its
// members in order, or its first member alone.
#pragma once

#include <pybind11/pybind11.h>

#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "record.hpp"
#include "tauten/base/error.hpp"

namespace tauten::python {

/// \return whether it is True or False, of Python or NumPy: no number
bool is_truth(pybind11::handle value);

/// \param name  of the argument, for the error message
/// \return SI value of one number, text or quantity
/// \throws Error  for another dimension, an unknown unit or what is not finite; TypeError for no number at all
double read_number(const std::string& name, pybind11::handle value, Dim dimension);

/// \return text; of a thread, class or condition that was looked up before, its name
std::string read_text(const std::string& name, pybind11::handle value);

bool read_truth(const std::string& name, pybind11::handle value);

/// \return a whole number within the bounds
long long read_whole(const std::string& name, pybind11::handle value, long long least, long long most);

/// \param value  a number; two or three numbers, a `Band` or text like "0.08..0.12..0.16". Of two the middle is nominal
Band<double> read_band(const std::string& name, pybind11::handle value);

/// \return place of the word among `words`
int read_word(const std::string& name, pybind11::handle value, const char* const* words, int count);

/// \return the members that were given of a record, by name, with `members` in the record's order
pybind11::dict read_members(const std::string& name, pybind11::handle value, const std::vector<const char*>& members);

/// \return the items of a list or tuple
pybind11::list read_items(const std::string& name, pybind11::handle value);

/// \param name   of the argument, for the error message
/// \param value  what was given for it
/// \param into   the member of the job
template <class T>
void read(const std::string& name, pybind11::handle value, T& into) {
  if constexpr (detail::IsQuantity<T>::value) {
    into = T(read_number(name, value, QuantityTraits<T>::dimension));
  } else if constexpr (std::is_same_v<T, bool>) {
    into = read_truth(name, value);
  } else if constexpr (std::is_floating_point_v<T>) {
    into = read_number(name, value, Dim::number);
  } else if constexpr (std::is_integral_v<T>) {
    using Limits = std::numeric_limits<T>;
    constexpr long long most = sizeof(T) < 8 ? static_cast<long long>(Limits::max()) : (1LL << 62);
    into = static_cast<T>(read_whole(name, value, std::is_signed_v<T> ? -most : 0, most));
  } else if constexpr (std::is_base_of_v<std::string, T>) {
    into = read_text(name, value);
  } else if constexpr (Worded<T>) {
    into = static_cast<T>(read_word(name, value, Words<T>::list, std::size(Words<T>::list)));
  } else if constexpr (std::is_same_v<T, Band<double>>) {
    into = read_band(name, value);
  } else if constexpr (detail::IsOptional<T>::value) {
    read(name, value, into.emplace());
  } else if constexpr (detail::IsVector<T>::value) {
    std::size_t place = 0;
    for (const pybind11::handle item : read_items(name, value)) {
      into.emplace_back();
      read(name + "[" + std::to_string(place++) + "]", item, into.back());
    }
  } else {
    static_assert(Record<T>);
    std::vector<const char*> members;
    T::fields([&](const char* member, auto) { members.push_back(member); });
    const pybind11::dict given = read_members(name, value, members);
    T::fields([&](const char* member, auto pointer) {
      if (given.contains(member)) read(name + "." + member, given[member], into.*pointer);
    });
  }
}

/// The keyword arguments of a call. Those that are None have been left out.
struct Arguments {
  pybind11::dict values;

  bool has(const char* name) const { return values.contains(name); }

  /// Reads one argument into a member of the job, if it was given.
  /// \return true if it was
  template <class T>
  bool operator()(const char* name, T& into) const {
    if (!has(name)) return false;
    read(name, values[name], into);
    return true;
  }

  /// For quantities of which the library takes zero for "not known": zero that was said is refused.
  template <Dim D>
  bool above_zero(const char* name, Quantity<D>& into) const {
    if (!(*this)(name, into)) return false;
    if (into.si > 0) return true;
    throw Error(name, (std::string(name) + " is " + quantity_text(into.si, D) +
                       ", but must be above 0; write it like " + describe(D).how_to_write)
                          .c_str());
  }

  /// \throws Error  if both were given
  void either(const char* one, const char* other) const {
    if (has(one) && has(other))
      throw Error(other, (std::string(one) + " and " + other + " exclude each other; leave one of them out").c_str());
  }
};

}  // namespace tauten::python
