"""Whole answers on tables, against the same questions asked one by one."""
import math
import os
import pathlib
import re
import signal
import subprocess
import sys
import textwrap
import threading
import time
import warnings

import numpy as np
import pytest

import tauten

FEET = dict(property_class="8.8", condition="oiled")
BANDS = ("clamp_load", "proof_share", "yield_utilisation", "nut_factor", "suggested_clamp_load", "worst_case")
ALL = ["thread", "head", "property_class", "class_assumed", "torque", "verdict", "meaning", "least_class",
       "suggested_torque", "suggested_limit", "target_torque", "summary", "chance_of_yield", "chance_of_yield_as_sold",
       "chance_of_breaking", "chance_of_breaking_as_sold", "chance_of_slack",
       "proof_load", *(f"{band}_{end}" for band in BANDS for end in ("low", "nominal", "high"))]


def silent(function, *args, **options):
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        return function(*args, **options)


def test_every_row_is_the_answer_to_its_question():
    torques = [20.0, "35lbf.ft", 75.0, 130.0, 900.0]
    threads = ["M8", "M10", "M12", "M16x1.5", "M16"]
    answers = silent(tauten.clamp, {"torque": np.array(torques, object), "thread": threads}, **FEET, columns=ALL)
    assert list(answers) == [*ALL, "warnings", "error"]
    for row, (torque, thread) in enumerate(zip(torques, threads)):
        one = tauten.clamp(torque=torque, thread=thread, **FEET)
        bolt = one.candidates[0]
        for name in ALL:
            member, _, end = name.rpartition("_")
            value = getattr(getattr(bolt, member), end) if member in BANDS else getattr(bolt, name)
            assert answers[name][row] == value or value != value and answers[name][row] != answers[name][row], name
        codes = answers["warnings"][row].split(";")
        assert set(codes) < {notice.code for notice in bolt.notices + one.notices}
        assert {notice.code for notice in bolt.notices} <= set(codes)
    assert answers["torque"][1] == pytest.approx(35 * 1.3558179483314004, rel=1e-12)  # NIST SP 811
    assert set(answers["error"]) == {""}


def test_a_wrong_row_spoils_no_other_and_is_counted_in_one_warning():
    table = {"thread": ["M16", "M99", None, "M16", "M16"], "torque": [130, 130, 130, -5, np.nan]}
    with pytest.warns(tauten.DomainWarning, match="4 of 5 rows have no answer.*first in row 2.*M99") as caught:
        answers = tauten.clamp(table, **FEET)
    assert len(caught) == 1 and caught[0].filename == __file__
    assert np.isnan(answers["clamp_load_low"]).tolist() == [False, True, True, True, True]
    for row, words in [(1, "M99"), (2, "give a thread"), (3, "-5 N.m, but must be above 0"), (4, "torque is missing")]:
        assert words in answers["error"][row]
        assert answers["verdict"][row] == answers["warnings"][row] == ""
    with pytest.raises(tauten.Error) as one:
        tauten.clamp(thread="M99", torque=130, **FEET)
    assert answers["error"][1] == str(one.value)


def test_data_frame_in_data_frame_out():
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame({"thread": ["M12", "M16", None], "torque": ["75N.m", "130N.m", "10N.m"],
                              "place": ["coupling", "pump foot", "valve bonnet"]}, index=["c1", "p1", "v1"])
    with pytest.warns(tauten.DomainWarning, match="1 of 3") as caught:
        answers = tauten.clamp(frame, **FEET)
    assert caught[0].filename == __file__
    assert isinstance(answers, pandas.DataFrame)
    assert list(answers.index) == ["c1", "p1", "v1"]
    assert answers.loc["p1", "clamp_load_nominal"] == tauten.clamp(
        thread="M16", torque=130, **FEET).candidates[0].clamp_load.nominal
    assert answers.loc["v1", "error"] != "" and math.isnan(answers.loc["v1", "suggested_torque"])
    assert list(frame.join(answers, rsuffix="_found").loc["c1", ["place", "verdict"]]) == ["coupling", "may yield"]
    assert list(silent(tauten.clamp, frame.iloc[:0], **FEET).columns) == list(answers.columns)


