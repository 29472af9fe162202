"""Plans side by side, and one of them in words."""

from __future__ import annotations

import html
from collections.abc import Mapping, Sequence
from typing import Any

import FreeCAD as App

from workbench_pkg.host.qt import QtCore, QtWidgets, enum_value
from workbench_pkg.host.units import short_length
from workbench_pkg.panels import rows
from workbench_pkg.panels.attachment_fields import kind_words
from workbench_pkg.panels.report_table import mark

translate = App.Qt.translate
_RIGHT = QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter
MOST_LINES = 5


def headings() -> list[str]:
    return [
        translate("Heartside", "Plan"),
        translate("Heartside", "No."),
        translate("Heartside", "Out of flat"),
        translate("Heartside", "Pull / may"),
        translate("Heartside", "More"),
    ]


class PlanTable(QtWidgets.QTableWidget):
    """One row a plan, the best first; a row carries its kind."""

    def __init__(self) -> None:
        super().__init__(0, len(headings()))
        self.setObjectName("HeartsideHoldPlans")
        self.setHorizontalHeaderLabels(headings())
        self.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        self.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.setSelectionMode(QtWidgets.QAbstractItemView.SingleSelection)
        self.verticalHeader().hide()
        self.setWordWrap(False)
        self.setHorizontalScrollMode(QtWidgets.QAbstractItemView.ScrollPerPixel)
        tips = (
            translate("Heartside", "A disc: it holds the top within your wish; a square: it does not"),
            translate("Heartside", "How many fasteners"),
            translate("Heartside", "The worst of the year, and when"),
            translate("Heartside", "The hardest pull on one fastener, and what it may be"),
            translate("Heartside", "How many pieces more than the plan with the fewest"),
        )
        for column, tip in enumerate(tips):
            self.model().setHeaderData(column, QtCore.Qt.Horizontal, tip, rows.TIP)

    def fill(self, entry: Mapping[str, Any] | None, choose: str = "") -> None:
        """Show the plans of a top, and choose one: that kind where it is there, else the first."""
        plans = list(entry["plans"]) if entry else []
        self.setRowCount(0)
        self.setRowCount(len(plans))
        fewest = min((plan["count"] for plan in plans if plan["found"]), default=None)
        for row, plan in enumerate(plans):
            rank = 0 if plan["found"] else 2
            for column, text in enumerate(cells(plan, fewest)):
                rows.write(self, row, column, text=text, tip=plan["name"], data=plan["kind"])
                if column:
                    rows.write(self, row, column, alignment=enum_value(_RIGHT))
            rows.write(self, row, 0, picture=mark(rank))
        self.resizeColumnsToContents()
        self.resizeRowsToContents()
        height = self.horizontalHeader().sizeHint().height() + sum(
            self.rowHeight(r) for r in range(len(plans))
        )
        self.setFixedHeight(height + self.horizontalScrollBar().sizeHint().height() + 6)
        self.horizontalScrollBar().setValue(0)
        if plans:
            kinds = [plan["kind"] for plan in plans]
            self.selectRow(kinds.index(choose) if choose in kinds else 0)

    def chosen(self) -> str:
        """Kind of the plan that is chosen, or ""."""
        picked = sorted(index.row() for index in self.selectedIndexes())
        return str(rows.read(self, picked[0])) if picked else ""


def cells(plan: Mapping[str, Any], fewest: int | None) -> list[str]:
    """The texts of a row."""
    name = kind_words().get(plan["kind"], plan["name"])
    if not plan["count"]:
        return [name, "–", short_length(plan["worst_out_of_flat_mm"]), "–", ""]
    allowed = plan["allowable_pull_n"]
    pull = f"{plan['worst_pull_n']:.0f} / {'?' if allowed is None else f'{allowed:.0f}'} N"
    when = plan["worst_case"].split(",")[0]
    flat = f"{short_length(plan['worst_out_of_flat_mm'])}, {_short(when)}"
    return [name, str(plan["count"]), flat, pull, _more(plan, fewest)]


