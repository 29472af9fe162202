"""``hold``, inside the host: the plans for the tops of one file."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from movement_core.sheet.holding_text import holding_text
from workbench_pkg.actions.hold import HoldWish, hold_file
from workbench_pkg.batch.inside.asked import settings_asked, table_errors


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    wish = HoldWish(job["top"], job["flatness"], tuple(job["kinds"]), job["fixed"])
    tops = hold_file(Path(job["file"]), settings_asked(job), wish)
    return {"tops": tops, "text": holding_text(tops), "errors": table_errors(job)}
