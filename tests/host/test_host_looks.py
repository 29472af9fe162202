"""The window's half that is written for documents saved without a window."""

from __future__ import annotations

import xml.etree.ElementTree as ET
import zipfile

import FreeCAD as App
from bench import box

from workbench_pkg.host.looks import GUI_HALF, add_window_half, complete_window_half, window_half


def told(text):
    """Name → property → value, of a GuiDocument.xml."""
    providers = ET.fromstring(text).find("ViewProviderData")
    assert int(providers.get("Count")) == len(providers)
    found = {}
    for provider in providers:
        properties = provider.find("Properties")
        assert int(properties.get("Count")) == len(properties)
        found[provider.get("name")] = {p.get("name"): p[0].get("value") for p in properties}
    assert len(found) == len(providers)
    return found


def test_every_object_is_spoken_of(doc):
    shown, hidden = box(doc, "Shown"), box(doc, "Hidden")
    hidden.Visibility = False
    doc.recompute()
    text = window_half(doc, {shown.Name: (1.0, 0.5, 0.0)})
    assert told(text) == {
        "Shown": {"Visibility": "true", "ShapeColor": str(0xFF800000)},
        "Hidden": {"Visibility": "false"},
    }


def test_the_camera_looks_at_the_middle_of_the_model(doc):
    box(doc, "Board", 400, 100, 20, App.Placement(App.Vector(1000, 0, 0), App.Rotation()))
    doc.recompute()
    settings = ET.fromstring(window_half(doc, {})).find("Camera").get("settings")
    lines = dict(line.split(None, 1) for line in settings.splitlines() if len(line.split()) > 1)
    eye = App.Vector(*(float(v) for v in lines["position"].split()))
    x, y, z, angle = (float(v) for v in lines["orientation"].split())
    turn = App.Rotation(App.Vector(x, y, z), angle * 180 / 3.141592653589793)
    seen = eye + turn.multVec(App.Vector(0, 0, -1)) * float(lines["focalDistance"])
    assert (seen - App.Vector(1200, 50, 10)).Length < 0.01
    assert float(lines["height"]) > 300  # the board from corner to corner, seen at a slant


def test_it_is_added_once_and_the_file_still_opens(doc, tmp_path):
    box(doc, "Board").Label = 'Rail "left" & <right>'
    doc.recompute()
    path = tmp_path / "board.FCStd"
    doc.saveAs(str(path))
    assert add_window_half(path, doc)
    assert not add_window_half(path, doc)
    with zipfile.ZipFile(path) as archive:
        assert archive.namelist().count(GUI_HALF) == 1
        assert told(archive.read(GUI_HALF).decode()) == {"Board": {"Visibility": "true"}}
    App.closeDocument(doc.Name)
    again = App.openDocument(str(path))
    assert again.getObject("Board").Shape.Volume > 0


def test_what_was_left_out_is_completed(doc):
    box(doc, "Old")
    doc.recompute()
    before = window_half(doc, {"Old": (0.2, 0.4, 0.6)})
    added = doc.addObject("App::DocumentObjectGroup", "Results")
    after = complete_window_half(before, doc)
    assert told(after) == {**told(before), added.Name: {"Visibility": "true"}}
    assert complete_window_half(after, doc) == after  # nothing more to say
    assert complete_window_half("<Document/>", doc) == "<Document/>"  # not one of ours to mend
