"""The force behind a finding: what goes through the joints it is about, in figures and in a sentence."""

from __future__ import annotations

from collections.abc import Iterable

from movement_core.air.year import MONTHS
from movement_core.piece.restrained import PRESSED, RELAXED, RestrainedJoint
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def worst_force(whole: WholePiece, pairs: Iterable[tuple[int, int]]) -> RestrainedJoint | None:
    """Of the joints between pairs of parts the one that bears most; None where none bears anything that is known."""
    if whole.forces is None:
        return None
    found = [whole.forces.between(*pair) for pair in pairs]
    borne = [one for one in found if one is not None and one.force_n]
    return max(borne, key=lambda one: one.force_n or 0.0, default=None)


def force_figures(found: RestrainedJoint | None) -> dict[str, float]:
    """``force_n``, ``relaxed_n`` (the most that is left after months) and, where an area bears it, ``stress_mpa``."""
    if found is None or found.force_n is None:
        return {}
    figures = {"force_n": round(found.force_n, 0), "relaxed_n": round(RELAXED[1] * found.force_n, 0)}
    if found.stress_mpa is not None:
        figures["stress_mpa"] = round(found.stress_mpa, 2)
    return figures


def force_words(found: RestrainedJoint | None) -> str:
    """A sentence to add to a finding; "" where no force is known."""
    if found is None or found.force_n is None or found.month is None:
        return ""
    kn, month = found.force_n / 1000, say(MONTHS[found.month])
    if found.stress_mpa is None:
        return say(". Were all to stay elastic, {kn:.1f} kN would bear on it in {month}", kn=kn, month=month)
    if found.strength_mpa is None:
        return say(
            ". Were all to stay elastic, {kn:.1f} kN ({stress:.1f} MPa) would bear on the joint in {month}; what the "
            "wood bears that way is not known",
            kn=kn,
            month=month,
            stress=found.stress_mpa,
        )
    figures = {"kn": kn, "month": month, "stress": found.stress_mpa, "strength": found.strength_mpa}
    if found.way == PRESSED:
        return say(
            ". Were all to stay elastic, {kn:.1f} kN would press in {month}: {stress:.1f} MPa, where clear wood is "
            "crushed from {strength:.1f}",
            **figures,
        )
    return say(
        ". Were all to stay elastic, {kn:.1f} kN would bear on the joint in {month}: {stress:.1f} MPa, where clear "
        "wood bears {strength:.1f}",
        **figures,
    )
