"""A document saved without a window, opened in one: hidden as the host leaves it, seen with our half added."""

from __future__ import annotations

import zipfile
from pathlib import Path

import FreeCAD as App
import FreeCADGui as Gui
import pytest

from workbench_pkg.host.looks import GUI_HALF, add_window_half, complete_window_half

RED = (0.8, 0.2, 0.2)


@pytest.fixture
def windowless(doc, tmp_path):
    """An open document with a shown and a hidden box, and a file of it as a save without a window leaves it."""
    for name, shown in (("Shown", True), ("Hidden", False)):
        made = doc.addObject("Part::Box", name)
        made.Visibility = shown
    doc.recompute()
    whole, bare = tmp_path / "whole.FCStd", tmp_path / "bare.FCStd"
    doc.saveCopy(str(whole))
    with zipfile.ZipFile(whole) as source, zipfile.ZipFile(bare, "w") as target:
        names = source.namelist()
        for name in names[: names.index(GUI_HALF)]:
            target.writestr(name, source.read(name))
    return doc, bare


def shown(path: Path):
    opened = App.openDocument(str(path))
    return opened, {obj.Name: obj.ViewObject.Visibility for obj in opened.Objects}


def test_the_host_alone_hides_everything(windowless):
    """The reason for the half we write; should a host learn better, this tells us."""
    _, path = windowless
    assert shown(path)[1] == {"Shown": False, "Hidden": False}


def test_with_our_half_it_is_seen_in_its_colour(windowless):
    doc, path = windowless
    assert add_window_half(path, doc, {"Shown": RED})
    opened, visible = shown(path)
    assert visible == {"Shown": True, "Hidden": False}
    view = opened.getObject("Shown").ViewObject
    assert view.ShapeColor[:3] == pytest.approx(RED, abs=0.003)
    assert view.Transparency == 0
    camera = Gui.getDocument(opened.Name).ActiveView.getCamera()
    assert "OrthographicCamera" in camera
    height = float(camera.split("height")[1].split()[0])
    assert 10 < height < 60  # a box of 10 mm


def test_what_was_added_without_a_window_is_seen(windowless):
    doc, path = windowless
    add_window_half(path, doc)
    doc.addObject("App::AnnotationLabel", "Label")
    later = path.with_name("later.FCStd")
    doc.saveCopy(str(path.with_name("whole.FCStd")))
    with (
        zipfile.ZipFile(path.with_name("whole.FCStd")) as fresh,
        zipfile.ZipFile(path) as old,
        zipfile.ZipFile(later, "w") as target,
    ):
        names = fresh.namelist()
        for name in names[: names.index(GUI_HALF)]:
            target.writestr(name, fresh.read(name))
        target.writestr(GUI_HALF, complete_window_half(old.read(GUI_HALF).decode("utf-8"), doc))
    assert shown(later)[1] == {"Shown": True, "Hidden": False, "Label": True}
