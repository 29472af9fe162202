"""What the texts for a terminal say where figures are missing, small, or of another sign."""

from __future__ import annotations

import re

import pytest

from movement_core.checks import all_findings
from movement_core.holding.plan_words import case_told
from movement_core.piece.top_plan import plan_top
from movement_core.piece.tops import find_tops
from movement_core.sheet.entry import file_entry
from movement_core.sheet.holding import plans_entry
from movement_core.sheet.holding_text import holding_text
from movement_core.sheet.text import as_text, shortened
from tests.core.contact_solids import blocks
from tests.core.tables import UP, Made, frame, solved, top
from tests.core.test_pages_holding import tops
from tests.core.whole_pieces import OAK, whole

# ---- how to hold a top ------------------------------------------------------------------------------------------


def entry():
    (planned,) = tops(UP, kinds=("slotted screw",)).tops
    return planned.entry


def said(**changed):
    """The text of the top with some of its entry changed, its line breaks undone."""
    return re.sub(r"\s+", " ", holding_text([{**entry(), **changed}]))


def with_plan(flat=False, **changed):
    first, *rest = entry()["plans"]
    return said(plans=[{**first, **changed}, *rest], flat_by_itself=flat)


def test_parts_that_are_not_there_are_not_told():
    full, bare = said(), said(notes=[], if_fixed=None, hearts=None, fitted_percent=None)
    for words in ("Taken", "Glued or screwed solid", "heart side up", "Fitted at"):
        assert words.casefold() in full.casefold() and words.casefold() not in bare.casefold()


def test_fasteners_that_are_drawn_are_told_with_what_they_leave():
    assert "As drawn" not in said()
    drawn = said(drawn_fasteners=3, as_drawn_out_of_flat_mm={"January": 0.42, "June": 1.26})
    assert "with 3 small parts under it" in drawn and "1.3 mm out of flat" in drawn


@pytest.mark.parametrize(
    ("shapes", "words"),
    [
        ({"driest day": 0.04, "wettest day": -0.04}, "would lie flat on the driest day and lie flat on the wettest"),
        ({"driest day": 2.04, "wettest day": -1.0}, "would crown 2.0 mm on the driest day and go hollow 1.0 mm"),
        (
            {"driest day, least": 1.0, "driest day, most": 3.0, "wettest day": -0.5},
            "would crown 1.0 to 3.0 mm on the driest day and go hollow 0.5 mm",
        ),
        (
            {"driest day, least": -1.0, "driest day, most": 3.0, "wettest day": 0.0},
            "would lie between 1.0 mm hollow and a crown of 3.0 mm on the driest day and lie flat",
        ),
        (
            {"driest day, least": -0.04, "driest day, most": 3.0, "wettest day": 0.0},
            "would crown 0.0 to 3.0 mm on the driest day",
        ),
    ],
)  # fmt: skip
def test_what_it_would_do_free(shapes, words):
    assert words in said(free_departure_mm=shapes)


def test_each_figure_of_a_cup_says_what_it_is_of():
    shapes = {"November": 2.7, "May": -1.14, "driest day": 1.2, "wettest day": -1.1}
    told = said(free_departure_mm=shapes)
    # what the months' sentences tell is farther than on the two days: that is told here too, and only that
    assert "over its width, and farther in between: crown 2.7 mm in November; with its weight" in told
    assert "out of flat at worst, over its whole surface" in told
    assert "farther" not in said(free_departure_mm={**shapes, "November": 1.25})


def test_what_a_lid_needs_is_told_where_nothing_is_drawn_that_ties_the_top_down():
    lid = "if it opens, as a lid does, fasten it to nothing below it"
    assert lid in said()
    button = Made("Button", (35, 30, 20), (-377, 60, 690), "hard maple; grain x; cut flat; built 9")
    (tied,) = find_tops(solved([*top(UP), *frame(), button]))
    assert lid not in re.sub(
        r"\s+", " ", holding_text([plans_entry(plan_top(tied, kinds=("slotted screw",)))])
    )


FIXED = {
    "shrinkage_kept_mm": 3.0, "tension_mpa": 6.0, "strength_mpa": 5.0, "split": "likely",
    "swelling_kept_mm": 2.0, "crush": "begins", "set_at_most_mm": 0.3,
}  # fmt: skip


