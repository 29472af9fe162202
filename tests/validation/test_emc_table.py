"""The sorption equation against the handbook's own table, its other system of units, and rounded rules.

Sources: Wood Handbook FPL-GTR-190 (2010) Table 4-2, p. 4-4 (recalled) and Eq. 4-5, p. 4-3 (metric
coefficients read, inch-pound ones recalled); FPL-RN-0268 (1998); rules of published trade columns (read).
"""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.emc import _polynomials, equilibrium_moisture
from movement_core.sources import READ, RECALLED
from tests.validation.record import compared
from tests.validation.wood_tables import published_rows

TABLE = np.array(
    [
        [float(r[c]) for c in ("temp_f", "rh_percent", "emc_percent")]
        for r in published_rows("handbook_moisture_table")
    ]
)


def test_every_cell_of_the_handbook_table_within_a_tenth_of_a_percent():
    fahrenheit, rh, published = TABLE.T
    ours = equilibrium_moisture((fahrenheit - 32) / 1.8, rh)
    assert len(TABLE) == 271
    compared(
        "moisture of wood in air, every cell", "Wood Handbook FPL-GTR-190, Table 4-2, p. 4-4", RECALLED,
        published, ours, "% MC", within=0.1,
    )  # fmt: skip


def test_inch_pound_coefficients_give_the_same_moisture_as_metric_ones():
    """Both printings of Eq. 4-5: over the table's range of 30 to 210 °F they part by 0.013 % at most."""
    fahrenheit, rh = np.meshgrid(np.linspace(30, 210, 60), np.linspace(5, 95, 60))
    W, K, K1, K2 = (c0 + c1 * fahrenheit + c2 * fahrenheit**2 for c0, c1, c2 in _polynomials("imperial_F"))
    kh = K * rh / 100
    imperial = 1800 / W * (kh / (1 - kh) + (K1 * kh + 2 * K1 * K2 * kh**2) / (1 + K1 * kh + K1 * K2 * kh**2))
    metric = equilibrium_moisture((fahrenheit - 32) / 1.8, rh)
    compared(
        "sorption equation, inch-pound coefficients", "Wood Handbook FPL-GTR-190, Eq. 4-5; FPL-RN-0268", RECALLED,
        imperial, metric, "% MC", within=0.02,
    )  # fmt: skip


@pytest.mark.parametrize("anchor", published_rows("moisture_anchor_points"), ids=lambda a: a["rh_percent"])
def test_rounded_rules_of_the_trade(anchor):
    """Whole-percent rules: half a percent is their rounding, the rest the writer's."""
    ours = equilibrium_moisture(float(anchor["temp_c"]), float(anchor["rh_percent"]))
    compared(
        "rounded rules of the trade", "published trade columns", READ, float(anchor["emc_percent"]), ours, "% MC",
        within=0.5, note="whole-percent rules: half a percent is their rounding, the rest the writer's",
    )  # fmt: skip
