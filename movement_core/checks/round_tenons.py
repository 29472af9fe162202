"""Round tenons that loosen: tenon and hole go oval in different ways, and what the damp season crushed is gone.

In the damp season the tenon swells against the hole's own long grain, which does not move; past about half a percent
the wood crushes and does not come back, so the play in the dry season is what it has shrunk since then.
"""

from __future__ import annotations

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import BREAKS, Finding
from movement_core.checks.tenon_shape import ALONG, strain_along
from movement_core.checks.told import is_wood, told
from movement_core.moisture.compression import CRUSHING_STRAIN
from movement_core.piece.contact.found import ROUND, Contact, Gap
from movement_core.piece.contact.joints import Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.limits import limit
from movement_core.piece.vectors import square_to
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

DIRECTIONS = 12  # round half the turn


def round_tenons(whole: WholePiece) -> list[Finding]:
    """One finding for each round tenon, along its own grain in solid wood, whose play its glue no longer bridges."""
    found = []
    for joint in whole.joints:
        fits = [one for one in joint.meeting.facing if one.surface == ROUND and one.peg is not None]
        if fits and all(is_wood(whole, index) for index in joint.parts):
            finding = _judge(whole, joint, max(fits, key=lambda one: one.area_mm2))
            found += [finding] if finding else []
    return found


def _judge(whole: WholePiece, joint: Joint, fit: Contact | Gap) -> Finding | None:
    peg = fit.peg
    assert peg is not None  # the caller has looked
    hole = joint.parts[1] if peg == joint.parts[0] else joint.parts[0]
    if abs(float(whole.parts[peg].part.frame.axes[2] @ fit.normal)) < ALONG:
        return None
    away = np.concatenate(fit.outline) - fit.centre
    away -= (away @ fit.normal)[:, None] * fit.normal
    diameter = 2 * float(np.linalg.norm(away, axis=1).max())
    drawn = fit.least_mm + fit.most_mm if isinstance(fit, Gap) else 0.0
    best: tuple[float, Floats, float, float] | None = None
    for direction in _round_the(fit.normal):
        own, around = strain_along(whole, peg, direction), strain_along(whole, hole, direction)
        if own is None or around is None:
            return None
        # Of a range the middle: the tenon's rings may lie any way round.
        fits_by = own.middle - around.middle
        pressed = max(float(fits_by.max()) - drawn / diameter, 0.0)
        crushed = max(pressed - CRUSHING_STRAIN[0], 0.0)
        play = drawn + diameter * (crushed - fits_by)
        if best is None or float(play.max()) > best[0]:
            best = float(play.max()), play, crushed * diameter, float(np.ptp(fits_by)) * diameter
    assert best is not None  # there is a direction
    most, play, crushed_mm, swing = best
    if most - drawn < limit("round tenon play"):
        return None
    crushes = (
        say(", {crushed:.1f} mm of it crushed in the damp season", crushed=crushed_mm)
        if crushed_mm > 0.05
        else ""
    )
    return told(
        whole,
        "round-tenon-loosens",
        BREAKS,
        (peg, hole),
        say(
            "a round tenon {diameter:.0f} mm thick gets {play:.1f} mm of play in its hole in the dry "
            "season{crushes}: both go oval, each in its own way, and glue bridges no more than {bridged:.2f} mm "
            "(common practice, no source)",
            diameter=diameter,
            play=most,
            crushes=crushes,
            bridged=limit("round tenon play"),
        ),
        say(
            "make the tenon drier than it will ever be in use, 5 % or so, and the wood around it in step with the "
            "home; wedge it across the hole's grain, or pin it; turn the tenon's rings so that it moves least "
            "along the hole's grain. What carries people must not work loose"
        ),
        int(month_of_day(int(play.argmax()))),
        {"diameter_mm": diameter, "play_mm": most, "swing_mm": swing, "crushed_mm": crushed_mm},
    )


def _round_the(axis: Floats) -> list[Floats]:
    aside, up = square_to(axis)
    return [
        np.asarray(np.cos(angle) * aside + np.sin(angle) * up)
        for angle in np.linspace(0, np.pi, DIRECTIONS, endpoint=False)
    ]
