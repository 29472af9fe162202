"""The sideboard's base moulding: across the front and, mitred to it, across both sides.

Each side piece runs across the grain of the case side. Glued all along, it holds the side fast; put right, it is
glued at the front only, eased off the side behind that, and slides on two dovetail keys.
"""

from __future__ import annotations

from typing import Any

from workbench_pkg.demo.carcase import DEPTH, FINISH, SPECIES, WIDTH
from workbench_pkg.demo.shapes import at, block, cut, prism, wood

PROJECTION = 18.0
LOW, HIGH, SHOULDER = -8.0, 20.0, 6.0  # z of its lower edge, its upper edge and where its bevel begins
LIP = 6.0  # thickness at the upper edge
GLUED_LENGTH = 60.0
EASED = 0.2
KEYS_Y, KEY_LENGTH = (180.0, 340.0), 30.0
KEY_PROJECTION = 6.0
KEY_ROOT, KEY_TIP = (3.0, 9.0), (1.0, 11.0)  # from and to which z, at the side and at its wide end
KEY_ROOM = 0.2
BUILT_MC = 8.0

PROFILE = ((0.0, LOW), (PROJECTION, LOW), (PROJECTION, SHOULDER), (LIP, HIGH), (0.0, HIGH))


def base_moulding(case: Any, repaired: bool) -> None:
    _front(case)
    for side, face, out in (("left", 0.0, -1), ("right", WIDTH, 1)):
        _side(case, side, face, out, repaired)
        if repaired:
            _keys(case, side, face, out)


def _mitre(case: Any, label: str, x: float, angle: float) -> Any:
    """A cutter whose one face stands on the mitre line through (x, 0) and which lies to the left of `angle`."""
    size = 6 * PROJECTION
    low, high = (-size, 0.0, LOW - 1), (size, size, HIGH + 1)
    return block(case, label, low, high, at(x, 0, 0, angle=angle))


def _front(case: Any) -> None:
    outline = [(-PROJECTION, -out, z) for out, z in PROFILE]
    blank = prism(case, "Base moulding front blank", outline, (WIDTH + 2 * PROJECTION, 0, 0))
    mitres = [
        _mitre(case, "Base moulding front mitre left", 0.0, 45),
        _mitre(case, "Base moulding front mitre right", WIDTH, -45),
    ]
    front = cut(case, "Base moulding front", blank, mitres)
    wood(front, species=SPECIES, grain="x", show="-y", cut="flat", finish=FINISH, built=BUILT_MC)


def _side(case: Any, side: str, face: float, out: int, repaired: bool) -> None:
    outline = [(face + out * reach, -PROJECTION, z) for reach, z in PROFILE]
    blank = prism(case, f"Base moulding {side} blank", outline, (0, DEPTH + PROJECTION, 0))
    tools = [_mitre(case, f"Base moulding {side} mitre", face, -135 if out < 0 else 135)]
    if repaired:
        easing = sorted((face, face + out * EASED))
        tools.append(
            block(
                case,
                f"Base moulding {side} easing",
                (easing[0] - (0.1 if out > 0 else 0), GLUED_LENGTH, LOW - 1),
                (easing[1] + (0.1 if out < 0 else 0), DEPTH + 1, HIGH + 1),
            )
        )
        start = KEYS_Y[0] - KEY_LENGTH
        run = DEPTH + 1 - start
        tools.append(_dovetail(case, f"Base moulding {side} slot", face, out, start, run, KEY_ROOM))
    made = cut(case, f"Base moulding {side}", blank, tools)
    show = "-x" if out < 0 else "x"
    wood(made, species=SPECIES, grain="y", show=show, cut="flat", finish=FINISH, built=BUILT_MC)


def _keys(case: Any, side: str, face: float, out: int) -> None:
    for number, y in enumerate(KEYS_Y, start=1):
        key = _dovetail(case, f"Moulding key {side} {number}", face, out, y, KEY_LENGTH, 0.0)
        wood(key, species="hard maple", grain="y", cut="quarter", finish="none", built=BUILT_MC)


def _dovetail(case: Any, label: str, face: float, out: int, start: float, run: float, room: float) -> Any:
    (root_low, root_high), (tip_low, tip_high) = KEY_ROOT, KEY_TIP
    tip = face + out * (KEY_PROJECTION + room)
    outline = [
        (face, start, root_low - room),
        (face, start, root_high + room),
        (tip, start, tip_high + room),
        (tip, start, tip_low - room),
    ]
    return prism(case, label, outline, (0, run, 0))
