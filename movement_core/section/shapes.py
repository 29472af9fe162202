"""Shapes other than straight boards: round tops, tapers, curves, bends, legs, end-grain blocks."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from movement_core.section.board import checked_size
from movement_core.section.field import Floats, free_shape, numbers, strains
from movement_core.wording import phrase

END_GRAIN = phrase(
    "end grain breathes some ten times faster than faces (common practice, no source): it follows the air in "
    "days, and moves both ways"
)


def strain_toward(angle_degrees: ArrayLike, along_strain: ArrayLike, across_strain: ArrayLike) -> Floats:
    """Stretch (…) of a line at an angle to the grain, as a fraction: exact for uniform strains.

    ``angle_degrees``: between the line and the grain *at that place* (taper, curve, bend: the local grain).
    """
    angle = np.radians(numbers(angle_degrees, phrase("angle to the grain")))
    along, across = strains(along_strain, across_strain)
    return np.asarray(
        np.hypot((1 + along) * np.cos(angle), (1 + across) * np.sin(angle)) - 1.0, dtype=np.float64
    )


def moved_outline(
    points_mm: ArrayLike, grain: ArrayLike, along_strain: ArrayLike, across_strain: ArrayLike
) -> Floats:
    """An outline cut from straight-grained stock (tapered leg, curved rail, round top), moved.

    Parameters
    ----------
    points_mm : (N, 2) mm, in the plane of the face.
    grain : (2,) direction of the grain in that plane.
    along_strain, across_strain : (…) fractions, along the grain and across it in this plane.

    Returns
    -------
    (…, N, 2) mm; the origin stays and the grain keeps its direction.
    """
    points = numbers(points_mm, phrase("points"), pairs=True)
    way = numbers(grain, phrase("grain"), pairs=True)
    length = float(np.hypot(way[0], way[1]))
    unit = way / checked_size(
        length, phrase("length of the grain direction"), phrase("outline"), (1e-9, 1e9), ""
    )
    along, across = (value[..., None, None] for value in strains(along_strain, across_strain))
    lengthwise = (points @ unit)[:, None] * unit
    return np.asarray(lengthwise * (1 + along) + (points - lengthwise) * (1 + across), dtype=np.float64)


@dataclass(frozen=True)
class Oval:
    """A round top after a change: its two diameters, mm, and their difference; (…) as the strains."""

    along_mm: Floats
    across_mm: Floats
    out_of_round_mm: Floats  # across less along


def round_top(diameter_mm: float, across_strain: ArrayLike, along_strain: ArrayLike = 0.0) -> Oval:
    """What a round top turns into: an oval, long along the grain when it has dried."""
    diameter = checked_size(diameter_mm, phrase("diameter"), phrase("round top"), (1.0, 10000.0))
    along, across = strains(along_strain, across_strain)
    return Oval(diameter * (1 + along), diameter * (1 + across), diameter * (across - along))


@dataclass(frozen=True)
class Bend:
    """A bent part after a change, free at its ends; (…) as the strains."""

    angle_degrees: Floats
    inner_radius_mm: Floats
    thickness_mm: Floats
    end_shift_mm: Floats  # how far one end moves while the other is held in place and direction


def bend(
    angle_degrees: float,
    inner_radius_mm: float,
    thickness_mm: float,
    thickness_strain: ArrayLike,
    along_strain: ArrayLike = 0.0,
) -> Bend:
    """How a bent part (steam-bent or laminated, grain along the curve) changes its angle.

    The grain's length stays while the thickness between inner and outer fibres changes, so θ → θ(1+e_L)/(1+e_t):
    it closes as it dries, free of stress and exactly so at any strain: the map of ``free_shape`` with the grain
    in the place of the rings. The set left from bending itself comes on top, and is not known.
    """
    angle = checked_size(angle_degrees, phrase("bend angle"), phrase("bend"), (0.0, 360.0), "°")
    inner = checked_size(inner_radius_mm, phrase("inner radius"), phrase("bend"), (0.0, 100000.0))
    thick = checked_size(thickness_mm, phrase("thickness"), phrase("bend"), (0.1, 1000.0))
    through, along = strains(thickness_strain, along_strain)
    after = angle * (1 + along) / (1 + through)
    middle = inner + 0.5 * thick
    arc = np.array([[middle, 0.0], [middle * np.cos(np.radians(angle)), middle * np.sin(np.radians(angle))]])
    radius = middle * (1 + through)
    end = np.stack((radius * np.cos(np.radians(after)), radius * np.sin(np.radians(after))), axis=-1)
    chord = end - np.stack((radius, np.zeros_like(radius)), axis=-1)
    first = arc[1] - arc[0]
    return Bend(after, inner * (1 + through), thick * (1 + through), np.linalg.norm(chord - first, axis=-1))


@dataclass(frozen=True)
class Corners:
    """A rectangular leg or stile after a change; (…) as pith and strains."""

    points_mm: Floats  # (…, 4, 2) from the lower left, counter-clockwise
    corner_degrees: Floats  # (…, 4) angle at each corner
    diagonals_mm: Floats  # (…, 2) rising and falling
    out_of_square_mm: Floats  # (…) rising less falling diagonal


def leg(
    width_mm: float,
    thickness_mm: float,
    pith_mm: ArrayLike,
    radial_strain: ArrayLike,
    tangential_strain: ArrayLike,
) -> Corners:
    """The four corners of a leg: with rings across the corner (rift) it turns into a diamond.

    Raises
    ------
    InputError : the leg holds its pith (see ``solve_boxed_heart``), or a value that cannot be.
    """
    width = checked_size(width_mm, phrase("width"), phrase("leg"), (0.1, 5000.0))
    half = 0.5 * np.array(
        (width, checked_size(thickness_mm, phrase("thickness"), phrase("leg"), (0.1, 5000.0)))
    )
    square = half * np.array([(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)])
    points = free_shape(square, pith_mm, radial_strain, tangential_strain)
    flat = points[..., 0] + 1j * points[..., 1]
    after, before = np.roll(flat, -1, axis=-1) - flat, np.roll(flat, 1, axis=-1) - flat
    diagonals = np.stack((np.abs(flat[..., 2] - flat[..., 0]), np.abs(flat[..., 3] - flat[..., 1])), axis=-1)
    return Corners(
        points, np.degrees(np.angle(before / after)), diagonals, diagonals[..., 0] - diagonals[..., 1]
    )


@dataclass(frozen=True)
class EndGrainBlock:
    """An end-grain block or top: both sides of its face move across the grain; (…) as the strains."""

    length_change_mm: Floats
    width_change_mm: Floats
    length_range_mm: tuple[Floats, Floats]
    width_range_mm: tuple[Floats, Floats]
    note: str


def end_grain_block(
    length_mm: float,
    width_mm: float,
    radial_strain: ArrayLike,
    tangential_strain: ArrayLike,
    ring_angle_degrees: float | None = None,
) -> EndGrainBlock:
    """How an end-grain block moves: ``ring_angle_degrees`` between ring tangent and its length, None when mixed.

    Of many pieces with rings every way, each side moves by about the mean of both strains; the range is from
    one strain to the other, since a maker may have laid them alike.
    """
    length = checked_size(length_mm, phrase("length"), phrase("end-grain block"), (1.0, 10000.0))
    width = checked_size(width_mm, phrase("width"), phrase("end-grain block"), (1.0, 10000.0))
    radial, tangential = strains(radial_strain, tangential_strain)
    if ring_angle_degrees is None:
        mean = 0.5 * (radial + tangential)
        low, high = np.minimum(radial, tangential), np.maximum(radial, tangential)
        return EndGrainBlock(
            length * mean, width * mean, (length * low, length * high), (width * low, width * high), END_GRAIN
        )
    lengthwise = length * strain_toward(ring_angle_degrees, tangential, radial)
    crosswise = width * strain_toward(90.0 - ring_angle_degrees, tangential, radial)
    return EndGrainBlock(lengthwise, crosswise, (lengthwise, lengthwise), (crosswise, crosswise), END_GRAIN)
