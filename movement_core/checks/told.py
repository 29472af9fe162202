"""A finding on parts of a whole piece, told by their indices."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

import numpy as np

from movement_core.air.daily import DAYS, month_of_day
from movement_core.checks.finding import Finding
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.whole import WholePiece


def told(
    whole: WholePiece,
    check: str,
    severity: str,
    indices: Iterable[int],
    message: str,
    remedy: str,
    month: int | None,
    figures: Mapping[str, float],
) -> Finding:
    """A finding with the names and keys of its parts, each once, and its figures rounded to a hundredth."""
    order = tuple(dict.fromkeys(indices))
    return Finding(
        check=check,
        severity=severity,
        parts=tuple(whole.name(i) for i in order),
        keys=tuple(whole.parts[i].part.key for i in order),
        message=message,
        remedy=remedy,
        month=month,
        figures={name: round(float(value), 2) + 0.0 for name, value in figures.items()},
    )


def is_wood(whole: WholePiece, index: int) -> bool:
    """Whether a part is solid wood whose grain is known."""
    part = whole.parts[index].part
    species = part.species.value
    return species is not None and species.kind == "wood" and part.frame.grain.known


def is_inert(whole: WholePiece, index: int) -> bool:
    """Whether a part does not move with the seasons at all: metal, glass, stone."""
    species = whole.parts[index].part.species.value
    return species is not None and species.kind == "inert"


def worst_day(figure: Floats) -> tuple[float, int]:
    """The largest value without its sign of 365 days (and today, which is left out), and its month 0–11."""
    days = np.abs(figure[:DAYS])
    day = int(days.argmax())
    return float(days[day]), int(month_of_day(day))
