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

SLICES_ACROSS, SLICES_ALONG = 4, 6  # four chords miss an arc by a sixteenth of its height
EDGE: Colour = (24, 20, 16)
DASHED, SOLID = 0xF0F0, 0xFFFF


class BentNode:
    """A field of vectors, (N, 3) at rest plus a field for each bend, worked out by the scene itself when it draws.

    Two bends are the mean of two interpolations, each of double its bend.
    """

    def __init__(self, field: Any, rest: Floats, fields: Sequence[Floats]) -> None:
        self.field, self.rest, self.fields = field, rest, list(fields)
        if not self.fields:
            field.setValues(0, len(rest), rest.tolist())
            return
        self.engines = [_interpolation(rest, len(self.fields) * each) for each in self.fields]
        self.alphas = [engine.alpha for engine in self.engines]
        self.last = self.engines[0]
        if len(self.engines) > 1:
            self.last = coin.SoInterpolateVec3f()
            self.last.input0.connectFrom(self.engines[0].output)
            self.last.input1.connectFrom(self.engines[1].output)
            self.last.alpha = 0.5
        field.connectFrom(self.last.output)

    def place(self, amounts: Sequence[float]) -> int:
        """Move the vectors; how many there are."""
        for alpha, amount in zip(self.alphas, amounts):
            alpha.setValue(amount)
        return len(self.rest)


def _interpolation(rest: Floats, field: Floats) -> Any:
    engine = coin.SoInterpolateVec3f()
    engine.input0.setValues(0, len(rest), rest.tolist())
    engine.input1.setValues(0, len(rest), (rest + field).tolist())
    return engine


class Bending:
    """The bends of a part as at most two that go their own ways through the year."""

    def __init__(self, bends: Sequence[Bend]) -> None:
        self.bends = tuple(bends)
        self.leads: list[int] = []
        shares: list[Floats] = []
        for index, bend in enumerate(self.bends):
            alike = [n for n, lead in enumerate(self.leads) if _alike(self.bends[lead].amount, bend.amount)]
            if not alike:
                alike = [len(self.leads)]
                self.leads.append(index)
                shares.append(np.zeros(len(self.bends)))
            shares[alike[0]][index] = _ratio(self.bends[self.leads[alike[0]]].amount, bend.amount)
        self.shares = shares

    def joined(self, fields: Sequence[Floats]) -> list[Floats]:
        """Fields of the bends, those that go together added up."""
        return [np.tensordot(share, np.array(fields), axes=1) for share in self.shares]

    def amounts(self, amounts: Floats) -> Floats:
        """What drives each of the joined fields."""
        return np.asarray(amounts[self.leads])


def _ratio(one: Floats, other: Floats) -> float:
    return float(one @ other / (one @ one))


def _alike(one: Floats, other: Floats) -> bool:
    return bool(np.abs(other - _ratio(one, other) * one).max() <= 1e-6 * max(np.abs(other).max(), 1e-12))


