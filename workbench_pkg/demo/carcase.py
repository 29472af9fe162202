"""The sideboard's carcase: two sides, top and bottom lap-dovetailed, a housed divider, drawer rails, runners, back.

Grain runs round the carcase, so that its four boards swell and shrink in depth together. What does not run with
them is the moulding and, where they are planted on, the drawer runners.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from workbench_pkg.demo.dovetails import tail_outlines
from workbench_pkg.demo.fittings import FOOT_PIN_DEPTH, FOOT_PIN_RADIUS, hinge_recesses
from workbench_pkg.demo.shapes import at, block, cut, fuse, link, new, prism, said, wood

WIDTH, DEPTH, HEIGHT = 1150.0, 420.0, 592.0
THICKNESS = 22.0
LAP = 6.0  # of the side that covers the ends of the dovetails
TAILS, PIN, HALF_PIN = 6, 14.0, 12.0
DOOR_BAY = (THICKNESS, 502.0)
DIVIDER = (502.0, 524.0)
DRAWER_BAY = (524.0, WIDTH - THICKNESS)
BAY_HEIGHT = HEIGHT - 2 * THICKNESS
HOUSING = 6.0  # depth of the housings of divider and rails
HOUSING_STOP = 12.0  # the divider's housing stays this far from the front
RAIL_THICKNESS, RAIL_DEPTH = 22.0, 60.0
DRAWER_OPENING = (BAY_HEIGHT - 2 * RAIL_THICKNESS) / 3
RAILS_Z = (THICKNESS + DRAWER_OPENING, THICKNESS + 2 * DRAWER_OPENING + RAIL_THICKNESS)
BACK_THICKNESS, BACK_ROOM = 6.0, 0.5
RABBET_WIDTH, RABBET_DEPTH = 7.0, 7.0  # in from the rear edge; into the thickness
BACK_Y = DEPTH - RABBET_WIDTH
RUNNER_WIDTH, RUNNER_END_ROOM = 20.0, 8.0
STUB = 8.0  # the runner's tenon in the rail: length, width and height
RUNNER_ROOM = 0.4  # the housed runner's room above it and at the bottom of its housing
BUILT_MC = 8.0
SPECIES = "black cherry"
FINISH = "oil 2"
NAMES = ("Lower", "Upper")


def carcase(case: Any, feet: Sequence[tuple[float, float]], repaired: bool) -> None:
    """All parts of the carcase but the moulding, in its container."""
    rabbet = block(
        case,
        "Back rabbet",
        (THICKNESS - RABBET_DEPTH, BACK_Y, THICKNESS - RABBET_DEPTH),
        (WIDTH - THICKNESS + RABBET_DEPTH, DEPTH + 1, HEIGHT - THICKNESS + RABBET_DEPTH),
    )
    ends = {
        (end, level): _tails(case, end, level) for end in ("left", "right") for level in ("top", "bottom")
    }
    divider_tongue = block(
        case,
        "Divider housing",
        (DIVIDER[0], HOUSING_STOP, THICKNESS - HOUSING),
        (DIVIDER[1], BACK_Y, HEIGHT - THICKNESS + HOUSING),
    )
    rail_housings = [
        block(case, f"{name} rail housing", (DRAWER_BAY[0] - HOUSING, 0, z), _rail_corner(z))
        for name, z in zip(NAMES, RAILS_Z)
    ]
    runner_housings = [_runner_housing(case, name, z) for name, z in zip(NAMES, RAILS_Z)] if repaired else []

    _long_board(case, "top", ends, [divider_tongue, rabbet])
    holes = [_foot_hole(case, number, x, y) for number, (x, y) in enumerate(feet, start=1)]
    _long_board(case, "bottom", ends, [divider_tongue, rabbet, *holes])
    _side(case, "left", ends, [rabbet, *hinge_recesses(case, THICKNESS)])
    _side(case, "right", ends, [rabbet, *rail_housings, *runner_housings])
    _divider(case, [*rail_housings, *runner_housings])
    for name, z in zip(NAMES, RAILS_Z):
        _rail(case, name, z, repaired)
    _runners(case, repaired)
    _back(case)


def _tails(case: Any, end: str, level: str) -> Any:
    """The dovetails on one end of top or bottom, as one solid: part of that board, and cutter for the side."""
    shoulder, tip = (THICKNESS, LAP) if end == "left" else (WIDTH - THICKNESS, WIDTH - LAP)
    z = HEIGHT - THICKNESS if level == "top" else 0.0
    pieces = []
    for number, outline in enumerate(tail_outlines(0, DEPTH, TAILS, PIN, HALF_PIN, shoulder, tip), start=1):
        points = [(x, y, z) for y, x in outline]
        tail = prism(case, f"Tail {level} {end} {number}", points, (0, 0, THICKNESS))
        pieces.append(tail)
    made = new(case, "Part::Compound", f"Tails {level} {end}")
    made.Links = pieces
    for piece in (*pieces, made):
        piece.Visibility = False
    return made


def _long_board(case: Any, level: str, ends: dict[tuple[str, str], Any], tools: list[Any]) -> None:
    z = HEIGHT - THICKNESS if level == "top" else 0.0
    board = block(
        case, f"Case {level} between shoulders", (THICKNESS, 0, z), (WIDTH - THICKNESS, DEPTH, z + THICKNESS)
    )
    tailed = fuse(case, f"Case {level} with tails", [board, ends["left", level], ends["right", level]])
    made = cut(case, f"Case {level}", tailed, tools)
    show = "z" if level == "top" else "-z"
    wood(made, species=SPECIES, grain="x", show=show, rings=15, heart="show", finish=FINISH, built=BUILT_MC)


def _side(case: Any, end: str, ends: dict[tuple[str, str], Any], tools: list[Any]) -> None:
    x = 0.0 if end == "left" else WIDTH - THICKNESS
    board = block(case, f"Case side {end} blank", (x, 0, 0), (x + THICKNESS, DEPTH, HEIGHT))
    made = cut(case, f"Case side {end}", board, [ends[end, "top"], ends[end, "bottom"], *tools])
    show = "-x" if end == "left" else "x"
    wood(made, species=SPECIES, grain="z", show=show, rings=12, heart="show", finish=FINISH, built=BUILT_MC)


def _divider(case: Any, tools: list[Any]) -> None:
    board = block(
        case, "Divider between", (DIVIDER[0], 0, THICKNESS), (DIVIDER[1], BACK_Y, HEIGHT - THICKNESS)
    )
    tongue = block(
        case,
        "Divider tongue",
        (DIVIDER[0], HOUSING_STOP, THICKNESS - HOUSING),
        (DIVIDER[1], BACK_Y, HEIGHT - THICKNESS + HOUSING),
    )
    made = cut(case, "Divider", fuse(case, "Divider with tongues", [board, tongue]), tools)
    wood(made, species=SPECIES, grain="z", show="-x", rings=20, heart="show", finish=FINISH, built=BUILT_MC)


def _rail_corner(z: float) -> tuple[float, float, float]:
    return (DRAWER_BAY[1] + HOUSING, RAIL_DEPTH, z + RAIL_THICKNESS)


def _rail(case: Any, name: str, z: float, repaired: bool) -> None:
    label = f"{name} drawer rail"
    rail = block(case, f"{label} blank", (DRAWER_BAY[0] - HOUSING, 0, z), _rail_corner(z))
    stubs = []
    for side, x in zip(("left", "right"), _runner_middles(repaired)):
        low, high = _stub(x, z)
        stubs.append(block(case, f"{label} mortise {side}", low, high))
    facts = f"{SPECIES}; grain x; show z; cut rift; finish {FINISH}; built {BUILT_MC:g}"
    cut(case, said(label, facts), rail, stubs)


def _runner_spans(repaired: bool) -> tuple[tuple[float, float], tuple[float, float]]:
    """From where to where the left and the right runner reach along x."""
    into = HOUSING if repaired else 0.0
    left = (DRAWER_BAY[0] - into, DRAWER_BAY[0] + RUNNER_WIDTH)
    right = (DRAWER_BAY[1] - RUNNER_WIDTH, DRAWER_BAY[1] + into)
    return left, right


def _runner_middles(repaired: bool) -> list[float]:
    return [(low + high) / 2 for low, high in _runner_spans(repaired)]


def _stub(x: float, z: float) -> tuple[tuple[float, float, float], tuple[float, float, float]]:
    half, middle = STUB / 2, z + RAIL_THICKNESS / 2
    return (x - half, RAIL_DEPTH - STUB, middle - half), (x + half, RAIL_DEPTH, middle + half)


def _runner_housing(case: Any, name: str, z: float) -> Any:
    """One groove right across the bay, cut from divider and side alike."""
    into = HOUSING + RUNNER_ROOM
    return block(
        case,
        f"{name} runner housing",
        (DRAWER_BAY[0] - into, RAIL_DEPTH, z),
        (DRAWER_BAY[1] + into, BACK_Y, z + RAIL_THICKNESS + RUNNER_ROOM),
    )


def _runners(case: Any, repaired: bool) -> None:
    z = RAILS_Z[0]
    left, right = _runner_spans(repaired)
    end = BACK_Y - RUNNER_END_ROOM
    blank = block(case, "Runner blank", (left[0], RAIL_DEPTH, z), (left[1], end, z + RAIL_THICKNESS))
    low, high = _stub(sum(left) / 2, z)
    stub = block(case, "Runner stub tenon", low, high)
    master = fuse(case, "Lower runner left", [blank, stub])
    wood(master, species="hard maple", grain="y", show="z", cut="quarter", finish="none", built=BUILT_MC)
    across, up = right[0] - left[0], RAILS_Z[1] - RAILS_Z[0]
    link(case, "Lower runner right", master, at(across))
    link(case, "Upper runner left", master, at(0, 0, up))
    link(case, "Upper runner right", master, at(across, 0, up))


def _back(case: Any) -> None:
    inset = THICKNESS - RABBET_DEPTH + BACK_ROOM
    back = block(
        case, "Back", (inset, BACK_Y, inset), (WIDTH - inset, BACK_Y + BACK_THICKNESS, HEIGHT - inset)
    )
    wood(back, species="plywood", grain="x", show="-y", finish=FINISH, built=BUILT_MC)


def _foot_hole(case: Any, number: int, x: float, y: float) -> Any:
    hole = new(case, "Part::Cylinder", f"Foot hole {number}")
    hole.Radius, hole.Height = FOOT_PIN_RADIUS, FOOT_PIN_DEPTH + 1.0
    hole.Placement.Base = (x, y, 0)
    return hole
