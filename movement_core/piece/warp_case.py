"""What a maker sees and knows of a warped board, and what one cause would do to it."""

from __future__ import annotations

from dataclasses import dataclass

from movement_core.air.bounds import within
from movement_core.errors import InputError
from movement_core.moisture.consequence import crown_mm, gradient_curvature
from movement_core.moisture.events import BoardInAir
from movement_core.moisture.finish import read_faces
from movement_core.wood import Species
from movement_core.wording import phrase, say

LYING = ("free", "bench", "floor", "wall", "sun", "frame", "steel", "cleats")
HEARTS = ("show", "back", "mixed", "inside")
HELD = ("frame", "steel", "cleats")
BLOCKED = ("bench", "floor", "wall")
SUN_MC = (
    4.0  # a face in the sun under glass, some 40 °C and 20 % RH (own judgement; equilibrium moisture of that)
)
RADII = (0.5, 3.0)  # distance of the pith where it is not known, in board widths (own judgement)
METER_SD = 1.0  # of the difference of two readings of one meter, percent points (own judgement)
LIVELY = 0.15  # how much a board differs from its species
USUAL_GRAVITY = 0.6
SLOPES = (-0.04, 0.04)  # of spiral grain where it is not known: up to 1 in 25 is met often (from memory)
FLAT_CORNER_MM = (
    0.5  # a corner that stands off by less is not told from the bench's own error (own judgement)
)


