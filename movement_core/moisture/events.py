"""Things that happen to one board: a wet face, a night on the bench, a delivery from damp to dry.

Each is marched in time and told by its worst moment and how long it takes to fade. Curvature follows from the
face difference by ``movement_core.moisture.consequence``.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.air.emc import equilibrium_moisture
from movement_core.errors import InputError
from movement_core.moisture.finish import FaceFinish, as_face
from movement_core.moisture.marching import March, Spell, march
from movement_core.moisture.transport import DEFAULT_DIFFUSION, diffusivity, exchange
from movement_core.wording import phrase, say

Array = NDArray[np.float64]

WET_SURFACE_MC = (
    28.0  # a wet surface is at fibre saturation; water running into open pores is beyond this theory
)
FADED = 0.1  # an event has faded when a tenth of its worst is left
SLACK_MC = 0.05  # percent points below which nobody notices


@dataclass(frozen=True)
class BoardInAir:
    """A board and the room it is in.

    Parameters
    ----------
    thickness_mm, specific_gravity : as in ``wood_year``.
    temperature_c, rh_percent : the room.
    show, back : finishes, a ``FaceFinish`` or words.
    depends_on_moisture : let the diffusivity follow the moisture in each layer.
    diffusivity_factor : 1/3 to 3 is its range (own judgement).
    """

    thickness_mm: float
    specific_gravity: float
    temperature_c: float
    rh_percent: float
    show: FaceFinish | str = "bare"
    back: FaceFinish | str = "bare"
    diffusion: str = DEFAULT_DIFFUSION
    depends_on_moisture: bool = True
    diffusivity_factor: float = 1.0

    @property
    def air_mc(self) -> float:
        """Equilibrium moisture of the room, percent."""
        return float(equilibrium_moisture(self.temperature_c, self.rh_percent))

    def rate(self, typical_mc: float) -> float | Callable[[Array], Array]:
        """Diffusivity, mm²/day: constant at a typical moisture, or as a function of it."""

        def at(mc: ArrayLike) -> Array:
            figure = diffusivity(self.temperature_c, mc, self.specific_gravity, self.diffusion)
            return np.asarray(figure * self.diffusivity_factor)

        return at if self.depends_on_moisture else float(at(typical_mc))

    def exchanges(self) -> tuple[float, float]:
        """(show, back) exchange, mm/day."""
        faces = (as_face(self.show), as_face(self.back))
        show, back = (
            float(exchange(face.permeance_ng(), self.temperature_c, self.rh_percent, self.specific_gravity))
            for face in faces
        )
        return show, back

    def spell(self, days: float) -> Spell:
        """This room for so many days."""
        show, back = self.exchanges()
        return Spell(days, self.air_mc, self.air_mc, show, back)


@dataclass(frozen=True, eq=False)
class Event:
    """An event and its course.

    Attributes
    ----------
    name : what happened. course : the marched moisture.
    worst_day : when the faces differ most; worst_face_difference_mc : by how much then (show minus back),
        percent.
    faded_day : when a tenth of the worst difference is left for good; 0 if it never mattered, None if the
        march ends before that.
    mean_change_mc : largest change of the mean from the start, percent.
    """

    name: str
    course: March
    worst_day: float
    worst_face_difference_mc: float
    faded_day: float | None
    mean_change_mc: float


def _mean(start_mc: ArrayLike) -> float:
    return float(np.asarray(start_mc, dtype=np.float64).mean())


def event_of(name: str, course: March) -> Event:
    """Worst moment and fading of any marched course."""
    difference = course.face_difference_mc
    worst = int(np.abs(difference).argmax())
    above = np.abs(difference) > max(FADED * abs(difference[worst]), SLACK_MC)
    faded = day_after_the_last(above, course)
    change = course.mean_mc - course.mean_mc[0]
    return Event(
        name,
        course,
        float(course.time_days[worst]),
        float(difference[worst]),
        faded,
        float(change[np.abs(change).argmax()]),
    )


def wet_face(
    board: BoardInAir,
    wet_hours: float,
    *,
    start_mc: float | None = None,
    face: str = "show",
    follow_days: float = 60.0,
) -> Event:
    """One face wetted for some hours (spilt water, a wet cloth left lying), then left to dry in the room.

    A film on that face is taken as passed by water only as fast as it passes vapour; bare wood takes it at
    once.
    """
    hours = float(within(wet_hours, phrase("hours wet"), 0.01, 24 * 365.0, "h"))
    if face not in ("show", "back"):
        raise InputError(
            say("face {face!r}", face=face), where=say("wet face"), allowed=say("'show' or 'back'")
        )
    start = board.air_mc if start_mc is None else start_mc
    usual = board.spell(follow_days)
    finish = as_face(board.show if face == "show" else board.back)
    film = exchange(min(finish.film_ng, 1e8), board.temperature_c, board.rh_percent, board.specific_gravity)
    if face == "show":
        wet = replace(usual, days=hours / 24, show_air_mc=WET_SURFACE_MC, show_exchange=float(film))
    else:
        wet = replace(usual, days=hours / 24, back_air_mc=WET_SURFACE_MC, back_exchange=float(film))
    course = march(board.thickness_mm, start, [wet, usual], board.rate(start))
    return event_of(say("{face} face wet for {hours:g} h", face=face, hours=hours), course)


def lying_on_bench(
    board: BoardInAir, start_mc: ArrayLike, lying_days: float, *, follow_days: float = 60.0
) -> Event:
    """A top left lying, its back face on the bench, for some days; then set on stickers with both faces open.

    ``start_mc`` is its moisture when laid down: a number, or a profile from back to show face.
    """
    open_air = board.spell(follow_days)
    lying = replace(open_air, days=lying_days, back_exchange=0.0)
    typical = _mean(start_mc)
    course = march(board.thickness_mm, start_mc, [lying, open_air], board.rate(typical))
    return event_of(say("lying on the bench for {lying:g} days", lying=lying_days), course)


def delivery(board: BoardInAir, start_mc: ArrayLike, *, follow_days: float = 365.0) -> Event:
    """A piece that comes from elsewhere into this room with the moisture it had there (number or profile)."""
    typical = (_mean(start_mc) + board.air_mc) / 2
    course = march(board.thickness_mm, start_mc, [board.spell(follow_days)], board.rate(typical))
    return event_of(
        say("delivered at {mean:.1f} % into air of {air:.1f} %", mean=_mean(start_mc), air=board.air_mc),
        course,
    )


def days_to_come_within(course: March, target_mc: float, within_mc: float) -> float | None:
    """First day from which the mean stays within so many points of a target; None if the course never does."""
    return day_after_the_last(np.abs(course.mean_mc - target_mc) > within_mc, course)


def day_after_the_last(outside: NDArray[np.bool_], course: March) -> float | None:
    """First day after every step that lies outside: 0 where none does, None where the last one does."""
    last = np.flatnonzero(outside)[-1:]
    if not last.size:
        return 0.0
    return float(course.time_days[last[0] + 1]) if last[0] + 1 < outside.size else None
