"""A whole piece told in English and in German: no words of the English run stand in the German one.

Both runs are cut into pairs of neighbouring words. A pair that stands in both is a sentence, or a part of one, that
nobody has translated, unless it is a name: of a part, a wood, a publication, or a word that is typed as it stands.
"""

from __future__ import annotations

import re
from dataclasses import fields, is_dataclass
from itertools import pairwise

import pytest

from movement_core.sheet.holding_text import holding_text
from movement_core.sheet.pages.model import Text
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from movement_core.sheet.text import as_text
from movement_core.wording import speaking
from tests.core import sheet_pieces
from workbench_pkg.translations.data_words import DATA_WORDS
from workbench_pkg.translations.files import catalogue

PIECES = ("table", "lid", "door", "untold")
# What stays as it is: titles of publications and the places in them, and what is typed as it stands.
NAMES = (
    "US Forest Products Laboratory", "Wood Handbook", "FPL-GTR-190", "Wood as an Engineering Material",
    "pith, points, rings, cut", "wood{white oak}", "Oak, white", "White oak, commercial", "Quercus alba",
)  # fmt: skip
UNSEEN = (
    "name",
    "id",
    "kind",
    "align",
    "anchor",
    "colour",
    "fill",
    "mark",
)  # fields of pages that are no text
SHARED = {"in", "mm"}  # words of both languages, which stand side by side in both
_WORD = re.compile(r"[^\W\d_]+(?:'[a-z]+)?")


def told(piece, german):
    """Every text of a piece, and the names in it."""
    with speaking(catalogue("de") if german is None else german):
        material = getattr(sheet_pieces, piece).__wrapped__()
        texts = [as_text(material.report), holding_text([top.entry for top in material.tops])]
        for client in (False, True):
            texts += _texts(movement_sheet(material, SheetWish(client=client)))
    names = [part["name"] for part in material.report["parts"]]
    names += [part["species"] or "" for part in material.report["parts"]]
    return texts, names


def _texts(node):
    """Every text of a page, however deep it lies."""
    if isinstance(node, str):
        return [node]
    if isinstance(node, Text):
        return [str(node)]
    if isinstance(node, (list, tuple)):
        return [text for one in node for text in _texts(one)]
    if is_dataclass(node):
        shown = [field.name for field in fields(node) if field.name not in UNSEEN]
        return [text for name in shown for text in _texts(getattr(node, name))]
    return []


def pairs(texts, names):
    """Neighbouring words of every text, without those of names."""
    found = set()
    for text in texts:
        flat = re.sub(r"\s+", " ", text)
        for name in sorted(names, key=len, reverse=True):
            flat = flat.replace(name, " . ") if name else flat
        for sentence in re.split(r"[^\w' -]+", flat):
            words = _WORD.findall(sentence)
            found |= set(pairwise(words))
    return {pair for pair in found if all(len(word) > 1 and word not in SHARED for word in pair)}


@pytest.fixture(scope="module", params=PIECES)
def runs(request):
    english, names = told(request.param, {})
    german, _ = told(request.param, None)
    return english, german, [*names, *NAMES]


def test_no_words_of_the_english_run_are_left(runs):
    english, german, names = runs
    assert len(pairs(english, names)) > 300
    assert pairs(english, names) & pairs(german, names) == set()


def test_no_word_of_the_data_is_left_in_english(runs):
    """Single words, which no pair shows: months, ways, kinds of joint."""
    _, german, names = runs
    assert words_of_data(german, names) == set()


def words_of_data(texts, names):
    """Words of our data that have another form in German and stand in a text, names and what is typed left out."""
    german_of = catalogue("de")
    ours = {
        word
        for word in DATA_WORDS
        if word.isalpha() and len(word) > 3 and german_of[word].lower() != word.lower()
    }
    found = set()
    for text in texts:
        for name in sorted(names, key=len, reverse=True):
            text = text.replace(name, " ") if name else text
        found |= set(_WORD.findall(re.sub(r"„[^“]*“|'[^']*'|\w+\{[^}]*\}", " ", text)))
    return found & ours


def test_as_much_is_told_in_both(runs):
    """Longer words may need more lines in a picture, and no more."""
    english, german, _ = runs
    assert len(english) > 50
    assert 0.98 * len(english) <= len(german) <= 1.02 * len(english)


def test_one_sentence_that_is_missing_is_found():
    """The check above sees a single sentence that nobody has translated, also within another one."""
    less = dict(catalogue("de"))
    del less["the face that looks up"]
    english, names = told("untold", {})
    german, _ = told("untold", less)
    left = pairs(english, names) & pairs(german, names)
    assert ("face", "that") in left and ("looks", "up") in left


def test_one_word_that_is_missing_is_found():
    less = dict(catalogue("de"))
    del less["species"]
    german, names = told("untold", less)
    assert words_of_data(german, [*names, *NAMES]) == {"species"}
