"""Pint quantities in and out. Pint itself is never imported here: a quantity brings its registry along."""
import sys

from tauten._errors import Error


def registry_of(value):
    """The registry of a Pint quantity, None for anything else."""
    return getattr(value, "_REGISTRY", None)


def unit_text(unit):
    """An SI unit as Pint reads it: N.m becomes N*m, m2 becomes m**2."""
    return unit.replace(".", "*").replace("m2", "m**2")


def si(argument, value, unit, dimension, how_to_write, where=""):
    """SI number of a quantity.

    Raises Error if it does not have ``dimension``, which ``unit`` has. ``where`` stands before the message.
    """
    if not getattr(value, "_is_multiplicative", True):
        raise Error(f"{where}{argument} is given in '{value.units}', which has its zero elsewhere; "
                    "give a temperature difference in K or delta_degC", argument)
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
