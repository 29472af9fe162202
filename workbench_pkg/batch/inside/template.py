"""``template``, inside the host: the drilling template of one file."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from workbench_pkg.actions.hardware import PlaceWish
from workbench_pkg.actions.template import template_file
from workbench_pkg.batch.inside.asked import settings_asked


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    wish = PlaceWish(job["top"], job["flatness"], tuple(job["kinds"]), job["fixed"])
    data = template_file(
        Path(job["file"]),
        Path(job["output"]),
        settings_asked(job),
        wish,
        job["plan"],
        job["paper"],
        job["units"],
        job["force"],
    )
    return {"template": data}
