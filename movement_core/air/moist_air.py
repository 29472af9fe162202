"""Moist air: what is in it, and what becomes of it when it is warmed, dried or damped indoors.

Saturation pressure after Sonntag (1990), Zeitschrift für Meteorologie 40:340 (coefficients recalled); the
rest is the ideal-gas mixture of the ASHRAE Handbook *Fundamentals*, chapter 1. Checked against
``psychrolib``, which uses another formulation (Hyland and Wexler), to 0.07 %.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.emc import FIBRE_SATURATION_MC, equilibrium_moisture
from movement_core.errors import InputError
from movement_core.wording import phrase, say, word

Array = NDArray[np.float64]

STANDARD_PRESSURE_PA = 101325.0
WATER_TO_AIR_MASS = (
    0.621945  # ratio of the molar masses of water and dry air (ASHRAE Fundamentals, ch. 1, recalled)
)
VAPOUR_GAS_CONSTANT = 461.5  # J/(kg K)
SATURATION_RANGE_C = (-60.0, 100.0)


def _checked(values: ArrayLike, what: str, low: float, high: float, unit: str) -> Array:
    array = np.asarray(values, dtype=np.float64)
    bad = ~((array >= low) & (array <= high))
    if bad.any():
        at = np.argwhere(np.atleast_1d(bad))[0]
        raise InputError(
            say(
                "{value:g} {unit} is not a usable {what}",
                value=np.atleast_1d(array)[tuple(at)],
                unit=unit,
                what=word(what),
            ),
            where=f"{word(what)}[{', '.join(map(str, at))}]" if array.ndim else word(what),
            allowed=say("{low:g} to {high:g} {unit}", low=low, high=high, unit=unit),
            todo=say("give °C, percent, pascal; °F readings must be converted first"),
        )
    return array


def saturation_pressure(temperature_c: ArrayLike, *, below_freezing: str = "ice") -> Array:
    """Vapour pressure of saturated air, Pa.

    Parameters
    ----------
    temperature_c : scalar or array, °C, −60 to 100.
    below_freezing : "ice" (engineering tables) or "water" (weather stations report humidity over water even
        in frost: WMO Guide to Instruments No. 8, recalled).

    Source: Sonntag (1990), coefficients recalled; within 0.07 % of psychrolib from −40 to 60 °C.
    """
    if below_freezing not in ("ice", "water"):
        raise InputError(
            say("{below_freezing!r} is not a surface of saturation", below_freezing=below_freezing),
            where=say("below_freezing"),
            allowed=say("'ice' or 'water'"),
        )
    kelvin = _checked(temperature_c, phrase("temperature"), *SATURATION_RANGE_C, "°C") + 273.15
    log = np.log(kelvin)
    water = -6096.9385 / kelvin + 21.2409642 - 2.711193e-2 * kelvin + 1.673952e-5 * kelvin**2 + 2.433502 * log
    ice = -6024.5282 / kelvin + 29.32707 + 1.0613868e-2 * kelvin - 1.3198825e-5 * kelvin**2 - 0.49382577 * log
    frozen = (kelvin < 273.16) & (below_freezing == "ice")
    return np.asarray(np.exp(np.where(frozen, ice, water)))[()]


def humidity_ratio(
    temperature_c: ArrayLike,
    rh_percent: ArrayLike,
    pressure_pa: float = STANDARD_PRESSURE_PA,
    *,
    below_freezing: str = "ice",
) -> Array:
    """Mass of vapour per mass of dry air, kg/kg, of air at this temperature and relative humidity
    (percent).
    """
    rh = _checked(rh_percent, phrase("relative humidity"), 0.0, 100.0, "%")
    vapour = rh / 100 * saturation_pressure(temperature_c, below_freezing=below_freezing)
    if np.any(vapour >= pressure_pa):
        raise InputError(
            say("the vapour pressure is above the air pressure"),
            where=say("humidity ratio"),
            allowed=say("air below boiling"),
        )
    return np.asarray(WATER_TO_AIR_MASS * vapour / (pressure_pa - vapour))[()]


def vapour_pressure(humidity_ratio_kg: ArrayLike, pressure_pa: float = STANDARD_PRESSURE_PA) -> Array:
    """Partial pressure of the vapour, Pa, of air with this humidity ratio (kg/kg)."""
    ratio = _checked(humidity_ratio_kg, phrase("humidity ratio"), 0.0, 10.0, "kg/kg")
    return np.asarray(pressure_pa * ratio / (WATER_TO_AIR_MASS + ratio))[()]


def relative_humidity(
    temperature_c: ArrayLike, humidity_ratio_kg: ArrayLike, pressure_pa: float = STANDARD_PRESSURE_PA
) -> Array:
    """Relative humidity in percent; above 100 where the air could not hold that much (the caller decides)."""
    return np.asarray(
        100 * vapour_pressure(humidity_ratio_kg, pressure_pa) / saturation_pressure(temperature_c)
    )[()]


def dew_point(temperature_c: ArrayLike, rh_percent: ArrayLike) -> Array:
    """Dew point (frost point below 0 °C), °C, to a thousandth of a degree; RH must be above 0."""
    rh = _checked(rh_percent, phrase("relative humidity"), 1e-3, 100.0, "%")
    vapour = rh / 100 * saturation_pressure(temperature_c)
    low = np.full(np.shape(vapour), SATURATION_RANGE_C[0])
    high = np.full(np.shape(vapour), SATURATION_RANGE_C[1])
    if np.any(vapour < saturation_pressure(SATURATION_RANGE_C[0])):
        raise InputError(say("dew point below −60 °C"), where=say("dew point"), allowed=say("−60 to 100 °C"))
    for _ in range(40):
        middle = (low + high) / 2
        too_cold = saturation_pressure(middle) < vapour
        low, high = np.where(too_cold, middle, low), np.where(too_cold, high, middle)
    return np.asarray((low + high) / 2)[()]


def humidity_of_moisture(temperature_c: ArrayLike, moisture: ArrayLike) -> Array:
    """Relative humidity (percent) of the air in which wood comes to this moisture content (percent).

    The inverse of ``equilibrium_moisture`` at the same temperature, to 1e-6 %. A moisture above what
    saturated air gives raises ``InputError``.
    """
    temperature, target = np.broadcast_arrays(
        np.asarray(temperature_c, dtype=np.float64),
        _checked(moisture, phrase("moisture content"), 0.0, FIBRE_SATURATION_MC, "%"),
    )
    low, high = np.zeros(target.shape), np.full(target.shape, 100.0)
    if np.any(equilibrium_moisture(temperature, high) < target):
        raise InputError(
            say("no air gives wood this much moisture at this temperature"),
            where=say("moisture content"),
            allowed=say("up to what air at 100 % RH gives, some 25 to 28 %"),
        )
    for _ in range(36):
        middle = (low + high) / 2
        too_dry = equilibrium_moisture(temperature, middle) < target
        low, high = np.where(too_dry, middle, low), np.where(too_dry, high, middle)
    return np.asarray((low + high) / 2)[()]


def sorption_slope(temperature_c: ArrayLike, rh_percent: ArrayLike) -> Array:
    """How steeply the equilibrium moisture rises with humidity: MC percent per percent RH (central
    difference).
    """
    rh = np.clip(_checked(rh_percent, phrase("relative humidity"), 0.0, 100.0, "%"), 0.5, 99.5)
    rise = equilibrium_moisture(temperature_c, rh + 0.5) - equilibrium_moisture(temperature_c, rh - 0.5)
    return np.asarray(rise)[()]
