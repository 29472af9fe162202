"""The arrangement study of a panel found in a piece."""

from __future__ import annotations

import dataclasses

import pytest

from movement_core.errors import InputError
from movement_core.piece.arrange import arrange_panel
from movement_core.piece.panels import glued_panels
from movement_core.sheet.arrangements import study_entry, study_text
from tests.core.test_piece_panels import piece, top


def panel_of(*piths, looks=()):
    solids = [
        (outline, f"{tag}; looks {looks[i]}" if looks else tag)
        for i, (outline, tag) in enumerate(top(*piths))
    ]
    return glued_panels(piece(*solids))[0]


def test_the_makers_own_layout_is_priced_against_the_flattest():
    study = arrange_panel(panel_of((0, 60), (0, 60), (0, 60), (0, 60)))
    assert study.tried == 16 and study.own.order == (0, 1, 2, 3) and not any(study.own.over)
    assert study.own.price_mm == pytest.approx(study.own.departure_mm - study.flattest.departure_mm)
    assert study.own.price_mm > 0, "four boards all the same way make one arc"
    assert study.own.driest.way == "crown", "heart side up, drier than when flattened"


def test_looks_lead_the_list_and_say_what_they_cost():
    study = arrange_panel(panel_of((0, 60), (0, 60), (0, 60), (0, 60), looks=(3, 1, 2, 1)))
    assert not any(study.best_looks.over), "every show face is the better one"
    assert study.best_looks.looks == 7 and study.best_looks.price_mm == pytest.approx(study.own.price_mm)
    looks = [layout.looks for layout in study.front]
    assert looks == sorted(looks, reverse=True) and looks[-1] < 7


def test_the_text_has_a_line_for_each_layout_and_the_own_one():
    panel = panel_of((0, 60), (0, 60), (0, 60), looks=(3, 1, 2))
    entry = study_entry(panel.name, [b.part.name for b in panel.boards], arrange_panel(panel))
    text = study_text(entry)
    assert "as drawn   1^ 2^ 3^" in text and "best looks 1^ 2^ 3^" in text and "flattest" in text
    assert "Exact" in text and "Choose by looks" in text and "No board says" not in text


def test_an_unknown_pith_is_asked_for():
    panel = panel_of((0, 60), (0, 60))
    with pytest.raises(InputError, match="tag the pith"):
        arrange_panel(dataclasses.replace(panel, panel=None, why_not="the pith is not known of Board 1"))


def test_boards_of_one_name_are_told_apart_by_number():
    panel = panel_of((0, 60), (0, 60), (0, 60))
    entry = study_entry("Top", ["Board"] * 3, arrange_panel(panel), ["a", "b", "c"])
    assert "as drawn   1^ 2^ 3^" in study_text(entry)
    assert [board["key"] for board in entry["boards"]] == ["a", "b", "c"]
