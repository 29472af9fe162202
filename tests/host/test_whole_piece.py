"""The whole piece in the host: the demo's faults are found with the right parts, and the repaired demo is clean."""

from __future__ import annotations

import bench
import pytest
from bench import at

from movement_core.errors import InputError
from workbench_pkg.actions.check import check_document, check_file
from workbench_pkg.actions.joint import confirm_joint
from workbench_pkg.actions.settings import settings_from_texts
from workbench_pkg.actions.tag import tag
from workbench_pkg.demo.build import build_demo
from workbench_pkg.demo.faults import FAULTS, UNTOLD
from workbench_pkg.host.documents import opened
from workbench_pkg.objects.joints import kept_joints
from workbench_pkg.objects.study import find_study

# What each kind of fault is found as.
FOUND_AS = {
    "pith in the board": "pith-in-board",
    "unequal finish": "unequal-finish",
    "trapped panel": "trapped-panel",
    "inset door jams": "inset-jams",
    "moulding across the side": "moulding-across-the-side",
    "drawer bottom": "drawer-bottom",
    "runner across the side": "runner-across-the-side",
}
DRAWERS = 3


def reports(folder, repaired):
    paths = build_demo(folder, repaired)
    settings = settings_from_texts("", "2026-03-15", None)
    return {path.stem: check_file(path, settings) for path in paths}


@pytest.fixture(scope="module")
def faulty(tmp_path_factory):
    return reports(tmp_path_factory.mktemp("faulty"), False)


@pytest.fixture(scope="module")
def repaired(tmp_path_factory):
    return reports(tmp_path_factory.mktemp("repaired"), True)


def bare(names):
    """Labels without the container that the name of a linked part carries."""
    return frozenset(name.split(" / ")[-1] for name in names)


@pytest.mark.parametrize("fault", FAULTS, ids=lambda fault: f"{fault.kind}: {fault.parts[0]}")
def test_every_fault_is_found_with_its_parts(faulty, fault):
    found = [f for f in faulty[fault.model]["findings"] if f["check"] == FOUND_AS[fault.kind]]
    fitting = [f for f in found if bare(f["parts"]) == frozenset(fault.parts)]
    assert len(fitting) == (DRAWERS if fault.kind == "drawer bottom" else 1), [f["parts"] for f in found]
    for finding in fitting:
        assert finding["message"] and finding["remedy"] and finding["month"]
        assert len(finding["keys"]) == len(finding["parts"])


def test_nothing_is_found_that_is_no_fault(faulty):
    faults = {(fault.model, FOUND_AS[fault.kind], frozenset(fault.parts)) for fault in FAULTS}
    untold = {(model, label) for model, label in UNTOLD}
    for model, report in faulty.items():
        for finding in report["findings"]:
            parts = bare(finding["parts"])
            if finding["check"] == "missing-facts":
                assert all((model, part) in untold for part in parts)
            else:
                assert (model, finding["check"], parts) in faults


def test_the_repaired_demo_is_clean(repaired):
    for model, report in repaired.items():
        assert (model, report["findings"], report["errors"]) == (model, [], [])


# ---- joints that the maker confirms ------------------------------------------------------------------------------


def runner_on_side(doc):
    """A board 400 wide, and a strip across it."""
    side = bench.box(doc, "Side", 700, 400, 20)
    runner = bench.box(doc, "Runner", 20, 380, 20, at(100, 10, 20))
    tag([side], species="white oak", grain="x", show="z", pith=(0, -200), built=8)
    tag([runner], species="white oak", grain="y", show="z", pith=(0, -200), built=8)
    doc.recompute()
    return side, runner


def verdict(doc):
    (crossing,) = check_document(doc)["crossings"]
    severities = [f["severity"] for f in check_document(doc)["findings"] if "across-the-side" in f["check"]]
    return crossing["kind"], crossing["origin"], crossing["verdict"], severities


def test_a_confirmed_joint_replaces_the_inferred_one_and_is_kept(doc, tmp_path):
    side, runner = runner_on_side(doc)
    assert verdict(doc) == ("unknown", "inferred", "if glued, splits", ["unknown"])
    doc.UndoMode = 1
    assert confirm_joint(runner, side, "slides") == 1
    assert verdict(doc) == ("slides", "confirmed", "harmless", [])
    confirm_joint(side, runner, "glued cross-grain")
    assert verdict(doc) == ("glued cross-grain", "confirmed", "splits", ["breaks"])
    path = tmp_path / "kept.FCStd"
    doc.saveCopy(str(path))
    with opened(path) as again:
        assert verdict(again)[0] == "glued cross-grain"
    doc.undo()
    assert verdict(doc)[0] == "slides"
    confirm_joint(side, runner, None)
    assert verdict(doc)[0] == "unknown"


def test_a_wrong_kind_or_no_part_changes_nothing(doc):
    side, runner = runner_on_side(doc)
    with pytest.raises(InputError, match="Did you mean 'slides'"):
        confirm_joint(side, runner, "slide")
    with pytest.raises(InputError, match="0 pairs"):
        confirm_joint(side, side, "slides")
    assert verdict(doc)[1] == "inferred"


def test_joints_of_parts_that_are_gone_go_with_them(doc):
    side, runner = runner_on_side(doc)
    other = bench.box(doc, "Other", 20, 380, 20, at(300, 10, 20))
    confirm_joint(side, runner, "slides")
    doc.removeObject(runner.Name)
    confirm_joint(side, other, "rests")
    assert list(kept_joints(doc).values()) == ["rests"]


def test_a_broken_property_is_told_and_costs_only_itself(doc):
    side, runner = runner_on_side(doc)
    confirm_joint(side, runner, "slides")
    find_study(doc).HeartsideJoints = "not a list"
    report = check_document(doc)
    assert any("not a list of joints" in error["message"] for error in report["errors"])
    assert report["crossings"][0]["kind"] == "unknown"


def test_joints_beside_the_model(doc, tmp_path):
    runner_on_side(doc)
    path = tmp_path / "side.FCStd"
    doc.saveCopy(str(path))
    beside = tmp_path / "side.joints.csv"
    beside.write_text(
        "part,other,kind\nRunner,Side,slides\nRunner,Sied,slides\nRunner,Side,glud\n", encoding="utf-8"
    )
    report = check_file(path, settings_from_texts("", "2026-03-15", None))
    assert report["crossings"][0]["kind"] == "slides"
    told = [error["message"] for error in report["errors"]]
    assert any("Did you mean 'Side'" in text for text in told)
    assert any("no joint is called 'glud'" in text for text in told)
    confirm_joint(doc.Runner, doc.Side, "rests")  # what the model says outranks the file beside it
    doc.saveCopy(str(path))
    assert check_file(path, settings_from_texts("", "2026-03-15", None))["crossings"][0]["kind"] == "rests"
