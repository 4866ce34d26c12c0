"""Formulas as Python functions: names, broadcasting, options, units, errors, texts.

Whether the formulas are right is checked elsewhere against published values; here a few closed forms written out below
(ISO 16047, linear form; ISO 724) and printed figures stand in.
"""
import copy
import decimal
import doctest
import inspect
import math
import pickle
import threading
import warnings

import numpy as np
import pytest

import tauten

CONTRACT = {
    **dict.fromkeys("pitch_diameter minor_diameter root_diameter stress_diameter stress_area".split(), "diameter pitch"),
    "lead_angle": "pitch pitch_diameter",
    **dict.fromkeys("tightening_torque tightening_torque_exact loosening_torque loosening_torque_exact".split(),
                    "preload pitch pitch_diameter thread_friction bearing_friction bearing_diameter"),
    "preload_from_torque": "torque pitch pitch_diameter thread_friction bearing_friction bearing_diameter",
    "thread_torque": "preload pitch pitch_diameter thread_friction",
    "bearing_torque": "preload bearing_friction bearing_diameter",
    "nut_factor": "diameter pitch pitch_diameter thread_friction bearing_friction bearing_diameter",
    "torque_from_nut_factor": "preload diameter nut_factor",
    "preload_from_nut_factor": "torque diameter nut_factor",
    "mean_bearing_diameter": "outer_diameter inner_diameter",
    "uniform_pressure_bearing_diameter": "outer_diameter inner_diameter",
    "total_friction": "torque preload pitch pitch_diameter bearing_diameter",
    "thread_friction_from_test": "thread_torque preload pitch pitch_diameter",
    "bearing_friction_from_test": "bearing_torque preload bearing_diameter",
    **dict.fromkeys("assembly_preload assembly_preload_elastic".split(),
                    "yield_strength utilisation pitch pitch_diameter stress_diameter thread_friction"),
    "assembly_stress": "preload thread_torque stress_diameter",
    "torsion_yield_torque": "shear_strength diameter",
    "torsion_plastic_torque": "shear_strength diameter",
    "segment_resilience": "length area elastic_modulus",
    "angle_from_preload": "preload bolt_resilience plate_resilience pitch",
    "preload_from_angle": "angle_of_turn bolt_resilience plate_resilience pitch",
    "wrench_setting": "torque wrench_length extension_length extension_angle",
    "torque_at_fastener": "setting wrench_length extension_length extension_angle",
    "universal_joint_ratio": "bend_angle rotation",
    "bar_twist": "torque length side shear_modulus",
    "bond_torque": "bond_strength flank_factor pitch_diameter engaged_length",
    "shear_before_free_index": "break_median break_variation free_median free_variation",
}

PUMP_FOOT = dict(torque=48.0, pitch=1.5e-3, pitch_diameter=9.026e-3, thread_friction=0.12, bearing_friction=0.14,
                 bearing_diameter=12.8e-3)
preload = tauten.preload_from_torque
REST = tuple(PUMP_FOOT.values())[1:]


def by_hand(torque, pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter):
    """ISO 16047, linear form: T/F = P/(2 pi) + mu d_2/(2 cos 30) + mu D/2."""
    return torque / (pitch / (2 * math.pi) + thread_friction * pitch_diameter / math.sqrt(3)
                     + bearing_friction * bearing_diameter / 2)


def pump_foot(**changed):
    return {**PUMP_FOOT, **changed}


def pump_foot_without_torque():
    return {name: value for name, value in PUMP_FOOT.items() if name != "torque"}


@pytest.mark.parametrize("name", CONTRACT)
def test_names_and_order_are_kept(name):
    formula = tauten.formulas[name]
    assert [arg.name for arg in formula.inputs] == CONTRACT[name].split()
    assert getattr(tauten, name) is formula
    assert name in tauten.__all__


