"""Pictures of answers. Matplotlib is needed only when one is drawn.

Colours are those of Okabe and Ito, which people with any kind of colour blindness tell apart; lines and marks differ too.
"""
import math

BLACK, ORANGE, SKY, GREEN, BLUE, VERMILION, PURPLE = ("#000000", "#E69F00", "#56B4E9", "#009E73", "#0072B2", "#D55E00",
                                                      "#CC79A7")

_ENDS = (("free", "comes free", GREEN, "-"), ("shear", "shears", VERMILION, "--"), ("round", "corners go", ORANGE, "-."),
         ("tool", "tool fails", PURPLE, ":"), ("not_moving", "does not move", BLUE, (0, (6, 1, 1, 1, 1, 1))))


def _axes(axes, width, height):
    import matplotlib.pyplot as plt
    if axes is None:
        axes = plt.subplots(figsize=(width, height), constrained_layout=True)[1]
    for edge in ("top", "right"):
        axes.spines[edge].set_visible(False)
    return axes


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
    axes = _axes(axes, 8, 4.6)
    torques = [point.limit for point in free.curve]
    for name, words, colour, line in _ENDS:
        axes.plot(torques, [100 * getattr(point, name) for point in free.curve], color=colour, linestyle=line,
                  linewidth=2, label=words)
    axes.axvspan(free.breakaway.low, min(free.breakaway.high, torques[-1]), color=SKY, alpha=0.2, linewidth=0,
                 label="comes free: nine of ten cases")
    axes.axvline(free.stop_at, color=BLACK, linewidth=1.5, label=f"stop at {free.stop_at:.0f} N·m")
    if abs(free.chances.limit - free.stop_at) > 1e-9:
        axes.axvline(free.chances.limit, color=BLACK, linewidth=1, linestyle=":",
                     label=f"limit {free.chances.limit:.0f} N·m")
    axes.set_xlim(0, torques[-1])
    axes.set_ylim(-1.5, 101.5)  # so that a line at either end is seen
    axes.set_xlabel("torque that is not exceeded in N·m")
    axes.set_ylabel("chance in %")
    axes.set_title("How it ends (an estimate)", loc="left")
    axes.legend(loc="upper left", bbox_to_anchor=(1.01, 1), borderaxespad=0, frameon=False)
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
    bolts = clamp.candidates[:most]
    axes = _axes(axes, 8, 1.9 + 0.75 * len(bolts))
    loads = [load for b in bolts for load in (b.clamp_load.high, b.proof_load) if math.isfinite(load)]
    reach = 1.15 * max(loads) / 1e3
    for place, bolt in enumerate(bolts):
        low, usual, high = (load / 1e3 for load in bolt.clamp_load)
        axes.plot([low, high], [place, place], color=SKY, linewidth=10, solid_capstyle="butt",
                  label="" if place else "clamp load, low to high")
        axes.plot([usual], [place], "o", color=BLUE, markersize=8, markeredgecolor=BLACK, linestyle="none",
                  label="" if place else "usual")
        axes.vlines(bolt.proof_load / 1e3, place - 0.2, place + 0.2, color=VERMILION, linewidth=3,
                    label="" if place else "proof load")
        # Towards the middle of the picture, so that no text runs over its edge.
        side, at = ("left", low) if low + high < reach else ("right", high)
        axes.annotate(f"{low:.3g} to {high:.3g}, usual {usual:.3g} kN", (at, place), (0, -15), textcoords="offset points",
                      ha=side, va="top", fontsize=9)
    axes.set_yticks(range(len(bolts)),
                    [f"{b.thread} {b.head.split(',')[0]}, {b.property_class}{' (assumed)' if b.class_assumed else ''}\n"
                     f"{b.torque:.3g} N·m: {b.verdict}" for b in bolts])
    axes.set_ylim(len(bolts) - 0.35, -0.5)
    axes.set_xlim(0, reach)
    axes.set_xlabel("clamp load of one bolt in kN")
    axes.set_title(clamp.name or "Clamp load", loc="left")
    axes.legend(loc="upper left", bbox_to_anchor=(1.01, 1), borderaxespad=0, frameon=False)
    return axes


__all__ = ["plot_chances", "plot_clamp_band"]
