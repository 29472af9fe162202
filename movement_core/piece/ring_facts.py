"""Where a part's rings are, from what was said of its pith, ring angle, cut and heart side."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import InputError
from movement_core.piece.facts import Fact, inferred, missing, tagged
from movement_core.piece.frame import Frame
from movement_core.piece.tags import TagProblem, Tags
from movement_core.section.rings import CUTS, Rings
from movement_core.wording import say

ALONG_GRAIN = 0.7  # cosine from which a direction counts as along the grain
AGREES_WITHIN = 0.3  # share by which two radii, or two places of the pith, may differ (own judgement)
AGREES_WITHIN_DEG = 10.0  # a ring angle and a pith that differ by more contradict each other (own judgement)


def rings_from_tags(
    part: str, tags: Tags, frame: Frame, own_axes: NDArray[np.float64]
) -> tuple[Fact[Rings], tuple[TagProblem, ...]]:
    """Rings of a part and the problems found on the way; the most exact thing said counts, the rest must agree."""
    heart, pith_side, along = _heart(tags, frame, own_axes)
    beside = (TagProblem(part, "heart", along),) if along else ()
    try:
        found = _said(tags, heart, pith_side)
        if found is not None:
            rings, word = found
            if tags.far_pith_mm is not None:
                rings = rings.with_far_end(Rings.at(*tags.far_pith_mm))
            rings = rings.with_slope(tags.grain_slope)
            return tagged(rings, tags.said.get(word, "tag")), (
                *beside,
                *_contradictions(part, tags, rings, heart),
            )
    except InputError as error:
        return missing(say("what was said of the rings cannot be used: {error}", error=error)), (
            *beside,
            TagProblem(part, "rings", str(error)),
        )
    if heart is not None:
        reason = say("a heart side was said, so the board is taken as flat-sawn")
        return inferred(Rings.cut("flat", heart=heart), reason), ()
    return missing(say("say where the rings are: pith, points, rings, cut or heart")), beside


def _said(tags: Tags, heart: str | None, pith_side: str | None) -> tuple[Rings, str] | None:
    """The rings by the most exact thing said of them, and the word that said it."""
    radius = tags.ring_radius_mm
    if tags.pith_mm is not None:
        return Rings.at(*tags.pith_mm), "pith"
    if tags.ring_points_mm is not None:
        rings = Rings.through(tags.ring_points_mm)
        # Picks along a straight ring give its angle only; the heart side may still have been said.
        return (rings if rings.pith_mm else replace(rings, heart=heart, pith_side=pith_side)), "points"
    if tags.ring_angle_deg is not None:
        angle = tags.ring_angle_deg
        return Rings.angle(angle, heart=heart, pith_side=pith_side, radius_mm=radius), "rings"
    if tags.cut is not None:
        range_mm = None if radius is None else (radius, radius)
        return replace(Rings.cut(tags.cut, heart=heart, radius_range_mm=range_mm), pith_side=pith_side), "cut"
    return None


def _heart(tags: Tags, frame: Frame, own_axes: NDArray[np.float64]) -> tuple[str | None, str | None, str]:
    """The heart side as a face, or as an edge where the direction said lies across the width, or why it is neither."""
    if tags.heart is None or isinstance(tags.heart, str):
        return tags.heart, None, ""
    x, y, z = frame.axes @ (np.asarray(tags.heart, dtype=np.float64) @ own_axes)
    if frame.grain.known and abs(z) > ALONG_GRAIN:
        return None, None, say("the heart side said runs along the grain; say a face or an edge of the board")
    if abs(y) >= abs(x):
        return ("show" if y > 0 else "back"), None, ""
    return None, ("right" if x > 0 else "left"), ""


def _contradictions(part: str, tags: Tags, rings: Rings, heart: str | None) -> list[TagProblem]:
    problems = []
    angle = rings.middle_angle_degrees
    if rings.pith_mm is not None:
        if tags.ring_angle_deg is not None and abs(angle - tags.ring_angle_deg) > AGREES_WITHIN_DEG:
            message = say(
                "the pith gives ring angle {angle:.0f}°, not {ring_angle:g}° as said; the pith counts",
                angle=angle,
                ring_angle=tags.ring_angle_deg,
            )
            problems.append(TagProblem(part, "rings", message))
        y = rings.pith_mm[1]
        if heart is not None and y * (1 if heart == "show" else -1) < 0:
            side = "show" if y > 0 else "back"
            message = say(
                "the pith lies toward the {side} face, but heart {heart!r} was said; the pith counts",
                side=side,
                heart=heart,
            )
            problems.append(TagProblem(part, "heart", message))
    if rings.pith_mm is not None and tags.pith_mm is not None:
        radius = float(np.hypot(*rings.pith_mm))
        if tags.ring_radius_mm is not None and abs(tags.ring_radius_mm - radius) > AGREES_WITHIN * radius:
            message = say(
                "the pith gives a ring radius of {radius:.0f} mm, not {ring_radius:g}; the pith counts",
                radius=radius,
                ring_radius=tags.ring_radius_mm,
            )
            problems.append(TagProblem(part, "radius", message))
        if tags.ring_points_mm is not None:
            picked = Rings.through(tags.ring_points_mm).pith_mm
            if (
                picked is None
                or float(np.hypot(*np.subtract(picked, rings.pith_mm))) > AGREES_WITHIN * radius
            ):
                place = (
                    say("far away")
                    if picked is None
                    else say("at {picked:.0f} {picked2:.0f}", picked=picked[0], picked2=picked[1])
                )
                message = say(
                    "the three points put the pith {place}, not where it was said; the pith counts",
                    place=place,
                )
                problems.append(TagProblem(part, "points", message))
    if tags.cut is not None:
        least, _, most = CUTS[tags.cut]
        if not least - AGREES_WITHIN_DEG <= angle <= most + AGREES_WITHIN_DEG:
            message = say(
                "a ring angle of {angle:.0f}° is not {cut}-sawn ({least:g} to {most:g}°); the angle counts",
                angle=angle,
                cut=tags.cut,
                least=least,
                most=most,
            )
            problems.append(TagProblem(part, "cut", message))
    return problems
