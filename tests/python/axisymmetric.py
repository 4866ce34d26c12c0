"""Linear elasticity of bodies of revolution by finite elements: biquadratic elements, NumPy and SciPy only.

Nothing here knows of bolts but the last functions. Coordinates are (r, z), displacements (u_r, u_z), loads are totals
around the circumference.
"""
import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve

GAUSS = np.array([-np.sqrt(0.6), 0.0, np.sqrt(0.6)])
WEIGHT = np.array([5.0, 8.0, 5.0]) / 9


def _line(x):
    """Quadratic shape functions on -1, 0, 1 and their slopes."""
    return (np.array([x * (x - 1) / 2, 1 - x * x, x * (x + 1) / 2]), np.array([x - 0.5, -2 * x, x + 0.5]))


def _shapes():
    """Values and natural slopes of the nine shape functions at the nine Gauss points; node 3 i + j sits at (r_i, z_j)."""
    values, slopes, weights = [], [], []
    for x, wx in zip(GAUSS, WEIGHT):
        for y, wy in zip(GAUSS, WEIGHT):
            (a, da), (b, db) = _line(x), _line(y)
            values.append(np.outer(a, b).ravel())
            slopes.append([np.outer(da, b).ravel(), np.outer(a, db).ravel()])
            weights.append(wx * wy)
    return np.array(values), np.array(slopes), np.array(weights)


class Body:
    """A mesh of nine-node elements with one material per element."""

    def __init__(self, nodes, elements, modulus, poisson):
        self.nodes, self.elements = np.asarray(nodes, float), np.asarray(elements, int)
        self.modulus = np.broadcast_to(np.asarray(modulus, float), len(self.elements))
        self.poisson = np.broadcast_to(np.asarray(poisson, float), len(self.elements))

    @classmethod
    def grid(cls, r, z, modulus, poisson):
        """A rectangle cut along the lines `r` and `z`; modulus and poisson are functions of the centres (r, z)."""
        def halves(lines):
            fine = np.empty(2 * len(lines) - 1)
            fine[::2], fine[1::2] = lines, (lines[:-1] + lines[1:]) / 2
            return fine

        r, z = np.asarray(r, float), np.asarray(z, float)
        radii, heights = np.meshgrid(halves(r), halves(z), indexing="ij")
        number = np.arange(radii.size).reshape(radii.shape)
        i, j = np.meshgrid(np.arange(len(r) - 1), np.arange(len(z) - 1), indexing="ij")
        elements = np.stack([number[2 * i + a, 2 * j + b] for a in range(3) for b in range(3)], axis=-1).reshape(-1, 9)
        centre_r = ((r[:-1] + r[1:]) / 2)[i].ravel()
        centre_z = ((z[:-1] + z[1:]) / 2)[j].ravel()
        return cls(np.stack([radii.ravel(), heights.ravel()], axis=1), elements,
                   modulus(centre_r, centre_z), poisson(centre_r, centre_z))

    def stiffness(self):
        """The assembled matrix, degrees of freedom (u_r, u_z) node by node."""
        values, slopes, weights = _shapes()
        corner = self.nodes[self.elements]                                  # element, node, (r, z)
        jacobian = np.einsum("gdn,enc->egdc", slopes, corner)
        volume = np.linalg.det(jacobian)
        gradient = np.einsum("egcd,gdn->egcn", np.linalg.inv(jacobian), slopes)
        radius = np.einsum("gn,en->eg", values, corner[:, :, 0])
        strain = np.zeros(volume.shape + (4, 9, 2))                         # rr, zz, around, rz
        strain[..., 0, :, 0] = gradient[..., 0, :]
        strain[..., 1, :, 1] = gradient[..., 1, :]
        strain[..., 2, :, 0] = values[None] / radius[..., None]
        strain[..., 3, :, 0] = gradient[..., 1, :]
        strain[..., 3, :, 1] = gradient[..., 0, :]
        strain = strain.reshape(volume.shape + (4, 18))
        shear = self.modulus / (2 * (1 + self.poisson))
        lame = 2 * shear * self.poisson / (1 - 2 * self.poisson)
        law = np.zeros((len(self.elements), 4, 4))
        law[:, :3, :3] = lame[:, None, None] + 2 * shear[:, None, None] * np.eye(3)
        law[:, 3, 3] = shear
        factor = 2 * np.pi * radius * volume * weights
        matrices = np.einsum("egip,eij,egjq,eg->epq", strain, law, strain, factor, optimize=True)
        freedom = (2 * self.elements[:, :, None] + np.arange(2)).reshape(-1, 18)
        rows, columns = np.repeat(freedom, 18, axis=1).ravel(), np.tile(freedom, (1, 18)).ravel()
        size = 2 * len(self.nodes)
        return coo_matrix((matrices.ravel(), (rows, columns)), shape=(size, size)).tocsr()

    def solve(self, prescribed, loads=None):
        """Displacements and support forces for `prescribed` {degree of freedom: value} and optional nodal loads."""
        matrix = self.stiffness()
        moved = np.zeros(matrix.shape[0])
        fixed = np.fromiter(prescribed, int)
        moved[fixed] = np.fromiter(prescribed.values(), float)
        free = np.setdiff1d(np.arange(matrix.shape[0]), fixed)
        load = np.zeros(matrix.shape[0]) if loads is None else loads
        moved[free] = spsolve(matrix[free][:, free].tocsc(), load[free] - matrix[free][:, fixed] @ moved[fixed])
        return moved.reshape(-1, 2), (matrix @ moved - load).reshape(-1, 2)


