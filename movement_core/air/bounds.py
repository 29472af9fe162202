"""One check for numbers that must lie in a range."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError


def within(
    values: ArrayLike, what: str, low: float, high: float, unit: str, todo: str = ""
) -> NDArray[np.float64]:
    """The values as a float array; ``InputError`` naming the first that is no number within low … high."""
    try:
        array = np.asarray(values, dtype=np.float64)
    except (TypeError, ValueError):
        raise InputError(
            f"{values!r} is not a number", where=what, allowed=f"{low:g} to {high:g} {unit}"
        ) from None
    bad = ~((array >= low) & (array <= high))
    if bad.any():
        at = np.argwhere(np.atleast_1d(bad))[0]
        value = f"{np.atleast_1d(array)[tuple(at)]:g} {unit}".rstrip()
        raise InputError(
            f"{value} is not a usable {what}",
            where=f"{what}[{', '.join(map(str, at))}]" if array.ndim else what,
            allowed=f"{low:g} to {high:g} {unit}".rstrip(),
            todo=todo,
        )
    return array
