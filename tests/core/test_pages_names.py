"""Names on paper: cleaned, marked, cut; and the order in which letters are drawn."""

from __future__ import annotations

import unicodedata

from hypothesis import given
from hypothesis import strategies as st

from movement_core.sheet.pages.measure import width_em
from movement_core.sheet.pages.names import CLOSE, OPEN, bare, clean, isolated, middle_out, sentence
from movement_core.sheet.pages.script import visual
from tests.core.sheet_pieces import HOSTILE


@given(st.text())
def test_nothing_that_steers_text_is_left(text):
    left = {c for c in clean(text) if unicodedata.category(c) in ("Cc", "Cf", "Cs", "Zl", "Zp")}
    assert left <= {"\u200c", "\u200d"}


@given(st.text())
def test_a_marked_name_closes_what_it_opens(text):
    marked = isolated(text)
    assert marked[0] == OPEN and marked[-1] == CLOSE
    assert bare(marked) == marked[1:-1]


@given(st.text(min_size=1), st.floats(3, 40))
def test_a_cut_name_is_no_longer_than_asked(text, most):
    assert width_em(middle_out(text, most)) <= most + 1.0 + 1e-9  # and the sign that it was cut


def test_a_cut_name_keeps_its_start_and_its_end():
    cut = middle_out("Drawer " * 20 + "left 17", 12.0)
    assert cut.startswith("Drawer") and cut.endswith("17") and "…" in cut


def test_names_in_sentences_are_marked_once_and_longest_first():
    said = sentence("Door and Door left and Doors", ["Door", "Door left"])
    assert said == f"{OPEN}Door{CLOSE} and {OPEN}Door left{CLOSE} and {OPEN}Door{CLOSE}s"


def test_hostile_names_in_sentences():
    said = sentence("; ".join(HOSTILE), HOSTILE)
    assert said.count(OPEN) == said.count(CLOSE) == len(HOSTILE)
    assert "\n" not in said and "\u202e" not in said


def test_right_to_left_names_are_drawn_turned_round():
    # "shalom" in Hebrew, as it is written and as it is drawn from left to right.
    assert visual("\u05e9\u05dc\u05d5\u05dd") == "\u05dd\u05d5\u05dc\u05e9"
    assert visual("a \u05e9\u05dc 12 b") == "a 12 \u05dc\u05e9 b"
    assert visual("plain 12 (3)") == "plain 12 (3)"


def test_arabic_letters_take_the_forms_of_their_places():
    # beh, alef, beh: beh begins, alef ends it (alef joins nothing behind it), beh stands alone. From Unicode's chart of
    # Arabic presentation forms B: FE91 initial beh, FE8E final alef, FE8F isolated beh.
    assert visual("\u0628\u0627\u0628") == "\ufe8f\ufe8e\ufe91"
