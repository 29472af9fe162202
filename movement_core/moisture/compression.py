"""Compression set: wood that is kept from swelling is crushed, and stays narrower ever after.

No law here is to be trusted: past about 0.5 to 1 % of compressive strain across the grain fibres begin to
crush (common practice in the literature on panel paintings and furniture, no single source). What lies
beyond is given as an upper bound: creep and a frame that gives take their share.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.wording import phrase

Array = NDArray[np.float64]

CRUSHING_STRAIN = (0.005, 0.01)  # begins at, certain at; recalled


@dataclass(frozen=True, eq=False)
class CompressionSet:
    """Strain kept from a swollen board, and what of it stays.

    Attributes
    ----------
    restrained_strain : (…) compressive strain while held, ≥ 0 (the swelling that was not let out).
    set_least, set_most : (…) upper bounds of the lasting strain if crushing begins late, and if early.
    """

    restrained_strain: Array
    set_least: Array
    set_most: Array


def compression_set(coefficient: ArrayLike, mc_rise: ArrayLike, let_out: ArrayLike = 0.0) -> CompressionSet:
    """Set of wood that wants to swell by coefficient × rise and may not.

    Parameters
    ----------
    coefficient : strain per 1 % MC across the grain. mc_rise : highest moisture minus that when fixed,
        percent; a fall gives no compression. let_out : share 0–1 of the swelling that slack or a yielding
        frame lets out.
    """
    slope = within(coefficient, phrase("coefficient"), 0.0, 0.02, phrase("per 1 % MC"))
    rise = within(mc_rise, phrase("rise of moisture"), -30.0, 30.0, "%")
    share = within(let_out, phrase("share let out"), 0.0, 1.0, "")
    held = np.maximum(slope * rise * (1 - share), 0.0)
    begins, certain = CRUSHING_STRAIN
    return CompressionSet(held, np.maximum(held - certain, 0.0), np.maximum(held - begins, 0.0))


def narrower_after_mm(width_mm: ArrayLike, compressed: CompressionSet) -> tuple[Array, Array]:
    """(least, most) mm by which a board that was this wide comes back narrower: upper bounds."""
    width = within(width_mm, phrase("width"), 1e-3, 1e5, "mm")
    return np.asarray(width * compressed.set_least)[()], np.asarray(width * compressed.set_most)[()]
