"""Formulas as Python functions."""
import sys
import warnings
from collections.abc import Mapping
from typing import NamedTuple

import numpy as np

from tauten import _core, _pint, _text
from tauten._errors import DomainWarning, Error, ValidityWarning

_OPTIONS = frozenset(("out", "where", "dtype", "casting", "order", "subok"))
_NO_NUMBERS = {"O": "objects", "U": "texts", "S": "bytes", "m": "times", "M": "times", "c": "complex numbers"}
_AS_THEY_ARE = frozenset((float, np.ndarray))


def _all_series(values):
    """Where several pandas Series meet, plain numbers become Series too: not every pandas aligns them otherwise."""
    pandas = sys.modules.get("pandas")
    series = [value for value in values if pandas is not None and isinstance(value, pandas.Series)]
    if len(series) < 2:
        return values
    return [value if isinstance(value, pandas.Series) else pandas.Series(value, series[0].index) for value in values]


def _is_uncertain(value):
    """Whether it is a number of the package uncertainties."""
    uncertainties = sys.modules.get("uncertainties")
    return uncertainties is not None and isinstance(value, uncertainties.UFloat)


def _is_dask_series(value):
    frames = sys.modules.get("dask.dataframe")
    return frames is not None and isinstance(value, frames.Series)


def _partition(formula, *values):
    """One partition of a formula over Series of dask."""
    return formula.ufunc(*_all_series(values))


class Check(NamedTuple):
    """The notices about the inputs of a call."""

    status: str
    argument: str
    message: str


Check.status.__doc__ = "``ok``, ``unusual`` (a value comes with a warning), ``outside_domain`` or ``impossible`` (no value)."
Check.argument.__doc__ = 'The first argument at fault; "" if there is none, or if the arguments do not fit together.'
Check.message.__doc__ = "The notice as a sentence, with value, unit and range."


class _OfInstance:
    """An attribute that a formula has and its class has not: the class keeps its own docstring and signature."""

    def __init__(self, compute, of_class=None):
        self._compute = compute
        self._of_class = of_class

    def __set_name__(self, owner, name):
        self._name = name

    def __get__(self, instance, owner):
        if instance is not None:
            value = instance.__dict__[self._name] = self._compute(instance)
            return value
        if self._of_class is None:
            raise AttributeError(self._name)
        return self._of_class


