"""The held plate against finite elements (scikit-fem, Morley triangles): deflection 2 %, anchor force 5 %."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest

pytest.importorskip("skfem", reason="compares with scikit-fem's plate elements")
pytest.importorskip("scipy", reason="solves the finite-element plate")

from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.model import Anchor, Bearing, Elastic, LoadCase, Plate
from movement_core.holding.plate import hold, prepare
from movement_core.sources import DERIVED, OWN
from tests.validation.holding_fe import MorleyPlate
from tests.validation.record import compared

ELEMENTS = "scikit-fem, Morley triangles"

# The reference case: a test value of curvature, 5 mm of crown or hollow on 500 mm; all our own choice.
REFERENCE = Plate(1000, 500, 20, Elastic(10300, 600, 700, 0.4), 700)
OAK = Elastic(12300, 890, 960, 0.43)
SPRUCE = Elastic(10800, 460, 660, 0.45)


def ring(plate, inset=10.0):
    """Four edge lines, a little inside the panel's edges."""
    a, b = plate.length_mm / 2 - inset, plate.width_mm / 2 - inset
    return (((-a, -b), (a, -b)), ((a, -b), (a, b)), ((a, b), (-a, b)), ((-a, b), (-a, -b)))


def across(*places, half):
    return tuple(((s, -half), (s, half)) for s in places)


def boards(width, count, crown, kink):
    lines = np.linspace(-width / 2, width / 2, count + 1)
    return FreeCurvature(
        tuple(lines), tuple(np.broadcast_to(crown, count)), tuple(np.broadcast_to(kink, count - 1))
    )


LONG = Plate(2000, 500, 22, OAK, 750)
WIDE = Plate(900, 800, 19, OAK, 750)
LIGHT = Plate(1200, 600, 24, SPRUCE, 450)
SQUARE = Plate(700, 700, 18, Elastic(9000, 900, 800, 0.35), 500)
CROWN, HOLLOW = FreeCurvature.even(500, 1.6e-4), FreeCurvature.even(500, -1.6e-4)
ENDS = [Anchor(-490, 0), Anchor(490, 0)]
CORNERS = [Anchor(s, t) for s in (-490, 490) for t in (-240, 240)]
FOUR = [*ENDS, Anchor(0, -240), Anchor(0, 240)]

CASES = {
    "reference, nowhere": (REFERENCE, ring(REFERENCE), CROWN, []),
    "reference, ends, crown": (REFERENCE, ring(REFERENCE), CROWN, ENDS),
    "reference, corners, hollow": (REFERENCE, ring(REFERENCE), HOLLOW, CORNERS),
    "reference, ends and sides, crown": (REFERENCE, ring(REFERENCE), CROWN, FOUR),
    "reference, ends and sides, hollow": (REFERENCE, ring(REFERENCE), HOLLOW, FOUR),
    "five narrow boards same way up": (
        REFERENCE, ring(REFERENCE), boards(500, 5, 1.0e-4, -7e-3), ENDS),
    "alternating boards": (
        REFERENCE, ring(REFERENCE), boards(500, 4, [2e-4, -2e-4, 2e-4, -2e-4], [-4e-3, 4e-3, -4e-3]), FOUR),
    "mixed faces, held at six": (
        REFERENCE, ring(REFERENCE), boards(500, 5, [1.5e-4, 1.5e-4, -1.5e-4, -1.5e-4, -1.5e-4], 0.0),
        [*CORNERS, *ENDS]),
    "long top, its ends only": (LONG, ring(LONG), CROWN, [Anchor(-990, 0), Anchor(990, 0)]),
    "long top, a cross rail too": (
        LONG, ring(LONG) + across(0, half=240), CROWN, [Anchor(s, 0) for s in (-990, 0, 990)]),
    "trestle bearers": (LIGHT, across(-400, 400, half=280), FreeCurvature.even(600, 1.2e-4),
        [Anchor(s, t) for s in (-400, 400) for t in (-120, 120)]),
    "wide top, six anchors, hollow": (WIDE, ring(WIDE), FreeCurvature.even(800, -0.8e-4),
        [Anchor(s, t) for s in (-440, 0, 440) for t in (-390, 390)]),
    "one board bows": (
        LIGHT, ring(LIGHT),
        FreeCurvature((-300, -100, 100, 300), (0.5e-4,) * 3, (), (0.0, 2e-5, 0.0)),
        [Anchor(-590, 0), Anchor(590, 0)]),
    "slack fasteners, square top": (SQUARE, ring(SQUARE), FreeCurvature.even(700, -1e-4),
        [Anchor(s, t, slack_mm=0.5) for s in (-340, 340) for t in (-340, 0, 340)]),
    "spacers, no frame": (SQUARE, (), FreeCurvature.even(700, 1e-4),
        [Anchor(s, t, both_ways=True) for s in (-250, 250) for t in (-250, 0, 250)]),
}  # fmt: skip


