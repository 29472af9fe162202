"""The moisture of every part of a piece through the year, by its thickness, width, density and finish.

A board that is glued to its neighbours takes moisture through its two faces, any other through its edges too: a leg or
a rail, not much wider than it is thick, swings more for it (``movement_core.moisture.block``). Ends are taken as tight.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import DAYS, DailyAir, daily_moisture
from movement_core.air.year import Year
from movement_core.errors import HeartsideError
from movement_core.moisture.block import block_year
from movement_core.moisture.finish import read_faces
from movement_core.moisture.response import WoodYear, wood_year
from movement_core.piece.edges import boards_edge_to_edge
from movement_core.piece.part import Part
from movement_core.wording import say

Floats = NDArray[np.float64]

USUAL_GRAVITY = (
    0.6  # density taken, and said, where a wood's own is not known; it only sets how fast it answers
)


def glued_edges(parts: Sequence[Part]) -> frozenset[str]:
    """Keys of the boards whose edges others cover: the air does not come in there."""
    return frozenset(parts[index].key for group in boards_edge_to_edge(parts) for index in group)


@dataclass(frozen=True, eq=False)
class PartMoisture:
    """Mean moisture (365,), difference between the faces (365,), and notes of one part."""

    mean: Floats
    face_difference: Floats
    notes: tuple[str, ...] = ()


def moistures_of(
    parts: Sequence[Part], air: Year | DailyAir, covered: Collection[str]
) -> list[PartMoisture | None]:
    """The answer of all solid-wood parts at once, and of sheets and blocked parts by the air itself.

    ``covered`` : keys of the boards whose edges are glued to others.
    """
    result: list[PartMoisture | None] = [None] * len(parts)
    for kept in dict.fromkeys(part.kept for part in parts):
        here = [index for index, part in enumerate(parts) if part.kept == kept]
        for index, moisture in zip(here, _moistures_in([parts[i] for i in here], kept or air, covered)):
            result[index] = moisture if kept is None or moisture is None else _told_where(moisture, kept)
    return result


def _told_where(moisture: PartMoisture, kept: Year) -> PartMoisture:
    note = say(
        "kept elsewhere when not in use ({name}), and worked out as it comes from there", name=kept.name
    )
    return replace(moisture, notes=(*moisture.notes, note))


def _moistures_in(
    parts: Sequence[Part], air: Year | DailyAir, covered: Collection[str]
) -> list[PartMoisture | None]:
    """The same of parts that all lie in one air."""
    result: list[PartMoisture | None] = [None] * len(parts)
    in_step = daily_moisture(air)
    wooden = []
    for index, part in enumerate(parts):
        species = part.species.value
        if species is None or species.kind == "inert":
            continue
        if species.kind == "wood" and part.frame.grain.known:
            wooden.append(index)
        else:
            result[index] = PartMoisture(in_step, np.zeros(DAYS), (say("taken as in step with the air"),))
    groups: dict[_Alike, list[int]] = {}
    for index in wooden:
        groups.setdefault(_alike(parts[index], parts[index].key in covered), []).append(index)
    for alike, members in groups.items():
        answer = _answer(air, *alike)
        for index in members:
            result[index] = answer
    return result


_Alike = tuple[str, float, float, float | None]


def _alike(part: Part, covered: bool) -> _Alike:
    """Parts that share these answer the air alike: finish, thickness, density, and width where its edges are open."""
    species = part.species.value
    gravity = (species.specific_gravity_12 if species else None) or USUAL_GRAVITY
    thickness, width = (round(size, 3) for size in (part.frame.thickness_mm, part.frame.width_mm))
    return part.finish.value or "bare", thickness, gravity, None if covered else width


def _answer(
    air: Year | DailyAir, finish: str, thickness_mm: float, gravity: float, width_mm: float | None
) -> PartMoisture:
    """``width_mm`` : None where its edges are covered; open ones are taken as finished like the show face."""
    try:
        show, back = read_faces(finish)
        year: WoodYear = wood_year(air, thickness_mm, gravity, show, back)
        mean = year.mean_mc
        if width_mm is not None:
            mean = block_year(air, width_mm, thickness_mm, gravity, show, back).mean_mc
    except HeartsideError as error:
        note = say(
            "its own answer to the air could not be worked out ({what}); taken as in step with the air",
            what=error.what,
        )
        return PartMoisture(daily_moisture(air), np.zeros(DAYS), (note,))
    notes = [*year.notes, *(face.note for face in dict.fromkeys((show, back)) if face.note)]
    return PartMoisture(mean, year.face_difference_mc, tuple(notes))
