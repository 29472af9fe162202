"""Web frames in solid carcases: front and back rail in the sides, and a runner between that keeps them apart."""

from __future__ import annotations

from collections import defaultdict

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.crossing_kinds import NARROW, boards_with, is_back, panel_width
from movement_core.checks.finding import BREAKS, UNKNOWN, Finding
from movement_core.checks.remember import beyond, joints_of
from movement_core.checks.tenon_shape import strain_along
from movement_core.checks.told import is_wood, told
from movement_core.piece.contact.joints import UNTOLD, WHOLE, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import Span
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, say

SQUARE = 0.3  # cosine under which the rails run across the runner (own judgement)
TIGHT = 0.9  # cosine: a contact looks along the runner


def web_frames(whole: WholePiece) -> list[Finding]:
    """One finding for each side that the rails and runners of its web frames keep from moving."""
    tops = {board.part.key for top in whole.tops for board in top.place.boards}
    worst: dict[int, tuple[float, Finding]] = {}
    for runner in range(len(whole.parts)):
        rails = _rails_at_its_ends(whole, runner) if is_wood(whole, runner) else None
        if rails is None:
            continue
        for first in rails[0]:
            for last in rails[1]:
                for sides, joints in _shared_sides(whole, first, last, runner):
                    if any(whole.parts[side].part.key in tops for side in sides):
                        continue
                    panel = boards_with(whole, sides[0])[0]
                    found = _judge(whole, (runner, first, last), sides, joints)
                    if found is not None and (panel not in worst or found[0] > worst[panel][0]):
                        worst[panel] = found
    return [finding for _, finding in worst.values()]


def _rails_at_its_ends(whole: WholePiece, runner: int) -> tuple[list[int], list[int]] | None:
    """Parts across a runner on which its ends or shoulders stand tight, at the one end and the other."""
    frame = whole.parts[runner].part.frame
    rails: dict[int, list[int]] = defaultdict(list)
    for joint in joints_of(whole, runner):
        other = beyond(joint, runner)
        if joint.holds not in (WHOLE, UNTOLD) or not is_wood(whole, other):
            continue
        across = abs(float(whole.parts[other].part.frame.axes[2] @ frame.axes[2])) < SQUARE
        tight = [one for one in joint.meeting.contacts if abs(float(one.normal @ frame.axes[2])) > TIGHT]
        if across and tight:
            rails[int(np.sign((tight[0].centre - frame.centre) @ frame.axes[2]))].append(other)
    return (rails[-1], rails[1]) if rails[-1] and rails[1] else None


def _shared_sides(
    whole: WholePiece, first: int, last: int, runner: int
) -> list[tuple[tuple[int, int], tuple[Joint, Joint]]]:
    """Boards that both rails are let into or stand against by their ends, and those joints.

    The two are one board, or two boards of one glued panel.
    """
    held: list[dict[int, tuple[int, Joint]]] = []
    for rail in (first, last):
        by_panel: dict[int, tuple[int, Joint]] = {}
        for joint in joints_of(whole, rail):
            if joint.holds not in (WHOLE, UNTOLD) or not joint.meeting.contacts:
                continue
            side = beyond(joint, rail)
            panel = boards_with(whole, side)[0]
            if panel not in by_panel or joint.meeting.area_mm2 > by_panel[panel][1].meeting.area_mm2:
                by_panel[panel] = side, joint
        held.append(by_panel)
    found = []
    for panel in sorted(set(held[0]) & set(held[1])):
        (one, joint), (other, also) = held[0][panel], held[1][panel]
        if (
            all(is_wood(whole, side) and not is_back(whole, side) for side in (one, other))
            and _apart(whole, one, (first, last, runner))
            and _narrow(whole, one, (first, last))
        ):
            found.append(((one, other), (joint, also)))
    return found


def _apart(whole: WholePiece, side: int, frame: tuple[int, int, int]) -> bool:
    """Whether no two of a side, its rails and their runner are boards of one glued panel, which moves as one."""
    panels = [boards_with(whole, index)[0] for index in (side, *frame)]
    return len(set(panels)) == len(panels)


def _narrow(whole: WholePiece, side: int, rails: tuple[int, int]) -> bool:
    """Whether rails are narrow beside the board that they stand on: sides on their back are no web frame."""
    most = NARROW * panel_width(whole, side)
    return all(whole.parts[rail].part.frame.width_mm <= most for rail in rails)


def _judge(
    whole: WholePiece, frame: tuple[int, int, int], sides: tuple[int, int], joints: tuple[Joint, Joint]
) -> tuple[float, Finding] | None:
    runner, first, last = frame
    way = whole.parts[runner].part.frame.axes[2]
    places = sorted(float(_middle(joint) @ way) for joint in joints)
    apart = places[1] - places[0]
    own = strain_along(whole, runner, way)
    moves = _moves_between(whole, sides, way, places)
    if moves is None or own is None or apart <= limit("glued across"):
        return None
    against = moves - own.times(apart)
    least, most = min(float(against.least.min()), 0.0), max(float(against.most.max()), 0.0)
    worst = max(-least, most)
    if worst < limit("strained joint"):
        return None
    firm = all(joint.holds == WHOLE for joint in joints)
    day = int(against.least.argmin()) if -least >= most else int(against.most.argmax())
    how = say("is held fast") if firm else say("is held fast, if both rails are glued in it,")
    message = say(
        "the side {how} at two rails {apart:.0f} mm apart that the runner keeps apart, and moves {least:+.1f} to "
        "{most:+.1f} mm between them: it splits, or pushes the joints of the frame open",
        how=how,
        apart=apart,
        least=least,
        most=most,
    )
    remedy = say(
        "glue the front rail, and the runners into it; leave their tenons in the back rail dry, with {room:.1f} "
        "mm of room at the shoulders, and the runners dry in the side's grooves",
        room=AtLeast(max(-least, 0.0) + 0.5),
    )
    finding = told(
        whole,
        "web-frame-across-the-side",
        BREAKS if firm else UNKNOWN,
        (*sides, first, last, runner),
        message,
        remedy,
        int(month_of_day(day)),
        {"apart_mm": apart, "least_mm": least, "most_mm": most},
    )
    return worst, finding


def _moves_between(
    whole: WholePiece, sides: tuple[int, int], way: Floats, places: list[float]
) -> Span | None:
    """How far a side moves between two places along a direction: each of its boards by what of it lies there."""
    if sides[0] == sides[1]:
        strain = strain_along(whole, sides[0], way)
        return None if strain is None else strain.times(places[1] - places[0])
    total: Span | None = None
    for board in boards_with(whole, sides[0]):
        frame = whole.parts[board].part.frame
        middle, half = float(frame.centre @ way), float(np.abs(frame.axes @ way) @ frame.size_mm) / 2
        lies = min(middle + half, places[1]) - max(middle - half, places[0])
        strain = strain_along(whole, board, way)
        if lies <= 0:
            continue
        if strain is None:
            return None
        moves = strain.times(lies)
        total = moves if total is None else total + moves
    return total


def _middle(joint: Joint) -> Floats:
    points = joint.meeting.joined
    return np.asarray((points.min(axis=0) + points.max(axis=0)) / 2)
