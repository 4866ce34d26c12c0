"""Answers as tables for notebooks."""
from html import escape

from tauten import _core

# What limits the torque of a stuck fastener.
_STOP = {"shear": "accepted chance of shearing", "corners": "accepted chance of damage to the drive",
         "tool": "tested strength of the tool", "square": "tested strength of the square drive",
         "sister": "a fastener of the same flange failed there", "balance": "more torque breaks more than it frees",
         "gain": "more torque frees next to nothing", "spins": "the tool spins"}
_HIDDEN = {"steps", "given", "notices"}


def _text(si, unit):
    return "none" if si != si else _core.quantity_text(si, unit)


def _percent(share):
    return f"{100 * share:.3g} %"


def _chance(share):
    return _percent(share) if share >= 1e-3 else "below 0.1 %"  # the typical number of trials does not resolve less


def _wide(inner):
    """What may be wider than the page scrolls by itself."""
    return f'<div style="overflow-x:auto">{inner}</div>'


def _table(caption, columns, rows):
    rows = [[str(cell) for cell in row] for row in rows]
    # On a narrow page a column stays wide enough for figures with units, and for a few words of a sentence.
    widths = [min(34, max(map(len, cells))) * 0.6 for cells in zip(columns, *rows)]
    head = "".join(f'<th style="text-align:left;min-width:{width:.1f}em">{escape(column)}</th>'
                   for column, width in zip(columns, widths))
    body = "".join("<tr>" + "".join(f'<td style="text-align:left">{escape(cell)}</td>' for cell in row) + "</tr>"
                   for row in rows)
    top = f'<caption style="text-align:left">{escape(caption)}</caption>' if caption else ""
    return _wide(f"<table>{top}<thead><tr>{head}</tr></thead><tbody>{body}</tbody></table>")


def _list(notices):
    return "<ul>" + "".join(f"<li>{escape(notice.text)}{' (Estimate.)' if notice.is_estimate else ''}</li>" for notice in notices) + "</ul>" if notices else ""


def record(self):
    """Name and value of each member."""
    return _table("", ("", type(self).__name__), [row for row in self._rows() if row[0] not in _HIDDEN])


def clamp(self):
    """The answer in one line, one row for each fastener that it can be, then the notices."""
    first = self.candidates[0]
    columns = ("Thread", "Head or nut", "Class", "Torque", "Clamp load", "Chance of yield", "Verdict", "Suggested torque")
    rows = [(c.thread, c.head, c.property_class + (" (assumed)" if c.class_assumed else ""), _text(c.torque, "N.m"),
             c.clamp_load if c.verdict != "breaks" else "none", _core.chance_text(c.chance_of_yield), c.verdict,
             _text(c.suggested_torque, "N.m")) for c in self.candidates]
    cases = [(case.condition, case.clamp_load if case.verdict != "breaks" else "none", case.verdict,
              _text(case.suggested_torque, "N.m")) for case in first.by_condition]
    said = {notice.text: notice for notice in (*self.candidates[0].notices, *self.notices)}
    worst = f" Worst case of friction and wrench: {first.worst_case}." if first.verdict != "breaks" else ""
    return (f"<p>{escape(first.summary)}</p><p>{escape(first.meaning + worst)}</p>" + _table(self.name, columns, rows) +
            (_table("If the threads are", ("Condition", "Clamp load", "Verdict", "Suggested torque"), cases)
             if cases else "") + _list(said.values()))


def end_of_drive(free):
    """How what the tool holds gives way, in the words of the command line."""
    return "recess strips" if any(capacity.part == "recess" for capacity in free.capacities) else "corners round off"


def _use(use):
    """An aid as it is used."""
    if use.aid == "fluid":
        return f"{'thin ' if use.thin_fluid else ''}fluid {use.soak_hours:g} h"
    if use.aid == "heat":
        return f"heat it by {use.nut_rise:.3g} K (to about {20 + use.nut_rise:.0f} °C)"
    return f"chill the bolt by {use.bolt_rise:.3g} K" if use.aid == "cold" else use.aid.replace("_", " ")


def _plan_row(step, mark):
    """A line of the plan. What is cut needs no torque and has no chances."""
    cut = step.aids and step.aids[-1].aid == "cut"
    c = step.chances
    figures = ("",) * 5 if cut else (_text(step.stop_at, "N.m"), *map(_chance, (c.free, c.shear, c.round, c.tool)))
    time = f"{step.minutes:.0f} min" if step.minutes < 90 else f"{step.minutes / 60:.0f} h"
    return (mark, ", then ".join(map(_use, step.aids)) or "just try", *figures, time, step.why)