def test_the_page_does_what_it_says():
    pytest.importorskip("pandas")
    page = (pathlib.Path(__file__).resolve().parents[2] / "docs/site/guides/many-joints.md").read_text(encoding="utf-8")
    block = next(block for block in re.findall(r"```python\n(.*?)```", page, re.S) if "LocalCluster" not in block)
    scope = {}
    exec(block, scope)
    assert scope["answers"]["place"].tolist() == ["pump 1 foot", "pump 1 coupling"]
    assert "property_class" in scope["answers"] and "class" not in scope["answers"]
    assert len(scope["slack"]) == (scope["answers"]["verdict"] == "slack").sum()


@pytest.mark.parametrize("kind", ["category", "string", object])
def test_kinds_of_text_columns(kind):
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame({"thread": pandas.Series(["M12", "M16"], dtype=kind), "torque": [75, 130]})
    plain = silent(tauten.clamp, {"thread": ["M12", "M16"], "torque": [75, 130]}, **FEET)
    answers = silent(tauten.clamp, frame, **FEET)
    assert answers["clamp_load_low"].tolist() == plain["clamp_load_low"].tolist()


def test_missing_values_of_every_kind_are_not_said():
    pandas = pytest.importorskip("pandas")
    conditions = pandas.DataFrame({"condition": [None, np.nan, pandas.NA, ""], "thread": "M16", "torque": 130})
    answers = silent(tauten.clamp, conditions, property_class="8.8")
    unknown = tauten.clamp(thread="M16", torque=130, property_class="8.8").candidates[0]
    assert answers["clamp_load_low"].tolist() == [unknown.clamp_load.low] * 4
    known = tauten.clamp(thread="M16", torque=130, **FEET).candidates[0]
    assert tauten.clamp(conditions, **FEET)["clamp_load_low"].tolist() == [known.clamp_load.low] * 4
    numbers = pandas.DataFrame({"prevailing_torque": pandas.Series([4.0, None], dtype="Float64"), "thread": "M16",
                                "torque": 130})
    loads = tauten.clamp(numbers, **FEET)["clamp_load_nominal"]
    assert loads[0] == tauten.clamp(thread="M16", torque=130, prevailing_torque=4, **FEET).candidates[0].clamp_load.nominal
    assert loads[1] == known.clamp_load.nominal


def test_structured_array_in_structured_array_out():
    table = np.array([("M12", 75.0), ("M16", 130.0)], dtype=[("thread", "U8"), ("torque", float)])
    answers = silent(tauten.clamp, table, **FEET)
    assert isinstance(answers, np.ndarray) and answers.shape == (2,)
    assert answers["verdict"].tolist() == ["may yield", "may be slack"]
    assert answers["clamp_load_low"].dtype == float


def test_columns_broadcast_and_keep_their_shape():
    torque = np.linspace(90, 150, 6).reshape(2, 3)
    answers = silent(tauten.clamp, {"torque": torque, "thread": "M16"}, **FEET)
    assert answers["clamp_load_low"].shape == answers["verdict"].shape == (2, 3)
    by_formula = tauten.clamp(thread="M16", torque=float(torque[1, 2]), **FEET).candidates[0].clamp_load.low
    assert answers["clamp_load_low"][1, 2] == by_formula
    masked = silent(tauten.torque_for, {"clamp_load": np.ma.array([50e3, -1.0], mask=[False, True]), "thread": "M16"}, **FEET)
    assert masked["torque"][1] == tauten.torque_for(thread="M16", **FEET).candidates[0].torque


def test_pint_columns():
    unit = pytest.importorskip("pint").UnitRegistry()
    torque = np.array([100.0, 130.0]) * unit.newton * unit.metre
    plain = silent(tauten.clamp, {"torque": [100, 130], "thread": "M16"}, **FEET)["clamp_load_low"]
    for quantity in (torque, torque.to("lbf * ft")):
        np.testing.assert_allclose(tauten.clamp({"torque": quantity, "thread": "M16"}, **FEET)["clamp_load_low"], plain,
                                   rtol=1e-12)
    with pytest.raises(tauten.Error, match="torque"):
        tauten.clamp({"torque": torque.magnitude * unit.mm, "thread": "M16"}, **FEET)


def test_objects_that_were_looked_up():
    table = {"thread": np.array([tauten.thread("M16")], object), "torque": [130], "condition": ["oiled"]}
    answers = silent(tauten.clamp, table, property_class=tauten.property_class("8.8"))
    assert answers["clamp_load_low"][0] == tauten.clamp(thread="M16", torque=130, **FEET).candidates[0].clamp_load.low
    numbers = silent(tauten.clamp, {"thread": ["M16"], "torque": [130], "class": [8.8], "condition": "oiled"})
    assert numbers["clamp_load_low"][0] == answers["clamp_load_low"][0]


