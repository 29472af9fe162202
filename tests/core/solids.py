"""Outlines of simple solids for the tests of the piece room, made without a host."""

from __future__ import annotations

import numpy as np

from movement_core.piece.outline import SolidOutline


def box(size, centre=(0.0, 0.0, 0.0), axes=None) -> SolidOutline:
    """A box of ``size`` along the rows of ``axes`` (its own x, y, z), centred at ``centre``."""
    axes = np.eye(3) if axes is None else np.asarray(axes, dtype=float)
    size = np.asarray(size, dtype=float)
    corners = np.array([[i, j, k] for i in (-0.5, 0.5) for j in (-0.5, 0.5) for k in (-0.5, 0.5)])
    areas = np.array([size[1] * size[2], size[0] * size[2], size[0] * size[1]])
    return SolidOutline(
        own_axes=axes,
        points=corners * size @ axes + np.asarray(centre, dtype=float),
        face_normals=np.vstack([axes, -axes]),
        face_areas=np.concatenate([areas, areas]),
        edge_directions=np.repeat(axes, 4, axis=0),
        edge_lengths=np.repeat(size, 4),
        volume_mm3=float(np.prod(size)),
    )


def rotation(seed: int) -> np.ndarray:
    """A random proper rotation as rows."""
    q, _ = np.linalg.qr(np.random.default_rng(seed).normal(size=(3, 3)))
    return q if np.linalg.det(q) > 0 else -q
