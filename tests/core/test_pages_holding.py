"""The section of a sheet that tells how each top is held: what it says of tops of every kind."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

from movement_core.piece.tops import find_tops
from movement_core.piece.whole import whole_piece
from movement_core.sheet.pages.hold_blocks import hold_blocks
from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.material import Material, planned_tops
from movement_core.sheet.pages.model import Heading, Listing, Paragraph, Pictures, Table
from movement_core.sheet.pages.names import bare
from tests.core.tables import BOTH, UP, frame, solved, top

ROOM = (180.0, 120.0)
HEAVY = ("pith 0 18",) * 4


@cache
def tops(piths, kinds=(), framed=True):
    """A sheet's material with one invented top."""
    piece = solved(top(piths) + (frame(legs=False) if framed else []), BOTH)
    whole = whole_piece(piece)
    # Bodies make the parts of a whole piece; a top is found among the solids alone.
    assert [found.name for found in whole.tops] == [found.name for found in find_tops(piece)]
    return Material({}, whole, (), planned_tops(whole, kinds=kinds))


def blocks_of(material, units="mm"):
    return hold_blocks(material, Lengths(units), ROOM)


def said(blocks):
    """All running text of blocks."""
    texts = []
    for block in blocks:
        if isinstance(block, Paragraph):
            texts.append(block.text.words)
        elif isinstance(block, Listing):
            texts += [item.words for item in block.items]
        elif isinstance(block, Heading):
            texts.append(block.words)
    return bare("\n".join(texts))


def tables(blocks, start):
    return [block for block in blocks if isinstance(block, Table) and block.caption.startswith(start)]


def with_entry(material, **changed):
    """The same material, its top's entry changed."""
    (planned,) = material.tops
    return replace(material, tops=(replace(planned, entry={**planned.entry, **changed}),))


def test_a_piece_without_a_top_has_no_such_section():
    assert hold_blocks(Material({}, tops(UP).whole), Lengths("mm"), ROOM) == []


def test_a_top_that_cannot_be_worked_out_says_what_is_missing():
    blocks = blocks_of(tops((*UP[:3], "cut flat")))
    assert [type(block) for block in blocks] == [Heading, Paragraph, Listing]
    assert "before this is said" in said(blocks) and "Board 4" in said(blocks)


def test_a_top_that_is_flat_by_itself_still_shows_where_its_fasteners_go():
    material = tops(("rings 90",) * 4, kinds=("slotted screw",))
    blocks = blocks_of(material)
    assert "fasteners only keep it in place" in said(blocks)
    (fasteners,) = tables(blocks, "Every fastener")
    assert len(fasteners.rows) == material.tops[0].entry["plans"][0]["count"] > 0
    assert any(isinstance(block, Pictures) for block in blocks)
    assert not tables(blocks, "Ways to hold it"), "one way is no choice"


def with_plans(material, **changed):
    """The same material, every plan of its top changed."""
    return with_entry(material, plans=[{**plan, **changed} for plan in material.tops[0].entry["plans"]])


def test_where_no_way_is_found_it_says_what_would_help_and_draws_none():
    lost = with_plans(tops(UP, kinds=("slotted screw", "clip")), found=False, what_would=["three battens"])
    blocks = blocks_of(with_entry(lost, flat_by_itself=False))
    assert "What would help" in said(blocks) and "three battens" in said(blocks)
    (ways,) = tables(blocks, "Ways to hold it that were tried")
    assert {row.cells[-1].words for row in ways.rows} == {"does not hold it"}
    assert not tables(blocks, "Every fastener") and not any(isinstance(block, Pictures) for block in blocks)


def test_a_way_of_which_no_piece_was_placed_is_no_row():
    material = tops(UP, kinds=("slotted screw", "clip"))
    first, other = material.tops[0].entry["plans"]
    nowhere = {**other, "name": "nowhere", "count": 0}
    (ways,) = tables(blocks_of(with_entry(material, plans=[first, nowhere, other])), "Ways to hold it")
    assert [row.cells[0].words for row in ways.rows] == [first["name"], other["name"]]


def test_that_nothing_which_was_tried_helps_is_said_in_words():
    lost = with_plans(tops(UP, kinds=("slotted screw",)), found=False, what_would=[])
    assert "nothing that was tried" in said(blocks_of(with_entry(lost, flat_by_itself=False)))


