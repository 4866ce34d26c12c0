// Patterns of bolts, what each bolt of a group carries, and in which order a joint is tightened and undone.
#include <algorithm>

#include "answers.hpp"
#include "bindings.hpp"
#include "tauten/group/combined.hpp"
#include "tauten/group/flexibility.hpp"
#include "tauten/group/identity.hpp"
#include "tauten/group/pattern_words.hpp"
#include "tauten/group/scatter.hpp"

namespace py = pybind11;

namespace tauten {

enum class ShearModel : unsigned char { elastic, instantaneous_centre };
template <>
struct Words<ShearModel> {
  static constexpr const char* list[] = {"elastic", "instantaneous_centre"};
};

enum class OrderMethod : unsigned char { crosswise, circular, legacy, middle_out };
template <>
struct Words<OrderMethod> {
  static constexpr const char* list[] = {"crosswise", "circular", "legacy", "middle_out"};
};

}  // namespace tauten

namespace tauten::python {

namespace {

/// A row of numbers, which is a tuple in Python.
using Row = std::vector<double>;

struct Candidate {
  std::string standard, rating, size;
  double circle_diameter, across, along, hole_diameter, outside_diameter, shaft_height;
  Source source;

  template <class V>
  static void fields(V&& v) {
    v("standard", &Candidate::standard);
    v("rating", &Candidate::rating);
    v("size", &Candidate::size);
    v("circle_diameter", &Candidate::circle_diameter);
    v("across", &Candidate::across);
    v("along", &Candidate::along);
    v("hole_diameter", &Candidate::hole_diameter);
    v("outside_diameter", &Candidate::outside_diameter);
    v("shaft_height", &Candidate::shaft_height);
    v("source", &Candidate::source);
  }
};

struct PatternAnswer {
  PatternKind kind;
  int count;
  std::vector<Row> positions;
  Row centre;
  Length circle_diameter, circle_error;
  Angle first;
  Length width, height;
  int columns, rows;
  Length off;
  int freedom;
  std::optional<int> odd;
  std::optional<Length> odd_by;
  std::vector<Row> missing;
  int ways_round, ways_flipped;
  std::vector<Candidate> candidates;
  NextMeasurement next_measurement;
  std::vector<std::string> notes;

  template <class V>
  static void fields(V&& v) {
    v("kind", &PatternAnswer::kind);
    v("count", &PatternAnswer::count);
    v("positions", &PatternAnswer::positions);
    v("centre", &PatternAnswer::centre);
    v("circle_diameter", &PatternAnswer::circle_diameter);
    v("circle_error", &PatternAnswer::circle_error);
    v("first", &PatternAnswer::first);
    v("width", &PatternAnswer::width);
    v("height", &PatternAnswer::height);
    v("columns", &PatternAnswer::columns);
    v("rows", &PatternAnswer::rows);
    v("off", &PatternAnswer::off);
    v("freedom", &PatternAnswer::freedom);
    v("odd", &PatternAnswer::odd);
    v("odd_by", &PatternAnswer::odd_by);
    v("missing", &PatternAnswer::missing);
    v("ways_round", &PatternAnswer::ways_round);
    v("ways_flipped", &PatternAnswer::ways_flipped);
    v("candidates", &PatternAnswer::candidates);
    v("next_measurement", &PatternAnswer::next_measurement);
    v("notes", &PatternAnswer::notes);
  }
};

struct PatternWay {
  Angle turn;
  bool flipped;
  std::vector<int> partners;
  int worst;
  Length off;

  template <class V>
  static void fields(V&& v) {
    v("turn", &PatternWay::turn);
    v("flipped", &PatternWay::flipped);
    v("partners", &PatternWay::partners);
    v("worst", &PatternWay::worst);
    v("off", &PatternWay::off);
  }
};

struct ModelLoad {
  std::string model;
  double largest;
  std::string why_not;