def test_the_other_questions():
    wished = silent(tauten.torque_for, {"thread": ["M12", "M16"], "clamp_load": ["30kN", 50e3]}, **FEET)
    assert wished["torque"][1] == tauten.torque_for(thread="M16", clamp_load=50e3, **FEET).candidates[0].torque
    ways = silent(tauten.reach, {"torque": [130, 130], "extensions": ["100mm@30deg;50mm", ""]}, wrench_length="400mm")
    assert ways["setting"][0] == tauten.reach(torque=130, wrench_length="400mm",
                                              extensions=[("100mm", "30deg"), ("50mm", 0)]).setting
    assert ways["setting"][1] == 130
    stuck = silent(tauten.free_joint, {"thread": ["M16", "M12"], "rust": ["rusted", "light_rust"]}, property_class="8.8",
                   limit="200N.m", columns=["stop_at", "chances_free", "breakaway_high"])
    one = tauten.free_joint(thread="M12", property_class="8.8", limit="200N.m", rust="light_rust")
    assert (stuck["stop_at"][1], stuck["chances_free"][1]) == (one.stop_at, one.chances.free)
    assert stuck["breakaway_high"][1] == one.breakaway.high
    turned = silent(tauten.turn, {"thread": ["M16", "M20"], "angle": ["60deg", "90deg"]}, **FEET, grip="55mm",
                    snug_torque="60N.m")
    bolt = tauten.turn(thread="M20", angle="90deg", grip="55mm", snug_torque="60N.m", **FEET)
    assert turned["clamp_load_nominal"][1] == bolt.clamp_load.nominal
    assert turned["verdict"][1] == bolt.verdict


def test_threads_change_nothing():
    random = np.random.default_rng(3)
    table = {"torque": random.uniform(5, 900, 20_000), "thread": random.choice(["M10", "M16", "M20"], 20_000)}
    one, many = (silent(tauten.clamp, table, **FEET, jobs=threads) for threads in (1, 5))
    for name in one:
        np.testing.assert_array_equal(one[name], many[name])
    assert len(set(one["verdict"])) > 3


def test_masks_of_dask_arrays_are_missing_values():
    array = pytest.importorskip("dask.array")
    torque = np.ma.array([[130.0, 1.0, 120.0]], mask=[[False, True, False]])
    thread = np.array([["M16"], ["M20"]])
    for table in ({"torque": array.from_array(torque, chunks=(1, 2)), "thread": "M16"},
                  {"torque": torque[0], "thread": array.from_array(thread, chunks=1)},
                  {"torque": array.from_array(torque, chunks=(1, 2)), "thread": thread}):
        there = {name: column.compute(scheduler="sync") for name, column in tauten.clamp(table, **FEET).items()}
        plain = {name: column.compute() if hasattr(column, "compute") else column for name, column in table.items()}
        with pytest.warns(tauten.DomainWarning):
            here = tauten.clamp(plain, **FEET)
        for name in here:
            np.testing.assert_array_equal(there[name], here[name])
        assert [text.startswith("torque is missing") for text in there["error"][0]] == [False, True, False]


def test_pint_columns_beside_dask_arrays_keep_their_units():
    array = pytest.importorskip("dask.array")
    unit = pytest.importorskip("pint").UnitRegistry()
    feet = unit.Quantity(np.array([60.0, 90.0]), "lbf * ft")
    here = silent(tauten.clamp, {"torque": feet, "thread": "M16"}, **FEET)["clamp_load_low"]
    for table in ({"torque": feet, "thread": array.from_array(np.array(["M16", "M16"]), chunks=1)},
                  {"torque": unit.Quantity(array.from_array(feet.magnitude, chunks=1), "lbf * ft"), "thread": "M16"}):
        lazy = silent(tauten.clamp, table, **FEET)["clamp_load_low"]
        assert isinstance(lazy, array.Array)
        np.testing.assert_allclose(lazy.compute(), here, rtol=1e-12)


def test_a_column_that_is_there_twice_is_refused():
    pandas = pytest.importorskip("pandas")
    frame = pandas.DataFrame([["M16", 130, 90, "foot", "foot"]], columns=["thread", "torque", "torque", "place", "place"])
    with pytest.raises(tauten.Error, match="column 'torque' is there twice") as caught:
        tauten.clamp(frame, **FEET)
    assert caught.value.argument == "torque"
    assert silent(tauten.clamp, frame.iloc[:, [0, 1, 3, 4]], **FEET)["verdict"][0] == "may be slack"


