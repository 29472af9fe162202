"""Label places beside a piece."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.sheet.label_places import RIGHT, SPACING, UP, label_places


@given(st.integers(1, 60), st.integers(0, 1000))
@settings(max_examples=50, deadline=None)
def test_labels_keep_their_distance_and_their_order(count, seed):
    anchors = np.random.default_rng(seed).uniform((0, 0, 0), (1800, 800, 750), size=(count, 3))
    places = label_places(anchors)
    diagonal = max(np.linalg.norm(np.ptp(anchors, axis=0)), 1.0)
    across, height = places @ RIGHT, places @ UP
    for side in (across < across.mean(), across >= across.mean()):
        order = np.argsort(height[side])
        assert (np.diff(height[side][order]) > 0.999 * SPACING * diagonal).all()
        assert (np.diff((anchors @ UP)[side][order]) >= -1e-9).all()
    if count > 1:
        assert across.min() < (anchors @ RIGHT).min() and across.max() > (anchors @ RIGHT).max()


def test_labels_already_apart_stay_level_with_their_parts():
    anchors = np.array([[0.0, 0, 0], [0, 0, 500], [0, 0, 1000]])
    assert label_places(anchors) @ UP == pytest.approx(anchors @ UP)


def test_one_part_and_none():
    assert label_places(np.empty((0, 3))).shape == (0, 3)
    assert np.isfinite(label_places(np.array([[1.0, 2, 3]]))).all()
