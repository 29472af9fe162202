"""The course of one figure through the year: a width, a thickness, a cup, day by day."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Reading:
    """A figure on one day, mm: its value where that is known, and the least and most that it can be.

    Least and most differ where something was not said exactly (a cut class for a ring angle, say). Where nothing
    was said that would give a value, ``value`` is None and the range is all that is known.
    """

    value: float | None
    least: float
    most: float

    @property
    def open(self) -> bool:
        """Whether the range is wider than a hundredth of a millimetre."""
        return self.most - self.least > 0.01

    @property
    def single(self) -> float | None:
        """The value, or what a range that is not open comes to; None where there is no single figure."""
        return self.value if self.value is not None or self.open else (self.least + self.most) / 2


@dataclass(frozen=True, eq=False)
class Course:
    """A figure in mm through the 365 days of a year that repeats, and today.

    Attributes
    ----------
    as_drawn_mm : the figure in the model.
    days_mm : (365,) its value, or None where only the range is known; least_mm, most_mm : (365,) the range.
    today : the figure today, which follows a meter's reading where one was given.
    """

    as_drawn_mm: float
    days_mm: Floats | None
    least_mm: Floats
    most_mm: Floats
    today: Reading

    def on(self, day: int) -> Reading:
        """The figure on a day, 0 = 1 January."""
        value = None if self.days_mm is None else float(self.days_mm[day])
        return Reading(value, float(self.least_mm[day]), float(self.most_mm[day]))

    @property
    def swing_mm(self) -> float:
        """How much the figure changes over the year; where only a range is known, the most it can."""
        if self.days_mm is not None:
            return float(np.ptp(self.days_mm))
        return float(max(np.ptp(self.least_mm), np.ptp(self.most_mm)))
