"""Answers of the moisture room as they were when last judged right; a change here must be meant and
explained.
"""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.year import Year
from movement_core.moisture.events import BoardInAir, wet_face
from movement_core.moisture.glue import glue_wait
from movement_core.moisture.response import wood_year

HOME = Year("invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test")


@pytest.mark.parametrize(
    ("thickness", "gravity", "show", "back", "lag", "share", "driest", "wettest", "difference"),
    [
        (8, 0.4, "bare", "bare", 1.7256, 1.0003, 5.3618, 10.9697, 0.0),
        (20, 0.68, "varnish 3", "varnish 3", 42.9661, 0.7333, 5.8926, 10.0037, 0.0),
        (20, 0.68, "oil 2", "blocked", 47.4543, 0.4977, 6.4798, 9.2702, 3.2347),
        (35, 0.55, "shellac 3", "bare", 44.2605, 0.6508, 6.0946, 9.7433, 1.106),
        (60, 0.75, "lacquer 3", "varnish 1", 51.5311, 0.2526, 7.1044, 8.5207, 0.1706),
    ],
)
def test_years_kept(thickness, gravity, show, back, lag, share, driest, wettest, difference) -> None:
    year = wood_year(HOME, thickness, gravity, show, back)
    found = (
        year.lag_days,
        year.swing_share,
        year.driest_mc,
        year.wettest_mc,
        np.abs(year.face_difference_mc).max(),
    )
    assert np.array(found) == pytest.approx((lag, share, driest, wettest, difference), rel=1e-3, abs=1e-3)


def test_events_kept() -> None:
    wet = wet_face(BoardInAir(20, 0.65, 20, 50), 8)
    assert wet.worst_face_difference_mc == pytest.approx(7.9252, rel=1e-2)
    assert glue_wait(20, 0.65, 0.0018, 20, 50).days == pytest.approx(10.4584, rel=1e-2)
