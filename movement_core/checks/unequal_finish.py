"""Boards and panels finished differently on their two faces: one follows the air before the other, and they cup."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import SHOWS, Finding
from movement_core.errors import HeartsideError
from movement_core.moisture.consequence import crown_mm, gradient_curvature
from movement_core.moisture.finish import FaceFinish, read_faces
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.limits import limit
from movement_core.piece.solve import SolvedPart
from movement_core.piece.whole import WholePiece
from movement_core.wood import strain_at_ring_angle
from movement_core.wording import say


def unequal_finish(whole: WholePiece) -> list[Finding]:
    """One finding for each panel or single board that cups more than it should for want of an equal finish."""
    in_panels = {id(board) for panel in whole.panels for board in panel.boards}
    groups: list[tuple[Sequence[SolvedPart], Sequence[bool]]] = [
        (panel.boards, panel.over) for panel in whole.panels
    ]
    groups += [((solved,), (False,)) for solved in whole.solved.parts if id(solved) not in in_panels]
    found = []
    for boards, over in groups:
        uneven = [board for board in boards if _faces(board) is not None]
        if uneven:
            finding = _finding(boards, over, uneven)
            found += [finding] if finding else []
    return found


def _faces(solved: SolvedPart) -> tuple[FaceFinish, FaceFinish] | None:
    """The finishes of show face and back where they differ."""
    species = solved.part.species.value
    if species is None or species.kind != "wood" or not solved.part.frame.grain.known:
        return None
    try:
        show, back = read_faces(solved.part.finish.value or "bare")
    except HeartsideError:
        return None  # told where the finish is read
    return None if show.film_ng == back.film_ng else (show, back)


def _finding(
    boards: Sequence[SolvedPart], over: Sequence[bool], uneven: Sequence[SolvedPart]
) -> Finding | None:
    width = sum(board.part.frame.width_mm for board in boards)
    cup = crown_mm(width, _curvature(boards, over))
    worst = int(np.abs(cup).argmax())
    if abs(cup[worst]) < limit("uneven cup"):
        return None
    faces = _faces(uneven[0])
    assert faces is not None  # it is uneven
    show, back = faces
    what = say("the panel") if len(boards) > 1 else say("it")
    way = say("crowns") if cup[worst] > 0 else say("hollows")
    alone = {"uneven_cup_mm": round(float(cup[worst]), 2), "width_mm": round(width, 1)}
    return Finding(
        check="unequal-finish",
        severity=SHOWS,
        parts=tuple(board.part.name for board in uneven),
        keys=tuple(board.part.key for board in uneven),
        message=say(
            "{show} on the show face, {back} on the back: one face answers the air before the other, and from that "
            "alone {what} {way} {cup:.1f} mm if nothing holds it",
            show=show.told(),
            back=back.told(),
            what=what,
            way=way,
            cup=abs(cup[worst]),
        ),
        remedy=say("finish both faces alike, edges and end grain too"),
        month=int(month_of_day(worst)),
        figures=alone,
    )


def _curvature(boards: Sequence[SolvedPart], over: Sequence[bool]) -> Floats:
    """(365,) mean curvature of boards side by side from uneven moisture alone, 1/mm."""
    total, widths = np.zeros(365), 0.0
    for board, turned in zip(boards, over):
        frame, species = board.part.frame, board.part.species.value
        widths += frame.width_mm
        if species is None or species.kind != "wood" or board.face_difference_days is None:
            continue
        coefficient = strain_at_ring_angle(
            species.radial_coefficient, species.tangential_coefficient, board.ring_angle_deg or 0.0
        )
        one = gradient_curvature(coefficient, board.face_difference_days, frame.thickness_mm)
        total += (-1 if turned else 1) * frame.width_mm * np.asarray(one)
    return total / widths
