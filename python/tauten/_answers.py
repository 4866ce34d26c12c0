"""Questions with an answer: which fastener is it, what does the torque leave, what to set, does it come free.

Every quantity may be a plain number in SI, text with its unit ("48N.m", "5/8in") or a Pint quantity. What is not known is
left out. Answers hold plain numbers in SI or, if a Pint quantity is among what is given, Pint quantities in SI units; `as_dict`
and tables always hold plain numbers.
"""
import difflib
import functools
import inspect
import textwrap

from tauten import _core, _pint, _rows, _text
from tauten._errors import Error

QUESTIONS = {question["function"]: question for question in _core.questions}


def _given(arguments):
    return {name: _pint.plain(value) for name, value in arguments.items() if value is not None}


def _is_table(value):
    """Whether it has columns: a dict of single values has none."""
    if isinstance(value, dict):
        return any(hasattr(column, "__len__") for column in value.values())
    return hasattr(value, "items") or bool(getattr(getattr(value, "dtype", None), "names", None))


def _pattern_argument(what):
    """The argument of `pattern` that stands in the place of the table: pairs are positions, plain lengths are chords."""
    if isinstance(what, str) or hasattr(what, "positions"):
        return "positions"
    if not hasattr(what, "__len__") or isinstance(what, (dict, set)):
        raise TypeError("give positions, chords or a name, like \"circle:8:160mm\"")
    return "chords" if len(what) and (isinstance(what[0], str) or not hasattr(what[0], "__len__")) else "positions"


# What is no table in the place of the table, and the argument that it is then.
_FIRST = {"pattern": _pattern_argument, "group": lambda _: "positions", "sequence": lambda _: "pattern"}


def _ask(question, answer, arguments):
    """One answer, or one for every row of a table."""
    said = _given(arguments)
    table = said.pop("table", None)
    if question == "thread" and (isinstance(table, str) or hasattr(table, "designation")):
        said["thread"], table = table, None
    if question in _FIRST and table is not None and not _is_table(table):
        name = _FIRST[question](table)
        if {name, "positions", "chords", "name", "pattern"} & set(said):
            raise TypeError(f"give the pattern once: as first argument or as {name}")
        said[name], table = table, None
    if table is not None:
        return _rows.answer(question, table, said, said.pop("columns", ()), said.pop("jobs", 1))
    if "columns" in said:
        raise TypeError("columns are those of a table; give one, or leave columns out")
    if question == "clamp" and "torque" not in said:
        raise TypeError("clamp() needs a torque")
    if question != "free":
        said.pop("jobs", None)  # one answer takes no time to share
    return _one(answer, said)


def restored(*state):
    """The record that a pickle holds: pickles name functions of Python only."""
    return _core.restored(*state)


def _with_remedy(error, said):
    """What a value of a kind that one answer does not take is good for."""
    for name, value in said.items():
        if hasattr(value, "nominal_value"):
            return TypeError(f"{name} takes a number without its uncertainty: give {name}.nominal_value, as answers have bands "
                             "of their own; tauten.uncertainty takes distributions of the inputs")
    name = str(error).partition(" ")[0]
    value = said.get(name)
    if hasattr(value, "__len__") and not isinstance(value, (str, dict)):
        return TypeError(f"{error}; for one answer each give a table in front of the other arguments: "
                         f"{{\"{name}\": [...]}}")
    return error


def _one(answer, said):
    try:
        found = answer(said)
    except Error as error:
        raise _text.with_si(error, said) from None
    except TypeError as error:
        raise _with_remedy(error, said) from None
    registry = _pint.met_in(said)
    return found if registry is None else _pint.of_answer(found, registry)


def property_class(name, diameter=None):
    """Look up a property class of bolts: minimum strengths, and what to read on the head.

    Parameters
    ----------
    name : text
        "8.8", "10.9", "A4-70"; "8.8 structural" for structural bolts.
    diameter : length in m, optional
        Nominal diameter of the thread. Figures of class 8.8 depend on it; without it those of the smallest sizes come,
        which are the lower ones.

    Returns
    -------
    PropertyClass
        tensile_strength, yield_strength and proof_stress in Pa, torsion_ratio (breaking shear stress over tensile
        strength), marks, source and more. A number that no standard gives is NaN.

    Raises
    ------
    Error
        For an unknown class, or a diameter for which the class is not given.

    Sources
    -------
    - ISO 898-1:2009/2013, Table 3; ISO 3506-1:2020 (stainless)

    Examples
    --------
    >>> import tauten
    >>> tauten.property_class("8.8", diameter="20mm")
    PropertyClass(8.8: tensile strength 830 MPa, yield strength 660 MPa)
    """
    return _one(lambda said: _core.property_class(*said.values()), {"name": _pint.plain(name), "diameter": diameter})


