"""Where reports are kept from one run to the next; what lies in them is the host's business. Standard library only."""

from __future__ import annotations

import contextlib
import json
import os
import sys
import time
from pathlib import Path

from workbench_pkg.setup import UseError, written_whole
from workbench_pkg.setup.speech import say, word

UNUSED_S = 90 * 24 * 3600.0
STAMP, DAY_S = "swept", 24 * 3600.0


def cache_folder() -> Path:
    """The user's own folder for reports that can be made again."""
    if os.environ.get("XDG_CACHE_HOME"):
        base = Path(os.environ["XDG_CACHE_HOME"])
    elif sys.platform == "win32":
        base = Path(os.environ.get("LOCALAPPDATA") or Path.home() / "AppData/Local")
    elif sys.platform == "darwin":
        base = Path.home() / "Library/Caches"
    else:
        base = Path.home() / ".cache"
    return base / "heartside" / "reports"


def ready_cache(named: Path | None) -> Path | None:
    """The cache, made if need be: the one named, else the user's own, or None where that cannot be written to."""
    try:
        folder = named or cache_folder()
        folder.mkdir(parents=True, exist_ok=True)
        if not os.access(folder, os.W_OK):
            raise PermissionError(13, say("you may not write there"))
    except (OSError, RuntimeError) as error:
        if named is None:
            return None
        reason = word(str(getattr(error, "strerror", None) or error))
        raise UseError(
            say("no cache can be kept there ({reason})", reason=reason),
            where=str(named),
            todo=say("name another folder"),
        ) from None
    _sweep(folder)
    return folder


def note_failure(folder: Path, key: str, how: str, time_limit_s: float | None) -> None:
    """Keep how the host failed at some content, for ``--resume``."""
    place = folder / key[:2] / f"{key}.failed.json"
    with contextlib.suppress(OSError):
        place.parent.mkdir(parents=True, exist_ok=True)
        with written_whole(place, replace=True) as path:
            path.write_text(json.dumps({"how": how, "time_limit_s": time_limit_s}), encoding="ascii")


def _sweep(folder: Path) -> None:
    """Once a day, let go of what was of no use for months."""
    stamp, now = folder / STAMP, time.time()
    with contextlib.suppress(OSError):
        if stamp.exists() and now - stamp.stat().st_mtime < DAY_S:
            return
        stamp.touch()
        for path in folder.glob("??/*.json*"):
            if now - path.stat().st_mtime > UNUSED_S:
                path.unlink()
