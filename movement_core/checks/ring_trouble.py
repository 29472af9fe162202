"""Boards that hold the centre of their tree: they are never free of stress, and check."""

from __future__ import annotations

from movement_core.checks.finding import BREAKS, Finding
from movement_core.piece.whole import WholePiece
from movement_core.wording import phrase


def ring_trouble(whole: WholePiece) -> list[Finding]:
    """One finding for each part whose section holds the pith."""
    found = []
    for solved in whole.solved.parts:
        section = solved.section
        if section is None or not section.pith_inside or solved.part.rings.value is None:
            continue
        pith = solved.part.rings.value.pith_mm
        assert pith is not None  # or it could not lie inside
        found.append(
            Finding(
                check="pith-in-board",
                severity=BREAKS,
                parts=(solved.part.name,),
                keys=(solved.part.key,),
                message=phrase(
                    "the section holds the pith, so it cannot shrink freely: expect it to check toward the pith"
                ),
                remedy=phrase("saw the pith out, or turn the check to a face that is not seen"),
                month=solved.driest_month if solved.moves else None,
                figures={"pith_x_mm": pith[0], "pith_y_mm": pith[1]},
            )
        )
    return found
