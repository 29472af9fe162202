"""What a crossing of grain is in the piece, so that each is told by one check: a breadboard end, a shelf, a back …"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping

import numpy as np

from movement_core.checks.remember import beyond, joints_of, once_a_piece
from movement_core.checks.told import is_wood
from movement_core.checks.trapped_panels import presses
from movement_core.piece.contact.joints import (
    EDGE,
    END,
    SIDE_FACE,
    TENONED,
    THIN_PANEL,
    UNKNOWN,
    Joint,
    is_end_in,
)
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.crossing import HARMLESS, Crossing
from movement_core.piece.crossing import UNKNOWN as NOT_KNOWN
from movement_core.piece.loose_groups import is_firm
from movement_core.piece.whole import WholePiece

CORE, BREADBOARD, FACE_FRAME, BACK = "core", "breadboard", "face frame", "back"
SHELF, STRIP, PLAIN, POST = "shelf", "strip", "plain", "post"

NARROW = 0.5  # a strip is no wider than this share of the board it lies across (own judgement)
ALONG = 0.9  # cosine of its grain to the direction in which the board moves
AS_LONG = (0.7, 1.3)  # its length over the width of the boards (own judgement)
AS_THICK = (0.5, 1.5)  # a breadboard end's thickness over that of its board (own judgement)
BACK_MM = 16.0  # a back is no thicker than this (own judgement)
RIM = 0.75  # what a back lies on is at its rim: beyond this share of its half width or length (own judgement)
COVERED = 0.5  # a face that covers its core over this share of its width is a facing (own judgement)


def crossings_of_kind(whole: WholePiece, kind: str) -> list[Crossing]:
    """The crossings of one kind that are not harmless."""
    return _by_kind(whole).get(kind, [])


def crossings_by_part(whole: WholePiece, kind: str) -> list[list[Crossing]]:
    """The same, those together that one part has with the same verdict: what one finding tells."""
    groups: dict[tuple[int, str], list[Crossing]] = defaultdict(list)
    for crossing in crossings_of_kind(whole, kind):
        groups[crossing.other, crossing.verdict].append(crossing)
    return list(groups.values())


@once_a_piece
def _by_kind(whole: WholePiece) -> Mapping[str, list[Crossing]]:
    found: dict[str, list[Crossing]] = defaultdict(list)
    for crossing in judged_crossings(whole):
        found[kind_of(whole, crossing)].append(crossing)
    return found


def judged_crossings(whole: WholePiece) -> list[Crossing]:
    """The crossings that are not harmless.

    Tenons have a check of their own, and so has a bottom that presses on the boards around it, with what else it
    touches.
    """
    bottoms = {room.captive.part for room in whole.rooms if not room.in_frame and presses(room)}
    return [
        crossing
        for crossing in whole.crossings
        if crossing.verdict not in (HARMLESS, NOT_KNOWN)
        and crossing.joint.kind != TENONED
        and crossing.carrier not in bottoms
    ]


def kind_of(whole: WholePiece, crossing: Crossing) -> str:
    """One of the kinds above."""
    board, other, joint = crossing.carrier, crossing.other, crossing.joint
    if _faces_a_core(whole, crossing):
        return CORE
    if is_breadboard(whole, joint, board, other):
        return BREADBOARD
    if is_back(whole, board) and _in_rabbet(whole, joint, board):
        return BACK
    if is_strip(whole, crossing):
        if ends_in(whole, joint, board):
            return POST
        return FACE_FRAME if _in_face_frame(whole, crossing) else STRIP
    return SHELF if _is_shelf(whole, crossing) else PLAIN


def side_of(whole: WholePiece, joint: Joint, index: int) -> str:
    """Which side of a part lies at a joint; of a sheet, whose grain says nothing, its face or its edge."""
    said = joint.sides[joint.parts.index(index)]
    frame, main = whole.parts[index].part.frame, joint.meeting.main
    if frame.grain.known or main is None:
        return said
    thin = frame.axes[int(np.argmin(frame.size_mm))]
    return SIDE_FACE if abs(float(thin @ main.normal)) > ALONG else EDGE


def is_strip(whole: WholePiece, crossing: Crossing) -> bool:
    """Whether the other part is a narrow strip that runs across the board, or across the glued panel that it is of."""
    strip, board = whole.parts[crossing.other].part.frame, whole.parts[crossing.carrier].part.frame
    if not (strip.grain.known and board.grain.known):
        return False
    narrow = strip.width_mm <= NARROW * panel_width(whole, crossing.carrier)
    slim = narrow and strip.length_mm >= 2 * strip.width_mm
    return bool(slim and abs(strip.axes[2] @ board.axes[0]) > ALONG)


def ends_in(whole: WholePiece, joint: Joint, board: int) -> bool:
    """Whether a board goes into another part by its end."""
    return joint.meeting.inner == board and is_end_in(whole.parts[board].part, joint.meeting)


def is_thin(whole: WholePiece, index: int) -> bool:
    """Whether a part is a panel by its shape."""
    size = np.sort(whole.parts[index].part.frame.size_mm)
    return float(size[1]) > THIN_PANEL * float(size[0])


def is_breadboard(whole: WholePiece, joint: Joint, board: int, other: int) -> bool:
    """Whether the other part is a piece of about the board's thickness along its end, its grain across the "
    "board's."""
    if not (is_wood(whole, board) and is_wood(whole, other)):
        return False
    if not joint.meeting.walls and frozenset((board, other)) not in _drawn_ends(whole):
        return False  # no tongue: a cleat, or what it stands on
    frame, strip = whole.parts[board].part.frame, whole.parts[other].part.frame
    across = abs(float(strip.axes[2] @ frame.axes[0])) > ALONG and strip.length_mm >= 2 * strip.width_mm
    if not across or not AS_LONG[0] <= strip.length_mm / panel_width(whole, board) <= AS_LONG[1]:
        return False  # a frame's rail on its stile, say
    if not _at_the_end(joint, board, frame.axes[2], frame.centre, frame.length_mm):
        return False
    up = frame.axes[1]
    thick = float(np.abs(strip.axes @ up) @ strip.size_mm)
    level = abs(float((strip.centre - frame.centre) @ up)) <= frame.thickness_mm / 2
    return level and AS_THICK[0] <= thick / frame.thickness_mm <= AS_THICK[1]


