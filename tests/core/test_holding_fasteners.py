"""Fastener kinds: throw, binding of an arm, capacity, screw length."""

from __future__ import annotations

import math
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError, UnknownName
from movement_core.holding import fasteners
from movement_core.holding.capacity import choose_screw, fastener_capacity, lag_screw_withdrawal_n
from movement_core.holding.fasteners import (
    SHAPES,
    all_kinds,
    arm_stretch_mm,
    arm_throw_mm,
    engagement,
    find_kind,
    fits_travel,
    throw_mm,
)
from movement_core.sources import PROVENANCES
from movement_core.tables import rows


@settings(max_examples=100, deadline=None)
@given(st.floats(10, 25), st.floats(-90, 90), st.floats(0.1, 1.0))
def test_arm_binds_exactly_at_its_throw(arm, angle, clearance):
    low, high = arm_throw_mm(arm, angle, clearance)
    assert low <= 1e-9 and high >= -1e-9
    for end, outward in ((low, -1), (high, 1)):
        assert abs(arm_stretch_mm(arm, angle, end)) == pytest.approx(clearance, abs=1e-6)
        assert abs(arm_stretch_mm(arm, angle, end + outward * 0.01)) > clearance
    for share in (0.25, 0.5, 0.75):
        assert abs(arm_stretch_mm(arm, angle, low + share * (high - low))) <= clearance + 1e-6


def test_arm_along_the_grain_binds_least():
    throws = [min(-low, high) for low, high in (arm_throw_mm(16, angle, 0.5) for angle in (0, 20, 45, 90))]
    assert throws == sorted(throws, reverse=True)
    assert throws[0] == pytest.approx(math.sqrt(16.5**2 - 16**2))  # 4.0 mm
    assert throws[-1] == pytest.approx(0.5)


def test_figure_eight_throw_is_that_of_the_trade():
    """±3–4 mm with its arm along the grain (common practice, no source)."""
    low, high = throw_mm(find_kind("figure-eight"), "across")
    assert 3.0 <= high <= 4.1 and low == pytest.approx(-high)


def test_figure_eight_on_a_wide_top_is_refused_with_the_figure():
    """A wide top runs out of its throw; on a long apron it binds by its arm's angle (common practice)."""
    kind = find_kind("figure-eight")
    wide = fits_travel(kind, "across", -5.5, 4.0)
    assert not wide.fits and "-5.5" in wide.reason and "4.0" in wide.reason
    assert not fits_travel(kind, "along", -1.0, 1.0).fits
    assert fits_travel(kind, "across", -1.0, 1.0).fits
    too_wide = fits_travel(kind, "across", -1.0, 1.0, 800)
    assert not too_wide.fits and "450" in too_wide.reason


def test_buttons_and_clips_run_along_their_groove_but_not_far_out_of_it():
    for name in ("button", "clip"):
        assert fits_travel(find_kind(name), "across", -8, 8).fits
        assert not fits_travel(find_kind(name), "along", -8, 8).fits


@settings(max_examples=60, deadline=None)
@given(st.sampled_from(["clip", "button"]), st.floats(-6, 0), st.floats(0, 1), st.floats(0, 6))
def test_tongue_set_for_the_season_neither_bottoms_nor_falls_out(name, inward, share, outward):
    kind = find_kind(name)
    today = inward + share * (outward - inward)
    set_to = engagement(kind, inward, today, outward)
    assert (set_to is not None) == fits_travel(kind, "along", inward, outward).fits
    if set_to is not None:
        assert set_to.least_mm >= 3.0 - 1e-9 and set_to.most_mm <= kind.groove_mm - 0.5 + 1e-9
        assert set_to.today_mm - set_to.least_mm == pytest.approx(today - inward)


def test_plain_screw_follows_nothing():
    kind = find_kind("plain screw")
    assert fits_travel(kind, "across", 0.0, 0.0).fits
    assert not fits_travel(kind, "across", -0.1, 0.0).fits


def test_slotted_screw_follows_what_its_slot_is_cut_for():
    assert throw_mm(find_kind("slotted screw"), "along") == (-math.inf, math.inf)


def test_every_kind_says_how_it_is_known_and_what_is_not():
    for kind in all_kinds():
        assert kind.provenance in PROVENANCES
        assert kind.unknown_links, kind.kind
        assert kind.stiffness_n_mm > 0 and kind.shank_mm > 0


def test_unknown_kind_lists_the_kinds():
    with pytest.raises(UnknownName, match="figure-eight"):
        find_kind("figure 8")
    with pytest.raises(InputError, match="along"):
        throw_mm(find_kind("clip"), "sideways")


