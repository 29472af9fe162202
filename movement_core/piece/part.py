"""A part of the piece: its wood, how it lies, where its rings are, and the moistures it was built at."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import DailyAir
from movement_core.air.year import Year
from movement_core.moisture.journey import built_moisture
from movement_core.piece.captured import reasons_to_ask
from movement_core.piece.facts import Fact, inferred, missing, tagged
from movement_core.piece.frame import Frame, Measure, find_frame
from movement_core.piece.outline import SolidOutline
from movement_core.piece.ring_facts import rings_from_tags
from movement_core.piece.tags import MOISTURES, TagProblem, Tags
from movement_core.piece.vectors import box_of
from movement_core.section.rings import Rings
from movement_core.wood import Species
from movement_core.wording import say
from movement_core.wording import word as told

ACROSS = 0.7  # cosine from which a direction names an edge of the width


@dataclass(frozen=True, eq=False)
class Solid:
    """One solid as the host hands it over.

    ``key`` names it for good in its document, ``name`` is what the user calls it, ``measure`` gives exact
    extents along given axes (None: the outline's points are measured).
    """

    key: str
    name: str
    outline: SolidOutline
    tags: Tags
    measure: Measure | None = None


@dataclass(frozen=True, eq=False)
class Part:
    """One part with every fact about it, each tagged, inferred or missing."""

    key: str
    name: str
    frame: Frame
    species: Fact[Species]
    rings: Fact[Rings]
    finish: Fact[str]
    figure: Fact[str]
    glued_mc: Fact[float]
    flattened_mc: Fact[float]
    fitted_mc: Fact[float]
    volume_mm3: float
    outline: SolidOutline | None = None
    kept: Year | None = None  # air of the place where it is kept when not in use
    looks: float = 0.0  # how much better the show face looks than the back, on the maker's own scale
    fixed_mm: float | None = (
        None  # the line that is held, from the middle along its width; None where not said
    )
    lot: str = ""  # what the maker calls the boards it was cut from
    problems: tuple[TagProblem, ...] = ()

    @property
    def moves(self) -> bool:
        """Whether the material is solid wood (or its material is not known)."""
        return self.species.value is None or self.species.value.kind == "wood"

    @property
    def missing(self) -> dict[str, str]:
        """What must still be said before the part can be worked out: fact → why it could not be inferred."""
        facts: dict[str, Fact[object]] = {"species": self.species}  # type: ignore[dict-item]
        if self.species.value is None or self.species.value.kind == "wood":
            facts |= {"grain": self.frame.grain, "rings": self.rings, "moisture": self.fitted_mc}  # type: ignore[dict-item]
        elif self.species.value.kind == "sheet":
            facts |= {"moisture": self.fitted_mc}  # type: ignore[dict-item]
        return {name: fact.reason for name, fact in facts.items() if not fact.known}


@dataclass(frozen=True)
class Shop:
    """Where and when the piece was built: stock that lay there gives the moisture that was not metered."""

    air: Year | DailyAir
    date: datetime.date


def parts_of(solids: Sequence[Solid], shop: Shop | None = None) -> tuple[Part, ...]:
    """The parts of a piece from its solids: what is said is taken, what can be is inferred, the rest is missing."""
    asks = reasons_to_ask([s.outline for s in solids], [s.tags.grain is not None for s in solids])
    centre = _centre([s.outline for s in solids])
    return tuple(_part(solid, ask, centre, shop) for solid, ask in zip(solids, asks))


def _centre(outlines: Sequence[SolidOutline]) -> NDArray[np.float64] | None:
    if len(outlines) < 2:
        return None
    low, high = box_of(np.array([box_of(o.points) for o in outlines]))
    return np.asarray((low + high) / 2)


def _part(solid: Solid, ask: str, centre: NDArray[np.float64] | None, shop: Shop | None) -> Part:
    tags = solid.tags
    frame = find_frame(solid.outline, tags, solid.measure, centre, ask)
    species = _species(tags)
    moistures = {word: _moisture(tags, word) for word in MOISTURES}
    if shop is not None and not moistures["fitted"].known:
        moistures = dict.fromkeys(MOISTURES, _from_shop(shop, frame, species.value))
    rings, problems = rings_from_tags(solid.name, tags, frame, solid.outline.own_axes)
    fixed, unfit = _fixed_line(solid, frame)
    return Part(
        key=solid.key,
        name=solid.name,
        frame=frame,
        species=species,
        rings=rings,
        finish=_said(tags, "finish", tags.finish)
        or inferred("bare", say("no finish said: bare wood moves the most")),
        figure=_said(tags, "figure", tags.figure) or inferred("plain", say("no figure said")),
        glued_mc=moistures["glued"],
        flattened_mc=moistures["flattened"],
        fitted_mc=moistures["fitted"],
        volume_mm3=solid.outline.volume_mm3,
        outline=solid.outline,
        kept=tags.kept,
        looks=tags.looks or 0.0,
        fixed_mm=fixed,
        lot=tags.lot or "",
        problems=(*tags.problems, *problems, *unfit),
    )


def _fixed_line(solid: Solid, frame: Frame) -> tuple[float | None, tuple[TagProblem, ...]]:
    """Where the part is held across its width, mm from its middle, and what is wrong with what was said of it."""
    said, half = solid.tags.fixed, frame.width_mm / 2
    if said is None:
        return None, ()
    if not frame.grain.known:
        why = say("the fixed line cannot be placed while the grain is not known")
    elif isinstance(said, tuple):
        cosine = float(np.asarray(said) @ solid.outline.own_axes @ frame.axes[0])
        if abs(cosine) > ACROSS:
            return (half if cosine > 0 else -half), ()
        why = say(
            "the edge that is said to be fixed does not lie across the grain: name an edge of the width"
        )
    elif abs(said) <= half + 1e-6:
        return said, ()
    else:
        why = say(
            "the fixed line at {said:g} mm lies beyond the edges, which are {half:.4g} mm from the middle",
            said=said,
            half=half,
        )
    return None, (TagProblem(solid.name, "fixed", why),)


def _said(tags: Tags, word: str, value: str | None) -> Fact[str] | None:
    return None if value is None else tagged(value, tags.said.get(word, "tag"))


def _species(tags: Tags) -> Fact[Species]:
    if tags.species is None:
        return missing(say("tag the species or material, for example wood{{white oak}}"))
    return tagged(tags.species, tags.said.get("species", "tag"))


# Where a moisture is not said, the one that stands nearest in the making of the piece serves.
_NEAREST = {
    "glued": ("flattened", "fitted"),
    "flattened": ("fitted", "glued"),
    "fitted": ("flattened", "glued"),
}


def _moisture(tags: Tags, word: str) -> Fact[float]:
    value: float | None = getattr(tags, f"{word}_mc")
    if value is not None:
        return tagged(value, tags.said.get(word, "tag"))
    for other in _NEAREST[word]:
        nearest: float | None = getattr(tags, f"{other}_mc")
        if nearest is not None:
            return inferred(
                nearest,
                say("not said when {word}: taken as when {other}", word=told(word), other=told(other)),
            )
    return missing(say("tag the moisture it was built at, for example 'built 9'"))


def _from_shop(shop: Shop, frame: Frame, species: Species | None) -> Fact[float]:
    gravity = species.specific_gravity_12 if species is not None and species.kind == "wood" else None
    thickness = frame.thickness_mm if frame.grain.known else None
    known = thickness is not None and gravity is not None
    built = built_moisture(
        shop=shop.air,
        date=shop.date,
        thickness_mm=thickness if known else None,
        specific_gravity=gravity if known else None,
    )
    assert built.mc is not None  # a shop and a date give one
    return inferred(built.mc, say("not said: taken {basis}", basis=built.basis))
