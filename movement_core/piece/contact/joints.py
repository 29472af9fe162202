"""What joint two parts likely make, and why: from how they sit together and the grain of both.

Geometry does not show glue. A joint is inferred only where the trade does it one way nearly always; else it stays
*unknown*, and is to be judged as if it were glued. What the maker confirms replaces what was inferred.
"""

from __future__ import annotations

import difflib
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np

from movement_core.errors import UnknownName
from movement_core.piece.captured import THIN_BOTTOM_MM
from movement_core.piece.contact import meetings as shapes
from movement_core.piece.contact.captives import captives_of
from movement_core.piece.contact.meetings import Meeting
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.part import Part
from movement_core.wording import say

GLUED_EDGE, GLUED_CROSS, GLUED_END = "glued edge", "glued cross-grain", "glued end grain"
TENONED, DOVETAILED, LAPPED = "tenoned", "dovetailed", "lapped"
HOUSED, SLIDES, RESTS, NEAR = "housed free", "slides", "rests", "near"
SCREWED, HINGED, FIXED_POINT, PEGGED = "screwed", "hinged", "fixed at a point", "pegged"
OVERLAP, UNKNOWN = "overlap", "unknown"

# How a joint holds: its whole area, one point, or nothing in the plane of the joint.
WHOLE, POINT, FREE, UNTOLD = "whole", "point", "free", "untold"
HOLDS = {
    GLUED_EDGE: WHOLE,
    GLUED_CROSS: WHOLE,
    GLUED_END: WHOLE,
    TENONED: WHOLE,
    DOVETAILED: WHOLE,
    LAPPED: WHOLE,
    SCREWED: WHOLE,
    HINGED: POINT,
    FIXED_POINT: POINT,
    PEGGED: POINT,
    HOUSED: FREE,
    SLIDES: FREE,
    RESTS: FREE,
    NEAR: FREE,
    OVERLAP: UNTOLD,
    UNKNOWN: UNTOLD,
}
KINDS = tuple(HOLDS)

INFERRED, CONFIRMED = "inferred", "confirmed"
PARALLEL = 0.94  # cosine: grains within 20° of each other run the same way (own judgement)
PLAY_MM = 0.1  # a fit looser than this is drawn to be free (own judgement)
NEAR_END = 0.5  # walls beyond this share of the half length hold an end
END, EDGE, SIDE_FACE, UNTOLD_SIDE = "end", "edge", "face", "unknown side"
THIN_PANEL = 5.0  # width ÷ thickness from which an inner part is a panel rather than a tenon (own judgement)
LEVEL_MM = 1.0  # boards of one panel lie no further than this out of its plane (own judgement)


@dataclass(frozen=True, eq=False)
class Joint:
    """One joint between two parts (indices, first < second).

    Attributes
    ----------
    kind : one of ``KINDS``. origin : ``inferred`` or ``confirmed``. reason : why, in one sentence.
    meeting : how they sit together. parallel : whether the grains run the same way; None where one is not known.
    sides : which side of each part lies at the joint: end, edge, face.
    """

    parts: tuple[int, int]
    kind: str
    origin: str
    reason: str
    meeting: Meeting
    parallel: bool | None
    sides: tuple[str, str]

    @property
    def holds(self) -> str:
        """``whole``, ``point``, ``free`` or ``untold``."""
        return HOLDS[self.kind]

    @property
    def as_if_glued(self) -> bool:
        """Whether movement across it must be judged as if glued: it is, or nobody said that it is not."""
        return self.holds in (WHOLE, UNTOLD)


def joints_of(
    parts: Sequence[Part],
    meetings: Sequence[Meeting],
    confirmed: Mapping[tuple[str, str], str] | None = None,
) -> tuple[Joint, ...]:
    """The joint that each meeting makes.

    Parameters
    ----------
    parts : in the order of the bodies that the meetings were found between.
    meetings : of all pairs.
    confirmed : kinds that the maker gave, by the keys of the two parts in either order; they replace what is
        inferred.

    Raises
    ------
    UnknownName : a confirmed kind is none of ``KINDS``.
    """
    said = {}
    for (one, other), kind in (confirmed or {}).items():
        if kind not in HOLDS:
            raise UnknownName(
                say("no joint is called {kind!r}", kind=kind),
                where=say("{one} and {other}", one=one, other=other),
                allowed=", ".join(KINDS),
                nearest=tuple(difflib.get_close_matches(kind, KINDS)),
            )
        said[frozenset((one, other))] = kind
    joints = [_joint(parts, meeting, said) for meeting in meetings]
    free = _ends_let_free(parts, joints)
    return tuple(free.get(number, joint) for number, joint in enumerate(joints))


