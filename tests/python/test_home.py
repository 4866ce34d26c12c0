"""What Python users expect of any package: version, lists, formats, conversions, tables of pandas, plain sentences."""
import copy
import csv
import inspect
import pathlib
import pickle
import re

import numpy as np
import pytest

import tauten

ROOT = pathlib.Path(__file__).resolve().parents[2]
TABLES = ROOT / "src" / "tables"
JOINT = dict(thread="M16", property_class="8.8", condition="oiled")


def column(table, name):
    return [row[name] for row in csv.DictReader((TABLES / f"{table}.csv").read_text(encoding="utf-8").splitlines())]


def load(torque=150):
    return tauten.clamp(torque=torque, **JOINT).candidates[0].clamp_load


def test_version_is_that_of_the_project():
    header = (ROOT / "include/tauten/base/version.hpp").read_text(encoding="utf-8")
    assert tauten.__version__ == ".".join(re.findall(r"#define TAUTEN_VERSION_(?:MAJOR|MINOR|PATCH) (\d+)", header))


def test_what_a_shell_offers_is_public():
    names = dir(tauten)
    assert {"clamp", "threads", "plots", "exercises", "__version__"} <= set(names) and names == sorted(names)
    assert not [name for name in names if name.startswith("_") and name not in ("__version__", "__doc__")]
    assert all(hasattr(tauten, name) for name in names)


def test_lists_are_those_of_the_tables():
    assert list(tauten.threads) == column("size", "designation")
    assert list(tauten.property_classes) == list(dict.fromkeys(column("property_class", "name")))
    assert list(tauten.heads) == list(dict.fromkeys(column("head", "standard")))
    assert set(tauten.conditions) >= {"dry", "oiled"}
    for name in tauten.threads:
        assert tauten.thread(name).designation == name
    for material in tauten.materials:  # each is one that a layer takes
        assert tauten.turn(thread="M16", property_class="8.8", layers=[("30mm", material, "60mm")]).joint.layers[0].material == material


def test_a_band_has_a_format_and_other_units():
    band = load()
    # By hand from low, nominal and high in N.
    kilo = [value / 1e3 for value in band]
    assert f"{band:.1f}" == f"{kilo[0]:.1f} to {kilo[2]:.1f} kN, typical {kilo[1]:.1f} kN"
    assert f"{band}" == str(band)
    assert list(band.to("kN")) == pytest.approx(kilo, rel=1e-15)
    pounds = band.to("lbf")
    assert pounds.nominal == pytest.approx(band.nominal / (0.45359237 * 9.80665), rel=1e-12) and pounds.unit == "lbf"
    assert str(pounds).endswith(" lbf") and f"{pounds:.0f}".startswith(f"{pounds.low:.0f} to ")
    friction = tauten.thread_condition("oiled").thread_friction
    assert f"{friction:.2f}" == "0.08 to 0.16, typical 0.12" and list(friction.to("%")) == pytest.approx([8, 12, 16])
    for unit, words in (("N.m", "force"), ("furlong", "unit")):
        with pytest.raises(tauten.Error, match=words):
            band.to(unit)
    broken = load(1000)
    assert f"{broken:.1f}" == str(broken) == "none"


def test_a_band_shows_its_unit_in_a_notebook():
    assert load()._repr_html_() == str(load()) and " kN" in load()._repr_html_()


def test_bands_and_answers_travel_and_compare():
    answer = tauten.clamp(torque=150, **JOINT)
    for one, other in ((load(), load(151)), (answer, tauten.clamp(torque=151, **JOINT)),
                       (tauten.reach(torque=130), tauten.reach(torque=131))):
        assert pickle.loads(pickle.dumps(one)) == one == copy.deepcopy(one) == copy.copy(one)
        assert one != other and len({one, other, copy.copy(one)}) == 2
    in_kilo = load().to("kN")
    assert pickle.loads(pickle.dumps(in_kilo)) == in_kilo != load(151).to("kN")


