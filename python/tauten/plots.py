"""Pictures of answers, in Python only. Matplotlib is needed only when one is drawn.

>>> import tauten
>>> axes = tauten.plots.plot_nut_factor("M16", bearing_diameter="20mm")  # doctest: +SKIP
>>> axes.figure.savefig("nut_factor.pdf")  # doctest: +SKIP

Each function returns the axes that it drew on, `plot_curve` two of them; with ``axes`` it draws on yours.

Colours are those of Okabe and Ito, which people with any kind of colour blindness distinguish; lines and marks differ too.
"""
import math
import textwrap

from tauten import _core, _pint
from tauten._errors import Error

BLACK, ORANGE, SKY, GREEN, BLUE, VERMILION, PURPLE = ("#000000", "#E69F00", "#56B4E9", "#009E73", "#0072B2", "#D55E00",
                                                      "#CC79A7")

_ENDS = (("free", "comes free", GREEN, "-"), ("shear", "shears", VERMILION, "--"), ("round", "", ORANGE, "-."),
         ("tool", "tool fails", PURPLE, ":"), ("not_moving", "does not move", BLUE, (0, (6, 1, 1, 1, 1, 1))))


_PLATE = {"boxstyle": "square,pad=0.1", "facecolor": "white", "edgecolor": "none"}  # keeps figures readable on lines


def _axes(axes, width, height):
    import matplotlib.pyplot as plt
    if axes is None:
        axes = plt.subplots(figsize=(width, height), constrained_layout=True)[1]
    for edge in ("top", "right"):
        axes.spines[edge].set_visible(False)
    return axes


def _legend(axes):
    legend = axes.legend(loc="upper left", bbox_to_anchor=(1.01, 1), borderaxespad=0, frameon=False)
    for text in legend.get_texts():  # long words would leave the picture no room
        text.set_text(textwrap.fill(text.get_text(), 34))


def _shop(unit):
    """Factor from the SI unit to the unit that a workshop reads, and how that one is written."""
    shop = _core.shop_unit(unit)
    return (1 / _core.read_quantity(f"1{shop}") if shop else 1.0), shop.replace("N.m", "N·m")


def _places(bands):
    """Decimals for all figures of a picture: those that the largest has with three digits, and no band fewer than two digits."""
    sizes = [size for band in bands if (size := max((abs(value) for value in band if math.isfinite(value)), default=0))]
    return max(0, 2 - math.floor(math.log10(max(sizes))), 1 - math.floor(math.log10(min(sizes)))) if sizes else 0


def _settable(torque):
    """A torque to set or to stop at: never rounded up past what was found to be safe."""
    return _core.settable_text(torque) if torque > 0 else "0"


def _whole(shares, places=0):
    """Shares in percent as texts that add up to what they add up to: what is cut off goes to those that lost most."""
    unit = 10.0 ** -places
    cut = [math.floor(share / unit + 1e-9) for share in shares]
    missing = round(sum(shares) / unit) - sum(cut)
    for place in sorted(range(len(cut)), key=lambda place: cut[place] - shares[place] / unit)[:missing]:
        cut[place] += 1
    return [f"{count * unit:.{places}f}" for count in cut]


def _band_bar(axes, place, band, unit, words, reach, places):
    """Bar from low to high with a mark at typical, and the figures below, if there are any, in the unit that is drawn."""
    low, nominal, high = band
    axes.plot([low, high], [place, place], color=SKY, linewidth=10, solid_capstyle="butt",
              label="" if place else words)
    axes.plot([nominal], [place], "o", color=BLUE, markersize=8, markeredgecolor=BLACK, linestyle="none",
              label="" if place else "typical")
    if not math.isfinite(nominal):
        axes.annotate("none left", (0, place), (4, 0), textcoords="offset points", va="center", fontsize=9)
        return
    # Towards the middle of the picture, so that no text runs over its edge.
    side, at = ("left", low) if low + high < reach else ("right", high)
    axes.annotate(f"{low:.{places}f} to {high:.{places}f}, typical {nominal:.{places}f} {unit}".rstrip(), (at, place), (0, -15),
                  textcoords="offset points", ha=side, va="top", fontsize=9,
                  bbox=_PLATE)


def plot_chances(free, axes=None):
    """Draw how a stuck fastener ends against the torque that is not exceeded, with the torque to stop at.

    Parameters
    ----------
    free : Free
        Answer of `free_joint`.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Examples
    --------
    >>> import tauten.plots
    >>> stuck = tauten.free_joint(thread="M16", property_class="8.8", limit="200N.m")
    >>> axes = tauten.plots.plot_chances(stuck)  # doctest: +SKIP
    """
    free = _pint.plain(free)
    axes = _axes(axes, 8, 4.6)
    torques = [point.limit for point in free.curve]
    for name, words, colour, line in _ENDS:
        words = words or ("recess strips" if any(part.part == "recess" for part in free.capacities) else "corners round off")
        axes.plot(torques, [100 * getattr(point, name) for point in free.curve], color=colour, linestyle=line,
                  linewidth=2, label=words)
    axes.axvspan(free.breakaway.low, min(free.breakaway.high, torques[-1]), color=SKY, alpha=0.2, linewidth=0,
                 label="comes free: nine of ten cases")
    first = free.steps[0].stop_at
    axes.axvline(first, color=BLACK, linewidth=1.5, label=f"stop at {_settable(first)} N·m")
    if abs(free.stop_at - first) > 1e-9:
        axes.axvline(free.stop_at, color=BLACK, linewidth=1, linestyle="--",
                     label=f"single pull: {_settable(free.stop_at)} N·m at most")
    if abs(free.chances.limit - free.stop_at) > 1e-9:
        axes.axvline(free.chances.limit, color=BLACK, linewidth=1, linestyle=":",
                     label=f"limit {free.chances.limit:.0f} N·m")
    axes.set_xlim(0, torques[-1])
    axes.set_ylim(-1.5, 101.5)  # so that a line at either end is seen
    axes.set_xlabel("torque that is not exceeded in N·m")
    axes.set_ylabel("chance in %")
    axes.set_title("How it ends (an estimate)", loc="left")
    _legend(axes)
    return axes