@pytest.mark.parametrize("value, words", [
    ([90, 95], "torque takes one text or number, like 48N.m, not list"), ({"low": 90}, "not dict"), (b"90N.m", "not bytes; decode"),
    (90 + 1j, "not complex"), (10**400, "torque is beyond 1.8e308"), ("90N.m\ud800", "torque holds half a character"),
    (object(), "not object"), (np.timedelta64(90, "s"), "not timedelta64"), (np.array([90.0]), "not ndarray"),
], ids=lambda value: type(value).__name__)
@pytest.mark.parametrize("make", [dict, "frame"])
def test_a_cell_that_cannot_be_is_the_error_of_its_row(make, value, words):
    table = {"torque": [130, value, "120N.m"], "thread": ["M16"] * 3}
    if make == "frame":
        table = pytest.importorskip("pandas").DataFrame(table, dtype=object)
    with pytest.warns(tauten.DomainWarning, match="1 of 3 rows"):
        answers = tauten.clamp(table, **FEET, columns=ALL)
    plain = silent(tauten.clamp, {"torque": [130, 120], "thread": "M16"}, **FEET, columns=ALL)
    for name in plain:
        np.testing.assert_array_equal(np.asarray(answers[name])[[0, 2]], plain[name])
    assert re.search(words, answers["error"][1]) and answers["verdict"][1] == answers["warnings"][1] == ""
    assert np.isnan(answers["clamp_load_low"][1]) and not answers["class_assumed"][1]


def test_columns_of_bytes_are_errors_of_their_rows():
    table = np.array([(b"M16", 130.0), (b"M12", 75.0)], dtype=[("thread", "S8"), ("torque", float)])
    with pytest.warns(tauten.DomainWarning, match="2 of 2 rows.*thread takes one text.*not bytes; decode it"):
        tauten.clamp(table, **FEET)


def test_pint_quantities_in_cells():
    unit = pytest.importorskip("pint").UnitRegistry()
    cells = [unit.Quantity(90, "lbf * ft"), unit.Quantity(130, "newton * metre"), unit.Quantity(3, "mm")]
    for torque in (cells, pytest.importorskip("pandas").Series(cells, dtype=object)):
        with pytest.warns(tauten.DomainWarning, match="1 of 3 rows"):
            answers = tauten.clamp({"torque": torque, "thread": "M16"}, **FEET)
        one = tauten.clamp(thread="M16", torque="90lbf.ft", **FEET).candidates[0]
        assert answers["clamp_load_low"][0] == pytest.approx(one.clamp_load.low, rel=1e-12)
        assert answers["torque"][1] == 130
        assert answers["error"][2] == "torque is given in 'millimeter', but must be in N.m, for example 48N.m"


def test_blanks_around_texts_are_nothing():
    bare = silent(tauten.clamp, {"torque": ["130N.m", "90N.m"], "thread": "M16", "condition": ["dry", None]}, **FEET)
    blank = silent(tauten.clamp, {"torque": [" 130N.m", "90N.m\t"], "thread": "M16 ", "condition": [" dry ", "  "]}, **FEET)
    for name in bare:
        np.testing.assert_array_equal(bare[name], blank[name])


@pytest.mark.parametrize("kind", ["timedelta64[ns]", "datetime64[ns]"])
def test_columns_of_times_are_no_numbers(kind):
    pandas = pytest.importorskip("pandas")
    times = np.array([130, 90]).astype(kind)
    for table in ({"thread": "M16", "torque": times}, pandas.DataFrame({"thread": "M16", "torque": times})):
        with pytest.raises(tauten.Error, match="torque: the column holds times .*numbers in N.m") as caught:
            tauten.clamp(table, **FEET)
        assert caught.value.argument == "torque"
    # A time that is not a key is nobody's matter.
    assert set(silent(tauten.clamp, {"thread": "M16", "torque": [130, 120], "done_on": times}, **FEET)["error"]) == {""}


@pytest.mark.parametrize("threads, words", [
    (0, "jobs is 0, but must be at least 1 and at most 256"), (-1, "jobs is -1, but"), (257, "jobs is 257, but"),
    (10**30, "more than 18 digits, but must be at least 1 and at most 256"),
])
@pytest.mark.parametrize("ask", [tauten.clamp, tauten.free_joint, tauten.reach])
def test_a_number_of_threads_that_cannot_be_is_refused(ask, threads, words):
    with pytest.raises(tauten.Error, match=words) as caught:
        ask({"thread": ["M16"] * 3, "torque": 5}, jobs=threads)
    assert caught.value.argument == "jobs"
    for no_number in ("2", True, 1.5):
        with pytest.raises(TypeError, match="^jobs takes a whole number, not (str|bool|float)$"):
            ask({"thread": ["M16"] * 3}, jobs=no_number)


