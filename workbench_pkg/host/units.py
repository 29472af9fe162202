"""Lengths as the user reads them: in the host's own unit schema."""

from __future__ import annotations

import FreeCAD as App


def length_text(millimetres: float) -> str:
    """A length with its unit, as the host writes it for this user: "119.6 mm", "4 11/16\\"" …"""
    return str(App.Units.Quantity(millimetres, App.Units.Length).UserString)
