"""Torque and tension of threaded fasteners.

Every formula is a function of this package and an item of ``tauten.formulas``. Plain numbers are SI: m, N, N.m, Pa, rad.

>>> import tauten
>>> round(tauten.preload_from_nut_factor(torque="48N.m", diameter="10mm", nut_factor=0.16))
30000
>>> tauten.stress_area.output.unit
'm2'
"""
from tauten import _core
from tauten._core import Arg, Range, Source
from tauten._errors import DomainWarning, Error, ValidityWarning
from tauten._formula import Check, Formula, Formulas


def quantity(text):
    """SI number of a quantity as people write it.

    >>> quantity("48N.m")
    48.0
    >>> quantity("1-1/8in")
    0.028575

    Raises Error if the text is not a number with a known unit. A bare number is a plain number.
    """
    return _core.read_quantity(text)


for _type in (Arg, Range, Source):
    _type.__module__ = __name__

formulas = Formulas(_core.entries)
"""Every formula by name."""

globals().update(formulas)

__all__ = ["Arg", "Check", "DomainWarning", "Error", "Formula", "Formulas", "Range", "Source", "ValidityWarning",
           "formulas", "quantity", *formulas]
