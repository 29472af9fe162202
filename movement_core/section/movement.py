"""How a rectangular section moves: faces, thickness, cup and diamonding, with what is unsure."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from movement_core.errors import InputError
from movement_core.section.board import THICKNESS_MM, WIDTH_MM, checked_size, holds_pith
from movement_core.section.boxed_heart import WARNING as BOXED_HEART
from movement_core.section.boxed_heart import solve_boxed_heart
from movement_core.section.field import Floats, free_shape, numbers, strains
from movement_core.section.rings import Rings, cut_class
from movement_core.wording import phrase, say, word

FAR_MM = 1e7  # a pith so far away that its rings are straight (own judgement)
RADIUS_UNKNOWN = phrase("ring radius unknown: the width moves as straight rings would, the cup is missing")
RADIUS_A_RANGE = phrase("ring radius only known as a range: the cup is a range")
HEART_UNKNOWN = phrase("heart side unknown: the cup may go either way")
SIDE_UNKNOWN = phrase("pith side unknown: it may diamond either way")
CLASS_ONLY = phrase(
    "only the cut class is known: movement is the class convention, its range is the whole class"
)
MAYBE_BOXED = phrase(
    "some of the stated ring radii would put the pith inside the section: left out of the ranges"
)

# Points of a section of 1 × 1: nine across each face, seventeen between, and the ends of two more heights.
_FACE, _MIDDLE = np.linspace(-0.5, 0.5, 9), np.linspace(-0.5, 0.5, 17)
_POINTS = np.array(
    [(x, -0.5) for x in _FACE]
    + [(x, 0.0) for x in _MIDDLE]
    + [(x, 0.5) for x in _FACE]
    + [(x, y) for y in (-0.25, 0.25) for x in (-0.5, 0.5)]
)
# Weights of Boole's and of Simpson's rule (derived).
_BOOLE = np.array([7.0, 32.0, 12.0, 32.0, 7.0]) / 90.0
_SIMPSON = np.array([1.0, 4.0, 2.0, 4.0, 2.0, 4.0, 2.0, 4.0, 1.0]) / 24.0


@dataclass(frozen=True)
class FreeSection:
    """What the free shape of a rectangular section comes to, mm; all arrays share one shape (…)."""

    width_change_show_mm: Floats  # chord of the show face
    width_change_back_mm: Floats  # chord of the back face
    width_change_mm: Floats  # mean over the thickness
    thickness_change_mm: Floats  # mean over the width
    thickness_least_mm: Floats  # the algebraically least change met across the width
    thickness_most_mm: Floats  # the greatest
    cup_mm: Floats  # greatest departure of the mid-surface from its chord, crown positive
    diamond_degrees: Floats  # how far the show face slides toward +x over the back face, as an angle


def free_section(
    width_mm: ArrayLike,
    thickness_mm: ArrayLike,
    pith_mm: ArrayLike,
    radial_strain: ArrayLike,
    tangential_strain: ArrayLike,
) -> FreeSection:
    """Measures of the free shape for many sections at once.

    Parameters
    ----------
    width_mm, thickness_mm : (…) mm.
    pith_mm : (…, 2) mm, outside the sections, section frame.
    radial_strain, tangential_strain : (…) fractions. All leading dimensions broadcast.

    Raises
    ------
    InputError : non-finite values, sizes not above 0, strains of −1 or less, or a pith inside a section.
    """
    width = checked_sizes(width_mm, phrase("width"))
    thickness = checked_sizes(thickness_mm, phrase("thickness"))
    pith = numbers(pith_mm, phrase("pith"), pairs=True)
    points = np.stack(
        np.broadcast_arrays(width[..., None] * _POINTS[:, 0], thickness[..., None] * _POINTS[:, 1]), axis=-1
    )
    return _measure(free_shape(points, pith, radial_strain, tangential_strain), width, thickness)


def checked_sizes(value: ArrayLike, what: str) -> Floats:
    """Sizes (…) above zero, mm."""
    sizes = numbers(value, what)
    if sizes.size and sizes.min() <= 0.0:
        raise InputError(
            f"{word(what)} {sizes.min():g} mm",
            where=say("section"),
            allowed=say("above 0 mm"),
            todo=say("measure it again; sizes are in mm"),
        )
    return sizes


def _measure(points: Floats, width: Floats, thickness: Floats) -> FreeSection:
    flat = points[..., 0] + 1j * points[..., 1]
    back, middle, show = flat[..., 0:9], flat[..., 9:26], flat[..., 26:35]
    quarter = np.abs(flat[..., [36, 38]] - flat[..., [35, 37]])
    chord = middle[..., -1] - middle[..., 0]
    widths = np.stack(
        (np.abs(back[..., -1] - back[..., 0]), quarter[..., 0], np.abs(chord), quarter[..., 1],
         np.abs(show[..., -1] - show[..., 0])), axis=-1
    ) - width[..., None]  # fmt: skip
    through = show - back
    thick = np.abs(through) - thickness[..., None]
    height = ((middle - middle[..., :1]) / (chord / np.abs(chord))[..., None]).imag
    lean = np.angle(through[..., 4] / chord / 1j)
    return FreeSection(
        width_change_show_mm=widths[..., 4],
        width_change_back_mm=widths[..., 0],
        width_change_mm=widths @ _BOOLE,
        thickness_change_mm=thick @ _SIMPSON,
        thickness_least_mm=thick.min(axis=-1),
        thickness_most_mm=thick.max(axis=-1),
        cup_mm=_peak(height),
        diamond_degrees=-np.degrees(lean),
    )


def _peak(height: Floats) -> Floats:
    """The greatest departure (…) of (…, N) samples with its sign, by the parabola through its neighbours."""
    at = np.clip(np.abs(height).argmax(axis=-1), 1, height.shape[-1] - 2)[..., None]
    before, here, after = (np.take_along_axis(height, at + step, axis=-1)[..., 0] for step in (-1, 0, 1))
    bend = before - 2.0 * here + after
    with np.errstate(divide="ignore", invalid="ignore"):
        # a chord's sagitta, derived
        more = np.where(bend != 0.0, -((after - before) ** 2) / (8.0 * bend), 0.0)
    return np.asarray(here + more, dtype=np.float64)


Range = tuple[Floats, Floats]


@dataclass(frozen=True)
class SectionMovement:
    """How a section with its rings moves. Changes in mm, shape (…) of the strains; growth is positive.

    A range is (least, most) over everything the rings leave open; where nothing is open both ends are the
    value. None is *not known*, never zero.
    """

    width_change_mm: Floats
    width_range_mm: Range
    width_change_show_mm: Floats
    width_change_back_mm: Floats
    thickness_change_mm: Floats
    thickness_range_mm: Range
    thickness_least_mm: Floats
    thickness_most_mm: Floats
    cup_mm: Floats | None
    cup_range_mm: Range | None
    diamond_degrees: Floats | None
    diamond_range_degrees: Range
    ring_angle_degrees: float
    ring_angle_range_degrees: tuple[float, float]
    cut_class: str
    pith_inside: bool
    flags: tuple[str, ...]


def section_movement(
    width_mm: float,
    thickness_mm: float,
    rings: Rings,
    radial_strain: ArrayLike,
    tangential_strain: ArrayLike,
) -> SectionMovement:
    """Width and thickness movement, cup and diamonding of a section, for any way its rings are known.

    Parameters
    ----------
    width_mm, thickness_mm : the section before the change, mm.
    rings : where its rings are.
    radial_strain, tangential_strain : (…) coefficient × moisture change, fractions; they broadcast.

    Returns
    -------
    SectionMovement, with one flag for each thing that is unsure.

    Raises
    ------
    InputError : a size or strain that cannot be, with the allowed range.

    >>> moved = section_movement(200, 25, Rings.at(0, 60), -0.007, -0.014)
    >>> round(float(moved.width_change_mm), 2), round(float(moved.cup_mm), 2)
    (-2.27, 0.72)
    """
    width = checked_size(width_mm, phrase("width"), phrase("section"), WIDTH_MM)
    thickness = checked_size(thickness_mm, phrase("thickness"), phrase("section"), THICKNESS_MM)
    radial, tangential = np.broadcast_arrays(*strains(radial_strain, tangential_strain))
    flags: list[str] = []
    pith = rings.pith_mm
    inside = pith is not None and holds_pith(width, thickness, pith)
    if pith is not None and inside:
        flags.append(BOXED_HEART)
        size = np.array((width, thickness))
        moved = solve_boxed_heart(width, thickness, pith).moved(_POINTS * size, radial, tangential)
        value = _measure(moved, np.asarray(width), np.asarray(thickness))
    else:
        value = free_section(width, thickness, _nominal(rings), radial, tangential)

    piths = _open_piths(rings, width, thickness, flags)
    every = free_section(width, thickness, piths[(slice(None), *[None] * radial.ndim)], radial, tangential)

    def spread(name: str) -> Range:
        all_of = np.concatenate((getattr(every, name), getattr(value, name)[None]))
        return all_of.min(axis=0), all_of.max(axis=0)

    cup, cup_range = _cup(rings, value, every, piths, flags)
    lean, lean_range = _diamond(rings, value, spread("diamond_degrees"), flags)
    least, mean, most = _ring_angles(rings, width)
    if rings.angle_range_degrees is not None:
        flags.append(CLASS_ONLY)
    return SectionMovement(
        width_change_mm=value.width_change_mm,
        width_range_mm=spread("width_change_mm"),
        width_change_show_mm=value.width_change_show_mm,
        width_change_back_mm=value.width_change_back_mm,
        thickness_change_mm=value.thickness_change_mm,
        thickness_range_mm=spread("thickness_change_mm"),
        thickness_least_mm=value.thickness_least_mm,
        thickness_most_mm=value.thickness_most_mm,
        cup_mm=cup,
        cup_range_mm=cup_range,
        diamond_degrees=lean,
        diamond_range_degrees=lean_range,
        ring_angle_degrees=mean,
        ring_angle_range_degrees=(least, most),
        cut_class=cut_class(rings.middle_angle_degrees),
        pith_inside=inside,
        flags=tuple(flags),
    )


def _nominal(rings: Rings) -> tuple[float, float]:
    return rings.pith_mm if rings.pith_mm is not None else rings.pith_at(FAR_MM)


def _open_piths(rings: Rings, width: float, thickness: float, flags: list[str]) -> Floats:
    """(K, 2) every place the pith may be by what the rings leave open; none when nothing is open."""
    radii: list[float] = []
    if rings.radius_range_mm is not None:
        low, high = rings.radius_range_mm
        radii = [float(r) for r in np.geomspace(low, high, 5)]
    if rings.pith_mm is not None:
        places = [rings.pith_at(radius) for radius in radii] if rings.pith_mm != (0.0, 0.0) else []
    else:
        assert rings.angle_degrees is not None  # Rings has one of the two
        angles = {rings.angle_degrees, *(rings.angle_range_degrees or ())}
        places = [rings.pith_at(radius, angle) for radius in (radii or [FAR_MM]) for angle in sorted(angles)]
    outside = [place for place in places if not holds_pith(width, thickness, place)]
    if len(outside) < len(places):
        flags.append(MAYBE_BOXED)
    return np.array(outside, dtype=np.float64).reshape(-1, 2)


def _cup(
    rings: Rings, value: FreeSection, every: FreeSection, piths: Floats, flags: list[str]
) -> tuple[Floats | None, Range | None]:
    if rings.pith_mm is not None:
        cups = np.concatenate((every.cup_mm, value.cup_mm[None]))
        return value.cup_mm, (cups.min(axis=0), cups.max(axis=0))
    if rings.radius_range_mm is None:
        flags.append(RADIUS_UNKNOWN)
        return None, None
    flags.append(RADIUS_A_RANGE)
    if len(piths) == 0:
        return None, None
    cups = every.cup_mm
    edge_on = rings.angle_degrees == 90.0 and rings.angle_range_degrees is None
    if rings.heart is None and not edge_on:
        flags.append(HEART_UNKNOWN)
        cups = np.concatenate((cups, -cups))  # the mirror of a section is the mirror of its shape
    return None, (cups.min(axis=0), cups.max(axis=0))


def _diamond(
    rings: Rings, value: FreeSection, spread: Range, flags: list[str]
) -> tuple[Floats | None, Range]:
    if rings.pith_mm is not None:
        known = not rings.side_assumed
    else:
        upright = rings.angle_degrees in (0.0, 90.0) and rings.angle_range_degrees is None
        known = upright or (rings.heart is not None and rings.pith_side is not None)
    if known:
        return value.diamond_degrees, spread
    flags.append(SIDE_UNKNOWN)
    most = np.maximum(np.abs(spread[0]), np.abs(spread[1]))
    return None, (-most, most)


def _ring_angles(rings: Rings, width: float) -> tuple[float, float, float]:
    """Least, mean and greatest ring angle across the width at mid-thickness, degrees."""
    if rings.pith_mm is None:
        angle = rings.middle_angle_degrees
        low, high = rings.angle_range_degrees or (angle, angle)
        return low, angle, high
    x = np.linspace(-0.5, 0.5, 65) * width - rings.pith_mm[0]
    angles = np.degrees(np.arctan2(np.abs(x), abs(rings.pith_mm[1])))
    return float(angles.min()), float(angles.mean()), float(angles.max())
