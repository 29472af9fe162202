"""How much a board twists: from rings that run out along it, and from spiral grain. Never a false zero.

Along a board the section turns with the ring frame; a fixed reference ray shows it: the centre's polar angle θ
goes to θ(1+b)/(1+a), so two ends whose piths lie in different directions turn against each other by
(b − a)/(1 + a) × the difference of θ. Spiral grain of slope s adds a shear 2bs between the tangential
direction and the grain, whose curl turns the sections. THEORY.md derives both.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from movement_core.errors import InputError
from movement_core.section.board import Board, holds_pith
from movement_core.section.field import Floats
from movement_core.wording import phrase, say

SLOPE_UNKNOWN = phrase(
    "slope of spiral grain not stated: the twist is unknown, and spiral grain usually twists most"
)
FAR_END_TAKEN_ALIKE = phrase("rings at the far end not stated: taken as at the near end")
LENGTH_UNKNOWN = phrase("length not stated: the twist is unknown")


@dataclass(frozen=True)
class Twist:
    """Turn of the far end against the near end, degrees; positive turns x toward y (right-handed along +length).

    (…) as the change of moisture; None is *not known*.
    """

    from_rings_degrees: Floats | None
    from_slope_degrees: tuple[Floats, Floats] | None  # least and most: the slope may grow outward or not
    degrees: tuple[Floats, Floats] | None  # both together
    corner_lift_mm: tuple[Floats, Floats] | None  # how far one corner stands off the plane of the other three
    flags: tuple[str, ...]


def board_twist(board: Board, mc_change: ArrayLike) -> Twist:
    """The twist of a free board for changes of MC (…), percent points.

    Raises
    ------
    InputError : the pith is within the section at an end; no twist is computed for boxed heart.
    """
    ends = [end for end in (board.pith_mm, board.far_pith_mm) if end is not None]
    if any(holds_pith(board.width_mm, board.thickness_mm, end) for end in ends):
        raise InputError(
            say("the section holds its pith, {ends}", ends=ends),
            where=board.where,
            allowed=say("pith outside at both ends"),
            todo=say("take a boxed-heart board to twist by an amount that is not known"),
        )  # fmt: skip
    radial, tangential = board.strains(mc_change)
    flags = []
    from_rings = None
    if board.far_pith_mm is not None:
        turn = centre_turn(board.pith_mm, board.far_pith_mm)
        from_rings = np.degrees(turn) * (tangential - radial) / (1.0 + radial)
    from_slope = None
    if board.length_mm is None:
        flags.append(LENGTH_UNKNOWN)
    if board.grain_slope is None:
        flags.append(SLOPE_UNKNOWN)
    elif board.length_mm is not None:
        rates = spiral_rates(board)
        turns = [-np.degrees(tangential * board.grain_slope * board.length_mm * rate) for rate in rates]
        from_slope = np.minimum(*turns), np.maximum(*turns)
    if from_slope is None:
        return Twist(from_rings, None, None, None, tuple(flags))
    if from_rings is None:
        flags.append(FAR_END_TAKEN_ALIKE)
    total = tuple(turn + (0.0 if from_rings is None else from_rings) for turn in from_slope)
    lifts = np.sort([np.abs(np.tan(np.radians(turn))) * board.width_mm for turn in total], axis=0)
    crossing = np.signbit(total[0]) != np.signbit(total[1])
    lift = np.where(crossing, 0.0, lifts[0]), lifts[1]
    return Twist(from_rings, from_slope, (total[0], total[1]), lift, tuple(flags))


def centre_turn(near: tuple[float, float], far: tuple[float, float]) -> float:
    """Change of the polar angle of the section's centre as seen from the pith, near → far, radians in −π…π."""
    angles = [np.arctan2(-y, -x) for x, y in (near, far)]
    return float((angles[1] - angles[0] + np.pi) % (2.0 * np.pi) - np.pi)


def spiral_rates(board: Board) -> tuple[float, float]:
    """Turn per unit of shrinkage × slope × length, 1/mm, for the two laws of slope over the radius.

    First a slope that is the same at every radius: the mean of 1/r, weighted over the section by the stress
    function of torsion. Then one that grows in proportion to the radius: 2/r₀, r₀ at the section's centre, where
    the slope is stated; that is the figure of Stevens and Johnston (1960) for whole poles (recalled).
    """
    w, t = board.width_mm, board.thickness_mm
    nodes, weights = np.polynomial.legendre.leggauss(24)
    x, y = 0.5 * w * nodes[:, None], 0.5 * t * nodes[None, :]
    weight = weights[:, None] * weights[None, :] * torsion_function(x, y, w, t)
    weight = weight / weight.sum()
    distance = np.hypot(x - board.pith_mm[0], y - board.pith_mm[1])
    centre = float(np.hypot(*board.pith_mm))
    return float((weight / distance).sum()), 2.0 / centre


def torsion_function(x: Floats, y: Floats, width: float, thickness: float, terms: int = 25) -> Floats:
    """Prandtl's stress function of a twisted rectangle (unscaled): the series of Saint-Venant.

    Shear stiffness is taken alike both ways; G_LR and G_LT of most woods differ by a third at most.
    """
    long, short, along, across = (width, thickness, x, y) if width >= thickness else (thickness, width, y, x)
    total = np.zeros(np.broadcast_shapes(np.shape(x), np.shape(y)))
    for k in range(terms):
        n = 2 * k + 1
        # cosh(nπ·along/short) / cosh(nπ·long/2short), written so that it cannot overflow
        reach = np.exp(n * np.pi * (np.abs(along) - 0.5 * long) / short)
        ratio = reach * (1.0 + np.exp(-2.0 * n * np.pi * np.abs(along) / short))
        ratio = ratio / (1.0 + np.exp(-n * np.pi * long / short))
        total = total + (-1.0) ** k / n**3 * (1.0 - ratio) * np.cos(n * np.pi * across / short)
    return np.asarray(total, dtype=np.float64)