# Where a coarse mesh of elements is itself more than half the tolerance from its limit, a finer one.
FINE = {
    "five narrow boards same way up", "alternating boards", "mixed faces, held at six",
    "long top, a cross rail too", "trestle bearers", "spacers, no frame", "wide top, six anchors, hollow",
}  # fmt: skip


@cache
def elements(plate, lines, kinks, counts):
    return MorleyPlate(plate, lines, kinks, counts)


def out_of_flat(height, along, across):
    """Range about the least-squares plane of a surface, samples weighted by the area they stand for."""
    reach = [np.convolve(np.diff(places), [0.5, 0.5]) for places in (along, across)]
    weight = np.sqrt(np.outer(*reach)).ravel()
    s, x = (g.ravel() for g in np.meshgrid(along, across, indexing="ij"))
    fit = np.column_stack([np.ones_like(s), s, x])
    plane = np.linalg.lstsq(fit * weight[:, None], height.ravel() * weight, rcond=None)[0]
    return np.ptp(height.ravel() - fit @ plane)


@pytest.mark.parametrize("name", CASES)
def test_plate_agrees_with_finite_elements(name):
    plate, lines, free, anchors = CASES[name]
    trial = prepare(plate, [Bearing(line) for line in lines], glue_lines_mm=free.lines_mm[1:-1])
    (ours,) = hold(trial, anchors, [LoadCase(name, free)])
    grid = np.stack(np.meshgrid(ours.along_mm, ours.across_mm, indexing="ij"), axis=-1).reshape(-1, 2)
    kinks = free.lines_mm[1:-1]
    counts = (80, 48) if name in FINE else (40, 24)
    theirs = elements(plate, lines, kinks, counts).solve(free, anchors, grid)
    height = theirs.probe_mm.reshape(ours.height_mm.shape)

    range_mm = out_of_flat(height, ours.along_mm, ours.across_mm)
    compared("out of flat of held plates", ELEMENTS, DERIVED, range_mm, ours.out_of_flat_mm, "mm", share=0.02)
    swing = 0.02 * np.ptp(height)
    compared("heights all over held plates", ELEMENTS, DERIVED, height, ours.height_mm, "mm", within=swing)
    worst = max(np.max(np.abs(theirs.anchor_n), initial=0.0), 1.0)
    big = np.abs(theirs.anchor_n) > 0.1 * worst
    for kind, chosen, room in (("great", big, {"share": 0.05}), ("small", ~big, {"within": 0.01 * worst})):
        if chosen.any():
            pulls = theirs.anchor_n[chosen], ours.anchor_force_n[chosen]
            compared(f"{kind} pulls of anchors", ELEMENTS, DERIVED, *pulls, "N", **room)


# (anchors, free) → range mm, pull N; from an independent study of the reference case, read as "about" where
# the plate can rock. Polynomials and elements agreed in it within 2 %.
TABLE = {
    ("nowhere", 1): (4.75, 0), ("nowhere", -1): (5.0, 0),
    ("ends", 1): (2.2, 256), ("ends", -1): (5.0, 1),
    ("corners", 1): (4.75, 0), ("corners", -1): (2.5, 224),
    ("four", 1): (2.2, 256), ("four", -1): (5.0, 157),
}  # fmt: skip


@pytest.mark.parametrize(("held_at", "sign"), TABLE)
def test_reference_case_is_reproduced(held_at, sign):
    anchors = {"nowhere": [], "ends": ENDS, "corners": CORNERS, "four": FOUR}[held_at]
    trial = prepare(REFERENCE, [Bearing(line) for line in ring(REFERENCE)])
    (held,) = hold(trial, anchors, [LoadCase("reference", CROWN if sign > 0 else HOLLOW)])
    out_of_flat, pull = TABLE[held_at, sign]
    source = "an independent study of the reference case by polynomials and by elements"
    compared("reference case, out of flat", source, OWN, out_of_flat, held.out_of_flat_mm, "mm", share=0.02)
    pulled = held.worst_anchor_n
    compared("reference case, greatest pull", source, OWN, pull, pulled, "N", share=0.02, within=1.5)
