"""Which published figures a wood's movement rests on, and what other tables say of the same wood.

One basis a wood, never a mixture: the coefficient table where the wood is in it, and then the shrinkage that
belongs to those coefficients; otherwise the shrinkage table, and the coefficients that follow from it. Figures
that are passed over are told, and widen the spread of the wood where they differ by more than a tenth.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache
from math import hypot

from movement_core.errors import UnknownName
from movement_core.sources import DERIVED, RECALLED, Source
from movement_core.tables import number, rows
from movement_core.wood.record import BOARD_VARIATION
from movement_core.wood.size_change import coefficient_from_shrinkage, shrinkage_from_coefficient
from movement_core.wording import say

# Printed coefficients have five decimals; where the printed shrinkage is behind them they follow to the last
# (in one row to the last but one unit).
SAME_BASIS = 7e-6
TABLES_DIFFER = 0.10  # share of a coefficient from which another table's figure widens the spread
RULE = "C = 1 / (100 m/S − m + 10)"

Row = Mapping[str, str]
Pair = tuple[float, float]  # radial, tangential


@dataclass(frozen=True)
class Movement:
    """Coefficients and shrinkages of one wood on one basis, with their sources.

    Attributes
    ----------
    coefficients, shrinkages : (radial, tangential), strain per 1 % moisture content and percent.
    coefficient_source, shrinkage_source : where both come from.
    basis, remark : what they rest on; what another table says of the wood.
    variation : coefficient of variation, 0.15 or more where tables differ.
    """

    coefficients: Pair
    shrinkages: Pair
    coefficient_source: Source
    shrinkage_source: Source
    basis: str
    remark: str
    variation: float


@cache
def published(source: str) -> Source:
    """The publication behind one ``source`` word of the wood tables; provenance is the table row's own.

    Raises
    ------
    UnknownName : with the words that data/wood_sources.csv has.
    """
    for row in rows("wood_sources"):
        if row["source"] == source:
            return Source(row["title"], row["locator"], RECALLED)
    raise UnknownName(
        say("no publication {source!r} in data/wood_sources.csv", source=source),
        where=say("wood tables"),
        allowed=", ".join(row["source"] for row in rows("wood_sources")),
        todo=say("add a row of this name to it"),
    )


@cache
def table(name: str) -> Mapping[str, Row]:
    """Rows of a wood table by ``source/row``, the key that species.csv uses."""
    return {f"{row['source']}/{row['row']}": row for row in rows(name)}


def cited(row: Row, provenance: str | None = None, remark: str = "") -> Source:
    """The source of a figure taken from a row; ``provenance`` where it is not the row's own."""
    where = published(row["source"])
    place = f"{where.locator}, row {row['row']!r}" + (f"; {remark}" if remark else "")
    return Source(where.title, place, provenance or row["provenance"])


def movement(row: Row) -> Movement | None:
    """The movement of one row of species.csv; None where the tables do not have both directions."""
    start = float(row["start_mc"])
    shrinkage = table("wood_shrinkage").get(row["shrinkage"])
    printed = table("wood_coefficients").get(row["coefficients"])
    other = table("wood_coefficients").get(row["compared_with"])
    s = _pair(shrinkage) if shrinkage else None
    from_s = _each(coefficient_from_shrinkage, s, start) if s else None
    if printed is None:
        if shrinkage is None or s is None or from_s is None:
            return None
        basis = f"shrinkage; coefficients derived from it by {RULE}"
        return _with_others(from_s, s, cited(shrinkage, DERIVED, RULE), cited(shrinkage), basis, None, other)
    c = _pair(printed)
    if c is None:
        raise ValueError(f"wood_coefficients row {row['coefficients']!r} lacks a figure")
    if shrinkage and s and from_s and all(abs(a - b) <= SAME_BASIS for a, b in zip(from_s, c)):
        basis = "published coefficients and shrinkage, which agree"
        return _with_others(c, s, cited(printed), cited(shrinkage), basis, None, other)
    basis = "published coefficients; shrinkage derived from them"
    if s and from_s:
        basis += (
            f". Not used: the shrinkage table's {s[0]:g} % radial and {s[1]:g} % tangential,"
            f" which would give {from_s[0]:.5f} and {from_s[1]:.5f}"
        )
    implied = _each(shrinkage_from_coefficient, c, start)
    s_source = cited(printed, DERIVED, "shrinkage that belongs to the coefficients")
    return _with_others(c, implied, cited(printed), s_source, basis, from_s, other)


def _pair(row: Row) -> Pair | None:
    radial, tangential = number(row["radial"]), number(row["tangential"])
    return None if radial is None or tangential is None else (radial, tangential)


def _each(rule: Callable[[float, float], float], pair: Pair, start_mc: float) -> Pair:
    return rule(pair[0], start_mc), rule(pair[1], start_mc)


def _with_others(
    c: Pair,
    s: Pair,
    c_source: Source,
    s_source: Source,
    basis: str,
    passed_over: Pair | None,
    other: Row | None,
) -> Movement:
    """Add what is not used: the other coefficients as a remark, and the greatest difference as wider spread."""
    remark = ""
    elsewhere = [passed_over] if passed_over else []
    if other and (pair := _pair(other)):
        elsewhere.append(pair)
        if _difference(c, pair) > TABLES_DIFFER:
            title = published(other["source"]).title.partition(",")[0]
            remark = f"{title} ({other['provenance']}) has {pair[0]:.4f} radial and {pair[1]:.4f} tangential"
    difference = max((_difference(c, pair) for pair in elsewhere), default=0.0)
    wider = difference / 2 if difference > TABLES_DIFFER else 0.0
    return Movement(c, s, c_source, s_source, basis, remark, round(hypot(BOARD_VARIATION, wider), 3))


def _difference(used: Pair, other: Pair) -> float:
    return max(abs(b / a - 1.0) for a, b in zip(used, other))
