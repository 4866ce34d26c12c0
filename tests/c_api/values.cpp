// Prints formula values at random inputs, one case in a line, every number as the bits of a double: name, value, how far
// a build with another C library may be off, slopes, inputs. The same cases at each run. With a second word it prints
// inputs that are fine one by one and have no solution together: name, inputs.
#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include "sample.hpp"
#include "tauten.h"

namespace {

using Node = tauten::Symbolic::Node;
using Kind = tauten::Symbolic::Kind;

void print(double x) {
  std::uint64_t bits = 0;
  std::memcpy(&bits, &x, sizeof bits);
  std::printf(" %016llx", static_cast<unsigned long long>(bits));
}

double next(double x) { return std::nextafter(x, HUGE_VAL); }

/// Whether C libraries may round it differently; square roots and products they may not.
bool is_elementary(const Node& node) {
  if (node.kind == Kind::power) return node.number != 2 && node.number != 3;
  return node.kind == Kind::call && std::strcmp(node.function, "sqrt") != 0;
}

double called(const Node& node, double x) {
  const struct {
    const char* name;
    double (*function)(double);
  } functions[] = {{"sqrt", std::sqrt}, {"sin", std::sin}, {"cos", std::cos}, {"tan", std::tan},
                   {"atan", std::atan}, {"exp", std::exp}, {"log", std::log}};
  for (const auto& known : functions)
    if (std::strcmp(known.name, node.function) == 0) return known.function(x);
  std::abort();
}

/// An expression worked out at `x`, with what the node `moved` gives taken one place higher.
double worked_out(const Node& node, const std::vector<double>& x, const Node* moved) {
  const auto left = [&] { return worked_out(*node.left, x, moved); };
  const auto right = [&] { return worked_out(*node.right, x, moved); };
  const double value = [&] {
    switch (node.kind) {
      case Kind::number: return node.number;
      case Kind::constant: return node.constant->value;
      case Kind::input: return x[static_cast<std::size_t>(node.input)];
      case Kind::negate: return -left();
      case Kind::add: return left() + right();
      case Kind::subtract: return left() - right();
      case Kind::multiply: return left() * right();
      case Kind::divide: return left() / right();
      case Kind::power: return std::pow(left(), node.number);
      case Kind::call: return called(node, left());
    }
    std::abort();
  }();
  return &node == moved ? next(value) : value;
}

void find_elementary(const Node& node, std::vector<const Node*>& found) {
  if (is_elementary(node) && std::find(found.begin(), found.end(), &node) == found.end()) found.push_back(&node);
  if (node.left) find_elementary(*node.left, found);
  if (node.right) find_elementary(*node.right, found);
}

/// \return 0 for a formula of + - * / and square roots. Otherwise two units in the last place, and what two units in each
///         elementary function make of the value; that is much where two near terms are subtracted
double slack(const tauten::Entry& entry, const std::vector<double>& x, double value) {
  const tauten::Symbolic expression = entry.expression();
  std::vector<const Node*> elementary;
  find_elementary(expression.node(), elementary);
  if (elementary.empty()) return 0;
  const double plain = worked_out(expression.node(), x, nullptr);
  double sum = 2 * (next(std::fabs(value)) - std::fabs(value));
  for (const Node* moved : elementary) sum += 2 * std::fabs(worked_out(expression.node(), x, moved) - plain);
  return sum;
}

int print_impossible(int cases) {
  std::mt19937_64 random(20);
  for (const tauten::Entry& entry : tauten::shared::registry())
    for (int i = 0; i < cases; ++i) {
      std::vector<double> x;
      for (const tauten::Arg& arg : entry.inputs) x.push_back(sample::draw(arg, random));
      double value = 0;
      if (tauten_evaluate(tauten_formula_named(entry.name), x.data(), &value, nullptr) != TAUTEN_IMPOSSIBLE) continue;
      std::printf("%s", entry.name);
      for (const double input : x) print(input);
      std::printf("\n");
    }
  return 0;
}

}  // namespace

int main(int count, char** words) {
  const int cases = count > 1 ? std::atoi(words[1]) : 80;
  if (count > 2) return print_impossible(cases);
  std::mt19937_64 random(20);
  for (const tauten::Entry& entry : tauten::shared::registry()) {
    const tauten_formula* formula = tauten_formula_named(entry.name);
    for (int i = 0; i < cases; ++i) {
      const std::vector<double> x = sample::inputs(entry, random);
      std::vector<double> slopes(x.size());
      double value = 0;
      double again = 0;
      if (x.empty() || tauten_evaluate(formula, x.data(), &value, nullptr) > TAUTEN_UNUSUAL ||
          tauten_gradient(formula, x.data(), &again, slopes.data(), nullptr) > TAUTEN_UNUSUAL || again != value ||
          entry.value(x.data()) != value) {
        std::fprintf(stderr, "%s: C++ and C disagree\n", entry.name);
        return 1;
      }
      std::printf("%s", entry.name);
      print(value);
      print(slack(entry, x, value));
      for (const double slope : slopes) print(slope);
      for (const double input : x) print(input);
      std::printf("\n");
    }
  }
}
