import numpy
import tauten

answer = tauten.clamp(socket="24mm", property_class="8.8", torque="150N.m", condition="oiled")
bolt = answer.candidates[0]
print(f"{bolt.thread}: {bolt.clamp_load.low / 1e3:.0f} to {bolt.clamp_load.high / 1e3:.0f} kN, {bolt.verdict}")

# Every formula is a function on numbers and arrays, in SI, with the same names as in C++.
friction = numpy.array([0.08, 0.12, 0.16])
load = tauten.preload_from_torque(150.0, 2e-3, 14.7e-3, friction, friction, bearing_diameter=20e-3)
print(load.round(-3) / 1e3, "kN at low, typical and high friction")
