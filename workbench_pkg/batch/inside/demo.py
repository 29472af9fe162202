"""``demo``, inside the host: build the models."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from workbench_pkg.demo.build import build_demo


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    return {"files": [str(path) for path in build_demo(Path(job["folder"]))]}
