"""Writes the page on resilience from the cases. Run by hand:

  ./dev python tests/python/resilience_page.py > docs/resilience.md
"""
import tauten

from resilience_cases import (GRIPS, MATERIALS, RANGES, TAPPED_ANGLE, TAPPED_OFF, applies, cases, models, tapped_cases,
                              tapped_models)

HEAD = """# Resilience of the clamped parts: which model where

Three models give the stiffness of what a bolt clamps. This page sets them beside finite elements: axisymmetric,
biquadratic elements, layers bonded, pressed between two rigid smooth rings as wide as the bearing face
(`tests/python/axisymmetric.py`). The solver reproduces another one's table of seven joints to 0.5 %, a sleeve exactly,
and four joints of a general solver of Debian, where that is installed, to 0.1 %. The comparison covers grips of 0.5 to 10
hole diameters, two bearing faces, steel, aluminium, and steel on cast iron.

| model | layers over bearing face | bearing face over hole | grip over hole | off by |
|---|---|---|---|---|
"""

ADVICE = """
`plate_resilience` takes the deformation cone up to layers four bearing faces wide and for every tapped hole, the 30 degree
frustum beyond, and attaches a notice where the chosen model is outside its range. Why the limits:

- The deformation cone widens with the logarithm of the width. Layers much wider than the pressure reaches do not get
  stiffer any more, but the formula goes on: up to 11 % too stiff at five faces, up to 19 % at eight.
- The frustum knows no edge. Layers of one and a half faces are up to 18 % softer than it says.
- The exponential fit was made for a face of 1.5 holes and wide layers. At longer grips it is 7 to 24 % too stiff on wide
  layers, on a face of 2 holes a quarter to a half too soft.

An error of the clamped parts counts less than it looks: with a bolt four times as resilient as the parts, 10 % there
moves the angle of turn by 2 %. Tapped holes have a comparison of their own at the end.

## Stiffness over modulus and hole, and how far each model is off in per cent

Columns: finite elements; then deformation cone, 30 degree frustum, exponential fit. Bold: within the range above.
"""


TAPPED = """
## Tapped holes

Half angle and extra length of tapped holes are taken from memory of the guideline. Here plate and tapped part are compared
together: deformation cone and 0.33 d on one side; on the other finite elements in which a ring presses the plate and the
wall of the tapped hole is pulled evenly over one diameter. Both parts are of steel, bonded and equally wide; the tapped one
is bored through and as deep as it is wide.

The wall is smooth: what the teeth of the thread yield is not in the finite elements, but is in the 0.33 d. So the model
should lie above, and nearly everywhere does: {long} % at grips of 2 to 10 diameters, {short} % at 0.5 to 1.
With the bolt, which is most of the spring, the angle of turn is off by {angle} %. For a short grip in a tapped hole
measure the angle.

Columns: resilience times modulus and hole by finite elements; how far the model is off in per cent.

| bearing face in holes | width in faces | {grips} |
|---|---|{rule}"""


def tapped():
    span = lambda low, high: f"{low:+d} to {high:+d}"
    yield TAPPED.format(long=span(*TAPPED_OFF["long"][2:]), short=span(*TAPPED_OFF["short"][2:]), angle=span(*TAPPED_ANGLE),
                        grips=" | ".join(f"grip {g:g}" for g in GRIPS), rule="---|" * len(GRIPS))
    row = []
    for face, width, grip, exact in tapped_cases():
        off = 100 * (sum(tapped_models(tauten.formulas, grip, face, face * width)) / exact - 1)
        row.append(f"{exact:.3f}; {off:+.0f}")
        if grip == GRIPS[-1]:
            yield f"| {face:g} | {width:g} | " + " | ".join(row) + " |"
            row = []


def main():
    lines = [HEAD.rstrip("\n")]
    for model, bounds in RANGES.items():
        span = lambda key: " to ".join(f"{x:g}" for x in dict.fromkeys(bounds[key]))
        low, high = bounds["off"]
        lines.append(f"| {model} | {span('width')} | {span('face')} | {span('grip')} | {low} to +{high} % |")
    lines.append(ADVICE.rstrip("\n"))
    title = None
    for material, face, width, grip, exact in cases():
        if title != (material, face):
            title = (material, face)
            lines += ["", f"### {material}, bearing face {face:g} holes", "",
                      "| width in faces | " + " | ".join(f"grip {g:g}" for g in GRIPS) + " |",
                      "|---|" + "---|" * len(GRIPS)]
        if grip == GRIPS[0]:
            row = []
        offs = []
        for model, stiffness in models(tauten.formulas, grip, face, face * width, MATERIALS[material]).items():
            text = f"{100 * (stiffness / exact - 1):+.0f}"
            offs.append(f"**{text}**" if applies(model, face, width, grip) else text)
        row.append(f"{exact:.3f}; {', '.join(offs)}")
        if grip == GRIPS[-1]:
            lines.append(f"| {width:g} | " + " | ".join(row) + " |")
    print("\n".join([*lines, *tapped()]))


if __name__ == "__main__":
    main()
