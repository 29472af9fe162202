"""``sheet``, inside the host: the movement sheet of one file."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from movement_core.sheet.pages.wish import SheetWish
from workbench_pkg.actions.sheet import sheet_file
from workbench_pkg.batch.inside.asked import settings_asked


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    wish = SheetWish(job["job"], job["place"], client=job["client"], paper=job["paper"], units=job["units"])
    entry = sheet_file(
        Path(job["file"]),
        Path(job["output"]),
        settings_asked(job),
        wish,
        shown=job["shown"],
        force=job["force"],
    )
    return {"entry": entry}
