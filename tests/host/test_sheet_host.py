"""The movement sheet in the host: the demo pieces on paper, from a document and from the command line."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from movement_core.errors import FileError, UnknownName
from movement_core.sheet.pages.boxes import clashes
from movement_core.sheet.pages.material import Material, planned_tops
from movement_core.sheet.pages.model import Heading, Pictures
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from tests.host import bench  # noqa: F401  (reaches the modules of the host that the demo is built with)
from workbench_pkg.actions.check import answer, joints_beside, read_document, table_beside
from workbench_pkg.actions.settings import settings_from_texts
from workbench_pkg.actions.sheet import make_sheet, sheet_file
from workbench_pkg.demo.build import build_demo
from workbench_pkg.host.documents import opened

ROOT = Path(__file__).resolve().parents[2]
MODELS = ("trestle_table.FCStd", "sideboard.FCStd", "hall_bench.step")
DAY = "2026-03-15"


@pytest.fixture(scope="module", params=["faulty", "repaired"])
def demo(request, tmp_path_factory):
    folder = tmp_path_factory.mktemp(request.param)
    build_demo(folder, repaired=request.param == "repaired")
    return folder


def material(path):
    table, errors = table_beside(path)
    joints, problems = joints_beside(path)
    with opened(path) as doc:
        question = read_document(
            doc, settings_from_texts(None, DAY), table, path.name, (*errors, *problems), joints
        )
    found = answer(question)
    tops = planned_tops(found.whole, kinds=("slotted screw",))
    return Material(found.entry, found.whole, question.faces.bodies, tops)


@pytest.mark.parametrize("name", MODELS)
def test_the_sheets_of_the_demo_pieces_cover_nothing(demo, name):
    piece = material(demo / name)
    for wish in (SheetWish(), SheetWish(paper="letter", units="inch"), SheetWish(client=True)):
        sheet = movement_sheet(piece, wish)
        pictures = [p for block in sheet.blocks if isinstance(block, Pictures) for p in block.pictures]
        assert pictures
        for picture in pictures:
            assert not clashes(picture), picture.name
    headings = [bare(b.words) for b in movement_sheet(piece).blocks if isinstance(b, Heading)]
    assert {"Parts", "Gaps to leave today", "What was found", "Signed"} <= set(headings)


def test_a_document_gives_its_sheet_and_stays_as_it_was(doc, tmp_path):
    board = doc.addObject("Part::Box", "Shelf")
    board.Length, board.Width, board.Height = 900, 250, 22
    board.Label = "Shelf <1> wood{white oak; grain x; pith 0 -80; built 9}"
    doc.recompute()
    undo = doc.UndoCount
    report = make_sheet(doc, tmp_path / "shelf.html", "Job", units="inch")
    assert [part["name"] for part in report["parts"]] == ["Shelf <1>"]
    text = (tmp_path / "shelf.html").read_text(encoding="utf-8")
    assert "Shelf &lt;1&gt;" in text and doc.UndoCount == undo
    with pytest.raises(FileError, match="exists"):
        make_sheet(doc, tmp_path / "shelf.html")
    make_sheet(doc, tmp_path / "shelf.html", client=True, force=True)
    assert "What to keep the room at" in (tmp_path / "shelf.html").read_text(encoding="utf-8")
    assert make_sheet(doc, tmp_path / "shelf.pdf") and (tmp_path / "shelf.pdf").read_bytes().startswith(
        b"%PDF-"
    )
    with pytest.raises(UnknownName):
        make_sheet(doc, tmp_path / "other.html", paper="papyrus")
    with pytest.raises(FileError, match=r"\.html, \.pdf, \.json"):
        make_sheet(doc, tmp_path / "other.doc")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["shelf.html", "shelf.pdf"]


def test_a_file_is_never_written_over(demo, tmp_path):
    model = demo / "hall_bench.step"
    before = model.read_bytes()
    settings = settings_from_texts(None, DAY)
    with pytest.raises(FileError):
        sheet_file(model, model, settings, SheetWish(), force=True)
    with pytest.raises(FileError, match="folder"):
        sheet_file(model, tmp_path / "no" / "sheet.html", settings, SheetWish())
    assert model.read_bytes() == before


def run(*arguments):
    environment = {**os.environ, "PYTHONPATH": str(ROOT)}
    return subprocess.run(
        [sys.executable, "-m", "workbench_pkg", *map(str, arguments)],
        capture_output=True, encoding="utf-8", cwd=ROOT, env=environment, check=False,
    )  # fmt: skip


def test_the_command_line_writes_all_three_forms(demo, tmp_path):
    model = demo / "hall_bench.step"
    for ending in ("html", "pdf", "json"):
        done = run("sheet", model, "--output", tmp_path / f"s.{ending}", "--date", DAY, "--job", "A & B")
        assert done.returncode in (0, 1, 2) and "Written:" in done.stdout, done.stderr
    assert "A &amp; B" in (tmp_path / "s.html").read_text(encoding="utf-8")
    data = json.loads((tmp_path / "s.json").read_text(encoding="utf-8"))
    assert data["schema"] == "heartside-sheet-1" and len(data["report"]["parts"]) == len(data["parts"])
    again = run("sheet", model, "--output", tmp_path / "s.html")
    assert again.returncode == 2 and "--force" in again.stdout
    assert run("sheet", model, "--output", tmp_path / "s.html", "--client", "--force", "--paper", "letter",
               "--units", "inch").returncode in (0, 1, 2)  # fmt: skip
    assert "relative humidity" in (tmp_path / "s.html").read_text(encoding="utf-8")
    assert run("sheet", model, "--output", tmp_path / "x.html", "--paper", "a3").returncode == 2


def test_sentences_tell_the_sheets_unit_and_the_data_stays_in_mm(doc, tmp_path):
    board = doc.addObject("Part::Box", "Shelf")
    board.Length, board.Width, board.Height = 900, 400, 20
    board.Label = "Shelf 20 mm wood{white oak; cut flat; built 9}"
    stub = doc.addObject("Part::Box", "Stub")
    stub.Length = stub.Width = stub.Height = 24
    stub.Placement.Base.z = 500
    stub.Label = "Stub wood{white oak; built 9}"
    doc.recompute()
    told = {}
    for form, units in ((".html", "inch"), (".html", "mm"), (".json", "inch")):
        target = tmp_path / f"shelf-{units}{form}"
        findings = make_sheet(doc, target, units=units)["findings"]
        told[form, units] = " ".join(f"{one['message']}. {one['remedy']}" for one in findings)
        written = target.read_text(encoding="utf-8")
        assert "Shelf 20 mm" in written  # a name stays as it was written
    assert " mm" in told[".html", "mm"] and " inch" not in told[".html", "mm"]
    assert " inch" in told[".html", "inch"] and " mm" not in told[".html", "inch"]
    assert "are 15/16 inch" in told[".html", "inch"] or "are 61/64 inch" in told[".html", "inch"]
    assert told[".json", "inch"] == told[".html", "mm"]
    assert make_sheet(doc, tmp_path / "again.html")["findings"] and " mm" in told[".html", "mm"]
