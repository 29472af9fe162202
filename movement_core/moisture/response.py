"""How wood answers a year of air: late, and less.

Moisture diffuses through the thickness only (wide boards; legs and ends need more directions), with constant
diffusivity and, at each face, a flux proportional to surface minus air. A year's air repeats, so every
Fourier harmonic of it is solved exactly and summed; what the board was like before it came into this air is
forgotten (``movement_core.moisture.marching`` follows that). Checked against scipy time-marching to 0.1 %
of the amplitude.

Signs: the show face is at y = +t/2. A positive face difference means the show face is the damper.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.air.daily import (
    DAYS,
    Air,
    daily_moisture,
    mean_humidity,
    mean_temperature,
)
from movement_core.errors import InputError
from movement_core.moisture.finish import FaceFinish, as_face
from movement_core.moisture.harmonics import solve_harmonics
from movement_core.moisture.transport import (
    DEFAULT_DIFFUSION,
    DEFAULT_EMISSION,
    RANGE_FACTOR,
    diffusivity,
    exchange,
    still_air_permeance,
)
from movement_core.wording import phrase, say

Array = NDArray[np.float64]
Faces = FaceFinish | str | Sequence[FaceFinish | str]

THICKNESS_RANGE_MM = (0.1, 1000.0)  # beyond it is a slip of the unit (own judgement)
WARMEST_MEAN_C = 45.0  # no home or shop has a warmer year; °F taken for °C would (own judgement)
BOARDS_AT_ONCE = 64


@dataclass(frozen=True, eq=False)
class SlabTransport:
    """What the spectral solution needs of one or many boards; each field of shape (…) or scalar.

    Attributes
    ----------
    thickness_mm : full thickness.
    diffusivity : mm²/day. show_exchange, back_exchange : mm/day, 0 = blocked.
    method : where the figures came from, for reports.
    """

    thickness_mm: Array
    diffusivity: Array
    show_exchange: Array
    back_exchange: Array
    method: str

    @property
    def shape(self) -> tuple[int, ...]:
        return np.broadcast_shapes(*(np.shape(getattr(self, name)) for name in _SLAB_FIELDS))


_SLAB_FIELDS = ("thickness_mm", "diffusivity", "show_exchange", "back_exchange")


@dataclass(frozen=True, eq=False)
class WoodYear:
    """One year of moisture in one or many boards, once each year is like the last.

    Attributes
    ----------
    air_mc : (365,) equilibrium moisture of the air on the show face, percent; back_air_mc on the back.
    mean_mc, show_mc, back_mc : (…, 365) mean through the thickness and at each face, percent. 1 January
        first.
    face_difference_mc : (…, 365) show minus back face of the straight profile that cups the board alike,
        percent (12/t² times the first moment of the moisture). Curvature = coefficient × this ÷ thickness.
    lag_days : (…) how late the yearly wave of the mean is.
    swing_share : (…) range of the mean over the year ÷ range of the air's equilibrium moisture; nan in
        steady air.
    slab : the transport figures used; notes : what the reader must know.

    >>> year = wood_year(find_year("museum"), 20, 0.68, "varnish 2", "bare")
    >>> year.mean_mc.shape, round(float(year.lag_days))  # late by so many days
    ((365,), 27)
    """

    air_mc: Array
    back_air_mc: Array
    mean_mc: Array
    show_mc: Array
    back_mc: Array
    face_difference_mc: Array
    lag_days: Array
    swing_share: Array
    slab: SlabTransport
    notes: tuple[str, ...] = ()

    @property
    def driest_mc(self) -> Array:
        """(…) lowest mean moisture of the year, percent."""
        return np.asarray(self.mean_mc.min(-1))[()]

    @property
    def wettest_mc(self) -> Array:
        """(…) highest mean moisture of the year, percent."""
        return np.asarray(self.mean_mc.max(-1))[()]

    @property
    def driest_day(self) -> NDArray[np.int64]:
        """(…) day of the year, 0 = 1 January, with the lowest mean moisture."""
        return np.asarray(self.mean_mc.argmin(-1), dtype=np.int64)[()]

    @property
    def wettest_day(self) -> NDArray[np.int64]:
        """(…) day of the year with the highest mean moisture."""
        return np.asarray(self.mean_mc.argmax(-1), dtype=np.int64)[()]


def slab_transport(
    air: Air,
    thickness_mm: ArrayLike,
    specific_gravity: ArrayLike,
    show: Faces = "bare",
    back: Faces = "bare",
    *,
    diffusion: str = DEFAULT_DIFFUSION,
    emission: str = DEFAULT_EMISSION,
    diffusivity_factor: ArrayLike = 1.0,
) -> SlabTransport:
    """Diffusivity and face exchange of boards at the mean temperature and mean moisture of this air.

    Parameters as ``wood_year``. ``diffusivity_factor`` scales the diffusivity within its range (see
    ``transport.RANGE_FACTOR``: 1/3 to 3, own judgement).
    """
    thickness = within(thickness_mm, phrase("thickness"), *THICKNESS_RANGE_MM, "mm")
    gravity = np.asarray(specific_gravity, dtype=np.float64)
    factor = within(diffusivity_factor, phrase("diffusivity factor"), 1e-3, 1e3, "")
    temperature, daily, rh = mean_air(air)
    moisture = float(daily.mean())
    still = still_air_permeance(emission)
    rate = diffusivity(temperature, moisture, gravity, diffusion) * factor
    show_exchange, back_exchange = (
        exchange(_permeances(faces, still), temperature, rh, gravity) for faces in (show, back)
    )
    method = (
        f"diffusivity {diffusion!r} at {temperature:.0f} °C and {moisture:.1f} % (known within "
        f"1/{RANGE_FACTOR:g} to {RANGE_FACTOR:g} times); surface {emission!r}"
    )
    return SlabTransport(
        thickness, np.asarray(rate), np.asarray(show_exchange), np.asarray(back_exchange), method
    )


def mean_air(air: Air) -> tuple[float, Array, float]:
    """(mean temperature °C, (365,) equilibrium moisture, mean humidity percent) of a year of rooms."""
    temperature, daily = mean_temperature(air), daily_moisture(air)
    if temperature > WARMEST_MEAN_C:
        raise InputError(
            say("a yearly mean of {temperature:.0f} °C", temperature=temperature),
            where=say("air {name!r}", name=air.name),
            allowed=say("up to {most:g} °C", most=WARMEST_MEAN_C),
            todo=say("if these are °F, convert them first"),
        )
    return temperature, daily, mean_humidity(air)


def _permeances(faces: Faces, still_air_ng: float) -> Array:
    if isinstance(faces, FaceFinish | str):
        return np.asarray(as_face(faces).permeance_ng(still_air_ng))
    return np.array([as_face(face).permeance_ng(still_air_ng) for face in faces])


def wood_year(
    air: Air,
    thickness_mm: ArrayLike,
    specific_gravity: ArrayLike,
    show: Faces = "bare",
    back: Faces = "bare",
    *,
    back_air: Air | None = None,
    diffusion: str = DEFAULT_DIFFUSION,
    emission: str = DEFAULT_EMISSION,
    diffusivity_factor: ArrayLike = 1.0,
) -> WoodYear:
    """Moisture of boards through a year of this air, for one board or arrays of boards.

    Parameters
    ----------
    air : a ``Year`` of months or a ``DailyAir``: around the show face, and the back unless ``back_air``
        differs.
    thickness_mm : full thickness, 0.1 to 1000 mm; specific_gravity : oven-dry mass on the volume at 12 % MC.
    show, back : finish of each face (``FaceFinish``, words such as "varnish 2", "bare", "blocked"; or one a
        board).
    diffusion, emission : named methods of ``movement_core.moisture.transport``; diffusivity_factor scales
        the former.

    Returns
    -------
    ``WoodYear`` with leading shape the broadcast of thickness, specific gravity, finishes and factor.

    Raises
    ------
    InputError : a value out of range, both faces blocked, shapes that do not broadcast. UnknownName : a
        finish.

    Error: exact for constant figures and daily air; the figures themselves are known within a factor of
    three.

    >>> round(float(wood_year(find_year("museum"), 20, 0.68).mean_mc.min()), 1)
    8.8
    """
    slab = slab_transport(
        air, thickness_mm, specific_gravity, show, back,
        diffusion=diffusion, emission=emission, diffusivity_factor=diffusivity_factor,
    )  # fmt: skip
    return slab_year(daily_moisture(air), slab, None if back_air is None else daily_moisture(back_air))


def slab_year(show_air_mc: ArrayLike, slab: SlabTransport, back_air_mc: ArrayLike | None = None) -> WoodYear:
    """The same from daily equilibrium moistures (365,) and transport figures, for one or many boards."""
    show_air = daily_moisture(show_air_mc)
    back_air = show_air if back_air_mc is None else daily_moisture(back_air_mc)
    if np.array_equal(back_air, show_air):
        back_air = show_air  # one air round both faces: solved once
    try:
        shape = slab.shape
    except ValueError:
        shapes = ", ".join(f"{name} {np.shape(getattr(slab, name))}" for name in _SLAB_FIELDS)
        raise InputError(
            say("these do not fit together: {shapes}", shapes=shapes),
            where=say("boards"),
            allowed=say("shapes that broadcast"),
        ) from None
    fields = [
        np.broadcast_to(np.asarray(getattr(slab, name), dtype=np.float64), shape) for name in _SLAB_FIELDS
    ]
    closed = (fields[2] + fields[3]) == 0
    if closed.any():
        where = say("board")
        if shape:
            where = say("board {name}", name=np.argwhere(np.atleast_1d(closed))[0].tolist())
        raise InputError(
            say("both faces are blocked: through its thickness it never answers the air"),
            where=where,
            allowed=say("at most one blocked face"),
            todo=say("leave it out: only its edges and ends breathe"),
        )
    flat = [field.reshape(-1, 1) for field in fields]
    count = flat[0].shape[0]
    days = np.empty((4, count, DAYS))
    lag = np.empty(count)
    for start in range(0, count, BOARDS_AT_ONCE):  # few enough to stay in the processor's cache
        some = slice(start, start + BOARDS_AT_ONCE)
        days[:, some], lag[some] = solve_harmonics([field[some] for field in flat], show_air, back_air)
    mean, show, back, difference = (part.reshape(*shape, DAYS) for part in days)
    air_range = np.ptp((show_air + back_air) / 2)
    share = np.ptp(mean, axis=-1) / air_range if air_range > 1e-9 else np.full(shape, np.nan)
    return WoodYear(
        show_air, back_air, mean, show, back, difference, lag.reshape(shape)[()], np.asarray(share)[()], slab
    )


def with_factor(year: WoodYear, factor: float) -> WoodYear:
    """The same boards with the diffusivity this many times faster: the ends of its range are 1/3 and 3."""
    slab = replace(year.slab, diffusivity=np.asarray(year.slab.diffusivity * factor))
    return slab_year(year.air_mc, slab, year.back_air_mc)
