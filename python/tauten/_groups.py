"""Groups of bolts: which pattern is it, what does each bolt carry, in which order is it tightened and undone.

Every quantity may be a plain number in SI, text with its unit ("160mm", "12kN") or a Pint quantity. Bolts are numbered from 1,
in the order of their positions; x goes to the right and y up, seen from the side that is tightened.
"""
from tauten import _core
from tauten._answers import _given, _one
from tauten._errors import Error

_GASKET = ("ring_width", "ring_thickness", "ring_modulus", "gasket_width", "gasket_thickness", "gasket_modulus", "bolt_length",
           "bolt_area", "bolt_modulus")


def pattern(what=None, /, *, positions=None, chords=None, name=None, hole=None, outside=None, height=None, tolerance=None):
    """Which pattern of bolts is it, how many ways round does the part go on, and which standard drillings may it be?

    Parameters
    ----------
    what : positions, chords or name, optional
        Pairs are positions, plain lengths are chords, text is a name.
    positions : list of (x, y) in m, optional
        Centres of the holes, in any order.
    chords : list of lengths in m, optional
        Distances of neighbours, going clockwise round the ring; the last one leads back to the first hole.
    name : text, optional
        "circle:8:160mm", "rectangle:200mm:150mm", "grid:2x4:140mm:70mm", "line:4:75mm", or a standard by name,
        "EN 1092-1 PN16 DN100".
    hole, outside, height : length in m, optional
        Diameter of the holes, outside diameter of the flange, shaft height of a motor: they narrow the candidates.
    tolerance : length in m, optional
        How far a hole may be from its place by error of measurement; 0.5 mm if not given (a caliper; common practice, no
        source).

    Returns
    -------
    Pattern
        kind ("circle", "odd hole", "missing holes", "rectangle", "grid", "line", "uneven circle" or "irregular"), count,
        positions, centre, circle_diameter with its standard uncertainty circle_error, first (angle of the first hole
        clockwise from the top), width, height, columns and rows; off, the farthest that a hole is from its place, and
        freedom, the measured figures beyond what fixes the pattern: where it is 0, nothing is proven. odd is the number of a
        hole out of its place and odd_by how far; missing are places without a hole; ways_round is in how many ways the
        part goes back on its own holes, ways_flipped in how many turned over. candidates are standard drillings, and
        next_measurement what would distinguish them. ``ways_on(other, tolerance)`` gives the ways this part goes on
        another pattern.

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
    """
    if what is not None:
        if positions is not None or chords is not None or name is not None:
            raise TypeError("give the pattern once: as first argument or as positions, chords or name")
        if isinstance(what, str):
            name = what
        elif not hasattr(what, "__len__") or isinstance(what, (dict, set)):
            raise TypeError("give positions, chords or a name, like \"circle:8:160mm\"")
        elif len(what) and (isinstance(what[0], str) or not hasattr(what[0], "__len__")):
            chords = what
        else:
            positions = what
    return _one(_core.pattern, _given({
        "positions": positions, "chords": chords, "name": name, "hole": hole, "outside": outside, "height": height,
        "tolerance": tolerance}))


def group(positions=None, *, load=None, at=None, torque=None, weights=None, force=None, moment=None, outline=None,
          bolt_area=None, modular_ratio=None, model=None, tension_model=None, preload=None, load_factor=None, friction=None):
    """What does each bolt of a group carry?

    Parameters
    ----------
    positions : list of (x, y) in m, text or Pattern
        The bolts; text like "circle:8:160mm" or "EN 1092-1 PN16 DN100".
    load : (x, y) in N, optional
        Force in the plane of the joint.
    at : (x, y) in m, optional
        A place on its line; the centroid of the bolts if not given.
    torque : torque in N.m, optional
        In the plane, counter-clockwise, on top of that of the load.
    weights : list of numbers, optional
        For bolts that differ (elastic model): areas in bearing, clamp loads in friction.
    force : force in N, optional
        Pull across the plane at the centroid; negative: presses.
    moment : (right, up) in N.m, optional
        Moments that pull on the bolts on the right and at the top.
    outline : list of (x, y) in m, optional
        Corners of the part, in order; for contact and tilting.
    bolt_area : area in m2, optional
        Stress area of one bolt; for contact.
    modular_ratio : number, optional
        Modulus of bolts over that of the support: 1 steel on steel (if not given), 8 to 15 on concrete.
    model : text, optional
        In the plane "elastic" (if not given) or "instantaneous_centre"; across it "centroid" (if not given), "contact",
        "tilting" or "plastic".
    tension_model : text, optional
        The model across the plane, where `model` is that in it.
    preload : force in N, optional
        Of every bolt; then the answer has what bolts and joint carry, until the gap opens.
    load_factor : number, optional
        Share of an external load that reaches the bolt; 0.2 if not given (common practice, no source).
    friction : number, optional
        Between the parts; then slip is the worst utilisation, bolt by bolt.

    Returns
    -------
    BoltGroup
        model, loads (N; the size of the shear force, or the tension, or of both the equivalent tension), largest, worst
        (number of the bolt), forces (x, y) in the plane, tension, coefficient (load over that of the worst bolt; by
        instantaneous centre, strength of the group over that of one bolt), torque_coefficient in m where a torque acts
        alone, centre, edge_pressure, models (all models of tension beside each other), bolt_loads, clamp_loads, open, slip
        and notes.

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
    """
    return _one(_core.group, _given(locals()))


