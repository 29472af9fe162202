"""Finishes by word and coats, transport figures, slab uptake."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from movement_core.air.moist_air import saturation_pressure, sorption_slope
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


def test_coats_are_whole_and_twelve_at_most() -> None:
    assert find_finish("varnish", 1).name == "varnish, 1 coat"
    assert find_finish("varnish", 12).name == "varnish, 12 coats"
    for wrong in (0, 13, 1.5, True):
        with pytest.raises(InputError, match="1 to 12"):
            find_finish("varnish", wrong)  # type: ignore[arg-type]
    with pytest.raises(InputError, match="without its number of coats"):
        find_finish("varnish")


def test_one_published_number_of_coats_serves_in_proportion() -> None:
    """Epoxy was published for three coats: a third of them lets three times as much through."""
    three = find_finish("epoxy", 3)
    assert three.note == "" or "in proportion" not in three.note
    for coats in (1, 2, 6):
        assert find_finish("epoxy", coats).film_ng == pytest.approx(three.film_ng * 3 / coats)
    assert "the test saw no effect" in find_finish("wax", 3).note and find_finish("wax", 3).film_ng == np.inf


def test_a_coat_beyond_the_table_resists_as_the_last_one_did() -> None:
    """Linseed oil: 5180 and 3022 ng/(Pa s m²) for two and three coats; each further one by the same step."""
    two, three = (1 / find_finish("linseed oil", coats).film_ng for coats in (2, 3))
    for coats in (4, 7):
        found = find_finish("linseed oil", coats)
        assert 1 / found.film_ng == pytest.approx(three + (coats - 3) * (three - two))
        assert f"{coats} coats carried on from 2 and 3 published" in found.note


def test_a_word_that_is_nearly_one_brings_the_nearest() -> None:
    with pytest.raises(UnknownName) as caught:
        find_finish("varnishh", 2)
    assert caught.value.nearest[0] == "varnish" and len(caught.value.nearest) <= 3
    with pytest.raises(UnknownName, match="choose the one nearest in kind"):
        find_finish("qqqqqq", 2)


def test_faces_that_are_not_named_take_what_is_on_both() -> None:
    assert read_faces("both oil 2") == read_faces("oil 2")
    assert read_faces("show bare, back varnish 2") == (BARE, read_finish("varnish 2"))
    with pytest.raises(InputError, match="gives the show face twice"):
        read_faces("show oil 2, show oil 3, back bare")
    with pytest.raises(InputError, match="says nothing of the other face"):
        read_faces("back oil 2")


def test_the_cell_wall_diffuses_as_its_formula_says() -> None:
    """Siau 1984 (recalled): 0.07 exp(−(9200 − 70 M)/RT) cm²/s in the wall, ÷ (1 − a)(1 − a²), a² the lumen's share."""
    for temperature, mc, gravity in ((20.0, 8.0, 0.5), (0.0, 20.0, 0.7)):
        wall = 0.07 * np.exp(-(9200 - 70 * mc) / (1.987 * (temperature + 273.15)))
        lumen = 1 - gravity * (0.667 + 0.01 * mc)
        expected = wall / ((1 - np.sqrt(lumen)) * (1 - lumen)) * 100 * 86400
        assert float(diffusivity(temperature, mc, gravity)) == pytest.approx(expected)
    timber = 8.0e-11 * np.exp(0.04 * 10) * 1e6 * 86400
    assert float(diffusivity(20, 10, 0.5, "timber model")) == pytest.approx(timber)
    heavy = float(diffusivity(20, 30, 1.3))  # no lumens left: two hundredths are taken
    wall = 0.07 * np.exp(-(9200 - 70 * 30) / (1.987 * 293.15))
    assert heavy == pytest.approx(wall / ((1 - np.sqrt(0.02)) * 0.98) * 100 * 86400)


def test_a_face_exchanges_by_vapour_pressure_and_dry_mass() -> None:
    """Permeance × Δp is kg/s m²; ΔM = slope × ΔRH of the dry mass, so h = k p_sat ÷ (slope ρ), in mm/day."""
    pressure, slope = float(saturation_pressure(15.0)), float(sorption_slope(15.0, 60.0))
    assert float(exchange(250.0, 15.0, 60.0, 0.65)) == pytest.approx(
        250e-12 * pressure / slope / 650.0 * 1000 * 86400
    )
    still = (
        3.2e-8
        * np.exp(0.04 * 12)
        * 420
        * float(sorption_slope(20.0, 65.0))
        / float(saturation_pressure(20.0))
    )
    assert still_air_permeance() == pytest.approx(still * 1e12)
    assert still_air_permeance("boundary layer") == pytest.approx(2.5e-3 / (461.5 * 293.15) * 1e12, rel=1e-3)
