"""Why a board or top is no longer flat: what each likely cause would do to it by our own physics, against what was
measured; the causes in order, the one measurement that parts the first two, what to do and what not.

Crown (the middle higher, seen from the show face) is positive, hollow negative. Each cause predicts a range of cups;
beside it stands how well the maker's story suits it. The shares are Bayes' rule over the causes listed here, among
them *something that was not told*: they order the causes and are no probabilities to bet on.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.moisture.spread import normal_share
from movement_core.piece.warp_case import HEARTS, HELD, LIVELY, LYING, METER_SD, Cause, WarpCase
from movement_core.piece.warp_causes import CAUSES, TWISTS, corner_lift, untold
from movement_core.wording import say, word

__all__ = ["HEARTS", "LYING", "Cause", "Diagnosis", "WarpCase", "diagnose"]


LEAST_SHARE = 0.01  # a cause with less is told as unlikely


@dataclass(frozen=True)
class Diagnosis:
    """Causes, the likeliest first; what to measure, to do, and not to do.

    Attributes
    ----------
    causes : the likeliest first; their shares add to 1.
    measure : the one measurement that parts the first two. not_to : what would make it worse, or hurt.
    wait_days : how long it has to stand free for a second measurement to tell, days.

    >>> found = diagnose(WarpCase(find_species("white oak"), width_mm=500, thickness_mm=20, cup_mm=3))
    >>> round(sum(cause.share for cause in found.causes), 6), found.wait_days
    (1.0, 14)
    """

    causes: tuple[Cause, ...]
    measure: str
    not_to: tuple[str, ...]
    wait_days: float


def diagnose(case: WarpCase) -> Diagnosis:
    """Likely causes of a cup in order. Pure; about half a second of marching.

    Parameters
    ----------
    case : what the maker sees and knows.

    Returns
    -------
    ``Diagnosis``. The figures are those of the rooms ``section`` and ``moisture``; how well a story suits a cause is
    our own judgement.

    >>> case = WarpCase(find_species("yellow poplar"), 1070, 19, cup_mm=-32, boards=8, flat_mc=10, rh_percent=30,
    ...                 finish="show bare, back varnish 3")
    >>> diagnose(case).causes[0].name
    'one face breathes more than the other (finish)'
    """
    found = [cause for make in CAUSES if (cause := make(case)) is not None]
    weights = np.array([cause.suits * _density(case, cause) for cause in found])
    shares = weights / weights.sum()
    ranked = sorted(
        (Cause(**{**cause.__dict__, "share": float(share)}) for cause, share in zip(found, shares)),
        key=lambda cause: -cause.share,
    )
    days = max(7.0, round((case.thickness_mm / 20.0) ** 2 * 14.0))
    return Diagnosis(tuple(ranked), what_to_measure(case, ranked, days), _not_to(case), days)


def _density(case: WarpCase, cause: Cause) -> float:
    """Density of the measured cup where the cause may make anything of its range, each end unsure."""
    reach = max(abs(cause.least_mm), abs(cause.most_mm))
    sd = float(np.hypot(0.3, 2 * LIVELY * reach))  # straightedge; board and moisture
    low, high = cause.least_mm - 0.1, cause.most_mm + 0.1
    ends = normal_share((case.cup_mm - np.array([low, high])) / sd)
    return max(float(ends[0] - ends[1]) / (high - low), 1e-12)


def what_to_measure(case: WarpCase, ranked: list[Cause], days: float) -> str:
    """The one measurement whose outcomes lie furthest apart under the first two causes, in its own doubt."""
    first, second = [cause for cause in ranked if cause.name != untold(case).name][:2]
    if first.share < LEAST_SHARE:
        return say(
            "nothing that was told makes such a cup: tell what is not told yet, and note the moisture of both faces "
            "and the cup each week"
        )
    cup, names = abs(case.cup_mm), {"first": first.name, "second": second.name}
    metered = case.show_mc is not None and case.back_mc is not None
    choices = [
        (0.0 if metered else abs(first.face_difference_mc - second.face_difference_mc) / METER_SD,
         say("meter both faces close to the skin: {one:+.1f} % (show less back) speaks for '{first}', "
             "{two:+.1f} % for '{second}'",
             one=first.face_difference_mc, two=second.face_difference_mc, **names)),
        (abs(first.left_after_wait - second.left_after_wait) * cup / 1.0,
         say("stand it free with both faces open for {days:.0f} days and measure again: "
             "{one:.1f} mm left speaks for '{first}', {two:.1f} mm for '{second}'",
             days=days, one=first.left_after_wait * cup, two=second.left_after_wait * cup, **names)),
        (abs(first.left_when_freed - second.left_when_freed) * cup / 0.7 if case.lying in HELD else 0.0,
         say("loosen the fasteners and measure at once: "
             "{one:.1f} mm left speaks for '{first}', {two:.1f} mm for '{second}'",
             one=first.left_when_freed * cup, two=second.left_when_freed * cup, **names)),
    ]  # fmt: skip
    if case.length_mm is not None and case.twist_mm is None and case.heart != "inside":
        lift = corner_lift(case)
        corners = [lift if cause.name == word(TWISTS) else 0.0 for cause in (first, second)]
        choices.append(
            (abs(corners[0] - corners[1]) / 1.0,
             say("sight over winding sticks, or measure how far one corner stands off a flat bench: "
                 "up to {one:.1f} mm speaks for '{first}', up to {two:.1f} mm for '{second}'",
                 one=corners[0], two=corners[1], **names))
        )  # fmt: skip
    best = max(choices)
    if best[0] >= 1.0:
        return best[1]
    if second.share < LEAST_SHARE:
        return say(
            "one cause alone fits what was told: note the moisture of both faces and the cup each week, and see "
            "whether they go as it says"
        )
    return say(
        "no single measurement parts the first two causes: note the moisture of both faces and the cup each week"
    )


def _not_to(case: WarpCase) -> tuple[str, ...]:
    told = [
        say("never bolt or clamp it flat by force: it splits, or tears its fasteners out later"),
        say(
            "do not plane it until its faces read alike and it has stopped moving: it would cup the other way"
        ),
        say("do not wet the hollow face to pull it flat: the wood is crushed and cups worse when it dries"),
    ]
    if case.lying in HELD:
        told.append(say("a board that is let go may spring: keep clear of its edges"))
    told.append(
        say("if you rip it, lay the hollow face down: a cupped board can pinch the blade and kick back")
    )
    return tuple(told)
