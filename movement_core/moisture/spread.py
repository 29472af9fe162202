"""How sure a figure is: causes of uncertainty carried to it, and the share of each.

Any function can be asked (seeded sampling); the change of size of a board has a closed form. Two ranges are
shown: *likely* holds the truth about two times in three, *nearly certain* about nineteen times in twenty. A
share is the part of the variance that goes away when that one cause is known; what is left over acts only
together.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.errors import InputError
from movement_core.wording import phrase, say

Array = NDArray[np.float64]

# A board differs from its species (Wood Handbook FPL-GTR-190, ch. 4, recalled: shrinkage 15 %).
COEFFICIENT_CV = 0.15
LIKELY = (0.15865525393145707, 0.8413447460685429)  # of the normal law: ± 1 standard deviation
NEARLY_CERTAIN = (0.02275013194817921, 0.9772498680518208)  # ± 2 standard deviations
DEFAULT_SAMPLES = 4096
DEFAULT_SEED = 20


@dataclass(frozen=True)
class Uncertain:
    """A quantity known only so far.

    Attributes
    ----------
    value : the best guess. sd : standard deviation, in its own unit.
    law : "normal"; "uniform" (the ends are value ± √3 sd); "lognormal" for positive quantities known within a
        factor (sd is then that of the natural logarithm).
    """

    value: float
    sd: float
    law: str = "normal"

    def __post_init__(self) -> None:
        within(self.value, phrase("value"), -1e12, 1e12, "")
        within(self.sd, phrase("standard deviation"), 0.0, 1e12, "")
        if self.law not in ("normal", "uniform", "lognormal"):
            raise InputError(
                say("law {law!r}", law=self.law),
                where=say("uncertainty"),
                allowed=say("'normal', 'uniform' or 'lognormal'"),
            )
        if self.law == "lognormal" and self.value <= 0:
            raise InputError(
                say("{value:g} cannot vary by a factor", value=self.value),
                where=say("uncertainty"),
                allowed=say("a positive value"),
            )

    def from_standard(self, z: Array) -> Array:
        """Values for standard normal deviates."""
        if self.law == "normal":
            return np.asarray(self.value + self.sd * z)
        if self.law == "lognormal":
            return np.asarray(self.value * np.exp(self.sd * z))
        return np.asarray(self.value + np.sqrt(3) * self.sd * (2 * normal_share(z) - 1))


def between(low: float, high: float) -> Uncertain:
    """Anything between two values, equally likely."""
    if not low <= high:
        raise InputError(
            say("{low:g} to {high:g}", low=low, high=high),
            where=say("range"),
            allowed=say("the lower value first"),
        )
    return Uncertain((low + high) / 2, float((high - low) / np.sqrt(12)), "uniform")


def within_factor(value: float, factor: float) -> Uncertain:
    """Known within a factor either way, nearly certainly (the factor is two standard deviations)."""
    if not factor >= 1:
        raise InputError(
            say("factor {factor:g}", factor=factor), where=say("range"), allowed=say("1 or more")
        )
    return Uncertain(value, float(np.log(factor)) / 2, "lognormal")


@dataclass(frozen=True, eq=False)
class Spread:
    """A figure with its ranges.

    Attributes
    ----------
    value : with every cause at its best guess. mean, sd : of the spread.
    likely, nearly_certain : (low, high).
    shares : cause → part of the variance that it alone makes, 0 to 1; together at most about 1.
    method : how it was found.

    All figures are floats, or arrays where the function gave arrays.
    """

    value: Array
    mean: Array
    sd: Array
    likely: tuple[Array, Array]
    nearly_certain: tuple[Array, Array]
    shares: dict[str, Array] = field(default_factory=dict)
    method: str = ""

    @property
    def ruling_cause(self) -> str | None:
        """The cause with the largest share: what to measure next. None where nothing varies."""
        totals = {name: float(np.nanmean(share)) for name, share in self.shares.items()}
        return max(totals, key=lambda name: totals[name]) if any(totals.values()) else None


def normal_share(z: ArrayLike) -> Array:
    """Share of the normal law below z, to 1e-7 (Abramowitz and Stegun 7.1.26, recalled)."""
    x = np.asarray(z, dtype=np.float64) / np.sqrt(2)
    t = 1 / (1 + 0.3275911 * np.abs(x))
    poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))))
    return np.asarray(0.5 * (1 + np.sign(x) * (1 - poly * np.exp(-(x**2)))))


def _standard_normal(count: int, generator: np.random.Generator) -> Array:
    """(count,) normal deviates, one from each of ``count`` equal slices of the law: far less noise than
    chance.
    """
    places = (np.arange(count) + generator.random(count)) / count
    edge = np.linspace(-6, 6, 24001)
    return generator.permutation(np.interp(places, normal_share(edge), edge))


def spread(
    function: Callable[..., ArrayLike],
    inputs: Mapping[str, Uncertain | float],
    *,
    samples: int = DEFAULT_SAMPLES,
    seed: int = DEFAULT_SEED,
    vectorised: bool = True,
) -> Spread:
    """Carry uncertain inputs through any function.

    Parameters
    ----------
    function : called with the inputs by name. Vectorised: each input is (n,) and the answer (n,) or (n, …);
        otherwise it is called once a sample with floats (give fewer samples).
    inputs : name → ``Uncertain``, or a plain number for what is known.
    samples : 64 or more. seed : the same seed gives the same answer.

    Returns
    -------
    ``Spread``. Error of its sd: about 1 % at 4096 samples; of its shares some hundredths.

    Shares are first-order sensitivity indices by the pick-and-freeze scheme (Saltelli et al. 2010, recalled).
    """
    if samples < 64:
        raise InputError(
            say("{samples} samples", samples=samples), where=say("spread"), allowed=say("64 or more")
        )
    causes = {name: given for name, given in inputs.items() if isinstance(given, Uncertain) and given.sd > 0}
    best = {
        name: given.value if isinstance(given, Uncertain) else float(given) for name, given in inputs.items()
    }
    generator = np.random.default_rng(seed)

    def evaluate(values: Mapping[str, Array]) -> Array:
        count = next(iter(values.values())).size if values else 1
        full = {name: values.get(name, np.full(count, known)) for name, known in best.items()}
        if vectorised:
            result = np.asarray(function(**full), dtype=np.float64)
            if result.shape[:1] != (count,):
                result = np.broadcast_to(result, (count, *result.shape))
        else:
            rows = [{name: float(column[i]) for name, column in full.items()} for i in range(count)]
            result = np.array([function(**row) for row in rows], dtype=np.float64)
        if not np.isfinite(result).all():
            raise InputError(
                say("the function gave a value that is no number"),
                where=say("spread"),
                allowed=say("finite answers over the whole range of the causes"),
                todo=say("narrow the causes, or bound them inside the function"),
            )
        return result

    value = evaluate({name: np.array([known]) for name, known in best.items()})[0]
    if not causes:
        zero = np.zeros_like(value)
        return Spread(
            value[()], value[()], zero[()], (value[()],) * 2, (value[()],) * 2, {}, "nothing varies"
        )
    first, second = (
        {name: cause.from_standard(_standard_normal(samples, generator)) for name, cause in causes.items()}
        for _ in range(2)
    )
    answer, other = evaluate(first), evaluate(second)
    both = np.concatenate([answer, other])
    variance = both.var(axis=0)
    shares = {}
    for name in causes:
        mixed = evaluate(first | {name: second[name]})
        with np.errstate(invalid="ignore", divide="ignore"):
            share = (other * (mixed - answer)).mean(axis=0) / variance
        shares[name] = np.asarray(np.where(variance > 0, np.clip(share, 0.0, 1.0), 0.0))[()]
    quantiles = np.quantile(both, [NEARLY_CERTAIN[0], LIKELY[0], LIKELY[1], NEARLY_CERTAIN[1]], axis=0)
    return Spread(
        value[()],
        both.mean(axis=0)[()],
        np.sqrt(variance)[()],
        (quantiles[1][()], quantiles[2][()]),
        (quantiles[0][()], quantiles[3][()]),
        shares,
        f"{2 * samples} samples, seed {seed}",
    )


def size_change_spread(
    size_mm: float,
    radial_coefficient: float,
    tangential_coefficient: float,
    mc_change: float,
    *,
    ring_angle_deg: float = 0.0,
    mc_change_sd: float = 1.0,
    climate_sd: float = 0.0,
    ring_angle_sd_deg: float = 0.0,
    coefficient_cv: float = COEFFICIENT_CV,
) -> Spread:
    """Change of size of one board with its ranges, in closed form.

    Parameters
    ----------
    size_mm : across the grain. The coefficients : strain per 1 % MC.
    mc_change : percent points; mc_change_sd : of the moisture (meter, as-built), climate_sd : of the air's
        moisture.
    ring_angle_deg : between ring tangent and face, 0 flat-sawn to 90 quarter-sawn; ring_angle_sd_deg : its
        doubt.
    coefficient_cv : of a board against its species; both coefficients together (a lively board is lively
        both ways).

    The mean and the standard deviation are exact for normal causes that know nothing of each other; the
    ranges take the product as normal. Source: variance of a product of independent factors; E cos 2θ =
    e^(−2s²) cos 2θ.
    """
    size = float(within(size_mm, phrase("size"), 1e-3, 1e5, "mm"))
    radial = float(within(radial_coefficient, phrase("radial coefficient"), 0.0, 0.02, phrase("per 1 % MC")))
    tangential = float(
        within(tangential_coefficient, phrase("tangential coefficient"), 0.0, 0.02, phrase("per 1 % MC"))
    )
    angle = np.radians(float(within(ring_angle_deg, phrase("ring angle"), 0.0, 90.0, phrase("degrees"))))
    angle_sd = np.radians(
        float(within(ring_angle_sd_deg, phrase("doubt of the ring angle"), 0.0, 45.0, phrase("degrees")))
    )
    change = float(within(mc_change, phrase("change of moisture"), -30.0, 30.0, "%"))
    lot = float(within(coefficient_cv, phrase("coefficient of variation"), 0.0, 1.0, ""))
    moisture_sd = float(within(mc_change_sd, phrase("doubt of the moisture"), 0.0, 15.0, "%"))
    air_sd = float(within(climate_sd, phrase("doubt of the climate"), 0.0, 15.0, "%"))
    middle, half = (tangential + radial) / 2, (tangential - radial) / 2
    certain = middle + half * np.cos(2 * angle)
    mean_coefficient = middle + half * np.exp(-2 * angle_sd**2) * np.cos(2 * angle)
    # E cos 2θ and Var cos 2θ of a normal angle, written so that nothing cancels at small doubt
    lost = -np.expm1(-4 * angle_sd**2)
    angle_variance = half**2 * lost * (lost / 2 + (1 - lost) * np.sin(2 * angle) ** 2)

    # Strain = lot (mean 1) × coefficient of the angle × (change + moisture error + climate error).
    mean, total = size, 0.0
    for centre, variance in (
        (1.0, lot**2),
        (mean_coefficient, angle_variance),
        (change, moisture_sd**2 + air_sd**2),
    ):
        total = total * (centre**2 + variance) + mean**2 * variance
        mean = mean * centre
    alone = {
        "coefficient": lot**2 * (mean_coefficient * change) ** 2,
        "moisture": moisture_sd**2 * mean_coefficient**2,
        "climate": air_sd**2 * mean_coefficient**2,
        "rings": angle_variance * change**2,
    }
    shares = {name: np.asarray(size**2 * part / total)[()] for name, part in alone.items() if part > 0}
    sd = float(np.sqrt(total))
    return Spread(
        np.asarray(size * certain * change)[()],
        np.asarray(mean)[()],
        np.asarray(sd)[()],
        (np.asarray(mean - sd)[()], np.asarray(mean + sd)[()]),
        (np.asarray(mean - 2 * sd)[()], np.asarray(mean + 2 * sd)[()]),
        shares,
        "closed form",
    )