def test_mapping_is_read_only_and_helps():
    assert len(tauten.formulas) == len(list(tauten.formulas)) >= len(CONTRACT)
    with pytest.raises(TypeError):
        tauten.formulas["pitch_diameter"] = None
    with pytest.raises(KeyError, match="did you mean.*preload_from_torque"):
        tauten.formulas["preload_from_torqe"]


# ---- single numbers -----------------------------------------------------------------------------------------------

def test_plain_numbers():
    value = preload(*PUMP_FOOT.values())
    assert type(value) is float
    assert value == pytest.approx(by_hand(**PUMP_FOOT), rel=1e-14)
    assert preload(**PUMP_FOOT) == value
    assert preload(48, 1.5e-3, bearing_diameter=12.8e-3, bearing_friction=0.14, thread_friction=0.12,
                   pitch_diameter=9.026e-3) == value
    # M10 in ISO 724 and in ISO 898-1, Table 4.
    assert tauten.pitch_diameter(0.010, 0.0015) == pytest.approx(9.026e-3, abs=5e-7)
    assert tauten.stress_area(0.010, 0.0015) == pytest.approx(58.0e-6, abs=5e-8)


@pytest.mark.parametrize("torque", [48, np.float64(48), np.float32(48), np.int16(48), decimal.Decimal(48), "48N.m",
                                    "4800 N\u00b7cm"])
def test_kinds_of_single_numbers(torque):
    value = preload(torque, *REST)
    assert type(value) is float
    assert value == pytest.approx(by_hand(**PUMP_FOOT), rel=1e-12)


def test_text_in_inches():
    # 1 lbf.ft = 1.3558179483314004 N.m (NIST SP 811), 1 in = 25.4 mm
    value = tauten.preload_from_nut_factor(torque="35lbf.ft", diameter="3/8in", nut_factor="0.2")
    assert value == pytest.approx(35 * 1.3558179483314004 / (0.2 * 0.375 * 0.0254), rel=1e-12)


@pytest.mark.parametrize("changed, argument, words", [
    (dict(torque=-48.0), "torque", ["-48 N.m", "at least 0 N.m"]),
    (dict(pitch=0), "pitch", ["0 mm", "above 0 mm"]),
    (dict(thread_friction=math.nan), "thread_friction", ["nan"]),
    (dict(torque=math.inf), "torque", ["inf"]),
    (dict(torque="48mm"), "torque", ["a length", "not a torque", "48N.m"]),
    (dict(torque="48"), "torque", ["no unit"]),
    (dict(torque="48 parsec"), "torque", ["parsec"]),
])
def test_error_names_argument_value_and_range(changed, argument, words):
    with pytest.raises(tauten.Error) as caught:
        preload(**pump_foot(**changed))
    assert isinstance(caught.value, ValueError)
    assert caught.value.argument == argument
    for word in [argument, *words]:
        assert word in str(caught.value)
    again = pickle.loads(pickle.dumps(caught.value))
    assert (str(again), again.argument) == (str(caught.value), argument)


def test_inputs_that_do_not_fit_together():
    # The lift of the thread alone takes 239 N.m of 48 N.m: friction would have to be negative.
    inputs = dict(torque=48, preload=1e6, pitch=1.5e-3, pitch_diameter=9e-3, bearing_diameter=13e-3)
    with pytest.raises(tauten.Error, match="together") as caught:
        tauten.total_friction(**inputs)
    assert caught.value.argument == ""
    assert tauten.total_friction.check(**inputs).status == "impossible"


@pytest.mark.parametrize("call, word", [
    (lambda: preload(48), "needs pitch"),
    (lambda: preload(*PUMP_FOOT.values(), 1), "takes 6"),
    (lambda: preload(*PUMP_FOOT.values(), torque=1), "'torque' twice"),
    (lambda: preload(48, torque=48), "'torque' twice"),
    (lambda: preload(**PUMP_FOOT, bearing_diamter=1), "bearing_diamter"),
    (lambda: preload(**pump_foot(torque=None)), "torque.*NoneType"),
])
def test_wrong_calls(call, word):
    with pytest.raises(TypeError, match=word):
        call()


