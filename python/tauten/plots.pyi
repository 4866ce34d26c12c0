from typing import Any, Iterable, Optional, Sequence, Union

from matplotlib.axes import Axes

from tauten._core import Band, Clamp, Free, Reach, Thread, TighteningCurve, Turn
from tauten._formula import Formula

BLACK: str
ORANGE: str
SKY: str
GREEN: str
BLUE: str
VERMILION: str
PURPLE: str

def plot_chances(free: Free, axes: Optional[Axes] = ...) -> Axes: ...
def plot_clamp_band(clamp: Clamp, axes: Optional[Axes] = ..., most: int = ...) -> Axes: ...
def plot_bands(
    rows: Iterable[tuple[str, Union[Band, Sequence[float]]]],
    words: str,
    marks: Iterable[tuple[float, str]] = ...,
    unit: Optional[str] = ...,
    axes: Optional[Axes] = ...,
) -> Axes: ...
def plot_scatter(answers: Iterable[Clamp], axes: Optional[Axes] = ...) -> Axes: ...
# Any: an uncertainty budget, which has no class of its own here.
def plot_budget(budget: Union[Reach, Iterable[tuple[str, float]], Any], axes: Optional[Axes] = ...) -> Axes: ...
def plot_sensitivity(formula: Formula, axes: Optional[Axes] = ..., **inputs: Any) -> Axes: ...
def plot_nut_factor(
    thread: Union[str, Thread],
    bearing_diameter: float,
    conditions: Sequence[str] = ...,
    axes: Optional[Axes] = ...,
) -> Axes: ...
def plot_torque_share(rows: Iterable[tuple[str, Clamp]], axes: Optional[Axes] = ...) -> Axes: ...
def plot_load_extension(turn: Turn, axes: Optional[Axes] = ...) -> Axes: ...
def plot_curve(
    curve: TighteningCurve, turn: Optional[Turn] = ..., axes: Optional[Sequence[Axes]] = ...
) -> Sequence[Axes]: ...
def plot_methods(turn: Turn, axes: Optional[Axes] = ...) -> Axes: ...
