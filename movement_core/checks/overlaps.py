"""Solids drawn in the same place: a slip of the model, and how they are joined cannot be told."""

from __future__ import annotations

import math

from movement_core.checks.finding import UNKNOWN, Finding
from movement_core.piece.contact.found import Overlap
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def overlaps(whole: WholePiece) -> list[Finding]:
    """One finding for each pair of solids that overlap."""
    return [
        Finding(
            check="drawn-twice",
            severity=UNKNOWN,
            parts=(whole.name(one.first), whole.name(one.second)),
            keys=tuple(whole.parts[i].part.key for i in (one.first, one.second)),
            message=_words(one),
            remedy=say("cut one out of the other, or draw them apart"),
            figures=_figures(one),
        )
        for one in whole.touching.overlaps
    ]


def _words(one: Overlap) -> str:
    if math.isnan(one.volume_mm3):
        return say(
            "by the meshes of their curved faces they are drawn in the same place, some {depth:.2f} mm deep: what "
            "joins them cannot be told",
            depth=one.depth_mm,
        )
    return say(
        "they are drawn in the same place, {depth:.2f} mm deep: what joins them cannot be told",
        depth=one.depth_mm,
    )


def _figures(one: Overlap) -> dict[str, float]:
    """A volume that is not known is left out."""
    figures = {"depth_mm": round(one.depth_mm, 3)}
    if not math.isnan(one.volume_mm3):
        figures["volume_mm3"] = round(one.volume_mm3, 1)
    return figures