def test_warning_outside_the_range_of_validity_points_at_the_caller():
    with pytest.warns(tauten.ValidityWarning, match=r"thread_friction is 1.2, outside the stated range 0.02 to 1") as caught:
        value = preload(**pump_foot(thread_friction=1.2))
    assert value == pytest.approx(by_hand(**pump_foot(thread_friction=1.2)), rel=1e-14)
    assert [warning.filename for warning in caught] == [__file__]


def test_ordinary_calls_are_silent():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        preload(**PUMP_FOOT)
        preload(np.linspace(0, 100, 5000), *REST)


# ---- arrays -------------------------------------------------------------------------------------------------------

@pytest.mark.parametrize("rows", [1, 7, 8, 255, 256, 257, 2048, 2049, 5000])
def test_every_block_length(rows):
    torque = np.linspace(10, 100, rows)
    friction = np.linspace(0.08, 0.3, rows)
    expected = by_hand(torque, *REST[:2], friction, *REST[3:])
    np.testing.assert_allclose(preload(torque, *REST[:2], friction, *REST[3:]), expected, rtol=1e-13)


def test_strides_and_broadcasting():
    torque = np.arange(1.0, 4001.0)[::-2]
    friction = np.linspace(0.08, 0.2, 3)[:, np.newaxis]
    result = preload(torque, *REST[:2], friction, *REST[3:])
    assert result.shape == (3, 2000)
    np.testing.assert_allclose(result, by_hand(torque, *REST[:2], friction, *REST[3:]), rtol=1e-13)
    grid = np.asfortranarray(result / 600)
    np.testing.assert_allclose(preload(grid, *REST), by_hand(grid, *REST), rtol=1e-13)
    assert preload([[48, 50]], *REST).shape == (1, 2)
    assert preload(np.empty((0, 3)), *REST).shape == (0, 3)
    with pytest.raises(ValueError, match="broadcast"):
        preload(np.ones(3), *REST[:2], np.ones(4), *REST[3:])


def test_every_formula_gives_the_same_for_rows_and_single_numbers():
    for formula in tauten.formulas.values():
        values = [arg.read(arg.example) for arg in formula.inputs]
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            single = formula(*values)
            rows = formula(*(np.full(300, value) for value in values))
            narrow = formula(*(np.full(5, value, np.float32) for value in values))
        np.testing.assert_allclose(rows, single, rtol=1e-13, err_msg=formula.name)
        np.testing.assert_allclose(narrow, single, rtol=2e-3, err_msg=formula.name)


def test_dtype():
    torque = np.linspace(10, 100, 1000)
    for result in (preload(torque.astype(np.float32), *REST), preload(torque, *REST, dtype=np.float32)):
        assert result.dtype == np.float32
        np.testing.assert_allclose(result, by_hand(torque, *REST), rtol=1e-6)
    assert preload(np.array([48, 50]), *REST).dtype == np.float64
    with pytest.raises(TypeError):
        preload(torque * 1j, *REST)


def test_out_and_where():
    torque = np.array([48.0, -1.0, 50.0])
    out = np.full(3, 7.0)
    with warnings.catch_warnings():
        warnings.simplefilter("error")  # the row left out is not looked at
        assert preload(torque, *REST, out=out, where=[True, False, True]) is out
    np.testing.assert_allclose(out, [by_hand(48, *REST), 7, by_hand(50, *REST)])


def test_result_in_place_of_an_input_is_counted_right():
    friction = np.full(3000, 0.1)
    friction[[5, 2500]] = 1.5, -1
    expected = by_hand(48, *REST[:2], friction, *REST[3:])
    expected[2500] = np.nan
    with pytest.warns() as caught:
        preload(48, *REST[:2], friction, *REST[3:], out=friction)
    np.testing.assert_allclose(friction, expected, rtol=1e-13)
    assert sorted(warning.category.__name__ for warning in caught) == ["DomainWarning", "ValidityWarning"]


