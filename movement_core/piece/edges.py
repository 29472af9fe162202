"""Which boards of a piece lie edge to edge, by geometry alone: they are taken as glued to one panel."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from movement_core.piece.part import Part

EDGE_GAP_MM = 0.2  # edges further apart are not glued
LEVEL_SHARE = 0.25  # boards offset by more than this share of their thickness lie on different levels
PARALLEL = 0.9999  # cosine: directions within 0.8° run the same way
ALONG_SHARE = 0.5  # edges meet along at least half of the shorter board


def _is_board(part: Part) -> bool:
    known = part.frame.grain.known and part.moves and part.kept is None  # a leaf is laid in, not glued
    return known and part.frame.length_mm > part.frame.width_mm > part.frame.thickness_mm


def boards_edge_to_edge(parts: Sequence[Part]) -> list[list[int]]:
    """Indices of boards that meet along their long edges, each group of two or more from left to right of its first."""
    at = [index for index, part in enumerate(parts) if _is_board(part)]
    return [[at[index] for index in group] for group in _groups([parts[index] for index in at])]


def _groups(parts: Sequence[Part]) -> list[list[int]]:
    """Connected boards, each group of two or more sorted across its first board's width."""
    neighbours: dict[int, set[int]] = {}
    for one, other in _edge_to_edge(parts):
        neighbours.setdefault(one, set()).add(other)
        neighbours.setdefault(other, set()).add(one)
    groups, seen = [], set[int]()
    for start in sorted(neighbours):
        if start in seen:
            continue
        group, waiting = [], [start]
        while waiting:
            index = waiting.pop()
            if index not in seen:
                seen.add(index)
                group.append(index)
                waiting += neighbours[index] - seen
        across = parts[group[0]].frame.axes[0]
        groups.append(sorted(group, key=lambda index: float(parts[index].frame.centre @ across)))
    return groups


def _edge_to_edge(parts: Sequence[Part]) -> list[tuple[int, int]]:
    """Pairs of boards whose long edges meet."""
    if len(parts) < 2:
        return []
    axes = np.array([part.frame.axes for part in parts])
    centre = np.array([part.frame.centre for part in parts])
    width, thickness, length = np.array([part.frame.size_mm for part in parts]).T
    pairs: list[tuple[int, int]] = []
    for i in range(len(parts) - 1):
        rest = slice(i + 1, None)
        same_way = np.abs(np.einsum("jkx,kx->jk", axes[rest], axes[i]))
        parallel = (same_way[:, 1:] > PARALLEL).all(axis=1)
        across, through, along = np.abs(axes[i] @ (centre[rest] - centre[i]).T)
        meets = np.abs(across - (width[rest] + width[i]) / 2) <= EDGE_GAP_MM
        level = through <= LEVEL_SHARE * np.minimum(thickness[rest], thickness[i])
        shared = (length[rest] + length[i]) / 2 - along >= ALONG_SHARE * np.minimum(length[rest], length[i])
        pairs += [(i, i + 1 + int(j)) for j in np.flatnonzero(parallel & meets & level & shared)]
    return pairs
