"""A wardrobe of three bays, some 300 solids, for benchmarks and tests: nobody built it, all of it is invented.

Two bays with a frame-and-panel door, shelves on pegs and a rail of coat pegs (the second is a link to the first), and
between them a bay of drawers (a link array of the demo's dovetailed drawer). Sides, tops, bottoms, shelves and panels
are glued up of boards; backs are loose boards in rabbets; a plinth below and a mitred cornice above run the whole
width. In a bay's frame x runs to the right, y = 0 is the front of its sides and z = 0 its underside.
"""

from __future__ import annotations

from workbench_pkg.demo.drawer import drawer
from workbench_pkg.demo.fittings import facing_front, knob, knob_hole
from workbench_pkg.demo.shapes import (
    at,
    block,
    container,
    cut,
    fuse,
    link,
    link_array,
    new,
    prism,
    turned,
    wood,
)

WIDTH, DEPTH, HEIGHT = 648.0, 560.0, 1900.0
THICK = 22.0
BOARDS = 4  # in each side, top, bottom and shelf
HOUSING = 6.0
BACK = 10.0  # thickness of the back boards, and depth of their rabbet
BACKS = 5
SHELVES_Z = (420.0, 760.0, 1100.0, 1440.0)
PEG, PEG_OUT = 4.0, 12.0  # radius of the shelf pegs; how far they go in and stand out
DOOR, STILE, GROOVE = 22.0, 70.0, 12.0
GROOVE_Y = (7.0, 15.0)
TENON, TENON_HEIGHT = 40.0, 45.0
PULL_UP = 120.0  # of the door's middle, clear of the middle rail's tenon
PLINTH = 90.0
DRAWERS, DRAWER_STEP = 9, 188.0
OAK = {"species": "white oak", "built": 8.5, "finish": "oil 2"}
PLAIN = {"species": "yellow-poplar", "built": 8.5, "finish": "none"}


def wardrobe(doc):
    """Build it in an open document; returns its container."""
    root = container(doc, "Wardrobe", at(z=PLINTH))
    first = container(root, "Bay 1")
    _carcase(first, pegged=True, hinged=True)
    _door(first)
    _shelves(first)
    _coat_pegs(first)
    middle = container(root, "Bay 2", at(WIDTH))
    _carcase(middle, pegged=False, hinged=False)
    _drawers(middle)
    link(root, "Bay 3", first, at(2 * WIDTH))
    _plinth(root)
    _cornice(root)
    doc.recompute()
    return root


# ---- carcase -------------------------------------------------------------------------------------------------


def _carcase(bay, pegged, hinged):
    rear = DEPTH - BACK
    housings = [
        block(bay, f"{level} housing", (THICK - HOUSING, 0, z), (WIDTH - THICK + HOUSING, rear, z + THICK))
        for level, z in (("Bottom", 0.0), ("Top", HEIGHT - THICK))
    ]
    rabbet = block(bay, "Back rabbet", (THICK - 8, rear, -1), (WIDTH - THICK + 8, DEPTH + 1, HEIGHT + 1))
    holes = [_hole(bay, number, place) for number, place in enumerate(_peg_places(), 1)] if pegged else []
    wide = DEPTH / BOARDS
    for side, x, show in (("left", 0.0, "-x"), ("right", WIDTH - THICK, "x")):
        for number in range(BOARDS):
            low, high = number * wide, (number + 1) * wide
            blank = block(bay, f"Side {side} blank {number + 1}", (x, low, 0), (x + THICK, high, HEIGHT))
            mine = [
                hole
                for hole, place in zip(holes, _peg_places())
                if low < place[1] < high and (place[0] < WIDTH / 2) == (side == "left")
            ]
            tools = [*housings, *mine, *([rabbet] if high > rear else [])]
            if hinged and side == "left" and not number:
                tools += _hinge_recesses(bay, 0.0)
            made = cut(bay, f"Side {side} {number + 1}", blank, tools)
            wood(made, **OAK, grain="z", show=show, rings=15 + 10 * number, heart="show")
    for level, z, show in (("Bottom", 0.0, "-z"), ("Top", HEIGHT - THICK, "z")):
        wide = rear / BOARDS
        for number in range(BOARDS):
            low = (THICK - HOUSING, number * wide, z)
            high = (WIDTH - THICK + HOUSING, (number + 1) * wide, z + THICK)
            made = block(bay, f"{level} {number + 1}", low, high)
            wood(made, **OAK, grain="x", show=show, rings=12 + 8 * number, heart="show")
    pitch = (WIDTH - 2 * THICK + 16) / BACKS
    slat = block(bay, "Back 1", (THICK - 7, rear, 0), (THICK - 9 + pitch, DEPTH, HEIGHT))
    wood(slat, **PLAIN, grain="z", show="-y", cut="flat", heart="show")
    for number in range(1, BACKS):
        link(bay, f"Back {number + 1}", slat, at(THICK - 7 + number * pitch, rear))