def _joint(parts: Sequence[Part], found: Meeting, said: Mapping[frozenset[str], str]) -> Joint:
    one, other = parts[found.first], parts[found.second]
    meeting = _of_an_opening(parts, found)
    parallel = _parallel(one, other)
    main = meeting.main
    normal = np.zeros(3) if main is None else main.normal
    sides = (side_at(one, normal), side_at(other, normal))
    kind, reason = _likely(one, other, meeting, parallel, sides)
    if meeting is not found and meeting.contacts:
        kind = UNKNOWN
        reason = say("one stands with its edge in an opening of the other, with play: glue is not drawn")
    origin = INFERRED
    confirmed = said.get(frozenset((one.key, other.key)))
    if confirmed is not None:
        kind, origin, reason = confirmed, CONFIRMED, say("confirmed by the maker")
    return Joint((meeting.first, meeting.second), kind, origin, reason, meeting, parallel, sides)


def _of_an_opening(parts: Sequence[Part], meeting: Meeting) -> Meeting:
    """A meeting as it was found; that of a drawer's front, say, in the opening cut for it as what it is to be moved.

    No wall of an opening looks through the thickness of what stands in it: nothing keeps that from going in and out
    but what it touches, which is nothing, or its edge that stands on one side of the opening.
    """
    if meeting.inner is None or meeting.shape not in (shapes.GROOVE, shapes.MORTISE):
        return meeting
    frame = parts[meeting.inner].frame
    through = frame.axes[int(np.argmin(frame.size_mm))]
    if any(abs(float(wall.axis @ through)) > shapes.SQUARE for wall in meeting.walls):
        return meeting
    ways = [contact.normal for contact in meeting.contacts]
    if any(float(way @ ways[0]) < PARALLEL or abs(float(way @ through)) > shapes.SQUARE for way in ways):
        return meeting
    return replace(meeting, shape=shapes.FACE if ways else shapes.NEAR, inner=None, walls=())


def _ends_let_free(parts: Sequence[Part], joints: Sequence[Joint]) -> dict[int, Joint]:
    """Joints of thin panels whose edges stand in grooves too, as they are held by their ends in those of others.

    That is a panel in a frame or a bottom, which is left free all round; of a glued panel it is enough that one of
    its boards is held by an edge. What is thick for a bottom has to be held by both its edges. A panel that is held
    by its ends alone stays as it is: a carcase's side, say.
    """
    boards = _boards_together(parts, joints)
    held: dict[int, set[int]] = defaultdict(set)  # part → what holds its ends
    edges: dict[int, list[Floats]] = defaultdict(list)  # panel → directions of its edges that are held
    for captive in captives_of([part.frame for part in parts], [joint.meeting for joint in joints], 1):
        held[captive.part].update(side.other for side in captive.sides if side.axis == 2)
        edges[boards[captive.part]] += [side.direction for side in captive.sides if side.axis == 0]
    width: dict[int, float] = {}
    for index, part in enumerate(parts):
        width[boards[index]] = width.get(boards[index], 0.0) + part.frame.width_mm
    found = {}
    for number, joint in enumerate(joints):
        inner = joint.meeting.inner
        if inner is None or joint.origin != INFERRED or joint.kind not in (UNKNOWN, TENONED):
            continue
        outer = joint.parts[1] if inner == joint.parts[0] else joint.parts[0]
        one = parts[inner]
        thin = one.frame.grain.known and width[boards[inner]] > THIN_PANEL * one.frame.thickness_mm
        ways = edges[boards[inner]]
        framed = bool(ways) and (
            one.frame.thickness_mm <= THIN_BOTTOM_MM or any(float(way @ ways[0]) < 0 for way in ways)
        )
        if thin and framed and outer in held[inner]:
            reason = say(
                "{inner} is a thin panel in grooves at its edges too, and is left free at its end in {outer} as there",
                inner=one.name,
                outer=parts[outer].name,
            )
            found[number] = replace(joint, kind=HOUSED, reason=reason)
    return found


def _boards_together(parts: Sequence[Part], joints: Sequence[Joint]) -> list[int]:
    """For each part the number of the panel that it makes with others, glued edge to edge in one plane."""
    owner = list(range(len(parts)))
    for joint in joints:
        one, other = (parts[index].frame for index in joint.parts)
        if joint.kind != GLUED_EDGE or joint.sides != (EDGE, EDGE):
            continue
        if abs(float(one.axes[1] @ other.axes[1])) > PARALLEL:
            apart = abs(float((one.centre - other.centre) @ one.axes[1]))
            if apart <= LEVEL_MM and abs(one.thickness_mm - other.thickness_mm) <= LEVEL_MM:
                first, second = (owner[index] for index in joint.parts)
                owner = [first if number == second else number for number in owner]
    return owner


