"""The whole report of the demo models holds to its published schema."""

from __future__ import annotations

import json
import subprocess
import sys

import jsonschema

from movement_core.sheet.schemas import schema
from tests.host.test_command_line import ROOT, heartside


def test_the_report_of_the_demo_models_holds(tmp_path):
    made = subprocess.run(
        [sys.executable, "-m", "workbench_pkg", "demo", "--output", str(tmp_path)],
        cwd=ROOT, capture_output=True, encoding="utf-8", timeout=300, stdin=subprocess.DEVNULL, check=False,
    )  # fmt: skip
    models = sorted([*tmp_path.rglob("*.FCStd"), *tmp_path.rglob("*.step")])
    assert len(models) >= 3, made.stderr
    run = heartside("check", *models, "--date", "2026-03-15", "--format", "json")
    report = json.loads(run.stdout)
    jsonschema.Draft202012Validator(schema("heartside-check-1")).validate(report)
    assert len(report["files"]) == len(models) and all(one["parts"] for one in report["files"])
