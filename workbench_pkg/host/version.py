"""Which host we run in."""

from __future__ import annotations

import FreeCAD as App


def host_version() -> tuple[int, int, int]:
    """Major, minor and patch number of the running FreeCAD, e.g. (0, 20, 2)."""
    major, minor, patch = (int("".join(c for c in part if c.isdigit()) or 0) for part in App.Version()[:3])
    return major, minor, patch


def gui_is_up() -> bool:
    """True in the real window. Importing FreeCADGui succeeds without one, so only this flag tells."""
    return bool(App.GuiUp)