@once_a_piece
def _drawn_ends(whole: WholePiece) -> frozenset[frozenset[int]]:
    """Pairs of a top's board and a piece at its end, however the joint between them is drawn."""
    return frozenset(
        frozenset((whole.index[board.part.key], whole.index[end.solved.part.key]))
        for top in whole.tops
        for board in top.place.boards
        for end in top.place.ends
        if board.part.key in whole.index and end.solved.part.key in whole.index
    )


def _at_the_end(joint: Joint, board: int, grain: Floats, centre: Floats, length: float) -> bool:
    """Whether all that touches lies at one end of a board, and its end or shoulder faces the other part."""
    facing = joint.meeting.facing
    if not joint.meeting.contacts or not any(abs(float(one.normal @ grain)) > ALONG for one in facing):
        return False
    points = np.concatenate([np.concatenate(one.outline) for one in joint.meeting.contacts])
    along = (points - centre) @ grain / (length / 2)
    return bool(along.min() > 0.5 or along.max() < -0.5)


def _faces_a_core(whole: WholePiece, crossing: Crossing) -> bool:
    """Whether solid wood lies flat on a sheet, or what moves as little, over much of its width."""
    species = whole.parts[crossing.other].part.species.value
    if species is None or species.kind == "wood" or not is_thin(whole, crossing.other):
        return False
    frame = whole.parts[crossing.carrier].part.frame
    sides = {side_of(whole, crossing.joint, index) for index in crossing.joint.parts}
    return sides == {SIDE_FACE} and crossing.width_mm >= COVERED * frame.width_mm


def is_back(whole: WholePiece, index: int) -> bool:
    """Whether a part is a thin solid panel that lies with one face, at its rim, on two parts or more, and is no top."""
    if not is_wood(whole, index) or not is_thin(whole, index):
        return False
    if whole.parts[index].part.frame.thickness_mm > BACK_MM:
        return False
    key = whole.parts[index].part.key
    if any(board.part.key == key for top in whole.tops for board in top.place.boards):
        return False
    boards = boards_with(whole, index)
    lying = [
        (beyond(joint, board), way)
        for board in boards
        for joint in joints_of(whole, board)
        for way in _lies_on(whole, joint, board)
    ]
    return any(len({other for other, way in lying if way == sign} - set(boards)) >= 2 for sign in (-1, 1))


