"""Round faces without end: told with their number of facets, before they fill the memory."""

from __future__ import annotations

import resource

import FreeCAD
import Part
import pytest

from movement_core.errors import InputError
from movement_core.piece.contact.bodies import CHORD_MM
from workbench_pkg.actions.check import check_document
from workbench_pkg.host.meshing import MOST_FACETS, mesh_of

HUGE = 1e5  # mm


def cut_ball():
    ball = Part.makeSphere(HUGE)
    return ball.cut(Part.makeBox(HUGE, HUGE, HUGE, FreeCAD.Vector(0.1, 0.2, 0.3), FreeCAD.Vector(1, 2, 3)))


@pytest.mark.parametrize(
    "make", [lambda: Part.makeSphere(HUGE), lambda: Part.makeTorus(HUGE, HUGE / 10), cut_ball]
)
def test_a_face_that_would_take_too_many_is_refused_before_it_is_meshed(make):
    face = max(make().Faces, key=lambda face: face.Area)
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    with pytest.raises(
        InputError, match=r"round face.* facets\. Allowed: up to 250,000\. To do: check its units"
    ):
        mesh_of(face, CHORD_MM)
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before < 100_000  # kB


def test_the_largest_that_furniture_has_are_meshed():
    for shape in (Part.makeSphere(500), Part.makeTorus(1500, 30), Part.makeCylinder(5000, 40)):
        for face in shape.Faces:
            if not isinstance(face.Surface, Part.Plane):
                assert 10 < len(mesh_of(face, CHORD_MM)[1]) <= MOST_FACETS


def test_the_report_names_the_part_and_goes_on_with_the_others(doc):
    ball = doc.addObject("Part::Feature", "Ball")
    ball.Shape = Part.makeSphere(HUGE)
    board = doc.addObject("Part::Box", "Board")
    board.Length, board.Width, board.Height = 400, 100, 20
    board.Placement.Base = FreeCAD.Vector(2 * HUGE, 0, 0)
    doc.recompute()
    report = check_document(doc)
    (error,) = report["errors"]
    assert error["message"].startswith("Ball: a round face of it would take ")
    assert [part["name"] for part in report["parts"]] == ["Board"]


def test_balls_that_together_take_too_many_facets_are_told_and_the_others_are_checked(doc):
    ball = doc.addObject("Part::Sphere", "Ball")
    ball.Radius = 374
    for i in range(20):
        link = doc.addObject("App::Link", "Again")
        link.LinkedObject = ball
        link.Placement.Base = FreeCAD.Vector(0.1 * i, 0, 0)
    for name, height in (("Board", 0), ("Other", 20)):
        board = doc.addObject("Part::Box", name)
        board.Length, board.Width, board.Height = 400, 100, 20
        board.Placement.Base = FreeCAD.Vector(2000, 0, height)
    doc.recompute()
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    report = check_document(doc)
    (error,) = report["errors"]
    assert "and 13 more: the curved faces of the piece would take over 1,000,000 facets" in error["message"]
    assert len(report["parts"]) == 23
    assert any(set(joint["parts"]) == {"Board", "Other"} for joint in report["joints"])
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before < 700_000  # kB
