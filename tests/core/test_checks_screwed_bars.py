"""Battens screwed up into a top: in round holes at lines apart they split it, in slots they do not. All is invented."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.checks.crossing_grain import crossing_grain
from movement_core.checks.held_tops import held_tops
from movement_core.checks.strips_across import strips_across
from movement_core.checks.two_fixed_lines import two_fixed_lines
from movement_core.piece.contact.bodies import Body, PlanarFace
from movement_core.piece.solve import solve_piece
from movement_core.piece.whole import whole_piece
from tests.core.contact_solids import circle, cylinder_face, peg, piece_of, prism
from tests.core.tables import BOTH, DAY, UP

PLACES = (-165.0, -55.0, 55.0, 165.0)


def drilled(name, low, high, holes, deep=None):
    """A block with upright holes (centre, radius, half the length of a slot): right through, or ``deep`` from below."""
    (x0, y0, z0), (x1, y1, z1) = low, high
    body = prism(name, [(x0, y0), (x1, y0), (x1, y1), (x0, y1)], z0, z1)
    faces, curved = list(body.planar), []
    for centre, radius, half in holes:
        ring = circle(radius, 64)
        if half:
            ring = ring + np.sign(ring[:, 1:]) * [[0.0, half]]
        ring = ring + centre
        top = z1 if deep is None else z0 + deep
        for index, z in ((0, z0), (1, z1)) if deep is None else ((0, z0),):
            hole = np.column_stack([ring, np.full(len(ring), z)])
            faces[index] = PlanarFace(faces[index].normal, (*faces[index].loops, hole))
        if deep is not None:
            faces.append(
                PlanarFace(np.array([0, 0, -1.0]), (np.column_stack([ring, np.full(len(ring), top)]),))
            )
        if half:
            for side in (-1, 1):
                a, b = (
                    (centre[0] + side * radius, centre[1] - half),
                    (centre[0] + side * radius, centre[1] + half),
                )
                wall = np.array([(*a, z0), (*b, z0), (*b, top), (*a, top)])
                faces.append(PlanarFace(np.array([-side, 0, 0.0]), (wall,)))
        else:
            curved.append(cylinder_face(radius, z0, top, centre=centre, hollow=True))
    return Body(name, name, tuple(faces), tuple(curved))


def table(slots=(), loose=0.0, wood="steel"):
    """Four boards, a batten across them, a screw up into each board; ``slots`` : places whose hole is a slot."""
    pairs = []
    for i, (pith, at) in enumerate(zip(UP, PLACES)):
        board = drilled(
            f"Board {i + 1}", (-450, at - 55, 700), (450, at + 55, 720), [((200.0, at), 2.5, 0.0)], deep=14.0
        )
        pairs.append((board, f"white oak; grain x; show z; {pith}; finish varnish 2; built 9"))
    holes = [((200.0, at), 2.5 + loose, 6.0 if at in slots else 0.0) for at in PLACES]
    batten = drilled("Batten", (175, -205, 675), (225, 205, 700), holes)
    pairs.append((batten, "white oak; grain y; cut quarter; built 9"))
    pairs += [(peg(f"Screw {at:g}", 2.5, 675, 714, centre=(200.0, at)), wood) for at in PLACES]
    return pairs


def told(pairs, confirmed=None, checks=(held_tops, two_fixed_lines, crossing_grain, strips_across)):
    whole = whole_piece(
        solve_piece(piece_of(pairs), BOTH, DAY), [body for body, _ in pairs], confirmed=confirmed
    )
    found = [finding for check in checks for finding in check(whole)]
    return [one for one in found if one.check != "top-not-flat"]


def test_screws_in_round_tight_holes_at_lines_apart_break_the_top_and_are_told_once():
    (finding,) = told(table())
    assert finding.check == "fixed-across-the-grain" and finding.severity == "breaks"
    assert "held to the top at 4 lines 330 mm apart" in finding.message
    assert "Batten" in finding.parts and finding.figures["apart_mm"] == pytest.approx(330)
    # 330 of its 440 mm move, as wide as the top
    assert finding.figures["change_driest_mm"] < -1 and finding.figures["change_wettest_mm"] > 1


def test_slots_everywhere_but_in_the_middle_are_right_and_asked_no_more():
    assert told(table(slots=(-165.0, 55.0, 165.0))) == []


def test_holes_with_room_round_the_shank_hold_nothing_fast():
    assert told(table(loose=2.0)) == []


def test_two_tight_holes_left_among_slots_are_told_with_their_own_lines():
    (finding,) = told(table(slots=(-55.0, 55.0)))
    assert "at 2 lines 330 mm apart" in finding.message


def joints(kind):
    return {("Batten", f"Board {i}"): kind for i in range(1, 5)}


def unscrewed():
    return [
        (prism(body.name, [(175, -205), (225, -205), (225, 205), (175, 205)], 675, 700), tag)
        if body.name == "Batten"
        else (prism(body.name, [(-450, y - 55), (450, y - 55), (450, y + 55), (-450, y + 55)], 700, 720), tag)
        for (body, tag), y in zip(table()[:5], (*PLACES, 0.0))
    ]


def test_a_batten_that_nothing_is_drawn_of_is_asked_for_until_its_joints_are_confirmed():
    (asked,) = told(unscrewed())
    assert asked.severity == "unknown" and "not drawn" in asked.message
    assert told(unscrewed(), joints("slides")) == []
    screwed = told(unscrewed(), joints("screwed"))
    assert screwed and {one.severity for one in screwed} == {"breaks"}
    assert "fixed-across-the-grain" not in {one.check for one in screwed}
    some = dict(list(joints("slides").items())[:3])
    assert [one.severity for one in told(unscrewed(), some)] == ["unknown"]
