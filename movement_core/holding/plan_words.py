"""What a plan says in words: why it fails, and what it does in each season."""

from __future__ import annotations

from collections.abc import Sequence

from movement_core.holding.fasteners import HOLE, SLOT, STEEL, find_kind
from movement_core.holding.held import ROCKS, TIPS, Held
from movement_core.holding.model import Plate
from movement_core.holding.plan_model import OUT_OF_FLAT, PULLED, UNSTEADY, Placed, Problem
from movement_core.holding.rails import Rail
from movement_core.wording import say, word

ON_THE_CENTRE = 0.15  # share of the width either side of the middle that counts as the centre (own)


def case_told(name: str) -> str:
    """A load case in the language that is spoken: its month or day, and which reading of the rings it follows.

    >>> case_told("driest day, bow upper bound")
    'driest day, bow upper bound'
    """
    return ", ".join(word(part) for part in name.split(", "))


def problems_of(placed: Sequence[Placed], held: Sequence[Held], flatness_mm: float) -> tuple[Problem, ...]:
    """One for each wish that is not met in some load case."""
    found = []
    for h in held:
        if h.out_of_flat_mm > flatness_mm:
            off = say(
                "{case}: {flat:.2f} mm out of flat, wished {wished:.2f} mm",
                case=case_told(h.case),
                flat=h.out_of_flat_mm,
                wished=flatness_mm,
            )
            found.append(Problem(OUT_OF_FLAT, off))
        unsteady = [f"{case_told(h.case)}: {word(flag)}" for flag in (ROCKS, TIPS) if flag in h.flags]
        found.extend(Problem(UNSTEADY, text) for text in unsteady)
    for p in placed:
        allowed = p.capacity.allowable_n
        if allowed is not None and p.pull_n > allowed:
            pulled = say(
                "{kind} on {rail} at {at:.0f} mm: pulled with {pull:.0f} N, allowed {allowed:.0f} N",
                kind=word(find_kind(p.kind).name),
                rail=p.rail,
                at=p.from_rail_start_mm,
                pull=p.pull_n,
                allowed=allowed,
            )
            found.append(Problem(PULLED, pulled))
    return tuple(found)


def fixed_line_note(placed: Sequence[Placed], rails: Sequence[Rail], fixed_mm: float) -> str:
    """What keeps the fixed line where it is: a plain hole of the plan's own, or a screw to add."""
    plain = [p for p in placed if find_kind(p.kind).shape in (SLOT, STEEL, HOLE) and p.slot is None]
    if plain:
        where = ", ".join(sorted({p.rail for p in plain}))
        return say(
            "fixed line at {at:+.0f} mm across: held by the plain holes on {where}", at=fixed_mm, where=where
        )
    across = [r.name for r in rails if r.direction == "across"]
    if across:
        return say(
            "fixed line at {at:+.0f} mm across: add one plain screw where {rails} cross it, or the whole top may creep "
            "aside",
            at=fixed_mm,
            rails=say(" and ").join(across),
        )
    return say(
        "fixed line at {at:+.0f} mm across: add one plain screw on the rail nearest to it, or the whole top may creep "
        "aside",
        at=fixed_mm,
    )


def season_notes(placed: Sequence[Placed], held: Sequence[Held], plate: Plate) -> tuple[str, ...]:
    """For each load case what holds and what does not; idle anchors are named, enough ones too."""
    notes = []
    for h in held:
        idle = [p for p in placed if h.case not in p.at_work]
        if not placed:
            notes.append(
                say(
                    "{case}: nothing holds it, {flat:.1f} mm out of flat",
                    case=case_told(h.case),
                    flat=h.out_of_flat_mm,
                )
            )
            continue
        centred = [p for p in placed if abs(p.place_mm[1]) <= ON_THE_CENTRE * plate.width_mm]
        working = [p for p in placed if h.case in p.at_work]
        said = [say("{case}: {flat:.1f} mm out of flat", case=case_told(h.case), flat=h.out_of_flat_mm)]
        if not working:
            said.append(say("no anchor is pulled"))
        elif centred and all(p in centred for p in working):
            said.append(
                say(
                    "the anchors near the middle of the width do all the holding and are enough by themselves"
                )
            )
        elif centred and not any(p in centred for p in working):
            said.append(
                say("the anchors near the middle of the width do nothing, those toward the edges hold")
            )
        if idle and working:
            said.append(say("{idle} of {count} anchors idle", idle=len(idle), count=len(placed)))
        gap = max((lift.gap_mm for lift in h.lifted), default=0.0)
        if gap > 0:
            said.append(say("it stands off its frame by up to {gap:.1f} mm", gap=gap))
        notes.append("; ".join(said))
        notes.extend(f"{case_told(h.case)}: {word(flag)}" for flag in h.flags)
    return tuple(notes)
