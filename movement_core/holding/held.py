"""What holding a panel gave: its surface, how far it is out of flat, where it lifts, and every force."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.holding import basis
from movement_core.holding.free_surface import free_height
from movement_core.holding.model import LoadCase, Plate
from movement_core.wording import phrase

if TYPE_CHECKING:
    from movement_core.holding.plate import Trial

Array = NDArray[np.float64]

LIFT_MM = 0.05  # a gap a maker can find with a thin feeler (own)
ROCK_MM = 0.3  # a gap under a top that is felt as rocking (own)

DEEP_BENDING = phrase("bent by more than half its thickness: beyond thin-plate theory, forces are a guess")
DEEP_CUP = phrase(
    "free cup more than half its thickness: a curved panel is stiffer than shown, forces are too low"
)
TIPS = phrase("tips off its support: its weight or an anchor beyond the support turns it over")
ROCKS = phrase("free to rock: what it stands on or is held by lies on one line")


@dataclass(frozen=True, eq=False)
class BeamResult:
    """One batten or breadboard end: its own bend (range of its line), greatest moment, its joints' pulls."""

    name: str
    bend_mm: float
    moment_n_mm: float
    joint_force_n: Array  # (j,) positive: panel pulled toward the beam
    joint_points_mm: Array  # (j, 2)


@dataclass(frozen=True)
class Lifted:
    """A stretch of a bearing that the panel has left: its two ends and the widest gap, mm."""

    bearing: int
    start_mm: tuple[float, float]
    end_mm: tuple[float, float]
    gap_mm: float


@dataclass(frozen=True, eq=False)
class Held:
    """The panel in one load case; lengths mm, forces N, heights above the plane of the support.

    Attributes
    ----------
    along_mm, across_mm, height_mm : (p,), (q,), (p, q) the surface, not a number beyond a shaped top's outline;
        glue lines are among ``across_mm``.
    out_of_flat_mm : range of the surface about its best plane: what a straightedge and winding sticks show.
    deflection_mm : greatest elastic deflection from the free shape, about its best plane.
    anchor_force_n, anchor_lift_mm : (a,) pull in each anchor (negative: push), and the panel's lift there.
    contact_force_n, contact_gap_mm : (m,) push of the frame at each contact point, and the gap where none.
    edge_pressure_n_mm : (m,) the push per mm of edge.
    lifted : stretches of bearing with a gap above 0.05 mm.
    beams : one result for each beam.
    flags : plain sentences on what the figures do not cover.
    coefficients : (N,) unknowns, to start a similar trial from.
    steps : Newton steps taken.
    """

    case: str
    along_mm: Array
    across_mm: Array
    height_mm: Array
    out_of_flat_mm: float
    deflection_mm: float
    anchor_force_n: Array
    anchor_lift_mm: Array
    contact_points_mm: Array
    contact_force_n: Array
    contact_gap_mm: Array
    edge_pressure_n_mm: Array
    lifted: tuple[Lifted, ...]
    beams: tuple[BeamResult, ...]
    flags: tuple[str, ...]
    coefficients: Array
    steps: int

    @property
    def worst_anchor_n(self) -> float:
        """Greatest pull in an anchor, N; 0 without anchors."""
        return float(np.max(self.anchor_force_n, initial=0.0))


def surface_result(
    trial: Trial,
    case: LoadCase,
    coefficients: Array,
    *,
    anchor_points_mm: Array,
    anchor_force_n: Array,
    anchor_lift_mm: Array,
    contact_force_n: Array,
    contact_gap_mm: Array,
    beams: tuple[BeamResult, ...],
    steps: int,
    carried: bool,
) -> Held:
    """Sample the surface on a grid and read off the figures."""
    plate, (n_along, n_across) = trial.plate, trial.terms
    lines = case.free.lines_mm + (case.free_far.lines_mm if case.free_far else ())
    samples = _samples(plate, trial.terms, lines)
    own = coefficients[: n_along * n_across].reshape(n_along, n_across)
    shape = (len(samples.along_mm), len(samples.across_mm))
    elastic = (samples.values_along @ own @ samples.values_across.T).ravel()[samples.inside]
    if len(samples.rim_along):
        rim = np.sum((samples.rim_along @ own) * samples.rim_across, axis=1)
        elastic = np.concatenate([elastic, rim])
    free = free_height(plate, case, samples.points_mm)
    deflection = float(np.max(np.abs(samples.off_plane(elastic))))
    surface = np.full(shape[0] * shape[1], np.nan)
    surface[samples.inside] = (free + elastic)[: np.count_nonzero(samples.inside)]
    flags = []
    if deflection > plate.thickness_mm / 2:
        flags.append(DEEP_BENDING)
    if np.ptp(samples.off_plane(free)) > plate.thickness_mm / 2 and deflection > 1e-3:
        flags.append(DEEP_CUP)
    contacts = trial.contacts
    loaded = np.vstack(
        [contacts.points_mm[contact_force_n > 1e-6], anchor_points_mm[np.abs(anchor_force_n) > 0.1]]
    )
    rigid = np.abs(coefficients[list(trial.rigid[:3])])
    if carried and np.max(rigid) > max(0.1 * max(plate.length_mm, plate.width_mm), 3 * np.ptp(free)):
        flags.append(TIPS)
    stands_off = bool(np.max(contact_gap_mm, initial=0.0) > ROCK_MM) or not len(contact_gap_mm)
    narrow = len(loaded) > 0 and _narrowest(loaded) < 0.1 * min(plate.length_mm, plate.width_mm)
    if carried and narrow and stands_off:
        flags.append(ROCKS)
    return Held(
        case.name,
        samples.along_mm,
        samples.across_mm,
        surface.reshape(shape),
        float(np.ptp(samples.off_plane(free + elastic))),
        deflection,
        anchor_force_n,
        anchor_lift_mm,
        contacts.points_mm,
        contact_force_n,
        contact_gap_mm,
        contact_force_n / contacts.reach_mm,
        _lifted(trial, contact_gap_mm),
        beams,
        tuple(flags),
        coefficients,
        steps,
    )


