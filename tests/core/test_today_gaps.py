"""The gaps to set today: they hold in every season, whatever the meter's doubt, and are rounded the safe way."""

from __future__ import annotations

import csv
import datetime
import io

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.air.year import MONTHS
from movement_core.piece.another_day import on_another_day
from movement_core.piece.limits import limit
from movement_core.sheet.today_gaps import as_table, cells, gaps_today, rounded_up
from tests.core.contact_solids import blocks
from tests.core.test_contact_fixed_lines import KINDS, framed_panel
from tests.core.whole_pieces import DAY, OAK, whole

HEADINGS = ("between", "as drawn", "set today", "least", "in", "most", "in")


def door_and_panel():
    door = blocks("door", [((500, 2, 2), (898, 22, 698))])
    post = blocks("post", [((460, 0, 0), (498, 24, 700))])
    tag = f"{OAK}; grain z; show y"
    return [*framed_panel(""), (door, tag), (post, tag)]


@pytest.fixture(scope="module")
def piece():
    return whole(door_and_panel(), confirmed=KINDS)


@settings(max_examples=12, deadline=None)
@given(mc=st.floats(5, 13), doubt=st.floats(0, 2), step=st.sampled_from([0.1, 0.5, 25.4 / 64]))
def test_what_is_set_holds_at_every_moisture_that_the_wood_may_have(piece, mc, doubt, step):
    pieces = [on_another_day(piece, DAY, at) for at in (mc, mc - doubt, mc + doubt)]
    gaps = gaps_today(pieces, step)
    assert gaps
    for gap in gaps:
        assert gap.set_mm / step == pytest.approx(round(gap.set_mm / step), abs=1e-6)
        assert gap.least_mm >= limit("gap left") - 1e-6
        assert gap.least_mm <= gap.most_mm
    for one in pieces:  # no single moisture asks for more
        for alone in gaps_today([one], step):
            (mine,) = [gap for gap in gaps if gap.keys == alone.keys and gap.drawn_mm == alone.drawn_mm]
            assert mine.set_mm >= alone.set_mm - 1e-9


def test_drier_wood_today_needs_more_room(piece):
    sets = []
    for mc in (6.0, 8.0, 10.0, 12.0):
        gaps = gaps_today([on_another_day(piece, DAY, mc)], 1e-4)
        sets.append(max(gap.set_mm for gap in gaps))
    assert np.all(np.diff(sets) < 0)


def test_another_day_is_the_same_as_asking_anew(piece):
    day = datetime.date(2026, 9, 1)
    quick, year = on_another_day(piece, day), piece.solved.air
    from movement_core.piece.solve import solve_piece

    slow = solve_piece([one.part for one in piece.solved.parts], year, day)
    for one, other in zip(quick.solved.parts, slow.parts):
        assert one.today_mc == pytest.approx(other.today_mc)
    assert quick.touching is piece.touching
    assert [g.narrowest.today.value for g in quick.gaps] != [g.narrowest.today.value for g in piece.gaps]


@given(size=st.floats(0, 50), step=st.sampled_from([0.1, 25.4 / 64, 0.5]))
def test_rounding_never_makes_a_gap_smaller(size, step):
    up = rounded_up(size, step)
    assert size - 1e-5 <= up < size + step + 1e-9


def test_text_and_csv_hold_every_row(piece):
    gaps = gaps_today([piece])
    text = as_table(gaps, HEADINGS, lambda mm: f"{mm:.1f} mm", MONTHS)
    assert len(text.splitlines()) == len(gaps) + 1
    rows = list(
        csv.reader(
            io.StringIO(as_table(gaps, HEADINGS, lambda mm: f'{mm / 25.4:.3f}"', MONTHS, ";")), delimiter=";"
        )
    )
    assert rows[0] == list(HEADINGS)
    assert rows[1:] == [list(cells(gap, lambda mm: f'{mm / 25.4:.3f}"', MONTHS)) for gap in gaps]
