"""Networks of elastic parts against closed forms, independent solvers and a plane finite element model."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.piece.contact.network import ElasticParts, Network, Stops, Ties
from movement_core.piece.contact.pressing import pressing_forces
from movement_core.sources import DERIVED, RECALLED
from tests.validation.record import compared, within_range

GERE = "Gere and Goodno, Mechanics of Materials"
SERIES = "springs in series"

STIFF = 1e10  # N/mm: a joint that does not give
RIGID = 1e12  # N: a part that does not strain


def bars(stiffness_n, low, high, centre=None):
    """Parts along x; stiffness along y and z does not matter."""
    low, high = np.asarray(low, float), np.asarray(high, float)
    count = len(low)
    middle = (low + high) / 2 if centre is None else np.asarray(centre, float)
    box = np.ones((count, 3))
    return ElasticParts(
        np.tile(np.eye(3), (count, 1, 1)),
        np.stack([middle, np.zeros(count), np.zeros(count)], axis=1),
        np.asarray(stiffness_n, float)[:, None] * box,
        np.stack([low - middle, -np.ones(count), -np.ones(count)], axis=1),
        np.stack([high - middle, np.ones(count), np.ones(count)], axis=1),
    )


def ties(rows, stiffness=STIFF):
    """(first, second, x) rows."""
    return Ties(
        np.array([row[:2] for row in rows], dtype=np.intp),
        np.array([[row[2], 0.0, 0.0] for row in rows]),
        np.array([np.eye(3) * (row[3] if len(row) > 3 else stiffness) for row in rows]),
    )


def along_x(strains):
    free = np.zeros((len(strains), 3, 1))
    free[:, 0, 0] = strains
    return free


def test_two_bars_between_walls():
    """Σ ε L = F Σ L/(E A): bars in series between unyielding supports (Gere and Goodno, Mechanics of Materials,
    ch. 2, thermal effects; from memory)."""
    parts = bars([RIGID, 700 * 1000, 1200 * 500], [-100, 0, 300], [0, 300, 500])
    network = Network(parts, ties([(0, 1, 0.0), (1, 2, 300.0), (2, 0, 500.0)]))
    # The wall is one part: it reaches round, so that its other end stands at 500 mm.
    wide = bars([RIGID, 700 * 1000, 1200 * 500], [0, 0, 300], [500, 300, 500])
    network = Network(wide, network.ties)
    found = network.solve(along_x([0.0, 0.01, 0.004]))
    force = (0.01 * 300 + 0.004 * 200) / (300 / (700 * 1000) + 200 / (1200 * 500))
    ours = np.abs(network.tie_force_n(found)[:, 0, 0])
    compared("two bars between walls", f"{GERE}, ch. 2", RECALLED, force, ours, "N", share=1e-3)
    middle = 0.01 * 300 - force * 300 / (700 * 1000)  # where the two meet
    assert found.shift_mm[1, 0, 0] + found.strain[1, 0, 0] * 150 == pytest.approx(middle, rel=1e-3)


def test_a_bar_of_steel_warmed_between_walls():
    """σ = E α ΔT, 200 GPa · 12 × 10⁻⁶ · 50 = 120 MPa whatever its length (textbook constants, from memory)."""
    area = 800.0
    parts = bars([RIGID, 200e3 * area], [0, 0], [750, 750])
    network = Network(parts, ties([(0, 1, 0.0), (0, 1, 750.0)]))
    found = network.solve(along_x([0.0, 12e-6 * 50]))
    ours, source = np.abs(network.tie_force_n(found)[:, 0, 0]) / area, "textbook constants of steel"
    compared("steel warmed between walls", source, RECALLED, 120.0, ours, "MPa", share=1e-3)


def test_two_strips_glued_face_to_face_share():
    """Both come to the mean of their free strains weighted by E A; ± F = ΔE A₁ E A₂ / (E A₁ + E A₂).

    The plane part of Timoshenko's bimetal strip (J. Opt. Soc. Am. 11, 1925), kept from bending.
    """
    one, other = 700.0 * 3000, 12000.0 * 400
    parts = bars([one, other], [-200, -200], [200, 200])
    places = np.array([-1, 1]) * 400 / np.sqrt(12)
    network = Network(parts, ties([(0, 1, x) for x in places]))
    found = network.solve(along_x([0.012, 0.0005]))
    shared = (one * 0.012 + other * 0.0005) / (one + other)
    assert found.strain[:, 0, 0] == pytest.approx([shared, shared], rel=1e-4)
    force = (0.012 - 0.0005) * one * other / (one + other)
    kept = np.array([one, other]) * found.kept[:, 0, 0]
    source = "Timoshenko, J. Opt. Soc. Am. 11 (1925), plane part"
    compared("two strips glued face to face", source, RECALLED, [-force, force], kept, "N", share=1e-3)
    # Two springs stand for a line of glue; what they turn about its middle is what the strips bear.
    assert abs(float(places @ network.tie_force_n(found)[:, 0, 0])) / 400 == pytest.approx(force, rel=1e-3)


def test_a_bolt_in_a_sleeve():
    """Sleeve of bronze on a bolt of steel, warmed: the sleeve's σ = (α_s − α_b) ΔT E_s E_b A_b / (E_s A_s + E_b A_b)
    (Gere and Goodno, Mechanics of Materials, example on a sleeve and bolt assembly; formula from memory)."""
    sleeve_e, bolt_e, sleeve_a, bolt_a = 100e3, 200e3, 480.0, 490.0
    parts = bars([sleeve_e * sleeve_a, bolt_e * bolt_a], [0, 0], [180, 180])
    found = Network(parts, ties([(0, 1, 0.0), (0, 1, 180.0)])).solve(along_x([20e-6 * 60, 12e-6 * 60]))
    sleeve = 8e-6 * 60 * sleeve_e * bolt_e * bolt_a / (sleeve_e * sleeve_a + bolt_e * bolt_a)
    bolt = 8e-6 * 60 * sleeve_e * bolt_e * sleeve_a / (sleeve_e * sleeve_a + bolt_e * bolt_a)
    stress = np.array([sleeve_e, bolt_e]) * found.kept[:, 0, 0]
    source = f"{GERE}, sleeve and bolt"
    compared("bolt in a sleeve", source, RECALLED, [-sleeve, bolt], stress, "MPa", share=1e-3)


def test_a_bolted_sandwich_of_three_woods():
    """Plates under one bolt: bolt force = Σ ε t / (Σ t/(E A) + l/(E A)_bolt), springs in series."""
    thick = np.array([40.0, 25.0, 60.0])
    each = np.array([500.0 * 900, 350.0 * 900, 800.0 * 900])
    free = np.array([0.01, 0.02, -0.003])
    ends = np.concatenate([[0.0], np.cumsum(thick)])
    bolt = 200e3 * 28.0
    parts = bars([*each, bolt], [*ends[:-1], 0.0], [*ends[1:], 125.0])
    joined = [(0, 1, ends[1]), (1, 2, ends[2]), (3, 0, 0.0), (3, 2, 125.0)]
    found = Network(parts, ties(joined)).solve(along_x([*free, 0.0]))
    force = float(free @ thick) / float((thick / each).sum() + 125.0 / bolt)
    ours = bolt * found.kept[3, 0, 0]
    compared("bolt through three woods", SERIES, DERIVED, force, ours, "N", share=1e-3)
    assert each * found.kept[:3, 0, 0] == pytest.approx(-force, rel=1e-3)


@pytest.mark.parametrize("count", [2, 7, 40])
def test_a_chain_of_springs(count):
    """Parts of any stiffness joined by springs of any stiffness between walls: F = Σ ε L / Σ (L/EA + 1/k)."""
    rng = np.random.default_rng(count)
    length, stiff = rng.uniform(20, 400, count), 10 ** rng.uniform(4, 7, count)
    spring, free = 10 ** rng.uniform(3, 6, count + 1), rng.uniform(-0.01, 0.02, count)
    ends = np.concatenate([[0.0], np.cumsum(length)])
    parts = bars([RIGID, *stiff], [0.0, *ends[:-1]], [ends[-1], *ends[1:]])
    rows = [(n, (n + 1) % (count + 1), ends[n], spring[n]) for n in range(count + 1)]
    network = Network(parts, ties(rows))
    found = network.solve(along_x([0.0, *free]))
    force = float(free @ length) / float((length / stiff).sum() + (1 / spring).sum())
    ours = np.abs(network.tie_force_n(found)[:, 0, 0])
    compared("chains of springs", SERIES, DERIVED, abs(force), ours, "N", share=1e-3)


def stopped(room_left, room_right, strain, length=300.0, stiff=700.0 * 1000):
    """A bar that lies loosely between two stops of one wall."""
    parts = bars([RIGID, stiff], [-room_left, 0.0], [length + room_right, length])
    network = Network(parts, ties([(0, 1, length / 2, 1e-3)]))
    at = np.array([[-room_left, 0.0], [length + room_right, length]])
    stops = Stops(
        np.array([[0, 1], [0, 1]], dtype=np.intp),
        np.stack([at, np.zeros((2, 2)), np.zeros((2, 2))], axis=2),
        np.array([[1.0, 0, 0], [-1.0, 0, 0]]),
        np.array([room_left, room_right], float),
        np.full(2, 1e-12),
    )
    return network, stops, network.solve(along_x([0.0, strain]), stops)


@pytest.mark.parametrize("rooms", [(1.0, 1.0), (0.0, 2.0), (3.0, 0.5), (0.0, 0.0)])
def test_a_bar_between_two_stops(rooms):
    """Unilateral: nothing until it has used up all its room, then F = E A (ε − room/L), at both ends alike."""
    for strain in (-0.01, 0.0, 0.4 * sum(rooms) / 300, 0.02):
        network, stops, found = stopped(*rooms, strain)
        force = max(0.0, 700.0 * 1000 * (strain - sum(rooms) / 300))
        ours, source = found.stop_force_n[:, 0], "E A (ε − room/L), one-sided"
        compared("bar between two stops", source, DERIVED, force, ours, "N", share=2e-4, within=0.02)
        assert network.room_mm(stops, found).min() > -1e-3


# ---- independent solvers ---------------------------------------------------------------------------------------


def random_network(seed, count=12, joints=30):
    rng = np.random.default_rng(seed)
    axes = np.linalg.qr(rng.normal(size=(count, 3, 3)))[0]
    centre = rng.uniform(0, 1000, (count, 3))
    low, high = rng.uniform(-300, -20, (count, 3)), rng.uniform(20, 300, (count, 3))
    parts = ElasticParts(axes, centre, 10 ** rng.uniform(5, 7, (count, 3)), low, high)
    chain = [(n, n + 1) for n in range(count - 1)]
    more = [tuple(rng.choice(count, 2, replace=False)) for _ in range(joints - len(chain))]
    pairs = np.array(chain + more, dtype=np.intp)
    own = rng.uniform(low[pairs[:, 0]], high[pairs[:, 0]])
    points = centre[pairs[:, 0]] + np.einsum("jab,ja->jb", axes[pairs[:, 0]], own)
    half = rng.normal(size=(joints, 3, 3))
    stiffness = half @ np.swapaxes(half, 1, 2) * 10 ** rng.uniform(2, 5, (joints, 1, 1))
    return parts, Ties(pairs, points, stiffness), rng.uniform(-0.02, 0.02, (count, 3, 2))


def energy_terms(parts, ties, free):
    """Rows (weight, coefficients, wanted) of the least squares that the energy is, written out one by one."""
    count = len(parts.centre)
    rows, wanted = [], []

    def place(part, point, state):
        """(3, 6N) coefficients and (3,) known part of the movement of a point."""
        matrix, known = np.zeros((3, 6 * count)), np.zeros(3)
        matrix[:, 6 * part : 6 * part + 3] = np.eye(3)
        for axis in range(3):
            unit = parts.axes[part][axis]
            own = float(unit @ (point - parts.centre[part]))
            inside = min(max(own, parts.low_mm[part][axis]), parts.high_mm[part][axis])
            matrix[:, 6 * part + 3 + axis] = unit * inside
            known += unit * (own - inside) * free[part, axis, state]
        return matrix, known

    for part in range(count):
        for axis in range(3):
            length = parts.high_mm[part][axis] - parts.low_mm[part][axis]
            row = np.zeros(6 * count)
            row[6 * part + 3 + axis] = np.sqrt(parts.stiffness_n[part][axis] * length)
            rows.append(row)
            wanted.append(row[6 * part + 3 + axis] * free[part, axis, 0])
    for (one, other), point, stiffness in zip(ties.pairs, ties.points, ties.stiffness):
        a, known_a = place(one, point, 0)
        b, known_b = place(other, point, 0)
        root = np.linalg.cholesky(stiffness + 1e-9 * np.eye(3)).T
        rows += list(root @ (b - a))
        wanted += list(root @ (known_a - known_b))
    ground = np.zeros((3, 6 * count))
    ground[:, :3] = 1e3 * np.eye(3)
    return np.array([*rows, *ground]), np.array([*wanted, 0.0, 0.0, 0.0])


@pytest.mark.parametrize("seed", range(6))
def test_random_networks_against_least_squares_of_scipy(seed):
    """The energy as least squares, term by term, minimised by scipy's LAPACK driver: forces within 0.1 %."""
    linalg = pytest.importorskip("scipy.linalg", reason="scipy is only here for comparison")
    parts, joined, free = random_network(seed)
    found = Network(parts, joined).solve(free)
    rows, wanted = energy_terms(parts, joined, free)
    unknown = linalg.lstsq(rows, wanted, lapack_driver="gelsy")[0].reshape(-1, 6)
    assert found.strain[:, :, 0] == pytest.approx(unknown[:, 3:], rel=1e-3, abs=1e-7)
    forces = parts.stiffness_n * (unknown[:, 3:] - free[:, :, 0])
    scale = float(np.abs(forces).max())
    ours, room = parts.stiffness_n * found.kept[:, :, 0], 1e-3 * scale
    source = "scipy, least squares of the energy"
    compared("forces in random networks", source, DERIVED, forces, ours, "N", share=1e-3, within=room)


