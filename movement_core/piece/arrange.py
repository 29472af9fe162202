"""The arrangement study of a panel found in a piece: its boards as drawn, priced against other ways to lay them."""

from __future__ import annotations

import numpy as np

from movement_core.errors import InputError
from movement_core.piece.panels import GluedPanel
from movement_core.section.arrangement import Study, arrangement_study
from movement_core.section.lays import Candidate, Wishes
from movement_core.wording import say


def panel_candidates(panel: GluedPanel) -> tuple[tuple[Candidate, ...], tuple[float, float]]:
    """A panel's boards as drawn, and the points of MC from when they were made flat to the driest and wettest day.

    A board's ``looks`` is how much better its own show face looks than its back.

    Raises
    ------
    InputError : the pith or the moisture of a board is not known.
    """
    if panel.panel is None:
        raise InputError(
            panel.why_not,
            where=say("panel {name!r}", name=panel.name),
            todo=say("tag the pith and the moisture of every board"),
        )
    candidates = tuple(
        Candidate(
            board,
            looks_show=0.0 if over else solved.part.looks,
            looks_back=solved.part.looks if over else 0.0,
        )
        for board, solved, over in zip(panel.panel.boards, panel.boards, panel.over)
    )
    driest, wettest = [], []
    for solved in panel.boards:
        assert solved.mc_days is not None and solved.part.flattened_mc.value is not None  # or no panel
        driest.append(float(solved.mc_days.min()) - solved.part.flattened_mc.value)
        wettest.append(float(solved.mc_days.max()) - solved.part.flattened_mc.value)
    return candidates, (float(np.mean(driest)), float(np.mean(wettest)))


def arrange_panel(panel: GluedPanel, may_turn: bool = False, may_reorder: bool = False) -> Study:
    """Study the ways to lay a panel's boards, from its moisture when flattened to its driest and wettest day.

    Raises
    ------
    InputError : the pith or the moisture of a board is not known.
    """
    candidates, (driest, wettest) = panel_candidates(panel)
    return arrangement_study(candidates, driest, wettest, Wishes(may_turn=may_turn, may_reorder=may_reorder))
