"""A trestle table with an apron: white oak, tapered legs, tusked stretcher, the top on wooden buttons.

Invented for the demo; see ``faults`` for what is wrong with it. In the table's frame x runs along the top, the
floor is z = 0 and the middle of the top is x = y = 0.
"""

from __future__ import annotations

from typing import Any

from workbench_pkg.demo.colours import paint_parts
from workbench_pkg.demo.shapes import at, block, container, cut, fuse, link, link_array, prism, wood
from workbench_pkg.demo.table_top import BUILT_MC, SPECIES, THICKNESS, table_top
from workbench_pkg.demo.trestle import (
    BEARER_HEIGHT,
    BEARER_WIDTH,
    GROOVE_DEPTH,
    GROOVE_DROP,
    GROOVE_HEIGHT,
    RAIL_THICKNESS,
    STRETCHER_TENON,
    STRETCHER_Z,
    UNDERSIDE,
    other_trestle,
    trestle,
)

TURN_IN_THE_ROOM = 15.0  # degrees; nothing in the document lies along the global axes
TRESTLE_X = 700.0  # from the middle of the table to the middle of a trestle
APRON_Y = 330.0
APRON_THICKNESS = 24.0
APRON_TENON = (25.0, 10.0, 60.0)  # length, thickness, height
MORTISE_ROOM = 1.0  # left at the bottom of a mortise
STRETCHER_THICKNESS, STRETCHER_HEIGHT = 36.0, 80.0
STRETCHER_TENON_PROUD = 55.0
TUSK_LENGTH, TUSK_WIDTH = 100.0, 12.0
TUSK_THIN, TUSK_THICK = 14.0, 20.0
TUSK_DROP = 20.0  # below the tenon
BUTTON_BODY, BUTTON_TONGUE, BUTTON_WIDTH = 35.0, 10.0, 30.0
BUTTON_TONGUE_THICKNESS = 7.5
BUTTON_ROOM = 4.0  # from a button's shoulder to the apron: the tongue can still go deeper by that
APRON_BUTTONS_X = (-540.0, -270.0, 0.0, 270.0, 540.0)
BEARER_BUTTONS_Y = (-150.0, 150.0)

HEIGHT = UNDERSIDE + THICKNESS


def trestle_table(doc: Any, repaired: bool = False) -> Any:
    """Build the table in an open document; returns its root container."""
    root = container(doc, "Trestle table", at(angle=TURN_IN_THE_ROOM))
    frame = container(root, "Frame")
    first = trestle(frame, at(-TRESTLE_X), APRON_Y, apron_mortise())
    other_trestle(frame, at(TRESTLE_X, angle=180), first, repaired)
    _aprons(frame)
    _stretcher(frame, repaired)
    table_top(root, at(z=UNDERSIDE), repaired)
    _buttons(frame)
    doc.recompute()
    paint_parts(doc)
    return root


def apron_mortise() -> tuple[float, float, float]:
    """Depth, width and height of the mortise that takes an apron's tenon."""
    length, thickness, height = APRON_TENON
    return length + MORTISE_ROOM, thickness, height


def _aprons(frame: Any) -> None:
    reach = TRESTLE_X - BEARER_WIDTH / 2
    low_z, middle_z = UNDERSIDE - BEARER_HEIGHT, UNDERSIDE - BEARER_HEIGHT / 2
    length, thickness, height = APRON_TENON
    inner, outer = APRON_Y - APRON_THICKNESS / 2, APRON_Y + APRON_THICKNESS / 2
    core = block(frame, "Apron core", (-reach, inner, low_z), (reach, outer, UNDERSIDE))
    tenon = block(
        frame,
        "Apron tenons",
        (-reach - length, APRON_Y - thickness / 2, middle_z - height / 2),
        (reach + length, APRON_Y + thickness / 2, middle_z + height / 2),
    )
    groove_top = UNDERSIDE - GROOVE_DROP
    groove = block(
        frame,
        "Apron button groove",
        (APRON_BUTTONS_X[0] - 60, inner - 1, groove_top - GROOVE_HEIGHT),
        (APRON_BUTTONS_X[-1] + 60, inner + GROOVE_DEPTH, groove_top),
    )
    apron = cut(frame, "Apron 1", fuse(frame, "Apron with tenons", [core, tenon]), [groove])
    wood(apron, species=SPECIES, grain="x", show="y", cut="quarter", finish="varnish 3", built=BUILT_MC)
    link(frame, "Apron 2", apron, at(angle=180))


