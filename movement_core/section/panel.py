"""An edge-glued panel: the free shapes of its boards chained at mid-thickness, then settled by stiffness.

A board's edge turns less than its surface, because the ring frame shears; so a panel is scalloped: curvature
within each board and a small kink back at each glue line. The chain of exact shapes (``chain``) knows no
stiffness; what neighbouring edges that do not quite fit do to each other (``settled``) is added to it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import ArrayLike

from movement_core.errors import InputError
from movement_core.section.board import Board, checked_samples
from movement_core.section.chain import Segment, chain
from movement_core.section.elastic import CrossStiffness
from movement_core.section.field import Floats, numbers
from movement_core.section.settled import Settling, why_not_settled
from movement_core.wording import phrase, say, word

MOST_THICKNESS_RATIO = 1.25  # boards of one panel: glued up rough, planed as one (own judgement)


@dataclass(frozen=True)
class PanelShape:
    """A panel after a change of moisture. (…) are the dimensions of the change, n the number of boards.

    Curvatures and kinks are positive where they make a crown (centre higher, seen from the show face); they
    are those of the free boards in the chain. Stresses are elastic, over the inner 80 % of each glue line (at
    the faces they grow without bound in theory), before creep relaxes them: upper bounds, and a measure to
    compare layouts by. None where the panel was not settled; ``note`` says why.
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
    settled_mm: Floats | None  # (…) how far settling moved the profile, at most
    glue_tension_mpa: Floats | None  # (…, n−1) greatest pull across each glue line
    glue_shear_mpa: Floats | None  # (…, n−1) greatest shear along each glue line, in the plane of the section
    note: str = ""


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

    >>> oak = find_species("white oak")
    >>> panel = Panel([Board(oak, 120, 20, (0, y)) for y in (40, -40)])
    >>> round(float(panel.shape(-3).departure_mm), 2)  # mm from flat as it dries by 3 points
    0.33
    """

    boards: tuple[Board, ...]

    def __init__(self, boards: Sequence[Board]) -> None:
        object.__setattr__(self, "boards", tuple(boards))
        object.__setattr__(self, "_settlings", {})  # solved once; no field, so that panels compare by boards
        if not self.boards:
            raise InputError(
                say("a panel without boards"), allowed=say("one board or more"), todo=say("list its boards")
            )
        for i, board in enumerate(self.boards, 1):
            if not isinstance(board, Board):
                raise InputError(
                    say("board {i} is a {name}", i=i, name=type(board).__name__),
                    allowed=say("Board"),
                    todo=say("make it a Board first"),
                )
        by_thickness = sorted(range(len(self.boards)), key=lambda i: self.boards[i].thickness_mm)
        thin, thick = by_thickness[0], by_thickness[-1]
        ratio = self.boards[thick].thickness_mm / self.boards[thin].thickness_mm
        if ratio > MOST_THICKNESS_RATIO:
            raise InputError(
                say(
                    "{thickness:g} mm thick beside {name} of {thickness2:g} mm (ratio {ratio:.2f})",
                    thickness=self.boards[thick].thickness_mm,
                    name=self._name(thin),
                    thickness2=self.boards[thin].thickness_mm,
                    ratio=ratio,
                ),
                where=self._name(thick),
                allowed=say(
                    "thicknesses within a ratio of {most_thickness_ratio:g} in one panel",
                    most_thickness_ratio=MOST_THICKNESS_RATIO,
                ),
                todo=say("plane the boards to one thickness, or study them apart"),
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
        self,
        mc_change: ArrayLike,
        samples: int | None = None,
        *,
        each_board: bool = False,
        stiffness: CrossStiffness | Sequence[CrossStiffness] | None = None,
        settle: bool = True,
    ) -> PanelShape:
        """Everything about the panel after a change: profile, width, curvatures, kinks, steps, glue lines.

        Parameters
        ----------
        mc_change, samples : as in ``profile``.
        each_board : the last dimension of ``mc_change`` (…, n) is the boards, each with its own change.
        stiffness : across the grain, one for all boards or one a board, instead of the boards' own.
        settle : False leaves the plain chain of free shapes.
        """
        n = len(self.boards)
        change = numbers(mc_change, phrase("moisture change"), where=phrase("panel"))
        if each_board and (change.ndim == 0 or change.shape[-1] != n):
            raise InputError(
                say("moisture changes of shape {shape} for {n} boards", shape=change.shape, n=n), where=say("panel"),
                allowed=f"(…, {n})", todo=say("give one change a board"),
            )  # fmt: skip
        if not each_board:
            change = np.broadcast_to(change[..., None], (*change.shape, n))
        steps = self._steps(samples)
        profile, links = chain(self.boards, change, steps)
        moved = tension = shear = None
        note = why_not_settled(self.boards) if settle else phrase("not asked for")
        if not note:
            settling = self._settling(stiffness)
            shift = settling.shift(change, steps)
            profile = profile + shift
            moved = np.abs(shift[..., 1]).max(axis=-1)
            tension, shear = settling.glue_stress(change)
        height = profile[..., 1]
        far = np.abs(height).argmax(axis=-1)[..., None]
        width = profile[..., -1, 0] - profile[..., 0, 0]
        surface, kinks, back, show = self._turns(links)
        return PanelShape(
            profile=profile,
            width_mm=width,
            width_change_mm=width - self.width_mm,
            out_of_flat_mm=np.ptp(height, axis=-1),
            departure_mm=np.take_along_axis(height, far, axis=-1)[..., 0],
            surface_curvature_per_mm=surface,
            kink_rad=kinks,
            average_curvature_per_mm=-np.sum([np.angle(k.turn) for k in links], axis=0) / self.width_mm,
            step_show_mm=show,
            step_back_mm=back,
            glue_lines=tuple(int(i) for i in np.cumsum(steps)[:-1]),
            settled_mm=moved,
            glue_tension_mpa=tension,
            glue_shear_mpa=shear,
            note=say("not settled: {note}", note=word(note)) if note else "",
        )

    def _settling(self, stiffness: CrossStiffness | Sequence[CrossStiffness] | None) -> Settling:
        """The elastic answer per point of MC of each board, solved once."""
        n = len(self.boards)
        if stiffness is None:
            each = tuple(board.stiffness for board in self.boards)
        else:
            each = (stiffness,) * n if isinstance(stiffness, CrossStiffness) else tuple(stiffness)
        if len(each) != n:
            raise InputError(
                say("{count} stiffnesses for {n} boards", count=len(each), n=n),
                where=say("panel"),
                allowed=say("1 or {n}", n=n),
                todo=say("give one a board"),
            )
        known: dict[tuple[CrossStiffness, ...], Settling] = self.__dict__["_settlings"]
        if each not in known:
            known[each] = Settling(self.boards, each)
        return known[each]

    def _turns(self, links: list[Segment]) -> tuple[Floats, Floats, Floats, Floats]:
        """Surface curvatures (…, n), then kinks, back steps and show steps (…, n−1)."""
        widths = np.array([board.width_mm for board in self.boards])
        turns = np.stack([np.angle(k.turn) + k.slope_right - k.slope_left for k in links], axis=-1)
        pairs = list(pairwise(links))
        if not pairs:
            none = np.zeros((*turns.shape[:-1], 0))
            return -turns / widths, none, none, none
        kinks = np.stack([a.slope_right - b.slope_left for a, b in pairs], axis=-1)
        steps = np.stack([b.height_left - a.height_right for a, b in pairs], axis=-1)
        return -turns / widths, kinks, -steps[..., 0, :], steps[..., 1, :]

    def _steps(self, samples: int | None) -> list[int]:
        """How many steps each board gets of ``samples`` − 1: by width, at least one."""
        n = len(self.boards)
        if samples is None:
            return [40] * n
        total = checked_samples(samples, phrase("panel"), least=n + 1) - 1
        wish = np.array([board.width_mm for board in self.boards]) / self.width_mm * total
        steps = np.maximum(1, np.floor(wish + 1e-9)).astype(int)
        while steps.sum() < total:
            steps[np.argmax(wish - steps)] += 1
        while steps.sum() > total:
            steps[np.argmax(np.where(steps > 1, steps - wish, -np.inf))] -= 1
        return [int(step) for step in steps]
