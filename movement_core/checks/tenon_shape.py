"""How a tenon sits in the part that takes it: where its shoulder is, how deep it goes, where it ends."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import DAYS
from movement_core.checks.remember import beyond, joints_of, once_a_piece
from movement_core.checks.told import is_wood
from movement_core.piece.contact.found import Contact
from movement_core.piece.contact.joints import PEGGED, TENONED, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import Span, swelling_of
from movement_core.piece.whole import WholePiece

ALONG = 0.9  # cosine: a face looks along the tenon
THROUGH_MM = 3.0  # a tenon that ends no further than this inside the far face goes through (own judgement)
PROUD_MM = 1.0  # up to here as drawn it is meant to be flush (own judgement)


@dataclass(frozen=True, eq=False)
class TenonShape:
    """One tenon, told along ``way`` (3,), its own grain, into the part that takes it.

    Attributes
    ----------
    inner, outer : indices. joint : between them.
    depth_mm : from the face where the shoulder stands to the tenon's end, or to the far face where it goes through.
    through : whether it does. proud_mm : how far it stands out there as drawn; below 0 it has sunk in.
    shouldered : whether a shoulder of it stands on that face. near : place of that face along ``way``.
    """

    inner: int
    outer: int
    joint: Joint
    way: Floats
    depth_mm: float
    through: bool
    proud_mm: float
    shouldered: bool
    near: float


@once_a_piece
def tenons_of(whole: WholePiece) -> tuple[TenonShape, ...]:
    """Every tenon of solid wood whose grain runs along it, in solid wood; round ones are not among them."""
    shapes = (
        _shape(whole, joint)
        for joint in whole.joints
        if joint.kind == TENONED and joint.meeting.walls and all(is_wood(whole, i) for i in joint.parts)
    )
    return tuple(shape for shape in shapes if shape is not None)


def strain_along(whole: WholePiece, index: int, way: Floats) -> Span | None:
    """Strain of a part along a direction on 365 days; None where its movement is not known."""
    swelling = swelling_of(whole.parts[index])
    if swelling is None:
        return None
    span = swelling.along(way)
    return Span(None if span.value is None else span.value[:DAYS], span.least[:DAYS], span.most[:DAYS])


def _shape(whole: WholePiece, joint: Joint) -> TenonShape | None:
    meeting = joint.meeting
    inner = meeting.inner
    if inner is None:
        walls = [wall.inner for wall in meeting.walls]
        inner = max(set(walls), key=walls.count)
    outer = joint.parts[1] if inner == joint.parts[0] else joint.parts[0]
    frame = whole.parts[inner].part.frame
    points = np.concatenate([wall.outline for wall in meeting.walls if wall.inner == inner])
    into = float((points.mean(axis=0) - frame.centre) @ frame.axes[2])
    way = frame.axes[2] if into > 0 else -frame.axes[2]
    solids = [whole.parts[i].part.outline for i in (inner, outer)]
    if solids[0] is None or solids[1] is None:
        return None
    reach = points @ way
    near, deep = float(reach.min()), float(reach.max())
    end, far = (float((solid.points @ way).max()) for solid in solids if solid is not None)
    sense = 1.0 if inner == joint.parts[0] else -1.0
    facing = [one for one in meeting.facing if sense * float(one.normal @ way) > ALONG]
    blind = any(float(one.centre @ way) > deep - 0.01 for one in facing)
    beyond = end - deep > 0.01
    through = not blind and (beyond or far - deep <= THROUGH_MM)
    there = deep if beyond else far
    # Shoulders look the way the tenon goes in, and stand where the mortise begins, a little askew on splayed legs.
    middle = (near + deep) / 2
    shouldered = any(isinstance(one, Contact) and float(one.centre @ way) < middle for one in facing)
    depth = (there if through else deep) - near
    return TenonShape(
        inner, outer, joint, way, depth, through, end - there if through else 0.0, shouldered, near
    )


def pegs_of(whole: WholePiece, tenon: TenonShape) -> list[int]:
    """Pegs that go through a tenon and the part around it."""
    pegged = [
        {beyond(joint, part) for joint in joints_of(whole, part) if joint.kind == PEGGED}
        for part in (tenon.inner, tenon.outer)
    ]
    return sorted(pegged[0] & pegged[1])