class Formula(_core.Kernel):
    __doc__ = _OfInstance(_text.doc, """A formula of the registry, to be called like a function.

    Plain numbers are SI and give a plain number. Arrays, Series, lazy and masked arrays broadcast and give their like.
    A Pint quantity gives a Pint quantity. Text such as "48N.m" stands for its SI number. A number of the package uncertainties
    gives one, to first order and with its correlations.

    Numbers outside the formula's domain raise `Error`. In arrays such rows become NaN, with one `DomainWarning`. An input
    outside the range that the source states gives a `ValidityWarning`. Lazy arrays are not looked at: NaN, no warning.
    """)
    __signature__ = _OfInstance(_text.signature)
    __module__ = "tauten"

    def __init__(self, entry):
        self._entry = entry
        self.name = self.__name__ = self.__qualname__ = entry.name
        self.summary = entry.summary
        self.room = entry.room
        self.inputs = entry.inputs
        self.output = entry.output
        self.sources = entry.sources
        self.ufunc = getattr(_core, entry.name)
        self._names = tuple(arg.name for arg in self.inputs)

    def __repr__(self):
        return f"<formula {self.name}({', '.join(self._names)}) -> {self.output.name}>"

    def __reduce__(self):
        return self.name

    # A call of plain numbers with nothing to be said about them is answered by the base class and never comes here; of
    # a call of plain arrays only what is to be told.
    def _evaluate(self, *args, **options):
        given = (*args, *options.values())
        try:
            return self._value(*args, **options)
        except Error as error:
            raise _text.with_si(error, given) from None

    def _value(self, *args, **options):
        values, registry = self._read(args, options)
        uncertain = [(place, value) for place, value in enumerate(values) if _is_uncertain(value)]
        for place, value in uncertain:
            values[place] = value.nominal_value
        if not options and all(isinstance(value, float) for value in values):
            result = self._one(values)
        else:
            result = self._rows(values, options)
        if uncertain:
            if not isinstance(result, float):
                raise TypeError(f"{self.name}() takes a number with uncertainty together with numbers, not with arrays")
            slopes = self._entry.slopes(values)
            result = sum((slopes[place] * (value - value.nominal_value) for place, value in uncertain), result)
        return result if registry is None else _pint.attach(registry, result, self.output.unit)

    def _one(self, numbers):
        value, warning = self._entry.one(numbers)
        if warning:
            warnings.warn(warning, ValidityWarning, stacklevel=4)
        return value

    def _rows(self, values, options):
        if not options and any(map(_is_dask_series, values)):
            meta = _partition(self, *(value._meta if _is_dask_series(value) else value for value in values))
            return sys.modules["dask.dataframe"].map_partitions(_partition, self, *values, meta=meta)
        _core.start_count()
        try:
            result = self.ufunc(*_all_series(values), **options)
        except TypeError:
            self._refuse_arrays(values)
            raise
        count = _core.take_count()
        if count and isinstance(result, np.ma.MaskedArray):  # what lies under the mask is not to be counted
            shown = ~np.ma.getmaskarray(result)
            self.ufunc(*(np.broadcast_to(np.ma.getdata(value), result.shape)[shown] for value in values))
            count = _core.take_count()
        self._warn(count, level=5)
        return result

    def _refuse_arrays(self, values):
        """Names the first array that does not hold numbers, if there is one."""
        for arg, value in zip(self.inputs, values):
            kind = (value if hasattr(value, "dtype") else np.asarray(value)).dtype.kind
            if kind not in "fiub":
                unit = arg.unit and f" in {arg.unit}"
                raise TypeError(f"{self.name}() takes arrays of numbers{unit} for {arg.name!r}, not of "
                                f"{_NO_NUMBERS.get(kind, 'records')}") from None

    def _told(self, result):
        self._warn(_core.take_count(), level=3)
        return result

    def _warn(self, count, level):
        if count is None:
            return
        rows, outside, impossible, unusual = count
        if message := _text.domain_warning(self, rows, outside, impossible):
            warnings.warn(message, DomainWarning, stacklevel=level)
        if message := _text.validity_warning(self, rows, unusual):
            warnings.warn(message, ValidityWarning, stacklevel=level)

    def _read(self, args, options):
        """SI values in the order of the inputs (every single number as float), and the Pint registry if one is met.

        Takes the inputs out of ``options``.
        """
        values = self._bind(args, options)
        registry = None
        for place, value in enumerate(values):
            if type(value) in _AS_THEY_ARE:
                continue
            arg = self.inputs[place]
            if isinstance(value, str):
                value = arg.read(value)
            elif (met := _pint.registry_of(value)) is not None:
                registry = registry or met
                value = _pint.magnitude(self.name, arg, value)
            array = hasattr(value, "__array_ufunc__") or hasattr(value, "__len__")
            if _is_uncertain(value):
                pass
            elif not array or isinstance(value, np.generic):
                try:
                    if isinstance(value, (bool, np.bool_)):
                        raise TypeError
                    value = float(value)
                except TypeError:
                    raise TypeError(f"{self.name}() takes numbers, arrays, quantities or text for {arg.name!r}, "
                                    f"not {type(value).__name__}") from None
            values[place] = value
        return values, registry

    def _bind(self, args, options):
        if len(args) == len(self._names) and options.keys() <= _OPTIONS:
            return list(args)
        if len(args) > len(self._names):
            raise TypeError(f"{self.name}() takes {len(self._names)} arguments: {', '.join(self._names)}; "
                            f"{len(args)} were given")
        values = dict(zip(self._names, args))
        for name in self._names:
            if name in options:
                if name in values:
                    raise TypeError(f"{self.name}() got the argument {name!r} twice")
                values[name] = options.pop(name)
        if unknown := [name for name in options if name not in _OPTIONS]:
            raise TypeError(f"{self.name}() has no argument {unknown[0]!r}; it takes {', '.join(self._names)}")
        if missing := [name for name in self._names if name not in values]:
            raise TypeError(f"{self.name}() also needs {', '.join(missing)}")
        return [values[name] for name in self._names]

    def _numbers(self, args, inputs):
        values, registry = self._read(args, inputs)
        if inputs or not all(isinstance(value, float) for value in values):
            raise TypeError(f"{self.name}: one number per argument is needed here")
        return values, registry

    def expression(self, notation="text", **inputs):
        """The right-hand side of the formula, derived from what is computed.

        notation: "text", "latex", or "algebra" (Python syntax with argument names, for a computer-algebra system).
        inputs: values to put instead of the symbols; either all or none.
        """
        return self._entry.expression(notation, self._numbers((), inputs)[0] if inputs else None)

    def gradient(self, *args, **inputs):
        """Partial derivatives of the output by each input, as dict by argument name.

        In SI. If a Pint quantity is among the inputs, the derivatives are Pint quantities too.
        """
        numbers, registry = self._numbers(args, inputs)
        self._entry.one(numbers)
        slopes = dict(zip(self._names, self._entry.slopes(numbers)))
        if registry is not None:
            for arg in self.inputs:
                slopes[arg.name] = _pint.attach(registry, slopes[arg.name], self.output.unit, arg.unit)
        return slopes

    def check(self, *args, **inputs):
        """The notices about these inputs: a `Check` with status, argument and message. Does not raise `Error`."""
        try:
            numbers, _ = self._numbers(args, inputs)
            return Check(*self._entry.status(numbers), self._entry.one(numbers)[1])
        except Error as error:
            return Check("outside_domain" if error.argument else "impossible", error.argument, str(error))

    def explain(self, *args, format="text", style=None, **inputs):
        """How the result comes about: inputs, symbols, values, result, sources and warnings.

        format: "text", "markdown", "latex" (for amsmath) or "html" (with MathML). style: a `Style` with units and digits.
        In a notebook it shows itself. Raises Error where the formula has no value.
        """
        numbers = self._numbers(args, inputs)[0]
        self._entry.one(numbers)
        return _core.formula_derivation(self._entry, numbers).explain(format, style)

    def _repr_latex_(self):
        return f"${_text.latex(self)}$"

    def _repr_markdown_(self):
        return _text.markdown(self)