def _short(case: str) -> str:
    """A month by its first letters, a day as it is called."""
    day = {
        "driest day": translate("Heartside", "driest"),
        "wettest day": translate("Heartside", "wettest"),
        "today": translate("Heartside", "today"),
    }
    return day.get(case, case[:3])


def _more(plan: Mapping[str, Any], fewest: int | None) -> str:
    more = plan["count"] - fewest if fewest is not None and plan["found"] else 0
    return f"+{more}" if more > 0 else ""


def _work(plan: Mapping[str, Any], entry: Mapping[str, Any]) -> str:
    """What the plan costs against the others: pieces more, slots to cut."""
    counts = [one["count"] for one in entry["plans"] if one["found"]]
    more = plan["count"] - min(counts) if counts and plan["found"] else 0
    slots = sum(one["slot_length_mm"] is not None for one in plan["fasteners"])
    told = [" + ".join(f"{one['count']} × {one['name']}" for one in plan["hardware"])]
    if more > 0:
        told.append(translate("Heartside", "{count} more than the plan with the fewest").format(count=more))
    if slots:
        told.append(translate("Heartside", "{count} slots to cut").format(count=slots))
    return "; ".join(told)


def _problems(plan: Mapping[str, Any], entry: Mapping[str, Any]) -> list[str]:
    """Why it does not hold: the worst of the months in one line, then the rest."""
    worst, wished = plan["worst_out_of_flat_mm"], entry["wish"]["flatness_mm"]
    lines = []
    if worst > wished:
        words = translate("Heartside", "{mm} out of flat ({when}), wished {wished}")
        lines.append(
            words.format(mm=short_length(worst), when=plan["worst_case"], wished=short_length(wished))
        )
    lines += [text for text in plan["problems"] if "out of flat, wished" not in text]
    return lines[:MOST_LINES]


def in_words(entry: Mapping[str, Any], kind: str) -> str:
    """A plan, as HTML: whether it holds, why not and what would, what stays put, what is refused, what to mind."""
    if entry["missing"]:
        title = translate("Heartside", "It cannot be worked out before this is said:")
        return f"<p><b>{html.escape(title)}</b></p>{_list(entry['missing'])}"
    plan = next((one for one in entry["plans"] if one["kind"] == kind), None)
    if plan is None:
        return ""
    blocks: list[tuple[str, Sequence[str]]] = []
    if plan["found"]:
        blocks.append((translate("Heartside", "It holds the top flat in every month"), plan["seasons"]))
    elif entry["flat_by_itself"]:
        blocks.append((translate("Heartside", "The top stays flat by itself; this keeps it in place"), []))
    else:
        title = translate("Heartside", "It does not hold the top")
        blocks.append((title, _problems(plan, entry)))
    told = " ".join(line for _, lines in blocks for line in lines)
    refused = [text for text in plan["refused"] if text not in told]
    if refused:
        blocks.append((translate("Heartside", "Refused"), refused[:MOST_LINES]))
    if plan["what_would"] and not entry["flat_by_itself"]:
        blocks.append((translate("Heartside", "What would hold it, each tried out"), plan["what_would"]))
    if plan["count"]:
        blocks.append((translate("Heartside", "What it takes"), [_work(plan, entry)]))
        blocks.append((translate("Heartside", "What stays put"), [plan["fixed_line"], *plan["remarks"]]))
    free = max((abs(v) for v in entry["free_departure_mm"].values()), default=0.0)
    words = translate("Heartside", "Held by nothing it would leave flat by {mm}")
    blocks.append((words.format(mm=short_length(free)), []))
    blocks.append((translate("Heartside", "Mind"), entry["cautions"]))
    return "".join(f"<p><b>{html.escape(title)}</b></p>{_list(lines)}" for title, lines in blocks)


def _list(lines: Sequence[str]) -> str:
    items = "".join(f"<li>{html.escape(line[:1].upper() + line[1:])}.</li>" for line in _ended(lines))
    return f"<ul style='margin-left:-24px'>{items}</ul>" if items else ""


def _ended(lines: Sequence[str]) -> list[str]:
    return [line.rstrip(".") for line in lines if line]