def plot_clamp_band(clamp, axes=None, most=6):
    """Draw the clamp load that a torque leaves, low to high, beside the proof load, for each fastener that it can be.

    Parameters
    ----------
    clamp : Clamp
        Answer of `clamp` or `torque_for`.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.
    most : whole number
        How many fasteners are shown, the most common first.

    Returns
    -------
    matplotlib Axes

    Examples
    --------
    >>> import tauten.plots
    >>> answer = tauten.clamp(thread="M16", property_class="8.8", torque="130N.m", condition="oiled")
    >>> axes = tauten.plots.plot_clamp_band(answer)  # doctest: +SKIP
    """
    clamp = _pint.plain(clamp)
    bolts = clamp.candidates[:most]
    axes = _axes(axes, 8, 1.9 + 0.75 * len(bolts))
    loads = [load for b in bolts for load in (b.clamp_load.high, b.proof_load) if math.isfinite(load)]
    reach = 1.15 * max(loads) / 1e3
    shown = [[load / 1e3 for load in bolt.clamp_load] for bolt in bolts]
    places = _places(shown)
    for place, (bolt, band) in enumerate(zip(bolts, shown)):
        _band_bar(axes, place, band, "kN", "clamp load in 19 of 20 cases", reach, places)
        axes.vlines(bolt.proof_load / 1e3, place - 0.2, place + 0.2, color=VERMILION, linewidth=3,
                    label="" if place else "proof load")
    axes.set_yticks(range(len(bolts)),
                    [f"{b.thread} {b.head.split(',')[0]}, {b.property_class}{' (assumed)' if b.class_assumed else ''}\n"
                     f"{b.torque:.3g} N·m: {b.verdict}" for b in bolts])
    axes.set_ylim(len(bolts) - 0.35, -0.5)
    axes.set_xlim(0, reach)
    axes.set_xlabel("clamp load of one bolt in kN")
    axes.set_title(clamp.name or "Clamp load", loc="left")
    _legend(axes)
    return axes


def plot_bands(rows, words, marks=(), unit=None, axes=None):
    """Draw bands below each other, low to high with the typical value, such as one clamp load for each condition.

    Parameters
    ----------
    rows : list of (text, Band or three numbers)
        What each band is of, and low, typical and high. All have the same unit.
    words : text
        What is drawn, for the axis; its unit is added.
    marks : list of (number, text)
        Values in SI to compare with, drawn as lines.
    unit : text, optional
        SI unit of rows that are plain numbers: "N", "m", "N.m", "Pa", "rad" or "".
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    ValueError
        If there is no row, or the rows have different units.

    Examples
    --------
    >>> import tauten.plots
    >>> joint = dict(thread="M16", property_class="8.8", torque="130N.m")
    >>> bolts = [(c, tauten.clamp(condition=c, **joint).candidates[0]) for c in ("dry", "oiled")]
    >>> rows = [(condition, bolt.clamp_load) for condition, bolt in bolts]
    >>> axes = tauten.plots.plot_bands(rows, "clamp load of one bolt")  # doctest: +SKIP
    """
    rows = list(rows)
    units = {getattr(band, "unit", unit) for _, band in rows}
    if len(units) != 1 or None in units:
        raise ValueError("plot_bands: bands of one unit are needed, at least one; give the unit of plain numbers")
    factor, unit = _shop(units.pop())
    shown = [[factor * value for value in band] for _, band in rows]
    ends = [factor * value for value, _ in marks] + [band[-1] for band in shown if math.isfinite(band[-1])]
    reach = 1.15 * max(ends, default=1.0)
    axes = _axes(axes, 8, 1.9 + 0.7 * len(rows))
    places = _places(shown)
    for place, band in enumerate(shown):
        _band_bar(axes, place, band, unit, "low to high", reach, places)
    for (value, name), colour, line in zip(marks, (VERMILION, GREEN, PURPLE, ORANGE), ("--", "-.", ":", "-")):
        axes.axvline(factor * value, color=colour, linestyle=line, linewidth=2, zorder=0,
                     label=f"{name}, {factor * value:.3g} {unit}".rstrip())
    axes.set_yticks(range(len(rows)), [name for name, _ in rows])
    axes.set_ylim(len(rows) - 0.35, -0.5)
    axes.set_xlim(0, reach)
    axes.set_xlabel(f"{words} in {unit}" if unit else words)
    _legend(axes)
    return axes


