"""The few colours of a sheet, by name. Words and lines keep their contrast; nothing is told by colour alone."""

from __future__ import annotations

PAPER = "paper"
COLOURS = {
    "paper": "#ffffff",
    "ink": "#1b1b1b",
    "quiet": "#555555",  # captions, dimension lines
    "rule": "#9a9a9a",
    "shade": "#eeeeee",  # heads of tables
    "band": "#d9e6f2",  # the spread
    "wood": "#f4ead9",
    "ring": "#a98250",
    "dry": "#a8480a",
    "wet": "#0b5394",
    "built": "#1b1b1b",
    "today": "#6a1b9a",
    "grave": "#a80000",
    "grave shade": "#fbe4e4",
    "mild": "#7a5200",
    "mild shade": "#fdf3dc",
}
WORDS = ("ink", "quiet", "dry", "wet", "built", "today", "grave", "mild")  # that words are written in
GROUNDS = ("paper", "shade", "grave shade", "mild shade", "wood", "band")  # that they may stand on
LEAST_CONTRAST = 4.5  # WCAG 2.1, success criterion 1.4.3, level AA (recalled)


def luminance(colour: str) -> float:
    """Relative luminance of "#rrggbb", 0 to 1. Source: WCAG 2.1, definition of relative luminance (recalled)."""
    channels = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """Contrast of two colours, 1 to 21."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)
