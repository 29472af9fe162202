"""Points of many parts carried through the year together: every part's bends and its matrix as one product.

Where a point goes is linear in what its part does on a day: a row of numbers of the point, its *basis*, times a few
rows of the part, its *move*. Bases are worked out once; a day costs one small product a part.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.sheet.bending import Floats, normals_field
from movement_core.sheet.motion import PartMotion, PieceMotion

Single = NDArray[np.float32]  # what is drawn is of single precision


@dataclass(frozen=True, eq=False)
class Moves:
    """What all parts do on one day. P parts.

    matrices : (P, 4, 4) of the parts. points, normals : (P, R, 3), to be multiplied with bases.
    """

    matrices: Floats
    points: Single
    normals: Single


class Carrier:
    """The moves of a piece. ``origin`` (3,) : what is carried is told from there, so that single precision is enough
    wherever the piece stands.
    """

    def __init__(self, motion: PieceMotion) -> None:
        self.motion = motion
        centres = np.array([part.centre for part in motion.parts]).reshape(-1, 3)
        self.origin = centres.mean(axis=0) if len(centres) else np.zeros(3)
        most = max((len(part.bends) for part in motion.parts), default=0)
        self._amounts = np.zeros((len(motion.parts), most, motion.strain.shape[1]))
        for amounts, part in zip(self._amounts, motion.parts):
            for row, bend in enumerate(part.bends):
                amounts[row] = bend.amount

    def on(self, day: int, factor: float = 1.0) -> Moves:
        """The moves of a day, magnified. Raises InputError where the factor is out of range."""
        matrices = self.motion.matrices(day, factor)
        own, place = matrices[:, :3, :3], matrices[:, None, 3, :3] - self.origin
        amounts = factor * self._amounts[:, :, day, None, None]
        stretch = 1 + factor * self.motion.strain[:, day, :, None]
        upright = np.linalg.inv(own).transpose(0, 2, 1)  # what keeps normals upright
        count = len(matrices)
        bent = (amounts * (own / stretch)[:, None]).reshape(count, -1, 3)
        leaning = (amounts * upright[:, None]).reshape(count, -1, 3)
        return Moves(
            matrices,
            np.concatenate([place, own, bent], axis=1).astype(np.float32),
            np.concatenate([upright, leaning], axis=1).astype(np.float32),
        )


def point_basis(part: PartMotion, points_mm: Floats) -> Single:
    """(N, 4 + 3 × bends) of points (N, 3) of the part's frame."""
    fields = [bend.field(points_mm) for bend in part.bends]
    return np.column_stack([np.ones(len(points_mm)), points_mm, *fields]).astype(np.float32)


def normal_basis(part: PartMotion, points_mm: Floats, normals: Floats) -> Single:
    """(N, 3 + 3 × bends) of unit normals (N, 3) at points (N, 3) of the part's frame."""
    changes = [normals_field(bend, points_mm, normals, part.size_mm) for bend in part.bends]
    return np.column_stack([normals, *changes]).astype(np.float32)


class Gathered:
    """Bases of several parts one below the other. ``count`` : vectors in all; ``rows`` : part → its slice of them."""

    def __init__(self, bases: Mapping[int, Single]) -> None:
        self.rows: dict[int, slice] = {}
        self.count = 0
        for index, basis in bases.items():
            self.rows[index] = slice(self.count, self.count + len(basis))
            self.count += len(basis)
        self._work = [(index, basis, self.rows[index], basis.shape[1]) for index, basis in bases.items()]

    def write(self, moves: Single, out: Single) -> None:
        """Work out all vectors into ``out`` (count, 3). ``moves`` : of the points or of the normals of all parts."""
        for index, basis, rows, width in self._work:
            np.dot(basis, moves[index, :width], out=out[rows])
