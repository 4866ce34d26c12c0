// Groups of bolts: what the targets are, and whether they are met, in seconds of one processor. Best of several.
#include <cstdio>
#include <ctime>

#include "tauten/group/scatter.hpp"
#include "tauten/group/shear.hpp"

namespace {

using namespace tauten;

template <class Work>
double best(const Work& work) {
  double least = 1e9;
  for (int i = 0; i < 7; ++i) {
    const std::clock_t start = std::clock();
    work();
    least = std::min(least, static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
  }
  return least;
}

Interaction ring(std::size_t n, double c) {
  std::vector<double> a(n * n);
  for (std::size_t i = 0; i < n; ++i) {
    a[i * n + i] = 1;
    a[i * n + (i + 1) % n] = a[(i + 1) % n * n + i] = c;
  }
  return try_interaction(n, std::move(a)).value();
}

int failed = 0;

void report(const char* what, double seconds, double target) {
  std::printf("%-60s %10.3g s, target %.3g s%s\n", what, seconds, target, seconds < target ? "" : "  MISSED");
  failed += !(seconds < target);
}

}  // namespace

int main() {
  const Pattern twelve = try_grid_pattern(2, 6, Length(0.14), Length(0.0762)).value();
  double sum = 0;
  report("instantaneous centre of 12 bolts",
         best([&] {
           for (int i = 0; i < 1000; ++i)
             sum += ultimate_shear(twelve, {Force(0), Force(-1), {0.4 + 1e-5 * i, 0}, Torque(0)}).coefficient;
         }) / 1000,
         20e-6);
  const Interaction flange = ring(24, 0.2);
  std::vector<LoadStep> plan;
  for (const double share : {0.3, 0.6, 1.0, 1.0})
    for (const std::size_t bolt : try_crosswise_order(24).value()) plan.push_back({bolt, 50e3 * share});
  report("10,000 joints of 24 bolts through four passes",
         best([&] { sum += try_scattered_loads(flange, plan, {0.1, 0.05, 0.03}, 10000).value().lowest.nominal.si; }),
         0.5);
  const Interaction thousand = ring(1000, 0.2);
  report("one round over a ring of 1,000 bolts", best([&] {
           TighteningRun run(thousand);
           for (std::size_t bolt = 0; bolt < 1000; ++bolt) run.tighten(bolt, 1);
           sum += run.loads()[0];
         }),
         0.1);
  std::printf("%s\n", sum > 0 ? "" : "no result");
  return failed == 0 ? 0 : 1;
}