def _peg_places():
    return [
        (x, y, z - PEG)
        for z in SHELVES_Z
        for x in (THICK - PEG_OUT, WIDTH - THICK - PEG_OUT)
        for y in (60.0, DEPTH - 80)
    ]


def _hole(bay, number, place):
    made = new(bay, "Part::Cylinder", f"Peg hole {number}")
    made.Radius, made.Height = PEG, 2 * PEG_OUT
    made.Placement = at(*place, axis=(0, 1, 0), angle=90)
    return made


def _shelves(bay):
    wide = (DEPTH - BACK - 40) / BOARDS
    shelf = container(bay, "Shelf 1", at(0, 30, SHELVES_Z[0]))
    for number in range(BOARDS):
        low, high = (THICK + 1, number * wide, 0), (WIDTH - THICK - 1, (number + 1) * wide, THICK - 2)
        board = block(shelf, f"Shelf board {number + 1}", low, high)
        wood(board, **OAK, grain="x", show="z", pith=(8.0 * number - 12, 70 + 5 * number))
    for number, z in enumerate(SHELVES_Z[1:], 2):
        link(bay, f"Shelf {number}", shelf, at(0, 30, z))
    peg = new(bay, "Part::Cylinder", "Shelf peg 1")
    peg.Radius, peg.Height = PEG, 2 * PEG_OUT
    first, *others = [at(*place, axis=(0, 1, 0), angle=90) for place in _peg_places()]
    peg.Placement = first
    wood(peg, species="hard maple", built=8.0, grain="z", cut="rift")
    link_array(bay, "Shelf peg", peg, others)


def _coat_pegs(bay):
    y = DEPTH - BACK - 22
    rail = block(bay, "Peg rail", (THICK, y, 1700), (WIDTH - THICK, y + 22, 1780))
    holes = []
    places = [at(THICK + 50 + 50 * i, y, 1740, axis=(1, 0, 0), angle=90) for i in range(11)]
    for number, place in enumerate(places, 1):
        hole = new(bay, "Part::Cylinder", f"Coat peg hole {number}")
        hole.Radius, hole.Height = 6.0, 14.0
        hole.Placement = place.multiply(at(z=-14))
        holes.append(hole)
    wood(cut(bay, "Coat rail", rail, holes), **OAK, grain="x", show="-y", cut="quarter")
    profile = [(0, 60), (0, -13), (6, -13), (6, 0), (9, 0)]
    peg = turned(bay, "Coat peg 1", profile, [(6, 12), (5, 30), (9, 45), (11, 54)])
    peg.Placement = places[0]
    wood(peg, species="hard maple", built=8.0, grain="z", cut="flat")
    link_array(bay, "Coat peg", peg, places[1:])


# ---- door ----------------------------------------------------------------------------------------------------


