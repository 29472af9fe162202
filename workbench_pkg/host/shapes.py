"""Shape facts of a leaf solid, exact where the host can be exact.

Everything is read from the solid in its own frame (`own`), where its surfaces still have their true types, and
carried to the global frame by the leaf's matrix; so links that are scaled or mirrored need no rebuilt shape.
"""

from __future__ import annotations

from typing import Any

import numpy as np

from movement_core.piece.outline import SolidOutline
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.own import Vectors


def outline(leaf: Leaf) -> SolidOutline:
    """Vertices, planar faces and straight edges of a leaf in the global frame; see SolidOutline.

    Points on curved faces come from the mesh that contacts are found with (true points of the surface), so their
    extents fall short by up to its chords; use `extents` for sizes.
    """
    own = leaf.own.outline
    linear, offset = affine(leaf.matrix)
    # A plane of area A and unit normal n goes to area and normal A · cof(L) n, cof(L) = det(L) · L⁻ᵀ.
    carried = own.normals @ (np.linalg.inv(linear) * abs(np.linalg.det(linear)))
    stretch = np.linalg.norm(carried, axis=1)
    runs = own.runs @ linear.T
    lengths = np.linalg.norm(runs, axis=1)
    axes = linear.T
    return SolidOutline(
        own_axes=axes / np.linalg.norm(axes, axis=1, keepdims=True),
        points=own.points @ linear.T + offset,
        face_normals=carried / stretch[:, None],
        face_areas=own.areas * stretch,
        edge_directions=runs / lengths[:, None],
        edge_lengths=lengths,
        volume_mm3=volume(leaf),
    )


def volume(leaf: Leaf) -> float:
    """Volume of a leaf in mm³, from its own frame: the host's figure for stretched curved solids is off."""
    linear, _ = affine(leaf.matrix)
    return float(abs(leaf.own.signed_volume_mm3 * np.linalg.det(linear)))


def extents(leaf: Leaf, axes: Vectors) -> tuple[Vectors, Vectors]:
    """Exact extents of a leaf along three orthonormal axes, mm.

    Parameters
    ----------
    leaf : the solid; planar, round, curved, rotated, from a scaled or mirrored link.
    axes : (3, 3) rows are the axes in the global frame.

    Returns
    -------
    centre : (3,) middle of the box in the global frame.
    lengths : (3,) its size along each axis.
    """
    axes = np.asarray(axes, dtype=float)
    if axes.shape != (3, 3) or np.abs(axes @ axes.T - np.eye(3)).max() > 1e-6:
        raise ValueError("axes must be three orthonormal rows")
    linear, offset = affine(leaf.matrix)
    # x = L s + t, so a · x = (Lᵀ a) · s + a · t: the extents of the solid in its own frame along Lᵀ a.
    low, high = leaf.own.ranges(axes @ linear)
    low, high = low + axes @ offset, high + axes @ offset
    return (low + high) / 2 @ axes, high - low


def affine(matrix: Any) -> tuple[Vectors, Vectors]:
    """(3, 3) linear part and (3,) translation of a host matrix."""
    full = np.array(matrix.A, dtype=float).reshape(4, 4)
    return full[:3, :3], full[:3, 3]
