"""Documents whose objects of ours have another form than this release writes, or have been spoilt.

A later form is refused in words and left untouched, an earlier one is brought up, none at all is told, and what is
broken stops nothing else and leaves no traceback in the host's report.
"""

from __future__ import annotations

import datetime
import hashlib

import FreeCAD
import pytest

from movement_core.errors import HeartsideError, InputError
from movement_core.piece.measured import Measurement
from tests.host.test_hardware_placed import small_table
from workbench_pkg.actions.annotate import annotate, remove
from workbench_pkg.actions.check import check_document
from workbench_pkg.actions.hardware import place_plan, remove_hardware
from workbench_pkg.actions.joint import confirm_joints
from workbench_pkg.actions.measured import add_measurement
from workbench_pkg.actions.papers import remove_papers, write_schedule
from workbench_pkg.actions.tag import tag
from workbench_pkg.actions.year import keep_today, set_year, settings_of
from workbench_pkg.batch.worker import carry_out
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.marks import CURRENT_SCHEMA, SCHEMA, kind_of, schema_of
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects import restoring, study
from workbench_pkg.objects.proxies import Study
from workbench_pkg.objects.results import results_of

NEWER = 99
DAY = datetime.date(2026, 1, 20)
READING = Measurement("Board", "width", 149.0, DAY, 5.0, tool_mm=0.1)


@pytest.fixture
def told(monkeypatch):
    """What the host's report is told, one warning each."""
    lines: list[str] = []

    class Report:
        PrintWarning = staticmethod(lines.append)

        def __getattr__(self, name):
            return lambda text: lines.append(f"{name}: {text}")

    monkeypatch.setattr(restoring.App, "Console", Report())
    return lines


@pytest.fixture
def piece(doc):
    """Two boards with a study and an answer."""
    for i, name in enumerate(("Board", "Twin")):
        made = doc.addObject("Part::Box", name)
        made.Length, made.Width, made.Height = 900, 150, 24
        made.Placement.Base = FreeCAD.Vector(0, 150 * i, 0)
    doc.recompute()
    tag([doc.Board, doc.Twin], species="white oak", grain="x", show="z", cut="flat", heart="show", built=9)
    set_year(doc, "heated maritime home")
    keep_today(doc, "2026-01-15", None)
    annotate(doc)
    return doc


def reopened(doc, folder):
    path = str(folder / "other-form.FCStd")
    doc.saveAs(path)
    FreeCAD.closeDocument(doc.Name)
    return FreeCAD.openDocument(path)


def of_ours(doc):
    return {name: said for name, said in property_dump(doc).items() if name and kind_of(doc.getObject(name))}


USES = {
    "read what was asked": settings_of,
    "set the year": lambda doc: set_year(doc, "museum"),
    "keep the day": lambda doc: keep_today(doc, "2026-02-01", 8.0),
    "confirm a joint": lambda doc: confirm_joints(doc, [(*keys_of(doc), "slides")]),
    "keep a measurement": lambda doc: add_measurement(doc, READING),
    "check": check_document,
    "annotate": annotate,
    "take the answer out": remove,
}


def keys_of(doc):
    return [leaf.key for leaf in read_leaves(doc).leaves]


@pytest.mark.parametrize("use", USES)
def test_a_newer_study_is_refused_in_words_and_left_untouched(piece, use, tmp_path):
    setattr(study.find_study(piece), SCHEMA, NEWER)
    doc = reopened(piece, tmp_path)
    before = property_dump(doc)
    with pytest.raises(
        InputError, match=rf"^Heartside study: .*form {NEWER}.*Allowed: 0 … {CURRENT_SCHEMA}\..*To do: "
    ):
        USES[use](doc)
    assert differences(before, property_dump(doc)) == []
    assert schema_of(study.find_study(doc)) == NEWER


def test_opening_a_newer_study_changes_nothing_and_is_told_once(piece, told, tmp_path):
    obj = study.find_study(piece)
    obj.removeProperty(study.DATE)
    setattr(obj, SCHEMA, NEWER)
    before = of_ours(piece)
    doc = reopened(piece, tmp_path)
    for _ in range(3):
        restoring.Restorer().slotActivateDocument(doc)
    assert differences(before, of_ours(doc)) == []
    assert len(told) == 1 and "Heartside study: " in told[0] and f"form {NEWER}" in told[0]
    again = reopened(doc, tmp_path)
    restoring.restore(again)
    assert len(told) == 2  # for a document opened anew it is said anew


