"""How far each point of a part moves across the grain from its fixed line, and the slot that follows it."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.wording import say

Array = NDArray[np.float64]

BOARD_SPREAD = (
    0.15  # a board differs from its species by some 15 % (Wood Handbook Table 5-6, shrinkage, recalled)
)


@dataclass(frozen=True)
class WidthStrain:
    """Strain across the grain of every board of a part, from the moisture it was fitted at.

    Parameters
    ----------
    lines_mm : (n+1,) edges and glue lines across the width, rising, mm.
    driest, today, wettest : (n,) strain of each board in those states, as a fraction of its size as fitted;
        negative is shrinkage. ``wettest`` is never below ``driest``.
    spread : relative uncertainty of a strain.
    """

    lines_mm: tuple[float, ...]
    driest: tuple[float, ...]
    today: tuple[float, ...]
    wettest: tuple[float, ...]
    spread: float = BOARD_SPREAD

    def __post_init__(self) -> None:
        for name in ("lines_mm", "driest", "today", "wettest"):
            values = tuple(float(value) for value in getattr(self, name))
            object.__setattr__(self, name, values)
            wanted = len(self.lines_mm) - (name != "lines_mm")
            if not np.all(np.isfinite(values)) or len(values) != wanted:
                raise InputError(
                    f"{name} {values}",
                    where=say("width strain"),
                    allowed=say("{wanted} finite values", wanted=wanted),
                )
        if len(self.lines_mm) < 2 or np.any(np.diff(self.lines_mm) <= 0):
            raise InputError(
                say("lines_mm {lines} do not rise", lines=self.lines_mm), where=say("width strain")
            )
        if any(dry > wet for dry, wet in zip(self.driest, self.wettest)):
            raise InputError(
                say("driest is larger than wettest"), where=say("width strain"), todo=say("swap them")
            )
        if not 0 <= self.spread < 1:
            raise InputError(
                say("spread {spread!r}", spread=self.spread),
                where=say("width strain"),
                allowed=say("0 up to 1"),
            )

    @classmethod
    def even(
        cls, width_mm: float, driest: float, today: float, wettest: float, spread: float = BOARD_SPREAD
    ) -> WidthStrain:
        """The same strain over the whole width, from −width/2 to width/2."""
        return cls((-width_mm / 2, width_mm / 2), (driest,), (today,), (wettest,), spread)

    @property
    def width_mm(self) -> float:
        return self.lines_mm[-1] - self.lines_mm[0]

    def mean(self, state: str) -> float:
        """Mean strain over the width: "driest", "today" or "wettest"."""
        widths = np.diff(self.lines_mm)
        return float(widths @ np.array(getattr(self, state)) / widths.sum())

    def moved(self, state: str, across_mm: ArrayLike, fixed_mm: float) -> Array:
        """Movement of points away from the fixed line toward +across, mm; any shape."""
        lines = np.array(self.lines_mm)
        growth = np.concatenate([[0.0], np.cumsum(np.diff(lines) * np.array(getattr(self, state)))])
        x = np.asarray(across_mm, dtype=float)
        outside = (x < lines[0] - 1e-6) | (x > lines[-1] + 1e-6)
        if np.any(outside) or not lines[0] - 1e-6 <= fixed_mm <= lines[-1] + 1e-6:
            raise InputError(
                say("a point or the fixed line ({fixed:g} mm) lies beyond the part's edges", fixed=fixed_mm),
                where=say("travel"),
                allowed=say("{lines:g} to {lines2:g} mm", lines=lines[0], lines2=lines[-1]),
            )
        result: Array = np.interp(x, lines, growth) - np.interp(fixed_mm, lines, growth)
        return result


@dataclass(frozen=True, eq=False)
class Travel:
    """Travel of points across the grain since fitting, toward +across, mm; arrays of one shape.

    ``least`` ≤ 0 ≤ ``most`` are the extremes over the year, fitting included, widened by the spread.
    """

    driest_mm: Array
    today_mm: Array
    wettest_mm: Array
    least_mm: Array
    most_mm: Array


def travel(strain: WidthStrain, across_mm: ArrayLike, fixed_mm: float = 0.0) -> Travel:
    """Travel of points of a part that is fixed along one line.

    Parameters
    ----------
    strain : of the part's boards. across_mm : any shape. fixed_mm : position of the fixed line.
    """
    dry, now, wet = (strain.moved(state, across_mm, fixed_mm) for state in ("driest", "today", "wettest"))
    wider = 1 + strain.spread
    extremes = np.stack([dry * wider, wet * wider, now, np.zeros_like(dry)])
    return Travel(dry, now, wet, extremes.min(axis=0), extremes.max(axis=0))


def fixed_line_mm(where: str | float, width_mm: float) -> float:
    """Position across of a named fixed line, or of a number: centre, front (−width/2) or back (+width/2).

    A hinge side or a drawer bottom's front is whichever of front and back it lies on: say that one.
    """
    named = {"centre": 0.0, "front": -width_mm / 2, "back": width_mm / 2}
    if isinstance(where, str):
        if where not in named:
            raise InputError(
                say("fixed line {where!r}", where=where),
                where=say("fixed line"),
                allowed=", ".join(named) + say(", or a position in mm"),
            )
        return named[where]
    if not (math.isfinite(where) and abs(where) <= width_mm / 2 + 1e-6):
        raise InputError(
            say("fixed line at {where!r} mm", where=where),
            where=say("fixed line"),
            allowed=say("within ±{width:g} mm", width=width_mm / 2),
        )
    return float(where)


def seen_from_the_mover(least_mm: float, today_mm: float, most_mm: float) -> tuple[float, float, float]:
    """The same travel for a slot that lies in the moving part: its screw stays and seems to go the other way."""
    return -most_mm, -today_mm, -least_mm


INSTALLATION_MM = 1.0  # room for where the screw really went: common practice


@dataclass(frozen=True)
class Slot:
    """A slotted hole that a screw travels in.

    Attributes
    ----------
    length_mm : overall, end to end; width_mm : across the slot.
    screw_today_mm : centre of the screw from the slot's end toward −across, if it is fitted today.
    low_margin_mm, high_margin_mm : room left in the year's extremes toward −across and +across.
    """

    length_mm: float
    width_mm: float
    screw_today_mm: float
    low_margin_mm: float
    high_margin_mm: float


def slot(
    least_mm: float,
    today_mm: float,
    most_mm: float,
    shank_mm: float,
    installation_mm: float = INSTALLATION_MM,
) -> Slot:
    """The slot that follows a travel, and where its screw belongs today.

    length = shank + travel both ways + ``installation_mm``, half of that room at each end. The travels are
    those of the moving part since fitting; the slot is in the part that stays.

    Raises
    ------
    InputError : today's travel lies outside least … most.
    """
    if not least_mm - 1e-9 <= today_mm <= most_mm + 1e-9:
        raise InputError(
            say("today's travel {today:g} mm", today=today_mm),
            where=say("slot"),
            allowed=say("{least:g} to {most:g} mm", least=least_mm, most=most_mm),
        )
    room = installation_mm / 2
    length = shank_mm + most_mm - least_mm + installation_mm
    return Slot(length, shank_mm + 0.5, shank_mm / 2 + room + today_mm - least_mm, room, room)
