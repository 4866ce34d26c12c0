// Answers as JSON: whatever the texts and numbers are, a general reader reads what is written, and the same.
#include <cmath>
#include <cstring>
#include <nlohmann/json.hpp>

#include "tauten/explain/json_text.hpp"

#include "fuzz.hpp"

namespace {

/// A tree grown from bytes: of each node the first byte says what it is.
tauten::Tree grown(std::string_view& bytes, int depth) {
  using tauten::Tree;
  Tree tree;
  if (bytes.empty()) return tree;
  const auto kind = static_cast<unsigned char>(bytes.front());
  bytes.remove_prefix(1);
  const auto taken = [&](std::size_t most) {
    const std::string_view some = bytes.substr(0, std::min<std::size_t>(most, bytes.size()));
    bytes.remove_prefix(some.size());
    return std::string(some);
  };
  switch (kind % (depth < 8 ? 6u : 4u)) {
    case 0: break;
    case 1:
      tree.kind = Tree::Kind::truth;
      tree.number = kind & 8 ? 1 : 0;
      break;
    case 2: {
      double number = 0;
      const std::string raw = taken(sizeof number);
      std::memcpy(&number, raw.data(), raw.size());
      if (std::isfinite(number)) tree.kind = Tree::Kind::number, tree.number = number;
      break;
    }
    case 3:
      tree.kind = Tree::Kind::text;
      tree.text = taken(kind / 6u);
      break;
    default:
      tree.kind = kind % 6u == 4 ? Tree::Kind::list : Tree::Kind::record;
      for (unsigned i = 0; i < kind / 32u && !bytes.empty(); ++i) {
        std::string name = tree.kind == Tree::Kind::record ? std::to_string(i) + taken(2) : "";
        tree.items.push_back(grown(bytes, depth + 1));
        tree.items.back().name = std::move(name);
      }
  }
  return tree;
}

void compare(const tauten::Tree& tree, const nlohmann::json& read) {
  using tauten::Tree;
  using tauten::fuzz::must;
  switch (tree.kind) {
    case Tree::Kind::nothing: return must(read.is_null(), "nothing is null");
    case Tree::Kind::truth: return must(read == (tree.number != 0), "a truth is read back");
    case Tree::Kind::number: return must(read.get<double>() == tree.number, "a number is read back, to the last bit");
    case Tree::Kind::text: return must(read.is_string(), "a text is a string");
    case Tree::Kind::list:
    case Tree::Kind::record:
      must(read.size() == tree.items.size(), "all items are there");
      if (tree.kind == Tree::Kind::list)
        for (std::size_t i = 0; i < tree.items.size(); ++i) compare(tree.items[i], read[i]);
  }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  std::string_view bytes(reinterpret_cast<const char*>(data), size);
  const tauten::Tree tree = grown(bytes, 0);
  for (const int indent : {0, 2}) {
    const auto read = nlohmann::json::parse(tauten::json_text(tree, indent), nullptr, false);
    tauten::fuzz::must(!read.is_discarded(), "what is written is JSON");
    compare(tree, read);
  }
  return 0;
}