def thread_condition(key):
    """Look up what may be on the threads, with its friction bands.

    Parameters
    ----------
    key : text
        A name of ``tauten.conditions``, such as "oiled".

    Returns
    -------
    ThreadCondition
        thread_friction and bearing_friction as `Band`, title, group, lubricated, note and source.

    Raises
    ------
    Error
        For an unknown name; the message lists them all.

    Sources
    -------
    - Each condition names its own; most bands are friction classes of VDI 2230 Part 1:2003, Table A5

    Examples
    --------
    >>> import tauten
    >>> low, nominal, high = tauten.thread_condition("oiled").thread_friction
    >>> low, nominal, high
    (0.08, 0.12, 0.16)
    """
    return _core.thread_condition(key)


_TABLE = """    table : DataFrame, structured array or dict of columns, optional
        One joint in each row, in columns that are called like the arguments; then the answer is a table too. Columns
        hold numbers in SI, texts with units or quantities of Pint; lists are texts with semicolons between the items,
        "26mm:oiled;30mm:dry". Other columns are ignored and do not come back. What a row leaves empty is taken from
        the arguments. A table of dask stays lazy.
"""
_TABLE_OPTIONS = """    columns : text or list of texts
        Columns of the answer to a table, if not the standard ones.
    jobs : whole number
        How many threads work; default: 1. Results do not depend on the number.
"""


def kind_of(entry):
    """What an input takes, in words."""
    if entry["kind"] == "quantity":
        return f"{entry['dimension'].partition(' ')[2]} in {entry['unit']}" if entry["unit"] else "number"
    if entry["members"] and not entry["repeats"] and entry["dimension"] != "number":
        return f"({', '.join(entry['members'])}) in {entry['unit']}"
    if entry["members"]:
        return f"list of ({', '.join(entry['members'])})"
    return {"band": "number, numbers or text", "truth": "bool", "whole": "whole number",
            "list": "text or list of texts" if entry["words"] else "list of numbers"}.get(entry["kind"], "text")


def _parameter(entry):
    """The lines of a docstring on one input."""
    help = entry["help"] + "."
    if entry["kind"] == "list" and not entry["repeats"]:
        help += f' Or as text like "{entry["example"]}".'
    elif entry["members"]:
        help += f' Each as far as it is known, or as text like "{entry["example"]}".'
    elif entry["name"].endswith("condition"):
        help += " A name of ``tauten.conditions``."
    elif entry["kind"] in ("word", "list"):
        help += " One of " + ", ".join(f'"{word}"' for word in entry["words"]) + "."
    lines = textwrap.fill(help, 112, initial_indent=" " * 8, subsequent_indent=" " * 8, break_on_hyphens=False)
    return f"    {entry['name']} : {kind_of(entry)}\n{lines}\n"


def _refuse(names, name, others):
    wrong = next(iter(others))
    near = difflib.get_close_matches(wrong, names, 1)
    raise TypeError(f"{name}() got an unexpected keyword argument '{wrong}'" + (f"; did you mean {near[0]}?" if near else ""))


def _function(name, answer, about):
    """The function that asks a question: its signature and its arguments are those that the question declares.

    about: what the docstring has beside the summary and the arguments, with a line ``@inputs`` where they stand.
    """
    question = QUESTIONS[name]
    names = [entry["name"] for entry in question["inputs"]] + ["columns", "jobs"]
    space = {"_ask": _ask, "_answer": answer, "_refuse": functools.partial(_refuse, names)}
    exec(f"def {name}(table=None, /, *, {', '.join(f'{each}=None' for each in names)}, **others):\n"  # as a dataclass does
         f"    if others: _refuse('{name}', others)\n"
         f"    del others\n"
         f"    return _ask('{question['name']}', _answer, locals())\n", space)
    function = space[name]
    signature = inspect.signature(function)
    function.__signature__ = signature.replace(parameters=[p for p in signature.parameters.values() if p.name != "others"])
    parameters = "".join(map(_parameter, question["inputs"]))
    function.__doc__ = question["summary"] + ".\n" + about.replace(
        "    @inputs\n", "    Parameters\n    ----------\n" + _TABLE + parameters + _TABLE_OPTIONS)
    return function


