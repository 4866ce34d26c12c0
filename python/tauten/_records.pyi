from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

@dataclass(frozen=True)
class BandInUnit:
    low: float
    nominal: float
    high: float
    unit: str
    def __iter__(self) -> Iterator[float]: ...
    def __format__(self, spec: str) -> str: ...
    def _repr_html_(self) -> str: ...

# A record, a list of records; the result is a pandas DataFrame.
def to_frame(records: Any) -> Any: ...
