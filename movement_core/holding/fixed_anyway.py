"""What if it is fixed anyway: stress across the grain, splitting, crushing, and the gap of a mitre.

Elastic stress is an upper bound: wood creeps, glue lines and frames give. So a split is a class of risk,
never a margin.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from movement_core.errors import InputError
from movement_core.holding.travel import WidthStrain
from movement_core.moisture.compression import CRUSHING_STRAIN
from movement_core.wording import say

# Share of the strength across the grain up to which a split is called unlikely, possible; above, likely.
# Our own judgement: short-term strength, single boards vary by some 25 %, creep relieves slow stress.
SPLIT_UNLIKELY, SPLIT_POSSIBLE = 0.3, 0.8

# Widest cross-grain glue line or screwed line that passes unremarked: 75 mm most often, others 100 and more
# (common practice, no source).
SOLID_WIDTH_MM, SOLID_WIDTH_MOST_MM = 75.0, 100.0


@dataclass(frozen=True)
class Fixed:
    """A part that is kept from moving across its grain over a width.

    Attributes
    ----------
    kept_shrinkage, kept_swelling : strains that are not let out, as fractions ≥ 0.
    tension_mpa, compression_mpa : elastic stress across the grain in the driest and wettest state: upper
        bounds.
    split : "none", "unlikely", "possible", "likely", or "unknown" where no strength across the grain is known.
    crush : "none", "begins" or "certain": past about 0.5 and 1 % of compressive strain.
    set_most : upper bound of the lasting strain after one damp season; set_most_mm over the width.
    """

    kept_shrinkage: float
    kept_swelling: float
    tension_mpa: float
    compression_mpa: float
    split: str
    crush: str
    set_most: float
    set_most_mm: float


def if_fixed(
    strain: WidthStrain,
    e_across_mpa: float,
    tension_perp_mpa: float | None,
    *,
    from_mm: float | None = None,
    to_mm: float | None = None,
    let_out: float = 0.0,
) -> Fixed:
    """The part fixed at two lines, or all along between them.

    Parameters
    ----------
    strain : of the part's boards since fitting.
    e_across_mpa : modulus across the grain. tension_perp_mpa : strength across it, None where unknown.
    from_mm, to_mm : the two fixed lines; default the two edges.
    let_out : share 0–1 of the movement that slack or a yielding partner lets out.
    """
    if not 0 <= let_out <= 1:
        raise InputError(
            say("share let out {let_out!r}", let_out=let_out), where=say("fixed part"), allowed=say("0 to 1")
        )
    if not (math.isfinite(e_across_mpa) and e_across_mpa > 0):
        raise InputError(
            say("modulus {e_across!r}", e_across=e_across_mpa),
            where=say("fixed part"),
            allowed=say("above 0 MPa"),
        )
    low = strain.lines_mm[0] if from_mm is None else from_mm
    high = strain.lines_mm[-1] if to_mm is None else to_mm
    if high <= low:
        raise InputError(
            say("fixed lines at {low:g} and {high:g} mm", low=low, high=high),
            where=say("fixed part"),
            allowed=say("rising order"),
        )
    width = high - low
    dry, wet = (float(strain.moved(s, high, low)) / width * (1 - let_out) for s in ("driest", "wettest"))
    shrinkage, swelling = max(-dry, 0.0), max(wet, 0.0)
    tension = e_across_mpa * shrinkage
    begins, certain = CRUSHING_STRAIN
    crush = "certain" if swelling > certain else "begins" if swelling > begins else "none"
    return Fixed(
        shrinkage,
        swelling,
        tension,
        e_across_mpa * swelling,
        _split(tension, tension_perp_mpa),
        crush,
        max(swelling - begins, 0.0),
        max(swelling - begins, 0.0) * width,
    )


def _split(tension: float, strength: float | None) -> str:
    if tension == 0:
        return "none"
    if strength is None:
        return "unknown"
    share = tension / strength
    return "unlikely" if share <= SPLIT_UNLIKELY else "possible" if share <= SPLIT_POSSIBLE else "likely"


def solid_width_remark(width_mm: float, least_change_mm: float, most_change_mm: float) -> str | None:
    """A sentence on a joint glued or screwed solid across the grain, or None where practice lets it pass.

    Parameters
    ----------
    width_mm : of the joint across the grain. least_change_mm, most_change_mm : movement over it since fitting.
    """
    if width_mm <= SOLID_WIDTH_MM:
        return None
    some = width_mm <= SOLID_WIDTH_MOST_MM
    return say(
        "solid across {width:.0f} mm of grain that moves {least:+.1f} to {most:+.1f} mm: {how} (75 mm most often; "
        "common practice, no source)",
        width=width_mm,
        least=least_change_mm,
        most=most_change_mm,
        how=say("some let it pass up to 100 mm") if some else say("wider than practice allows"),
    )


def mitre_gap_mm(width_mm: float, strain: float) -> float:
    """How far a mitre of two members opens, mm: at the heel (inside) when they shrink (+), at the toe (−) when
    they swell.

    Both members change width by ``strain``, nothing along the grain; the touching corners stay together. The
    two inside corners, once one point, are √2·width·|strain| apart (geometry).
    """
    return -math.sqrt(2) * width_mm * strain