def test_quantities_of_pint_keep_format_and_units():
    pint = pytest.importorskip("pint")
    registry = pint.UnitRegistry()
    band = tauten.clamp(torque=150 * registry.newton * registry.metre, **JOINT).candidates[0].clamp_load
    assert f"{band:.1f}" == f"{load():.1f}"
    low, nominal, high = band.to("kN")
    assert nominal.units == registry.kilonewton and nominal.magnitude == pytest.approx(load().nominal / 1e3)
    frame = tauten.to_frame(tauten.clamp(torque=150 * registry.newton * registry.metre, **JOINT))
    assert frame["torque"][0] == 150


def test_answers_become_frames():
    pandas = pytest.importorskip("pandas")
    answers = [tauten.clamp(torque=torque, **JOINT) for torque in (100, 150)]
    frame = tauten.to_frame(answers)
    assert isinstance(frame, pandas.DataFrame) and frame["torque"].tolist() == [100, 150]
    # The columns are those of the answer to a table.
    table = tauten.clamp({"torque": [100, 150]}, **JOINT)
    for name in ("clamp_load_low", "clamp_load_high", "verdict", "chance_of_yield", "suggested_torque"):
        assert frame[name].tolist() == table[name].tolist(), name
    assert frame.attrs["units"]["clamp_load_low"] == "N" and "verdict" not in frame.attrs["units"]
    assert answers[0].to_frame().equals(frame.iloc[:1])
    curve = tauten.curve(**JOINT, grip="55mm")
    points = curve.to_frame()
    assert points[points.friction == "nominal"]["preload"].tolist() == curve.nominal.columns()["preload"].tolist()
    turned = tauten.turn(**JOINT, grip="55mm")
    assert turned.to_frame()["residual_clamp_load_nominal"][0] == turned.residual.clamp_load.nominal
    assert tauten.to_frame(answers[0].candidates[0].steps)["formula"].tolist() == [s.formula for s in answers[0].candidates[0].steps]
    assert tauten.to_frame([]).empty
    with pytest.raises(TypeError, match="answers and their records, not int"):
        tauten.to_frame([1])


def test_an_answer_draws_itself():
    pyplot = pytest.importorskip("matplotlib.pyplot")
    foot = dict(JOINT, grip="55mm")
    for answer in (tauten.clamp(torque=150, **JOINT), tauten.turn(**foot), tauten.curve(**foot), tauten.reach(torque="130N.m"),
                   tauten.free_joint(thread="M16", property_class="8.8", trials=5000),
                   tauten.group("rectangle:150mm:120mm", load=(0, "-16kN"), at=("425mm", 0)),
                   tauten.sequence("circle:8:180mm", interaction=0.2, load="40kN")):
        assert answer.plot() is not None
        axes = pyplot.subplots()[1] if type(answer).__name__ != "TighteningCurve" else pyplot.subplots(2)[1]
        assert answer.plot(axes=axes) is axes and "plot" in dir(answer)
        pyplot.close("all")
    assert not hasattr(tauten.thread("M16"), "plot")


def test_lists_in_the_place_of_a_number_lead_to_tables():
    for wrong in ([100, 120], (100.0, 120.0), np.array([100, 120])):
        with pytest.raises(TypeError, match=r'^torque takes one number.*give a table.*\{"torque": \[\.\.\.\]\}'):
            tauten.clamp(torque=wrong, **JOINT)
    with pytest.raises(TypeError, match=r'give a table.*\{"thread"'):
        tauten.clamp(thread=["M12", "M16"], torque=100)
    assert len(tauten.clamp({"torque": [100, 120]}, **JOINT)["verdict"]) == 2  # as the sentence says


