"""Contacts, gaps and overlaps of all pairs of bodies."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from movement_core.errors import InputError
from movement_core.piece.contact.bodies import Body
from movement_core.piece.contact.curved import curved_finds
from movement_core.piece.contact.facing import flat_contacts_and_gaps
from movement_core.piece.contact.found import REACH_MM, Contact, Gap, Touching
from movement_core.piece.contact.overlaps import overlaps
from movement_core.piece.contact.pairs import facing_faces, near_bodies
from movement_core.piece.contact.polygons import Bools
from movement_core.piece.contact.rays import Kernel
from movement_core.piece.contact.scene import Ints, Scene, scene_of
from movement_core.wording import say

SAME_PLACE_SHARE = 0.5
"""Share of the larger solid's box above which two overlapping solids stand in one place (own judgement)."""


def contacts_of(bodies: Sequence[Body], reach_mm: float = REACH_MM, kernel: Kernel | None = None) -> Touching:
    """What touches what: every contact, gap and overlap between bodies.

    Parameters
    ----------
    bodies : the faces of the solids, in the order of the parts.
    reach_mm : gaps wider than this are not looked for.
    kernel : the host's exact geometry, asked only about curved faces; without it their figures are a mesh's.

    Raises
    ------
    InputError : the reach is no positive number, or a body has no faces.
    """
    if not reach_mm > 0:
        raise InputError(
            say("a reach of {reach!r} mm", reach=reach_mm),
            where=say("contacts"),
            allowed=say("more than 0 mm"),
        )
    for body in bodies:
        if not body.planar and not body.curved:
            raise InputError(say("a solid without faces"), where=body.name, todo=say("check the model"))
    if len(bodies) < 2:
        return Touching((), (), ())
    scene = scene_of(bodies)
    first, second = near_bodies(scene.low, scene.high, reach_mm)
    contacts, gaps = flat_contacts_and_gaps(scene, facing_faces(scene, first, second, reach_mm), reach_mm)
    shared = overlaps(scene, first, second, kernel)
    apart = ~_in_one_place(scene, first, second, {(overlap.first, overlap.second) for overlap in shared})
    round_contacts, round_gaps, tight = curved_finds(scene, first[apart], second[apart], reach_mm, kernel)
    told = {(overlap.first, overlap.second) for overlap in tight}
    others = [overlap for overlap in shared if (overlap.first, overlap.second) not in told]
    return Touching(
        tuple(sorted([*contacts, *round_contacts], key=_place)),
        tuple(sorted([*gaps, *round_gaps], key=_place)),
        tuple(sorted([*tight, *others], key=lambda o: (o.first, o.second))),
    )


def _in_one_place(scene: Scene, first: Ints, second: Ints, overlapping: set[tuple[int, int]]) -> Bools:
    """(P,) which pairs overlap so much that widths between their curved faces mean nothing: a part drawn twice."""
    low = np.maximum(scene.low[first], scene.low[second])
    high = np.minimum(scene.high[first], scene.high[second])
    volume = (scene.high - scene.low).prod(axis=1)
    shared = np.maximum(high - low, 0.0).prod(axis=1)
    much = shared > SAME_PLACE_SHARE * np.maximum(volume[first], volume[second])
    overlap = [pair in overlapping for pair in zip(first.tolist(), second.tolist())]
    return np.asarray(much & np.array(overlap, dtype=bool))


def _place(found: Contact | Gap) -> tuple[int, int, tuple[int, int]]:
    return found.first, found.second, found.faces
