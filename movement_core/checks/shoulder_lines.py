"""Shoulders that open: a leg that shrinks away from them, or legs that what they stand in moves apart."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import BREAKS, SHOWS, Finding
from movement_core.checks.tenon_shape import TenonShape, pegs_of, strain_along, tenons_of
from movement_core.checks.told import is_wood, told
from movement_core.piece.contact.joints import PEGGED, TENONED
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, say

LEVEL = 0.9  # cosine: two sockets lie beside each other along the stretcher (own judgement)


def shoulder_lines(whole: WholePiece) -> list[Finding]:
    """One finding for each shoulder that opens, and for each stretcher between legs that go apart."""
    tenons = tenons_of(whole)
    opened = (_opens(whole, tenon) for tenon in tenons if tenon.shouldered and not tenon.through)
    return [finding for finding in opened if finding is not None] + _spread(whole, tenons)


def _opens(whole: WholePiece, tenon: TenonShape) -> Finding | None:
    strain = strain_along(whole, tenon.outer, tenon.way)
    if strain is None:
        return None
    pegs = pegs_of(whole, tenon)
    places = [float(whole.parts[peg].part.frame.centre @ tenon.way) - tenon.near for peg in pegs]
    held = max(places) if places else tenon.depth_mm / 2
    gap = -held * strain.least
    most = float(gap.max())
    if most < limit("shoulder gap"):
        return None
    by = say("its peg") if pegs else say("the middle of its glued length")
    return told(
        whole,
        "shoulder-opens",
        SHOWS,
        (tenon.inner, tenon.outer, *pegs),
        say(
            "its shoulder opens up to {gap:.1f} mm: the other part shrinks over the {held:.0f} mm between the "
            "shoulder and {by}, which holds the tenon, and the tenon's length does not",
            gap=AtLeast(most),
            held=held,
            by=by,
        ),
        say(
            "hold it nearer to the shoulder: a peg some {near:.0f} mm from it, drawn tight; let the shoulder in a "
            "little, undercut it, or ease its edge so that the line does not show; fit it dry",
            near=max(10.0, held * limit("shoulder gap") / most),
        ),
        int(month_of_day(int(gap.argmax()))),
        {"gap_mm": most, "held_at_mm": held},
    )


def _spread(whole: WholePiece, tenons: Sequence[TenonShape]) -> list[Finding]:
    """Stretchers whose two legs stand in one board that moves along the stretcher."""
    sockets = _sockets(whole)
    ends: dict[int, list[TenonShape]] = defaultdict(list)
    for tenon in tenons:
        ends[tenon.inner].append(tenon)
    worst: dict[tuple[int, ...], Finding] = {}
    for stretcher, both in ends.items():
        for index, one in enumerate(both):
            for other in both[index + 1 :]:
                if one.outer == other.outer or float(one.way @ other.way) > 0:
                    continue
                for board, first in sockets.get(one.outer, {}).items():
                    second = sockets.get(other.outer, {}).get(board)
                    if second is None:
                        continue
                    finding = _apart(whole, stretcher, (one.outer, other.outer), board, second - first)
                    if finding is not None:
                        worst[stretcher, one.outer, other.outer, board] = finding
    return list(worst.values())


def _sockets(whole: WholePiece) -> dict[int, dict[int, Floats]]:
    """Leg → board that it is let into by its end → where."""
    found: dict[int, dict[int, Floats]] = defaultdict(dict)
    for joint in whole.joints:
        main = joint.meeting.main
        if joint.kind not in (TENONED, PEGGED) or main is None:
            continue
        if not all(is_wood(whole, index) for index in joint.parts):
            continue
        for leg, board in (joint.parts, joint.parts[::-1]):
            frame = whole.parts[leg].part.frame
            at = (
                np.mean([wall.outline.mean(axis=0) for wall in joint.meeting.walls], axis=0)
                if joint.meeting.walls
                else main.centre
            )
            if abs(float((at - frame.centre) @ frame.axes[2])) > frame.length_mm / 4:
                found[leg][board] = np.asarray(at)
    return found


def _apart(
    whole: WholePiece, stretcher: int, legs: tuple[int, int], board: int, between: Floats
) -> Finding | None:
    way = whole.parts[stretcher].part.frame.axes[2]
    apart = float(np.linalg.norm(between))
    if board == stretcher or apart < 1.0 or abs(float(between @ way)) < LEVEL * apart:
        return None
    strain = strain_along(whole, board, way)
    if strain is None:
        return None
    least, most = float(strain.least.min()) * apart, float(strain.most.max()) * apart
    worst = max(-least, most)
    if worst < limit("strained joint"):
        return None
    day = int(strain.least.argmin()) if -least >= most else int(strain.most.argmax())
    return told(
        whole,
        "legs-moved-apart",
        BREAKS,
        (stretcher, *legs, board),
        say(
            "its legs stand {apart:.0f} mm apart across the grain of the board above, which moves them "
            "{least:+.1f} to {most:+.1f} mm, and its own length does not change: its shoulders open or press, and "
            "its tenons work loose",
            apart=apart,
            least=least,
            most=most,
        ),
        say(
            "let the stretchers run with the board's grain, or house the legs in battens across the board that "
            "slide in it; else leave one end dry in a deep socket with {room:.1f} mm of room. What carries people "
            "must not work loose",
            room=AtLeast(worst + 0.5),
        ),
        int(month_of_day(day)),
        {"apart_mm": apart, "least_mm": least, "most_mm": most},
    )
