"""Write the answer into a document: labels at the parts and plain properties, and take it out again."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from pathlib import Path
from typing import Any

import numpy as np

from movement_core.checks.finding import BREAKS, JAMS, SHOWS, UNKNOWN
from movement_core.sheet.label_places import label_places
from movement_core.wording import say
from workbench_pkg.actions.check import Answer, table_beside, work_out
from workbench_pkg.actions.joint import joints_beside
from workbench_pkg.actions.measured import measured_beside
from workbench_pkg.actions.settings import Settings
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.actions.year import keep_settings
from workbench_pkg.host.documents import opened
from workbench_pkg.host.marks import explained
from workbench_pkg.host.saving import check_target, save_copy
from workbench_pkg.host.units import short_length
from workbench_pkg.objects.results import PartLabel, remove_results, results_of, write_results
from workbench_pkg.objects.study import drop_answer, set_parts, study_for_answer

RANK_OF_SEVERITY = {BREAKS: 2, JAMS: 2, SHOWS: 1, UNKNOWN: 1}
CUP_WORTH_SAYING_MM = 0.3
_given: ContextVar[Answer | None] = ContextVar("given", default=None)

LONGEST_LINE = 42  # letters


def annotate(doc: Any, settings: Settings | None = None) -> dict[str, Any]:
    """Work the document out and write the answer into it, in place of an earlier one. One undo step.

    ``settings`` None: what the document's own study says. Returns the report.
    """
    answer = _given.get() or work_out(doc, settings)
    _write(doc, answer)
    return answer.entry


@contextmanager
def given(answer: Answer) -> Iterator[None]:
    """Let ``annotate`` inside write this answer, which the window has worked out already, in place of its own."""
    before = _given.set(answer)
    try:
        yield
    finally:
        _given.reset(before)


def _write(doc: Any, answer: Answer) -> None:
    labels = labels_of(answer)
    with one_step(doc, say("Heartside: annotate")):
        remove_results(doc)
        study = study_for_answer(doc)
        set_parts(
            study, [leaf.owner if leaf.owner.Document == doc else leaf.root for leaf in answer.read.leaves]
        )
        write_results(doc, answer.entry, labels, answer.fingerprint)


def remove(doc: Any) -> int:
    """Take every answer out of the document, one undo step; returns of how many objects it was."""
    if not results_of(doc):
        return 0
    with one_step(doc, say("Heartside: remove the answer")):
        drop_answer(doc)
        return remove_results(doc)


def annotate_file(
    path: Path, output: Path, settings: Settings, shown: str = "", force: bool = False
) -> dict[str, Any]:
    """Write a copy of a model with the answer in it; the model itself is never written to.

    Raises
    ------
    FileError : the model cannot be opened, the copy would be the model, or it exists and ``force`` is not given.
    """
    check_target(output, [path], force)
    table, errors = table_beside(path)
    joints, problems = joints_beside(path)
    with opened(path) as doc:
        measured, unread = measured_beside(path)
        told = (*errors, *problems, *unread)
        answer = work_out(doc, settings, table, shown or str(path), told, joints, measured)
        _write(doc, answer)
        with one_step(doc, say("Heartside: keep the air")):
            keep_settings(doc, settings)
        save_copy(doc, output, original=path, replace=force)
    return answer.entry


def labels_of(answer: Answer) -> list[PartLabel]:
    """One label for each part, with its lines, rank, place and figures."""
    entries = answer.entry["parts"]
    ranks, told = _ranks(answer.entry), _told(answer.entry)
    anchors = np.array([solved.part.frame.centre for solved in answer.piece.parts]).reshape(-1, 3)
    labels = []
    for solved, entry, anchor, place in zip(answer.piece.parts, entries, anchors, label_places(anchors)):
        frame = solved.part.frame
        reach = frame.axes[2] * frame.length_mm / 2 if frame.grain.known else np.zeros(3)
        labels.append(
            PartLabel(
                name=entry["name"],
                key=entry["key"],
                lines=label_lines(entry, told.get(entry["key"], "")),
                rank=ranks.get(entry["key"], 0),
                anchor=_point(anchor),
                place=_point(place),
                span=(_point(anchor - reach), _point(anchor + reach)),
                figures=_figures(entry),
            )
        )
    return labels


def _ranks(entry: Mapping[str, Any]) -> dict[str, int]:
    ranks: dict[str, int] = {}
    for finding in entry["findings"]:
        for key in finding["keys"]:
            ranks[key] = max(ranks.get(key, 0), RANK_OF_SEVERITY[finding["severity"]])
    return ranks


def _told(entry: Mapping[str, Any]) -> dict[str, str]:
    """The gravest finding of each part in a few words; the report has the sentence."""
    told: dict[str, str] = {}
    for finding in entry["findings"]:
        for key in finding["keys"]:
            told.setdefault(key, _short(finding["check"]))
    return told


def _short(check: str) -> str:
    if check == "pith-in-board":
        return say("holds the pith: will check")
    if check == "missing-facts":
        return say("more to say: see the report")
    return say(check.replace("-", " "))


def label_lines(entry: Mapping[str, Any], finding: str = "") -> tuple[str, ...]:
    """What a label says of a part: its name, its width today, driest and wettest, its cup, and its worst finding."""
    lines = [entry["name"]]
    today = _size(entry, "today")
    if today is None:
        return (*lines, say("not said: {facts}", facts=", ".join(say(fact) for fact in entry["missing"])))
    lines.append(say("width today {size}", size=today))
    if entry["driest_month"] and _size(entry, "driest") != _size(entry, "wettest"):
        ends = [f"{_size(entry, name)} {say(entry[f'{name}_month'])[:3]}" for name in ("driest", "wettest")]
        together = " … ".join(ends)
        lines += [together] if len(together) <= LONGEST_LINE else ends
    lines += _cup(entry["cup"])
    return (*lines, finding) if finding else tuple(lines)


def _size(group: Mapping[str, Any], name: str) -> str | None:
    value, spread = group[f"{name}_mm"], group.get(f"{name}_range_mm")
    if value is not None:
        return short_length(value)
    if not spread:
        return None
    return say("{least} to {most}", least=short_length(spread[0]), most=short_length(spread[1]))


def _cup(cup: Mapping[str, Any] | None) -> list[str]:
    """The larger cup of the driest and the wettest day, if it is worth saying."""
    if cup is None:
        return []
    told: list[tuple[float, str]] = []
    for name in ("driest", "wettest"):
        value, spread = cup[f"{name}_mm"], cup.get(f"{name}_range_mm")
        month = say(cup[f"{name}_month"])[:3] if cup[f"{name}_month"] else ""
        if value is not None:
            size = short_length(abs(value))
            words = (
                say("crown {size} in {month}", size=size, month=month)
                if value > 0
                else say("hollow {size} in {month}", size=size, month=month)
            )
            told.append((abs(value), words))
        elif spread:
            worst = max(spread, key=abs)
            size = short_length(abs(worst))
            if spread[0] < 0 < spread[1]:
                words = say("crown or hollow up to {size} in {month}", size=size, month=month)
            elif worst > 0:
                words = say("crown up to {size} in {month}", size=size, month=month)
            else:
                words = say("hollow up to {size} in {month}", size=size, month=month)
            told.append((abs(worst), words))
    most = max(told, default=(0.0, ""))
    return [most[1]] if most[0] >= CUP_WORTH_SAYING_MM else []


_WIDTHS = {
    "today": explained("Width across the grain, today"),
    "driest": explained("Width across the grain, driest"),
    "wettest": explained("Width across the grain, wettest"),
}
_WIDTH_ENDS = {
    "Least": explained("The least that this width may be, as far as is known"),
    "Most": explained("The most that this width may be, as far as is known"),
}
_MONTHS = {
    "driest": explained("Month in which the part is driest"),
    "wettest": explained("Month in which the part is wettest"),
}


def _figures(entry: Mapping[str, Any]) -> dict[str, tuple[str, Any, str]]:
    figures: dict[str, tuple[str, Any, str]] = {}
    for name, width in _WIDTHS.items():
        said, month = name.capitalize(), entry.get(f"{name}_month")
        if entry[f"{name}_mm"] is not None:
            figures[f"Heartside{said}"] = ("App::PropertyLength", entry[f"{name}_mm"], width)
        for which, value in zip(("Least", "Most"), entry.get(f"{name}_range_mm", [])):
            figures[f"Heartside{said}{which}"] = ("App::PropertyLength", value, _WIDTH_ENDS[which])
        if name in _MONTHS and month:
            figures[f"Heartside{said}Month"] = ("App::PropertyString", month, _MONTHS[name])
    if entry["missing"]:
        figures["HeartsideMissing"] = (
            "App::PropertyStringList",
            entry["missing"],
            explained("What must still be said"),
        )
    return figures


def _point(vector: Any) -> tuple[float, float, float]:
    x, y, z = (float(v) for v in vector)
    return (x, y, z)
