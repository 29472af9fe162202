"""The two trestles of the table: a bearer, a lower rail and two splayed, tapered legs each.

In a trestle's frame y runs across the table, z = 0 is the floor, x = 0 its middle plane, and +x looks to the
middle of the table.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sin
from typing import Any

from workbench_pkg.demo.shapes import Flat, at, block, body, container, cut, link, wood
from workbench_pkg.demo.table_top import BUILT_MC, SPECIES

UNDERSIDE = 722.0  # of the top
BEARER_LENGTH, BEARER_WIDTH, BEARER_HEIGHT = 820.0, 60.0, 90.0
GROOVE_DROP, GROOVE_HEIGHT, GROOVE_DEPTH = 12.0, 8.0, 12.0  # for the buttons: below the top, high, deep
LEG_TOP_Y, SPLAY_DEG = 270.0, 6.0
LEG_THICKNESS, LEG_TOP_WIDTH, LEG_FOOT_WIDTH = 50.0, 70.0, 45.0
LEG_TENON_THICKNESS, LEG_TENON_WIDTH, LEG_TENON_LENGTH = 16.0, 44.0, 40.0
RAIL_THICKNESS, RAIL_HEIGHT, RAIL_Z = 30.0, 80.0, 170.0
RAIL_TENON_THICKNESS, RAIL_TENON_HEIGHT, RAIL_TENON_LENGTH = 12.0, 50.0, 28.0
STRETCHER_TENON, STRETCHER_Z = (18.0, 50.0), RAIL_Z  # thickness and height; the middle of the stretcher
MORTISE_ROOM = 1.0

SHOULDER_Z = UNDERSIDE - BEARER_HEIGHT  # the legs' shoulders, where they meet the bearer
_COS, _SIN = cos(radians(SPLAY_DEG)), sin(radians(SPLAY_DEG))
LEG_LENGTH = SHOULDER_Z / _COS
TAPER = (LEG_TOP_WIDTH - LEG_FOOT_WIDTH) / 2 / LEG_LENGTH  # of each edge, per mm of length


@dataclass(frozen=True)
class Trestle:
    """The objects that the other trestle is linked to."""

    bearer: Any
    rail: Any
    leg: Any


def to_leg(y: float, z: float) -> Flat:
    """A point of the trestle's plane in the frame of the leg on the +y side (across it, up along it)."""
    dy, dz = y - LEG_TOP_Y, z - SHOULDER_Z
    return dy * _COS + dz * _SIN, dz * _COS - dy * _SIN


def leg_place(side: int) -> Any:
    """Where a leg stands: splayed, its shoulder under the bearer, on the +y or -y side."""
    splayed = at(0, LEG_TOP_Y, SHOULDER_Z, axis=(1, 0, 0), angle=SPLAY_DEG)
    return splayed if side > 0 else at(angle=180).multiply(splayed)


def _edge_at_height(side: int, z: float) -> Flat:
    """Where a leg's edge (side -1: the inner one) crosses a level line of the trestle, in the leg's frame."""
    # The edge is u = side (top/2 + TAPER v), the level line u sin + v cos = z - shoulder.
    level = z - SHOULDER_Z
    v = (level - side * LEG_TOP_WIDTH / 2 * _SIN) / (_COS + side * TAPER * _SIN)
    return side * (LEG_TOP_WIDTH / 2 + TAPER * v), v


def inner_edge_y(z: float) -> float:
    """Distance of a leg's inner edge from the trestle's middle at a height."""
    u, v = _edge_at_height(-1, z)
    return LEG_TOP_Y + u * _COS - v * _SIN


def trestle(home: Any, placement: Any, apron_y: float, apron_mortise: tuple[float, float, float]) -> Trestle:
    """The first trestle, with all its parts made out."""
    here = container(home, "Trestle 1", placement)
    bearer = _bearer(here, apron_y, apron_mortise)
    rail = _rail(here)
    leg = _leg(here)
    leg.Placement = leg_place(+1)
    wood(leg, **_leg_facts(pith=(70, 44)))
    second = link(here, "Leg 2", leg, leg_place(-1))
    wood(second, pith=(-62, 58))  # the rest it takes from the leg it is a copy of
    return Trestle(bearer, rail, leg)


def other_trestle(home: Any, placement: Any, first: Trestle, repaired: bool) -> None:
    """The second trestle: links to the parts of the first, with facts of their own where the wood differs."""
    here = container(home, "Trestle 2", placement)
    link(here, "Bearer 2", first.bearer, first.bearer.Placement)
    link(here, "Lower rail 2", first.rail, first.rail.Placement)
    third = link(here, "Leg 3", first.leg, leg_place(+1))
    wood(third, **_leg_facts(pith=(66, 49) if repaired else (8, -5)))
    fourth = link(here, "Leg 4", first.leg, leg_place(-1))
    wood(fourth, pith=(88, -20))


