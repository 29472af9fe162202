"""Our page among the host's preferences: there on every host, kept, and of effect in the window only."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.actions.annotate import annotate
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.actions.year import settings_of
from workbench_pkg.host import preferences
from workbench_pkg.objects.results import results_of
from workbench_pkg.objects.study import ensure_study, flatness_mm, set_flatness

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

MARITIME = "heated maritime home"


@pytest.fixture(autouse=True)
def clean():
    yield
    FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Mod").RemGroup("Heartside")


@pytest.fixture
def page(main_window, pump):
    from workbench_pkg.panels.preferences_page import PreferencesPage

    made = PreferencesPage()
    made.loadSettings()
    made.form.show()
    pump(0.1)
    yield made
    made.form.close()


def test_the_host_shows_the_page(main_window, pump, shot):
    """The dialog is modal, so what is looked at is looked at from a timer."""
    seen = {}

    def look():
        dialog = QtWidgets.QApplication.activeModalWidget()
        if dialog is None:
            return  # not up yet
        timer.stop()
        seen["pages"] = dialog.findChildren(QtWidgets.QWidget, "HeartsidePreferences")
        seen["labels"] = [
            each.isChecked() for each in dialog.findChildren(QtWidgets.QCheckBox, "HeartsideShowLabels")
        ]
        shot("preferences", settle=0.3)
        dialog.reject()

    timer = bench.QtCore.QTimer()
    timer.timeout.connect(look)
    timer.start(500)
    FreeCADGui.showPreferences("Heartside")
    pump(0.2)
    assert len(seen["pages"]) == 1 and seen["labels"] == [True]


def test_nothing_kept_is_the_usual(page):
    assert (page.year.currentData(), page.labels.isChecked()) == ("", True)
    assert not page.flatness.said.isChecked()
    page.saveSettings()
    assert (preferences.usual_year(), preferences.usual_flatness_mm(), preferences.shows_labels()) == (
        "",
        None,
        True,
    )


def test_what_is_kept_comes_back_and_counts(page, doc, pump):
    bench.small_table(doc)
    bench.tag_all(doc)
    before = fingerprint(doc)
    page.year.setCurrentIndex(page.year.findData(MARITIME))
    page.flatness.set(2.5)
    page.labels.setChecked(False)
    page.saveSettings()
    page.loadSettings()
    assert (page.year.currentData(), page.flatness.number(), page.labels.isChecked()) == (
        MARITIME,
        2.5,
        False,
    )
    assert settings_of(doc).asked["year"] == MARITIME and flatness_mm(doc) == 2.5
    assert fingerprint(doc) != before
    annotate(doc)
    (group,) = results_of(doc)
    assert not any(label.ViewObject.isVisible() for label in group.Group)


def test_the_document_outranks_them(page, doc):
    study = ensure_study(doc)
    study.HeartsideYear = "museum"
    set_flatness(study, 1.0)
    preferences.keep(MARITIME, 2.5, True)
    assert settings_of(doc).asked["year"] == "museum" and flatness_mm(doc) == 1.0


def test_the_year_panel_begins_with_the_preferred_year(page, doc, pump):
    preferences.keep(MARITIME, None, True)
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    FreeCADGui.runCommand("Heartside_Year")
    pump(0.2)
    rows = bench.widget("HeartsideYearList", QtWidgets.QListWidget)
    assert rows.currentIndex().data(bench.QtCore.Qt.UserRole) == MARITIME
    bench.press("Cancel")
