"""The faces of all leaves of a piece, for finding what lies between its parts."""

from __future__ import annotations

from collections.abc import Sequence

from movement_core.wording import say
from workbench_pkg.host.faces import LeafFaces, faces_of
from workbench_pkg.host.leaf import Leaf

MOST_FACETS = 1_000_000
"""Of the curved faces of a piece together (own judgement): they take some 400 bytes each. A hundred turned legs have
fewer."""
MOST_NAMES = 3


def read_faces(leaves: Sequence[Leaf]) -> tuple[LeafFaces, tuple[str, ...]]:
    """The faces of all leaves, and what could not be read; a leaf that the host cannot read costs only itself."""
    leaves, left_out = _bounded(leaves)
    told = _crowded(left_out)
    try:
        faces = faces_of(leaves)
        if all(body.planar or body.curved for body in faces.bodies):
            return faces, tuple(told)
    except Exception:  # the host's own errors have no common base; which leaf it was is found out below
        pass
    good = []
    for leaf in leaves:
        try:
            (body,) = faces_of([leaf]).bodies
            why = "" if body.planar or body.curved else say("it has no faces")
        except Exception as error:
            why = say("the host failed to read its faces ({error})", error=error)
        if why:
            told.append(say("{name}: {why}; what it touches is not known", name=leaf.name, why=why))
        else:
            good.append(leaf)
    return faces_of(good), tuple(told)


def _bounded(leaves: Sequence[Leaf]) -> tuple[list[Leaf], list[Leaf]]:
    """The leaves whose curved faces the memory holds together, in their order, and those beyond."""
    held, beyond, total = [], [], 0
    for leaf in leaves:
        count = _facets(leaf)
        if count and total + count > MOST_FACETS:
            beyond.append(leaf)
        else:
            held.append(leaf)
            total += count
    return held, beyond


def _facets(leaf: Leaf) -> int:
    try:
        return sum(len(corners) for _, corners in leaf.own.meshes)
    except Exception:  # told where its faces are read
        return 0


def _crowded(leaves: Sequence[Leaf]) -> list[str]:
    """One sentence for all leaves that were left out."""
    if not leaves:
        return []
    names = ", ".join(leaf.name for leaf in leaves[:MOST_NAMES])
    if len(leaves) > MOST_NAMES:
        names = say("{first} and {count} more", first=names, count=len(leaves) - MOST_NAMES)
    return [
        say(
            "{names}: the curved faces of the piece would take over {most:,} facets; what it touches is not known. "
            "To do: hide parts drawn twice, or check units and scales of links",
            names=names,
            most=MOST_FACETS,
        )
    ]
