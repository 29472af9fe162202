"""Our colours, as red, green, blue from 0 to 255. They are told apart without red and green, and by shape too."""

from __future__ import annotations

Colour = tuple[int, int, int]

PAPER: Colour = (252, 247, 236)
INK: Colour = (38, 30, 22)
EDGE: Colour = (110, 92, 72)

# By rank: nothing to say, look at it, it will not hold.
RANKS: tuple[Colour, ...] = ((64, 104, 120), (222, 150, 20), (150, 30, 84))


def rank_colour(rank: int) -> Colour:
    """Colour of a rank from 0 to 2; anything beyond counts as the nearest."""
    return RANKS[min(max(rank, 0), len(RANKS) - 1)]


def fraction(colour: Colour) -> tuple[float, float, float]:
    """The colour as the host's scene and properties want it, from 0 to 1 and without a fourth number."""
    red, green, blue = colour
    return red / 255.0, green / 255.0, blue / 255.0
