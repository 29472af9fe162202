"""Why a board or top is no longer flat: what each likely cause would do to it by our own physics, against what was
measured; the causes in order, the one measurement that parts the first two, what to do and what not.

Crown (the middle higher, seen from the show face) is positive, hollow negative. Each cause predicts a range of cups;
beside it stands how well the maker's story suits it. The shares are Bayes' rule over the causes listed here, among
them *something that was not told*: they order the causes and are no probabilities to bet on.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from movement_core.air.bounds import within
from movement_core.errors import InputError
from movement_core.moisture.compression import compression_set
from movement_core.moisture.consequence import crown_mm, gradient_curvature
from movement_core.moisture.events import BoardInAir, Event, lying_on_bench, wet_face
from movement_core.moisture.finish import read_faces
from movement_core.moisture.marching import march
from movement_core.moisture.spread import normal_share
from movement_core.section.board import Board
from movement_core.section.panel import Panel
from movement_core.wood import Species
from movement_core.wording import say

LYING = ("free", "bench", "floor", "wall", "sun", "frame", "steel", "cleats")
HEARTS = ("show", "back", "mixed")
HELD = ("frame", "steel", "cleats")
BLOCKED = ("bench", "floor", "wall")
SUN_MC = (
    4.0  # a face in the sun under glass, some 45 °C and 15 % RH (own judgement; equilibrium moisture of that)
)
RADII = (0.5, 3.0)  # distance of the pith where it is not known, in board widths (own judgement)
METER_SD = 1.0  # of the difference of two readings of one meter, percent points (own judgement)
LIVELY = 0.15  # how much a board differs from its species
USUAL_GRAVITY = 0.6


@dataclass(frozen=True)
class WarpCase:
    """What the maker sees and knows. None is *not known*.

    Parameters
    ----------
    species : a wood. width_mm, thickness_mm : of the whole, mm. boards : how many it is glued of.
    cup_mm : from the chord, mm: crown above 0, hollow below.
    heart : the face that was nearer the tree's centre, one of ``HEARTS``. pith_mm : how far off that was, mm.
    flat_mc : mean moisture when it was last flat, percent. now_mc : today. show_mc, back_mc : a meter near each face.
    temperature_c, rh_percent : of the air around it, °C and percent.
    finish : as in tags ("varnish 2", or "show oil 2, back bare").
    lying : one of ``LYING``, for ``days``. wet_hours, wet_side : a face that was wetted, for so many hours.
    most_mc : the dampest it ever was while held, percent.
    machined : one face was planed, or the board resawn, since it was flat.

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

    def __post_init__(self) -> None:
        if self.species.kind != "wood":
            raise InputError(
                say("{name} is no solid wood", name=self.species.name),
                where=say("warp"),
                allowed=say("woods"),
            )
        within(self.width_mm, "width", 10.0, 5000.0, "mm")
        within(self.thickness_mm, "thickness", 2.0, 200.0, "mm")
        within(self.cup_mm, "cup", -self.width_mm / 4, self.width_mm / 4, "mm")
        within(self.days, "days", 0.01, 3650.0, "days")
        within(self.boards, "boards", 1, 200, "")
        if self.wet_hours is not None:
            within(self.wet_hours, "hours wet", 0.1, 8760.0, "h")
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


@dataclass(frozen=True)
class Diagnosis:
    """Causes, the likeliest first; what to measure, to do, and not to do.

    Attributes
    ----------
    causes : the likeliest first; their shares add to 1.
    measure : the one measurement that parts the first two. not_to : what would make it worse, or hurt.
    wait_days : how long it has to stand free for a second measurement to tell, days.

    >>> found = diagnose(WarpCase(find_species("white oak"), width_mm=500, thickness_mm=20, cup_mm=3))
    >>> round(sum(cause.share for cause in found.causes), 6), found.wait_days
    (1.0, 14)
    """

    causes: tuple[Cause, ...]
    measure: str
    not_to: tuple[str, ...]
    wait_days: float