def sequence(pattern=None, *, method=None, start=None, order=None, labels=None, at_once=None, shares=None, rounds=None,
             most=None, torque=None, pressurised=None, person=None, interaction=None, gasket=None, readings=None, load=None,
             shortfall=None, limit=None, friction_scatter=None, act_scatter=None, wrench_scatter=None, trials=None, seed=None):
    """In which order, in how many passes and to which torques is a joint tightened, and in which order is it undone?

    Parameters
    ----------
    pattern : text, list of (x, y) in m, Pattern or whole number
        "circle:8:160mm", positions, or the number of bolts on a circle.
    method : text, optional
        "crosswise" (if not given), "circular", "legacy" (the order that legacy labels mean) or "middle_out" (from the
        stiffest place outward: splice plates, heads, housings).
    start : (x, y) in m, optional
        The stiffest place, for "middle_out"; the centroid if not given.
    order, labels : list of whole numbers, optional
        An order of your own by bolt numbers; or labels as written on a flange: going clockwise, the bolt at each place carries
        the number of its turn.
    at_once : whole number, optional
        Bolts that several tools tighten at once; then the answer has sets.
    shares : list of numbers, optional
        Of the full torque for each pass; 0.3, 0.6, 1 if not given (common practice).
    rounds : whole number, optional
        Circular rounds at the full torque after that, in which the joint settles; 1 if not given.
    most : number, optional
        Maximum share, where the maker's sheet asks for more than the full torque; 1 if not given.
    torque : torque in N.m, optional
        The full torque.
    pressurised, person : bool and (x, y) in m, optional
        Pressure may be trapped: bolts away from the person are eased first.
    interaction : number or count x count numbers, optional
        Elastic interaction: what a neighbour loses per load gained, or flexibilities of the joint.
    gasket : dict, optional
        Geometry instead of it, an order of magnitude: ring_width, ring_thickness, gasket_width, gasket_thickness,
        gasket_modulus, bolt_length, bolt_area, and ring_modulus and bolt_modulus (210 GPa if not given).
    readings : list of lists of forces, optional
        Or loads measured: of all bolts, after each turn of the order, each bolt tightened once.
    load : force in N, optional
        That the full torque gives; 1 if not given. With interaction.
    shortfall : number, optional
        Wished evenness: how far below the load the lowest bolt may end; then the answer has passes_needed.
    limit : force in N, optional
        Yield load of a bolt, which loads for a one-pass plan must not exceed.
    friction_scatter, act_scatter, wrench_scatter : number, optional
        Relative standard deviations of what stays with a bolt, of each act anew, and of the wrench.
    trials, seed : whole number, optional
        Of the simulation of scatter; 10000 and 1 if not given.

    Returns
    -------
    TighteningSequence
        order (bolt numbers), labels (for the places, going by number), sets, passes (share, torque, order, loads of all bolts
        after it), ease and remove (order of easing all by a quarter turn, and of taking out, the last two opposite each
        other); with interaction history (loads after each step), neighbour_loss, passes_needed, passes_by_rule,
        first_loads (loads for a one-pass plan), why_no_first_loads, scattered (band for each bolt), lowest and highest, and
        relieved (share of joints in which a bolt went to zero on the way); notes.

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
    """
    given = _given(locals())
    if gasket is not None and (not isinstance(gasket, dict) or not set(gasket) <= set(_GASKET)):
        raise Error(f"gasket must be a dict of {', '.join(_GASKET)}; leave the others out", "gasket")
    return _one(_core.sequence, given)
