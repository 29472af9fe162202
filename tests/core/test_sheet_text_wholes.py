"""The report of whole pieces as text: panels, twist, gaps, strained joints, plans; figures as the data has them."""

from __future__ import annotations

import re

import pytest

from movement_core.checks.force_words import force_figures, force_words
from movement_core.piece.crossing import IF_SOLID
from movement_core.piece.restrained import PRESSED, RELAXED, RestrainedJoint
from movement_core.sheet.between_text import MOST_STRAINED, between_sentences, gap_lines
from movement_core.sheet.plan_text import plan_text
from movement_core.sheet.text import MOST_NOTES, WIDTH, as_text
from tests.core import sheet_pieces


def flat(text):
    return re.sub(r"\s+", " ", text)


@pytest.fixture(scope="module")
def report():
    return sheet_pieces.table().report


def test_a_glued_panel_is_told_with_its_worst_months(report):
    (panel,) = report["panels"]
    text = flat(as_text(report))
    assert f"{len(panel['boards'])} boards edge to edge, {panel['width_mm']:.1f} drawn" in text
    departures = {month: one["departure_mm"] for month, one in panel["months"].items()}
    for way, sign in (("crown", 1), ("hollow", -1)):
        month = max(departures, key=lambda name: sign * departures[name])
        told = f"{way} {abs(departures[month]):.1f} in {month}"
        assert (told.lower() in text.lower()) == (sign * departures[month] >= 0.05)
    step = max(month["greatest_step_mm"] for month in panel["months"].values())
    assert f"greatest step at a glue line {step:.2f}" in text


def test_a_panel_without_a_profile_says_why(report):
    panel = {**report["panels"][0], "months": None, "profile_unknown": "a pith is missing"}
    assert "Its profile is not known: a pith is missing." in flat(as_text({**report, "panels": [panel]}))


def test_a_panel_that_moves_little_stays_flat(report):
    months = {"May": {"departure_mm": 0.04, "greatest_step_mm": 0.01}}
    panel = {**report["panels"][0], "months": months}
    assert "It stays flat within 0.05; greatest step at a glue line 0.01." in flat(
        as_text({**report, "panels": [panel]})
    )


def test_wood_by_the_meter_and_by_the_air():
    metered, aired = sheet_pieces.metered_table().report, sheet_pieces.table().report
    assert "wood at 8.2 % by meter" in as_text(metered)
    assert f"the air brings wood to {aired['today']['moisture_percent']:.1f} %" in as_text(aired)
    unknown = {**aired, "today": {**aired["today"], "moisture_percent": None}}
    assert "Today:" not in as_text(unknown)
    assert "Year:" not in as_text({**aired, "year": None})


def test_of_many_notes_on_the_air_the_first_are_told(report):
    notes = [f"month {k} is strange" for k in range(MOST_NOTES + 3)]
    text = as_text({**report, "year": {**report["year"], "notes": notes}})
    assert notes[MOST_NOTES - 1] in text and notes[MOST_NOTES] not in text
    assert "… and 3 more of the kind" in text


@pytest.mark.parametrize("known", [True, False])
def test_twist_is_told_as_turn_and_lift_or_by_the_rings_alone(report, known):
    twist = {"notes": ["how straight its grain runs is not known"]}
    for when, turn in (("driest", -1.0), ("wettest", 0.5)):
        twist |= {
            f"{when}_from_rings_deg": turn,
            f"{when}_deg": [turn - 0.25, turn + 0.25] if known else None,
            f"{when}_corner_lift_mm": [1.0, 3.0] if known else None,
        }
    parts = [{**report["parts"][0], "twist": twist}]
    text = flat(as_text({**report, "parts": parts}))
    if known:
        assert "twists: driest -1.25 to -0.75°, a corner off by 1.0 to 3.0; wettest +0.25 to +0.75°" in text
    else:
        assert "the rings twist it -1.00° driest, +0.50° wettest; how straight" in text


@pytest.mark.parametrize(
    ("values", "told"),
    [((-0.3, 0.3), "±0.3"), ((-0.2, 0.3), "-0.2–+0.3"), ((0.04, -0.04), "0.0"), ((0.21, 0.24), "+0.2")],
)
def test_a_range_of_cup_is_told_shortly(report, values, told):
    cup = {"driest_mm": None, "wettest_mm": None, "driest_range_mm": values, "wettest_range_mm": values}
    part = {**report["parts"][0], "cup": cup}
    row = next(line for line in as_text({**report, "parts": [part]}).splitlines() if part["name"] in line)
    assert row.endswith(" " + told)


def joint(name, share, **more):
    return {
        "parts": [name, "panel"],
        "keys": [name, "p"],
        "force_n": 2000.0,
        "month": "May",
        "way": "pulled",
        "stress_mpa": share * 8.0,
        "strength_mpa": 8.0,
        "if_solid": False,
        **more,
    }


def test_the_joints_that_bear_most_come_first_and_the_others_are_left_out():
    joints = [joint(f"j{k}", 0.3 + k / 10) for k in range(MOST_STRAINED + 1)]
    joints += [
        joint("weak", 0.29),
        joint("unknown", 0.9, stress_mpa=None),
        joint("bare", 1, strength_mpa=None),
    ]
    heading, *lines = between_sentences({"joints": joints})
    assert f"{100 * RELAXED[0]:.0f} % to {100 * RELAXED[1]:.0f} %" in heading
    assert [line.split(" ")[0] for line in lines] == [f"j{k}" for k in range(MOST_STRAINED, 0, -1)]
    assert "2.0 kN in May, pulled with 6.4 MPa (clear wood bears 8.0)" in lines[0]


