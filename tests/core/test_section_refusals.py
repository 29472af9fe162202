"""What the free shape of a section refuses, told before anything is computed from it."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section.elastic import _GAUSS, _GAUSS_WEIGHT
from movement_core.section.field import free_shape
from movement_core.section.laying import Laying

POINTS = [(-40.0, -10.0), (40.0, -10.0), (40.0, 10.0)]
PITH = (0.0, -80.0)


@pytest.mark.parametrize(
    ("points", "pith", "radial", "tangential", "says"),
    [
        ([["a", "b"]], PITH, -0.01, -0.02, "is not a number"),
        ([(1.0, 2.0, 3.0)], PITH, -0.01, -0.02, r"points has shape \(1, 3\)"),
        (5.0, PITH, -0.01, -0.02, r"points has shape \(\)"),
        ([(1.0, np.nan)], PITH, -0.01, -0.02, "points contains nan"),
        (POINTS, (0.0, np.inf), -0.01, -0.02, "pith contains inf"),
        (POINTS, (0.0, 0.0), -0.01, -0.02, "centre of the section"),
        (POINTS, PITH, -1.0, -0.02, "radial strain -1 leaves no wood"),
        (POINTS, PITH, -0.01, -4.0, "tangential strain -4 leaves no wood"),
        (POINTS, PITH, -0.01, "much", "tangential strain 'much' is not a number"),
        ([(1e308, 1e308)], (-1e308, -1e308), 0.5, 0.5, "too large"),
        ([*POINTS, (-40.0, 10.0)], (0.0, 0.0001), -0.01, -0.02, "surround the pith"),
    ],
)
def test_what_cannot_be_computed_is_refused(points, pith, radial, tangential, says):
    with pytest.raises(InputError, match=says):
        free_shape(points, pith, radial, tangential)


def test_a_single_point_moves_as_it_does_among_others():
    alone = free_shape(POINTS[1], PITH, -0.01, -0.03)
    assert alone.shape == (2,)
    assert alone == pytest.approx(free_shape(POINTS, PITH, -0.01, -0.03)[1])


@pytest.mark.parametrize(
    "places",
    [((0, 0), (False,) * 2, (False,) * 2), ((0, 1), (False,), (False,) * 2), ((0, 1), (False,) * 2, (True,))],
    ids=["a board twice", "one place not said over", "one place not said turned"],
)
def test_a_laying_names_each_board_once(places):
    with pytest.raises(InputError, match="each board once"):
        Laying(*places)


def test_the_elements_own_quadrature_is_exact_to_the_fifth_power():
    """Three Gauss points on -1 … 1; the integrals are exact by calculus."""
    for power in range(6):
        exact = 2.0 / (power + 1) if power % 2 == 0 else 0.0
        assert (_GAUSS_WEIGHT * _GAUSS**power).sum() == pytest.approx(exact, abs=1e-14)
