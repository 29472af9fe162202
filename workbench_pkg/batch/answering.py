"""Asking the host, and what every command does with its answer. Standard library only.

A host that dies without an answer gives one all the same: its own failure, said as such.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Sequence
from typing import Any

from workbench_pkg.batch.output import REPORTS, print_json
from workbench_pkg.setup import run_in_host
from workbench_pkg.setup.speech import say

ALL_HOLD, FINDINGS, NOT_CHECKED, INTERRUPTED = 0, 1, 2, 130
WORKER = "workbench_pkg.batch.worker"
# Our matrices are small: several threads only wait for each other, tenfold so on a busy machine.
ONE_THREAD = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1"}


def ask_worker(job: dict[str, Any]) -> dict[str, Any]:
    """Run one job in a host process and return its answer; a host that dies gives an answer with an error."""
    run = run_in_host(WORKER, [json.dumps(job)], capture=True, env=ONE_THREAD)
    if not run.crashed:
        try:
            return dict(json.loads(run.stdout or ""))
        except ValueError:
            pass
    message = say("{name}: the CAD host stopped without an answer", name=job.get("shown", job["command"]))
    if job.get("debug"):
        print(run.chatter, file=sys.stderr)
    return {"errors": [{"message": message, "part": ""}]}


def failed_entry(path: str, answer: dict[str, Any]) -> dict[str, Any]:
    """The report of a file of which there is nothing but errors."""
    return {"path": path, "parts": [], "findings": [], "errors": answer["errors"]}


def exit_code(entries: Sequence[dict[str, Any]]) -> int:
    """0 all hold, 1 findings, 2 something could not be checked, which outranks 1."""
    if any(entry["errors"] for entry in entries):
        return NOT_CHECKED
    return FINDINGS if any(entry["findings"] for entry in entries) else ALL_HOLD


def print_answer(options: argparse.Namespace, answer: dict[str, Any], found: dict[str, Any]) -> None:
    """An answer in the form that was asked for, and what could not be read for it."""
    errors = answer.get("errors", [])
    if options.format == "json":
        print_json({**REPORTS[options.command], **found, "errors": errors})
        return
    told = [answer["text"]] if answer.get("text") else []
    print("\n\n".join([*told, *(error["message"] for error in errors)]))


def tell_errors(answer: dict[str, Any]) -> bool:
    """Whether an answer holds errors; they are printed."""
    for error in answer.get("errors", []):
        print(error["message"], file=sys.stderr)
    return bool(answer.get("errors"))
