"""Uncertainty from Python and from the command line, held against general libraries and printed examples.

First order against the package `uncertainties`, trials against OpenTURNS (where it is installed) and NumPy's own random
numbers, Sobol indices and JCGM 101 examples against their printed values, on arithmetic written out here.
"""
import json
import math
import os
import pty
import re
import signal
import subprocess
import sys
import textwrap
import time

import numpy as np
import pytest

import tauten
from tauten import uncertainty as u

PROGRAM = os.environ.get("TAUTEN_PROGRAM")
MM = 1e-3
PUMP_FOOT = dict(thread="M16", property_class="8.8", torque="130N.m", condition="oiled")


def chain_inputs():
    return dict(torque=u.normal("130N.m", "3N.m"), pitch="2mm", pitch_diameter="14.701mm",
                thread_friction=u.normal(0.12, 0.01), bearing_friction=u.normal(0.12, 0.012),
                bearing_diameter=u.uniform("19mm", "21mm"), stress_diameter="14.12mm", yield_strength="640MPa")


CHAIN = ["preload_from_torque", "thread_torque", "yield_utilisation"]


def by_hand(torque, mu_g, mu_k, face, sqrt=np.sqrt):
    """Share of yield of an M16 at a torque: linear torque formula, section fully plastic."""
    in_thread = 2 * MM / (2 * math.pi) + mu_g * 14.701 * MM / (2 * math.cos(math.pi / 6))
    load = torque / (in_thread + mu_k * face / 2)
    tension = load / (math.pi * (14.12 * MM) ** 2 / 4)
    return tension * sqrt(1 + 3 * (3 * load * in_thread / load / (14.12 * MM)) ** 2) / 640e6


def refused(call, argument, *words):
    with pytest.raises(tauten.Error) as caught:
        call()
    assert caught.value.argument == argument, caught.value
    for word in words:
        assert word in str(caught.value)


# ---- against general libraries --------------------------------------------------------------------------------------

def test_first_order_of_the_clamp_chain_against_the_package_uncertainties():
    ufloat = pytest.importorskip("uncertainties").ufloat
    from uncertainties import umath
    torque, mu_g, mu_k = ufloat(130, 3), ufloat(0.12, 0.01), ufloat(0.12, 0.012)
    face = ufloat(20 * MM, 2 * MM / math.sqrt(12))
    expected = by_hand(torque, mu_g, mu_k, face, umath.sqrt)
    found = u.budget(CHAIN, chain_inputs())
    assert found.value == pytest.approx(expected.nominal_value, rel=1e-12)
    assert found.standard_uncertainty == pytest.approx(expected.std_dev, rel=1e-12)
    lines = {line.name: line for line in found.contributions}
    for name, variable in dict(torque=torque, thread_friction=mu_g, bearing_friction=mu_k, bearing_diameter=face).items():
        assert abs(lines[name].contribution) == pytest.approx(expected.error_components()[variable], rel=1e-12)
    assert sum(line.share for line in found.contributions) == pytest.approx(1, abs=1e-12)


def test_first_order_of_every_formula_against_the_package_uncertainties():
    """Its derivatives of the algebra that a formula prints; the tests of expressions hold that to the formula itself."""
    ufloat = pytest.importorskip("uncertainties").ufloat
    from uncertainties import umath
    seen = 0
    for name, formula in tauten.formulas.items():
        from tauten._text import example
        call, value = example(formula)
        if value is None:
            continue
        x = {arg.name: arg.read(arg.example) for arg in formula.inputs}
        variables = {key: ufloat(number, 0.01 * abs(number) + 1e-9) for key, number in x.items()}
        scope = {key: getattr(umath, key) for key in ("sqrt", "sin", "cos", "tan", "atan", "exp", "log")}
        expected = eval(formula.expression("algebra"), {"__builtins__": {}}, {**scope, "pi": math.pi, **variables})
        found = u.budget(name, {key: u.normal(v.nominal_value, v.std_dev) for key, v in variables.items()})
        assert found.value == pytest.approx(expected.nominal_value, rel=1e-9, abs=1e-15), name
        assert found.standard_uncertainty == pytest.approx(expected.std_dev, rel=1e-7), name
        seen += 1
    assert seen > 80


def compare_runs(run, values):
    mean, deviation = np.mean(values), np.std(values)
    assert run.mean == pytest.approx(mean, abs=0.01 * deviation)
    assert run.standard_uncertainty == pytest.approx(deviation, rel=0.01)
    low, high = np.quantile(values, [0.025, 0.975])
    assert run.symmetric.low == pytest.approx(low, abs=0.03 * deviation)
    assert run.symmetric.high == pytest.approx(high, abs=0.03 * deviation)


def test_trials_of_the_clamp_chain_against_numpy():
    random = np.random.default_rng(5)
    count = 400_000
    values = by_hand(random.normal(130, 3, count), random.normal(0.12, 0.01, count), random.normal(0.12, 0.012, count),
                     random.uniform(19 * MM, 21 * MM, count))
    compare_runs(u.monte_carlo(CHAIN, chain_inputs(), trials=400_000), values)


