"""The same piece on another day, or at another moisture today: what lies between its parts is not looked for again."""

from __future__ import annotations

import datetime
from dataclasses import replace

from movement_core.piece.contact.across import joint_movement
from movement_core.piece.contact.carried import carried_positions
from movement_core.piece.solve import solve_piece
from movement_core.piece.whole import WholePiece, largest


def on_another_day(whole: WholePiece, today: datetime.date, today_mc: float | None = None) -> WholePiece:
    """A piece with another today.

    Parameters
    ----------
    whole : as it was worked out. today : the day. today_mc : moisture of the wood on it, percent; None: in step with
        the year's air.
    """
    solved = solve_piece([one.part for one in whole.solved.parts], whole.solved.air, today, today_mc)
    known = {one.part.key: one for one in solved.parts}
    parts = tuple(known[one.part.key] for one in whole.parts)
    movements = tuple(joint_movement(one, parts[one.parts[0]], parts[one.parts[1]]) for one in whole.joints)
    positions = None
    if whole.positions is not None:
        positions = carried_positions(parts, whole.joints, ground=largest(parts))
    return replace(whole, solved=solved, parts=parts, movements=movements, positions=positions)
