"""Plans for a found top, with what it does when nothing holds it, and when only the middle of its ends is held."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.errors import InputError
from movement_core.holding.anchor_plan import plan_anchors
from movement_core.holding.fasteners import ACROSS, find_kind
from movement_core.holding.held import Held
from movement_core.holding.model import Anchor
from movement_core.holding.plan_model import Plan, Top, Wish
from movement_core.holding.plate import Trial, hold
from movement_core.holding.rails import Rail
from movement_core.piece.top_names import FixedLine, fixed_line
from movement_core.piece.tops import FoundTop
from movement_core.wording import say

FLATNESS_MM = 1.5  # sensible rounding for a table (common practice, no source)
METAL_KINDS = ("slotted steel",)


@dataclass(frozen=True, eq=False)
class TopPlans:
    """What may be done with one top.

    Attributes
    ----------
    found : the top. wish : what was asked. plans : one a kind, the best first.
    loose : held by nothing but its own frame, battens and ends, in each load case.
    centre : with one anchor at the middle of each end rail; empty where there are no two end rails.
    centre_rails : those two rails. stays : the line that stays put, which ``wish`` has too.
    drawn : with the fasteners that are drawn; empty where none is.
    """

    found: FoundTop
    wish: Wish
    plans: tuple[Plan, ...]
    loose: tuple[Held, ...]
    centre: tuple[Held, ...]
    centre_rails: tuple[str, ...]
    stays: FixedLine
    drawn: tuple[Held, ...] = ()

    @property
    def best(self) -> Plan | None:
        """The plan to show in full: the first that is found, else none."""
        return self.plans[0] if self.plans and self.plans[0].found else None

    @property
    def flat_by_itself(self) -> bool:
        """Whether it stays within the wish with no fastener at all."""
        return max(held.out_of_flat_mm for held in self.loose) <= self.wish.flatness_mm


def plan_top(
    found: FoundTop,
    flatness_mm: float | None = None,
    kinds: Sequence[str] = (),
    fixed: str | float = "",
) -> TopPlans:
    """The plans of a top.

    Parameters
    ----------
    found : a top that can be worked out.
    flatness_mm : most it may be out of flat in any month; default ``FLATNESS_MM``.
    kinds : of fastener to compare, by name; default those that suit what it rests on.
    fixed : the line that stays put, see ``fixed_line``.

    Raises
    ------
    InputError : the top cannot be worked out; an unknown kind or edge.
    """
    if found.top is None:
        raise InputError(
            "; ".join(found.why_not),
            where=say("top {name!r}", name=found.name),
            todo=say("say what is missing"),
        )
    given = tuple(dict.fromkeys(find_kind(kind).kind for kind in kinds))
    chosen = given or (METAL_KINDS if found.metal else Wish(FLATNESS_MM).kinds)
    flatness = FLATNESS_MM if flatness_mm is None else flatness_mm
    stand_in = None if found.metal else "slotted screw"
    stays = fixed_line(found.place, fixed)
    wish = Wish(flatness, chosen, stand_in, stays.at_mm)
    top = found.top
    trial = top.prepared()
    ends = end_rails(top)
    centre: tuple[Held, ...] = ()
    if len(ends) == 2:
        at_the_middle = [_middle_anchor(rail) for rail in ends]
        centre = tuple(hold(trial, at_the_middle, top.cases))
    loose = tuple(hold(trial, [], top.cases))
    names = tuple(rail.name for rail in ends) if len(ends) == 2 else ()
    drawn = held_as_drawn(found, trial)
    return TopPlans(found, wish, plan_anchors(top, wish), loose, centre, names, stays, drawn)


def held_as_drawn(found: FoundTop, trial: Trial | None = None) -> tuple[Held, ...]:
    """The top with the small parts that tie it to its frame taken as anchors, in each load case; empty without."""
    anchors = anchors_drawn(found)
    if found.top is None or not anchors:
        return ()
    return tuple(hold(trial or found.top.prepared(), anchors, found.top.cases))


def anchors_drawn(found: FoundTop) -> list[Anchor]:
    """The small parts that tie a top to its frame; those whose middle lies beyond its outline hold nothing there."""
    if found.top is None:
        return []
    middles = [(one, (one.low + one.high) / 2) for one in found.place.tied]
    return [
        Anchor(float(at[0]), float(at[1]), name=one.name)
        for one, at in middles
        if found.top.plate.holds(np.array([[at[0], at[1]]]))[0]
    ]


def end_rails(top: Top) -> list[Rail]:
    """The two rails across the grain that lie nearest to the two ends, where there are two."""
    across = sorted((r for r in top.rails if r.direction == ACROSS), key=lambda r: _middle(r)[0])
    if len(across) < 2 or _middle(across[0])[0] >= 0 or _middle(across[-1])[0] <= 0:
        return across[:1] if len(across) == 1 else []
    return [across[0], across[-1]]


def _middle(rail: Rail) -> tuple[float, float]:
    return rail.at(rail.length_mm / 2)


def _middle_anchor(rail: Rail) -> Anchor:
    along, _ = _middle(rail)
    return Anchor(along, 0.0, name=rail.name)
