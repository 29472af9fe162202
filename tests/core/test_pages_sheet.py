"""The sheet's page data: every figure is the JSON's, everything the bench needs is on it, pictures cover nothing."""

from __future__ import annotations

import json
import re
from fractions import Fraction

import pytest

from movement_core.errors import UnknownName
from movement_core.sheet.pages.boxes import clashes
from movement_core.sheet.pages.lengths import INCH_MM, Lengths
from movement_core.sheet.pages.model import (
    DOWN,
    NEAREST,
    UP,
    Form,
    Heading,
    Label,
    Listing,
    Paragraph,
    Pictures,
    Table,
    Text,
)
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from tests.core.sheet_pieces import (
    ALL,
    HOSTILE,
    door,
    hostile,
    one_board,
    panel_in_frame,
    table,
    three_hundred,
)

WISHES = {
    "bench": SheetWish(),
    "inch": SheetWish(job="A job", place="A place", paper="letter", units="inch"),
    "client": SheetWish(client=True),
    "client inch": SheetWish(client=True, paper="letter", units="inch"),
}
SHEETS = [(name, wish) for name in ALL for wish in WISHES]
SCREW = ("screw_shank_mm", "screw_length_mm")  # are sold by the millimetre
DIGITS = re.compile(r"\d")


def texts(sheet):
    """Every text on a sheet."""
    for block in sheet.blocks:
        if isinstance(block, Paragraph):
            yield block.text
        elif isinstance(block, Listing):
            yield from block.items
        elif isinstance(block, Form):
            yield from (field.value for field in block.fields if field.value is not None)
        elif isinstance(block, Table):
            yield from (cell for row in block.rows for cell in row.cells)
        elif isinstance(block, Pictures):
            yield from (s.text for p in block.pictures for s in p.shapes if isinstance(s, Label))


def words(sheet):
    said = [bare(text.words) for text in texts(sheet)]
    said += [bare(block.words) for block in sheet.blocks if isinstance(block, Heading)]
    said += [bare(c.title) for b in sheet.blocks if isinstance(b, Table) for c in b.columns]
    return "\n".join(said)


def resolve(data, pointer):
    for key in pointer:
        data = data[key]
    return data


def number(shown):
    """A figure as a number in the unit it is shown in, and its finest step."""
    plain = shown.replace("−", "-").replace("+", "")
    if "/" not in plain:
        return float(plain), 10.0 ** -len(plain.partition(".")[2])
    sign = -1 if plain.startswith("-") else 1
    return sign * float(sum(Fraction(part) for part in plain.lstrip("-").split())), 1 / 64


@pytest.mark.parametrize("name, wish", SHEETS)
def test_every_figure_is_the_jsons(name, wish):
    material, units = ALL[name](), WISHES[wish].units
    data = json.loads(json.dumps(material.data))
    sheet = movement_sheet(material, WISHES[wish])
    count = 0
    for text in texts(sheet):
        for figure in text.figures:
            assert figure.shown in text.words
            if not figure.at:
                continue  # a tick of an axis
            count += 1
            value = resolve(data, figure.at)
            if value is None:
                assert figure.shown == "?"
                continue
            shown, step = number(figure.shown)
            if (
                units == "inch"
                and any(str(key).endswith("_mm") for key in figure.at)
                and (figure.at[-1] not in SCREW or "/" in figure.shown)  # those are told both ways
            ):
                shown, step = shown * INCH_MM, INCH_MM / 64
            off = shown - (abs(value) if figure.rounding == "size" else value)
            slack = 1e-6 * max(1.0, abs(value))
            if figure.rounding == UP:
                assert -slack <= off < step + slack, (figure, value)
            elif figure.rounding == DOWN:
                assert -slack <= -off < step + slack, (figure, value)
            else:
                assert abs(off) <= step / 2 + slack, (figure, value)
    assert count >= (10 if not WISHES[wish].client else 3)


