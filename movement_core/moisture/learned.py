"""Measure next season, enter it, and the lot's own coefficient is learned."""

from __future__ import annotations

import numpy as np

from movement_core.air.bounds import within
from movement_core.errors import InputError
from movement_core.moisture.spread import COEFFICIENT_CV, Uncertain

STEPS = 2001
REACH_SD = 6.0  # how many standard deviations of the prior are searched


def learned_coefficient(
    coefficient: float,
    size_mm: float,
    measured_change_mm: float,
    mc_change: float,
    *,
    mc_change_sd: float = 0.7,
    caliper_sd_mm: float = 0.07,
    coefficient_cv: float = COEFFICIENT_CV,
) -> Uncertain:
    """What one measured change of size says of a lot's coefficient, weighed against its species' figure.

    Parameters
    ----------
    coefficient : the species' strain per 1 % MC across this board; coefficient_cv : how much lots differ
        from it.
    size_mm : of the board; measured_change_mm : later minus earlier, its error ``caliper_sd_mm``.
    mc_change : later minus earlier, percent points, its error ``mc_change_sd``.

    Returns
    -------
    ``Uncertain`` with the learned coefficient and its standard deviation. Feed it back in for the next
    measurement (its value as ``coefficient``, sd ÷ value as ``coefficient_cv``).

    Bayes' rule with normal errors, on a grid: given the coefficient, the measured change has the mean
    coefficient × size × mc_change and the variance (coefficient × size × mc_change_sd)² + caliper_sd².
    """
    prior = float(within(coefficient, "coefficient", 1e-5, 0.02, "per 1 % MC"))
    cv = float(within(coefficient_cv, "coefficient of variation", 1e-3, 1.0, ""))
    size = float(within(size_mm, "size", 1.0, 1e5, "mm"))
    measured = float(within(measured_change_mm, "measured change", -size / 4, size / 4, "mm"))
    change = float(within(mc_change, "change of moisture", -30.0, 30.0, "%"))
    moisture_sd = float(within(mc_change_sd, "doubt of the moisture", 0.0, 15.0, "%"))
    caliper = float(within(caliper_sd_mm, "error of the calipers", 1e-4, 10.0, "mm"))
    low = max(prior * (1 - REACH_SD * cv), prior * 1e-2)
    candidates = np.linspace(low, prior * (1 + REACH_SD * cv), STEPS)
    variance = (candidates * size * moisture_sd) ** 2 + caliper**2
    misfit = (measured - candidates * size * change) ** 2 / variance
    log = -0.5 * (((candidates / prior - 1) / cv) ** 2 + misfit + np.log(variance))
    if misfit.min() > 16:
        raise InputError(
            f"{measured:+.2f} mm for {change:+.1f} % fits no lot of this wood",
            where="learned coefficient",
            allowed="a change within four standard deviations of what some lot would do",
            todo="check the sign, both widths and both moistures",
        )
    weight = np.exp(log - log.max())
    weight /= weight.sum()
    mean = float(weight @ candidates)
    return Uncertain(mean, float(np.sqrt(weight @ (candidates - mean) ** 2)))
