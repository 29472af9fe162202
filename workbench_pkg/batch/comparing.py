"""Two reports of a check held against each other: findings by their identities, parts by their keys.

Standard library only.
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from workbench_pkg.setup import UseError
from workbench_pkg.setup.speech import phrase, say, word

SCHEMA = "heartside-check-1"
SIZES = ("today_mm", "driest_mm", "wettest_mm")
LEAST_DIFFERENCE = 0.05  # in a figure's own unit: below it there is nothing to see
Entry = dict[str, Any]


@dataclass(frozen=True)
class Tolerance:
    """How far two figures may lie apart and still be the same: a share of the larger, and never less than a little."""

    percent: float

    def is_same(self, one: float | None, other: float | None) -> bool:
        if one is None or other is None:
            return one is other
        return (
            abs(one - other) <= max(LEAST_DIFFERENCE, self.percent / 100 * max(abs(one), abs(other))) + 1e-9
        )


def read_report(path: Path) -> dict[str, Any]:
    """A report that ``check --format json`` (or jsonl) wrote. Raises UseError where it is none."""
    where = str(path)
    try:
        text = path.read_bytes().decode("utf-8-sig")
    except OSError as error:
        raise UseError(
            say("it cannot be read ({reason})", reason=word(str(error.strerror))),
            where=where,
            todo=say("check its name"),
        ) from None
    except UnicodeDecodeError:
        raise UseError(say("it is not written in UTF-8"), where=where, allowed=say(_WHAT)) from None
    try:
        report = _parsed(text)
    except json.JSONDecodeError as error:
        raise UseError(
            say("it is not JSON ({reason})", reason=error.msg),
            where=say("{name}, line {line}", name=where, line=error.lineno),
            allowed=say(_WHAT),
        ) from None
    except (RecursionError, ValueError):
        raise UseError(say("it is not JSON of ours"), where=where, allowed=say(_WHAT)) from None
    files = report.get("files") if isinstance(report, dict) else None
    if not isinstance(files, list) or report.get("schema") != SCHEMA or not all(_is_entry(e) for e in files):
        raise UseError(say("it is no report of a check"), where=where, allowed=say(_WHAT))
    if any("id" not in finding for entry in files for finding in entry["findings"]):
        raise UseError(
            say("its findings have no identities: it was made by an older Heartside"),
            where=where,
            todo=say("check anew"),
        )
    return dict(report)


_WHAT = phrase("what 'check --format json' or '--format jsonl' wrote")


def compare(old: Mapping[str, Any], new: Mapping[str, Any], tolerance: Tolerance) -> list[dict[str, Any]]:
    """What became of each model: its state, its new, gone and changed findings, its parts that changed.

    ``state``: "both", "new" or "gone". Models are matched by their paths, those left over by file names that occur once
    on either side; one alone on either side is taken for the same.
    """
    return [_compared(path, one, other, tolerance) for path, one, other in _pairs(old["files"], new["files"])]


def other_parts(old: Mapping[str, Any], new: Mapping[str, Any]) -> dict[str, tuple[int, int]]:
    """Models of which most parts have other names than before, so that they may be others altogether.

    Path → how many names are in both, and of how many of the model with fewer parts.
    """
    found = {}
    for path, one, other in _pairs(old["files"], new["files"]):
        before, after = ({part["name"] for part in (entry or {}).get("parts", [])} for entry in (one, other))
        common, of = len(before & after), min(len(before), len(after))
        if 2 * common < of:
            found[path] = (common, of)
    return found


def _pairs(old: Sequence[Entry], new: Sequence[Entry]) -> Iterator[tuple[str, Entry | None, Entry | None]]:
    before = {entry["path"]: entry for entry in old}
    after = {entry["path"]: entry for entry in new}
    if len(before) == len(after) == 1:
        ((_, one),) = before.items()
        ((path, other),) = after.items()
        yield path, one, other
        return
    left = [path for path in before if path not in after]
    came = [path for path in after if path not in before]
    moved = {}
    for path in came:
        alike = [one for one in left if _name(one) == _name(path)]
        if len(alike) == 1 and sum(_name(one) == _name(path) for one in came) == 1:
            moved[path] = alike[0]
    for path, entry in after.items():
        yield path, before.get(moved.get(path, path)), entry
    for path in left:
        if path not in moved.values():
            yield path, before[path], None


def _name(path: str) -> str:
    return os.path.basename(path.replace("\\", "/"))


def _compared(path: str, old: Entry | None, new: Entry | None, tolerance: Tolerance) -> dict[str, Any]:
    before = {finding["id"]: finding for finding in (old or {}).get("findings", [])}
    after = {finding["id"]: finding for finding in (new or {}).get("findings", [])}
    changed = [
        {"id": one, "finding": after[one], "changes": changes}
        for one in after
        if one in before and (changes := _finding_changes(before[one], after[one], tolerance))
    ]
    return {
        "path": path,
        "old_path": None if old is None else old["path"],
        "state": "both" if old and new else "new" if new else "gone",
        "settings": _settings_changes(old, new) if old and new else {},
        "new": [finding for one, finding in after.items() if one not in before],
        "gone": [finding for one, finding in before.items() if one not in after],
        "changed": changed,
        "parts": _part_changes(old, new, tolerance) if old and new else [],
        "errors": _new_errors(old, new),
        "judged": new is None or not new["errors"],
    }


def _finding_changes(old: Entry, new: Entry, tolerance: Tolerance) -> dict[str, list[Any]]:
    changes: dict[str, list[Any]] = {}
    if old["severity"] != new["severity"]:
        changes["severity"] = [old["severity"], new["severity"]]
    for name in {**old["figures"], **new["figures"]}:
        one, other = old["figures"].get(name), new["figures"].get(name)
        if not tolerance.is_same(one, other):
            changes[name] = [one, other]
    return changes


def _part_changes(old: Entry, new: Entry, tolerance: Tolerance) -> list[dict[str, Any]]:
    """Parts that came, went, or whose width differs."""
    before = {part["name"]: part for part in old["parts"]}
    after = {part["name"]: part for part in new["parts"]}
    told = [{"name": name, "state": "new", "changes": {}} for name in after if name not in before]
    told += [{"name": name, "state": "gone", "changes": {}} for name in before if name not in after]
    for name in after:
        if name in before:
            one, other = before[name], after[name]
            changes = {
                size: [one.get(size), other.get(size)]
                for size in SIZES
                if not tolerance.is_same(one.get(size), other.get(size))
            }
            if changes:
                told.append({"name": name, "state": "both", "changes": changes})
    return told


def _settings_changes(old: Entry, new: Entry) -> dict[str, list[Any]]:
    """The air and the day, where they are not the same: figures then differ for that alone."""
    told = {}
    for group, name in (("year", "name"), ("today", "date")):
        pair = [(entry.get(group) or {}).get(name) for entry in (old, new)]
        if pair[0] != pair[1]:
            told[group] = pair
    return told


def _new_errors(old: Entry | None, new: Entry | None) -> list[str]:
    before = {error["message"] for error in (old or {}).get("errors", [])}
    return [e["message"] for e in (new or {}).get("errors", []) if e["message"] not in before]


def _parsed(text: str) -> Any:
    """One JSON document, or a line of JSON for each model."""
    first = text.lstrip()[:400].partition("\n")[0]
    if '"heartside-check-line-1"' not in first:
        return json.loads(text)
    return {"schema": SCHEMA, "files": [json.loads(line) for line in text.splitlines() if line.strip()]}


def _is_entry(entry: Any) -> bool:
    lists = ("parts", "findings", "errors")
    return (
        isinstance(entry, dict)
        and isinstance(entry.get("path"), str)
        and all(isinstance(entry.get(name), list) for name in lists)
        and all(isinstance(one, dict) for name in lists for one in entry[name])
        and all(isinstance(part.get("name"), str) for part in entry["parts"])
        and all(isinstance(error.get("message"), str) for error in entry["errors"])
        and all(
            isinstance(finding.get("figures"), dict)
            and isinstance(finding.get("severity"), str)
            and isinstance(finding.get("parts"), list)
            and isinstance(finding.get("message"), str)
            and all(isinstance(v, int | float) for v in finding["figures"].values())
            for finding in entry["findings"]
        )
    )
