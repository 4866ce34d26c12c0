// Any answer as a tree of named values, made by one visitor over the `fields` of the answer types. What walks an answer
// without knowing its type stands on it: the C interface and JSON.
#pragma once

#include <charconv>
#include <cmath>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

#include "tauten/base/error.hpp"
#include "tauten/base/quantity.hpp"
#include "tauten/base/source.hpp"
#include "tauten/base/words.hpp"

namespace tauten::TAUTEN_ABI {

/// A value with what lies below it.
struct Tree {
  enum class Kind : unsigned char {
    nothing,  ///< not known, or no finite number
    number,
    truth,
    text,
    list,
    record  ///< items have names
  };

  Kind kind = Kind::nothing;
  Dim dimension = Dim::number;  ///< of a number
  double number = 0;            ///< SI; a truth is 0 or 1
  std::string text;
  std::string name;         ///< of an item in a record
  std::vector<Tree> items;  ///< of a list or record, in order

  /// Adds a member to a record.
  Tree& add(const char* key, Tree value) {
    kind = Kind::record;
    value.name = key;
    items.push_back(std::move(value));
    return *this;
  }
};

/// \return where a figure comes from, and how it was seen: in_print, once, memory or judgement
inline Tree tree_of(const Source& source);
inline Tree tree_of(const Error& error);

/// \param x  a number, truth, text, quantity, enumeration with words, optional or list of these, or any type that lists
///           its `fields`
template <class T>
Tree tree_of(const T& x) {
  const auto ignore = [](const char*, const auto&) {};
  Tree tree;
  if constexpr (std::is_same_v<T, bool>) {
    tree.kind = Tree::Kind::truth;
    tree.number = x;
  } else if constexpr (AnyQuantity<T>) {
    const auto si = static_cast<double>(QuantityTraits<T>::si(x));
    if (!std::isfinite(si)) return tree;
    tree.kind = Tree::Kind::number;
    tree.dimension = QuantityTraits<T>::dimension;
    tree.number = si;
  } else if constexpr (std::is_convertible_v<const T&, std::string_view>) {
    tree.kind = Tree::Kind::text;
    tree.text = std::string_view(x);
  } else if constexpr (Worded<T>) {
    tree = tree_of(word_of(x));
  } else if constexpr (requires { T::fields(ignore); }) {
    tree.kind = Tree::Kind::record;
    T::fields([&](const char* name, auto member) { tree.add(name, tree_of(x.*member)); });
  } else if constexpr (requires { x.has_value(); }) {
    if (x.has_value()) tree = tree_of(*x);
  } else {
    tree.kind = Tree::Kind::list;
    for (const auto& item : x) tree.items.push_back(tree_of(item));
  }
  return tree;
}

inline Tree tree_of(const Source& source) {
  constexpr const char* seen[] = {"in_print", "once", "memory", "judgement"};
  Tree tree;
  tree.add("document", tree_of(source.document)).add("place", tree_of(source.place));
  return tree.add("seen", tree_of(seen[static_cast<int>(source.seen)]));
}

inline Tree tree_of(const Error& error) {
  return Tree().add("argument", tree_of(error.argument())).add("message", tree_of(error.what()));
}

/// \param path  names and places, from 0, with / between them: "candidates/0/clamp_load/low"; "" for the tree itself
/// \return what stands there, or nullptr
inline const Tree* find(const Tree& tree, std::string_view path) {
  const Tree* at = &tree;
  while (!path.empty()) {
    const std::string_view word = path.substr(0, path.find('/'));
    path.remove_prefix(word.size() == path.size() ? word.size() : word.size() + 1);
    const Tree* next = nullptr;
    if (at->kind == Tree::Kind::list) {
      std::size_t place = 0;
      const auto [end, problem] = std::from_chars(word.data(), word.data() + word.size(), place);
      if (problem == std::errc() && end == word.data() + word.size() && place < at->items.size())
        next = &at->items[place];
    } else {
      for (const Tree& item : at->items)
        if (item.name == word) next = &item;
    }
    if (next == nullptr) return nullptr;
    at = next;
  }
  return at;
}

}  // namespace tauten::TAUTEN_ABI
