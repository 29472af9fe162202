"""The shape a panel would take if nothing held it: a curvature in each board and a kink at each glue line."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.wording import say

Array = NDArray[np.float64]


@dataclass(frozen=True)
class FreeCurvature:
    """Stress-free shape of a panel across its width, crown positive.

    Parameters
    ----------
    lines_mm : (n+1,) positions across the width of one edge, the glue lines and the other edge, rising, mm.
    crown_per_mm : (n,) curvature of each board's surface, 1/mm; positive where the centre is higher than
        the edges seen from the show face.
    kinks_rad : (n−1,) turn at each glue line, rad; positive where it adds to a crown. Narrow boards turn
        back a little at their glue lines, so against a crown these are negative.
    bow_per_mm : (n,) or empty: curvature of each board along its grain, 1/mm, crown positive.
    twist_per_mm : twist of the whole panel, rad per mm of length; positive where the corner at
        (+along, +across) rises.

    Raises
    ------
    InputError : lengths that do not fit each other, lines that do not rise, or a value that is not finite.
    """

    lines_mm: tuple[float, ...]
    crown_per_mm: tuple[float, ...]
    kinks_rad: tuple[float, ...] = ()
    bow_per_mm: tuple[float, ...] = ()
    twist_per_mm: float = 0.0

    def __post_init__(self) -> None:
        for name in ("lines_mm", "crown_per_mm", "kinks_rad", "bow_per_mm"):
            values = tuple(float(value) for value in getattr(self, name))
            object.__setattr__(self, name, values)
            if not np.all(np.isfinite(values)):
                raise InputError(
                    say("{name} holds a value that is not finite", name=name), where=say("free curvature")
                )
        boards = len(self.lines_mm) - 1
        if boards < 1 or np.any(np.diff(self.lines_mm) <= 0):
            raise InputError(
                say("lines_mm {lines_mm} do not rise", lines_mm=self.lines_mm),
                where=say("free curvature"),
                allowed=say("two or more positions across the width, each greater than the one before"),
            )
        if not self.kinks_rad:
            object.__setattr__(self, "kinks_rad", (0.0,) * (boards - 1))
        if not self.bow_per_mm:
            object.__setattr__(self, "bow_per_mm", (0.0,) * boards)
        for name, wanted in (("crown_per_mm", boards), ("kinks_rad", boards - 1), ("bow_per_mm", boards)):
            if len(getattr(self, name)) != wanted:
                raise InputError(
                    say(
                        "{count} values in {name} for {boards} boards",
                        count=len(getattr(self, name)),
                        name=name,
                        boards=boards,
                    ),
                    where=say("free curvature"),
                    allowed=f"{wanted}",
                )
        if not np.isfinite(self.twist_per_mm):
            raise InputError(say("twist_per_mm is not finite"), where=say("free curvature"))

    @classmethod
    def even(cls, width_mm: float, crown_per_mm: float) -> FreeCurvature:
        """One curvature over the whole width, as a single wide board or a moisture gradient gives."""
        return cls((-width_mm / 2, width_mm / 2), (crown_per_mm,))

    @classmethod
    def from_profile(cls, profile_mm: ArrayLike, lines_mm: ArrayLike, pieces: int = 4) -> FreeCurvature:
        """Curvatures and kinks of a profile that was worked out elsewhere.

        Parameters
        ----------
        profile_mm : (N, 2) position across the width and height of the middle surface, mm, rising positions.
        lines_mm : (n+1,) edges and glue lines, mm.
        pieces : stretches to divide each board into, for boards near the pith, whose curvature is uneven;
            at least three samples must lie in each.

        Returns
        -------
        FreeCurvature : a parabola through the ends of each stretch (least squares between) and the turn between
        neighbours.
        """
        across, height = np.asarray(profile_mm, dtype=float).T
        given = np.asarray(lines_mm, dtype=float)
        if pieces < 1:
            raise InputError(
                say("{pieces} pieces", pieces=pieces), where=say("profile"), allowed=say("1 or more")
            )
        shares = np.arange(len(given) * pieces - pieces + 1) / pieces
        lines = np.interp(shares, np.arange(len(given)), given)
        crown, start_slope, end_slope = [], [], []
        for left, right in pairwise(lines.tolist()):
            inside = (across >= left - 1e-9) & (across <= right + 1e-9)
            if np.count_nonzero(inside) < 3:
                raise InputError(
                    say(
                        "{count} samples between {left:g} and {right:g} mm",
                        count=np.count_nonzero(inside),
                        left=left,
                        right=right,
                    ),
                    where=say("profile"),
                    allowed=say("3 or more in each of {pieces} stretches of a board", pieces=pieces),
                    todo=say("sample the profile more finely, or ask for fewer pieces"),
                )
            ends = np.interp([left, right], across, height)
            chord = (ends[1] - ends[0]) / (right - left)
            x = across[inside]
            bulge = (x - left) * (right - x) / 2
            curve = float(bulge @ (height[inside] - ends[0] - chord * (x - left)) / (bulge @ bulge))
            crown.append(curve)
            start_slope.append(chord + curve * (right - left) / 2)
            end_slope.append(chord - curve * (right - left) / 2)
        kinks = [before - after for before, after in zip(end_slope[:-1], start_slope[1:])]
        return cls(tuple(lines), tuple(crown), tuple(kinks))

    def height(self, across_mm: ArrayLike) -> Array:
        """Height of the free middle surface above the chord between the two edges, mm (bow and twist apart).

        Parameters
        ----------
        across_mm : any shape, positions across the width, mm; beyond the edges the surface runs on straight.
        """
        lines = np.array(self.lines_mm)
        widths = np.diff(lines)
        crown = np.array(self.crown_per_mm)
        kinks = np.array((0.0, *self.kinks_rad))
        turn = np.concatenate([[0.0], np.cumsum(crown * widths)[:-1]]) + np.cumsum(kinks)
        slope = -turn  # at the start of each board, the first one level
        start = np.concatenate([[0.0], np.cumsum(slope * widths - crown * widths**2 / 2)])
        x = np.asarray(across_mm, dtype=float)
        board = np.clip(np.searchsorted(lines, x, side="right") - 1, 0, len(crown) - 1)
        step = np.clip(x, lines[0], lines[-1]) - lines[board]
        height = start[board] + slope[board] * step - crown[board] * step**2 / 2
        # before the first edge the level start runs on
        height = height + np.where(x > lines[-1], (x - lines[-1]) * (slope[-1] - crown[-1] * widths[-1]), 0.0)
        chord = start[-1] * (x - lines[0]) / (lines[-1] - lines[0])
        result: Array = height - chord
        return result
