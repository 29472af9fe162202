"""Symmetric systems of many small blocks, one a part, joined in pairs: solved directly, with numpy alone.

Parts with few neighbours are eliminated one after another, as by hand; what hangs together more closely is put into
layers that touch only the next ones and eliminated layer by layer. Nothing is iterated, so that springs of very
different stiffness do no harm.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.contact.polygons import Floats

Ints = NDArray[np.intp]
FEW = 8  # neighbours up to which a part is eliminated on its own (own judgement, by timing)


@dataclass(frozen=True, eq=False)
class _Gone:
    """One eliminated part: its neighbours then, the inverse of its block, and its blocks with them."""

    part: int
    near: Ints
    inverse: Floats  # (b, b)
    beside: Floats  # (b, neighbours · b)


@dataclass(frozen=True, eq=False)
class _Layer:
    parts: Ints
    inverse: Floats
    upper: Floats | None  # block with the next layer


class BlockSystem:
    """A symmetric positive definite matrix of blocks (b, b).

    Parameters
    ----------
    diagonal : (parts, b, b). pairs : (joints, 2) parts, in any order, more than once if need be.
    beside : (joints, b, b) block in the row of the first and the column of the second part of each pair.
    """

    def __init__(self, diagonal: Floats, pairs: Ints, beside: Floats) -> None:
        self.size = diagonal.shape[1]
        root = np.sqrt(np.einsum("nii->ni", diagonal))
        self._scale = 1.0 / np.where(root > 0, root, 1.0)
        self._diagonal = diagonal * self._scale[:, :, None] * self._scale[:, None, :]
        self._pairs, self._beside = _summed(pairs.reshape(-1, 2), beside.reshape(-1, self.size, self.size))
        one, other = self._pairs.T
        self._beside = self._beside * self._scale[one][:, :, None] * self._scale[other][:, None, :]
        self._gone: list[_Gone] = []
        self._layers: list[_Layer] = []
        self._eliminate()

    def solve(self, load: Floats) -> Floats:
        """Unknowns (parts, b, loads) of loads (parts, b, loads); one step of refinement takes off rounding."""
        scaled = load * self._scale[:, :, None]
        found = self._once(scaled)
        found = found + self._once(scaled - self._times(found))
        return np.asarray(found * self._scale[:, :, None])

    def _times(self, x: Floats) -> Floats:
        result = self._diagonal @ x
        one, other = self._pairs.T
        add_to(result, one, self._beside @ x[other])
        add_to(result, other, np.swapaxes(self._beside, 1, 2) @ x[one])
        return np.asarray(result)

    def _eliminate(self) -> None:
        count, size = len(self._diagonal), self.size
        own = self._diagonal.copy()
        beside: list[dict[int, Floats]] = [{} for _ in range(count)]
        for (one, other), block in zip(self._pairs.tolist(), self._beside):
            if one == other:
                own[one] += block + block.T
                continue
            for a, b, way in ((one, other, block), (other, one, block.T)):
                beside[a][b] = beside[a][b] + way if b in beside[a] else way
        left = set(range(count))
        waiting = [(len(beside[part]), part) for part in left]
        heapq.heapify(waiting)
        while waiting:
            degree, part = heapq.heappop(waiting)
            if part not in left or degree != len(beside[part]):
                continue
            if degree > FEW:
                break
            left.remove(part)
            near = sorted(beside[part])
            inverse = np.linalg.inv(own[part])
            blocks = (
                np.concatenate([beside[part][other] for other in near], axis=1)
                if near
                else np.zeros((size, 0))
            )
            less = blocks.T @ inverse @ blocks
            cut = less.reshape(len(near), size, len(near), size).swapaxes(1, 2)
            for row, a in enumerate(near):
                own[a] -= cut[row, row]
                line = beside[a]
                del line[part]
                for column, b in enumerate(near):
                    if a != b:
                        line[b] = line[b] - cut[row, column] if b in line else -cut[row, column]
                heapq.heappush(waiting, (len(line), a))
            self._gone.append(_Gone(part, np.array(near, dtype=np.intp), inverse, blocks))
        self._layer(left, own, beside)

    def _layer(self, left: set[int], own: Floats, beside: list[dict[int, Floats]]) -> None:
        """What is left, in layers of which each touches the one before and the one after it alone."""
        size = self.size
        pending: Floats | None = None
        layers = _layers(left, beside)
        for number, parts in enumerate(layers):
            place = {part: index for index, part in enumerate(parts)}
            after = layers[number + 1] if number + 1 < len(layers) else []
            then = {part: index for index, part in enumerate(after)}
            block = np.zeros((len(parts), size, len(parts), size))
            upper = np.zeros((len(parts), size, len(after), size))
            for part, index in place.items():
                block[index, :, index] += own[part]
                for other, way in beside[part].items():
                    if other in place:
                        block[index, :, place[other]] += way
                    elif other in then:
                        upper[index, :, then[other]] += way
            matrix = block.reshape(len(parts) * size, -1)
            if pending is not None:
                matrix = matrix - pending
            inverse = np.asarray(np.linalg.inv(matrix), dtype=np.float64)
            way_on = upper.reshape(len(parts) * size, -1) if after else None
            pending = None if way_on is None else way_on.T @ inverse @ way_on
            self._layers.append(_Layer(np.array(parts, dtype=np.intp), inverse, way_on))

    def _once(self, load: Floats) -> Floats:
        x = np.array(load)
        loads = x.shape[2]
        for gone in self._gone:
            pushed = gone.beside.T @ (gone.inverse @ x[gone.part])
            x[gone.near] -= pushed.reshape(len(gone.near), self.size, loads)
        flat = [x[layer.parts].reshape(len(layer.parts) * self.size, loads) for layer in self._layers]
        for number, layer in enumerate(self._layers):
            if layer.upper is not None:
                flat[number + 1] = flat[number + 1] - layer.upper.T @ (layer.inverse @ flat[number])
        for number in range(len(self._layers) - 1, -1, -1):
            layer = self._layers[number]
            if layer.upper is not None:
                flat[number] = flat[number] - layer.upper @ flat[number + 1]
            flat[number] = layer.inverse @ flat[number]
            x[layer.parts] = flat[number].reshape(len(layer.parts), self.size, loads)
        for gone in reversed(self._gone):
            known = gone.beside @ x[gone.near].reshape(len(gone.near) * self.size, loads)
            x[gone.part] = gone.inverse @ (x[gone.part] - known)
        return x


def add_to(total: Floats, where: Ints, values: Floats) -> None:
    """total[where] += values along the first axis, places that come more than once added up.

    What ``numpy.add.at`` does, which older numpy does many times more slowly for arrays of several dimensions.
    """
    if not len(where):
        return
    order = np.argsort(where, kind="stable")
    sorted_places = where[order]
    starts = np.flatnonzero(np.concatenate([[True], np.diff(sorted_places) > 0]))
    total[sorted_places[starts]] += np.add.reduceat(values[order], starts, axis=0)


def _summed(pairs: Ints, beside: Floats) -> tuple[Ints, Floats]:
    """Each pair of parts once, the lower first, with the sum of its blocks."""
    turned = pairs[:, 0] > pairs[:, 1]
    blocks = np.where(turned[:, None, None], np.swapaxes(beside, 1, 2), beside)
    once, place = np.unique(np.sort(pairs, axis=1), axis=0, return_inverse=True)
    total = np.zeros((len(once), *beside.shape[1:]))
    add_to(total, np.asarray(place).reshape(-1), blocks)
    return once, total


def _layers(left: set[int], beside: list[dict[int, Floats]]) -> list[list[int]]:
    """Layers of neighbours of neighbours, starting far out; the groups that do not hang together in turn."""
    layers: list[list[int]] = []
    waiting = set(left)
    while waiting:
        start = _spread_from(min(waiting), beside)[-1][0]
        found = _spread_from(start, beside)
        layers += found
        waiting.difference_update(*found)
    return layers


def _spread_from(start: int, beside: list[dict[int, Floats]]) -> list[list[int]]:
    seen, layer, layers = {start}, [start], []
    while layer:
        layers.append(layer)
        reached = sorted({other for part in layer for other in beside[part]} - seen)
        seen.update(reached)
        layer = reached
    return layers
