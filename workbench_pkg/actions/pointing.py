"""What a ray from the eye points at on a part: a place on its end in the section frame, or one of its faces.

Rays are cut with the solid's own surfaces in double precision, so a place is as exact as the ray; the end that is meant
may be hidden behind other parts.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import FreeCAD as App
import numpy as np
import Part as Shapes
from numpy.typing import NDArray

from movement_core.errors import InputError
from movement_core.piece.part import Part
from movement_core.wording import say
from workbench_pkg.actions.drafts import own_direction
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.own import is_planar
from workbench_pkg.host.shapes import affine

Floats = NDArray[np.float64]

FACES_END = 0.5  # cosine to the grain from which a flat face is an end
EDGE_ON = 0.03  # cosine of the ray to the grain under which no end can be pointed at
ON_FACE_MM = 1e-6
SQUARE = 0.999  # cosine to the grain from which an end is drawn as it is
AT_END_MM = 0.2
WHERE = "pointing"


@dataclass(frozen=True, eq=False)
class Ray:
    """From the eye into the model: origin (3,), unit direction (3,), mm in the document's frame."""

    origin: Floats
    direction: Floats

    def at(self, distance: float) -> Floats:
        return self.origin + distance * self.direction


@dataclass(frozen=True, eq=False)
class Hit:
    """Where a ray meets a solid first: point (3,), outward unit normal (3,), and whether the face is flat."""

    distance: float
    point: Floats
    normal: Floats
    flat: bool


@dataclass(frozen=True)
class EndPoint:
    """A place on an end: x across the width, y through the thickness, mm; ``far`` on the end the grain points to."""

    x: float
    y: float
    far: bool
    on_wood: bool


def ray_between(start: Floats, through: Floats) -> Ray:
    """The ray from one point through another."""
    way = np.asarray(through, dtype=float) - start
    return Ray(np.asarray(start, dtype=float), way / np.linalg.norm(way))


def first_hit(leaf: Leaf, ray: Ray) -> Hit | None:
    """The face of a solid that is seen along a ray, whatever stands before the solid; None beside it."""
    solid = leaf.global_solid()
    box = solid.BoundBox
    reach = box.DiagonalLength + float(np.linalg.norm(_xyz(box.Center) - ray.origin)) + 1.0
    found = [hit for face in solid.Faces for hit in _hits(face, ray, reach)]
    return min(found, key=lambda hit: hit.distance, default=None)


def point_on_end(leaf: Leaf, part: Part, ray: Ray) -> EndPoint:
    """The place on an end of a part that a ray points at; beside the wood, in the plane of the end that faces the eye.

    Raises
    ------
    InputError : the grain is not known, or no end faces the eye.
    """
    frame = part.frame
    if not frame.grain.known:
        raise InputError(
            say("the grain of {part} is not known", part=part.name),
            where=WHERE,
            todo=say("say first along which axis it runs"),
        )
    grain = frame.axes[2]
    hit = first_hit(leaf, ray)
    if hit is not None and hit.flat and abs(hit.normal @ grain) > FACES_END:
        return _in_section(part, hit.point, bool(hit.normal @ grain > 0), True)
    toward = float(ray.direction @ grain)
    if abs(toward) < EDGE_ON:
        raise InputError(
            say("no end of {part} can be seen from here", part=part.name),
            where=WHERE,
            todo=say("turn the view, or press 'Look at the end'"),
        )
    far = toward < 0
    place, normal = _end_plane(leaf, part, far)
    point = ray.at(float((place - ray.origin) @ normal / (ray.direction @ normal)))
    return _in_section(part, point, far, False)


def heart_of(leaf: Leaf, part: Part, ray: Ray) -> str:
    """The face that a ray points at, as the heart side: a direction in the object's own axes.

    Raises
    ------
    InputError : the ray misses the part, or meets an end of it.
    """
    hit = first_hit(leaf, ray)
    if hit is None:
        raise InputError(
            say("that is beside {part}", part=part.name), where=WHERE, todo=say("click one of its faces")
        )
    frame = part.frame
    across, through, along = frame.axes @ hit.normal
    if frame.grain.known and abs(along) > max(abs(across), abs(through)):
        raise InputError(
            say("that is an end of {part}", part=part.name),
            where=WHERE,
            allowed=say("a face or an edge"),
            todo=say("click the face that was nearer the centre of the tree"),
        )
    # A leaning face of a taper stands for the side of the board that it belongs to.
    side = (
        frame.axes[1] * np.sign(through) if abs(through) >= abs(across) else frame.axes[0] * np.sign(across)
    )
    return own_direction(part, side if frame.grain.known else hit.normal)