  template <class V>
  static void fields(V&& v) {
    v("model", &ModelLoad::model);
    v("largest", &ModelLoad::largest);
    v("why_not", &ModelLoad::why_not);
  }
};

struct BoltGroup {
  std::string model;
  Row loads;
  double largest = 0;
  int worst = 0;
  double coefficient = absent;
  double torque_coefficient = absent;
  Row centre;
  std::vector<Row> forces;
  Row tension;
  double edge_pressure = absent;
  std::vector<ModelLoad> models;
  Row bolt_loads, clamp_loads;
  std::vector<bool> open;
  double slip = absent;
  std::vector<std::string> notes;

  template <class V>
  static void fields(V&& v) {
    v("model", &BoltGroup::model);
    v("loads", &BoltGroup::loads);
    v("largest", &BoltGroup::largest);
    v("worst", &BoltGroup::worst);
    v("coefficient", &BoltGroup::coefficient);
    v("torque_coefficient", &BoltGroup::torque_coefficient);
    v("centre", &BoltGroup::centre);
    v("forces", &BoltGroup::forces);
    v("tension", &BoltGroup::tension);
    v("edge_pressure", &BoltGroup::edge_pressure);
    v("models", &BoltGroup::models);
    v("bolt_loads", &BoltGroup::bolt_loads);
    v("clamp_loads", &BoltGroup::clamp_loads);
    v("open", &BoltGroup::open);
    v("slip", &BoltGroup::slip);
    v("notes", &BoltGroup::notes);
  }
};

struct TighteningPass {
  double share;
  double torque;
  std::vector<int> order;
  Row loads;

  template <class V>
  static void fields(V&& v) {
    v("share", &TighteningPass::share);
    v("torque", &TighteningPass::torque);
    v("order", &TighteningPass::order);
    v("loads", &TighteningPass::loads);
  }
};

struct TighteningSequence {
  std::vector<int> order;
  std::vector<int> labels;
  std::vector<std::vector<int>> sets;
  std::vector<TighteningPass> passes;
  std::vector<int> ease, remove;
  std::vector<Row> history;
  double neighbour_loss = absent;
  std::optional<int> passes_needed, passes_by_rule;
  Row first_loads;
  std::string why_no_first_loads;
  std::vector<Band<Force>> scattered;
  std::optional<Band<Force>> lowest, highest;
  double relieved = absent;
  std::vector<std::string> notes;

