"""A private profile for the host, with this add-on in it."""

from __future__ import annotations

from pathlib import Path

ADDON_NAME = "Heartside"


def project_root() -> Path:
    """The folder that holds the packages `workbench_pkg` and `movement_core`."""
    return Path(__file__).resolve().parent.parent.parent


def link_project(profile: Path) -> Path:
    """Put the add-on into a profile's Mod folder by symbolic link, and return its folder there.

    The host restores our document objects only from modules that lie below a Mod folder, so a tool that opens
    documents needs the link as much as the window does. A clone is linked whole, as a user would; from
    an installed wheel only our own packages are linked, since the folder around them holds packages of
    another Python that the host must not see.
    """
    root = project_root()
    place = profile / "Mod" / ADDON_NAME
    if place.is_symlink() or place.exists():
        return place
    place.parent.mkdir(parents=True, exist_ok=True)
    if (root / "pyproject.toml").exists():
        place.symlink_to(root, target_is_directory=True)
    else:
        place.mkdir()
        for name in ("workbench_pkg", "movement_core"):
            (place / name).symlink_to(root / name, target_is_directory=True)
    return place
