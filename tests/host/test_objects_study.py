"""The study object: plain properties, one a document, whole without the add-on and with it again."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from pathlib import Path

import FreeCAD
import pytest

from tests.host.conftest import LIBRARIES
from workbench_pkg.host.marks import CURRENT_SCHEMA, KIND, SCHEMA, kind_of, mark, schema_of
from workbench_pkg.objects import restoring, study
from workbench_pkg.objects.proxies import Study

# Under the host's own test command sys.executable is the host, which is no Python.
PYTHON = sys.executable if "python" in sys.executable else shutil.which("python3")
# What a host without the add-on does to a file: open, look, save.
STRANGER = """
import shutil
import sys
sys.path += {libraries!r}
import FreeCAD
doc = FreeCAD.openDocument({path!r})
study = doc.getObject("HeartsideStudy")
assert study.Proxy is None, study.Proxy
assert study.HeartsideYear == "heated maritime home"
assert study.HeartsideKind == "study"
doc.recompute()
assert study.isValid()
doc.saveAs({output!r})
"""


def make(doc, year="heated maritime home"):
    obj = study.ensure_study(doc)
    obj.HeartsideYear = year
    return obj


def reopened(doc, folder: Path):
    path = str(folder / "study.FCStd")
    doc.saveAs(path)
    FreeCAD.closeDocument(doc.Name)
    return FreeCAD.openDocument(path)


def test_it_is_a_plain_feature_with_its_kind_and_schema(doc):
    obj = make(doc)
    assert obj.TypeId == "App::FeaturePython"
    assert (obj.HeartsideKind, obj.HeartsideSchema) == ("study", CURRENT_SCHEMA)
    assert kind_of(obj) == "study"
    assert obj.isValid() and "Touched" not in obj.State


def test_there_is_one_a_document(doc):
    first = make(doc)
    assert study.ensure_study(doc) == first
    assert study.find_study(doc) == first
    assert len(doc.Objects) == 1


def test_a_document_without_one_answers_with_nothing(doc):
    assert study.find_study(doc) is None
    assert study.get_text(doc, study.YEAR) == ""
    assert study.today_moisture(doc) is None


def test_making_one_is_undone_whole(doc):
    doc.openTransaction("make")
    make(doc)
    doc.commitTransaction()
    doc.undo()
    assert doc.Objects == []
    doc.redo()
    assert study.get_text(doc, study.YEAR) == "heated maritime home"
    assert isinstance(study.find_study(doc).Proxy, Study)


def test_a_moisture_that_nobody_measured_is_absent(doc):
    obj = make(doc)
    assert study.today_moisture(doc) is None
    study.set_today_moisture(obj, 8.5)
    assert study.today_moisture(doc) == 8.5
    study.set_today_moisture(obj, None)
    assert study.today_moisture(doc) is None
    assert study.TODAY not in obj.PropertiesList


def test_saved_and_opened_it_is_the_same(doc, tmp_path):
    study.set_today_moisture(make(doc), 7.25)
    again = reopened(doc, tmp_path)
    obj = study.find_study(again)
    assert isinstance(obj.Proxy, Study)
    assert (obj.HeartsideYear, study.today_moisture(again)) == ("heated maritime home", 7.25)
    assert "Touched" not in obj.State


def test_the_file_holds_no_data_in_the_proxy(doc, tmp_path):
    import zipfile

    make(doc)
    path = tmp_path / "study.FCStd"
    doc.saveAs(str(path))
    with zipfile.ZipFile(path) as archive:
        text = archive.read("Document.xml").decode()
    at = text.index("workbench_pkg.objects.proxies")
    assert 'class="Study"' in text[at : at + 200]
    assert "heated maritime home" in text
    assert text.count("heated maritime home") == 1


def test_it_comes_back_to_life_after_a_host_without_the_add_on_has_saved_it(doc, tmp_path):
    make(doc)
    path, output = str(tmp_path / "ours.FCStd"), str(tmp_path / "theirs.FCStd")
    doc.saveAs(path)
    FreeCAD.closeDocument(doc.Name)
    profile = tmp_path / "stranger"
    profile.mkdir()
    libraries = [folder for folder in LIBRARIES if os.path.isdir(folder)]
    code = STRANGER.format(libraries=libraries, path=path, output=output)
    environment = {**os.environ, "FREECAD_USER_HOME": str(profile)}
    environment.pop("PYTHONPATH", None)
    done = subprocess.run(
        [PYTHON, "-I", "-c", code], env=environment, capture_output=True, encoding="utf-8", cwd=tmp_path
    )
    assert done.returncode == 0, done.stderr
    again = FreeCAD.openDocument(output)
    obj = study.find_study(again)
    assert isinstance(obj.Proxy, Study)
    assert obj.HeartsideYear == "heated maritime home"


def test_a_document_that_came_along_as_a_link_is_restored_too(doc, tmp_path):
    make(doc)
    other = reopened(doc, tmp_path)
    found = study.find_study(other)
    found.Proxy = None
    restoring.Restorer().slotActivateDocument(FreeCAD.newDocument("Another"))
    assert isinstance(found.Proxy, Study)


def test_an_older_form_gets_what_it_lacks(doc):
    obj = make(doc)
    obj.removeProperty(study.DATE)
    setattr(obj, SCHEMA, 0)
    study.migrate(obj)
    assert obj.HeartsideDate == ""
    assert schema_of(obj) == CURRENT_SCHEMA
    assert obj.HeartsideYear == "heated maritime home"


def test_a_newer_form_is_left_as_it_is(doc):
    obj = make(doc)
    obj.removeProperty(study.DATE)
    setattr(obj, SCHEMA, CURRENT_SCHEMA + 1)
    study.migrate(obj)
    assert study.DATE not in obj.PropertiesList
    assert schema_of(obj) == CURRENT_SCHEMA + 1


def test_other_peoples_objects_are_left_alone(doc):
    theirs = doc.addObject("App::FeaturePython", "Theirs")
    assert restoring.restore(doc) == 0
    assert theirs.Proxy is None
    assert kind_of(theirs) == "" and schema_of(theirs) == 0
    mark(theirs, "something new")
    assert restoring.restore(doc) == 1
    assert theirs.Proxy is None


def test_a_copy_goes_along_whole(doc):
    obj = make(doc)
    other = FreeCAD.newDocument("Other")
    copied = other.copyObject(obj)
    assert copied.HeartsideYear == "heated maritime home"
    assert getattr(copied, KIND) == "study"


@pytest.mark.parametrize("state", [None, {}, {"old": 1}])
def test_a_proxy_takes_any_state_and_keeps_none(state):
    from workbench_pkg.objects.proxies import StudyView

    for kind in (Study, StudyView):
        proxy = kind.__new__(kind)
        proxy.loads(state)
        proxy.__setstate__(state)
        assert proxy.dumps() is None
        assert proxy.__getstate__() is None
