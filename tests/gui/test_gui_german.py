"""The window in German: every text of ours that can be seen is, and nothing is cut off."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from movement_core.wording import say
from tests.gui import bench_piece as bench
from workbench_pkg.panels import working
from workbench_pkg.translations.files import file_of, read

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

GERMAN = {each: said for each, said in read(file_of("de")).items() if said}
# What must not be seen any more. Words that German shares, and single words of data, are no proof.
ENGLISH = {each.text for each, said in GERMAN.items() if said != each.text and " " in each.text}
BORDERS = 6  # pixels of a button that are not its text


@pytest.fixture(autouse=True)
def german(main_window, pump):
    before = FreeCADGui.getLocale()
    FreeCADGui.setLocale("German")
    pump(0.2)
    yield
    FreeCADGui.setLocale(before if before in FreeCADGui.supportedLocales() else "English")
    pump(0.2)


@pytest.fixture
def piece(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.tag_all(doc)
    bench.isometric()
    pump(0.3)
    return boards


def texts_of(widget):
    """Every text that a widget shows or tells, and those of all inside it."""
    found = set()
    for each in [widget, *widget.findChildren(QtWidgets.QWidget)]:
        for name in ("text", "title", "windowTitle", "toolTip", "placeholderText", "suffix", "toPlainText"):
            ask = getattr(each, name, None)
            if callable(ask):
                try:
                    found.add(str(ask()))
                except TypeError:
                    continue
        if isinstance(each, QtWidgets.QComboBox):
            found |= {each.itemText(row) for row in range(each.count())}
        if isinstance(each, QtWidgets.QTabWidget):
            found |= {each.tabText(tab) for tab in range(each.count())}
        if isinstance(each, QtWidgets.QTableWidget):
            found |= {
                each.model().headerData(c, bench.QtCore.Qt.Horizontal) for c in range(each.columnCount())
            }
    return {text for text in found if text}


def english_in(widget):
    return sorted(texts_of(widget) & ENGLISH)


def clipped(widget):
    """Texts that their widget has no room for."""
    found = []
    for each in widget.findChildren(QtWidgets.QWidget):
        if not each.isVisible() or not isinstance(each, (QtWidgets.QLabel, QtWidgets.QAbstractButton)):
            continue
        text = str(each.text())
        if not text or (isinstance(each, QtWidgets.QLabel) and each.pixmap() and not text):
            continue
        if isinstance(each, QtWidgets.QLabel) and each.wordWrap():
            if each.height() + 1 < each.heightForWidth(each.width()):
                found.append((text, each.size()))
        elif isinstance(each, (QtWidgets.QPushButton, QtWidgets.QToolButton)):
            # Its hint asks for more than the text: a button has a usual width.
            if each.width() < each.fontMetrics().boundingRect(text.replace("&", "")).width() + BORDERS:
                found.append((text, each.width()))
        elif each.width() + 1 < each.minimumSizeHint().width():
            found.append((text, each.width(), each.minimumSizeHint().width()))
    return found


def test_every_translation_is_compiled(main_window):
    wrong = [
        each.text for each, said in GERMAN.items() if FreeCAD.Qt.translate(each.context, each.text) != said
    ]
    assert wrong == []


def test_the_core_speaks_it_too(piece):
    assert say("January") == "Januar"
    assert say("width today {size}", size="12 mm") == "Breite heute 12 mm"


def test_menu_and_toolbar(piece, main_window, shot):
    shown = {text for text in texts_of(main_window.menuBar()) if text}
    (bar,) = [b for b in main_window.findChildren(QtWidgets.QToolBar) if b.windowTitle() == "Heartside"]
    actions = {a.text().replace("&", "") for a in bar.actions() if not a.isSeparator()}
    tips = {a.statusTip() for a in bar.actions()}
    assert "Holz angeben …" in actions and "Bericht" in actions
    assert not (actions | tips | shown) & ENGLISH


@pytest.mark.parametrize(
    ("command", "name"), [("Heartside_Tag", "HeartsideTagPanel"), ("Heartside_Year", "HeartsideYearPanel")]
)
def test_panels(piece, pump, shot, command, name):
    bench.select(piece[0])
    FreeCADGui.runCommand(command)
    pump(0.4)
    panel = bench.widget(name)
    assert english_in(panel) == []
    assert clipped(panel) == []
    shot(f"german-{name}")
    bench.press("Cancel" if command == "" else cancel_word())


def cancel_word():
    """The host's own word on its button."""
    for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox):
        if box.isVisible():
            return box.button(QtWidgets.QDialogButtonBox.Cancel).text().replace("&", "")
    raise AssertionError("no task panel is open")


