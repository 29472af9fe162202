"""Mitred solid wood: both pieces shrink across their width and not along it, so that the mitre opens at the heel."""

from __future__ import annotations

import numpy as np

from movement_core.air.daily import DAYS, month_of_day
from movement_core.checks.finding import SHOWS, Finding
from movement_core.checks.told import told
from movement_core.holding.fixed_anyway import mitre_gap_mm
from movement_core.piece.contact.found import FLAT
from movement_core.piece.contact.joints import NEAR, OVERLAP, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import swelling_of
from movement_core.piece.limits import limit
from movement_core.piece.solve import SolvedPart
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

OFF_GRAIN = (0.35, 0.94)  # cosine of the joint's normal to both grains: mitres of 20 to 70° (own judgement)
ACROSS = 0.3  # cosine below which two grains meet square (own judgement)


def mitres(whole: WholePiece) -> list[Finding]:
    """One finding for each mitre that opens enough to show."""
    found = []
    for joint in whole.joints:
        finding = _judge(whole, joint) if _is_mitre(whole, joint) else None
        found += [finding] if finding else []
    return found


def _is_mitre(whole: WholePiece, joint: Joint) -> bool:
    main = joint.meeting.main
    if joint.kind in (NEAR, OVERLAP) or main is None or main.surface != FLAT or not joint.meeting.contacts:
        return False
    frames = [whole.parts[i].part.frame for i in joint.parts]
    woods = [whole.parts[i].part.species.value for i in joint.parts]
    if not all(frame.grain.known for frame in frames) or any(w is None or w.kind != "wood" for w in woods):
        return False
    along = [abs(float(frame.axes[2] @ main.normal)) for frame in frames]
    square = abs(float(frames[0].axes[2] @ frames[1].axes[2])) < ACROSS
    return square and all(OFF_GRAIN[0] < value < OFF_GRAIN[1] for value in along)


def _judge(whole: WholePiece, joint: Joint) -> Finding | None:
    main = joint.meeting.main
    assert main is not None  # it is a mitre
    widths, strains = [], []
    for index in joint.parts:
        width, strain = _across(whole.parts[index], main.normal)
        if strain is None:
            return None
        widths.append(width)
        strains.append(strain)
    width = max(widths)
    strain = (strains[0] + strains[1]) / 2
    worst = int(np.abs(strain).argmax())
    gap = abs(mitre_gap_mm(width, float(strain[worst])))
    if gap < limit("mitre gap"):
        return None
    where = say("heel, inside") if strain[worst] < 0 else say("toe, outside")
    return told(
        whole,
        "mitre-opens",
        SHOWS,
        joint.parts,
        say(
            "the mitre of two pieces {width:.0f} mm wide opens {gap:.1f} mm at the {where} (stock above some "
            "{limit:.0f} mm opens; common practice, no source)",
            width=width,
            gap=gap,
            where=where,
            limit=limit("mitre width"),
        ),
        say(
            "use narrower or quarter-sawn stock, lock it with a spline or a loose tenon and accept a fine line, or "
            "join the corner with a tenon and shoulder instead"
        ),
        int(month_of_day(worst)),
        {"width_mm": round(width, 1), "gap_mm": round(gap, 2)},
    )


def _across(solved: SolvedPart, normal: Floats) -> tuple[float, Floats | None]:
    """Width of a piece in the plane of its frame, and its strain along that on 365 days, its largest where a range."""
    frame = solved.part.frame
    swelling = swelling_of(solved)
    axis = int(np.argmax(np.abs(frame.axes[:2] @ normal)))
    if swelling is None:
        return float(frame.size_mm[axis]), None
    span = swelling.strains[axis]
    wider = np.abs(span.most) >= np.abs(span.least)
    return float(frame.size_mm[axis]), np.where(wider, span.most, span.least)[:DAYS]
