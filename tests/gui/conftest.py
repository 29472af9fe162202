"""Window tests: pytest inside the running host with its real main window, on a virtual screen."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

try:
    import FreeCAD
    import FreeCADGui
except ImportError:
    raise pytest.UsageError("window tests need the host's window; use: python3 -m tests gui") from None
if not FreeCAD.GuiUp:
    raise pytest.UsageError("window tests need the host's window; use: python3 -m tests gui")

# The folder that the host itself found us in, not the clone behind the link.
ADDON = Path(FreeCAD.getUserAppDataDir()) / "Mod" / "Heartside"
if str(ADDON) not in sys.path:
    sys.path.insert(0, str(ADDON))

from PySide import QtCore, QtGui  # noqa: E402

try:
    from PySide import QtWidgets
except ImportError:  # the shim of 0.20 has them all in QtGui
    QtWidgets = QtGui

from tests.gui.season_piece import demo, opened, see, table  # noqa: E402
from tests.running.fixtures import doc, documents_closed, host_version, note_where, output  # noqa: E402

__all__ = ["demo", "doc", "documents_closed", "host_version", "note_where", "opened", "see", "table"]

MODAL_PATIENCE_S = 20
AT_REST_S = 0.02  # a look at the events that takes no longer found nothing to do
CATCHING_UP_S = 5.0  # some views never rest: those are left after this long
SIZE = (1400, 900)


class ModalWatch:
    """Closes a modal box that nobody answers, and remembers it: it would block every later test for ever."""

    def __init__(self) -> None:
        """Look once a second, also while a modal box has the event loop."""
        self.unanswered: list[str] = []
        self._since: tuple[object, float] | None = None
        self._timer = QtCore.QTimer()
        self._timer.timeout.connect(self._look)
        self._timer.start(1000)

    def _look(self) -> None:
        box = QtWidgets.QApplication.activeModalWidget()
        if box is None:
            self._since = None
        elif self._since is None or self._since[0] is not box:
            self._since = (box, time.monotonic())
        elif time.monotonic() - self._since[1] > MODAL_PATIENCE_S:
            self.unanswered.append(describe(box))
            self._since = None
            box.close()


def describe(box: QtWidgets.QWidget) -> str:
    """Title and text of a box."""
    text = box.text() if hasattr(box, "text") else ""
    return f"{type(box).__name__} {box.windowTitle()!r}: {text}"


def process(seconds: float) -> None:
    """Let the window work for this long, and on a busy machine until it has caught up with its work."""
    until = time.monotonic() + seconds
    at_rest = 0
    while True:
        began = time.monotonic()
        QtWidgets.QApplication.processEvents()
        now = time.monotonic()
        at_rest = at_rest + 1 if now - began < AT_REST_S else 0
        if now >= until and (at_rest >= 3 or now >= until + CATCHING_UP_S):
            return
        time.sleep(0.01)


@pytest.fixture(scope="session")
def modal_watch() -> ModalWatch:
    """The watch over modal boxes; .unanswered lists those that nobody answered."""
    return ModalWatch()


@pytest.fixture(autouse=True)
def no_box_left(modal_watch: ModalWatch) -> Iterator[None]:
    """A test fails where a modal box went unanswered or is still open; no task panel is left to the next."""
    modal_watch.unanswered.clear()
    yield
    box = QtWidgets.QApplication.activeModalWidget()
    left = [describe(box)] if box is not None else []
    if box is not None:
        box.close()
    if FreeCADGui.Control.activeDialog():
        FreeCADGui.Control.closeDialog()
    process(0.05)
    assert not modal_watch.unanswered + left


@pytest.fixture
def pump() -> Callable[[float], None]:
    """pump(seconds): let the window work for this long."""
    return process


@pytest.fixture
def wait_until() -> Callable[..., None]:
    """wait_until(condition, seconds=10): let the window work until the condition holds; fails after that."""

    def wait(condition: Callable[[], object], seconds: float = 10.0) -> None:
        until = time.monotonic() + seconds
        while not condition():
            assert time.monotonic() < until, f"not within {seconds} s"
            process(0.02)

    return wait


@pytest.fixture(scope="session")
def main_window() -> QtWidgets.QMainWindow:
    """The host's main window, filling the virtual screen, with the model tree and no console."""
    window = FreeCADGui.getMainWindow()
    for panel in window.findChildren(QtWidgets.QDockWidget):
        panel.setVisible(panel.objectName() in ("Combo View", "Model"))
    window.showNormal()
    window.setGeometry(0, 0, *SIZE)
    process(0.5)
    return window


@pytest.fixture
def shot(main_window: QtWidgets.QMainWindow) -> Callable[..., Path]:
    """shot(name, settle=0.5): picture of the whole window as NAME.png in the output; fails if it is blank."""

    def take(name: str, settle: float = 0.5) -> Path:
        process(settle)
        folder = output() / "shots"
        folder.mkdir(exist_ok=True)
        path = folder / f"{name}.png"
        picture = QtWidgets.QApplication.primaryScreen().grabWindow(0)
        assert picture.save(str(path)), f"{path} cannot be written"
        assert colours(picture.toImage()) > 20, f"{path} is blank"
        return path

    return take


def colours(image: QtGui.QImage) -> int:
    """Number of different colours on a grid over the picture."""
    step = 7
    return len(
        {image.pixel(x, y) for x in range(0, image.width(), step) for y in range(0, image.height(), step)}
    )