@pytest.mark.parametrize("threads", [1, 3])
def test_the_interrupt_key_stops_a_table(threads):
    # Each row is a simulation of its own, so that the whole table takes many times as long as the test waits.
    table = {"thread": "M16", "limit": np.linspace(50, 300, 600)}
    start = time.monotonic()
    key = threading.Timer(0.3, os.kill, (os.getpid(), signal.SIGINT))
    key.start()
    with pytest.raises(KeyboardInterrupt):
        tauten.free_joint(table, property_class="8.8", trials=200_000, jobs=threads)
    key.join()
    assert 0.3 <= time.monotonic() - start < 12


@pytest.mark.parametrize("ask", [
    lambda: tauten.free_joint(thread="M16", property_class="8.8", trials=30_000_000),
    lambda: tauten.free_joint(thread="M16", property_class="8.8", trials=30_000_000, jobs=3),
    lambda: tauten.free_joint({"thread": ["M16", "M12"], "property_class": "8.8"}, trials=30_000_000, jobs=2),
    lambda: tauten.sequence("circle:8:160mm", trials=3_000_000, torque="120N.m", interaction=0.1, load="50kN", wrench_scatter=0.1),
], ids=["free", "free on threads", "a row of free", "sequence"])
def test_the_interrupt_key_is_heard_in_the_midst_of_one_answer(ask):
    """Within a fifth of a second of the processor's time, whoever else uses it. Unheard it takes ten times as long and more.
    An alarm stands for the key: another thread of Python may have no turn."""
    before = signal.signal(signal.SIGPROF, signal.default_int_handler)
    try:
        struck = time.process_time() + 0.2
        signal.setitimer(signal.ITIMER_PROF, 0.2)
        with pytest.raises(KeyboardInterrupt):
            ask()
        assert time.process_time() - struck < 0.2
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
        signal.signal(signal.SIGPROF, before)


def test_a_subinterpreter_is_refused():
    """It would wait without end for the lock of the other interpreter."""
    interpreters = pytest.importorskip("_xxsubinterpreters")
    script = textwrap.dedent("""
        import _xxsubinterpreters as interpreters, sys
        other = interpreters.create()
        try:
            interpreters.run_string(other, f"import sys; sys.path[:0] = {sys.path!r}; import tauten")
        except interpreters.RunFailedError as error:
            print(error)
    """)
    assert interpreters
    done = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, timeout=60)
    assert "ImportError" in done.stdout and "main interpreter" in done.stdout, done


def test_more_threads_than_rows_change_nothing():
    few, many = (silent(tauten.clamp, {"thread": ["M12", "M16"], "torque": 60}, **FEET, jobs=n) for n in (1, 256))
    np.testing.assert_array_equal(few["clamp_load_low"], many["clamp_load_low"])
    assert silent(tauten.clamp, {"thread": [], "torque": []}, **FEET, jobs=256)["clamp_load_low"].size == 0


@pytest.mark.parametrize("table, said, argument, words", [
    ({"thread": ["M16"]}, {}, "torque", "no column is named torque"),
    ({"thread": ["M16"], "torqe": [130]}, {}, "'torqe'", "did you mean torque"),
    ({"thread": ["M16"], "torque": [130]}, dict(condition="oild"), "condition", "oild"),
    ({"thread": ["M16"], "torque": [130]}, dict(condition=" "), "condition", "is empty; leave it out"),
    ({"thread": ["M16"]}, dict(torque=math.nan), "torque", "is empty; leave it out"),
    ({"thread": ["M16"], "torque": [130]}, dict(columns=["verdikt"]), "columns", "no column 'verdikt'; did you mean verdict"),
    ({"thread": ["M16"], "torque": [130]}, dict(columns="clamp_load"), "columns",
     "no column 'clamp_load'; did you mean clamp_load_low, clamp_load_nominal or clamp_load_high"),
    ({"thread": ["M16"], "torque": [130]}, dict(name="pump feet"), "name", "cannot be said"),
    ({"class": ["8.8"], "property_class": ["8.8"], "thread": "M16", "torque": 1}, {}, "class", "two names"),
])
def test_wrong_tables(table, said, argument, words):
    with pytest.raises(tauten.Error, match=words) as caught:
        tauten.clamp(table, **said)
    assert caught.value.argument == argument