@pytest.mark.parametrize("seed", range(4))
def test_stops_against_the_quadratic_programme_of_scipy(seed):
    """The stops' forces minimise ½ f·G f + room·f over f ≥ 0: scipy's non-negative least squares on G's root."""
    optimize = pytest.importorskip("scipy.optimize", reason="scipy is only here for comparison")
    rng = np.random.default_rng(seed)
    half = rng.normal(size=(14, 14))
    give = half @ half.T + 0.1 * np.eye(14)
    room = rng.normal(size=(14, 25))
    ours = pressing_forces(room, give)
    root = np.linalg.cholesky(give)
    for state in range(25):
        theirs, _ = optimize.nnls(root.T, -np.linalg.solve(root, room[:, state]))
        found, source = ours[:, state], "scipy, non-negative least squares"
        compared("forces of stops", source, DERIVED, theirs, found, "N", share=1e-6, within=1e-9)


@pytest.mark.parametrize(
    ("width", "length", "wide", "across", "shear", "batten", "at_end"),
    [
        (400.0, 1500.0, 50.0, 800.0, 900.0, 390e3, False),
        (400.0, 1500.0, 50.0, 800.0, 900.0, 390e3, True),
        (600.0, 1200.0, 30.0, 1200.0, 700.0, 200e3, False),
        (200.0, 900.0, 60.0, 600.0, 1100.0, 390e3, False),
        (400.0, 500.0, 80.0, 800.0, 900.0, 600e3, False),
    ],
)
def test_how_far_a_batten_holds_a_board(width, length, wide, across, shear, batten, at_end):
    """A batten glued across a wide board, at its middle or its end, against plane-stress elements of scikit-fem.

    ``batten`` is its modulus × height, N/mm; the board is 20 mm thick and would swell 1 %.
    """
    skfem = pytest.importorskip("skfem", reason="scikit-fem is only here for comparison")
    thick, along, strain = 20.0, 13000.0, 0.01
    held, far = (wide, length) if at_end else (wide / 2, length / 2)
    xs = np.linspace(0, width / 2, 21)
    zs = np.unique(np.concatenate([np.linspace(0, held, 5), np.geomspace(held, far, 26)]))
    basis = skfem.Basis(
        skfem.MeshQuad.init_tensor(xs, zs), skfem.ElementVector(skfem.ElementQuad2()), intorder=4
    )

    @skfem.BilinearForm
    def stiffness(u, v, w):
        e, f = u.grad, v.grad
        laid = np.where(w.x[1] < held, batten, 0.0)
        straight = (across * thick + laid) * e[0, 0] * f[0, 0] + along * thick * e[1, 1] * f[1, 1]
        return straight + shear * thick * (e[0, 1] + e[1, 0]) * (f[0, 1] + f[1, 0])

    @skfem.LinearForm
    def load(v, w):
        return across * thick * strain * v.grad[0, 0]

    fixed = np.concatenate(
        [
            basis.get_dofs(lambda x: np.abs(x[0]) < 1e-9).all(["u^1"]),
            basis.get_dofs(lambda x: np.abs(x[1]) < 1e-9).all(["u^2"]),
        ]
    )
    if at_end:  # a free end has no line of symmetry: one point keeps it from wandering off
        fixed = np.concatenate(
            [
                basis.get_dofs(lambda x: np.abs(x[0]) < 1e-9).all(["u^1"]),
                basis.get_dofs(lambda x: (np.abs(x[0]) < 1e-9) & (np.abs(x[1] - far) < 1e-9)).all(["u^2"]),
            ]
        )
    matrix, force = stiffness.assemble(basis), load.assemble(basis)
    moved = skfem.solve(*skfem.condense(matrix, force, D=np.unique(fixed)))
    stretched = basis.interpolate(moved).grad[0, 0]
    places = basis.global_coordinates()
    under = (places[1] < held) & (places[0] < xs[1])
    exact = batten * wide * float((stretched * basis.dx)[under].sum() / basis.dx[under].sum())

    fades = width / np.pi * np.sqrt(shear / across)
    reach = min(length, wide + (1 if at_end else 2) * fades)
    one, other = across * thick * reach, batten * wide
    parts = bars([one, other], [-width / 2, -width / 2], [width / 2, width / 2])
    ends = np.array([-1, 1]) * width / np.sqrt(12)
    found = Network(parts, ties([(0, 1, x) for x in ends])).solve(along_x([strain, 0.0]))
    ours = other * float(found.kept[1, 0, 0])
    # At a free end the board also bends in its plane, which lets out more.
    within_range(
        f"force in a batten glued across a board, {'at its end' if at_end else 'in its middle'}",
        "scikit-fem, plane stress", DERIVED, 0.95 * exact, (1.4 if at_end else 1.15) * exact, ours, "N",
        published=exact,
        note="the reach is a rule of one term; at a free end the board also bends in its plane" if at_end else "",
    )  # fmt: skip
