"""What a panel is held by, as plain frozen data: the plate, its support, its anchors and its beams.

Frame of a panel: *along* is the grain, *across* the width, both from the panel's centre, mm; heights are
measured up toward the show face from the plane of the support. Seen from the show face, along points to the
right and across points up.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, fields

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.errors import InputError
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.polygon import distance_to_edge, inside_polygon
from movement_core.wording import say

Point = tuple[float, float]


def _check(
    thing: object, where: str, positive: tuple[str, ...] = (), not_negative: tuple[str, ...] = ()
) -> None:
    for field in fields(thing):  # type: ignore[arg-type]
        value = getattr(thing, field.name)
        if isinstance(value, float | int) and not isinstance(value, bool):
            low_ok = value > 0 if field.name in positive else value >= 0 or field.name not in not_negative
            if not (np.isfinite(value) and low_ok):
                allowed = say("a finite number")
                allowed += say(" above 0") if field.name in positive else ""
                allowed += say(", 0 or more") if field.name in not_negative else ""
                raise InputError(
                    say("{name} is {value!r}", name=field.name, value=value), where=where, allowed=allowed
                )


@dataclass(frozen=True)
class Elastic:
    """Elastic constants of a board or panel in its own plane, MPa.

    ``poisson`` is the contraction across the grain per unit stretch along it, under pull along the grain;
    ``basis`` says what the figures rest on.
    """

    e_along_mpa: float
    e_across_mpa: float
    shear_mpa: float
    poisson: float = 0.4
    basis: str = ""

    def __post_init__(self) -> None:
        _check(self, say("elastic constants"), ("e_along_mpa", "e_across_mpa", "shear_mpa"))
        if self.poisson**2 * self.e_across_mpa >= self.e_along_mpa:
            raise InputError(
                say("poisson {poisson:g} gives no stable material", poisson=self.poisson),
                where=say("elastic constants"),
                allowed=say(
                    "below {most:.2f} for these moduli", most=math.sqrt(self.e_along_mpa / self.e_across_mpa)
                ),
            )


@dataclass(frozen=True)
class Plate:
    """A solid panel. Lengths mm, density kg/m³ (0 leaves its weight out).

    ``outline_mm`` is the panel's edge as a polygon of (along, across) points from its centre, for round and
    shaped tops; empty: the whole rectangle.
    """

    length_mm: float
    width_mm: float
    thickness_mm: float
    elastic: Elastic
    density_kg_m3: float = 0.0
    outline_mm: tuple[Point, ...] = ()

    def __post_init__(self) -> None:
        _check(self, "plate", ("length_mm", "width_mm", "thickness_mm"), ("density_kg_m3",))
        if self.outline_mm:
            outline = np.asarray(self.outline_mm, dtype=float)
            half = np.array([self.length_mm, self.width_mm]) / 2 + 1e-6
            if outline.ndim != 2 or outline.shape[1:] != (2,) or len(outline) < 3 or self.area_mm2 <= 0:
                raise InputError(
                    say("no polygon"),
                    where=say("plate outline"),
                    allowed=say("3 or more (along, across) points"),
                )
            if not np.all(np.abs(outline) <= half):
                raise InputError(
                    say("the outline leaves the panel's length and width"),
                    where=say("plate outline"),
                    allowed=say(
                        "along ±{length:g} mm, across ±{width:g} mm",
                        length=self.length_mm / 2,
                        width=self.width_mm / 2,
                    ),
                )

    @property
    def area_mm2(self) -> float:
        """Area of the face, mm²."""
        if not self.outline_mm:
            return self.length_mm * self.width_mm
        s, x = np.asarray(self.outline_mm, dtype=float).T
        return float(abs(np.sum(s * np.roll(x, -1) - x * np.roll(s, -1))) / 2)

    def holds(self, points_mm: ArrayLike) -> NDArray[np.bool_]:
        """(N,) which points (N, 2) lie on the panel, its edge included."""
        points = np.asarray(points_mm, dtype=float).reshape(-1, 2)
        half = np.array([self.length_mm, self.width_mm]) / 2 + 1e-6
        inside: NDArray[np.bool_] = np.all(np.abs(points) <= half, axis=1)
        if self.outline_mm:
            outline = np.asarray(self.outline_mm, dtype=float)
            inside &= inside_polygon(points, outline) | (distance_to_edge(points, outline) < 1e-6)
        return inside

    @property
    def bending(self) -> tuple[float, float, float, float]:
        """D_along, D_across, D_coupling, D_twist of thin orthotropic plates, N·mm.

        Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, ch. 11 (recalled).
        """
        e = self.elastic
        poisson_back = e.poisson * e.e_across_mpa / e.e_along_mpa
        cube = self.thickness_mm**3 / 12
        along = e.e_along_mpa * cube / (1 - e.poisson * poisson_back)
        across = e.e_across_mpa * cube / (1 - e.poisson * poisson_back)
        return along, across, poisson_back * along, e.shear_mpa * cube

    @property
    def weight_n(self) -> float:
        """Weight, N."""
        return self.density_kg_m3 * 1e-9 * 9.80665 * self.area_mm2 * self.thickness_mm


@dataclass(frozen=True)
class Bearing:
    """One thing the panel rests on: it pushes, it cannot pull.

    Parameters
    ----------
    outline_mm : 2 points for a line, 3 or more for the outline of a flat bearing, (along, across) mm.
    height_mm : its top above the plane of the support.
    stiffness_n_mm2 : push per mm of edge and mm of indentation. The default is our own estimate: the edge of
        a 20 mm rail pressed across its grain (some 600 MPa over a depth of some 60 mm).
    name : what it is called in reports.
    """

    outline_mm: tuple[Point, ...]
    height_mm: float = 0.0
    stiffness_n_mm2: float = 200.0
    name: str = ""

    def __post_init__(self) -> None:
        _check(self, f"bearing {self.name!r}", ("stiffness_n_mm2",))
        outline = np.asarray(self.outline_mm, dtype=float)
        if (
            outline.ndim != 2
            or outline.shape[1:] != (2,)
            or len(outline) < 2
            or not np.isfinite(outline).all()
        ):
            raise InputError(
                say("outline of {shape} values", shape=outline.shape),
                where=say("bearing {name!r}", name=self.name),
                allowed=say("2 or more finite (along, across) points"),
            )


@dataclass(frozen=True)
class Anchor:
    """One fastener as a stiff point that holds the panel down to its frame.

    Parameters
    ----------
    along_mm, across_mm : place.
    stiffness_n_mm : pull per mm of lift; 2000 is our own estimate for a screwed wooden button or clip.
    slack_mm : lift before it takes hold.
    seat_mm : height it holds the panel's underside at; the frame's own height there, so 0 on a level frame.
    limit_n : pull at which it gives way and pulls no harder, N; None: never.
    both_ways : True where it also pushes (a screw through a spacer); the frame pushes otherwise.
    name : what it is called in reports.
    """

    along_mm: float
    across_mm: float
    stiffness_n_mm: float = 2000.0
    slack_mm: float = 0.0
    seat_mm: float = 0.0
    limit_n: float | None = None
    both_ways: bool = False
    name: str = ""

    def __post_init__(self) -> None:
        _check(self, f"anchor {self.name!r}", ("stiffness_n_mm", "limit_n"), ("slack_mm",))


@dataclass(frozen=True)
class Beam:
    """A batten, cleat, channel, sliding dovetail or breadboard end that stiffens the panel along a line.

    Parameters
    ----------
    start_mm, end_mm : its two ends on the panel, (along, across).
    bending_stiffness_n_mm2 : E·I about its bending axis, N·mm².
    screws_mm : distances from the start of the screws that hold the panel to it; empty: it is joined all
        along, as a tongue or a sliding dovetail is.
    joint_stiffness_n_mm : of one screw, N/mm.
    bearing_n_mm2 : push and, where joined all along, pull per mm of length and mm of movement, N/mm².
    play_mm : free up-and-down movement of a tongue or dovetail in its groove, or of a screw.
    crown_per_mm : the beam's own free curvature, crown positive, 1/mm.
    """

    start_mm: Point
    end_mm: Point
    bending_stiffness_n_mm2: float
    screws_mm: tuple[float, ...] = ()
    joint_stiffness_n_mm: float = 2000.0
    bearing_n_mm2: float = 200.0
    play_mm: float = 0.0
    crown_per_mm: float = 0.0
    name: str = ""

    def __post_init__(self) -> None:
        _check(
            self,
            f"beam {self.name!r}",
            ("bending_stiffness_n_mm2", "joint_stiffness_n_mm", "bearing_n_mm2"),
            ("play_mm",),
        )
        if self.length_mm <= 0:
            raise InputError(say("its two ends are one point"), where=say("beam {name!r}", name=self.name))
        if any(not 0 <= s <= self.length_mm for s in self.screws_mm):
            raise InputError(
                say("screws at {screws_mm}", screws_mm=self.screws_mm),
                where=say("beam {name!r}", name=self.name),
                allowed=say("0 to {length:g} mm from its start", length=self.length_mm),
            )

    @property
    def length_mm(self) -> float:
        return math.dist(self.start_mm, self.end_mm)


@dataclass(frozen=True)
class LoadCase:
    """The panel's free shape at one moment.

    ``free_far`` is the free curvature at the far end (+along) where the two ends differ; between them the
    shape is interpolated.
    """

    name: str
    free: FreeCurvature
    free_far: FreeCurvature | None = None
