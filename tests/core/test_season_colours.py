"""The colours of the year in the model: told apart by their lightness alone, whatever eyes look at them."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from workbench_pkg.panels.season_colours import ASKS, DRY, STEPS, UNTOLD, WET, share_colour

# Eyes without one kind of cone, in linear RGB (Viénot, Brettel and Mollon 1999; from memory).
RED_BLIND = np.array([[0.11238, 0.88762, 0.0], [0.11238, 0.88762, 0.0], [0.00401, -0.00401, 1.0]])
GREEN_BLIND = np.array([[0.29275, 0.70725, 0.0], [0.29275, 0.70725, 0.0], [-0.02234, 0.02234, 1.0]])


def linear(colour):
    value = np.array(colour) / 255
    return np.where(value <= 0.04045, value / 12.92, ((value + 0.055) / 1.055) ** 2.4)


def lightness(rgb):
    """CIE 1976 L* of linear sRGB."""
    y = float(np.clip(rgb, 0, 1) @ [0.2126, 0.7152, 0.0722])
    return 116 * np.cbrt(y) - 16 if y > 0.008856 else 903.3 * y


@pytest.mark.parametrize("eyes", [np.eye(3), RED_BLIND, GREEN_BLIND], ids=["all", "red-blind", "green-blind"])
def test_each_step_is_darker_than_the_one_before(eyes):
    steps = [lightness(eyes @ linear(colour)) for _, colour in STEPS]
    assert all(a - b > 10 for a, b in pairwise(steps)), steps


@pytest.mark.parametrize("eyes", [np.eye(3), RED_BLIND, GREEN_BLIND], ids=["all", "red-blind", "green-blind"])
def test_what_asks_and_the_two_outlines_are_told_apart(eyes):
    def apart(one, other):
        return np.abs(np.clip(eyes @ linear(one), 0, 1) - np.clip(eyes @ linear(other), 0, 1)).max()

    assert all(apart(ASKS, colour) > 0.1 for _, colour in STEPS)
    assert apart(DRY, WET) > 0.3
    assert apart(ASKS, UNTOLD) > 0.1


def test_shares_fall_into_their_steps():
    assert share_colour(0.0) == share_colour(0.24) == STEPS[0][1]
    assert share_colour(0.25) == STEPS[1][1]
    assert share_colour(0.99) == STEPS[3][1]
    assert share_colour(1.0) == share_colour(50.0) == STEPS[4][1]
    assert share_colour(None) == ASKS
    assert [start for start, _ in STEPS] == [0.0, 0.25, 0.5, 0.75, 1.0]
