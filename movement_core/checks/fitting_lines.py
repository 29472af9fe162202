"""Hinges on a slab, and hooks or bolts on a wide rail, that the wood they sit on moves apart."""

from __future__ import annotations

from itertools import combinations

import numpy as np

from movement_core.checks.finding import BREAKS, JAMS, Finding
from movement_core.checks.fittings import Fitting, Fittings, fittings_of
from movement_core.checks.told import told, worst_day
from movement_core.piece.contact.joints import END
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def fitting_lines(whole: WholePiece) -> list[Finding]:
    """One finding for each two sides whose fittings are moved apart on the one and not on the other."""
    fittings = fittings_of(whole)
    if fittings is None:
        return []
    worst: dict[tuple[int, int], tuple[float, Finding]] = {}
    for one, other in combinations(fittings.found, 2):
        for carrier, counter in _shared(fittings, one, other):
            found = _judge(fittings, (one, other), carrier, counter)
            sides = sorted((fittings.side[carrier[0]], fittings.side[counter[0]]))
            pair = sides[0], sides[1]
            if found is not None and (pair not in worst or found[0] > worst[pair][0]):
                worst[pair] = found
    return [finding for _, finding in worst.values()]


def boards_on_fittings(whole: WholePiece) -> set[str]:
    """Keys of the parts that this check has told of."""
    return {key for finding in fitting_lines(whole) for key in finding.keys}


Ends = tuple[int, int]  # the part of one side at the first fitting, and at the second


def _shared(fittings: Fittings, one: Fitting, other: Fitting) -> list[tuple[Ends, Ends]]:
    """Pairs of sides that both fittings join: the parts of each side that they touch."""
    first = {fittings.side[wood]: wood for wood in one.woods}
    second = {fittings.side[wood]: wood for wood in other.woods}
    common = sorted(set(first) & set(second))
    return [((first[p], second[p]), (first[q], second[q])) for p, q in combinations(common, 2)]


def _judge(
    fittings: Fittings, pair: tuple[Fitting, Fitting], one: Ends, other: Ends
) -> tuple[float, Finding] | None:
    places = pair[0].middle, pair[1].middle
    apart = float(np.linalg.norm(places[1] - places[0]))
    if apart < 1.0:
        return None
    spans = [fittings.span((ends[0], places[0]), (ends[1], places[1])) for ends in (one, other)]
    if spans[0] is None or spans[1] is None:
        return None
    drift = spans[0] - spans[1]
    worst, month = worst_day(drift)
    if worst < limit("strained joint"):
        return None
    swings = [float(np.ptp(span)) for span in spans if span is not None]
    carrier, counter = (one, other) if swings[0] >= swings[1] else (other, one)
    return worst, _finding(
        fittings, pair, carrier, counter, (apart, drift if carrier is one else -drift, month)
    )


def _finding(
    fittings: Fittings,
    pair: tuple[Fitting, Fitting],
    carrier: Ends,
    counter: Ends,
    figures: tuple[float, Floats, int],
) -> Finding:
    whole, (apart, drift, month) = fittings.whole, figures
    least, most = min(float(drift.min()), 0.0), max(float(drift.max()), 0.0)
    at_end = _butts(whole, carrier[0], counter[0])
    values = {"apart": apart, "least": least, "most": most}
    if at_end:
        check, severity = "bed-rail-fittings", JAMS
        message = say(
            "it hangs by fittings {apart:.0f} mm apart across its grain, which moves {least:+.1f} to {most:+.1f} mm "
            "between them while what they hook into does not: they bind, or tear out (fittings taken as fixed to what "
            "they touch)",
            **values,
        )
        remedy = say(
            "fix it at one fitting and give the other's screws or bolt an upright slot; or set them nearer together, "
            "within {width:.0f} mm of the rail's height; tighten them again each season: what carries people must not "
            "come loose",
            width=limit("glued across"),
        )
    else:
        check, severity = "hinge-line-drifts", BREAKS
        message = say(
            "its hinges sit {apart:.0f} mm apart across its grain, which moves {least:+.1f} to {most:+.1f} mm between "
            "them while what it hangs on does not: they bind, and the screws tear out or it splits (fittings taken "
            "as fixed to what they touch)",
            **values,
        )
        remedy = say(
            "turn the grain along the line of the hinges, or frame the panel; or screw one hinge fast and the other "
            "in slots along that line"
        )
    indices = [*carrier, *counter, *(part for fitting in pair for part in fitting.parts)]
    return told(
        whole, check, severity, indices, message, remedy, month,
        {"apart_mm": apart, "least_mm": least, "most_mm": most},
    )  # fmt: skip


def _butts(whole: WholePiece, part: int, counter: int) -> bool:
    """Whether a part's end stands tight on the other part, as a rail's does; doors keep a gap there."""
    return any(
        joint.meeting.contacts and joint.sides[joint.parts.index(part)] == END
        for joint in whole.joints
        if set(joint.parts) == {part, counter}
    )
