"""The faces of all leaves of a piece, for finding what lies between its parts."""

from __future__ import annotations

from collections.abc import Sequence

from movement_core.wording import say
from workbench_pkg.host.faces import LeafFaces, faces_of
from workbench_pkg.host.leaf import Leaf


def read_faces(leaves: Sequence[Leaf]) -> tuple[LeafFaces, tuple[str, ...]]:
    """The faces of all leaves, and what could not be read; a leaf that the host cannot read costs only itself."""
    try:
        faces = faces_of(leaves)
        if all(body.planar or body.curved for body in faces.bodies):
            return faces, ()
    except Exception:  # the host's own errors have no common base; which leaf it was is found out below
        pass
    good, told = [], []
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