@dataclass(frozen=True, eq=False)
class _Samples:
    """Where a surface is looked at: a grid (glue lines included) and, on shaped tops, the outline's corners."""

    along_mm: Array  # (p,)
    across_mm: Array  # (q,)
    values_along: Array  # (p, n) basis
    values_across: Array  # (q, n)
    inside: NDArray[np.bool_]  # (p·q,) of the grid
    rim_along: Array  # (k, n) basis at the outline's corners
    rim_across: Array
    points_mm: Array  # (j, 2) the inside grid points, then the corners
    plane: Array  # (j, 3) constant, along, across
    fit: Array  # (3, j) heights → their least-squares plane, each point weighted by the area it stands for

    def off_plane(self, height: Array) -> Array:
        """(j,) heights about their best plane."""
        result: Array = height - self.plane @ (self.fit @ height)
        return result


@lru_cache(maxsize=16)
def _samples(plate: Plate, terms: tuple[int, int], lines_mm: tuple[float, ...]) -> _Samples:
    half = plate.width_mm / 2
    lines = np.array(lines_mm)
    along = np.linspace(-plate.length_mm / 2, plate.length_mm / 2, 33)
    across = np.unique(np.concatenate([np.linspace(-half, half, 41), lines[np.abs(lines) < half]]))
    grid = np.stack(np.meshgrid(along, across, indexing="ij"), axis=-1).reshape(-1, 2)
    inside = plate.holds(grid)
    rim = np.array(plate.outline_mm, dtype=float).reshape(-1, 2)
    points = np.vstack([grid[inside], rim])
    weight = np.concatenate(
        [np.outer(_trapezoid(along), _trapezoid(across)).ravel()[inside], np.zeros(len(rim))]
    )
    plane = np.column_stack([np.ones(len(points)), points])
    weighted = (plane * weight[:, None]).T
    samples = _Samples(
        along,
        across,
        basis.values(along, plate.length_mm, terms[0]),
        basis.values(across, plate.width_mm, terms[1]),
        inside,
        basis.values(rim[:, 0], plate.length_mm, terms[0]),
        basis.values(rim[:, 1], plate.width_mm, terms[1]),
        points,
        plane,
        np.linalg.solve(weighted @ plane, weighted),
    )
    for array in (along, across, points):
        array.setflags(write=False)  # shared between results
    return samples


def _trapezoid(places: Array) -> Array:
    steps = np.diff(places)
    return np.concatenate([steps[:1], steps[:-1] + steps[1:], steps[-1:]]) / 2


def _narrowest(points: ArrayLike) -> float:
    """Least width of a set of points over all directions: 0 for points on one line or fewer than three."""
    places = np.asarray(points, dtype=float).reshape(-1, 2)
    if len(places) < 3:
        return 0.0
    angles = np.linspace(0, np.pi, 60, endpoint=False)
    return float(np.min(np.ptp(places @ np.stack([np.cos(angles), np.sin(angles)]), axis=0)))


def _lifted(trial: Trial, gap: Array) -> tuple[Lifted, ...]:
    contacts = trial.contacts
    found = []
    for first, last in contacts.runs:
        open_here = np.concatenate([[False], gap[first:last] > LIFT_MM, [False]])
        starts = np.flatnonzero(~open_here[:-1] & open_here[1:]) + first
        ends = np.flatnonzero(open_here[:-1] & ~open_here[1:]) + first
        for a, b in zip(starts, ends):
            head, tail = contacts.points_mm[a], contacts.points_mm[b - 1]
            found.append(
                Lifted(
                    int(contacts.bearing[a]),
                    (float(head[0]), float(head[1])),
                    (float(tail[0]), float(tail[1])),
                    float(np.max(gap[a:b])),
                )
            )
    return tuple(found)
