"""Where our pictures are."""

from __future__ import annotations

from pathlib import Path

_FOLDER = Path(__file__).resolve().parents[1] / "entry"


def icon(name: str) -> str:
    """Path of an icon by its plain name; "" where there is none, which the host shows as no icon."""
    path = _FOLDER / f"{name}.svg"
    return str(path) if path.exists() else ""
