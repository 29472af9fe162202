"""``check``, inside the host: the report of one file."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from movement_core.sheet.table import as_csv
from movement_core.sheet.text import as_text
from workbench_pkg.actions.check import check_file
from workbench_pkg.batch.inside.asked import settings_asked


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    entry = check_file(Path(job["file"]), settings_asked(job), shown=job["shown"])
    return {"entry": entry, "text": as_text(entry), "csv": as_csv(entry)}
