"""Finishes by word and coats, transport figures, slab uptake."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from movement_core.errors import InputError, UnknownName
from movement_core.moisture.exclusion import exclusion_percent, fit_film
from movement_core.moisture.finish import (
    BARE,
    BLOCKED,
    WRAPPED,
    find_finish,
    finish_words,
    read_faces,
    read_finish,
)
from movement_core.moisture.slab import half_time_days, uptake
from movement_core.moisture.transport import diffusivity, exchange, still_air_permeance, transport_methods


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("varnish 2", "varnish, 2 coats"),
        ("  Shellac  3 coats", "shellac, 3 coats"),
        ("lacquer x4", "lacquer, 4 coats"),
        ("wax 3", "wax, 3 coats"),
        ("linseed oil, 1 coat", "linseed oil, 1 coat"),
        ("Two-component polyurethane 3", "two-component polyurethane, 3 coats"),
        ("bare", "bare"),
        ("None", "bare"),
        ("blocked", "blocked"),
        ("wrapped", "wrapped"),
    ],
)
def test_words_of_the_shop(words: str, name: str) -> None:
    finish = read_finish(words)
    assert finish.name == name and finish.source.title


def test_every_word_leads_to_a_row() -> None:
    for word in finish_words():
        assert find_finish(word, 3).film_ng > 0


def test_both_faces_from_one_tag() -> None:
    assert read_faces("varnish 2") == (read_finish("varnish 2"),) * 2
    assert read_faces("show varnish 3, back bare") == (read_finish("varnish 3"), BARE)
    assert read_faces("back blocked, show oil 2") == (read_finish("oil 2"), BLOCKED)
    assert read_faces("varnish 3, back shellac 1") == (read_finish("varnish 3"), read_finish("shellac 1"))


@pytest.mark.parametrize(
    ("words", "error", "message"),
    [
        ("varnsh 2", UnknownName, "did you mean varnish"),
        ("varnish", InputError, "coats"),
        ("varnish 0", InputError, "coats"),
        ("varnish 99", InputError, "coats"),
        ("", InputError, "finish"),
        ("2", InputError, "finish"),
    ],
)
def test_bad_words(words: str, error: type[Exception], message: str) -> None:
    with pytest.raises(error, match=message):
        read_finish(words)


@pytest.mark.parametrize("words", ["show varnish 2", "show varnish 2, show oil 1", "varnish 2, back"])
def test_half_a_tag_is_refused(words: str) -> None:
    with pytest.raises(InputError):
        read_faces(words)


def test_films_in_series_with_still_air() -> None:
    air = still_air_permeance()
    assert BARE.permeance_ng() == pytest.approx(air)
    assert BLOCKED.permeance_ng() == 0
    assert WRAPPED.permeance_ng() < 5
    varnish = find_finish("varnish", 2)
    assert 1 / varnish.permeance_ng() == pytest.approx(1 / air + 1 / varnish.film_ng)


def test_coats_beyond_the_table_go_on_and_say_so() -> None:
    films = [find_finish("varnish", coats) for coats in (5, 6, 7, 8)]
    resistances = [1 / film.film_ng for film in films]
    assert np.diff(resistances) == pytest.approx([resistances[1] - resistances[0]] * 3)
    assert not films[1].note and "carried on" in films[2].note
    assert "in proportion" in find_finish("epoxy", 2).note


@given(st.floats(1e-3, 1e3))
def test_a_film_is_found_again_from_its_own_exclusion(resistance: float) -> None:
    wanted = exclusion_percent(resistance)
    fitted = fit_film(wanted.tolist())
    assert np.abs(fitted.misfit_points).max() < 0.05


def test_single_figures_and_nonsense_of_exclusion() -> None:
    assert fit_film([None, None, 0]).permeance_ng == np.inf
    assert fit_film([None, None, 50]).permeance_ng > 0
    for bad in ([None, None, None], [50, 40], [120, 10, 5], [-1, 0, 0]):
        with pytest.raises(InputError):
            fit_film(bad)


@given(st.floats(0, 10), st.floats(0, 10), st.floats(0.01, 1e4))
def test_uptake_rises_with_time_and_stays_a_share(first: float, second: float, biot: float) -> None:
    early, late = sorted((first, second))
    a, b = float(uptake(early, biot)), float(uptake(late, biot))
    assert 0 <= a <= b + 1e-9 <= 1 + 1e-8


def test_half_time_with_film_only() -> None:
    """A slow film and quick wood: exponential, t50 = ln 2 · t / (2 h)."""
    assert float(half_time_days(20, 1e5, 0.1)) == pytest.approx(np.log(2) * 20 / 0.2, rel=1e-3)


def test_dense_and_cold_wood_is_slower() -> None:
    assert diffusivity(20, 10, 0.4) > diffusivity(20, 10, 0.7) > diffusivity(5, 10, 0.7)
    assert exchange(300, 20, 50, 0.4) > exchange(300, 20, 50, 0.7) > exchange(300, 5, 50, 0.7)
    assert set(transport_methods("diffusivity")) == {
        "cell wall",
        "timber model",
        "fast timber model",
        "panel painting",
    }
    assert diffusivity([10, 20], 10, [[0.4], [0.5]], "timber model").shape == (2, 2)
    for method in transport_methods("diffusivity").values():
        assert method.source.title and method.source.provenance


@pytest.mark.parametrize(
    "arguments", [(200, 10, 0.5), (20, 45, 0.5), (20, 10, 650), (20, float("nan"), 0.5), ("x", 1, 1)]
)
def test_transport_refuses_what_it_cannot_know(arguments: tuple) -> None:
    with pytest.raises(InputError):
        diffusivity(*arguments)
