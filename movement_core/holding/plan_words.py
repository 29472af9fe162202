"""What a plan says in words: why it fails, and what it does in each season."""

from __future__ import annotations

from collections.abc import Sequence

from movement_core.holding.held import ROCKS, TIPS, Held
from movement_core.holding.model import Plate
from movement_core.holding.plan_model import Placed
from movement_core.holding.rails import Rail

ON_THE_CENTRE = 0.15  # share of the width either side of the middle that counts as the centre (own)


def problems_of(placed: Sequence[Placed], held: Sequence[Held], flatness_mm: float) -> tuple[str, ...]:
    """One sentence for each wish that is not met in some load case."""
    found = []
    for h in held:
        if h.out_of_flat_mm > flatness_mm:
            found.append(f"{h.case}: {h.out_of_flat_mm:.2f} mm out of flat, wished {flatness_mm:.2f} mm")
        found.extend(f"{h.case}: {flag}" for flag in (ROCKS, TIPS) if flag in h.flags)
    for p in placed:
        allowed = p.capacity.allowable_n
        if allowed is not None and p.pull_n > allowed:
            found.append(
                f"{p.kind} on {p.rail} at {p.from_rail_start_mm:.0f} mm: pulled with {p.pull_n:.0f} N, "
                f"allowed {allowed:.0f} N"
            )
    return tuple(found)


def fixed_line_note(placed: Sequence[Placed], rails: Sequence[Rail], fixed_mm: float) -> str:
    """What keeps the fixed line where it is: a plain hole of the plan's own, or a screw to add."""
    plain = [
        p for p in placed if p.kind in ("slotted screw", "slotted steel", "plain screw") and p.slot is None
    ]
    if plain:
        where = ", ".join(sorted({p.rail for p in plain}))
        return f"fixed line at {fixed_mm:+.0f} mm across: held by the plain holes on {where}"
    across = [r.name for r in rails if r.direction == "across"]
    where = "where " + " and ".join(across) + " cross it" if across else "on the rail nearest to it"
    return f"fixed line at {fixed_mm:+.0f} mm across: add one plain screw {where}, or the whole top may creep aside"


def season_notes(placed: Sequence[Placed], held: Sequence[Held], plate: Plate) -> tuple[str, ...]:
    """For each load case what holds and what does not; idle anchors are named, enough ones too."""
    notes = []
    for h in held:
        idle = [p for p in placed if h.case not in p.at_work]
        if not placed:
            notes.append(f"{h.case}: nothing holds it, {h.out_of_flat_mm:.1f} mm out of flat")
            continue
        centred = [p for p in placed if abs(p.place_mm[1]) <= ON_THE_CENTRE * plate.width_mm]
        working = [p for p in placed if h.case in p.at_work]
        said = f"{h.case}: {h.out_of_flat_mm:.1f} mm out of flat"
        if not working:
            said += "; no anchor is pulled"
        elif centred and all(p in centred for p in working):
            said += (
                "; the anchors near the middle of the width do all the holding and are enough by themselves"
            )
        elif centred and not any(p in centred for p in working):
            said += "; the anchors near the middle of the width do nothing, those toward the edges hold"
        if idle and working:
            said += f"; {len(idle)} of {len(placed)} anchors idle"
        gap = max((lift.gap_mm for lift in h.lifted), default=0.0)
        if gap > 0:
            said += f"; it stands off its frame by up to {gap:.1f} mm"
        notes.append(said)
        notes.extend(f"{h.case}: {flag}" for flag in h.flags)
    return tuple(notes)
