"""A heading that folds what stands below it away."""

from __future__ import annotations

from workbench_pkg.host.qt import QtCore, QtWidgets


class Fold(QtWidgets.QWidget):
    """``inside`` is shown while the heading is ticked."""

    def __init__(self, name: str, title: str, inside: QtWidgets.QWidget, is_open: bool = True) -> None:
        super().__init__()
        self.head, self.inside = QtWidgets.QToolButton(), inside
        self.head.setObjectName(name)
        self.head.setText(title)
        self.head.setCheckable(True)
        self.head.setToolButtonStyle(QtCore.Qt.ToolButtonTextBesideIcon)
        self.head.setAutoRaise(True)
        self.head.setSizePolicy(QtWidgets.QSizePolicy.Ignored, QtWidgets.QSizePolicy.Fixed)
        self.head.setFocusPolicy(QtCore.Qt.TabFocus)
        column = QtWidgets.QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        column.addWidget(self.head)
        column.addWidget(inside)
        self.head.toggled.connect(self._show)
        self.head.setChecked(is_open)
        self._show(is_open)

    def _show(self, is_open: bool) -> None:
        self.inside.setVisible(is_open)
        self.head.setArrowType(QtCore.Qt.DownArrow if is_open else QtCore.Qt.RightArrow)


def form_of(rows: list[tuple[str, QtWidgets.QWidget]]) -> QtWidgets.QWidget:
    """Labelled fields below each other."""
    box = QtWidgets.QWidget()
    form = QtWidgets.QFormLayout(box)
    form.setFieldGrowthPolicy(QtWidgets.QFormLayout.AllNonFixedFieldsGrow)
    form.setContentsMargins(10, 0, 2, 2)
    form.setVerticalSpacing(3)
    for label, widget in rows:
        form.addRow(label, widget)
    return box