def test_trials_of_the_clamp_chain_against_openturns():
    ot = pytest.importorskip("openturns")
    ot.RandomGenerator.SetSeed(7)
    marginals = [ot.Normal(130, 3), ot.Normal(0.12, 0.01), ot.Normal(0.12, 0.012), ot.Uniform(19 * MM, 21 * MM)]
    correlation = ot.CorrelationMatrix(4)
    correlation[1, 2] = 0.8
    for copula, pairs in ((ot.IndependentCopula(4), ()),
                          (ot.NormalCopula(correlation), [("thread_friction", "bearing_friction", 0.8)])):
        x = np.array(ot.ComposedDistribution(marginals, copula).getSample(200_000))
        run = u.monte_carlo(CHAIN, chain_inputs(), correlations=pairs, trials=400_000)
        compare_runs(run, by_hand(*x.T))


# ---- printed examples -------------------------------------------------------------------------------------------------

def test_additive_model_of_jcgm_101():
    """JCGM 101:2008, 9.2.3 (printed figures from memory): four rectangular inputs of standard deviation 1 give u = 2.00 and
    [-3.88, 3.88]. The mass calibration and the comparison loss stand in the C++ tests."""
    # A sum of four: M_S (1 + e) - M_P - M_D, scaled so that every part has deviation 1; the product adds next to nothing.
    half = math.sqrt(3)
    run = u.monte_carlo("effective_torque", dict(setting=u.uniform(1000 - half, 1000 + half),
                                                 wrench_deviation=u.uniform(-half / 1000, half / 1000),
                                                 prevailing_torque=u.uniform(100 - half, 100 + half),
                                                 shank_torque=u.uniform(100 - half, 100 + half)), trials=1_000_000)
    assert round(run.standard_uncertainty, 2) == pytest.approx(2.00, abs=0.011)
    assert run.symmetric.low - 800 == pytest.approx(-3.88, abs=0.015)
    assert run.symmetric.high - 800 == pytest.approx(3.88, abs=0.015)
    assert run.shortest.high - run.shortest.low <= run.symmetric.high - run.symmetric.low


def test_coverage_over_a_thousand_cases():
    """In a thousand tightenings with true values drawn elsewhere, nineteen of twenty lie in the interval of 95 %."""
    run = u.monte_carlo("preload_from_torque", {key: value for key, value in chain_inputs().items()
                                                if key not in ("stress_diameter", "yield_strength")}, trials=200_000)
    random = np.random.default_rng(11)
    lever = 2 * MM / (2 * math.pi) + random.normal(0.12, 0.01, 1000) * 14.701 * MM / math.sqrt(3) + \
        random.normal(0.12, 0.012, 1000) * random.uniform(19 * MM, 21 * MM, 1000) / 2
    true = random.normal(130, 3, 1000) / lever
    inside = np.mean((true >= run.symmetric.low) & (true <= run.symmetric.high))
    assert abs(inside - 0.95) < 4 * math.sqrt(0.95 * 0.05 / 1000)


def test_sobol_indices_of_a_product_by_their_exact_values():
    # y = x1 x2 with means m and variances v: V = v1 m2^2 + v2 m1^2 + v1 v2.
    m1, m2, s1, s2 = 20.0, 0.02, 4.0, 0.004
    found = u.sobol("torque_from_nut_factor", dict(preload=u.normal(m1, s1), diameter=u.normal(m2, s2), nut_factor=1))
    whole = s1 ** 2 * m2 ** 2 + s2 ** 2 * m1 ** 2 + s1 ** 2 * s2 ** 2
    exact = dict(preload=(s1 ** 2 * m2 ** 2 / whole, (s1 ** 2 * m2 ** 2 + s1 ** 2 * s2 ** 2) / whole),
                 diameter=(s2 ** 2 * m1 ** 2 / whole, (s2 ** 2 * m1 ** 2 + s1 ** 2 * s2 ** 2) / whole), nut_factor=(0, 0))
    for index in found.inputs:
        first, total = exact[index.name]
        assert index.first == pytest.approx(first, abs=4 * index.first_error + 1e-12)
        assert index.total == pytest.approx(total, abs=4 * index.total_error + 1e-12)
    assert found.variance == pytest.approx(whole, rel=0.02)


# ---- whole answers ------------------------------------------------------------------------------------------------------

