"""The plans for a top as data and as text that a maker can act on."""

from __future__ import annotations

import json
import re

import pytest

from movement_core.air.year import MONTHS
from movement_core.piece.top_plan import plan_top
from movement_core.piece.tops import find_tops
from movement_core.sheet.holding import plans_entry, untold_entry
from movement_core.sheet.holding_text import holding_text
from movement_core.sheet.lines import table
from movement_core.sheet.text import WIDTH
from tests.core.tables import BOTH, DRY, MIXED, UP, Made, frame, solved, top

BATTEN = Made("Batten", (60, 400, 30), (200, 0, 685), "white oak; grain y; cut quarter; built 9")
END = Made("End", (90, 440, 20), (495, 0, 710), "white oak; grain y; cut quarter; built 9")


def entry_of(made, air=BOTH, **wish):
    (found,) = find_tops(solved(made, air))
    return plans_entry(plan_top(found, **wish)) if found.top else untold_entry(found)


@pytest.fixture(scope="module")
def table_entry():
    return entry_of(top(UP) + frame(), flatness_mm=1.0)


@pytest.fixture(scope="module")
def table_text(table_entry):
    return holding_text([table_entry])


def flat(text):
    """The text with its line breaks undone."""
    return re.sub(r"\s+", " ", text)


def test_the_entry_is_plain_data_with_units_in_its_names(table_entry):
    again = json.loads(json.dumps(table_entry, allow_nan=False))
    assert again == table_entry
    (fastener, *_) = table_entry["plans"][0]["fasteners"]
    numbers = [name for name, value in fastener.items() if isinstance(value, float)]
    assert all(name.endswith(("_mm", "_n")) for name in numbers)
    assert set(MONTHS) <= set(table_entry["free_departure_mm"])


def test_places_are_told_from_the_edge_and_the_end_that_are_named(table_entry):
    assert (table_entry["datum"]["edge"], table_entry["datum"]["other_edge"]) in (
        ("Board 1", "Board 4"), ("Board 4", "Board 1"),
    )  # fmt: skip
    (found,) = find_tops(solved(top(UP) + frame(), BOTH))
    today = 440 * (1 + found.strain.mean("today"))
    by_rail = {}
    for one in table_entry["plans"][0]["fasteners"]:
        assert 0 < one["from_edge_today_mm"] < today and 0 < one["from_end_mm"] < 900
        by_rail.setdefault(one["rail"], []).append(one)
    ends = table_entry["datum"]["end"], table_entry["datum"]["other_end"]
    near = [one["from_end_mm"] for one in by_rail[ends[0]]]
    far = [one["from_end_mm"] for one in by_rail[ends[1]]]
    assert max(near) < 450 < min(far)


def test_a_slot_holds_its_screw_in_every_month():
    entry = entry_of(top(UP) + frame(), flatness_mm=1.0, kinds=("slotted screw",))
    slotted = [one for one in entry["plans"][0]["fasteners"] if one["slot_length_mm"]]
    assert slotted
    for one in slotted:
        shank = 4.5
        travel = one["travel_most_mm"] - one["travel_least_mm"]
        assert one["slot_length_mm"] == pytest.approx(shank + travel + 1.0, abs=0.1)
        screw = one["screw_from_slot_end_today_mm"]
        for when in ("least", "most"):
            there = screw + one[f"travel_{when}_mm"] - one["travel_today_mm"]
            assert shank / 2 <= there <= one["slot_length_mm"] - shank / 2 + 0.1
        middle = one["slot_middle_on_rail_mm"] - one["on_rail_mm"] + (one["slot_middle_aside_mm"] or 0.0)
        assert middle == pytest.approx((one["travel_least_mm"] + one["travel_most_mm"]) / 2, abs=0.11)


def test_a_rail_drawn_the_other_way_round_gives_the_same_places():
    one, other = (
        entry_of(top(UP) + frame()[::step], flatness_mm=1.0, kinds=("slotted screw",)) for step in (1, -1)
    )
    places = [
        sorted((f["rail"], f["on_rail_mm"], f["from_edge_today_mm"]) for f in entry["plans"][0]["fasteners"])
        for entry in (one, other)
    ]
    assert places[0] == places[1]


def test_the_text_says_what_to_do(table_entry, table_text):
    text = flat(table_text)
    best = table_entry["plans"][0]
    assert best["found"] and text.count("holds it") >= 1
    assert "Wished: 1 mm in every month" in text
    assert "every board lies heart side up" in text.casefold()
    assert "Ways to hold it" in text and "Chosen:" in text
    for kind in best["hardware"]:
        assert f"{kind['count']} × {kind['name']}" in text and f"× {kind['screw_length_mm']:.0f} mm" in text
        for link in kind["unknown_links"]:
            assert link in text
    rows = [line for line in table_text.splitlines() if re.match(r"\s+\d+  \S", line)]
    assert len(rows) == best["count"]
    assert "While it is drier" in text and "While it is damper" in text
    assert "would do nothing" in text
    assert "What stays put is the middle of its width" in text


