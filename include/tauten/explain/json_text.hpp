// A tree as JSON.
#pragma once

#include "tauten/base/number_chars.hpp"
#include "tauten/base/visible_text.hpp"
#include "tauten/explain/tree.hpp"

namespace tauten::TAUTEN_ABI {

namespace detail {

inline void write_json(std::string& out, std::string_view text) {
  constexpr const char* digits = "0123456789abcdef";
  out += '"';
  while (!text.empty()) {
    const std::size_t size = character_size(text);
    const char c = text.front();
    if (size == 0)
      out += "\ufffd";
    else if (c == '"' || c == '\\')
      (out += '\\') += c;
    else if (size == 1 && static_cast<unsigned char>(c) < 0x20)
      ((out += "\\u00") += digits[c >> 4]) += digits[c & 15];
    else
      out += text.substr(0, size);
    text.remove_prefix(size == 0 ? 1 : size);
  }
  out += '"';
}

inline void write_json(std::string& out, const Tree& tree, int indent, int depth) {
  const auto line = [&](int level) {
    if (indent > 0) (out += '\n').append(static_cast<std::size_t>(level * indent), ' ');
  };
  switch (tree.kind) {
    case Tree::Kind::nothing: out += "null"; return;
    case Tree::Kind::truth: out += tree.number != 0 ? "true" : "false"; return;
    case Tree::Kind::text: write_json(out, tree.text); return;
    case Tree::Kind::number: {
      char digits[32];  // the fewest that read back as the same number
      out.append(digits, write_chars(digits, digits + sizeof digits, tree.number).ptr);
      return;
    }
    case Tree::Kind::list:
    case Tree::Kind::record: break;
  }
  const bool named = tree.kind == Tree::Kind::record;
  out += named ? '{' : '[';
  const char* before = "";
  for (const Tree& item : tree.items) {
    out += before;
    before = ",";
    line(depth + 1);
    if (named) {
      write_json(out, item.name);
      out += indent > 0 ? ": " : ":";
    }
    write_json(out, item, indent, depth + 1);
  }
  if (!tree.items.empty()) line(depth);
  out += named ? '}' : ']';
}

}  // namespace detail

/// \param indent  spaces per level; 0 for all in one line
/// \return JSON with numbers in SI; null for what is not known. Bytes that are no UTF-8 are replaced
inline std::string json_text(const Tree& tree, int indent = 0) {
  std::string out;
  detail::write_json(out, tree, indent, 0);
  return out;
}

}  // namespace tauten::TAUTEN_ABI
