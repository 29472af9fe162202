"""Finding woods by name, and what a species record promises."""

from __future__ import annotations

import dataclasses

import pytest

from movement_core.errors import InputError, UnknownName
from movement_core.sources import PROVENANCES
from movement_core.wood import Species, all_species, board_variation, figure_effect, find_species

STRENGTHS = ("specific_gravity_12", "moe_mpa", "compression_perp_mpa", "shear_mpa", "tension_perp_mpa")


@pytest.mark.parametrize(
    "name",
    ["white oak", "oak, white", "Oak,White", "  WHITE   oak ", "Quercus alba", "quercus ALBA", "whiteoak",
     "White-Oak", "oak white", "White oak, commercial"],
)  # fmt: skip
def test_white_oak_by_any_spelling(name):
    assert find_species(name).name == "White oak, commercial"


@pytest.mark.parametrize(
    "name, found",
    [
        ("European beech", "Beech, European"),
        ("sipo", "Sipo"),
        ("utile", "Sipo"),
        ("jatobá", "Courbaril"),
        ("yellow poplar", "Yellow-poplar"),
        ("Douglas fir", "Douglas-fir, coast"),
        ("African mahogany", "Khaya"),
        ("Quercus rubra", "Red oak, commercial"),
        ("northern red oak", "Red oak, commercial"),
        ("hard maple", "Maple, sugar"),
        ("Lawson's cypress", "Cedar, Port-Orford"),
        ("Oak, black", "Oak, California black"),
        ("eastern black oak", "Oak, eastern black"),
        ("chipboard", "Particleboard"),
    ],
)
def test_trade_and_botanical_names(name, found):
    assert find_species(name).name == found


@pytest.mark.parametrize(
    "name", ["oak", "maple", "beech", "walnut", "poplar", "black oak", "Shorea spp.", "redwood"]
)
def test_an_ambiguous_name_lists_its_candidates_and_guesses_nothing(name):
    with pytest.raises(UnknownName) as caught:
        find_species(name)
    assert len(caught.value.nearest) >= 2 and caught.value.fits
    assert all(find_species(candidate).name == candidate for candidate in caught.value.nearest)
    assert caught.value.nearest[0] in str(caught.value)


@pytest.mark.parametrize(
    "wrong, near",
    [
        ("mahogny", "Mahogany"),
        ("wite oak", "White oak, commercial"),
        ("Quercus albu", "White oak, commercial"),
    ],
)
def test_a_misspelt_name_gets_the_nearest(wrong, near):
    with pytest.raises(UnknownName) as caught:
        find_species(wrong)
    assert caught.value.nearest[0] == near and not caught.value.fits


def test_nonsense_and_nothing_are_refused():
    for name in ("xqzzk", "", "   ", ","):
        with pytest.raises(UnknownName):
            find_species(name)


def test_a_wood_without_a_tangential_figure_says_so():
    with pytest.raises(UnknownName, match="only its radial shrinkage"):
        find_species("gray birch")


def test_names_are_unique_and_each_finds_its_own_material():
    names = [species.name for species in all_species()]
    assert len(names) == len({name.casefold() for name in names}) > 200
    for species in all_species():
        assert find_species(species.name) is species


def test_every_name_finds_its_material_or_lists_it_among_the_candidates():
    for species in all_species():
        for name in (*species.trade_names, species.botanical.split("; ")[0]):
            if not name:
                continue
            try:
                found = (find_species(name).name,)
            except UnknownName as error:
                found = error.nearest
            assert species.name in found, (name, species.name)


def test_every_figure_has_a_source_and_missing_ones_stay_missing():
    for species in all_species():
        for field in dataclasses.fields(species):
            value = getattr(species, field.name)
            if isinstance(value, float) and field.name not in ("variation", "start_mc"):
                assert species.sources[field.name].provenance in PROVENANCES, (species.name, field.name)
        for field in STRENGTHS:
            value = getattr(species, field)
            assert (value is None) == (field not in species.sources), (species.name, field)
    assert find_species("apple").moe_mpa is None
    assert find_species("teak").compression_perp_mpa is None


def test_strength_rows_go_to_the_right_wood_in_megapascal():
    oak = find_species("white oak")
    assert (oak.specific_gravity_12, oak.moe_mpa, oak.compression_perp_mpa, oak.tension_perp_mpa) == (
        0.68, 12300, 7.4, 5.5,
    )  # fmt: skip
    hickory = find_species("true hickory")
    assert hickory.moe_mpa == pytest.approx((15300 + 15600 + 14900 + 13000) / 4)
    assert hickory.sources["moe_mpa"].provenance == "derived"


def test_woods_move_more_along_the_rings_than_across_them():
    for species in all_species():
        if species.kind == "wood":
            assert 0 < species.radial_coefficient < species.tangential_coefficient < 0.006, species.name
            assert 0 < species.longitudinal_coefficient < 0.1 * species.radial_coefficient, species.name