thread = _function("thread", _core.thread, """
    A text in the place of the table is the thread: ``thread("M16")``.

    @inputs

    Returns
    -------
    Thread
        diameter, pitch, pitch_diameter, minor_diameter, root_diameter and stress_diameter in m, stress_area in m2,
        lead_angle in rad, coarse, selected (ISO 262) and tolerance_class; socket, key and holes in m; bolt and nut with their
        limits of size; classes, each with proof_load and tensile_load in N, breaking_torque in N.m and its nut; notices.
        What no standard gives is None.

    Raises
    ------
    Error
        If ISO 261 has no such size, or the class is not made in it; the message names the nearest ones.

    Sources
    -------
    - ISO 261 (sizes), ISO 68-1 and ISO 724 (profile and basic dimensions), ISO 965-1 (limits), ISO 898-1, ISO 898-2,
      ISO 3506-1 and ISO 3506-2 (stress area, loads), ISO 898-7 (breaking torque), ISO 273 (holes)

    Examples
    --------
    >>> import tauten
    >>> bolt = tauten.thread("M16", property_class="8.8")
    >>> bolt
    Thread(M16)
    >>> round(bolt.stress_area * 1e6)  # mm2
    157
    >>> round(bolt.classes[0].proof_load)  # N, as ISO 898-1 prints it
    91000
    """)


identify = _function("identify", _core.identify, """
    @inputs

    Returns
    -------
    Identification
        candidates, each with thread, head (standards), kind, how_common, fit, region and look (how to distinguish it from the
        others); unmarked_class, the class to assume for an unmarked steel head.

    Raises
    ------
    Error
        If no head in the tables takes the tool; the message names the nearest widths.

    Sources
    -------
    - Widths across flats: the standard that each candidate names. How common it is: common practice, no source

    Examples
    --------
    >>> import tauten
    >>> found = tauten.identify(socket="24mm")
    >>> first = found.candidates[0]
    >>> first.thread, first.head
    ('M16', 'ISO 4014, ISO 4017, ISO 4032')
    """)


_JOINT = """
    @inputs

    Returns
    -------
    Clamp
        candidates, the most common first, each with summary, verdict, suggested_torque in N.m, chance_of_yield and
        chance_of_breaking of a bolt that just meets its class (and as sold), nut_factor, proof_share, yield_utilisation,
        clamp_load and worst_case in N as `Band`, and notices; ``explain()`` shows how the nominal figures come about.
        clamp_load is that of 19 in 20 cases among bolts that hold, worst_case that at the ends of friction and wrench,
        both right after tightening, before surfaces settle. Where half of the bolts break both are NaN, as
        suggested_torque is where there is none. Read a chance below 0.01 as "below 1 in 100". Where friction is unknown,
        by_condition has the answer for dry, oiled and pasted threads.
        Of a table: a table with the members of the most common fastener as columns, bands as three of them, then
        ``warnings`` with the codes of its notices, and ``error``. A wrong row spoils no other one; a `DomainWarning`
        counts them.

    Raises
    ------
    Error
        For input without a meaning; ``argument`` names the one at fault.

    Sources
    -------
    - Exact torque formula: VDI 2230. Friction bands: see `thread_condition`. Strengths: ISO 898-1, ISO 3506-1
"""


clamp = _function("clamp", _core.clamp, _JOINT + """
    Examples
    --------
    >>> import tauten
    >>> answer = tauten.clamp(socket="24mm", property_class="8.8", torque="150N.m", condition="oiled")
    >>> print(answer.candidates[0].summary)
    M16 8.8, oiled, 150 N.m: clamp load 59 kN (48 to 77 kN in 19 of 20 cases). Within limits; up to 173 N.m is possible.
    >>> print(answer.candidates[0].worst_case)
    43.78 to 86.62 kN, typical 58.95 kN
    >>> answers = tauten.clamp({"thread": ["M12", "M16"], "torque": [80, 150]}, property_class="8.8", condition="oiled")
    >>> answers["verdict"].tolist()
    ['may yield', 'within limits']
    """)


torque_for = _function("torque_for", _core.torque_for, """
    Without ``clamp_load`` the answer is the suggested torque: ``share`` of the proof load (three quarters by default), held
    back to a chance of yielding of 1 in 100 or, where friction is unknown, to where the worst case just yields.
""" + _JOINT + """
    Examples
    --------
    >>> import tauten
    >>> bolt = tauten.torque_for(thread="M16", property_class="8.8", condition="oiled").candidates[0]
    >>> round(bolt.torque)  # N.m
    174
    """)


