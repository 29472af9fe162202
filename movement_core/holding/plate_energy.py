"""Bending energy and loads of a plate of any outline, over a Legendre basis on its surrounding rectangle.

A round or shaped top is integrated strip by strip: Gauss points across, and at each of them Gauss points
along every stretch of the strip that lies inside the outline.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from movement_core.holding import basis
from movement_core.holding.model import LoadCase, Plate

Array = NDArray[np.float64]

# Motions of the basis that hardly show inside an outline (they live in the cut-off corners) carry no energy
# worth the name and are left out; relative to the stiffest.
_UNSEEN = 1e-11


@dataclass(frozen=True, eq=False)
class Strips:
    """Lines along the grain through the plate, each (X,): place across, width it stands for, its two ends."""

    across_mm: Array
    weight_mm: Array
    low_mm: Array
    high_mm: Array


def strips(plate: Plate, terms: int, cuts_mm: Sequence[float] = ()) -> Strips:
    """Gauss lines between each two corners of the outline and ``cuts_mm`` (glue lines).

    Enough of them for products of two of ``terms`` polynomials across.
    """
    half = np.array([plate.length_mm / 2, plate.width_mm / 2])
    outline = np.array(plate.outline_mm or ((-1, -1), (1, -1), (1, 1), (-1, 1))) * (
        1.0 if plate.outline_mm else half
    )
    corners = np.concatenate([outline[:, 1], np.clip(cuts_mm, outline[:, 1].min(), outline[:, 1].max())])
    levels = np.unique(np.round(corners, 9))
    per_piece = max(4, math.ceil(1.5 * terms / (len(levels) - 1)) + 2)
    found: list[tuple[float, float, float, float]] = []
    starts, ends = outline, np.roll(outline, -1, axis=0)
    for low, high in pairwise(levels):
        for x, weight in zip(*basis.gauss(float(low), float(high), per_piece)):
            crossed = (starts[:, 1] > x) != (ends[:, 1] > x)
            a, b = starts[crossed], ends[crossed]
            along = np.sort(a[:, 0] + (x - a[:, 1]) / (b[:, 1] - a[:, 1]) * (b[:, 0] - a[:, 0]))
            found += [(x, weight, s0, s1) for s0, s1 in zip(along[::2], along[1::2])]
    return Strips(*np.array(found).T)


def _along(plate: Plate, terms: int, lines: Strips, orders: Sequence[int]) -> tuple[Array, list[Array]]:
    """Weights (X, n) and derivative values (X, n, terms) at Gauss points along each strip."""
    nodes, weights = basis.gauss(-1.0, 1.0, terms + 1)
    half = (lines.high_mm - lines.low_mm)[:, None] / 2
    places = (lines.low_mm + lines.high_mm)[:, None] / 2 + half * nodes
    tables = [basis.values(places.ravel(), plate.length_mm, terms, order) for order in orders]
    return half * weights, [table.reshape(*places.shape, terms) for table in tables]


def bending_stiffness(plate: Plate, terms: tuple[int, int]) -> Array:
    """(N, N) K: ½cᵀKc is the bending energy of Kirchhoff's orthotropic plate."""
    d_along, d_across, d_coupling, d_twist = plate.bending
    pairs = ((2, 2), (0, 0), (0, 2), (1, 1))  # derivative orders along; across they are the complement
    others = ((0, 0), (2, 2), (2, 0), (1, 1))
    if plate.outline_mm:
        lines = strips(plate, terms[1])
        weights, along = _along(plate, terms[0], lines, (0, 1, 2))
        across = [basis.values(lines.across_mm, plate.width_mm, terms[1], order) for order in (0, 1, 2)]
        parts = []
        for (a, b), (c, d) in zip(pairs, others):
            table_along = np.einsum("xni,xnj,xn->xij", along[a], along[b], weights, optimize=True)
            table_across = np.einsum("xa,xb,x->xab", across[c], across[d], lines.weight_mm)
            joined = table_along.reshape(len(weights), -1).T @ table_across.reshape(len(weights), -1)
            shape = (terms[0], terms[0], terms[1], terms[1])
            parts.append(joined.reshape(shape).transpose(0, 2, 1, 3).reshape(terms[0] * terms[1], -1))
    else:
        parts = [
            np.kron(
                basis.overlap(plate.length_mm, terms[0], *pair),
                basis.overlap(plate.width_mm, terms[1], *other),
            )
            for pair, other in zip(pairs, others)
        ]
    total: Array = (
        d_along * parts[0]
        + d_across * parts[1]
        + d_coupling * (parts[2] + parts[2].T)
        + 4 * d_twist * parts[3]
    )
    return (total + total.T) / 2


def plate_load(plate: Plate, terms: tuple[int, int], case: LoadCase, carried: bool) -> Array:
    """(N,) load of the plate's weight and of its boards' bow along the grain."""
    load = np.zeros(terms[0] * terms[1])
    bows = np.array(case.free.bow_per_mm)
    if not carried and not np.any(bows):
        return load
    if not plate.outline_mm and not np.any(bows):
        load[0] = -plate.weight_n  # all other polynomials average to nothing on a rectangle
        return load
    d_along, _, d_coupling, _ = plate.bending
    edges = np.array(case.free.lines_mm)
    lines = strips(plate, terms[1], case.free.lines_mm[1:-1])
    weights, along = _along(plate, terms[0], lines, (0, 2))
    level, bent = (np.einsum("xni,xn->xi", table, weights) for table in along)
    flat, curved = (basis.values(lines.across_mm, plate.width_mm, terms[1], order) for order in (0, 2))
    board = np.clip(np.searchsorted(edges, lines.across_mm, side="right") - 1, 0, len(bows) - 1)
    bow = bows[board] * lines.weight_mm
    moment = d_along * (bent * bow[:, None]).T @ flat + d_coupling * (level * bow[:, None]).T @ curved
    load -= moment.ravel()
    if carried:
        pressure = plate.weight_n / plate.area_mm2
        load -= pressure * ((level * lines.weight_mm[:, None]).T @ flat).ravel()
    return load


def bending_inverse(stiffness: Array, rigid: NDArray[np.int64], outlined: bool) -> Array:
    """(N, N) inverse on the motions that bend; rows and columns of the rigid ones are zero."""
    bends = np.setdiff1d(np.arange(len(stiffness)), rigid)
    part = stiffness[np.ix_(bends, bends)]
    scale = 1 / np.sqrt(np.diag(part))
    scaled = part * np.outer(scale, scale)
    if outlined:
        values, vectors = np.linalg.eigh(scaled)
        seen = values > _UNSEEN * values[-1]
        inverse = (vectors[:, seen] / values[seen]) @ vectors[:, seen].T
    else:
        inverse = np.linalg.inv(scaled)
    result = np.zeros_like(stiffness)
    result[np.ix_(bends, bends)] = inverse * np.outer(scale, scale)
    return result
