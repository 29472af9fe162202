"""Where the rings of a section are: every way a maker can say it, resolved to a pith or an unknown."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike

from movement_core.errors import InputError
from movement_core.section.field import numbers
from movement_core.wording import phrase, say, word

#: Ring angles (degrees between ring tangent and face) of the cut classes: least, nominal, most. The trade has
#: no agreed limits (flat to 30 or 45, quarter from 60 or 75: common practice); these thirds are our own. The
#: nominal is the convention of shrinkage tables: flat-sawn widths move tangentially, quarter-sawn radially.
CUTS = {"flat": (0.0, 0.0, 30.0), "rift": (30.0, 45.0, 60.0), "quarter": (60.0, 90.0, 90.0)}
HEART_SIDES = ("show", "back")
PITH_SIDES = ("left", "right")
FLATTEST_MM = 100_000.0  # a ring of more than 100 m radius is straight (own judgement)


@dataclass(frozen=True)
class Rings:
    """The rings of a section. Make one with ``at``, ``angle``, ``cut``, ``curve`` or ``through``.

    What is not known stays None: without a radius there is no single cup, without the heart side no sign.

    Parameters
    ----------
    pith_mm : (x, y) of the tree's centre in the section frame, when known.
    angle_degrees : 0 to 90 between the ring tangent at the section's centre and the face (0 flat-sawn).
    angle_range_degrees : least and most angle, when only a class is known.
    heart : the face nearer the pith, "show" or "back"; None is not known.
    pith_side : the edge nearer the pith, "left" or "right", which decides how it diamonds; None is not known.
    radius_range_mm : least and most distance pith → section centre that the maker holds possible, or None.
    slope : slope of spiral grain at the section's centre (rise ÷ length, positive climbing like a
        right-handed screw about the pith), or None when not known.
    far_end : rings at the far end of the board, section frame of the near end, when they differ.
    side_assumed : the pith was put to the right for want of knowing; its diamonding may go the other way.

    Raises
    ------
    InputError : an angle, radius or slope out of its range, or an unknown word, with what is allowed.

    >>> Rings.cut("quarter").angle_range_degrees
    (60.0, 90.0)
    >>> Rings.at(0, 60).pith_mm
    (0.0, 60.0)
    """

    pith_mm: tuple[float, float] | None = None
    angle_degrees: float | None = None
    angle_range_degrees: tuple[float, float] | None = None
    heart: str | None = None
    pith_side: str | None = None
    radius_range_mm: tuple[float, float] | None = None
    slope: float | None = None
    far_end: Rings | None = None
    side_assumed: bool = False

    def __post_init__(self) -> None:
        if (self.pith_mm is None) == (self.angle_degrees is None):
            raise InputError(
                say("rings need either a pith or a ring angle"),
                where=say("rings"),
                allowed=say("exactly one of pith_mm and angle_degrees"),
                todo=say("use Rings.at, Rings.angle, Rings.cut, Rings.curve or Rings.through"),
            )
        if self.pith_mm is not None:
            x, y = numbers(self.pith_mm, phrase("pith"), where=phrase("rings"), pairs=True)
            object.__setattr__(self, "pith_mm", (float(x), float(y)))
        if self.angle_degrees is not None:
            object.__setattr__(
                self, "angle_degrees", _within(self.angle_degrees, phrase("ring angle"), 0.0, 90.0, "°")
            )
        if self.angle_range_degrees is not None:
            low, high = (_within(v, phrase("ring angle"), 0.0, 90.0, "°") for v in self.angle_range_degrees)
            object.__setattr__(self, "angle_range_degrees", (min(low, high), max(low, high)))
        _one_of(self.heart, phrase("heart side"), HEART_SIDES)
        _one_of(self.pith_side, phrase("pith side"), PITH_SIDES)
        if self.radius_range_mm is not None:
            low, high = (
                _within(v, phrase("ring radius"), 0.1, FLATTEST_MM, " mm") for v in self.radius_range_mm
            )
            object.__setattr__(self, "radius_range_mm", (min(low, high), max(low, high)))
        if self.slope is not None:
            object.__setattr__(self, "slope", _within(self.slope, phrase("grain slope"), -1.0, 1.0, ""))

    @classmethod
    def at(cls, x_mm: float, y_mm: float) -> Rings:
        """The pith measured from the section's centre: x across, y up toward the show face, mm."""
        return cls(pith_mm=(x_mm, y_mm))

    @classmethod
    def angle(
        cls,
        degrees: float,
        *,
        heart: str | None = None,
        pith_side: str | None = None,
        radius_mm: float | None = None,
        radius_range_mm: tuple[float, float] | None = None,
    ) -> Rings:
        """The ring angle at the middle of the section; with a radius and a heart side that is a pith.

        Where the pith side is not given, the pith is put to the right: width, thickness and cup are the same
        either way, and the diamonding is reported as unsure in its direction.
        """
        rings = cls(angle_degrees=degrees, heart=heart, pith_side=pith_side, radius_range_mm=radius_range_mm)
        if radius_mm is None or (heart is None and rings.angle_degrees != 90.0):
            if radius_mm is None:
                return rings
            return rings._with_range(radius_mm)
        pith = rings.pith_at(_within(radius_mm, phrase("ring radius"), 0.1, FLATTEST_MM, " mm"))
        unsure = pith_side is None and pith[0] != 0.0
        return cls(pith_mm=pith, heart=heart, radius_range_mm=radius_range_mm, side_assumed=unsure)

    def _with_range(self, radius_mm: float) -> Rings:
        radius = _within(radius_mm, phrase("ring radius"), 0.1, FLATTEST_MM, " mm")
        low, high = self.radius_range_mm or (radius, radius)
        return replace(self, radius_range_mm=(min(low, radius), max(high, radius)))

    @classmethod
    def cut(
        cls, name: str, *, heart: str | None = None, radius_range_mm: tuple[float, float] | None = None
    ) -> Rings:
        """A class: "flat", "rift" or "quarter". Its range is every ring angle that the word allows."""
        if name not in CUTS:
            raise InputError(
                say("cut {name!r}", name=name),
                where=say("rings"),
                allowed=", ".join(CUTS),
                todo=say("name one of these, or the ring angle"),
            )
        least, nominal, most = CUTS[name]
        return cls(
            angle_degrees=nominal,
            angle_range_degrees=(least, most),
            heart=heart,
            radius_range_mm=radius_range_mm,
        )

    @classmethod
    def curve(cls, radius_mm: float, toward: ArrayLike, *, seen_at: ArrayLike = (0.0, 0.0)) -> Rings:
        """Radius of curvature of a ring seen on the end, and the direction (x, y) in which its centre lies.

        ``seen_at``: the point of the end where the ring was seen, mm; the section's centre if not given.
        """
        radius = _within(radius_mm, phrase("ring radius"), 0.1, FLATTEST_MM, " mm")
        way = numbers(toward, phrase("direction of the pith"), where=phrase("rings"), pairs=True)
        at = numbers(seen_at, phrase("point on the ring"), where=phrase("rings"), pairs=True)
        length = float(np.hypot(way[0], way[1]))
        if length == 0.0:
            raise InputError(
                say("direction of the pith (0, 0) points nowhere"), where=say("rings"), allowed=say("any other (x, y)"),
                todo=say("(0, 1) is toward the show face"),
            )  # fmt: skip
        pith = at + radius * way / length
        return cls(pith_mm=(float(pith[0]), float(pith[1])))

    @classmethod
    def through(cls, points_mm: ArrayLike, *, pick_error_mm: float = 0.5) -> Rings:
        """Three points (3, 2) picked along one ring on the end, mm, in any order.

        The circle through them gives the pith; ``pick_error_mm``, how far off a pick may be, gives the range
        of radii that the picks allow. Points in a straight line give a ring angle with the radius unknown;
        nearly so, within the pick error, a least radius too, but not the side of the heart.
        """
        points = numbers(points_mm, phrase("ring points"), where=phrase("rings"), pairs=True)
        if points.shape != (3, 2):
            raise InputError(
                say("ring points of shape {shape}", shape=points.shape),
                where=say("rings"),
                allowed="(3, 2)",
                todo=say("pick three points"),
            )
        gaps = np.linalg.norm(points - np.roll(points, 1, axis=0), axis=-1)
        if gaps.min() <= 2.0 * pick_error_mm:
            raise InputError(
                say("two ring points are only {min:g} mm apart", min=gaps.min()), where=say("rings"),
                allowed=say("more than twice the pick error of {pick_error:g} mm", pick_error=pick_error_mm),
                todo=say("pick three points well apart along one ring"),
            )  # fmt: skip
        far = int(np.argmax(gaps))  # the longest gap is the chord, the third point lies between
        start, end, middle = points[far], points[far - 1], points[far - 2]
        chord = (end - start) / gaps[far]
        normal = np.array([-chord[1], chord[0]])
        offset = middle - start
        along, sagitta = float(offset @ chord), float(offset @ normal)
        product = along * (
            gaps[far] - along
        )  # power of the point: every height h has radius of curvature from it

        def radius(height: float) -> float:
            return float(0.5 * np.hypot(gaps[far], product / height - height))

        tangent = float(np.degrees(np.arctan2(abs(chord[1]), abs(chord[0]))))
        if abs(sagitta) < 1e-9 * gaps[far] or radius(abs(sagitta)) > FLATTEST_MM:
            return cls(angle_degrees=tangent)
        unsure = 1.5 * pick_error_mm
        low = radius(abs(sagitta) + unsure)
        if abs(sagitta) <= unsure:  # it may as well bend the other way
            return cls(angle_degrees=tangent, radius_range_mm=(min(low, FLATTEST_MM), FLATTEST_MM))
        # circle through start and end at height `rise` above the chord's middle, measured along the normal
        rise = 0.5 * (sagitta - product / sagitta)
        pith = 0.5 * (start + end) + rise * normal
        high = min(radius(abs(sagitta) - unsure), FLATTEST_MM)
        shift = float(np.hypot(*pith)) - radius(
            abs(sagitta)
        )  # from the ring's radius to the section centre's
        spread = (max(0.1, low + shift), min(FLATTEST_MM, max(0.2, high + shift)))
        return cls(pith_mm=(float(pith[0]), float(pith[1])), radius_range_mm=spread)

    def with_slope(self, slope: float | None) -> Rings:
        """The same rings with the slope of spiral grain stated (rise ÷ length)."""
        return replace(self, slope=slope)

    def with_far_end(self, far_end: Rings) -> Rings:
        """The same rings with others at the far end, given in the frame of the near end."""
        return replace(self, far_end=far_end)

    def pith_at(self, radius_mm: float, angle_degrees: float | None = None) -> tuple[float, float]:
        """The pith at a distance from the section's centre, along the stated (or another) ring angle.

        An unknown heart side is taken as "show", an unknown pith side as "right"; the caller keeps the doubt.
        """
        if self.pith_mm is not None and angle_degrees is None:
            length = float(np.hypot(*self.pith_mm))
            return self.pith_mm[0] * radius_mm / length, self.pith_mm[1] * radius_mm / length
        degrees = self.angle_degrees if angle_degrees is None else angle_degrees
        turn = np.radians(0.0 if degrees is None else degrees)
        sign_y = -1.0 if self.heart == "back" else 1.0
        sign_x = -1.0 if self.pith_side == "left" else 1.0
        level = 0.0 if degrees == 90.0 else float(np.cos(turn))
        return sign_x * radius_mm * float(np.sin(turn)), sign_y * radius_mm * level

    @property
    def middle_angle_degrees(self) -> float:
        """Angle between ring tangent and face at the section's centre, 0 to 90."""
        if self.pith_mm is None:
            assert self.angle_degrees is not None  # one of the two is always there
            return self.angle_degrees
        return float(np.degrees(np.arctan2(abs(self.pith_mm[0]), abs(self.pith_mm[1]))))

    @property
    def cut_class(self) -> str:
        """The class of the ring angle at the middle, by the limits in ``CUTS``."""
        return cut_class(self.middle_angle_degrees)


def cut_class(degrees: float) -> str:
    """The word for a ring angle: flat below 30°, rift to 60°, quarter from there."""
    return "flat" if degrees < CUTS["flat"][2] else "rift" if degrees < CUTS["quarter"][0] else "quarter"


def _within(value: float, what: str, low: float, high: float, unit: str) -> float:
    number = float(numbers(value, what, where=phrase("rings")))
    if not low <= number <= high:
        raise InputError(
            f"{word(what)} {number:g}{unit}",
            where=say("rings"),
            allowed=say("{low:g} to {high:g}{unit}", low=low, high=high, unit=unit),
            todo=say("measure it again"),
        )
    return number


def _one_of(value: str | None, what: str, allowed: tuple[str, ...]) -> None:
    if value is not None and value not in allowed:
        raise InputError(
            f"{word(what)} {value!r}",
            where=say("rings"),
            allowed=", ".join(allowed),
            todo=say("name one, or leave it unknown"),
        )
