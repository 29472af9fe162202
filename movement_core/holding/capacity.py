"""How hard a screw may be pulled, how long it may be, and the weakest known part of a fastener."""

from __future__ import annotations

import math
from dataclasses import dataclass

from movement_core.errors import InputError
from movement_core.holding.fasteners import SAFETY, Kind
from movement_core.sources import RECALLED, Source
from movement_core.wording import phrase, say, word

# Lengths sold in most places, mm (common practice).
SCREW_LENGTHS_MM = (12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100)
LEAVE_MM = (
    4.0  # wood to leave between the point and the show face (common practice; pilot and dimple included)
)

WOOD_SCREW = Source("Wood Handbook, FPL-GTR-190", "ch. 8, wood screws, withdrawal from side grain", RECALLED)


def wood_screw_withdrawal_n(gravity_12: float, shank_mm: float, thread_mm: float) -> float:
    """Ultimate pull of a wood screw out of side grain, N: p = 108.25 G² D L.

    Parameters
    ----------
    gravity_12 : specific gravity, oven-dry mass on the volume at 12 % moisture; convert a basic density first.
    shank_mm : shank diameter D. thread_mm : thread in the wood L.

    Notes
    -----
    Wood Handbook ch. 8 (recalled; the inch-pound form 15 700 G² D L agrees): clear seasoned wood, right lead
    hole. Ultimate, not allowable: divide by ``SAFETY``.
    """
    _check(gravity_12, shank_mm, thread_mm)
    return float(108.25 * gravity_12**2 * shank_mm * thread_mm)


def lag_screw_withdrawal_n(
    gravity_12: float, shank_mm: float, thread_mm: float, end_grain: bool = False
) -> float:
    """Ultimate pull of a lag screw, N: p = 125.4 G^1.5 D^0.75 L; end grain three fourths of it (read)."""
    _check(gravity_12, shank_mm, thread_mm)
    return float(125.4 * gravity_12**1.5 * shank_mm**0.75 * thread_mm * (0.75 if end_grain else 1.0))


def _check(gravity: float, shank: float, thread: float) -> None:
    for value, name, low, high in (
        (gravity, phrase("specific gravity"), 0.1, 1.3),
        (shank, phrase("shank"), 1.0, 25.0),
        (thread, phrase("thread in the wood"), 0.0, 300.0),
    ):
        if not (math.isfinite(value) and low <= value <= high):
            raise InputError(
                f"{word(name)} {value!r}",
                where=say("withdrawal"),
                allowed=say("{low:g} to {high:g}", low=low, high=high),
            )


@dataclass(frozen=True)
class ScrewChoice:
    """The longest stock screw that stays inside: its length, thread in the top, wood left above its point."""

    length_mm: float
    thread_mm: float
    left_mm: float


def choose_screw(kind: Kind, top_thickness_mm: float, leave_mm: float = LEAVE_MM) -> ScrewChoice | None:
    """The longest stock screw for a kind that does not come near the show face; None: there is none.

    ``leave_mm`` is kept above the point. The thread is two thirds of a screw's length (Wood Handbook ch. 8,
    recalled), or all of it that is in the top if that is less.
    """
    room = kind.through_mm + top_thickness_mm - leave_mm
    fitting = [length for length in SCREW_LENGTHS_MM if length <= room and length - kind.through_mm >= 6.0]
    if not fitting:
        return None
    length = float(max(fitting))
    inside = length - kind.through_mm
    return ScrewChoice(length, min(inside, 2 / 3 * length), top_thickness_mm - inside)


@dataclass(frozen=True)
class Capacity:
    """What one fastener may be pulled with.

    Attributes
    ----------
    allowable_n : of the weakest known link, N; None if nothing is known.
    ultimate_n : the same, without the safety factor.
    weakest : its name. unknown : the links without a published figure. safety : the factor. source.
    """

    allowable_n: float | None
    ultimate_n: float | None
    weakest: str
    unknown: tuple[str, ...]
    safety: float
    source: Source | None
    screw: ScrewChoice | None


def fastener_capacity(
    kind: Kind,
    gravity_12: float | None,
    top_thickness_mm: float,
    safety: float = SAFETY,
    leave_mm: float = LEAVE_MM,
) -> Capacity:
    """The holding capacity of a kind in a top of this wood and thickness.

    Parameters
    ----------
    gravity_12 : of the top; None: the wood's density is not known, so nothing is.
    """
    if not (math.isfinite(safety) and safety >= 1):
        raise InputError(
            say("safety factor {safety!r}", safety=safety),
            where=say("fastener capacity"),
            allowed=say("1 or more"),
        )
    screw = choose_screw(kind, top_thickness_mm, leave_mm)
    withdrawal = phrase("withdrawal of the screw from the top")
    insert = any("insert" in link for link in kind.unknown_links)
    if gravity_12 is None or screw is None or insert:
        unknown = kind.unknown_links if insert else (withdrawal, *kind.unknown_links)
        return Capacity(None, None, "unknown", unknown, safety, None, screw)
    ultimate = wood_screw_withdrawal_n(gravity_12, kind.shank_mm, screw.thread_mm)
    return Capacity(ultimate / safety, ultimate, withdrawal, kind.unknown_links, safety, WOOD_SCREW, screw)
