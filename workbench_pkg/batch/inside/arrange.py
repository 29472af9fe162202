"""``arrange``, inside the host: the ways to lay the boards of the panels of one file."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from movement_core.sheet.arrangements import study_text
from workbench_pkg.actions.arrange import arrange_file
from workbench_pkg.batch.inside.asked import settings_asked, table_errors


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    found = arrange_file(
        Path(job["file"]), settings_asked(job), job["board"], may_turn=job["turn"], may_reorder=job["reorder"]
    )
    refused = [{"message": f"{job['shown']}: {reason}", "part": ""} for reason in found.refused]
    text = "\n\n".join(study_text(study) for study in found.studies)
    return {"studies": list(found.studies), "text": text, "errors": [*table_errors(job), *refused]}
