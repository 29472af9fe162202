"""What several commands are asked with, inside the host: typed words, and the settings file beside the model."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any

from movement_core.piece.limits import OwnLimits
from workbench_pkg.actions.check import table_beside
from workbench_pkg.actions.settings import LoggerAnswers, Settings, settings_from_texts
from workbench_pkg.batch.inside.settings_file import SettingsFile, nearest_settings, read_settings

ROOMS = {
    "heating": "heating_c",
    "cooling": "cooling_c",
    "humidify": "humidifier_rh",
    "dehumidify": "dehumidifier_rh",
}
OF_THE_YEAR = (*ROOMS, "date-order", "temperature-unit", "columns", "complete-with")
OF_THE_SHOP = ("shop", "built-on")


@dataclass(frozen=True)
class Asked:
    """What one job is asked with.

    Attributes
    ----------
    words : by the names of the command line, those of a settings file under those that were typed.
    limits : a maker's own limits.
    source : the settings file that was read, if any.
    """

    words: dict[str, Any]
    limits: OwnLimits
    source: Path | None

    def settings(self) -> Settings:
        """The air, the day and the shop. Raises InputError or FileError where they cannot be."""
        words = self.words
        return settings_from_texts(
            words.get("year"),
            words.get("date"),
            words.get("moisture"),
            shop=words.get("shop"),
            built_on=words.get("built-on"),
            rooms={ROOMS[name]: words[name] for name in ROOMS if name in words},
            answers=LoggerAnswers(
                words.get("date-order"),
                words.get("temperature-unit"),
                words.get("columns"),
                words.get("complete-with"),
            ),
        )


def asked_of(job: dict[str, Any]) -> Asked:
    """What was typed, and what the settings file nearest to the model says where nothing was typed.

    A year that was typed takes the place of the file's year with all that belongs to it (its rooms, how its logger
    writes), a shop or day of building that of both.
    """
    typed = _typed(job)
    file = _settings_file(job)
    words = dict(file.words)
    if "year" in typed:
        words = {name: value for name, value in words.items() if name not in OF_THE_YEAR}
    if any(name in typed for name in OF_THE_SHOP):
        words = {name: value for name, value in words.items() if name not in OF_THE_SHOP}
    return Asked({**words, **typed}, file.limits, file.path)


def settings_asked(job: dict[str, Any]) -> Settings:
    """The air, the day and the shop of a job. Raises InputError or FileError where they cannot be."""
    return asked_of(job).settings()


def limits_asked(job: dict[str, Any]) -> OwnLimits:
    """The limits that belong to a job: those of the settings file nearest to its model."""
    return asked_of(job).limits if "file" in job else OwnLimits()


def table_errors(job: dict[str, Any]) -> list[dict[str, str]]:
    """What cannot be read in the tags beside a model."""
    return [
        {"message": f"{job['shown']}: {problem}", "part": ""}
        for problem in table_beside(Path(job["file"]))[1]
    ]


def _typed(job: dict[str, Any]) -> dict[str, Any]:
    plain = {
        "year": job["year"],
        "date": job["date"],
        "moisture": job["moisture"],
        "shop": job["shop"],
        "built-on": job["built_on"],
        "date-order": job["date_order"],
        "temperature-unit": job["temperature_unit"],
        "columns": job["columns"],
        "complete-with": job["complete_with"],
        **{name: job["rooms"].get(field) for name, field in ROOMS.items()},
    }
    return {name: value for name, value in plain.items() if value is not None and value != {}}


def _settings_file(job: dict[str, Any]) -> SettingsFile:
    if job.get("no_settings"):
        return SettingsFile()
    named = job.get("settings_file")
    path = Path(named) if named else nearest_settings(Path(job["file"])) if "file" in job else None
    return read_settings(path) if path is not None else SettingsFile()