def test_a_newer_study_without_its_class_stays_without(piece, told):
    obj = study.find_study(piece)
    obj.Proxy = None
    setattr(obj, SCHEMA, NEWER)
    restoring.restore(piece)
    assert obj.Proxy is None and len(told) == 1


def test_the_command_line_refuses_a_newer_study_in_one_line(piece, tmp_path):
    setattr(study.find_study(piece), SCHEMA, NEWER)
    path, output = tmp_path / "newer.FCStd", tmp_path / "out.FCStd"
    piece.saveAs(str(path))
    FreeCAD.closeDocument(piece.Name)
    digest = hashlib.sha256(path.read_bytes()).digest()
    names = "year date moisture shop built_on date_order temperature_unit columns complete_with"
    job = {
        "file": str(path),
        "shown": "newer.FCStd",
        "rooms": {},
        "forms": ["text"],
        **dict.fromkeys(names.split()),
    }
    for more in (
        {"command": "check"},
        {"command": "annotate", "output": str(output), "output_shown": "out.FCStd", "force": False},
    ):
        (error,) = carry_out({**job, **more})["errors"]
        assert error["message"].startswith("newer.FCStd: Heartside study: ") and "\n" not in error["message"]
        assert f"form {NEWER}" in error["message"]
    assert hashlib.sha256(path.read_bytes()).digest() == digest
    assert not output.exists()


@pytest.mark.parametrize("which", ["group", "label"])
def test_a_newer_answer_is_neither_replaced_nor_removed(piece, which):
    (group,) = results_of(piece)
    obj = group if which == "group" else group.Group[-1]
    setattr(obj, SCHEMA, NEWER)
    before = property_dump(piece)
    for use in (annotate, remove):
        with pytest.raises(InputError, match=f"form {NEWER}") as refused:
            use(piece)
        assert refused.value.where == obj.Label
    assert differences(before, property_dump(piece)) == []
    assert check_document(piece)["parts"]  # what is only read of the model is not touched by it


def test_newer_hardware_and_papers_are_neither_replaced_nor_removed(doc):
    small_table(doc, rails=("box", "step"))

    def place(document):
        place_plan(document, kinds=["button"])

    place(doc)
    write_schedule(doc)
    marked = [obj for obj in doc.Objects if kind_of(obj) in ("fastener", "schedule")]
    kinds = {kind_of(obj): obj for obj in marked}
    assert set(kinds) == {"fastener", "schedule"}
    for obj in kinds.values():
        setattr(obj, SCHEMA, NEWER)
    before = property_dump(doc)
    for use in (place, remove_hardware, write_schedule, remove_papers):
        with pytest.raises(InputError, match=f"form {NEWER}"):
            use(doc)
    assert differences(before, property_dump(doc)) == []


@pytest.mark.parametrize("lost", ["zero", "missing"])
def test_an_older_form_is_brought_up_and_a_missing_one_is_told(piece, lost, told, tmp_path):
    (group,) = results_of(piece)
    label = group.Group[0]
    whole = of_ours(piece)
    obj = study.find_study(piece)
    obj.removeProperty(study.DATE)
    for each in (obj, group, label):
        if lost == "zero":
            setattr(each, SCHEMA, 0)
        else:
            each.removeProperty(SCHEMA)
    doc = reopened(piece, tmp_path)
    restoring.restore(doc)
    found = study.find_study(doc)
    assert (
        isinstance(found.Proxy, Study)
        and found.HeartsideDate == ""
        and found.HeartsideYear == "heated maritime home"
    )
    assert {schema_of(each) for each in doc.Objects if kind_of(each)} == {CURRENT_SCHEMA}
    found.HeartsideDate = "2026-01-15"
    found.purgeTouched()
    assert differences(whole, of_ours(doc)) == []
    if lost == "zero":
        assert told == []
    else:
        assert len(told) == 2 and all("did not say its form" in line for line in told)
        assert "Heartside study" in told[0] and "Heartside results" in told[1]


NO_FORMS = [
    *(("String", "first"), ("String", "1"), ("Integer", -1), ("Bool", True)),
    *(("Float", 1.5), ("StringList", ["1"]), ("Link", None)),
]


