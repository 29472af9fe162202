"""Leaves and other parts kept in another climate: how far they match their neighbours when they are laid in."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import SHOWS, Finding
from movement_core.checks.remember import beyond, joints_of
from movement_core.checks.tenon_shape import strain_along
from movement_core.checks.told import is_wood, told
from movement_core.piece.contact.found import FLAT
from movement_core.piece.contact.joints import OVERLAP, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

LEVEL = (
    0.9  # cosine: neighbours whose faces look the same way lie beside a leaf; others carry it (own judgement)
)


@dataclass(frozen=True, eq=False)
class _Step:
    """A step between a leaf and its neighbour: its size, its least and most (leaf larger: +), and the month."""

    neighbour: int
    size_mm: float
    least_mm: float
    most_mm: float
    month: int


def kept_leaves(whole: WholePiece) -> list[Finding]:
    """One finding for each part kept elsewhere whose edges or faces no longer meet those beside it."""
    found = []
    for leaf, solved in enumerate(whole.parts):
        if solved.part.kept is None or not is_wood(whole, leaf):
            continue
        edges = [
            step for joint in _beside(whole, leaf) for step in [_step(whole, leaf, joint, along=True)] if step
        ]
        faces = [
            step
            for joint in _beside(whole, leaf)
            for step in [_step(whole, leaf, joint, along=False)]
            if step
        ]
        edge, face = (max(steps, key=lambda one: one.size_mm, default=None) for steps in (edges, faces))
        if (edge and edge.size_mm >= limit("leaf edge")) or (face and face.size_mm >= limit("leaf face")):
            found.append(_finding(whole, leaf, edge, face))
    return found


def _beside(whole: WholePiece, leaf: int) -> list[Joint]:
    """Joints with parts of the table in use that lie beside a leaf, in its plane."""
    through = whole.parts[leaf].part.frame.axes[1]
    found = []
    for joint in joints_of(whole, leaf):
        other, main = beyond(joint, leaf), joint.meeting.main
        if joint.kind == OVERLAP or main is None or main.surface != FLAT or not is_wood(whole, other):
            continue
        frame = whole.parts[other].part.frame
        in_use = whole.parts[other].part.kept is None
        level = abs(float(frame.axes[1] @ through)) > LEVEL and abs(float(main.normal @ through)) < 1 - LEVEL
        if in_use and level:
            found.append(joint)
    return found


def _step(whole: WholePiece, leaf: int, joint: Joint, along: bool) -> _Step | None:
    """The step along the line where a leaf meets its neighbour, at each end; or that between their faces."""
    main = joint.meeting.main
    assert main is not None  # it lies beside it
    through = whole.parts[leaf].part.frame.axes[1]
    other = beyond(joint, leaf)
    way: Floats = np.cross(main.normal, through) if along else through
    way = way / np.linalg.norm(way)
    points = np.concatenate(main.outline)
    size = float(np.ptp(points @ way))
    own, theirs = strain_along(whole, leaf, way), strain_along(whole, other, way)
    if own is None or theirs is None:
        return None
    # Laid in level in the middle, or by pins at half the thickness, each side shows half of the difference.
    apart = (own - theirs).times(size / 2)
    worst = np.maximum(np.abs(apart.least), np.abs(apart.most))
    day = int(worst.argmax())
    return _Step(
        other, float(worst[day]), float(apart.least.min()), float(apart.most.max()), int(month_of_day(day))
    )


def _finding(whole: WholePiece, leaf: int, edge: _Step | None, face: _Step | None) -> Finding:
    kept = whole.parts[leaf].part.kept
    assert kept is not None  # it is kept elsewhere
    worse = edge if edge and edge.size_mm >= limit("leaf edge") else face
    assert worse is not None  # one of them is too large
    steps = []
    figures: dict[str, float] = {}
    if edge is not None and edge.size_mm >= 0.05:
        steps.append(
            say("{least:+.1f} to {most:+.1f} mm at each edge", least=edge.least_mm, most=edge.most_mm)
        )
        figures |= {"edge_least_mm": edge.least_mm, "edge_most_mm": edge.most_mm}
    if face is not None and face.size_mm >= 0.05:
        steps.append(
            say("{least:+.2f} to {most:+.2f} mm on each face", least=face.least_mm, most=face.most_mm)
        )
        figures |= {"face_least_mm": face.least_mm, "face_most_mm": face.most_mm}
    return told(
        whole,
        "leaf-kept-elsewhere",
        SHOWS,
        (leaf, worse.neighbour),
        say(
            "kept in other air ({air}) and laid in as it comes from there, it stands {steps} beyond what it meets "
            "(+), or falls short of it (-)",
            air=kept.name,
            steps=say(" and ").join(steps),
        ),
        say(
            "keep it in the same room as the table, or bring it in some weeks before; finish all its faces as the "
            "table's are; ease its edges, so that a step does not show"
        ),
        worse.month,
        figures,
    )
