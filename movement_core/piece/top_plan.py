"""Plans for a found top, with what it does when nothing holds it, and when only the middle of its ends is held."""

from __future__ import annotations

import difflib
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import InputError, UnknownName
from movement_core.holding.anchor_plan import plan_anchors
from movement_core.holding.fasteners import ACROSS, all_kinds, find_kind
from movement_core.holding.held import Held
from movement_core.holding.model import Anchor
from movement_core.holding.plan_model import Plan, Top, Wish
from movement_core.holding.plate import Trial, hold
from movement_core.holding.rails import Rail
from movement_core.piece.top_place import Near, TopPlace
from movement_core.piece.tops import FoundTop
from movement_core.wording import say

FLATNESS_MM = 1.5  # sensible rounding for a table (common practice, no source)
METAL_KINDS = ("slotted steel",)
AXES = "xyz"


@dataclass(frozen=True, eq=False)
class TopPlans:
    """What may be done with one top.

    Attributes
    ----------
    found : the top. wish : what was asked. plans : one a kind, the best first.
    loose : held by nothing but its own frame, battens and ends, in each load case.
    centre : with one anchor at the middle of each end rail; empty where there are no two end rails.
    centre_rails : those two rails.
    drawn : with the fasteners that are drawn; empty where none is.
    """

    found: FoundTop
    wish: Wish
    plans: tuple[Plan, ...]
    loose: tuple[Held, ...]
    centre: tuple[Held, ...]
    centre_rails: tuple[str, ...]
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
    fixed: str = "centre",
) -> TopPlans:
    """The plans of a top.

    Parameters
    ----------
    found : a top that can be worked out.
    flatness_mm : most it may be out of flat in any month; default ``FLATNESS_MM``.
    kinds : of fastener to compare, by name; default those that suit what it rests on.
    fixed : "centre", or the name of one of its edges (``edge_names``).

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
    wish = Wish(flatness, chosen, stand_in, fixed_line(found.place, fixed))
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
    return TopPlans(found, wish, plan_anchors(top, wish), loose, centre, names, drawn)


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


def kind_names() -> tuple[str, ...]:
    """Names of the kinds of fastener that can be asked for."""
    return tuple(kind.kind for kind in all_kinds())


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


# ---- names of edges and ends ------------------------------------------------------------------------------


def edge_names(place: TopPlace) -> tuple[str, str]:
    """What the edges toward −across and +across are called: by their boards, else by the model's axes."""
    first, last = place.boards[0].part.name, place.boards[-1].part.name
    if first != last:
        return first, last
    word = _toward(place.axes[0])
    return say("{axis} edge", axis=_opposite(word)), say("{axis} edge", axis=word)


def end_names(place: TopPlace) -> tuple[str, str]:
    """What the ends toward −along and +along are called: by what lies under them, else by the model's axes."""
    names = []
    taken: set[str] = set()
    for side, word in ((-1, _opposite(_toward(place.axes[2]))), (1, _toward(place.axes[2]))):
        candidates = [
            one
            for one in (*place.ends, *place.under, *place.let_in, *place.battens)
            if side * _along(one) > 0.25 * place.length_mm
        ]
        # A rail across the end names it better than a leg does.
        candidates.sort(
            key=lambda one: (one.high[1] - one.low[1] < 0.3 * place.width_mm, -side * _along(one), one.name)
        )
        by_axis = say("{axis} end", axis=word)
        name = candidates[0].name if candidates else by_axis
        names.append(by_axis if name in taken else name)
        taken.add(name)
    return names[0], names[1]


def _along(one: Near) -> float:
    return float(one.low[0] + one.high[0]) / 2


def _toward(direction: NDArray[np.float64]) -> str:
    at = int(np.argmax(np.abs(direction)))
    return f"{'+' if direction[at] > 0 else '-'}{AXES[at]}"


def _opposite(word: str) -> str:
    return f"{'-' if word[0] == '+' else '+'}{word[1]}"


def fixed_line(place: TopPlace, fixed: str) -> float:
    """Where the line lies that stays put, mm across from the middle."""
    if fixed == "centre":
        return 0.0
    edges = edge_names(place)
    for name, at in zip(edges, (-place.width_mm / 2, place.width_mm / 2)):
        if fixed == name:
            return at
    near = tuple(difflib.get_close_matches(fixed, ("centre", *edges), n=2, cutoff=0.3))
    raise UnknownName(
        say("no fixed line {fixed!r}", fixed=fixed),
        nearest=near,
        where=say("top {name!r}", name=place.name),
        allowed=say("centre, {names}", names=", ".join(edges)),
    )
