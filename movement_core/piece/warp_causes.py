"""Each likely cause of a cup, and the cup that it would make by our own physics; ``CAUSES`` lists them."""

from __future__ import annotations

import itertools
from collections.abc import Callable

import numpy as np

from movement_core.moisture.compression import compression_set
from movement_core.moisture.consequence import crown_mm
from movement_core.moisture.events import Event, lying_on_bench, wet_face
from movement_core.moisture.marching import march
from movement_core.piece.warp_case import (
    BLOCKED,
    FLAT_CORNER_MM,
    HELD,
    LIVELY,
    METER_SD,
    RADII,
    SLOPES,
    SUN_MC,
    Cause,
    WarpCase,
)
from movement_core.section.board import Board
from movement_core.section.panel import Panel
from movement_core.section.twist import board_twist
from movement_core.wording import phrase, say, word


def _rings(case: WarpCase) -> Cause | None:
    if case.heart == "inside":
        return None
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
        _since_flat(case, change),
        0.0, 1.0, 1.0,
        say("bring it back to {mc:.1f} % and it comes back; hold it by fasteners that let it move",
            mc=case.start),
    )  # fmt: skip


_HEART_SIDES = {
    "show": phrase("on the show face"),
    "back": phrase("on the back face"),
    "mixed": phrase("up and down by turns"),
    None: phrase("not said"),
}


def _since_flat(case: WarpCase, change: float) -> str:
    heart = word(_HEART_SIDES[case.heart])
    if case.boards == 1:
        return say(
            "{change:+.1f} % since it was flat; one board, heart side {heart}", change=change, heart=heart
        )
    return say(
        "{change:+.1f} % since it was flat; {boards} boards, heart side {heart}",
        change=change,
        boards=case.boards,
        heart=heart,
    )


def _ring_cup(case: WarpCase, each: float, radius: float, side: float, change: float) -> float:
    if abs(change) < 1e-9:
        return 0.0
    signs = [side or (1.0 if i % 2 else -1.0) for i in range(case.boards)]
    boards = [Board(case.species, each, case.thickness_mm, (0.0, sign * radius)) for sign in signs]
    # heart side up (pith above) crowns as it dries: the map gives the sign
    return float(Panel(boards).shape(change).departure_mm)


def _boxed(case: WarpCase) -> Cause | None:
    """The section holds the tree's centre: elastic and uncracked, see ``section.boxed_heart``."""
    if case.heart != "inside":
        return None
    change = case.now - case.start
    each = case.width_mm / case.boards
    places = (0.0, case.thickness_mm / 4) if case.pith_mm is None else (case.pith_mm,)
    boards = [
        Board(case.species, each, case.thickness_mm, (0.0, side * place), boxed_heart=True)
        for place in places
        for side in (1.0, -1.0)
    ]
    cups = [float(Panel([board]).shape(change).departure_mm) if change else 0.0 for board in boards]
    return Cause(
        say("the tree's centre is in the board (boxed heart)"), min(cups), max(cups), 1.0,
        say("{change:+.1f} % since it was flat; a board of {width:.0f} mm that holds its centre cannot stay free of "
            "stress",
            change=change, width=each),
        0.0, 1.0, 1.0,
        say("expect a check from the centre outward; rip the centre out, and glue up what is left"),
    )  # fmt: skip


TWISTS = phrase("it twists: spiral grain, or rings that turn along it")


