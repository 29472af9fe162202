"""The ring field of a straight-grained tree, and the exact shape a piece of it takes when moisture changes.

Strains a (radial) and b (tangential), uniform in the polar frame of the pith, are compatible wherever the
pith is outside the piece, so the piece takes them without stress, at any size of strain:
r → r(1+a), θ → θ(1+b)/(1+a), θ measured from the ray pith → centre of the section. THEORY.md derives it.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError

Floats = NDArray[np.float64]


def numbers(value: ArrayLike, what: str, *, where: str = "", pairs: bool = False) -> Floats:
    """``value`` as finite floats (…) or, with ``pairs``, (…, 2); InputError says which one is not."""
    try:
        array = np.asarray(value, dtype=np.float64)
    except (TypeError, ValueError):
        raise InputError(
            f"{what} {value!r} is not a number", where=where, allowed="finite numbers", todo="give numbers"
        ) from None
    if pairs and (array.ndim == 0 or array.shape[-1] != 2):
        raise InputError(
            f"{what} has shape {array.shape}", where=where, allowed="(…, 2): x and y in mm", todo="give pairs"
        )
    if not np.isfinite(array).all():
        bad = array[~np.isfinite(array)].flat[0]
        raise InputError(
            f"{what} contains {bad}", where=where, allowed="finite numbers", todo="find the missing value"
        )
    return array


def strains(radial_strain: ArrayLike, tangential_strain: ArrayLike, where: str = "") -> tuple[Floats, Floats]:
    """Both strains as checked arrays; a strain of −1 or less would leave no wood."""
    pair = []
    for name, value in (("radial strain", radial_strain), ("tangential strain", tangential_strain)):
        array = numbers(value, name, where=where)
        if array.size and array.min() <= -1.0:
            raise InputError(
                f"{name} {array.min():g} leaves no wood",
                where=where,
                allowed="above −1 (a fraction: −0.01 is one percent of shrinkage)",
                todo="give strain as a fraction, not in percent",
            )
        pair.append(array)
    return pair[0], pair[1]


def free_shape(
    points_mm: ArrayLike, pith_mm: ArrayLike, radial_strain: ArrayLike, tangential_strain: ArrayLike
) -> Floats:
    """Where the points of a section go when it moves freely: exact, stress-free, at any size of strain.

    Parameters
    ----------
    points_mm : (…, N, 2) points in the section frame, mm: origin at the section's centre, y up toward the
        show face. A single point (2,) is allowed.
    pith_mm : (…, 2) the centre of the tree in the same frame, mm; not within the points' hull.
    radial_strain, tangential_strain : (…) coefficient × moisture change, as fractions. All leading
        dimensions broadcast.

    Returns
    -------
    (…, N, 2) points, mm, in the same frame; the pith and the direction pith → origin stay where they were.

    Raises
    ------
    InputError : not finite, wrong shape, strain of −1 or less, or the points surround the pith.

    Notes
    -----
    From the metric: dr' = (1+a) dr and r'dθ' = (1+b) r dθ have the solution above, and it is the only one
    apart from rigid motion. Checked against finite elements in tests/validation/test_section_boards.py.
    """
    points = numbers(points_mm, "points", pairs=True)
    pith = numbers(pith_mm, "pith", pairs=True)
    radial, tangential = strains(radial_strain, tangential_strain)
    if points.ndim == 1:
        return free_shape(points[None, :], pith, radial, tangential)[..., 0, :]
    ray_x, ray_y = unit_ray(pith)
    shift_x, shift_y = points[..., 0] - pith[..., 0, None], points[..., 1] - pith[..., 1, None]
    along = shift_x * ray_x[..., None] + shift_y * ray_y[..., None]
    across = shift_y * ray_x[..., None] - shift_x * ray_y[..., None]
    angle = np.arctan2(across, along)
    if along.size and along.min() <= 0.0:
        _refuse_surrounded(angle, along, pith)
    distance = np.hypot(along, across) * (1.0 + radial)[..., None]
    angle = angle * ((1.0 + tangential) / (1.0 + radial))[..., None]
    along, across = distance * np.cos(angle), distance * np.sin(angle)
    x = pith[..., 0, None] + along * ray_x[..., None] - across * ray_y[..., None]
    y = pith[..., 1, None] + along * ray_y[..., None] + across * ray_x[..., None]
    return np.stack(np.broadcast_arrays(x, y), axis=-1)


def unit_ray(pith: Floats) -> tuple[Floats, Floats]:
    """Unit vector from each pith (…, 2) to the section's centre, as two arrays (…)."""
    length = np.hypot(pith[..., 0], pith[..., 1])
    if length.size and length.min() == 0.0:
        raise InputError(
            "pith (0, 0) is the centre of the section",
            allowed="outside the section",
            todo="solve a section that holds its pith with solve_boxed_heart, or give its true pith",
        )
    return -pith[..., 0] / length, -pith[..., 1] / length


def _refuse_surrounded(angle: Floats, along: Floats, pith: Floats) -> None:
    """A pith outside a convex section sees all of it within half a turn."""
    at_pith = (along == 0.0) & (angle == 0.0)  # a point on the pith itself has no direction
    seen = np.where(at_pith, np.nan, angle)
    if seen.shape[-1] < 2:
        return
    with np.errstate(invalid="ignore"):
        span = np.fmax.reduce(seen, axis=-1) - np.fmin.reduce(seen, axis=-1)
    bad = span > np.pi * (1.0 + 1e-9)
    if bad.any():
        where = np.broadcast_to(pith, (*bad.shape, 2))[bad][0]
        raise InputError(
            f"the points surround the pith ({where[0]:g}, {where[1]:g}) mm",
            allowed="pith outside the section",
            todo="a section that holds its pith is not free of stress: use solve_boxed_heart",
        )


def from_chord(points: Floats) -> Floats:
    """(…, N, 2) points measured from the chord first → last: x along it from its middle, y to its left."""
    first, last = points[..., :1, :], points[..., -1:, :]
    chord = last - first
    length = np.hypot(chord[..., 0], chord[..., 1])
    e_x, e_y = chord[..., 0] / length, chord[..., 1] / length
    shift = points - 0.5 * (first + last)
    x = shift[..., 0] * e_x + shift[..., 1] * e_y
    y = shift[..., 1] * e_x - shift[..., 0] * e_y
    return np.stack((x, y), axis=-1)