def test_whole_answers():
    for question, output in ((u.clamp(**PUMP_FOOT), "clamp_load"),
                             (u.free(thread="M16", property_class="8.8"), "breakaway_torque")):
        assert question.outputs[0] == output and set(question.defaults) == set(question.inputs)
        budget = u.budget(question)
        run = u.monte_carlo(question, jobs=2)
        assert run.converged and run.unit in ("N", "N.m")
        assert budget.value == pytest.approx(run.mean, rel=0.25)
        assert u.monte_carlo(question).mean == run.mean  # on one thread as on two
        assert sum(index.first for index in u.sobol(question).inputs) < 1.05
        assert question.notices and output in repr(run)
    load = tauten.clamp(**PUMP_FOOT).candidates[0].worst_case
    run = u.monte_carlo(u.clamp(**PUMP_FOOT), {"bearing_diameter": "19.995mm"})
    assert load.low <= run.values[0] and run.values[-1] <= load.high
    assert np.all(np.diff(run.values) >= 0)
    assert run.chance_above("40kN") == pytest.approx(np.mean(run.values > 40e3))
    assert run.chance_below(run.quantile(0.3)) == pytest.approx(0.3, abs=1e-3)
    strained = u.monte_carlo(u.clamp(**PUMP_FOOT), {"strength": 1}, output="yield_utilisation")
    assert strained.chance_above(1) == 0


def test_where_a_socket_fits_several_fasteners_it_says_which_is_taken():
    joint = dict(PUMP_FOOT, thread=None, socket="24mm")
    candidates = tauten.clamp(**joint).candidates
    names = [f"{c.thread}, {c.head}, class {c.property_class}" for c in candidates]
    question = u.clamp(**joint)
    assert len(names) > 3 and (question.title, *question.others) == tuple(names)
    said = question.notices[0]
    assert said.code == "others_fit" and f"{len(names) - 1} others fit too" in said.text
    assert {word.strip(",;.") for word in said.text.split()} >= {c.thread for c in candidates[1:]}
    # Thread and head ask about one of the others.
    other = candidates[2]
    one = u.clamp(**dict(joint, thread=other.thread, head=other.head.split(",")[0]))
    assert one.title.startswith(f"{other.thread}, {other.head.split(',')[0]}") and one.others == ()
    assert "others_fit" not in {notice.code for notice in one.notices}
    assert u.clamp(**PUMP_FOOT).others == ()
    words = ("clamp", "--socket", "24mm", "--class", "8.8", "--torque", "130N.m", "--condition", "oiled", "--trials", "20000")
    found = answer(*words)
    assert (found["title"], *found["others"]) == tuple(names) and found["notices"][0]["text"] == said.text
    page = command(*words).stdout
    assert page.startswith(names[0]) and said.text in " ".join(page.split())


def test_a_tightening_by_angle():
    question = u.turn(thread="M16", property_class="8.8", grip="40mm", snug_torque="40N.m", angle="70deg",
                      condition="oiled")
    run = u.monte_carlo(question, trials=4000, jobs=2)
    answer = tauten.turn(thread="M16", property_class="8.8", grip="40mm", snug_torque="40N.m", angle="70deg",
                         condition="oiled")
    assert answer.clamp_load.low * 0.99 <= run.symmetric.low < run.symmetric.high <= answer.clamp_load.high * 1.05
    torque = u.monte_carlo(u.clamp(**dict(PUMP_FOOT, torque="180N.m")), trials=20_000)
    assert run.standard_uncertainty / run.mean < torque.standard_uncertainty / torque.mean


def test_trials_in_which_a_turned_bolt_breaks():
    said = dict(thread="M16", property_class="10.9", grip="30mm", snug_torque="50N.m", condition="oiled")
    question = u.turn(angle="200deg", **said)
    assert any(notice.code == "may_neck" for notice in question.notices)
    # The curve of a bolt of the minimum strength ends first; the typical bolt is stronger, and is refused where it necks.
    end = tauten.curve(**said).nominal.points[-1].angle
    while True:
        try:
            u.turn(angle=end + math.radians(1), **said)
            end += math.radians(1)
        except tauten.Error:
            break
    assert math.degrees(end) > 200
    few, many = (u.monte_carlo(question, {"angle_of_turn": share * end}, trials=4000, jobs=2) for share in (0.9, 0.98))
    assert few.outside < many.outside < 2000
    with pytest.raises(tauten.Error) as caught:
        u.turn(angle="450deg", **said)
    assert caught.value.argument == "angle"


def test_results_show_themselves():
    run, budget = u.monte_carlo(u.clamp(**PUMP_FOOT)), u.budget(u.clamp(**PUMP_FOOT))
    for shown in (run._repr_html_(), budget._repr_html_(), u.sobol(u.clamp(**PUMP_FOOT))._repr_html_()):
        assert "<table>" in shown and "clamp_load" in shown or "thread_friction" in shown
    assert "kN" in repr(run) and "kN" in repr(budget) and "thread_friction" in budget._repr_html_()
    assert json.loads(run.to_json())["symmetric"]["low"] == run.symmetric.low


