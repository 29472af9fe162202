"""Solved parts as elastic bodies: their stiffness along their own axes, and how much of each a joint takes hold of.

A joint strains not the whole part but what lies near it: by Saint-Venant's principle its hold fades sideways.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.piece.contact.network import ElasticParts
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.solve import SolvedPart
from movement_core.piece.stiffness import BoardStiffness, board_stiffness
from movement_core.wood import Species
from movement_core.wording import say

# Moduli of what is no wood, MPa. Sheets: between MDF (2 500 to 3 000) and plywood (5 000 to 8 000), through the
# thickness a tenth; inert: glass and aluminium, the softest of the usual ones (all from memory).
SHEET_MPA, SHEET_THROUGH_MPA, INERT_MPA = 4000.0, 400.0, 70000.0
SHEAR_SHARE = 0.4  # shear modulus ÷ modulus of sheets and inert materials
NOT_KNOWN_MPA = 1000.0  # of a part whose wood or grain is not known: wood across the grain (own)
WIDTH, THICKNESS, GRAIN = range(3)
LEAST_SPAN = 0.02  # of a part's size: joints closer together than this strain no less of it (own judgement)


@dataclass(frozen=True, eq=False)
class Moduli:
    """Moduli of a part along its width, thickness and grain, and of shear in its face, MPa; what was filled in."""

    e_mpa: tuple[float, float, float]
    shear_mpa: float
    filled: tuple[str, ...] = ()


@dataclass(frozen=True, eq=False)
class Hold:
    """Where a joint or a stop takes hold of a part: points (K, 3) mm, and the directions (3, 3) in which it holds.

    ``passes``: it only passes on what other holds do, as an edge glued to the like does, and tells nothing of how much
    of the section they reach.
    """

    part: int
    points: Floats
    directions: Floats
    passes: bool = False


def moduli_of(solved: SolvedPart, known: dict[tuple[Species, float], BoardStiffness] | None = None) -> Moduli:
    """Moduli of one part; ``known`` remembers those of boards from part to part.

    Where the rings of wood are not said the stiffest cut is taken.
    """
    species, frame = solved.part.species.value, solved.part.frame
    if species is None or (species.kind == "wood" and not frame.grain.known):
        return Moduli(
            (NOT_KNOWN_MPA,) * 3, SHEAR_SHARE * NOT_KNOWN_MPA, (say("its wood or grain is not known"),)
        )
    if species.kind == "inert":
        return Moduli((INERT_MPA,) * 3, SHEAR_SHARE * INERT_MPA)
    if species.kind == "sheet":
        thin = int(np.argmin(frame.size_mm))
        each = [SHEET_THROUGH_MPA if axis == thin else SHEET_MPA for axis in range(3)]
        note = say("stiffness of {name} taken as that of a usual sheet", name=species.name)
        return Moduli((each[0], each[1], each[2]), SHEAR_SHARE * SHEET_MPA, (note,))
    boards = {} if known is None else known

    def board(angle: float) -> BoardStiffness:
        key = species, round(angle, 1)
        if key not in boards:
            boards[key] = board_stiffness(*key)
        return boards[key]

    angle = solved.ring_angle_deg
    if angle is None:
        flat, quarter = board(0.0), board(90.0)
        across = max(flat.elastic.e_across_mpa, quarter.elastic.e_across_mpa)
        filled = (*map(str, flat.filled), say("rings not said: the stiffer cut taken"))
        shear = max(flat.elastic.shear_mpa, quarter.elastic.shear_mpa)
        return Moduli((across, across, flat.elastic.e_along_mpa), shear, filled)
    wide, through = board(angle), board(90.0 - angle)
    e = wide.elastic.e_across_mpa, through.elastic.e_across_mpa, wide.elastic.e_along_mpa
    return Moduli(e, wide.elastic.shear_mpa, tuple(map(str, wide.filled)))


def elastic_parts(
    solved: Sequence[SolvedPart], moduli: Sequence[Moduli], holds: Sequence[Hold]
) -> ElasticParts:
    """Parts as the network wants them.

    Parameters
    ----------
    solved, moduli : of every part. holds : everything that may strain one.

    Notes
    -----
    Along an axis a part strains between the outermost of its holds. What takes part in the section is its full
    thickness and, sideways, the stretch of the holds and on either side of it (span ÷ π) √(G ÷ E): the first
    harmonic of a plane stress E u_xx + G u_zz = 0 fades as exp(−z π √(E/G) ÷ span).
    """
    axes = np.array([one.part.frame.axes for one in solved])
    centre = np.array([one.part.frame.centre for one in solved])
    size = np.maximum(np.array([one.part.frame.size_mm for one in solved]), 1e-3)
    low, high = -size / 2, size / 2
    section = np.ones((len(solved), 3))
    of_part = _reaches(holds, axes, centre)
    for part, one in enumerate(solved):
        sizes = size[part].tolist()
        full = float(np.prod(size[part]))
        solid = min(1.0, one.part.volume_mm3 / full) if one.part.volume_mm3 > 0 else 1.0
        for axis in range(3):
            here = [reach for reach in of_part.get(part, ()) if reach.along[axis] > 0.25]
            half = sizes[axis] / 2
            start, end = -half, half
            if here:
                least = min(reach.low[axis] for reach in here)
                most = max(reach.high[axis] for reach in here)
                least, most = min(max(least, -half), half), min(max(most, -half), half)
                if most - least > LEAST_SPAN * sizes[axis]:
                    start, end = least, most
            low[part, axis], high[part, axis] = start, end
            fades = (end - start) / math.pi * math.sqrt(moduli[part].shear_mpa / moduli[part].e_mpa[axis])
            telling = [reach for reach in here if not reach.passes] or here
            section[part, axis] = solid * _section(axis, telling, sizes, fades)
    stiffness = section * np.array([one.e_mpa for one in moduli])
    return ElasticParts(axes, centre, stiffness, low, high)


@dataclass(frozen=True)
class _Reach:
    """A hold in the axes of its part: from where to where it reaches, and how much it holds along each."""

    low: list[float]
    high: list[float]
    along: list[float]
    passes: bool


def _reaches(holds: Sequence[Hold], axes: Floats, centre: Floats) -> dict[int, list[_Reach]]:
    """All holds by the index of their part, in their order."""
    found: dict[int, list[_Reach]] = {}
    if not holds:
        return found
    part = np.array([hold.part for hold in holds])
    count = np.array([len(hold.points) for hold in holds])
    of_point = np.repeat(part, count)
    away = np.concatenate([hold.points for hold in holds]) - centre[of_point]
    own = np.einsum("ni,nai->na", away, axes[of_point])
    starts = np.cumsum(count) - count
    low, high = np.minimum.reduceat(own, starts).tolist(), np.maximum.reduceat(own, starts).tolist()
    directions = np.array([hold.directions for hold in holds])
    along = np.einsum("hab,hbc,hac->ha", axes[part], directions, axes[part], optimize=True).tolist()
    for hold, least, most, held in zip(holds, low, high, along):
        found.setdefault(hold.part, []).append(_Reach(least, most, held, hold.passes))
    return found


def _section(axis: int, taken: Sequence[_Reach], size: Sequence[float], fades: float) -> float:
    """Area that takes part in straining along an axis, mm²."""
    area = 1.0
    for other in range(3):
        if other == axis:
            continue
        half = size[other] / 2
        if other == THICKNESS or not taken:
            area *= 2 * half
            continue
        stretches = sorted(
            (max(-half, reach.low[other] - fades), min(half, reach.high[other] + fades)) for reach in taken
        )
        length, reached = 0.0, -half
        for start, end in stretches:
            length += max(0.0, end - max(start, reached))
            reached = max(reached, end)
        area *= max(length, 1e-3 * half)
    return area
