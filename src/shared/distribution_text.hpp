// What is known of an input, as people write it: 1.5mm, 0.08..0.12..0.16, normal:48N.m:2N.m.
#pragma once

#include "tauten/uncertainty/correlation.hpp"
#include "tauten/uncertainty/distribution.hpp"

#include "shared/inputs.hpp"

namespace tauten::shared {

/// How a distribution is written, for help and errors.
inline constexpr const char* distribution_forms =
    "a number, a band low..nominal..high, normal:mean:deviation, lognormal:median:variation, uniform:low:high, "
    "triangular:low:mode:high, two-piece:low:nominal:high or samples:first:second:...";

/// \param name       of the input, for the error
/// \param text       see `distribution_forms`; every number with its unit
/// \param dimension  of the input
inline Outcome<Distribution> try_read_distribution(const std::string& name, std::string_view text, Dim dimension) {
  std::vector<double> x;
  const auto read = [&](std::string_view part, Dim of) -> Problem {
    const Outcome<double> si = try_read_quantity(name.c_str(), part, of);
    if (!si) return si.error();
    x.push_back(*si);
    return {};
  };
  const auto named = [&](const Outcome<Distribution>& made) -> Outcome<Distribution> {
    if (made) return made;
    return Error(name.c_str(), (name + ": " + made.error().what()).c_str());
  };
  if (text.find("..") != std::string_view::npos) {
    for (std::size_t at = 0; at <= text.size();) {
      const std::size_t end = std::min(text.find("..", at), text.size());
      if (auto problem = read(text.substr(at, end - at), dimension)) return *problem;
      at = end + 2;
    }
    if (x.size() == 3) return named(Distribution::try_from_band(x[0], x[1], x[2]));
    return Error(name.c_str(), (name + " is not a band; write low..nominal..high like 0.08..0.12..0.16").c_str());
  }
  const std::vector<std::string_view> parts = split(text, ':');
  if (parts.size() == 1) {
    if (auto problem = read(text, dimension)) return *problem;
    return Distribution(x[0]);
  }
  const std::string_view shape = parts[0];
  const bool plain_last = shape == "lognormal" || (shape == "two-piece" && parts.size() == 5);
  for (std::size_t i = 1; i < parts.size(); ++i)
    if (auto problem = read(parts[i], plain_last && i + 1 == parts.size() ? Dim::number : dimension)) return *problem;
  if (shape == "normal" && x.size() == 2) return named(Distribution::try_normal(x[0], x[1]));
  if (shape == "lognormal" && x.size() == 2) return named(Distribution::try_lognormal(x[0], x[1]));
  if (shape == "uniform" && x.size() == 2) return named(Distribution::try_uniform(x[0], x[1]));
  if (shape == "triangular" && x.size() == 3) return named(Distribution::try_triangular(x[0], x[1], x[2]));
  if (shape == "two-piece" && x.size() == 3) return named(Distribution::try_two_piece(x[0], x[1], x[2]));
  if (shape == "two-piece" && x.size() == 4) return named(Distribution::try_two_piece(x[0], x[1], x[2], x[3]));
  if (shape == "samples") return named(Distribution::try_from_samples(x));
  return Error(name.c_str(),
               (name + " " + tauten::detail::shown(text) + " is not understood; write " + distribution_forms).c_str());
}

/// \param text  "thread_friction:bearing_friction:0.8"
inline Outcome<Correlation> try_read_correlation(std::string_view text) {
  const std::vector<std::string_view> parts = split(text, ':');
  double coefficient = 0;
  if (parts.size() != 3 || tauten::shared::read("correlate", parts.size() == 3 ? parts[2] : "", coefficient))
    return Error("correlate", ("correlate " + tauten::detail::shown(text) +
                               " is not understood; write two inputs and a coefficient like "
                               "thread_friction:bearing_friction:0.8")
                                  .c_str());
  return Correlation{std::string(parts[0]), std::string(parts[1]), coefficient};
}

}  // namespace tauten::shared