  template <class V>
  static void fields(V&& v) {
    v("order", &TighteningSequence::order);
    v("labels", &TighteningSequence::labels);
    v("sets", &TighteningSequence::sets);
    v("passes", &TighteningSequence::passes);
    v("ease", &TighteningSequence::ease);
    v("remove", &TighteningSequence::remove);
    v("history", &TighteningSequence::history);
    v("neighbour_loss", &TighteningSequence::neighbour_loss);
    v("passes_needed", &TighteningSequence::passes_needed);
    v("passes_by_rule", &TighteningSequence::passes_by_rule);
    v("first_loads", &TighteningSequence::first_loads);
    v("why_no_first_loads", &TighteningSequence::why_no_first_loads);
    v("scattered", &TighteningSequence::scattered);
    v("lowest", &TighteningSequence::lowest);
    v("highest", &TighteningSequence::highest);
    v("relieved", &TighteningSequence::relieved);
    v("notes", &TighteningSequence::notes);
  }
};

/// \return bolts as people number them, from 1
std::vector<int> numbers(const BoltOrder& order) {
  std::vector<int> from_one;
  for (const std::size_t bolt : order) from_one.push_back(static_cast<int>(bolt) + 1);
  return from_one;
}

std::vector<Row> rows_of(const std::vector<Position>& at) {
  std::vector<Row> rows;
  for (const Position p : at) rows.push_back({p.x, p.y});
  return rows;
}

/// Two numbers of a dimension: (x, y).
template <Dim D>
std::array<double, 2> read_pair(const std::string& name, py::handle value) {
  const py::list items = read_items(name, value);
  if (items.size() != 2)
    throw Error(name.c_str(),
                (name + " has " + std::to_string(items.size()) + " items, but must have two; write it (x, y)").c_str());
  return {read_number(name + "[0]", items[0], D), read_number(name + "[1]", items[1], D)};
}

Position read_place(const std::string& name, py::handle value) {
  const auto [x, y] = read_pair<Dim::length>(name, value);
  return {x, y};
}

/// NumPy arrays and other sequences as lists.
py::object as_list(py::handle value) {
  return py::hasattr(value, "tolist") ? value.attr("tolist")() : py::reinterpret_borrow<py::object>(value);
}

Pattern read_positions(const std::string& name, py::handle value) {
  std::vector<Position> at;
  for (const py::handle item : read_items(name, as_list(value)))
    at.push_back(read_place(name + "[" + std::to_string(at.size()) + "]", as_list(item)));
  return try_pattern(std::move(at)).value();
}

/// A pattern: words, places, a number of bolts on a circle, or an answer of `pattern`.
Pattern read_pattern(const std::string& name, py::handle value) {
  if (py::isinstance<py::str>(value)) return try_pattern_from_words(value.cast<std::string>()).value();
  if (py::isinstance<PatternAnswer>(value)) return read_positions(name, value.attr("positions"));
  if (py::isinstance<py::int_>(value) && !py::isinstance<py::bool_>(value))
    return try_circle_pattern(static_cast<std::size_t>(read_whole(name, value, 2, static_cast<long long>(most_bolts))),
                              Length(0.1))
        .value();
  return read_positions(name, value);
}

PatternAnswer pattern_answer(const py::dict& values) {
  const Arguments given{values};
  given.either("positions", "chords");
  given.either("positions", "name");
  given.either("chords", "name");
  std::optional<Pattern> pattern;
  if (given.has("positions")) pattern = read_pattern("positions", values["positions"]);
  if (std::string name; given("name", name)) pattern = try_pattern_from_words(name).value();
  if (std::vector<Length> chords; given.has("chords")) {
    py::dict as_lists;
    read("chords", as_list(values["chords"]), chords);
    pattern = try_pattern_from_chords(chords).value();
  }
  if (!pattern) throw Error("positions", "give positions, chords or a name, like \"circle:8:160mm\"");
  Length tolerance(0.5e-3);
  given("tolerance", tolerance);
  const PatternIdentity found = try_identify_pattern(*pattern, tolerance).value();
  PatternAnswer answer{found.kind,
                       static_cast<int>(pattern->size()),
                       rows_of(pattern->positions()),
                       {found.centre.x, found.centre.y},
                       found.circle_diameter,
                       found.circle_error,
                       found.first,
                       found.width,
                       found.height,
                       static_cast<int>(found.columns),
                       static_cast<int>(found.rows),
                       found.off,
                       static_cast<int>(found.freedom),
                       {},
                       {},
                       rows_of(found.missing),
                       static_cast<int>(found.ways_round),
                       static_cast<int>(found.ways_flipped),
                       {},
                       NextMeasurement::nothing,
                       {}};
  if (found.odd) {
    answer.odd = static_cast<int>(*found.odd) + 1;
    answer.odd_by = found.odd_by;
  }
  MeasuredDrilling measured;
  measured.count = pattern->size() + found.missing.size();
  given("hole", measured.hole);
  given("outside", measured.outside);
  given("height", measured.height);
  if (found.kind == PatternKind::circle || found.kind == PatternKind::odd_hole ||
      found.kind == PatternKind::missing_holes)
    measured.circle = found.circle_diameter;
  const bool square = found.kind == PatternKind::circle && pattern->size() == 4;
  if (found.kind == PatternKind::rectangle) {
    measured.across = found.width;
    measured.along = found.height;
  } else if (square) {
    measured.across = measured.along = Length(found.circle_diameter.si * std::sqrt(0.5));
  }
  const auto candidates = try_drilling_candidates(measured).value();
  answer.next_measurement = next_measurement(candidates, measured);
  for (const DrillingCandidate& c : candidates)
    answer.candidates.push_back({c.standard, c.rating, c.size, c.circle.si, c.across.si, c.along.si, c.hole.si,
                                 c.outside.si, c.height.si, c.source});
  if (!candidates.empty())
    answer.notes.emplace_back(
        "Holes alone do not show a rating: flanges of several ratings have the same holes. Read the mark on the rim.");
  if (!candidates.empty() && mixes_standards(candidates))
    answer.notes.emplace_back(
        "Candidates are from several standards: bolts may go in although the flanges do not match. Check outside "
        "diameter, "
        "facing and mark.");
  if (found.freedom == 0)
    answer.notes.emplace_back(
        "So few holes fit this pattern whatever they measure; the fit proves nothing. Measure across other holes as "
        "well.");
  if (given.has("chords"))
    answer.notes.emplace_back("Errors of chords add up round the ring: check by one measurement across.");
  return answer;
}

py::object ways_of(const PatternAnswer& part, const py::object& on, const py::object& tolerance, bool flipped) {
  std::vector<Position> from;
  for (const Row& row : part.positions) from.push_back({row[0], row[1]});
  const Pattern other = read_pattern("on", on);
  const Length within(read_number("tolerance", tolerance, Dim::length));
  std::vector<PatternWay> ways;
  for (const Way& way : try_ways_on(try_pattern(from).value(), other, within, flipped).value())
    ways.push_back({way.turn, way.flipped, numbers(way.partner), static_cast<int>(way.worst) + 1, way.off});
  return to_python(ways);
}

void read_shear(const Arguments& given, const Pattern& pattern, ShearModel model, BoltGroup& answer,
                std::optional<ElasticShear>& shear) {
  ShearLoad load;
  if (given.has("load")) {
    const auto [x, y] = read_pair<Dim::force>("load", as_list(given.values["load"]));
    load.x = Force(x);
    load.y = Force(y);
  }
  load.at = given.has("at") ? read_place("at", as_list(given.values["at"])) : pattern.centroid();
  given("torque", load.torque);
  std::vector<double> weights;
  if (given.has("weights")) read("weights", as_list(given.values["weights"]), weights);
  const double force = std::hypot(load.x.si, load.y.si);
  if (model == ShearModel::instantaneous_centre) {
    if (!weights.empty())
      throw Error("weights",
                  "weights go with the elastic model; the instantaneous centre takes equal bolts; leave them out");
    const UltimateShear ultimate = try_ultimate_shear(pattern, load).value();
    answer.coefficient = ultimate.coefficient;
    answer.torque_coefficient = ultimate.torque_coefficient.si;
    if (ultimate.centre) answer.centre = {ultimate.centre->x, ultimate.centre->y};
    // Shares of the strength at which the first bolt fails, brought down to the load that is given.
    const double scale =
        force > 0 ? force / ultimate.coefficient : std::fabs(load.torque.si) / ultimate.torque_coefficient.si;
    for (const ShearForce f : ultimate.bolts) answer.forces.push_back({f.x * scale, f.y * scale});
    answer.notes.emplace_back(
        "Loads by instantaneous centre are those at failure, brought down to the load in proportion; the coefficient "
        "times the "
        "strength of one bolt is the strength of the group. Bearing bolts in ductile plates; not for slip or fatigue.");
    return;
  }
  shear = try_elastic_shear(pattern, load, weights).value();
  for (const ShearForce f : shear->bolts) answer.forces.push_back({f.x, f.y});
  answer.centre = {shear->centre.x, shear->centre.y};
  if (force > 0) answer.coefficient = force / shear->most.si;
  if (force == 0 && shear->most.si > 0) answer.torque_coefficient = std::fabs(shear->torque.si) / shear->most.si;
}

void read_tension(const Arguments& given, const Pattern& pattern, TensionModel model, BoltGroup& answer) {
  LiftingLoad load;
  given("force", load.force);
  if (given.has("moment")) {
    const auto [right, up] = read_pair<Dim::torque>("moment", as_list(given.values["moment"]));
    load.right = Torque(right);
    load.up = Torque(up);
  }
  std::optional<ContactFace> face;
  if (given.has("outline")) {
    face.emplace();
    for (const py::handle item : read_items("outline", as_list(given.values["outline"])))
      face->outline.push_back(read_place("outline[" + std::to_string(face->outline.size()) + "]", as_list(item)));
    face->bolt_area = Area(absent);
    given("bolt_area", face->bolt_area);
    given("modular_ratio", face->modular_ratio);
  }
  const auto all = tension_by_all_models(pattern, load, face);
  const TensionByModel& chosen = all[static_cast<std::size_t>(model)];
  if (!chosen.tension) throw Error(*chosen.why_not);
  answer.tension = chosen.tension->bolts;
  if (model == TensionModel::contact)
    answer.edge_pressure = try_tension_with_contact(pattern, load, *face).value().edge_pressure;
  for (const TensionByModel& item : all)
    answer.models.push_back(
        {word_of(item.model), item.tension ? item.tension->most.si : absent, item.tension ? "" : item.why_not->what()});
  answer.notes.emplace_back(
      "Models of tension differ by a factor near two for the most loaded bolt; the others are listed beside this one.");
}

BoltGroup group_answer(const py::dict& values) {
  const Arguments given{values};
  if (!given.has("positions"))
    throw Error("positions", "give the positions of the bolts, or a pattern like \"circle:8:160mm\"");
  const Pattern pattern = read_pattern("positions", values["positions"]);
  ShearModel shear_model = ShearModel::elastic;
  TensionModel tension_model = TensionModel::about_centroid;
  const bool pulls = given.has("force") || given.has("moment");
  const bool shears = given.has("load") || given.has("torque");
  if (!pulls && !shears)
    throw Error("load", "give a load in the plane of the joint (load, torque) or across it (force, moment)");
  if (std::string model; given("model", model)) {
    constexpr const char* all[] = {"elastic", "instantaneous_centre", "centroid", "contact", "tilting", "plastic"};
    const int place = read_word("model", values["model"], all, 6);
    if (place < 2)
      shear_model = static_cast<ShearModel>(place);
    else
      tension_model = static_cast<TensionModel>(place - 2);
    if (place < 2 && !shears)
      throw Error("model", "this model shares a load in the plane; give load or torque, or a model of tension");
    if (place >= 2 && !pulls)
      throw Error("model", "this model shares a pull or moment; give force or moment, or a model of shear");
  }
  if (given.has("tension_model")) {
    if (!pulls) throw Error("tension_model", "tension_model goes with force or moment; give one of them");
    given("tension_model", tension_model);
  }
  BoltGroup answer;
  std::optional<ElasticShear> shear;
  if (shears) read_shear(given, pattern, shear_model, answer, shear);
  if (pulls) read_tension(given, pattern, tension_model, answer);
  answer.model = shears && pulls ? std::string(word_of(shear_model)) + " and " + word_of(tension_model)
                 : shears        ? word_of(shear_model)
                                 : word_of(tension_model);
  for (std::size_t i = 0; i < pattern.size(); ++i) {
    const double across = shears ? std::hypot(answer.forces[i][0], answer.forces[i][1]) : 0;
    if (shears && pulls)
      answer.loads.push_back(equivalent_tension(Force(std::max(answer.tension[i], 0.0)), Force(across)).si);
    else
      answer.loads.push_back(shears ? across : answer.tension[i]);
  }
  if (shears && pulls)
    answer.notes.emplace_back(
        "loads are equivalent tensions, (T + sqrt(T^2 + 4 V^2))/2, of tension and shear together.");
  const auto most = std::max_element(answer.loads.begin(), answer.loads.end());
  answer.worst = static_cast<int>(most - answer.loads.begin()) + 1;
  answer.largest = *most;
  for (const char* name : {"load_factor", "friction"})
    if (given.has(name) && !given.has("preload"))
      throw Error("preload", (std::string(name) + " goes with preload; give preload too").c_str());
  if (Force preload; given("preload", preload)) {
    double share = 0.2;
    given("load_factor", share);
    const Tension external =
        pulls ? tauten::detail::tension_of(answer.tension) : Tension{Row(pattern.size()), 0, Force(0)};
    const auto bolts = try_preloaded(external, preload, share).value();
    for (const PreloadedBolt& bolt : bolts) {
      answer.bolt_loads.push_back(bolt.bolt.si);
      answer.clamp_loads.push_back(bolt.clamp.si);
      answer.open.push_back(bolt.open);
    }
    if (std::find(answer.open.begin(), answer.open.end(), true) != answer.open.end())
      answer.notes.emplace_back(
          "The joint opens at some bolts, which then carry all of their share; the shares of the others are a guide.");
    if (double friction = 0; given("friction", friction)) {
      if (!shear) throw Error("friction", "slip needs the elastic model and a load in the plane; give load");
      const Slip slip = try_slip(*shear, bolts, friction).value();
      answer.slip = slip.worst;
    }
  }
  return answer;
}

BoltOrder read_order(const std::string& name, py::handle value, std::size_t count) {
  BoltOrder order;
  for (const py::handle item : read_items(name, as_list(value)))
    order.push_back(static_cast<std::size_t>(
        read_whole(name + "[" + std::to_string(order.size()) + "]", item, 1, static_cast<long long>(count)) - 1));
  if (order.size() != count)
    throw Error(name.c_str(), (name + " has " + std::to_string(order.size()) + " bolts, but the pattern has " +
                               std::to_string(count) + "; name each bolt once")
                                  .c_str());
  if (const auto valid = try_labels(order); !valid) throw Error(valid.error());
  return order;
}

std::vector<std::vector<double>> read_matrix(const std::string& name, py::handle value) {
  std::vector<std::vector<double>> matrix;
  read(name, as_list(value), matrix);
  return matrix;
}

FlangeOnGasket read_flange(const Arguments& given, const Pattern& pattern) {
  const py::dict values = given.values["gasket"];
  FlangeOnGasket f;
  f.count = pattern.size();
  const auto circle = fit_ring(pattern.positions(), pattern.size());
  if (!circle) throw Error("gasket", "a flange on a gasket has its bolts evenly on a circle; give interaction instead");
  f.circle = Length(2 * circle->radius);
  const auto take = [&](const char* name, auto& into) {
    if (!values.contains(name)) return;
    read(std::string("gasket.") + name, values[name], into);
  };
  take("ring_width", f.ring_width);
  take("ring_thickness", f.ring_thickness);
  take("ring_modulus", f.ring_modulus);
  take("gasket_width", f.gasket_width);
  take("gasket_thickness", f.gasket_thickness);
  take("gasket_modulus", f.gasket_modulus);
  take("bolt_length", f.bolt_length);
  take("bolt_area", f.bolt_area);
  take("bolt_modulus", f.bolt_modulus);
  return f;
}

/// The interaction that was given, in one of three ways; none if it was not.
std::optional<Interaction> read_interaction(const Arguments& given, const Pattern& pattern, const BoltOrder& order,
                                            TighteningSequence& answer) {
  const std::size_t n = pattern.size();
  given.either("interaction", "gasket");
  given.either("interaction", "readings");
  given.either("gasket", "readings");
  if (given.has("gasket")) {
    answer.notes.emplace_back(
        "Interaction from geometry is an order of magnitude: hub, twist of the ring and the gasket's own behaviour are "
        "left out. "
        "Measured loads (readings) go before it.");
    return try_interaction_on_gasket(read_flange(given, pattern)).value();
  }
  if (given.has("readings")) {
    answer.notes.emplace_back("Interaction from readings assumes equal bolts and a linear joint.");
    return try_measured_losses(order, read_matrix("readings", given.values["readings"]))
        .value()
        .try_interaction_of_equal_bolts()
        .value();
  }
  if (!given.has("interaction")) return {};
  const py::object value = as_list(given.values["interaction"]);
  std::vector<double> a(n * n);
  if (py::isinstance<py::float_>(value) || py::isinstance<py::int_>(value)) {
    // A ring in which only neighbours meet.
    const double c = read_number("interaction", value, Dim::number);
    for (std::size_t i = 0; i < n; ++i) {
      a[i * n + i] = 1;
      if (n > 1) a[i * n + (i + 1) % n] = a[(i + 1) % n * n + i] = c;
    }
  } else {
    const auto rows = read_matrix("interaction", value);
    if (rows.size() != n)
      throw Error("interaction", "interaction is not one row for each bolt; give count x count numbers");
    a.clear();
    for (const Row& row : rows) {
      if (row.size() != n) throw Error("interaction", "interaction is not one number for each pair of bolts");
      a.insert(a.end(), row.begin(), row.end());
    }
  }
  return try_interaction(n, std::move(a)).value();
}

TighteningSequence sequence_answer(const py::dict& values) {
  const Arguments given{values};
  if (!given.has("pattern")) throw Error("pattern", "give a pattern, like \"circle:8:160mm\", or the number of bolts");
  const Pattern pattern = read_pattern("pattern", values["pattern"]);
  const std::size_t n = pattern.size();
  OrderMethod method = OrderMethod::crosswise;
  given("method", method);
  given.either("order", "labels");
  BoltOrder order;
  if (given.has("order")) {
    order = read_order("order", values["order"], n);
  } else if (given.has("labels")) {
    BoltOrder labels = read_order("labels", values["labels"], n);
    for (std::size_t& label : labels) ++label;
    order = try_order_from_labels(labels).value();
  } else if (method == OrderMethod::crosswise) {
    order = crosswise_order(pattern);
  } else if (method == OrderMethod::circular) {
    order = try_circular_order(n).value();
  } else if (method == OrderMethod::legacy) {
    order = try_legacy_order(n).value();
  } else {
    order = given.has("start") ? middle_out_order(pattern, read_place("start", as_list(values["start"])))
                               : middle_out_order(pattern);
  }
  TighteningSequence answer;
  answer.order = numbers(order);
  for (const std::size_t label : try_labels(order).value()) answer.labels.push_back(static_cast<int>(label));
  if (std::size_t at_once = 1; given("at_once", at_once))
    for (const BoltOrder& set : try_sets_at_once(n, at_once).value()) answer.sets.push_back(numbers(set));

  std::vector<double> shares{0.3, 0.6, 1};
  if (given.has("shares")) {
    shares.clear();
    read("shares", as_list(values["shares"]), shares);
  }
  std::size_t rounds = 1;
  if (given.has("rounds")) rounds = static_cast<std::size_t>(read_whole("rounds", values["rounds"], 0, 100));
  double most = 1;
  given("most", most);
  // The settling round goes round the centre, whatever the numbers of the bolts.
  const BoltOrder settling = method == OrderMethod::middle_out ? order : try_circular_order(n).value();
  const auto plan = try_tightening_plan(order, shares, std::vector<BoltOrder>(rounds, settling), most).value();
  Torque torque(absent);
  if (given("torque", torque) && !is_positive(torque))
    throw Error(refusal("torque", torque, "but must be above 0; give the full torque"));
  for (const TighteningStep& step : plan) {
    if (step.pass == answer.passes.size()) answer.passes.push_back({step.share, step.share * torque.si, {}, {}});
    answer.passes.back().order.push_back(static_cast<int>(step.bolt) + 1);
  }
  if (shares.front() > 0.3 && shares.size() > 1)
    answer.notes.emplace_back("The first pass is above 30 % of the torque; gasket makers ask for 30 % at most.");

  bool pressurised = false;
  given("pressurised", pressurised);
  if (pressurised && !given.has("person"))
    throw Error("person", "pressurised needs the place of the person; give person=(x, y)");
  const Position person = given.has("person") ? read_place("person", as_list(values["person"])) : Position{};
  BoltOrder undone = order;
  if (method == OrderMethod::middle_out && !given.has("order") && !given.has("labels"))
    std::reverse(undone.begin(), undone.end());
  const UndoingPlan undoing = try_undoing_plan(pattern, undone, pressurised, person).value();
  answer.ease = numbers(undoing.ease);
  answer.remove = numbers(undoing.remove);

  const auto joint = read_interaction(given, pattern, order, answer);
  for (const char* name : {"load", "shortfall", "limit", "friction_scatter", "act_scatter", "wrench_scatter"})
    if (given.has(name) && !joint)
      throw Error(
          name,
          (std::string(name) + " goes with the elastic interaction; give interaction, gasket or readings").c_str());
  if (!joint) return answer;
  Force target(1);
  given.above_zero("load", target);
  std::vector<LoadStep> steps;
  for (const TighteningStep& step : plan) steps.push_back({step.bolt, step.share * target.si});
  answer.history = try_tighten(*joint, steps).value();
  for (std::size_t pass = 0; pass < answer.passes.size(); ++pass)
    answer.passes[pass].loads = answer.history[(pass + 1) * n - 1];
  answer.neighbour_loss = neighbour_loss(*joint, 0, 1);
  if (double shortfall = 0; given("shortfall", shortfall)) {
    answer.passes_needed = static_cast<int>(try_passes_needed(*joint, {order, settling}, shortfall).value());
    const double rule = passes_by_rule(answer.neighbour_loss, shortfall);
    if (rule == rule) answer.passes_by_rule = static_cast<int>(std::max(rule, 1.0));
  }
  Force limit(std::numeric_limits<double>::max());
  if (given("limit", limit) || given.has("load")) {
    const auto first = try_compensated_loads(*joint, order, target, limit);
    if (first)
      answer.first_loads = *first;
    else
      answer.why_no_first_loads = first.error().what();
    if (first && !given.has("limit"))
      answer.notes.emplace_back("first_loads were not checked against yield; give limit, the yield load of a bolt.");
  }
  LoadScatter scatter;
  const bool scatters = given("friction_scatter", scatter.bolt) | given("act_scatter", scatter.act) |
                        given("wrench_scatter", scatter.joint);
  if (scatters) {
    std::size_t trials = 10000;
    std::uint64_t seed = 1;
    given("trials", trials);
    given("seed", seed);
    ScatteredLoads found = try_scattered_loads(*joint, steps, scatter, trials, seed).value();
    answer.scattered = std::move(found.bolts);
    answer.lowest = found.lowest;
    answer.highest = found.highest;
    answer.relieved = found.relieved;
  }
  return answer;
}

}  // namespace

void add_group(py::module_& module) {
  add_record<Candidate>(module, "DrillingCandidate", "A standard drilling that fits the holes; it proves no rating");
  add_record<PatternWay>(module, "PatternWay", "One way in which a part goes on: bolt numbers from 1, turn clockwise");
  auto pattern = add_record<PatternAnswer>(module, "Pattern", "Which pattern the holes are; bolts are numbered from 1");
  pattern.def(
      "ways_on", ways_of, py::arg("on"), py::arg("tolerance") = py::str("0.5mm"), py::arg("flipped") = false,
      "All ways in which this part goes on another pattern so that each bolt comes within the tolerance of its place; "
      "flipped: turned over first. None of them: it does not fit.");
  set_repr(pattern, [](const PatternAnswer& p) {
    return "Pattern(" + std::string(word_of(p.kind)) + ", " + std::to_string(p.count) + " holes" +
           (p.circle_diameter.si == p.circle_diameter.si ? " on " + to_text(p.circle_diameter) : "") + ", " +
           std::to_string(p.ways_round) + (p.ways_round == 1 ? " way round)" : " ways round)");
  });
  add_record<ModelLoad>(module, "ModelLoad", "The most loaded bolt after one model of tension");
  auto group =
      add_record<BoltGroup>(module, "BoltGroup", "What each bolt of a group carries, in N; bolts are numbered from 1");
  set_repr(group, [](const BoltGroup& g) {
    return "BoltGroup(" + g.model + ", bolt " + std::to_string(g.worst) + " carries " +
           quantity_text(g.largest, Dim::force) + ")";
  });
  add_record<TighteningPass>(module, "TighteningPass", "One pass: share of the torque, torque, order, loads after it");
  auto sequence = add_record<TighteningSequence>(module, "TighteningSequence",
                                                 "In which order to tighten and undo; bolts are numbered from 1");
  set_repr(sequence, [](const TighteningSequence& s) {
    std::string text = "TighteningSequence(";
    for (const int bolt : s.order) text += (bolt == s.order.front() ? "" : " ") + std::to_string(bolt);
    return text + "; " + std::to_string(s.passes.size()) + " passes)";
  });
  module.def("pattern", pattern_answer);
  module.def("group", group_answer);
  module.def("sequence", sequence_answer);
}

}  // namespace tauten::python
