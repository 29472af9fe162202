"""Stops that press and never pull: where they close, and with what force, for many states at once."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import HeartsideError
from movement_core.piece.contact.polygons import Floats
from movement_core.wording import say

PATIENCE = 3  # exchanges of all stops at once that may bring nothing, before one at a time is exchanged
MOST_ROUNDS = 2000


def pressing_forces(room_mm: Floats, give_mm_per_n: Floats) -> Floats:
    """Forces of stops that are either open or pressed.

    Parameters
    ----------
    room_mm : (stops, states) room at each stop were there no stops at all; negative where the parts would overlap.
    give_mm_per_n : (stops, stops) by how much a force at one stop opens another; symmetric, positive definite.

    Returns
    -------
    (stops, states) N, ≥ 0: with room ≥ 0 at every stop and force only where the room is 0.

    Notes
    -----
    A linear complementarity problem: room + give · force ≥ 0, force ≥ 0, their product 0. Open and closed stops are
    exchanged all at once while that helps, and else the last wrong one alone, which always ends where the matrix is
    positive definite (Júdice and Pires, A block principal pivoting algorithm, Computers & Operations Research 21,
    1994; Murty 1974; both from memory).
    """
    count, states = room_mm.shape
    closed = room_mm < 0
    force = np.zeros((count, states))
    if not closed.any():
        return force
    size = np.abs(room_mm).max()
    near = 1e-10 * size
    weak = near / max(float(np.diag(give_mm_per_n).max()), 1e-300)
    best = np.full(states, count + 1)
    patience = np.full(states, PATIENCE)
    waiting = np.ones(states, dtype=bool)
    for _ in range(MOST_ROUNDS):
        for pattern, which in _alike(closed, waiting):
            force[:, which] = 0.0
            if pattern.any():
                inner = give_mm_per_n[np.ix_(pattern, pattern)]
                force[np.ix_(pattern, which)] = np.linalg.solve(inner, -room_mm[np.ix_(pattern, which)])
        left = room_mm + give_mm_per_n @ force
        wrong = np.where(closed, force < -weak, left < -near) & waiting
        number = wrong.sum(axis=0)
        waiting &= number > 0
        if not waiting.any():
            return np.maximum(force, 0.0)
        better = number < best
        best = np.minimum(best, number)
        patience = np.where(better, PATIENCE, patience - 1)
        at_once = better | (patience >= 0)
        last = np.zeros_like(wrong)
        last[count - 1 - wrong[::-1].argmax(axis=0), np.arange(states)] = True
        closed ^= wrong & np.where(at_once, True, last)
    raise HeartsideError(say("the stops of the piece do not come to rest"), where=say("pressing stops"))


def _alike(
    closed: NDArray[np.bool_], waiting: NDArray[np.bool_]
) -> list[tuple[NDArray[np.bool_], NDArray[np.intp]]]:
    """States that have the same stops closed, together."""
    alike: dict[bytes, list[int]] = {}
    packed = np.packbits(closed, axis=0).T.copy()  # a row a state
    for state in np.flatnonzero(waiting).tolist():
        alike.setdefault(packed[state].tobytes(), []).append(state)
    return [(closed[:, states[0]].copy(), np.array(states)) for states in alike.values()]