@settings(max_examples=60, deadline=None)
@given(st.sampled_from(all_kinds()), st.floats(8, 60))
def test_a_screw_never_comes_near_the_show_face(kind, thickness):
    screw = choose_screw(kind, thickness)
    if screw is not None:
        assert screw.left_mm >= 4.0 - 1e-9
        assert screw.length_mm - kind.through_mm + screw.left_mm == pytest.approx(thickness)
        assert 0 < screw.thread_mm <= screw.length_mm - kind.through_mm


def test_thin_top_takes_no_screw():
    assert choose_screw(find_kind("button"), 8.0) is None
    assert fastener_capacity(find_kind("button"), 0.6, 8.0).allowable_n is None


def test_capacity_is_the_weakest_known_link_and_names_the_unknown():
    clip = fastener_capacity(find_kind("clip"), 0.63, 20.0)
    assert clip.ultimate_n is not None and clip.allowable_n == pytest.approx(clip.ultimate_n / 5.5)
    assert "withdrawal" in clip.weakest
    assert any("groove" in link for link in clip.unknown)
    assert str(clip.source).endswith("(recalled)")


def test_without_a_density_nothing_is_known():
    nothing = fastener_capacity(find_kind("clip"), None, 20.0)
    assert nothing.allowable_n is None
    assert any("withdrawal" in link for link in nothing.unknown)


def test_insert_in_a_steel_base_has_no_figure():
    steel = fastener_capacity(find_kind("slotted steel"), 0.63, 25.0)
    assert steel.allowable_n is None and any("insert" in link for link in steel.unknown)


def test_lag_screw_in_end_grain_holds_three_fourths():
    side, end = (lag_screw_withdrawal_n(0.6, 6.4, 40, end_grain) for end_grain in (False, True))
    assert end == pytest.approx(0.75 * side)


@pytest.mark.parametrize("gravity", [0.0, 2.0, float("nan")])
def test_impossible_density_is_refused(gravity):
    with pytest.raises(InputError, match="specific gravity"):
        fastener_capacity(find_kind("clip"), gravity, 20.0)


def test_pull_of_a_lag_screw_has_the_handbooks_figures():
    """Wood Handbook ch. 8 (FPL-GTR-190): p = 125.4 G^1.5 D^0.75 L newton, in end grain three fourths of it (read)."""
    assert lag_screw_withdrawal_n(1.0, 1.0, 1.0) == pytest.approx(125.4, rel=1e-9)
    assert lag_screw_withdrawal_n(0.5, 16.0, 10.0) == pytest.approx(125.4 * 0.5**1.5 * 8.0 * 10.0, rel=1e-9)
    assert lag_screw_withdrawal_n(1.0, 1.0, 1.0, end_grain=True) == pytest.approx(94.05, rel=1e-9)


@pytest.mark.parametrize(
    ("figures", "bad"),
    [
        ((0.1, 1.0, 0.0), None),
        ((1.3, 25.0, 300.0), None),
        ((0.09, 6.0, 30.0), "specific gravity"),
        ((1.4, 6.0, 30.0), "specific gravity"),
        ((0.6, 0.9, 30.0), "shank"),
        ((0.6, 25.5, 30.0), "shank"),
        ((0.6, 6.0, -0.5), "thread"),
        ((0.6, 6.0, 300.5), "thread"),
        ((0.6, float("nan"), 30.0), "shank"),
    ],
)
def test_a_screw_is_taken_to_the_ends_of_its_ranges_and_refused_beyond(figures, bad):
    if bad is None:
        assert lag_screw_withdrawal_n(*figures) >= 0
        return
    with pytest.raises(InputError, match=bad):
        lag_screw_withdrawal_n(*figures)


def test_every_kind_has_a_known_shape_and_stands_in_the_readme(monkeypatch):
    readme = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
    told = readme.split("`--kind` names kinds to compare", 1)[1].split(")", 1)[0]
    assert [kind for kind in all_kinds() if f"`{kind.kind}`" not in told] == []
    assert {kind.shape for kind in all_kinds()} == set(SHAPES)
    broken = [{**row, "shape": "hook"} for row in rows("fastener_kinds")]
    monkeypatch.setattr(fasteners, "rows", lambda table: broken)
    with pytest.raises(
        InputError, match=r"fastener kind 'figure-eight': shape 'hook'\..*plate, clip, button"
    ):
        all_kinds.__wrapped__()
