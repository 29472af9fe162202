"""Tests for the host's own test command, with what the host ships: ``freecadcmd -t workbench_pkg.host_tests``.

They show that the add-on works in the host that runs them. Where pytest is installed and the project's tests are
there, the whole suite for hosts runs as one more.
"""

from __future__ import annotations

import importlib.util
import os
import tempfile
import unittest
from pathlib import Path

import FreeCAD as App

ROOT = Path(__file__).resolve().parent.parent


class InThisHost(unittest.TestCase):
    """One small piece, through every step that a maker takes."""

    def setUp(self) -> None:
        self.doc = App.newDocument("HeartsideTrial")
        self.doc.UndoMode = 1
        self.board = self.doc.addObject("Part::Box", "Board")
        self.board.Length, self.board.Width, self.board.Height = 800, 140, 22
        self.doc.recompute()

    def tearDown(self) -> None:
        for name in list(App.listDocuments()):
            if name.startswith("HeartsideTrial"):
                App.closeDocument(name)

    def tag(self) -> None:
        from workbench_pkg.actions.tag import tag

        tag([self.board], species="white oak", grain="x", show="z", cut="flat", heart="show", built=9)

    def test_tags_are_properties_and_one_undo_step(self) -> None:
        self.tag()
        self.assertEqual(self.board.HeartsideGrain, "x")
        self.doc.undo()
        self.assertNotIn("HeartsideGrain", self.board.PropertiesList)

    def test_a_board_is_widest_when_wettest(self) -> None:
        from workbench_pkg.actions.check import check_document

        self.tag()
        (part,) = check_document(self.doc)["parts"]
        self.assertLess(part["driest_mm"], part["today_mm"] + 1e-9)
        self.assertLess(part["driest_mm"], part["wettest_mm"])

    def test_annotating_and_removing_leaves_the_document_as_it_was(self) -> None:
        from workbench_pkg.actions.annotate import annotate, remove
        from workbench_pkg.host.property_dump import differences, property_dump

        self.tag()
        before = property_dump(self.doc)
        annotate(self.doc)
        self.assertNotEqual(differences(before, property_dump(self.doc)), [])
        remove(self.doc)
        self.assertEqual(differences(before, property_dump(self.doc)), [])

    def test_a_study_survives_saving(self) -> None:
        from workbench_pkg.actions.year import set_year, year_of
        from workbench_pkg.objects.proxies import Study
        from workbench_pkg.objects.study import find_study

        set_year(self.doc, "heated maritime home")
        with tempfile.TemporaryDirectory() as folder:
            path = os.path.join(folder, "HeartsideTrialSaved.FCStd")
            self.doc.saveAs(path)
            App.closeDocument(self.doc.Name)
            again = App.openDocument(path)
            self.assertEqual(year_of(again), "heated maritime home")
            study = find_study(again)
            self.assertIsNotNone(study)
            self.assertIsInstance(study.Proxy, Study)  # type: ignore[union-attr]
            App.closeDocument(again.Name)


class WholeSuite(unittest.TestCase):
    """Our tests of host and objects, where they and pytest are there; the others need a Python of their own."""

    def test_host_suite(self) -> None:
        if importlib.util.find_spec("pytest") is None:
            self.skipTest("pytest is not installed for this host's Python")
        if not (ROOT / "tests" / "host").is_dir():
            self.skipTest("the project's tests were not installed with the add-on")
        import pytest

        before = os.getcwd()
        os.chdir(ROOT)
        try:
            files = [
                str(path)
                for part in ("host", "objects")
                for path in Path("tests/host").glob(f"test_{part}_*.py")
            ]
            code = pytest.main(["-c", "tests/running/host.ini", "--rootdir=.", *sorted(files)])
        finally:
            os.chdir(before)
        self.assertEqual(int(code), 0)
