// The clamp load that remains: scatter of tightening, embedding, temperature, creep and neighbours together.
#pragma once

#include "tauten/base/band.hpp"
#include "tauten/base/outcome.hpp"
#include "tauten/base/refusal.hpp"
#include "tauten/tightening/loss.hpp"

namespace tauten::TAUTEN_ABI {

/// What embeds: guide values per interface for one class of roughness.
struct EmbeddingRow {
  double roughness_below;  ///< R_z, m
  double thread;           ///< m
  double face[2];          ///< head or nut: load along the axis, across it
  double inner[2];         ///< between clamped parts: load along the axis, across it
};
inline constexpr Source embedding_source{"VDI 2230 Part 1:2003", "Table 5", Seen::memory};
inline constexpr EmbeddingRow embedding_rows[] = {
    {10e-6, 3e-6, {2.5e-6, 3e-6}, {1.5e-6, 2e-6}},
    {40e-6, 3e-6, {3e-6, 4.5e-6}, {2e-6, 2.5e-6}},
    {160e-6, 3e-6, {4e-6, 6.5e-6}, {3e-6, 3.5e-6}},
};

/// Interfaces of a joint.
struct Interfaces {
  Length roughness{10e-6};   ///< R_z of the roughest
  int faces = 2;             ///< head and nut: 2; screw in a tapped hole: 1
  int inner = 1;             ///< between clamped parts, washers counted
  bool load_across = false;  ///< the working load acts across the bolt
};

/// \return how far all interfaces together embed, or an error that names the argument at fault
inline Outcome<Length> try_embedding(const Interfaces& joint) {
  if (!is_not_negative(joint.roughness)) return refusal("roughness", joint.roughness, "but must be at least 0 mm");
  if (joint.faces < 0 || joint.inner < 0)
    return refusal("inner", joint.inner, "but no number of interfaces may be below 0");
  for (const EmbeddingRow& row : embedding_rows)
    if (joint.roughness.si < row.roughness_below)
      return Length(row.thread + joint.faces * row.face[joint.load_across] +
                    joint.inner * row.inner[joint.load_across]);
  return refusal("roughness", joint.roughness, "but the guide values end below R_z 0.16 mm; measure the loss instead");
}

/// \copydoc try_embedding
/// \throws Error  naming the argument, its value and the allowed range
inline Length embedding(const Interfaces& joint) { return try_embedding(joint).value(); }

/// What is lost after tightening. What is not known stays at zero.
struct Losses {
  Length embedding{};      ///< from `embedding`
  Force thermal{};         ///< from `thermal_loss`; below zero it is a gain
  double creep_share = 0;  ///< of the load left, for gaskets, paint and other soft layers
  Force neighbours{};      ///< elastic interaction with bolts that are tightened later
};

/// What remains and what was lost on the way.
struct ResidualClamp {
  Band<Force> clamp_load;  ///< low: least preload less all losses; high: greatest preload, gains added and no loss
  Force embedding_loss{};
  Force nominal_loss{};   ///< of the nominal preload, all together
  bool may_open = false;  ///< the low end is zero: the joint may be loose

  template <class V>
  static void fields(V&& visit) {
    visit("clamp_load", &ResidualClamp::clamp_load);
    visit("embedding_loss", &ResidualClamp::embedding_loss);
    visit("nominal_loss", &ResidualClamp::nominal_loss);
    visit("may_open", &ResidualClamp::may_open);
  }
};

/// \param preload           band after tightening, from `preload_band`
/// \param losses            after that
/// \param bolt_resilience   stretch of the bolt per force
/// \param plate_resilience  of the clamped layers
inline Outcome<ResidualClamp> try_residual_clamp(const Band<Force>& preload, const Losses& losses,
                                                 Quantity<Dim::compliance> bolt_resilience,
                                                 Quantity<Dim::compliance> plate_resilience) {
  if (!(preload.low.si >= 0 && preload.low.si <= preload.nominal.si && preload.nominal.si <= preload.high.si &&
        std::isfinite(preload.high.si)))
    return refusal("preload", preload.nominal,
                   "but low, nominal and high must be at least 0 kN and rise in that order");
  if (!is_not_negative(losses.embedding)) return refusal("embedding", losses.embedding, "but must be at least 0 mm");
  if (!std::isfinite(losses.thermal.si)) return refusal("preload_loss", losses.thermal, "but must be a finite load");
  if (!(losses.creep_share >= 0 && losses.creep_share < 1))
    return refusal("creep_share", losses.creep_share, "but must be at least 0 and below 1");
  if (!is_not_negative(losses.neighbours)) return refusal("neighbours", losses.neighbours, "but must be at least 0 kN");
  if (!is_positive(bolt_resilience)) return refusal("bolt_resilience", bolt_resilience, "but must be above 0 um/kN");
  if (!is_not_negative(plate_resilience))
    return refusal("plate_resilience", plate_resilience, "but must be at least 0 um/kN");
  ResidualClamp out;
  out.embedding_loss = Force(EmbeddingLoss::eval(losses.embedding.si, bolt_resilience.si, plate_resilience.si));
  const auto left = [&](Force start) {
    const double after = start.si - out.embedding_loss.si - losses.neighbours.si;
    // Below zero it is the load that a gap lacks: a gain closes that first, and nothing creeps.
    const double load = (after > 0 ? after * (1 - losses.creep_share) : after) - losses.thermal.si;
    return Force(load > 0 ? load : 0);
  };
  out.clamp_load.low = left(preload.low);
  out.clamp_load.nominal = left(preload.nominal);
  out.clamp_load.high = Force(preload.high.si + (losses.thermal.si < 0 ? -losses.thermal.si : 0));
  out.nominal_loss = Force(preload.nominal.si - out.clamp_load.nominal.si);
  out.may_open = out.clamp_load.low.si == 0;
  return out;
}

/// \copydoc try_residual_clamp
/// \throws Error  naming the argument, its value and the allowed range
inline ResidualClamp residual_clamp(const Band<Force>& preload, const Losses& losses,
                                    Quantity<Dim::compliance> bolt_resilience,
                                    Quantity<Dim::compliance> plate_resilience) {
  return try_residual_clamp(preload, losses, bolt_resilience, plate_resilience).value();
}

}  // namespace tauten::TAUTEN_ABI
