"""One board: its wood, its section, where the centre of its tree was, and the shape it takes."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal, Protocol

import numpy as np
from numpy.typing import ArrayLike

from movement_core.errors import InputError
from movement_core.section.boxed_heart import solve_boxed_heart
from movement_core.section.elastic import TYPICAL, CrossStiffness
from movement_core.section.field import Floats, free_shape, from_chord, numbers
from movement_core.section.rings import Rings
from movement_core.wording import phrase, say, word

Surface = Literal["middle", "show", "back"]
HEIGHTS = {"middle": 0.0, "show": 0.5, "back": -0.5}  # above mid-thickness, in thicknesses
MOST_SAMPLES = 1_000_000
# What a board may measure: anything beyond is a slip of the unit (own judgement).
WIDTH_MM = (0.1, 5000.0)
THICKNESS_MM = (0.1, 1000.0)


class MovesAcrossGrain(Protocol):
    """Anything with the two movement coefficients, strain per percent of moisture content."""

    @property
    def radial_coefficient(self) -> float: ...
    @property
    def tangential_coefficient(self) -> float: ...


def checked_size(
    value: float, what: str, where: str, allowed: tuple[float, float], unit: str = " mm"
) -> float:
    """A finite number within ``allowed``, or an InputError that names the board, the value and the range."""
    number = float(numbers(value, what, where=where))
    if not allowed[0] <= number <= allowed[1]:
        raise InputError(
            f"{word(what)} {number:g}{unit}",
            where=word(where),
            allowed=say(
                "{allowed:g} to {allowed2:g}{unit}", allowed=allowed[0], allowed2=allowed[1], unit=unit
            ),
            todo=say("measure it again; sizes are in mm"),
        )
    return number


def checked_pith(value: ArrayLike, where: str) -> tuple[float, float]:
    """A finite (x, y) in mm."""
    pith = numbers(value, phrase("pith"), where=where, pairs=True)
    if pith.shape != (2,):
        raise InputError(
            say("pith has shape {shape}", shape=pith.shape),
            where=word(where),
            allowed=say("one (x, y) in mm"),
            todo=say("give two numbers"),
        )
    return float(pith[0]), float(pith[1])


def holds_pith(width_mm: float, thickness_mm: float, pith_mm: tuple[float, float]) -> bool:
    """Whether the pith lies strictly within the section."""
    return abs(pith_mm[0]) < 0.5 * width_mm and abs(pith_mm[1]) < 0.5 * thickness_mm


@dataclass(frozen=True)
class Board:
    """A board, seen from its near end: x across the width, y through the thickness toward the show face.

    Parameters
    ----------
    species : anything with ``radial_coefficient`` and ``tangential_coefficient`` (strain per 1 % MC).
    width_mm, thickness_mm : the section as it is before the change, mm.
    pith_mm : (x, y) of the tree's centre from the section's centre, mm; y > 0 is heart side up.
    name : what the board is called in messages.
    mc_offset : points of MC by which this board's change differs from the one asked for, e.g. −2 for a board
        that was glued up 2 % wetter than the others and ends at the same moisture.
    boxed_heart : the section holds its pith and is to be solved although it cannot stay free of stress.
    length_mm : along the grain, mm; only the twist needs it.
    far_pith_mm : pith at the far end, same frame, when the rings run out along the board.
    grain_slope : slope of spiral grain at the section's centre (rise ÷ length); None is *not known*.
    stiffness : across the grain; only panels that settle and boxed hearts ask for it (``elastic.CONIFER``
        for conifers).

    Raises
    ------
    InputError : non-finite or out-of-range size, or pith within the section without ``boxed_heart``; the
        message names the board, the value and the allowed range.

    >>> oak = find_species("white oak")
    >>> board = Board(oak, width_mm=200, thickness_mm=25, pith_mm=(0, 60))
    >>> round(float(board.profile(-4)[:, 1].max()), 2)  # mm that the middle rises as it dries by 4 points
    0.76
    """

    species: MovesAcrossGrain
    width_mm: float
    thickness_mm: float
    pith_mm: tuple[float, float]
    name: str = ""
    mc_offset: float = 0.0
    boxed_heart: bool = False
    length_mm: float | None = None
    far_pith_mm: tuple[float, float] | None = None
    grain_slope: float | None = None
    stiffness: CrossStiffness = TYPICAL

    def __post_init__(self) -> None:
        where = self.where
        for what in ("radial_coefficient", "tangential_coefficient"):
            value = getattr(self.species, what, None)
            if value is None or not np.isfinite(value) or not 0.0 <= value < 0.02:
                raise InputError(
                    say("{what} is {value!r}", what=what, value=value),
                    where=word(where),
                    allowed=say("0 to 0.02 per 1 % MC"),
                    todo=say("name a solid wood, or give its own coefficients"),
                )
        object.__setattr__(self, "width_mm", checked_size(self.width_mm, phrase("width"), where, WIDTH_MM))
        object.__setattr__(
            self, "thickness_mm", checked_size(self.thickness_mm, phrase("thickness"), where, THICKNESS_MM)
        )
        object.__setattr__(self, "mc_offset", float(numbers(self.mc_offset, "mc_offset", where=where)))
        object.__setattr__(self, "pith_mm", checked_pith(self.pith_mm, where))
        piths = [self.pith_mm]
        if self.far_pith_mm is not None:
            object.__setattr__(self, "far_pith_mm", checked_pith(self.far_pith_mm, where))
            piths.append(self.far_pith_mm)
        if self.length_mm is not None:
            checked_size(self.length_mm, phrase("length"), where, (1.0, 20000.0))
        for pith in piths:
            if holds_pith(self.width_mm, self.thickness_mm, pith) and not self.boxed_heart:
                raise InputError(
                    say(
                        "pith ({pith:g}, {pith2:g}) mm lies inside the section; such a board is never free of "
                        "stress and will check",
                        pith=pith[0],
                        pith2=pith[1],
                    ),
                    where=word(where),
                    allowed=say(
                        "|x| ≥ {width:g} mm or |y| ≥ {thickness:g} mm",
                        width=self.width_mm / 2,
                        thickness=self.thickness_mm / 2,
                    ),
                    todo=say(
                        "correct the pith, or say boxed_heart=True to have it solved by finite elements"
                    ),
                )

    @classmethod
    def from_rings(
        cls,
        species: MovesAcrossGrain,
        width_mm: float,
        thickness_mm: float,
        rings: Rings,
        name: str = "",
        *,
        boxed_heart: bool = False,
        mc_offset: float = 0.0,
        length_mm: float | None = None,
    ) -> Board:
        """A board from any way of saying its rings that fixes a pith; slope and far end come along.

        Raises
        ------
        InputError : the rings leave the radius unknown, so there is no one shape; ``section_movement`` gives
            what can be said.
        """
        far = rings.far_end
        for end, spot in ((rings, phrase("rings")), (far, phrase("rings of the far end"))):
            if end is not None and end.pith_mm is None:
                raise InputError(
                    say("{spot}: the ring radius is unknown, so the cup is too", spot=word(spot)),
                    where=say("board {name!r}", name=name) if name else say("board"),
                    allowed=say("a pith, or a ring angle with heart side and radius"),
                    todo=say("measure the radius of one ring on the end, or pick three points along it"),
                )
        assert rings.pith_mm is not None  # checked above
        return cls(
            species, width_mm, thickness_mm, rings.pith_mm, name, mc_offset, boxed_heart, length_mm,
            None if far is None else far.pith_mm, rings.slope,
        )  # fmt: skip

    @property
    def where(self) -> str:
        """How messages call this board."""
        return say("board {name!r}", name=self.name) if self.name else say("board")

    @property
    def holds_pith(self) -> bool:
        """The section holds the centre of its tree: it will check, and no free shape is exact."""
        return holds_pith(self.width_mm, self.thickness_mm, self.pith_mm)

    def strains(self, mc_change: ArrayLike) -> tuple[Floats, Floats]:
        """Radial and tangential strain for changes of MC (…), percent points, offset included."""
        try:
            change = np.asarray(mc_change, dtype=np.float64) + self.mc_offset
            usable = bool((np.abs(change) <= 100.0).all())
        except (TypeError, ValueError):
            usable = False
        if not usable:  # what costs is asked only now
            change = numbers(mc_change, phrase("moisture change"), where=self.where) + self.mc_offset
            raise InputError(
                say("moisture change from {min:g} to {max:g} points", min=change.min(), max=change.max()),
                where=self.where,
                allowed=say("−100 to 100 percent points of MC"),
                todo=say("give the change in points of MC (−4 is four percent drier)"),
            )
        return self.species.radial_coefficient * change, self.species.tangential_coefficient * change

    def moved(self, points_mm: ArrayLike, mc_change: ArrayLike) -> Floats:
        """Where points (N, 2) of the section go: (…, N, 2) for changes (…); exact if the pith is outside."""
        radial, tangential = self.strains(mc_change)
        if self.holds_pith:
            solved = solve_boxed_heart(self.width_mm, self.thickness_mm, self.pith_mm, self.stiffness)
            return solved.moved(points_mm, radial, tangential)
        return free_shape(points_mm, self.pith_mm, radial, tangential)

    def profile(self, mc_change: ArrayLike, samples: int = 41, surface: Surface = "middle") -> Floats:
        """A surface after a change of moisture, measured from the chord between its ends.

        Parameters
        ----------
        mc_change : (…) percent points of MC; negative is drying.
        samples : number of points N, evenly spaced across the width before the change.
        surface : "middle" of the thickness, "show" face or "back" face.

        Returns
        -------
        (…, N, 2) mm: x along the chord from its middle, y above it (positive: crown).
        """
        if type(samples) is not int or not 2 <= samples <= MOST_SAMPLES or surface not in HEIGHTS:
            samples = checked_samples(samples, self.where)
            surface_height(surface, self.where)
        line = _unit_line(samples, HEIGHTS[surface]) * (self.width_mm, self.thickness_mm)
        return from_chord(self.moved(line, mc_change))

    def turned(self, *, over: bool = False, end_for_end: bool = False) -> Board:
        """The same board laid with its other face up and/or its far end near."""

        def lay(pith: tuple[float, float]) -> tuple[float, float]:
            x, y = pith
            x, y = (-x, -y) if over else (x, y)
            return (-x, y) if end_for_end else (x, y)

        near, far = self.pith_mm, self.far_pith_mm
        if end_for_end and far is not None:
            near, far = far, near
        return replace(self, pith_mm=lay(near), far_pith_mm=None if far is None else lay(far))


@lru_cache(maxsize=32)
def _unit_line(samples: int, height: float) -> Floats:
    """(samples, 2) evenly spaced along x from −½ to ½, y at a height in thicknesses above the middle."""
    line = np.full((samples, 2), height)
    line[:, 0] = np.linspace(-0.5, 0.5, samples)
    line.flags.writeable = False
    return line


def checked_samples(samples: int, where: str, least: int = 2) -> int:
    """A number of samples that can show the shape."""
    if int(samples) != samples or not least <= samples <= MOST_SAMPLES:
        raise InputError(
            say("{samples!r} samples", samples=samples),
            where=word(where),
            allowed=say("{least} to 1000000", least=least),
            todo=say("ask for more points"),
        )
    return int(samples)


def surface_height(surface: str, where: str) -> float:
    """Height of a named surface above mid-thickness, in thicknesses."""
    if surface not in HEIGHTS:
        raise InputError(
            say("surface {surface!r}", surface=surface),
            where=word(where),
            allowed=", ".join(HEIGHTS),
            todo=say("name one of these"),
        )
    return HEIGHTS[surface]