def graded(start, end, count, dense_start=False, dense_end=False):
    """Lines from start to end, crowded at the ends asked for."""
    x = np.linspace(0, 1, count + 1)
    if dense_start and dense_end:
        x = (1 - np.cos(np.pi * x)) / 2
        x = (1 - np.cos(np.pi * x)) / 2
    elif dense_start:
        x = x**3
    elif dense_end:
        x = 1 - (1 - x)**3
    return start + (end - start) * x


def clamped_body(hole, face, outer, layers, fineness=1.0):
    """Layers between two rings: the body, and the nodes under the upper and the lower ring.

    hole, face, outer: diameters of hole, bearing face and layers; layers: (thickness, modulus, poisson) from top to
    bottom, bonded to each other.
    """
    count = lambda n: max(3, int(round(n * fineness)))
    radii = [graded(hole / 2, face / 2, count(10), dense_end=True)]
    if outer > face * (1 + 1e-9):
        radii.append(graded(face / 2, outer / 2, count(16), dense_start=True)[1:])
    bounds = np.concatenate([[0], np.cumsum([t for t, _, _ in layers])])
    heights = [np.array([0.0])]
    for k, (low, high) in enumerate(zip(bounds[:-1], bounds[1:])):
        first, last = k == 0, k == len(layers) - 1
        heights.append(graded(low, high, count(22 if first and last else 14), first, last)[1:])
    which = lambda z: np.clip(np.searchsorted(bounds, z) - 1, 0, len(layers) - 1)
    moduli, poissons = np.array([e for _, e, _ in layers]), np.array([n for _, _, n in layers])
    body = Body.grid(np.concatenate(radii), np.concatenate(heights), lambda r, z: moduli[which(z)],
                     lambda r, z: poissons[which(z)])
    r, z = body.nodes.T
    pressed = r <= face / 2 * (1 + 1e-9)
    return body, np.flatnonzero(pressed & (z == 0)), np.flatnonzero(pressed & (z == bounds[-1]))


def clamped_stiffness(hole, face, outer, layers, fineness=1.0):
    """Stiffness of layers pressed together between two rigid, smooth rings: force over the approach of the two rings."""
    body, top, bottom = clamped_body(hole, face, outer, layers, fineness)
    prescribed = {2 * n + 1: 1.0 for n in top} | {2 * n + 1: 0.0 for n in bottom}
    _, support = body.solve(prescribed)
    return support[top, 1].sum()


def tapped_compliance(hole, face, outer, grip, engaged, plate, base, fineness=1.0):
    """Approach of a rigid, smooth ring to a tapped hole, for each unit of force.

    hole, face, outer: diameters of hole, bearing face and both parts; plate and base: (modulus, poisson), bonded to each
    other. The base is as deep as the parts are wide, and bored through. The thread pulls at the wall of the hole, evenly
    over `engaged` below the plate; its displacement counts with the same weights.
    """
    count = lambda n: max(3, int(round(n * fineness)))
    radii = [graded(hole / 2, face / 2, count(10), dense_end=True)]
    if outer > face * (1 + 1e-9):
        radii.append(graded(face / 2, outer / 2, count(16), dense_start=True)[1:])
    heights = [graded(0, grip, count(20), True, True), graded(grip, grip + engaged, count(14), True, True)[1:],
               graded(grip + engaged, grip + engaged + outer, count(14), dense_start=True)[1:]]
    choose = lambda i: lambda r, z: np.where(z < grip, plate[i], base[i])
    z_lines = np.concatenate(heights)
    body = Body.grid(np.concatenate(radii), z_lines, choose(0), choose(1))
    r, z = body.nodes.T
    wall = np.flatnonzero(np.isclose(r, hole / 2) & (z > grip - 1e-9) & (z < grip + engaged + 1e-9))
    wall = wall[np.argsort(z[wall])]
    weights = np.zeros(len(wall))
    for k in range(0, len(wall) - 2, 2):  # Simpson's rule along each element
        weights[k:k + 3] += np.array([1, 4, 1]) / 6 * (z[wall[k + 2]] - z[wall[k]])
    weights /= weights.sum()
    loads = np.zeros(2 * len(body.nodes))
    loads[2 * wall + 1] = -weights
    ring = np.flatnonzero((r <= face / 2 * (1 + 1e-9)) & (z == 0))
    moved, support = body.solve({2 * n + 1: 0.0 for n in ring}, loads)
    assert abs(support[ring, 1].sum() - 1) < 1e-6  # the ring carries it all
    return -(weights * moved[wall, 1]).sum()
