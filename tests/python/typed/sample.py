"""What mypy --strict must take, and, where a line says so, must refuse."""
from typing import Any

import numpy as np
import tauten
from numpy.typing import NDArray

answer = tauten.clamp(socket="24mm", property_class="8.8", torque="130N.m", condition="oiled")
low: float = answer.candidates[0].clamp_load.low
load: float = tauten.preload_from_nut_factor("80N.m", 16e-3, nut_factor=0.2)
loads = tauten.preload_from_nut_factor(np.array([80.0]), 16e-3, 0.2, where=True)
unknown: Any = 80.0
of_unknown: str = tauten.preload_from_nut_factor(unknown, 16e-3, 0.2)  # a Series, a lazy array, a quantity
curve: NDArray[np.float64] = tauten.curve(thread="M16", property_class="8.8", grip="55mm").nominal.columns()["torque"]
table: dict[str, list[str]] = tauten.clamp({"thread": ["M16"], "torque": ["130N.m"]}, columns="verdict")
unit: str = tauten.stress_area.output.unit
area: float = tauten.formulas["stress_area"](16e-3, 2e-3)
check: tauten.Check = tauten.stress_area.check(16e-3, 2e-3)
kilo: tauten.BandInUnit = answer.candidates[0].clamp_load.to("kN")
found: list[tauten.Formula] = tauten.formulas.search("nut factor")
sheet: str = tauten.exercises.sheet([tauten.formulas["nut_factor"], "stress_area"], seed="student 7").latex()
names: tuple[str, ...] = tauten.threads + tauten.materials
slopes = tauten.stress_area.gradient(16e-3, pitch=2e-3)

word: str = tauten.preload_from_nut_factor(80.0, 16e-3, 0.2)  # type: ignore[assignment]
torques: NDArray[np.float64] = np.linspace(60.0, 80.0, 3)
one: float = tauten.preload_from_nut_factor(torques, 16e-3, 0.2)  # type: ignore[assignment]
tauten.preload_from_nut_factor(80.0, 16e-3)  # type: ignore[call-overload]
tauten.no_such_formula(1.0)  # type: ignore[attr-defined]
