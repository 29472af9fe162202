"""One wood or other material: its figures, where each comes from, and how its sizes follow its moisture."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.sources import DERIVED, OWN, Source
from movement_core.wood.size_change import (
    LINEAR_RANGE_MC,
    USUAL_START_MC,
    coefficient_from_shrinkage,
    shrinkage_from_coefficient,
    sizes,
    strain_between,
)
from movement_core.wording import say

KINDS = ("wood", "sheet", "inert")
SOUND_LONGITUDINAL_SHRINKAGE = 0.15  # percent, the middle of 0.1 to 0.2
BOARD_VARIATION = 0.15  # a board differs from its species by some 15 %


@dataclass(frozen=True)
class SizeChange:
    """A change of size and what it rests on.

    Attributes
    ----------
    mm : change, mm, positive when the size grows; of the shape of the size asked for.
    basis : which rule was used, in words.
    """

    mm: float | NDArray[np.float64]
    basis: str


@dataclass(frozen=True)
class Species:
    """A wood, a sheet material or an inert one.

    Attributes
    ----------
    name, botanical, trade_names : what it is called in reports, by botanists and in the trade.
    kind : "wood", "sheet" (plywood, MDF …) or "inert" (metal, stone, glass …).
    radial_coefficient, tangential_coefficient : strain per 1 % moisture content on the size at 10 %.
        A sheet has its in-plane figure in both.
    thickness_coefficient : the same through the thickness of a sheet; None for wood, where rings decide.
    radial_shrinkage, tangential_shrinkage : percent from green to oven-dry on the same basis as the
        coefficients; None for what is not wood.
    start_mc : moisture content where shrinkage starts, percent. Above it nothing moves.
    longitudinal_shrinkage : percent from green to oven-dry along the grain, sound wood.
    specific_gravity_12 : oven-dry mass on the volume at 12 % moisture content.
    moe_mpa, compression_perp_mpa, shear_mpa, tension_perp_mpa : clear wood at 12 %, MPa; None is unknown.
    thermal_per_c : thermal strain per °C of inert materials.
    variation : coefficient of variation of a single board's coefficient (0.15 is 15 %).
    sources : where each figure comes from, by field name.
    note, basis : what to know about the wood; which figures its movement rests on.

    Raises
    ------
    InputError : an unknown kind, or a figure that no material has.

    >>> Species("my oak", radial_coefficient=0.0018, tangential_coefficient=0.0036).variation
    0.15
    """

    name: str
    radial_coefficient: float
    tangential_coefficient: float
    botanical: str = ""
    trade_names: tuple[str, ...] = ()
    kind: str = "wood"
    thickness_coefficient: float | None = None
    radial_shrinkage: float | None = None
    tangential_shrinkage: float | None = None
    start_mc: float = USUAL_START_MC
    longitudinal_shrinkage: float | None = None
    specific_gravity_12: float | None = None
    moe_mpa: float | None = None
    compression_perp_mpa: float | None = None
    shear_mpa: float | None = None
    tension_perp_mpa: float | None = None
    thermal_per_c: float | None = None
    variation: float = BOARD_VARIATION
    sources: Mapping[str, Source] = field(default_factory=dict, compare=False, repr=False)
    note: str = ""
    basis: str = ""

    def __post_init__(self) -> None:
        if self.kind not in KINDS:
            raise InputError(
                say("{kind!r} is not a kind", kind=self.kind), where=self.name, allowed=", ".join(KINDS)
            )
        for what in ("radial_coefficient", "tangential_coefficient", "thickness_coefficient"):
            value = getattr(self, what)
            if value is not None and not 0.0 <= value <= 0.02:
                raise InputError(
                    say("{what} {value!r} is impossible", what=what, value=value),
                    where=self.name,
                    allowed=say("0 to 0.02 per 1 % moisture content"),
                    todo=say("give the strain as a fraction: 0.0025 means 0.25 % for 1 % of moisture"),
                )
        if not 10.0 < self.start_mc <= 60.0:
            raise InputError(
                say("start_mc {start!r} is impossible", start=self.start_mc),
                where=self.name,
                allowed=say("10 to 60 %"),
            )

    @property
    def longitudinal_coefficient(self) -> float | None:
        """Strain along the grain per 1 % moisture content; in the plane of a sheet; None where unknown."""
        if self.kind != "wood":
            return self.radial_coefficient
        if self.longitudinal_shrinkage is None:
            return None
        return coefficient_from_shrinkage(self.longitudinal_shrinkage, self.start_mc)

    def coefficient(self, direction: str) -> float:
        """Strain per 1 % moisture content in a direction.

        ``direction`` is "radial", "tangential" or "longitudinal"; for sheets and inert materials also
        "in plane" and "thickness". Raises InputError for another word and where the figure is unknown.
        """
        known: dict[str, float | None] = {
            "radial": self.radial_coefficient,
            "tangential": self.tangential_coefficient,
            "longitudinal": self.longitudinal_coefficient,
        }
        if self.kind != "wood":
            known |= {"in plane": self.radial_coefficient, "thickness": self.thickness_coefficient}
        if direction not in known:
            raise InputError(
                say("{direction!r} is not a direction of {name}", direction=direction, name=self.name),
                where=say("direction"),
                allowed=", ".join(known),
            )
        value = known[direction]
        if value is None:
            raise InputError(
                say("the {direction} figure of {name} is unknown", direction=direction, name=self.name),
                where=self.name,
                todo=say("give one with dataclasses.replace, or leave this direction out"),
            )
        return value

    def strain(self, direction: str, from_mc: ArrayLike, to_mc: ArrayLike) -> NDArray[np.float64]:
        """Strain in a direction, as a fraction of the size at ``from_mc``; moistures (percent) broadcast.

        Exactly what ``change`` gives, divided by the size. Above ``start_mc`` nothing moves.
        """
        return strain_between(self.coefficient(direction), from_mc, to_mc, self.start_mc)

    def change(self, size_mm: ArrayLike, direction: str, from_mc: float, to_mc: float) -> SizeChange:
        """Change of a size measured at ``from_mc`` when the wood comes to ``to_mc``.

        Parameters
        ----------
        size_mm : size or sizes at ``from_mc``, mm.
        direction : "radial", "tangential" or "longitudinal" (sheets: also "in plane", "thickness").
        from_mc, to_mc : moisture contents, percent.

        Returns
        -------
        SizeChange : mm, and the basis. Between 6 and 14 % it is the linear formula taken through the size at
            10 %, to which coefficients refer; a step that reaches outside is taken as a whole by the
            green-dimension formula. Both lie on one straight line, so that nothing jumps at 6 or 14 % and
            there-and-back returns the same size. What lies above ``start_mc`` moves nothing.

        Raises
        ------
        InputError : an unknown direction, a negative size, a moisture outside 0 to 300 %.

        Source: Wood Handbook FPL-GTR-190 (2010) Eq. 13-2 and 13-3, pp. 13-15 to 13-17.
        """
        strain = float(self.strain(direction, from_mc, to_mc))
        size = sizes(size_mm)
        mm = size * strain
        return SizeChange(float(mm) if np.ndim(mm) == 0 else mm, self._basis(from_mc, to_mc))

    def _basis(self, from_mc: float, to_mc: float) -> str:
        low, high = LINEAR_RANGE_MC
        start = f"{self.start_mc:g} %"
        if self.kind == "inert":
            return "moisture does not move this material"
        if self.kind == "sheet":
            return "linear, sheet material"
        if min(from_mc, to_mc) >= self.start_mc:
            return f"none: both moistures are at or above the start of shrinkage ({start})"
        if low <= min(from_mc, to_mc) and max(from_mc, to_mc) <= high:
            return "linear (Eq. 13-2), through the size at 10 %"
        if max(from_mc, to_mc) > self.start_mc:
            return f"green dimension (Eq. 13-3), only the part below the start of shrinkage ({start})"
        return f"green dimension (Eq. 13-3), shrinkage starting at {start}"

    def with_coefficients(self, radial: float, tangential: float) -> Species:
        """The same wood with a maker's own coefficients (strain per 1 % moisture); its shrinkages follow."""
        if self.kind != "wood":
            raise InputError(
                say("{name} has no radial and tangential direction", name=self.name),
                where=self.name,
                allowed=say("woods only"),
            )
        own = Source(say("the maker's own figure"), "", OWN)
        follows = Source(say("from the maker's own coefficients"), "Eq. 13-3", DERIVED)
        sources = {
            **self.sources,
            "radial_coefficient": own,
            "tangential_coefficient": own,
            "radial_shrinkage": follows,
            "tangential_shrinkage": follows,
        }
        changed = replace(self, radial_coefficient=float(radial), tangential_coefficient=float(tangential))
        return replace(
            changed,
            radial_shrinkage=shrinkage_from_coefficient(float(radial), self.start_mc),
            tangential_shrinkage=shrinkage_from_coefficient(float(tangential), self.start_mc),
            sources=sources,
            basis="the maker's own coefficients",
        )