def test_results_tell_how_they_came_about():
    known = chain_inputs()
    budget, run = u.budget(CHAIN, known, coverage_factor=3), u.monte_carlo(CHAIN, known, trials=20_000)
    how = budget.derivation()
    assert [step.formula for step in how.steps] == CHAIN and how.steps[-1].value == budget.value
    # Each step by the formula itself, on the results of those before it.
    for step in how.steps:
        assert step.value == tauten.formulas[step.formula](*step.inputs)
    brings = {figure.name: figure.value.nominal for figure in how.found}
    for line in budget.contributions:
        assert brings.get(f"from_{line.name}", 0) == line.contribution
    assert brings["expanded_uncertainty"] == 3 * brings["standard_uncertainty"] == budget.expanded_uncertainty
    text = str(budget.explain())
    for part in ("normal, standard uncertainty 3 N.m", "nu = ", "JCGM 100:2008, clause 5.1", "from thread friction", "3 times as much"):
        assert part in " ".join(text.split()), part
    inches = str(budget.explain(style=tauten.Style(units={"torque": "lbf.ft", "length": "in"})))
    assert "lbf.ft" in inches and "0.578" in inches  # 14.701 mm
    drawn = run.derivation()
    assert {figure.name: figure.value.nominal for figure in drawn.found}["standard_uncertainty"] == run.standard_uncertainty
    assert "even from 19 mm to 21 mm" in str(run.explain()) and "<math" in run.explain()._repr_html_()
    shares = u.sobol(CHAIN, known)
    told = {figure.name: figure.value.nominal for figure in shares.derivation().found}
    assert [told.get(f"from_{index.name}", 0) for index in shares.inputs] == [index.first for index in shares.inputs]
    # A whole answer brings its cautions along.
    whole = u.budget(u.clamp(**PUMP_FOOT))
    assert "approve a joint for service" in " ".join(str(whole.explain()).split()) and whole._repr_latex_().startswith("\\par")


def test_trials_without_a_value_are_told():
    run = u.monte_carlo(u.clamp(**PUMP_FOOT), {"torque": u.normal(1, 1)}, trials=20_000)
    assert 0 < run.outside < 10_000
    assert f"{run.outside} of 20000 trials without a value" in repr(run)
    assert re.search(rf"Without a value, left out +{run.outside}", str(run)) and f"{run.outside}" in str(run.explain())
    assert "without a value" not in repr(u.monte_carlo(u.clamp(**PUMP_FOOT), trials=20_000))


def test_sobol_indices_print_as_shares():
    found = u.sobol("torque_from_nut_factor", dict(preload=u.normal(20, 4), diameter="20mm", nut_factor=1))
    shown = re.fullmatch(r"Sobol\(torque: preload (\S+) to (\S+) %, diameter 0 to 0 %, nut_factor 0 to 0 %\)", repr(found))
    assert [float(share) for share in shown.groups()] == pytest.approx([100, 100], abs=2)


def test_a_budget_shows_the_units_of_a_workshop():
    budget = u.budget(u.clamp(**PUMP_FOOT))
    assert [line.unit for line in budget.contributions] == ["N.m", "", "", "m", ""] and budget.unit == "N"
    page = str(budget)
    line = {line.name: line for line in budget.contributions}["bearing_diameter"]
    assert re.search(rf"bearing_diameter +19\.9\d+ mm +0\.408\d* mm +{line.sensitivity / 1e6:.3g} kN for 1 mm", page), page


# ---- inputs ---------------------------------------------------------------------------------------------------------------

@pytest.mark.parametrize("distribution, mean, deviation", [
    (u.normal("48N.m", "2N.m"), 48, 2), (u.uniform(0, 12), 6, 12 / math.sqrt(12)),
    (u.triangular(0, 3, 6), 3, 6 / math.sqrt(24)), (u.from_band(0, 3, 6), 3, 6 / math.sqrt(24)),
    (u.lognormal(1, 0.5), math.sqrt(1.25), 0.5 * math.sqrt(1.25)), (u.two_piece(-1.959964, 0, 1.959964), 0, 1),
    (u.from_samples([1.0, 1.0, 1.0]), 1, 0), (u.normal("48N.m", 0), 48, 0)])
def test_distributions(distribution, mean, deviation):
    assert distribution.mean == pytest.approx(mean, abs=1e-6)
    assert distribution.standard_deviation == pytest.approx(deviation, abs=1e-6)
    assert distribution.quantile(0.25) <= distribution.quantile(0.75)
    assert distribution == distribution and hash(distribution) == hash(distribution)
    if "samples" not in repr(distribution):
        assert eval(repr(distribution), vars(u)) == distribution


