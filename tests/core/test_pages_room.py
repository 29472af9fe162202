"""The humidity to keep: the moistures at which grooves and gaps are used up, and the air that brings wood there."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from movement_core.air.emc import equilibrium_moisture
from movement_core.piece.limits import limit
from movement_core.sheet.pages.room import BARES, JAMS, PRESSES, bounds, humidity_of, room_entry
from tests.core.sheet_pieces import door, material, one_board, panel_in_frame
from tests.core.test_checks_whole import framed


@given(st.floats(2, 98), st.floats(5, 35))
def test_humidity_is_the_inverse_of_the_equilibrium(rh, temperature):
    moisture = float(equilibrium_moisture(temperature, rh))
    assert humidity_of(moisture, temperature) == pytest.approx(rh, abs=0.1)


def test_a_panel_fills_its_grooves_where_its_width_says():
    piece = panel_in_frame()
    (panel,) = [s for s in piece.parts if s.part.name == "panel"]
    (presses,) = [b for b in bounds(piece.whole) if b.what == PRESSES]
    assert presses.upper and presses.parts == ("panel",)
    # By hand: 6 mm of room in all, taken up at 6 % by the strain per 1 % that its own driest and wettest day show.
    swing = float(np.ptp(panel.width.days_mm)) / float(np.ptp(panel.mc_days))
    assert presses.moisture_percent == pytest.approx(6.0 + 6.0 / swing, abs=0.2)


def test_a_panel_leaves_its_groove_below():
    piece = material(framed(3.0, cover=4.0, built=12.0), kinds=())
    (bares,) = [b for b in bounds(piece.whole) if b.what == BARES]
    (room,) = piece.whole.rooms
    swing = float(np.ptp(room.width.days_mm)) / float(np.ptp(piece.parts[2].mc_days))
    shrinks = 2 * (room.cover_mm - limit("panel cover"))
    assert not bares.upper
    assert bares.moisture_percent == pytest.approx(12.0 - shrinks / swing, abs=0.2)


def test_a_gap_left_as_told_jams_only_beyond_the_year():
    found = [b for b in bounds(door().whole) if b.what == JAMS]
    jams = min(found, key=lambda b: b.moisture_percent)
    assert jams.parts == ("post right", "board right")
    wettest = max(float(s.mc_days.max()) for s in door().parts if s.mc_days is not None)
    assert jams.upper and jams.moisture_percent > wettest


def test_the_band_lies_inside_the_year_and_inside_every_limit():
    for piece in (door(), panel_in_frame(), one_board()):
        room, year = room_entry(piece.whole), piece.whole.solved.year
        assert (
            min(year.rh_percent) <= room["rh_least_percent"] < room["rh_most_percent"] <= max(year.rh_percent)
        )
        for one in room["limits"]:
            if one["end"] == "most":
                assert room["rh_most_percent"] <= one["rh_percent"]
            else:
                assert room["rh_least_percent"] >= one["rh_percent"]


def test_a_panel_without_room_leaves_no_band_worth_keeping():
    tight = room_entry(material(framed(0.0, built=6.0), kinds=()).whole)
    assert tight["rh_most_percent"] is None or tight["rh_most_percent"] - tight["rh_least_percent"] < 15
    assert any(one["what"] == PRESSES for one in tight["limits"])


def test_a_board_alone_has_no_limits_but_the_year():
    room, year = room_entry(one_board().whole), one_board().whole.solved.year
    assert room["limits"] == []
    assert (room["rh_least_percent"], room["rh_most_percent"]) == (min(year.rh_percent), max(year.rh_percent))
