"""Answers and all that they hold: they compare, hash, copy and pickle, and nothing empty can be made of their classes."""
import concurrent.futures
import copy
import pickle

import pytest

import tauten
import tauten.uncertainty as uncertainty

FOOT = {"thread": "M16", "property_class": "8.8", "condition": "oiled"}
ASKED = {
    "thread": lambda: tauten.thread("M16", property_class="8.8"),
    "property_class": lambda: tauten.property_class("8.8", "20mm"),
    "thread_condition": lambda: tauten.thread_condition("oiled"),
    "identify": lambda: tauten.identify(socket="24mm"),
    "clamp": lambda: tauten.clamp(torque="150N.m", more_faces=["26mm:dry"], **FOOT),
    "unknown friction": lambda: tauten.clamp(torque="150N.m", socket="24mm"),
    "torque_for": lambda: tauten.torque_for(share=0.6, **FOOT),
    "turn": lambda: tauten.turn(angle="60deg", snug_torque="60N.m", layers=[("20mm", "grey cast iron", "70mm")], **FOOT),
    "curve": lambda: tauten.curve(grip="55mm", snug_torque="60N.m", points=20, **FOOT),
    "reach": lambda: tauten.reach(torque="130N.m", wrench_length="400mm", extensions=[("100mm", "0deg")]),
    "free": lambda: tauten.free_joint(thread="M16", property_class="8.8", rust="rusted", trials=2000),
    "learned": lambda: tauten.free_joint(thread="M16", property_class="8.8", rust="rusted", trials=2000,
                                         loosened=["freed:190N.m", "sheared:210N.m"]),
    "pattern": lambda: tauten.pattern("circle:8:180mm"),
    "group": lambda: tauten.group("rectangle:200mm:150mm", load=(0, "12kN"), at=("300mm", 0), bolt_area="157mm2"),
    "sequence": lambda: tauten.sequence("circle:8:180mm", torque="80N.m"),
    "budget": lambda: uncertainty.budget(uncertainty.clamp(torque="150N.m", **FOOT)),
    "monte_carlo": lambda: uncertainty.monte_carlo(uncertainty.clamp(torque="150N.m", **FOOT), trials=4000, seed=1),
}


def records_in(record):
    """The record and all records below it."""
    yield record
    for name in dir(type(record)):
        if name.startswith("_") or callable(getattr(type(record), name)):
            continue
        value = getattr(record, name, ())  # of one of several fasteners there is none
        for item in value if isinstance(value, tuple) else [value]:
            if type(item).__module__.startswith("tauten"):
                yield from records_in(item)


@pytest.mark.parametrize("name", ASKED)
def test_records_travel_by_every_protocol(name):
    answer = ASKED[name]()
    classes = set()
    for record in records_in(answer):
        if type(record) in classes:
            continue
        classes.add(type(record))
        for protocol in range(pickle.HIGHEST_PROTOCOL + 1):
            again = pickle.loads(pickle.dumps(record, protocol))
            assert type(again) is type(record) and again == record and hash(again) == hash(record)
        assert again.to_json() == record.to_json() and repr(again) == repr(record)
        for method in ("page", "explain", "drawing"):
            if hasattr(record, method):
                assert str(getattr(again, method)()) == str(getattr(record, method)())
        assert copy.copy(record) == copy.deepcopy(record) == record
        assert record != "a text" and not record == None  # noqa: E711
    assert classes


def test_what_differs_is_not_equal():
    asked = {**FOOT, "torque": "150N.m"}
    one = tauten.clamp(**asked)
    assert one == tauten.clamp(**asked) and len({one, tauten.clamp(**asked)}) == 1
    for change in ({"torque": "150.001N.m"}, {"condition": "waxed"}, {"name": "foot"}, {"wrench_accuracy": 0.06}):
        assert tauten.clamp(**{**asked, **change}) != one
    assert one.candidates[0].clamp_load != one.candidates[0].worst_case
    # A band without a figure equals another one, though NaN equals nothing.
    broken = tauten.clamp(**{**asked, "torque": "900N.m"}).candidates[0].clamp_load
    assert broken.low != broken.low and broken == tauten.clamp(**{**asked, "torque": "900N.m"}).candidates[0].clamp_load


def test_a_list_that_changes_later_does_not_change_a_pickle():
    extensions = [["100mm", "0deg"]]
    answer = tauten.reach(torque="130N.m", wrench_length="400mm", extensions=extensions)
    drawing = answer.drawing()
    extensions[0][0] = "300mm"
    assert pickle.loads(pickle.dumps(answer)).drawing() == drawing


def test_nothing_empty_is_made():
    answer = ASKED["clamp"]()
    base = type(answer).__mro__[1]
    for make in (base, type(answer), lambda: type(answer).__new__(type(answer)), lambda: base.__new__(type(answer)),
                 lambda: type(answer.candidates[0].clamp_load).__new__(type(answer.candidates[0].clamp_load)),
                 lambda: type("Own", (type(answer),), {})()):
        with pytest.raises(TypeError, match="come from the functions of tauten|is not safe"):
            make()
    for damaged in (lambda text: text[:-20] + text[-12:], lambda text: text + b"x"):
        function, (name, version, text, asked) = answer.__reduce__()
        with pytest.raises(ValueError, match="not the pickle of a record"):
            function(name, version, damaged(text), asked)
        with pytest.raises(ValueError, match="pickled by tauten 0.0.0"):
            function(name, "0.0.0", text, asked)


def test_answers_come_back_from_another_process():
    with concurrent.futures.ProcessPoolExecutor(1) as pool:
        there = pool.submit(tauten.clamp, torque="150N.m", **FOOT).result()
    assert there == tauten.clamp(torque="150N.m", **FOOT)


def test_answers_in_pint_quantities_travel():
    registry = pytest.importorskip("pint").get_application_registry()
    answer = tauten.clamp(torque=registry.Quantity(150, "N.m"), **FOOT)
    for protocol in range(pickle.HIGHEST_PROTOCOL + 1):
        again = pickle.loads(pickle.dumps(answer, protocol))
        assert again == answer and again.candidates[0].torque == answer.candidates[0].torque
        assert again.candidates[0].clamp_load.high.units == registry.newton
