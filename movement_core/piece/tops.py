"""A piece's tops, ready for the holding room: the plate, what it rests on, and its free shape month by month."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from movement_core.errors import HeartsideError
from movement_core.holding.metal_base import BLOCKED_FACE, NO_WOOD_TO_STEEL_GLUE
from movement_core.holding.model import Beam, Bearing, Elastic, LoadCase, Plate
from movement_core.holding.plan_model import Top
from movement_core.holding.polygon import polygon_area
from movement_core.holding.rails import Member, Rail, what_lies_under
from movement_core.holding.stiffeners import bar
from movement_core.holding.travel import WidthStrain
from movement_core.piece.panels import GluedPanel, same_woods
from movement_core.piece.solve import SolvedPiece
from movement_core.piece.stiffness import BoardStiffness, bar_modulus, board_stiffness, panel_stiffness
from movement_core.piece.top_place import RECTANGLE_SHARE, Near, TopPlace, top_places
from movement_core.piece.top_shapes import Moistures, load_cases, moistures_of, what_is_missing, width_strain
from movement_core.wording import say

MC_OF_WEIGHT = 12.0  # percent: density is told at this moisture
TONGUE_PLAY_MM = 0.3  # up and down in a breadboard end's groove (own)
STEEL_MPA = 200_000.0
BATTEN_SCREW_MM = 150.0  # spacing (common practice)


@dataclass(frozen=True, eq=False)
class FoundTop:
    """One top of a piece.

    Attributes
    ----------
    place : where it is and what touches it.
    top : for ``plan_anchors``, or None; then ``why_not`` says what is missing.
    strain : across the grain since fitting, without doubt; ``top.strain`` has the likely error in its extremes.
    moistures : of the boards in each case. metal : whether it rests on metal alone.
    notes : what was filled in or left out, one sentence each. cautions : beside those of every plan.
    """

    place: TopPlace
    top: Top | None
    why_not: tuple[str, ...] = ()
    strain: WidthStrain | None = None
    moistures: Moistures | None = None
    metal: bool = False
    notes: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()

    @property
    def name(self) -> str:
        return self.place.name

    @property
    def short_name(self) -> str:
        """Shortest name that one can type: that of its first board."""
        return self.place.boards[0].part.name

    @property
    def fitted_mc(self) -> float | None:
        """Mean moisture at fitting, percent, where it is known of every board."""
        known = [board.part.fitted_mc.value for board in self.place.boards]
        values = [value for value in known if value is not None]
        return sum(values) / len(values) if len(values) == len(known) else None


def find_tops(piece: SolvedPiece, panels: Sequence[GluedPanel] | None = None) -> tuple[FoundTop, ...]:
    """Every top of a piece; those that cannot be worked out say why.

    ``panels``: the glued panels of the piece, where they have been worked out already.
    """
    known: dict[tuple[object, ...], tuple[LoadCase, ...]] = {}
    return tuple(top_of(place, known) for place in top_places(piece, panels) if not place.captured)


def top_of(place: TopPlace, known: dict[tuple[object, ...], tuple[LoadCase, ...]] | None = None) -> FoundTop:
    """A top from its place; ``known`` holds the free shapes of tops of the same wood, worked out before."""
    missing = what_is_missing(place.boards)
    if missing:
        return FoundTop(place, None, missing)
    try:
        moistures = moistures_of(place.boards)
        alike = (*same_woods(place.boards, place.axes), tuple(np.round(place.lines_mm, 6).tolist()))
        cases = known.get(alike) if known is not None else None
        if cases is None:
            cases = load_cases(place, moistures)
        if known is not None:
            known[alike] = cases
        padded, plain = width_strain(place, moistures), width_strain(place, moistures, with_doubt=False)
        notes: list[str] = []
        plate, gravity = _plate(place, notes)
        rails, bearings, metal = _support(place, plate, notes)
        beams = _beams(place, plain, notes)
    except HeartsideError as error:
        return FoundTop(place, None, (str(error),))
    notes += _left_out(place)
    cautions = (BLOCKED_FACE, NO_WOOD_TO_STEEL_GLUE) if metal else ()
    top = Top(plate, rails, padded, cases, gravity, bearings, beams)
    return FoundTop(place, top, (), plain, moistures, metal, tuple(dict.fromkeys(notes)), cautions)


def _plate(place: TopPlace, notes: list[str]) -> tuple[Plate, float | None]:
    """The plate, and the least specific gravity of its boards (the weakest hold); None where one is unknown."""
    each: list[tuple[BoardStiffness, float]] = []
    gravities: list[float | None] = []
    for solved in place.boards:
        species, rings = solved.part.species.value, solved.part.rings.value
        assert species is not None and rings is not None  # nothing is missing
        width = solved.part.frame.width_mm
        each.append((board_stiffness(species, rings.middle_angle_degrees), width))
        gravities.append(species.specific_gravity_12)
    whole = panel_stiffness(each)
    notes += map(str, whole.filled)
    known = [value for value in gravities if value is not None]
    if len(known) < len(gravities):
        notes.append(
            say("density of a board not known: its weight is left out, and how hard a screw may be pulled")
        )
        return _plain_plate(place, whole.elastic), None
    density = float(np.average(known, weights=[w for _, w in each])) * 1000 * (1 + MC_OF_WEIGHT / 100)
    return replace(_plain_plate(place, whole.elastic), density_kg_m3=density), min(known)


def _plain_plate(place: TopPlace, elastic: Elastic) -> Plate:
    """The plate without its weight."""
    return Plate(place.length_mm, place.width_mm, place.thickness_mm, elastic, outline_mm=place.outline_mm)


def _support(
    place: TopPlace, plate: Plate, notes: list[str]
) -> tuple[tuple[Rail, ...], tuple[Bearing, ...], bool]:
    """Rails, other bearings, and whether all of it is metal."""
    members = [
        Member(one.name, one.outline_mm, float(one.high[2]), float(one.high[2] - one.low[2]))
        for one in place.under
    ]
    under = what_lies_under(plate, members, 0.0)
    on_rails = {rail.name for rail in under.rails}
    bearings = [bearing for bearing in under.bearings if bearing.name not in on_rails]
    if place.let_in:
        names = ", ".join(one.name for one in place.let_in)
        notes.append(
            say(
                "let into its underside and taken as carrying it, how they are joined is not judged: {names}",
                names=names,
            )
        )
        let_in = [Member(one.name, one.outline_mm, 0.0) for one in place.let_in]
        bearings += what_lies_under(plate, let_in, 0.0).bearings
    metal = bool(place.under) and all(_is_inert(one) for one in place.under)
    return under.rails, tuple(bearings), metal


def _is_inert(one: Near) -> bool:
    species = one.solved.part.species.value
    return species is not None and species.kind == "inert"


def _beams(place: TopPlace, strain: WidthStrain, notes: list[str]) -> tuple[Beam, ...]:
    """Battens and breadboard ends as beams."""
    found = []
    half_width, half_length = place.width_mm / 2, place.length_mm / 2
    for one in place.battens:
        modulus = _bar_modulus(one, notes)
        middle = float(one.low[0] + one.high[0]) / 2
        low, high = max(float(one.low[1]), -half_width), min(float(one.high[1]), half_width)
        breadth, depth = float(one.high[0] - one.low[0]), float(one.high[2] - one.low[2])
        count = max(2, int(np.ceil((high - low - 50) / BATTEN_SCREW_MM)) + 1)
        screws = (
            tuple(float(v) for v in np.linspace(25.0, high - low - 25.0, count)) if high - low > 100 else ()
        )
        found.append(
            bar((middle, low), (middle, high), breadth, depth, modulus, screws_mm=screws, name=one.name)
        )
        notes.append(
            say(
                "{name}: taken as a batten, screwed every {batten_screw:.0f} mm at most, in slots",
                name=one.name,
                batten_screw=BATTEN_SCREW_MM,
            )
        )
    for one in place.ends:
        modulus = _bar_modulus(one, notes)
        side = float(np.sign(one.low[0] + one.high[0]))
        at = side * (half_length - min(10.0, half_length / 4))
        breadth, depth = float(one.high[0] - one.low[0]), float(one.high[2] - one.low[2])
        low, high = max(float(one.low[1]), -half_width + 1), min(float(one.high[1]), half_width - 1)
        found.append(
            bar((at, low), (at, high), breadth, depth, modulus, play_mm=TONGUE_PLAY_MM, name=one.name)
        )
        notes.append(
            say(
                "{name}: taken as a breadboard end on a tongue with {tongue_play:g} mm of play",
                name=one.name,
                tongue_play=TONGUE_PLAY_MM,
            )
        )
    return tuple(found)


def _bar_modulus(one: Near, notes: list[str]) -> float:
    species = one.solved.part.species.value
    if species is None:
        notes.append(
            say("{name}: its material is not said; taken as stiff as a usual hardwood", name=one.name)
        )
        return 11_000.0
    if species.kind == "inert":
        return STEEL_MPA
    modulus, filled = bar_modulus(species)
    notes += map(str, filled)
    return modulus


def _left_out(place: TopPlace) -> list[str]:
    notes = []
    loose = len(place.fasteners) - len(place.tied)
    if loose:
        notes.append(say("small parts under it that touch nothing else are left out: {loose}", loose=loose))
    if place.no_shoulder:
        notes.append(
            say(
                "where its shoulder meets {names} is not found, its shape is not known: lengths count to the tip let "
                "into it",
                names=", ".join(place.no_shoulder),
            )
        )
    filled = (
        polygon_area(np.array(place.outline_mm)) if place.outline_mm else place.length_mm * place.width_mm
    )
    pierced = place.volume_share * place.length_mm * place.width_mm / filled
    if pierced < RECTANGLE_SHARE:
        notes.append(
            say(
                "it is cut out or hollowed: {pierced:.0f} % of what its outline holds is wood; planned as "
                "whole, so look whether there is wood where a fastener is placed",
                pierced=100 * pierced,
            )
        )
    rough = [b.part.name for b in place.boards if b.part.rings.value and b.part.rings.value.pith_mm is None]
    if rough:
        notes.append(
            say(
                "where the pith was is not said of {names}: followed once with the rings that cup it "
                "least and once with those that cup it most, and the worse counts",
                names=", ".join(rough),
            )
        )
    twisting = [board.part.name for board in place.boards if board.twist is not None]
    if twisting:
        notes.append(say("the twist of single boards is not in it: {names}", names=", ".join(twisting)))
    return notes
