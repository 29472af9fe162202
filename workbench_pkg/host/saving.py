"""Writing a copy of a document: whole or not at all, never over what was read, with its looks kept.

A save without the window leaves out the window's half of a document (colours, views); that half is taken over
from the file the document was read from. Nor does the host mend the paths of linked files when a document is
saved in another folder; that is done here too. No FreeCAD here, except through the document that is handed in.
"""

from __future__ import annotations

import contextlib
import os
import re
import zipfile
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Any
from xml.sax.saxutils import escape, unescape

from movement_core.errors import FileError
from movement_core.wording import say
from workbench_pkg.host.guard import check_file, name_shown
from workbench_pkg.host.looks import complete_window_half, window_half
from workbench_pkg.setup.whole_files import written_whole

_GUI_HALF = "GuiDocument.xml"
_LINKED_FILE = re.compile(r'(<XLink\w*\b[^>]*?\bfile=")([^"]+)(")')
_QUOTE = {'"': "&quot;"}


def save_copy(
    doc: Any,
    output: str | os.PathLike[str],
    *,
    original: str | os.PathLike[str] | None = None,
    replace: bool = False,
) -> Path:
    """Write the document to a new file; the open document stays what it is.

    Parameters
    ----------
    doc : the open document.
    output : where to; its folder must exist. FileError if it is the original, or exists and not `replace`.
    original : the FreeCAD document it was read from, if any: gives the looks, and the folder that links to
        other files are counted from.
    """
    target = Path(output)
    check_target(target, [original, doc.FileName or None], replace)
    source = Path(original) if original is not None and Path(original).suffix.lower() == ".fcstd" else None
    folder = target.resolve().parent
    try:
        with written_whole(target, replace=replace) as whole:
            bare = whole.with_name(f"{whole.name}.bare.FCStd")
            doc.saveCopy(str(bare))
            moved = None
            if source is not None and source.resolve().parent != folder:
                moved = _path_mender(source.resolve().parent, folder)
            join_halves(bare, source, whole, moved, lambda text: _window_half(text, doc))
            check_file(whole)
    except FileError:
        raise
    except FileExistsError:  # somebody made it in the meantime
        raise exists_already(str(target)) from None
    except Exception as error:
        raise FileError(say("it could not be written ({error})", error=error), where=str(target)) from error
    return target


def join_halves(
    saved: Path,
    original: Path | None,
    output: Path,
    mend: Callable[[str], str] | None = None,
    looks: Callable[[str | None], str] | None = None,
) -> bool:
    """Copy a saved document to `output` with the window's half of `original` added if it lacks its own.

    True when something was taken over. `looks` gives the text of the window's half from the original's, or from
    None where there is none, since the window hides what it does not speak of. `mend` may rewrite the text of
    Document.xml on the way.
    """
    with contextlib.ExitStack() as stack:
        new = stack.enter_context(zipfile.ZipFile(saved))
        stream = stack.enter_context(open(output, "xb"))
        out = stack.enter_context(zipfile.ZipFile(stream, "w", zipfile.ZIP_DEFLATED))
        names = new.namelist()
        for name in names:
            content = new.read(name)
            if mend and name == "Document.xml":
                content = mend(content.decode("utf-8")).encode("utf-8")
            out.writestr(name, content)
        kept: list[str] = []
        if original is not None and _GUI_HALF not in names:
            old = stack.enter_context(zipfile.ZipFile(original))
            listed = old.namelist()
            if _GUI_HALF in listed:
                # It and the files it refers to, which follow it in the order in which the host reads them.
                kept = [name for name in listed[listed.index(_GUI_HALF) :] if name not in names]
            for name in kept:
                content = old.read(name)
                if looks and name == _GUI_HALF:
                    content = looks(content.decode("utf-8")).encode("utf-8")
                out.writestr(name, content)
        if looks and not kept and _GUI_HALF not in names:
            out.writestr(_GUI_HALF, looks(None))
        out.close()
        stream.flush()
        os.fsync(stream.fileno())
    return bool(kept)


def _window_half(text: str | None, doc: Any) -> str:
    return window_half(doc, {}) if text is None else complete_window_half(text, doc)


def exists_already(where: str) -> FileError:
    """What to say of a file that is there and may not be replaced."""
    return FileError(say("it exists already"), where=where, todo=say("name a new file, or say --force"))


def check_target(target: Path, sources: Sequence[str | os.PathLike[str] | None], replace: bool) -> None:
    """FileError where a document must not be written: over what was read, or over a file that exists."""
    where = name_shown(target)
    if where != str(target):
        raise FileError(
            say("its name holds bytes that are no letters"), where=where, todo=say("name it otherwise")
        )
    if target.suffix.lower() != ".fcstd":
        raise FileError(
            say("the name of a document ends in .FCStd"), where=where, todo=say("give it that ending")
        )
    if not target.parent.is_dir():
        raise FileError(say("its folder does not exist"), where=where, todo=say("make the folder first"))
    try:
        target.resolve().stat()
    except FileNotFoundError:
        pass
    except (OSError, RuntimeError):  # a RuntimeError up to Python 3.12
        raise FileError(
            say("it is a link that leads round in a circle, or through what is no folder"),
            where=where,
            todo=say("name a new file"),
        ) from None
    for source in sources:
        if source is None:
            continue
        same = target.resolve() == Path(source).resolve()
        if not same and target.exists() and Path(source).exists():
            same = os.path.samefile(target, source)
        if same:
            raise FileError(say("that is the file that was read"), where=where, todo=say("name a new file"))
    if target.is_dir() or (target.exists() and not replace):
        raise exists_already(where)


def _path_mender(old: Path, new: Path) -> Callable[[str], str]:
    """Rewrites relative paths of linked files from one folder's point of view to another's."""

    def mended(match: re.Match[str]) -> str:
        path = unescape(match[2], {"&quot;": '"', "&apos;": "'"})
        if not os.path.isabs(path):
            path = Path(os.path.relpath(old / path, new)).as_posix()
        return f"{match[1]}{escape(path, _QUOTE)}{match[3]}"

    return lambda text: _LINKED_FILE.sub(mended, text)
