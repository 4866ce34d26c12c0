#include "shared/identification.hpp"

#include "shared/class_words.hpp"

namespace tauten::shared {

namespace {
namespace of_identify {

using In = Declares<IdentifyJob>;
using IdentifyInput = Input<IdentifyJob>;

constexpr IdentifyInput inputs[] = {
    In::input<&IdentifyJob::socket>("socket", "16mm", "Socket or spanner that fits, or the width as measured")
        .in_library("width_across_flats"),
    In::input<&IdentifyJob::key>("key", "8mm", "Hexagon key that fits into the head").in_library("width_across_flats"),
    In::input<&IdentifyJob::bit>("bit", "30", "Number of the six-lobed bit that fits into the head")
        .read_by([](const IdentifyInput&, const char* called, const Value& value, IdentifyJob& job) {
          return read_bit(called, value, job.bit.emplace());
        })
        .in_library("number"),
    In::input<&IdentifyJob::worn>("worn", "0.3mm", "How far width and tool may differ; default: 0.3 mm, for keys 0"),
    In::input<&IdentifyJob::property_class>("property_class", "10.9", "What the mark of a property class looks like")
        .with_option("class")
        .with_words(class_words),
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

Outcome<std::vector<Candidate>> candidates_of(const GivenJob<IdentifyJob>& given) {
  const IdentifyJob& job = given.job;
  if (job.bit) return try_identify_drive_number(*job.bit);
  const bool is_key = job.key.has_value();
  if (!job.socket && !is_key) return std::vector<Candidate>();
  IdentifyOptions options;
  options.drive = is_key ? Drive::hexagon_key : Drive::hexagon;
  options.worn = job.worn.value_or(is_key ? Length(0) : options.worn);
  return tauten::try_identify(is_key ? *job.key : *job.socket, options);
}

}  // namespace of_identify
}  // namespace

std::span<const Input<IdentifyJob>> identify_inputs() { return of_identify::inputs; }

Outcome<Identification> try_identify(const Call& call) {
  const auto given = try_read<IdentifyJob>(of_identify::inputs, call);
  if (!given) return given.error();
  const IdentifyJob& job = given->job;
  if (int{job.socket.has_value()} + int{job.key.has_value()} + int{job.bit.has_value()} > 1)
    return Error("socket", "socket, key and bit exclude each other; give the one tool that fits");
  const bool has_width = job.socket || job.key;
  if (!has_width && !job.bit && job.property_class.empty())
    return Error("socket", "say what fits, a socket, a key or a bit, or give a class; write a socket like 16mm");
  if (job.worn && !has_width) return Error("worn", "worn goes with a socket or a key; leave it out or say which");

  const Outcome<std::vector<Candidate>> found = of_identify::candidates_of(*given);
  if (!found) return given->in_words(found.error());
  Identification out;
  out.tool = job.key ? job.key : job.socket;
  for (const Candidate& c : *found) out.candidates.push_back(of_identify::in_words(c));
  if (job.property_class.empty()) return out;
  const Outcome<PropertyClass> c = try_property_class(job.property_class);
  const Outcome<std::string> marks = try_head_marks(job.property_class);
  if (!c) return given->in_words(c.error());
  if (!marks) return given->in_words(marks.error());
  out.property_class =
      ClassMark{c->name, *marks, c->tensile_strength, c->yield_strength, c->proof_stress, c->withdrawn, c->source};
  return out;
}

}  // namespace tauten::shared