def test_a_top_without_a_frame_has_no_fasteners_to_show():
    material = tops(HEAVY, kinds=("slotted screw",), framed=False)
    blocks = blocks_of(material)
    assert material.tops[0].entry["plans"][0]["count"] == 0
    assert not tables(blocks, "Ways") and not tables(blocks, "Every") and "To buy or make" not in said(blocks)
    assert "No way to hold it" in said(blocks) and "battens" in said(blocks)


def test_columns_of_a_slot_stand_only_where_a_fastener_has_one():
    slotted, tongued = (
        tables(blocks_of(tops(UP, kinds=(kind,))), "Every fastener")[0]
        for kind in ("slotted screw", "button")
    )
    titles = [{(column.group, column.title) for column in table.columns} for table in (slotted, tongued)]
    slot, tongue = "slot, mm", "tongue, mm"
    assert (slot, "length") in titles[0] and (tongue, "today") not in titles[0]
    assert (tongue, "today") in titles[1]
    for table in (slotted, tongued):
        assert all(len(row.cells) == len(table.columns) for row in table.rows)


@pytest.mark.parametrize("known", [True, False])
def test_a_pull_is_told_with_what_is_allowed_where_that_is_known(known):
    material = tops(UP, kinds=("slotted screw",))
    entry = material.tops[0].entry
    plan = entry["plans"][0]
    allowed = 321.0 if known else None
    fasteners = [{**one, "allowable_pull_n": allowed} for one in plan["fasteners"]]
    changed = with_entry(material, plans=[{**plan, "fasteners": fasteners}])
    (table,) = tables(blocks_of(changed), "Every fastener")
    pulls = [row.cells[-2].words for row in table.rows]
    assert all(("of 321" in pull) == known for pull in pulls)


def test_what_to_buy_names_the_screw_what_gives_first_and_what_nobody_published():
    material = tops(UP, kinds=("slotted screw",))
    entry = material.tops[0].entry
    plan = entry["plans"][0]
    kind = {
        "count": 3, "name": "plate", "screw_length_mm": 16.0, "screw_shank_mm": 4.5, "wood_left_above_mm": 5.26,
        "weakest_known_link": "screw in the top", "safety": 5.5, "unknown_links": ["the plate", "its rivet"],
        "note": "own note",
    }  # fmt: skip
    bare_kind = {**kind, "screw_length_mm": None, "weakest_known_link": "", "unknown_links": []}
    items = [
        said(blocks_of(with_entry(material, plans=[{**plan, "hardware": [one]}])))
        .split("To buy or make\n")[1]
        .splitlines()[0]
        for one in (kind, bare_kind)
    ]
    assert items[0] == (
        "3 × plate; screw 4.5 × 16 mm, 5.2 mm of wood stay above its point; gives first: screw in the top, "
        "ultimate ÷ 5.5; no published figure for the plate, its rivet; own note"
    )
    assert items[1] == "3 × plate; no stock screw stays inside the top; own note"
    nothing = said(blocks_of(with_entry(material, plans=[{**plan, "hardware": []}])))
    assert "To buy or make" not in nothing


def test_a_top_of_one_board_and_without_notes_leaves_those_lines_out():
    material = tops(UP, kinds=("slotted screw",))
    full, short = (
        said(blocks_of(with_entry(material, **changed))) for changed in ({}, {"hearts": None, "notes": []})
    )
    assert "heart side up" in full.casefold() and "heart side up" not in short.casefold()
    assert "Taken for this top" in said(blocks_of(with_entry(material, notes=["one taken"])))
    assert "Taken for this top" not in short


def test_the_ways_are_told_in_the_sheets_unit():
    material = tops(UP, kinds=("slotted screw", "clip"))
    two = {"slotted screw": 3, "clip": 2}
    first, other = material.tops[0].entry["plans"]
    mixed = with_entry(material, plans=[{**first, "kinds_used": two}, {**other, "kinds_used": {"clip": 5}}])
    (ways,) = tables(blocks_of(mixed, "inch"), "Ways to hold it; the first is drawn below")
    assert {column.group for column in ways.columns} >= {"out of flat, inch"}
    assert [row.cells[0].words for row in ways.rows] == ["3 slotted screw + 2 clip", other["name"]]
