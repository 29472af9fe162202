"""One check for numbers that must lie in a range."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.wording import say, word


def within(
    values: ArrayLike, what: str, low: float, high: float, unit: str, todo: str = ""
) -> NDArray[np.float64]:
    """The values as a float array; ``InputError`` naming the first missing (None, NaN) or outside low … high."""
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
        value = np.atleast_1d(array)[tuple(at)]
        if np.isnan(value):
            wrong = say("no {what} is given", what=word(what))
        else:
            shown = f"{value:g} {word(unit)}".rstrip()
            wrong = say("{value} is not a usable {what}", value=shown, what=word(what))
        raise InputError(
            wrong,
            where=f"{word(what)}[{', '.join(map(str, at))}]" if array.ndim else word(what),
            allowed=say("{low:g} to {high:g} {unit}", low=low, high=high, unit=word(unit)).rstrip(),
            todo=todo,
        )
    return array
