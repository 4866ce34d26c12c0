// Whether a stuck fastener comes free before it shears or its drive gives.
#include "answers.hpp"
#include "bindings.hpp"
#include "shared/free_items.hpp"
#include "shared/inputs.hpp"
#include "tauten/loosening/free.hpp"
#include "tauten/loosening/free_derivation.hpp"
#include "tauten/loosening/free_lookup.hpp"
#include "tauten/uncertainty/free_uncertainty.hpp"

namespace py = pybind11;

namespace tauten::python {

namespace {

/// The answer with the job, from which it is explained.
struct FreeAnswer : Free {
  FreeJob job;
};

/// Diameter, pitch, width and strengths: plain, or by thread, tool and class.
void read_fastener(const Given& given, FreeJob& job) {
  given.either("property_class", "torsion_ratio");
  FreeNames names;
  given("thread", names.thread);
  given("property_class", names.property_class);
  given("drive", names.drive);
  given.above_zero("socket", names.socket);
  given.above_zero("key", names.key);
  given("bit", names.bit);
  given.above_zero("diameter", job.diameter);
  given.above_zero("pitch", job.pitch);
  given.above_zero("width_across_flats", job.width_across_flats);
  given.above_zero("tensile_strength", job.tensile_strength);
  given.above_zero("yield_strength", job.yield_strength);
  given("torsion_ratio", job.torsion_ratio);
  if (const auto error = look_up(names, job)) throw *error;
  given("quenched", job.surroundings.quenched);
}

/// As a record, or as text as the command line takes it: "fluid:24h".
void read_use(const std::string& name, py::handle item, AidUse& use) {
  const std::string text = py::isinstance<py::str>(item) ? item.cast<std::string>() : "";
  if (text.find(':') == std::string::npos) return read(name, item, use);
  if (const auto problem = shared::read_aid(name.c_str(), text, use)) throw *problem;
}

/// As a record, or as text as the command line takes it: "freed:85N.m".
void read_outcome(const std::string& name, py::handle item, Undone& one) {
  if (py::isinstance<py::str>(item)) {
    if (const auto problem = shared::read_undone(name.c_str(), item.cast<std::string>(), one)) throw *problem;
    return;
  }
  py::dict members = read_members(name, item, {"how", "torque", "treated"});
  if (members.contains("how") && py::isinstance<py::str>(members["how"]) &&
      shared::means_unmoved(members["how"].cast<std::string>()))
    members["how"] = word_of(Undone::How::unmoved);
  read(name, members, one);
}

template <class T>
void read_each(const Given& given, const char* name, std::vector<T>& into,
               void (*read_one)(const std::string&, py::handle, T&)) {
  if (!given.has(name)) return;
  if (py::isinstance<py::str>(given.values[name])) {  // one text is a list of one
    read_one(name, given.values[name], into.emplace_back());
    return;
  }
  std::size_t place = 0;
  for (const py::handle item : read_items(name, given.values[name]))
    read_one(name + ("[" + std::to_string(place++) + "]"), item, into.emplace_back());
}

/// One word, or a list of them.
void read_each(const Given& given, const char* name, HeatSurroundings& into) {
  if (!given.has(name)) return;
  std::vector<std::string> words;
  if (py::isinstance<py::str>(given.values[name]))
    given(name, words.emplace_back());
  else
    given(name, words);
  for (const std::string& word : words)
    if (const auto problem = shared::read_surroundings(name, word, into)) throw *problem;
}

FreeJob job_of(const Given& given) {
  FreeJob job;
  read_fastener(given, job);
  given("rust", job.rust);
  given("preload", job.preload);
  given("thread_friction", job.thread_friction);
  given("bearing_friction", job.bearing_friction);
  given.above_zero("engaged_length", job.engaged_length);
  given.above_zero("bearing_diameter", job.bearing_diameter);
  given.above_zero("nut_diameter", job.nut_diameter);
  given.above_zero("nut_yield", job.nut_yield);
  given("prevailing_torque", job.prevailing_torque);
  given("years", job.years);
  given("first_year_loss", job.first_year_loss);
  given.above_zero("head_height", job.head_height);
  given("drive_clearance", job.drive_clearance);
  given("corner_loss", job.corner_loss);
  given.above_zero("drive_square", job.drive_square);
  given.above_zero("handle_length", job.handle_length);
  given("hand_force", job.hand_force);
  given("hand_variation", job.hand_variation);
  given("limit", job.limit);
  given("shear_risk", job.shear_risk);
  given("wanted_chance", job.wanted_chance);
  read_each(given, "aids", job.aids, read_use);
  if (given.has("held")) given.above_zero("held", job.held.emplace());
  given("held_untreated", job.held_untreated);
  read_each(given, "surroundings", job.surroundings);
  given("reused", job.surroundings.reused);
  read_each(given, "loosened", job.loosened, read_outcome);
  given("trials", job.trials);
  given("seed", job.seed);
  given("jobs", job.jobs);
  return job;
}

FreeAnswer answer(const py::dict& values) {
  const Given given{values};
  const FreeJob job = job_of(given);
  const Outcome<Free> found = [&] {
    const py::gil_scoped_release others_may_run;
    return try_free_joint(job);
  }();
  if (found) return {*found, job};
  const char* tool = given.has("key") ? "key" : given.has("socket") ? "socket" : "width_across_flats";
  throw shared::renamed(shared::renamed(found.error(), "width_across_flats", tool), "drive_number", "bit");
}

Question question(const py::dict& values) {
  const auto found = try_free_question(job_of(Given{values}));
  if (!found) throw found.error();
  return *found;
}

std::string percent(double chance) {
  // The usual number of trials does not resolve less.
  return chance < 1e-3 ? "below 0.1 %" : number_text(100 * chance, 2) + " %";
}

std::string line_of(const Free& free) {
  const Chances& c = free.chances;
  return "up to " + quantity_text(c.limit.si, Dim::torque) + ": free " + percent(c.free) + ", shears " +
         percent(c.shear) + ", rounds " + percent(c.round) + ", tool fails " + percent(c.tool) + ", does not move " +
         percent(c.not_moving);
}

}  // namespace

void add_free_joint(py::module_& module) {
  auto chances = add_record<Chances>(module, "Chances", "How the fastener ends as the torque grows up to a limit");
  add_record<Lognormal>(module, "Lognormal",
                        "A quantity that scatters by factors: median and coefficient of variation");
  add_record<Learned>(module, "Learned", "What the fasteners already undone tell about the next one");
  add_record<IfHeld>(module, "IfHeld", "Chances of the rest of the pull, once the fastener is seen not to have moved");
  add_record<AidUse>(module, "AidUse", "An aid to release as it is used");
  add_record<Capacity>(module, "Capacity", "What one part takes before it gives, and where the figure comes from");
  add_record<PlanStep>(module, "PlanStep", "One sequence of aids and what to expect of it");
  add_record<AfterRelease>(module, "AfterRelease", "Advice for the next tightening");
  auto type = add_record<FreeAnswer>(module, "Free", "Whether a stuck fastener comes free, where to stop, what next");
  set_repr(type, [](const FreeAnswer& free) { return "Free(" + line_of(free) + ")"; });
  add_explain(type, [](const FreeAnswer& free) { return derivation_of(free.job, free); });
  module.def("free_joint", answer);
  module.def("free_question", question);
}

}  // namespace tauten::python