def diagnose(case: WarpCase) -> Diagnosis:
    """Likely causes of a cup in order. Pure; about half a second of marching.

    Parameters
    ----------
    case : what the maker sees and knows.

    Returns
    -------
    ``Diagnosis``. The figures are those of the rooms ``section`` and ``moisture``; how well a story suits a cause is
    our own judgement.

    >>> case = WarpCase(find_species("yellow poplar"), 1070, 19, cup_mm=-32, boards=8, flat_mc=10, rh_percent=30,
    ...                 finish="show bare, back varnish 3")
    >>> diagnose(case).causes[0].name
    'one face breathes more than the other (finish)'
    """
    found = [cause for make in CAUSES if (cause := make(case)) is not None]
    weights = np.array([cause.suits * _density(case, cause) for cause in found])
    shares = weights / weights.sum()
    ranked = sorted(
        (Cause(**{**cause.__dict__, "share": float(share)}) for cause, share in zip(found, shares)),
        key=lambda cause: -cause.share,
    )
    days = max(7.0, round((case.thickness_mm / 20.0) ** 2 * 14.0))
    return Diagnosis(tuple(ranked), what_to_measure(case, ranked, days), _not_to(case), days)


def _density(case: WarpCase, cause: Cause) -> float:
    """Density of the measured cup where the cause may make anything of its range, each end unsure."""
    reach = max(abs(cause.least_mm), abs(cause.most_mm))
    sd = float(np.hypot(0.3, 2 * LIVELY * reach))  # straightedge; board and moisture
    low, high = cause.least_mm - 0.1, cause.most_mm + 0.1
    ends = normal_share((case.cup_mm - np.array([low, high])) / sd)
    return max(float(ends[0] - ends[1]) / (high - low), 1e-12)


# ---- the causes ------------------------------------------------------------------------------------------------


def _rings(case: WarpCase) -> Cause | None:
    change = case.now - case.start
    each = case.width_mm / case.boards
    far = (case.pith_mm, case.pith_mm) if case.pith_mm else (each * RADII[0], each * RADII[1])
    sides = {"show": (1.0,), "back": (-1.0,), "mixed": (0.0,), None: (1.0, -1.0)}[case.heart]
    cups = [
        _ring_cup(case, each, max(radius, case.thickness_mm / 2 + 5), side, change)
        for radius in far
        for side in sides
    ]
    low, high = min(cups), max(cups)
    told = case.flat_mc is not None and (case.now_mc is not None or case.show_mc is not None)
    return Cause(
        say("the rings, and a change of moisture since it was flat"), low, high, 1.0 if told else 0.6,
        say("{change:+.1f} % since it was flat; {boards} boards, heart side {heart}",
            change=change, boards=case.boards, heart=case.heart or say("not said")),
        0.0, 1.0, 1.0,
        say("bring it back to {mc:.1f} % and it comes back; hold it by fasteners that let it move",
            mc=case.start),
    )  # fmt: skip


def _ring_cup(case: WarpCase, each: float, radius: float, side: float, change: float) -> float:
    if abs(change) < 1e-9:
        return 0.0
    signs = [side or (1.0 if i % 2 else -1.0) for i in range(case.boards)]
    boards = [Board(case.species, each, case.thickness_mm, (0.0, sign * radius)) for sign in signs]
    # heart side up (pith above) crowns as it dries: the map gives the sign
    return float(Panel(boards).shape(change).departure_mm)


def _breathing(case: WarpCase) -> Cause | None:
    air = case.air
    if case.finish is None or air.exchanges()[0] == air.exchanges()[1]:
        return Cause(
            say("one face breathes more than the other (finish)"), 0.0, 0.0, 0.3 if case.finish is None else 0.02,
            say("finish not said") if case.finish is None else say("both faces have the same finish"),
            0.0, 0.1, 1.0, say("give both faces the same finish"),
        )  # fmt: skip
    course = march(case.thickness_mm, case.start, [air.spell(365.0)], air.rate(case.start))
    worst = float(course.face_difference_mc[np.abs(course.face_difference_mc).argmax()])
    return _moist(
        case, say("one face breathes more than the other (finish)"), worst, 1.0,
        say("{finish}: up to {mc:+.1f} % between the faces on the way from {start:.1f} to {air:.1f} %",
            finish=case.finish, mc=worst, start=case.start, air=air.air_mc),
        say("finish the other face like this one; about half should be gone in weeks"),
    )  # fmt: skip


