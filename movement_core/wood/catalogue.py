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
from movement_core.wood.record import BOARD_VARIATION, SOUND_LONGITUDINAL_SHRINKAGE, Species
from movement_core.wood.size_change import coefficient_from_shrinkage, shrinkage_from_coefficient

# Printed coefficients have five decimals; where the printed shrinkage is behind them they follow to the last
# (in one row to the last but one unit).
SAME_BASIS = 7e-6
STRENGTHS = ("moe_mpa", "compression_perp_mpa", "shear_mpa", "tension_perp_mpa")
SHEET_VARIATION = 0.30  # own judgement: makes of one sheet material differ more than boards of one wood
AIR_DRY_MC = 12.0


@dataclass(frozen=True)
class Incomplete:
    """A wood that is in a table but whose movement cannot be worked out, and why."""

    name: str
    trade_names: tuple[str, ...]
    reason: str


@cache
def published(source: str) -> Source:
    """The publication behind one ``source`` word of the wood tables; provenance is the table row's own."""
    for row in rows("wood_sources"):
        if row["source"] == source:
            return Source(row["title"], row["locator"], RECALLED)
    raise KeyError(f"{source!r} is not in data/wood_sources.csv")


@cache
def _table(name: str) -> Mapping[str, Mapping[str, str]]:
    return {f"{row['source']}/{row['row']}": row for row in rows(name)}


def _cited(row: Mapping[str, str], provenance: str | None = None, remark: str = "") -> Source:
    where = published(row["source"])
    place = f"{where.locator}, row {row['row']!r}" + (f"; {remark}" if remark else "")
    return Source(where.title, place, provenance or row["provenance"])


def _names(cell: str) -> tuple[str, ...]:
    return tuple(name.strip() for name in cell.split(";") if name.strip())


def _movement(row: Mapping[str, str]) -> dict[str, object] | None:
    """Coefficients and shrinkages on one basis, their sources and a word on the basis; None if incomplete."""
    start = float(row["start_mc"])
    shrinkage = _table("wood_shrinkage").get(row["shrinkage"])
    printed_c = _table("wood_coefficients").get(row["coefficients"])
    sides = ("radial", "tangential")
    s = {side: number(shrinkage[side]) if shrinkage else None for side in sides}
    if printed_c is None:
        if shrinkage is None or s["radial"] is None or s["tangential"] is None:
            return None
        derived = _cited(shrinkage, DERIVED, "C = 1 / (100 m/S − m + 10)")
        cited = _cited(shrinkage)
        c = {side: coefficient_from_shrinkage(s[side] or 0.0, start) for side in sides}
        basis = "shrinkage; coefficients derived from it by C = 1 / (100 m/S − m + 10)"
        return _pack(c, s, derived, cited, basis)
    c = {side: float(printed_c[side]) for side in sides}
    implied = {side: shrinkage_from_coefficient(c[side], start) for side in sides}
    from_c = _cited(printed_c, DERIVED, "shrinkage implied by the coefficients")
    if shrinkage is None or s["radial"] is None or s["tangential"] is None:
        return _pack(
            c, implied, _cited(printed_c), from_c, "published coefficients; shrinkage derived from them"
        )
    would = {side: coefficient_from_shrinkage(s[side] or 0.0, start) for side in sides}
    if all(abs(would[side] - c[side]) <= SAME_BASIS for side in sides):
        basis = "published coefficients and shrinkage, which agree"
        return _pack(c, s, _cited(printed_c), _cited(shrinkage), basis)
    basis = (
        f"published coefficients; shrinkage derived from them. Not used: the shrinkage table's "
        f"{s['radial']:g} % radial, {s['tangential']:g} % tangential, which would give "
        f"{would['radial']:.5f} and {would['tangential']:.5f}"
    )
    return _pack(c, implied, _cited(printed_c), from_c, basis)


