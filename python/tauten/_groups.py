"""Groups of bolts: which pattern is it, what does each bolt carry, in which order is it tightened and undone.

Bolts are numbered from 1, in the order of their positions; x goes to the right and y up, seen from the side that is tightened.
"""
import json
import pathlib

from tauten import _core
from tauten._answers import _function
from tauten._errors import Error

pattern = _function("pattern", _core.pattern, """
    The first argument may be the pattern instead of a table: pairs are positions, plain lengths are chords, text is a name.

    @inputs

    Returns
    -------
    Pattern
        kind ("circle", "odd hole", "missing holes", "rectangle", "grid", "line", "uneven circle" or "irregular"), count,
        positions, centre, circle_diameter with its standard uncertainty circle_error, first (angle of the first hole
        clockwise from the top), width, height, columns and rows; off, the farthest that a hole is from its place, and
        freedom, the measured figures beyond what fixes the pattern: where it is 0, nothing is proven. odd is the number of a
        hole out of its place and odd_by how far; missing are places without a hole; ways_round is in how many ways the
        part goes back on its own holes, ways_flipped in how many turned over. candidates are standard drillings, and
        next_measurement what would distinguish them. goes_on and ways are about the holes in ``on``, and
        partial_ways warns where counts differ and all holes of one line up with some of the other's, a partner 0 being none;
        ``ways_on(other, tolerance)`` gives the ways this part goes on another pattern.

    Raises
    ------
    Error
        For fewer than two holes, two in one place, what is not a number, chords that close no ring, or a tolerance that is
        not below half of the minimum distance of two holes.

    Notes
    -----
    Least squares: an even ring is linear in centre, radius and phase; a circle is fitted linearly, then by Gauss and Newton.
    Holes alone never show a rating, and bolts that go in do not show that two flanges match.

    Sources
    -------
    - Drillings per row: EN 1092-1, JIS B 2220, ASME B16.5 and B16.47, BS 10, IEC 60072-1, NEMA MG 1, ISO 6162-1 (most seen
      second hand)

    Examples
    --------
    >>> import tauten
    >>> flange = tauten.pattern("circle:8:180mm")
    >>> flange
    Pattern(circle, 8 holes on 180 mm, 8 ways round)
    >>> [f"{c.standard} {c.rating} {c.size}" for c in flange.candidates][:2]
    ['EN 1092-1 PN10 DN100', 'EN 1092-1 PN16 DN100']
    >>> bracket = tauten.pattern([("0mm", "0mm"), ("120mm", "0mm"), ("120mm", "80mm"), ("0mm", "85mm")])
    >>> bracket.kind, bracket.ways_round
    ('irregular', 1)
    """)


group = _function("group", _core.group, """
    The first argument may be the positions instead of a table.

    @inputs

    Returns
    -------
    BoltGroup
        model, loads (N; the size of the shear force, or the tension, or of both the equivalent tension), largest, worst
        (number of the bolt), forces (x, y) in the plane, tension, coefficient (load over that of the worst bolt; by
        instantaneous centre, strength of the group over that of one bolt), torque_coefficient in m where a torque acts
        alone, centre, edge_pressure, models (all models beside each other), bolt_loads, clamp_loads, open, slip and notices.

    Raises
    ------
    Error
        For input without meaning, and for a load that the pattern cannot carry, such as a moment across bolts that are all in
        one line.

    Notes
    -----
    The instantaneous centre uses R/R_ult = (1 - exp(-10 D))^0.55, D in inches up to 0.34, not divided by its maximum
    value, as the tables of the trade do. Under a load through the centroid it gives 0.9815 per bolt.

    Sources
    -------
    - Shigley's Mechanical Engineering Design, 9th ed., section 8-12 (elastic vector method)
    - AISC Companion Design Examples v16.0 (instantaneous centre)
    - Khurmi and Gupta, A Textbook of Machine Design, chapter 11 (tilting; equivalent tension), seen second hand

    Examples
    --------
    >>> import tauten
    >>> bracket = tauten.group("rectangle:150mm:120mm", load=(0, "-16kN"), at=("425mm", 0))
    >>> bracket
    BoltGroup(elastic, bolt 2 carries 20.97 kN)
    >>> foot = tauten.group("grid:2x4:100mm:70mm", moment=(0, "62.5kN.m"))
    >>> round(foot.largest / 1e3)  # about the centroid, kN
    134
    """)


