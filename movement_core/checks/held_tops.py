"""Tops that nothing keeps flat, and bars across their grain that would split them if they were fixed solid."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields, is_dataclass

from movement_core.checks.finding import SHOWS, UNKNOWN, Finding
from movement_core.checks.screwed_bars import (
    crossing_bars,
    fixed_at_lines,
    fixed_between,
    held_by_screws,
    is_answered,
)
from movement_core.holding.anchor_plan import plan_anchors
from movement_core.holding.fixed_anyway import solid_width_remark
from movement_core.holding.held import ROCKS, TIPS, Held
from movement_core.holding.plan_model import Wish
from movement_core.holding.plate import hold
from movement_core.piece.top_names import fixed_line
from movement_core.piece.top_place import Near, TopPlace, touch
from movement_core.piece.top_plan import FLATNESS_MM, METAL_KINDS, anchors_drawn, held_as_drawn
from movement_core.piece.top_shapes import DRIEST, month_of_case
from movement_core.piece.tops import FoundTop
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def held_tops(whole: WholePiece) -> list[Finding]:
    """Findings on every top that can be worked out; what is missing of the others is told elsewhere."""
    found = []
    known: dict[object, tuple[Held, ...]] = {}
    for top in whole.tops:
        if top.top is not None:
            found += [finding for finding in (_flatness(top, known), _fixed_solid(whole, top)) if finding]
            found += fixed_at_lines(whole, top)
    return found


def _flatness(found: FoundTop, known: dict[object, tuple[Held, ...]]) -> Finding | None:
    """Out of flat with the fasteners drawn, with no frame at all, or with no plan that would do.

    ``known`` holds what tops do that nothing fastens: shelves and layers that are alike are worked out once.
    """
    top = found.top
    assert top is not None
    drawn = held_as_drawn(found)
    if drawn:
        count = len(anchors_drawn(found))
        return _departs(
            found,
            drawn,
            say("with the {count} fasteners drawn under it", count=count),
            say("place more of them, or others"),
        )
    alike = id(top.cases), _measures((top.plate, top.rails, top.bearings, top.beams))
    if alike not in known:
        known[alike] = tuple(hold(top.prepared(), [], top.cases))
    loose = known[alike]
    if not top.rails and not top.bearings:
        return _departs(
            found, loose, say("with nothing under it"), say("give it battens, breadboard ends or a frame")
        )
    if max(held.out_of_flat_mm for held in loose) <= FLATNESS_MM or not top.rails:
        return None
    kinds = METAL_KINDS if found.metal else ("slotted screw",)
    plan = plan_anchors(top, Wish(FLATNESS_MM, kinds, fixed_mm=fixed_line(found.place).at_mm))[0]
    if plan.found:
        return None  # it needs fasteners, and there are places for them
    return _departs(
        found,
        plan.held,
        say("held by as many screws as its frame has room for"),
        "; ".join(plan.what_would[:2]),
    )


def _measures(of: object) -> object:
    """What there is to measure of a top and its frame, to a millionth of a millimetre: all but the names."""
    if isinstance(of, float):
        return round(of, 6)
    if isinstance(of, tuple):
        return tuple(_measures(each) for each in of)
    if is_dataclass(of):
        return tuple(_measures(getattr(of, field.name)) for field in fields(of) if field.name != "name")
    return of


def _departs(found: FoundTop, held: Sequence[Held], how: str, remedy: str) -> Finding | None:
    worst = max(held, key=lambda one: one.out_of_flat_mm)
    rocks = next((flag for one in held for flag in (ROCKS, TIPS) if flag in one.flags), "")
    if worst.out_of_flat_mm <= FLATNESS_MM and not rocks:
        return None
    also = say("; it is {rocks}", rocks=say(rocks)) if rocks else ""
    try_out = say(
        "'hold' on the command line tries out fasteners, battens and breadboard ends, with their places"
    )
    place = found.place
    return Finding(
        check="top-not-flat",
        severity=SHOWS,
        parts=(place.name,),
        keys=tuple(board.part.key for board in place.boards),
        message=say(
            "{how} the top goes {off:.1f} mm out of flat{also}", how=how, off=worst.out_of_flat_mm, also=also
        ),
        remedy=f"{remedy}; {try_out}",
        month=month_of_case(worst.case, found.moistures),
        figures={"out_of_flat_mm": round(worst.out_of_flat_mm, 2), "wished_mm": FLATNESS_MM},
    )


def _fixed_solid(whole: WholePiece, found: FoundTop) -> Finding | None:
    """Bars across the grain whose joint to the top is not drawn nor confirmed: what they would do if fixed solid."""
    place, strain, top = found.place, found.strain, found.top
    assert strain is not None and top is not None
    screwed = [one.bar for one in held_by_screws(whole, found)]
    bars = [
        bar
        for bar in crossing_bars(place)
        if not (_fastened(place, bar) or bar in screwed or is_answered(whole, place, bar))
    ]
    if not bars:
        return None
    low = max(min(float(bar.low[1]) for bar in bars), strain.lines_mm[0])
    high = min(max(float(bar.high[1]) for bar in bars), strain.lines_mm[-1])
    change = [float(strain.moved(when, high, low)) for when in ("driest", "wettest")]
    remark = solid_width_remark(high - low, *change)
    if remark is None:
        return None
    fixed = fixed_between(found, low, high)
    names = ", ".join(bar.name for bar in bars)
    return Finding(
        check="fixed-across-the-grain",
        severity=UNKNOWN,
        parts=(place.name, *(bar.name for bar in bars)),
        keys=(*(b.part.key for b in place.boards), *(bar.solved.part.key for bar in bars)),
        message=say(
            "how {names} are joined to the top is not drawn. If glued or screwed {remark}; up to {stress:.0f} MPa "
            "across the grain, split: {split}",
            names=names,
            remark=remark,
            stress=fixed.tension_mpa,
            split=say(fixed.split),
        ),
        remedy=say(
            "fix it at one line only and let it slide elsewhere: slots, buttons, clips, or tenons with room; 'hold' "
            "on the command line gives their places. If it slides already, confirm the joints so"
        ),
        month=month_of_case(DRIEST, found.moistures),
        figures={
            "solid_width_mm": round(high - low, 1),
            "change_driest_mm": round(change[0], 2),
            "change_wettest_mm": round(change[1], 2),
            "tension_mpa": round(fixed.tension_mpa, 1),
        },
    )


def _fastened(place: TopPlace, bar: Near) -> bool:
    return any(touch(one, bar) for one in place.fasteners)