@pytest.mark.parametrize("name, wish", SHEETS)
def test_no_number_in_a_column_of_figures_is_without_its_place_in_the_json(name, wish):
    sheet = movement_sheet(ALL[name](), WISHES[wish])
    for block in sheet.blocks:
        if not isinstance(block, Table):
            continue
        for place, column in enumerate(block.columns):
            if column.align != "right" or column.title == "No":
                continue
            for row in block.rows:
                left = row.cells[place].words
                for figure in sorted(row.cells[place].figures, key=lambda f: -len(f.shown)):
                    left = left.replace(figure.shown, "")
                left = re.sub(r"\(\d+\)", "", left)  # the number of a part
                assert not DIGITS.search(left), (block.caption, column.title, row.cells[place])


@pytest.mark.parametrize("name, wish", [*SHEETS, ("three hundred", "bench")])
def test_no_label_of_a_picture_is_covered_or_cut(name, wish):
    material = three_hundred() if name == "three hundred" else ALL[name]()
    sheet = movement_sheet(material, WISHES[wish])
    pictures = [p for b in sheet.blocks if isinstance(b, Pictures) for p in b.pictures]
    assert len({p.name for p in pictures}) == len(pictures)
    for picture in pictures:
        assert not clashes(picture), picture.name
        assert picture.told and picture.title
        assert picture.width_mm <= sheet.paper.content_mm + 0.1


def rows_of(sheet, start):
    (found,) = [b for b in sheet.blocks if isinstance(b, Table) and b.caption.startswith(start)]
    return found


def test_the_bench_finds_what_it_needs():
    sheet = movement_sheet(table(), SheetWish(job="Long table", place="Kitchen"))
    headings = [bare(block.words) for block in sheet.blocks if isinstance(block, Heading)]
    assert headings[:3] == ["The piece and its parts", "Parts", "Gaps to leave today"]
    for wanted in ("Holding Board 1 … Board 3", "Sections and cup", "Width through the year", "What was found",
                   "How sure the figures are", "What it rests on", "Mind", "Signed"):  # fmt: skip
        assert wanted in headings
    (form,) = [b for b in sheet.blocks if isinstance(b, Form)][:1]
    fields = {field.label: field.value for field in form.fields}
    assert bare(fields["Job"].words) == "Long table"
    assert "not metered" in fields["Wood today"].words
    assert fields["Meter, its species setting"] is None  # a line to write on
    said = words(sheet)
    for wanted in ("heart side shows", "bark side shows", "Wood Handbook", "local codes", "lifting points"):
        assert wanted in said
    parts = rows_of(sheet, "Numbers are those")
    assert len(parts.rows) == 7 and all(len(row.cells) == len(parts.columns) for row in parts.rows)
    fasteners = rows_of(sheet, "Every fastener")
    assert len(fasteners.rows) == len(table().tops[0].entry["plans"][0]["fasteners"])
    assert {"edge", "end", "least", "most", "screw today", "Room left"} <= {
        c.title for c in fasteners.columns
    }


def test_a_metered_moisture_is_told_as_such():
    sheet = movement_sheet(ALL["metered"]())
    assert "8.2 % by meter" in words(sheet) or "8.3 % by meter" in words(sheet)


def test_gaps_say_what_to_leave_today():
    sheet = movement_sheet(door())
    gaps = rows_of(sheet, "Round doors")
    entry = door().data["report"]["gaps"][door().data["gaps"][0]]
    (row,) = gaps.rows
    leave = row.cells[[c.title for c in gaps.columns].index("leave")]
    assert float(leave.words) >= entry["leave_today_mm"]
    assert "G1:" in rows_of(sheet, "Numbers are those").rows[1].cells[-2].words or "G1:" in words(sheet)


def test_a_panel_in_grooves_tells_its_room_and_whether_it_still_covers():
    grooves = rows_of(movement_sheet(panel_in_frame()), "Panels in grooves")
    (row,) = grooves.rows
    assert row.cells[-1].words == "yes"
    (room,) = panel_in_frame().whole.rooms
    assert panel_in_frame().data["grooves"][0]["cover_least_mm"] == pytest.approx(
        room.least_cover_mm, abs=1e-3
    )


