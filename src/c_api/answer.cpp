#include "c_api/boundary.hpp"
#include "tauten/explain/json_text.hpp"

namespace {

using namespace tauten;

const Tree* at(const tauten_answer* answer, const char* path) noexcept {
  return answer == nullptr || path == nullptr ? nullptr : find(answer->tree, path);
}

}  // namespace

extern "C" {

void tauten_answer_free(tauten_answer* answer) { delete answer; }

tauten_kind tauten_answer_kind(const tauten_answer* answer, const char* path) {
  const Tree* tree = at(answer, path);
  if (tree == nullptr) return TAUTEN_ABSENT;
  switch (tree->kind) {
    case Tree::Kind::nothing: return TAUTEN_UNKNOWN;
    case Tree::Kind::number: return TAUTEN_NUMBER;
    case Tree::Kind::truth: return TAUTEN_TRUTH;
    case Tree::Kind::text: return TAUTEN_WORDS;
    case Tree::Kind::list: return TAUTEN_LIST;
    case Tree::Kind::record: return TAUTEN_RECORD;
  }
  return TAUTEN_ABSENT;
}

size_t tauten_answer_size(const tauten_answer* answer, const char* path) {
  const Tree* tree = at(answer, path);
  return tree == nullptr ? 0 : tree->items.size();
}

const char* tauten_answer_key(const tauten_answer* answer, const char* path, size_t place) {
  const Tree* tree = at(answer, path);
  if (tree == nullptr || tree->kind != Tree::Kind::record || place >= tree->items.size()) return nullptr;
  return tree->items[place].name.c_str();
}

double tauten_answer_number(const tauten_answer* answer, const char* path) {
  const Tree* tree = at(answer, path);
  const bool is_number = tree != nullptr && (tree->kind == Tree::Kind::number || tree->kind == Tree::Kind::truth);
  return is_number ? tree->number : absent;
}

const char* tauten_answer_unit(const tauten_answer* answer, const char* path) {
  const Tree* tree = at(answer, path);
  return tree == nullptr || tree->kind != Tree::Kind::number ? nullptr : describe(tree->dimension).si_unit;
}

const char* tauten_answer_words(const tauten_answer* answer, const char* path) {
  const Tree* tree = at(answer, path);
  return tree == nullptr || tree->kind != Tree::Kind::text ? nullptr : tree->text.c_str();
}

size_t tauten_answer_json(const tauten_answer* answer, const char* path, char* buffer, size_t size) {
  const Tree* tree = at(answer, path);
  if (tree == nullptr) return c_api::write("", buffer, size);
  return c_api::guarded(size_t{0}, [&] { return c_api::write(json_text(*tree), buffer, size); });
}

}  // extern "C"
