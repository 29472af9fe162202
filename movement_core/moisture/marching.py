"""Moisture through the thickness followed in time: steps of the air, wet faces, deliveries, D that depends
on M.

Finite volumes, finer toward the faces; an L-stable two-stage implicit step of second order (SDIRK2), so
that the jump at the start of a spell does not ring. Constant diffusivity agrees with the exact solutions of
``movement_core.moisture.slab`` and ``response``; a diffusivity that depends on moisture is iterated in each
step.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.errors import InputError
from movement_core.moisture.transport import MOISTURE_RANGE
from movement_core.wording import phrase, say

Array = NDArray[np.float64]
Diffusivity = float | Callable[[Array], Array]

DEFAULT_CELLS = 40
GAMMA = 1 - 1 / np.sqrt(2)
FIRST_STEP = 1e-4  # of the time a wave takes through the thickness, t²/D
STEP_GROWTH = 1.15
NONLINEAR_PASSES = 3


@dataclass(frozen=True, eq=False)
class Spell:
    """A stretch of time in which the air at each face is known.

    Attributes
    ----------
    days : how long, > 0.
    show_air_mc, back_air_mc : equilibrium moisture at each face, percent: a number, or evenly spaced
        samples from the first to the last moment of the spell, joined by straight lines.
    show_exchange, back_exchange : mm/day, 0 = blocked.
    """

    days: float
    show_air_mc: float | Array
    back_air_mc: float | Array
    show_exchange: float
    back_exchange: float

    def __post_init__(self) -> None:
        within(self.days, phrase("days of the spell"), 1e-6, 1e5, phrase("days"))
        for name in ("show_air_mc", "back_air_mc"):
            samples = within(getattr(self, name), name, *MOISTURE_RANGE, "%")
            if samples.ndim > 1 or samples.size == 0:
                raise InputError(
                    say("shape {shape}", shape=samples.shape),
                    where=name,
                    allowed=say("a number or a row of samples"),
                )
        for name in ("show_exchange", "back_exchange"):
            within(getattr(self, name), name, 0.0, 1e9, "mm/day")


@dataclass(frozen=True, eq=False)
class March:
    """What happened, step by step.

    Attributes
    ----------
    time_days : (T,) from 0.
    mean_mc, show_mc, back_mc, core_mc, face_difference_mc : (T,) percent; the difference as in ``WoodYear``.
    profile_mc : (T, cells) from the back face to the show face; depth_mm : (cells,) height of each cell's
        middle above the back face; cell_mm : (cells,) its thickness.
    """

    time_days: Array
    mean_mc: Array
    show_mc: Array
    back_mc: Array
    core_mc: Array
    face_difference_mc: Array
    profile_mc: Array
    depth_mm: Array
    cell_mm: Array

    def at(self, days: ArrayLike, field: str = "mean_mc") -> Array:
        """A field at these moments, straight lines between the steps."""
        return np.asarray(
            np.interp(np.asarray(days, dtype=np.float64), self.time_days, getattr(self, field))
        )[()]


def grid(thickness_mm: float, cells: int = DEFAULT_CELLS) -> tuple[Array, Array]:
    """(middles, thicknesses) of cells from back to show face, finer toward both faces, mm."""
    # A cosine grid softened so that the thinnest cell is not needlessly thin.
    part = np.linspace(0, 1, cells + 1)
    edges = thickness_mm * (0.2 * part + 0.8 * (1 - np.cos(np.pi * part)) / 2)
    return (edges[1:] + edges[:-1]) / 2, np.diff(edges)


def _time_steps(days: float, first: float, longest: float) -> Array:
    steps = []
    left, step = days, min(first, longest, days)
    while left > step * (1 + 1e-9):
        steps.append(step)
        left -= step
        step = min(step * STEP_GROWTH, longest)
    return np.array([*steps, left])


def march(
    thickness_mm: float,
    start_mc: ArrayLike,
    spells: Sequence[Spell],
    diffusivity: Diffusivity,
    *,
    cells: int = DEFAULT_CELLS,
    longest_step_days: float | None = None,
) -> March:
    """Follow one board through spells of air.

    Parameters
    ----------
    thickness_mm : full thickness. start_mc : percent, a number or the profile (cells,) from back to show
        face.
    spells : in order. diffusivity : mm²/day, or a function of moisture (percent) that gives it.
    cells : through the thickness, 8 to 400. longest_step_days : default a two-hundredth of each spell, at
        most a day.

    Error: with the defaults within 0.1 % of the step against the exact solution (constant diffusivity).
    """
    thickness = float(within(thickness_mm, phrase("thickness"), 0.1, 1000.0, "mm"))
    if not 8 <= cells <= 400:
        raise InputError(say("{cells} cells", cells=cells), where=say("cells"), allowed=say("8 to 400"))
    if not spells:
        raise InputError(say("no spell to march through"), where=say("spells"), allowed=say("at least one"))
    middles, widths = grid(thickness, cells)
    start = within(start_mc, phrase("starting moisture"), *MOISTURE_RANGE, "%")
    if start.ndim and start.shape != (cells,):
        raise InputError(
            say("shape {shape}", shape=start.shape),
            where=say("starting moisture"),
            allowed=say("a number or ({cells},)", cells=cells),
        )
    board = _Board(middles, widths, diffusivity)
    state = np.broadcast_to(start, (cells,)).astype(np.float64)
    rate = float(np.mean(board.rates(state)))
    times, states, surfaces = [0.0], [state], [board.faces(state, spells[0], 0.0)]
    for spell in spells:
        longest = longest_step_days or min(spell.days / 200, 1.0)
        begin, moment = times[-1], 0.0
        for step in _time_steps(spell.days, FIRST_STEP * thickness**2 / rate, longest):
            state = board.step(state, spell, moment, step)
            moment += step
            times.append(begin + moment)
            states.append(state)
            surfaces.append(board.faces(state, spell, moment))
    return _record(np.array(times), np.array(states), np.array(surfaces), middles, widths, thickness)


def _record(
    times: Array, profile: Array, surfaces: Array, middles: Array, widths: Array, thickness: float
) -> March:
    height = middles - thickness / 2
    core = np.array([np.interp(thickness / 2, middles, row) for row in profile])
    # the cells' own share of the moment makes the sum exact for a straight profile
    own = np.gradient(profile, middles, axis=1) * widths**3 / 12
    moment = profile @ (widths * height) + own.sum(1)
    return March(
        times, profile @ widths / thickness, surfaces[:, 1], surfaces[:, 0], core,
        12 * moment / thickness**2, profile, middles, widths,
    )  # fmt: skip


class _Board:
    """The discrete board: one implicit step at a time."""

    def __init__(self, middles: Array, widths: Array, diffusivity: Diffusivity) -> None:
        self.middles, self.widths = middles, widths
        self.gaps = np.diff(middles)
        self.constant = not callable(diffusivity)
        self.diffusivity = diffusivity

    def rates(self, state: Array) -> Array:
        if callable(self.diffusivity):
            return np.asarray(self.diffusivity(np.clip(state, *MOISTURE_RANGE)), dtype=np.float64)
        return np.full(state.shape, float(self.diffusivity))

    def _face(self, exchange: float, rate: float, width: float) -> float:
        """Conductance from the air to the middle of the outer cell, mm/day."""
        return 0.0 if exchange == 0 else 1.0 / (1.0 / exchange + width / 2 / rate)

    def _air(self, spell: Spell, moment: float) -> tuple[float, float]:
        """(back, show) equilibrium moisture at this moment of the spell."""
        values = []
        for samples in (np.atleast_1d(spell.back_air_mc), np.atleast_1d(spell.show_air_mc)):
            values.append(float(np.interp(moment, np.linspace(0, spell.days, samples.size), samples)))
        return values[0], values[1]

    def faces(self, state: Array, spell: Spell, moment: float) -> tuple[float, float]:
        """(back, show) moisture at the very surface."""
        rates, air = self.rates(state), self._air(spell, moment)
        result = []
        for end, inner, exchange, outside in (
            (0, 1, spell.back_exchange, air[0]),
            (-1, -2, spell.show_exchange, air[1]),
        ):
            if exchange == 0:  # no flow through it: level with a parabola that is flat at the face
                near, far = self.widths[end] / 2, self.widths[end] + self.widths[inner] / 2
                bend = (state[inner] - state[end]) / (far**2 - near**2)
                result.append(float(state[end] - bend * near**2))
            else:
                flow = self._face(exchange, rates[end], self.widths[end]) * (state[end] - outside)
                result.append(float(outside + flow / exchange))
        return result[0], result[1]

    def _matrix(self, state: Array, spell: Spell) -> tuple[Array, float, float]:
        """dM/dt = matrix M + faces' share: the matrix and the two faces' rates (1/day)."""
        rates = self.rates(state)
        between = (rates[1:] + rates[:-1]) / 2 / self.gaps
        back = self._face(spell.back_exchange, rates[0], self.widths[0])
        show = self._face(spell.show_exchange, rates[-1], self.widths[-1])
        into = np.concatenate([[back], between]) / self.widths
        out = np.concatenate([between, [show]]) / self.widths
        size = state.size
        matrix = np.zeros((size, size))
        index = np.arange(size)
        matrix[index, index] = -(into + out)
        matrix[index[1:], index[:-1]] = into[1:]
        matrix[index[:-1], index[1:]] = out[:-1]
        return matrix, float(into[0]), float(out[-1])

    def _stage(self, known: Array, guess: Array, spell: Spell, moment: float, step: float) -> Array:
        """Solve M = known + step · f(moment, M)."""
        air = self._air(spell, moment)
        for _ in range(1 if self.constant else NONLINEAR_PASSES):
            matrix, back, show = self._matrix(guess, spell)
            right = known.copy()
            right[0] += step * back * air[0]
            right[-1] += step * show * air[1]
            matrix *= -step
            matrix[np.diag_indices_from(matrix)] += 1.0
            guess = np.asarray(np.linalg.solve(matrix, right), dtype=np.float64)
        return guess

    def step(self, state: Array, spell: Spell, moment: float, step: float) -> Array:
        first = self._stage(state, state, spell, moment + GAMMA * step, GAMMA * step)
        slope = (first - state) / (GAMMA * step)
        known = state + (1 - GAMMA) * step * slope
        return self._stage(known, first, spell, moment + step, GAMMA * step)
