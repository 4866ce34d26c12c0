"""The resilience models of the library beside finite elements, for the test and for the page on resilience.

All lengths are in units of the hole, all stiffnesses in units of modulus times hole, the modulus being that of the
first layer. The layers are bonded and the rings of pressure rigid and smooth.
"""
import itertools
import math

from axisymmetric import clamped_stiffness, tapped_compliance

GRIPS = (0.5, 1, 2, 3, 6, 10)
FACES = (1.5, 2.0)
WIDTHS = (1.2, 1.5, 3, 5, 8)  # of the layers, in bearing faces
# Modulus over that of steel, Poisson's ratio; two entries are two layers of half the grip each.
MATERIALS = {"steel": ((1.0, 0.292),), "aluminium": ((70 / 205, 0.334),), "steel on cast iron": ((1.0, 0.292), (110 / 205, 0.24))}
STEEL, HOLE = 205e9, 0.01

# Where each model may be used, and how far it then lies from finite elements at most, in per cent of the stiffness.
# width: layers over bearing face; face: bearing face over hole; grip over hole.
RANGES = {
    "deformation cone": {"width": (1.2, 3), "face": (1.5, 2), "grip": (0.5, 10), "off": (-8, 6)},
    "30 degree frustum": {"width": (3, 8), "face": (1.5, 2), "grip": (0.5, 10), "off": (-6, 11)},
    "exponential fit": {"width": (5, 8), "face": (1.5, 1.5), "grip": (0.5, 2), "off": (-7, 9)},
}


def cones(formulas, grip, face, width, layers, half_angle):
    """Two cones that meet at half the grip, sleeves beyond the edge of the layers."""
    reach = min(grip / 2, max(0.0, (width - face) / 2 / math.tan(half_angle)))
    resilience = 0.0
    for share in (layers[0], layers[-1]):  # the half of the grip next to each face is of one material
        modulus = share[0] * STEEL
        if reach > 0:
            resilience += formulas["cone_resilience"](
                thickness=reach * HOLE, hole_diameter=HOLE, face_diameter=face * HOLE, half_angle=half_angle,
                elastic_modulus=modulus)
        resilience += formulas["sleeve_resilience"](
            thickness=(grip / 2 - reach) * HOLE, hole_diameter=HOLE, plate_diameter=width * HOLE,
            elastic_modulus=modulus)
    return 1 / resilience


def models(formulas, grip, face, width, layers):
    """Stiffness by each model over that modulus and hole."""
    angle = formulas["cone_angle_through"](
        grip_length=grip * HOLE, face_diameter=face * HOLE, plate_diameter=width * HOLE)
    fit = [formulas["exponential_stiffness"](diameter=HOLE, grip_length=grip * HOLE, elastic_modulus=e * STEEL,
                                             fit_factor=0.78952, fit_exponent=0.62914) for e, _ in layers]
    unit = layers[0][0] * STEEL * HOLE
    return {"deformation cone": cones(formulas, grip, face, width, layers, angle) / unit,
            "30 degree frustum": cones(formulas, grip, face, width, layers, math.pi / 6) / unit,
            "exponential fit": len(fit) / sum(1 / k for k in fit) / unit}


def reference(grip, face, width, layers, fineness=1.0):
    """Stiffness by finite elements, in the same units."""
    first = layers[0][0]
    return clamped_stiffness(1.0, face, width, [(grip / len(layers), e / first, nu) for e, nu in layers], fineness)


def cases(step=1):
    """Yields material, bearing face, width in faces, grip, stiffness by finite elements, of every case or of each `step`th."""
    every = itertools.product(MATERIALS.items(), FACES, WIDTHS, GRIPS)
    for (name, layers), face, width, grip in itertools.islice(every, 0, None, step):
        yield name, face, width, grip, reference(grip, face, face * width, layers)


def applies(model, face, width, grip):
    bounds = RANGES[model]
    return all(low - 1e-9 <= value <= high + 1e-9 for value, (low, high) in
               ((face, bounds["face"]), (width, bounds["width"]), (grip, bounds["grip"])))


# Tapped holes: resilience of plate and tapped part together, with the extra length of 0.33 d that stands for the latter.
# In finite elements the wall of the hole is smooth and pulled evenly over one diameter; what the teeth of the thread yield
# is not in them, so the model is meant to lie above.
TAPPED_WIDTHS = (1.5, 3, 5, 8)
TAPPED_OFF = {"long": (2, 10, -3, 27), "short": (0.5, 1, 13, 60)}  # grip from, to; off by at least, at most, per cent
TAPPED_ANGLE = (-1, 9)  # how far the angle of turn is then off, at any grip, per cent


def tapped_models(formulas, grip, face, width):
    """Resilience times modulus and hole, of steel: the deformation cone as the library takes it, and 0.33 d."""
    angle = formulas["cone_angle_tapped"](
        grip_length=grip * HOLE, face_diameter=face * HOLE, plate_diameter=width * HOLE)
    reach = min(grip, max(0.0, (width - face) / 2 / math.tan(angle)))
    cone = formulas["cone_resilience"](thickness=reach * HOLE, hole_diameter=HOLE, face_diameter=face * HOLE,
                                       half_angle=angle, elastic_modulus=STEEL)
    sleeve = formulas["sleeve_resilience"](thickness=(grip - reach) * HOLE, hole_diameter=HOLE,
                                           plate_diameter=width * HOLE, elastic_modulus=STEEL)
    return (cone + sleeve) * STEEL * HOLE, 0.33 / (math.pi / 4)


def bolt(grip):
    """Resilience of a bolt with full shank beside them: head 0.5 d, grip, engaged thread 0.5 d on the root area."""
    return (0.5 + grip) / (math.pi / 4) + 0.5 / (math.pi / 4 * 0.847**2)


def tapped_cases(step=1):
    """Yields bearing face, width in faces, grip, resilience by finite elements, of every case or of each `step`th."""
    steel = MATERIALS["steel"][0]
    for face, width, grip in itertools.islice(itertools.product(FACES, TAPPED_WIDTHS, GRIPS), 0, None, step):
        yield face, width, grip, tapped_compliance(1.0, face, face * width, grip, 1.0, steel, steel)
