"""Points carried through the year together: against the same points carried one part at a time."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.sheet.carried import Carrier, Gathered, normal_basis, point_basis
from movement_core.sheet.cutting import even_places
from movement_core.sheet.motion import piece_motion
from movement_core.sheet.section_picture import bent_points
from tests.core.contact_solids import blocks, pose
from tests.core.whole_pieces import whole

TOLD = "white oak; pith 10 -60; built 8; grain x; show z"
FAR = pose(2)


def three(where=FAR, apart=250):
    """A board that cups, one that is not told enough to bend, and one of nothing but its grain."""
    tags = (TOLD, "white oak; cut flat; built 8; grain x", "grain x")
    bodies = [
        blocks(f"b{i}", [((0, apart * i, 0), (900, apart * i + 160, 22))], where=where) for i in range(3)
    ]
    return piece_motion(whole(list(zip(bodies, tags)), where))


def grid(size):
    """Points of the two show faces, and their unit normals."""
    x, z = np.meshgrid(even_places(size[0], 6), even_places(size[2], 3))
    flat = np.column_stack([x.ravel(), np.zeros(x.size), z.ravel()])
    up = np.array([0.0, size[1] / 2, 0.0])
    normals = np.tile([0.0, 1.0, 0.0], (x.size, 1))
    return np.concatenate([flat + up, flat - up]), np.concatenate([normals, -normals])


@pytest.mark.parametrize("factor", [1.0, 12.0])
@pytest.mark.parametrize("day", [15, 200, 365])
def test_all_parts_at_once_stand_where_each_alone_does(day, factor):
    motion = three()
    assert [bool(part.bends) for part in motion.parts] == [True, False, False]
    carrier = Carrier(motion)
    points = {index: grid(part.size_mm)[0] for index, part in enumerate(motion.parts)}
    gathered = Gathered({index: point_basis(motion.parts[index], own) for index, own in points.items()})
    out = np.full((gathered.count, 3), np.nan, dtype=np.float32)
    moves = carrier.on(day, factor)
    gathered.write(moves.points, out)
    assert gathered.count == sum(len(own) for own in points.values())
    for index, own in points.items():
        bent = bent_points(motion, index, own, day, factor)
        there = np.column_stack([bent, np.ones(len(bent))]) @ motion.matrices(day, factor)[index][:, :3]
        np.testing.assert_allclose(out[gathered.rows[index]] + carrier.origin, there, atol=2e-3)
    bent_mm = np.abs(bent_points(motion, 0, points[0], day, factor) - points[0]).max()
    assert bent_mm > 20 * 2e-3, "the bend is far above what single precision loses"


def test_normals_stay_upright_on_the_carried_surface():
    motion = three()
    carrier = Carrier(motion)
    part = motion.parts[0]
    points, normals = grid(part.size_mm)
    step = np.array([[0.05, 0.0, 0.0], [0.0, 0.0, 0.05]])
    day, factor = motion.driest_day, 10.0
    moves = carrier.on(day, factor)

    def carried(own):
        out = np.zeros((len(own), 3), dtype=np.float32)
        own = Gathered({0: point_basis(part, own)})
        own.write(moves.points, out)
        return out.astype(float)

    leaning = np.zeros((len(points), 3), dtype=np.float32)
    Gathered({0: normal_basis(part, points, normals)}).write(moves.normals, leaning)
    across = carried(points + 100 * step[0]) - carried(points - 100 * step[0])
    along = carried(points + 100 * step[1]) - carried(points - 100 * step[1])
    expected = np.cross(along, across)
    expected /= np.linalg.norm(expected, axis=1, keepdims=True)
    expected *= np.where(normals[:, 1:2] > 0, 1.0, -1.0)
    unit = leaning / np.linalg.norm(leaning, axis=1, keepdims=True)
    assert np.abs(np.einsum("nk,nk->n", unit, expected) - 1).max() < 2e-4
    straight = normals @ part.axes
    assert np.abs(np.einsum("nk,nk->n", unit, straight) - 1).max() > 1e-3, "the board does cup"


def test_where_the_piece_stands_costs_no_precision():
    near, far = three(pose(0)), three(pose(0))
    object.__setattr__(far, "parts", tuple(_moved(part, 3e6) for part in far.parts))
    out = []
    for motion in (near, far):
        part = motion.parts[0]
        gathered = Gathered({0: point_basis(part, grid(part.size_mm)[0])})
        out.append(np.zeros((gathered.count, 3), dtype=np.float32))
        gathered.write(Carrier(motion).on(40, 5.0).points, out[-1])
    np.testing.assert_allclose(out[0], out[1], atol=1e-3)


def _moved(part, far):
    from dataclasses import replace

    return replace(part, centre=part.centre + far)


def test_the_factor_is_held_to_its_range_and_nothing_is_carried_of_nothing():
    motion = three()
    carrier = Carrier(motion)
    with pytest.raises(InputError, match="factor"):
        carrier.on(0, 1.01 * motion.most_factor)
    nothing = Gathered({})
    nothing.write(carrier.on(0).points, np.zeros((0, 3), dtype=np.float32))
    assert nothing.count == 0 and nothing.rows == {}
