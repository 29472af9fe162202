"""Long work without holding up the window: read at once, solved in a thread of its own, shown with a way out.

    working.work(
        translate("Heartside", "Working the piece out"),
        read=lambda: read_document(doc),    # in the window's thread, at once: may look at the document
        solve=answering,                    # in a thread: may look at what was read only, not at document or Qt
        then=show,                          # in the window's thread again
        still=lambda question: fingerprint(doc) == question.fingerprint,
    )

Cancel (the button in the status line, or Esc) drops the answer: ``then`` is not called. So does a document that
changed meanwhile. Nothing waits in an event loop.
"""

from __future__ import annotations

import contextvars
import inspect
import threading
from collections.abc import Callable
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets
from workbench_pkg.panels.telling import problem, told, unexpected

translate = App.Qt.translate

SHOWN_AFTER_MS = 150  # work that is quicker shows no bar
_STEPS = 1000
_running: dict[str, Work] = {}


def work(
    title: str,
    read: Callable[[], Any],
    solve: Callable[[Any], Any],
    then: Callable[[Any], object],
    still: Callable[[Any], bool] | None = None,
    ended: Callable[[], object] | None = None,
    key: str = "",
) -> Work | None:
    """Do long work; returns at once. What goes wrong is told in the window, as a command's errors are.

    Parameters
    ----------
    title : what is shown while it runs.
    read : gives everything that ``solve`` needs. What it raises is raised here.
    solve : gives the answer; as a generator it yields how far it is, from 0 to 1, and can be stopped at each yield.
    then : takes the answer. still : whether what was read holds still; where it does not, the answer is dropped.
    ended : called once at the very end, whether it was answered, dropped, cancelled or failed.
    key : work of the same key that still runs is cancelled; the title where empty.
    """
    before = _running.get(key or title)
    if before is not None:
        before.cancel(quietly=True)
    began = Work(title, key or title, read(), solve, then, still, ended)
    began.start()
    return began


def is_busy(key: str = "") -> bool:
    """Whether work runs: any, or that of a key."""
    return key in _running if key else bool(_running)


def cancel_all() -> None:
    """Cancel whatever runs."""
    for each in list(_running.values()):
        each.cancel()


class Work(QtCore.QObject):
    """One piece of work. ``cancel`` may be called at any time."""

    moved = QtCore.Signal()
    done = QtCore.Signal()

    def __init__(
        self,
        title: str,
        key: str,
        material: Any,
        solve: Callable[[Any], Any],
        then: Callable[[Any], object],
        still: Callable[[Any], bool] | None,
        ended: Callable[[], object] | None,
    ) -> None:
        super().__init__()
        self.title, self.key = title, key
        self._material, self._solve, self._then, self._still, self._ended = (
            material,
            solve,
            then,
            still,
            ended,
        )
        self._cancelled = threading.Event()
        self._fraction = 0.0
        self._answer: Any = None
        self._error: BaseException | None = None
        self._bar: _Bar | None = None
        self.moved.connect(self._show_fraction, QtCore.Qt.QueuedConnection)
        self.done.connect(self._finish, QtCore.Qt.QueuedConnection)

    def start(self) -> None:
        _running[self.key] = self
        _ending.add(self)
        QtCore.QTimer.singleShot(SHOWN_AFTER_MS, self._show)
        here = contextvars.copy_context()  # the language that is spoken
        threading.Thread(target=here.run, args=(self._run,), name="Heartside", daemon=True).start()

    def cancel(self, quietly: bool = False) -> None:
        """Drop the answer. The thread ends at its next step; nothing waits for it."""
        if self._cancelled.is_set() or _running.get(self.key) is not self:
            return
        self._cancelled.set()
        self._leave()
        if not quietly:
            told(translate("Heartside", "Cancelled, nothing was changed"))

    def _run(self) -> None:
        """In the thread."""
        try:
            answer = self._solve(self._material)
            if inspect.isgenerator(answer):
                answer = self._step_through(answer)
            self._answer = answer
        except BaseException as error:
            self._error = error
        self.done.emit()

    def _step_through(self, steps: Any) -> Any:
        while not self._cancelled.is_set():
            try:
                self._fraction = float(next(steps))
            except StopIteration as end:
                return end.value
            self.moved.emit()
        steps.close()
        return None

    def _finish(self) -> None:
        """In the window's thread, once the thread has ended."""
        _ending.discard(self)
        if self._cancelled.is_set():
            return
        try:
            if self._error is not None:
                raise self._error
            if self._still is not None and not self._still(self._material):
                told(translate("Heartside", "The model changed meanwhile: the answer was dropped"))
            else:
                self._then(self._answer)
        except HeartsideError as error:
            problem(str(error))
        except Exception as error:
            problem(unexpected(error))
        finally:
            self._leave()

    def _leave(self) -> None:
        _running.pop(self.key, None)
        if self._bar is not None:
            self._bar.close_up()
            self._bar = None
        if self._ended is not None:
            ended, self._ended = self._ended, None
            ended()

    def _show(self) -> None:
        if _running.get(self.key) is self and self._bar is None:
            self._bar = _Bar(self.title, self.cancel)
            self._show_fraction()

    def _show_fraction(self) -> None:
        if self._bar is not None:
            self._bar.show_fraction(self._fraction)


_ending: set[Work] = set()  # a thread that still runs must find its Work alive


class _Bar(QtWidgets.QWidget):
    """Title, progress and the way out, in the status line."""

    def __init__(self, title: str, cancel: Callable[[], None]) -> None:
        window = Gui.getMainWindow()
        super().__init__(window)
        self.setObjectName("HeartsideWorking")
        row = QtWidgets.QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        self.progress = QtWidgets.QProgressBar()
        self.progress.setRange(0, 0)
        self.progress.setFixedWidth(140)
        self.progress.setAccessibleName(title)
        self.button = QtWidgets.QPushButton(translate("Heartside", "Cancel"))
        self.button.setObjectName("HeartsideWorkingCancel")
        self.button.setToolTip(translate("Heartside", "Stop this work and change nothing (Esc)"))
        for part in (QtWidgets.QLabel(title), self.progress, self.button):
            row.addWidget(part)
        self.button.clicked.connect(lambda *_: cancel())
        self.escape = QtGui.QShortcut if hasattr(QtGui, "QShortcut") else QtWidgets.QShortcut
        self.escape = self.escape(QtGui.QKeySequence("Esc"), window)
        self.escape.setContext(QtCore.Qt.ApplicationShortcut)
        self.escape.activated.connect(lambda: cancel())
        self.escape.activatedAmbiguously.connect(lambda: cancel())
        window.statusBar().addPermanentWidget(self)
        self.show()

    def show_fraction(self, fraction: float) -> None:
        if fraction > 0:
            self.progress.setRange(0, _STEPS)
            self.progress.setValue(round(fraction * _STEPS))

    def close_up(self) -> None:
        self.escape.setEnabled(False)
        self.escape.deleteLater()
        Gui.getMainWindow().statusBar().removeWidget(self)
        for part in (self, self.button):
            part.setObjectName("")  # it lives on until the event loop comes round
        self.deleteLater()
