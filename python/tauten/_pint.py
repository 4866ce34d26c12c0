"""Pint quantities in and out. Pint itself is never imported here: a quantity brings its registry along."""
import sys

from tauten import _core
from tauten._errors import Error


def registry_of(value):
    """The registry of a Pint quantity, None for anything else."""
    return getattr(value, "_REGISTRY", None)


def unit_text(unit):
    """An SI unit as Pint reads it: N.m becomes N*m, m2 becomes m**2."""
    return unit.replace(".", "*").replace("m2", "m**2")


def _is_energy(value):
    """Whether a quantity in the dimension of a torque is in joules or the like: a torque has a lever in its unit."""
    registry, energy = value._REGISTRY, {"[mass]": 1, "[length]": 2, "[time]": -2}
    units = [registry.Unit(name) for name in dict(value._units)]
    return dict(value.dimensionality) == energy and not any(
        dict(unit.dimensionality) == {"[length]": 1} or "pound" in str(unit) for unit in units)


def si(argument, value, unit, dimension, how_to_write, where=""):
    """SI number of a quantity.

    Raises Error if it does not have ``dimension``, which ``unit`` has. ``where`` stands before the message.
    """
    if not getattr(value, "_is_multiplicative", True):
        raise Error(f"{where}{argument} is given in '{value.units}', which has its zero elsewhere; "
                    "give a temperature difference in K or delta_degC", argument)
    if unit == "N.m" and _is_energy(value):
        raise Error(f"{where}{argument} is given in '{value.units}', which is a unit of energy, but must be {dimension}, "
                    f"for example {how_to_write}", argument)
    try:
        return value.m_as(unit_text(unit))
    except sys.modules["pint"].DimensionalityError:
        raise Error(f"{where}{argument} is given in '{value.units}', but must be {dimension}, "
                    f"for example {how_to_write}", argument) from None


def magnitude(formula, arg, value):
    """SI number of a quantity for an input of a formula."""
    return si(arg.name, value, arg.unit, f"a {arg.dimension}", arg.how_to_write, f"{formula}: ")


def of_column(name, value, unit, example):
    """SI numbers of a column or cell of a table, which takes numbers in ``unit``, or plain ones if that is empty."""
    return si(name, value, unit, f"in {unit}" if unit else "a plain number", example)


def attach(registry, number, *units):
    """``number`` as a quantity of ``registry``; its unit is the first of ``units`` over the second, if there is one."""
    unit = registry.parse_units(unit_text(units[0]))
    if len(units) > 1:
        unit = unit / registry.parse_units(unit_text(units[1]))
    return registry.Quantity(number, unit)


def met_in(values):
    """The registry of the first Pint quantity among values, in lists and dicts too; None if there is none."""
    if isinstance(values, dict):
        values = values.values()
    for value in values:
        found = met_in(value) if isinstance(value, (dict, list, tuple)) else registry_of(value)
        if found is not None:
            return found
    return None


def plain(value):
    """An answer as it was before its numbers became quantities; anything else as it is, in lists and dicts too."""
    if isinstance(value, dict):
        return {name: plain(item) for name, item in value.items()}
    if type(value) in (list, tuple):
        return type(value)(map(plain, value))
    return value._plain if type(value) in (Quantities, BandOfQuantities) else value


class Quantities:
    """An answer whose members with a unit are Pint quantities, in SI units; everything else is that of the answer.

    It passes for an instance of the class of the answer.
    """
    __slots__ = ("_plain", "_registry")

    def __init__(self, answer, registry):
        self._plain = answer
        self._registry = registry

    __class__ = property(lambda self: type(self._plain))  # type: ignore[assignment]

    def __getattr__(self, name):
        if name in ("_plain", "_registry"):  # of a copy that has neither yet
            raise AttributeError(name)
        value = getattr(self._plain, name)
        if callable(value):
            return lambda *given, **named: of_answer(value(*plain(given), **plain(named)), self._registry)
        return of_answer(value, self._registry, type(self._plain)._units.get(name, ""))

    def __dir__(self):
        return dir(self._plain)

    def __repr__(self):
        return repr(self._plain)

    def __str__(self):
        return str(self._plain)

    def __eq__(self, other):
        return self._plain == plain(other)

    def __hash__(self):
        return hash(self._plain)

    def __copy__(self):
        return type(self)(self._plain, self._registry)

    def __deepcopy__(self, memo):
        return self.__copy__()  # answers do not change

    def __format__(self, spec):
        return format(self._plain, spec)

    def __reduce__(self):
        return from_pickle, (self._plain,)


class BandOfQuantities(Quantities):
    """A band, which unpacks into its three numbers."""
    __slots__ = ()

    def __getattr__(self, name):
        value = super().__getattr__(name)
        return attach(self._registry, value, self._plain.unit) if name in ("low", "nominal", "high") and self._plain.unit else value

    def __iter__(self):
        return iter((self.low, self.nominal, self.high))

    def to(self, unit):
        """Low, nominal and high as quantities in another unit, one that Pint knows."""
        return tuple(value.to(unit) for value in self)


def from_pickle(answer):
    """An answer with the quantities of the application's registry, to which Pint's own quantities come back, too."""
    import pint

    return of_answer(answer, pint.get_application_registry())


def of_answer(value, registry, unit=""):
    """An answer, or a member of one that is in ``unit``, with Pint quantities instead of numbers that have a unit."""
    if type(value) is _core.Band:
        return BandOfQuantities(value, registry)
    if hasattr(type(value), "_units"):
        return Quantities(value, registry)
    if type(value) is tuple:
        return tuple(of_answer(item, registry, unit) for item in value)
    return attach(registry, value, unit) if unit and isinstance(value, float) else value
