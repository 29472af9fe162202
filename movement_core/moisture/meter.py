"""From a meter's reading, or a stick's width, to moisture content, with how far to trust it.

Corrections: a resistance (pin) meter reads about 0.5 % low per 5.6 °C that the wood is colder than the
meter's calibration, and is within 1 % of the truth on average (published columns, read). A pad meter feels
density: its reading is for the density it was set to (common practice: in proportion). The species
correction is the meter's own table, so it is asked for; without it the spread is widened.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from movement_core.air.bounds import within
from movement_core.air.emc import equilibrium_moisture
from movement_core.errors import InputError
from movement_core.moisture.transport import SPECIFIC_GRAVITY_RANGE
from movement_core.wording import phrase, say

CALIBRATION_TEMPERATURE_C = 21.1  # 70 °F, what most meters are calibrated at (common practice)
POINTS_PER_DEGREE = 0.5 / 5.6  # percent MC per °C below calibration (read)
METER_SD = 1.0  # percent MC: "within 1 % of the truth" at best (read)
NO_SPECIES_SD = 2.0  # percent MC: wrong species setting 2 % and more (read)
AIR_SD = 1.0  # percent MC: hygrometers within 5 % RH, and wood that lags behind its air (own)
NO_TEMPERATURE_SD = 0.5  # percent MC: shop between 15 and 27 °C (own)
TRUSTED_RANGE = (6.0, 25.0)  # percent; below, pins hardly conduct; above, they drift (common practice)
# A profile like a parabola equals its mean at 1/2 − 1/(2√3) = 0.211 of the thickness below the face
# (derived); the trade drives pins to a fifth or a quarter.
MEAN_DEPTH_SHARE = 0.5 - 0.5 / np.sqrt(3.0)


@dataclass(frozen=True)
class MoistureReading:
    """A moisture content as found, with its spread.

    Attributes
    ----------
    mc : percent; sd : standard deviation, percent points.
    steps : the corrections made, in words; notes : doubts.
    """

    mc: float
    sd: float
    steps: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()

    @property
    def likely(self) -> tuple[float, float]:
        """Range that holds the truth about two times in three."""
        return max(self.mc - self.sd, 0.0), self.mc + self.sd

    @property
    def nearly_certain(self) -> tuple[float, float]:
        """Range that holds the truth about nineteen times in twenty."""
        return max(self.mc - 2 * self.sd, 0.0), self.mc + 2 * self.sd


def meter_moisture(
    readings: float | Sequence[float],
    *,
    kind: str = "pin",
    wood_temperature_c: float | None = None,
    calibration_temperature_c: float = CALIBRATION_TEMPERATURE_C,
    species_correction: float | None = None,
    set_gravity: float | None = None,
    specific_gravity: float | None = None,
) -> MoistureReading:
    """Moisture from one reading, or several in like boards, of a meter.

    Parameters
    ----------
    readings : percent as displayed; several average out chance, not the meter's own error.
    kind : "pin" (resistance) or "pad" (capacitance).
    wood_temperature_c : of the wood; pins only. A meter that corrects by itself: give its calibration
        temperature.
    species_correction : points to add, from the meter's table; 0 if the meter is set to the species.
    set_gravity, specific_gravity : pad only: density the meter is set to, and the wood's.

    Raises
    ------
    InputError : readings that no meter shows, an unknown kind.
    """
    values = np.atleast_1d(within(readings, phrase("reading"), 0.0, 120.0, "%"))
    if values.size == 0:
        raise InputError(say("no reading"), where=say("meter"), allowed=say("at least one"))
    if kind not in ("pin", "pad"):
        raise InputError(
            say("a meter of kind {kind!r}", kind=kind), where=say("meter"), allowed=say("'pin' or 'pad'")
        )
    mc, variance = float(values.mean()), METER_SD**2
    one = say("1 reading, {mean:.1f} %", mean=mc)
    several = say("{count} readings, mean {mean:.1f} %", count=values.size, mean=mc)
    steps, notes = [several if values.size > 1 else one], []
    if values.size > 1:
        variance += float(values.var(ddof=1)) / values.size
    if kind == "pin":
        if wood_temperature_c is None:
            variance += NO_TEMPERATURE_SD**2
            notes.append(say("the wood's temperature is missing: pins read low in the cold"))
        else:
            wood = float(within(wood_temperature_c, phrase("wood temperature"), -30.0, 80.0, "°C"))
            points = (calibration_temperature_c - wood) * POINTS_PER_DEGREE
            mc += points
            steps.append(say("{points:+.1f} for {wood:.0f} °C", points=points, wood=wood))
    elif (set_gravity is None) != (specific_gravity is None):
        raise InputError(
            say("only one of the two densities is given"),
            where=say("pad meter"),
            allowed=say("both the density it is set to and the wood's, or neither"),
        )
    elif set_gravity is not None and specific_gravity is not None:
        gravities = within(
            [set_gravity, specific_gravity], phrase("specific gravity"), *SPECIFIC_GRAVITY_RANGE, ""
        )
        mc *= float(gravities[0] / gravities[1])
        steps.append(say("× {factor:.2f} for density", factor=gravities[0] / gravities[1]))
        species_correction = species_correction or 0.0
    if species_correction is None:
        variance += NO_SPECIES_SD**2
        notes.append(say("the species correction is missing: a wrong setting costs 2 % and more"))
    else:
        mc += float(within(species_correction, phrase("species correction"), -10.0, 10.0, phrase("points")))
        steps.append(say("{points:+.1f} for the species", points=species_correction))
    if not TRUSTED_RANGE[0] <= mc <= TRUSTED_RANGE[1]:
        low, high = TRUSTED_RANGE
        notes.append(
            say(
                "meters are trusted from {low:.0f} to {high:.0f} %: weigh an oven-dried sample instead",
                low=low,
                high=high,
            )
        )
    if mc < 0:
        raise InputError(
            say("the corrections make {mc:.1f} % of it", mc=mc),
            where=say("meter"),
            allowed=say("a moisture of 0 % or more"),
            todo=say("check the temperature and the species correction"),
        )
    return MoistureReading(mc, float(np.sqrt(variance)), tuple(steps), tuple(notes))


def air_moisture(temperature_c: float, rh_percent: float) -> MoistureReading:
    """Moisture of wood that has lain in this air until it changed no more.

    Parameters
    ----------
    temperature_c : of the air, −20 to 60 °C. rh_percent : relative humidity, 0 to 95.

    Raises
    ------
    InputError : air that no shop has.

    Source: the equilibrium of ``equilibrium_moisture``; the spread is our own judgement (``AIR_SD``).

    >>> round(air_moisture(20, 50).mc, 1)
    9.3
    """
    warmth = float(within(temperature_c, phrase("temperature of the air"), -20.0, 60.0, "°C"))
    damp = float(within(rh_percent, phrase("relative humidity"), 0.0, 95.0, "%"))
    mc = float(equilibrium_moisture(warmth, damp))
    step = say("{warmth:.0f} °C and {damp:.0f} % relative humidity", warmth=warmth, damp=damp)
    note = say("only wood that has lain in this air for weeks is at its moisture; thick stock takes months")
    return MoistureReading(mc, AIR_SD, (step,), (note,))


def mean_of_core_and_skin(
    core_mc: ArrayLike, skin_mc: ArrayLike
) -> np.ndarray[tuple[int, ...], np.dtype[np.float64]]:
    """Mean moisture, percent, of a board with this core and this skin, for a parabola between them
    (derived).
    """
    core, skin = (
        within(value, name, 0.0, 120.0, "%") for value, name in ((core_mc, "core"), (skin_mc, "skin"))
    )
    return np.asarray(core - (core - skin) / 3)[()]


def parabolic_profile(
    core_mc: float, skin_mc: float, height_share: ArrayLike
) -> np.ndarray[tuple[int, ...], np.dtype[np.float64]]:
    """Moisture, percent, at a height (0 back face … 1 show face) for a parabola from skin to core to skin."""
    across = 2 * within(height_share, phrase("height"), 0.0, 1.0, phrase("of the thickness")) - 1
    return np.asarray(core_mc - (core_mc - skin_mc) * across**2)[()]


def pin_depth_mm(thickness_mm: float) -> float:
    """Depth in mm at which pins read the mean of a board that dries evenly from both faces."""
    return float(within(thickness_mm, phrase("thickness"), 1.0, 1000.0, "mm")) * float(MEAN_DEPTH_SHARE)


def stick_moisture(
    width_mm: float,
    width_then_mm: float,
    mc_then: float,
    coefficient: float,
    *,
    caliper_sd_mm: float = 0.05,
    coefficient_cv: float = 0.15,
) -> MoistureReading:
    """Moisture of a stick used as a gauge: how wide it is now, and how wide it was at a known moisture.

    Linear (Wood Handbook FPL-GTR-190 Eq. 13-2, p. 13-15). The spread holds the calipers (both measurements)
    and the coefficient of this one board, not the moisture it was first measured at.
    """
    width = float(within(width_mm, phrase("width now"), 1.0, 5000.0, "mm"))
    then = float(within(width_then_mm, phrase("width then"), 1.0, 5000.0, "mm"))
    base = float(within(mc_then, phrase("moisture then"), 0.0, 30.0, "%"))
    slope = float(within(coefficient, phrase("coefficient"), 1e-5, 0.02, phrase("per 1 % MC")))
    change = (width / then - 1) / slope
    mc = base + change
    if not 0 <= mc <= 30:
        raise InputError(
            say("the stick says {mc:.1f} %", mc=mc),
            where=say("stick gauge"),
            allowed=say("0 to 30 %"),
            todo=say("check both widths, in mm, and that the coefficient is that across this stick"),
        )
    calipers = np.sqrt(2) * caliper_sd_mm / then / slope
    note = say("shorter than 100 mm across: the calipers rule its spread") if then < 100 else ""
    return MoistureReading(
        mc,
        float(np.hypot(calipers, change * coefficient_cv)),
        (f"{width - then:+.2f} mm is {change:+.1f} %",),
        (note,) if note else (),
    )
