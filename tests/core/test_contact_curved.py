"""Pegs in holes exactly; other curved faces by rays, within the chords of their meshes."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.piece.contact import rays
from movement_core.piece.contact.bodies import Body
from movement_core.piece.contact.contacts import contacts_of
from movement_core.piece.contact.rays import MESH_MM
from tests.core.contact_solids import blocks, bored, cylinder_face, peg, pose

WHERE = [pose(seed) for seed in range(4)]
PI = np.pi


@pytest.mark.parametrize("where", WHERE)
def test_a_peg_that_fits_its_hole(where):
    found = contacts_of(
        [bored("rail", (-30, -30, 0), (30, 30, 40), 5.0, where), peg("peg", 5.0, -10, 30, where)]
    )
    (contact,) = found.contacts
    assert contact.surface == "round"
    assert contact.exact
    assert contact.area_mm2 == pytest.approx(2 * PI * 5 * 30, abs=1e-6)
    assert np.abs(contact.normal @ where[0][:, 2]) == pytest.approx(1)
    assert found.gaps == ()
    assert found.overlaps == ()


@pytest.mark.parametrize("where", WHERE)
def test_a_loose_peg_and_one_that_leans_on_its_hole(where):
    block = bored("rail", (-30, -30, 0), (30, 30, 40), 6.0, where)
    (gap,) = contacts_of([block, peg("peg", 5.0, -10, 30, where)]).gaps
    assert (gap.least_mm, gap.most_mm) == pytest.approx((1, 1), abs=1e-9)
    assert gap.area_mm2 == pytest.approx(2 * PI * 5.5 * 30)
    (gap,) = contacts_of([block, peg("peg", 5.0, -10, 30, where, centre=(0.4, 0.3))]).gaps
    assert (gap.least_mm, gap.most_mm) == pytest.approx((0.5, 1.5), abs=1e-9)


def test_a_peg_thicker_than_its_hole():
    found = contacts_of(
        [bored("rail", (-30, -30, 0), (30, 30, 40), 5.0, WHERE[1]), peg("p", 5.2, -10, 30, WHERE[1])]
    )
    (overlap,) = found.overlaps
    assert overlap.depth_mm == pytest.approx(0.2)
    assert overlap.volume_mm3 == pytest.approx(PI * (5.2**2 - 25) * 30)
    assert found.contacts == ()


def test_a_peg_in_two_halves_counts_once():
    """Files from elsewhere carry a cylinder as two halves; together they are one contact."""
    whole = bored("rail", (-30, -30, 0), (30, 30, 40), 5.0, WHERE[2])
    one = peg("peg", 5.0, 0, 40, WHERE[2])
    face = one.curved[0]
    half = type(face.cylinder)(**{**face.cylinder.__dict__, "angle": PI})
    count = len(face.triangles) // 2
    halves = tuple(type(face)(t, half) for t in (face.triangles[:count], face.triangles[count:]))
    found = contacts_of([whole, Body("peg", "peg", one.planar, halves)])
    assert sum(c.area_mm2 for c in found.contacts) == pytest.approx(2 * PI * 5 * 40)


def test_a_peg_where_no_hole_was_drilled():
    found = contacts_of(
        [blocks("rail", [((-30, -30, 0), (30, 30, 40))], where=WHERE[0]), peg("p", 5, -9, 30, WHERE[0])]
    )
    (overlap,) = found.overlaps
    assert (overlap.first, overlap.second) == (0, 1)
    assert not overlap.exact


def test_a_kernel_is_believed_about_shared_volumes():
    class Says:
        def __init__(self, volume):
            self.volume = volume

        def face_distance(self, *_):
            return None

        def shared_volume(self, *_):
            return self.volume

    bodies = [blocks("rail", [((-30, -30, 0), (30, 30, 40))], where=WHERE[0]), peg("p", 5, -9, 30, WHERE[0])]
    assert contacts_of(bodies, kernel=Says(2356.0)).overlaps[0].volume_mm3 == 2356.0
    assert contacts_of(bodies, kernel=Says(0.0)).overlaps == ()


@pytest.mark.parametrize("where", WHERE)
def test_a_round_leg_stands_on_the_floor_and_beside_a_wall(where):
    leg = peg("leg", 20.0, 0, 400, where)
    floor = blocks("floor", [((-100, -100, -20), (100, 100, 0))], where=where)
    wall = blocks("wall", [((23, -100, 0), (60, 100, 400))], where=where)
    found = contacts_of([leg, floor, wall])
    standing = next(c for c in found.contacts if (c.first, c.second) == (0, 1))
    assert standing.area_mm2 == pytest.approx(32 * 400 * np.sin(2 * PI / 64))  # the polygon of the test's peg
    (gap,) = found.gaps
    assert (gap.first, gap.second) == (0, 2)
    assert gap.least_mm == pytest.approx(3, abs=MESH_MM)
    assert gap.normal == pytest.approx(where[0][:, 0], abs=0.02)
    assert not gap.exact


def test_a_round_rail_against_a_face_touches_along_a_line_only():
    leg = peg("leg", 20.0, 0, 400)
    wall = blocks("wall", [((20, -100, 0), (60, 100, 400))])
    found = contacts_of([leg, wall])
    assert found.contacts == ()
    assert found.gaps[0].least_mm == pytest.approx(0, abs=MESH_MM)


def test_curved_faces_that_fit_without_being_known_cylinders():
    """A seat hollowed to take a round: meshes only."""
    full, hollow = cylinder_face(50, 0, 100), cylinder_face(50, 0, 100, hollow=True)
    bare = [type(face)(face.triangles) for face in (full, hollow)]
    outside = bored("block", (-80, -80, 0), (80, 80, 100), 50.0)
    found = contacts_of([Body("round", "round", peg("p", 50, 0, 100).planar, (bare[0],)),
                         Body("block", "block", outside.planar, (bare[1],))])  # fmt: skip
    (contact,) = found.contacts
    assert contact.surface == "curved"
    assert contact.area_mm2 == pytest.approx(2 * PI * 50 * 100, rel=0.01)
    assert found.overlaps == ()


def test_many_rays_meet_the_same_in_halves_as_all_at_once(monkeypatch):
    """Rays from a ball of radius 50 mm to the inside of one of 60 mm: 10 mm to the chords of its facets."""
    turn, height = np.meshgrid(
        np.linspace(0, 2 * np.pi, 61), np.linspace(0.1, np.pi - 0.1, 31), indexing="ij"
    )
    grid = np.stack([np.sin(height) * np.cos(turn), np.sin(height) * np.sin(turn), np.cos(height)], axis=-1)
    a, b, c, d = grid[:-1, :-1], grid[1:, :-1], grid[1:, 1:], grid[:-1, 1:]
    inward = 60 * np.concatenate([np.stack([a, b, c], axis=2), np.stack([a, c, d], axis=2)]).reshape(-1, 3, 3)
    rng = np.random.default_rng(4)
    normals = rng.normal(size=(400, 3))
    normals /= np.linalg.norm(normals, axis=1)[:, None]
    normals = normals[np.abs(normals[:, 2]) < 0.9]
    monkeypatch.setattr(rays, "MOST_PAIRS", 10**12)
    at_once = rays._to_mesh(inward, 50 * normals, normals, 15.0)
    monkeypatch.setattr(rays, "MOST_PAIRS", 1)
    halved = rays._to_mesh(inward, 50 * normals, normals, 15.0)
    found = np.isfinite(at_once)
    assert found.all() and at_once == pytest.approx(10.0, abs=0.25)
    assert halved == pytest.approx(at_once, abs=1e-9)
