"""How sure a part's figures are."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.moisture.spread import Uncertain, spread
from movement_core.piece.doubt import cup_doubt, thickness_doubt, width_doubt
from movement_core.wood import board_variation, find_species
from tests.core.test_piece_solve import solved


def test_likely_and_nearly_certain_hold_the_figure_and_shares_add_up():
    one = solved("white oak; pith 0 -60; built 8")
    for doubt, course in ((width_doubt, one.width), (thickness_doubt, one.thickness), (cup_doubt, one.cup)):
        found = doubt(one, "wettest")
        value = course.on(one.wettest_day).value
        assert found.nearly_certain_mm[0] < found.likely_mm[0] < value < found.likely_mm[1]
        assert found.likely_mm[1] < found.nearly_certain_mm[1]
        assert sum(found.shares.values()) == pytest.approx(1, abs=0.1)
        assert found.rules == max(found.shares, key=found.shares.get)


def test_the_width_agrees_with_sampling():
    """The closed form against sampling of the same causes through the plain product."""
    one = solved("white oak; pith 3420 -9397; built 8")
    oak = find_species("white oak")
    change = float(one.mc_days[one.wettest_day]) - 8

    def width(lot, built, air, angle):
        c, s = np.cos(np.radians(angle)), np.sin(np.radians(angle))
        return (
            200
            * lot
            * (oak.tangential_coefficient * c**2 + oak.radial_coefficient * s**2)
            * (change + built + air)
        )

    sampled = spread(
        width,
        {"lot": Uncertain(1, board_variation(oak)), "built": Uncertain(0, 0.5), "air": Uncertain(0, 1),
         "angle": Uncertain(20, 3)},
    )  # fmt: skip
    low, high = width_doubt(one, "wettest").likely_mm
    assert (high - low) / 2 == pytest.approx(float(sampled.sd), rel=0.03)


def test_a_meter_takes_the_climate_out_of_today_only():
    plain, metered = (solved("white oak; pith 0 -60; built 8", mc=mc) for mc in (None, 9.0))
    assert "climate" in width_doubt(plain, "today").shares
    assert "climate" not in width_doubt(metered, "today").shares
    assert width_doubt(metered, "wettest") == width_doubt(plain, "wettest")


def test_figured_wood_is_less_sure():
    plain, crotch = (solved(f"white oak; pith 0 -60; figure {f}; built 8") for f in ("plain", "crotch"))
    widths = [np.ptp(width_doubt(one, "driest").likely_mm) for one in (plain, crotch)]
    assert widths[1] > widths[0] * 1.02


def test_nothing_known_nothing_said():
    for tag in ("grain x", "steel", "white oak; cut flat"):
        one = solved(tag)
        assert width_doubt(one, "today") is None and cup_doubt(one, "today") is None
    assert cup_doubt(solved("white oak; cut flat; built 8"), "driest") is None
    assert width_doubt(solved("plywood; built 8"), "driest").likely_mm[0] < 200
