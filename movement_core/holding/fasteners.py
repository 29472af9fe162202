"""Kinds of fastener: how far each lets a top move, and how hard it may be pulled.

The table is ``data/fastener_kinds.csv``. A kind holds as much as the weakest part of its load path; parts
without a published figure are named as unknown, never guessed.
"""

from __future__ import annotations

import difflib
import math
from dataclasses import dataclass
from functools import cache

from movement_core.errors import InputError, UnknownName
from movement_core.tables import number, rows
from movement_core.wording import say, word

ALONG, ACROSS = "along", "across"  # which way a rail runs, by the top's grain
PLATE, CLIP, BUTTON, SLOT, STEEL, HOLE = SHAPES = ("plate", "clip", "button", "slot", "steel", "hole")
# Down from a rail's top to the groove or mortise of a shape, and its height; the wood left below and behind it (own).
GROOVES_MM = {BUTTON: (10.0, 6.0), CLIP: (12.0, 3.0)}
LIP_MM = 5.0

# Ultimate withdrawal over the reference design value of the wood-design standard, whose figure is for loads
# of years: 15700·G²·D over 2850·G²·D (National Design Specification for Wood Construction, recalled).
SAFETY = 5.5


@dataclass(frozen=True)
class Kind:
    """One kind of fastener; a throw of None is as long as its slot or groove is made. mm, N/mm.

    ``shape`` : what of it is drawn and cut, one of ``SHAPES``.
    """

    kind: str
    name: str
    shape: str
    free_along_rail_mm: float | None
    free_across_rail_mm: float | None
    groove_mm: float | None
    arm_mm: float | None
    clearance_mm: float | None
    inset_mm: float
    through_mm: float
    shank_mm: float
    stiffness_n_mm: float
    slack_mm: float
    least_spacing_mm: float | None
    most_spacing_mm: float | None
    widest_top_mm: float | None
    unknown_links: tuple[str, ...]
    provenance: str
    note: str


@cache
def all_kinds() -> tuple[Kind, ...]:
    """Every kind of the table, in its order."""
    return tuple(_kind(row) for row in rows("fastener_kinds"))


def find_kind(name: str) -> Kind:
    """The kind of a name.

    Raises
    ------
    UnknownName : with the names there are.
    """
    table = {kind.kind: kind for kind in all_kinds()}
    if name not in table:
        near = tuple(difflib.get_close_matches(name, table, n=3, cutoff=0.3))
        raise UnknownName(
            say("no fastener kind {name!r}", name=name),
            nearest=near,
            where=say("fastener kinds"),
            allowed=", ".join(table),
        )
    return table[name]


def _kind(row: dict[str, str]) -> Kind:
    def required(column: str) -> float:
        value = number(row[column])
        if value is None:
            raise InputError(
                say("no {column}", column=column), where=say("fastener kind {kind!r}", kind=row["kind"])
            )
        return value

    def free(column: str) -> float | None:
        return None if row[column] in ("arm", "groove") else number(row[column])

    if row["shape"] not in SHAPES:
        raise InputError(
            say("shape {shape!r}", shape=row["shape"]),
            where=say("fastener kind {kind!r}", kind=row["kind"]),
            allowed=", ".join(SHAPES),
        )
    return Kind(
        row["kind"],
        row["name"],
        row["shape"],
        free("free_along_rail_mm"),
        free("free_across_rail_mm"),
        number(row["groove_mm"]),
        number(row["arm_mm"]),
        number(row["clearance_mm"]),
        required("inset_mm"),
        required("through_mm"),
        required("shank_mm"),
        required("stiffness_n_mm"),
        required("slack_mm"),
        number(row["least_spacing_mm"]),
        number(row["most_spacing_mm"]),
        number(row["widest_top_mm"]),
        tuple(part.strip() for part in row["unknown_links"].split(";") if part.strip()),
        row["provenance"],
        row["note"],
    )


def arm_stretch_mm(arm_mm: float, angle_deg: float, travel_mm: float) -> float:
    """How much a swinging arm would have to lengthen (+) or shorten (−) to follow a travel across the grain.

    Parameters
    ----------
    arm_mm : distance between the two holes of a figure-eight plate.
    angle_deg : of the arm from the grain direction, before the travel; positive toward the travel.
    travel_mm : of the top across the grain.

    Notes
    -----
    √((L cos α)² + (L sin α + s)²) − L: the hole in the top moves by s, the other is fixed (geometry).
    """
    angle = math.radians(angle_deg)
    return math.hypot(arm_mm * math.cos(angle), arm_mm * math.sin(angle) + travel_mm) - arm_mm


def arm_throw_mm(arm_mm: float, angle_deg: float, clearance_mm: float) -> tuple[float, float]:
    """(low, high) travel across the grain that a swinging arm follows before its holes bind, mm.

    The travels around 0 for which ``|arm_stretch_mm| ≤ clearance_mm``.
    """
    along, across = (f(math.radians(angle_deg)) * arm_mm for f in (math.cos, math.sin))
    most = math.sqrt(max((arm_mm + clearance_mm) ** 2 - along**2, 0.0))
    inner = (arm_mm - clearance_mm) ** 2 - along**2
    if inner <= 0:
        return -most - across, most - across
    least = math.sqrt(inner)
    return (least - across, most - across) if across > 0 else (-most - across, -least - across)


ENGAGED_MM, GROOVE_PLAY_MM = 3.0, 0.5  # tongue that must stay in a groove, room before its bottom (own)


