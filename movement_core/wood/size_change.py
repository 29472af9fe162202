"""How a size follows the moisture of the wood: the handbook's two formulas, and the line behind both.

The Wood Handbook (FPL-GTR-190, 2010, p. 13-15 to 13-17) gives Eq. 13-2 for 6 to 14 % moisture content,
``ΔD = D·C·ΔM``, and Eq. 13-3 outside it, ``ΔD = D·ΔM / (100·30/S − 30 + M)``. They are one straight line of
size against moisture, measured from two different sizes: C from the size at 10 %, S from the green size. So
``C = 1 / (100·m/S − m + 10)`` with m the moisture where shrinkage starts (30 %, for some woods less).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.wording import phrase, say, word

REFERENCE_MC = 10.0  # percent; the size that a coefficient refers to is the size at this moisture
LINEAR_RANGE_MC = (6.0, 14.0)  # percent; where the handbook uses the plain linear formula
USUAL_START_MC = 30.0  # percent; where shrinkage starts unless a species is known to start lower
HIGHEST_MC = 300.0  # percent; the wettest green wood holds some 250 % of its dry mass in water

MOISTURE = phrase("moisture content")

Floats = NDArray[np.float64]


def _numbers(values: ArrayLike, what: str, lowest: float, highest: float, unit: str, todo: str) -> Floats:
    array = np.asarray(values, dtype=np.float64)
    bad = ~((array >= lowest) & (array <= highest))
    if bad.any():
        raise InputError(
            say(
                "{value:g}{unit} cannot be used as {what}",
                value=float(array[bad].flat[0]),
                unit=unit,
                what=word(what),
            ),
            where=word(what),
            allowed=say("{lowest:g} to {highest:g}{unit}", lowest=lowest, highest=highest, unit=unit),
            todo=todo,
        )
    return array


def moistures(values: ArrayLike, what: str = MOISTURE) -> Floats:
    """Moisture contents as an array, percent; refuses numbers that no wood can have (0 to 300 %)."""
    return _numbers(
        values,
        what,
        0.0,
        HIGHEST_MC,
        " %",
        say("give moisture content in percent of the oven-dry mass, not humidity"),
    )


def sizes(values: ArrayLike) -> Floats:
    """Sizes as an array, mm; refuses negative and infinite ones."""
    return _numbers(values, phrase("size"), 0.0, 1e9, " mm", say("give the size in mm"))


def dimension_change(
    size_mm: ArrayLike, coefficient: ArrayLike, from_mc: ArrayLike, to_mc: ArrayLike
) -> Floats:
    """Change of a size by the plain linear formula, mm: positive when it grows.

    Parameters
    ----------
    size_mm : size at ``from_mc``, mm.
    coefficient : dimensional change coefficient, strain per 1 % moisture content.
    from_mc, to_mc : moisture contents, percent. All four broadcast.

    Raises
    ------
    InputError : a negative size, or a moisture content outside 0 to 300 %.

    The handbook means it for 6 to 14 % moisture content; this function applies it as it stands, everywhere.
    Source: Wood Handbook FPL-GTR-190 (2010) Eq. 13-2, p. 13-15 (recalled).

    >>> round(float(dimension_change(232, 0.00245, 8, 11)), 2)
    1.71
    """
    change = moistures(to_mc, "to_mc") - moistures(from_mc, "from_mc")
    return np.asarray(sizes(size_mm) * np.asarray(coefficient, dtype=np.float64) * change)[()]


def green_dimension_change(
    size_mm: ArrayLike,
    shrinkage_percent: ArrayLike,
    from_mc: ArrayLike,
    to_mc: ArrayLike,
    start_mc: ArrayLike = USUAL_START_MC,
) -> Floats:
    """Change of a size by the green-dimension formula, mm: positive when it grows.

    Parameters
    ----------
    size_mm : size at ``from_mc``, mm.
    shrinkage_percent : shrinkage from green to oven-dry, percent of the green size, above 0.
    from_mc, to_mc : moisture contents, percent, at most ``start_mc``. All broadcast.
    start_mc : moisture content where shrinkage starts, percent (30 in the handbook).

    Raises
    ------
    InputError : a moisture content above ``start_mc``, a shrinkage outside 0 to 50 %, a negative size.

    Source: Wood Handbook FPL-GTR-190 (2010) Eq. 13-3, p. 13-17 (recalled).
    """
    start = np.asarray(start_mc, dtype=np.float64)
    first, last = moistures(from_mc, "from_mc"), moistures(to_mc, "to_mc")
    if (first > start).any() or (last > start).any():
        raise InputError(
            say("a moisture content lies above the start of shrinkage"),
            where=say("green_dimension_change"),
            allowed=say("at most {start:g} %", start=float(np.min(start))),
            todo=say("count from the start of shrinkage: above it nothing moves"),
        )
    shrinkage = np.asarray(shrinkage_percent, dtype=np.float64)
    if not ((shrinkage > 0) & (shrinkage < 50)).all():
        raise InputError(
            say("a shrinkage is out of range"),
            where=say("shrinkage_percent"),
            allowed=say("above 0, below 50 %"),
        )
    return np.asarray(sizes(size_mm) * (last - first) / (100.0 * start / shrinkage - start + first))[()]


def coefficient_from_shrinkage(shrinkage_percent: float, start_mc: float = USUAL_START_MC) -> float:
    """Dimensional change coefficient (strain per 1 %, on the size at 10 %) that belongs to a shrinkage.

    The rule behind the handbook's own table: every printed coefficient follows by it, to its last
    decimal, from a shrinkage of one decimal with a start of 30 or 22 %.

    >>> round(coefficient_from_shrinkage(7.3), 5)  # red alder, printed 0.00256
    0.00256
    """
    return (
        0.0
        if shrinkage_percent == 0
        else 1.0 / (100.0 * start_mc / shrinkage_percent - start_mc + REFERENCE_MC)
    )


def shrinkage_from_coefficient(coefficient: float, start_mc: float = USUAL_START_MC) -> float:
    """Shrinkage from green to oven-dry, percent, that belongs to a coefficient: the rule above, inverted."""
    return 0.0 if coefficient == 0 else 100.0 * start_mc / (1.0 / coefficient + start_mc - REFERENCE_MC)


def relative_size(coefficient: ArrayLike, mc: ArrayLike, start_mc: ArrayLike = USUAL_START_MC) -> Floats:
    """Size at a moisture content divided by the size at 10 %: one straight line, level above ``start_mc``.

    Both handbook formulas lie on it, so it has no step at 6 or 14 % and there-and-back comes home exactly.
    """
    return np.asarray(
        1.0 + np.asarray(coefficient, dtype=np.float64) * (np.minimum(moistures(mc), start_mc) - REFERENCE_MC)
    )[()]


def strain_between(
    coefficient: ArrayLike, from_mc: ArrayLike, to_mc: ArrayLike, start_mc: ArrayLike = USUAL_START_MC
) -> Floats:
    """Strain of wood that goes from one moisture content to another, on its size at ``from_mc``.

    Parameters broadcast; moistures in percent. Through the size at 10 %; above ``start_mc`` nothing moves.
    """
    before = relative_size(coefficient, moistures(from_mc, "from_mc"), start_mc)
    after = relative_size(coefficient, moistures(to_mc, "to_mc"), start_mc)
    return np.asarray((after - before) / before)[()]


def strain_at_ring_angle(
    radial_strain: ArrayLike, tangential_strain: ArrayLike, ring_angle: ArrayLike, across: str = "width"
) -> Floats:
    """Strain of the width or the thickness where the rings stand at one angle to the face.

    Parameters
    ----------
    radial_strain, tangential_strain : strains along and across the radius, fractions.
    ring_angle : degrees between the ring's tangent and the face: 0 flat-sawn, 90 quarter-sawn. All broadcast.
    across : "width" (``T cos² + R sin²``) or "thickness" (``T sin² + R cos²``).

    Raises
    ------
    InputError : ``across`` is neither, or an angle outside 0 to 90.

    Source: rotation of a plane strain tensor. Through a wide board the angle varies: integrate instead.
    """
    angle = np.radians(
        _numbers(
            ring_angle, "ring_angle", 0.0, 90.0, "°", say("measure between the ring's tangent and the face")
        )
    )
    if across not in ("width", "thickness"):
        raise InputError(
            say("{across!r} is not a direction of a section", across=across),
            where=say("across"),
            allowed=say("width, thickness"),
        )
    radial, tangential = (np.asarray(s, dtype=np.float64) for s in (radial_strain, tangential_strain))
    along_face = np.cos(angle) ** 2 if across == "width" else np.sin(angle) ** 2
    return np.asarray(tangential * along_face + radial * (1.0 - along_face))[()]
