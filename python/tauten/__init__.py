"""Torque and tension of threaded fasteners.

Every formula is a function of this package and an item of ``tauten.formulas``. Plain numbers are SI: m, N, N.m, Pa, rad.
`identify`, `clamp`, `torque_for`, `turn`, `curve`, `reach`, `free_joint`, `pattern`, `group`, `sequence` and `prying` answer whole
questions.

>>> import tauten
>>> round(tauten.preload_from_nut_factor(torque="48N.m", diameter="10mm", nut_factor=0.16))
30000
>>> tauten.stress_area.output.unit
'm2'
>>> tauten.clamp(socket="24mm", property_class="8.8", torque="150N.m", condition="oiled").candidates[0].verdict
'within limits'
"""
from tauten import _core, _records
from tauten._answers import (clamp, curve, free_joint, identify, property_class, reach, thread, thread_condition,
                             torque_for, turn)
from tauten._core import Style, __version__, conditions, heads, materials, property_classes, threads
from tauten._errors import DomainWarning, Error, ValidityWarning
from tauten._explanation import Explanation
from tauten._formula import Check, Formula, Formulas
from tauten._groups import group, pattern, prying, sequence, sheet
from tauten._records import BandInUnit, to_frame


def quantity(text):
    """SI number of a quantity as people write it.

    >>> quantity("48N.m")
    48.0
    >>> quantity("1-1/8in")
    0.028575

    Raises Error if the text is not a number with a known unit. A bare number is a plain number.
    """
    return _core.read_quantity(text)


_classes = {name: item for name, item in vars(_core).items() if hasattr(item, "as_dict")}
_records.add_to(_classes)
for _class in _classes.values():
    _class.__module__ = __name__

formulas = Formulas(_core.entries)
"""Every formula by name."""

Style.__module__ = __name__

globals().update(_classes)
globals().update(formulas)

from tauten import uncertainty  # noqa: E402


_LATER = ("exercises", "plots")


def __getattr__(name):
    """Pictures and exercises are loaded when they are asked for."""
    if name in _LATER:
        import importlib
        return importlib.import_module(f"tauten.{name}")
    raise AttributeError(f"module 'tauten' has no attribute {name!r}")


def __dir__():
    return sorted({*__all__, *_LATER, "__doc__", "__version__"})


__all__ = ["BandInUnit", "Check", "DomainWarning", "Error", "Explanation", "Formula", "Formulas", "Style", "ValidityWarning",
           "clamp", "conditions", "curve", "formulas", "free_joint", "group", "heads", "identify", "materials", "pattern",
           "property_class", "property_classes", "prying", "quantity", "reach", "sequence", "sheet", "thread", "thread_condition", "threads",
           "to_frame", "torque_for", "turn", "uncertainty", *_classes, *formulas]
