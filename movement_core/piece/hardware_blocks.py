"""Blocks for slotted screws where a rail is too narrow for a slot: screwed to its inner face, the slot in the block."""

from __future__ import annotations

from movement_core.holding.anchor_plan import PLAIN_HOLE_MM
from movement_core.holding.fasteners import ACROSS, find_kind
from movement_core.holding.model import Point
from movement_core.holding.plan_model import Placed
from movement_core.holding.rails import Rail
from movement_core.holding.travel import WidthStrain, slot, travel
from movement_core.piece.hardware_bodies import OPEN_MM, Marker
from movement_core.piece.hardware_screws import Passing, Site, capital, screw_shapes, washer_mm
from movement_core.piece.hardware_tongues import side_of
from movement_core.piece.top_plan import TopPlans
from movement_core.wording import say

BESIDE_MM = 8.0  # wood on either side of the slot in a block (own)
END_MM = 18.0  # wood before and behind it, for the screws into the rail (own)


def block(site: Site, plans: TopPlans, number: int, placed: Placed, rail: Rail) -> None:
    """A slotted screw beside its rail, in a block as deep as the screw passes; its travel is that of the new place."""
    found, kind = plans.found, find_kind(placed.kind)
    assert found.top is not None and found.strain is not None
    side, fixed = side_of(rail, placed), plans.wish.fixed_mm
    screw = Passing(
        number, *placed.place_mm, placed.least_mm, placed.today_mm, placed.most_mm, placed.slot, kind.shank_mm,
        kind.through_mm,
    )  # fmt: skip
    deep = wide = 0.0
    for _ in range(2):  # the place depends on the size of the block, and that, a little, on the travel there
        length = screw.slot.length_mm if screw.slot else washer_mm(screw.shank)
        breadth = max(washer_mm(screw.shank), screw.slot.width_mm if screw.slot else 0.0)
        deep, wide = (breadth, length) if rail.direction == ACROSS else (length, breadth)
        deep, wide = deep + 2 * BESIDE_MM, wide + 2 * END_MM
        aside = rail.breadth_mm / 2 + deep / 2
        along = placed.place_mm[0] + aside * side.out[0]
        across = placed.place_mm[1] + aside * side.out[1]
        screw = _moved(screw, found.top.strain, (along, across), fixed)
    where = say("screw {number} beside {rail}", number=number, rail=rail.name)
    shapes = screw_shapes(site, kind, screw, -kind.through_mm, kind.through_mm, where)
    if not shapes:
        return
    middle = screw.across + (screw.least + screw.most) / 2
    bench, low = site.bench, -kind.through_mm
    x, _ = side.turned((screw.along, screw.across))
    corner = (x - wide / 2, side.face, low)
    body = bench.turned_box(side.along, corner, (x + wide / 2, side.face + deep, 0.0))
    if screw.slot:
        size = screw.slot.length_mm, screw.slot.width_mm
        hole = bench.slot(screw.along, middle, low - OPEN_MM, OPEN_MM, *size)
    else:
        hole = bench.cylinder(screw.along, screw.across, low - OPEN_MM, OPEN_MM, screw.shank)
    figures = _figures(found.strain, screw, fixed, found.place.length_mm)
    title = say("Block {number} on {rail}", number=number, rail=rail.name)
    site.markers.append(Marker(title, "block", number, (body,), (hole,), figures, wooden=True))
    site.markers.append(Marker(capital(where), kind.kind, number, shapes, (), figures))
    site.refuse(
        say(
            "{rail} is {breadth:.0f} mm broad, too narrow for a slot: screw {number} sits beside it in a block of "
            "{wide:.0f} × {deep:.0f} × {high:.0f} mm that is glued and screwed to its inner face",
            rail=rail.name,
            breadth=rail.breadth_mm,
            number=number,
            wide=wide,
            deep=deep,
            high=kind.through_mm,
        )
    )


def _moved(screw: Passing, strain: WidthStrain, point: Point, fixed: float) -> Passing:
    """The screw at another place, with the travel and the slot of that place."""
    there = travel(strain, point[1], fixed)
    least, today, most = (float(v) for v in (there.least_mm, there.today_mm, there.most_mm))
    made = slot(least, today, most, screw.shank) if most - least > PLAIN_HOLE_MM else None
    return Passing(screw.number, *point, least, today, most, made, screw.shank, screw.through)


def _figures(
    strain: WidthStrain, screw: Passing, fixed: float, length: float
) -> tuple[tuple[str, float | None], ...]:
    """What the sheet would tell of the screw at its new place, by the sheet's names."""
    low = strain.lines_mm[0]
    edge, here = (float(v) for v in strain.moved("today", [low, screw.across], fixed))
    return (
        ("from_edge_today_mm", screw.across - low + here - edge),
        ("from_end_mm", screw.along + length / 2),
        ("travel_least_mm", screw.least),
        ("travel_today_mm", screw.today),
        ("travel_most_mm", screw.most),
        ("slot_length_mm", screw.slot.length_mm if screw.slot else None),
        ("screw_from_slot_end_today_mm", screw.slot.screw_today_mm if screw.slot else None),
    )
