"""``check``, inside the host: the report of one file, worked out or found again."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from movement_core.checks.finding import SEVERITIES
from movement_core.errors import HeartsideError
from movement_core.sheet.table import as_csv
from movement_core.sheet.text import as_text
from movement_core.wording import say
from workbench_pkg.actions.check import check_file
from workbench_pkg.batch.inside import cache
from workbench_pkg.batch.inside.asked import asked_of, settings_asked
from workbench_pkg.batch.wording import in_options


def begin(job: dict[str, Any]) -> dict[str, Any]:
    """What is known before the work: the key under which the report is kept, for the case that the host fails."""
    if not job.get("cache"):
        return {"key": None}
    day = job["date"] or datetime.date.today().isoformat()
    return {"key": cache.content_key(Path(job["file"]), asked_of(job), day, job.get("language") or "en")}


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    """The report as data, and in the forms that the core writes; ``found``: it was worked out earlier."""
    key, folder = job.get("key"), Path(job.get("cache") or "")
    if problem := _of_all(job):
        return {"errors": [{"message": problem, "part": ""}], "of_all": True}
    entry = cache.kept(folder, key) if key else None
    found = entry is not None
    if entry is None:
        how = cache.failed(folder, key, job.get("time_limit_s")) if key and job.get("resume") else None
        if how is not None:
            return {
                "errors": [
                    {
                        "message": f"{job['shown']}: " + say("{how} It was not tried again", how=how),
                        "part": "",
                    }
                ]
            }
        entry = check_file(Path(job["file"]), settings_asked(job), shown=job["shown"])
        if key:
            cache.keep(folder, key, entry)
    entry["path"] = job["shown"]
    known = job.get("known")
    if known is not None:
        for finding in entry["findings"]:
            finding["known"] = is_known(finding, known)
    answer: dict[str, Any] = {"entry": entry, "found": found}
    if "csv" in job["forms"]:
        answer["csv"] = as_csv(entry)
    if "text" in job["forms"]:
        answer["text"] = _text(entry)
    return answer


def _of_all(job: dict[str, Any]) -> str:
    """What is wrong with what was typed for several models, to be said once; "" if nothing."""
    if not job.get("several"):
        return ""
    try:
        settings_asked({**job, "no_settings": True})
    except HeartsideError as error:
        return in_options(str(error))
    return ""


def is_known(finding: Mapping[str, Any], known: Mapping[str, str]) -> bool:
    """Whether a finding was accepted: it is, as long as it has not become graver since.

    ``known``: identity → severity at which it was accepted.
    """
    severity = known.get(finding["id"])
    return severity in SEVERITIES and SEVERITIES.index(finding["severity"]) >= SEVERITIES.index(severity)


def _text(entry: Mapping[str, Any]) -> str:
    """The report as text, with the findings that are known counted only."""
    new = [finding for finding in entry["findings"] if not finding.get("known")]
    accepted = len(entry["findings"]) - len(new)
    text = as_text({**entry, "findings": new})
    told = say("Known findings, accepted: {count}.", count=accepted)
    return f"{text}\n\n{told}" if accepted else text
