"""Plan how the tops of a piece are held: what fasteners, how many, where."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from movement_core.errors import InputError, UnknownName
from movement_core.piece.measured import Measurement
from movement_core.piece.tags import Tags
from movement_core.piece.top_place import TopPlace, top_places
from movement_core.piece.top_plan import plan_top
from movement_core.piece.tops import top_of
from movement_core.sheet.holding import plans_entry, untold_entry
from movement_core.wording import say
from workbench_pkg.actions.check import solve_document, table_beside
from workbench_pkg.actions.measured import measured_beside
from workbench_pkg.actions.settings import Settings
from workbench_pkg.host.documents import opened


@dataclass(frozen=True)
class HoldWish:
    """What is asked of the plans.

    ``top``: a board of the top that is meant; empty: every top. ``flatness_mm``: most it may be out of flat; None:
    the usual. ``kinds``: of fastener to compare; empty: those that suit. ``fixed``: the line that stays put, as
    "centre", an edge's name or mm across from the middle; empty: as its boards say by the tag ``fixed``, or the middle.
    """

    top: str = ""
    flatness_mm: float | None = None
    kinds: Sequence[str] = field(default=())
    fixed: str | float = ""


def hold_document(
    doc: Any,
    settings: Settings | None = None,
    wish: HoldWish | None = None,
    table: Mapping[str, Tags] | None = None,
    measured: Sequence[Measurement] = (),
) -> list[dict[str, Any]]:
    """The plans for the tops of a document, one entry a top; nothing in it is changed.

    Raises
    ------
    InputError : there is no top, or what is wished for is not known.
    """
    wish = wish or HoldWish()
    found = []
    for place in picked_tops(top_places(solve_document(doc, settings, table, measured)[1]), wish.top):
        top = top_of(place)
        if top.top is None:
            found.append(untold_entry(top))
        else:
            found.append(plans_entry(plan_top(top, wish.flatness_mm, wish.kinds, wish.fixed)))
    return found


def hold_file(path: Path, settings: Settings, wish: HoldWish | None = None) -> list[dict[str, Any]]:
    """The same for a file, which is never written to."""
    table, _ = table_beside(path)
    with opened(path) as doc:
        return hold_document(doc, settings, wish, table, measured_beside(path)[0])


def picked_tops(places: Sequence[TopPlace], name: str) -> list[TopPlace]:
    """The tops among the places, or the one with a board of that name; an error tells what there is."""
    tops = [place for place in places if not place.captured]
    if not name:
        if tops:
            return tops
        raise InputError(
            say("there is no top in this model{captured}", captured=_captured(places)),
            allowed=say(
                "a glued panel, or one board of 150 mm and wider, that lies level, is not housed on two sides and is "
                "no layer between others"
            ),
            todo=say("turn the model as it stands in use, and draw the boards of its top edge to edge"),
        )
    picked = [place for place in tops if any(board.part.name == name for board in place.boards)]
    if picked:
        return picked
    for place in places:
        if any(board.part.name == name for board in place.boards):
            raise InputError(
                place.captured,
                where=say("top {name!r}", name=name),
                todo=say("such a part needs no fasteners; a housed panel needs room in its groove"),
            )
    names = ", ".join(board.part.name for place in tops for board in place.boards)
    raise UnknownName(
        say("no top has a board {name!r}", name=name),
        where=say("top"),
        allowed=names or say("there is no top"),
    )


def _captured(places: Sequence[TopPlace], most: int = 3) -> str:
    """The panels that are housed in other parts, and in which."""
    told = [f"{place.name}: {place.captured}" for place in places if place.captured]
    more = say("; and {count} more", count=len(told) - most) if len(told) > most else ""
    return f" ({'; '.join(told[:most])}{more})" if told else ""