@pytest.mark.parametrize("ask", [tauten.clamp, tauten.torque_for, tauten.turn, tauten.reach, tauten.free_joint])
def test_an_unknown_column_shows_whole_names(ask):
    with pytest.raises(tauten.Error) as caught:
        ask({"thread": ["M16"], "torque": [130]}, columns=["nothing_alike"])
    known, more = re.fullmatch(r"the answer has no column 'nothing_alike'; it has (.*?)(?: and (\d+) more)?; the guide to "
                               r"many joints lists their names", str(caught.value)).groups()
    # Each name that is shown is a whole one: it can be asked for.
    answers = ask({"thread": [], "torque": []}, columns=known.split(", "))
    shown = set(known.split(", "))
    assert len(shown) > 5 and set(answers) >= shown
    assert ask is tauten.reach or int(more) > 5


def test_a_member_of_many_columns_shows_them_whole():
    with pytest.raises(tauten.Error, match=r"no column 'joint'; it has joint_thread, .* and \d+ more; the guide to many joints"):
        tauten.turn({"thread": ["M16"]}, columns="joint")


def test_one_text_is_one_column():
    answers = silent(tauten.clamp, {"thread": ["M16"], "torque": [130]}, **FEET, columns="verdict")
    assert list(answers) == ["verdict", "warnings", "error"] and answers["verdict"][0] == "may be slack"


@pytest.mark.parametrize("ask, said, words", [
    (tauten.reach, dict(extensions=[("100mm", "30deg")]), "^extensions takes one text .*, like 100mm@30deg, not list; several "
     "stand in one text with semicolons"),
    (tauten.free_joint, dict(loosened=["freed:85N.m"]), "^loosened takes one text .*, like freed:.*, not list; several"),
    (tauten.clamp, dict(condition=["oiled"]), "^condition takes one text or number, like oiled, not list$"),
])
def test_lists_beside_a_table_are_texts_with_semicolons(ask, said, words):
    with pytest.raises(TypeError, match=words):
        ask({"thread": ["M16"], "torque": [130]}, **said)


@pytest.mark.parametrize("call", [
    lambda: tauten.clamp([1, 2]), lambda: tauten.clamp(np.ones(3)), lambda: tauten.clamp({}), lambda: tauten.clamp(),
    lambda: tauten.clamp(thread="M16", torque=1, columns=["verdict"]),
    lambda: tauten.clamp({"thread": "M16", "torque": [130]}, condition=["oiled"]),
])
def test_wrong_calls(call):
    with pytest.raises(TypeError):
        call()
    with pytest.raises(ValueError, match="broadcast|shape"):
        tauten.clamp({"thread": ["M16"] * 3, "torque": [1, 2]})


def test_dask_frame_stays_lazy_and_gives_the_same_bits():
    pandas = pytest.importorskip("pandas")
    dataframe = pytest.importorskip("dask.dataframe")
    frame = pandas.DataFrame({"thread": ["M12", "M16", "M99", "M20"] * 25, "torque": np.linspace(20, 400, 100)})
    lazy = silent(tauten.clamp, dataframe.from_pandas(frame, npartitions=4), **FEET)
    assert isinstance(lazy, dataframe.DataFrame) and lazy.npartitions == 4
    with pytest.warns(tauten.DomainWarning):
        here = tauten.clamp(frame, **FEET)
    pandas.testing.assert_frame_equal(lazy.compute(scheduler="sync"), here, check_exact=True)
    assert list(lazy.dtypes) == list(here.dtypes)
    with pytest.raises(tauten.Error, match="did you mean torque"):
        tauten.clamp(dataframe.from_pandas(frame.rename(columns={"torque": "torqe"}), npartitions=2))


def test_dask_arrays_stay_lazy_and_give_the_same_bits():
    array = pytest.importorskip("dask.array")
    torque = np.linspace(20, 400, 30).reshape(5, 6)
    lazy = silent(tauten.clamp, {"torque": array.from_array(torque, chunks=(2, 3)), "thread": "M16"}, **FEET)
    assert all(isinstance(column, array.Array) for column in lazy.values())
    here = silent(tauten.clamp, {"torque": torque, "thread": "M16"}, **FEET)
    assert list(lazy) == list(here)
    for name in here:
        np.testing.assert_array_equal(lazy[name].compute(scheduler="sync"), here[name])
