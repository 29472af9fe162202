"""The whole piece through the year as arrays, for a picture that moves: where every part goes, how much it
swells, how it turns in its panel and how it bends.

A picture may magnify the movement by a factor; positions are then *as drawn + factor × movement*. Boards and panels
are shown as they would lie if nothing held them flat.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np

from movement_core.air.daily import DAYS, daily_moisture, days_from_months
from movement_core.errors import HeartsideError, InputError
from movement_core.moisture.consequence import gradient_curvature
from movement_core.piece.contact.swelling import swelling_of
from movement_core.piece.panels import GluedPanel, board_as_laid
from movement_core.piece.solve import SolvedPart, SolvedPiece
from movement_core.piece.whole import WholePiece
from movement_core.section.board import Board, holds_pith
from movement_core.section.panel import Panel
from movement_core.sheet.bending import ArcBend, Bend, Floats, RingBend, TwistBend
from movement_core.wood import strain_at_ring_angle
from movement_core.wording import say

LEAST_LEFT = 0.15  # of a size: a picture that magnified further would turn parts inside out
STEPS_A_BOARD = 4  # a panel's shape is asked for at so many places of each board
FLAT_PITH = (0.0, -1e5)  # of a board without a known cup: rings so wide that it lies flat
STILL_MM = 1e-3  # bends that never move anything further are left out


@dataclass(frozen=True, eq=False)
class PartMotion:
    """One part for the picture; its frame's rows are width, thickness, grain.

    ``bends`` : out of shape, empty where it stays straight. ``known`` : whether its movement is known at all.
    ``untold`` : why a cup is not shown that there may well be; "" otherwise.
    """

    key: str
    name: str
    axes: Floats
    centre: Floats
    size_mm: Floats
    bends: tuple[Bend, ...]
    known: bool
    untold: str = ""


@dataclass(frozen=True, eq=False)
class PieceMotion:
    """All parts of a piece for the picture. P parts, 366 columns: 365 days and today.

    Attributes
    ----------
    strain : (P, 366, 3) along the rows of each part's frame. shift : (P, 366, 3) mm of its middle, global.
    turn : (P, 366, 3) small rotation as a vector, rad, global.
    temperature_c, rh_percent, air_mc : (365,) the air, and the moisture of wood in step with it.
    mc : (365,) mean of the piece's parts by volume; None where no part holds moisture.
    driest_day, wettest_day : of the piece, 0 = 1 January. today : the day of the year that is today.
    """

    parts: tuple[PartMotion, ...]
    strain: Floats
    shift: Floats
    turn: Floats
    temperature_c: Floats
    rh_percent: Floats
    air_mc: Floats
    mc: Floats | None
    driest_day: int
    wettest_day: int
    today: int

    @property
    def most_factor(self) -> float:
        """The largest factor that leaves every part some of its size on every day."""
        least = float(self.strain.min()) if self.strain.size else 0.0
        return (1 - LEAST_LEFT) / -least if least < 0 else float("inf")

    def matrices(self, day: int, factor: float = 1.0) -> Floats:
        """(P, 4, 4) for row vectors (x, y, z, 1) of each part's frame → the global frame, on a day.

        Raises InputError where the factor is more than ``most_factor`` or not above 0.
        """
        if not 0 < factor <= self.most_factor:
            raise InputError(
                say("factor {factor:g}", factor=factor),
                where=say("picture"),
                allowed=say("0 to {most_factor:.3g}", most_factor=self.most_factor),
            )
        axes = np.array([part.axes for part in self.parts]).reshape(-1, 3, 3)
        centre = np.array([part.centre for part in self.parts]).reshape(-1, 3)
        own = axes * (1 + factor * self.strain[:, day, :])[:, :, None]  # rows: where the own axes go
        own = own + factor * np.cross(self.turn[:, None, day, :], own)
        out = np.zeros((len(self.parts), 4, 4))
        out[:, :3, :3], out[:, 3, 3] = own, 1.0
        out[:, 3, :3] = centre + factor * self.shift[:, day, :]
        return out

    def bend_factors(self, index: int, day: int, factor: float = 1.0) -> tuple[Floats, Floats]:
        """(number of bends,) what to multiply each field of a part with, and (3,) what to divide the sum by.

        The division undoes that the matrix stretches the displacement along with the part.
        """
        amounts = np.array([bend.amount[day] for bend in self.parts[index].bends])
        return factor * amounts, 1 + factor * self.strain[index, day, :]


def piece_motion(whole: WholePiece) -> PieceMotion:
    """The motion of every part whose faces are known, in the order of ``whole.parts``."""
    panels = in_panels(whole)
    parts, strains = [], np.zeros((len(whole.parts), DAYS + 1, 3))
    shift = np.zeros_like(strains)
    turn = np.zeros_like(strains)
    for index, solved in enumerate(whole.parts):
        swelling = swelling_of(solved)
        if swelling is not None:
            strains[index] = np.stack([span.middle for span in swelling.strains], axis=-1)
        bends, untold = _bends(solved)
        frame = solved.part.frame
        parts.append(
            PartMotion(
                solved.part.key, solved.part.name, frame.axes, frame.centre, frame.size_mm, bends,
                swelling is not None, untold,
            )
        )  # fmt: skip
        if index in panels:
            rise, tilt, axes = panels[index]
            shift[index] = rise[:, None] * axes[1]
            turn[index] = tilt[:, None] * axes[2]
    if whole.positions is not None:
        shift += whole.positions.shift_mm
    solved_piece = whole.solved
    mc = _mean_moisture(whole)
    course = daily_moisture(solved_piece.air) if mc is None else mc
    temperature, humidity = _air(solved_piece)
    return PieceMotion(
        tuple(parts), strains, shift, turn, temperature, humidity, daily_moisture(solved_piece.air), mc,
        int(np.argmin(course)), int(np.argmax(course)), solved_piece.today.timetuple().tm_yday - 1,
    )  # fmt: skip


def _air(piece: SolvedPiece) -> tuple[Floats, Floats]:
    days = [
        values if len(values) == DAYS else days_from_months(values)
        for values in (np.asarray(piece.air.temperature_c), np.asarray(piece.air.rh_percent))
    ]
    return np.asarray(days[0]), np.asarray(days[1])


def _mean_moisture(whole: WholePiece) -> Floats | None:
    known = [(one.mc_days, one.part.volume_mm3) for one in whole.parts if one.mc_days is not None]
    if not known:
        return None
    return np.average([days for days, _ in known], axis=0, weights=[volume for _, volume in known])


def since_flat(solved: SolvedPart) -> Floats | None:
    """(366,) points of moisture since the part was last made flat; None where that is not known."""
    flattened = solved.part.flattened_mc.value
    if flattened is None or solved.mc_days is None or solved.today_mc is None:
        return None
    return np.append(solved.mc_days, solved.today_mc) - flattened


def _bends(solved: SolvedPart) -> tuple[tuple[Bend, ...], str]:
    """The bends of a part, and why a cup is left out."""
    part = solved.part
    species, rings, change = part.species.value, part.rings.value, since_flat(solved)
    if species is None or species.kind != "wood" or not part.frame.grain.known:
        return (), ""
    if rings is None or rings.pith_mm is None:
        return (), say("where its rings lie is not said: shown without its cup")
    if change is None:
        return (), say("the moisture when it was made flat is not said: shown without its cup")
    frame = part.frame
    width, thickness, length = frame.width_mm, frame.thickness_mm, frame.length_mm
    inside = holds_pith(width, thickness, rings.pith_mm)
    found: list[Bend] = []
    try:
        board = Board(species, width, thickness, rings.pith_mm, part.name, boxed_heart=inside)
        found.append(RingBend(board, change))
    except HeartsideError:
        return (), say("its shape could not be worked out: shown without its cup")
    if solved.face_difference_days is not None:
        angle = rings.middle_angle_degrees
        coefficient = strain_at_ring_angle(species.radial_coefficient, species.tangential_coefficient, angle)
        difference = np.append(solved.face_difference_days, solved.face_difference_days[solved.day])
        found.append(ArcBend(width, gradient_curvature(coefficient, difference, thickness)))
    twist = _twist_rate(solved)
    if twist is not None:
        found.append(TwistBend(length, np.radians(twist * change)))
    return tuple(bend for bend in found if _reach_mm(bend, frame.size_mm) > STILL_MM), ""


def _reach_mm(bend: Bend, size: Floats) -> float:
    """How far a bend ever moves a point of the part's edges and middle."""
    corners = (
        np.array([(x, y, z) for x in (-0.5, 0.0, 0.5) for y in (-0.5, 0.0, 0.5) for z in (-0.5, 0.5)]) * size
    )
    return float(np.abs(bend.field(corners)).max() * np.abs(bend.amount).max())


