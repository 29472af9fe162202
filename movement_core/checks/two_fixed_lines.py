"""Boards and panels held fast at lines apart across their grain by things that do not move with them.

Only joints that are known to hold count: whether something is glued at all is asked elsewhere. Boards on hinges, hooks
and bolts are told of by the check of their fittings, tops screwed to bars across them by that of tops.
"""

from __future__ import annotations

from collections import defaultdict

import numpy as np

from movement_core.checks.finding import BREAKS, Finding
from movement_core.checks.fitting_lines import boards_on_fittings
from movement_core.checks.fittings import is_fitting
from movement_core.checks.force_words import force_figures, force_words, worst_force
from movement_core.checks.screwed_bars import screws_told
from movement_core.checks.told import told
from movement_core.piece.contact.carried import carried_positions
from movement_core.piece.contact.joints import DOVETAILED, GLUED_EDGE, PEGGED, POINT, WHOLE, Joint
from movement_core.piece.limits import limit
from movement_core.piece.whole import MOST_CARRIED, WholePiece
from movement_core.wording import say

MOVE_ALONG = (DOVETAILED, PEGGED)  # grain that runs round the corner; legs and pegs that lean a little


def two_fixed_lines(whole: WholePiece) -> list[Finding]:
    """One finding for each board, or glued panel, that what holds it will not let move."""
    firm = [joint for joint in whole.joints if joint.holds in (WHOLE, POINT)]
    if not firm or len(whole.parts) > MOST_CARRIED:
        return []
    strained = carried_positions(whole.parts, firm).strained_mm
    own, told, screws = _owners(whole, firm), boards_on_fittings(whole), screws_told(whole)
    holds: dict[int, list[tuple[Joint, int, float]]] = defaultdict(list)
    for joint, apart in zip(firm, strained.tolist()):
        one, other = joint.parts
        if own[one] == own[other] or joint.kind in MOVE_ALONG:
            continue
        for board, beyond in ((one, other), (other, one)):
            keys = whole.parts[board].part.key, whole.parts[beyond].part.key
            if not (is_fitting(whole, beyond) and keys[0] in told) and keys not in screws:
                holds[own[board]].append((joint, board, apart))
    found = (_judge(whole, held) for held in holds.values())
    return [finding for finding in found if finding is not None]


def _owners(whole: WholePiece, firm: list[Joint]) -> list[int]:
    """For each part the first board of the panel that glued edges make of it and others."""
    owner = list(range(len(whole.parts)))

    def first(index: int) -> int:
        while owner[index] != index:
            owner[index] = index = owner[owner[index]]
        return index

    for joint in firm:
        if joint.kind == GLUED_EDGE:
            one, other = (first(index) for index in joint.parts)
            owner[max(one, other)] = min(one, other)
    return [first(index) for index in range(len(owner))]


def _judge(whole: WholePiece, held: list[tuple[Joint, int, float]]) -> Finding | None:
    boards = list(dict.fromkeys(board for _, board, _ in held))
    solved = whole.parts[boards[0]]
    species, frame = solved.part.species.value, solved.part.frame
    if species is None or species.kind != "wood" or not frame.grain.known or solved.width is None:
        return None
    places = []
    for joint, _, _ in held:
        main = joint.meeting.main
        places.append(0.0 if main is None else float(main.centre @ frame.axes[0]))
    apart = max(places) - min(places)
    strain = (
        np.array([solved.width.least_mm.min(), solved.width.most_mm.max()]) / solved.width.as_drawn_mm - 1
    )
    least, most = (float(value) * apart for value in strain)
    worst = max(strained for _, _, strained in held)
    wants = max(-least, most)
    if apart <= limit("glued across") or wants < limit("strained joint") or worst < 0.25 * wants:
        return None
    others = [next(i for i in joint.parts if i != board) for joint, board, _ in held]
    indices = tuple(dict.fromkeys([*boards, *others]))
    dries = -least >= most
    force = worst_force(whole, (joint.parts for joint, _, _ in held))
    return told(
        whole,
        "two-fixed-lines",
        BREAKS,
        indices,
        say(
            "it is held fast at lines {apart:.0f} mm apart across its grain, which moves {least:+.1f} to {most:+.1f} "
            "mm between them: a joint gives, or it splits{force}",
            apart=apart,
            least=least,
            most=most,
            force=force_words(force),
        ),
        say("fix it at one line only; give everything else slots, clips or buttons"),
        solved.driest_month if dries else solved.wettest_month,
        {"apart_mm": round(apart, 1), "least_mm": round(least, 2), "most_mm": round(most, 2)}
        | force_figures(force),
    )
