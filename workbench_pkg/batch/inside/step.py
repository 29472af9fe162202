"""``step``, inside the host: one file with its slots cut, as STEP."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from workbench_pkg.actions.hardware import PlaceWish
from workbench_pkg.actions.step import export_cut_file
from workbench_pkg.batch.inside.asked import settings_asked


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    wish = PlaceWish(job["top"], job["flatness"], tuple(job["kinds"]), job["fixed"])
    report = export_cut_file(
        Path(job["file"]), Path(job["output"]), settings_asked(job), wish, job["plan"], job["force"]
    )
    return {"parts": list(report.parts), "cut": list(report.cut), "not_cut": list(report.refused)}