def free(self):
    """How it may end, the torques of each end, and the plan."""
    c = self.chances
    ends = [("comes free", c.free, self.breakaway), ("shears", c.shear, self.shear),
            (end_of_drive(self), c.round, self.round), ("tool fails", c.tool, self.tool), ("does not move", c.not_moving, "")]
    plan = [_plan_row(step, "next" if place == self.next else "") for place, step in enumerate(self.steps)]
    return (_table(f"Stop at {_text(self.stop_at, 'N.m')} ({_STOP[self.stop_limit]}). Up to {_text(c.limit, 'N.m')}",
                   ("End", "Chance", "Torque, nine of ten cases"),
                   [(end, _chance(chance), torque) for end, chance, torque in ends]) +
            (_table(f"If it has not moved, then from there up to {_text(c.limit, 'N.m')}",
                    ("Not moved at", "Free", "Shears", end_of_drive(self).capitalize(), "Tool fails", "Does not move"),
                    [(_text(one.held, "N.m"), *map(_chance, (one.chances.free, one.chances.shear, one.chances.round,
                                                             one.chances.tool, one.chances.not_moving)))
                     for one in self.if_held]) if self.if_held else "") +
            _table("What to do", ("", "Aids", "Stop at", "Free", "Shears", end_of_drive(self).capitalize(), "Tool fails", "Time", "Why"), plan) + _list(self.notices))


def turn(self):
    """The turn, the figures it leaves, and the notices."""
    rows = [("Clamp load at snug", self.snug_load), ("Clamp load", self.clamp_load),
            ("Yield utilisation", " to ".join(_percent(x) for x in (self.yield_utilisation.low, self.yield_utilisation.high))),
            ("Torque at the end", self.torque), ("Lasting stretch", self.lasting_stretch),
            ("Left after all losses", self.residual.clamp_load), ("By that torque alone", self.by_torque)]
    if self.tool_twist:
        rows.insert(0, ("To be read at the handle", _text(self.handle_angle, "rad")))
    return _table(self.name, ("", f"{_text(self.angle, 'rad')} from snug at {_text(self.snug_torque, 'N.m')}: "
                                  f"{self.verdict}"), rows) + _list(self.notices)


def _marks(lines):
    rows = [(title, friction, _text(point.angle, "rad"), _text(point.torque, "N.m"), _text(point.preload, "N"),
             _percent(point.plastic_strain))
            for title, there, get in (("first yield", lambda c: c.has_first_yield, lambda c: c.first_yield),
                                      ("yield point", lambda c: c.has_yield_point, lambda c: c.yield_point),
                                      ("end", lambda c: True, lambda c: c.points[-1]))
            for friction, line in lines if there(line) for point in [get(line)]]
    return _table("", ("Mark", "Friction", "Angle", "Torque", "Preload", "Plastic strain"), rows)


def one_curve(self):
    """The marks of the curve."""
    return _marks([("", self)])


def curve(self):
    """The marks of the three curves, and the notices."""
    return _marks([("low", self.low_friction), ("nominal", self.nominal), ("high", self.high_friction)]) + _list(self.notices)


def _estimate(value, deviation, unit):
    return f"{_text(value, unit)} with standard uncertainty {_text(deviation, unit)}"


def _for_one(line, unit):
    """By how much the result moves for one unit of an input, in the units of a workshop."""
    one = _core.quantity_text(1.0, line.unit).partition(" ")[2]
    return f"{_text(line.sensitivity * _core.read_quantity(f'1{one}'), unit)} for 1 {one}".rstrip()


def budget(self):
    """The result, and what each input brings."""
    rows = [(line.name, _text(line.estimate, line.unit), _core.quantity_text(line.standard_uncertainty, line.unit),
             _for_one(line, self.unit), _text(line.contribution, self.unit), _percent(line.share + 0.0))
            for line in self.contributions]
    return _table(f"{self.output}: {_estimate(self.value, self.standard_uncertainty, self.unit)}",
                  ("Input", "Mean", "Standard uncertainty", "Sensitivity", "Contribution", "Share"), rows)


def monte_carlo(self):
    """Mean, intervals, and how certain they are."""
    covered = _percent(self.coverage)
    interval = [(f"{covered}, {name}", f"{_text(i.low, self.unit)} to {_text(i.high, self.unit)}")
                for name, i in (("symmetric", self.symmetric), ("shortest", self.shortest))]
    rows = [("Mean", _text(self.mean, self.unit)), ("Standard uncertainty", _text(self.standard_uncertainty, self.unit)),
            *interval, ("Trials", self.trials), *([("Of them without a value, left out", self.outside)] if self.outside else []),
            ("Numerical tolerance", _text(self.tolerance, self.unit)),
            ("Certain to it", "stopped" if self.stopped else "yes" if self.converged else "no")]
    return _table("", ("", self.output), rows)


def sobol(self):
    """Both indices of each input."""
    rows = [(i.name, f"{i.first:.3f}", f"{i.first_error:.3f}", f"{i.total:.3f}", f"{i.total_error:.3f}")
            for i in self.inputs]
    return _table(f"Sobol indices of {self.output}", ("Input", "First order", "Error", "Total", "Error"), rows)


def latex(self):
    """How the answer came about, for a page that is printed."""
    return str(self.explain("latex"))


def attach(records):
    """Gives the classes of answers their tables."""
    own = {"Clamp": clamp, "Free": free, "Turn": turn,
           "Curve": one_curve, "Budget": budget,
           "MonteCarlo": monte_carlo, "Sobol": sobol, "TighteningCurve": curve}
    for name, cls in records.items():
        if not hasattr(cls, "page"):
            cls._repr_html_ = own.get(name, record)
        if hasattr(cls, "derivation"):
            cls._repr_latex_ = latex
    records["Derivation"]._repr_html_ = lambda self: str(self.explain("html"))
    records["Derivation"]._repr_latex_ = lambda self: str(self.explain("latex"))