def test_inputs_in_every_form():
    pint = pytest.importorskip("pint")
    units = pint.UnitRegistry()
    expected = u.monte_carlo("torque_from_nut_factor", dict(preload=25e3, diameter=0.01, nut_factor=(0.12, 0.16, 0.2)),
                             trials=20_000)
    for preload, diameter, factor in (
            ("25kN", "10mm", u.from_band(0.12, 0.16, 0.2)), (units.Quantity(25, "kN"), units.Quantity(1, "cm"), [0.12, 0.16, 0.2]),
            (u.normal("25kN", 0), u.uniform("10mm", units.Quantity(0.01, "m")), u.triangular(0.12, 0.16, 0.2))):
        run = u.monte_carlo("torque_from_nut_factor", dict(preload=preload, diameter=diameter, nut_factor=factor),
                            trials=20_000)
        assert run.mean == pytest.approx(expected.mean, rel=1e-12)
    band = tauten.thread_condition("oiled").thread_friction
    assert u.from_band(band).mean == pytest.approx(sum(band) / 3)
    whole = u.budget([tauten.preload_from_torque, ("thread_torque", "thread_torque"), "yield_utilisation"], chain_inputs())
    assert whole == whole and whole.value == u.budget(CHAIN, chain_inputs()).value


def test_what_cannot_be_is_refused():
    inputs = dict(preload=u.normal("25kN", "1kN"), diameter="10mm", nut_factor=0.16)
    ask = "torque_from_nut_factor"
    refused(lambda: u.normal(1, -1), "standard_deviation", "not negative")
    refused(lambda: u.uniform(2, 1), "band")
    refused(lambda: u.from_samples([]), "samples", "empty")
    # Values of two kinds, and values that are none.
    refused(lambda: u.normal("25kN", "1mm"), "standard_deviation", "a length, not a force")
    refused(lambda: u.normal(25e3, "1mm").mean and u.uniform("1mm", "2kN"), "high", "a force, not a length")
    refused(lambda: u.triangular("1mm", "2", "3mm"), "mode", "has no unit")
    refused(lambda: u.lognormal("25kN", "1kN"), "variation", "a force")
    refused(lambda: u.from_samples(["25kN", "26mm"]), "samples", "a length")
    refused(lambda: u.normal("25 bananas", 1), "mean", "bananas")
    refused(lambda: u.normal(math.nan, 1), "mean", "finite")
    for band in ((1, 2), 5, "1..2..3", (1, 2, 3, 4)):
        refused(lambda: u.from_band(band), "band", "low, typical and high")
    refused(lambda: u.from_band(1, 2), "band", "low, typical and high")
    for call in (lambda: u.normal(None, 1), lambda: u.normal(True, 1), lambda: u.from_samples("5kN"),
                 lambda: u.from_samples(5), lambda: u.from_samples([[1, 2], [3, 4]])):
        with pytest.raises(TypeError, match="mean|samples"):
            call()
    for chance in (2, -0.1, math.nan):
        refused(lambda: u.normal(1, 1).quantile(chance), "chance")
        refused(lambda: u.monte_carlo(ask, inputs, trials=5000).quantile(chance), "chance")
    refused(lambda: u.budget(ask, {}), "preload", "missing")
    refused(lambda: u.budget(ask, dict(inputs, preload=u.normal("25mm", "1mm"))), "preload", "a length, not a force")
    refused(lambda: u.budget(ask, dict(inputs, speed=1)), "speed", "not an input")
    refused(lambda: u.budget("no_such", inputs), "formula", "no_such")
    refused(lambda: u.budget([], inputs), "chain")
    refused(lambda: u.budget(ask, inputs, output="clamp"), "output", "torque")
    refused(lambda: u.budget(ask, inputs, correlations=[("preload", "diameter", 2)]), "preload", "at most 1")
    for pairs in ([("preload", "diameter")], [5], 5, "preload", {("preload", "diameter"): 0.5}):
        refused(lambda: u.budget(ask, inputs, correlations=pairs), "correlations", "two inputs and a coefficient")
    refused(lambda: u.budget(ask, inputs, correlations=[("preload", "diameter", "much")]), "correlations", "much")
    for factor in (-1, 0, 101):
        refused(lambda: u.budget(ask, inputs, coverage_factor=factor), "coverage_factor", f"is {factor},")
    refused(lambda: u.monte_carlo(ask, inputs, trials=10), "trials", "is 10,", "at least")
    refused(lambda: u.monte_carlo(ask, inputs, trials=0), "trials", "leave it out")
    refused(lambda: u.monte_carlo(ask, inputs, most_trials=10), "most_trials", "is 10,")
    refused(lambda: u.monte_carlo(ask, inputs, coverage=95), "coverage", "is 95,", "0.95")
    refused(lambda: u.monte_carlo(ask, inputs, digits=9), "digits", "is 9,")
    for run in (u.monte_carlo, u.sobol):
        refused(lambda: run(ask, inputs, jobs=-3), "jobs", "is -3,")
    refused(lambda: u.sobol(ask, inputs, batches=2), "batches", "is 2,")
    refused(lambda: u.sobol(ask, inputs, trials=10), "trials", "is 10,")
    refused(lambda: u.monte_carlo(ask, inputs, interval="widest"), "interval", "shortest")
    refused(lambda: u.monte_carlo(ask, inputs, seed=-1), "seed")
    refused(lambda: u.sobol(ask, dict(inputs, preload=25e3)), "inputs", "does not vary")
    refused(lambda: u.clamp(thread="M10x9", torque=48), "thread", "M10")
    refused(lambda: u.clamp(socket="17.6mm", torque=48), "socket")
    refused(lambda: u.question(""), "formula", "not in the registry")
    for call in (lambda: u.budget(ask, dict(inputs, preload=object())), lambda: u.budget(ask, [1, 2]),
                 lambda: u.budget(ask, inputs, output=5), lambda: u.sobol(ask, inputs, output=None), lambda: u.question(5),
                 lambda: u.question(None), lambda: u.question([[]]), lambda: u.question([("stress_area", 5)]),
                 lambda: u.monte_carlo(ask, inputs, trials=1e5), lambda: u.monte_carlo(ask, inputs, seed=1.5),
                 lambda: u.monte_carlo(ask, inputs, progress=5)):
        with pytest.raises(TypeError) as caught:
            call()
        assert "incompatible function arguments" not in str(caught.value)


