"""How two solids sit together: face to face, in a groove, a mortise, a dovetail, lapped, round, or merely near.

Told from the faces alone. Walls stand opposed when one looks the other way at the same place; the part whose wood
lies between them is the inner one. Dovetails are cheeks that lean and lock.
"""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

import numpy as np

from movement_core.piece.contact.found import FLAT, ROUND, Contact, Gap, Overlap, Touching
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.vectors import box_of, square_to

FACE, CORNER, GROOVE, MORTISE = "face to face", "in a corner", "in a groove", "in a mortise"
DOVETAIL, LAP, ROUND_HOLE, CURVED_FIT = "dovetailed", "lapped", "in a round hole", "curved"
NEAR, OVERLAPPING = "near", "overlapping"

LOOSE_MM = 3.0  # walls that leave more room than this between them hold nothing (own judgement)
OPPOSED = 0.88  # minus the cosine of walls that look at each other: cheeks leaning up to 1 in 4
LEANING = 0.04  # cheeks lean when their normals add up to more than this: 1 in 50
SQUARE = 0.2  # cosine below which two directions are across each other


@dataclass(frozen=True, eq=False)
class Opposed:
    """Two walls that hold the inner part between them.

    ``axis`` (3,) from one to the other; ``inner`` the body between them; ``slack_mm`` the room they leave it;
    ``lean`` (3,) the sum of the inner part's two outward normals: the way in which leaning cheeks lock, else about
    zero; ``outline`` (K, 3) points of both walls.
    """

    axis: Floats
    inner: int
    slack_mm: float
    lean: Floats
    outline: Floats

    @property
    def leans(self) -> bool:
        return float(np.linalg.norm(self.lean)) > LEANING


@dataclass(frozen=True, eq=False)
class Meeting:
    """All that two bodies (first < second) have to do with each other, and the shape it makes.

    ``inner`` is the body that goes into the other, where one does; ``walls`` the opposed walls that hold it.
    """

    first: int
    second: int
    shape: str
    inner: int | None
    walls: tuple[Opposed, ...]
    contacts: tuple[Contact, ...]
    gaps: tuple[Gap, ...]
    overlap: Overlap | None

    @property
    def area_mm2(self) -> float:
        """Area on which they touch."""
        return sum(contact.area_mm2 for contact in self.contacts)

    @property
    def main(self) -> Contact | Gap | None:
        """The largest contact, or where none is the largest gap."""
        found: tuple[Contact, ...] | tuple[Gap, ...] = self.contacts or self.gaps
        return max(found, key=_area) if found else None

    @property
    def joined(self) -> Floats:
        """(K, 3) points round what joins them: the walls that hold the inner part, else the main contact."""
        if self.walls:
            return np.concatenate([wall.outline for wall in self.walls])
        main = self.main
        return np.zeros((0, 3)) if main is None else np.concatenate(main.outline)

    @property
    def facing(self) -> tuple[Contact | Gap, ...]:
        """Contacts and gaps alike."""
        return self.contacts + self.gaps


def _area(found: Contact | Gap) -> float:
    return found.area_mm2


def meetings_of(touching: Touching) -> tuple[Meeting, ...]:
    """One meeting for each pair of bodies that touch, overlap or come within reach, in the order of the bodies."""
    contacts: dict[tuple[int, int], list[Contact]] = defaultdict(list)
    gaps: dict[tuple[int, int], list[Gap]] = defaultdict(list)
    for contact in touching.contacts:
        contacts[contact.first, contact.second].append(contact)
    for gap in touching.gaps:
        gaps[gap.first, gap.second].append(gap)
    overlaps = {(one.first, one.second): one for one in touching.overlaps}
    pairs = sorted({*contacts, *gaps, *overlaps})
    return tuple(_meeting(pair, contacts[pair], gaps[pair], overlaps.get(pair)) for pair in pairs)


def _meeting(
    pair: tuple[int, int], contacts: list[Contact], gaps: list[Gap], overlap: Overlap | None
) -> Meeting:
    walls = _opposed(pair, contacts, gaps)
    shape, inner = _shape(contacts, gaps, walls, overlap)
    return Meeting(*pair, shape, inner, tuple(walls), tuple(contacts), tuple(gaps), overlap)


