"""The faults built into the demo models, for trying out what finds them, and how the repaired variant differs.

The pieces are invented: the two-bench workshop of Lower Sallowby, the house at Fenwhistle End they were made
for, and every board in them. No such makers or places are meant.
"""

from __future__ import annotations

from dataclasses import dataclass

TABLE, SIDEBOARD, BENCH = "trestle_table", "sideboard", "hall_bench"


@dataclass(frozen=True)
class Fault:
    """One fault: the model's file stem, the labels of the parts concerned, what is wrong, how it is put right."""

    model: str
    kind: str
    parts: tuple[str, ...]
    wrong: str
    repaired: str


FAULTS = (
    Fault(
        TABLE,
        "pith in the board",
        ("Leg 3",),
        "cut round the heart of the tree: it will check, and its shape cannot be foretold",
        "cut beside the heart",
    ),
    Fault(
        TABLE,
        "unequal finish",
        tuple(f"Top board {i}" for i in range(1, 8)),
        "three coats of varnish on the show face, the underside bare: one face follows the air, one lags",
        "three coats on both faces",
    ),
    Fault(
        SIDEBOARD,
        "trapped panel",
        ("Door panel", "Door stile left", "Door stile right"),
        "the panel fills its grooves while it is at its driest: in the damp season it bursts the frame",
        "4 mm of room on each side",
    ),
    Fault(
        SIDEBOARD,
        "inset door jams",
        ("Door stile right", "Divider"),
        "0.6 mm of gap, fitted dry: the two stiles take more than that in the damp season",
        "2 mm on the lock side, fitted at middling moisture",
    ),
    Fault(
        SIDEBOARD,
        "moulding across the side",
        ("Base moulding left", "Case side left"),
        "glued along its whole length across the grain of the side",
        "glued in the front 60 mm, behind that eased off the side and held by two dovetail keys it slides on",
    ),
    Fault(
        SIDEBOARD,
        "moulding across the side",
        ("Base moulding right", "Case side right"),
        "glued along its whole length across the grain of the side",
        "glued in the front 60 mm, behind that eased off the side and held by two dovetail keys it slides on",
    ),
    Fault(
        SIDEBOARD,
        "drawer bottom",
        ("Drawer bottom", "Drawer side left", "Drawer side right"),
        "grain runs from front to back, so that it swells against the sides, whose grooves it fills (three drawers)",
        "grain runs from side to side, held in the front's groove, free to slide under the back",
    ),
    Fault(
        SIDEBOARD,
        "runner across the side",
        ("Lower runner right", "Upper runner right", "Case side right"),
        "planted on the case side across its grain for its whole length",
        "tenoned into the drawer rail, housed in a groove of the side with room, and short of the back",
    ),
    Fault(
        SIDEBOARD,
        "runner across the side",
        ("Lower runner left", "Upper runner left", "Divider"),
        "planted on the divider across its grain for its whole length",
        "tenoned into the drawer rail, housed in a groove of the divider with room, and short of the back",
    ),
)

# Facts left out on purpose; the repaired variant supplies them.
UNTOLD = {
    (TABLE, "Tusk 1"): "species",
    (TABLE, "Tusk 2"): "species",
    (TABLE, "Top board 6"): "moisture as built",
    (SIDEBOARD, "Door pull"): "species",
    (SIDEBOARD, "Door stop"): "grain, and as a cube it has no longest edge to infer it from",
    (BENCH, "Stretcher"): "moisture as built",
}


def faults_of(model: str) -> tuple[Fault, ...]:
    """The faults of one model by its file stem."""
    return tuple(fault for fault in FAULTS if fault.model == model)