def _leg_facts(pith: Flat) -> dict[str, object]:
    # Where the pith is says all about the rings; the legs' show face looks out along the table.
    return {
        "species": SPECIES,
        "grain": "z",
        "show": "x",
        "pith": pith,
        "finish": "varnish 3",
        "built": BUILT_MC,
    }


def _leg(here: Any) -> Any:
    outline = [_edge_at_height(-1, 0), _edge_at_height(1, 0)]
    outline += [_edge_at_height(1, SHOULDER_Z), _edge_at_height(-1, SHOULDER_Z)]
    half, root = LEG_TENON_WIDTH / 2, -20.0
    tenon = [(-half, root), (half, root), (half, LEG_TENON_LENGTH), (-half, LEG_TENON_LENGTH)]
    inner = inner_edge_y(RAIL_Z)
    depth = inner + RAIL_TENON_LENGTH + MORTISE_ROOM
    low, high = RAIL_Z - RAIL_TENON_HEIGHT / 2, RAIL_Z + RAIL_TENON_HEIGHT / 2
    mortise = [to_leg(y, z) for y, z in ((inner - 20, low), (depth, low), (depth, high), (inner - 20, high))]
    return body(
        here,
        "Leg 1",
        pads=[(outline, LEG_THICKNESS), (tenon, LEG_TENON_THICKNESS)],
        pockets=[(mortise, RAIL_TENON_THICKNESS)],
    )


def _rail(here: Any) -> Any:
    low, high = RAIL_Z - RAIL_HEIGHT / 2, RAIL_Z + RAIL_HEIGHT / 2
    below, above = inner_edge_y(low), inner_edge_y(high)
    outline = [(-below, low), (below, low), (above, high), (-above, high)]
    end, half = inner_edge_y(RAIL_Z) + RAIL_TENON_LENGTH, RAIL_TENON_HEIGHT / 2
    tenons = [(-end, RAIL_Z - half), (end, RAIL_Z - half), (end, RAIL_Z + half), (-end, RAIL_Z + half)]
    thickness, height = STRETCHER_TENON[0] / 2, STRETCHER_TENON[1] / 2
    hole = [
        (-thickness, STRETCHER_Z - height),
        (thickness, STRETCHER_Z - height),
        (thickness, STRETCHER_Z + height),
        (-thickness, STRETCHER_Z + height),
    ]
    rail = body(
        here,
        "Lower rail 1",
        pads=[(outline, RAIL_THICKNESS), (tenons, RAIL_TENON_THICKNESS)],
        pockets=[(hole, RAIL_THICKNESS + 2)],
    )
    return wood(rail, species=SPECIES, grain="y", show="x", cut="rift", finish="varnish 3", built=BUILT_MC)


def _bearer(here: Any, apron_y: float, apron_mortise: tuple[float, float, float]) -> Any:
    half_length, half_width = BEARER_LENGTH / 2, BEARER_WIDTH / 2
    blank = block(
        here, "Bearer blank", (-half_width, -half_length, SHOULDER_Z), (half_width, half_length, UNDERSIDE)
    )
    half, thick = LEG_TENON_WIDTH / 2, LEG_TENON_THICKNESS / 2
    tools = [
        block(
            here,
            f"Leg mortise {number}",
            (-thick, -half, -20),
            (thick, half, LEG_TENON_LENGTH + MORTISE_ROOM),
            leg_place(side),
        )
        for number, side in ((1, 1), (2, -1))
    ]
    depth, width, height = apron_mortise
    middle = UNDERSIDE - BEARER_HEIGHT / 2
    tools += [
        block(
            here,
            f"Apron mortise {number}",
            (half_width - depth, side * apron_y - width / 2, middle - height / 2),
            (half_width + 1, side * apron_y + width / 2, middle + height / 2),
        )
        for number, side in ((1, 1), (2, -1))
    ]
    reach, groove_top = apron_y - 30, UNDERSIDE - GROOVE_DROP
    tools.append(
        block(
            here,
            "Bearer button groove",
            (half_width - GROOVE_DEPTH, -reach, groove_top - GROOVE_HEIGHT),
            (half_width + 1, reach, groove_top),
        )
    )
    bearer = cut(here, "Bearer 1", blank, tools)
    return wood(bearer, species=SPECIES, grain="y", show="-x", cut="rift", finish="varnish 3", built=BUILT_MC)
