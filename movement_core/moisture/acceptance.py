"""Is this stock ready for that home, and if not, how long till it is.

The trade asks stock to be within 2 % of its moisture in use, the core included (common practice). Use is
the mean of the year the piece will live in; wood within the range of that year is inside what it will meet
anyway.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.air.bounds import within
from movement_core.air.daily import Air, daily_moisture
from movement_core.moisture.events import BoardInAir, day_after_the_last, days_to_come_within
from movement_core.moisture.marching import DEFAULT_CELLS, March, grid, march
from movement_core.moisture.meter import METER_SD, mean_of_core_and_skin, parabolic_profile
from movement_core.wording import phrase, say

WITHIN_MC = 2.0  # percent points from the moisture in use (common practice)
CORE_TO_SKIN_MC = (
    1.5  # percent points between core and skin before milling (own; the trade says "dry to the core")
)
WETTEST_MARCHED_MC = 30.0  # percent; above it there is free water, whose going this theory does not follow
LONGEST_WAIT_DAYS = 730.0


@dataclass(frozen=True)
class Acceptance:
    """Whether stock may be worked for a home.

    Attributes
    ----------
    ready : both conditions hold. reasons : what does not hold, in words; empty when ready.
    mean_mc, target_mc : percent, of the stock and of its use. core_minus_skin_mc : percent.
    home_range_mc : driest and wettest of the home's year, percent.
    days_to_wait : in the room given, until both hold; None if they never do within two years there. Counted
        from 30 % for wetter stock.
    room_mc : what the room would bring it to.
    doubtful : the readings' own error could turn the verdict on the mean.
    notes : what was taken for granted.
    """

    ready: bool
    reasons: tuple[str, ...]
    mean_mc: float
    target_mc: float
    core_minus_skin_mc: float
    home_range_mc: tuple[float, float]
    days_to_wait: float | None
    room_mc: float
    doubtful: bool
    notes: tuple[str, ...] = ()


def acceptance(
    stock: BoardInAir,
    home: Air,
    core_mc: float,
    skin_mc: float | None = None,
    *,
    within_mc: float = WITHIN_MC,
    core_to_skin_mc: float = CORE_TO_SKIN_MC,
    reading_sd_mc: float = METER_SD,
) -> Acceptance:
    """Judge stock by its core and skin moisture, and say how long it must wait in the room it lies in.

    Parameters
    ----------
    stock : the board and the room it waits in (stickered: both faces bare).
    home : the year it is meant for. core_mc, skin_mc : percent; no skin given: taken as even, and said.
    within_mc, core_to_skin_mc : tolerances, percent points. reading_sd_mc : standard deviation of the
        readings (``MoistureReading.sd``).
    """
    core = float(within(core_mc, phrase("core moisture"), 0.0, 120.0, "%"))
    skin = core if skin_mc is None else float(within(skin_mc, phrase("skin moisture"), 0.0, 120.0, "%"))
    tolerance = float(within(within_mc, phrase("tolerance"), 0.1, 10.0, "%"))
    year = daily_moisture(home)
    target, mean = float(year.mean()), float(mean_of_core_and_skin(core, skin))
    reasons = []
    if abs(mean - target) > tolerance:
        way = say("damper") if mean > target else say("drier")
        reasons.append(
            say(
                "{mean:.1f} % {way} than in use ({target:.1f} %)",
                mean=abs(mean - target),
                way=way,
                target=target,
            )
        )
    if abs(core - skin) > core_to_skin_mc:
        reasons.append(
            say("core {core:.1f} %, skin {skin:.1f} %: not even through its thickness", core=core, skin=skin)
        )
    middles, _ = grid(stock.thickness_mm, DEFAULT_CELLS)
    profile = np.minimum(parabolic_profile(core, skin, middles / stock.thickness_mm), WETTEST_MARCHED_MC)
    typical = (min(mean, WETTEST_MARCHED_MC) + stock.air_mc) / 2
    waiting = march(stock.thickness_mm, profile, [stock.spell(LONGEST_WAIT_DAYS)], stock.rate(typical))
    notes = [] if skin_mc is not None else [say("no skin reading: taken as even from core to skin")]
    if max(core, skin) > WETTEST_MARCHED_MC:
        notes.append(
            say(
                "above {wettest_marched:g} % there is free water in it: the wait is counted from there "
                "on, and the drying before that comes on top",
                wettest_marched=WETTEST_MARCHED_MC,
            )
        )
    wait = 0.0 if not reasons else _wait(waiting, target, tolerance, core_to_skin_mc)
    return Acceptance(
        not reasons,
        tuple(reasons),
        mean,
        target,
        core - skin,
        (float(year.min()), float(year.max())),
        wait,
        stock.air_mc,
        abs(abs(mean - target) - tolerance)
        < float(within(reading_sd_mc, phrase("doubt of the readings"), 0.0, 10.0, "%")),
        tuple(notes),
    )


def _wait(course: March, target: float, tolerance: float, core_to_skin: float) -> float | None:
    """First day from which the mean is near the target and the board even, for good."""
    near = days_to_come_within(course, target, tolerance)
    skin = (course.show_mc + course.back_mc) / 2
    even = day_after_the_last(np.abs(course.core_mc - skin) > core_to_skin, course)
    return None if near is None or even is None else max(near, even)
