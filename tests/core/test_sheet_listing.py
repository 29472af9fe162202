"""Lists of what is known, and what is said where a word is in none of the names."""

from __future__ import annotations

import pytest

from movement_core.errors import UnknownName
from movement_core.sheet.listing import list_places, list_species, list_years


def test_lists_hold_what_was_asked_for():
    assert "Prunus serotina" in list_species("cherry") and "Quercus" not in list_species("cherry")
    assert "Oslo" in list_places("oslo") and "museum" in list_years("MUS")


@pytest.mark.parametrize(
    ("listing", "word", "near"),
    [
        (list_species, "whyte oka", "White oak, commercial"),
        (list_places, "Olso", "Oslo"),
        (list_years, "musem", "museum"),
    ],
)
def test_a_word_in_no_name_gives_the_nearest(listing, word, near):
    with pytest.raises(UnknownName) as caught:
        listing(word)
    assert near in caught.value.nearest and near in str(caught.value) and repr(word) in str(caught.value)


def test_a_word_like_no_name_is_only_refused():
    with pytest.raises(UnknownName, match="try a shorter word") as caught:
        list_species("zzzzqq")
    assert caught.value.nearest == () and "nearest" not in str(caught.value)


@pytest.mark.parametrize("word", ["Lärche", "laerche", "LARCHE"])
def test_woods_are_listed_by_their_german_names_in_both_spellings(word):
    assert "Larix decidua" in list_species(word)


def test_a_word_of_signs_alone_lists_nothing():
    with pytest.raises(UnknownName):
        list_species(",")
