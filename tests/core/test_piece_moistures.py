"""The moisture of parts: legs answer through two directions, boards of a glued panel through their faces alone."""

from __future__ import annotations

import datetime

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.air.presets import find_year
from movement_core.moisture.block import block_year
from movement_core.moisture.response import wood_year
from movement_core.piece.measured import Measurement, learn_from
from movement_core.piece.moistures import glued_edges
from movement_core.piece.part import Solid, parts_of
from movement_core.piece.solve import solve_piece
from movement_core.piece.tag_sources import tags_from_text
from movement_core.wood import find_species
from tests.core.solids import box

HOME = find_year("heated cold-winter home")
DAY = datetime.date(2026, 3, 15)
GRAVITY = find_species("white oak").specific_gravity_12


def parts_in(*sizes, tag="white oak; pith 0 -60; built 9", gap=0.0):
    """Boards side by side along their width, grain along x."""
    at, solids = 0.0, []
    for number, (length, width, thick) in enumerate(sizes, 1):
        name = f"Board {number}"
        where = (0.0, at + width / 2, 0.0)
        faces = tags_from_text(name, f"wood{{{tag}}}", "label")
        solids.append(Solid(name, name, box((length, width, thick), where), faces))
        at += width + gap
    return parts_of(solids)


def swings(parts):
    return [float(np.ptp(one.mc_days)) for one in solve_piece(parts, HOME, DAY).parts]


def test_a_leg_is_worked_out_in_both_directions():
    (leg,) = solve_piece(parts_in((700, 60, 60)), HOME, DAY).parts
    assert leg.mc_days == pytest.approx(block_year(HOME, 60, 60, GRAVITY).mean_mc)
    assert np.ptp(leg.mc_days) > 1.4 * np.ptp(wood_year(HOME, 60, GRAVITY).mean_mc)


def test_boards_of_a_glued_panel_keep_their_edges_dry():
    panel = parts_in(*[(900, 60, 30)] * 4)
    assert glued_edges(panel) == {part.key for part in panel}
    through_faces = float(np.ptp(wood_year(HOME, 30, GRAVITY).mean_mc))
    assert swings(panel) == pytest.approx([through_faces] * 4)
    apart = parts_in(*[(900, 60, 30)] * 4, gap=3.0)
    assert not glued_edges(apart)
    assert min(swings(apart)) > 1.05 * through_faces


def test_the_wider_the_nearer_to_a_board():
    shares = [swings(parts_in((2000, width, 25)))[0] for width in (25, 50, 100, 400, 1200)]
    board = float(np.ptp(wood_year(HOME, 25, GRAVITY).mean_mc))
    assert shares == sorted(shares, reverse=True)
    assert shares[-1] == pytest.approx(board, rel=0.01) and shares[-1] >= board


@settings(max_examples=30, deadline=None)
@given(
    st.floats(8, 90),
    st.floats(1, 6),
    st.sampled_from(("bare", "varnish 1", "varnish 3", "blocked")),
    st.booleans(),
)
def test_a_block_swings_more_than_its_slab_and_less_than_the_air(thick, ratio, back, bare):
    finish = "bare" if bare else "oil 2"
    block = block_year(HOME, ratio * thick, thick, 0.6, finish, back)
    slab = wood_year(HOME, thick, 0.6, finish, back)
    air = float(np.ptp(block.air_mc))
    assert np.ptp(slab.mean_mc) - 0.002 * air <= np.ptp(block.mean_mc) <= 1.002 * air
    assert block.mean_mc.mean() == pytest.approx(block.air_mc.mean(), abs=1e-6)


def test_a_face_of_hardly_another_finish_changes_hardly_anything():
    alike, nearly = (block_year(HOME, 50, 50, 0.6, "varnish 2", back) for back in ("varnish 2", "varnish 3"))
    bare = block_year(HOME, 50, 50, 0.6, "varnish 2", "bare")
    assert np.ptp(nearly.mean_mc) < np.ptp(alike.mean_mc) < np.ptp(bare.mean_mc)
    assert np.ptp(nearly.mean_mc) == pytest.approx(np.ptp(alike.mean_mc), rel=0.1)


def test_a_measured_board_of_a_panel_is_taken_with_its_edges_covered():
    panel = parts_in(*[(900, 60, 45)] * 3)
    at = datetime.date(2026, 2, 1)
    read = [Measurement("Board 2", "width", 59.2, at)]
    together = learn_from(panel, read, HOME).lots
    alone = learn_from([panel[1]], read, HOME).lots
    (one,), (other,) = together.values(), alone.values()
    assert abs(one.factor - 1) > 1.05 * abs(
        other.factor - 1
    )  # open edges let it move more: the same reading says less
