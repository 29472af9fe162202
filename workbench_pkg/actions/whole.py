"""From the leaves of a piece to everything between its parts."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from movement_core.piece.solve import SolvedPiece
from movement_core.piece.whole import WholePiece, whole_piece
from workbench_pkg.host.faces import LeafFaces, faces_of
from workbench_pkg.host.leaf import Leaf


def whole_of(
    solved: SolvedPiece, leaves: Sequence[Leaf], confirmed: Mapping[tuple[str, str], str] | None = None
) -> tuple[WholePiece, tuple[str, ...]]:
    """The whole piece, and what could not be read of the faces of its solids.

    Parameters
    ----------
    solved : the parts through the year. leaves : the solids they were read from.
    confirmed : kinds of joints that the maker gave, by the keys of the two parts.
    """
    faces, unreadable = _faces(leaves)
    return whole_piece(solved, faces.bodies, faces, confirmed), unreadable


def _faces(leaves: Sequence[Leaf]) -> tuple[LeafFaces, tuple[str, ...]]:
    """The faces of all leaves; a leaf that the host cannot read costs only itself."""
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
            why = "" if body.planar or body.curved else "it has no faces"
        except Exception as error:
            why = f"the host failed to read its faces ({error})"
        if why:
            told.append(f"{leaf.name}: {why}; what it touches is not known")
        else:
            good.append(leaf)
    return faces_of(good), tuple(told)
