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

from movement_core.air.daily import (
    DAYS,
    Air,
    daily_moisture,
    mean_temperature,
    months_from_days,
)
from movement_core.air.moist_air import humidity_of_moisture
from movement_core.errors import InputError
from movement_core.moisture.finish import FaceFinish, as_face
from movement_core.moisture.transport import (
    DEFAULT_DIFFUSION,
    DEFAULT_EMISSION,
    RANGE_FACTOR,
    diffusivity,
    exchange,
    still_air_permeance,
    within,
)

Array = NDArray[np.float64]
Complex = NDArray[np.complex128]
Faces = FaceFinish | str | Sequence[FaceFinish | str]

THICKNESS_RANGE_MM = (0.1, 1000.0)
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

    @property
    def monthly_mc(self) -> Array:
        """(…, 12) mean moisture of each calendar month, percent."""
        return months_from_days(self.mean_mc)

    @property
    def monthly_face_difference_mc(self) -> Array:
        """(…, 12) mean face difference of each calendar month, percent."""
        return months_from_days(self.face_difference_mc)


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
    ``transport.RANGE_FACTOR``: 1/3 to 3 spans the sources).
    """
    thickness = within(thickness_mm, "thickness", *THICKNESS_RANGE_MM, "mm")
    gravity = np.asarray(specific_gravity, dtype=np.float64)
    factor = within(diffusivity_factor, "diffusivity factor", 1e-3, 1e3, "")
    temperature, moisture = mean_temperature(air), float(daily_moisture(air).mean())
    rh = float(humidity_of_moisture(temperature, moisture))
    still = still_air_permeance(emission)
    rate = diffusivity(temperature, moisture, gravity, diffusion) * factor
    show_exchange, back_exchange = (
        exchange(_permeances(faces, still), temperature, rh, gravity) for faces in (show, back)
    )
    method = (
        f"diffusivity {diffusion!r} at {temperature:.0f} °C and {moisture:.1f} % (sources range from "
        f"1/{RANGE_FACTOR:g} to {RANGE_FACTOR:g} times); surface {emission!r}"
    )
    return SlabTransport(
        thickness, np.asarray(rate), np.asarray(show_exchange), np.asarray(back_exchange), method
    )


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
            f"these do not fit together: {shapes}", where="boards", allowed="shapes that broadcast"
        ) from None
    fields = [
        np.broadcast_to(np.asarray(getattr(slab, name), dtype=np.float64), shape) for name in _SLAB_FIELDS
    ]
    closed = (fields[2] + fields[3]) == 0
    if closed.any():
        where = f"board {np.argwhere(np.atleast_1d(closed))[0].tolist()}" if shape else "board"
        raise InputError(
            "both faces are blocked: through its thickness it never answers the air",
            where=where,
            allowed="at most one blocked face",
            todo="leave it out: only its edges and ends breathe",
        )
    flat = [field.reshape(-1, 1) for field in fields]
    count = flat[0].shape[0]
    days = np.empty((4, count, DAYS))
    lag = np.empty(count)
    for start in range(0, count, BOARDS_AT_ONCE):  # few enough to stay in the processor's cache
        some = slice(start, start + BOARDS_AT_ONCE)
        days[:, some], lag[some] = _solve([field[some] for field in flat], show_air, back_air)
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


def _solve(fields: list[Array], show_air: Array, back_air: Array) -> tuple[Array, Array]:
    """(4, N, 365) mean, show, back, face difference, and (N,) lag, from (N, 1) transport figures."""
    thickness, rate, h_show, h_back = fields
    show_wave, back_wave = np.fft.rfft(show_air), np.fft.rfft(back_air)
    omega = 2 * np.pi / DAYS * np.arange(1, show_wave.size)
    # x = q t with q = √(iω/D) = (1 + i) √(ω/2D); real functions of its real part are much cheaper than
    # complex ones
    depth = np.sqrt(omega / 2) * (thickness / np.sqrt(rate))
    fade = np.exp(-depth)
    decay = np.empty(depth.shape, dtype=np.complex128)
    decay.real, decay.imag = fade * np.cos(depth), -fade * np.sin(depth)
    inverse: Complex = np.asarray((0.5 - 0.5j) / depth, dtype=np.complex128)  # 1/x
    flux = np.sqrt(rate) * np.sqrt(1j * omega)  # D q
    # M(z) = A exp(−q z) + B exp(−q (t − z)), z from the back face; a 2 × 2 system, solved by hand.
    own_back, own_show = h_back + flux, h_show + flux
    across_back, across_show = decay * (h_back - flux), decay * (h_show - flux)
    scale = 1 / (own_back * own_show - across_back * across_show)
    spread: Complex = np.asarray((1 - decay) * inverse, dtype=np.complex128)

    def profile(drive_back: Array | Complex, drive_show: Array | Complex) -> tuple[Complex, Complex]:
        A = (drive_back * own_show - drive_show * across_back) * scale
        B = (drive_show * own_back - drive_back * across_show) * scale
        return A, B

    if back_air is show_air:
        A, B = profile(h_back, h_show)
        yearly = ((A + B) * spread)[:, 0]
        A, B = A * show_wave[1:], B * show_wave[1:]
    else:
        A, B = profile(h_back[:, :1], h_show[:, :1])
        yearly = ((A + B) * spread)[:, 0]
        A, B = profile(h_back * back_wave[1:], h_show * show_wave[1:])
    back_level, show_level = _steady(thickness, rate, h_back, h_show, back_air.mean(), show_air.mean())
    waves = np.empty((4, thickness.shape[0], show_wave.size), dtype=np.complex128)
    waves[0, :, 1:] = (A + B) * spread
    waves[1, :, 1:] = A * decay + B
    waves[2, :, 1:] = A + B * decay
    waves[3, :, 1:] = _twelve_moments(depth, decay, inverse, spread) * (A - B)
    levels = ((show_level + back_level) / 2, show_level, back_level, show_level - back_level)
    waves[:, :, 0] = [level[:, 0] * DAYS for level in levels]
    return np.fft.irfft(waves, DAYS, axis=-1), -np.angle(yearly) / omega[0]


def _twelve_moments(depth: Array, decay: Complex, inverse: Complex, spread: Complex) -> Complex:
    """12 ∫₀ᵗ exp(−q z)(z − t/2) dz / t², x = q t; by its series where the closed form would cancel."""
    closed = 12 * (spread - decay) * inverse - 6 * spread
    if depth.min() > 0.02:
        return np.asarray(closed)
    x = (1 + 1j) * depth
    series = x * (-1 + x * (1 / 2 - x * (3 / 20 - x / 30)))
    return np.asarray(np.where(depth < 0.02, series, closed))


def _steady(
    thickness: Array, rate: Array, h_back: Array, h_show: Array, back_air: float, show_air: float
) -> tuple[Array, Array]:
    """Moisture at the back and show face when nothing changes any more, each (…, 1)."""
    with np.errstate(divide="ignore"):
        film_back, film_show = 1 / h_back, 1 / h_show  # inf for a blocked face: no steady flow
    flow = (show_air - back_air) / (film_back + film_show + thickness / rate)
    with np.errstate(invalid="ignore"):
        back = np.where(h_back > 0, back_air + flow * film_back, show_air)
        show = np.where(h_show > 0, show_air - flow * film_show, back_air)
    return back, show
