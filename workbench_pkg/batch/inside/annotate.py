"""``annotate``, inside the host: a copy with the answer in it."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from movement_core.sheet.text import as_text
from workbench_pkg.actions.annotate import annotate_file
from workbench_pkg.batch.inside.asked import settings_asked


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    entry = annotate_file(
        Path(job["file"]), Path(job["output"]), settings_asked(job), shown=job["shown"], force=job["force"]
    )
    return {"entry": entry, "text": as_text(entry)}