def plot_scatter(answers, axes=None):
    """Draw the clamp load of 19 in 20 cases against the torque: the band in which one wrench setting scatters.

    Parameters
    ----------
    answers : list of Clamp
        Answers of `clamp` for one joint at several torques; the first candidate of each is drawn.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    ValueError
        If there are fewer than two answers.

    Examples
    --------
    >>> import tauten.plots
    >>> joint = dict(thread="M16", property_class="8.8", condition="oiled")
    >>> answers = [tauten.clamp(torque=torque, **joint) for torque in range(20, 220, 20)]
    >>> axes = tauten.plots.plot_scatter(answers)  # doctest: +SKIP
    """
    answers = _pint.plain(answers)
    bolts = sorted((answer.candidates[0] for answer in answers), key=lambda bolt: bolt.torque)
    if len(bolts) < 2:
        raise ValueError("plot_scatter: answers for at least two torques are needed")
    axes = _axes(axes, 8, 4.6)
    torques = [bolt.torque for bolt in bolts]
    low, nominal, high = ([load / 1e3 for load in loads] for loads in zip(*(bolt.clamp_load for bolt in bolts)))
    axes.fill_between(torques, low, high, color=SKY, alpha=0.45, linewidth=0, label="clamp load in 19 of 20 cases")
    axes.plot(torques, nominal, color=BLUE, linewidth=2, label="typical")
    last = bolts[-1]
    lost = [bolt.torque for bolt in bolts if not math.isfinite(bolt.clamp_load.nominal)]
    if lost:
        held = max((torque for torque in torques if torque < lost[0]), default=0)  # from there on, with no gap between
        axes.axvspan(held, max(torques[-1], held * 1.001), facecolor="white", edgecolor=ORANGE, hatch="//",
                     linewidth=0, label="breaks: no clamp load")
    axes.axhline(last.proof_load / 1e3, color=VERMILION, linewidth=2, linestyle="--", label="proof load")
    if math.isfinite(last.suggested_torque):
        axes.axvline(last.suggested_torque, color=GREEN, linewidth=2, linestyle="-.",
                     label=f"suggested torque, {_settable(last.suggested_torque)} N·m")
    axes.set_xlim(0, torques[-1])
    axes.set_ylim(0, 1.1 * max(load for load in (*high, last.proof_load / 1e3) if math.isfinite(load)))
    axes.set_xlabel("setting of the wrench in N·m")
    axes.set_ylabel("clamp load of one bolt in kN")
    axes.set_title(f"{last.thread}, {last.property_class}", loc="left")
    _legend(axes)
    return axes


def _shares(budget):
    """Name and share of the variance of each line."""
    lines = getattr(budget, "contributions", budget)
    if lines and hasattr(lines[0], "range"):  # causes of `Reach`: each a full width, added as squares
        total = sum(line.range**2 for line in lines)
        return [(line.cause, line.range**2 / total) for line in lines]
    # What is known exactly is no line of a picture.
    return [(line.name, line.share) if hasattr(line, "share") else tuple(line) for line in lines
            if getattr(line, "standard_uncertainty", 1)]


def plot_budget(budget, axes=None):
    """Draw which input brings how much of an uncertainty, the largest first.

    Parameters
    ----------
    budget : Budget, Reach, or list of (text, number)
        Lines with their shares of the variance; all shares together are 1.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    ValueError
        If there is no line.

    Examples
    --------
    >>> import tauten.plots
    >>> way = tauten.reach(torque="130N.m", wrench_length="400mm", extensions=[("100mm", "0deg")])
    >>> axes = tauten.plots.plot_budget(way)  # doctest: +SKIP
    """
    lines = sorted(_shares(budget), key=lambda line: -line[1])
    if not lines:
        raise ValueError("plot_budget: a budget without lines")
    axes = _axes(axes, 8, 1.3 + 0.45 * len(lines))
    shares = [100 * share for _, share in lines]
    axes.barh(range(len(lines)), shares, height=0.62, color=BLUE)
    for place, (share, text) in enumerate(zip(shares, _whole(shares, 1))):
        axes.annotate("below 0.1 %" if 0 <= share < 0.1 else f"{text} %", (max(share, 0), place), (4, 0),
                      textcoords="offset points", va="center", fontsize=9)
    axes.axvline(0, color=BLACK, linewidth=0.8)
    axes.set_yticks(range(len(lines)), [name.replace("_", " ") for name, _ in lines])
    axes.set_ylim(len(lines) - 0.5, -0.5)
    axes.set_xlim(min(0, 1.25 * min(shares)), 1.2 * max(shares))
    axes.set_xlabel("share of the variance in %")
    output = getattr(budget, "output", "torque at the fastener" if hasattr(budget, "arrives") else "it")
    axes.set_title(f"What makes {output.replace('_', ' ')} uncertain", loc="left")
    return axes


def plot_trials(run, marks=(), axes=None):
    """Draw how the trials of a Monte Carlo run spread, with the interval that holds the share asked for.

    Parameters
    ----------
    run : MonteCarlo
        Of `tauten.uncertainty.monte_carlo`.
    marks : list of (number, text)
        Values in SI to compare with, drawn as lines.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    ValueError
        If all trials have the same value, so that nothing spreads.

    Examples
    --------
    >>> import tauten.plots
    >>> from tauten import uncertainty
    >>> question = uncertainty.clamp(thread="M16", property_class="8.8", torque="130N.m", condition="oiled")
    >>> axes = tauten.plots.plot_trials(uncertainty.monte_carlo(question))  # doctest: +SKIP
    """
    factor, unit = _shop(run.unit)
    values = factor * run.values
    if values[0] == values[-1]:
        raise ValueError("plot_trials: all trials have the same value")
    axes = _axes(axes, 8, 4)
    axes.hist(values, bins=80, color=SKY, label="trials")
    low, high = (factor * end for end in (run.symmetric.low, run.symmetric.high))
    axes.axvspan(low, high, color=GREEN, alpha=0.15, linewidth=0, zorder=0,
                 label=f"{100 * run.coverage:.4g} % of them, {low:.3g} to {high:.3g} {unit}".rstrip())
    axes.axvline(factor * run.mean, color=BLUE, linewidth=2, label=f"mean, {factor * run.mean:.3g} {unit}".rstrip())
    for (value, name), colour, line in zip(marks, (VERMILION, BLACK, PURPLE, ORANGE), ("--", "-.", ":", "-")):
        axes.axvline(factor * value, color=colour, linestyle=line, linewidth=2,
                     label=f"{name}, {factor * value:.3g} {unit}".rstrip())
    ends = [*values[[0, -1]], *(factor * value for value, _ in marks)]
    margin = 0.02 * (max(ends) - min(ends))
    axes.set_xlim(min(ends) - margin, max(ends) + margin)
    name = run.output.replace("_", " ")
    axes.set_xlabel(f"{name} in {unit}" if unit else name)
    axes.set_ylabel("trials")
    axes.set_title(f"{len(values):,} trials" + (", stopped early" if run.stopped else ""), loc="left")
    _legend(axes)
    return axes


