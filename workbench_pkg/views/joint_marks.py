"""Shows in the 3D view where joints meet and where parts are held: nodes of the scene, nothing in the document."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from pivy import coin

from movement_core.piece.contact.joints import Joint
from movement_core.piece.part import Part
from workbench_pkg.host.density import pixel_ratio
from workbench_pkg.panels.palette import INK, PAPER, RANKS, Colour, fraction
from workbench_pkg.views.overlay import through_everything
from workbench_pkg.views.zooming import views_of, zoom_to

FACE, LINE = RANKS[1], RANKS[2]


class JointMarks:
    """Drawn over the model of one document until ``close``."""

    def __init__(self, document: str) -> None:
        self.document = document
        self.root = coin.SoSeparator()
        self.root.setName("HeartsideJointMarks")
        self.graph: Any = None
        self.shown: tuple[Joint, ...] = ()
        self.lines = 0

    def show(self, joints: Sequence[Joint], held: Sequence[Part]) -> None:
        """Mark the faces of joints, and the fixed lines of parts, in place of what was marked before."""
        self.root.removeAllChildren()
        self.shown = tuple(joints)
        held = [part for part in held if part.fixed_mm is not None]
        self.lines = len(held)
        if not (joints or held):
            return
        self._attach()
        through_everything(self.root)
        light = coin.SoLightModel()
        light.model = coin.SoLightModel.BASE_COLOR
        self.root.addChild(light)
        for joint in joints:
            for face in joint.meeting.facing:
                self.root.addChild(_face([np.asarray(loop) for loop in face.outline]))
        for part in held:
            for points in _fixed_lines(part):
                self.root.addChild(_polyline(points, PAPER, 6.0))
                self.root.addChild(_polyline(points, LINE, 3.0))

    def zoom(self, parts: Sequence[Part]) -> None:
        """Bring parts close in the view."""
        points = [part.outline.points for part in parts if part.outline is not None]
        if points:
            every = np.concatenate(points)
            zoom_to(self.document, every.min(axis=0).tolist(), every.max(axis=0).tolist())

    def close(self) -> None:
        """Take it out of the view."""
        self.root.removeAllChildren()
        self.shown, self.lines = (), 0
        if self.graph is not None:
            if self.graph.findChild(self.root) >= 0:
                self.graph.removeChild(self.root)
            self.graph = None

    def _attach(self) -> None:
        if self.graph is None:
            views = views_of(self.document)
            if views:
                self.graph = views[0].getSceneGraph()
                self.graph.addChild(self.root)


def _fixed_lines(part: Part) -> list[np.ndarray]:
    """The line along both faces and round both ends of a part, (5, 3) mm."""
    frame = part.frame
    x = part.fixed_mm or 0.0
    y, z = frame.thickness_mm / 2 + 0.5, frame.length_mm / 2 + 0.5
    loop = np.array([(x, y, -z), (x, y, z), (x, -y, z), (x, -y, -z), (x, y, -z)])
    return [np.asarray(frame.centre + loop @ frame.axes)]


def _face(loops: list[np.ndarray]) -> Any:
    node = coin.SoSeparator()
    if len(loops) == 1:  # a face with holes is only outlined
        inside = coin.SoSeparator()
        material = coin.SoMaterial()
        material.diffuseColor.setValue(*fraction(FACE))
        material.transparency.setValue(0.45)
        hints = coin.SoShapeHints()
        hints.faceType = coin.SoShapeHints.UNKNOWN_FACE_TYPE
        hints.vertexOrdering = coin.SoShapeHints.UNKNOWN_ORDERING
        coordinates, face = coin.SoCoordinate3(), coin.SoFaceSet()
        coordinates.point.setValues(0, len(loops[0]), loops[0].tolist())
        face.numVertices.setValue(len(loops[0]))
        for part in (material, hints, coordinates, face):
            inside.addChild(part)
        node.addChild(inside)
    for loop in loops:
        closed = np.vstack([loop, loop[:1]])
        node.addChild(_polyline(closed, PAPER, 5.0))
        node.addChild(_polyline(closed, INK, 2.0))
    return node


def _polyline(points: np.ndarray, colour: Colour, width: float) -> Any:
    node = coin.SoSeparator()
    material, style = coin.SoBaseColor(), coin.SoDrawStyle()
    material.rgb.setValue(*fraction(colour))
    style.lineWidth.setValue(width * pixel_ratio())
    coordinates, line = coin.SoCoordinate3(), coin.SoLineSet()
    coordinates.point.setValues(0, len(points), points.tolist())
    line.numVertices.setValue(len(points))
    for part in (material, style, coordinates, line):
        node.addChild(part)
    return node