def side_at(part: Part, normal: Floats) -> str:
    """Which side of a part a direction is square to: end, edge or face."""
    frame = part.frame
    if not frame.grain.known or not normal.any():
        return UNTOLD_SIDE
    return (EDGE, SIDE_FACE, END)[int(np.argmax(np.abs(frame.axes @ normal)))]


def _parallel(one: Part, other: Part) -> bool | None:
    if not (one.frame.grain.known and other.frame.grain.known):
        return None
    return bool(abs(one.frame.axes[2] @ other.frame.axes[2]) > PARALLEL)


def _is_inert(part: Part) -> bool:
    return part.species.value is not None and part.species.value.kind == "inert"


def _likely(
    one: Part, other: Part, meeting: Meeting, parallel: bool | None, sides: tuple[str, str]
) -> tuple[str, str]:
    shape = meeting.shape
    if shape == shapes.OVERLAPPING:
        return OVERLAP, say("the two solids are drawn in the same place")
    if shape == shapes.NEAR:
        return NEAR, say("they face each other across a gap and touch nowhere")
    if _is_inert(one) or _is_inert(other):
        return _of_hardware(one, other, meeting)
    if shape == shapes.ROUND_HOLE:
        return PEGGED, say("a round part sits in a round hole")
    if meeting.inner is not None:
        inner, outer = (one, other) if meeting.inner == meeting.first else (other, one)
        return _of_inner(inner, outer, meeting, parallel)
    if not meeting.contacts:
        return NEAR, say("they come close and touch nowhere over an area")
    if parallel is None:
        return UNKNOWN, say("the grain of one of them is not known")
    if shape == shapes.LAP:
        return LAPPED, say("each is let into the other")
    if END in sides:
        return UNKNOWN, say(
            "end grain butts against it: glue alone would not hold, and nothing else is drawn"
        )
    if parallel and sides == (EDGE, EDGE):
        return GLUED_EDGE, say("edge against edge, the grains running the same way")
    if parallel:
        return UNKNOWN, say(
            "long grain on long grain, the grains running the same way: glued, screwed or merely resting is not drawn"
        )
    return UNKNOWN, say(
        "long grain on long grain, the grains crossing: glued, screwed or merely resting is not drawn"
    )


def _of_hardware(one: Part, other: Part, meeting: Meeting) -> tuple[str, str]:
    metal = one if _is_inert(one) else other
    if meeting.shape == shapes.ROUND_HOLE:
        return SCREWED, say("{part} does not move with the seasons and sits in a round hole", part=metal.name)
    return FIXED_POINT, say(
        "{part} does not move with the seasons: taken as fixed at a point", part=metal.name
    )


def _of_inner(inner: Part, outer: Part, meeting: Meeting, parallel: bool | None) -> tuple[str, str]:
    frame, names = inner.frame, {"inner": inner.name, "outer": outer.name}
    if meeting.shape == shapes.DOVETAIL:
        if is_end_in(inner, meeting):
            return DOVETAILED, say("the end of {inner} is dovetailed into {outer}", **names)
        return SLIDES, say("{inner} runs in a dovetailed groove of {outer}", **names)
    by_end = is_end_in(inner, meeting)
    slack = max(wall.slack_mm for wall in meeting.walls)
    sizes = np.sort(frame.size_mm)
    thin = float(sizes[1]) > THIN_PANEL * float(sizes[0])
    if thin and not by_end:
        return (
            HOUSED,
            say("{inner} is thin and stands in a groove of {outer}, as a panel that is left free", **names),
        )
    if meeting.shape == shapes.MORTISE:
        if by_end or not frame.grain.known:
            return TENONED, say("{inner} is let into a mortise of {outer}, as a tenon that is glued", **names)
        return UNKNOWN, say("{inner} is let into {outer}, but not by its end", **names)
    if slack > PLAY_MM:
        return HOUSED, say(
            "{inner} is drawn with {slack:.2g} mm of play in a groove of {outer}", slack=slack, **names
        )
    if parallel is None:
        return UNKNOWN, say("the grain of one of them is not known")
    if parallel and not by_end:
        return GLUED_EDGE, say("{inner} has its tongue in {outer} and the grains run the same way", **names)
    if by_end:
        return UNKNOWN, say(
            "{inner} is let into {outer} by its end, without play: whether it is glued is not drawn", **names
        )
    return UNKNOWN, say(
        "{inner} is let into {outer} across its grain, without play: whether it is glued is not drawn",
        **names,
    )


def is_end_in(inner: Part, meeting: Meeting) -> bool:
    """Whether an inner part goes in by its end: the walls lie beyond the middle half of its length."""
    frame = inner.frame
    if not frame.grain.known:
        return False
    points = np.concatenate([wall.outline for wall in meeting.walls if wall.inner == meeting.inner])
    along = (points - frame.centre) @ frame.axes[2] / (frame.length_mm / 2)
    return bool(along.min() > NEAR_END or along.max() < -NEAR_END)
