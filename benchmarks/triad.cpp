// A column kernel beside a bare loop that moves the same number of arrays and only adds: what of the memory's pace is left.
// Timed, so nothing is judged.
#include <chrono>
#include <cstdio>
#include <vector>

#include "shared/registry.hpp"

namespace {

[[gnu::noinline]] void sum(const double* const* in, double* out, std::size_t rows) {
  TAUTEN_ROWS_ARE_INDEPENDENT
  for (std::size_t i = 0; i < rows; ++i) out[i] = in[0][i] + in[1][i] + in[2][i] + in[3][i] + in[4][i] + in[5][i];
}

template <class Call>
double best_seconds(const Call& call) {
  double best = 1e9;
  for (int round = 0; round < 9; ++round) {
    const auto start = std::chrono::steady_clock::now();
    call();
    const std::chrono::duration<double> time = std::chrono::steady_clock::now() - start;
    best = time.count() < best ? time.count() : best;
  }
  return best;
}

}  // namespace

int main() {
  const tauten::Entry& formula = *tauten::shared::formula_named("preload_from_torque");
  constexpr std::size_t rows = 4'000'000;  // 7 arrays of 32 MB: beyond every cache
  const double row[] = {130, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3};
  std::vector<std::vector<double>> columns;
  for (const double x : row) columns.emplace_back(rows, x);
  std::vector<double> out(rows);
  const double* in[6];
  char* pointers[7];
  std::ptrdiff_t steps[7];
  for (std::size_t i = 0; i < 7; ++i) {
    pointers[i] = reinterpret_cast<char*>(i < 6 ? columns[i].data() : out.data());
    steps[i] = sizeof(double);
    if (i < 6) in[i] = columns[i].data();
  }
  sum(in, out.data(), rows);  // the first touch of the result is not timed
  const double bare = best_seconds([&] { sum(in, out.data(), rows); });
  const double kernel = best_seconds([&] { formula.rows_double(pointers, steps, rows); });
  const double bytes = 7.0 * sizeof(double) * rows;
  std::printf("%-24s %6.2f GB/s\n%-24s %6.2f GB/s, %.2f of it\n", "bare sum of six columns", 1e-9 * bytes / bare,
              "preload_from_torque", 1e-9 * bytes / kernel, bare / kernel);
}