def end_centre(part: Part, far: bool) -> Floats:
    """(3,) the middle of an end."""
    frame = part.frame
    return np.asarray(frame.centre + (0.5 if far else -0.5) * frame.length_mm * frame.axes[2])


def place_on_end(part: Part, x: float, y: float, far: bool) -> Floats:
    """(3,) a place of the section frame in the plane of an end."""
    return np.asarray(end_centre(part, far) + x * part.frame.axes[0] + y * part.frame.axes[1])


def _in_section(part: Part, point: Floats, far: bool, on_wood: bool) -> EndPoint:
    x, y, _ = part.frame.axes @ (point - part.frame.centre)
    return EndPoint(float(x), float(y), far, on_wood)


def _end_plane(leaf: Leaf, part: Part, far: bool) -> tuple[Floats, Floats]:
    """A point and the normal of an end: of its largest flat face, else square to the grain at the very end."""
    grain = part.frame.axes[2] * (1.0 if far else -1.0)
    best: tuple[float, Floats, Floats] | None = None
    for face in leaf.global_solid().Faces:
        if not is_planar(face):
            continue
        normal = _outward(face, face.CenterOfMass)
        if normal @ grain > FACES_END and (best is None or face.Area > best[0]):
            best = face.Area, _xyz(face.CenterOfMass), normal
    return (end_centre(part, far), grain) if best is None else best[1:]


def _xyz(vector: Any) -> Floats:
    return np.array([vector.x, vector.y, vector.z])


def _outward(face: Any, point: Any) -> Floats:
    u, v = face.Surface.parameter(App.Vector(*point))
    return _xyz(face.normalAt(u, v))


def _hits(face: Any, ray: Ray, reach: float) -> list[Hit]:
    box = face.BoundBox
    centre = _xyz(box.Center)
    ahead = float((centre - ray.origin) @ ray.direction)
    if np.linalg.norm(ray.at(ahead) - centre) > box.DiagonalLength / 2 + 1.0:
        return []
    if is_planar(face):
        normal = _outward(face, face.CenterOfMass)
        slant = float(ray.direction @ normal)
        if abs(slant) < 1e-9:
            return []
        distance = float((_xyz(face.CenterOfMass) - ray.origin) @ normal) / slant
        point = ray.at(distance)
        if distance <= 0 or not face.isInside(App.Vector(*point), ON_FACE_MM, True):
            return []
        return [Hit(distance, point, normal, True)]
    line = Shapes.makeLine(App.Vector(*ray.origin), App.Vector(*ray.at(reach)))
    found = []
    for vertex in line.section(face).Vertexes:
        point = _xyz(vertex.Point)
        distance = float((point - ray.origin) @ ray.direction)
        found.append(Hit(distance, point, _outward(face, vertex.Point), False))
    return found


def end_outlines(leaf: Leaf, part: Part) -> tuple[tuple[Floats, ...], tuple[Floats, ...]]:
    """Loops (K, 2) of the near and the far end in the section frame, where the ends are square to the grain.

    Empty for an end that is not: its marks are then drawn over the whole section.
    """
    frame = part.frame
    linear, offset = affine(leaf.matrix)
    found: tuple[list[Floats], list[Floats]] = ([], [])
    flat = [face for face in leaf.own.faces if face.flat]
    for face, loops in zip(flat, leaf.own.loops):
        assert face.normal is not None  # flat ones have one
        normal = face.normal @ np.linalg.inv(linear)
        along = float(normal @ frame.axes[2] / np.linalg.norm(normal))
        placed = [loop @ linear.T + offset - frame.centre for loop in loops]
        height = float((placed[0] @ frame.axes[2]).mean())
        if abs(along) < SQUARE or abs(abs(height) - frame.length_mm / 2) > AT_END_MM or along * height < 0:
            continue
        found[1 if along > 0 else 0].extend(loop @ frame.axes[:2].T for loop in placed)
    return tuple(found[0]), tuple(found[1])
