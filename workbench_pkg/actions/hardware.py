"""Place a plan as solids, cut the slots on request, and take all of it out again. One undo step each."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from movement_core.errors import InputError, UnknownName
from movement_core.piece.hardware import hardware_of
from movement_core.piece.hardware_bodies import Hardware
from movement_core.piece.solve import solve_piece
from movement_core.piece.tag_sources import without_tag
from movement_core.piece.top_place import top_places
from movement_core.piece.top_plan import TopPlans, plan_top
from movement_core.piece.tops import FoundTop, top_of
from movement_core.sheet.holding import plans_entry, untold_entry
from movement_core.wording import say
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.actions.hold import HoldWish, picked_tops
from workbench_pkg.actions.reading import ReadPiece, read_piece
from workbench_pkg.actions.settings import Settings
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.actions.year import settings_of
from workbench_pkg.host.hardware_shapes import shared_volume, solid_of
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.marks import explained
from workbench_pkg.objects import hardware as kept

FIXED_AT, RAILS = "HeartsideFixedAt", "HeartsideRails"  # what was asked, for setting them on another day
DRIVER_MM = 20.0  # room below a screw's recess that a driver needs at the least (own)


@dataclass(frozen=True)
class PlaceWish(HoldWish):
    """What is asked of the plans. ``rails``: names of those that may take fasteners; empty: all."""

    rails: Sequence[str] = field(default=())


@dataclass(frozen=True, eq=False)
class PlanQuestion:
    """Everything that is read of a document for its plans, so that they can be worked out without the document."""

    settings: Settings
    read: ReadPiece
    wish: PlaceWish
    fingerprint: str


@dataclass(frozen=True, eq=False)
class PlanAnswer:
    """The tops of a document, and the plans of the one that is meant.

    Attributes
    ----------
    tops : all that were found, those that cannot be worked out too. chosen : index of the one that is meant.
    plans : of that one; None where something is missing. entry : the same as plain data, see ``sheet.holding``.
    """

    tops: tuple[FoundTop, ...]
    chosen: int
    plans: TopPlans | None
    entry: dict[str, Any]
    wish: PlaceWish
    fingerprint: str

    @property
    def drillable(self) -> str:
        """Kind of the best plan that has fasteners, else of the best plan; "" where none could be made."""
        plans = self.plans.plans if self.plans else ()
        return next((plan.kind for plan in plans if plan.placed), plans[0].kind if plans else "")

    def hardware(self, kind: str) -> Hardware:
        """The solids of the plan of a kind."""
        if self.plans is None:
            raise InputError(
                "; ".join(self.entry["missing"]), where=say("top {name!r}", name=self.tops[self.chosen].name)
            )
        names = [plan.kind for plan in self.plans.plans]
        if kind not in names:
            raise UnknownName(say("no plan {kind!r}", kind=kind), where=say("plan"), allowed=", ".join(names))
        return hardware_of(self.plans, self.plans.plans[names.index(kind)])


def read_for_plans(doc: Any, wish: PlaceWish | None = None, settings: Settings | None = None) -> PlanQuestion:
    """Read all that the plans of a document need; nothing in it is changed."""
    asked = None if settings is None else settings.asked
    settings = settings or settings_of(doc)
    read = read_piece(doc, None, settings.shop)
    return PlanQuestion(settings, read, wish or PlaceWish(), fingerprint(doc, asked))


def answer_plans(question: PlanQuestion) -> PlanAnswer:
    """Work the plans out; no document is looked at, so this may run in a thread of its own.

    Raises
    ------
    InputError : there is no top, or what is wished for is not known.
    """
    settings, wish = question.settings, question.wish
    piece = solve_piece(question.read.parts, settings.year, settings.today, settings.today_mc)
    places = top_places(piece)
    tops = tuple(top_of(place) for place in picked_tops(places, ""))
    (meant, *_) = picked_tops(places, wish.top)
    chosen = next(i for i, top in enumerate(tops) if top.place is meant)
    found = with_rails(tops[chosen], wish.rails)
    if found.top is None:
        return PlanAnswer(tops, chosen, None, untold_entry(found), wish, question.fingerprint)
    plans = plan_top(found, wish.flatness_mm, wish.kinds, wish.fixed)
    return PlanAnswer(tops, chosen, plans, plans_entry(plans), wish, question.fingerprint)


def with_rails(found: FoundTop, names: Sequence[str]) -> FoundTop:
    """The top with fasteners on these rails only; it still rests on the others."""
    if not names or found.top is None:
        return found
    there = [rail.name for rail in found.top.rails]
    for name in names:
        if name not in there:
            raise UnknownName(
                say("no rail {name!r} lies under it", name=name), where=say("frame"), allowed=", ".join(there)
            )
    taken = tuple(rail for rail in found.top.rails if rail.name in names)
    rested = tuple(rail.bearing() for rail in found.top.rails if rail.name not in names)
    return replace(found, top=replace(found.top, rails=taken, bearings=(*found.top.bearings, *rested)))


_last: PlanAnswer | None = None


def remember(answer: PlanAnswer) -> None:
    """Keep an answer, so that placing it in the next moment works nothing out anew."""
    global _last
    _last = answer


def plans_of(doc: Any, wish: PlaceWish | None = None, settings: Settings | None = None) -> PlanAnswer:
    """The plans of a document for a wish, from the last answer where nothing has changed since."""
    wish = wish or PlaceWish()
    if (
        settings is None
        and _last is not None
        and _last.wish == wish
        and _last.fingerprint == fingerprint(doc)
    ):
        return _last
    answer = answer_plans(read_for_plans(doc, wish, settings))
    if settings is None:
        remember(answer)
    return answer


def place_plan(
    doc: Any,
    top: str = "",
    plan: str = "",
    flatness_mm: float | None = None,
    kinds: Sequence[str] = (),
    fixed: str | float = "",
    rails: Sequence[str] = (),
    settings: Settings | None = None,
) -> tuple[str, ...]:
    """Put the fasteners of a plan, and the bodies to cut away for them, into the document. One undo step.

    Parameters
    ----------
    top : a board of the top that is meant; empty: the first top. plan : kind of the plan; empty: the best.
    flatness_mm, kinds, fixed : as for ``hold``. rails : that may take fasteners; empty: all.

    Returns
    -------
    What is not cut or cannot be reached, one sentence each.

    Raises
    ------
    InputError : no top, no plan, something that is missing, or slots that are cut already.
    """
    wish = PlaceWish(top, flatness_mm, tuple(kinds), fixed, tuple(rails))
    if kept.cuts_of(doc):
        raise InputError(
            say("slots are cut already"),
            where=say("placing hardware"),
            todo=say("take the hardware out, or undo, first"),
        )
    answer = plans_of(doc, wish, settings)
    chosen = plan or (answer.plans.plans[0].kind if answer.plans else "")
    hardware = answer.hardware(chosen)
    entry = next(one for one in answer.entry["plans"] if one["kind"] == chosen)
    found = answer.tops[answer.chosen]
    hardware = replace(hardware, refused=(*hardware.refused, *_out_of_reach(doc, hardware)))
    with one_step(doc, say("Heartside: place hardware")):
        group = kept.write_hardware(
            doc,
            found.place.boards[0].part.key,
            say("{kind} under {top}", kind=entry["name"][:1].upper() + entry["name"][1:], top=found.name),
            hardware,
            _figures(answer.entry, entry, hardware),
            _of_each(entry, hardware),
        )
        kept.keep_fingerprint(group, answer.fingerprint)
    return hardware.refused


def is_stale(doc: Any, settings: Settings | None = None) -> bool:
    """Whether the model, its tags or the year differ from what the placed hardware rests on."""
    now = fingerprint(doc, None if settings is None else settings.asked)
    return any(getattr(group, kept.PRINT, "") != now for group in kept.placed_tops(doc))


def remove_hardware(doc: Any) -> int:
    """Take all hardware out, and the slots that were cut for it; one undo step. How many objects went.

    Raises
    ------
    InputError : something else was built on a part that was cut; nothing is changed.
    """
    if not kept.has_hardware(doc):
        return 0
    with one_step(doc, say("Heartside: take hardware out")):
        return kept.remove_all(doc)


def _out_of_reach(doc: Any, hardware: Hardware) -> list[str]:
    """Screw heads below which another part lies: no driver comes to them once that is there."""
    leaves = read_leaves(doc).leaves
    solids = [(leaf, leaf.global_solid()) for leaf in leaves]
    told = []
    for cut in hardware.cuts:
        if cut.purpose != "recess":
            continue
        x, y, z = cut.body.size_mm
        (a, b, c), (i, j, k), down = cut.body.centre_mm, cut.body.axes[2], DRIVER_MM / 2
        below = (a - down * i, b - down * j, c - down * k)
        way = solid_of(replace(cut.body, centre_mm=below, size_mm=(x, y, z + DRIVER_MM)))
        box = way.BoundBox
        met = [
            without_tag(leaf.name)
            for leaf, solid in solids
            if leaf.key != cut.part and solid.BoundBox.intersect(box) and shared_volume(solid, way) > 1.0
        ]
        if met:
            told.append(
                say(
                    "{recess} runs into {parts}: drive its screw before that is there, or move it aside",
                    recess=cut.name,
                    parts=", ".join(met),
                )
            )
    return told


def _figures(entry: Mapping[str, Any], plan: Mapping[str, Any], hardware: Hardware) -> kept.Figures:
    length, force, text = "App::PropertyLength", "App::PropertyFloat", "App::PropertyString"
    lines = "App::PropertyStringList"
    return {
        "HeartsidePlan": (text, plan["kind"], explained("Kind of the plan")),
        "HeartsideFlatness": (
            length,
            entry["wish"]["flatness_mm"],
            explained("Most that it may be out of flat"),
        ),
        "HeartsideOutOfFlat": (length, plan["worst_out_of_flat_mm"], explained("Out of flat at worst")),
        "HeartsideWorstCase": (text, plan["worst_case"], explained("When it is that much out of flat")),
        "HeartsidePull": (force, plan["worst_pull_n"], explained("Hardest pull on a fastener, N")),
        "HeartsideAllowedPull": (force, plan["allowable_pull_n"], explained("Pull that is allowed, N")),
        "HeartsideHolds": (
            "App::PropertyBool",
            plan["found"],
            explained("Whether it meets the flatness in every month"),
        ),
        "HeartsideFixedLine": (text, plan["fixed_line"], explained("What stays put")),
        FIXED_AT: (
            "App::PropertyDistance",
            entry["wish"]["fixed_line_mm"],
            explained("The line that stays put, across from the middle"),
        ),
        RAILS: (lines, [rail["name"] for rail in entry["rails"]], explained("Rails that may take fasteners")),
        kept.REFUSED: (lines, list(hardware.refused), explained("What is not cut, and why")),
        kept.CAUTIONS: (lines, list(entry["cautions"]), explained("To mind")),
    }


def _of_each(plan: Mapping[str, Any], hardware: Hardware) -> dict[int, kept.Figures]:
    """Figures of every fastener by its number; those of one that is set aside of its rail are its own."""
    own = {marker.number: dict(marker.own_figures) for marker in hardware.markers if marker.own_figures}
    return {one["number"]: _of_fastener({**one, **own.get(one["number"], {})}) for one in plan["fasteners"]}


def _of_fastener(one: Mapping[str, Any]) -> kept.Figures:
    distance, force = "App::PropertyDistance", "App::PropertyFloat"
    found: dict[str, tuple[str, Any, str]] = {
        "HeartsideRail": ("App::PropertyString", one["rail"], explained("Rail that it is on")),
        "HeartsideFromEdge": (
            distance,
            one["from_edge_today_mm"],
            explained("Screw from the edge, as the top is today"),
        ),
        "HeartsideFromEnd": (distance, one["from_end_mm"], explained("Screw from the end")),
        "HeartsideOnRail": (distance, one["on_rail_mm"], explained("Screw along the rail")),
        "HeartsideTravelLeast": (
            distance,
            one["travel_least_mm"],
            explained("Travel there since fitting, least"),
        ),
        "HeartsideTravelToday": (
            distance,
            one["travel_today_mm"],
            explained("Travel there since fitting, today"),
        ),
        "HeartsideTravelMost": (
            distance,
            one["travel_most_mm"],
            explained("Travel there since fitting, most"),
        ),
        "HeartsideSlotLength": (distance, one["slot_length_mm"], explained("Length of its slot")),
        "HeartsideScrewInSlot": (
            distance,
            one["screw_from_slot_end_today_mm"],
            explained("Screw today from the slot's end"),
        ),
        "HeartsideTongue": (distance, one["tongue_today_mm"], explained("How deep to set its tongue today")),
        "HeartsidePull": (force, one["pull_n"], explained("Hardest pull, N")),
        "HeartsideAllowedPull": (force, one["allowable_pull_n"], explained("Pull that is allowed, N")),
    }
    return {name: said for name, said in found.items() if said[1] is not None}