def _twisted(case: WarpCase) -> Cause | None:
    """A twisted board is straight across, but bowed along its diagonals by a quarter of what its corner stands off."""
    if case.length_mm is None or case.heart == "inside":  # no twist is computed of what is not known
        return None
    lift = corner_lift(case)
    if case.twist_mm is None:
        suits = 0.2
    elif case.twist_mm < FLAT_CORNER_MM:
        suits = 0.01
    else:
        beyond = max(case.twist_mm - lift, 0.0) / float(np.hypot(FLAT_CORNER_MM, 2 * LIVELY * lift))
        suits = max(float(np.exp(-0.5 * beyond**2)), 0.01)
    slope = (
        say("slope of the grain not said")
        if case.grain_slope is None
        else say("slope of the grain {slope:.3f}", slope=case.grain_slope)
    )
    turn = (
        say("rings taken alike at both ends")
        if case.ring_turn_deg is None
        else say("rings turned by {turn:.0f}° at the other end", turn=case.ring_turn_deg)
    )
    return Cause(
        word(TWISTS), -lift / 4, lift / 4, suits,
        say("{slope}, {turn}; one corner would stand off by up to {lift:.1f} mm, which a straightedge laid askew reads "
            "as a cup of a quarter of it",
            slope=slope, turn=turn, lift=lift),
        0.0, 1.0, 1.0,
        say("bring it back to {mc:.1f} %; plane it true only when it has settled, and choose straight grain next time",
            mc=case.start),
    )  # fmt: skip


def corner_lift(case: WarpCase) -> float:
    """How far a corner would stand off the plane of the other three, mm: the most that is possible."""
    each = case.width_mm / case.boards
    radii = (case.pith_mm,) if case.pith_mm else tuple(each * share for share in RADII)
    slopes = SLOPES if case.grain_slope is None else (case.grain_slope,)
    side = -1.0 if case.heart == "back" else 1.0
    lifts = [0.0]
    for radius, slope, sense in itertools.product(radii, slopes, (1.0, -1.0)):
        pith = (0.0, side * max(radius, case.thickness_mm / 2 + 5))
        board = Board(
            case.species,
            each,
            case.thickness_mm,
            pith,
            far_pith_mm=_far_pith(case, pith, sense),
            length_mm=case.length_mm,
            grain_slope=slope,
        )
        turned = board_twist(board, case.now - case.start).degrees
        assert turned is not None  # length and slope are given
        lifts += [abs(float(np.tan(np.radians(one)))) * case.width_mm for one in turned]
    return max(lifts)


def _far_pith(case: WarpCase, pith: tuple[float, float], sense: float) -> tuple[float, float] | None:
    """The tree's centre at the other end, turned about the middle of the section one way or the other (±1).

    How far off it lies there tells nothing.
    """
    if case.ring_turn_deg is None:
        return None
    turn, off = sense * np.radians(case.ring_turn_deg), np.sign(pith[1]) * (abs(pith[1]) + case.width_mm)
    return float(-off * np.sin(turn)), float(off * np.cos(turn))


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
        _wet_face(case.wet_side, case.wet_hours, event.worst_face_difference_mc),
        say("dry it slowly with both faces open; do not heat the wet face"),
    )  # fmt: skip


def _wet_face(side: str, hours: float, mc: float) -> str:
    if side == "show":
        return say(
            "the show face wet for {hours:g} h: up to {mc:+.1f} % between the faces", hours=hours, mc=mc
        )
    return say("the back face wet for {hours:g} h: up to {mc:+.1f} % between the faces", hours=hours, mc=mc)


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


_HELD_BY = {
    "frame": phrase("held at its back by its frame"),
    "steel": phrase("held at its back by steel"),
    "cleats": phrase("held at its back by cleats"),
}


def _held(case: WarpCase) -> Cause | None:
    if case.lying not in HELD:
        return None
    strain = case.species.tangential_coefficient * (case.now - case.start)
    cup = float(crown_mm(case.width_mm, 1.5 * strain / case.thickness_mm))
    return Cause(
        word(_HELD_BY[case.lying]), min(cup, 0.0), max(cup, 0.0), 0.7,
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


def untold(case: WarpCase) -> Cause:
    """Whatever was not told; it keeps the shares of the others honest."""
    reach = case.width_mm / 25
    return Cause(
        say("something that was not told, or several causes at once"), -reach, reach, 0.1,
        say("no single cause need be the whole of it"), 0.0, 0.5, 1.0, say("measure before you cut"),
    )  # fmt: skip


CAUSES: tuple[Callable[[WarpCase], Cause | None], ...] = (
    _rings, _boxed, _twisted, _breathing, _blocked, _wetted, _set, _held, _stress, untold,
)  # fmt: skip
