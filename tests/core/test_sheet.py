"""The report as data, text and CSV: one truth in three forms."""

from __future__ import annotations

import csv
import datetime
import io
import json

import pytest

from movement_core.air.presets import find_year
from movement_core.checks import all_findings
from movement_core.errors import UnknownName
from movement_core.piece.part import Solid, parts_of
from movement_core.piece.solve import solve_piece
from movement_core.piece.tag_sources import tags_from_text
from movement_core.piece.whole import whole_piece
from movement_core.sheet.entry import file_entry
from movement_core.sheet.listing import list_species, list_years
from movement_core.sheet.table import COLUMNS, as_csv
from movement_core.sheet.text import as_text, printable, shortened
from tests.core.solids import box

TAGS = {
    "Known": "white oak; pith 0 -60; built 12",
    "Class": "white oak; cut flat; heart show; built 12",
    "Rings": "white oak; built 12",
    "Silent": "",
    "Steel": "steel",
    "Twin": "white oak; pith 0 -60; built 12",
    "=Evil\x1b[2J": "white oak; pith 0 3; built 12",
    "板 Ünï": "white oak; grian x; cut flat; built 12",
}


@pytest.fixture(scope="module")
def entry():
    solids = [
        Solid(f"key{i}", name, box((1000, 120, 20)), tags_from_text(name, f"wood{{{tag}}}", "label"))
        for i, (name, tag) in enumerate(TAGS.items())
    ]
    piece = solve_piece(parts_of(solids), find_year("heated cold-winter home"), datetime.date(2026, 3, 15))
    return file_entry("model.FCStd", piece, all_findings(whole_piece(piece)), ("a face is broken",))


def test_the_entry_is_plain_json(entry):
    assert json.loads(json.dumps(entry)) == entry
    assert [part["name"] for part in entry["parts"]] == list(TAGS)


def test_figures_are_single_ranged_or_missing(entry):
    known, cut, rings, silent, steel, *_ = entry["parts"]
    assert known["today_mm"] and "today_range_mm" not in known and known["cup"]["driest_mm"] < 0
    assert cut["today_mm"] and cut["today_range_mm"][0] < cut["today_range_mm"][1]
    assert cut["cup"]["driest_mm"] is None and cut["cup"]["driest_range_mm"][0] > 0
    assert rings["today_mm"] is None and rings["today_range_mm"] and rings["cup"] is None
    assert rings["missing"] == ["rings"] and silent["missing"] == ["species", "rings", "moisture"]
    assert silent["today_mm"] is None and "today_range_mm" not in silent
    assert steel["today_mm"] == steel["driest_mm"] == 120 and steel["driest_month"] is None


def test_every_inferred_fact_says_so(entry):
    facts = entry["parts"][0]["facts"]
    assert facts["grain"]["origin"] == "inferred" and "longest edge" in facts["grain"]["reason"]
    assert facts["rings"] == {"origin": "tagged", "reason": "label"}
    assert entry["parts"][3]["facts"]["species"]["origin"] == "missing"


def test_problems_and_errors_are_kept_apart_from_findings(entry):
    assert [error["part"] for error in entry["errors"]] == ["", "板 Ünï"]
    assert {finding["check"] for finding in entry["findings"]} == {"pith-in-board", "missing-facts"}
    assert entry["findings"][0]["severity"] == "breaks", "the gravest first"


def test_csv_holds_the_same_numbers(entry):
    rows = list(csv.DictReader(io.StringIO(as_csv(entry))))
    assert tuple(rows[0]) == COLUMNS and len(rows) == len(entry["parts"])
    for row, part in zip(rows, entry["parts"]):
        if part["today_mm"] is not None and "today_range_mm" not in part:
            assert float(row["today_mm"]) == part["today_mm"]
    assert rows[2]["today_mm"] == "{}..{}".format(*entry["parts"][2]["today_range_mm"])
    assert rows[6]["name"].startswith("'="), "no formula for a spreadsheet"


def test_text_shows_each_part_once_and_alike_ones_together(entry):
    text = as_text(entry)
    assert "Known +1" in text and "Twin" not in text.split("Inferred")[0].replace("Known +1", "")
    assert "\x1b" not in text and "=Evil\\x1b" in text
    today = entry["parts"][0]["today_mm"]
    assert f"{today:.1f}" in text
    assert "Could not be checked" in text and "a face is broken" in text and "'grian'" in text
    assert "local codes" in text
    assert max(len(line) for line in text.splitlines()) <= 160


def test_letters_that_move_the_cursor_and_wide_ones():
    assert printable("a\nb\u202ec") == "a\\x0ab\\x202ec"
    assert shortened("板板板板", 5) == "板板…" and shortened("abc", 3) == "abc"


@pytest.mark.parametrize(("scale", "asks"), [(1.0, False), (1 / 25.4, True), (1 / 1000, True)])
def test_a_piece_drawn_in_inches_or_metres_is_asked_about(scale, asks):
    sizes = {"Top": (914.0, 508.0, 25.0), "Rail": (700.0, 80.0, 22.0)}
    solids = [
        Solid(name, name, box(tuple(size * scale for size in sizes[name])),
              tags_from_text(name, "x wood{white oak; grain x; show z; cut flat; built 9}", "label"))
        for name in sizes
    ]  # fmt: skip
    year, day = find_year("heated cold-winter home"), datetime.date(2026, 3, 15)
    entry = file_entry("a.step", solve_piece(parts_of(solids), year, day), [])
    noted = {part["name"] for part in entry["parts"] if any("inches or metres" in n for n in part["notes"])}
    assert noted == ({"Top"} if asks else set())
    assert ("inches or metres" in as_text(entry)) == asks


def test_lists():
    assert "Quercus alba" in list_species("oak") and "museum" in list_years()
    for make in (list_species, list_years):
        with pytest.raises(UnknownName, match="unobtainium"):
            make("unobtainium")


def test_a_name_without_end_is_shortened_wherever_the_text_shows_it():
    long = "Board " + "very " * 2000 + "end"
    tags = {
        f"{long} 1": "white oak; cut flat; heart show; built 12",
        f"{long} 2": "white oak; grian x; cut flat; built 12",
        f"{long} 3": "",
    }
    solids = [
        Solid(f"key{i}", name, box((1000, 120, 20)), tags_from_text(name, f"wood{{{tag}}}", "label"))
        for i, (name, tag) in enumerate(tags.items())
    ]
    piece = solve_piece(parts_of(solids), find_year("museum"), datetime.date(2026, 3, 15))
    errors = (f"{long} 4: a mesh, not a solid: make a solid of it first",)
    entry = file_entry("model.FCStd", piece, all_findings(whole_piece(piece)), errors, (f"{long} 5",))
    text = as_text(entry)
    assert entry["parts"][0]["name"] == f"{long} 1", "the data keep it whole"
    assert len(text) < 6000 and "…" in text
    plain = " ".join(text.split())
    assert "make a solid of it first" in plain and "'grian' is not a word of ours" in plain
    assert "hidden, and left out: Board very" in plain