def _moist(case: WarpCase, name: str, worst: float, suits: float, reason: str, remedy: str) -> Cause:
    """A cause that works by moisture between the faces: anything from nothing to its worst, and its faces differ."""
    cup = case.bent_mm(worst)
    metered = case.show_mc is not None and case.back_mc is not None
    if metered:
        seen = case.show_mc - case.back_mc  # type: ignore[operator]
        suits *= float(np.exp(-0.5 * (max(abs(seen - worst) - abs(worst) / 2, 0.0) / METER_SD) ** 2)) + 1e-3
    needed = worst * case.cup_mm / cup if abs(cup) > 1e-6 else 0.0
    return Cause(name, min(cup / 4, cup), max(cup / 4, cup), suits, reason, needed, 0.15, 1.0, remedy)


def _blocked(case: WarpCase) -> Cause | None:
    if case.lying not in (*BLOCKED, "sun"):
        return None
    if case.lying == "sun":
        spell = case.air.spell(case.days)
        spell = type(spell)(**{**spell.__dict__, "show_air_mc": SUN_MC})
        course = march(case.thickness_mm, case.start, [spell], case.air.rate(case.start))
        worst = float(course.face_difference_mc[np.abs(course.face_difference_mc).argmax()])
        why = say("the show face in the sun for {days:g} days", days=case.days)
    else:
        event: Event = lying_on_bench(case.air, case.start, case.days, follow_days=1.0)
        worst = event.worst_face_difference_mc
        why = say("the back face shut off for {days:g} days in air of {air:.1f} %, begun at {start:.1f} %",
                  days=case.days, air=case.air.air_mc, start=case.start)  # fmt: skip
    return _moist(case, say("only one face met the air, or the sun"), worst, 1.0, why,
                  say("stand it on stickers, both faces open, out of the sun"))  # fmt: skip


def _wetted(case: WarpCase) -> Cause | None:
    if case.wet_hours is None:
        return None
    event = wet_face(case.air, case.wet_hours, start_mc=case.start, face=case.wet_side, follow_days=20.0)
    return _moist(
        case, say("a wet face"), event.worst_face_difference_mc, 1.0,
        say("the {side} face wet for {hours:g} h: up to {mc:+.1f} % between the faces",
            side=case.wet_side, hours=case.wet_hours, mc=event.worst_face_difference_mc),
        say("dry it slowly with both faces open; do not heat the wet face"),
    )  # fmt: skip


def _set(case: WarpCase) -> Cause | None:
    """Crushed while held or while one face was wet: shorter there ever after, so hollow on that side."""
    slope = case.species.tangential_coefficient
    if case.lying in HELD and case.most_mc is not None:
        crushed = compression_set(slope, case.most_mc - case.start)
        strain, side = float(crushed.set_most) + slope * max(case.start - case.now, 0.0), -1.0
        curvature = 1.5 * strain / case.thickness_mm  # held at its back face: elastic beam, see THEORY
        why = say(
            "held by its back while it swelled from {start:.1f} to {most:.1f} %",
            start=case.start,
            most=case.most_mc,
        )
    elif case.wet_hours is not None:
        strain = float(compression_set(slope, 28.0 - case.start).set_most)
        curvature, side = 1.5 * strain / case.thickness_mm, -1.0 if case.wet_side == "show" else 1.0
        why = say("the wet face swelled against dry wood behind it, and was crushed")
    else:
        return None
    cup = side * float(crown_mm(case.width_mm, curvature))
    return Cause(
        say("compression set: crushed while it could not swell"), min(cup, 0.0), max(cup, 0.0),
        1.0 if strain > 0 else 0.02, why + say(" (an upper bound: creep takes its share)"), 0.0, 1.0, 0.9,
        say("it will not come back: fasten so that it can move, let it settle at its usual moisture, then flatten"),
    )  # fmt: skip


