"""What the command line runs inside the host: one job in as JSON, one answer out as JSON on stdout."""

from __future__ import annotations

import json
import sys
import traceback
from pathlib import Path
from typing import Any

from workbench_pkg.batch.wording import told


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    """The answer to one job; every error of ours or of the host becomes a line in ``errors``."""
    try:
        return JOBS[job["command"]](job)
    except Exception as error:  # the host's own errors have no common base, and no file may stop the others
        if job.get("debug"):
            traceback.print_exc()
        # Where tags are missing, a table that could not be read may be why.
        more = _table_errors(job) if job["command"] in ("arrange", "hold") else []
        return {"errors": [{"message": told(error, job), "part": ""}, *more]}


def read_job(text: str) -> dict[str, Any]:
    """A job from its JSON. Bytes that the caller could not read as letters are read here, in UTF-8."""
    job = json.loads(text)
    return {key: _decoded(value) if isinstance(value, str) else value for key, value in job.items()}


def _decoded(text: str) -> str:
    return text.encode("utf-8", "surrogateescape").decode("utf-8", "surrogateescape")


def _settings(job: dict[str, Any]) -> Any:
    from workbench_pkg.actions.settings import LoggerAnswers, settings_from_texts

    return settings_from_texts(
        job["year"],
        job["date"],
        job["moisture"],
        shop=job["shop"],
        built_on=job["built_on"],
        rooms=job["rooms"],
        answers=LoggerAnswers(
            job["date_order"], job["temperature_unit"], job["columns"], job["complete_with"]
        ),
    )


def _table_errors(job: dict[str, Any]) -> list[dict[str, str]]:
    """What cannot be read in the tags beside a model."""
    from workbench_pkg.actions.check import table_beside

    return [
        {"message": f"{job['shown']}: {problem}", "part": ""}
        for problem in table_beside(Path(job["file"]))[1]
    ]


def _check(job: dict[str, Any]) -> dict[str, Any]:
    from movement_core.sheet.table import as_csv
    from movement_core.sheet.text import as_text
    from workbench_pkg.actions.check import check_file

    entry = check_file(Path(job["file"]), _settings(job), shown=job["shown"])
    return {"entry": entry, "text": as_text(entry), "csv": as_csv(entry)}


def _annotate(job: dict[str, Any]) -> dict[str, Any]:
    from movement_core.sheet.text import as_text
    from workbench_pkg.actions.annotate import annotate_file

    entry = annotate_file(
        Path(job["file"]), Path(job["output"]), _settings(job), shown=job["shown"], force=job["force"]
    )
    return {"entry": entry, "text": as_text(entry)}


def _arrange(job: dict[str, Any]) -> dict[str, Any]:
    from movement_core.sheet.arrangements import study_text
    from workbench_pkg.actions.arrange import arrange_file

    studies = arrange_file(
        Path(job["file"]), _settings(job), job["board"], may_turn=job["turn"], may_reorder=job["reorder"]
    )
    text = "\n\n".join(study_text(study) for study in studies)
    return {"studies": studies, "text": text, "errors": _table_errors(job)}


def _hold(job: dict[str, Any]) -> dict[str, Any]:
    from movement_core.sheet.holding_text import holding_text
    from workbench_pkg.actions.hold import HoldWish, hold_file

    wish = HoldWish(job["top"], job["flatness"], tuple(job["kinds"]), job["fixed"])
    tops = hold_file(Path(job["file"]), _settings(job), wish)
    return {"tops": tops, "text": holding_text(tops), "errors": _table_errors(job)}


def _demo(job: dict[str, Any]) -> dict[str, Any]:
    from workbench_pkg.demo.build import build_demo

    return {"files": [str(path) for path in build_demo(Path(job["folder"]))]}


def _stock(job: dict[str, Any]) -> dict[str, Any]:
    from movement_core.sheet.stock import judge_stock, stock_text
    from movement_core.wood import find_species

    entry = judge_stock(
        find_species(job["wood"]),
        job["thickness"],
        job["readings"],
        _settings(job).year,
        (job["room"][0], job["room"][1]),
        skin_mc=job["skin"],
        meter=job["meter"],
        wood_temperature_c=job["wood_temperature"],
        species_correction=job["species_correction"],
        set_gravity=job["set_gravity"],
    )
    return {"stock": entry, "text": stock_text(entry)}


def _woods(job: dict[str, Any]) -> dict[str, Any]:
    from movement_core.sheet.listing import list_species

    return {"text": list_species(job["word"])}


def _places(job: dict[str, Any]) -> dict[str, Any]:
    from movement_core.sheet.listing import list_places

    return {"text": list_places(job["word"])}


def _years(job: dict[str, Any]) -> dict[str, Any]:
    from movement_core.sheet.listing import list_years

    return {"text": list_years(job["word"])}


JOBS = {
    "check": _check,
    "annotate": _annotate,
    "arrange": _arrange,
    "demo": _demo,
    "hold": _hold,
    "stock": _stock,
    "woods": _woods,
    "years": _years,
    "places": _places,
}

if __name__ == "__main__":
    json.dump(carry_out(read_job(sys.argv[1])), sys.stdout)
