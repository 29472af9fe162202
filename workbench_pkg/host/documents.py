"""Opening documents and importing STEP and BREP, each in the way that does not crash on this host.

Objects of ours in a document come back whole only if their module has been imported before, so import
`workbench_pkg.objects` (the actions do) before opening.
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import FreeCAD as App
import numpy as np

from movement_core.errors import FileError
from movement_core.wording import say
from workbench_pkg.host.guard import LIMITS, Limits, check_file
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.step_names import match_names, named_solids
from workbench_pkg.host.version import host_version


@contextmanager
def opened(
    path: str | os.PathLike[str], *, limits: Limits = LIMITS, need_solids: bool = True
) -> Iterator[Any]:
    """An open, hidden document, closed again at the end together with the files it linked to."""
    before = set(App.listDocuments())
    try:
        yield open_file(path, limits=limits, need_solids=need_solids)
    finally:
        _close_all_but(before)


def open_file(path: str | os.PathLike[str], *, limits: Limits = LIMITS, need_solids: bool = True) -> Any:
    """Check a file, then open it (FCStd) or import it into a new document (STEP, BREP), without showing it.

    FileError if it cannot be used, or, with `need_solids`, holds no solid, shown or hidden; nothing stays open.
    """
    file = Path(path)
    kind = check_file(file, limits)
    before = set(App.listDocuments())
    try:
        doc = _open_document(file) if kind == "document" else _import(file, kind)
        if need_solids:
            _require_solids(doc, file)
    except FileError:
        _close_all_but(before)
        raise
    except Exception as error:
        _close_all_but(before)
        raise FileError(
            say("the host cannot read it ({reason})", reason=_one_line(error)), where=str(path)
        ) from error
    return doc


def close(doc: Any) -> None:
    """Close a document without saving it."""
    App.closeDocument(doc.Name)


def _open_document(file: Path) -> Any:
    real = str(file.resolve())
    others: list[Any] = list(App.listDocuments().values())
    for doc in others:
        if doc.FileName and os.path.realpath(doc.FileName) == real:
            raise FileError(say("it is open already"), where=str(file), todo=say("close it first"))
    doc = App.openDocument(real, True)
    if doc is None:
        raise FileError(say("the host opens nothing from it"), where=str(file))
    return doc


def _import(file: Path, kind: str) -> Any:
    doc = App.newDocument(file.stem or "Import", hidden=True)
    if kind == "brep" or host_version() < (1, 0, 0):
        # On 0.20 Import.insert crashes on every STEP file with more than one root; this gives the solids only.
        import Part

        Part.insert(str(file.resolve()), doc.Name)
        if kind == "step":
            _name_solids(doc, file)
    else:
        import Import

        Import.insert(str(file.resolve()), doc.Name)
    doc.recompute()
    return doc


def _name_solids(doc: Any, file: Path) -> None:
    """Give imported solids the names that the file has for them."""
    objects = [obj for obj in doc.Objects if hasattr(obj, "Shape") and len(obj.Shape.Solids) == 1]
    named = named_solids(file.read_text(encoding="utf-8", errors="replace"))
    vertices = [
        np.array([tuple(v.Point) for v in obj.Shape.Solids[0].Vertexes]).reshape(-1, 3) for obj in objects
    ]
    for obj, name in zip(objects, match_names(named, vertices)):
        if name:
            obj.Label = name


def _require_solids(doc: Any, file: Path) -> None:
    reading = read_leaves(doc, hidden=True, first_only=True)
    if reading.leaves:
        return
    reasons = [str(item) for item in reading.unreadable]
    more = f" ({'; '.join(reasons[:3])}{'; …' if len(reasons) > 3 else ''})" if reasons else ""
    raise FileError(
        say("there are no solids in it{more}", more=more),
        where=str(file),
        todo=say("give it at least one solid part"),
    )


def _close_all_but(names: set[str]) -> None:
    for name in set(App.listDocuments()) - names:
        App.closeDocument(name)


def _one_line(error: object) -> str:
    return "; ".join(line.strip() for line in str(error).splitlines() if line.strip()) or type(error).__name__
