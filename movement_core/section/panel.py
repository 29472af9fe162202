"""An edge-glued panel: the free shapes of its boards, chained at mid-thickness.

Each glue line carries on the mean direction of the two edges it joins: the direction that a bending moment
would feel, 12/t³ ∫ y·edge(y) dy, so that what is left over is in balance with itself and dies out within
about a thickness. A board's edge turns less than its surface, because the ring frame shears; so a panel is
scalloped: curvature within each board and a small kink back at each glue line.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.section.board import Board, checked_samples
from movement_core.section.field import Floats, from_chord, numbers

Complex = NDArray[np.complex128]
MOST_THICKNESS_RATIO = 1.25
_HEIGHTS, _HEIGHT_WEIGHTS = np.polynomial.legendre.leggauss(8)
_SIDE_STEPS = np.array([0.0, 0.001, 0.002])  # in widths: for the slope of the surface at a board's edges
_SIDE_SLOPE = np.array([-1.5, 2.0, -0.5]) / 0.001


@dataclass(frozen=True)
class Segment:
    """A board as a link of the chain, seen from its left edge; (…) are the dimensions of the change.

    Complex numbers are x + iy, mm; a direction of 1 is an edge that stands upright.
    """

    surface: Complex  # (…, N) mid-thickness, from its left end to its right end
    turn: Complex  # (…) unit: direction of the right edge as seen from the left one
    slope_left: Floats  # (…) rad, surface over the left edge's normal, at the left edge
    slope_right: Floats  # (…) rad, surface over the right edge's normal, at the right edge
    height_left: Floats  # (…, 2) back and show corners above mid-thickness, along the left edge, mm
    height_right: Floats  # (…, 2) the same at the right edge


def segment(board: Board, mc_change: ArrayLike, samples: int) -> Segment:
    """The link a board makes, for changes of MC (…), with ``samples`` evenly spaced points."""
    w, t = board.width_mm, board.thickness_mm
    heights = np.concatenate(([-1.0], _HEIGHTS, [1.0])) * 0.5 * t
    edge = np.stack((np.full(len(heights), 0.5 * w), heights), axis=-1)
    line = np.zeros((samples, 2))
    line[:, 0] = np.linspace(-0.5 * w, 0.5 * w, samples)
    side = np.zeros((3, 2))
    side[:, 0] = 0.5 * w - w * _SIDE_STEPS
    mirror = np.array([-1.0, 1.0])
    parts = (edge * mirror, edge, side * mirror, side, line)
    moved = board.moved(np.concatenate(parts), mc_change)
    flat = moved[..., 0] + 1j * moved[..., 1]
    left, right, side_l, side_r, surface = np.split(flat, np.cumsum([len(p) for p in parts])[:-1], axis=-1)
    upright_l, upright_r = _upright(left), _upright(right)
    return Segment(
        surface=(surface - surface[..., :1]) / upright_l[..., None],
        turn=upright_r / upright_l,
        slope_left=np.angle((side_l @ _SIDE_SLOPE) / upright_l),
        slope_right=np.angle(-(side_r @ _SIDE_SLOPE) / upright_r),
        height_left=((left[..., [0, -1]] - surface[..., :1]) / upright_l[..., None]).imag,
        height_right=((right[..., [0, -1]] - surface[..., -1:]) / upright_r[..., None]).imag,
    )


def _upright(edge: Complex) -> Complex:
    """Direction (…) of an edge (…, heights) as a bending moment feels it; unit, 1 is upright."""
    across = edge[..., 1:-1] @ (_HEIGHTS * _HEIGHT_WEIGHTS)
    return np.asarray(across / np.abs(across) / 1j, dtype=np.complex128)


@dataclass(frozen=True)
class PanelShape:
    """A panel after a change of moisture. (…) are the dimensions of the change, n the number of boards.

    Curvatures and kinks are positive where they make a crown (centre higher, seen from the show face).
    """

    profile: Floats  # (…, N, 2) mm, mid-thickness from the chord between its ends, x from its middle
    width_mm: Floats  # (…) chord
    width_change_mm: Floats  # (…)
    out_of_flat_mm: Floats  # (…) highest less lowest point of the profile
    departure_mm: Floats  # (…) the greatest distance from the chord, with its sign: crown above 0
    surface_curvature_per_mm: Floats  # (…, n) mean curvature of each board's mid-surface
    kink_rad: Floats  # (…, n−1) sudden turn at each glue line; scalloped panels kink against their curvature
    average_curvature_per_mm: Floats  # (…) turn between each board's two edges, over the whole width
    step_show_mm: Floats  # (…, n−1) at the show face, right board less left board, joined at mid-thickness
    step_back_mm: Floats  # (…, n−1) how much further the right board stands out at the back face
    glue_lines: tuple[int, ...]  # indices of the glue lines among the N points


@dataclass(frozen=True)
class Panel:
    """Boards glued edge to edge, listed from left to right.

    Parameters
    ----------
    boards : one or more ``Board``; each may have its own wood, rings, width and moisture offset. Thicknesses
        may differ by a quarter at most.

    Raises
    ------
    InputError : no boards, or boards of wildly different thickness, naming the two and their ratio.
    """

    boards: tuple[Board, ...]

    def __init__(self, boards: Sequence[Board]) -> None:
        object.__setattr__(self, "boards", tuple(boards))
        if not self.boards:
            raise InputError("a panel without boards", allowed="one board or more", todo="list its boards")
        for i, board in enumerate(self.boards, 1):
            if not isinstance(board, Board):
                raise InputError(
                    f"board {i} is a {type(board).__name__}", allowed="Board", todo="make it a Board first"
                )
        by_thickness = sorted(range(len(self.boards)), key=lambda i: self.boards[i].thickness_mm)
        thin, thick = by_thickness[0], by_thickness[-1]
        ratio = self.boards[thick].thickness_mm / self.boards[thin].thickness_mm
        if ratio > MOST_THICKNESS_RATIO:
            raise InputError(
                f"{self.boards[thick].thickness_mm:g} mm thick beside {self._name(thin)} of "
                f"{self.boards[thin].thickness_mm:g} mm (ratio {ratio:.2f})",
                where=self._name(thick),
                allowed=f"thicknesses within a ratio of {MOST_THICKNESS_RATIO:g} in one panel",
                todo="plane the boards to one thickness, or study them apart",
            )

    def _name(self, index: int) -> str:
        return self.boards[index].name or f"board {index + 1}"

    @property
    def width_mm(self) -> float:
        """Width before any change, mm."""
        return float(sum(board.width_mm for board in self.boards))

    @property
    def thickness_mm(self) -> float:
        """Thickest board, mm."""
        return max(board.thickness_mm for board in self.boards)

    def profile(self, mc_change: ArrayLike, samples: int | None = None) -> Floats:
        """The panel's mid-surface after a change of moisture, measured from the chord between its ends.

        Parameters
        ----------
        mc_change : (…) percent points of MC, all boards alike apart from their own ``mc_offset``.
        samples : number of points N, shared out by width, every glue line among them; if None, 40 steps a
            board.

        Returns
        -------
        (…, N, 2) mm: x along the chord from its middle, y above it (positive: crown).
        """
        return self.shape(mc_change, samples).profile

    def shape(
        self, mc_change: ArrayLike, samples: int | None = None, *, each_board: bool = False
    ) -> PanelShape:
        """Everything about the panel after a change: profile, width, curvatures, kinks and steps.

        ``each_board``: the last dimension of ``mc_change`` (…, n) is the boards, each with its own change.
        """
        change = numbers(mc_change, "moisture change", where="panel")
        n = len(self.boards)
        if each_board and (change.ndim == 0 or change.shape[-1] != n):
            raise InputError(
                f"moisture changes of shape {change.shape} for {n} boards", where="panel",
                allowed=f"(…, {n})", todo="give one change a board",
            )  # fmt: skip
        steps = self._steps(samples)
        links = [
            segment(board, change[..., i] if each_board else change, step + 1)
            for i, (board, step) in enumerate(zip(self.boards, steps))
        ]
        place, direction = np.zeros(links[0].turn.shape, complex), np.ones((), complex)
        parts: list[Complex] = []
        for link in links:
            points = place[..., None] + direction[..., None] * link.surface
            parts.append(points if not parts else points[..., 1:])
            place, direction = points[..., -1], direction * link.turn
        line = np.concatenate(parts, axis=-1)
        profile = from_chord(np.stack((line.real, line.imag), axis=-1))
        return self._shape_of(profile, links, tuple(int(i) for i in np.cumsum(steps)[:-1]))

    def _shape_of(self, profile: Floats, links: list[Segment], glue_lines: tuple[int, ...]) -> PanelShape:
        widths = np.array([board.width_mm for board in self.boards])
        turns = np.stack([np.angle(k.turn) + k.slope_right - k.slope_left for k in links], axis=-1)
        pairs = list(pairwise(links))
        none = np.zeros((*turns.shape[:-1], 0))
        kinks = np.stack([a.slope_right - b.slope_left for a, b in pairs], axis=-1) if pairs else none
        steps = (
            np.stack([b.height_left - a.height_right for a, b in pairs], axis=-1)
            if pairs
            else np.zeros((*turns.shape[:-1], 2, 0))
        )
        height = profile[..., 1]
        far = np.abs(height).argmax(axis=-1)[..., None]
        width = profile[..., -1, 0] - profile[..., 0, 0]
        return PanelShape(
            profile=profile,
            width_mm=width,
            width_change_mm=width - self.width_mm,
            out_of_flat_mm=np.ptp(height, axis=-1),
            departure_mm=np.take_along_axis(height, far, axis=-1)[..., 0],
            surface_curvature_per_mm=-turns / widths,
            kink_rad=kinks,
            average_curvature_per_mm=-np.sum([np.angle(k.turn) for k in links], axis=0) / self.width_mm,
            step_show_mm=steps[..., 1, :],
            step_back_mm=-steps[..., 0, :],
            glue_lines=glue_lines,
        )

    def _steps(self, samples: int | None) -> list[int]:
        """How many steps each board gets of ``samples`` − 1: by width, at least one."""
        n = len(self.boards)
        if samples is None:
            return [40] * n
        total = checked_samples(samples, "panel", least=n + 1) - 1
        wish = np.array([board.width_mm for board in self.boards]) / self.width_mm * total
        steps = np.maximum(1, np.floor(wish + 1e-9)).astype(int)
        while steps.sum() < total:
            steps[np.argmax(wish - steps)] += 1
        while steps.sum() > total:
            steps[np.argmax(np.where(steps > 1, steps - wish, -np.inf))] -= 1
        return [int(step) for step in steps]
