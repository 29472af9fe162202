"""Outlines of a row of dovetails, as numbers only."""

from __future__ import annotations

Flat = tuple[float, float]

SLOPE = 1 / 7  # sideways run of a tail's cheek over its length


def tail_outlines(
    start: float, end: float, count: int, pin: float, half_pin: float, shoulder: float, tip: float
) -> list[list[Flat]]:
    """Trapezoids (along the board's end, along its length) of `count` equal tails between start and end, mm.

    `pin` and `half_pin` are widths at the shoulder, where a tail is narrowest; `shoulder` and `tip` are where
    the tails begin and end along the board.
    """
    flare = abs(tip - shoulder) * SLOPE
    if 2 * flare >= pin or flare >= half_pin:
        raise ValueError(
            f"pins of {pin} and {half_pin} mm are cut away by tails {abs(tip - shoulder)} mm long"
        )
    pitch = (end - start - 2 * half_pin + pin) / count
    outlines = []
    for i in range(count):
        low = start + half_pin + i * pitch
        high = low + pitch - pin
        outlines.append([(low, shoulder), (high, shoulder), (high + flare, tip), (low - flare, tip)])
    return outlines
