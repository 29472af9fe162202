"""Long work: the window stays awake, progress is shown, Cancel and Esc drop the answer, errors are told."""

from __future__ import annotations

import threading

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects.results import results_of
from workbench_pkg.panels import working

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui


@pytest.fixture
def slow(main_window, wait_until):
    """Work that waits in its thread until it is let go; gives the release and what came of it."""

    class Slow:
        def __init__(self):
            self.gate, self.came, self.ended = threading.Event(), [], []

        def start(self, **more):
            def solve(material):
                yield 0.25
                self.gate.wait(20)
                yield 0.5
                self.thread = threading.current_thread()
                return material * 2

            return working.work(
                "Slow work", lambda: 21, solve, self.came.append, ended=lambda: self.ended.append(1), **more
            )

    made = Slow()
    yield made
    made.gate.set()
    wait_until(lambda: not working.is_busy())
    wait_until(lambda: not working._ending)


def bar():
    return FreeCADGui.getMainWindow().findChild(QtWidgets.QWidget, "HeartsideWorking")


def test_the_window_works_while_it_runs_and_takes_the_answer(slow, pump, wait_until, shot):
    ticks = []
    timer = QtCore.QTimer()
    timer.timeout.connect(lambda: ticks.append(1))
    timer.start(10)
    slow.start()
    assert working.is_busy("Slow work") and slow.came == []
    pump(0.6)
    assert len(ticks) > 10
    assert bar().isVisible() and bar().progress.value() == 250
    shot("working")
    slow.gate.set()
    wait_until(lambda: slow.came)
    timer.stop()
    assert slow.came == [42] and slow.ended == [1]
    assert slow.thread is not threading.main_thread()
    pump(0.1)
    assert bar() is None and not working.is_busy()


def test_quick_work_shows_no_bar(main_window, pump, wait_until):
    came = []
    working.work("Quick work", lambda: 1, lambda material: material + 1, came.append)
    wait_until(lambda: came)
    pump(0.3)
    assert came == [2] and bar() is None


@pytest.mark.parametrize("how", ["button", "Esc", "all"])
def test_cancelling_drops_the_answer(slow, pump, wait_until, how):
    slow.start()
    pump(0.4)
    if how == "button":
        bench.click(bench.widget("HeartsideWorkingCancel", QtWidgets.QPushButton))
    elif how == "Esc":
        window = FreeCADGui.getMainWindow()
        window.activateWindow()
        for kind in (QtCore.QEvent.ShortcutOverride, QtCore.QEvent.KeyPress):
            event = QtGui.QKeyEvent(kind, QtCore.Qt.Key_Escape, QtCore.Qt.NoModifier)
            QtWidgets.QApplication.sendEvent(window, event)
        if working.is_busy():  # without a window manager nothing is active, and shortcuts stay silent
            bar().escape.activated.emit()
    else:
        working.cancel_all()
    assert not working.is_busy() and slow.ended == [1]
    slow.gate.set()
    wait_until(lambda: not working._ending)
    pump(0.1)
    assert slow.came == [] and bar() is None


def test_the_same_work_again_takes_the_place_of_the_first(slow, pump, wait_until):
    slow.start(key="same")
    slow.start(key="same")
    slow.gate.set()
    wait_until(lambda: slow.came)
    wait_until(lambda: not working._ending)
    pump(0.1)
    assert slow.came == [42] and slow.ended == [1, 1]


def test_an_answer_to_something_that_changed_is_dropped(slow, pump, wait_until):
    slow.start(still=lambda material: False)
    slow.gate.set()
    wait_until(lambda: not working.is_busy())
    assert slow.came == []
    assert "changed" in FreeCADGui.getMainWindow().statusBar().currentMessage()


def test_an_error_in_the_thread_is_told(main_window, pump, wait_until):
    def fail(material):
        raise ValueError("the saw is blunt")

    came = []
    working.work("Failing work", lambda: 1, fail, came.append)
    wait_until(lambda: not working.is_busy())
    (text,) = bench.problems()
    assert "the saw is blunt" in text and came == []


def test_an_error_while_reading_is_raised_at_once(main_window):
    def fail():
        raise ValueError("no such document")

    with pytest.raises(ValueError, match="no such document"):
        working.work("Work", fail, lambda material: material, print)
    assert not working.is_busy()


@pytest.fixture
def gated(monkeypatch):
    """A gate that working a document out waits at, in its thread."""
    from workbench_pkg.panels import working_out

    gate, true = threading.Event(), working_out.answering

    def waiting(question):
        gate.wait(20)
        return (yield from true(question))

    monkeypatch.setattr(working_out, "answering", waiting)
    yield gate
    gate.set()


@pytest.fixture
def piece(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.tag_all(doc)
    return boards


def test_cancelled_annotating_leaves_nothing(piece, doc, pump, gated, wait_until):
    before, steps = property_dump(doc), doc.UndoCount
    FreeCADGui.runCommand("Heartside_Annotate")
    pump(0.3)
    bench.click(bench.widget("HeartsideWorkingCancel", QtWidgets.QPushButton))
    gated.set()
    wait_until(lambda: not working._ending)
    pump(0.2)
    assert differences(before, property_dump(doc)) == []
    assert doc.UndoCount == steps and not results_of(doc)


def test_a_model_that_changed_meanwhile_is_not_annotated(piece, doc, pump, gated, wait_until):
    FreeCADGui.runCommand("Heartside_Annotate")
    piece[0].Width = 111
    doc.recompute()
    gated.set()
    wait_until(lambda: not working.is_busy())
    assert not results_of(doc)


def test_a_document_closed_meanwhile_takes_no_answer(piece, doc, pump, gated, wait_until):
    FreeCADGui.runCommand("Heartside_Report")
    FreeCADGui.runCommand("Heartside_Annotate")
    FreeCAD.closeDocument(doc.Name)
    gated.set()
    wait_until(lambda: not working.is_busy(), 30)
    pump(0.1)
    assert bench.problems() == []