def _door(bay):
    gap = 2.0
    wide, high = WIDTH - 2 * THICK - 2 * gap, HEIGHT - 2 * THICK - 2 * gap
    here = container(bay, "Door", at(THICK + gap, 0, THICK + gap))
    levels = {"bottom": (0.0, 90.0), "middle": (high / 2 - 50, 100.0), "top": (high - STILE, STILE)}
    inner = (STILE - GROOVE, wide - STILE + GROOVE)
    groove = block(here, "Door groove", (inner[0], GROOVE_Y[0], STILE - GROOVE + 20),
                   (inner[1], GROOVE_Y[1], high - STILE + GROOVE))  # fmt: skip
    mortises = {
        level: block(here, f"Mortises {level}", (STILE - TENON - 1, GROOVE_Y[0], z + tall / 2 - TENON_HEIGHT / 2),
                     (wide - STILE + TENON + 1, GROOVE_Y[1], z + tall / 2 + TENON_HEIGHT / 2))
        for level, (z, tall) in levels.items()
    }  # fmt: skip
    places = [
        at(x, -1, z + tall / 2 + up, axis=(1, 0, 0), angle=-90)
        for z, tall in levels.values()
        for up in (-12, 12)
        for x in (STILE - 20, wide - STILE + 20)
    ]
    bores = []
    for number, place in enumerate(places, 1):
        bore = new(here, "Part::Cylinder", f"Peg bore {number}")
        bore.Radius, bore.Height = 3.0, DOOR + 2
        bore.Placement = place
        bores.append(bore)
    for side, x in (("left", 0.0), ("right", wide - STILE)):
        blank = block(here, f"Stile {side} blank", (x, 0, 0), (x + STILE, DOOR, high))
        mine = [bore for bore, place in zip(bores, places) if (place.Base.x < wide / 2) == (side == "left")]
        extra = _hinge_recesses(here, -gap) if side == "left" else [
            knob_hole(here, "Pull hole", wide - STILE / 2, high / 2 + PULL_UP)
        ]  # fmt: skip
        made = cut(here, f"Stile {side}", blank, [groove, *mortises.values(), *mine, *extra])
        wood(made, **OAK, grain="z", show="-y", cut="quarter")
    for number, (level, (z, tall)) in enumerate(levels.items()):
        core = block(here, f"Rail {level} core", (STILE, 0, z), (wide - STILE, DOOR, z + tall))
        low, top = z + tall / 2 - TENON_HEIGHT / 2, z + tall / 2 + TENON_HEIGHT / 2
        tenon = block(here, f"Rail {level} tenons", (STILE - TENON, GROOVE_Y[0], low),
                      (wide - STILE + TENON, GROOVE_Y[1], top))  # fmt: skip
        rail = fuse(here, f"Rail {level} with tenons", [core, tenon])
        slots = []
        if level != "bottom":
            slots.append(("below", z, z + GROOVE))
        if level != "top":
            slots.append(("above", z + tall - GROOVE, z + tall))
        tools = [
            block(
                here, f"Rail {level} groove {name}", (STILE, GROOVE_Y[0], a), (wide - STILE, GROOVE_Y[1], b)
            )
            for name, a, b in slots
        ]
        mine = bores[4 * number : 4 * number + 4]
        wood(cut(here, f"Rail {level}", rail, [*tools, *mine]), **OAK, grain="x", show="-y", cut="quarter")
    room, third = 4.0, (inner[1] - inner[0] - 8.0) / 3
    for low, high_ in (("bottom", "middle"), ("middle", "top")):
        foot, head = sum(levels[low]) - GROOVE, levels[high_][0] + GROOVE - 2
        for number in range(3):
            x = inner[0] + room + number * third
            board = block(here, f"Panel {low} {number + 1}", (x, GROOVE_Y[0] + 0.2, foot),
                          (x + third, GROOVE_Y[1] - 0.2, head))  # fmt: skip
            wood(board, **OAK, grain="z", show="-y", pith=(6.0 * number - 6, 60 + 8 * number))
    peg = new(here, "Part::Cylinder", "Drawbore peg 1")
    peg.Radius, peg.Height = 3.0, DOOR
    shown = [place.multiply(at(z=1)) for place in places]
    peg.Placement = shown[0]
    wood(peg, species="white oak", built=7.0, grain="z", cut="rift")
    link_array(here, "Drawbore peg", peg, shown[1:])
    knob(here, "Door pull", facing_front(wide - STILE / 2, high / 2 + PULL_UP))
    _hinges(bay, gap)


HINGES_Z = (250.0, 950.0, 1650.0)  # in the bay's frame


def _hinge_recesses(home, face):
    """Cutters for the leaves of the hinges, in the side (face at THICK) and in the stile (face at 0)."""
    lift = THICK + 2.0 if home.Label.startswith("Door") else 0.0
    x = 0.0 if lift else THICK
    return [
        block(home, f"Hinge recess {n}", (x - 1.5, -1, z - lift), (x + 1.5, 18, z - lift + 60))
        for n, z in enumerate(HINGES_Z, 1)
    ]