@pytest.mark.parametrize(
    ("changed", "there", "not_there"),
    [
        ({}, "strength of 5: a split is likely; 2.0 mm of swelling would be kept: the fibres begin", "hardly"),
        ({"split": "none", "crush": "none"}, "not to fear; 2.0 mm of swelling would be kept: no crushing", "?"),
        ({"strength_mpa": None, "split": "unknown"}, "across the grain is not known", "against a strength"),
        ({"swelling_kept_mm": 0.05, "crush": "certain"}, "3.0 mm of shrinkage", "swelling would"),
        ({"shrinkage_kept_mm": None, "crush": "certain"}, "kept: the fibres crush", "shrinkage would"),
        ({"shrinkage_kept_mm": 0.0, "swelling_kept_mm": 0.0}, "width: it hardly moves.", "kept"),
    ],
)  # fmt: skip
def test_what_fixing_it_solid_would_do(changed, there, not_there):
    text = said(if_fixed={**FIXED, **changed})
    start = text.index("Glued or screwed solid")
    sentence = text[start : start + 300].split("Ways to")[0]
    assert there in sentence and not_there not in sentence


def test_what_it_rests_on():
    rails = entry()["rails"]
    assert f"Rests on {rails[2]['name']}" in said() or rails[0]["name"] in said()
    also = said(rests_also_on=["Leg 1"], rails=[])
    assert "Rests on Leg 1 (no rail for fasteners)" in also
    assert "it has no frame" in said(rests_also_on=[], rails=[])


LOST = {"found": False, "what_would": ["one more rail across its middle"], "worst_case": "driest day"}


def test_where_no_plan_holds_the_nearest_is_told_with_all_that_is_wrong_with_it():
    pulled = {"worst_pull_n": 700.0, "allowable_pull_n": 500.0, "worst_out_of_flat_mm": 2.24}
    text = with_plan(**LOST, **pulled, other_problems=["too weak in all"])
    assert "No plan of these kinds holds it" in text and "leaves 2.2 mm out of flat" in text
    assert case_told("driest day") in text
    assert "pulled with 700 N, and 500 N are allowed" in text and "Too weak in all." in text
    assert "What would help, each tried out One more rail" in text
    unknown = with_plan(**LOST, worst_pull_n=700.0, allowable_pull_n=None, other_problems=[])
    within = with_plan(**LOST, worst_pull_n=400.0, allowable_pull_n=500.0, other_problems=[])
    assert "are allowed" not in unknown and "are allowed" not in within
    assert re.search(r"Ways to hold it.* \? does not hold it", unknown)


def test_a_kind_that_goes_nowhere_says_why_and_is_no_way():
    text = with_plan(**LOST, count=0, refused=["front rail: its travel is too great"])
    assert "The nearest," not in text and "Front rail: its travel is too great." in text
    assert "Ways to hold it" not in text


def test_what_was_refused_stands_once_below_the_ways():
    twice = with_plan(refused=["front rail: no", "front rail: no"])
    assert twice.count("front rail: no") == 1 and "Refused" in twice
    assert "Refused" not in with_plan(refused=[])


def test_a_flat_top_without_a_plan_needs_none():
    text = with_plan(True, **LOST)
    assert "stays within the wish with nothing holding it down" in text
    assert "No plan" not in text and "What would help" not in text and "The nearest," not in text


# ---- the report of a file ---------------------------------------------------------------------------------------


def report(pairs):
    piece = whole(pairs)
    return file_entry("piece.step", piece.solved, all_findings(piece), whole=piece)


def board(tag, name="Shelf"):
    return blocks(name, [((0, 0, 0), (900, 120, 24))]), tag


def test_an_unread_file_says_only_what_was_wrong():
    text = as_text(
        {"path": "a\x1b[2J.step", "parts": [], "findings": [], "errors": [{"message": "no solid in it"}]}
    )
    assert "no solid in it" in text and "No findings." in text and "\x1b" not in text
    assert "Estimates" not in text and "---" not in text


def test_metal_alone_has_no_doubt_and_a_part_nobody_told_of_no_figure():
    metal, untold, known = (as_text(report([board(tag)])) for tag in ("steel", "", f"{OAK}; grain x; show z"))
    assert "What makes most of the ±" in known and "Estimates from averages" in known
    assert "What makes most of the ±" not in metal
    assert "Estimates from averages" not in untold and "species" in untold


def test_a_part_whose_grain_is_not_known_shows_the_sides_of_its_box():
    text = as_text(report([(blocks("Cube", [((0, 0, 0), (70, 60, 65))]), "white oak; built 8")]))
    row = next(line for line in text.splitlines() if "Cube" in line)
    assert all(size in row for size in ("70", "65", "60"))


@pytest.mark.parametrize("width", [1, 2, 5, 11, 12, 30])
def test_a_shortened_text_fits_and_says_that_it_was_cut(width):
    cut = shortened("twelve cells", width)
    assert len(cut) <= width and (cut == "twelve cells") == (width >= 12)
    assert cut.endswith("…") == (width < 12)
