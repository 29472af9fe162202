"""What stands in for the parts while the year runs: meshes made once, a matrix for a part that only swells, moved
vertices where it bends. Scene nodes of ours only; nothing here knows the document.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray
from pivy import coin

from movement_core.sheet.carried import Carrier, Gathered, Moves, Single, normal_basis, point_basis
from movement_core.sheet.cutting import cut_triangles, even_places
from movement_core.sheet.motion import PartMotion
from workbench_pkg.panels.palette import fraction
from workbench_pkg.panels.season_colours import UNTOLD
from workbench_pkg.views.season_lines import Vectors, shift_to
from workbench_pkg.views.season_mesh import LeafMesh

Floats = NDArray[np.float64]
Colouring = tuple[float, float, float]

SLICES_ACROSS, SLICES_ALONG = 4, 6  # four chords miss an arc by a sixteenth of its height


class Figure:
    """One part: its colour, and the matrix that carries what does not bend with it."""

    def __init__(self, motion: PartMotion, colour: Colouring) -> None:
        self.motion, self.colour = motion, colour
        self.matrix, self.material = coin.SoMatrixTransform(), coin.SoMaterial()
        self.surface = coin.SoSeparator()
        self.slices = slices_of(motion)
        self.carries = not motion.bends  # whether anything is drawn by the matrix
        self.paint(colour)

    def paint(self, colour: Colouring, see_through: float = 0.0, glow: float = 0.0) -> None:
        """glow : share of the colour that shows whatever the light, so that it can be read off a legend."""
        self.material.diffuseColor.setValue(*((1 - glow) * channel for channel in colour))
        self.material.emissiveColor.setValue(*(glow * channel for channel in colour))
        self.material.transparency.setValue(see_through)

    def own_colour(self) -> None:
        self.paint(self.colour)

    def untold_colour(self) -> None:
        red, green, blue = fraction(UNTOLD)
        self.paint((red, green, blue), 0.6)

    def place(self, matrix: Sequence[float]) -> None:
        """Carry what the matrix carries (16 numbers, row by row)."""
        self.matrix.matrix.setValue(*matrix)


class Surfaces:
    """The surfaces of all figures. What bends shares its vertices, which are moved all at once; what only swells has
    its own, which the scene can keep, and a matrix.
    """

    def __init__(self, carrier: Carrier) -> None:
        self.carrier = carrier
        self.root, self.stiff, self.bent = (coin.SoSeparator() for _ in range(3))
        hints, offset, binding = coin.SoShapeHints(), coin.SoPolygonOffset(), coin.SoNormalBinding()
        hints.vertexOrdering = coin.SoShapeHints.COUNTERCLOCKWISE
        hints.shapeType = coin.SoShapeHints.UNKNOWN_SHAPE_TYPE
        binding.value = coin.SoNormalBinding.PER_VERTEX_INDEXED
        coordinates, lit = coin.SoCoordinate3(), coin.SoNormal()
        for node in (hints, offset, binding, self.stiff, self.bent):
            self.root.addChild(node)
        for node in (shift_to(carrier.origin), coordinates, lit):
            self.bent.addChild(node)
        self._fields = coordinates.point, lit.vector
        self._bases: tuple[dict[int, Single], dict[int, Single]] = {}, {}
        self._count = 0
        self.points: Vectors | None = None
        self.normals: Vectors | None = None

    def add(self, index: int, figure: Figure, mesh: LeafMesh) -> None:
        """Draw a figure, whose index in the motion this is. Before ``made``."""
        motion = figure.motion
        points, normals = (mesh.points - motion.centre) @ motion.axes.T, mesh.normals @ motion.axes.T
        triangles = mesh.triangles
        for axis, places in figure.slices.items():
            points, normals, triangles = cut_triangles(points, normals, triangles, axis, places)
        if motion.bends:
            self._bases[0][index] = point_basis(motion, points)
            self._bases[1][index] = normal_basis(motion, points, normals)
            nodes = [figure.material, _faces(triangles + self._count)]
            self._count += len(points)
        else:
            coordinates, lit = coin.SoCoordinate3(), coin.SoNormal()
            coordinates.point.setValues(0, len(points), points.tolist())
            lit.vector.setValues(0, len(normals), normals.tolist())
            nodes = [figure.matrix, figure.material, coordinates, lit, _faces(triangles)]
        for node in nodes:
            figure.surface.addChild(node)
        self._group(figure).addChild(figure.surface)

    def made(self) -> None:
        """All figures are there."""
        self.points, self.normals = (
            Vectors(field, Gathered(bases)) for field, bases in zip(self._fields, self._bases)
        )

    def drop(self, figure: Figure) -> None:
        self._group(figure).removeChild(figure.surface)

    def _group(self, figure: Figure) -> Any:
        return self.bent if figure.motion.bends else self.stiff

    def move(self, moves: Moves) -> int:
        """Move what bends; how many vectors that are."""
        if self.points is None or self.normals is None:
            return 0
        return self.points.move(moves.points) + self.normals.move(moves.normals)


def slices_of(motion: PartMotion) -> dict[int, list[float]]:
    """Where a part must be cut so that it can bend: planes by the axis that they stand across."""
    found = {}
    if motion.bends:
        found[0] = even_places(float(motion.size_mm[0]), SLICES_ACROSS)
    if any(type(bend).__name__ == "TwistBend" for bend in motion.bends):
        found[2] = even_places(float(motion.size_mm[2]), SLICES_ALONG)
    return found


def _faces(triangles: NDArray[np.int64]) -> Any:
    faces = coin.SoIndexedFaceSet()
    index = np.column_stack([triangles, np.full(len(triangles), -1)]).reshape(-1).tolist()
    faces.coordIndex.setValues(0, len(index), index)
    return faces
