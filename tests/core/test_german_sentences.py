"""German sentences that are put together: they read as a joiner would write them."""

from __future__ import annotations

import re
from types import SimpleNamespace

import pytest

from movement_core.checks.crossing_grain import crossing_words
from movement_core.piece.crossing import IF_SOLID
from movement_core.piece.warp import WarpCase, diagnose
from movement_core.sheet.pages.room import JAMS, PRESSES
from movement_core.sheet.warp_text import warp_text
from movement_core.wood import find_species
from movement_core.wording import speaking
from tests.core.test_checks_whole import CASE, GLUED, drawer
from tests.core.whole_pieces import only
from workbench_pkg.translations.files import catalogue

GERMAN = catalogue("de")


def test_how_likely_a_split_is_is_said_in_german():
    crossing = SimpleNamespace(
        fixed=SimpleNamespace(tension_mpa=6.0, split="likely"),
        width_mm=300.0,
        least_mm=-2.0,
        most_mm=3.0,
        verdict=IF_SOLID,
    )
    with speaking(GERMAN):
        assert "ein Riss ist wahrscheinlich" in crossing_words(crossing, "die Leiste")


@pytest.mark.parametrize("word", ["Nagel", "Nägel", "vernagelt"])
def test_a_peg_is_a_holznagel_everywhere(word):
    pegs = {english: german for english, german in GERMAN.items() if re.search(r"\bpeg", english)}
    assert len(pegs) > 5
    assert not [german for german in pegs.values() if re.search(rf"\b{word}", german)]


def test_one_word_is_used_for_what_was_inferred():
    told = [german.lower() for english, german in GERMAN.items() if "inferred" in english.lower()]
    assert len(told) >= 3
    assert [german for german in told if "abgeleitet" not in german] == []


def test_a_diagnosis_of_one_board_has_no_english_word_left():
    oak = find_species("white oak")
    with speaking(GERMAN):
        told = [
            warp_text(case, diagnose(case))
            for case in (
                WarpCase(oak, 200, 25, 2, heart="show", flat_mc=12, now_mc=8),
                WarpCase(oak, 200, 25, -2, lying="frame", flat_mc=12, now_mc=8, wet_hours=3, wet_side="back"),
            )
        ]
    assert "ein Brett, Kernseite auf der Sichtseite" in told[0]
    assert "hinten von seinem Gestell gehalten" in told[1] and "die Rückseite 3 h nass" in told[1]
    assert "1 Bretter" not in told[0]


def test_a_bottom_that_swells_is_told_in_one_sentence():
    with speaking(GERMAN):
        message = only(drawer(), "drawer-bottom", confirmed=GLUED | CASE).message
    assert message.startswith("er wird quer zur Faser ")


def test_the_groove_of_a_clip_is_told_with_the_points_of_its_screw():
    (told,) = [german for english, german in GERMAN.items() if english.startswith("groove 3 x 10 mm")]
    assert "3 × 10 mm" in told and "0.8 mm" in told


def test_no_word_of_the_pages_is_kept_in_english_by_a_name():
    """Words that are picked by a condition, which no literal names, are looked for in the catalogue."""
    assert GERMAN[JAMS] == "klemmen" and GERMAN[PRESSES] == "drückt in der Nut"
    assert GERMAN["dampest"] == "am feuchtesten"
    assert GERMAN["for weeks above"] == "wochenlang über"
