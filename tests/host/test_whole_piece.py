"""The whole piece in the host: the demo's faults are found with the right parts, and the repaired demo is clean."""

from __future__ import annotations

import bench  # noqa: F401  (puts the host's own modules on the path)
import pytest

from workbench_pkg.actions.check import check_file
from workbench_pkg.actions.settings import settings_from_texts
from workbench_pkg.demo.build import build_demo
from workbench_pkg.demo.faults import FAULTS, UNTOLD

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
