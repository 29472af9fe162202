"""Equilibrium moisture content: what wood comes to when the air around it stays as it is.

Hailwood–Horrobin two-hydrate sorption equation as printed in the US Forest Products Laboratory's
*Wood Handbook*, FPL-GTR-190 (2010), Eq. 4-5, p. 4-3 (read); coefficients in ``data/emc_equation.csv``.
Hysteresis, kiln history and extractives move single boards by one to three points of moisture from it.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.tables import rows
from movement_core.wording import phrase, say, word

# The handbook tabulates −1.1 to 132 °C; colder is our extrapolation for sheds.
TEMPERATURE_RANGE_C = (-30.0, 100.0)
FIBRE_SATURATION_MC = 30.0


@cache
def _polynomials(unit_system: str) -> tuple[tuple[float, float, float], ...]:
    """(c0, c1, c2) of W, K, K1, K2: each coefficient is c0 + c1 T + c2 T²."""
    table = {row["param"]: row for row in rows("emc_equation") if row["unit_system"] == unit_system}
    return tuple(
        (float(table[name]["c0"]), float(table[name]["c1_T"]), float(table[name]["c2_T2"]))
        for name in ("W", "K", "K1", "K2")
    )


def _coefficients(temperature_c: NDArray[np.float64]) -> list[NDArray[np.float64]]:
    return [c0 + temperature_c * (c1 + temperature_c * c2) for c0, c1, c2 in _polynomials("metric_C")]


def equilibrium_moisture(temperature_c: ArrayLike, rh_percent: ArrayLike) -> NDArray[np.float64]:
    """Moisture content in percent that wood comes to in air of this temperature and humidity.

    Parameters
    ----------
    temperature_c : scalar or array, °C, −30 to 100.
    rh_percent : scalar or array, relative humidity in percent, 0 to 100; broadcasts with the temperature.

    Returns
    -------
    Moisture content, percent of oven-dry mass, of the broadcast shape (a 0-d value for scalars).

    Raises
    ------
    InputError : a value outside its range or not a number, with the first offending place.

    Source: Wood Handbook FPL-GTR-190 (2010) Eq. 4-5, p. 4-3 (read).

    >>> round(float(equilibrium_moisture(21.1, 50)), 1)
    9.2
    """
    temperature = np.asarray(temperature_c, dtype=np.float64)
    rh = np.asarray(rh_percent, dtype=np.float64)
    _refuse_outside(temperature, TEMPERATURE_RANGE_C, phrase("temperature"), "°C")
    _refuse_outside(rh, (0.0, 100.0), phrase("relative humidity"), "%")
    W, K, K1, K2 = _coefficients(temperature)
    kh = K * rh / 100.0
    hydrate = K1 * kh + 2 * K1 * K2 * kh**2
    return np.asarray(1800.0 / W * (kh / (1 - kh) + hydrate / (1 + K1 * kh + K1 * K2 * kh**2)))[()]


def _refuse_outside(values: NDArray[np.float64], allowed: tuple[float, float], what: str, unit: str) -> None:
    bad = ~((values >= allowed[0]) & (values <= allowed[1]))
    if bad.any():
        first = np.argwhere(np.atleast_1d(bad))[0]
        where = f"{word(what)}[{', '.join(map(str, first))}]" if values.ndim else word(what)
        value = np.atleast_1d(values)[tuple(first)]
        raise InputError(
            say("{value:g} {unit} is not a usable {what}", value=value, unit=unit, what=word(what)),
            where=where,
            allowed=say(
                "{allowed:g} to {allowed2:g} {unit}", allowed=allowed[0], allowed2=allowed[1], unit=unit
            ),
            todo=say("give RH in percent and temperature in °C (°F readings must be converted first)"),
        )
