"""What the command line runs inside the host: one job in as JSON, one answer out as JSON on stdout."""

from __future__ import annotations

import json
import sys
import traceback
from importlib import import_module
from typing import Any

from workbench_pkg.batch.wording import told

# command → module of batch.inside that carries it out, imported when it is first asked for
JOBS = {
    "check": "check",
    "annotate": "annotate",
    "arrange": "arrange",
    "demo": "demo",
    "hold": "hold",
    "stock": "stock",
    "woods": "listing",
    "years": "listing",
    "places": "listing",
}
NEED_TAGS = ("arrange", "hold")  # where tags are missing, a table that could not be read may be why


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    """The answer to one job; every error of ours or of the host becomes a line in ``errors``."""
    try:
        module = import_module(f"workbench_pkg.batch.inside.{JOBS[job['command']]}")
        return dict(module.carry_out(job))
    except Exception as error:  # the host's own errors have no common base, and no file may stop the others
        if job.get("debug"):
            traceback.print_exc()
        return {"errors": [{"message": told(error, job), "part": ""}, *_more_errors(job)]}


def _more_errors(job: dict[str, Any]) -> list[dict[str, str]]:
    if job["command"] not in NEED_TAGS:
        return []
    from workbench_pkg.batch.inside.asked import table_errors

    return table_errors(job)


def read_job(text: str) -> dict[str, Any]:
    """A job from its JSON. Bytes that the caller could not read as letters are read here, in UTF-8."""
    job = json.loads(text)
    return {key: _decoded(value) if isinstance(value, str) else value for key, value in job.items()}


def _decoded(text: str) -> str:
    return text.encode("utf-8", "surrogateescape").decode("utf-8", "surrogateescape")


if __name__ == "__main__":
    json.dump(carry_out(read_job(sys.argv[1])), sys.stdout)
