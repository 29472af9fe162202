"""What stands in for one part while the year runs: a mesh made once, a matrix for its swelling, moved vertices where
it bends. Scene nodes of ours only; nothing here knows the document.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray
from pivy import coin

from movement_core.sheet.bending import Bend, normals_field
from movement_core.sheet.cutting import cut_line, cut_triangles, even_places
from movement_core.sheet.grain_marks import GrainMarks
from movement_core.sheet.motion import PartMotion
from workbench_pkg.panels.palette import INK, PAPER, Colour, fraction
from workbench_pkg.panels.season_colours import DRY, POINTED, UNTOLD, WET
from workbench_pkg.views.season_mesh import LeafMesh

Floats = NDArray[np.float64]

SLICES_ACROSS, SLICES_ALONG = 10, 8
EDGE: Colour = (24, 20, 16)
DASHED, SOLID = 0xF0F0, 0xFFFF


class BentNode:
    """A node of vectors, (N, 3) at rest plus a field for each bend."""

    def __init__(self, field: Any, rest: Floats, fields: Floats | Sequence[Floats]) -> None:
        self.field, self.rest, self.fields = field, rest, np.array(fields).reshape(-1, *rest.shape)
        self.field.setValues(0, len(rest), rest.tolist())

    def place(self, amounts: Floats, stretch: Floats) -> int:
        """Move the vectors; how many there are."""
        moved = self.rest + np.tensordot(amounts, self.fields, axes=1) / stretch
        self.field.setValues(0, len(moved), moved.tolist())
        return len(moved)


class Lines:
    """Polylines of a part's frame that bend with it; ``group`` holds coordinates and lines, without any style."""

    def __init__(
        self, lines: Sequence[Floats], bends: Sequence[Bend], slices: dict[int, list[float]]
    ) -> None:
        for axis, places in slices.items():
            lines = [cut_line(line, axis, places) for line in lines]
        points = np.concatenate(lines) if lines else np.zeros((0, 3))
        coordinates, drawn = coin.SoCoordinate3(), coin.SoLineSet()
        self.node = BentNode(coordinates.point, points, [bend.field(points) for bend in bends])
        counts = [len(line) for line in lines]
        drawn.numVertices.setValues(0, len(counts), counts)
        self.group = coin.SoGroup()
        self.group.addChild(coordinates)
        self.group.addChild(drawn)


class Figure:
    """One part. ``moved`` counts how many vectors were moved since it was made."""

    def __init__(self, motion: PartMotion, mesh: LeafMesh, colour: tuple[float, float, float]) -> None:
        self.motion, self.colour, self.moved = motion, colour, 0
        axes, centre = motion.axes, motion.centre
        bends = motion.bends
        self.slices = slices_of(motion)
        points, normals = (mesh.points - centre) @ axes.T, mesh.normals @ axes.T
        triangles = mesh.triangles
        for axis, places in self.slices.items():
            points, normals, triangles = cut_triangles(points, normals, triangles, axis, places)
        self.root = coin.SoSeparator()
        self.matrix = coin.SoMatrixTransform()
        self.surface, self.material = coin.SoSwitch(), coin.SoMaterial()
        self.surface.whichChild = coin.SO_SWITCH_ALL
        coordinates, lit = coin.SoCoordinate3(), coin.SoNormal()
        fields = [bend.field(points) for bend in bends]
        turned = [normals_field(bend, points, normals, motion.size_mm) for bend in bends]
        self.bent = [BentNode(coordinates.point, points, fields), BentNode(lit.vector, normals, turned)]
        self.surface.addChild(_surface(self.material, coordinates, lit, triangles))
        self.edges = Lines([(edge - centre) @ axes.T for edge in mesh.edges], bends, self.slices)
        self.outline = _styled(self.edges.group, EDGE, 1.0)
        self.surface.addChild(self.outline)
        self.lines: list[Lines] = [self.edges]
        self.marks, self.pointed = coin.SoSwitch(), coin.SoSwitch()
        self.pointed.addChild(_styled(self.edges.group, POINTED, 4.0))
        for node in (self.matrix, self.pointed, self.surface, self.marks):
            self.root.addChild(node)
        self.state: tuple[float, ...] = ()
        self.paint(colour)

    def draw_marks(self, marks: GrainMarks) -> None:
        """Add the rings and the arrow along the grain, which bend with the part."""
        for lines, width in ((marks.rings, 1.5), (marks.arrow, 2.5)):
            if lines:
                made = Lines(lines, self.motion.bends, self.slices)
                self.lines.append(made)
                # The rim after the ink: at the same depth, what is drawn first stays.
                self.marks.addChild(_styled(made.group, INK, width))
                self.marks.addChild(_styled(made.group, PAPER, width + 2.0))
        self.state = ()

    def paint(self, colour: tuple[float, float, float], see_through: float = 0.0, glow: float = 0.0) -> None:
        """glow : share of the colour that shows whatever the light, so that it can be read off a legend."""
        self.material.diffuseColor.setValue(*((1 - glow) * channel for channel in colour))
        self.material.emissiveColor.setValue(*(glow * channel for channel in colour))
        self.material.transparency.setValue(see_through)

    def own_colour(self) -> None:
        self.paint(self.colour)

    def untold_colour(self) -> None:
        red, green, blue = fraction(UNTOLD)
        self.paint((red, green, blue), 0.6)

    def show(self, which: Any, on: bool) -> None:
        """Switch the surface, the marks or what points at it on or off."""
        which.whichChild = coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE

    def place(self, matrix: Sequence[float], amounts: Floats, stretch: Floats) -> None:
        """Carry the part by a matrix (16 numbers, row by row) and bend it."""
        self.matrix.matrix.setValue(*matrix)
        if not len(amounts):
            return
        state = (*amounts.tolist(), *stretch.tolist())
        if state == self.state:
            return
        self.state = state
        still = np.ones(3)
        self.moved += self.bent[0].place(amounts, stretch) + self.bent[1].place(amounts, still)
        for lines in self.lines:
            self.moved += lines.node.place(amounts, stretch)


