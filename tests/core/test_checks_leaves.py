"""Leaves kept in another climate: solved in its air, told where they no longer match, silent where they do."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.presets import find_year
from movement_core.piece.contact import joints as kinds
from movement_core.piece.limits import limit
from movement_core.piece.solve import solve_piece
from movement_core.piece.tags import Tags, tags_from_words
from tests.core.contact_solids import STILL, blocks, piece_of
from tests.core.whole_pieces import DAY, HOME, TURNED, found, only, whole

CELLAR = "unheated shop, maritime"
WOOD = "white oak; pith 0 -200; built 9; show z; grain x"


def extended(kept="", where=STILL, rest=WOOD):
    """Two halves of a top 800 wide whose grain runs along the table, and a leaf between them."""
    places = {"half left": 0.0, "leaf": 600.0, "half right": 1000.0}
    pairs = []
    for name, x in places.items():
        body = blocks(name, [((x, 0, 0), (x + (400 if name == "leaf" else 600), 800, 24))], where=where)
        pairs.append((body, f"{rest}; kept {kept}" if kept and name == "leaf" else rest))
    return pairs


@TURNED
def test_a_leaf_from_the_cellar_is_wider_than_its_table(where):
    pairs = extended(CELLAR, where)
    finding = only(pairs, "leaf-kept-elsewhere", where)
    assert finding.severity == "seen"
    assert finding.parts[0] == "leaf"
    half, leaf, _ = whole(pairs, where).parts
    apart = (leaf.width.days_mm - half.width.days_mm) / 2
    assert finding.figures["edge_most_mm"] == pytest.approx(float(apart.max()), abs=0.01)
    assert finding.figures["edge_most_mm"] >= limit("leaf edge")


def test_a_leaf_kept_in_the_room():
    assert not found(extended(HOME.name), "leaf-kept-elsewhere")
    assert not found(extended(), "leaf-kept-elsewhere")


def test_a_leaf_whose_grain_crosses_the_table_keeps_its_length():
    across = WOOD.replace("grain x", "grain y")
    figures = [f.figures for f in found(extended(CELLAR, rest=across), "leaf-kept-elsewhere")]
    assert all(abs(one.get("edge_most_mm", 0.0)) < 0.05 for one in figures)


def test_a_kept_part_is_solved_in_its_own_air():
    half, leaf, _ = whole(extended(CELLAR)).parts
    alone = solve_piece(piece_of(extended()), find_year(CELLAR), DAY).parts[1]
    assert np.allclose(leaf.mc_days, alone.mc_days)
    assert not np.allclose(leaf.mc_days, half.mc_days)
    assert any(CELLAR in note for note in leaf.notes)
    metered = solve_piece(piece_of(extended(CELLAR)), HOME, DAY, 7.7)
    assert (metered.parts[0].today_mc, metered.parts[0].metered) == (7.7, True)
    assert not metered.parts[1].metered  # the meter read the table


def test_a_kept_leaf_is_laid_in_and_no_board_of_a_panel():
    along = WOOD.replace("grain x", "grain y")  # edge to edge with the halves
    glued = whole(extended(rest=along))
    assert {joint.kind for joint in glued.joints} == {kinds.GLUED_EDGE} and len(glued.panels) == 1
    laid = whole(extended(CELLAR, rest=along))
    assert {joint.kind for joint in laid.joints} == {kinds.RESTS} and not laid.panels
    said = {("half left", "leaf"): kinds.SLIDES}
    assert kinds.SLIDES in {
        joint.kind for joint in whole(extended(CELLAR, rest=along), confirmed=said).joints
    }


def test_the_word_takes_years_and_places_and_tells_what_is_near():
    assert tags_from_words("leaf", {"kept": "Museum"}, "label").kept == find_year("museum")
    place = tags_from_words("leaf", {"kept": "Oslo"}, "label").kept
    assert place is not None and "Oslo" in place.name
    wrong = tags_from_words("leaf", {"kept": "musuem"}, "label")
    assert wrong.kept is None and Tags().kept is None
    assert "no year of air and no place" in wrong.problems[0].message
