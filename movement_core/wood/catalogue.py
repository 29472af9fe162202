"""Puts the species together from the published tables, each figure with the source of the row it is from.

``data/species.csv`` only says which row of which table a wood's figures come from, so a figure stands once,
beside its provenance. Adding a wood: a row there, and rows in the tables for what is known of it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from movement_core.sources import DERIVED, OWN, RECALLED, Source
from movement_core.tables import number, rows
from movement_core.wood.basis import cited, movement, published, table
from movement_core.wood.record import BOARD_VARIATION, SOUND_LONGITUDINAL_SHRINKAGE, Species
from movement_core.wood.size_change import USUAL_START_MC
from movement_core.wording import phrase

STRENGTHS = ("moe_mpa", "compression_perp_mpa", "shear_mpa", "tension_perp_mpa")
SHEET_VARIATION = 0.30  # own judgement: makes of one sheet material differ more than boards of one wood
AIR_DRY_MC = 12.0


@dataclass(frozen=True)
class Incomplete:
    """A wood that is in a table but whose movement cannot be worked out, and why."""

    name: str
    trade_names: tuple[str, ...]
    reason: str


def _names(cell: str) -> tuple[str, ...]:
    return tuple(name.strip() for name in cell.split(";") if name.strip())


def gravity_at_12(basic: float, volumetric_percent: float | None, start_mc: float) -> float:
    """Specific gravity on the volume at 12 % moisture content, from that on the green volume.

    The wood has shrunk by the share of its volumetric shrinkage that lies between ``start_mc`` and 12 %;
    where no volumetric shrinkage is known the handbook's average of 26.5 % × basic specific gravity is taken
    (Wood Handbook FPL-GTR-190, ch. 4, recalled).
    """
    volumetric = 26.5 * basic if volumetric_percent is None else volumetric_percent
    return basic / (1.0 - volumetric / 100.0 * (start_mc - AIR_DRY_MC) / start_mc)


def _strength(row: Mapping[str, str]) -> tuple[dict[str, float], dict[str, Source]]:
    found = [table("wood_strength")[key] for key in row["strength"].split(" + ") if key]
    values: dict[str, float] = {}
    sources: dict[str, Source] = {}
    for column in ("specific_gravity_12", *STRENGTHS):
        cells = [number(line[column]) for line in found]
        known = [cell for cell in cells if cell is not None]
        if not found or len(known) < len(cells):
            continue  # a mean of some of a group's species would not be the group's
        values[column] = sum(known) / len(known)
        if len(found) == 1:
            sources[column] = cited(found[0], remark=found[0]["remark"])
        else:
            places = ", ".join(line["row"] for line in found)
            where = published(found[0]["source"])
            sources[column] = Source(where.title, f"{where.locator}, mean of rows {places}", DERIVED)
    basic = number(found[0]["specific_gravity_basic"]) if found else None
    if basic is not None:
        shrinkage = table("wood_shrinkage").get(row["shrinkage"])
        volumetric = number(shrinkage["volumetric"]) if shrinkage else None
        values["specific_gravity_12"] = round(gravity_at_12(basic, volumetric, float(row["start_mc"])), 3)
        remark = f"basic {basic:g} converted to the volume at 12 %"
        sources["specific_gravity_12"] = cited(found[0], DERIVED, remark)
    return values, sources


def _wood(row: Mapping[str, str]) -> Species | Incomplete:
    moves = movement(row)
    if moves is None:
        return Incomplete(row["name"], _names(row["trade_names"]), row["note"])
    strengths, sources = _strength(row)
    usual = float(row["start_mc"]) == USUAL_START_MC
    start = "the handbook's 30 %" if usual else "start of shrinkage that fits the published figures"
    sources |= {
        "radial_coefficient": moves.coefficient_source,
        "tangential_coefficient": moves.coefficient_source,
        "radial_shrinkage": moves.shrinkage_source,
        "tangential_shrinkage": moves.shrinkage_source,
        "longitudinal_shrinkage": published("longitudinal"),
        "start_mc": Source(start, "", RECALLED if usual else DERIVED),
        "variation": published("variation"),
    }
    if moves.variation > BOARD_VARIATION:
        sources["variation"] = Source("15 % widened by half the difference of the tables", "", OWN)
    return Species(
        name=row["name"],
        radial_coefficient=moves.coefficients[0],
        tangential_coefficient=moves.coefficients[1],
        botanical=row["botanical"],
        trade_names=_names(row["trade_names"]),
        radial_shrinkage=moves.shrinkages[0],
        tangential_shrinkage=moves.shrinkages[1],
        start_mc=float(row["start_mc"]),
        longitudinal_shrinkage=SOUND_LONGITUDINAL_SHRINKAGE,
        variation=moves.variation,
        sources=sources,
        note="; ".join(part for part in (row["note"], moves.remark) if part),
        basis=moves.basis,
        specific_gravity_12=strengths.get("specific_gravity_12"),
        moe_mpa=strengths.get("moe_mpa"),
        compression_perp_mpa=strengths.get("compression_perp_mpa"),
        shear_mpa=strengths.get("shear_mpa"),
        tension_perp_mpa=strengths.get("tension_perp_mpa"),
    )


def _material(row: Mapping[str, str]) -> Species:
    where = published(row["source"])
    cited = Source(where.title, where.locator, row["provenance"])
    inert = row["kind"] == "inert"
    movement = Source(phrase("moisture does not move it"), "", OWN) if inert else cited
    sources = {
        "radial_coefficient": movement,
        "tangential_coefficient": movement,
        "thickness_coefficient": movement if inert else Source("Heartside", "own judgement", OWN),
    }
    if inert:
        sources["thermal_per_c"] = cited
    return Species(
        name=row["name"],
        radial_coefficient=float(row["in_plane"]),
        tangential_coefficient=float(row["in_plane"]),
        thickness_coefficient=float(row["thickness"]),
        trade_names=_names(row["trade_names"]),
        kind=row["kind"],
        thermal_per_c=number(row["thermal"]),
        variation=0.0 if inert else SHEET_VARIATION,
        sources=sources,
        note=row["note"],
        basis="inert: no movement with moisture"
        if inert
        else "two figures: in the plane, through the thickness",
    )


@cache
def everything() -> tuple[tuple[Species, ...], tuple[Incomplete, ...]]:
    """All materials that can be worked out, woods first, and the woods that cannot."""
    woods = [_wood(row) for row in rows("species")]
    complete = [wood for wood in woods if isinstance(wood, Species)]
    complete += [_material(row) for row in rows("sheet_materials")]
    return tuple(complete), tuple(wood for wood in woods if isinstance(wood, Incomplete))
