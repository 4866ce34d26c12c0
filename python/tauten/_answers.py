"""Questions with an answer: which fastener is it, what does the torque leave, what to set, does it come free.

Every quantity may be a plain number in SI, text with its unit ("48N.m", "5/8in") or a Pint quantity. What is not known is
left out. Answers hold plain numbers in SI.
"""
from tauten import _core, _rows, _text
from tauten._errors import Error


def _given(arguments):
    return {name: value for name, value in arguments.items() if value is not None}


def _ask(question, answer, arguments):
    """One answer, or one for every row of a table."""
    said = _given(arguments)
    table = said.pop("table", None)
    if table is not None:
        return _rows.answer(question, table, said, said.pop("columns", ()), said.pop("jobs", 1))
    if "columns" in said:
        raise TypeError("columns are those of a table; give one, or leave columns out")
    return _one(answer, said)


def _one(answer, said):
    try:
        return answer(said)
    except Error as error:
        raise _text.with_si(error, said) from None


_TABLE = """    table : DataFrame, structured array or dict of columns, optional
        One joint in each row, in columns that are called like the arguments; then the answer is a table too. Columns
        hold numbers in SI, texts with units or quantities of Pint. Other columns are no matter and do not come back.
        What a row leaves empty is taken from the arguments. A table of dask stays lazy."""
_TABLE_OPTIONS = """    columns : text or list of texts
        Columns of the answer to a table, if not the standard ones.
    jobs : whole number
        How many threads work at a table; 1 if not given."""
_TABLE_ANSWER = """
        Of a table: a table with the members of the most common fastener as columns, bands as three of them, then
        ``warnings`` with the codes of its notices, and ``error``. A wrong row spoils no other one; a `DomainWarning`
        counts them."""


def thread(designation):
    """Look up an ISO metric thread, M1 to M64, with its basic dimensions.

    Parameters
    ----------
    designation : text
        "M10", "M10x1.25" or "M10x1.25-6g".

    Returns
    -------
    Thread
        diameter, pitch, pitch_diameter, minor_diameter, root_diameter and stress_diameter in m, stress_area in m2,
        lead_angle in rad, coarse, selected (ISO 262) and tolerance_class.

    Raises
    ------
    Error
        If ISO 261 has no such size; the message names the nearest ones.

    Sources
    -------
    - ISO 261 (sizes), ISO 68-1 and ISO 724 (profile and basic dimensions), ISO 898-1 (stress area)

    Examples
    --------
    >>> import tauten
    >>> bolt = tauten.thread("M16")
    >>> bolt
    Thread(M16)
    >>> round(bolt.stress_area * 1e6)  # mm2
    157
    """
    return _core.thread(designation)


