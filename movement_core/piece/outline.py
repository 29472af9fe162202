"""What the host tells the core about one solid: enough to find its grain frame, nothing of the host itself."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Vectors = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class SolidOutline:
    """Shape of one solid in the global frame, mm.

    Attributes
    ----------
    own_axes : (3, 3) rows are the directions of the object's own x, y and z in the global frame, unit length.
    points : (N, 3) vertices of the solid and of a fine tessellation of its curved faces.
    face_normals, face_areas : (F, 3), (F,) outward unit normals and areas (mm²) of the planar faces.
    edge_directions, edge_lengths : (E, 3), (E,) unit directions and lengths (mm) of the straight edges.
    volume_mm3 : volume.
    """

    own_axes: Vectors
    points: Vectors
    face_normals: Vectors
    face_areas: Vectors
    edge_directions: Vectors
    edge_lengths: Vectors
    volume_mm3: float
