from tauten._core import Arg as Arg
from tauten._core import Range as Range
from tauten._core import Source as Source
from tauten._errors import DomainWarning as DomainWarning
from tauten._errors import Error as Error
from tauten._errors import ValidityWarning as ValidityWarning
from tauten._formula import Check as Check
from tauten._formula import Formula as Formula
from tauten._formula import Formulas as Formulas

formulas: Formulas

def quantity(text: str) -> float: ...

# Every formula of the registry.
def __getattr__(name: str) -> Formula: ...