@pytest.mark.parametrize("dtype", [np.float64, np.float32])
def test_one_warning_counts_the_rows(dtype):
    torque = np.full(5000, 48, dtype)
    torque[[3, 2100, 4999]] = -1
    torque[[7, 8]] = np.nan
    with pytest.warns(tauten.DomainWarning) as caught:
        result = preload(torque, *REST)
    assert len(caught) == 1 and issubclass(tauten.DomainWarning, RuntimeWarning)
    assert caught[0].filename == __file__
    assert "3 of 5000 rows" in str(caught[0].message) and "torque" in str(caught[0].message)
    assert "at least 0 N.m" in str(caught[0].message) and "-1 N.m" in str(caught[0].message)
    assert np.flatnonzero(np.isnan(result)).tolist() == [3, 7, 8, 2100, 4999]


def test_unusual_rows_are_counted_per_argument():
    friction = np.full(3000, 0.1)
    friction[[1, 2999]] = 1.5, 0.01
    with pytest.warns(tauten.ValidityWarning) as caught:
        preload(48, 10e-3, 9e-3, friction, *REST[3:])
    assert len(caught) == 1
    message = str(caught[0].message)
    assert "pitch outside its range (0.2 mm to 8 mm) in 3000, first 10 mm" in message
    assert "thread_friction outside its range (0.02 to 1) in 2, first 1.5" in message


def test_warnings_point_at_the_caller_however_arrays_are_given():
    torque = np.array([48.0, -1.0])
    for call in (lambda: preload(torque, *REST), lambda: preload(**pump_foot(torque=torque)), lambda: preload(torque.tolist(), *REST),
                 lambda: preload(torque, *REST, out=np.empty(2)), lambda: preload(torque, *REST, dtype=np.float64),
                 lambda: preload(np.ma.array(torque), *REST)):
        with pytest.warns(tauten.DomainWarning, match="1 of 2 rows") as caught:
            assert np.isnan(call()[1])
        assert [warning.filename for warning in caught] == [__file__]


def test_plain_arrays_may_come_by_name_and_wrong_calls_are_told():
    torque = np.linspace(10, 100, 300)
    out = np.empty(300)
    assert preload(torque, **pump_foot_without_torque(), out=out) is out
    np.testing.assert_array_equal(out, preload(torque, *REST))
    for call, word in ((lambda: preload(torque, *REST, torque=torque), "twice"), (lambda: preload(torque), "also needs"),
                       (lambda: preload(torque, *REST, outt=out), "no argument 'outt'"), (lambda: preload(torque, *REST, out), "6 argum"),
                       (lambda: preload(torque.astype(complex), *REST), "not of complex numbers")):
        with pytest.raises(TypeError, match=word):
            call()


def test_minus_zero_is_zero():
    torque = np.array([48.0, -0.0, 50.0])
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        assert preload(torque, *REST)[1] == 0


def test_missing_values_stay_missing_without_a_warning():
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        result = preload(np.array([48, np.nan]), *REST)
    assert np.isnan(result).tolist() == [False, True]