def _opposed(pair: tuple[int, int], contacts: list[Contact], gaps: list[Gap]) -> list[Opposed]:
    near: list[tuple[Contact | Gap, float]] = [(one, 0.0) for one in contacts if one.surface == FLAT]
    near += [(one, one.size_mm) for one in gaps if one.surface == FLAT and one.size_mm <= LOOSE_MM]
    found = []
    for index, (one, room) in enumerate(near):
        for other, more in near[index + 1 :]:
            if one.normal @ other.normal > -OPPOSED or room + more > LOOSE_MM:
                continue
            axis = (one.normal - other.normal) / np.linalg.norm(one.normal - other.normal)
            if not _behind_each_other(one, other, axis):
                continue
            # Normals point out of the first body: with its wood between the walls it lies behind both.
            first_inside = float(one.centre @ axis) > float(other.centre @ axis)
            sense = 1.0 if first_inside else -1.0
            points = np.concatenate([*one.outline, *other.outline])
            lean = sense * (one.normal + other.normal)
            found.append(Opposed(axis, pair[0] if first_inside else pair[1], room + more, lean, points))
    return found


def _behind_each_other(one: Contact | Gap, other: Contact | Gap, axis: Floats) -> bool:
    """Whether two walls overlap when looked at along an axis, by their boxes in the plane across it."""
    plane = np.stack(square_to(axis), axis=1)
    a, b = (np.concatenate(wall.outline) @ plane for wall in (one, other))
    # Turned into the direction of the first wall's longest edge, so that the boxes fit the walls.
    edges = np.diff(np.vstack([a, a[:1]]), axis=0)
    along = edges[np.argmax(np.hypot(*edges.T))]
    along = along / np.hypot(*along)
    turn = np.array([[along[0], -along[1]], [along[1], along[0]]])
    a, b = a @ turn, b @ turn
    (a_low, a_high), (b_low, b_high) = box_of(a), box_of(b)
    shared = np.minimum(a_high, b_high) - np.maximum(a_low, b_low)
    return bool((shared > 0.5 * np.minimum(a_high - a_low, b_high - b_low)).all())


def _shape(
    contacts: list[Contact], gaps: list[Gap], walls: list[Opposed], overlap: Overlap | None
) -> tuple[str, int | None]:
    if overlap is not None:
        return OVERLAPPING, None
    facing: list[Contact | Gap] = [*contacts, *gaps]
    if any(one.surface == ROUND for one in facing):
        return ROUND_HOLE, None
    locked = [wall for wall in walls if wall.leans and _locks(wall, contacts, gaps)]
    if locked:
        return DOVETAIL, _most_often(locked)
    straight = [wall for wall in walls if not wall.leans]
    if straight:
        first = straight[0]
        across = [wall for wall in straight if abs(wall.axis @ first.axis) < SQUARE]
        if len({wall.inner for wall in straight}) > 1:
            several = _several_tenons(straight)
            return (LAP, None) if several is None else (MORTISE, several)
        return (MORTISE if across else GROOVE), first.inner
    if any(one.surface != FLAT for one in contacts) or (
        not contacts and any(g.surface != FLAT for g in gaps)
    ):
        return CURVED_FIT, None
    if not contacts:
        return NEAR, None
    first_normal = contacts[0].normal
    return (FACE if all(one.normal @ first_normal > 0.99 for one in contacts) else CORNER), None


def _several_tenons(walls: list[Opposed]) -> int | None:
    """The part with tenons side by side, where that is what it is; the wood between them is no lap.

    Walls hold its tenons two ways, and the other's wood only that way in which the tenons stand beside each other.
    """
    for inner in sorted({wall.inner for wall in walls}):
        own = [wall.axis for wall in walls if wall.inner == inner]
        others = [wall.axis for wall in walls if wall.inner != inner]
        two_ways = any(abs(float(one @ own[0])) < SQUARE for one in own)
        if two_ways and all(abs(float(one @ others[0])) > 1 - SQUARE for one in others):
            return inner
    return None


def _most_often(walls: list[Opposed]) -> int:
    inner = [wall.inner for wall in walls]
    return max(set(inner), key=inner.count)


def _locks(wall: Opposed, contacts: list[Contact], gaps: list[Gap]) -> bool:
    """Whether the inner part of leaning cheeks is also stopped the other way, which a wedge or a taper is not."""
    away = -wall.lean / np.linalg.norm(wall.lean)
    near: list[Contact | Gap] = [*contacts, *(gap for gap in gaps if gap.size_mm <= LOOSE_MM)]
    sense = [1.0 if one.first == wall.inner else -1.0 for one in near]
    return any(s * float(one.normal @ away) > 0.5 for s, one in zip(sense, near))