def _pack(
    c: Mapping[str, float], s: Mapping[str, float | None], c_source: Source, s_source: Source, basis: str
) -> dict[str, object]:
    sources = {f"{side}_coefficient": c_source for side in c} | {f"{side}_shrinkage": s_source for side in s}
    values: dict[str, object] = {f"{side}_coefficient": value for side, value in c.items()}
    return (
        values
        | {f"{side}_shrinkage": value for side, value in s.items()}
        | {"basis": basis, "sources": sources}
    )


def gravity_at_12(basic: float, volumetric_percent: float | None, start_mc: float) -> float:
    """Specific gravity on the volume at 12 % moisture content, from that on the green volume.

    The wood has shrunk by the share of its volumetric shrinkage that lies between ``start_mc`` and 12 %;
    where no volumetric shrinkage is known the handbook's average of 26.5 % × basic specific gravity is taken
    (Wood Handbook FPL-GTR-190, ch. 4, recalled).
    """
    volumetric = 26.5 * basic if volumetric_percent is None else volumetric_percent
    return basic / (1.0 - volumetric / 100.0 * (start_mc - AIR_DRY_MC) / start_mc)


def _strength(row: Mapping[str, str]) -> tuple[dict[str, float], dict[str, Source]]:
    found = [_table("wood_strength")[key] for key in row["strength"].split(" + ") if key]
    values: dict[str, float] = {}
    sources: dict[str, Source] = {}
    for column in ("specific_gravity_12", *STRENGTHS):
        cells = [number(line[column]) for line in found]
        known = [cell for cell in cells if cell is not None]
        if not found or len(known) < len(cells):
            continue  # a mean of some of a group's species would not be the group's
        values[column] = sum(known) / len(known)
        if len(found) == 1:
            sources[column] = _cited(found[0], remark=found[0]["remark"])
        else:
            places = ", ".join(line["row"] for line in found)
            where = published(found[0]["source"])
            sources[column] = Source(where.title, f"{where.locator}, mean of rows {places}", DERIVED)
    basic = number(found[0]["specific_gravity_basic"]) if found else None
    if basic is not None:
        shrinkage = _table("wood_shrinkage").get(row["shrinkage"])
        volumetric = number(shrinkage["volumetric"]) if shrinkage else None
        values["specific_gravity_12"] = round(gravity_at_12(basic, volumetric, float(row["start_mc"])), 3)
        remark = f"basic {basic:g} converted to the volume at 12 %"
        sources["specific_gravity_12"] = _cited(found[0], DERIVED, remark)
    return values, sources


def _wood(row: Mapping[str, str]) -> Species | Incomplete:
    movement = _movement(row)
    if movement is None:
        return Incomplete(row["name"], _names(row["trade_names"]), row["note"])
    strengths, strength_sources = _strength(row)
    along, spread = published("longitudinal"), published("variation")
    sources = {
        **movement.pop("sources"),  # type: ignore[dict-item]
        **strength_sources,
        "longitudinal_shrinkage": along,
        "variation": spread,
        "start_mc": Source("start of shrinkage that fits the figures" if row["start_mc"] != "30"
                           else "the handbook's 30 %", "", DERIVED),
    }  # fmt: skip
    return Species(
        name=row["name"],
        botanical=row["botanical"],
        trade_names=_names(row["trade_names"]),
        start_mc=float(row["start_mc"]),
        longitudinal_shrinkage=SOUND_LONGITUDINAL_SHRINKAGE,
        variation=BOARD_VARIATION,
        note=row["note"],
        sources=sources,
        **movement,  # type: ignore[arg-type]
        **strengths,  # type: ignore[arg-type]
    )


def _material(row: Mapping[str, str]) -> Species:
    where = published(row["source"])
    cited = Source(where.title, where.locator, row["provenance"])
    inert = row["kind"] == "inert"
    movement = Source("moisture does not move it", "", OWN) if inert else cited
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