def test_sheets_move_little_in_the_plane_and_much_in_thickness_and_metal_not_at_all():
    for species in all_species():
        if species.kind == "sheet":
            assert 0 < species.coefficient("in plane") < 0.001 < species.coefficient("thickness")
            assert species.coefficient("longitudinal") == species.coefficient("radial")
        elif species.kind == "inert":
            assert float(species.strain("thickness", 5, 15)) == 0 and species.thermal_per_c > 0
            assert species.change(500, "tangential", 5, 15).basis.startswith("moisture does not move")
    kinds = {species.kind for species in all_species()}
    assert kinds == {"wood", "sheet", "inert"}


def test_a_makers_own_coefficients_replace_both_views_of_the_wood():
    own = find_species("white oak").with_coefficients(0.0020, 0.0040)
    assert (own.radial_coefficient, own.tangential_coefficient) == (0.0020, 0.0040)
    assert own.change(100, "tangential", 10, 11).mm == pytest.approx(0.4)
    assert own.tangential_shrinkage == pytest.approx(100 * 30 / (1 / 0.0040 + 20))
    assert own.sources["radial_coefficient"].provenance == "own" and own.moe_mpa == 12300
    assert find_species("white oak").radial_coefficient == 0.0018


@pytest.mark.parametrize("radial, tangential", [(-0.001, 0.002), (0.0018, 0.36), (float("nan"), 0.002)])
def test_impossible_coefficients_are_refused(radial, tangential):
    with pytest.raises(InputError, match="coefficient"):
        find_species("white oak").with_coefficients(radial, tangential)


def test_plywood_takes_no_radial_figure_of_a_maker():
    with pytest.raises(InputError, match="no radial"):
        find_species("plywood").with_coefficients(0.001, 0.002)


def test_a_wood_of_ones_own_without_longitudinal_figure_says_it_is_unknown():
    mine = Species("my elm", 0.0018, 0.0032)
    assert mine.longitudinal_coefficient is None
    with pytest.raises(InputError, match="unknown"):
        mine.strain("longitudinal", 8, 10)
    with pytest.raises(InputError, match="not a direction"):
        mine.strain("sideways", 8, 10)
    with pytest.raises(InputError, match="not a kind"):
        Species("my elm", 0.0018, 0.0032, kind="metal")


def test_figure_widens_the_spread_and_reaction_wood_moves_along_the_grain():
    oak, plain = find_species("white oak"), figure_effect("plain")
    assert board_variation(oak) == pytest.approx(0.15)
    for name in ("interlocked", "crotch", "reaction", "juvenile"):
        effect = figure_effect(name)
        assert effect.variation > plain.variation and board_variation(oak, name) > 0.15
        assert effect.note and effect.source.provenance in PROVENANCES
    for name in ("reaction", "juvenile"):
        assert figure_effect(name).longitudinal_shrinkage[1] >= 5 * plain.longitudinal_shrinkage[1]
    assert board_variation(find_species("steel"), "crotch") == 0
    with pytest.raises(UnknownName, match="crotch") as caught:
        figure_effect("croch")
    assert caught.value.nearest == ("crotch",)


@pytest.mark.parametrize(
    "name, found",
    [
        ("Eiche", "Oak, European"),
        ("Roteiche", "Red oak, commercial"),
        ("Weißeiche", "White oak, commercial"),
        ("Buche", "Beech, European"),
        ("Esche", "Ash, European"),
        ("Ahorn", "Maple, European"),
        ("Kirsche", "Cherry, European"),
        ("Nussbaum", "Walnut, European"),
        ("Nußbaum", "Walnut, European"),
        ("amerikanischer Nussbaum", "Walnut, black"),
        ("Fichte", "Spruce, European"),
        ("Kiefer", "Pine, Scots"),
        ("Lärche", "Larch, European"),
        ("LAERCHE", "Larch, European"),
        ("Tanne", "Fir, European silver"),
        ("Weisstanne", "Fir, European silver"),
        ("Birke", "Birch, European"),
        ("Erle", "Alder, European"),
        ("Linde", "Lime, European"),
        ("Ulme", "Elm, European"),
        ("Rüster", "Elm, European"),
        ("Ruester", "Elm, European"),
        ("Pappel", "Poplar, European"),
        ("Robinie", "Locust, black"),
        ("Douglasie", "Douglas-fir, coast"),
        ("Hainbuche", "Hornbeam"),
        ("Birnbaum", "Pear"),
        ("Teakholz", "Teak"),
        ("Spanplatte", "Particleboard"),
        ("Stahl", "Steel"),
    ],
)
def test_german_trade_names(name, found):
    assert find_species(name).name == found


def test_a_german_name_of_several_woods_is_refused_with_them():
    with pytest.raises(UnknownName, match="can mean several") as caught:
        find_species("Mahagoni")
    assert {"Mahogany", "Khaya", "Sapele", "Sipo"} == set(caught.value.nearest)