def test_questions_about_a_logger(piece, pump, shot, tmp_path):
    path = tmp_path / "shed.csv"
    path.write_text("day;clock;warmth;damp\n" + "03/04/2025;12:00;62;40\n" * 20, encoding="utf-8")
    FreeCADGui.runCommand("Heartside_Year")
    pump(0.2)
    from tests.gui.test_gui_year import panel_of

    panel_of(pump).choose(str(path))
    pump(0.3)
    box = bench.widget("HeartsideLogger")
    assert english_in(box) == [] and clipped(box) == []
    shot("german-logger")


def test_report_and_labels(piece, doc, pump, wait_until, shot):
    FreeCADGui.runCommand("Heartside_Report")
    wait_until(lambda: not working.is_busy(), 60)
    FreeCADGui.runCommand("Heartside_Annotate")
    wait_until(lambda: not working.is_busy(), 60)
    pump(0.5)
    panel = bench.widget("HeartsideReport", QtWidgets.QDockWidget)
    from workbench_pkg.objects.results import results_of

    try:
        assert english_in(panel) == []
        heading = bench.widget("HeartsideReportHeading", QtWidgets.QLabel).text()
        assert "Januar" in heading or "Februar" in heading
        (group,) = results_of(doc)
        assert group.Group[0].LabelText[1].startswith("Breite heute ")
        shot("german-report")
    finally:
        panel.close()


# What only changes the document, or has its own test above.
NO_PANEL = {
    *("Accept", "Untag", "Annotate", "Remove", "CutSlots", "TakeHardware", "Tag", "Year", "Report"),
    *("Template", "Schedule", "DrawTop", "ExportCut", "RemovePapers"),
}


def test_every_other_command(piece, doc, pump, wait_until, shot):
    """Whatever a command opens: nothing of it stays English, and nothing is cut off."""
    from workbench_pkg.commands import registry

    wrong = {}
    for name in registry.order():
        if name == "Separator" or name.partition("_")[2] in NO_PANEL:
            continue
        known = {id(each) for each in shown_widgets()}
        FreeCADGui.runCommand(name)
        pump(0.3)
        wait_until(lambda: not working.is_busy(), 60)
        pump(0.5)
        opened = [each for each in shown_widgets() if id(each) not in known]
        for each in opened:
            if english_in(each) or clipped(each):
                wrong[name] = (english_in(each), clipped(each))
        shot(f"german-{name}")
        if FreeCADGui.Control.activeDialog():
            FreeCADGui.Control.closeDialog()
        for each in shown_widgets():
            if id(each) not in known and isinstance(each, QtWidgets.QDockWidget):
                each.close()
        pump(0.2)
    assert wrong == {}


def shown_widgets():
    """Every widget of ours that can be seen, whatever holds it."""
    window = FreeCADGui.getMainWindow()
    return [
        each
        for each in window.findChildren(QtWidgets.QWidget, QtCore.QRegularExpression("^Heartside"))
        if each.isVisible()
    ]


def test_preferences(main_window, pump, shot):
    from workbench_pkg.panels.preferences_page import PreferencesPage

    page = PreferencesPage()
    page.loadSettings()
    page.form.resize(500, 300)
    page.form.show()
    pump(0.3)
    assert english_in(page.form) == [] and clipped(page.form) == []
    page.form.grab().save(str(shot("german-window").parent / "german-preferences.png"))
    page.form.close()
