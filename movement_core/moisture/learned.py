"""Measure next season, enter it, and the lot's own coefficient is learned."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.air.bounds import within
from movement_core.errors import InputError
from movement_core.moisture.spread import COEFFICIENT_CV, Uncertain
from movement_core.wording import phrase, say

Array = NDArray[np.float64]

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
    prior = float(within(coefficient, phrase("coefficient"), 1e-5, 0.02, phrase("per 1 % MC")))
    cv = float(within(coefficient_cv, phrase("coefficient of variation"), 1e-3, 1.0, ""))
    size = float(within(size_mm, phrase("size"), 1.0, 1e5, "mm"))
    measured = float(within(measured_change_mm, phrase("measured change"), -size / 4, size / 4, "mm"))
    change = float(within(mc_change, phrase("change of moisture"), -30.0, 30.0, "%"))
    moisture_sd = float(within(mc_change_sd, phrase("doubt of the moisture"), 0.0, 15.0, "%"))
    caliper = float(within(caliper_sd_mm, phrase("error of the calipers"), 1e-4, 10.0, "mm"))
    low = max(prior * (1 - REACH_SD * cv), prior * 1e-2)
    candidates = np.linspace(low, prior * (1 + REACH_SD * cv), STEPS)
    variance = (candidates * size * moisture_sd) ** 2 + caliper**2
    misfit = (measured - candidates * size * change) ** 2 / variance
    log = -0.5 * (((candidates / prior - 1) / cv) ** 2 + misfit + np.log(variance))
    if misfit.min() > 16:
        raise InputError(
            say(
                "{measured:+.2f} mm for {change:+.1f} % fits no lot of this wood",
                measured=measured,
                change=change,
            ),
            where=say("learned coefficient"),
            allowed=say("a change within four standard deviations of what some lot would do"),
            todo=say("check the sign, both widths and both moistures"),
        )
    weight = np.exp(log - log.max())
    weight /= weight.sum()
    mean = float(weight @ candidates)
    return Uncertain(mean, float(np.sqrt(weight @ (candidates - mean) ** 2)))


# ---- several measurements of one lot -------------------------------------------------------------------------

OUTLIER_SD = 3.0  # a reading further than this from what any lot would do is left out, and told
TELLING = 0.1  # a lot is learned where its doubt shrinks by at least a tenth (own judgement)
WORTH_MEASURING = 0.3  # the narrowing that a maker is told to wait for (own judgement)


@dataclass(frozen=True)
class Observed:
    """One reading against what the species' figure says of it.

    Parameters
    ----------
    predicted_mm : change of the figure since it was built that the species' coefficient gives; negative shrinks.
    measured_mm : the change that was read.
    per_percent_mm : change of the figure for 1 % MC, at the species' coefficient.
    moisture_sd : doubt of the moisture on that day, percent points. tool_sd_mm : of the reading.
    start_sd_mc, start_sd_mm : doubt of moisture and size at the start, which all readings of one ``group`` share.
    group : what is measured, so that its readings share their start.

    >>> Observed(-4.0, -5.0, per_percent_mm=1.0, moisture_sd=0.5, tool_sd_mm=0.5).group
    ''
    """

    predicted_mm: float
    measured_mm: float
    per_percent_mm: float
    moisture_sd: float
    tool_sd_mm: float
    start_sd_mc: float = 0.0
    start_sd_mm: float = 0.0
    group: str = ""


@dataclass(frozen=True)
class LearnedLot:
    """A lot's coefficient as a share of its species' figure.

    Attributes
    ----------
    factor : lot ÷ species. sd : its standard deviation; likely is ± 1 sd, nearly certain ± 2 sd.
    prior_sd : what it was before. used, outliers : indices of the readings.

    >>> LearnedLot(1.1, sd=0.1, prior_sd=0.15, used=(0,), outliers=()).likely
    (1.0, 1.2000000000000002)
    """

    factor: float
    sd: float
    prior_sd: float
    used: tuple[int, ...]
    outliers: tuple[int, ...]

    @property
    def likely(self) -> tuple[float, float]:
        return self.factor - self.sd, self.factor + self.sd

    @property
    def nearly_certain(self) -> tuple[float, float]:
        return self.factor - 2 * self.sd, self.factor + 2 * self.sd

    @property
    def narrowed(self) -> float:
        """By what share the doubt shrank, 0 to 1."""
        return 1.0 - self.sd / self.prior_sd

    @property
    def tells(self) -> bool:
        return bool(self.used) and self.narrowed >= TELLING


def learn_lot(observed: Sequence[Observed], prior_sd: float = COEFFICIENT_CV) -> LearnedLot:
    """What several readings together say of a lot.

    Normal prior 1 ± ``prior_sd`` on the factor, readings linear in it with normal errors: the conjugate update
    1/sd² = 1/prior_sd² + xᵀR⁻¹x, factor = sd² (1/prior_sd² + xᵀR⁻¹y) with x the predicted and y the measured changes
    (statistics texts on linear models with known variance, from memory). R holds tool and moisture of each reading,
    and the start that readings of one group share. A doubt of moisture counts for more mm in a livelier lot: its mean
    over the prior is taken, which keeps the estimate right on average.

    Parameters
    ----------
    observed : the readings. prior_sd : how much lots differ from their species, a share (0.15 is 15 %).

    Raises
    ------
    InputError : a reading or a doubt that cannot be, with the allowed range.

    >>> lot = learn_lot([Observed(-4.0, -5.0, per_percent_mm=1.0, moisture_sd=0.5, tool_sd_mm=0.5)])
    >>> round(lot.factor, 2), round(lot.sd, 3)
    (1.1, 0.115)
    """
    prior = float(within(prior_sd, phrase("spread of lots"), 1e-4, 1.0, ""))
    for one in observed:
        for name in ("moisture_sd", "tool_sd_mm", "start_sd_mc", "start_sd_mm"):
            within(getattr(one, name), name, 0.0, 1e6, "")
        within(one.tool_sd_mm, phrase("error of the tool"), 1e-4, 1e6, "mm")
        within(one.measured_mm, phrase("measured change"), -1e5, 1e5, "mm")
    outliers = tuple(i for i, one in enumerate(observed) if _surprise(one, prior) > OUTLIER_SD)
    used = tuple(i for i in range(len(observed)) if i not in outliers)
    if not used:
        return LearnedLot(1.0, prior, prior, (), outliers)
    kept = [observed[i] for i in used]
    predicted = np.array([one.predicted_mm for one in kept])
    measured = np.array([one.measured_mm for one in kept])
    weight = np.linalg.inv(_covariance(kept, prior))
    sd = float((1 / prior**2 + predicted @ weight @ predicted) ** -0.5)
    factor = float(sd**2 * (1 / prior**2 + predicted @ weight @ measured))
    return LearnedLot(factor, sd, prior, used, outliers)


def _covariance(observed: Sequence[Observed], prior: float) -> Array:
    """(n, n) variances of readings around their mean, mm², averaged over the lots."""
    slope = np.sqrt(1 + prior**2) * np.array([one.per_percent_mm for one in observed])
    own = (slope * [one.moisture_sd for one in observed]) ** 2 + np.square(
        [one.tool_sd_mm for one in observed]
    )
    alike = np.array([[one.group == other.group for other in observed] for one in observed])
    moisture = slope * [one.start_sd_mc for one in observed]
    size = np.array([one.start_sd_mm for one in observed])
    return np.asarray(np.diag(own) + alike * (np.outer(moisture, moisture) + np.outer(size, size)))


def _surprise(one: Observed, prior: float) -> float:
    """How many standard deviations a reading lies from what lots of its species do."""
    variance = (prior * one.predicted_mm) ** 2 + float(_covariance([one], prior)[0, 0])
    return float(abs(one.measured_mm - one.predicted_mm) / np.sqrt(variance))


def change_worth_measuring(one: Observed, prior_sd: float = COEFFICIENT_CV) -> float:
    """Change of moisture since the start, percent points, at which such a reading would narrow the doubt by 30 %."""
    slope = abs(one.per_percent_mm)
    if slope < 1e-12:
        return float("inf")
    gain = (1 - WORTH_MEASURING) ** -2 - 1.0
    return float(np.sqrt(gain * _covariance([one], prior_sd)[0, 0]) / (prior_sd * slope))
