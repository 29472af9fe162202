"""Documents of earlier releases, made in each host (``tests/documents/make.py``): every host opens all of them.

So a file goes up and down between hosts, and what an earlier release wrote stays readable for good. Two of them went
from host to host (``tests/documents/move.py``), one through a host that had never heard of the add-on.
"""

from __future__ import annotations

import json
import shutil
import zipfile
from pathlib import Path

import FreeCAD
import pytest

from workbench_pkg.actions.annotate import annotate, remove
from workbench_pkg.actions.check import check_document
from workbench_pkg.actions.year import settings_of, year_of
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.marks import kind_of, schema_of
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.host.tagging import read_tags
from workbench_pkg.objects.proxies import Study
from workbench_pkg.objects.results import report_of, results_of
from workbench_pkg.objects.study import find_study

DOCUMENTS = Path(__file__).resolve().parents[1] / "documents"
FROZEN, MOVED = sorted(DOCUMENTS.glob("frozen-*.FCStd")), sorted(DOCUMENTS.glob("moved-*.FCStd"))
BARE = DOCUMENTS / "moved-0.1-by-1.1-bare-0.20.FCStd"
FIGURES = ("HeartsideToday", "HeartsideDriest", "HeartsideWettest")


@pytest.fixture(params=[*FROZEN, *MOVED], ids=lambda path: path.stem)
def frozen(request, tmp_path):
    """A copy of a frozen document, open."""
    path = tmp_path / "frozen.FCStd"
    shutil.copyfile(request.param, path)
    return FreeCAD.openDocument(str(path))


def test_there_is_one_of_each_host():
    assert {path.stem.rpartition("-")[2] for path in FROZEN} == {"0.20", "1.0", "1.1"}


def test_one_has_lost_its_classes_on_the_way_and_the_other_has_them():
    assert len(MOVED) == 2 and BARE in MOVED
    for path in MOVED:
        with zipfile.ZipFile(path) as archive:
            said = archive.read("Document.xml").decode()
        assert ("workbench_pkg.objects.proxies" in said) == (path != BARE)
        assert "heated maritime home" in said and 'name="HeartsideKind"' in said


def test_every_object_is_there_and_valid(frozen):
    assert all(obj.isValid() for obj in frozen.Objects)
    assert {"Board", "Twin", "Shelf", "Bracket"} <= {obj.Name for obj in frozen.Objects}


def test_the_study_says_what_it_said(frozen):
    obj = find_study(frozen)
    assert isinstance(obj.Proxy, Study)
    assert schema_of(obj) == 1
    assert year_of(frozen) == "heated maritime home"
    assert settings_of(frozen).today.isoformat() == "2026-01-15"


def test_the_boards_say_what_they_said(frozen):
    said = {leaf.name.partition(" ")[0]: read_tags(leaf) for leaf in read_leaves(frozen).leaves}
    board, twin = said["Board"].properties, said["Twin"].properties
    assert board["HeartsideSpecies"] == "White oak, commercial"
    assert board["HeartsidePith"] == (12.0, -70.0)
    assert (board["HeartsideGlued"], board["HeartsideFlattened"], board["HeartsideFitted"]) == (8.0, 9.0, 9.5)
    assert (twin["HeartsideCut"], twin["HeartsideHeart"], twin["HeartsideBuilt"]) == ("flat", "back", 9.0)
    assert "wood{black walnut" in said["Shelf"].texts[0]


def test_the_answer_can_be_read(frozen):
    (group,) = results_of(frozen)
    report = report_of(frozen)
    assert [part["name"] for part in report["parts"]] == ["Board", "Twin", "Shelf", "Bracket"]
    assert json.loads(group.HeartsideReport) == report
    labels = [obj for obj in group.Group if kind_of(obj) == "label"]
    assert [obj.LabelText[0] for obj in labels] == ["Board", "Twin", "Shelf", "Bracket"]
    today, driest, wettest = (getattr(labels[0], name).Value for name in FIGURES)
    assert driest <= today <= wettest
    assert 149 < driest < wettest < 152


def test_recomputing_changes_nothing_of_ours(frozen):
    before = property_dump(frozen)
    for obj in frozen.Objects:
        obj.touch()
    frozen.recompute()
    ours = {obj.Name for obj in frozen.Objects if kind_of(obj)}
    changed = {line.partition(".")[0] for line in differences(before, property_dump(frozen))}
    assert not changed & ours


def test_it_can_be_worked_out_annotated_and_cleared_again(frozen):
    frozen.UndoMode = 1
    report = check_document(frozen)
    assert len(report["parts"]) == 4 and not report["errors"]
    annotate(frozen)
    assert len(results_of(frozen)) == 1
    remove(frozen)
    assert results_of(frozen) == []
    assert [obj.Name for obj in frozen.Objects if obj.TypeId == "App::AnnotationLabel"] == []
    assert find_study(frozen) is not None
