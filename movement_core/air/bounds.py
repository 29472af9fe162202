"""One check for numbers that must lie in a range."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.wording import say, word


def within(
    values: ArrayLike, what: str, low: float, high: float, unit: str, todo: str = ""
) -> NDArray[np.float64]:
    """The values as a float array; ``InputError`` naming the first that is no number within low … high."""
    try:
        array = np.asarray(values, dtype=np.float64)
    except (TypeError, ValueError):
        raise InputError(
            say("{values!r} is not a number", values=values),
            where=word(what),
            allowed=say("{low:g} to {high:g} {unit}", low=low, high=high, unit=word(unit)),
        ) from None
    bad = ~((array >= low) & (array <= high))
    if bad.any():
        at = np.argwhere(np.atleast_1d(bad))[0]
        value = f"{np.atleast_1d(array)[tuple(at)]:g} {word(unit)}".rstrip()
        raise InputError(
            say("{value} is not a usable {what}", value=value, what=word(what)),
            where=f"{word(what)}[{', '.join(map(str, at))}]" if array.ndim else word(what),
            allowed=say("{low:g} to {high:g} {unit}", low=low, high=high, unit=word(unit)).rstrip(),
            todo=todo,
        )
    return array
