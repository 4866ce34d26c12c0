"""What bands and answers have beside their members: units, formats, pictures, tables."""
import dataclasses
import html
import importlib

from tauten import _core, _pint

# The function of `tauten.plots` that draws an answer.
_PICTURES = {"Clamp": "plot_clamp_band", "Turn": "plot_load_extension", "TighteningCurve": "plot_curve", "Reach": "plot_budget",
             "Free": "plot_chances", "BoltGroup": "plot_bolt_loads", "TighteningSequence": "plot_tightening",
             "Budget": "plot_budget", "MonteCarlo": "plot_trials"}
# The members of an answer that are the rows of its table; other answers are one row.
_ROWS = {"Clamp": ("candidates",), "Identification": ("candidates",), "TighteningCurve": ("low_friction", "nominal", "high_friction")}


@dataclasses.dataclass(frozen=True)
class BandInUnit:
    """A band in another unit than SI, as ``band.to("kN")`` gives it. Unpacks into low, nominal and high."""

    low: float
    nominal: float
    high: float
    unit: str

    def __iter__(self):
        return iter((self.low, self.nominal, self.high))

    def __format__(self, spec):
        if self.nominal != self.nominal:
            return "none"
        low, nominal, high = (format(value, spec) for value in self) if spec else _core.band_text(*self)
        unit = self.unit and " " + self.unit
        return f"{low} to {high}{unit}, typical {nominal}{unit}"

    def __str__(self):
        return format(self)

    def _repr_html_(self):
        return html.escape(str(self))


def to(self, unit):
    """The band in another unit, as `BandInUnit`.

    >>> import tauten
    >>> load = tauten.clamp(thread="M16", property_class="8.8", torque="150N.m", condition="oiled").candidates[0].clamp_load
    >>> low, nominal, high = load.to("kN")
    >>> round(low, 1)
    47.8
    >>> print(load.to("lbf"))
    10740 to 17200 lbf, typical 13250 lbf

    Raises Error for an unknown unit, or one of another dimension.
    """
    scale = _core.unit_in_si(unit, self.unit)
    return BandInUnit(*(value / scale for value in self), unit)


def _format(self, spec):
    """A format of Python for each figure, in the unit that a workshop reads: ``f"{band:.1f}"``."""
    return format(self.to(_core.shop_unit(self.unit)), spec) if spec else str(self)


def _picture(name):
    def plot(self, axes=None, **options):
        return getattr(importlib.import_module("tauten.plots"), name)(self, axes=axes, **options)
    plot.__module__ = "tauten"
    plot.__doc__ = f"Draw the answer, as `tauten.plots.{name}` does."
    return plot


def _flat(members, before=""):
    """Members of members as columns of one row, called like the columns of a table; lists of records have none."""
    for name, value in members.items():
        if isinstance(value, dict):
            yield from _flat(value, f"{before}{name}_")
        elif not (isinstance(value, list) and value and isinstance(value[0], dict)):
            yield before + name, value


def _rows(record):
    if type(record) is _core.TighteningCurve:
        for friction in _ROWS["TighteningCurve"]:
            for point in getattr(record, friction).points:
                yield {"friction": friction, **dict(_flat(point.as_dict()))}, point
    elif type(record).__name__ in _ROWS:
        for row in getattr(record, _ROWS[type(record).__name__][0]):
            yield dict(_flat(row.as_dict())), row
    else:
        yield dict(_flat(record.as_dict())), record


def _units(record):
    units = dict(type(record)._units)
    for name in type(record).__annotations__:
        value = getattr(record, name)
        if isinstance(value, _core.Band) and value.unit:
            units |= {f"{name}_{end}": value.unit for end in ("low", "nominal", "high")}
    return units


def to_frame(records):
    """A pandas DataFrame of answers or of any of their records: members as columns, bands as three of them, in SI.

    Parameters
    ----------
    records : record or list of records
        Answers of one question, or records like ``answer.steps``. Each is a row; of `Clamp` and `Identification` each
        candidate is one, of `TighteningCurve` each point. What is a list of records itself has no column.

    Returns
    -------
    pandas.DataFrame
        Its ``attrs["units"]`` has the SI unit of each column that has one.

    Examples
    --------
    >>> import tauten
    >>> joint = dict(thread="M16", property_class="8.8", condition="oiled")
    >>> frame = tauten.to_frame([tauten.clamp(torque=torque, **joint) for torque in (100, 150)])
    >>> frame[["torque", "verdict"]].values.tolist()
    [[100.0, 'slack'], [150.0, 'within limits']]
    >>> frame.attrs["units"]["clamp_load_low"]
    'N'
    """
    import pandas
    records = _pint.plain(records)
    records = [records] if hasattr(records, "as_dict") else list(records)
    wrong = next((one for one in records if not hasattr(one, "as_dict")), None)
    if wrong is not None:
        raise TypeError(f"to_frame takes answers and their records, not {type(wrong).__name__}")
    rows = [row for record in records for row in _rows(record)]
    frame = pandas.DataFrame([row for row, _ in rows])
    frame.attrs["units"] = {name: unit for name, unit in (_units(rows[0][1]) if rows else {}).items() if name in frame}
    return frame


def _to_frame(self):
    """The answer as a pandas DataFrame, as `tauten.to_frame` makes it."""
    return to_frame(self)


_to_frame.__name__ = _to_frame.__qualname__ = "to_frame"


def add_to(records):
    """Gives the classes of `_core` what this file has."""
    _core.Band.to = to
    _core.Band.__format__ = _format
    for name, picture in _PICTURES.items():
        records[name].plot = _picture(picture)
    for record in records.values():
        record.to_frame = _to_frame


for _each in (BandInUnit, to_frame):
    _each.__module__ = "tauten"
