"""Extents, volumes, faces and edges of leaf solids against figures worked out by hand."""

from __future__ import annotations

import math

import numpy as np
import Part
import pytest
from bench import V, at, box, link

from movement_core.piece.contact.bodies import CHORD_MM
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.shapes import extents, outline, volume

TILT = at(100, -50, 30, (1, 2, 3), 40)


def frame(placement):
    """Rows: the turned x, y, z axes."""
    return np.array([tuple(placement.Rotation.multVec(V(*row))) for row in np.eye(3)])


def feature(doc, name, shape, placement=None):
    made = doc.addObject("Part::Feature", name)
    made.Shape = shape
    if placement is not None:
        made.Placement = placement
    return made


def only_leaf(doc):
    doc.recompute()
    (leaf,) = read_leaves(doc).leaves
    return leaf


def check(leaf, axes, centre, lengths, tolerance=1e-6):
    got_centre, got_lengths = extents(leaf, axes)
    assert got_lengths == pytest.approx(lengths, abs=tolerance)
    assert got_centre == pytest.approx(centre, abs=tolerance)


def test_turned_board(doc):
    box(doc, "Board", placement=TILT)
    leaf = only_leaf(doc)
    middle = TILT.multVec(V(200, 50, 10))
    check(leaf, frame(TILT), tuple(middle), (400, 100, 20), 1e-9)
    # along the global axes: |R| · size
    check(leaf, np.eye(3), tuple(middle), np.abs(frame(TILT)).T @ (400, 100, 20), 1e-9)


def test_axes_may_be_left_handed_or_in_any_order(doc):
    feature(doc, "Post", Part.makeCylinder(20, 300), TILT)
    leaf = only_leaf(doc)
    middle = tuple(TILT.multVec(V(0, 0, 150)))
    axes = frame(TILT)
    check(leaf, axes[[2, 0, 1]], middle, (300, 40, 40))
    check(leaf, axes[[1, 0, 2]], middle, (40, 40, 300))
    check(leaf, -axes, middle, (40, 40, 300))


def test_axes_must_be_orthonormal(doc):
    box(doc, "Board")
    leaf = only_leaf(doc)
    with pytest.raises(ValueError, match="orthonormal"):
        extents(leaf, np.eye(3) * 2)


def tapered_leg(size=60.0, foot=30.0, length=700.0):
    """Square at the top, tapered on two sides to `foot`, centred on nothing: the corner runs straight down."""
    top = Part.makePolygon([V(0, 0, 0), V(size, 0, 0), V(size, size, 0), V(0, size, 0), V(0, 0, 0)])
    end = [V(0, 0, -length), V(foot, 0, -length), V(foot, foot, -length), V(0, foot, -length)]
    return Part.makeLoft([top, Part.makePolygon([*end, end[0]])], True, True)


def test_tapered_leg(doc):
    feature(doc, "Leg", tapered_leg(), TILT)
    leaf = only_leaf(doc)
    check(leaf, frame(TILT), tuple(TILT.multVec(V(30, 30, -350))), (60, 60, 700))
    # frustum: h / 3 · (A + B + √(A·B))
    assert volume(leaf) == pytest.approx(700 / 3 * (3600 + 900 + 1800), rel=1e-6)


def test_round_top(doc):
    feature(doc, "Top", Part.makeCylinder(450, 25), at(0, 0, 700, (0, 1, 0), 15))
    leaf = only_leaf(doc)
    s, c = math.sin(math.radians(15)), math.cos(math.radians(15))
    # A disc tilted by 15° about y: 2 r cos + h sin wide, 2 r deep, 2 r sin + h cos high.
    expected = (900 * c + 25 * s, 900, 900 * s + 25 * c)
    check(leaf, np.eye(3), (12.5 * s, 0, 700 + 12.5 * c), expected)


def test_torus_and_sphere_are_exact_where_the_bound_box_is_not(doc):
    feature(doc, "Ring", Part.makeTorus(100, 30), TILT)
    leaf = only_leaf(doc)
    check(leaf, frame(TILT), tuple(TILT.Base), (260, 260, 60))
    assert volume(leaf) == pytest.approx(2 * math.pi**2 * 100 * 30**2)


def curved_board():
    """A B-spline arch: half a sine-like hump of three poles, pole height 100, so a crown of 50, 80 deep."""
    curve = Part.BezierCurve()
    curve.setPoles([V(0, 0, 0), V(300, 0, 100), V(600, 0, 0)])
    arch = curve.toBSpline().toShape()
    face = Part.Face(Part.Wire([arch, Part.makeLine(V(600, 0, 0), V(0, 0, 0))]))
    return face.extrude(V(0, 80, 0))


