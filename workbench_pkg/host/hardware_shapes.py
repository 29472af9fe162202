"""Hardware as the host's solids, and a part with its slots cut: an ordinary boolean of the host."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

import FreeCAD as App
import Part

from movement_core.piece.hardware_bodies import BOX, CYLINDER, Body, Marker


def placement_of(body: Body) -> Any:
    """Where a body's own frame stands."""
    x, y, z = body.axes
    c = body.centre_mm
    return App.Placement(
        App.Matrix(x[0], y[0], z[0], c[0], x[1], y[1], z[1], c[1], x[2], y[2], z[2], c[2], 0, 0, 0, 1)
    )


def solid_of(body: Body) -> Any:
    """A body as a solid of the host, its placement that of the body's frame."""
    x, y, z = body.size_mm
    low = App.Vector(0, 0, -z / 2)
    if body.shape == BOX:
        solid = Part.makeBox(x, y, z, App.Vector(-x / 2, -y / 2, -z / 2))
    elif body.shape == CYLINDER or x - y < 1e-7:
        solid = Part.makeCylinder(y / 2, z, low)
    else:
        solid = _outline(x, y, -z / 2).extrude(App.Vector(0, 0, z))
    solid.Placement = placement_of(body)
    return solid


def _outline(length: float, width: float, z: float) -> Any:
    """Face of a slot along x with round ends."""
    radius, half = width / 2, (length - width) / 2
    corners = [App.Vector(sx * half, sy * radius, z) for sx, sy in ((-1, -1), (1, -1), (1, 1), (-1, 1))]
    tips = [App.Vector(sx * length / 2, 0, z) for sx in (1, -1)]
    edges = [
        Part.makeLine(corners[0], corners[1]),
        Part.Arc(corners[1], tips[0], corners[2]).toShape(),
        Part.makeLine(corners[2], corners[3]),
        Part.Arc(corners[3], tips[1], corners[0]).toShape(),
    ]
    return Part.Face(Part.Wire(edges))


def marker_shape(marker: Marker) -> Any:
    """The solids of a marker joined to one, its holes taken out."""
    whole = joined(solid_of(body) for body in marker.bodies)
    for hole in marker.holes:
        whole = whole.cut(solid_of(hole))
    return whole


def joined(solids: Iterable[Any]) -> Any:
    """Several solids as one shape; those that overlap are fused."""
    first, *others = solids
    if not others:
        return first
    whole = first.multiFuse(others).removeSplitter()
    return whole.Solids[0] if len(whole.Solids) == 1 else whole


def in_frame(shape: Any, frame: Any) -> Any:
    """A global shape as it is seen from a frame, given by its matrix to the global one."""
    seen = shape.copy()
    seen.Placement = App.Placement(frame).inverse().multiply(seen.Placement)
    return seen


def holds_point(solid: Any, point: Sequence[float]) -> bool:
    """Whether a global point lies inside a global solid."""
    return bool(solid.isInside(App.Vector(*point), 1e-6, False))


def shared_volume(solid: Any, other: Any) -> float:
    """Volume that two solids have in common, mm³."""
    return float(solid.common(other).Volume)
