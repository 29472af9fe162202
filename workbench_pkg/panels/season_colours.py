"""Colours of the year in the model: how much of its room a part uses, and its driest and wettest shape.

The scale grows darker step by step, so that it reads without telling red from green, or any colour at all; what asks
to be told is blue, which none of the steps is.
"""

from __future__ import annotations

from workbench_pkg.panels.palette import Colour

# Share of its room that a part uses, from which each colour counts; 1 is the limit.
STEPS: tuple[tuple[float, Colour], ...] = (
    (0.0, (231, 233, 224)),
    (0.25, (164, 190, 202)),
    (0.5, (196, 136, 34)),
    (0.75, (160, 62, 50)),
    (1.0, (100, 22, 80)),
)
ASKS: Colour = (58, 104, 176)  # nobody said what would tell
UNTOLD: Colour = (150, 150, 146)  # its movement is not known
DRY: Colour = (226, 138, 18)
WET: Colour = (36, 92, 184)
POINTED: Colour = (20, 170, 160)  # what is pointed at from the list


def share_colour(share: float | None) -> Colour:
    """Colour of a share of the room used; None is asked about."""
    if share is None:
        return ASKS
    return [colour for start, colour in STEPS if share >= start or start == 0.0][-1]
