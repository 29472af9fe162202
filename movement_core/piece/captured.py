"""Parts whose longest edge says nothing of the grain, because of how they sit in the piece.

A frame's panel and a drawer's bottom are cut to the opening, and a case side may be deeper than it is high: their
proportions follow the furniture, not the board. Seen from boxes in the part's own frame: enough for a hint to
ask, never for a finding.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.frame import extents_of_points, find_frame
from movement_core.piece.outline import SolidOutline
from movement_core.piece.tags import Tags
from movement_core.piece.vectors import box_of
from movement_core.wording import say

FloatArray = NDArray[np.float64]

LEAST_HOUSED_MM = 0.5  # less overlap of boxes than this is a touch or a modelling slip
PANEL_THINNESS = 8.0  # width ÷ thickness from which a part counts as a panel (own judgement)
THIN_BOTTOM_MM = 13.0  # drawer bottoms and backs are no thicker than this (common practice, no source)
DEEP_SIDE_MM = 200.0  # an upright part wider than this may be a case side (own judgement)


def reasons_to_ask(outlines: Sequence[SolidOutline], said: Sequence[bool] | None = None) -> list[str]:
    """For each solid the reason why its grain must be asked for, or an empty text.

    Compares each thin part with the others whose global boxes meet its own; quadratic only in those. ``said``: of
    which solids the grain was said, so that nothing has to be asked.
    """
    if not outlines:
        return []
    low, high = (np.array(corners) for corners in zip(*(box_of(o.points) for o in outlines)))
    known = said or [False] * len(outlines)
    return ["" if known[index] else _reason(index, outlines, low, high) for index in range(len(outlines))]


def _reason(index: int, outlines: Sequence[SolidOutline], low: FloatArray, high: FloatArray) -> str:
    frame = find_frame(outlines[index], Tags())
    if not frame.grain.known:
        return ""  # proportions already ask
    width, thickness = frame.width_mm, frame.thickness_mm
    if width < PANEL_THINNESS * thickness:
        return ""
    near = ((low < high[index]) & (high > low[index])).all(axis=1)
    near[index] = False
    sides = _housed_sides(
        frame.axes, outlines[index].points, [outlines[int(i)].points for i in np.flatnonzero(near)]
    )
    if sides[0] == 2:
        return say("both long edges are housed in other parts, as a panel in a frame")
    if sides[1] == 2 and thickness <= THIN_BOTTOM_MM:
        return say("both ends are housed and the part is thin, as a drawer bottom")
    upright = abs(frame.axes[1][2]) < 0.1 and abs(frame.axes[0][2]) > 0.9
    if upright and width > DEEP_SIDE_MM:
        return say("it stands upright, longer than high, as a deep case side")
    return ""


def _housed_sides(axes: FloatArray, points: FloatArray, others: list[FloatArray]) -> tuple[int, int]:
    """How many of the two edges, and of the two ends, lie inside another part's box."""
    own = points @ axes.T
    low, high = box_of(own)
    housed = {(axis, end): False for axis in (0, 2) for end in (0, 1)}
    for other in others:
        centre, size = extents_of_points(other, axes)
        middle = axes @ centre
        depth = np.minimum(high, middle + size / 2) - np.maximum(low, middle - size / 2)
        if (depth < LEAST_HOUSED_MM).any():
            continue
        for axis in (0, 2):
            inside = depth[axis] < 0.25 * (high[axis] - low[axis])  # houses an edge, not the whole part
            along = 2 - axis  # and does so along most of that edge
            if inside and depth[along] > 0.5 * (high[along] - low[along]):
                housed[axis, int(middle[axis] > (low[axis] + high[axis]) / 2)] = True
    return (housed[0, 0] + housed[0, 1], housed[2, 0] + housed[2, 1])