def test_numbers_with_uncertainties_go_through_formulas():
    uncertainties = pytest.importorskip("uncertainties")
    from uncertainties import umath
    torque, friction, diameter = (uncertainties.ufloat(*pair) for pair in ((150, 5), (0.12, 0.02), (20e-3, 0.5e-3)))

    def by_package(torque, pitch, pitch_diameter, thread, face, diameter):  # the package's own rules of differentiation
        return torque / (pitch / (2 * np.pi) + thread * pitch_diameter / (2 * umath.cos(np.pi / 6)) + face * diameter / 2)
    given = (torque, 2e-3, 14.7e-3, friction, friction, diameter)
    found, expected = tauten.preload_from_torque(*given), by_package(*given)
    assert found.nominal_value == pytest.approx(expected.nominal_value, rel=1e-12)
    assert found.std_dev == pytest.approx(expected.std_dev, rel=1e-9)
    assert (found - expected).std_dev < 1e-9 * found.std_dev  # the same inputs in both: correlations are kept
    assert (tauten.tightening_torque(found, *given[1:]) - torque).std_dev < 1e-6  # and back again
    pint = pytest.importorskip("pint")
    with_unit = tauten.preload_from_torque(pint.UnitRegistry().Quantity(torque, "N*m"), *given[1:])
    assert with_unit.magnitude.std_dev == pytest.approx(expected.std_dev, rel=1e-9) and str(with_unit.units) == "newton"
    with pytest.raises(TypeError, match="not with arrays"):
        tauten.preload_from_torque(torque, 2e-3, 14.7e-3, np.array([0.1, 0.2]), 0.12, 20e-3)
    with pytest.raises(tauten.Error, match="torque"):
        tauten.preload_from_torque(-torque, *given[1:])
    with pytest.raises(TypeError, match="torque takes a number without its uncertainty: give torque.nominal_value"):
        tauten.clamp(torque=torque, **JOINT)


def test_formulas_are_found_and_grouped():
    found = tauten.formulas.search("Nut factor")
    def said(formula):
        return " ".join((formula.name, formula.summary, *(arg.name for arg in (*formula.inputs, formula.output)))).lower()
    assert found == [formula for formula in tauten.formulas.values() if "nut" in said(formula) and "factor" in said(formula)] and tauten.nut_factor in found
    assert tauten.formulas.search("wrench extension") and not tauten.formulas.search("banana")
    rooms = tauten.formulas.rooms
    assert [formula for formulas in rooms.values() for formula in formulas] == list(tauten.formulas.values())
    # The room of a formula is the folder of the header that defines it, or the topic under which the registry lists it.
    homes = {name: header.parent.name for header in (ROOT / "include/tauten").glob("*/*.hpp")
             for name in re.findall(r"inline constexpr Formula<\w+> (\w+)\{\}", header.read_text(encoding="utf-8"))}
    astray = {name for name, formula in tauten.formulas.items() if formula.room != homes[name]}
    assert {homes[name] for name in astray} <= {"base", "method"} and len(astray) < 8, astray
    assert set(rooms) == {"thread", "part", "friction", "tightening", "joint", "group", "tool", "loosening"}


def test_help_is_for_people():
    """No signature as pybind11 writes it, no word of its types, no stock phrase of named tuples."""
    records = [item for item in map(tauten.__dict__.get, tauten.__all__) if hasattr(item, "as_dict")]
    assert len(records) > 50
    for thing in (*records, tauten.Check, tauten.Style, tauten.Explanation):
        for name, member in vars(thing).items():
            text = member if name == "__doc__" else getattr(member, "__doc__", None) if callable(member) or isinstance(member, property) else ""
            if name != "__doc__" and name.startswith("__") or not isinstance(text, str):
                continue
            assert not re.search(r"self: |_core\.|-> \w|Alias for field|handle", text), (thing, name, text)
    assert str(inspect.signature(tauten.Clamp.page)) == "(self, /, format='text', units=None)"
    assert tauten.Clamp.page.__doc__.startswith("The answer laid out")
    answer = tauten.clamp(torque=150, **JOINT)
    for name, said in (("page", "(format='text', units=None)"), ("explain", "(format='text', style=None)"), ("as_dict", "()"),
                       ("to_json", "(indent=None)"), ("plot", "(axes=None, **options)")):
        assert str(inspect.signature(getattr(answer, name))) == said
