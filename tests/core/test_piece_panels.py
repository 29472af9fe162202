"""Edge-glued panels found among the parts of a piece."""

from __future__ import annotations

import datetime

import numpy as np
import pytest

from movement_core.air.presets import find_year
from movement_core.piece.panels import glued_panels
from movement_core.piece.part import Solid, parts_of
from movement_core.piece.solve import solve_piece
from movement_core.piece.tag_sources import tags_from_text
from movement_core.section.board import Board
from movement_core.section.panel import Panel
from movement_core.wood import find_species
from tests.core.solids import box, rotation

DAY = datetime.date(2026, 3, 15)


def piece(*solids):
    made = [
        Solid(str(i), f"Board {i}", outline, tags_from_text("", f"wood{{{tag}}}", "label"))
        for i, (outline, tag) in enumerate(solids)
    ]
    return solve_piece(parts_of(made), find_year("heated cold-winter home"), DAY)


def top(*piths, width=100.0, axes=None, flip=()):
    """Boards side by side along y, grain along x; those in ``flip`` lie with their own axes turned over."""
    turn = np.eye(3) if axes is None else axes
    solids = []
    for i, (x, y) in enumerate(piths):
        own = np.diag([1.0, -1.0, -1.0]) if i in flip else np.eye(3)
        tag = f"white oak; grain x; show +z; pith {x} {y}; built 12"
        solids.append((box((1000, width, 20), np.array([0, i * width, 0]) @ turn, own @ turn), tag))
    return solids


def test_boards_side_by_side_are_one_panel_with_the_section_rooms_shape():
    (panel,) = glued_panels(piece(*top((0, -60), (5, -70), (0, 80))))
    assert [b.part.name for b in panel.boards] == ["Board 0", "Board 1", "Board 2"] or panel.boards[0]
    oak = find_species("white oak")
    boards = [Board(oak, 100, 20, pith) for pith in ((0, -60), (5, -70), (0, 80))]
    if panel.boards[0].part.name == "Board 2":
        boards.reverse()
    change = panel.boards[0].today_mc - 12
    expected = Panel(boards).shape(change)
    assert panel.shape.departure_mm[12] == pytest.approx(float(expected.departure_mm), rel=1e-9)
    assert panel.width_mm == 300


def test_a_panel_is_the_same_wherever_it_stands():
    still = glued_panels(piece(*top((0, -60), (20, -70))))[0]
    moved = glued_panels(piece(*top((0, -60), (20, -70), axes=rotation(4))))[0]
    assert moved.shape.departure_mm == pytest.approx(still.shape.departure_mm, rel=1e-9)


def test_a_board_laid_over_keeps_its_own_pith_in_its_own_frame():
    """Tagged in its own frame with its show face down, it is the same board turned over."""
    plain = glued_panels(piece(*top((0, -60), (10, -70))))[0]
    over = glued_panels(piece(*top((0, -60), (-10, 70), flip={1})))[0]
    assert sum(over.over) == 1
    assert over.shape.departure_mm == pytest.approx(plain.shape.departure_mm, rel=1e-9)


def test_without_every_pith_there_is_no_profile_and_the_reason_is_told():
    solids = top((0, -60), (0, -70))
    solids[1] = (solids[1][0], "white oak; grain x; show +z; cut flat; built 12")
    (panel,) = glued_panels(piece(*solids))
    assert panel.shape is None and "Board 1" in panel.why_not and panel.width_mm == 200


def test_what_is_no_panel():
    a = "white oak; grain x; show +z; pith 0 -60; built 12"
    board = box((1000, 100, 20))
    for other in (
        box((1000, 100, 20), (0, 101, 0)),  # a gap of 1 mm
        box((1000, 100, 20), (0, 100, 10)),  # on another level
        box((1000, 100, 20), (0, 0, 20)),  # face to face
        box((1000, 100, 20), (900, 100, 0)),  # edges meet along a tenth
        box((1000, 100, 20), (0, 100, 0), rotation(2)),
    ):
        assert not glued_panels(piece((board, a), (other, a)))
    assert not glued_panels(piece((board, a), (box((1000, 100, 20), (0, 100, 0)), "plywood; built 12")))


def test_boards_of_unequal_thickness_show_movement_not_their_drawn_step():
    """20 and 22 mm boards, flush below: 2 mm stand out as drawn; the seasons add a few hundredths."""
    from movement_core.sheet.entry import panel_entry

    tag = "white oak; grain x; show +z; pith 0 -200; built 12"
    thin, thick = box((1000, 100, 20)), box((1000, 100, 22), (0, 100, 1))
    (panel,) = glued_panels(piece((thin, tag), (thick, tag)))
    steps = [month["greatest_step_mm"] for month in panel_entry(panel)["months"].values()]
    assert 0 < max(steps) < 0.1
