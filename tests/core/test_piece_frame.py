"""Finding a part's grain frame from its tags and its shape."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.piece.captured import reasons_to_ask
from movement_core.piece.frame import find_frame
from movement_core.piece.tags import Tags
from tests.core.solids import box, rotation


@given(
    seed=st.integers(0, 10_000),
    thickness=st.floats(5, 60),
    widen=st.floats(1.2, 8),
    lengthen=st.floats(1.6, 12),
)
@settings(max_examples=60, deadline=None)
def test_a_rotated_board_has_its_true_size_whatever_its_position(seed, thickness, widen, lengthen):
    width, length = thickness * widen, thickness * widen * lengthen
    axes = rotation(seed)
    frame = find_frame(box((width, length, thickness), (300, -20, 5), axes), Tags())
    assert frame.grain.origin == "inferred"
    np.testing.assert_allclose(frame.size_mm, (width, thickness, length), rtol=1e-9)
    assert abs(frame.axes[2] @ axes[1]) == pytest.approx(1)
    assert np.linalg.det(frame.axes) == pytest.approx(1)
    np.testing.assert_allclose(frame.centre, (300, -20, 5), atol=1e-6)


def test_geometry_baked_askew_is_measured_along_its_own_edges():
    """An imported solid keeps the world's axes as its own, however it lies."""
    solid = box((120, 900, 22), axes=rotation(3))
    baked = type(solid)(**{**solid.__dict__, "own_axes": np.eye(3)})
    np.testing.assert_allclose(find_frame(baked, Tags()).size_mm, (120, 22, 900), rtol=1e-9)


def test_a_cube_has_no_longest_edge_and_says_so():
    frame = find_frame(box((60, 60, 60)), Tags())
    assert not frame.grain.known
    assert "no longest edge: all three edges are 60 mm" in frame.grain.reason
    assert not frame.show.known


def test_a_square_plate_has_no_longest_edge():
    assert "the two longest edges" in find_frame(box((400, 400, 18)), Tags()).grain.reason


def test_a_nearly_square_part_asks_for_the_grain():
    frame = find_frame(box((400, 300, 18)), Tags())
    assert "under 1.5 × width" in frame.grain.reason
    np.testing.assert_allclose(frame.size_mm, (18, 300, 400))


def test_a_tagged_grain_outranks_the_longest_edge():
    frame = find_frame(box((400, 300, 18)), Tags(grain=(0.0, 1.0, 0.0), said={"grain": "label"}))
    assert (frame.grain.origin, frame.grain.reason) == ("tagged", "label")
    np.testing.assert_allclose(frame.size_mm, (400, 18, 300))


def test_grain_across_the_thickness_of_an_end_grain_block():
    frame = find_frame(box((200, 150, 40)), Tags(grain=(0.0, 0.0, 1.0)))
    assert frame.length_mm == pytest.approx(40)
    assert sorted(frame.size_mm[:2]) == pytest.approx([150, 200])


def test_a_flat_part_shows_the_face_that_looks_up():
    turned = np.diag([1.0, -1.0, -1.0])  # modelled upside down
    for axes in (np.eye(3), turned):
        frame = find_frame(box((1000, 120, 20), axes=axes), Tags())
        assert frame.show.origin == "inferred"
        np.testing.assert_allclose(frame.axes[1], (0, 0, 1), atol=1e-12)


def test_an_upright_part_shows_the_face_that_looks_out_of_the_piece():
    door = box((20, 100, 700), centre=(500, 0, 0))
    frame = find_frame(door, Tags(), piece_centre=np.zeros(3))
    np.testing.assert_allclose(frame.axes[1], (1, 0, 0), atol=1e-12)
    assert not find_frame(door, Tags()).show.known


def test_a_tagged_show_face_gives_the_thickness_direction():
    """A square post: only the tag tells which of two equal sides is the show face."""
    frame = find_frame(box((60, 60, 700)), Tags(show=(0.0, -1.0, 0.0)))
    np.testing.assert_allclose(frame.axes[1], (0, -1, 0), atol=1e-12)
    np.testing.assert_allclose(np.cross(frame.axes[0], frame.axes[1]), frame.axes[2], atol=1e-12)


def test_a_show_face_tagged_on_an_end_is_refused_with_the_reason():
    frame = find_frame(box((60, 20, 700)), Tags(grain=(0.0, 0.0, 1.0), show=(0.0, 0.0, 1.0)))
    assert "end of the grain" in frame.show.reason


def _reasons(*solids):
    return reasons_to_ask(solids)


def test_a_panel_housed_along_both_long_edges_asks():
    panel = box((300, 10, 600))
    stiles = [box((60, 20, 700), (x, 0, 0)) for x in (-170, 170)]
    assert "panel in a frame" in _reasons(panel, *stiles)[0]


def test_a_rail_tenoned_into_two_legs_does_not_ask():
    rail = box((1000, 22, 90))
    legs = [box((60, 60, 700), (x, 0, -250)) for x in (-490, 490)]
    assert _reasons(rail, *legs)[0] == ""


def test_a_thin_drawer_bottom_housed_at_its_ends_asks():
    bottom = box((600, 300, 8))
    sides = [box((14, 420, 120), (x, 0, 50)) for x in (-299, 299)]
    assert "drawer bottom" in _reasons(bottom, *sides)[0]


def test_a_case_side_deeper_than_high_asks():
    assert "case side" in _reasons(box((700, 20, 420)))[0]
    assert _reasons(box((420, 20, 700)))[0] == ""


def test_a_board_lying_on_others_does_not_ask():
    top = box((1600, 500, 25))
    rails = [box((1400, 20, 80), (0, y, -52.5)) for y in (-200, 200)]
    assert _reasons(top, *rails)[0] == ""
