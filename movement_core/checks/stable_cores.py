"""Solid wood on a core that does not move with it: faced on one side the panel bows, on both the facing gives."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from movement_core.checks.crossing_grain import confirm_words, crossing_finding, crossing_words
from movement_core.checks.crossing_kinds import CORE, crossings_by_part
from movement_core.checks.finding import Finding
from movement_core.piece.crossing import Crossing
from movement_core.piece.limits import limit
from movement_core.piece.stiffness import board_stiffness
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

CORE_MPA = (
    4000.0  # bending modulus of a core, between fibreboard and plywood (from memory); the bow changes little
)
EVEN = 0.8  # facings on both sides count as even down to this share of the thicker one (own judgement)


def stable_cores(whole: WholePiece) -> list[Finding]:
    """One finding for each core with solid wood on it, if it is glued fast."""
    return [_finding(whole, crossings) for crossings in crossings_by_part(whole, CORE)]


def bow_mm(
    width_mm: float, strain: float, face_mm: float, core_mm: float, face_mpa: float, core_mpa: float
) -> float:
    """Bow of two layers glued together when the one changes by a strain and the other does not, mm.

    Curvature of a strip of two layers after Timoshenko (1925), Analysis of bi-metal thermostats, eq. 4 (from memory).

    Parameters
    ----------
    width_mm : over which the bow is measured. strain : of the facing less that of the core.
    face_mm, core_mm : thicknesses. face_mpa, core_mpa : moduli along the width.
    """
    m, n = face_mm / core_mm, face_mpa / core_mpa
    together = 3 * (1 + m) ** 2 + (1 + m * n) * (m**2 + 1 / (m * n))
    curvature = 6 * strain * (1 + m) ** 2 / ((face_mm + core_mm) * together)
    return curvature * width_mm**2 / 8


def _finding(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    core = whole.name(worst.other)
    bow = None if _even(whole, crossings) else _bow(whole, worst)
    message = crossing_words(worst, say("solid wood"))
    if bow is None:
        message += say(". It does not move with {core}: its glue line shears at the edges", core=core)
    else:
        message += say(
            ". Only one face of {core} carries it: the panel bows {bow:.1f} mm if nothing holds it flat",
            core=core,
            bow=bow,
        )
    remedy = say(
        "fix it at one line and let the rest slide, or face the core with veneer of {veneer:.0f} mm at most on both "
        "sides; a border of solid wood round a core needs no more than glue{confirm}",
        veneer=limit("veneer"),
        confirm=confirm_words(worst),
    )
    finding = crossing_finding(whole, "solid-on-stable-core", crossings, message, remedy)
    return finding if bow is None else replace(finding, figures={**finding.figures, "bow_mm": round(bow, 2)})


def _bow(whole: WholePiece, crossing: Crossing) -> float | None:
    """Bow of a core that is faced on one side; None where the wood's stiffness is not known."""
    facing, core = whole.parts[crossing.carrier], whole.parts[crossing.other].part
    species, angle = facing.part.species.value, facing.ring_angle_deg
    if species is None or angle is None:
        return None
    stiff = board_stiffness(species, angle).elastic.e_across_mpa
    thick = float(np.min(core.frame.size_mm))
    strain = crossing.worst_mm / crossing.width_mm
    return bow_mm(crossing.width_mm, strain, facing.part.frame.thickness_mm, thick, stiff, CORE_MPA)


def _even(whole: WholePiece, crossings: list[Crossing]) -> bool:
    """Whether both faces of the core carry wood of about the same thickness."""
    core = whole.parts[crossings[0].other].part.frame
    through = core.axes[int(np.argmin(core.size_mm))]
    thick = {-1: 0.0, 1: 0.0}
    for crossing in crossings:
        frame = whole.parts[crossing.carrier].part.frame
        side = 1 if float((frame.centre - core.centre) @ through) > 0 else -1
        thick[side] = max(thick[side], frame.thickness_mm)
    return min(thick.values()) >= EVEN * max(thick.values())
