"""The joints of a piece as a list to go through: those of which nothing is known and that matter come first."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from movement_core.piece.contact.joints import CONFIRMED, NEAR, OVERLAP, UNKNOWN
from movement_core.piece.crossing import IF_SOLID, SPLITS
from movement_core.piece.whole import WholePiece

MOVES_MM = 0.2  # differential movement from which it matters how two parts are joined (own judgement)
STRAINED = 0.3  # share of the wood's strength from which a joint is worth a look (own judgement)


@dataclass(frozen=True)
class JointRow:
    """One joint.

    Attributes
    ----------
    number : of the joint in the piece. parts, keys : its two parts. kind, reason : as it is judged now.
    state : "unknown", "inferred" or "confirmed". touching : False where they only face each other across a gap.
    moves_mm, month : the largest differential movement and its month 0–11; None where a part's is not known.
    force_n, way : that it bears at most, elastic; None where that is not known, and ``force_note`` why.
    matters : whether its kind decides something: it moves, it bears much, or a finding names it.
    """

    number: int
    parts: tuple[str, str]
    keys: tuple[str, str]
    kind: str
    state: str
    reason: str
    touching: bool
    moves_mm: float | None
    month: int | None
    force_n: float | None
    way: str
    force_note: str
    matters: bool


def joint_rows(whole: WholePiece, found: Collection[frozenset[str]] = ()) -> tuple[JointRow, ...]:
    """Every joint, unknown ones that matter first, then by how much they move.

    ``found``: keys of the two parts of which a finding tells.
    """
    judged = {frozenset(crossing.joint.parts): crossing.verdict for crossing in whole.crossings}
    rows = []
    for number, (joint, movement) in enumerate(zip(whole.joints, whole.movements)):
        one, other = joint.parts
        keys = whole.parts[one].part.key, whole.parts[other].part.key
        worst = movement.worst
        force = None if whole.forces is None else whole.forces.between(one, other)
        stress, strength = (None, None) if force is None else (force.stress_mpa, force.strength_mpa)
        moves = None if worst is None else worst.worst_mm
        state = CONFIRMED if joint.origin == CONFIRMED else UNKNOWN if joint.kind == UNKNOWN else joint.origin
        unsure = state == UNKNOWN and (moves is None or moves >= MOVES_MM)
        hurts = judged.get(frozenset(joint.parts)) in (SPLITS, IF_SOLID)
        strained = bool(stress and strength and stress >= STRAINED * strength)
        rows.append(
            JointRow(
                number,
                (whole.name(one), whole.name(other)),
                keys,
                joint.kind,
                state,
                joint.reason,
                joint.kind != NEAR,
                moves,
                None if worst is None else worst.worst_month,
                None if force is None else force.force_n,
                "" if force is None else force.way,
                "" if force is None else force.reason,
                joint.kind == OVERLAP or unsure or hurts or strained or frozenset(keys) in found,
            )
        )
    return tuple(sorted(rows, key=_rank))


def _rank(row: JointRow) -> tuple[bool, bool, bool, float, int]:
    return not row.touching, not row.matters, row.state != UNKNOWN, -(row.moves_mm or 0.0), row.number