@once_a_piece
def _panel_boards(whole: WholePiece) -> Mapping[int, tuple[int, ...]]:
    found: dict[int, tuple[int, ...]] = {}
    for panel in whole.panels:
        boards = [whole.index[board.part.key] for board in panel.boards if board.part.key in whole.index]
        found.update(dict.fromkeys(boards, tuple(boards)))
    return found


def boards_with(whole: WholePiece, index: int) -> tuple[int, ...]:
    """The boards of the glued panel that a part belongs to; of a single board itself."""
    return _panel_boards(whole).get(index, (index,))


def panel_width(whole: WholePiece, index: int) -> float:
    """Width of the glued panel that a board belongs to, or of the board itself, mm."""
    return sum(whole.parts[board].part.frame.width_mm for board in boards_with(whole, index))


def _lies_on(whole: WholePiece, joint: Joint, index: int) -> set[int]:
    """With which of its faces (+1 show, -1 back) a panel lies, near its rim, on a part that does not house it."""
    if joint.meeting.walls or not _in_rabbet(whole, joint, index):
        return set()
    frame = whole.parts[index].part.frame
    sense = 1.0 if index == joint.parts[0] else -1.0
    found = set()
    for contact in joint.meeting.contacts:
        way = sense * float(contact.normal @ frame.axes[1])
        at = np.abs(frame.axes @ (contact.centre - frame.centre)) / (frame.size_mm / 2)
        if abs(way) > ALONG and max(at[0], at[2]) > RIM:
            found.add(1 if way > 0 else -1)
    return found


def _in_rabbet(whole: WholePiece, joint: Joint, index: int) -> bool:
    """Whether another part faces a panel's face and one of its edges or ends, or stands under it on edge."""
    frame = whole.parts[index].part.frame
    ways = [np.abs(frame.axes @ one.normal) for one in joint.meeting.facing]
    face = any(way[1] > ALONG for way in ways)
    aside = any(max(way[0], way[2]) > ALONG for way in ways)
    return face and (aside or side_of(whole, joint, beyond(joint, index)) == EDGE)


def _in_face_frame(whole: WholePiece, crossing: Crossing) -> bool:
    """Whether a strip lies on the edge or end of a board and is joined to other strips that cross it."""
    if side_of(whole, crossing.joint, crossing.carrier) not in (EDGE, END):
        return False
    strip = crossing.other
    grain = whole.parts[strip].part.frame.axes[2]
    crossed = [
        beyond(joint, strip)
        for joint in joints_of(whole, strip)
        if joint.meeting.contacts and (is_firm(joint) or joint.kind == UNKNOWN)
    ]
    others = [i for i in crossed if i != crossing.carrier and is_wood(whole, i) and not is_thin(whole, i)]
    return any(abs(float(whole.parts[i].part.frame.axes[2] @ grain)) < 1 - ALONG for i in others)


def _is_shelf(whole: WholePiece, crossing: Crossing) -> bool:
    """Whether a panel meets the faces of boards at two opposite sides of it with its edges or ends."""
    shelf = crossing.other
    if not is_thin(whole, shelf) or side_of(whole, crossing.joint, shelf) == SIDE_FACE:
        return False
    ways = []
    for joint in joints_of(whole, shelf):
        board, main = beyond(joint, shelf), joint.meeting.main
        if main is None or not joint.meeting.contacts or side_of(whole, joint, shelf) == SIDE_FACE:
            continue
        if is_wood(whole, board) and _meets_face(whole, joint, board):
            ways.append(whole.parts[board].part.frame.centre - whole.parts[shelf].part.frame.centre)
    return any(float(one @ other) < 0 for i, one in enumerate(ways) for other in ways[i + 1 :])


def _meets_face(whole: WholePiece, joint: Joint, board: int) -> bool:
    """Whether something stands on a board's face, or in a groove of it."""
    through = whole.parts[board].part.frame.axes[1]
    return any(abs(float(one.normal @ through)) > ALONG for one in joint.meeting.facing)
