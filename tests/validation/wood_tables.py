"""Reads the published tables beside the validation tests; each file names its source in its first line."""

from __future__ import annotations

import csv
from pathlib import Path


def published_rows(name):
    """Rows of tests/validation/data/<name>.csv as dictionaries of strings."""
    text = (Path(__file__).parent / "data" / f"{name}.csv").read_text(encoding="utf-8").splitlines()
    return list(csv.DictReader(line for line in text if not line.startswith("#")))
