"""Small pieces worked out as a whole, for the tests of the checks: the usual home, day and oak."""

from __future__ import annotations

import datetime

import pytest

from movement_core.air.presets import find_year
from movement_core.checks import all_findings
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
    """The findings of one check."""
    return [f for f in all_findings(whole(pairs, where, confirmed)) if f.check == check]


def only(pairs, check, where=STILL, confirmed=None):
    """The one finding of a check."""
    (finding,) = found(pairs, check, where, confirmed)
    return finding
