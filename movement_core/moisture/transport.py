"""How fast moisture moves through wood, and across its surface into the air.

Two kinds of figure: the diffusivity of the wood across the grain, and the vapour permeance of what lies on a
face (still air, a finish, both in series). Published diffusivities differ by a factor of ten, so each
method has a name and a source, and every answer says which it used. The default, ``"cell wall"``, is the
one that knows density, temperature and moisture; its range runs from a third to three times.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.air.moist_air import VAPOUR_GAS_CONSTANT, saturation_pressure, sorption_slope
from movement_core.errors import UnknownName
from movement_core.sources import Source
from movement_core.tables import rows
from movement_core.wording import phrase, say

Array = NDArray[np.float64]

DEFAULT_DIFFUSION = "cell wall"
DEFAULT_EMISSION = "timber model"
RANGE_FACTOR = (
    3.0  # two standard deviations (own judgement): of three sources two lie outside, at 5.7 and 1/15
)

SECONDS_PER_DAY = 86400.0
M2_PER_S_IN_MM2_PER_DAY = 1e6 * SECONDS_PER_DAY
M_PER_S_IN_MM_PER_DAY = 1e3 * SECONDS_PER_DAY
GAS_CONSTANT_CAL = 1.987  # cal/(mol K), as the diffusion formula is printed
SPECIFIC_GRAVITY_RANGE = (0.1, 1.3)  # balsa 0.16, lignum vitae 1.1
MOISTURE_RANGE = (0.0, 30.0)  # above fibre saturation free water moves too: another physics

# The emission figure was fitted to spruce; turned into a permeance it serves other densities and
# temperatures.
SPRUCE_SPECIFIC_GRAVITY = 0.42
EMISSION_TEMPERATURE_C, EMISSION_RH, EMISSION_MC = 20.0, 65.0, 12.0


@dataclass(frozen=True)
class TransportMethod:
    """One published way to a diffusivity or a surface emission, with its source."""

    name: str
    quantity: str
    form: str
    value: float
    per_mc: float
    energy: float
    units: str
    source: Source
    note: str


def transport_methods(quantity: str) -> dict[str, TransportMethod]:
    """The methods for ``"diffusivity"`` or ``"emission"``, by name."""
    found = {}
    for row in rows("moisture_transport"):
        if row["quantity"] == quantity:
            found[row["name"]] = TransportMethod(
                row["name"],
                quantity,
                row["form"],
                float(row["value"]),
                float(row["per_mc"] or 0),
                float(row["energy"] or 0),
                row["units"],
                Source(row["source"], row["locator"], row["provenance"]),
                row["note"],
            )
    return found


def transport_method(quantity: str, name: str) -> TransportMethod:
    methods = transport_methods(quantity)
    if name not in methods:
        raise UnknownName(
            say("no {quantity} method {name!r}", quantity=quantity, name=name),
            allowed=", ".join(methods),
            nearest=tuple(methods),
            where=quantity,
        )
    return methods[name]


def dry_density(specific_gravity: ArrayLike) -> Array:
    """Oven-dry mass per volume at use, kg/m³, from specific gravity on the volume at about 12 % MC."""
    return 1000.0 * within(specific_gravity, phrase("specific gravity"), *SPECIFIC_GRAVITY_RANGE, "")


def diffusivity(
    temperature_c: ArrayLike, mc: ArrayLike, specific_gravity: ArrayLike, method: str = DEFAULT_DIFFUSION
) -> Array:
    """Diffusivity of moisture across the grain, mm² per day, on the gradient of moisture content.

    Parameters
    ----------
    temperature_c : °C, −30 to 100; mc : percent, 0 to 30; specific_gravity : oven-dry mass on the volume at
        12 % MC. They broadcast.
    method : a name of ``transport_methods("diffusivity")``; only ``"cell wall"`` knows temperature and
        density.

    Source: carried by the method; all recalled or derived. Published figures differ by a factor of ten.
    """
    figures = transport_method("diffusivity", method)
    kelvin = within(temperature_c, phrase("temperature"), -30.0, 100.0, "°C") + 273.15
    moisture = within(mc, phrase("moisture content"), *MOISTURE_RANGE, "%")
    gravity = within(specific_gravity, phrase("specific gravity"), *SPECIFIC_GRAVITY_RANGE, "")
    if figures.form == "exponential":
        rate = figures.value * np.exp(figures.per_mc * moisture) * M2_PER_S_IN_MM2_PER_DAY
        return np.asarray(
            np.broadcast_to(rate, np.broadcast_shapes(kelvin.shape, rate.shape, gravity.shape))
        )[()]
    wall = figures.value * np.exp(-(figures.energy - 70.0 * moisture) / (GAS_CONSTANT_CAL * kelvin)) * 1e-4
    # Share of the volume that is lumen; the square-cell model of Siau has no meaning for wood without lumens.
    porosity = np.maximum(1.0 - gravity * (0.667 + 0.01 * moisture), 0.02)
    lumen_side = np.sqrt(porosity)
    return np.asarray(wall / ((1 - lumen_side) * (1 - porosity)) * M2_PER_S_IN_MM2_PER_DAY)[()]


def exchange(
    permeance_ng: ArrayLike, temperature_c: ArrayLike, rh_percent: ArrayLike, specific_gravity: ArrayLike
) -> Array:
    """Exchange coefficient of a face, mm per day: flux of moisture content = coefficient × (surface − EMC).

    A film passes vapour by the difference of vapour pressure; the wood counts percent of its dry mass. So the
    same film lets a dense wood change more slowly, and a cold room slows every face.

    Parameters
    ----------
    permeance_ng : vapour permeance of the face, ng/(Pa s m²); 0 = blocked. One US perm is 57.2.
    temperature_c, rh_percent : the mean air the face sees (sets saturation pressure and sorption slope).
    specific_gravity : oven-dry mass on the volume at 12 % MC.

    Source: own derivation; Δp = p_sat ΔRH and ΔM = (dM/dRH) ΔRH.
    """
    permeance = within(permeance_ng, phrase("vapour permeance"), 0.0, 1e9, "ng/(Pa s m²)") * 1e-12
    per_mc = saturation_pressure(temperature_c) / sorption_slope(temperature_c, rh_percent)
    return np.asarray(permeance * per_mc / dry_density(specific_gravity) * M_PER_S_IN_MM_PER_DAY)[()]


def still_air_permeance(method: str = DEFAULT_EMISSION) -> float:
    """Vapour permeance of a bare face in still indoor air, ng/(Pa s m²), by the named method.

    ``"timber model"`` holds all that slows a bare surface in published timber models; ``"boundary layer"``
    is the air film alone and some ten times higher.
    """
    figures = transport_method("emission", method)
    kelvin = EMISSION_TEMPERATURE_C + 273.15
    if figures.form == "film coefficient":
        return float(figures.value / (VAPOUR_GAS_CONSTANT * kelvin) * 1e12)
    speed = figures.value * np.exp(figures.per_mc * EMISSION_MC)
    slope = sorption_slope(EMISSION_TEMPERATURE_C, EMISSION_RH)
    density = dry_density(SPRUCE_SPECIFIC_GRAVITY)
    return float(speed * density * slope / saturation_pressure(EMISSION_TEMPERATURE_C) * 1e12)