def test_b_spline_board(doc):
    feature(doc, "Arch", curved_board(), TILT)
    leaf = only_leaf(doc)
    # A parabola with its middle pole at 100 rises to 50; its area is 2/3 of base times height.
    check(leaf, frame(TILT), tuple(TILT.multVec(V(300, 40, 25))), (600, 80, 50))
    assert volume(leaf) == pytest.approx(2 / 3 * 600 * 50 * 80)


def test_extents_do_not_change_after_a_tessellation(doc):
    made = feature(doc, "Ring", Part.makeTorus(100, 30))
    leaf = only_leaf(doc)
    made.Shape.tessellate(5)
    leaf.solid.tessellate(5)
    check(leaf, np.eye(3), (0, 0, 0), (260, 260, 60))


def test_outline_does_not_tessellate_the_users_shape(doc):
    made = feature(doc, "Ring", Part.makeTorus(100, 30))
    leaf = only_leaf(doc)
    before = made.Shape.BoundBox.XLength
    outline(leaf)
    assert made.Shape.BoundBox.XLength == before


def test_outline_of_a_turned_board(doc):
    box(doc, "Board", placement=TILT)
    found = outline(only_leaf(doc))
    assert found.own_axes == pytest.approx(frame(TILT))
    assert len(found.points) == 8
    local = (found.points - np.array(tuple(TILT.Base))) @ frame(TILT).T
    assert {tuple(p) for p in np.round(local, 6) + 0.0} == {
        (x, y, z) for x in (0, 400) for y in (0, 100) for z in (0, 20)
    }
    assert sorted(found.face_areas) == pytest.approx([2000, 2000, 8000, 8000, 40000, 40000])
    outward = ((found.face_normals @ frame(TILT).T) * found.face_areas[:, None]).sum(axis=0)
    assert outward == pytest.approx((0, 0, 0), abs=1e-6)
    show = found.face_normals[np.argmax(found.face_normals @ frame(TILT)[2])]
    assert show == pytest.approx(frame(TILT)[2])
    assert sorted(found.edge_lengths) == pytest.approx([20] * 4 + [100] * 4 + [400] * 4)
    assert np.linalg.norm(found.edge_directions, axis=1) == pytest.approx(np.ones(12))
    assert found.volume_mm3 == pytest.approx(800000)


def test_normals_point_outward_on_every_planar_face(doc):
    feature(doc, "Notched", Part.makeBox(100, 50, 20).cut(Part.makeBox(30, 50, 10)), TILT)
    leaf = only_leaf(doc)
    found = outline(leaf)
    solid = leaf.global_solid()
    planar = [face for face in solid.Faces if isinstance(face.Surface, Part.Plane)]
    assert len(found.face_normals) == len(planar) == 8
    for face, normal in zip(planar, found.face_normals):
        outside = face.CenterOfMass + V(*normal) * 0.01
        assert not solid.isInside(outside, 1e-4, False)
        assert solid.isInside(face.CenterOfMass - V(*normal) * 0.01, 1e-4, False)


def test_outline_of_a_curved_board_has_points_on_the_curve_only_within_the_chord(doc):
    feature(doc, "Arch", curved_board())
    found = outline(only_leaf(doc))
    assert len(found.points) > 8
    assert 50 - CHORD_MM <= found.points[:, 2].max() <= 50 + 1e-9
    assert len(found.face_areas) == 3  # two ends of the extrusion and the flat under-side
    assert sorted(found.edge_lengths) == pytest.approx([80, 80, 600, 600])


def test_holes_add_no_points_but_round_edges_do(doc):
    plain = Part.makeBox(400, 100, 20)
    drilled = plain.cut(Part.makeCylinder(10, 20, V(100, 50, 0)))
    countersunk = drilled.cut(Part.makeCone(10, 15, 5, V(300, 50, 15)))
    feature(doc, "Drilled", countersunk.Solids[0], TILT)
    found = outline(only_leaf(doc))
    local = (found.points - np.array(tuple(TILT.Base))) @ frame(TILT).T
    # the corners, and the vertices that the host puts on closed edges
    assert len(local) < 8 + 5
    doc.removeObject("Drilled")
    long_edges = [e for e in plain.Edges if abs(e.Length - 400) < 1e-6]
    feature(doc, "Rounded", plain.makeFillet(5, long_edges), TILT)
    assert len(outline(only_leaf(doc)).points) > 30