sequence = _function("sequence", _core.sequence, """
    The first argument may be the pattern instead of a table.

    @inputs

    Returns
    -------
    TighteningSequence
        order (bolt numbers), labels (for the places, going by number), sets, passes (share, torque, order, loads of all bolts
        after it), ease and remove (order of easing all by a quarter turn, and of taking out, the last two opposite each
        other); with interaction history (loads after each step), neighbour_loss, passes_needed, passes_by_rule,
        first_loads (loads for a one-pass plan), why_no_first_loads, scattered (band for each bolt), lowest and highest, and
        relieved (share of joints in which a bolt went to zero on the way); notices. Loads are shares of the full one if
        ``load`` is not given.

    Raises
    ------
    Error
        For input without meaning: an order that does not name each bolt once, shares that fall or exceed the torque without
        `most`, flexibilities that are not positive definite.

    Notes
    -----
    In this model star and circle need about the same number of passes; a star keeps gasket and part level, it does not even
    the loads. Loads follow from an elastic joint: a wrench never loosens, a bolt relieved to zero stays at zero and may come
    back. Creep of gaskets is outside.

    Sources
    -------
    - Common practice (crosswise, passes, undoing); RCSC Specification, commentary (from the stiffest part outward)

    Examples
    --------
    >>> import tauten
    >>> tauten.sequence("circle:8:160mm", torque="120N.m")
    TighteningSequence(1 5 3 7 2 6 4 8; 4 passes)
    >>> flange = tauten.sequence(8, interaction=0.2, shortfall=0.05)
    >>> flange.passes_needed, flange.passes_by_rule
    (3, 3)
    """)


prying = _function("prying", _core.prying, """
    ``tributary`` asks after AISC, ``effective_length`` for a T-stub of EN 1993-1-8.

    @inputs

    Returns
    -------
    Prying
        form; strength of plate and bolts together and bolts_alone, in N for all bolts, with strength_share, the first over the
        second; mode, what gives way ("flange", "flange and bolts" or "bolts"), and presses, whether the edge presses then;
        plastic_moment, no_prying_thickness, bolt_lever and edge_lever; bending_share (AISC: alpha'); flange and combined
        (T-stub: modes 1 and 2). With ``pull`` utilisation, minimum_thickness and, after AISC, edge_force of all bolts and
        bolt_load of one. What the standard or the question does not have is NaN or None. notices; ``explain()``.

    Raises
    ------
    Error
        For a measure that is missing or not above 0, and for a pull beyond the strength of the bolts.

    Sources
    -------
    - AISC Companion Design Examples v16.0 (prying action); EN 1993-1-8 Table 6.2 (T-stub), seen second hand

    Examples
    --------
    >>> import tauten
    >>> valve = dict(tributary="70mm", bolt_to_web="49mm", bolt_to_edge="41mm", plate_strength="250MPa", bolt_strength="163kN",
    ...              diameter="20mm", hole="22mm", bolts=1, pull="111.6kN")
    >>> tauten.prying(**valve)
    Prying(AISC, at least 25.61 mm)
    >>> tauten.prying(**valve, thickness="28mm").mode
    'flange and bolts'
    """)


def sheet(job, format="text", time=""):
    """One sheet for the machine: undo, look, assemble, check, record.

    Parameters
    ----------
    job : str, os.PathLike or dict
        A TOML file that describes the joints, or what is in it as a dict; ``docs/demo/pump_overhaul.toml`` explains the keys.
    format : str
        text, markdown, or html to print on A4.
    time : str
        When it is printed, as people write it; default: now.

    Returns
    -------
    str
        The sheet, with a fingerprint of what it was made from.

    Raises
    ------
    Error
        For an unknown key, a joint without name, pattern or fastener, what a question refuses, and a torque that breaks a bolt.

    Examples
    --------
    >>> import tauten
    >>> text = tauten.sheet({"joint": [{"name": "valve bonnet", "pattern": "circle:8:180mm", "torque": {"thread": "M16"}}]})
    >>> "1. valve bonnet" in text
    True
    """
    if isinstance(job, dict):
        content = json.dumps(job, sort_keys=True, default=str)
        return _core.sheet(json.loads(content), "job", content, format, time)
    try:
        import tomllib
    except ModuleNotFoundError:  # Python 3.10
        raise ImportError("reading a TOML file needs Python 3.11; give its content as a dict") from None
    content = pathlib.Path(job).read_bytes()
    try:
        plan = tomllib.loads(content.decode())
    except ValueError as problem:
        raise Error(f"file '{job}' is not TOML: {problem}") from None
    return _core.sheet(json.loads(json.dumps(plan, default=str)), f"'{job}'", content, format, time)  # dates as texts


for _each in (pattern, group, prying, sequence, sheet):
    _each.__module__ = "tauten"
