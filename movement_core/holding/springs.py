"""The equilibrium of an elastic body on push-only contact and pull-only fasteners.

Every support point and every fastener is one spring that pushes below one extension, pulls above another
and gives way at a limit. The energy is convex and piecewise quadratic, so Newton steps with an exact line
search find the one minimum. The body enters only by its compliance at the springs: the work of a step goes
with the number of springs that bear, not with the number of the body's unknowns.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import HeartsideError
from movement_core.wording import say

Array = NDArray[np.float64]

STILL_MM = 1e-9  # a step that moves nothing further than this is rounding
Flags = NDArray[np.bool_]


class ConvergenceError(HeartsideError, ArithmeticError):
    """The contact search did not settle."""


@dataclass(frozen=True, eq=False)
class Springs:
    """m springs at points of the body, each (m,).

    Attributes
    ----------
    push_n_mm : stiffness against being pressed together, N/mm.
    push_from_mm : extension below which it pushes, mm.
    pull_n_mm : stiffness against being lifted, N/mm.
    pull_from_mm : extension above which it pulls, mm: its slack.
    limit_n : greatest pull before it gives way, N; infinity where there is none.
    """

    push_n_mm: Array
    push_from_mm: Array
    pull_n_mm: Array
    pull_from_mm: Array
    limit_n: Array

    def force(self, extension_mm: Array) -> Array:
        """Pull on the body at each point (negative: push), N; (..., m) like the extensions."""
        push = self.push_n_mm * np.minimum(extension_mm - self.push_from_mm, 0.0)
        pull = self.pull_n_mm * np.maximum(extension_mm - self.pull_from_mm, 0.0)
        result: Array = push + np.minimum(pull, self.limit_n)
        return result

    def states(self, extension_mm: Array) -> NDArray[np.int8]:
        """(m,) −1 pushes, 0 is idle, 1 pulls, 2 has given way."""
        over = extension_mm - self.pull_from_mm
        pulls = (over > 0) & (self.pull_n_mm > 0)
        gave = pulls & (self.pull_n_mm * over >= self.limit_n)
        pushes = (extension_mm < self.push_from_mm) & (self.push_n_mm > 0)
        return np.where(gave, 2, np.where(pulls, 1, np.where(pushes, -1, 0))).astype(np.int8)

    def joined(self, other: Springs) -> Springs:
        """These springs followed by the others."""
        return Springs(
            *(
                np.concatenate([getattr(self, name), getattr(other, name)])
                for name in ("push_n_mm", "push_from_mm", "pull_n_mm", "pull_from_mm", "limit_n")
            )
        )


def push_only(stiffness_n_mm: Array) -> Springs:
    """Contact: pushes once closed, never pulls."""
    zero = np.zeros_like(stiffness_n_mm)
    return Springs(stiffness_n_mm, zero, zero, zero, np.full_like(stiffness_n_mm, np.inf))


@dataclass(frozen=True, eq=False)
class Body:
    """An elastic body as its springs feel it: m springs, r rigid motions.

    Attributes
    ----------
    compliance : (m, m) movement at spring i for a unit force at spring j, rigid motion apart, mm/N; symmetric.
    unloaded_mm : (m,) extensions if no spring bore and the body stood in its reference place.
    rigid : (m, r) movement at each spring by a unit of each rigid motion.
    rigid_load_n : (r,) load on each rigid motion.
    trace_n_mm : stiffness against rigid motion, a mere trace: without it a body free to rock has no one place.
    """

    compliance: Array
    unloaded_mm: Array
    rigid: Array
    rigid_load_n: Array
    trace_n_mm: float


@dataclass(frozen=True, eq=False)
class Equilibrium:
    """Extensions and pulls (m,) of the springs, the rigid motion (r,), and how many Newton steps it took."""

    extension_mm: Array
    force_n: Array
    rigid_mm: Array
    steps: int


def equilibrium(body: Body, springs: Springs, start: NDArray[np.int8], most_steps: int = 200) -> Equilibrium:
    """Forces of springs on an elastic body, at the least of its energy.

    Parameters
    ----------
    body : the body with m springs.
    springs : their m laws.
    start : (m,) first guess of each spring's state, see ``Springs.states``.

    Raises
    ------
    ConvergenceError : the states still change after ``most_steps`` steps.
    """
    states = start
    force, rigid = _solve(body, springs, states)
    extension = body.unloaded_mm - body.compliance @ force + body.rigid @ rigid
    for step_number in range(1, most_steps + 1):
        now = springs.states(extension)
        if np.array_equal(now, states):
            return Equilibrium(extension, force, rigid, step_number)
        states = now
        new_force, new_rigid = _solve(body, springs, states)
        change, shift = new_force - force, new_rigid - rigid
        bent = -body.compliance @ change
        move = bent + body.rigid @ shift
        if (
            np.abs(move).max(initial=0.0) <= STILL_MM
        ):  # within rounding a spring may lie on either side of its edge
            return Equilibrium(extension + move, new_force, new_rigid, step_number)
        # Slope of the energy along the step: the body's part rises linearly, the springs' piecewise so.
        along = float(-bent @ force + (body.trace_n_mm * rigid - body.rigid_load_n) @ shift)
        bend = float(-bent @ change + body.trace_n_mm * shift @ shift)
        share = _line_search(along, bend, extension, move, springs)
        force, rigid, extension = force + share * change, rigid + share * shift, extension + share * move
        if share < 1.0:
            states = np.full_like(states, 99)  # no state's own answer yet
    raise ConvergenceError(
        say("contact still changes after {most_steps} steps", most_steps=most_steps),
        where=say("plate on its frame"),
        todo=say("check that the support and the anchors are those meant; report the case if they are"),
    )


def _solve(body: Body, springs: Springs, states: NDArray[np.int8]) -> tuple[Array, Array]:
    """(m,) forces and (r,) rigid motion if every spring stayed in its state."""
    force = np.where(states == 2, springs.limit_n, 0.0)
    active = np.flatnonzero((states == 1) | (states == -1))
    slipped = np.flatnonzero(states == 2)
    pulls = states[active] == 1
    stiffness = np.where(pulls, springs.pull_n_mm[active], springs.push_n_mm[active])
    begins = np.where(pulls, springs.pull_from_mm[active], springs.push_from_mm[active])
    count, rigid_count = len(active), len(body.rigid_load_n)
    matrix = np.zeros((count + rigid_count, count + rigid_count))
    matrix[:count, :count] = body.compliance[np.ix_(active, active)]
    matrix[:count, count:] = -body.rigid[active]
    matrix[count:, :count] = -body.rigid[active].T
    diagonal = np.concatenate([1 / stiffness, np.full(rigid_count, -body.trace_n_mm)])
    matrix[np.diag_indices_from(matrix)] += diagonal
    extension = body.unloaded_mm[active] - begins
    if len(slipped):
        extension = extension - body.compliance[np.ix_(active, slipped)] @ force[slipped]
    load = body.rigid_load_n - body.rigid[slipped].T @ force[slipped]
    answer = np.linalg.solve(matrix, np.concatenate([extension, -load]))
    force[active] = answer[:count]
    return force, answer[count:]


def _line_search(along: float, bend: float, extension: Array, move: Array, springs: Springs) -> float:
    """The share of a Newton step, at most the whole, at which the energy along it is least: exact.

    ``along + bend·share`` is the slope of the body's energy; the springs' adds corners where one of them
    starts, stops or gives way.
    """

    def slope(share: float) -> float:
        return along + bend * share + float(springs.force(extension + share * move) @ move)

    if slope(1.0) <= 1e-9 * (abs(along) + abs(bend)):
        return 1.0
    with np.errstate(divide="ignore", invalid="ignore"):
        gives_way = springs.pull_from_mm + springs.limit_n / springs.pull_n_mm
        corners = np.concatenate(
            [(edge - extension) / move for edge in (springs.push_from_mm, springs.pull_from_mm, gives_way)]
        )
    corners = np.concatenate([[0.0], np.unique(corners[(corners > 0) & (corners < 1)]), [1.0]])
    low, high = 0, len(corners) - 1
    low_slope, high_slope = slope(0.0), slope(1.0)
    while high - low > 1:
        middle = (low + high) // 2
        value = slope(float(corners[middle]))
        if value > 0:
            high, high_slope = middle, value
        else:
            low, low_slope = middle, value
    left, right = float(corners[low]), float(corners[high])
    share = left - low_slope * (right - left) / (high_slope - low_slope)
    return share if 0 < share < 1 else 1.0
