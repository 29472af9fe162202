"""Annotated and cleared again, a document is what it was: demos, links, arrays, assemblies; how much a file grows."""

from __future__ import annotations

import FreeCAD
import pytest

from tests.host import bench
from workbench_pkg.actions.annotate import annotate, remove
from workbench_pkg.actions.tag import tag
from workbench_pkg.demo.build import build_demo
from workbench_pkg.host.documents import open_file
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects.results import results_of

MODELS = ("trestle_table.FCStd", "sideboard.FCStd", "hall_bench.step")


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    folder = tmp_path_factory.mktemp("demo")
    build_demo(folder)
    return folder


def leaves_no_trace(doc):
    """Annotate twice, remove; nothing may differ. Undo and redo the same way."""
    doc.UndoMode = 1
    before = property_dump(doc)
    annotate(doc)
    assert len(results_of(doc)) == 1
    annotate(doc)
    assert len(results_of(doc)) == 1
    remove(doc)
    assert differences(before, property_dump(doc)) == []
    for _ in range(3):
        doc.undo()
    assert differences(before, property_dump(doc)) == []


@pytest.mark.parametrize("name", MODELS)
def test_on_every_demo(demo, name):
    leaves_no_trace(open_file(demo / name))


@pytest.mark.parametrize("name", MODELS[:2])
def test_a_file_grows_by_little_and_shrinks_again(demo, name, tmp_path, record_property):
    doc = open_file(demo / name)
    sizes = []
    for step in (lambda doc: None, annotate, remove):
        step(doc)
        path = tmp_path / f"{len(sizes)}.FCStd"
        doc.saveCopy(str(path))
        sizes.append(path.stat().st_size)
    grown = sizes[1] - sizes[0]
    record_property("bytes before, annotated, removed", sizes)
    print(f"{name}: {sizes[0]} bytes, annotated {sizes[1]} (+{grown}), removed {sizes[2]}")
    parts = len(annotate(doc)["parts"])
    assert 0 < grown < 4000 + 2500 * parts
    assert abs(sizes[2] - sizes[0]) < 200


def test_on_links_and_arrays(doc):
    board = bench.box(doc, "Board")
    container = doc.addObject("App::Part", "Frame")
    inner = bench.box(doc, "Rail", placement=bench.at(0, 200, 0))
    container.addObject(inner)
    bench.link(doc, "Twin", board, bench.at(0, 400, 0))
    bench.link(doc, "FrameTwin", container, bench.at(600, 0, 0))
    bench.array(doc, "Shown", board, 3, (0, 0, 40), True)
    bench.array(doc, "Hidden", board, 3, (0, 0, -40), False)
    group = doc.addObject("App::LinkGroup", "Pair")
    group.ElementList = [bench.box(doc, "Cleat", placement=bench.at(0, 800, 0))]
    doc.recompute()
    tag([board, inner], species="white oak", grain="x", show="z", cut="flat", built=9)
    leaves_no_trace(doc)


def test_on_an_assembly(doc):
    try:
        assembly = doc.addObject("Assembly::AssemblyObject", "Table")
    except Exception:
        pytest.skip("this host has no assemblies")
    board = bench.box(doc, "Board")
    assembly.addObject(bench.link(doc, "Left", board))
    assembly.addObject(bench.link(doc, "Right", board, bench.at(500, 0, 0)))
    doc.recompute()
    tag([board], species="white oak", grain="x", show="z", cut="flat", built=9)
    leaves_no_trace(doc)


def test_on_a_link_to_another_file(doc, tmp_path):
    board = bench.box(doc, "Board")
    tag([board], species="white oak", grain="x", show="z", cut="flat", built=9)
    doc.recompute()
    doc.saveAs(str(tmp_path / "store.FCStd"))
    main = FreeCAD.newDocument("Main")
    main.saveAs(str(tmp_path / "main.FCStd"))
    bench.link(main, "Far", board)
    main.recompute()
    leaves_no_trace(main)
