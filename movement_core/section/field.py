"""The ring field of a straight-grained tree, and the exact shape a piece of it takes when moisture changes.

Strains a (radial) and b (tangential), uniform in the polar frame of the pith, are compatible wherever the
pith is outside the piece, so the piece takes them without stress, at any size of strain:
r → r(1+a), θ → θ(1+b)/(1+a), θ measured from the ray pith → centre of the section. THEORY.md derives it.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.wording import phrase, say, word

Floats = NDArray[np.float64]


def numbers(value: ArrayLike, what: str, *, where: str = "", pairs: bool = False) -> Floats:
    """``value`` as finite floats (…) or, with ``pairs``, (…, 2); InputError says which one is not."""
    try:
        array = np.asarray(value, dtype=np.float64)
    except (TypeError, ValueError):
        raise InputError(
            say("{what} {value!r} is not a number", what=word(what), value=value),
            where=word(where),
            allowed=say("finite numbers"),
            todo=say("give numbers"),
        ) from None
    if pairs and (array.ndim == 0 or array.shape[-1] != 2):
        raise InputError(
            say("{what} has shape {shape}", what=word(what), shape=array.shape),
            where=word(where),
            allowed=say("(…, 2): x and y in mm"),
            todo=say("give pairs"),
        )
    if not np.isfinite(array).all():
        bad = array[~np.isfinite(array)].flat[0]
        raise InputError(
            say("{what} contains {bad}", what=word(what), bad=bad),
            where=word(where),
            allowed=say("finite numbers"),
            todo=say("find the missing value"),
        )
    return array


def strains(radial_strain: ArrayLike, tangential_strain: ArrayLike, where: str = "") -> tuple[Floats, Floats]:
    """Both strains as checked arrays; a strain of −1 or less would leave no wood."""
    pair = []
    for name, value in (
        (phrase("radial strain"), radial_strain),
        (phrase("tangential strain"), tangential_strain),
    ):
        array = numbers(value, name, where=where)
        if array.size and array.min() <= -1.0:
            raise InputError(
                say("{name} {least:g} leaves no wood", name=word(name), least=array.min()),
                where=word(where),
                allowed=say("above −1 (a fraction: −0.01 is one percent of shrinkage)"),
                todo=say("give strain as a fraction, not in percent"),
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

    >>> free_shape((0, 12.5), (0, -60), -0.007, -0.014).round(2).tolist()  # mm: the show face comes down
    [0.0, 11.99]
    """
    # The checks that cost are left until something in the answer shows that they are needed.
    try:
        points, pith = np.asarray(points_mm, dtype=np.float64), np.asarray(pith_mm, dtype=np.float64)
        grow, swell = (
            1.0 + np.asarray(radial_strain, np.float64),
            1.0 + np.asarray(tangential_strain, np.float64),
        )
        paired = points.shape[-1:] == pith.shape[-1:] == (2,)
    except (TypeError, ValueError):
        paired = False
    if not paired:
        raise _bad_input(points_mm, pith_mm, radial_strain, tangential_strain)
    if points.ndim == 1:
        return free_shape(points[None, :], pith, radial_strain, tangential_strain)[..., 0, :]
    with np.errstate(invalid="ignore", divide="ignore", over="ignore"):
        pith_x, pith_y = pith[..., 0, None], pith[..., 1, None]
        length = np.hypot(pith_x, pith_y)
        ray_x, ray_y = -pith_x / length, -pith_y / length
        shift_x, shift_y = points[..., 0] - pith_x, points[..., 1] - pith_y
        along, across = shift_x * ray_x + shift_y * ray_y, shift_y * ray_x - shift_x * ray_y
        angle = np.arctan2(across, along)
        ahead = not along.size or along.min() > 0.0
        distance = np.hypot(along, across) * grow[..., None]
        turned = angle * (swell / grow)[..., None]
        along, across = distance * np.cos(turned), distance * np.sin(turned)
        x, y = pith_x + along * ray_x - across * ray_y, pith_y + along * ray_y + across * ray_x
    moved = np.empty((*x.shape, 2))
    moved[..., 0], moved[..., 1] = x, y
    if (
        not np.isfinite(moved).all()
        or (grow.size and grow.min() <= 0.0)
        or (swell.size and swell.min() <= 0.0)
    ):
        raise _bad_input(points_mm, pith_mm, radial_strain, tangential_strain)
    if not ahead:
        _refuse_surrounded(angle, pith)
    return moved


def _bad_input(points: ArrayLike, pith: ArrayLike, radial: ArrayLike, tangential: ArrayLike) -> InputError:
    """Which of the arguments of ``free_shape`` cannot be used, and why."""
    try:
        numbers(points, phrase("points"), pairs=True)
        at = numbers(pith, phrase("pith"), pairs=True)
        strains(radial, tangential)
    except InputError as error:
        return error
    if np.hypot(at[..., 0], at[..., 1]).min() == 0.0:
        return InputError(
            say("pith (0, 0) is the centre of the section"),
            allowed=say("outside the section"),
            todo=say("solve a section that holds its pith with solve_boxed_heart, or give its true pith"),
        )
    return InputError(
        say("the numbers are too large to compute with"),
        allowed=say("sizes in mm"),
        todo=say("check the units"),
    )


def _refuse_surrounded(angle: Floats, pith: Floats) -> None:
    """A pith outside a convex section sees all of it within half a turn; a point on the pith has angle 0."""
    if angle.shape[-1] < 2:
        return
    span = angle.max(axis=-1) - angle.min(axis=-1)
    bad = span > np.pi * (1.0 + 1e-9)
    if bad.any():
        where = np.broadcast_to(pith, (*bad.shape, 2))[bad][0]
        raise InputError(
            say("the points surround the pith ({x:g}, {y:g}) mm", x=where[0], y=where[1]),
            allowed=say("pith outside the section"),
            todo=say("a section that holds its pith is not free of stress: use solve_boxed_heart"),
        )


def from_chord(points: Floats) -> Floats:
    """(…, N, 2) points measured from the chord first → last: x along it from its middle, y to its left."""
    at = np.ascontiguousarray(points, dtype=np.float64).view(np.complex128)[..., 0]  # x + iy
    first = at[..., :1]
    chord = at[..., -1:] - first
    turned = (at - first - 0.5 * chord) * (chord.conj() / np.abs(chord))
    return turned.view(np.float64).reshape(points.shape)
