"""What the figure of a board (interlocked, crotch …) does to its movement: wider spread, change of length."""

from __future__ import annotations

import difflib
from dataclasses import dataclass
from functools import cache
from math import sqrt

from movement_core.errors import UnknownName
from movement_core.sources import Source
from movement_core.tables import rows
from movement_core.wood.basis import published
from movement_core.wood.record import BOARD_VARIATION, Species
from movement_core.wording import say


@dataclass(frozen=True)
class FigureEffect:
    """How far a board of some figure strays from its species.

    Attributes
    ----------
    name : "plain", "interlocked", "crotch", "reaction" or "juvenile".
    variation : coefficient of variation of its movement across the grain (0.15 is 15 %).
    longitudinal_shrinkage : (low, high) percent from green to oven-dry along the grain.
    note : what to expect, in words.
    source : where the figures come from.
    """

    name: str
    variation: float
    longitudinal_shrinkage: tuple[float, float]
    note: str
    source: Source


@cache
def all_figures() -> tuple[FigureEffect, ...]:
    """Every figure that is known, plain first."""
    return tuple(
        FigureEffect(
            row["name"],
            float(row["variation"]),
            (float(row["longitudinal_low"]), float(row["longitudinal_high"])),
            row["note"],
            Source(published(row["source"]).title, published(row["source"]).locator, row["provenance"]),
        )
        for row in rows("figure_effects")
    )


def figure_effect(name: str) -> FigureEffect:
    """The effect of a figure of that name; UnknownName, with the nearest ones, for any other word."""
    known = {figure.name: figure for figure in all_figures()}
    word = name.strip().casefold()
    if word not in known:
        near = tuple(difflib.get_close_matches(word, known, n=2)) or tuple(known)
        raise UnknownName(
            say("no figure is called {name!r}", name=name), where=say("figure"), nearest=near, allowed=", ".join(known),
            todo=say("use plain where the grain is straight"),
        )  # fmt: skip
    return known[word]


def board_variation(species: Species, figure: str = "plain") -> float:
    """Coefficient of variation of one board's movement: its wood's, widened by its figure.

    The two act apart, so that their excess over a plain board's 15 % adds as variances. Figure does nothing to
    what is not wood. UnknownName for a figure that is not known. Own rule; 0.15 is one standard deviation.
    """
    effect = figure_effect(figure)
    if species.kind != "wood":
        return species.variation
    return sqrt(species.variation**2 + effect.variation**2 - BOARD_VARIATION**2)