turn = _function("turn", _core.turn, """
    @inputs

    Returns
    -------
    Turn
        angle, handle_angle and their parts in rad; clamp_load, torque, yield_utilisation, lasting_stretch and more as
        `Band`; past_yield, yield_intended, suggested_angle, may_neck, engagement,
        pressures, residual, service, diagram, tightenings, single_use, methods, structural, verdict and notices;
        ``explain()`` shows the nominal figures.

    Raises
    ------
    Error
        For a joint without a meaning, a snug torque above the target, and a load that the bolt does not bear.

    Sources
    -------
    - VDI 2230 Part 1:2003 (resilience, angle control, embedding; from memory); plasticity after von Mises by its own curve;
      RCSC and EN 1090-2 (structural turns, as reprinted). Tolerances are estimates

    Examples
    --------
    >>> import tauten
    >>> foot = dict(thread="M16", property_class="8.8", condition="oiled", snug_torque="60N.m",
    ...             layers=[("20mm", "grey cast iron", "70mm"), ("35mm", "steel", "70mm")])
    >>> tauten.turn(angle="60deg", **foot).verdict
    'yields'
    >>> tauten.turn(angle="60deg", to_yield=True, **foot).verdict  # the maker's procedure goes past yield
    'yields as intended'
    >>> wanted = tauten.turn(share=0.6, **foot)
    >>> again = tauten.turn(angle=wanted.angle, **foot)
    >>> abs(again.clamp_load.nominal / wanted.clamp_load.nominal - 1) < 1e-6
    True
    """)


curve = _function("curve", _core.curve, """
    @inputs

    Returns
    -------
    TighteningCurve
        low_friction, nominal and high_friction, each a `Curve` with points, first_yield, yield_point, end and energy;
        zones and notices. ``columns()`` of a `Curve` gives its points as NumPy arrays.

    Raises
    ------
    Error
        For a joint without a meaning, and for a snug torque that already brings the bolt to yield.

    Sources
    -------
    - Tension and torsion of a round section after von Mises with isotropic hardening through the figures of the class.
      Where flow begins below R_p0.2 is an estimate

    Examples
    --------
    >>> import tauten
    >>> drawn = tauten.curve(thread="M16", property_class="8.8", condition="oiled", grip="55mm", snug_torque="60N.m")
    >>> drawn.high_friction.yield_point.preload < drawn.low_friction.yield_point.preload
    True
    >>> drawn.nominal.columns()["angle"].shape
    (200,)
    """)


reach = _function("reach", _core.reach, """
    @inputs

    Returns
    -------
    Reach
        setting in N.m, arrives as `Band` in N.m (about 95 % of cases), contributions, hand_force in N, twist in rad of
        the bars, reaction, notices; ``drawing("text")`` or ``drawing("svg")``, and ``explain()``.

    Raises
    ------
    Error
        For input without a meaning, and where the rule of the lever does not hold.

    Sources
    -------
    - US Army TM 9-254 (offset extensions); ISO 6789-1:2017 (accuracy, from memory); the rest by textbook statics

    Examples
    --------
    >>> import tauten
    >>> way = tauten.reach(torque="130N.m", wrench_length="400mm", extensions=[("100mm", "0deg")])
    >>> round(way.setting)  # N.m
    104
    """)


free_joint = _function("free_joint", _core.free_joint, """
    @inputs

    Returns
    -------
    Free
        breakaway, shear, round and tool torque as `Band` in N.m (nine of ten cases), stop_at in N.m with the stop_limit
        that it follows from and all stop_bounds, chances of the whole pull up to it, if_held with those of the rest
        once some of it was held, steps of the plan (each for those that the lines above have left stuck, with
        instructions), the place of the ``next`` one and of the one that is ``enough``, after, notices; ``explain()``
        shows the median figures.

    Raises
    ------
    Error
        For a description without a meaning, and for heat where none may go.

    Sources
    -------
    - Formulas name their own. What rust and aids do is judgement: no measured figures were found

    Examples
    --------
    >>> import tauten
    >>> stuck = tauten.free_joint(thread="M16", property_class="8.8", socket="24mm", rust="rusted", limit="200N.m")
    >>> stuck.chances.free > stuck.chances.shear
    True
    """)


for _each in (thread, property_class, thread_condition, identify, clamp, torque_for, turn, curve, reach, free_joint):
    _each.__module__ = "tauten"