@pytest.mark.parametrize("ask, said", [
    (u.clamp, dict(thread="M16", torque="130N.m")), (u.free, dict(thread="M16", property_class="8.8")),
    (u.turn, dict(thread="M16", property_class="8.8", grip="40mm", snug_torque="40N.m", angle="70deg"))])
def test_a_whole_answer_takes_no_word_that_it_does_not_know(ask, said):
    """What is misspelled would be left out without a word, and the figures would be those of another joint."""
    assert ask(**said).outputs
    for word in ("conditon", "jobs", "columns", "table"):
        with pytest.raises(TypeError, match=f"'{word}'"):
            ask(**said, **{word: "oiled"})
    with pytest.raises(TypeError, match="needs a torque"):
        u.clamp(thread="M16")


# ---- long runs --------------------------------------------------------------------------------------------------------------

def test_same_seed_same_result_on_any_number_of_threads():
    runs = [u.monte_carlo(CHAIN, chain_inputs(), trials=100_000, jobs=threads, seed=3) for threads in (1, 2, 5)]
    for run in runs[1:]:
        assert np.array_equal(run.values, runs[0].values)
    assert not np.array_equal(u.monte_carlo(CHAIN, chain_inputs(), trials=100_000, seed=4).values, runs[0].values)
    one, many = (u.sobol(CHAIN, chain_inputs(), jobs=threads).to_json() for threads in (1, 4))
    assert one == many


def test_a_run_can_be_watched_and_stopped(capsys):
    seen = []
    run = u.monte_carlo(CHAIN, chain_inputs(), progress=lambda done, expected: seen.append((done, expected)))
    assert run.converged and len(seen) > 1 and [done for done, _ in seen] == sorted(done for done, _ in seen)
    assert seen[-1][0] < run.trials and all(done <= expected for done, expected in seen)
    stopped = u.monte_carlo(CHAIN, chain_inputs(), trials=1_000_000, progress=lambda done, expected: done < 50_000)
    assert stopped.stopped and stopped.trials == 50_000 and "stopped" in repr(stopped)

    def fail(done, expected):
        raise RuntimeError("enough")
    with pytest.raises(RuntimeError, match="enough"):
        u.monte_carlo(CHAIN, chain_inputs(), trials=1_000_000, progress=fail)
    with pytest.raises(RuntimeError, match="enough"):
        u.sobol(CHAIN, chain_inputs(), trials=1_000_000, progress=fail)
    assert u.monte_carlo(CHAIN, chain_inputs(), trials=200_000, progress=True).trials == 200_000


def interrupted(*command, **options):
    """Exit code, output and errors of a command that is interrupted once it is at work."""
    process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, **options)
    time.sleep(1.5)
    process.send_signal(signal.SIGINT)
    out, err = process.communicate(timeout=60)
    return process.returncode, out, err


def test_the_interrupt_key_stops_a_run():
    script = textwrap.dedent("""
        import tauten
        from tauten import uncertainty as u
        try:
            u.monte_carlo(u.clamp(thread="M16", torque=130, property_class="8.8"), trials=900_000_000)
        except KeyboardInterrupt:
            print("stopped")
    """)
    code, out, err = interrupted(sys.executable, "-c", script)
    assert (code, out) == (0, "stopped\n"), err


# ---- the command line -------------------------------------------------------------------------------------------------------

def command(*words):
    if not PROGRAM:
        pytest.skip("the command line program is not built")
    run = subprocess.run([PROGRAM, "uncertainty", *words], capture_output=True, text=True, timeout=120)
    return run


def answer(*words):
    run = command(*words, "--json")
    assert run.returncode == 0, run.stderr
    return json.loads(run.stdout)