def _twist_rate(solved: SolvedPart) -> float | None:
    """Degrees of twist per point of moisture since the part was flat: the middle of what it may be."""
    twist, change = solved.twist, since_flat(solved)
    if twist is None or twist.degrees is None or change is None:
        return None
    states = change[[solved.driest_day, solved.wettest_day]]
    degrees = (twist.degrees[0] + twist.degrees[1]) / 2
    return float(states @ degrees / (states @ states)) if states @ states > 0 else None


def in_panels(whole: WholePiece) -> dict[int, tuple[Floats, Floats, Floats]]:
    """Index of a board → (366,) rise and tilt that its glued panel gives it, and the panel's axes.

    From the rings by the panel's shape, in which boards whose cup is not known lie flat, and from uneven faces as one
    arc over the whole panel.
    """
    found: dict[int, tuple[Floats, Floats, Floats]] = {}
    for panel in whole.panels:
        lines = board_lines(panel)
        if lines is None:
            continue
        run = lines[:, :, 1] - lines[:, :, 0]
        rise, tilt = lines[:, :, :, 1].mean(axis=2), np.arctan2(run[:, :, 1], run[:, :, 0])
        widths = np.array([board.part.frame.width_mm for board in panel.boards])
        middles = np.cumsum(widths) - widths / 2 - widths.sum() / 2
        arc = np.average(
            [_arc(board) * (-1 if over else 1) for board, over in zip(panel.boards, panel.over)],
            axis=0,
            weights=widths,
        )[:, None]
        rise = rise + arc * (widths.sum() ** 2 / 8 - middles**2 / 2 - widths**2 / 8)
        tilt = tilt - arc * middles
        for place, board in enumerate(panel.boards):
            index = whole.index.get(board.part.key)
            if index is not None:
                found[index] = rise[:, place], tilt[:, place], panel.axes
    return found


