"""Elastic constants of boards from handbook ratios."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError, UnknownName
from movement_core.holding.elastic import board_elastic, elastic_ratios, typical_ratios
from movement_core.tables import rows


def test_flat_sawn_red_oak():
    """Handbook MOE 12 500 MPa (recalled) raised by 10 %; E_T/E_L 0.082; Poisson the mean of 0.448 and 0.033/0.082."""
    oak = board_elastic(elastic_ratios("oak, red"), 12500)
    assert oak.e_along_mpa == pytest.approx(13750)
    assert oak.e_across_mpa == pytest.approx(13750 * 0.082)
    assert oak.shear_mpa == pytest.approx(13750 * 0.081)
    assert oak.poisson == pytest.approx((0.448 + 0.033 / 0.082) / 2)


def test_quarter_sawn_is_stiffer_across_and_rift_spruce_far_softer():
    """That softwoods are several times softer across the grain at 45° than on either side is textbook
    knowledge (Bodig and Jayne, recalled)."""
    spruce = elastic_ratios("Spruce, Sitka")
    flat, rift, quarter = (board_elastic(spruce, 10800, angle).e_across_mpa for angle in (0, 45, 90))
    assert 3 * rift < flat < quarter
    assert quarter == pytest.approx(1.1 * 10800 * 0.078)


@settings(max_examples=30, deadline=None)
@given(st.sampled_from([r["species"] for r in rows("elastic_ratios")]), st.floats(0, 90))
def test_every_row_gives_a_stable_material_or_says_what_is_missing(species, angle):
    try:
        board_elastic(elastic_ratios(species), 10000, angle)  # Elastic refuses an unstable set
    except InputError as error:
        assert "no published" in str(error)


def test_missing_stays_missing():
    with pytest.raises(InputError, match=r"no published glt"):
        board_elastic(elastic_ratios("Oak, white"), 12300)
    with pytest.raises(InputError, match=r"no published grt"):
        board_elastic(elastic_ratios("Oak, red"), 12500, 30)


def test_unknown_species_names_its_neighbours():
    with pytest.raises(UnknownName, match=r"Walnut, black"):
        elastic_ratios("Walnut, blackk")


def test_every_row_says_how_it_is_known():
    for row in rows("elastic_ratios"):
        known = {row["ratios_provenance"], row["poisson_provenance"]}
        assert known - {""} <= {"read", "recalled"} and known != {""}


def test_gap_is_filled_only_when_asked_and_says_from_where():
    white, red = elastic_ratios("Oak, white"), elastic_ratios("Oak, red")
    filled = white.filled_from(red)
    assert filled.glt == red.glt and filled.et == white.et
    assert "glt from Oak, red" in str(filled.source) and "derived" in str(filled.source)
    assert board_elastic(filled, 12300).shear_mpa == pytest.approx(1.1 * 12300 * 0.081)
    assert red.filled_from(white) is red  # nothing white oak could add


@pytest.mark.parametrize("group", ["hardwood", "softwood"])
def test_typical_ratios_lie_among_the_woods_they_stand_for(group):
    typical = typical_ratios(group)
    mine = [float(r["et_el"]) for r in rows("elastic_ratios") if r["group"] == group and r["et_el"]]
    assert min(mine) < typical.et < max(mine)
    for angle in (0, 30, 60, 90):
        assert board_elastic(typical, 11000, angle).e_across_mpa > 0
    with pytest.raises(InputError, match="hardwood or softwood"):
        typical_ratios("grass")