def _hinges(bay, gap):
    leaves = block(
        bay, "Hinge leaves", (THICK - 1.5, -3, HINGES_Z[0]), (THICK + gap + 1.5, 18, HINGES_Z[0] + 60)
    )
    barrel = new(bay, "Part::Cylinder", "Hinge barrel")
    barrel.Radius, barrel.Height = 3.5, 60.0
    barrel.Placement = at(THICK + gap / 2, -3.5, HINGES_Z[0])
    first = wood(fuse(bay, "Hinge 1", [leaves, barrel]), species="brass")
    for number, z in enumerate(HINGES_Z[1:], 2):
        link(bay, f"Hinge {number}", first, at(0, 0, z - HINGES_Z[0]))


# ---- drawers, plinth, cornice --------------------------------------------------------------------------------


def _drawers(bay):
    lowest = THICK + 21.0
    first = drawer(bay, "Drawer", at(THICK + 1, 0, lowest), knob, repaired=True)
    first.Label = "Drawer 1"
    places = [at(THICK + 1, 0, lowest + DRAWER_STEP * i) for i in range(1, DRAWERS)]
    link_array(bay, "Drawer more", first, places)
    runner = block(bay, "Runner", (THICK, 25, lowest - 20), (THICK + 20, 400, lowest))
    wood(runner, species="hard maple", built=8.0, grain="y", show="z", cut="quarter", finish="none")
    places = [
        at(x, 25, lowest - 20 + DRAWER_STEP * i) for i in range(DRAWERS) for x in (THICK, WIDTH - THICK - 20)
    ]
    link_array(bay, "Runner more", runner, places[1:])


def _plinth(root):
    whole = 3 * WIDTH
    facts = {**OAK, "cut": "quarter"}
    for name, y in (("front", 40.0), ("back", DEPTH - 22 - 40)):
        board = block(root, f"Plinth {name}", (30, y, -PLINTH), (whole - 30, y + 22, 0))
        wood(board, **facts, grain="x", show="-y")
    low, high = 62.0, DEPTH - 62.0
    tie = block(root, "Plinth tie 1", (30, low, -PLINTH), (52, high, 0))
    wood(tie, **facts, grain="y", show="-x")
    places = [at(x, low, -PLINTH) for x in (WIDTH - 11, 2 * WIDTH - 11, whole - 52)]
    link_array(root, "Plinth tie", tie, places)
    glue = block(root, "Glue block 1", (52, low, -60), (82, low + 30, 0))
    wood(glue, **PLAIN, grain="z", show="z", cut="rift")
    others = [at(x, y, -60) for x in (52.0, WIDTH + 11, 2 * WIDTH + 11) for y in (low, high - 30)]
    link_array(root, "Glue block", glue, others[1:])


def _cornice(root):
    whole, out, tall = 3 * WIDTH, 40.0, 60.0
    profile = [(0.0, 0.0), (12.0, 0.0), (out, tall - 14), (out, tall), (0.0, tall)]
    z = HEIGHT - 20
    blank = prism(
        root, "Cornice front blank", [(-out, -o, z + up) for o, up in profile], (whole + 2 * out, 0, 0)
    )
    size = 6 * out
    mitres = [
        block(
            root,
            f"Cornice mitre {n}",
            (-size, 0, z - 1),
            (size, size, z + tall + 1),
            at(x, 0, 0, angle=angle),
        )
        for n, x, angle in ((1, 0.0, 45), (2, whole, -45))
    ]
    wood(cut(root, "Cornice front", blank, mitres), **OAK, grain="x", show="-y", cut="flat")
    for side, x, sign, angle in (("left", 0.0, -1, -135), ("right", whole, 1, 135)):
        outline = [(x + sign * o, -out, z + up) for o, up in profile]
        blank = prism(root, f"Cornice {side} blank", outline, (0, DEPTH + out, 0))
        mitre = block(root, f"Cornice {side} mitre", (-size, 0, z - 1), (size, size, z + tall + 1),
                      at(x, 0, 0, angle=angle))  # fmt: skip
        made = cut(root, f"Cornice {side}", blank, [mitre])
        wood(made, **OAK, grain="y", show="-x" if sign < 0 else "x", cut="flat")