@dataclass(frozen=True)
class Engagement:
    """How deep a tongue sits in its groove on a long rail, mm: today, and at its least and most over the year."""

    today_mm: float
    least_mm: float
    most_mm: float


def engagement(kind: Kind, inward_mm: float, today_mm: float, outward_mm: float) -> Engagement | None:
    """Depth to set a clip's or button's tongue to today, so that it neither bottoms nor falls out.

    Parameters
    ----------
    inward_mm, outward_mm : travel of the top out of (≤ 0) and into (≥ 0) the groove since fitting;
        today_mm : today's. The room that is left is shared between both ends.

    Returns
    -------
    Engagement, or None if the groove is too shallow or the kind has none.
    """
    if kind.groove_mm is None:
        return None
    spare = kind.groove_mm - ENGAGED_MM - GROOVE_PLAY_MM - (outward_mm - inward_mm)
    if spare < -1e-9:
        return None
    least = ENGAGED_MM + spare / 2
    return Engagement(least + today_mm - inward_mm, least, least + outward_mm - inward_mm)


def throw_mm(kind: Kind, rail: str) -> tuple[float, float]:
    """(low, high) travel across the top's grain that a kind follows on a rail, mm; ±inf where a slot decides.

    ``rail`` is "across" for an end apron (the travel runs along the rail) or "along" for a long one (the
    travel runs in and out of its groove, in all no more than the figure given for one way: the tongue is set
    for the season, see ``engagement``). A figure-eight plate points from its rail into the frame, so its arm lies along
    the grain on an end apron and across it on a long one.
    """
    if rail not in (ALONG, ACROSS):
        raise InputError(
            say("rail {rail!r}", rail=rail),
            where=say("throw"),
            allowed=say("{along!r} or {across!r} the top's grain", along=ALONG, across=ACROSS),
        )
    if kind.arm_mm is not None and kind.clearance_mm is not None:
        return arm_throw_mm(kind.arm_mm, 0.0 if rail == ACROSS else 90.0, kind.clearance_mm)
    free = kind.free_along_rail_mm if rail == ACROSS else kind.free_across_rail_mm
    if rail == ALONG and kind.groove_mm is not None:
        free = kind.groove_mm - ENGAGED_MM - GROOVE_PLAY_MM
    if kind.shape == SLOT:  # its slot is cut the way the top moves
        free = None
    return (-math.inf, math.inf) if free is None else (-free, free)


def no_room_for_groove(kind: Kind, breadth_mm: float, depth_mm: float | None) -> str:
    """Why a rail has not the wood for the groove of a kind, with the figures; empty where it has, or needs none.

    Parameters
    ----------
    breadth_mm : of the rail, from its inner face. depth_mm : how high it is; None: not known, and not judged.
    """
    if kind.groove_mm is None or kind.shape not in GROOVES_MM:
        return ""
    drop, high = GROOVES_MM[kind.shape]
    if depth_mm is not None and depth_mm < drop + high + LIP_MM - 1e-6:
        return say(
            "{name}: {depth:.0f} mm high, it needs {least:.0f} ({drop:.0f} down to the groove, {high:.0f} of groove, "
            "{lip:.0f} below it)",
            name=word(kind.name),
            depth=depth_mm,
            least=drop + high + LIP_MM,
            drop=drop,
            high=high,
            lip=LIP_MM,
        )
    if breadth_mm < kind.groove_mm + LIP_MM - 1e-6:
        return say(
            "{name}: {breadth:.0f} mm thick, it needs {least:.0f} ({groove:.0f} of groove, {lip:.0f} behind it)",
            name=word(kind.name),
            breadth=breadth_mm,
            least=kind.groove_mm + LIP_MM,
            groove=kind.groove_mm,
            lip=LIP_MM,
        )
    return ""


@dataclass(frozen=True)
class Fit:
    """Whether a kind can follow a travel, and the sentence that says so."""

    fits: bool
    throw_mm: tuple[float, float]
    reason: str


def fits_travel(
    kind: Kind, rail: str, least_mm: float, most_mm: float, top_width_mm: float | None = None
) -> Fit:
    """Can a kind on such a rail follow a travel from ``least_mm`` (≤ 0) to ``most_mm`` (≥ 0)?

    A top wider than trade practice gives the kind is refused too, with that figure.
    """
    low, high = throw_mm(kind, rail)
    need = say("travel {least:+.1f} to {most:+.1f} mm", least=least_mm, most=most_mm)
    name = word(kind.name)
    in_and_out = rail == ALONG and kind.groove_mm is not None and most_mm - least_mm > high + 1e-9
    if in_and_out or least_mm < low - 1e-9 or most_mm > high + 1e-9:
        if in_and_out:
            gives = say("{room:.1f} mm in all", room=high)
        else:
            gives = say("{least:+.1f} to {most:+.1f} mm", least=low, most=high)
        if rail == ACROSS:
            reason = say(
                "{name} on the end rail: {need}, it gives {gives}", name=name, need=need, gives=gives
            )
        else:
            reason = say(
                "{name} on the long rail: {need}, it gives {gives}", name=name, need=need, gives=gives
            )
        return Fit(False, (low, high), reason)
    if top_width_mm is not None and kind.widest_top_mm is not None and top_width_mm > kind.widest_top_mm:
        reason = say(
            "{name}: top {wide:.0f} mm wide, common practice stops at {widest:.0f} mm",
            name=name,
            wide=top_width_mm,
            widest=kind.widest_top_mm,
        )
        return Fit(False, (low, high), reason)
    return Fit(True, (low, high), say("{name}: {need} is within its throw", name=name, need=need))
