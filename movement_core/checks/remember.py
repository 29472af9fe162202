"""What several checks ask of the same whole piece is worked out once."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Mapping
from functools import wraps
from typing import TypeVar
from weakref import WeakKeyDictionary

from movement_core.piece.contact.joints import Joint
from movement_core.piece.whole import WholePiece

T = TypeVar("T")


def once_a_piece(work: Callable[[WholePiece], T]) -> Callable[[WholePiece], T]:
    """The same function, which remembers its answer as long as the whole piece lives."""
    known: WeakKeyDictionary[WholePiece, T] = WeakKeyDictionary()

    @wraps(work)
    def remembered(whole: WholePiece) -> T:
        if whole not in known:
            known[whole] = work(whole)
        return known[whole]

    return remembered


@once_a_piece
def joints_by_part(whole: WholePiece) -> Mapping[int, list[Joint]]:
    """Index of a part → its joints."""
    found: dict[int, list[Joint]] = defaultdict(list)
    for joint in whole.joints:
        for index in joint.parts:
            found[index].append(joint)
    return found


def joints_of(whole: WholePiece, index: int) -> list[Joint]:
    """The joints of one part."""
    return joints_by_part(whole).get(index, [])


def beyond(joint: Joint, index: int) -> int:
    """The other part of a joint."""
    return joint.parts[1] if joint.parts[0] == index else joint.parts[0]
