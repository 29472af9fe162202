"""The report of one file as text for a terminal."""

from __future__ import annotations

import textwrap
import unicodedata
from collections.abc import Mapping, Sequence
from typing import Any

WIDTH = 118
CAUTION = (
    "Estimates from averages, for movement only: a board differs from its species by some 15 %. Loads, overhead, "
    "children, stairs and wall fixings belong to local codes and licensed practice."
)


def as_text(entry: Mapping[str, Any]) -> str:
    """A heading, one line a part, what is missing, what was found, what could not be read."""
    blocks = [_heading(entry)]
    if entry["parts"]:
        blocks.append(_table(entry["parts"]))
    blocks += _notes(entry["parts"])
    blocks += _findings(entry["findings"])
    blocks += _errors(entry["errors"])
    if any(part["today_mm"] is not None or part.get("today_range_mm") for part in entry["parts"]):
        blocks.append(_wrapped(CAUTION, ""))
    return "\n\n".join(blocks)


def _heading(entry: Mapping[str, Any]) -> str:
    lines = [printable(entry["path"])]
    year, today = entry.get("year"), entry.get("today")
    if year and today:
        low, high = min(year["moisture_percent"]), max(year["moisture_percent"])
        about = (
            f"Year: {year['name']}: wood comes to {low:.1f} % in {year['driest_month']}, {high:.1f} % in "
            f"{year['wettest_month']} ({year['basis']})."
        )
        lines.append(_wrapped(about, "  "))
        if today["moisture_percent"] is not None:
            lines.append(f"  Today: {today['date']}, wood at {today['moisture_percent']:.1f} %.")
    return "\n".join(lines)


_COLUMNS = (
    "part",
    "material",
    "rings",
    "length",
    "width",
    "thick",
    "today",
    "driest",
    "wettest",
    "thickness",
    "cup",
)


def _table(parts: Sequence[Mapping[str, Any]]) -> str:
    rows = [_COLUMNS, *(_row(part) for part in parts)]
    widths = [max(_cells(row[column]) for row in rows) for column in range(len(_COLUMNS))]
    left = {0, 1, 2}
    lines = []
    for row in rows:
        cells = [
            _padded(cell, widths[i], left=i in left) for i, cell in enumerate(row) if widths[i] or i in left
        ]
        lines.append("  " + "  ".join(cells).rstrip())
    lines.insert(1, "  " + "  ".join("-" * w for w in widths))
    lines.append(
        "  Sizes in mm as drawn; today, driest and wettest are the width across the grain, with the month."
    )
    lines.append(
        "  Thickness and cup: driest..wettest; cup + is a crown on the show face, − a hollow; ? is not known."
    )
    return "\n".join(lines)


def _row(part: Mapping[str, Any]) -> tuple[str, ...]:
    as_drawn = [part["length_mm"], part["width_mm"], part["thickness_mm"]]
    if part["width_mm"] is None:
        as_drawn = list(part["box_mm"])
    cut = part["cut"] or ("?" if part["kind"] in (None, "wood") else "")
    angle = part["ring_angle_deg"]
    rings = f"{cut} {angle:.0f}°" if angle is not None else cut
    cup = part["cup"]
    return (
        shortened(printable(part["name"]), 26),
        shortened(printable(part["species"] or "?"), 24),
        rings,
        *(f"{value:.1f}" for value in as_drawn),
        _size(part, "today"),
        _size(part, "driest", month=True),
        _size(part, "wettest", month=True),
        _span(part["thickness"], "{:.2f}"),
        _span(cup, "{:+.2f}") if cup else "",
    )


def _size(part: Mapping[str, Any], name: str, month: bool = False) -> str:
    value, spread = part[f"{name}_mm"], part.get(f"{name}_range_mm")
    when = f" {part[f'{name}_month'][:3]}" if month and part[f"{name}_month"] else ""
    if spread:
        return f"{spread[0]:.1f}–{spread[1]:.1f}{when}"
    return "?" if value is None else f"{value:.1f}{when}"


def _span(group: Mapping[str, Any] | None, form: str) -> str:
    if not group:
        return "?"
    texts = []
    for name in ("driest", "wettest"):
        value, spread = group[f"{name}_mm"], group.get(f"{name}_range_mm")
        if value is None and not spread:
            return "?"
        texts.append("/".join(form.format(v) for v in spread) if spread else form.format(value))
    return texts[0] if texts[0] == texts[1] else "..".join(texts)


def _notes(parts: Sequence[Mapping[str, Any]]) -> list[str]:
    lines = []
    for part in parts:
        inferred = [
            f"{word} ({fact['reason']})"
            for word, fact in part["facts"].items()
            if fact["origin"] == "inferred" and word in ("grain", "show", "rings")
        ]
        notes = [f"inferred: {'; '.join(inferred)}"] if inferred else []
        lines += [_wrapped(f"{printable(part['name'])}: {note}", "  ") for note in [*notes, *part["notes"]]]
    return ["Inferred and noted\n" + "\n".join(lines)] if lines else []


def _findings(findings: Sequence[Mapping[str, Any]]) -> list[str]:
    if not findings:
        return ["No findings."]
    lines = []
    for finding in findings:
        where = ", ".join(printable(name) for name in finding["parts"])
        when = f" (worst in {finding['month']})" if finding["month"] else ""
        lines.append(_wrapped(f"[{finding['severity']}] {where}: {finding['message']}{when}", "  "))
        lines.append(_wrapped(f"→ {finding['remedy']}", "      "))
    count = f"{len(findings)} finding{'s' if len(findings) > 1 else ''}"
    return [count + "\n" + "\n".join(lines)]


def _errors(errors: Sequence[Mapping[str, Any]]) -> list[str]:
    if not errors:
        return []
    return ["Could not be checked\n" + "\n".join(_wrapped(printable(e["message"]), "  ") for e in errors)]


def _wrapped(text: str, indent: str) -> str:
    return textwrap.fill(text, WIDTH, initial_indent=indent, subsequent_indent=indent + "  ")


def printable(text: str) -> str:
    """Text from a file with everything that could move a terminal's cursor shown as a code."""
    return "".join(
        c if c.isprintable() and unicodedata.category(c) not in ("Cf", "Cs") else f"\\x{ord(c):02x}"
        for c in text
    )


def _cells(text: str) -> int:
    """Columns that a text takes in a terminal."""
    return sum(
        0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1 for c in text
    )


def _padded(text: str, width: int, left: bool) -> str:
    fill = " " * (width - _cells(text))
    return text + fill if left else fill + text


def shortened(text: str, cells: int) -> str:
    """The text cut to so many columns, with an ellipsis where it was cut."""
    if _cells(text) <= cells:
        return text
    kept = ""
    for c in text:
        if _cells(kept + c) > cells - 1:
            break
        kept += c
    return kept + "…"
