"""``arrange``, inside the host: the ways to lay the boards of the panels of one file."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from movement_core.sheet.arrangements import study_text
from workbench_pkg.actions.arrange import arrange_file
from workbench_pkg.batch.inside.asked import settings_asked, table_errors


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    studies = arrange_file(
        Path(job["file"]), settings_asked(job), job["board"], may_turn=job["turn"], may_reorder=job["reorder"]
    )
    text = "\n\n".join(study_text(study) for study in studies)
    return {"studies": studies, "text": text, "errors": table_errors(job)}