class Formulas(Mapping):
    """All formulas by name, in the order of the rooms of the library. Read-only."""

    __module__ = "tauten"

    def __init__(self, entries):
        self._formulas = {entry.name: Formula(entry) for entry in entries}

    def __getitem__(self, name):
        try:
            return self._formulas[name]
        except KeyError:
            import difflib
            close = difflib.get_close_matches(str(name), self._formulas)
            hint = f"; did you mean {' or '.join(close)}?" if close else "; list(tauten.formulas) has them all"
            raise KeyError(f"there is no formula {name!r}{hint}") from None

    @property
    def rooms(self):
        """The formulas of each room of the library: a dict from its name to a tuple of formulas."""
        rooms = {}
        for formula in self._formulas.values():
            rooms[formula.room] = (*rooms.get(formula.room, ()), formula)
        return rooms

    def search(self, text):
        """The formulas that mention every word of a text in their name, summary, room or arguments, in a list.

        >>> import tauten
        >>> [formula.name for formula in tauten.formulas.search("nut factor torque")]
        ['nut_factor_from_test', 'torque_from_nut_factor', 'preload_from_nut_factor']
        """
        def mentions(formula):
            said = (formula.name, formula.summary, formula.room, *(arg.name for arg in (*formula.inputs, formula.output)))
            said = " ".join(said).replace("_", " ").lower()
            return all(word in said for word in text.replace("_", " ").lower().split())
        return [formula for formula in self._formulas.values() if mentions(formula)]

    def __iter__(self):
        return iter(self._formulas)

    def __len__(self):
        return len(self._formulas)

    def __contains__(self, name):
        return name in self._formulas

    def __repr__(self):
        return f"<{len(self)} formulas: {', '.join(self)}>"