def test_findings_stand_with_their_remedy():
    report = door().data["report"]
    found = rows_of(movement_sheet(door()), "The gravest first")
    assert len(found.rows) == len(report["findings"])
    for row, finding in zip(found.rows, report["findings"]):
        assert finding["message"].lower()[1:40] in bare(row.cells[3].words).lower()
        assert finding["remedy"].lower()[1:40] in bare(row.cells[4].words).lower()


def test_which_cause_rules_and_what_would_narrow_it():
    material = table()
    doubts = rows_of(movement_sheet(material), "The cause that makes most")
    causes = {part["rules"] for part in material.data["parts"] if part["rules"]}
    assert len(doubts.rows) == len(causes)
    for part in material.data["parts"]:
        assert part["error_if_measured_mm"] < part["likely_error_mm"]
    assert "logger" in doubts.rows[0].cells[4].words


def test_the_client_reads_plain_words():
    sheet = movement_sheet(door(), SheetWish(client=True))
    said = words(sheet)
    assert "% relative humidity" in said and "Between post right and board right" in said
    for unknown in ("ring angle", "MC", "tangential", "datum", "coefficient", "N of"):
        assert unknown not in said
    low, high = (door().data["room"][f"rh_{end}_percent"] for end in ("least", "most"))
    assert f"between {low} and {high} % relative humidity" in said


def test_the_client_hears_that_it_is_built_to_move_only_where_nothing_breaks_or_jams():
    built = "Your piece is built to let this happen"
    assert built in words(movement_sheet(panel_in_frame(), SheetWish(client=True)))
    assert door().data["report"]["findings"][0]["severity"] == "jams"
    assert built not in words(movement_sheet(door(), SheetWish(client=True)))


def test_a_piece_of_one_board_has_a_whole_sheet():
    sheet = movement_sheet(one_board())
    assert len(rows_of(sheet, "Numbers are those").rows) == 1
    assert "No door, drawer or panel" in words(sheet)


def test_what_is_not_said_is_asked_for():
    said = words(movement_sheet(ALL["untold"]()))
    assert "species: tag the species" in said.lower()
    assert "wood?" in said and "rings?" in said


def test_hostile_names_arrive_cleaned_and_marked():
    sheet = movement_sheet(hostile(), SheetWish(job=HOSTILE[0], place=HOSTILE[4]))
    said = words(sheet)
    assert "<script>" in said  # escaped by the form that shows it, not here
    assert "\u202e" not in said and "\x07" not in said
    for text in texts(sheet):
        assert text.words.count("\u2068") == text.words.count("\u2069")


def test_empty_columns_are_left_out():
    titles = [column.title for column in rows_of(movement_sheet(table()), "Numbers are those").columns]
    assert "Gap today, becomes" not in titles and "Part" in titles


def test_papers_and_units_that_are_not_known():
    with pytest.raises(UnknownName, match="a4, letter"):
        SheetWish(paper="papyrus")
    with pytest.raises(UnknownName, match="mm, inch"):
        SheetWish(units="ell")


def test_the_same_piece_gives_the_same_sheet():
    assert movement_sheet(table()) == movement_sheet(table())


def test_slots_and_gaps_are_rounded_up_and_margins_down():
    ways = {}
    for sheet in (movement_sheet(table()), movement_sheet(door())):
        for text in texts(sheet):
            for figure in text.figures:
                if figure.at:
                    ways.setdefault(figure.at[-1], set()).add(figure.rounding)
    assert ways["slot_length_mm"] == ways["leave_today_mm"] == ways["becomes_most_mm"] == {UP}
    assert ways["margin_mm"] == ways["becomes_least_mm"] == {DOWN}
    assert ways["today_mm"] == {NEAREST}


def test_inches_are_fractions():
    sheet = movement_sheet(table(), WISHES["inch"])
    cell = rows_of(sheet, "Numbers are those").rows[0].cells[4]
    assert (
        cell == Text(cell.words, cell.figures)
        and cell.words == Lengths("inch").near(150.0, ()).shown == "5 29/32"
    )
