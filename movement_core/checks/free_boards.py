"""Wide flat-sawn boards that cup because nothing holds them flat."""

from __future__ import annotations

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import SHOWS, Finding
from movement_core.piece.contact.captives import Captive
from movement_core.piece.contact.joints import FREE, NEAR, OVERLAP, POINT, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.limits import limit
from movement_core.piece.solve import SolvedPart
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

HELD_SHARE = 0.5  # a board is held flat by what it is joined to over this much of its width (own judgement)


def free_boards(whole: WholePiece) -> list[Finding]:
    """One finding for each wide flat-sawn board that cups and is held by nothing; tops are judged elsewhere."""
    told_elsewhere = {id(board) for top in whole.tops for board in top.place.boards}
    told_elsewhere |= {id(board) for panel in whole.panels for board in panel.boards}
    found = []
    for index, solved in enumerate(whole.parts):
        if id(solved) in told_elsewhere or solved.cup is None or solved.cut != "flat":
            continue
        cup = np.maximum(np.abs(solved.cup.least_mm), np.abs(solved.cup.most_mm))
        wide = solved.part.frame.width_mm >= limit("free width")
        if wide and float(cup.max()) >= limit("free cup") and not _is_held(whole, index):
            found.append(_finding(solved, cup))
    return found


def _is_held(whole: WholePiece, index: int) -> bool:
    captives: list[Captive] = [one for one in whole.captives if one.part == index]
    if any(one.between(0) or one.between(2) for one in captives):
        return True
    return any(index in joint.parts and _holds(whole, joint, index) for joint in whole.joints)


def _holds(whole: WholePiece, joint: Joint, index: int) -> bool:
    """Whether a joint keeps a board flat across its width: fast to what is stiff there."""
    if joint.kind in (NEAR, OVERLAP) or joint.holds in (FREE, POINT) or joint.parallel is True:
        return False
    frame = whole.parts[index].part.frame
    points = np.concatenate([np.concatenate(one.outline) for one in joint.meeting.facing])
    return float(np.ptp(points @ frame.axes[0])) >= HELD_SHARE * frame.width_mm


def _finding(solved: SolvedPart, cup: Floats) -> Finding:
    worst = int(cup.argmax())
    return Finding(
        check="wide-free-board",
        severity=SHOWS,
        parts=(solved.part.name,),
        keys=(solved.part.key,),
        message=say(
            "flat-sawn, {width:.0f} mm wide and held flat by nothing that is drawn: it cups up to {cup:.1f} mm",
            width=solved.part.frame.width_mm,
            cup=cup[worst],
        ),
        remedy=say(
            "hold it with battens in slots, sliding dovetails or breadboard ends; or rip it and glue it up, or use "
            "quarter-sawn wood"
        ),
        month=int(month_of_day(worst)),
        figures={"width_mm": round(solved.part.frame.width_mm, 1), "cup_mm": round(float(cup[worst]), 2)},
    )