@dataclass(frozen=True)
class WarpCase:
    """What the maker sees and knows. None is *not known*.

    Parameters
    ----------
    species : a wood. width_mm, thickness_mm : of the whole, mm. boards : how many it is glued of.
    cup_mm : from the chord, mm: crown above 0, hollow below.
    heart : the face that was nearer the tree's centre, one of ``HEARTS``; "inside" where the section holds it.
    pith_mm : how far that centre is from the middle of the thickness, mm.
    flat_mc : mean moisture when it was last flat, percent. now_mc : today. show_mc, back_mc : a meter near each face.
    temperature_c, rh_percent : of the air around it, °C and percent.
    finish : as in tags ("varnish 2", or "show oil 2, back bare").
    lying : one of ``LYING``, for ``days``. wet_hours, wet_side : a face that was wetted, for so many hours.
    most_mc : the dampest it ever was while held, percent.
    machined : one face was planed, or the board resawn, since it was flat.
    length_mm : along the grain, mm; without it no twist is worked out. grain_slope : slope of spiral grain (rise ÷
    length), positive climbing like a right-handed screw about the tree's centre.
    ring_turn_deg : by how much the rings lie turned at the other end against this one, degrees, whichever way.
    twist_mm : how far one corner stands off the plane of the other three, mm.

    Raises
    ------
    InputError : a value out of its range or an unknown word, naming it.

    >>> WarpCase(find_species("white oak"), width_mm=500, thickness_mm=20, cup_mm=3, now_mc=9).start
    9
    """

    species: Species
    width_mm: float
    thickness_mm: float
    cup_mm: float
    boards: int = 1
    heart: str | None = None
    pith_mm: float | None = None
    flat_mc: float | None = None
    now_mc: float | None = None
    show_mc: float | None = None
    back_mc: float | None = None
    temperature_c: float = 20.0
    rh_percent: float = 50.0
    finish: str | None = None
    lying: str = "free"
    days: float = 30.0
    wet_hours: float | None = None
    wet_side: str = "show"
    most_mc: float | None = None
    machined: bool = False
    length_mm: float | None = None
    grain_slope: float | None = None
    ring_turn_deg: float | None = None
    twist_mm: float | None = None

    def __post_init__(self) -> None:
        if self.species.kind != "wood":
            raise InputError(
                say("{name} is no solid wood", name=self.species.name),
                where=say("warp"),
                allowed=say("woods"),
            )
        within(self.width_mm, phrase("width"), 10.0, 5000.0, "mm")
        within(self.thickness_mm, phrase("thickness"), 2.0, 200.0, "mm")
        within(self.cup_mm, phrase("cup"), -self.width_mm / 4, self.width_mm / 4, "mm")
        within(self.days, phrase("days"), 0.01, 3650.0, phrase("days"))
        within(self.boards, phrase("boards"), 1, 200, "")
        if self.length_mm is not None:
            within(self.length_mm, phrase("length"), 10.0, 20000.0, "mm")
        if self.grain_slope is not None:
            within(self.grain_slope, phrase("slope of the grain"), -0.5, 0.5, "")
        if self.ring_turn_deg is not None:
            within(self.ring_turn_deg, phrase("turn of the rings"), 0.0, 180.0, phrase("degrees"))
        if self.twist_mm is not None:
            within(self.twist_mm, phrase("twist"), 0.0, self.width_mm, "mm")
        if self.heart == "inside" and self.pith_mm is not None:
            within(self.pith_mm, phrase("distance of the tree's centre"), 0.0, 0.49 * self.thickness_mm, "mm")
        if self.wet_hours is not None:
            within(self.wet_hours, phrase("hours wet"), 0.1, 8760.0, "h")
        for name in ("flat_mc", "now_mc", "show_mc", "back_mc", "most_mc"):
            if getattr(self, name) is not None:
                within(getattr(self, name), name, 0.0, 30.0, "%")
        if self.lying not in LYING:
            raise InputError(
                say("lying {lying!r}", lying=self.lying), where=say("warp"), allowed=", ".join(LYING)
            )
        if self.heart is not None and self.heart not in HEARTS:
            raise InputError(
                say("heart {heart!r}", heart=self.heart), where=say("warp"), allowed=", ".join(HEARTS)
            )
        if self.wet_side not in ("show", "back"):
            raise InputError(
                say("wet face {wet_side!r}", wet_side=self.wet_side),
                where=say("warp"),
                allowed=say("show, back"),
            )

    @property
    def air(self) -> BoardInAir:
        show, back = read_faces(self.finish or "bare")
        gravity = self.species.specific_gravity_12 or USUAL_GRAVITY
        return BoardInAir(self.thickness_mm, gravity, self.temperature_c, self.rh_percent, show, back)

    @property
    def now(self) -> float:
        """Moisture today: by meter, by the two faces, else what the air brings it to."""
        if self.now_mc is not None:
            return self.now_mc
        if self.show_mc is not None and self.back_mc is not None:
            return (self.show_mc + self.back_mc) / 2
        return self.air.air_mc

    @property
    def start(self) -> float:
        return self.now if self.flat_mc is None else self.flat_mc

    def bent_mm(self, face_difference_mc: float) -> float:
        """Cup of a difference between the faces, show minus back."""
        slope = self.species.tangential_coefficient
        return float(
            crown_mm(self.width_mm, gradient_curvature(slope, face_difference_mc, self.thickness_mm))
        )


@dataclass(frozen=True)
class Cause:
    """One cause and what it would do.

    Attributes
    ----------
    name, reason, remedy : in words.
    least_mm, most_mm : the cup it would make, mm, crown above 0.
    suits : 0 to 1, a share: how well the story suits it. share : of all causes listed.
    face_difference_mc : what two meters would show if this were it, show minus back, points.
    left_after_wait, left_when_freed : left then, as shares of today's cup.

    >>> case = WarpCase(find_species("white oak"), 200, 25, cup_mm=0.76, heart="show", pith_mm=60, flat_mc=12, now_mc=8)
    >>> cause = diagnose(case).causes[0]
    >>> cause.name, round(cause.least_mm, 2)
    ('the rings, and a change of moisture since it was flat', 0.76)
    """

    name: str
    least_mm: float
    most_mm: float
    suits: float
    reason: str
    face_difference_mc: float
    left_after_wait: float
    left_when_freed: float
    remedy: str
    share: float = 0.0