def _stretcher(frame: Any, repaired: bool) -> None:
    shoulder = TRESTLE_X - RAIL_THICKNESS / 2
    rail_face = TRESTLE_X + RAIL_THICKNESS / 2
    end = rail_face + STRETCHER_TENON_PROUD
    thickness, height = STRETCHER_TENON
    half = STRETCHER_HEIGHT / 2
    core = block(
        frame,
        "Stretcher core",
        (-shoulder, -STRETCHER_THICKNESS / 2, STRETCHER_Z - half),
        (shoulder, STRETCHER_THICKNESS / 2, STRETCHER_Z + half),
    )
    tenon = block(
        frame,
        "Stretcher tenons",
        (-end, -thickness / 2, STRETCHER_Z - height / 2),
        (end, thickness / 2, STRETCHER_Z + height / 2),
    )
    # The tusk bears on the rail's outer face; its mortise begins a little inside that face, so that it draws.
    low, high = STRETCHER_Z - height / 2 - TUSK_DROP, STRETCHER_Z - height / 2 - TUSK_DROP + TUSK_LENGTH
    thin, thick = rail_face + TUSK_THIN, rail_face + TUSK_THICK
    y, run = -TUSK_WIDTH / 2, (0.0, TUSK_WIDTH, 0.0)
    holes = [
        prism(
            frame,
            f"Tusk mortise {number}",
            [
                (side * x, y, z)
                for x, z in ((rail_face - 2, low), (thin, low), (thick, high), (rail_face - 2, high))
            ],
            run,
        )
        for number, side in ((1, 1), (2, -1))
    ]
    stretcher = cut(frame, "Stretcher", fuse(frame, "Stretcher with tenons", [core, tenon]), holes)
    wood(stretcher, species=SPECIES, grain="x", show="y", cut="rift", finish="varnish 3", built=BUILT_MC)

    outline = [(rail_face, y, low), (thin, y, low), (thick, y, high), (rail_face, y, high)]
    tusk = prism(frame, "Tusk 1", outline, run)
    if repaired:
        wood(tusk, species="black walnut", grain="z", cut="quarter", built=BUILT_MC)
    else:
        wood(tusk, grain="z", cut="quarter", built=BUILT_MC)
    link(frame, "Tusk 2", tusk, at(angle=180))


def _buttons(frame: Any) -> None:
    """Buttons under the top: tongues in the grooves of aprons and bearers, screwed to the top."""
    half = BUTTON_WIDTH / 2
    thickness = GROOVE_DROP + BUTTON_TONGUE_THICKNESS
    whole = block(frame, "Button blank", (-BUTTON_BODY, -half, -thickness), (BUTTON_TONGUE, half, 0))
    rebate = block(frame, "Button rebate", (0, -half - 1, -GROOVE_DROP), (BUTTON_TONGUE + 1, half + 1, 1))
    button = cut(frame, "Button", whole, [rebate])
    wood(button, species="hard maple", grain="x", cut="flat", finish="none", built=8.0)
    button.Visibility = False  # only its instances are parts

    apron_face = APRON_Y - APRON_THICKNESS / 2 - BUTTON_ROOM
    bearer_face = TRESTLE_X - BEARER_WIDTH / 2 - BUTTON_ROOM
    for label, places in (
        ("Apron 1 button", [at(x, apron_face, UNDERSIDE, angle=90) for x in APRON_BUTTONS_X]),
        ("Apron 2 button", [at(x, -apron_face, UNDERSIDE, angle=-90) for x in APRON_BUTTONS_X]),
        ("Bearer 1 button", [at(-bearer_face, y, UNDERSIDE, angle=180) for y in BEARER_BUTTONS_Y]),
        ("Bearer 2 button", [at(bearer_face, y, UNDERSIDE) for y in BEARER_BUTTONS_Y]),
    ):
        link_array(frame, label, button, places)