def test_a_joint_that_may_not_be_one_is_told_where_being_solid_would_hurt():
    maybe = joint("maybe", 0.8, if_solid=True)
    assert between_sentences({"joints": [maybe]}) == []
    crossing = {"keys": ["p", "maybe"], "verdict": IF_SOLID}
    lines = between_sentences({"joints": [maybe], "crossings": [crossing]})
    assert lines[0].startswith("Grain crosses at 1 joint: 1 too wide if they are solid.")
    assert lines[-1].endswith(", if it is solid")
    assert between_sentences({"crossings": [crossing] * 2})[0].startswith("Grain crosses at 2 joints: 2 too")


def gap(pair, change=1.0, **more):
    return {
        "works": True, "drawn_mm": 2.0, "least_mm": 1.0, "most_mm": 1.0 + change, "parts": [pair, "post"],
        "leave_today_mm": 1.5, "becomes_least_mm": 0.5, "becomes_least_month": "August", "becomes_most_mm": 2.5,
        "becomes_most_month": "February", **more,
    }  # fmt: skip


def test_gaps_that_move_are_told_and_alike_ones_in_one_line():
    gaps = [gap(f"door {k}") for k in range(3)]
    gaps += [gap("room", drawn_mm=3.1), gap("still", change=0.19), gap("idle", works=False)]
    heading, columns, line = gap_lines({"gaps": gaps})
    assert heading.startswith("Gaps round doors") and columns.split()[0] == "leave"
    assert "0.5 Aug to 2.5 Feb" in line and line.endswith("door 0 | post, door 1 | post and 1 more")


def test_between_the_parts_sentences_are_folded_and_rows_are_not(report):
    joints = [joint(f"a stile with a long name {k} of the left door", 0.9) for k in range(2)]
    entry = {
        **report,
        "joints": joints,
        "gaps": [
            gap("an upper drawer of the left side, its front, and what is written about it besides " * 2)
        ],
    }
    told = as_text(entry).split("\n\n")
    (block,) = [one for one in told if one.startswith("Between the parts")]
    sentences, rows = block.split("  Gaps round")
    assert max(map(len, sentences.splitlines())) <= WIDTH
    assert len(rows.splitlines()) == 3


FORCE = RestrainedJoint(joint=None, force_n=1500.0, month=1)


@pytest.mark.parametrize("found", [None, RestrainedJoint(joint=None, force_n=None)])
def test_an_unknown_force_is_not_told(found):
    assert force_words(found) == "" and force_figures(found) == {}


@pytest.mark.parametrize(
    ("more", "told"),
    [
        ({}, "1.5 kN would bear on it in February"),
        ({"stress_mpa": 2.0}, "(2.0 MPa) would bear on the joint in February; what the wood bears"),
        ({"stress_mpa": 2.0, "strength_mpa": 8.0, "way": "pulled"}, "2.0 MPa, where clear wood bears 8.0"),
        ({"stress_mpa": 2.0, "strength_mpa": 8.0, "way": PRESSED}, "is crushed from 8.0"),
    ],
)
def test_a_force_is_told_with_what_is_known_of_it(more, told):
    from dataclasses import replace

    found = replace(FORCE, **more)
    assert told in force_words(found)
    assert force_figures(found).get("stress_mpa") == more.get("stress_mpa")
    assert force_figures(found)["relaxed_n"] == round(RELAXED[1] * 1500.0)


@pytest.fixture(scope="module")
def top():
    entry = sheet_pieces.table().tops[0].entry
    return entry, entry["plans"][0]


SLOTS = {"slot_length_mm": 12.0, "slot_middle_aside_mm": -0.8, "tongue_today_mm": 6.0, "margin_mm": 0.7}


@pytest.mark.parametrize(
    ("figure", "told"),
    [
        ("slot_length_mm", "Slot: its length."),
        ("slot_middle_aside_mm", "Aside: from the rail's middle line"),
        ("tongue_today_mm", "Tongue: how deep to set it"),
        ("margin_mm", "Room: what is left in the worst month."),
    ],
)
def test_a_plan_explains_only_the_columns_that_it_fills(top, figure, told):
    entry, plan = top
    empty = [{**one, **dict.fromkeys(SLOTS)} for one in plan["fasteners"]]
    without = flat(plan_text({**plan, "fasteners": empty}, entry))
    filled = flat(plan_text({**plan, "fasteners": [{**empty[0], figure: SLOTS[figure]}]}, entry))
    assert told in filled and told not in without


def test_a_plan_tells_hardware_that_is_partly_unknown(top):
    entry, plan = top
    kind = {
        **plan["hardware"][0],
        "screw_length_mm": None,
        "allowable_pull_n": None,
        "unknown_links": ["the plate"],
    }
    unknown = [{**plan["fasteners"][0], "allowable_pull_n": None}]
    text = flat(plan_text({**plan, "hardware": [kind], "fasteners": unknown}, entry))
    assert "no stock screw stays inside the top; no published figure for the plate" in text
    assert "allowed" not in text.split("no stock screw")[1]
    base = {"insert_mm": 15.0, "wood_left_above_mm": 7.5, "washer_mm": 30.0}
    assert "inserts up to 15 mm long leave 7.5 mm" in flat(plan_text(plan, {**entry, "metal_base": base}))
    assert "No stock threaded insert" in plan_text(plan, {**entry, "metal_base": {**base, "insert_mm": None}})