def _arc(solved: SolvedPart) -> Floats:
    """(366,) curvature of a board from uneven faces, 1/mm, crown toward its own show face above 0."""
    arcs = [bend.amount for bend in _bends(solved)[0] if isinstance(bend, ArcBend)]
    return arcs[0] if arcs else np.zeros(DAYS + 1)


def board_lines(panel: GluedPanel) -> Floats | None:
    """(366, boards, 2, 2) both ends (x, y) of each board's middle line in its panel's shape on every day, mm, from
    the chord between the panel's edges; None where nothing is known of it.
    """
    boards, changes = [], []
    for solved in panel.boards:
        rings, species, change = solved.part.rings.value, solved.part.species.value, since_flat(solved)
        if species is None:
            return None
        known = rings is not None and rings.pith_mm is not None and change is not None
        if known:
            boards.append(board_as_laid(solved, panel.axes))
        else:
            frame = solved.part.frame
            boards.append(Board(species, frame.width_mm, frame.thickness_mm, FLAT_PITH, solved.part.name))
        changes.append(change if known and change is not None else np.zeros(DAYS + 1))
    samples = STEPS_A_BOARD * len(boards) + 1
    try:
        shape = Panel(boards).shape(np.stack(changes, axis=-1), samples, each_board=True)
    except HeartsideError:
        return None
    joints = [0, *shape.glue_lines, samples - 1]
    return np.stack([shape.profile[:, [one, other]] for one, other in pairwise(joints)], axis=1)
