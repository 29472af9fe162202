"""From the document's frame to pixels of a 3D view and back."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Screen:
    """A view at one moment: 4×4 matrix from row vectors to clip space, its inverse, and its size in pixels."""

    matrix: Floats
    inverse: Floats
    size: tuple[int, int]

    def pixels(self, points: Floats) -> tuple[Floats, Floats]:
        """(N, 2) pixels with y upwards and (N,) depths of (N, 3) points; behind the eye the depth is over 1."""
        clip = np.column_stack([points, np.ones(len(points))]) @ self.matrix
        behind = clip[:, 3] <= 1e-12
        w = np.where(behind, 1.0, clip[:, 3])
        ndc = clip[:, :3] / w[:, None]
        depth = np.where(behind, 2.0, ndc[:, 2])
        return (ndc[:, :2] + 1.0) / 2.0 * np.asarray(self.size, dtype=float), depth

    def points(self, pixels: Floats, depths: Floats) -> Floats:
        """(N, 3) points of the document that lie at these pixels and depths."""
        ndc = pixels / np.asarray(self.size, dtype=float) * 2.0 - 1.0
        world = np.column_stack([ndc, depths, np.ones(len(pixels))]) @ self.inverse
        return np.asarray(world[:, :3] / world[:, 3:], dtype=float)


def screen_of(view: Any) -> Screen | None:
    """What the view shows now; None while it has no size yet."""
    width, height = (int(v) for v in view.getSize())
    if width < 2 or height < 2:
        return None
    aspect = width / height
    volume = view.getCameraNode().getViewVolume(aspect)
    if aspect < 1.0:  # a tall view shows more, not less
        volume.scale(1.0 / aspect)
    matrix = np.array([list(row) for row in volume.getMatrix().getValue()], dtype=float)
    try:
        inverse = np.linalg.inv(matrix)
    except np.linalg.LinAlgError:
        return None
    return Screen(matrix, inverse, (width, height))


def camera_pose(camera: Any) -> tuple[Any, ...]:
    """Where a camera stands and what it takes in, without its clipping planes."""
    opening = camera.height if hasattr(camera, "height") else camera.heightAngle
    return (
        tuple(camera.position.getValue().getValue()),
        tuple(camera.orientation.getValue().getValue()),
        float(opening.getValue()),
    )
