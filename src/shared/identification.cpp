#include "shared/identification.hpp"

#include "shared/class_words.hpp"

namespace tauten::shared {

namespace {

using IdentifyKey = Key<IdentifyJob>;
using Words = std::string_view;

constexpr IdentifyKey keys[] = {
    {"socket", "16mm", "Socket or spanner that fits, or the width as measured",
     [](const IdentifyKey& key, Words text, IdentifyJob& job) { return read(key.name, text, job.socket); },
     "width_across_flats"},
    {"key", "8mm", "Hexagon key that fits into the head",
     [](const IdentifyKey& key, Words text, IdentifyJob& job) {
       job.key = true;
       return read(key.name, text, job.socket);
     },
     "width_across_flats"},
    {"bit", "30", "Number of the six-lobed bit that fits into the head",
     [](const IdentifyKey& key, Words text, IdentifyJob& job) { return read_bit(key.name, text, job.bit); }, "number"},
    {"worn", "0.3mm", "How far width and tool may differ; else 0.3 mm, for keys 0",
     [](const IdentifyKey& key, Words text, IdentifyJob& job) { return read(key.name, text, job.worn.emplace()); }},
    {"class", "10.9", "What the mark of a property class looks like",
     [](const IdentifyKey&, Words text, IdentifyJob& job) {
       job.property_class = text;
       return Problem();
     },
     "property_class", class_words},
};

const char* fit_text(Fit fit) {
  switch (fit) {
    case Fit::exact: return "exact";
    case Fit::tight: return "tight";
    case Fit::loose: return "loose";
  }
  return "";
}

Identified in_words(const Candidate& c) {
  constexpr const char* how_common[] = {"everyday", "common", "seldom", "rare"};
  const Head& head = c.heads.front();
  Identified out{c.rank,
                 c.thread.name(),
                 c.standard,
                 kind_text(c.kind),
                 c.commonness,
                 how_common[c.commonness - 1],
                 {},
                 {},
                 c.thread.diameter,
                 c.thread.pitch,
                 fit_text(c.fit),
                 head.region,
                 c.look,
                 head.source};
  if (c.width.si > 0) out.socket = c.width;
  if (head.drive_number > 0) out.drive_number = head.drive_number;
  return out;
}

Outcome<std::vector<Candidate>> candidates_of(std::span<const Assignment> said, const IdentifyJob& job) {
  if (has(said, "bit")) return try_identify_drive_number(job.bit);
  if (!has(said, "socket") && !has(said, "key")) return std::vector<Candidate>();
  IdentifyOptions options;
  options.drive = job.key ? Drive::hexagon_key : Drive::hexagon;
  options.worn = job.worn.value_or(job.key ? Length(0) : options.worn);
  return tauten::try_identify(job.socket, options);
}

}  // namespace

std::span<const IdentifyKey> identify_keys() { return keys; }

Outcome<Identification> try_identify(std::span<const Assignment> said) {
  IdentifyJob job;
  if (auto problem = set_all<IdentifyJob>(keys, said, job)) return *problem;
  const int tools = int{has(said, "socket")} + int{has(said, "key")} + int{has(said, "bit")};
  if (tools > 1) return Error("socket", "socket, key and bit exclude each other; give the one tool that fits");
  if (tools == 0 && job.property_class.empty())
    return Error("socket", "say what fits, a socket, a key or a bit, or give a class; write a socket like 16mm");
  if (job.worn && !has(said, "socket") && !has(said, "key"))
    return Error("worn", "worn goes with a socket or a key; leave it out or say which");

  const Outcome<std::vector<Candidate>> found = candidates_of(said, job);
  if (!found) return in_words_of<IdentifyJob>(keys, said, found.error());
  Identification out;
  for (const Candidate& c : *found) out.candidates.push_back(in_words(c));
  if (job.property_class.empty()) return out;
  const Outcome<PropertyClass> c = try_property_class(job.property_class);
  const Outcome<std::string> marks = try_head_marks(job.property_class);
  if (!c) return in_words_of<IdentifyJob>(keys, said, c.error());
  if (!marks) return in_words_of<IdentifyJob>(keys, said, marks.error());
  out.mark =
      ClassMark{c->name, *marks, c->tensile_strength, c->yield_strength, c->proof_stress, c->withdrawn, c->source};
  return out;
}

}  // namespace tauten::shared
