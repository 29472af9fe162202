"""Small assemblies whose contacts, gaps and overlaps are known by hand: every one found, none invented."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.piece.contact.bodies import Body
from movement_core.piece.contact.contacts import contacts_of
from tests.core.contact_solids import blocks, cells, pose, prism

MICRON = 1e-3
REACH = 8.0


def box(name, low, size, where):
    return blocks(name, [(low, tuple(np.add(low, size)))], where=where)


# ---- the assemblies: each gives its bodies and what is to be found ------------------------------------------
# Contacts are (first, second, area), gaps (first, second, width, area), overlaps (first, second, depth, volume).


def side_by_side(r, where):
    """Flush boxes of equal size: where kernels err."""
    a, b, c = r(20, 300, 3)
    return (
        [box("left", (0, 0, 0), (a, b, c), where), box("right", (a, 0, 0), (a, b, c), where)],
        [(0, 1, b * c)],
        [],
        [],
    )


def offset_boards(r, where):
    """A board on another, shoved aside both ways."""
    a, b, c = r(50, 300, 3)
    x, y = a * 0.3, b * 0.4
    return (
        [box("lower", (0, 0, 0), (a, b, c), where), box("upper", (x, y, c), (a, b, c), where)],
        [(0, 1, (a - x) * (b - y))],
        [],
        [],
    )


def edges_and_corners(r, where):
    """Boxes that share an edge, a corner, nothing: no contacts."""
    a, b, c = r(20, 200, 3)
    return (
        [
            box("first", (0, 0, 0), (a, b, c), where),
            box("at an edge", (a, b, 0), (a, b, c), where),
            box("at a corner", (-a, -b, -c), (a, b, c), where),
        ],
        [],
        [],
        [],
    )


def door_gap(r, where):
    a, b, c = r(50, 300, 3)
    (width,) = r(0.05, 4, 1)
    return (
        [box("stile", (0, 0, 0), (a, b, c), where), box("divider", (a + width, 0, 2), (a, b, c), where)],
        [],
        [(0, 1, width, b * (c - 2))],
        [],
    )


def too_far(r, where):
    a, b, c = r(50, 300, 3)
    return (
        [box("one", (0, 0, 0), (a, b, c), where), box("other", (a + 8.01, 0, 0), (a, b, c), where)],
        [],
        [],
        [],
    )


def spacer_between(r, where):
    """A thin part in the space between two others: what it fills is no gap, the rest is."""
    a, b, c = r(60, 200, 3)
    (thin,) = r(1, 5, 1)
    lower = box("lower", (0, 0, 0), (a, b, c), where)
    upper = box("upper", (0, 0, c + thin), (a, b, c), where)
    spacer = box("spacer", (0, 0, c), (a / 2, b, thin), where)
    return (
        [lower, upper, spacer],
        [(0, 2, a * b / 2), (1, 2, a * b / 2)],
        [(0, 1, thin, a * b / 2)],
        [],
    )


def tongue_in_groove(r, where):
    """A panel in a groove with room at the bottom and a little in its width."""
    length, depth = r(100, 400, 2)
    depth, thick, room, slack = 12.0, 8.0, 4.0, 0.2
    rail = blocks(
        "rail", [((0, 0, 0), (length, 22, 65))], [((0, 7, 65 - depth), (length, 7 + thick, 65))], where
    )
    panel = box("panel", (0, 7 + slack, 65 - depth + room), (length, thick - 2 * slack, 300), where)
    return (
        [rail, panel],
        [],
        [
            (0, 1, room, length * (thick - 2 * slack)),
            (0, 1, slack, length * (depth - room)),
            (0, 1, slack, length * (depth - room)),
        ],
        [],
    )


def mortise_and_tenon(r, where):
    """A tenon that fills its mortise but for the end, shoulders up."""
    (height,) = r(30, 80, 1)
    leg = blocks("leg", [((0, 0, 0), (60, 60, 400))], [((24, 20, 200), (60, 40, 200 + height))], where)
    rail = blocks(
        "rail",
        [((60, 10, 190), (400, 50, 210 + height)), ((26, 20, 200), (60, 40, 200 + height))],
        where=where,
    )
    shoulder = 40 * (20 + height) - 20 * height
    return (
        [leg, rail],
        [(0, 1, shoulder), (0, 1, 34 * 20), (0, 1, 34 * 20), (0, 1, 34 * height), (0, 1, 34 * height)],
        [(0, 1, 2.0, 20 * height)],
        [],
    )


def sliding_dovetail(r, where):
    length, wide = r(80, 300, 2)
    wide = 20.0 + wide / 20
    slope, deep = 0.15, 10.0
    top, low = wide / 2, wide / 2 + deep * slope
    board = prism(
        "board",
        [(-60, 0), (-top, 0), (-low, deep), (low, deep), (top, 0), (60, 0), (60, 25), (-60, 25)],
        0,
        length,
        where,
    )
    batten = prism(
        "batten", [(-40, -30), (40, -30), (40, 0), (top, 0), (low, deep), (-low, deep), (-top, 0), (-40, 0)],
        0, length, where,
    )  # fmt: skip
    cheek = float(np.hypot(deep, deep * slope)) * length
    rest = (40 - top) * length
    return (
        [board, batten],
        [(0, 1, cheek), (0, 1, cheek), (0, 1, 2 * low * length), (0, 1, rest), (0, 1, rest)],
        [],
        [],
    )


def frame_and_panel(r, where):
    """A panel captured on four sides, butted frame, room all round."""
    w, h = r(200, 500, 2)
    room, depth, slack = 3.0, 12.0, 0.15
    groove = ((60 - depth, 7, 60 - depth), (60 + w + depth, 15, 60 + h + depth))
    stiles = [
        blocks("left", [((0, 0, 0), (60, 22, h + 120))], [groove], where),
        blocks("right", [((60 + w, 0, 0), (120 + w, 22, h + 120))], [groove], where),
    ]
    rails = [
        blocks("bottom", [((60, 0, 0), (60 + w, 22, 60))], [groove], where),
        blocks("top", [((60, 0, 60 + h), (60 + w, 22, 120 + h))], [groove], where),
    ]
    low, high = 60 - depth + room, 60 + depth - room
    panel = box("panel", (low, 7 + slack, low), (w + high - low, 8 - 2 * slack, h + high - low), where)
    tongue = 8 - 2 * slack
    butt = 22 * 60 - 8 * depth
    over = depth - room  # how deep the panel goes in
    contacts = [(stile, rail, butt) for stile in (0, 1) for rail in (2, 3)]
    gaps = []
    for stile in (0, 1):
        gaps += [(stile, 4, room, tongue * (h + 2 * over))]
        gaps += [(stile, 4, slack, over * (h + 2 * over))] * 2
        gaps += [(stile, 4, room, tongue * over)] * 2  # the stile's groove is stopped at both ends
    for rail in (2, 3):
        gaps += [(rail, 4, room, tongue * w)]
        gaps += [(rail, 4, slack, over * w)] * 2
    return [*stiles, *rails, panel], contacts, gaps, []


def lapped(r, where):
    """A halving lap that fits, with its shoulders."""
    w, t = r(40, 90, 2)
    first = blocks("first", [((0, 0, 0), (400, w, t))], [((200, 0, t / 2), (200 + w, w, t))], where)
    second = blocks(
        "second", [((200, -150, 0), (200 + w, 150, t))], [((200, 0, 0), (200 + w, w, t / 2))], where
    )
    return (
        [first, second],
        [(0, 1, w * w)] + [(0, 1, w * t / 2)] * 4,
        [],
        [],
    )


def board_over_hole(r, where):
    """A board on one with a square window: the contact has a hole in it, and the window lies out of reach."""
    a, b = r(200, 400, 2)
    lower = blocks("lower", [((0, 0, 0), (a, b, 40))], [((50, 60, 0), (120, 150, 40))], where)
    upper = box("upper", (0, 0, 40), (a, b, 20), where)
    return [lower, upper], [(0, 1, a * b - 70 * 90)], [], []


def sunk_into(r, where):
    """A box drawn into another: a slip of known depth and volume, and no contact."""
    a, b, c = r(60, 200, 3)
    (deep,) = r(0.05, 5, 1)
    return (
        [box("lower", (0, 0, 0), (a, b, c), where), box("upper", (10, 10, c - deep), (a, b, 50), where)],
        [],
        [],
        [(0, 1, deep, (a - 10) * (b - 10) * deep)],
    )


def tenon_without_mortise(r, where):
    """A tenon drawn into a leg that was never mortised: shoulders touch, the tenon overlaps."""
    (height,) = r(30, 80, 1)
    leg = box("leg", (0, 0, 0), (60, 60, 400), where)
    rail = blocks(
        "rail",
        [((60, 10, 190), (400, 50, 210 + height)), ((20, 25, 200), (60, 40, 200 + height))],
        where=where,
    )
    return [leg, rail], [(0, 1, 40 * (20 + height) - 15 * height)], [], [(0, 1, 15.0, 40 * 15 * height)]


def one_in_another(r, where):
    """The same box twice, and a small one wholly inside."""
    a, b, c = r(60, 200, 3)
    return (
        [
            box("once", (0, 0, 0), (a, b, c), where),
            box("twice", (0, 0, 0), (a, b, c), where),
            box("inside", (9, 12, 15), (20, 24, 7), where),
        ],
        [],
        [],
        [(0, 1, min(a, b, c), a * b * c), (0, 2, 7.0, 20 * 24 * 7), (1, 2, 7.0, 20 * 24 * 7)],
    )


def tapered_gap(r, where):
    """A gap that widens along its length: least and most."""
    a, b = r(100, 300, 2)
    (low,) = r(0.5, 1.5, 1)
    high = low + 3
    lower = prism("lower", [(0, 0), (a, 0), (a, 40), (0, 40)], 0, b, where)
    upper = prism("upper", [(0, 40 + low), (a, 40 + high), (a, 90), (0, 90)], 0, b, where)
    return [lower, upper], [], [(0, 1, (low + high) / 2, a * b)], []


def four_feet(r, where):
    """A top on four legs: four contacts with one part."""
    a, b = r(600, 1200, 2)
    top = box("top", (0, 0, 700), (a, b, 25), where)
    feet = [
        box(f"leg {i}", (x, y, 0), (60, 60, 700), where)
        for i, (x, y) in enumerate([(0, 0), (a - 60, 0), (0, b - 60), (a - 60, b - 60)])
    ]
    return [top, *feet], [(0, i, 3600.0) for i in range(1, 5)], [], []


ASSEMBLIES = [
    side_by_side, offset_boards, edges_and_corners, door_gap, too_far, spacer_between, tongue_in_groove,
    mortise_and_tenon, sliding_dovetail, frame_and_panel, lapped, board_over_hole, sunk_into,
    tenon_without_mortise, one_in_another, tapered_gap, four_feet,
]  # fmt: skip
CASES = [(assembly, seed) for assembly in ASSEMBLIES for seed in range(4)]


def made(assembly, seed):
    rng = np.random.default_rng(1000 * ASSEMBLIES.index(assembly) + seed)
    return assembly(lambda low, high, count: rng.uniform(low, high, count), pose(seed + 100))


def check(found, contacts, gaps, overlaps):
    got = sorted((c.first, c.second, c.area_mm2) for c in found.contacts)
    assert [g[:2] for g in got] == [w[:2] for w in sorted(contacts)]
    # Areas to what a micron on every edge would make of them.
    assert [g[2] for g in got] == pytest.approx([w[2] for w in sorted(contacts)], abs=2000 * MICRON, rel=1e-9)
    got = sorted((g.first, g.second, round(g.size_mm, 6), g.area_mm2) for g in found.gaps)
    wanted = sorted((a, b, round(size, 6), area) for a, b, size, area in gaps)
    assert [g[:2] for g in got] == [w[:2] for w in wanted]
    assert [g[2] for g in got] == pytest.approx([w[2] for w in wanted], abs=MICRON)
    assert [g[3] for g in got] == pytest.approx([w[3] for w in wanted], abs=2000 * MICRON, rel=1e-9)
    got = sorted((o.first, o.second, o.depth_mm, o.volume_mm3) for o in found.overlaps)
    assert [g[:2] for g in got] == [w[:2] for w in sorted(overlaps)]
    for (*_, depth, volume), (*_, wanted_depth, wanted_volume) in zip(got, sorted(overlaps)):
        assert depth == pytest.approx(wanted_depth, abs=MICRON)
        assert volume == pytest.approx(wanted_volume, rel=1e-4)


@pytest.mark.parametrize(("assembly", "seed"), CASES, ids=[f"{a.__name__}-{s}" for a, s in CASES])
def test_every_one_found_and_none_invented(assembly, seed):
    bodies, contacts, gaps, overlaps = made(assembly, seed)
    check(contacts_of(bodies, REACH), contacts, gaps, overlaps)


def test_there_are_enough_of_them():
    assert len(CASES) >= 40


# The width of a gap out of parallel is measured square to the first one's face, so its figures do depend on it.
@pytest.mark.parametrize(
    "assembly", [a for a in ASSEMBLIES if a is not tapered_gap], ids=lambda a: a.__name__
)
def test_the_order_of_the_bodies_does_not_matter(assembly):
    bodies, contacts, gaps, overlaps = made(assembly, 1)
    found = contacts_of(bodies[::-1], REACH)
    last = len(bodies) - 1
    turned = [[(last - b, last - a, *rest) for a, b, *rest in one] for one in (contacts, gaps, overlaps)]
    check(found, *turned)


def test_normals_point_from_the_first_to_the_second():
    bodies, *_ = made(door_gap, 3)
    for order in (bodies, bodies[::-1]):
        (gap,) = contacts_of(order, REACH).gaps
        way = order[1].points.mean(axis=0) - order[0].points.mean(axis=0)
        assert gap.normal @ way > 0
        assert np.linalg.norm(gap.normal) == pytest.approx(1)


def test_outline_and_centre_of_a_contact():
    where = pose(7)
    bodies, *_ = offset_boards(lambda *_: np.array([100.0, 50.0, 20.0]), where)
    (contact,) = contacts_of(bodies).contacts
    turn, shift = where
    own = (contact.outline[0] - shift) @ turn
    assert sorted(map(tuple, np.round(own, 3))) == [(30, 20, 20), (30, 50, 20), (100, 20, 20), (100, 50, 20)]
    assert (contact.centre - shift) @ turn == pytest.approx([65, 35, 20], abs=MICRON)


def test_outline_of_a_contact_with_a_hole():
    bodies, *_ = made(board_over_hole, 2)
    (contact,) = contacts_of(bodies).contacts
    assert [len(loop) for loop in contact.outline] == [4, 4]


def test_both_ends_of_a_tapered_gap():
    bodies, *_ = tapered_gap(lambda low, high, count: np.full(count, low), pose(3))
    (gap,) = contacts_of(bodies, REACH).gaps
    assert (gap.least_mm, gap.most_mm) == pytest.approx((0.5, 3.5), abs=MICRON)
    (near,) = contacts_of(bodies, 2.0).gaps
    assert (near.least_mm, near.most_mm) == pytest.approx((0.5, 2.0), abs=MICRON)
    assert near.area_mm2 == pytest.approx(gap.area_mm2 / 2, rel=1e-6)


@pytest.mark.parametrize(("away", "touch"), [(0.009, True), (-0.009, True), (0.011, False), (-0.011, False)])
def test_the_tolerance_of_a_contact(away, touch):
    where = pose(4)
    found = contacts_of([box("a", (0, 0, 0), (9, 9, 9), where), box("b", (9 + away, 0, 0), (9, 9, 9), where)])
    assert len(found.contacts) == touch
    assert len(found.gaps) == (away > 0.01)
    assert len(found.overlaps) == (away < -0.01)


def test_nothing_to_compare():
    assert contacts_of([]).contacts == ()
    assert contacts_of([box("alone", (0, 0, 0), (1, 1, 1), pose(0))]).gaps == ()


def test_what_cannot_be_used():
    one = box("a", (0, 0, 0), (9, 9, 9), pose(0))
    with pytest.raises(InputError, match="reach"):
        contacts_of([one, one], 0.0)
    with pytest.raises(InputError, match="bare: a solid without faces"):
        contacts_of([one, Body("bare", "bare", ())])


# ---- against counting: any solids made of the cells of a grid ----------------------------------------------


def counted(grid, owner, reach):
    """Contact areas and gaps (pair, axis, width) → area of bodies that fill cells, by going along the cells."""
    contacts, gaps = {}, {}
    size = [np.diff(g) for g in grid]
    for axis in range(3):
        u, v = [a for a in range(3) if a != axis]
        rows = np.moveaxis(owner, axis, 0)
        for i, j in np.ndindex(rows.shape[1:]):
            face = size[u][i] * size[v][j]
            line, last, since = rows[:, i, j], 0, 0.0
            for k, here in enumerate(line):
                if here == 0:
                    since += size[axis][k]
                    continue
                pair = tuple(sorted((int(last) - 1, int(here) - 1)))
                if last not in (0, here):
                    if since == 0:
                        contacts[pair] = contacts.get(pair, 0.0) + face
                    elif since <= reach:
                        key = (*pair, axis, round(since, 6))
                        gaps[key] = gaps.get(key, 0.0) + face
                last, since = here, 0.0
    return contacts, gaps


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 10**6))
def test_against_counting_cells(seed):
    rng = np.random.default_rng(seed)
    grid = [np.concatenate([[0.0], np.cumsum(rng.uniform(2, 9, 4))]) for _ in range(3)]
    owner = rng.integers(0, 4, (4, 4, 4)) * (rng.random((4, 4, 4)) < 0.8)
    owner[0, 0, 0], owner[3, 3, 3], owner[0, 3, 0] = 1, 2, 3
    turn, shift = pose(seed)
    found = contacts_of([cells(str(n), grid, owner == n, (turn, shift)) for n in (1, 2, 3)], REACH)
    contacts, gaps = counted(grid, owner, REACH)
    got = {}
    for contact in found.contacts:
        pair = contact.first, contact.second
        got[pair] = got.get(pair, 0.0) + contact.area_mm2
    assert got == pytest.approx(contacts, rel=1e-7)
    got = {}
    for gap in found.gaps:
        axis = int(np.abs(turn.T @ gap.normal).argmax())
        assert gap.most_mm - gap.least_mm < 1e-6
        key = (gap.first, gap.second, axis, round(gap.size_mm, 6))
        got[key] = got.get(key, 0.0) + gap.area_mm2
    assert got == pytest.approx(gaps, rel=1e-7)
    assert found.overlaps == ()