class Ghost:
    """The outline of a part in one of its two extreme states."""

    def __init__(self, figure: Figure, dry: bool) -> None:
        self.root, self.matrix = coin.SoSeparator(), coin.SoMatrixTransform()
        rest = figure.edges.node
        coordinates, drawn = coin.SoCoordinate3(), coin.SoLineSet()
        self.node = BentNode(coordinates.point, rest.rest, rest.fields)
        counts = figure.edges.group.getChild(1).numVertices.getValues()
        drawn.numVertices.setValues(0, len(counts), list(counts))
        group = coin.SoGroup()
        group.addChild(coordinates)
        group.addChild(drawn)
        self.root.addChild(self.matrix)
        self.root.addChild(_styled(group, DRY if dry else WET, 2.0, DASHED if dry else SOLID))

    def place(self, matrix: Sequence[float], amounts: Floats, stretch: Floats) -> None:
        self.matrix.matrix.setValue(*matrix)
        if len(amounts):
            self.node.place(amounts, stretch)


def slices_of(motion: PartMotion) -> dict[int, list[float]]:
    """Where a part must be cut so that it can bend: planes by the axis that they stand across."""
    kinds = {type(bend).__name__ for bend in motion.bends}
    found = {}
    if kinds - {"TwistBend"}:
        found[0] = even_places(float(motion.size_mm[0]), SLICES_ACROSS)
    if "TwistBend" in kinds:
        found[0] = even_places(float(motion.size_mm[0]), SLICES_ACROSS)
        found[2] = even_places(float(motion.size_mm[2]), SLICES_ALONG)
    return found


def _surface(material: Any, coordinates: Any, lit: Any, triangles: NDArray[np.int64]) -> Any:
    hints, offset, binding = coin.SoShapeHints(), coin.SoPolygonOffset(), coin.SoNormalBinding()
    hints.vertexOrdering = coin.SoShapeHints.COUNTERCLOCKWISE
    hints.shapeType = coin.SoShapeHints.UNKNOWN_SHAPE_TYPE
    binding.value = coin.SoNormalBinding.PER_VERTEX_INDEXED
    faces = coin.SoIndexedFaceSet()
    index = np.column_stack([triangles, np.full(len(triangles), -1)]).reshape(-1).tolist()
    faces.coordIndex.setValues(0, len(index), index)
    group = coin.SoSeparator()
    for node in (hints, offset, material, coordinates, lit, binding, faces):
        group.addChild(node)
    return group


def _styled(group: Any, colour: Colour, width: float, pattern: int = SOLID) -> Any:
    flat, paint, style = coin.SoLightModel(), coin.SoBaseColor(), coin.SoDrawStyle()
    flat.model = coin.SoLightModel.BASE_COLOR
    paint.rgb.setValue(*fraction(colour))
    style.lineWidth, style.linePattern = width, pattern
    styled = coin.SoSeparator()
    for node in (flat, paint, style, group):
        styled.addChild(node)
    return styled
