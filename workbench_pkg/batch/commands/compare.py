"""``compare``: what became of the findings from one check to another. Standard library only; needs no host."""

from __future__ import annotations

import argparse
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

from workbench_pkg.batch import values
from workbench_pkg.batch.answering import ALL_HOLD, FINDINGS, NOT_CHECKED
from workbench_pkg.batch.comparing import Tolerance, compare, read_report
from workbench_pkg.batch.output import REPORTS, print_json
from workbench_pkg.batch.shared_words import Shared

MOST_PARTS = 12


def add_words(commands: Any, shared: Shared) -> None:
    words = commands.add_parser(
        "compare",
        parents=[shared.common],
        help="tell what is new, gone or changed between two reports of a check",
        description="Tell what is new, gone or changed between two reports that 'check --format json' wrote.",
        epilog="Ends with 0 when nothing new was found, 1 with new findings or graver ones, 2 when a report cannot be "
        "read or a model that could be checked no longer can.",
    )
    words.add_argument("old", type=Path, metavar="OLD", help="the earlier report, JSON or JSON lines")
    words.add_argument("new", type=Path, metavar="NEW", help="the later report")
    words.add_argument("--tolerance", type=values.percent, default=1.0, metavar="PERCENT",
                       help="figures that differ by less are the same (default 1)")  # fmt: skip
    words.add_argument("--format", choices=("text", "json"), default="text")
    words.set_defaults(command="compare", carry_out=carry_out, needs_host=False)


def carry_out(options: argparse.Namespace) -> int:
    old, new = read_report(options.old), read_report(options.new)
    models = compare(old, new, Tolerance(options.tolerance))
    if options.format == "json":
        report = {"old": str(options.old), "new": str(options.new), "models": models}
        print_json({**REPORTS["compare"], **report, "errors": []})
    else:
        print(_text(models))
    if any(model["errors"] for model in models):
        return NOT_CHECKED
    return FINDINGS if any(model["new"] or _graver(model) for model in models) else ALL_HOLD


def _graver(model: Mapping[str, Any]) -> bool:
    from workbench_pkg.batch.html_index import SEVERITIES

    pairs = (change["changes"].get("severity") for change in model["changed"])
    ranks = ([SEVERITIES.index(word) for word in pair if word in SEVERITIES] for pair in pairs if pair)
    return any(len(rank) == 2 and rank[1] < rank[0] for rank in ranks)


def _text(models: Sequence[Mapping[str, Any]]) -> str:
    blocks = [block for block in (_block(model) for model in models) if block]
    counts = {name: sum(len(model[name]) for model in models) for name in ("new", "gone", "changed")}
    same = sum(not _block(model) for model in models)
    summary = (
        f"{len(models)} model{'' if len(models) == 1 else 's'}, {same} the same. Findings: {counts['new']} new, "
        f"{counts['gone']} gone, {counts['changed']} changed."
    )
    return "\n\n".join([*blocks, summary])


def _block(model: Mapping[str, Any]) -> str:
    """What is to be told of one model; "" where nothing changed."""
    lines = []
    if model["state"] != "both":
        lines.append(
            "  not in the earlier report" if model["state"] == "new" else "  not in the later report"
        )
    elif model["old_path"] != model["path"]:
        lines.append(f"  before: {model['old_path']}")
    lines += [f"  {what}: {pair[0]} → {pair[1]}" for what, pair in model["settings"].items()]
    lines += [f"  could not be checked: {message}" for message in model["errors"]]
    lines += [f"  new      {_finding(finding)}" for finding in model["new"]]
    if model["judged"]:
        lines += [f"  gone     {_finding(finding)}" for finding in model["gone"]]
    for change in model["changed"]:
        lines.append(f"  changed  {_finding(change['finding'])}")
        lines.append(f"           {_changes(change['changes'])}")
    told = [_part(part) for part in model["parts"]] if model["judged"] else []
    lines += told[:MOST_PARTS]
    if len(told) > MOST_PARTS:
        lines.append(f"  … and {len(told) - MOST_PARTS} more parts")
    return "\n".join([_plain(model["path"]), *map(_plain, lines)]) if lines else ""


def _finding(finding: Mapping[str, Any]) -> str:
    return f"[{finding['severity']}] {' + '.join(map(str, finding['parts']))}: {finding['message']}"


def _part(part: Mapping[str, Any]) -> str:
    what = {"new": "came", "gone": "went"}.get(part["state"]) or _changes(part["changes"])
    return f"  part     {part['name']}: {what}"


def _changes(changes: Mapping[str, Sequence[Any]]) -> str:
    """Each figure before and after, its unit behind it."""
    told = []
    for name, (one, other) in changes.items():
        words, _, unit = name.rpartition("_")
        what, unit = (words.replace("_", " "), f" {unit}") if words else (name, "")
        told.append(f"{what} {_value(one)} → {_value(other)}{unit}")
    return ", ".join(told)


def _value(value: Any) -> str:
    return "?" if value is None else f"{value:.4g}" if isinstance(value, float) else str(value)


def _plain(line: str) -> str:
    """A line in which nothing moves a terminal's cursor."""
    return "".join(c if c.isprintable() else f"\\x{ord(c):02x}" for c in line)
