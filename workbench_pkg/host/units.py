"""Lengths as the user reads them: in the host's own unit schema."""

from __future__ import annotations

import re

import FreeCAD as App


def length_text(millimetres: float) -> str:
    """A length with its unit, as the host writes it for this user: "119.60 mm", "4 11/16\\"" …"""
    return str(App.Units.Quantity(millimetres, App.Units.Length).UserString)


def short_length(millimetres: float) -> str:
    """The same without decimals that no board keeps: tenths of a millimetre where the user reads decimals."""
    return re.sub(r"(\d[.,]\d)0+(?=\D|$)", r"\1", length_text(round(millimetres, 1)))


def in_inches() -> bool:
    """Whether the user's unit schema writes a hand's breadth in inches or feet."""
    unit = App.Units.Quantity(100.0, App.Units.Length).getUserPreferred()[2]
    return unit in ("in", "ft", '"', "'", "thou", "mil")
