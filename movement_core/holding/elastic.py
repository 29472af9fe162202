"""Elastic constants of a board in its own plane, from handbook ratios and the ring angle."""

from __future__ import annotations

import difflib
import math
from dataclasses import dataclass, replace

from movement_core.errors import InputError, UnknownName
from movement_core.holding.model import Elastic
from movement_core.sources import DERIVED, Source
from movement_core.tables import number, rows
from movement_core.wording import say

# Handbook bending moduli are from mid-span loading and hold some shear; the handbook raises them by 10 % for
# the modulus along the grain (Wood Handbook, FPL-GTR-190, p. 5-2, recalled).
SHEAR_FREE = 1.10


@dataclass(frozen=True)
class ElasticRatios:
    """One row of ratios to E_L: E_T, E_R, G_LR, G_LT, G_RT, and Poisson's ratios; None where not published."""

    species: str
    et: float | None
    er: float | None
    glr: float | None
    glt: float | None
    grt: float | None
    mu_lr: float | None
    mu_lt: float | None
    mu_rt: float | None
    mu_tr: float | None
    mu_rl: float | None
    mu_tl: float | None
    source: Source

    def filled_from(self, other: ElasticRatios) -> ElasticRatios:
        """What was not published taken from another row; the source then names both."""
        gaps = [name for name in _FIGURES if getattr(self, name) is None and getattr(other, name) is not None]
        if not gaps:
            return self
        locator = f"{self.source.locator}; {', '.join(gaps)} from {other.species}"
        known = Source(self.source.title, locator, DERIVED)
        return replace(self, source=known, **{name: getattr(other, name) for name in gaps})


_FIGURES = ("et", "er", "glr", "glt", "grt", "mu_lr", "mu_lt", "mu_rt", "mu_tr", "mu_rl", "mu_tl")
_COLUMNS = ("et_el", "er_el", "glr_el", "glt_el", "grt_el", *_FIGURES[5:])


def typical_ratios(group: str) -> ElasticRatios:
    """Means of all rows of a group, "hardwood" or "softwood" (balsa left out): for a wood without a row.

    Derived, and rough: single woods lie some 30 % to either side. Say so where the answer is shown.
    """
    chosen = [row for row in rows("elastic_ratios") if row["group"] == group and row["species"] != "Balsa"]
    if not chosen:
        raise InputError(
            say("group {group!r}", group=group),
            where=say("elastic ratios"),
            allowed=say("hardwood or softwood"),
        )
    means = {}
    for name, column in zip(_FIGURES, _COLUMNS):
        known = [value for value in (number(row[column]) for row in chosen) if value is not None]
        means[name] = sum(known) / len(known)
    source = Source(
        "Wood Handbook, FPL-GTR-190", f"Tables 5-1 and 5-2, means of {len(chosen)} {group}s", DERIVED
    )
    return ElasticRatios(f"typical {group}", source=source, **means)


def elastic_ratios(species: str) -> ElasticRatios:
    """The handbook's row for a species.

    Raises
    ------
    UnknownName : no such row, with the nearest names. Wood without a row has no known stiffness across the
        grain; take a like wood's row knowingly.
    """
    table = {row["species"].casefold(): row for row in rows("elastic_ratios")}
    row = table.get(species.casefold())
    if row is None:
        near = difflib.get_close_matches(species.casefold(), table, n=3, cutoff=0.4)
        raise UnknownName(
            say("no elastic ratios for {species!r}", species=species),
            nearest=tuple(table[name]["species"] for name in near),
            where=say("elastic ratios"),
            allowed=", ".join(table[name]["species"] for name in near)
            or say("the species of elastic_ratios.csv"),
            todo=say("name a like wood's row, or use typical_ratios knowingly"),
        )
    known = row["ratios_provenance"] or row["poisson_provenance"]
    if "recalled" in (row["ratios_provenance"], row["poisson_provenance"]):
        known = "recalled"
    source = Source("Wood Handbook, FPL-GTR-190", "Tables 5-1 and 5-2, pp. 5-2, 5-3", known)
    figures = {name: number(row[column]) for name, column in zip(_FIGURES, _COLUMNS)}
    return ElasticRatios(row["species"], source=source, **figures)


