"""Small pieces worked out as a whole, for the tests of the checks: the usual home, day and oak."""

from __future__ import annotations

import datetime

import pytest

from movement_core.air.presets import find_year
from movement_core.checks import CHECKS
from movement_core.checks.held_tops import held_tops
from movement_core.piece.solve import solve_piece
from movement_core.piece.whole import whole_piece
from tests.core.contact_solids import STILL, piece_of, pose

HOME = find_year("heated cold-winter home")
DAY = datetime.date(2026, 3, 15)
OAK = "white oak; pith 0 -200; built 8"
TURNED = pytest.mark.parametrize("where", [STILL, pose(11)], ids=["as drawn", "turned"])


def whole(pairs, where=STILL, confirmed=None, air=HOME):
    """A whole piece of [(body, tag), …]."""
    piece = solve_piece(piece_of(pairs, where), air, DAY)
    return whole_piece(piece, [body for body, _ in pairs], confirmed=confirmed)


def found(pairs, check, where=STILL, confirmed=None):
    """The findings of one check; that of tops is left out, which takes its time and has tests of its own."""
    piece = whole(pairs, where, confirmed)
    return [f for one in CHECKS if one is not held_tops for f in one(piece) if f.check == check]


def only(pairs, check, where=STILL, confirmed=None):
    """The one finding of a check."""
    (finding,) = found(pairs, check, where, confirmed)
    return finding
