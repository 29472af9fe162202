"""Curved solids that are too far, too small or wholly inside; and what a kernel answers."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from movement_core.piece.contact import contacts, curved
from movement_core.piece.contact.bodies import Body, CurvedFace, Placed
from movement_core.piece.contact.contacts import contacts_of
from movement_core.piece.contact.rays import MESH_MM
from tests.core.contact_solids import blocks, bored, cylinder_face, peg, pose


def ball(name, radius, centre, count=72, spoilt=False):
    """A ball as a mesh without flat faces; spoilt: with facets that have no area."""
    turn, height = np.meshgrid(
        2 * np.pi * np.arange(count + 1) / count, np.linspace(0, np.pi, count // 2 + 1), indexing="ij"
    )
    grid = np.stack([np.sin(height) * np.cos(turn), np.sin(height) * np.sin(turn), np.cos(height)], axis=-1)
    a, b, c, d = grid[:-1, :-1], grid[:-1, 1:], grid[1:, 1:], grid[1:, :-1]
    triangles = np.concatenate([np.stack([a, b, c], axis=2), np.stack([a, c, d], axis=2)]).reshape(-1, 3, 3)
    doubled = np.linalg.norm(
        np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0]), axis=1
    )
    triangles = triangles if spoilt else triangles[doubled > 1e-9]  # at the poles
    return Body(name, name, (), (CurvedFace(radius * triangles + np.asarray(centre, float)),))


class Says:
    """A kernel with one answer to each question."""

    def __init__(self, distance=None, volume=None):
        self.distance, self.volume = distance, volume
        self.asked = []

    def face_distance(self, *faces):
        self.asked.append(faces)
        return self.distance

    def shared_volume(self, *_):
        return self.volume


def leg_and_wall():
    return [peg("leg", 20.0, 0, 400), blocks("wall", [((23, -100, 0), (60, 100, 400))])]


@pytest.mark.parametrize(
    "distance, least, exact",
    [(None, 3.0, False), (2.96, 2.96, True), (1e-9, 0.0, True)],
    ids=["cannot tell", "tells", "touching"],
)
def test_a_kernel_is_believed_about_the_least_distance(distance, least, exact):
    kernel = Says(distance)
    (gap,) = contacts_of(leg_and_wall(), kernel=kernel).gaps
    assert gap.least_mm == pytest.approx(least, abs=1e-12 if exact else MESH_MM)
    assert gap.exact is exact and gap.most_mm >= gap.least_mm
    # Asked of the leg's curved face, numbered behind its two ends, and the wall's face that looks at it.
    assert len(kernel.asked) == 1 and kernel.asked[0][:2] == (0, 2) and kernel.asked[0][2] == 1


def test_a_kernel_that_cannot_tell_leaves_an_overlap_as_the_mesh_shows_it():
    bodies = [blocks("rail", [((-30, -30, 0), (30, 30, 40))]), peg("peg", 5, -9, 30)]
    (overlap,) = contacts_of(bodies, kernel=Says()).overlaps
    assert not overlap.exact and np.isnan(overlap.volume_mm3)
    assert overlap.depth_mm == pytest.approx(30.0)  # from the rail's face to the peg's end


class Counts:
    """A kernel that notes which pairs it is asked about, and says that they share a litre."""

    def __init__(self):
        self.asked = []

    def face_distance(self, *_):
        return None

    def shared_volume(self, *pair):
        self.asked.append(pair)
        return 1e6


@pytest.mark.parametrize(
    "make, count",
    [
        (lambda n, x: peg(f"peg {n}", 5, -9, 30, centre=(x, 0)), 24),
        (lambda n, x: ball(f"ball {n}", 9, (x, 0, 20)), 6),
    ],
    ids=["pegs", "balls"],
)
def test_a_kernel_is_asked_for_a_few_volumes_and_the_other_overlaps_are_told_by_their_meshes(make, count):
    rail = blocks("rail", [((-30, -30, 0), (2000, 30, 40))])
    bodies = [rail, *(make(n, 41.5 * n + n * n / 50) for n in range(30))]
    kernel = Counts()
    found = contacts_of(bodies, kernel=kernel).overlaps
    assert [(one.first, one.second) for one in found] == [(0, n + 1) for n in range(30)]
    assert len(kernel.asked) == count
    assert [not np.isnan(one.volume_mm3) for one in found] == [True] * count + [False] * (30 - count)


def test_a_kernel_is_not_asked_how_two_balls_cut_each_other():
    kernel = Counts()
    (overlap,) = contacts_of(
        [ball("ball", 10, (0, 0, 0)), ball("other", 10, (9, 0, 0))], kernel=kernel
    ).overlaps
    assert kernel.asked == [] and np.isnan(overlap.volume_mm3) and overlap.depth_mm > 1


@pytest.mark.parametrize("order", [1, -1])
@pytest.mark.parametrize("spoilt", [False, True])
def test_a_ball_wholly_inside_a_block_is_found_though_no_face_is_cut(order, spoilt):
    block = blocks("block", [((-50, -50, -50), (50, 50, 50))])
    (overlap,) = contacts_of([block, ball("ball", 10, (20, 0, 0), spoilt=spoilt)][::order]).overlaps
    assert not overlap.exact and np.isnan(overlap.volume_mm3)
    assert overlap.depth_mm == pytest.approx(20, abs=1e-6)
    assert overlap.centre == pytest.approx((20, 0, 0), abs=1e-6)


def test_a_ball_in_a_cavity_shares_nothing_with_the_solid_round_it():
    shell = blocks("shell", [((-50, -50, -50), (50, 50, 50))], [((-30, -30, -30), (30, 30, 30))])
    found = contacts_of([shell, ball("ball", 10, (0, 0, 0))])
    assert found.overlaps == () and found.gaps == () and found.contacts == ()


@pytest.mark.parametrize("order", [1, -1])
def test_a_ball_beside_a_block(order):
    bodies = [ball("ball", 10, (0, 0, 0)), blocks("block", [((13, -50, -50), (40, 50, 50))])][::order]
    found = contacts_of(bodies)
    (gap,) = found.gaps
    assert (gap.first, gap.second) == (0, 1) and not gap.exact
    assert gap.least_mm == pytest.approx(3, abs=0.1)  # the facets of the ball lie within its radius
    assert gap.normal == pytest.approx(np.array([order, 0, 0]), abs=0.05)
    assert found.overlaps == ()


def test_two_balls_are_told_once_from_the_first():
    (gap,) = contacts_of([ball("one", 10, (0, 0, 0)), ball("other", 12, (25, 0, 0))]).gaps
    assert gap.least_mm == pytest.approx(3, abs=0.3)
    assert gap.normal == pytest.approx((1, 0, 0), abs=0.05)


def test_a_speck_is_no_gap():
    """A ball of 0.2 mm shows less than a square millimetre."""
    found = contacts_of([ball("speck", 0.2, (0, 0, 0)), blocks("block", [((1, -50, -50), (40, 50, 50))])])
    assert found.gaps == () and found.contacts == ()


def test_a_block_in_the_middle_of_a_wide_bore_is_out_of_reach():
    rail = bored("rail", (-150, -150, 0), (150, 150, 40), 100.0)
    found = contacts_of([rail, blocks("block", [((-10, -10, 0), (10, 10, 40))])])
    assert found.gaps == () and found.contacts == () and found.overlaps == ()


def test_a_ball_in_the_middle_of_a_wide_ring_meets_only_what_is_near():
    """The ring is a mesh of which no cylinder is known; its box holds the ball, none of its facets is near."""
    wall = CurvedFace(cylinder_face(150, 0, 60, hollow=True).triangles)
    ring = Body("ring", "ring", bored("r", (-200, -200, 0), (200, 200, 60), 150.0).planar, (wall,))
    floor = blocks("floor", [((-40, -40, 14), (40, 40, 17))])
    found = contacts_of([ball("ball", 10, (0, 0, 30)), ring, floor])
    assert {(gap.first, gap.second) for gap in found.gaps} == {(0, 2)}
    (gap,) = found.gaps
    assert gap.least_mm == pytest.approx(3, abs=0.2)


def test_rays_of_a_long_post_stand_close_enough():
    post = peg("post", 20.0, 0, 2400)
    wall = blocks("wall", [((23, -100, 1000), (60, 100, 1100))])
    (gap,) = contacts_of([post, wall]).gaps
    assert gap.least_mm == pytest.approx(3, abs=MESH_MM)
    assert 1000 <= gap.centre[2] <= 1100


def linked(body, solid, where):
    """The body in its place, marked as one of many places of a solid."""
    turn, shift = where
    planar = tuple(
        replace(face, normal=turn @ face.normal, loops=tuple(loop @ turn.T + shift for loop in face.loops))
        for face in body.planar
    )
    curved = tuple(
        replace(face, triangles=face.triangles @ turn.T + shift, cylinder=None) for face in body.curved
    )
    return Body(body.key, body.name, planar, curved, Placed(solid, turn, shift))


def test_what_solids_share_is_carried_to_all_places_where_they_stand_alike():
    block, inside = blocks("block", [((-50, -50, -50), (50, 50, 50))]), ball("ball", 10, (20, 0, 0))
    beside = blocks("beside", [((50, -50, -50), (90, 50, 50))])
    places = [pose(seed) for seed in (1, 2, 3)]
    bodies = [
        linked(body, solid, where)
        for where in places
        for solid, body in enumerate((block, inside, beside))
    ]  # fmt: skip
    found = contacts_of(bodies)
    assert [(o.first, o.second) for o in found.overlaps] == [(0, 1), (3, 4), (6, 7)]
    for overlap, (turn, shift) in zip(found.overlaps, places):
        # Worked out in the first place, along the model's axes there, and carried to the others.
        assert overlap.depth_mm == pytest.approx(found.overlaps[0].depth_mm)
        first_turn, first_shift = places[0]
        own = first_turn.T @ (found.overlaps[0].centre - first_shift)
        assert overlap.centre == pytest.approx(turn @ own + shift)
        assert own == pytest.approx((20, 0, 0), abs=1.0)
    assert [(c.first, c.second) for c in found.contacts] == [(0, 2), (3, 5), (6, 8)]


def test_curved_faces_are_compared_but_for_parts_drawn_twice_in_one_place(monkeypatch):
    """Of three balls of 50 mm two stand a millimetre apart; the third leaves the first 3 mm."""
    compared = []

    def recorded(scene, first, second, *rest):
        compared.extend(zip(first.tolist(), second.tolist()))
        return curved.curved_finds(scene, first, second, *rest)

    monkeypatch.setattr(contacts, "curved_finds", recorded)
    found = contacts_of(
        [ball("one", 50, (0, 0, 0)), ball("again", 50, (-1, 0, 0)), ball("other", 50, (103, 0, 0))]
    )
    assert compared == [(0, 2), (1, 2)]
    assert [(each.first, each.second) for each in found.overlaps] == [(0, 1)]
    widths = {(gap.first, gap.second): gap.least_mm for gap in found.gaps}
    assert widths == {(0, 2): pytest.approx(3, abs=0.3), (1, 2): pytest.approx(4, abs=0.3)}


def test_a_solid_in_a_hollow_as_large_keeps_its_gap():
    """A peg of 49 mm in a bore of 50 mm through a block not much larger: boxes nearly alike, nothing shared."""
    found = contacts_of([bored("block", (-52, -52, 0), (52, 52, 100), 50.0), peg("peg", 49.0, 0, 100)])
    assert found.overlaps == () and any(gap.least_mm == pytest.approx(1, abs=0.05) for gap in found.gaps)
