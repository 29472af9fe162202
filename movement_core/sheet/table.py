"""The report of one file as CSV: one line a part."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping
from typing import Any

COLUMNS = (
    "path", "name", "key", "species", "kind", "cut", "ring_angle_deg", "length_mm", "width_mm", "thickness_mm",
    "today_mm", "driest_mm", "driest_month", "wettest_mm", "wettest_month",
    "thickness_today_mm", "thickness_driest_mm", "thickness_wettest_mm", "cup_today_mm", "cup_driest_mm",
    "cup_wettest_mm", "fitted_percent", "today_percent", "missing",
)  # fmt: skip


def as_csv(entry: Mapping[str, Any]) -> str:
    """Heading and one line a part; a figure that is only known as a range stands as ``least..most``."""
    out = io.StringIO(newline="")
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for part in entry["parts"]:
        writer.writerow([_cell(entry, part, column) for column in COLUMNS])
    return out.getvalue()


def _cell(entry: Mapping[str, Any], part: Mapping[str, Any], column: str) -> str:
    if column == "path":
        return _plain(entry["path"])
    if column == "missing":
        return " ".join(part["missing"])
    for group in ("thickness", "cup"):
        if column.startswith(f"{group}_") and column != "thickness_mm":
            return _figure(part[group] or {}, column.removeprefix(f"{group}_"))
    if column.endswith("_percent"):
        return _plain(part["moisture"][column])
    return _figure(part, column)


def _figure(group: Mapping[str, Any], name: str) -> str:
    spread = group.get(name.replace("_mm", "_range_mm")) if name.endswith("_mm") else None
    return f"{spread[0]}..{spread[1]}" if spread else _plain(group.get(name))


def _plain(value: Any) -> str:
    text = "" if value is None else str(value)
    # a spreadsheet must not take a name for a formula
    return f"'{text}" if isinstance(value, str) and text[:1] in "=+-@\t" else text
