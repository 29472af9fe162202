"""Parts that wind because their grain runs out of them, where the pith at both ends or the slope was said."""

from __future__ import annotations

import numpy as np

from movement_core.checks.finding import JAMS, SHOWS, Finding
from movement_core.piece.limits import limit
from movement_core.piece.solve import SolvedPart
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def twisted_parts(whole: WholePiece) -> list[Finding]:
    """One finding for each part that winds since it was flat, where its pith or the slope of its grain was said."""
    found = []
    for solved in whole.solved.parts:
        twist = solved.twist
        if twist is None or twist.corner_lift_mm is None:
            continue
        lift = np.abs(np.array(twist.corner_lift_mm)).max(axis=0)  # driest, wettest
        if float(lift.max()) < limit("corner lift"):
            continue
        driest = bool(lift[0] >= lift[1])
        found.append(
            Finding(
                check="grain-runs-out",
                severity=JAMS if _in_loose(whole, solved) else SHOWS,
                parts=(solved.part.name,),
                keys=(solved.part.key,),
                message=say(
                    "its grain does not run along it, so it winds: a corner lifts up to {lift:.1f} mm over the other "
                    "three if nothing holds it",
                    lift=float(lift.max()),
                ),
                remedy=say(
                    "choose a board whose grain runs along it on both faces, let it dry and flatten it again before "
                    "the joints are cut, or use it where the frame holds it"
                ),
                month=solved.driest_month if driest else solved.wettest_month,
                figures={
                    "corner_lift_driest_mm": round(float(lift[0]), 2),
                    "corner_lift_wettest_mm": round(float(lift[1]), 2),
                },
            )
        )
    return found


def _in_loose(whole: WholePiece, solved: SolvedPart) -> bool:
    index = whole.index.get(solved.part.key)
    return any(index in group.parts for group in whole.loose)