def plot_sensitivity(formula, axes=None, **inputs):
    """Draw how far the result of a formula moves when one input goes from its low to its high value, the others typical.

    Parameters
    ----------
    formula : Formula
        Of ``tauten.formulas``.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.
    inputs : number, text, Band, or three of them
        One value; or low, typical and high. Inputs with one value are held and not drawn.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    Error
        If a value lies outside the domain of the formula.
    ValueError
        If no input has a low and a high value.

    Examples
    --------
    >>> import tauten.plots
    >>> friction = tauten.thread_condition("oiled").thread_friction
    >>> axes = tauten.plots.plot_sensitivity(tauten.nut_factor, diameter="16mm", pitch="2mm", pitch_diameter="14.7mm",
    ...                                      thread_friction=friction, bearing_friction=friction,
    ...                                      bearing_diameter=("19mm", "20mm", "21mm"))  # doctest: +SKIP
    """
    values = {name: (value,) if isinstance(value, str) or not hasattr(value, "__iter__") else tuple(value)
              for name, value in inputs.items()}
    nominal = {name: value[len(value) // 2] for name, value in values.items()}
    factor, unit = _shop(formula.output.unit)
    middle = factor * formula(**nominal)
    bars = [(arg, [factor * formula(**{**nominal, arg.name: end}) for end in values[arg.name][::2]])
            for arg in formula.inputs if len(values.get(arg.name, ())) == 3]
    if not bars:
        raise ValueError("plot_sensitivity: give at least one input as (low, typical, high)")
    bars.sort(key=lambda bar: -abs(bar[1][1] - bar[1][0]))
    axes = _axes(axes, 8, 1.6 + 0.6 * len(bars))
    for place, (arg, ends) in enumerate(bars):
        for end, value, colour, hatch in zip(ends, values[arg.name][::2], (ORANGE, BLUE), ("//", "")):
            axes.barh(place, end - middle, left=middle, height=0.6, color=colour, hatch=hatch, edgecolor="white",
                      linewidth=0, label="" if place else ("input low" if colour == ORANGE else "input high"))
            right = end >= middle
            axes.annotate(_text(arg, value), (end, place), (4 if right else -4, 0), textcoords="offset points",
                          ha="left" if right else "right", va="center", fontsize=9)
    axes.axvline(middle, color=BLACK, linewidth=1.2)
    ends = [end for _, both in bars for end in both]
    room = 0.3 * max(max(ends) - middle, middle - min(ends))
    axes.set_xlim(min(ends) - room, max(ends) + room)
    axes.set_ylim(len(bars) - 0.5, -0.5)
    axes.set_yticks(range(len(bars)), [arg.name.replace("_", " ") for arg, _ in bars])
    name = formula.output.name.replace("_", " ")
    axes.set_xlabel(f"{name} in {unit}" if unit else name)
    axes.set_title(f"All typical: {middle:.4g} {unit}".rstrip(), loc="left")
    _legend(axes)
    return axes


def _text(arg, value):
    return arg.text(arg.read(value) if isinstance(value, str) else float(value)).replace("N.m", "N·m")


def plot_nut_factor(thread, bearing_diameter, conditions=("moly-paste", "oiled", "dry"), axes=None):
    """Draw the nut factor against friction, with the range of friction of some conditions below.

    Parameters
    ----------
    thread : text or Thread
        Designation.
    bearing_diameter : length in m
        Effective diameter of the bearing face.
    conditions : list of text
        Names of ``tauten.conditions``.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    Error
        For an unknown thread or condition.

    Examples
    --------
    >>> import tauten.plots
    >>> axes = tauten.plots.plot_nut_factor("M16", "20mm")  # doctest: +SKIP
    """
    import tauten
    bolt = tauten.thread(thread)
    known = [tauten.thread_condition(key) for key in conditions]
    most = max([0.3] + [condition.thread_friction.high for condition in known]) * 1.05
    friction = [most * place / 60 for place in range(61)]

    def factor(thread_friction, bearing_friction):
        # The kernel: no warning where the curve runs beyond the range of validity.
        return tauten.nut_factor.ufunc(bolt.diameter, bolt.pitch, bolt.pitch_diameter, thread_friction, bearing_friction,
                                       _si(bearing_diameter))

    axes = _axes(axes, 8, 4.2 + 0.3 * len(known))
    curve = factor(friction, friction)
    axes.plot(friction, curve, color=BLUE, linewidth=2.5, label="same friction in thread and under the head")
    axes.plot(friction, factor(friction, 0), color=GREEN, linewidth=2, linestyle="--",
              label="no friction under the head")
    axes.axhline(factor(0, 0), color=PURPLE, linewidth=2, linestyle=":", label="no friction at all: pitch alone")
    step = max(curve) / 10
    for place, condition in enumerate(known):
        low, nominal, high = condition.thread_friction
        at = -(place + 0.7) * step
        axes.plot([low, high], [at, at], color=ORANGE, linewidth=8, solid_capstyle="butt",
                  label="" if place else "friction of a condition, low to high")
        axes.plot([nominal], [at], "o", color=BLACK, markersize=6, linestyle="none", label="" if place else "typical")
        axes.annotate(condition.key, (high, at), (6, 0), textcoords="offset points", va="center", fontsize=9)
    axes.axhline(0, color=BLACK, linewidth=0.8)
    axes.set_xlim(0, 1.12 * most)  # room for the names
    axes.set_ylim(-(len(known) + 0.2) * step, 1.05 * max(curve))
    axes.set_yticks([tick for tick in axes.get_yticks() if 0 <= tick <= max(curve)])
    axes.set_xlabel("coefficient of friction (no unit)")
    axes.set_ylabel("nut factor K (no unit)")
    axes.set_title(f"{bolt.designation}, bearing diameter {_core.quantity_text(_si(bearing_diameter), 'm')}", loc="left")
    axes.legend(loc="upper left", frameon=False)
    return axes


def _si(value):
    return _core.read_quantity(value) if isinstance(value, str) else float(value)


def plot_torque_share(rows, axes=None):
    """Draw which part of the torque stretches the bolt, and which is friction in the thread and under the head.

    Parameters
    ----------
    rows : list of (text, Clamp)
        What each answer is of, and the answer of `clamp` or `torque_for`; its first candidate is drawn.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    ValueError
        If there is no row.

    Examples
    --------
    >>> import tauten.plots
    >>> joint = dict(thread="M16", property_class="8.8", torque="130N.m")
    >>> rows = [(condition, tauten.clamp(condition=condition, **joint)) for condition in ("dry", "oiled")]
    >>> axes = tauten.plots.plot_torque_share(rows)  # doctest: +SKIP
    """
    rows = _pint.plain(rows)
    import tauten
    rows = [(name, answer.candidates[0]) for name, answer in rows]
    if not rows:
        raise ValueError("plot_torque_share: no row to draw")
    axes = _axes(axes, 8, 1.6 + 0.6 * len(rows))
    parts = (("stretches the bolt (pitch)", GREEN, ""), ("friction in the thread", SKY, "//"),
             ("friction under the head", ORANGE, ""))
    for place, (_, bolt) in enumerate(rows):
        step = next(step for step in bolt.steps if step.formula == "preload_from_torque_exact")
        shape, load, torque = step.inputs[1:], step.value, step.inputs[0]
        pitch, pitch_diameter, thread_friction, bearing_friction, bearing_diameter = shape
        useful = tauten.thread_torque_exact.ufunc(load, pitch, pitch_diameter, 0.0) / torque  # without friction
        thread = tauten.thread_torque_exact.ufunc(load, pitch, pitch_diameter, thread_friction) / torque
        face = tauten.bearing_torque.ufunc(load, bearing_friction, bearing_diameter) / torque
        left = 0.0
        shares = (useful, thread - useful, face)
        for (words, colour, hatch), share, text in zip(parts, shares, _whole([100 * share for share in shares])):
            axes.barh(place, 100 * share, left=left, height=0.62, color=colour, hatch=hatch, edgecolor="white",
                      linewidth=0, label="" if place else words)
            axes.annotate(text, (left + 50 * share, place), ha="center", va="center", fontsize=10,
                          bbox=_PLATE)
            left += 100 * share
    axes.set_yticks(range(len(rows)), [name for name, _ in rows])
    axes.set_ylim(len(rows) - 0.5, -0.5)
    axes.set_xlim(0, 100)
    axes.set_xlabel("share of the torque in %")
    axes.set_title("Where the torque goes", loc="left")
    _legend(axes)
    return axes


def _line(points):
    return [1e3 * point.extension for point in points], [point.load / 1e3 for point in points]


def _load_of(turn):
    if turn.may_neck:
        raise Error("turn is one at whose end the bolt may break, so that there is no load to draw; turn it less", "turn")


def plot_load_extension(turn, axes=None):
    """Draw the load-extension diagram of a preloaded joint: bolt, clamped parts, and what a working load does.

    Extension is what springs back: a bolt turned past yield has stretched for good beside it.

    Parameters
    ----------
    turn : Turn
        Answer of `turn`; with ``working_load`` the shift of both loads is shown.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Examples
    --------
    >>> import tauten.plots
    >>> foot = tauten.turn(thread="M16", property_class="8.8", grip="55mm", working_load="15kN")
    >>> axes = tauten.plots.plot_load_extension(foot)  # doctest: +SKIP
    """
    turn = _pint.plain(turn)
    _load_of(turn)
    axes = _axes(axes, 8, 4.6)
    diagram = turn.diagram
    at, preload = 1e3 * diagram.bolt[1].extension, diagram.bolt[1].load / 1e3
    axes.plot(*_line(diagram.bolt), color=BLUE, linewidth=2, label="bolt")
    axes.plot(*_line(diagram.parts[1:]), color=VERMILION, linewidth=2, linestyle="--", label="clamped parts")
    axes.plot([at], [preload], "o", color=BLACK, markersize=7, linestyle="none", label=f"preload {preload:.3g} kN")
    if diagram.working_load:
        x = 1e3 * diagram.bolt[-1].extension
        low, high = diagram.clamp_load / 1e3, diagram.bolt_load / 1e3
        axes.plot([x, x], [low, high], color=ORANGE, linewidth=3, linestyle=":",
                  label=f"working load {diagram.working_load / 1e3:.3g} kN")
        axes.plot([x], [high], "^", color=BLUE, markersize=8, linestyle="none", label=f"on the bolt {high:.3g} kN")
        axes.plot([x], [low], "v", color=VERMILION, markersize=8, linestyle="none",
                  label=f"between the parts {low:.3g} kN")
    axes.set_xlim(0)
    axes.set_ylim(0)
    axes.set_xlabel("extension in mm")
    axes.set_ylabel("load in kN")
    axes.set_title(turn.name or "Load and extension", loc="left")
    _legend(axes)
    return axes


# Zones differ in lightness alone, so that they need no colour.
_ZONES = {"elastic": ("elastic", "#F7F7F7"), "yielding": ("yielding from the surface inward", "#E9E9E9"),
          "past_yield": ("past yield", "#DADADA")}


def plot_curve(curve, turn=None, axes=None):
    """Draw torque and preload against the angle from snug, with the band of friction, the zones and the yield point.

    Parameters
    ----------
    curve : TighteningCurve
        Answer of `curve`.
    turn : Turn, optional
        A tightening of the same joint, marked with its angle and the band of its load.
    axes : two matplotlib Axes, optional
        Where to draw preload and torque; a new figure if not given.

    Returns
    -------
    two matplotlib Axes

    Examples
    --------
    >>> import tauten.plots
    >>> drawn = tauten.curve(thread="M16", property_class="8.8", condition="oiled", grip="55mm", snug_torque="60N.m")
    >>> above, below = tauten.plots.plot_curve(drawn)  # doctest: +SKIP
    """
    curve, turn = _pint.plain(curve), _pint.plain(turn)
    import numpy as np
    if axes is None:
        import matplotlib.pyplot as plt
        axes = plt.subplots(2, 1, sharex=True, figsize=(9, 6.4), constrained_layout=True)[1]
    above, below = axes
    lines = [{name: column * scale for name, column, scale in (
        ("angle", points["angle"], 180 / math.pi), ("preload", points["preload"], 1e-3), ("torque", points["torque"], 1))}
             for points in (line.columns() for line in (curve.low_friction, curve.nominal, curve.high_friction))]
    low, nominal, high = lines
    end = max(line["angle"][-1] for line in lines)
    both = np.linspace(0, min(low["angle"][-1], high["angle"][-1]), 400)
    for ax, what, unit in ((_axes(above, 0, 0), "preload", "kN"), (_axes(below, 0, 0), "torque", "N·m")):
        for zone in curve.zones:
            words, colour = _ZONES[zone.name]
            ax.axvspan(math.degrees(zone.start), math.degrees(zone.end), color=colour, linewidth=0, label=words)
        ax.fill_between(both, np.interp(both, low["angle"], low[what]), np.interp(both, high["angle"], high[what]),
                        color=SKY, alpha=0.6, linewidth=0, label="between low and high friction")
        ax.plot(nominal["angle"], nominal[what], color=BLUE, linewidth=2, label="typical friction")
        for point, there, shape, words in (
                (curve.nominal.first_yield, curve.nominal.has_first_yield, "s", "first yield"),
                (curve.nominal.yield_point, curve.nominal.has_yield_point, "D", "yield point")):
            if there:
                value = getattr(point, what) * (1e-3 if what == "preload" else 1)
                ax.plot([math.degrees(point.angle)], [value], shape, color=BLACK, markersize=7, markerfacecolor="none",
                        markeredgewidth=1.8, linestyle="none", label=words)
        if turn is not None and not turn.may_neck:
            band = [x * (1e-3 if what == "preload" else 1) for x in (turn.clamp_load if what == "preload" else turn.torque)]
            at = math.degrees(turn.angle)
            ax.errorbar([at], [band[1]], [[band[1] - band[0]], [band[2] - band[1]]], fmt="o", color=PURPLE,
                        markersize=7, capsize=5, linewidth=2, label=f"turned by {at:.3g}°: typical, bar from low to high")
        ax.set_xlim(0, end)
        ax.set_ylim(0)
        ax.set_ylabel(f"{what} in {unit}")
    below.set_xlabel("angle from snug in degrees")
    above.set_title(curve.name or f"{curve.joint.thread}, class {curve.joint.property_class}", loc="left")
    _legend(above)
    return axes


def plot_methods(turn, axes=None):
    """Draw the preload that each way of tightening would leave, aimed at the same typical preload.

    No bolt carries more than the load at which it breaks; where a way of tightening would go beyond the minimum of the class,
    its bar ends there with a mark.

    Parameters
    ----------
    turn : Turn
        Answer of `turn`; its own band is shown too.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Examples
    --------
    >>> import tauten.plots
    >>> foot = tauten.turn(thread="M16", property_class="8.8", grip="55mm")
    >>> axes = tauten.plots.plot_methods(foot)  # doctest: +SKIP
    """
    turn = _pint.plain(turn)
    _load_of(turn)
    methods = sorted(turn.methods, key=lambda method: method.tightening_factor)
    axes = _axes(axes, 10, 1.6 + 0.42 * (len(methods) + 1))
    own = [load / 1e3 for load in turn.clamp_load]
    strength, cut = turn.joint.tensile_load / 1e3, False
    for place, method in enumerate(methods, 1):
        low, nominal, high = (load / 1e3 for load in method.clamp_load)
        if high > strength:
            axes.plot([strength], [place], "x", color=VERMILION, markersize=8, markeredgewidth=2, linestyle="none",
                      label="" if cut else "a bolt that just meets its class may break")
            high, cut = strength, True
        axes.plot([min(low, high), high], [place, place], color=SKY, linewidth=9, solid_capstyle="butt",
                  label="minimum to maximum preload" if place == 1 else "")
    axes.plot([own[0], own[2]], [0, 0], color=GREEN, linewidth=9, solid_capstyle="butt", label="this tightening")
    axes.axvline(own[1], color=BLACK, linewidth=1.5, label=f"typical preload {own[1]:.3g} kN")
    axes.axvline(turn.joint.yield_preload / 1e3, color=VERMILION, linewidth=1.5, linestyle="--",
                 label=f"yield while turning {turn.joint.yield_preload / 1e3:.3g} kN")
    axes.set_yticks(range(len(methods) + 1), [f"turned by {math.degrees(turn.angle):.3g}°"] +
                    [f"{m.title}  ({m.tightening_factor:.2g})" for m in methods])
    axes.set_ylim(len(methods) + 0.7, -0.7)
    axes.set_xlim(0)
    axes.set_xlabel("preload in kN")
    axes.set_title("Preload by tightening method (tightening factor)", loc="left")
    _legend(axes)
    return axes


def plot_bolt_loads(group, axes=None):
    """Draw the bolts of a group where they are, with their loads: shear as arrows, tension as discs.

    Parameters
    ----------
    group : BoltGroup
        Answer of `group`.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Examples
    --------
    >>> import tauten.plots
    >>> bracket = tauten.group("rectangle:150mm:120mm", load=(0, "-16kN"), at=("425mm", 0))
    >>> axes = tauten.plots.plot_bolt_loads(bracket)  # doctest: +SKIP
    """
    group = _pint.plain(group)
    axes = _axes(axes, 7, 6)
    places = [(1e3 * x, 1e3 * y) for x, y in group.positions]
    middle = [sum(one) / len(places) for one in zip(*places)]
    size = max(math.dist(place, middle) for place in places)
    if group.tension:
        largest = max(max(group.tension), 1e-9)
        pulled = [max(load, 0) / largest for load in group.tension]
        axes.scatter(*zip(*places), s=[30 + 1500 * share for share in pulled], color=SKY, label="tension, by area")
    if group.forces:
        longest = max(math.hypot(*force) for force in group.forces)
        for number, ((x, y), force) in enumerate(zip(places, group.forces), 1):
            across, up = (0.55 * size * part / longest for part in force)
            worst = number == group.worst
            axes.annotate("", (x + across, y + up), (x, y), arrowprops={
                "arrowstyle": "-|>", "linewidth": 3 if worst else 1.8, "color": VERMILION if worst else BLUE})
        axes.plot([], [], color=BLUE, linewidth=2, label="shear, by length")
    axes.plot(*zip(*places), "o", color="white", markeredgecolor=BLACK, markersize=6, linestyle="none")
    axes.plot(*places[group.worst - 1], "o", color=VERMILION, markeredgecolor=BLACK, markersize=9, linestyle="none",
              label=f"bolt {group.worst} carries most, {group.largest / 1e3:.3g} kN")
    if len(places) <= 16:
        for number, ((x, y), load) in enumerate(zip(places, group.loads), 1):
            out = (x - middle[0], y - middle[1])
            far = math.hypot(*out) or 1
            axes.annotate(f"{number}: {load / 1e3:.3g} kN", (x, y), (46 * out[0] / far, 30 * out[1] / far),
                          textcoords="offset points", ha="center", va="center", fontsize=9, bbox=_PLATE)
    axes.set_aspect("equal")
    axes.set_xlim(middle[0] - 2.4 * size, middle[0] + 2.4 * size)
    axes.set_ylim(middle[1] - 1.9 * size, middle[1] + 1.9 * size)
    axes.set_xlabel("x in mm")
    axes.set_ylabel("y in mm")
    axes.set_title(f"Bolt loads, model {group.model.replace('_', ' ')}", loc="left")
    _legend(axes)
    return axes


def plot_tightening(sequence, axes=None):
    """Draw the loads of all bolts after each step of the tightening, pass by pass.

    Parameters
    ----------
    sequence : TighteningSequence
        Answer of `sequence`, asked with interaction, gasket or readings.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    Error
        If the answer was asked without elastic interaction and so has no loads.

    Examples
    --------
    >>> import tauten.plots
    >>> flange = tauten.sequence("circle:8:180mm", interaction=0.2, load="40kN")
    >>> axes = tauten.plots.plot_tightening(flange)  # doctest: +SKIP
    """
    sequence = _pint.plain(sequence)
    if not sequence.history:
        raise Error("sequence has no loads; ask it with interaction, gasket or readings", "sequence")
    axes = _axes(axes, 9, 4.5)
    largest = max(map(max, sequence.history))
    scale, unit = (1e-3, "kN") if largest > 10 else (100, "% of the load")
    steps = range(len(sequence.history) + 1)
    rows = [[0.0] * len(sequence.order), *sequence.history]
    last = sequence.history[-1]
    low, high = last.index(min(last)), last.index(max(last))
    for bolt in range(len(sequence.order)):
        colour, width, style, words = BLUE, 0.9, "-", "" if bolt else "each bolt"
        if bolt == high:
            colour, width, style, words = GREEN, 2.2, "--", f"bolt {bolt + 1} ends highest, {last[bolt] * scale:.3g} {unit}"
        if bolt == low:
            colour, width, style, words = VERMILION, 2.2, "-", f"bolt {bolt + 1} ends lowest, {last[bolt] * scale:.3g} {unit}"
        axes.plot(steps, [row[bolt] * scale for row in rows], color=colour, linewidth=width, linestyle=style, label=words)
    for number in range(1, len(sequence.passes)):
        axes.axvline(number * len(sequence.order), color=BLACK, linewidth=0.8, linestyle=":",
                     label="end of a pass" if number == 1 else "")
    axes.set_xlim(0, len(sequence.history))
    axes.set_ylim(0)
    axes.set_xlabel("bolts turned so far")
    axes.set_ylabel(f"bolt load in {unit}")
    axes.set_title(f"{len(sequence.order)} bolts in {len(sequence.passes)} passes", loc="left")
    _legend(axes)
    return axes


_LINES = ((BLUE, "-"), (VERMILION, "--"), (GREEN, "-."), (PURPLE, ":"), (ORANGE, (0, (6, 2))), (BLACK, (0, (6, 1, 1, 1))),
          (SKY, (0, (1, 1))))


def plot_torque_chart(condition, classes=("8.8", "10.9", "12.9"), threads=None, axes=None):
    """Draw the suggested torque of threads for one condition, a mark for each class; torques on a scale of powers of ten.

    The figures stand beside the names of the threads, in the order of the classes.

    Parameters
    ----------
    condition : text
        A name of ``tauten.conditions``.
    classes : list of text
        Property classes.
    threads : list of text, optional
        Designations; those of ISO 262 from M5 to M36 if not given.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    Error
        For an unknown condition, class or thread.

    Examples
    --------
    >>> import tauten.plots
    >>> axes = tauten.plots.plot_torque_chart("oiled", threads=["M8", "M10", "M12", "M16", "M20"])  # doctest: +SKIP
    """
    import tauten
    from tauten.exercises import everyday_threads
    names = list(threads) if threads is not None else [thread.designation for thread in everyday_threads()]
    axes = _axes(axes, 8, 1.8 + 0.28 * len(names))
    rows_of = [[] for _ in names]
    for number, mark in enumerate(classes):
        torques = [tauten.torque_for(thread=name, property_class=mark, condition=condition).candidates[0].torque for name in names]
        colour, shape = _LINES[number % len(_LINES)][0], "osD^vPX"[number % 7]
        axes.plot(torques, range(len(names)), shape, color=colour, markersize=6, linestyle="none", label=f"class {mark}")
        for place, torque in enumerate(torques):
            rows_of[place].append(_core.settable_text(torque))
    axes.set_xscale("log")
    axes.set_yticks(range(len(names)), [f"{name}:  {' / '.join(figures)}" for name, figures in zip(names, rows_of)])
    axes.set_ylim(len(names) - 0.5, -0.5)
    axes.grid(axis="y", color="#DDDDDD", linewidth=0.6)
    axes.set_xlabel("suggested torque in N·m; a maker's torque takes precedence")
    axes.set_title(f"Torques, {condition}", loc="left")
    _legend(axes)
    return axes


def plot_settings(torque, wrench_length, lengths=(0.05, 0.1, 0.15, 0.2), axes=None):
    """Draw the setting of a wrench with an offset extension against its angle, a line for each length of the extension.

    Parameters
    ----------
    torque : torque in N.m
        Wanted at the fastener.
    wrench_length : length in m
        From the drive to the middle of the hand.
    lengths : list of lengths in m
        Of the extension.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    Error
        Where the rule of the lever has no answer.

    Examples
    --------
    >>> import tauten.plots
    >>> axes = tauten.plots.plot_settings("130N.m", "400mm")  # doctest: +SKIP
    """
    import tauten
    torque, wrench_length = _si(torque), _si(wrench_length)
    angles = range(0, 181, 5)
    axes = _axes(axes, 8, 4.6)
    for (colour, line), length in zip(_LINES, map(_si, lengths)):
        settings = [tauten.wrench_setting(torque, wrench_length, length, math.radians(angle)) for angle in angles]
        axes.plot(angles, settings, color=colour, linestyle=line, linewidth=2, label=f"extension {1e3 * length:.4g} mm")
    axes.axhline(torque, color=BLACK, linewidth=1, label=f"at the fastener, {torque:.4g} N·m")
    axes.set_xlim(0, 180)
    axes.set_ylim(0)
    axes.set_xticks(range(0, 181, 30))
    axes.set_xlabel("angle of the extension in degrees: 0 in line, 90 square, 180 back along the handle")
    axes.set_ylabel("setting of the wrench in N·m")
    axes.set_title(f"Wrench of {1e3 * wrench_length:.4g} mm", loc="left")
    _legend(axes)
    return axes


def plot_load_by_friction(thread, property_class, frictions=(0.08, 0.10, 0.12, 0.14, 0.16, 0.20), axes=None):
    """Draw the clamp load against the torque for one coefficient of friction after another, beside the proof load.

    A line ends where a bolt that just meets its class yields.

    Parameters
    ----------
    thread : text
        Designation.
    property_class : text
        Such as "8.8".
    frictions : list of numbers
        Of thread and face alike.
    axes : matplotlib Axes, optional
        Where to draw; a new figure if not given.

    Returns
    -------
    matplotlib Axes

    Raises
    ------
    Error
        For an unknown thread or class.

    Examples
    --------
    >>> import tauten.plots
    >>> axes = tauten.plots.plot_load_by_friction("M16", "8.8")  # doctest: +SKIP
    """
    import tauten
    axes = _axes(axes, 8, 4.6)
    for (colour, line), friction in zip(_LINES, frictions):
        known = dict(thread=thread, property_class=property_class, thread_friction=friction, bearing_friction=friction,
                     wrench_accuracy=0)
        # Load and stress both follow the torque in proportion, so that one answer gives the end of the line.
        bolt = tauten.torque_for(share=0.5, **known).candidates[0]
        bolt = tauten.clamp(torque=bolt.target_torque, **known).candidates[0]
        end = 1 / bolt.yield_utilisation.nominal
        axes.plot([0, end * bolt.torque], [0, end * bolt.worst_case.nominal / 1e3], color=colour, linestyle=line, linewidth=2,
                  label=f"friction {friction:.2f}")
    axes.axhline(bolt.proof_load / 1e3, color=BLACK, linewidth=1, label=f"proof load {bolt.proof_load / 1e3:.3g} kN")
    axes.set_xlim(0)
    axes.set_ylim(0)
    axes.set_xlabel("torque in N·m")
    axes.set_ylabel("clamp load of one bolt in kN")
    axes.set_title(f"{bolt.thread}, class {bolt.property_class}: each line ends where the bolt yields", loc="left")
    _legend(axes)
    return axes


__all__ = ["plot_bands", "plot_bolt_loads", "plot_budget", "plot_chances", "plot_clamp_band", "plot_curve",
           "plot_load_by_friction",
           "plot_load_extension", "plot_methods", "plot_nut_factor", "plot_scatter", "plot_sensitivity", "plot_settings",
           "plot_tightening", "plot_torque_chart", "plot_torque_share", "plot_trials"]
