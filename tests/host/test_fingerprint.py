"""The fingerprint of an answer: the same as long as nothing that matters changed, another as soon as it did."""

from __future__ import annotations

import FreeCAD
import pytest

from tests.host import bench
from workbench_pkg.actions.annotate import annotate, remove
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.actions.joint import confirm_joint
from workbench_pkg.actions.tag import tag
from workbench_pkg.actions.year import set_year
from workbench_pkg.objects.results import noted_fingerprint
from workbench_pkg.objects.study import ensure_study


@pytest.fixture
def shelf(doc):
    """Two boards, a link to one of them with a tag of its own, a board with a hole."""
    doc.UndoMode = 1
    one = bench.box(doc, "One")
    other = bench.box(doc, "Other", placement=bench.at(0, 0, 60, (0, 0, 1), 12.3))
    link = bench.link(doc, "Linked", one, bench.at(0, 300, 0))
    pin = doc.addObject("Part::Cylinder", "Pin")
    pin.Radius, pin.Height = 8, 40
    pin.Placement = bench.at(50, 450, -5)
    plain = bench.box(doc, "Plain", placement=bench.at(0, 420, 0))
    cut = doc.addObject("Part::Cut", "Bored")
    cut.Base, cut.Tool = plain, pin
    doc.recompute()
    tag([one, other, cut], species="white oak", grain="x", show="z", cut="flat", heart="show", built=9)
    tag([link], species="black walnut")
    return doc


CHANGES = {
    "length": lambda doc: setattr(doc.One, "Length", 401),
    "place": lambda doc: setattr(doc.Other, "Placement", bench.at(0, 0, 61)),
    "place of a link": lambda doc: setattr(doc.Linked, "Placement", bench.at(0, 301, 0)),
    "a hole moved": lambda doc: setattr(doc.Pin, "Placement", bench.at(52, 450, -5)),
    "a hole widened": lambda doc: setattr(doc.Pin, "Radius", 8.1),
    "tag": lambda doc: tag([doc.One], cut="quarter"),
    "tag of a link": lambda doc: tag([doc.Linked], built=8),
    "name": lambda doc: setattr(doc.One, "Label", "First"),
    "hidden": lambda doc: setattr(doc.Other, "Visibility", False),
    "deleted": lambda doc: doc.removeObject("Other"),
    "added": lambda doc: bench.box(doc, "New"),
    "year": lambda doc: set_year(doc, "heated maritime home"),
    "day": lambda doc: setattr(ensure_study(doc), "HeartsideDate", "2026-01-15"),
    "joint": lambda doc: confirm_joint(doc.One, doc.Other, "slides"),
}


@pytest.mark.parametrize("change", CHANGES)
def test_a_change_that_matters_changes_it(shelf, change):
    before = fingerprint(shelf)
    CHANGES[change](shelf)
    shelf.recompute()
    assert fingerprint(shelf) != before


def test_what_does_not_matter_leaves_it(shelf, tmp_path):
    before = fingerprint(shelf)
    assert fingerprint(shelf) == before
    ensure_study(shelf)
    annotate(shelf)
    assert fingerprint(shelf) == before == noted_fingerprint(shelf)
    for obj in shelf.Objects:
        obj.touch()
    shelf.recompute()
    assert fingerprint(shelf) == before
    shelf.addObject("App::DocumentObjectGroup", "Folder")
    shelf.saveAs(str(tmp_path / "elsewhere.FCStd"))
    assert fingerprint(shelf) == before
    FreeCAD.closeDocument(shelf.Name)
    again = FreeCAD.openDocument(str(tmp_path / "elsewhere.FCStd"))
    assert fingerprint(again) == before == noted_fingerprint(again)


def test_undo_brings_it_back(shelf):
    before = fingerprint(shelf)
    shelf.openTransaction("change")
    shelf.One.Length = 500
    shelf.recompute()
    shelf.commitTransaction()
    assert fingerprint(shelf) != before
    shelf.undo()
    shelf.recompute()
    assert fingerprint(shelf) == before


def test_the_file_of_the_year_counts_by_its_content(shelf, tmp_path):
    path = tmp_path / "cellar.csv"
    rows = ["month,temperature_c,rh_percent", *(f"{m},{12 + m % 3},{60 + m}" for m in range(1, 13))]
    path.write_text("\n".join(rows), encoding="utf-8")
    set_year(shelf, str(path))
    before = fingerprint(shelf)
    path.write_text("\n".join(rows).replace("61", "62"), encoding="utf-8")
    assert fingerprint(shelf) != before


def test_removing_the_answer_leaves_none(shelf):
    annotate(shelf)
    remove(shelf)
    assert noted_fingerprint(shelf) is None


def test_answers_of_earlier_releases_noted_none(doc):
    from workbench_pkg.host.labels import results_group

    assert noted_fingerprint(doc) is None
    results_group(doc)
    assert noted_fingerprint(doc) == ""
