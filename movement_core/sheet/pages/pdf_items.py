"""What a page of the PDF holds, laid out: all in mm, x to the right, y down from the page's upper left corner."""

from __future__ import annotations

from dataclasses import dataclass

from movement_core.sheet.pages.model import START, Picture


@dataclass(frozen=True)
class Words:
    """Words on one line; ``y`` is their base line, ``x`` their start, middle or end."""

    text: str
    x: float
    y: float
    size_mm: float
    colour: str = "ink"
    bold: bool = False
    anchor: str = START


@dataclass(frozen=True)
class Rule:
    x0: float
    y0: float
    x1: float
    y1: float
    colour: str = "rule"
    width_mm: float = 0.15


@dataclass(frozen=True)
class Fill:
    x0: float
    y0: float
    x1: float
    y1: float
    colour: str


@dataclass(frozen=True)
class Drawn:
    """A picture with its upper left corner at a place, to a scale."""

    picture: Picture
    x: float
    y: float
    scale: float = 1.0


Item = Words | Rule | Fill | Drawn


@dataclass(frozen=True)
class Page:
    items: tuple[Item, ...]