def test_planes_written_as_b_splines_count_as_planar(doc):
    import FreeCAD as App

    matrix = App.Matrix()
    matrix.scale(1, 1.25, 1)  # the host turns every surface into a B-spline
    feature(doc, "Board", Part.makeBox(400, 80, 20).transformGeometry(matrix).Solids[0], TILT)
    leaf = only_leaf(doc)
    assert not isinstance(leaf.solid.Faces[0].Surface, Part.Plane)
    found = outline(leaf)
    assert sorted(found.face_areas) == pytest.approx([2000, 2000, 8000, 8000, 40000, 40000])
    assert len(found.points) == 8 and len(found.edge_lengths) == 12
    check(leaf, frame(TILT), tuple(TILT.multVec(V(200, 50, 10))), (400, 100, 20), 1e-7)


@pytest.mark.parametrize("scale", [(1, 2, 1), (-1, 1, 1), (0.5, 0.5, 0.5), (-2, 3, 0.5)])
def test_scaled_and_mirrored_links(doc, scale):
    import FreeCAD as App

    board = box(doc, "Board", placement=at(0, 0, 0, (0, 0, 1), 0))
    board.Visibility = False
    link(doc, "Copy", board, App.Placement(TILT), ScaleVector=V(*scale))
    leaf = only_leaf(doc)
    size = np.abs(scale) * (400, 100, 20)
    middle = tuple(TILT.multVec(V(*(np.array(scale) * (200, 50, 10)))))
    check(leaf, frame(TILT), middle, size, 1e-9)
    found = outline(leaf)
    assert volume(leaf) == found.volume_mm3 == pytest.approx(np.prod(size))
    assert sorted(found.face_areas) == pytest.approx(
        sorted([size[0] * size[1], size[0] * size[2], size[1] * size[2]] * 2)
    )
    assert np.abs(found.own_axes @ frame(TILT).T) == pytest.approx(np.eye(3), abs=1e-9)
    assert np.sign(np.diag(found.own_axes @ frame(TILT).T)) == pytest.approx(np.sign(scale))
    # outward all the same: every normal leads away from the middle
    for normal in found.face_normals:
        assert (found.points @ normal).max() - np.array(middle) @ normal == pytest.approx(
            np.abs(frame(TILT) @ normal) @ size / 2
        )
        assert normal @ normal == pytest.approx(1)


def test_sheared_link_to_a_turned_curved_part(doc):
    """A link that stretches a turned part: the figures are those of the sheared ellipse-like solid itself."""
    post = feature(doc, "Post", Part.makeCylinder(20, 300), at(0, 0, 0, (0, 1, 0), 30))
    post.Visibility = False
    link(doc, "Copy", post, LinkTransform=True, ScaleVector=V(2, 1, 1))
    leaf = only_leaf(doc)
    s, c = math.sin(math.radians(30)), math.cos(math.radians(30))
    # Unscaled, turned 30° about y: x from −20 c to 300 s + 20 c, y ±20, z from −20 s to 300 c + 20 s; x then doubles.
    lengths = (2 * (300 * s + 40 * c), 40, 300 * c + 40 * s)
    centre = (300 * s, 0, 150 * c)
    check(leaf, np.eye(3), centre, lengths)
    assert volume(leaf) == pytest.approx(2 * math.pi * 400 * 300)
    found = outline(leaf)
    caps = np.sort(found.face_areas)
    # An end disc of normal (s, 0, c) under diag(2, 1, 1): area · |cof · n| = π r² · √(s² + 4 c²)
    assert caps == pytest.approx([math.pi * 400 * math.hypot(s, 2 * c)] * 2)
    assert found.own_axes[2] == pytest.approx(np.array([2 * s, 0, c]) / math.hypot(2 * s, c))


def test_an_inside_out_solid_is_read_like_any_other(doc):
    shape = Part.makeBox(400, 100, 20)
    shape.reverse()
    feature(doc, "Board", shape)
    leaf = only_leaf(doc)
    found = outline(leaf)
    assert found.volume_mm3 == pytest.approx(800000)
    top = found.face_normals[:, 2] > 0.5
    assert (found.points @ found.face_normals[top][0]).max() == pytest.approx(20)
    assert extents(leaf, np.eye(3))[1] == pytest.approx((400, 100, 20))
