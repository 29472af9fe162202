"""What the places along a top are measured from: its end, or the shoulder that meets a breadboard end."""

from __future__ import annotations

from collections.abc import Mapping

from movement_core.piece.top_place import TOUCH_MM, TopPlace
from movement_core.wording import say

END, SHOULDER, TIP = "end", "shoulder", "tip"


def end_is(place: TopPlace, end: str) -> str:
    """What ends at the datum ``end``, a name of ``end_names``: the top itself, its shoulder, or the tip let in."""
    if end in place.no_shoulder:
        return TIP
    return SHOULDER if end in {one.name for one in place.ends} else END


def end_told(datum: Mapping[str, str], end: str) -> str:
    """The name of the datum end, ``end`` as it is printed there, and which line of it is meant."""
    if datum.get("end_is") == TIP:
        return say("{end} (the tip let into it: its shoulder is not found)", end=end)
    return say("{end} (the shoulder)", end=end) if datum.get("end_is") == SHOULDER else end


def between_shoulders(place: TopPlace) -> bool:
    """Whether tongues or tenons reach beyond the length that is told."""
    return max(place.tips_mm) > TOUCH_MM


def length_told(length: str, shoulders: bool) -> str:
    """A length, and that tongues and tenons are not in it."""
    return say("{length} (without tongues and tenons)", length=length) if shoulders else length
