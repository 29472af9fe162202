"""Read the vapour permeance of a finish film off its moisture-excluding effectiveness.

The test (US Forest Products Laboratory, FPL-RP-462; Wood Handbook FPL-GTR-190 Table 16-3, p. 16-4):
specimens of ponderosa pine sapwood finished all round go from air at 30 % RH to 90 % RH at 26.7 °C; the
effectiveness after 1, 7 and 14 days is the share of the bare specimen's gain that the film kept out. The
specimen's thickness is recalled, and a film's permeance is proportional to it; the rest of the fit hardly
depends on it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.emc import equilibrium_moisture
from movement_core.air.moist_air import saturation_pressure
from movement_core.errors import InputError
from movement_core.moisture.slab import uptake
from movement_core.moisture.transport import M_PER_S_IN_MM_PER_DAY, dry_density
from movement_core.wording import say

Array = NDArray[np.float64]

TEST_DAYS = (1.0, 7.0, 14.0)
TEST_TEMPERATURE_C = 26.7
TEST_RH = (30.0, 90.0)
SPECIMEN_THICKNESS_MM = 16.0  # recalled: 5/8 inch
SPECIMEN_GRAVITY = 0.40  # ponderosa pine at 12 % MC, Wood Handbook Table 5-3

# The bare specimen, fitted once to all rows of the table that were read: thickness² ÷ diffusivity in days,
# and surface ÷ inside resistance. Points from (4.6, 2) to (10, 30) fit within 0.02 of a percent point as
# well, with the same films: only how fast the bare specimen fills (some 70 % on the first day) matters.
BARE_DIFFUSION_DAYS = 7.1
BARE_BIOT = 5.0

LARGEST_RESISTANCE = 1e4  # of the half specimen's own; tells nothing from blocked in 14 days


@dataclass(frozen=True)
class FilmFit:
    """A film as read off its exclusion figures.

    Attributes
    ----------
    permeance_ng : vapour permeance, ng/(Pa s m²); ``inf`` when the test saw no effect.
    misfit_points : calculated minus published effectiveness on each test day, percent points (nan: not
        published).
    """

    permeance_ng: float
    misfit_points: tuple[float, float, float]


def exclusion_percent(film_resistance: ArrayLike) -> Array:
    """(…, 3) effectiveness in percent after 1, 7, 14 days of films of resistance (…), in l/D of the
    specimen.
    """
    time = 4 * np.array(TEST_DAYS) / BARE_DIFFUSION_DAYS
    resistance = np.asarray(film_resistance, dtype=np.float64)[..., None]
    return np.asarray(100 * (1 - uptake(time, 1 / (1 / BARE_BIOT + resistance)) / uptake(time, BARE_BIOT)))


def fit_film(effectiveness_percent: Sequence[float | None]) -> FilmFit:
    """The one permeance that comes nearest (least squares) to the effectiveness after 1, 7 and 14 days.

    Parameters
    ----------
    effectiveness_percent : three figures 0–100, ``None`` where not published; at least one.
    """
    figures = np.array([np.nan if value is None else float(value) for value in effectiveness_percent])
    known = np.isfinite(figures)
    if (
        figures.shape != (3,)
        or not known.any()
        or not ((figures[known] >= 0) & (figures[known] <= 100)).all()
    ):
        raise InputError(
            say("effectiveness {given} cannot be used", given=list(effectiveness_percent)),
            where=say("moisture-excluding effectiveness"),
            allowed=say("percentages 0 to 100 after 1, 7, 14 days; None where unknown, at least one known"),
        )

    # The misfit has one valley: sweep it coarsely, then ever more finely round the best.
    low, high = np.log(1e-3), np.log(LARGEST_RESISTANCE)
    for _ in range(5):
        sweep = np.linspace(low, high, 41)
        misfit = (exclusion_percent(np.exp(sweep)) - figures)[:, known] ** 2
        best = int(np.argmin(misfit.sum(axis=1)))
        low, high = sweep[max(best - 1, 0)], sweep[min(best + 1, sweep.size - 1)]
    resistance = 0.0 if not figures[known].any() else float(np.exp((low + high) / 2))
    errors = exclusion_percent(resistance) - figures
    # exchange of the film alone = D / (l · resistance)
    half = SPECIMEN_THICKNESS_MM / 2
    exchange = np.inf if resistance == 0 else (2 * half) ** 2 / BARE_DIFFUSION_DAYS / (half * resistance)
    rh_step = (TEST_RH[1] - TEST_RH[0]) / 100
    dry, damp = (float(equilibrium_moisture(TEST_TEMPERATURE_C, rh)) for rh in TEST_RH)
    slope = (damp - dry) / 100 / rh_step
    density, pressure = float(dry_density(SPECIMEN_GRAVITY)), float(saturation_pressure(TEST_TEMPERATURE_C))
    permeance = exchange / M_PER_S_IN_MM_PER_DAY * density * slope / pressure * 1e12
    return FilmFit(float(permeance), (float(errors[0]), float(errors[1]), float(errors[2])))
