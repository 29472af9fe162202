"""What several commands are asked with, inside the host."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from workbench_pkg.actions.check import table_beside
from workbench_pkg.actions.settings import LoggerAnswers, Settings, settings_from_texts


def settings_asked(job: dict[str, Any]) -> Settings:
    """The air, the day and the shop that were typed."""
    answers = LoggerAnswers(job["date_order"], job["temperature_unit"], job["columns"], job["complete_with"])
    return settings_from_texts(
        job["year"],
        job["date"],
        job["moisture"],
        shop=job["shop"],
        built_on=job["built_on"],
        rooms=job["rooms"],
        answers=answers,
    )


def table_errors(job: dict[str, Any]) -> list[dict[str, str]]:
    """What cannot be read in the tags beside a model."""
    return [
        {"message": f"{job['shown']}: {problem}", "part": ""}
        for problem in table_beside(Path(job["file"]))[1]
    ]
