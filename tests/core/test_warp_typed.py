"""What can be typed of a warped top and of measurements, rightly and wrongly."""

from __future__ import annotations

import re
import shlex
from pathlib import Path

import pytest

from movement_core.piece.warp import HEARTS, LYING, WarpCase
from movement_core.piece.warp import diagnose as causes_of
from movement_core.sheet.warp_text import LEAST_SHOWN, warp_text
from movement_core.wood import find_species
from workbench_pkg.batch.commands import diagnose, measured
from workbench_pkg.batch.parsing import TypingError
from workbench_pkg.batch.words import parse


@pytest.mark.parametrize(
    "wrong",
    [
        [],
        ["--crown", "3", "--hollow", "3"],
        ["--crown", "much"],
        ["--crown", "-3"],
        ["--crown", "3", "--lying", "roof"],
        ["--crown", "3", "--heart", "left"],
        ["--crown", "3", "--grain-slope", "3"],
        ["--crown", "3", "--twist", "-2"],
        ["--crown", "3", "--ring-turn", "200"],
    ],
)
def test_what_cannot_be_typed_is_refused(wrong):
    with pytest.raises(TypingError):
        parse(["diagnose", *wrong])


def test_a_turn_of_rings_may_have_its_sign():
    assert parse(["diagnose", "--crown", "3", "--ring-turn", "12°"]).ring_turn_deg == 12.0


def test_the_words_of_both_sides_agree():
    assert diagnose.LYING == LYING
    assert diagnose.HEARTS == HEARTS
    assert parse(["measured", "a.step"]).carry_out is measured.carry_out


def told(**known):
    case = WarpCase(find_species("white oak"), 180, 25, **known)
    found = causes_of(case)
    return (
        [cause for cause in found.causes if cause.share >= LEAST_SHOWN],
        found.measure,
        warp_text(case, found),
    )


def test_what_is_not_told_is_asked_for_by_its_options():
    shown, measure, text = told(cup_mm=2)
    assert len(shown) == 1 and "not told" in shown[0].name
    assert "first two causes" not in text and "tell what is not told yet" in measure
    for option in ("--flat-at", "--moisture-now", "--heart", "--finish"):
        assert option in text
        parse(["diagnose", "--crown", "2", option, {"--heart": "show"}.get(option, "9")])


def test_nothing_is_asked_for_where_all_is_told():
    _, _, text = told(cup_mm=0.8, flat_mc=12, show_mc=8, back_mc=8, heart="show", finish="oil 2")
    assert "Not told yet" not in text


def test_the_causes_that_a_measurement_parts_are_named():
    found = causes_of(WarpCase(find_species("white oak"), 500, 20, 3.0, flat_mc=8, now_mc=11, lying="steel"))
    assert f"'{found.causes[0].name}'" in found.measure and "the second" not in found.measure


def test_the_example_of_the_readme_gives_a_cause():
    readme = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
    example = re.search(r"why it cupped: (--crown .*)", readme)
    options = parse(["diagnose", *shlex.split(example[1])])
    names = ("width_mm", "thickness_mm", "flat_mc", "now_mc", "heart")
    case = WarpCase(
        find_species(options.species),
        cup_mm=options.crown,
        **{name: getattr(options, name) for name in names},
    )
    best = causes_of(case).causes[0]
    assert best.share > 0.5 and "rings" in best.name