def property_class(name, diameter=None):
    """Look up a property class of bolts: least strengths, and what to read on the head.

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
    return _core.property_class(name, diameter)


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


def identify(*, socket=None, key=None, bit=None, worn=None, property_class=None):
    """Find the fasteners that a tool fits, the most likely first.

    Parameters
    ----------
    socket : length in m
        Socket or spanner that fits, or the width across flats as measured.
    key : length in m
        Hexagon key that fits into the head, in place of a socket.
    bit : whole number
        Number of the six-lobed bit that fits into the head, in place of a socket.
    worn : length in m
        How far width and tool may differ: 0.3 mm for sockets and 0 for keys if not given.
    property_class : text
        The mark on the head, to see what it looks like and promises.

    Returns
    -------
    Identification
        candidates, each with thread, head (standards), kind, how_common, fit, region and look (how to tell it from the
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
    """
    return _one(_core.identify, _given(locals()))


_JOINT = """
    Parameters
    ----------
""" + _TABLE + """
{first}
    socket : length in m
        Width across flats that fits.
    key : length in m
        Hexagon key that fits into the head, in place of a socket.
    thread : text or Thread
        Designation. With it alone the head is that of ISO 4014, unless ``head`` says otherwise.
    head : text
        Standard of the turned head or nut, "ISO 4032".
    property_class : text or PropertyClass
        Mark on the head. Without it the weakest class is assumed and said.
    condition : text
        What is on the threads: a name of ``tauten.conditions``. Without it the band is wide.
    face_condition : text
        What is under head or nut, if not the same.
    specified_condition : text
        The condition that the torque figure is meant for.
    thread_friction, bearing_friction : number, numbers or text
        Measured coefficient, before the condition: one number; low, typical and high; or "0.08..0.12..0.16". Of two
        numbers the middle is the typical one.
    share : number
        Share of the proof load that is aimed at: 0.75 if not given.
    wrench_accuracy : number
        0.04 for 4 % both ways; if not given, ISO 6789-1: 6 % up to 10 N.m and 4 % above.
    prevailing_torque, shank_torque : torque in N.m
        What a locking nut, and the shank in its hole, take before anything stretches the bolt.
    bearing_diameter : length in m
        Effective diameter of the bearing face, if not the standard's.
    more_faces : list
        Washers and the like under the turned part: ``[(bearing_diameter, condition), ...]``. The face that rubs least
        slides. In a table one text, "26mm:oiled;30mm:dry".
    torsion : text
        How the section carries torsion: "plastic" (VDI 2230 from 2001 on) or "elastic" (before).
    name : text
        How the joint is called.
""" + _TABLE_OPTIONS + """

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
""" + _TABLE_ANSWER.lstrip("\n") + """

    Raises
    ------
    Error
        For input without a meaning; ``argument`` names the one at fault.

    Sources
    -------
    - Exact torque formula: VDI 2230. Friction bands: see `thread_condition`. Strengths: ISO 898-1, ISO 3506-1
"""


def clamp(table=None, /, *, torque=None, socket=None, key=None, thread=None, head=None, property_class=None,
          condition=None, face_condition=None, specified_condition=None, thread_friction=None, bearing_friction=None,
          share=None, wrench_accuracy=None, prevailing_torque=None, shank_torque=None, bearing_diameter=None,
          more_faces=None, torsion=None, name=None, columns=None, jobs=None):
    if table is None and torque is None:
        raise TypeError("clamp() needs a torque")
    return _ask("clamp", _core.clamp, locals())


clamp.__doc__ = """Tell which clamp load a torque leaves, in every fastener that it can be.
""" + _JOINT.format(first="    torque : torque in N.m\n        Setting of the wrench.") + """
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
    """


def torque_for(table=None, /, *, socket=None, key=None, thread=None, head=None, property_class=None, clamp_load=None,
               share=None, condition=None, face_condition=None, thread_friction=None, bearing_friction=None,
               wrench_accuracy=None, prevailing_torque=None, shank_torque=None, bearing_diameter=None, more_faces=None,
               torsion=None, name=None, columns=None, jobs=None):
    return _ask("torque", _core.torque_for, locals())


_WISH = """    clamp_load : force in N
        Clamp load that is wanted at nominal friction. Without it the answer is the suggested torque: ``share`` of the
        proof load (three quarters by default), held back to a chance of yielding of 1 in 100 or, where friction is
        unknown, to where the worst case just yields."""

torque_for.__doc__ = """Give the wrench setting for a wanted clamp load, or else the suggested torque.
""" + _JOINT.format(first=_WISH).replace("""    specified_condition : text
        The condition that the torque figure is meant for.
""", "") + """
    Examples
    --------
    >>> import tauten
    >>> bolt = tauten.torque_for(thread="M16", property_class="8.8", condition="oiled").candidates[0]
    >>> round(bolt.torque)  # N.m
    174
    """


_TURNED = """    thread : text or Thread
    property_class : text or PropertyClass
        Mark on the head; without it the weakest class is assumed.
    layers : list
        Clamped layers from the turned face down: ``[(thickness, material, outer_diameter, hole_diameter), ...]``, each as
        far as it is known. Materials: "steel", "austenitic steel", "grey cast iron", "ductile iron", "aluminium",
        "cast aluminium", "steel S355", "quenched and tempered steel"; of others give a dict with ``elastic_modulus``. Without
        a width three bearing faces are taken.
    grip : length in m
        So much steel, in place of layers.
    washers : whole number
        Of ISO 7089: 1 under the turned face, 2 at both ends of a through bolt.
    kind : text
        "through_bolt" (if not given), "tapped_hole" or "stud".
    head : text
        Standard of the turned head or nut, "ISO 4014" if not given; "ISO 4017" is threaded up to the head.
    length, shank_diameter : length in m
        Of the bolt, the shortest standard length that reaches if not given; of a reduced shank.
    tapped_material : text
        Of the part with the tapped hole.
    engagement : length in m
        Engaged thread in a tapped hole; what the length gives, or what the bolt needs to break first, if not given.
    nut_class : text
        Of the nut, "8"; the class that matches the bolt if not given.
    nut_height : length in m
        Of the nut; ISO 4032 if not given.
    plate_model : text
        "chosen" (if not given), "deformation_cone", "frustum" or "exponential".
    snug_torque : torque in N.m
        At which all gaps are closed; the angle counts from there.
    condition, face_condition : text
        What is on the threads, and under the head if not the same; see `thread_condition`.
    thread_friction, bearing_friction : number, or low, typical and high
        If measured.
    prevailing_torque : torque in N.m
        Of a locking nut or insert.
    bearing_diameter : length in m
        Effective diameter of the bearing face, if not that of the standard.
    name : text
        How the joint is called."""


def turn(table=None, /, *, thread=None, property_class=None, angle=None, angle_at_handle=None, clamp_load=None,
         share=None, utilisation=None, snug_torque=None, layers=None, grip=None, washers=None, kind=None, head=None,
         length=None, shank_diameter=None, tapped_material=None, engagement=None,
         nut_class=None, nut_height=None, plate_model=None, condition=None, face_condition=None,
         thread_friction=None, bearing_friction=None, prevailing_torque=None, bearing_diameter=None, bars=None,
         wrench_accuracy=None, angle_tolerance=None, resilience_tolerance=None, strength_surplus=None, roughness=None,
         load_across=None, bolt_warming=None, plate_warming=None, creep_share=None, neighbours=None, working_load=None,
         load_introduction=None, structural=None, k_factor=None, sloping_faces=None, name=None, columns=None, jobs=None):
    return _ask("turn", _core.turn, locals())


turn.__doc__ = f"""Tell how far to turn from snug for a clamp load, or what snug torque and angle leave, and between what limits.

    One of ``angle``, ``clamp_load``, ``share`` and ``utilisation`` says what is asked; without any it is 0.75 of the proof
    load. Past yield the bolt is followed through the plastic range.

    Parameters
    ----------
    table : DataFrame, structured array or dict of columns, optional
        One question in each row, as for `clamp`; lists are texts with semicolons between the items,
        "35mm:steel;20mm:steel".
    angle : angle in rad
        To be turned from snug; at the fastener, or with ``angle_at_handle`` as read with the bars in between.
    angle_at_handle : bool
    clamp_load : force in N
        That is wanted.
    share, utilisation : number
        Wanted share of the proof load; wanted share of the yield strength while the wrench turns.
{_TURNED}
    bars : list
        Straight bars between handle and fastener: ``[(section, length, size), ...]`` as in `reach`.
    wrench_accuracy : number
        Of the snug torque; 0.06 up to 10 N.m and 0.04 above if not given.
    angle_tolerance : angle in rad
        How far the angle may be off; 5 degrees if not given, an estimate.
    resilience_tolerance, strength_surplus : number
        How far the resilience may be off, by how much a bolt may exceed its class; 0.10 (0.15 where a width is assumed)
        and 0.2 if not given, estimates.
    roughness : length in m
        R_z of the roughest face, for embedding; 10 um if not given.
    load_across : bool
        The working load acts across the bolt.
    bolt_warming, plate_warming : temperature difference in K
        In service, against tightening.
    creep_share : number
        Share that soft layers take off with time.
    neighbours, working_load : force in N
        Taken off by bolts that are tightened later; load that pulls the joint apart.
    load_introduction : number
        Where the working load acts: 1 under head and nut, 0 in the parting line.
    structural : bool
        Compare with the turns of structural bolting; ``sloping_faces`` 0, 1 or 2.
    k_factor : number
        Mean k-value that is declared for the bolt set, k_m; EN 1090-2 takes 0.125 for class K1.
    columns : text or list of texts
    jobs : whole number
        Of a table, as for `clamp`.

    Returns
    -------
    Turn
        angle, handle_angle and their parts in rad; clamp_load, torque, yield_utilisation, lasting_stretch and more as
        `Band`; past_yield, may_neck, engagement,
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
    'yields as intended'
    >>> wanted = tauten.turn(share=0.6, **foot)
    >>> again = tauten.turn(angle=wanted.angle, **foot)
    >>> abs(again.clamp_load.nominal / wanted.clamp_load.nominal - 1) < 1e-6
    True
    """


def curve(*, thread=None, property_class=None, layers=None, grip=None, washers=None, kind=None, head=None, length=None,
          shank_diameter=None, tapped_material=None, engagement=None,
         nut_class=None, nut_height=None, plate_model=None, snug_torque=None, condition=None,
          face_condition=None, thread_friction=None, bearing_friction=None, prevailing_torque=None,
          bearing_diameter=None, end_angle=None, points=None, slope_share=None, name=None):
    return _one(_core.curve, _given(locals()))


curve.__doc__ = f"""Draw torque and preload against the angle from snug past yield, at low, typical and high friction.

    Parameters
    ----------
{_TURNED}
    end_angle : angle in rad
        Where the curve ends; without it where uniform elongation is used up.
    points : whole number
        Of each curve; 200 if not given.
    slope_share : number
        The yield point is where the slope of torque over angle has fallen to this share of its greatest value; 0.5 if not
        given.

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
    """


def reach(table=None, /, *, torque=None, setting=None, wrench_length=None, extensions=None, hand_offset=None,
          support_share=None, tilt=None, universal_joint=None, multiplier_ratio=None, multiplier_efficiency=None,
          efficiency_range=None, reaction_arm=None, bars=None, drive_square=None, wrench_type=None, wrench_class=None,
          scale_low=None, scale_high=None, division=None, hinged_handle=None, pipe_on_handle=None, tolerance_hand=None,
          tolerance_extension=None, tolerance_extension_angle=None, tolerance_pull_angle=None,
          tolerance_support_share=None, tolerance_operator=None, columns=None, jobs=None):
    """Tell what to set on the wrench for a torque at the fastener, or what a setting gives there.

    Parameters
    ----------
    table : DataFrame, structured array or dict of columns, optional
        One question in each row, as for `clamp`; lists are texts with semicolons between the items, "100mm@30deg;50mm".
    torque, setting : torque in N.m
        Torque at the fastener, or setting of the wrench: the one that is known.
    wrench_length : length in m
        From the drive to the middle of the hand; 0.3 m if not given.
    extensions : list
        Offset extensions from the drive outward: ``[(length, angle), ...]``, the angle measured from the wrench's own
        direction (0 in line, 90 degrees square to it).
    hand_offset : length in m
        Where the hand stands beyond the mark; negative: nearer to the drive.
    support_share : number
        Share of the pull that a second hand takes at the wrench head.
    tilt, universal_joint : angle in rad
        Wrench out of the plane of turning; bend of a universal joint.
    multiplier_ratio, multiplier_efficiency, efficiency_range : number
        Torque multiplier; efficiency 1 and range 0 if the ratio is a torque ratio that the maker states.
    reaction_arm : length in m
        From the axis of the multiplier to where its arm rests.
    bars : list
        Straight bars: ``[(section, length, size), ...]`` with section "square", "round" or "hexagon".
    drive_square : length in m
        Smallest square in the line.
    wrench_type : text
        "setting" (clicks) or "indicating".
    wrench_class : text
        Letter of ISO 6789-1, "A".
    scale_low, scale_high, division : torque in N.m
        Ends of the scale, and what lies between two marks.
    hinged_handle, pipe_on_handle : bool
        A pipe is refused, and so is a hinge with an extension.
    tolerance_hand, tolerance_extension : length in m
    tolerance_extension_angle, tolerance_pull_angle : angle in rad
    tolerance_support_share, tolerance_operator : number
        How far things may be off; estimates if not given.
    columns : text or list of texts
    jobs : whole number
        Of a table, as for `clamp`.

    Returns
    -------
    Reach
        setting in N.m, arrives as `Band` in N.m (about 95 % of cases), contributions, hand_force in N, twist in rad of
        the bars, reaction, warnings and cautions; ``drawing("text")`` or ``drawing("svg")``, and ``explain()``.

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
    """
    return _ask("reach", _core.reach, locals())


def free_joint(table=None, /, *, thread=None, property_class=None, socket=None, key=None, bit=None, rust=None,
               limit=None, diameter=None, pitch=None, width_across_flats=None, tensile_strength=None,
               yield_strength=None, torsion_ratio=None, preload=None, thread_friction=None, bearing_friction=None,
               engaged_length=None, bearing_diameter=None, nut_diameter=None, nut_yield=None, prevailing_torque=None,
               years=None, first_year_loss=None, drive=None, tapped=None, thread_direction=None, head_height=None, drive_clearance=None, corner_loss=None,
               drive_square=None, handle_length=None, hand_force=None, hand_variation=None, shear_risk=None,
               wanted_chance=None, aids=None, held=None, held_untreated=None, loosened=None, surroundings=None,
               reused=None, quenched=None, trials=None, seed=None, jobs=None, columns=None):
    """Tell whether a stuck fastener comes free before it shears or its drive gives, where to stop, and what to do next.

    Parameters
    ----------
    table : DataFrame, structured array or dict of columns, optional
        One question in each row, as for `clamp`; lists are texts with semicolons between the items, "brush;fluid:24h".
    thread : text or Thread
        Designation; or ``diameter`` and ``pitch`` in m.
    property_class : text or PropertyClass
        Mark on the head; or ``tensile_strength`` and ``yield_strength`` in Pa and ``torsion_ratio``.
    socket, key, width_across_flats : length in m
        Tool that fits, or width of the head; without it that of ISO 4014 (ISO 4762 for a key) for the thread.
    bit : whole number
        Number of the six-lobed bit that fits into the head, in place of a socket; without it that of ISO 14579 if the
        drive is "hexalobular".
    rust : text
        "clean", "aged_dry", "light_rust", "rusted" (if not given), "heavy_rust" or "loose_but_rusted_in".
    limit : torque in N.m
        Torque that will not be exceeded.
    preload : force in N
        What it was tightened to; without it a share of yield with a wide band.
    thread_friction, bearing_friction : number
        Of the clean joint; 0.14 if not given.
    engaged_length, bearing_diameter, nut_diameter, head_height : length in m
        Typical proportions of a hexagon bolt if not given. The head height is what the tool engages: of a recess that is
        partly filled the depth that is left.
    nut_yield : stress in Pa
    prevailing_torque : torque in N.m
    years : number
        Years in place; with ``first_year_loss``, a length in m, it replaces the metal loss of the state of rust.
    drive : text
        "six_point" (if not given), "twelve_point", "open_end", "internal_hexagon" or "hexalobular".
    tapped : bool
        The thread is in the part, not in a nut; only inside a head if not given.
    thread_direction : text
        "right" or "left"; asked for if not given.
    drive_clearance, corner_loss, drive_square : length in m
        Play of the tool (0.2 mm of a socket and 0.1 mm of a key or bit if not given), radial wear of the corners (or of the
        ridges between lobes), smallest square drive in the chain.
    handle_length : length in m
        If turned by hand, with ``hand_force`` in N (median pull) and ``hand_variation``.
    shear_risk, wanted_chance : number
        Accepted chance of shearing, 0.05; chance of release at which no stronger aid is looked for, 0.9.
    aids : list
        Aids already used: ``["brush", "fluid:24h", {"aid": "heat", "nut_rise": 100}]``; of brush, fluid (with its
        soak_hours, and thin_fluid), tighten_first, impact, heat, cold. Of heat and cold, nut_rise and bolt_rise in K.
    held : torque in N.m
        This very fastener was pulled to it, after the aids already used, and has not moved. Chances and the torque to
        stop at are then those of the rest of the pull.
    held_untreated : bool
        It was pulled to it before the aids already used.
    loosened : list
        Like fasteners of the same flange: ``["freed:85N.m", ("sheared", "120N.m"), ...]``; freed, sheared, rounded,
        unmoved. They were turned without the aids already used; one that had them says so, ``"freed:60N.m:treated"`` or
        ``("freed", "60N.m", True)``.
    surroundings : text or list of texts
        What limits heat: "fire_or_burst", "rubber_or_plastic", "zinc_or_cadmium", "adhesive".
    reused, quenched : bool
        The bolt is to be used again; it is quenched and tempered, which follows from the class if not given.
    trials, seed, jobs : whole number
        Of the simulation; the same seed gives the same answer on any number of threads. With a table the threads share
        its rows.
    columns : text or list of texts
        Of a table, as for `clamp`.

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
    """
    return _ask("free", _core.free_joint, locals())


for _function in (thread, property_class, thread_condition, identify, clamp, torque_for, turn, curve, reach, free_joint):
    _function.__module__ = "tauten"