def test_counts_of_threads_stay_apart():
    torque = np.full(200_000, 48.0)
    found = []

    def run(bad):
        rows = torque.copy()
        rows[:bad] = -1
        preload.ufunc(rows, *REST)
        tauten._core.start_count()
        preload.ufunc(rows, *REST)
        count = tauten._core.take_count()
        found.append((bad, count and count[1][0][1]))

    threads = [threading.Thread(target=run, args=(bad,)) for bad in (0, 10, 2000, 0, 77)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(found) == sorted([(0, None), (10, 10), (2000, 2000), (0, None), (77, 77)], key=lambda pair: pair[0])


def test_masked_arrays():
    torque = np.ma.array([48.0, -5.0, 50.0], mask=[False, True, False])
    with warnings.catch_warnings():
        warnings.simplefilter("error")  # nothing is said about what lies under the mask
        result = preload(torque, *REST)
    assert result.mask.tolist() == [False, True, False]
    np.testing.assert_allclose(result.compressed(), [by_hand(48, *REST), by_hand(50, *REST)])
    torque.mask[1] = False
    with pytest.warns(tauten.DomainWarning, match="1 of 3 rows"):
        preload(torque, *REST)


def test_pandas():
    pandas = pytest.importorskip("pandas")
    torque = pandas.Series([48.0, 50.0], index=["pump foot", "coupling"])
    result = preload(torque, *REST)
    assert list(result.index) == ["pump foot", "coupling"]
    assert result["coupling"] == pytest.approx(by_hand(50, *REST))
    friction = pandas.Series([0.2, 0.1], index=["coupling", "pump foot"])
    result = preload(torque, *REST[:2], friction, *REST[3:])
    assert result["coupling"] == pytest.approx(by_hand(50, *REST[:2], 0.2, *REST[3:]))
    frame = pandas.DataFrame({"first": torque, "second": 2 * torque})
    assert preload(frame, *REST).loc["pump foot", "second"] == pytest.approx(by_hand(96, *REST))


def test_strict_floating_point_flags_see_nothing_of_ours():
    torque = np.array([48.0, -1.0, np.nan, 1e300])
    with np.errstate(all="raise"), pytest.warns(tauten.DomainWarning) as caught:
        result = preload(torque, *REST)
    assert len(caught) == 1
    assert np.isnan(result).tolist() == [False, True, True, True]  # 1e300 N.m lies outside the domain


def test_dask_asks_for_nothing_before_it_must():
    array = pytest.importorskip("dask.array")
    made = []

    def block(block_info=None):
        made.append(block_info)
        return np.full(5, 48.0)

    source = array.map_blocks(block, chunks=((5, 5),), dtype=float, meta=np.empty(0))
    lazy = preload(source, *REST)
    assert not made
    np.testing.assert_allclose(lazy.compute(scheduler="sync"), np.full(10, by_hand(48, *REST)))
    assert len(made) == 2


def test_xarray_over_dask_stays_lazy():
    xarray = pytest.importorskip("xarray")
    array = pytest.importorskip("dask.array")
    torque = xarray.DataArray(array.from_array(np.array([48.0, 50.0]), chunks=1), dims="bolt")
    result = preload(torque, *REST)
    assert isinstance(result.data, array.Array)
    np.testing.assert_allclose(result.compute(), [by_hand(48, *REST), by_hand(50, *REST)])


def test_dask_stays_lazy():
    array = pytest.importorskip("dask.array")
    lazy = preload(array.from_array(np.array([48.0, -1.0, 50.0]), chunks=2), *REST)
    assert isinstance(lazy, array.Array)
    np.testing.assert_allclose(lazy.compute(scheduler="threads"), [by_hand(48, *REST), np.nan, by_hand(50, *REST)])


def test_xarray():
    xarray = pytest.importorskip("xarray")
    torque = xarray.DataArray([48.0, 50.0], dims="bolt", coords={"bolt": ["first", "second"]})
    friction = xarray.DataArray([0.1, 0.2, 0.3], dims="state")
    result = preload(torque, *REST[:2], friction, *REST[3:])
    assert result.dims == ("bolt", "state")
    assert float(result.sel(bolt="second")[2]) == pytest.approx(by_hand(50, *REST[:2], 0.3, *REST[3:]))


# ---- Pint ---------------------------------------------------------------------------------------------------------

@pytest.fixture(scope="module")
def units():
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # some versions of Pint use what their Python deprecates
        return pytest.importorskip("pint").UnitRegistry()


def with_units(u, **changed):
    return {"torque": 48 * u.N * u.m, "pitch": 1.5 * u.mm, "pitch_diameter": 9.026 * u.mm, "thread_friction": 0.12,
            "bearing_friction": 14 * u.dimensionless / 100, "bearing_diameter": 1.28 * u.cm, **changed}


def test_pint_in_pint_out(units):
    result = preload(**with_units(units))
    assert result._REGISTRY is units
    assert str(result.units) == "newton"
    assert result.magnitude == pytest.approx(by_hand(**PUMP_FOOT))
    rows = preload(**with_units(units, torque=np.array([48.0, 50.0]) * units.N * units.m))
    np.testing.assert_allclose(rows.m_as("kN"), np.array([by_hand(48, *REST), by_hand(50, *REST)]) / 1e3)
    assert tauten.lead_angle(1.5 * units.mm, 9.026 * units.mm).m_as("degree") == pytest.approx(3.03, abs=0.005)
    factor = tauten.nut_factor(10 * units.mm, **{name: value for name, value in with_units(units).items()
                                                 if name != "torque"})
    assert factor.dimensionless


@pytest.mark.parametrize("unit", ["newton", "second"])
def test_pint_dimension_is_checked(units, unit):
    with pytest.raises(tauten.Error, match=f"torque is given in '{unit}'.*must be a torque") as caught:
        preload(**with_units(units, torque=units.Quantity(48, unit)))
    assert caught.value.argument == "torque"


def test_joules_are_no_torque(units):
    # The same dimension, but the unit of a torque has a lever in it.
    for energy in (130 * units.joule, 0.13 * units.kJ, 1 * units.kilowatt_hour, 1 * units.calorie):
        for ask in (lambda: tauten.preload_from_torque(energy, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3),
                    lambda: tauten.clamp(thread="M16", torque=energy)):
            with pytest.raises(tauten.Error, match="unit of energy, but must be a torque"):
                ask()
    for torque in (130 * units.newton * units.meter, 96 * units.foot * units.pound_force, 96 * units.foot_pound,
                   13 * units.kilogram_force * units.meter, 130 * units.kilogram * units.meter**2 / units.second**2):
        assert tauten.preload_from_torque(torque, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3).m_as("kN") == pytest.approx(51, rel=0.02)


def test_the_truth_is_no_number():
    for truth in (True, np.True_):
        with pytest.raises(TypeError, match="'torque', not bool"):
            tauten.preload_from_torque(truth, 2e-3, 14.7e-3, 0.12, 0.12, 20e-3)
        with pytest.raises(TypeError, match="torque takes one number"):
            tauten.clamp(thread="M16", torque=truth)


def test_pint_errors_and_gradient(units):
    with pytest.raises(tauten.Error, match="pitch is -1.5 mm"):
        preload(**with_units(units, pitch=-1.5 * units.mm))
    slopes = preload.gradient(**with_units(units))
    assert slopes["pitch"].check("[force]/[length]")
    assert slopes["thread_friction"].check("[force]")


def test_every_unit_is_known_to_pint(units):
    for formula in tauten.formulas.values():
        for arg in (*formula.inputs, formula.output):
            one = tauten._pint.attach(units, 1.0, arg.unit)
            assert tauten._pint.magnitude(formula.name, arg, one) == 1
            assert tauten._pint.magnitude(formula.name, arg, one.to_base_units()) == pytest.approx(1)


def test_pint_is_not_imported_for_plain_numbers():
    import subprocess
    import sys
    code = "import sys, tauten; tauten.stress_area(.01, .0015); print([m for m in ('pint', 'pandas') if m in sys.modules])"
    assert subprocess.run([sys.executable, "-c", code], capture_output=True, text=True).stdout == "[]\n"


# ---- what is known of a formula -----------------------------------------------------------------------------------

def test_metadata():
    assert preload.name == preload.__name__ == "preload_from_torque"
    torque, pitch = preload.inputs[:2]
    assert (torque.name, torque.symbol, torque.dimension, torque.unit) == ("torque", "M_A", "torque", "N.m")
    assert (pitch.domain.low, pitch.domain.high, pitch.domain.excludes_low) == (0, math.inf, True)
    assert 0 not in pitch.domain and 1e-3 in pitch.domain and 9e-3 not in pitch.validity
    assert torque.validity is None
    assert preload.output.name == "preload" and preload.output.unit == "N"
    assert "VDI 2230" in preload.sources[0].document
    assert "pitch" in repr(pitch) and "mm" in repr(pitch)
    assert pitch.as_dict()["validity"] == {"low": 0.2e-3, "high": 8e-3, "excludes_low": False}
    with pytest.raises(AttributeError):
        pitch.name = "other"


@pytest.mark.parametrize("formula", tauten.formulas.values(), ids=lambda formula: formula.name)
def test_docstring(formula):
    text = formula.__doc__
    for arg in formula.inputs:
        line = f"{arg.name} : {arg.dimension}" + (f" in {arg.unit}" if arg.unit else "")
        assert line in text and f"Symbol {arg.symbol}. " in text
    for source in formula.sources:
        assert source.document in text and source.place in text
    examples = doctest.DocTestParser().get_examples(text)
    assert len(examples) == 1, "the values in src/shared/examples.hpp do not fit this formula"
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        assert repr(eval(examples[0].source, {"tauten": tauten})) == examples[0].want.strip()
    assert list(inspect.signature(formula).parameters) == [arg.name for arg in formula.inputs] + ["out", "where", "dtype"]


def test_docstring_of_the_package():
    result = doctest.testmod(tauten)
    assert result.attempted >= 4 and result.failed == 0
    assert "Plain numbers are SI" in tauten.Formula.__doc__


def test_expression_is_what_is_computed():
    assert tauten.stress_area.expression().startswith("pi*")
    assert preload.expression("latex").startswith(r"\frac{M_{A}}{")
    names = {"pi": math.pi, **{name: getattr(math, name) for name in ("sqrt", "sin", "cos", "tan", "atan", "exp", "log")}}
    assert eval(preload.expression("algebra"), names, PUMP_FOOT) == pytest.approx(by_hand(**PUMP_FOOT), rel=1e-14)
    assert "48 N.m" in preload.expression(**PUMP_FOOT)
    with pytest.raises(tauten.Error, match="notation"):
        preload.expression("prose")


def test_gradient():
    slopes = preload.gradient(**PUMP_FOOT)
    assert list(slopes) == list(PUMP_FOOT)
    for name, x in PUMP_FOOT.items():
        step = 1e-5 * x
        slope = (by_hand(**pump_foot(**{name: x + step})) - by_hand(**pump_foot(**{name: x - step}))) / (2 * step)
        assert slopes[name] == pytest.approx(slope, rel=1e-7)
    with pytest.raises(tauten.Error):
        preload.gradient(**pump_foot(pitch=-1))
    with pytest.raises(TypeError, match="one number"):
        preload.gradient(**pump_foot(pitch=np.ones(2)))


def test_check_does_not_raise():
    assert preload.check(**PUMP_FOOT) == ("ok", "", "")
    unusual = preload.check(**pump_foot(pitch="12mm"))
    assert unusual[:2] == ("unusual", "pitch") and "12 mm" in unusual.message
    outside = preload.check(**pump_foot(torque=-1))
    assert outside[:2] == ("outside_domain", "torque") and "-1 N.m" in outside.message


def test_explain():
    text = preload.explain(**pump_foot(torque="48N.m", thread_friction=1.2))
    for part in ("F_M = M_A/", "48 N.m", "1.5 mm", "VDI 2230", "Take care", "thread_friction is 1.2",
                 f"{by_hand(**pump_foot(thread_friction=1.2)) / 1e3:.4g} kN"):
        assert part in text


def test_explain_in_other_layouts_units_and_digits():
    inputs = pump_foot(torque="48N.m")
    style = tauten.Style(digits=6, units={"preload": "lbf", "length": "in"})
    text = preload.explain(**inputs, style=style)
    assert f"{by_hand(**pump_foot()) / 4.4482216152605:.6g} lbf" in text and "0.0590551 in" in text
    assert "<math" in preload.explain(**inputs, format="html") and "align*" in preload.explain(**inputs, format="latex")
    assert preload.explain(**inputs)._repr_html_() == preload.explain(**inputs, format="html")
    with pytest.raises(tauten.Error, match="torque"):
        preload.explain(**pump_foot(torque=-1))


def test_notebook_forms():
    assert preload._repr_latex_().startswith("$F_{M} = ")
    assert "| `torque` | $M_{A}$ | torque in N.m |" in preload._repr_markdown_()


def test_copies_are_the_same_formula():
    assert pickle.loads(pickle.dumps(preload)) is preload
    assert copy.deepcopy(preload) is preload
    assert pickle.loads(pickle.dumps(preload.ufunc)) is preload.ufunc
    assert isinstance(preload.ufunc, np.ufunc)


@pytest.mark.parametrize("text, si", [("48N.m", 48), ("12 mm", 0.012), ("90deg", math.pi / 2), ("0.14", 0.14),
                                      ("1-1/8in", 0.028575), ("640MPa", 640e6)])
def test_quantity(text, si):
    assert tauten.quantity(text) == pytest.approx(si, rel=1e-15)


@pytest.mark.parametrize("text", ["", "N.m", "48 N.m.s", "48 foo", "nan mm"])
def test_quantity_refuses(text):
    with pytest.raises(tauten.Error, match="48N.m"):
        tauten.quantity(text)


@pytest.mark.parametrize("place, value, words", [
    (0, np.array(["130N.m", "90N.m"]), "arrays of numbers in N.m for 'torque', not of texts"),
    (0, [130, None], "arrays of numbers in N.m for 'torque', not of objects"),
    (1, np.array([2, 2], "m8[s]"), "arrays of numbers in m for 'pitch', not of times"),
    (3, np.array([0.12 + 0j]), "arrays of numbers for 'thread_friction', not of complex numbers"),
])
def test_arrays_of_other_things_are_named(place, value, words):
    arguments = [np.array([130.0, 90.0]), 2e-3, 14.701e-3, 0.12, 0.12, 20e-3]
    arguments[place] = value
    with pytest.raises(TypeError, match=rf"^preload_from_torque\(\) takes {words}$"):
        tauten.preload_from_torque(*arguments)


def test_series_of_dask_stay_lazy_and_give_the_same_bits():
    pandas = pytest.importorskip("pandas")
    dataframe = pytest.importorskip("dask.dataframe")
    frame = pandas.DataFrame({"torque": [130.0, 90.0, -20.0, 60.0], "pitch": [2e-3, 2e-3, 1.5e-3, 1.75e-3],
                              "friction": [0.12, 0.1, 0.14, 0.12]}, index=[3, 5, 7, 9])
    lazy = dataframe.from_pandas(frame, npartitions=2)
    for names in (["torque"], ["pitch"], ["torque", "pitch"], ["torque", "pitch", "friction"]):
        def call(table, names=names):
            torque, pitch, friction = (table[name] if name in names else 0.1 for name in frame)
            return tauten.preload_from_torque(torque, pitch, 14.7e-3, friction, 0.12, 20e-3)
        with warnings.catch_warnings():
            warnings.simplefilter("error")  # nobody has looked at a value yet
            there = call(lazy)
        assert isinstance(there, dataframe.Series) and there.npartitions == 2 and there.dtype == float
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            pandas.testing.assert_series_equal(there.compute(scheduler="sync"), call(frame), check_exact=True)
