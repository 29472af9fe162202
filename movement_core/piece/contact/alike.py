"""Pairs of bodies that are the same two solids in the same position to each other, through links and link arrays.

What lies between two solids is worked out once for all such pairs and carried from place to place.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence

import numpy as np

from movement_core.piece.contact.bodies import Body
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.scene import Ints

TURN_PLACES, MOVE_PLACES = 9, 6  # decimals that count: of a turn, and of a distance in mm


class Alike:
    """Which pairs of bodies are alike."""

    def __init__(self, bodies: Sequence[Body]) -> None:
        self._linear = np.array([np.eye(3) if b.placed is None else b.placed.linear for b in bodies]).reshape(
            -1, 3, 3
        )
        self._offset = np.array(
            [np.zeros(3) if b.placed is None else b.placed.offset for b in bodies]
        ).reshape(-1, 3)
        self._back = np.linalg.inv(self._linear)
        known: dict[Hashable, int] = {}
        metric = np.round(self._linear.transpose(0, 2, 1) @ self._linear, TURN_PLACES) + 0.0
        sense = np.linalg.det(self._linear) > 0
        # A solid that is stretched or mirrored by its link is another solid.
        self._solid = [
            None
            if body.placed is None
            else known.setdefault((body.placed.solid, metric[at].tobytes(), bool(sense[at])), len(known))
            for at, body in enumerate(bodies)
        ]

    def kinds(self, first: Ints, second: Ints) -> list[Hashable]:
        """For each pair a key that alike pairs share; None where nothing is known of one of the bodies."""
        turn = np.round(self._back[first] @ self._linear[second], TURN_PLACES) + 0.0
        away = self._offset[second] - self._offset[first]
        move = np.round(np.einsum("pij,pj->pi", self._back[first], away), MOVE_PLACES) + 0.0
        return [
            None
            if self._solid[a] is None or self._solid[b] is None
            else (self._solid[a], self._solid[b], turn[at].tobytes(), move[at].tobytes())
            for at, (a, b) in enumerate(zip(first.tolist(), second.tolist()))
        ]

    def motion(self, here: int, there: int) -> tuple[Floats, Floats]:
        """The turn (3, 3) and the shift (3,) that carry a body onto one that is the same solid."""
        turn = self._linear[there] @ self._back[here]
        return turn, self._offset[there] - turn @ self._offset[here]