def board_elastic(ratios: ElasticRatios, moe_mpa: float, ring_angle_deg: float = 0.0) -> Elastic:
    """Constants in the plane of a board's face.

    Parameters
    ----------
    ratios : of the species.
    moe_mpa : handbook modulus of elasticity in bending at 12 % moisture, MPa.
    ring_angle_deg : between the rings and the face, 0 flat-sawn to 90 quarter-sawn.

    Raises
    ------
    InputError : the angle or modulus is out of range, or a figure the angle needs was never published:
        between flat and quarter the rolling shear modulus G_RT rules, and few woods have one.

    Notes
    -----
    Across the face 1/E = cos⁴/E_T + sin⁴/E_R + (1/G_RT − 2 ν_RT/E_R) sin²·cos² (rotation of an orthotropic
    body; Bodig and Jayne, Mechanics of Wood and Wood Composites, recalled). So a rift softwood board is
    several times more flexible than a flat- or quarter-sawn one. The two published Poisson's ratios of a
    plane break reciprocity: the mean of the two compliances is used, or the one that is given.
    """
    if not 0 <= ring_angle_deg <= 90:
        raise InputError(
            say("ring angle {ring_angle_deg:g}°", ring_angle_deg=ring_angle_deg),
            where=say("elastic constants"),
            allowed=say("0 to 90°"),
        )
    if not (math.isfinite(moe_mpa) and moe_mpa > 0):
        raise InputError(
            say("modulus {moe_mpa!r}", moe_mpa=moe_mpa),
            where=say("elastic constants"),
            allowed=say("above 0 MPa"),
        )
    e_l = SHEAR_FREE * moe_mpa
    s, c = math.sin(math.radians(ring_angle_deg)), math.cos(math.radians(ring_angle_deg))
    needs = {"et": c > 1e-3, "glt": c > 1e-3, "er": s > 1e-3, "glr": s > 1e-3, "grt": s * c > 1e-3}
    missing = [name for name, needed in needs.items() if needed and getattr(ratios, name) is None]
    poisson_t = _symmetric(ratios.mu_lt, ratios.mu_tl, ratios.et)
    poisson_r = _symmetric(ratios.mu_lr, ratios.mu_rl, ratios.er)
    across_rt = _symmetric(ratios.mu_rt, ratios.mu_tr, (ratios.et or 0) / (ratios.er or 1) or None)
    if c > 1e-3 and poisson_t is None:
        missing.append("mu_lt")
    if s > 1e-3 and poisson_r is None:
        missing.append("mu_lr")
    if s * c > 1e-3 and across_rt is None:
        missing.append("mu_rt")
    if missing:
        raise InputError(
            say("no published {names} for {species}", names=", ".join(missing), species=ratios.species),
            where=say(
                "elastic constants at a ring angle of {ring_angle_deg:g}°", ring_angle_deg=ring_angle_deg
            ),
            allowed=say(
                "flat-sawn (0°) needs E_T, G_LT, mu_LT; quarter-sawn (90°) E_R, G_LR, mu_LR; between, all"
            ),
            todo=say(
                "fill the gap from a like wood or typical_ratios with filled_from, or use the nearer pure cut"
            ),
        )
    compliance = poisson = shear = 0.0
    if c > 1e-3:
        assert ratios.et is not None and ratios.glt is not None and poisson_t is not None
        compliance += c**4 / ratios.et
        poisson += c**2 * poisson_t
        shear += c**2 / ratios.glt
    if s > 1e-3:
        assert ratios.er is not None and ratios.glr is not None and poisson_r is not None
        compliance += s**4 / ratios.er
        poisson += s**2 * poisson_r
        shear += s**2 / ratios.glr
    if s * c > 1e-3:
        assert ratios.grt is not None and ratios.er is not None and across_rt is not None
        compliance += (1 / ratios.grt - 2 * across_rt / ratios.er) * (s * c) ** 2
    basis = (
        f"{ratios.species}, rings at {ring_angle_deg:g}° to the face, MOE {moe_mpa:g} MPa; {ratios.source}"
    )
    return Elastic(e_l, e_l / compliance, e_l / shear, poisson, basis)


def _symmetric(forward: float | None, back: float | None, ratio: float | None) -> float | None:
    """The forward Poisson's ratio whose compliance is the mean of both published ones.

    ``ratio`` is the modulus of the second direction over that of the first; ν_ab/E_a = ν_ba/E_b.
    """
    if forward is None:
        return back / ratio if back is not None and ratio else None
    if back is None or not ratio:
        return forward
    return (forward + back / ratio) / 2
