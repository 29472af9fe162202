"""Gathers what the validation tests compared; writes the report where the test command wants it."""

from __future__ import annotations

import ast
import os
from pathlib import Path

import pytest

from tests.validation.record import RECORDS
from tests.validation.report_pages import markdown, page

HERE = Path(__file__).parent
RAN: dict[str, set[str]] = {}
"""File → the outcomes of its tests in this run."""
LAST = "test_validation_report"


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """The report is judged when everything else has been compared."""
    items.sort(key=lambda item: item.path.stem == LAST)


def pytest_runtest_logreport(report: pytest.TestReport) -> None:
    file = Path(report.nodeid.split("::")[0])
    if file.parent.name == "validation" and (report.when == "call" or report.outcome != "passed"):
        RAN.setdefault(file.stem, set()).add(report.outcome)


@pytest.fixture
def whole_run(request: pytest.FixtureRequest) -> dict[str, set[str]]:
    """What every file of this folder gave; skipped where only some of the tests run."""
    config = request.config
    files = {path.stem for path in HERE.glob("test_*.py")}
    collected = {item.path.stem for item in request.session.items}
    if config.option.keyword or config.option.markexpr or not files - _left_out() <= collected:
        pytest.skip("judges a run of all validation tests")
    if any("::" in word for word in config.args):
        pytest.skip("judges a run of all validation tests")
    return RAN


def _left_out() -> set[str]:
    """Files that cannot be collected where their reference library is absent."""
    return {
        path.stem for path in HERE.glob("test_*.py") if "importorskip" in path.read_text(encoding="utf-8")
    }


def titles() -> dict[str, str]:
    """Each test file's subject: the first sentence of its docstring."""
    found = {}
    for path in HERE.glob("test_*.py"):
        text = ast.get_docstring(ast.parse(path.read_text(encoding="utf-8"))) or path.stem
        found[path.stem] = " ".join(text.split("\n\n")[0].split())
    return found


def pytest_sessionfinish(session: pytest.Session) -> None:
    folder = os.environ.get("HEARTSIDE_REPORT_FOLDER")
    if not folder or not RECORDS:
        return
    records = list(RECORDS.values())
    texts = {"REPORT.md": markdown(records, titles()), "REPORT.html": page(records, titles())}
    for name, text in texts.items():
        (Path(folder) / name).write_text(text, encoding="utf-8")
    sound = not any("failed" in ran for file, ran in RAN.items() if file != LAST)
    if os.environ.get("HEARTSIDE_REPORT_KEPT") and sound and set(RAN) >= set(titles()):
        (HERE / "REPORT.md").write_text(texts["REPORT.md"], encoding="utf-8")