class Lines:
    """Polylines of a part's frame that bend with it; ``group`` holds coordinates and lines, without any style."""

    def __init__(self, lines: Sequence[Floats], bending: Bending, slices: dict[int, list[float]]) -> None:
        for axis, places in slices.items():
            lines = [cut_line(line, axis, places) for line in lines]
        points = np.concatenate(lines) if lines else np.zeros((0, 3))
        coordinates, drawn = coin.SoCoordinate3(), coin.SoLineSet()
        fields = bending.joined([bend.field(points) for bend in bending.bends])
        self.node = BentNode(coordinates.point, points, fields)
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
        bends, self.bending = motion.bends, Bending(motion.bends)
        self.slices = slices_of(motion)
        points, normals = (mesh.points - centre) @ axes.T, mesh.normals @ axes.T
        triangles = mesh.triangles
        for axis, places in self.slices.items():
            points, normals, triangles = cut_triangles(points, normals, triangles, axis, places)
        self.matrix, self.material = coin.SoMatrixTransform(), coin.SoMaterial()
        coordinates, lit = coin.SoCoordinate3(), coin.SoNormal()
        fields = self.bending.joined([bend.field(points) for bend in bends])
        turned = self.bending.joined([normals_field(bend, points, normals, motion.size_mm) for bend in bends])
        self.bent = [BentNode(coordinates.point, points, fields), BentNode(lit.vector, normals, turned)]
        self.edges = Lines([(edge - centre) @ axes.T for edge in mesh.edges], self.bending, self.slices)
        self.lines: list[Lines] = [self.edges]
        self.marks, self.pointed = coin.SoSwitch(), coin.SoSwitch()
        self.pointed.addChild(styled(self.edges.group, POINTED, 4.0))
        # In the order in which they are drawn; what all parts share stands above them in the scene.
        self.surface = _parts(self.matrix, self.material, coordinates, lit, _faces(triangles))
        self.outline = _parts(self.matrix, self.edges.group)
        self.over = _parts(self.matrix, self.pointed, self.marks)
        self.state: tuple[float, ...] = ()
        self.paint(colour)

    def draw_marks(self, marks: GrainMarks) -> None:
        """Add the rings and the arrow along the grain, which bend with the part."""
        for lines, width in ((marks.rings, 1.5), (marks.arrow, 2.5)):
            if lines:
                made = Lines(lines, self.bending, self.slices)
                self.lines.append(made)
                # The rim after the ink: at the same depth, what is drawn first stays.
                self.marks.addChild(styled(made.group, INK, width))
                self.marks.addChild(styled(made.group, PAPER, width + 2.0))
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
        """Switch the marks or what points at it on or off."""
        which.whichChild = coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE

    def place(self, matrix: Sequence[float], amounts: Floats, stretch: Floats) -> None:
        """Carry the part by a matrix (16 numbers, row by row) and bend it.

        Bends go through the thickness, so they are freed of the stretch of the thickness alone.
        """
        self.matrix.matrix.setValue(*matrix)
        if not len(amounts):
            return
        own = self.bending.amounts(amounts)
        bent, turned = (own / stretch[1]).tolist(), own.tolist()
        state = (*bent, *turned)
        if state == self.state:
            return
        self.state = state
        self.moved += self.bent[0].place(bent) + self.bent[1].place(turned)
        for lines in self.lines:
            self.moved += lines.node.place(bent)


class Ghost:
    """The outline of a part in one of its two extreme states."""

    def __init__(self, figure: Figure, dry: bool) -> None:
        self.root, self.matrix = coin.SoSeparator(), coin.SoMatrixTransform()
        rest = figure.edges.node
        coordinates, drawn = coin.SoCoordinate3(), coin.SoLineSet()
        self.node, self.bending = BentNode(coordinates.point, rest.rest, rest.fields), figure.bending
        counts = figure.edges.group.getChild(1).numVertices.getValues()
        drawn.numVertices.setValues(0, len(counts), list(counts))
        group = coin.SoGroup()
        group.addChild(coordinates)
        group.addChild(drawn)
        self.root.addChild(self.matrix)
        self.root.addChild(styled(group, DRY if dry else WET, 1.5, DASHED if dry else SOLID))

    def place(self, matrix: Sequence[float], amounts: Floats, stretch: Floats) -> None:
        self.matrix.matrix.setValue(*matrix)
        if len(amounts):
            self.node.place((self.bending.amounts(amounts) / stretch[1]).tolist())


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


def _faces(triangles: NDArray[np.int64]) -> Any:
    faces = coin.SoIndexedFaceSet()
    index = np.column_stack([triangles, np.full(len(triangles), -1)]).reshape(-1).tolist()
    faces.coordIndex.setValues(0, len(index), index)
    return faces


def _parts(*nodes: Any) -> Any:
    group = coin.SoSeparator()
    for node in nodes:
        group.addChild(node)
    return group


def surfaces() -> Any:
    """What the surfaces of all figures stand below."""
    hints, offset, binding = coin.SoShapeHints(), coin.SoPolygonOffset(), coin.SoNormalBinding()
    hints.vertexOrdering = coin.SoShapeHints.COUNTERCLOCKWISE
    hints.shapeType = coin.SoShapeHints.UNKNOWN_SHAPE_TYPE
    binding.value = coin.SoNormalBinding.PER_VERTEX_INDEXED
    return _parts(hints, offset, binding)


def outlines() -> Any:
    """What the edges of all figures stand below."""
    return styled(coin.SoGroup(), EDGE, 1.0)


def styled(group: Any, colour: Colour, width: float, pattern: int = SOLID) -> Any:
    """Lines of one colour, whatever the light."""
    flat, paint, style = coin.SoLightModel(), coin.SoBaseColor(), coin.SoDrawStyle()
    flat.model = coin.SoLightModel.BASE_COLOR
    paint.rgb.setValue(*fraction(colour))
    style.lineWidth, style.linePattern = width, pattern
    styled = coin.SoSeparator()
    for node in (flat, paint, style, group):
        styled.addChild(node)
    return styled
