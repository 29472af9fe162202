"""Where the length of a top with breadboard ends counts from: the shoulders that one sees. All tables are invented."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.piece.hardware import hardware_of
from movement_core.piece.part import Solid, parts_of
from movement_core.piece.solve import solve_piece
from movement_core.piece.tag_sources import tags_from_text
from movement_core.piece.top_plan import plan_top
from movement_core.piece.tops import find_tops
from movement_core.sheet.holding import plans_entry
from movement_core.sheet.holding_text import top_text
from movement_core.sheet.template.marks import template_marks
from tests.core.contact_solids import blocks, outline_of
from tests.core.solids import box
from tests.core.tables import BOTH, DAY, UP, frame

BOARD = "white oak; grain x; show z; {pith}; finish varnish 2; built 9"
END = "white oak; grain y; show z; cut quarter; built 9"


def _solid(name, outline, tag):
    return Solid(name, name, outline, tags_from_text(name, f"wood{{{tag}}}", "label"))


def _blocks(name, add, cut=()):
    return outline_of(blocks(name, add, cut), np.eye(3))


def _table(left=25.0, right=25.0, tenon=0.0, deep=80.0, groove=None):
    """Four boards whose faces go from -400 to 400, a tongue at each end, and tenons of two boards at the right one.

    ``deep`` : breadth of the ends. ``groove`` : instead of tongues of the top, tongues of the ends so deep in it.
    """
    solids = []
    for i, pith in enumerate(UP):
        low, high = -220.0 + 110 * i, -110.0 + 110 * i
        add = [((-400, low, 700), (400, high, 720))]
        cut = []
        if groove:
            cut = [
                ((-400, low, 707), (-400 + groove, high, 713)),
                ((400 - groove, low, 707), (400, high, 713)),
            ]
        else:
            add += [((-400 - left, low, 707), (400 + right, high, 713))]
        if tenon and i in (0, 3):
            add += [((400, low + 20, 707), (400 + tenon, high - 20, 713))]
        solids.append(_solid(f"Board {i + 1}", _blocks(f"Board {i + 1}", add, cut), BOARD.format(pith=pith)))
    for name, side, far in (("Breadboard left", -1, left), ("Breadboard right", 1, max(right, tenon))):

        def along(a, b, side=side):
            return sorted((side * a, side * b))

        a, b = along(400, 400 + deep)
        add, cut = [((a, -220, 700), (b, 220, 720))], []
        if groove:
            c, d = along(400 - groove, 400)
            add += [((c, -220, 707), (d, 220, 713))]
        else:
            c, d = along(400, 400 + far)
            cut = [((c, -220, 707), (d, 220, 713))]
        solids.append(_solid(name, _blocks(name, add, cut), END))
    for one in frame(length=700, width=350, legs=False):
        solids.append(_solid(one.name, box(one.size, np.array(one.centre)), one.tag))
    return solids


def only(solids):
    (found,) = find_tops(solve_piece(parts_of(solids), BOTH, DAY))
    return found


@pytest.mark.parametrize(
    ("made", "tips"),
    [
        ({}, (25, 25)),
        ({"right": 8.0, "tenon": 60.0}, (25, 60)),
        ({"left": 8.0, "right": 8.0}, (8, 8)),
        ({"tenon": 80.0}, (25, 80)),
        ({"groove": 12.0}, (0, 0)),
    ],
    ids=["tongues", "tenons of 60 in 80", "short tongues", "through tenons", "tongues of the ends"],
)
def test_the_length_is_that_between_the_shoulders_however_the_ends_are_joined(made, tips):
    place = only(_table(**made)).place
    assert {one.name for one in place.ends} == {"Breadboard left", "Breadboard right"}
    assert place.length_mm == pytest.approx(800)
    assert place.origin[0] == pytest.approx(0)
    assert not place.outline_mm and not place.no_shoulder
    assert place.tips_mm == pytest.approx(tips)
    ends = sorted(sorted((float(one.low[0]), float(one.high[0]))) for one in place.ends)
    reach = -400 if "groove" not in made else -388
    assert ends[0] == pytest.approx([-480, reach])


def test_tongues_of_different_depth_do_not_shift_places_and_the_words_say_shoulder():
    plans = plan_top(only(_table(left=8.0, right=8.0, tenon=60.0)), flatness_mm=1.5)
    entry = plans_entry(plans)
    datum = entry["datum"]
    assert datum["end"] == "Breadboard left" and datum["end_is"] == "shoulder"
    text = " ".join(top_text(entry).split())
    assert "800 (without tongues and tenons) × 440 × 20 mm" in text
    assert "from the top's end at Breadboard left (the shoulder)" in text
    for fastener, placed in zip(entry["plans"][0]["fasteners"], plans.plans[0].placed):
        assert fastener["from_end_mm"] == pytest.approx(placed.place_mm[0] + 400, abs=0.05)
    hardware = hardware_of(plans, plans.plans[0])
    marks = template_marks(plans, plans.plans[0], entry, hardware)
    assert marks.length_mm == pytest.approx(800) and marks.between_shoulders
    # with its tongues drawn the ends get none again, though the length ends before them
    refused = [text for text in hardware.refused if "drawn with its tongue or tenons already" in text]
    assert len(refused) == 2


def test_eased_edges_and_a_bare_faced_tongue_leave_the_shoulder_where_it_is():
    solids = _table()
    for at, one in enumerate(solids[:4]):
        low, high = one.outline.points[:, 1].min(), one.outline.points[:, 1].max()
        name = one.name
        body = _blocks(
            name,
            [((-400, low, 701), (400, high, 720)), ((-399, low, 700), (399, high, 720)),
             ((-425, low, 700), (-300, high, 706))],
        )  # fmt: skip
        solids[at] = _solid(name, body, BOARD.format(pith=UP[at]))
    place = only(solids).place
    assert place.length_mm == pytest.approx(800) and place.tips_mm == pytest.approx((25, 0))


def test_a_top_with_no_shape_to_find_the_shoulder_in_says_so(monkeypatch):
    monkeypatch.setattr("movement_core.piece.top_place._faces", lambda place: ())
    found = only(_table())
    assert found.place.length_mm == pytest.approx(850)
    assert set(found.place.no_shoulder) == {"Breadboard left", "Breadboard right"}
    assert any(
        "shoulder meets Breadboard left, Breadboard right is not found" in note for note in found.notes
    )
    entry = plans_entry(plan_top(found))
    assert entry["datum"]["end_is"] == "tip"
    assert "Breadboard left (the tip let into it: its shoulder is not found)" in " ".join(
        top_text(entry).split()
    )


def test_a_top_that_nothing_is_let_into_keeps_its_words():
    solids = [one for one in _table() if not one.name.startswith("Breadboard")]
    found = only(solids)
    assert found.place.length_mm == pytest.approx(850)
    entry = plans_entry(plan_top(found))
    assert entry["datum"]["end_is"] == "end" and "shoulder" not in top_text(entry)
    assert "(without tongues" not in top_text(entry)
