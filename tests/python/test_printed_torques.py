"""What `clamp` says of torques that others have printed: the tables of VDI 2230 and of a machine manual."""
import csv
import pathlib

import pytest

import tauten

PUBLISHED = pathlib.Path(__file__).parents[1] / "published"
GOOD = ("may be slack", "within limits")


def rows(name):
    """Torque rows: thread, class, friction, printed preload or None, printed torque, table."""
    for row in csv.DictReader((PUBLISHED / f"{name}.csv").read_text(encoding="utf-8").splitlines()):
        if row["id"].endswith("-M"):
            given = dict(part.strip().split("=") for part in row["given"].split(";"))
            source = row["source"].replace("; ", " ")
            property_class = source.split("class ")[1].split()[0]
            yield (given["thread"], property_class, float(given["thread_friction"]), given["preload"], row["published"],
                   source)


def place(text):
    """A unit of the last place of a printed figure."""
    return 10.0**-len(text.partition(".")[2])


def oiled(thread, property_class, torque):
    return tauten.clamp(thread=thread, property_class=property_class, torque=float(torque), condition="oiled").candidates[0]


def test_the_fine_thread_table_is_met_by_the_answer_itself():
    """VDI 2230 (2001) Table A3, ISO 4014 head, medium hole: preload of the printed torque, within the rounding of both."""
    met = total = 0
    for thread, property_class, friction, preload, torque, source in rows("vdi2230_assembly_tables"):
        if "Table A3" not in source:
            continue
        printed = preload.lstrip("~").removesuffix("kN")
        known = dict(thread=thread, property_class=property_class, thread_friction=friction, bearing_friction=friction,
                     wrench_accuracy=0)
        step = place(torque) / 2
        low, high = (tauten.clamp(torque=float(torque) + sign * step, **known).candidates[0].worst_case.nominal / 1e3
                     for sign in (-1, 1))
        total += 1
        met += low <= float(printed) + place(printed) / 2 and high >= float(printed) - place(printed) / 2
    # Of the 72 rows of the table 54 are in the file, with the four of M14x1.5 that lie a little off: 68 of 72.
    assert total >= 50 and total - met <= 4


def test_one_printed_row_in_full():
    """VDI 2230 (2001) Table A3: M16x1.5 10.9, friction 0.10, 278 N.m: 131.6 kN; the linear lever gives 132.0."""
    bolt = tauten.clamp(thread="M16x1.5", property_class="10.9", torque=278, thread_friction=0.10, bearing_friction=0.10,
                        wrench_accuracy=0).candidates[0]
    assert bolt.worst_case.nominal == pytest.approx(131.6e3, abs=250)


def test_torques_for_the_minimum_friction_of_the_class_are_within_limits():
    """VDI 2230: the torque goes by the minimum friction of the class, 0.08 for oil (class B)."""
    seen = 0
    for thread, property_class, friction, _, torque, source in rows("vdi2230_assembly_tables"):
        if friction == 0.08:
            seen += 1
            assert oiled(thread, property_class, torque).verdict == "within limits", (thread, property_class, torque)
    assert seen >= 8


def test_torques_for_mu_0_12_are_no_worse_with_oil_than_may_yield():
    seen = 0
    for thread, property_class, friction, _, torque, source in rows("vdi2230_assembly_tables"):
        if friction == 0.12:
            seen += 1
            bolt = oiled(thread, property_class, torque)
            coarse = tauten.thread(thread).coarse
            assert bolt.verdict in (*GOOD, "may yield") or not coarse, (thread, property_class, torque)
            # Some fine threads of the harder classes pass 1 in 20 by a hair.
            assert bolt.chance_of_breaking < 0.06 and bolt.chance_of_yield < 0.25
            assert bolt.suggested_torque < float(torque)
    assert seen >= 20


def test_torques_of_a_machine_manual():
    """They are for lightly oiled threads, mu 0.14: on well oiled ones they may yield, the harder classes may break. On dry
    ones they hold."""
    seen = 0
    for thread, property_class, friction, _, torque, _ in rows("older_edition_torques"):
        seen += 1
        bolt = oiled(thread, property_class, torque)
        assert bolt.verdict in (*GOOD, "may yield", "may break"), (thread, property_class, torque)
        assert bolt.verdict != "may break" or property_class != "8.8"
        assert bolt.chance_of_yield < 0.4 and bolt.suggested_torque < float(torque)
        dry = tauten.clamp(thread=thread, property_class=property_class, torque=float(torque), condition="dry").candidates[0]
        assert dry.verdict in GOOD, (thread, property_class, torque)
    assert seen >= 40