def _held(case: WarpCase) -> Cause | None:
    if case.lying not in HELD:
        return None
    strain = case.species.tangential_coefficient * (case.now - case.start)
    cup = float(crown_mm(case.width_mm, 1.5 * strain / case.thickness_mm))
    return Cause(
        say("held at its back by {what}", what=case.lying), min(cup, 0.0), max(cup, 0.0), 0.7,
        say("{change:+.1f} % since it was fixed, which its back may not follow", change=case.now - case.start),
        0.0, 1.0, 0.2, say("loosen all but one line of fasteners; slot the others across the grain"),
    )  # fmt: skip


def _stress(case: WarpCase) -> Cause | None:
    # Drying stress let go by machining: strains of some 0.1 to 0.2 % at the skin (from memory), either way.
    reach = float(crown_mm(case.width_mm, 0.002 / case.thickness_mm))
    return Cause(
        say("drying stress let go by machining (case-hardening)"), -reach, reach, 0.8 if case.machined else 0.05,
        say("one face planed, or resawn, since it was flat") if case.machined else say("no machining since was told"),
        0.0, 1.0, 1.0, say("let it rest, then plane both faces alike in light passes; ask for conditioned stock"),
    )  # fmt: skip


def _untold(case: WarpCase) -> Cause | None:
    reach = case.width_mm / 25
    return Cause(
        say("something that was not told, or several causes at once"), -reach, reach, 0.1,
        say("no single cause need be the whole of it"), 0.0, 0.5, 1.0, say("measure before you cut"),
    )  # fmt: skip


CAUSES: tuple[Callable[[WarpCase], Cause | None], ...] = (
    _rings, _breathing, _blocked, _wetted, _set, _held, _stress, _untold,
)  # fmt: skip


# ---- what to measure, and what not to do -----------------------------------------------------------------------


def what_to_measure(case: WarpCase, ranked: list[Cause], days: float) -> str:
    """The one measurement whose outcomes lie furthest apart under the first two causes, in its own doubt."""
    untold = _untold(case)
    first, second = [cause for cause in ranked if untold is None or cause.name != untold.name][:2]
    cup = abs(case.cup_mm)
    metered = case.show_mc is not None and case.back_mc is not None
    choices = [
        (0.0 if metered else abs(first.face_difference_mc - second.face_difference_mc) / METER_SD,
         say("meter both faces close to the skin: {one:+.1f} % "
             "(show less back) speaks for the first cause, {two:+.1f} % for the second",
             one=first.face_difference_mc, two=second.face_difference_mc)),
        (abs(first.left_after_wait - second.left_after_wait) * cup / 1.0,
         say("stand it free with both faces open for {days:.0f} days and measure again: "
             "{one:.1f} mm left speaks for the first cause, {two:.1f} mm for the second",
             days=days, one=first.left_after_wait * cup, two=second.left_after_wait * cup)),
        (abs(first.left_when_freed - second.left_when_freed) * cup / 0.7 if case.lying in HELD else 0.0,
         say("loosen the fasteners and measure at once: "
             "{one:.1f} mm left speaks for the first cause, {two:.1f} mm for the second",
             one=first.left_when_freed * cup, two=second.left_when_freed * cup)),
    ]  # fmt: skip
    best = max(choices)
    if best[0] < 1.0:
        return say(
            "no single measurement parts the first two causes: note the moisture of both faces and the cup each week"
        )
    return best[1]


def _not_to(case: WarpCase) -> tuple[str, ...]:
    told = [
        say("never bolt or clamp it flat by force: it splits, or tears its fasteners out later"),
        say(
            "do not plane it until its faces read alike and it has stopped moving: it would cup the other way"
        ),
        say("do not wet the hollow face to pull it flat: the wood is crushed and cups worse when it dries"),
    ]
    if case.lying in HELD:
        told.append(say("a board that is let go may spring: keep clear of its edges"))
    told.append(
        say("if you rip it, lay the hollow face down: a cupped board can pinch the blade and kick back")
    )
    return tuple(told)
