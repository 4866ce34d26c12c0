#include "shared/free_keys.hpp"

#include "shared/free_items.hpp"

namespace tauten::shared {

namespace {

using FreeKey = Key<FreeQuestion>;
using Line = std::string_view;

Problem put_text(std::string FreeNames::* member, Line text, FreeQuestion& question) {
  question.names.*member = text;
  return {};
}

Problem put_surroundings(const FreeKey& key, Line text, FreeQuestion& question) {
  return read_surroundings(key.name, text, question.job.surroundings);
}

constexpr const char* truth_words[] = {"yes", "no"};

/// Reads yes or no: where no is something else than not to say it.
Problem read_truth(const char* key, Line text, bool& into) {
  into = text == "yes" || text == "true" || text == "True" || text == "1";
  if (into || text == "no" || text == "false" || text == "False" || text == "0") return {};
  return refuse_text(key, text, " is not known; write yes or no");
}

Problem put_loosened(const FreeKey& key, Line text, FreeQuestion& question) {
  return read_undone(key.name, text, question.job.loosened.emplace_back());
}

Problem put_aid(const FreeKey& key, Line text, FreeQuestion& question) {
  return read_aid(key.name, text, question.job.aids.emplace_back());
}

/// A whole number.
template <auto member>
Problem put_whole(const FreeKey& key, Line text, FreeQuestion& question) {
  return read_whole(key.name, text, key.example, member(question));
}

constexpr FreeKey keys[] = {
    {"thread", "M16", "Thread",
     [](const FreeKey&, Line text, FreeQuestion& q) { return put_text(&FreeNames::thread, text, q); }},
    {"class", "8.8", "Mark on the head: property class",
     [](const FreeKey&, Line text, FreeQuestion& q) { return put_text(&FreeNames::property_class, text, q); },
     "property_class"},
    {"socket", "24mm", "Socket or spanner that fits; that of ISO 4014 if not said",
     put_above_zero<[](auto& q) -> auto& { return q.names.socket; }>},
    {"key", "14mm", "Hexagon key that fits into the head, in place of a socket",
     put_above_zero<[](auto& q) -> auto& { return q.names.key; }>},
    {"width-across-flats", "24mm", "Width of the head, in place of a socket that fits",
     put_above_zero<[](auto& q) -> auto& { return q.job.width_across_flats; }>, "width_across_flats"},
    {"bit", "30", "Number of the six-lobed bit that fits, in place of a socket",
     [](const FreeKey& key, Line text, FreeQuestion& q) { return read_bit(key.name, text, q.names.bit.emplace()); },
     "drive_number"},
    {"rust", "rusted", "State of rust, from clean to heavy_rust; rusted if not said",
     put<[](auto& q) -> auto& { return q.job.rust; }>, "", Words<Rust>::list},
    {"limit", "200N.m", "Torque that will not be exceeded", put<[](auto& q) -> auto& { return q.job.limit; }>},
    {"drive", "six_point", "six_point, else twelve_point, open_end, internal_hexagon, hexalobular",
     put<[](auto& q) -> auto& { return q.names.drive; }>, "", Words<DriveFit>::list},
    {"loosened", "freed:85N.m", "One of the flange, and its torque; freed:60N.m:treated if after done", put_loosened,
     "loosened", Words<Neighbour::How>::list, Takes::several_values},
    {"held", "150N.m", "Torque that this very bolt was pulled to and has not moved",
     put_above_zero<[](auto& q) -> auto& { return q.job.held.emplace(); }>},
    {"held-untreated",
     "yes",
     "It was pulled to it before what was done, not after",
     put<[](auto& q) -> auto& { return q.job.held_untreated; }>,
     "held_untreated",
     {},
     Takes::flag},
    {"aid", "fluid:24h", "Aid already used, in order: fluid:24h, heat:150K, brush, ...", put_aid, "aids",
     Words<Aid>::list, Takes::several_values},
    {"surroundings", "fire_or_burst", "What limits heat, such as fire_or_burst or rubber_or_plastic", put_surroundings,
     "", surroundings_words, Takes::several_values},
    {"quenched", "yes", "yes or no: quenched and tempered; default: as the class",
     [](const FreeKey& key, Line text, FreeQuestion& q) { return read_truth(key.name, text, q.quenched.emplace()); },
     "", truth_words},
    {"reused",
     "yes",
     "The bolt is to be used again",
     put<[](auto& q) -> auto& { return q.job.surroundings.reused; }>,
     "",
     {},
     Takes::flag},
    {"preload", "55kN", "What it was tightened to; without it a share of yield with a wide band",
     put<[](auto& q) -> auto& { return q.job.preload; }>},
    {"years", "20", "Years in place; goes with first-year-loss", put<[](auto& q) -> auto& { return q.job.years; }>},
    {"first-year-loss", "0.05mm", "Corrosion of the first year at this place",
     put<[](auto& q) -> auto& { return q.job.first_year_loss; }>, "first_year_loss"},
    {"corner-loss", "0.5mm", "Radial wear of the corners, or of the ridges between lobes",
     put<[](auto& q) -> auto& { return q.job.corner_loss; }>, "corner_loss"},
    {"drive-clearance", "0.2mm", "Play of the tool; 0.2 mm if not said, inside a head 0.1 mm",
     put<[](auto& q) -> auto& { return q.job.drive_clearance; }>, "drive_clearance"},
    {"drive-square", "12.7mm", "Smallest square drive in the chain",
     put_above_zero<[](auto& q) -> auto& { return q.job.drive_square; }>},
    {"handle-length", "600mm", "Length of the handle, if turned by hand",
     put_above_zero<[](auto& q) -> auto& { return q.job.handle_length; }>, "handle_length"},
    {"hand-force", "350N", "Median pull of the hand", put<[](auto& q) -> auto& { return q.job.hand_force; }>,
     "hand_force"},
    {"hand-variation", "35%", "Scatter of that pull", put<[](auto& q) -> auto& { return q.job.hand_variation; }>,
     "hand_variation"},
    {"shear-risk", "5%", "Accepted chance of shearing", put<[](auto& q) -> auto& { return q.job.shear_risk; }>,
     "shear_risk"},
    {"wanted-chance", "90%", "Chance of release at which no stronger aid is looked for",
     put<[](auto& q) -> auto& { return q.job.wanted_chance; }>, "wanted_chance"},
    {"thread-friction", "0.14", "Coefficient in the thread of the clean joint",
     put<[](auto& q) -> auto& { return q.job.thread_friction; }>, "thread_friction"},
    {"bearing-friction", "0.14", "Coefficient under the head of the clean joint",
     put<[](auto& q) -> auto& { return q.job.bearing_friction; }>, "bearing_friction"},
    {"prevailing-torque", "4N.m", "Prevailing torque of a locking nut or insert",
     put<[](auto& q) -> auto& { return q.job.prevailing_torque; }>, "prevailing_torque"},
    {"engaged-length", "13mm", "Engaged length of thread; 0.8 d if not said",
     put_above_zero<[](auto& q) -> auto& { return q.job.engaged_length; }>, "engaged_length"},
    {"tapped", "yes", "yes or no: the thread is in the part; default: only inside a head",
     [](const FreeKey& key, Line text, FreeQuestion& q) { return read_truth(key.name, text, q.job.tapped.emplace()); },
     "", truth_words},
    {"thread-direction", "left", "right or left: which way the thread turns; asked for if not given",
     put<[](auto& q) -> auto& { return q.job.thread_direction; }>, "thread_direction", Words<ThreadDirection>::list},
    {"head-height", "10mm", "Height that the tool engages; 0.64 d if not said, inside a head 0.5 d",
     put_above_zero<[](auto& q) -> auto& { return q.job.head_height; }>, "head_height"},
    {"bearing-diameter", "20mm", "Effective diameter of the bearing face",
     put_above_zero<[](auto& q) -> auto& { return q.job.bearing_diameter; }>, "bearing_diameter"},
    {"nut-diameter", "24mm", "What surrounds the thread; the width across flats if not said",
     put_above_zero<[](auto& q) -> auto& { return q.job.nut_diameter; }>, "nut_diameter"},
    {"nut-yield", "600MPa", "Yield strength of the nut; as the bolt if not said",
     put_above_zero<[](auto& q) -> auto& { return q.job.nut_yield; }>, "nut_yield"},
    {"diameter", "16mm", "Diameter, in place of a thread of the tables",
     put_above_zero<[](auto& q) -> auto& { return q.job.diameter; }>},
    {"pitch", "2mm", "Pitch, in place of a thread of the tables",
     put_above_zero<[](auto& q) -> auto& { return q.job.pitch; }>},
    {"tensile-strength", "800MPa", "Tensile strength, in place of a class",
     put_above_zero<[](auto& q) -> auto& { return q.job.tensile_strength; }>, "tensile_strength"},
    {"yield-strength", "640MPa", "Yield strength, in place of a class",
     put_above_zero<[](auto& q) -> auto& { return q.job.yield_strength; }>, "yield_strength"},
    {"torsion-ratio", "0.8", "Breaking shear stress over tensile strength, in place of a class",
     put<[](auto& q) -> auto& { return q.job.torsion_ratio; }>, "torsion_ratio"},
    {"trials", "200000", "Trials of the simulation", put_whole<[](auto& q) -> auto& { return q.job.trials; }>},
    {"seed", "1", "Seed of the simulation; the same gives the same answer",
     put_whole<[](auto& q) -> auto& { return q.job.seed; }>},
};

/// The library says width_across_flats for whatever tool was said.
Error in_words(std::span<const Assignment> said, const Error& error) {
  return renamed(in_words_of<FreeQuestion>(keys, said, error), "width_across_flats",
                 has(said, "key")                  ? "key"
                 : has(said, "width-across-flats") ? "width-across-flats"
                                                   : "socket");
}

}  // namespace

std::span<const FreeKey> free_keys() { return keys; }

Outcome<FreeJob> try_free_job(std::span<const Assignment> said) {
  FreeQuestion question;
  if (auto problem = set_all<FreeQuestion>(keys, said, question)) return *problem;
  if (has(said, "class") && has(said, "torsion-ratio"))
    return Error("torsion-ratio", "class and torsion-ratio exclude each other; leave one of them out");
  if (has(said, "years") != has(said, "first-year-loss"))
    return Error(has(said, "years") ? "first-year-loss" : "years",
                 "years and first-year-loss go together; give both or neither");
  if (!has(said, "handle-length"))
    for (const char* key : {"hand-force", "hand-variation"})
      if (has(said, key))
        return Error("handle-length", (std::string(key) + " goes with handle-length; write it like 600mm").c_str());
  if (const auto error = assume(question.names, question.job)) return in_words(said, *error);
  if (const auto error = look_up(question.names, question.job)) {
    const Error named = renamed(*error, "property_class", "class");
    return in_words(said, named);
  }
  if (question.quenched) question.job.surroundings.quenched = *question.quenched;
  return question.job;
}

Outcome<FreeAnswer> try_free(std::span<const Assignment> said) {
  const Outcome<FreeJob> job = try_free_job(said);
  if (!job) return job.error();
  const auto found = try_free_joint(*job);
  if (!found) return in_words(said, found.error());
  return FreeAnswer{*found, *job};
}

}  // namespace tauten::shared