@pytest.mark.parametrize("kind, value", NO_FORMS)
def test_what_is_no_form_is_told_and_left_and_the_others_are_brought_up(
    piece, kind, value, told, capfd, tmp_path
):
    (group,) = results_of(piece)
    group.removeProperty(SCHEMA)
    obj = study.find_study(piece)
    obj.removeProperty(SCHEMA)
    obj.addProperty(f"App::Property{kind}", SCHEMA)
    setattr(obj, SCHEMA, value)
    before = of_ours(piece)[obj.Name]
    doc = reopened(piece, tmp_path)
    restoring.restore(doc)
    found = study.find_study(doc)
    assert of_ours(doc)[found.Name] == before
    assert schema_of(results_of(doc)[0]) == CURRENT_SCHEMA
    assert len([line for line in told if "no form of properties" in line]) == 1
    assert "Traceback" not in "".join(capfd.readouterr()) + "".join(told)
    with pytest.raises(InputError, match="HeartsideSchema is"):
        check_document(doc)


def test_one_that_fails_unforeseen_stops_no_other_and_is_told_in_one_line(doc, told, monkeypatch):
    first = study.ensure_study(doc)
    other = FreeCAD.newDocument("Other")
    second = study.ensure_study(other)
    migrate = study.migrate

    def failing(obj):
        if obj.Document == doc:
            raise RuntimeError("the host\nhas no such thing")
        migrate(obj)

    monkeypatch.setattr(study, "migrate", failing)
    for obj in (first, second):
        obj.Proxy = None
        setattr(obj, SCHEMA, 0)
    restoring.Restorer().slotActivateDocument(other)
    assert isinstance(second.Proxy, Study) and schema_of(second) == CURRENT_SCHEMA
    (line,) = told
    assert line.startswith("Heartside: Heartside study: ") and line.count("\n") == 1
    assert "RuntimeError: the host has no such thing" in line


ASKED = (
    "[1, 2]", "5", "nonsense", "[" * 100_000, '{"colour": 1}', '{"shop": 5}',
    '{"rooms": [1]}', '{"rooms": {"heating_c": "warm"}}', '{"rooms": {"attic": 1}}',
    '{"rooms": {"heating_c": NaN}}', '{"rooms": {"heating_c": 20}}',
    '{"answers": 7}', '{"answers": {"colour": "red"}}', '{"answers": {"date_order": 3}}',
    '{"answers": {"columns": {"date": [1]}}}', '{"answers": {"date_order": "xyz"}}',
    '{"built_on": "2026-02-31", "shop": "museum"}', '{"shop": "no such air", "built_on": "2026-01-15"}',
)  # fmt: skip
SPOILT = [
    *(("String", "HeartsideAsked", text) for text in ASKED),
    ("String", "HeartsideTodayMoisture", "wet"),
    ("FloatList", "HeartsideTodayMoisture", [8.0]),
    ("Float", "HeartsideTodayMoisture", float("nan")),
    ("Float", "HeartsideTodayMoisture", 1e300),
    ("String", "HeartsideDate", "yesterday"),
    ("StringList", "HeartsideDate", ["2026-01-15"]),
    ("FloatList", "HeartsideYear", [1.0]),
    ("String", "HeartsideYear", "/dev/zero.csv"),
]


@pytest.mark.parametrize("kind, name, value", SPOILT)
def test_what_somebody_else_wrote_into_the_study_is_refused_in_words(piece, kind, name, value):
    obj = study.find_study(piece)
    if name in obj.PropertiesList:
        obj.removeProperty(name)
    if name == "HeartsideAsked":
        obj.HeartsideYear = ""
    obj.addProperty(f"App::Property{kind}", name)
    setattr(obj, name, value)
    before = str(property_dump(piece))  # as text: a number that is none equals nothing
    with pytest.raises(HeartsideError) as refused:
        check_document(piece)
    assert "\n" not in str(refused.value) and len(str(refused.value)) < 3000
    assert str(property_dump(piece)) == before


@pytest.mark.parametrize("text", ["5", "{}x", "[" * 100_000, "[1]", '[["a"]]', '{"a": 1}'])
@pytest.mark.parametrize("name", ["HeartsideJoints", "HeartsideMeasured"])
def test_lists_that_are_none_are_told_in_the_report(piece, name, text):
    obj = study.find_study(piece)
    obj.addProperty("App::PropertyString", name)
    setattr(obj, name, text)
    errors = [error["message"] for error in check_document(piece)["errors"]]
    assert len(errors) == 1 and "\n" not in errors[0]
