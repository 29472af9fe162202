"""The list of joints: a row a joint, with what is known of it; filtered by what is asked for."""

from __future__ import annotations

from collections.abc import Collection, Sequence

import FreeCAD as App

from movement_core.air.year import MONTHS
from movement_core.sheet.joint_list import JointRow
from movement_core.wording import say
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets, enum_value
from workbench_pkg.host.units import short_length
from workbench_pkg.panels import rows
from workbench_pkg.panels.palette import RANKS

translate = App.Qt.translate

MATTERS, UNKNOWN, TOUCH, SAID, ALL = "matters", "unknown", "touch", "said", "all"
_RIGHT = QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter


def filters() -> list[tuple[str, str]]:
    """What the list can be kept to: shown, value."""
    return [
        (translate("Heartside", "Joints that decide something"), MATTERS),
        (translate("Heartside", "Joints of which nothing is known"), UNKNOWN),
        (translate("Heartside", "All joints"), TOUCH),
        (translate("Heartside", "Joints that were confirmed"), SAID),
        (translate("Heartside", "All joints, and parts across a gap"), ALL),
    ]


def state_words(state: str) -> str:
    words = {
        "unknown": translate("Heartside", "not known"),
        "inferred": translate("Heartside", "inferred"),
        "confirmed": translate("Heartside", "confirmed"),
    }
    return words.get(state, state)


class JointsTable(QtWidgets.QTableWidget):
    """Rows are joints; several may be chosen."""

    def __init__(self) -> None:
        super().__init__(0, 2)
        self.setObjectName("HeartsideJointsTable")
        self.setHorizontalHeaderLabels(
            [
                translate("Heartside", "Joint"),
                translate("Heartside", "Moves"),
            ]
        )
        self.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        self.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.setSelectionMode(QtWidgets.QAbstractItemView.ExtendedSelection)
        self.setAlternatingRowColors(True)
        self.setIconSize(QtCore.QSize(16, 16))
        self.setMinimumHeight(200)
        self.setWordWrap(False)
        self.setTextElideMode(QtCore.Qt.ElideMiddle)
        self.verticalHeader().hide()
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        for column, mode in enumerate(("Stretch", "ResizeToContents")):
            header.setSectionResizeMode(column, getattr(QtWidgets.QHeaderView, mode))
        self.listed: list[JointRow] = []

    def fill(
        self, joints: Sequence[JointRow], which: str, words: str, chosen: Collection[frozenset[str]]
    ) -> None:
        """Show the joints that a filter and words in the names keep; those of these pairs of keys stay chosen."""
        self.blockSignals(True)
        self.listed = [row for row in joints if _kept(row, which) and _named(row, words)]
        self.setRowCount(0)
        self.setRowCount(len(self.listed))
        select = self.selectionModel()
        for number, joint in enumerate(self.listed):
            tip = explained(joint)
            known = "" if joint.state == "unknown" else f"{say(joint.kind)}, "
            text = f"{' – '.join(joint.parts)}\n{known}{state_words(joint.state)}"
            rows.write(self, number, 0, text=text, tip=tip, picture=state_sign(joint.state))
            rows.write(self, number, 1, text=moves_text(joint), tip=tip, alignment=enum_value(_RIGHT))
            if frozenset(joint.keys) in chosen:
                flags = QtCore.QItemSelectionModel.Select | QtCore.QItemSelectionModel.Rows
                select.select(self.model().index(number, 0), flags)
        self.resizeRowsToContents()
        self.blockSignals(False)

    def chosen(self) -> list[JointRow]:
        """The joints of the chosen rows, from above."""
        numbers = sorted({index.row() for index in self.selectedIndexes()})
        return [self.listed[number] for number in numbers if number < len(self.listed)]


def moves_text(joint: JointRow) -> str:
    return "?" if joint.moves_mm is None else short_length(joint.moves_mm)


def explained(joint: JointRow) -> str:
    """Everything known of a joint, in sentences."""
    lines = [
        f"{joint.parts[0]} – {joint.parts[1]}",
        _as_judged(joint),
    ]
    if joint.moves_mm is None:
        lines.append(translate("Heartside", "What the seasons do here is not known: tag both parts."))
    elif joint.month is not None:
        words = translate("Heartside", "The two move by up to {size} against each other, most in {month}.")
        lines.append(words.format(size=short_length(joint.moves_mm), month=say(MONTHS[joint.month])))
    if joint.force_n:
        words = translate("Heartside", "It bears up to {force:.1f} kN ({way}), before the wood gives way.")
        lines.append(words.format(force=joint.force_n / 1000, way=say(joint.way) if joint.way else "–"))
    elif joint.force_note:
        lines.append(joint.force_note)
    return "\n".join(lines)


def _as_judged(joint: JointRow) -> str:
    if joint.state == "unknown":
        return translate("Heartside", "Not known: {reason}").format(reason=joint.reason)
    return f"{say(joint.kind)} ({state_words(joint.state)}): {joint.reason}"


def _kept(joint: JointRow, which: str) -> bool:
    if which == MATTERS:
        return joint.touching and joint.matters
    if which == UNKNOWN:
        return joint.touching and joint.state == "unknown"
    if which == SAID:
        return joint.state == "confirmed"
    return joint.touching or joint.state == "confirmed" or which == ALL


def _named(joint: JointRow, words: str) -> bool:
    every = " ".join((*joint.parts, joint.kind, say(joint.kind))).casefold()
    return all(word in every for word in words.casefold().split())


def state_sign(state: str) -> QtGui.QIcon:
    """Told apart by shape: a question in a ring, a broken ring, a full disc with a tick."""
    picture = QtGui.QPixmap(32, 32)
    picture.fill(QtCore.Qt.transparent)
    painter = QtGui.QPainter(picture)
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    rank = {"unknown": 1, "inferred": 0, "confirmed": 0}.get(state, 2)
    colour = QtGui.QColor(*RANKS[rank])
    style = QtCore.Qt.DashLine if state == "inferred" else QtCore.Qt.SolidLine
    painter.setPen(QtGui.QPen(colour, 4.0, style))
    painter.setBrush(colour if state != "inferred" else QtCore.Qt.NoBrush)
    painter.drawEllipse(QtCore.QRectF(4, 4, 24, 24))
    white = QtGui.QPen(QtGui.QColor(255, 255, 255), 4.0)
    painter.setPen(white)
    if state == "confirmed":
        painter.drawPolyline(QtGui.QPolygonF([QtCore.QPointF(*p) for p in ((10, 17), (14, 22), (23, 11))]))
    elif state == "unknown":
        font = QtGui.QFont()
        font.setPixelSize(20)
        font.setBold(True)
        painter.setFont(font)
        painter.drawText(QtCore.QRectF(4, 4, 24, 24), QtCore.Qt.AlignCenter, "?")
    painter.end()
    return QtGui.QIcon(picture)