def test_lines_fit_a_terminal_and_cautions_come_once(table_entry):
    text = holding_text([table_entry, table_entry])
    assert max(len(line) for line in text.splitlines()) <= WIDTH
    said = flat(text)
    assert said.count("movement anchors are not lifting points") == 1
    assert said.count("not for lifting, people or overhead loads") == 1


def test_every_month_is_told_once(table_entry):
    spans = " ".join(text.split(":")[0] for text in table_entry["plans"][0]["seasons"])
    told = re.findall("|".join(MONTHS), spans)
    assert told and len(set(told)) == len(told)


def test_mixed_faces_are_told_by_name():
    entry = entry_of(top(MIXED) + frame(), flatness_mm=2.0)
    assert "2 boards lie heart side up, 2 heart side down" in entry["hearts"]
    assert "Board 2" in entry["hearts"]


def test_what_is_missing_is_all_that_is_told():
    entry = entry_of(top((*UP[:3], "cut flat")) + frame())
    text = holding_text([entry])
    assert "Board 4" in text and "heart" in text and "Ways to hold it" not in text and "Mind" not in text
    assert entry["plans"] == []


def test_none_exists_then_it_says_what_would():
    heavy = tuple("pith 0 18" for _ in range(4))
    entry = entry_of(top(heavy, built=14) + frame(), DRY, flatness_mm=0.1)
    assert not any(plan["found"] for plan in entry["plans"])
    text = flat(holding_text([entry]))
    assert "No plan of these kinds holds it" in text and "What would help" in text and "battens" in text


def test_a_top_with_no_frame_asks_for_battens_or_ends():
    heavy = tuple("pith 0 30" for _ in range(4))
    text = flat(holding_text([entry_of(top(heavy))]))
    assert "Nothing lies under it: it has no frame" in text
    assert "There is no rail to fasten it to" in text and "Breadboard ends" in text


def test_a_flat_top_needs_nothing():
    entry = entry_of(top(tuple("rings 90" for _ in range(4))))
    assert entry["flat_by_itself"]
    assert "stays within the wish" in holding_text([entry])


def test_recipes_of_a_batten_and_a_breadboard_end_that_are_drawn():
    entry = entry_of([*top(UP), BATTEN, END])
    batten, end = entry["recipes"]
    assert batten["kind"] == "batten" and end["kind"] == "breadboard end"
    plain = [screw for screw in batten["screws"] if screw["slot_length_mm"] is None]
    assert len(plain) == 1 and plain[0]["across_mm"] == 0
    lengths = [screw["slot_length_mm"] for screw in batten["screws"] if screw["across_mm"] > 0]
    assert lengths == sorted(lengths)
    assert end["tenon_length_mm"] == pytest.approx(60) and len(end["tenons"]) % 2 == 1
    assert (
        end["proud_driest_mm"] > 0 > end["proud_wettest_mm"]
        or end["proud_driest_mm"] > end["proud_wettest_mm"]
    )
    # the likely error lies between what is expected and the most, and it is told as such
    assert 0 <= end["proud_driest_expected_mm"] < end["proud_driest_mm"]
    assert 0 >= end["proud_wettest_expected_mm"] > end["proud_wettest_mm"]
    text = flat(holding_text([entry]))
    dry, wet = end["proud_driest_expected_mm"], -end["proud_wettest_expected_mm"]
    assert f"about {dry:.1f} mm proud when driest and {wet:.1f} short when wettest" in text
    assert f"up to {end['proud_driest_mm']:.1f} and {-end['proud_wettest_mm']:.1f}, the likely error" in text
    # a slot is of use with the screw or peg that it is for
    assert "Screws 4.5 mm thick: one plain hole" in text and "pegs 8 mm thick" in text
    assert "Batten, a batten: never glued" in text and "End, a breadboard end" in text and "peg slot" in text


def test_fixed_solid_it_would_split(table_entry, table_text):
    fixed = table_entry["if_fixed"]
    assert fixed["split"] == "likely" and fixed["tension_mpa"] > fixed["strength_mpa"]
    assert "a split is likely" in flat(table_text)


def test_empty_columns_are_left_out():
    lines = table([("a", "b", "c"), ("1", "", "x"), ("2", "", "y")], left=(2,), indent="")
    assert lines == ["a  c", "-  -", "1  x", "2  y"]