def test_command_line_says_the_same_as_python():
    got = answer("preload_from_torque,thread_torque,yield_utilisation", "torque=normal:130N.m:3N.m", "pitch=2mm",
                 "pitch_diameter=14.701mm", "thread_friction=normal:0.12:0.01", "bearing_friction=normal:0.12:0.012",
                 "bearing_diameter=uniform:19mm:21mm", "stress_diameter=14.12mm", "yield_strength=640MPa", "--trials",
                 "100000", "--seed", "3", "--jobs", "2", "--correlate", "thread_friction:bearing_friction:0.5")
    run = u.monte_carlo(CHAIN, chain_inputs(), trials=100_000, seed=3,
                        correlations=[("thread_friction", "bearing_friction", 0.5)])
    assert got["results"][0]["monte_carlo"] == json.loads(run.to_json())
    assert got["results"][0]["chance_above_1"] == run.chance_above(1)
    whole = answer("clamp", "--thread", "M16", "--class", "8.8", "--torque", "130N.m", "--condition", "oiled",
                   "--scatter", "strength=1", "--sobol")
    assert [r["monte_carlo"]["output"] for r in whole["results"]] == ["clamp_load", "yield_utilisation"]
    mine = u.monte_carlo(u.clamp(**PUMP_FOOT), {"strength": 1})
    assert whole["results"][0]["monte_carlo"]["mean"] == mine.mean
    assert whole["results"][0]["sobol"]["inputs"][1]["name"] == "thread_friction"
    free = answer("free", "--thread", "M16", "--class", "8.8", "--output", "torque_ratio", "--trials", "50000")
    assert free["results"][0]["chance_above_1"] == \
        u.monte_carlo(u.free(thread="M16", property_class="8.8"), output="torque_ratio", trials=50_000).chance_above(1)
    turned = answer("turn", "--thread", "M16", "--class", "8.8", "--grip", "40mm", "--snug-torque", "40N.m", "--angle",
                    "70deg", "--trials", "2000", "--output", "clamp_load")
    assert turned["results"][0]["monte_carlo"]["trials"] == 2000


def test_page_of_the_command_line():
    page = command("clamp", "--thread", "M16", "--class", "8.8", "--torque", "130N.m", "--condition", "oiled",
                   "--sobol").stdout
    for part in ("M16, ISO 4014, ISO 4017, class 8.8", "clamp_load:", "standard uncertainty", "thread_friction", "Share", "Sobol indices",
                 "yield_utilisation", "The ratio exceeds 1 in", "Take care", "How far to trust this"):
        assert part in page, part
    assert all(len(line) <= 100 for line in page.splitlines())


@pytest.mark.parametrize("words, sentence", [
    ([], "name what is uncertain"), (["no_such"], "unknown"), (["stress_area", "diameter"], "name=value"),
    (["stress_area", "diameter=10mm"], "pitch is missing"), (["stress_area", "size=10mm", "pitch=1mm"], "no input 'size'"),
    (["stress_area", "diameter=normal:10mm", "pitch=1mm"], "not understood"),
    (["stress_area", "diameter=10", "pitch=1mm"], "has no unit"),
    (["stress_area", "diameter=9mm..10mm", "pitch=1mm"], "low..nominal..high"),
    (["stress_area", "diameter=uniform:10mm:9mm", "pitch=1mm"], "rise"),
    (["stress_area", "diameter=10mm", "pitch=1mm", "--trials", "x"], "whole number"),
    (["stress_area", "diameter=10mm", "pitch=1mm", "--trials", "0"], "leave it out"),
    (["stress_area", "diameter=10mm", "pitch=1mm", "--jobs", "0"], "jobs is 0"),
    (["stress_area", "diameter=10mm", "pitch=1mm", "--coverage", "2"], "coverage is 2"),
    (["stress_area", "diameter=10mm", "pitch=1mm", "--correlate", "a"], "coefficient"),
    (["stress_area,thread_torque"], "no later formula"), (["clamp", "--thread", "M16"], "torque is missing"),
    (["clamp", "--thread", "M16", "--torque", "130N.m", "--scatter", "luck=1"], "no input 'luck'"),
    (["free"], "thread"), (["turn", "--thread", "M16", "--grip", "40mm", "--output", "speed", "--angle", "60deg", "--snug-torque", "40N.m"],
                    "speed"),
])
def test_nonsense_is_refused_in_one_sentence(words, sentence):
    run = command(*words)
    assert run.returncode == 2 and run.stdout == "" and run.stderr.count("\n") == 1, run.stderr
    assert sentence in run.stderr


def test_the_interrupt_key_stops_a_run_of_the_command_line():
    if not PROGRAM:
        pytest.skip("the command line program is not built")
    code, out, err = interrupted(PROGRAM, "uncertainty", "clamp", "--thread", "M16", "--torque", "130N.m", "--trials",
                                 "900000000", "--output", "clamp_load")
    # The figures so far, and a code that a script can tell from a whole run.
    assert code == 1 and "The run was stopped" in out and "clamp_load:" in out, err
    assert re.fullmatch(r"tauten: stopped after \d+ trials; the figures are those found by then\n", err), err


