"""Host tests: pytest in the system's Python, with the installed FreeCAD imported as a library.

The host gets a private profile with this add-on in it, so that its own start-up files have run and documents
restore their objects as they would for a user.
"""

from __future__ import annotations

import os
import sys
import tempfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
LIBRARIES = ("/usr/lib/freecad/lib", "/usr/lib/freecad-python3/lib")

if str(ROOT) not in sys.path:
    sys.path.insert(0, str(ROOT))

import movement_core  # noqa: E402  (before the host puts the linked copy on the path)
import workbench_pkg  # noqa: E402, F401
from workbench_pkg.setup import link_project  # noqa: E402


def _import_host() -> None:
    home = os.environ.get("FREECAD_USER_HOME") or tempfile.mkdtemp(prefix="heartside-profile-")
    os.environ["FREECAD_USER_HOME"] = home
    link_project(Path(home))
    sys.path += [folder for folder in LIBRARIES if os.path.isdir(folder)]
    try:
        import FreeCAD
    except ImportError as error:
        raise pytest.UsageError(f"no FreeCAD for this Python ({error}); use: python3 -m tests host") from None
    # The host's program puts its own modules' folders on the path; the library leaves that to us.
    modules = Path(FreeCAD.getResourceDir()) / "Mod"
    sys.path += sorted(str(folder) for folder in modules.iterdir() if str(folder) not in sys.path)


_import_host()

from tests.running.fixtures import doc, documents_closed, host_version, note_where  # noqa: E402

__all__ = ["doc", "documents_closed", "host_version", "movement_core", "note_where"]
