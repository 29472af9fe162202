"""``compare``: what became of the findings from one check to another. Standard library only; needs no host."""

from __future__ import annotations

import argparse
from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import Any

from workbench_pkg.batch import values
from workbench_pkg.batch.answering import ALL_HOLD, FINDINGS, NOT_CHECKED
from workbench_pkg.batch.comparing import Tolerance, compare, other_parts, read_report
from workbench_pkg.batch.output import REPORTS, print_json
from workbench_pkg.batch.shared_words import Shared
from workbench_pkg.setup.speech import phrase, say, word

MOST_PARTS = 12


def add_words(commands: Any, shared: Shared) -> None:
    words = commands.add_parser(
        "compare",
        parents=[shared.common],
        help=say("tell what is new, gone or changed between two reports of a check"),
        description=say(
            "Tell what is new, gone or changed between two reports that 'check --format json' wrote."
        ),
        epilog=say(
            "Ends with 0 when nothing new was found, 1 with new findings or graver ones, 2 when a report cannot be "
            "read or a model that could be checked no longer can."
        ),
    )
    words.add_argument("old", type=Path, metavar="OLD", help=say("the earlier report, JSON or JSON lines"))
    words.add_argument("new", type=Path, metavar="NEW", help=say("the later report"))
    words.add_argument("--tolerance", type=values.percent, default=1.0, metavar="PERCENT",
                       help=say("figures that differ by less are the same (default 1)"))  # fmt: skip
    words.add_argument("--format", choices=("text", "json"), default="text")
    words.set_defaults(command="compare", carry_out=carry_out, needs_host=False)


def carry_out(options: argparse.Namespace) -> int:
    old, new = read_report(options.old), read_report(options.new)
    models = compare(old, new, Tolerance(options.tolerance))
    if options.format == "json":
        report = {"old": str(options.old), "new": str(options.new), "models": models}
        print_json({**REPORTS["compare"], **report, "errors": []})
    else:
        print(_text(models, other_parts(old, new)))
    if any(model["errors"] for model in models):
        return NOT_CHECKED
    return FINDINGS if any(model["new"] or _graver(model) for model in models) else ALL_HOLD


def _graver(model: Mapping[str, Any]) -> bool:
    from workbench_pkg.batch.html_index import SEVERITIES

    pairs = (change["changes"].get("severity") for change in model["changed"])
    ranks = ([SEVERITIES.index(word) for word in pair if word in SEVERITIES] for pair in pairs if pair)
    return any(len(rank) == 2 and rank[1] < rank[0] for rank in ranks)


def _text(models: Sequence[Mapping[str, Any]], others: Mapping[str, tuple[int, int]]) -> str:
    """``others``: what ``other_parts`` found."""
    blocks = [
        _another(block, others.get(model["path"]))
        for model, block in ((model, _block(model)) for model in models)
        if block
    ]
    counts = {name: sum(len(model[name]) for model in models) for name in ("new", "gone", "changed")}
    same = sum(not _block(model) for model in models)
    told = say(
        "{same} the same. Findings: {new} new, {gone} gone, {changed} changed.",
        same=same,
        new=counts["new"],
        gone=counts["gone"],
        changed=counts["changed"],
    )
    many = say("{count} models, {told}", count=len(models), told=told)
    return "\n\n".join([*blocks, say("1 model, {told}", told=told) if len(models) == 1 else many])


def _another(block: str, counts: tuple[int, int] | None) -> str:
    """What is told of a model, headed by that it may be another one altogether."""
    if counts is None:
        return block
    head, _, rest = block.partition("\n")
    asked = say(
        "{common} of {count} part names are in both reports: are these two different models?",
        common=counts[0],
        count=counts[1],
    )
    return f"{head}\n  {asked}\n{rest}"


def _block(model: Mapping[str, Any]) -> str:
    """What is to be told of one model; "" where nothing changed."""
    lines = []
    if model["state"] != "both":
        new = say("not in the earlier report")
        lines.append("  " + (new if model["state"] == "new" else say("not in the later report")))
    elif model["old_path"] != model["path"]:
        lines.append("  " + say("before: {path}", path=model["old_path"]))
    lines += [
        f"  {word(what)}: {word(str(pair[0]))} → {word(str(pair[1]))}"
        for what, pair in model["settings"].items()
    ]
    lines += ["  " + say("could not be checked: {message}", message=message) for message in model["errors"]]
    lines += [f"  {_headed('new')}{_finding(finding)}" for finding in model["new"]]
    if model["judged"]:
        lines += [f"  {_headed('gone')}{_finding(finding)}" for finding in model["gone"]]
    for change in model["changed"]:
        lines.append(f"  {_headed('changed')}{_finding(change['finding'])}")
        lines.append(f"  {_headed('')}{_changes(change['changes'])}")
    told = [_part(part) for part in model["parts"]] if model["judged"] else []
    lines += told[:MOST_PARTS]
    if len(told) > MOST_PARTS:
        lines.append("  " + say("… and {count} more parts", count=len(told) - MOST_PARTS))
    return "\n".join([_plain(model["path"]), *map(_plain, lines)]) if lines else ""


_HEADS = {"new": phrase("new"), "gone": phrase("gone"), "changed": phrase("changed"), "part": phrase("part")}


def _headed(kind: str) -> str:
    """What a line is about, in a column as wide as the widest such word."""
    wide = max(len(say(head)) for head in _HEADS.values())
    return f"{say(_HEADS[kind]) if kind else '':{wide}}  "


def _finding(finding: Mapping[str, Any]) -> str:
    return f"[{word(finding['severity'])}] {' + '.join(map(str, finding['parts']))}: {finding['message']}"


def _part(part: Mapping[str, Any]) -> str:
    came = {"new": say("came"), "gone": say("went")}
    return f"  {_headed('part')}{part['name']}: {came.get(part['state']) or _changes(part['changes'])}"


def _changes(changes: Mapping[str, Sequence[Any]]) -> str:
    """Each figure before and after, its unit behind it."""
    told = []
    for name, (one, other) in changes.items():
        words, _, unit = name.rpartition("_")
        what, unit = (words.replace("_", " "), f" {unit}") if words else (name, "")
        told.append(f"{word(what)} {word(_value(one))} → {word(_value(other))}{unit}")
    return ", ".join(told)


def _value(value: Any) -> str:
    return "?" if value is None else f"{value:.4g}" if isinstance(value, float) else str(value)


def _plain(line: str) -> str:
    """A line in which nothing moves a terminal's cursor."""
    return "".join(c if c.isprintable() else f"\\x{ord(c):02x}" for c in line)