def test_the_interrupt_key_leaves_json_that_says_so():
    if not PROGRAM:
        pytest.skip("the command line program is not built")
    code, out, err = interrupted(PROGRAM, "uncertainty", "clamp", "--thread", "M16", "--torque", "130N.m", "--trials",
                                 "900000000", "--json")
    (result,) = json.loads(out)["results"]
    run = result["monte_carlo"]
    assert code == 1 and run["stopped"] and 0 < run["trials"] < 900_000_000 and "stopped after" in err
    assert run["symmetric"]["low"] < run["mean"] < run["symmetric"]["high"]


def on_a_terminal(*command, interrupt=False):
    """What a command writes on standard error if that is a terminal, its standard output, and its exit code."""
    mine, its = pty.openpty()
    process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=its)
    os.close(its)
    seen = b""
    while True:
        try:
            piece = os.read(mine, 4096)
        except OSError:  # the terminal is closed
            piece = b""
        if not piece:
            break
        seen += piece
        if interrupt and seen.count(b"\r") > 2:
            process.send_signal(signal.SIGINT)
            interrupt = False
    os.close(mine)
    out = process.stdout.read().decode()
    process.stdout.close()
    return seen.decode(), out, process.wait(timeout=60)


RUN = ["uncertainty", "clamp", "--thread", "M16", "--torque", "130N.m", "--output", "clamp_load", "--trials", "400000"]


def test_a_bar_shows_on_a_terminal_and_nowhere_else():
    if not PROGRAM:
        pytest.skip("the command line program is not built")
    shown, out, code = on_a_terminal(PROGRAM, *RUN)
    bars = re.findall(r"\rMonte Carlo \[([#.]{30})\] (\d+) trials ", shown)
    assert code == 0 and len(bars) > 1, shown
    full = [bar.count("#") for bar, _ in bars]
    done = [int(trials) for _, trials in bars]
    assert full == sorted(full) and done == sorted(done) and done[-1] < 400_000 and full[-1] > 15
    assert all(bar == "#" * count + "." * (30 - count) for (bar, _), count in zip(bars, full))
    assert shown.endswith("\r\x1b[K")  # nothing of it is left
    assert "\r" not in out and "clamp_load:" in out
    piped = subprocess.run([PROGRAM, *RUN], capture_output=True, text=True, timeout=120)
    assert (piped.stderr, piped.stdout, piped.returncode) == ("", out, 0)
    # Who asks for JSON reads no bar.
    shown, out, code = on_a_terminal(PROGRAM, *RUN, "--json")
    assert shown == "" and json.loads(out)["results"]


def test_the_interrupt_key_on_a_terminal():
    if not PROGRAM:
        pytest.skip("the command line program is not built")
    shown, out, code = on_a_terminal(PROGRAM, *RUN[:-1], "900000000", interrupt=True)
    assert code == 1 and "The run was stopped" in out
    before, cleared, after = shown.rpartition("\r\x1b[K")
    assert "Monte Carlo [" in before and cleared and after.startswith("tauten: stopped after"), shown


def test_sobol_indices_can_be_stopped():
    seen = []

    def once(done, expected):
        seen.append((done, expected))
        return len(seen) < 8
    found = u.sobol(CHAIN, chain_inputs(), trials=1_000_000, progress=once)
    assert found.stopped and found.trials == seen[-1][0] < seen[-1][1] and len(seen) == 8
    assert 0.8 < sum(index.first for index in found.inputs) < 1.2
    assert not u.sobol(CHAIN, chain_inputs(), trials=4096, progress=lambda done, expected: None).stopped


@pytest.mark.parametrize("with_tqdm", [False, True])
def test_the_bar_of_python(with_tqdm):
    if with_tqdm:
        pytest.importorskip("tqdm")
    script = textwrap.dedent(f"""
        import sys
        {"" if with_tqdm else "sys.modules['tqdm'] = None"}
        from tauten import uncertainty as u
        question = u.clamp(thread="M16", torque=130, property_class="8.8")
        print(u.monte_carlo(question, trials=400_000, progress=True).trials)
    """)
    shown, out, code = on_a_terminal(sys.executable, "-c", script)
    assert (out, code) == ("400000\n", 0) and "trials" in shown, shown
    if not with_tqdm:
        lines = re.findall(r"\r(\d+) of about 400000 trials", shown)
        assert len(lines) > 1 and shown.endswith("\r\x1b[K"), shown
        piped = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, timeout=120)
        assert (piped.stderr, piped.stdout) == ("", "400000\n")


def test_the_interrupt_key_raises_in_python_and_clears_the_bar():
    script = textwrap.dedent("""
        import sys
        sys.modules['tqdm'] = None
        from tauten import uncertainty as u
        question = u.clamp(thread="M16", torque=130, property_class="8.8")
        try:
            u.monte_carlo(question, trials=900_000_000, progress=True)
        except KeyboardInterrupt:
            print("stopped", u.monte_carlo(question, trials=20_000).trials)
    """)
    shown, out, code = on_a_terminal(sys.executable, "-c", script, interrupt=True)
    assert (out, code) == ("stopped 20000\n", 0) and shown.endswith("\r\x1b[K"), shown
