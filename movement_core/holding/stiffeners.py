"""Bars that stiffen a top: their stiffness as beams, and the bending stress they must stand."""

from __future__ import annotations

from movement_core.errors import InputError
from movement_core.holding.held import BeamResult
from movement_core.holding.model import Beam, Point
from movement_core.wording import say


def bar(
    start_mm: Point,
    end_mm: Point,
    breadth_mm: float,
    depth_mm: float,
    e_mpa: float,
    *,
    screws_mm: tuple[float, ...] = (),
    play_mm: float = 0.0,
    crown_per_mm: float = 0.0,
    name: str = "",
) -> Beam:
    """A batten, cleat or breadboard end of rectangular section: E·b·h³/12, h through the top's thickness.

    A batten is held by ``screws_mm`` (distances from its start); without them it is joined all along, as a
    sliding dovetail or a breadboard's tongue is, with ``play_mm`` of free movement up and down.
    """
    if min(breadth_mm, depth_mm, e_mpa) <= 0:
        raise InputError(
            say("breadth, depth and modulus must be above 0"), where=say("bar {name!r}", name=name)
        )
    stiffness = e_mpa * breadth_mm * depth_mm**3 / 12
    return Beam(start_mm, end_mm, stiffness, screws_mm, play_mm=play_mm, crown_per_mm=crown_per_mm, name=name)


def bar_stress_mpa(result: BeamResult, breadth_mm: float, depth_mm: float) -> float:
    """Greatest bending stress of a rectangular bar, M·6/(b·h²), MPa: elastic, so an upper bound."""
    if min(breadth_mm, depth_mm) <= 0:
        raise InputError(say("breadth and depth must be above 0"), where=say("bar stress"))
    return 6 * result.moment_n_mm / (breadth_mm * depth_mm**2)


def tongue_load_n_mm(result: BeamResult, length_mm: float) -> float:
    """Greatest push or pull per mm of a joint that runs all along a bar, N/mm: what a tongue must stand."""
    if len(result.joint_force_n) < 2 or length_mm <= 0:
        raise InputError(say("no joint all along this bar"), where=say("tongue load"))
    step = length_mm / (len(result.joint_force_n) - 1)
    inner = abs(result.joint_force_n[1:-1]).max(initial=0.0) / step
    outer = abs(result.joint_force_n[[0, -1]]).max() / (step / 2)
    return float(max(inner, outer))
