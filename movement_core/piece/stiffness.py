"""How stiff a board is in its own plane: handbook figures of its wood, or of the nearest, and said which.

Stiffness across the grain decides how hard a fastener is pulled, and few woods have had theirs published. What is
missing is taken from a relative or from the mean of its group, and the basis names it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from movement_core.errors import InputError
from movement_core.holding.elastic import ElasticRatios, board_elastic, elastic_ratios, typical_ratios
from movement_core.holding.model import Elastic
from movement_core.sources import RECALLED, Source
from movement_core.tables import rows
from movement_core.wood import Species
from movement_core.wording import Later, later, phrase

# Bending modulus from specific gravity at 12 % moisture, MPa: a·G^b.
MOE_FROM_GRAVITY = {"hardwood": (16500.0, 0.70), "softwood": (20500.0, 0.84)}
MOE_SOURCE = Source("Wood Handbook, FPL-GTR-190", "ch. 5, properties from specific gravity", RECALLED)
USUAL_GRAVITY = {"hardwood": 0.6, "softwood": 0.45}  # where even the density is not known (own)

SOFTWOOD_GENERA = frozenset({
    "Abies", "Agathis", "Araucaria", "Calocedrus", "Callitropsis", "Cedrus", "Chamaecyparis", "Cryptomeria",
    "Cupressus", "Juniperus", "Larix", "Libocedrus", "Picea", "Pinus", "Podocarpus", "Pseudotsuga", "Sequoia",
    "Sequoiadendron", "Taxodium", "Taxus", "Thuja", "Thujopsis", "Tsuga",
})  # fmt: skip
# The row that serves a genus where the wood itself has none: its only row, or its usual one.
RELATIVE = {
    "Abies": "Fir, subalpine", "Acer": "Maple, sugar", "Betula": "Birch, yellow", "Fraxinus": "Ash, white",
    "Juglans": "Walnut, black", "Khaya": "Mahogany, African", "Larix": "Larch, western",
    "Picea": "Spruce, Sitka", "Pinus": "Pine, red", "Populus": "Cottonwood, eastern", "Prunus": "Cherry, black",
    "Pseudotsuga": "Douglas-fir", "Quercus": "Oak, white", "Sequoia": "Redwood", "Swietenia": "Mahogany, Honduras",
    "Taxodium": "Baldcypress", "Thuja": "Cedar, western redcedar", "Tilia": "Basswood", "Tsuga": "Hemlock, western",
}  # fmt: skip


# What is said of a wood whose own figures were not published, by its group.
FILLED_FROM = {
    "hardwood": phrase("some elastic ratios of {species} not published: filled from the mean of hardwoods"),
    "softwood": phrase("some elastic ratios of {species} not published: filled from the mean of softwoods"),
}
MEAN_TAKEN = {
    "hardwood": phrase("stiffness across the grain of {species} not published: mean of hardwoods taken"),
    "softwood": phrase("stiffness across the grain of {species} not published: mean of softwoods taken"),
}
USUAL_TAKEN = {
    "hardwood": phrase("density and stiffness of {species} not known: those of a usual hardwood taken"),
    "softwood": phrase("density and stiffness of {species} not known: those of a usual softwood taken"),
}


@dataclass(frozen=True)
class BoardStiffness:
    """Elastic constants of one board; ``filled`` says what was not published of its own wood."""

    elastic: Elastic
    filled: tuple[Later, ...]


@lru_cache(maxsize=4096)  # parts of one board or batch have the same rings, and every joint asks
def board_stiffness(species: Species, ring_angle_deg: float) -> BoardStiffness:
    """Stiffness of a board in its plane.

    Parameters
    ----------
    species : a wood.
    ring_angle_deg : between rings and face at mid-section, 0 flat-sawn to 90 quarter-sawn.
    """
    group = "softwood" if _genus(species) in SOFTWOOD_GENERA else "hardwood"
    filled: list[Later] = []
    ratios, moe = _ratios(species, group, filled), _moe(species, group, filled)
    try:
        elastic = board_elastic(ratios, moe, ring_angle_deg)
    except InputError:  # a ratio that this angle needs was never published
        elastic = board_elastic(ratios.filled_from(typical_ratios(group)), moe, ring_angle_deg)
        filled.append(later(FILLED_FROM[group], species=ratios.species))
    return BoardStiffness(elastic, tuple(filled))


def bar_modulus(species: Species) -> tuple[float, tuple[Later, ...]]:
    """Bending modulus of a bar along its grain, MPa, and what was filled in for it."""
    filled: list[Later] = []
    group = "softwood" if _genus(species) in SOFTWOOD_GENERA else "hardwood"
    return _moe(species, group, filled), tuple(filled)


def _genus(species: Species) -> str:
    return species.botanical.split(" ")[0] if species.botanical else ""


def _ratios(species: Species, group: str, filled: list[Later]) -> ElasticRatios:
    own = _own_row(species)
    relative = RELATIVE.get(_genus(species))
    if own is None and relative is None:
        filled.append(later(MEAN_TAKEN[group], species=species.name))
        return typical_ratios(group)
    found = elastic_ratios(own or relative or "")
    if own is None:
        filled.append(
            later(
                "stiffness across the grain of {species} not published: that of {relative} taken",
                species=species.name,
                relative=relative,
            )
        )
    return found


def _own_row(species: Species) -> str | None:
    """The row of the table whose words all stand in the wood's name: "Oak, white" for "White oak, commercial"."""
    words = _words(species.name)
    fitting = [row["species"] for row in rows("elastic_ratios") if _words(row["species"]) <= words]
    return max(fitting, key=len) if fitting else None


def _words(name: str) -> set[str]:
    return set(name.casefold().replace(",", " ").split())


def _moe(species: Species, group: str, filled: list[Later]) -> float:
    if species.moe_mpa is not None:
        return species.moe_mpa
    factor, power = MOE_FROM_GRAVITY[group]
    gravity = species.specific_gravity_12
    if gravity is None:
        gravity = USUAL_GRAVITY[group]
        filled.append(later(USUAL_TAKEN[group], species=species.name))
    else:
        filled.append(
            later(
                "stiffness of {species} not known: taken from its density ({source})",
                species=species.name,
                source=MOE_SOURCE,
            )
        )
    return float(factor * gravity**power)


def panel_stiffness(boards: Sequence[tuple[BoardStiffness, float]]) -> BoardStiffness:
    """One panel from (board, width): boards side by side bend together along it and one after another across.

    Along the grain and in twist the moduli are averaged by width, across it the compliances are.
    """
    share = np.array([width for _, width in boards])
    share = share / share.sum()
    each = [board.elastic for board, _ in boards]

    def mean(name: str) -> float:
        return float(share @ np.array([getattr(elastic, name) for elastic in each]))

    across = 1.0 / float(share @ np.array([1.0 / elastic.e_across_mpa for elastic in each]))
    basis = "; ".join(dict.fromkeys(elastic.basis for elastic in each))
    filled = tuple(dict.fromkeys(text for board, _ in boards for text in board.filled))
    return BoardStiffness(
        Elastic(mean("e_along_mpa"), across, mean("shear_mpa"), mean("poisson"), basis), filled
    )
