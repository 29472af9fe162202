"""A board's moisture through several places with dates, and what it was when it was built."""

from __future__ import annotations

import datetime
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.air.daily import Air, daily_moisture, mean_temperature
from movement_core.air.sequence import (
    Stay,
    Stays,
    day_of_year,
    stay_humidity,
    stay_midnights,
    stay_temperature,
)
from movement_core.errors import InputError
from movement_core.moisture.events import Event, event_of
from movement_core.moisture.finish import as_face
from movement_core.moisture.marching import Spell, march
from movement_core.moisture.response import wood_year
from movement_core.moisture.spread import Uncertain, between
from movement_core.moisture.transport import DEFAULT_DIFFUSION, diffusivity, exchange
from movement_core.wording import phrase, say

Array = NDArray[np.float64]

PLAUSIBLE_BUILT_MC = (6.0, 14.0)  # kiln-dried in a heated shop to air-dried in a damp one (common practice)
SHOP_SD_MC = 1.0  # percent points: a shop's climate as described, and sorption's own doubt (own)


@dataclass(frozen=True, eq=False)
class Journey:
    """A board through its stays.

    Attributes
    ----------
    dates : (N,) every day from the first to the last.
    air_mc, mean_mc, show_mc, back_mc, face_difference_mc : (N,) percent, as in ``WoodYear``, at noon of
        each date.
    event : the whole course with its worst moment and fading.
    """

    dates: tuple[datetime.date, ...]
    air_mc: Array
    mean_mc: Array
    show_mc: Array
    back_mc: Array
    face_difference_mc: Array
    event: Event


def _spell(stay: Stay, specific_gravity: float) -> Spell:
    temperature, rh = float(stay_temperature(stay).mean()), float(stay_humidity(stay).mean())
    show, back = (
        float(exchange(as_face(face).permeance_ng(), temperature, rh, specific_gravity))
        for face in (stay.show, stay.back)
    )
    samples = stay_midnights(stay)
    return Spell(float(stay.days), samples, samples, show, back)


def journey(
    stays: Stays,
    thickness_mm: float,
    specific_gravity: float,
    start_mc: ArrayLike,
    *,
    diffusion: str = DEFAULT_DIFFUSION,
    diffusivity_factor: float = 1.0,
) -> Journey:
    """March a board through its stays, each with its own air, dates and faces.

    Parameters
    ----------
    start_mc : percent on the first day: a number, or a profile of ``marching.DEFAULT_CELLS`` from back to
        show face.
    The rest as ``wood_year``. The diffusivity follows the moisture in each layer and the mean temperature
    of all.
    """
    temperature = float(np.concatenate([stay_temperature(stay) for stay in stays.stays]).mean())

    def rate(mc: Array) -> Array:
        return np.asarray(diffusivity(temperature, mc, specific_gravity, diffusion) * diffusivity_factor)

    course = march(thickness_mm, start_mc, [_spell(stay, specific_gravity) for stay in stays.stays], rate)
    dates = tuple(stays.dates)
    noon = np.arange(len(dates)) + 0.5
    mean, show, back, difference = (
        np.asarray(course.at(noon, field))
        for field in ("mean_mc", "show_mc", "back_mc", "face_difference_mc")
    )
    name = " → ".join(stay.name for stay in stays.stays)
    return Journey(dates, stays.moisture, mean, show, back, difference, event_of(name, course))


@dataclass(frozen=True)
class BuiltMoisture:
    """What the wood's moisture was when it was built.

    Attributes
    ----------
    mc : percent; None when nothing tells it. basis : "given", "from the shop's air and date", or "missing".
    likely_range : percent; the plausible range when missing.
    uncertainty : to hand to ``spread``.
    """

    mc: float | None
    basis: str
    likely_range: tuple[float, float]
    uncertainty: Uncertain


def built_moisture(
    given_mc: float | None = None,
    *,
    given_sd: float = 0.5,
    shop: Air | None = None,
    date: datetime.date | None = None,
    thickness_mm: float | None = None,
    specific_gravity: float | None = None,
) -> BuiltMoisture:
    """As-built moisture: as given; else of stock that lay in the shop on that date; else missing with its
    range.

    Parameters
    ----------
    given_mc, given_sd : percent, if it was measured.
    shop, date : the shop's year and the day it was built; with thickness and specific gravity the wood's
        own lag in the shop is taken (both faces bare), without them the air of the thirty days before.
    """
    if given_mc is not None:
        mc = float(within(given_mc, phrase("as-built moisture"), 0.0, 30.0, "%"))
        return BuiltMoisture(mc, "given", (mc - given_sd, mc + given_sd), Uncertain(mc, given_sd))
    if (shop is None) != (date is None):
        raise InputError(
            say("the shop's air and the date belong together"),
            where=say("as-built moisture"),
            allowed=say("both, or neither"),
            todo=say("add the date it was built") if date is None else say("add the shop's year"),
        )
    if shop is not None and date is not None:
        day = day_of_year(date)
        if thickness_mm is not None and specific_gravity is not None:
            mc = float(wood_year(shop, thickness_mm, specific_gravity).mean_mc[day])
        else:
            mc = float(np.take(daily_moisture(shop), np.arange(day - 29, day + 1), mode="wrap").mean())
        basis = say(
            "from the air of {name} on {date} ({mean_temperature:.0f} °C mean)",
            name=shop.name,
            date=date,
            mean_temperature=mean_temperature(shop),
        )
        return BuiltMoisture(mc, basis, (mc - SHOP_SD_MC, mc + SHOP_SD_MC), Uncertain(mc, SHOP_SD_MC))
    return BuiltMoisture(None, "missing", PLAUSIBLE_BUILT_MC, between(*PLAUSIBLE_BUILT_MC))


def over_plausible(
    function: Callable[[Array], ArrayLike], built: BuiltMoisture, points: int = 9
) -> tuple[Array, Array]:
    """(moistures, answers) over the range the as-built moisture may have: how much hangs on not knowing it.

    ``function`` takes an array of moistures (points,) and gives (points, …).
    """
    if not 2 <= points <= 1000:
        raise InputError(
            say("{points} points", points=points), where=say("plausible range"), allowed=say("2 to 1000")
        )
    moistures = np.linspace(*built.likely_range, points)
    return moistures, np.asarray(function(moistures), dtype=np.float64)
