"""Withdrawal equations in both unit systems, and against the design standard's value.

Wood Handbook FPL-GTR-190 ch. 8 (metric and inch-pound forms, recalled); National Design Specification for
Wood Construction, wood screws: W = 2850 G² D lbf per inch of thread (read).
"""

from __future__ import annotations

import pytest

from movement_core.holding.capacity import lag_screw_withdrawal_n, wood_screw_withdrawal_n
from movement_core.holding.fasteners import SAFETY
from movement_core.sources import READ, RECALLED
from tests.validation.record import compared

HANDBOOK = "Wood Handbook FPL-GTR-190, ch. 8"

LBF, INCH = 4.4482216, 25.4


@pytest.mark.parametrize(
    ("gravity", "shank_in", "thread_in"), [(0.42, 0.138, 0.75), (0.63, 0.164, 1.0), (0.75, 0.19, 1.5)]
)
def test_metric_and_inch_pound_screw_withdrawal_agree(gravity, shank_in, thread_in):
    imperial = 15700 * gravity**2 * shank_in * thread_in * LBF
    ours = wood_screw_withdrawal_n(gravity, shank_in * INCH, thread_in * INCH)
    compared("wood screws, inch-pound equation", HANDBOOK, RECALLED, imperial, ours, "N", share=0.002)


@pytest.mark.parametrize(("gravity", "shank_in", "thread_in"), [(0.45, 0.25, 2.0), (0.66, 0.375, 3.0)])
def test_metric_and_inch_pound_lag_withdrawal_agree(gravity, shank_in, thread_in):
    imperial = 8100 * gravity**1.5 * shank_in**0.75 * thread_in * LBF
    ours = lag_screw_withdrawal_n(gravity, shank_in * INCH, thread_in * INCH)
    compared("lag screws, inch-pound equation", HANDBOOK, RECALLED, imperial, ours, "N", share=0.01)


def test_safety_factor_is_that_of_the_design_standard():
    design = 2850 * 0.55**2 * 0.164 * LBF  # per inch of thread
    ours = wood_screw_withdrawal_n(0.55, 0.164 * INCH, INCH) / SAFETY
    source = "National Design Specification for Wood Construction: W = 2850 G² D"
    compared("safety factor of wood screws", source, READ, design, ours, "N", share=0.005)
