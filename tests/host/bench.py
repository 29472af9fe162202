"""Small makers of test objects, with sizes that can be checked by hand."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD as App

V = App.Vector


def _reach_host_modules():
    """Draft, PartDesign and the like: freecadcmd has their folders on the path, plain Python does not."""
    resources = Path(App.getResourceDir())
    modules = resources / "Mod"
    for folder in [resources / "Ext", modules, *sorted(p for p in modules.iterdir() if p.is_dir())]:
        if str(folder) not in sys.path:
            sys.path.append(str(folder))


_reach_host_modules()


def at(x=0.0, y=0.0, z=0.0, axis=(0, 0, 1), angle=0.0):
    """A placement from a position and a turn in degrees."""
    return App.Placement(V(x, y, z), App.Rotation(V(*axis), angle))


def box(doc, name, length=400.0, width=100.0, height=20.0, placement=None):
    made = doc.addObject("Part::Box", name)
    made.Length, made.Width, made.Height = length, width, height
    if placement is not None:
        made.Placement = placement
    return made


def link(doc, name, target, placement=None, **properties):
    made = doc.addObject("App::Link", name)
    made.LinkedObject = target
    if placement is not None:
        made.Placement = placement
    for key, value in properties.items():
        setattr(made, key, value)
    return made


def array(doc, name, target, count, step, shown):
    """A link array of `count` elements, each moved by `step` from the one before."""
    made = link(doc, name, target, ShowElement=shown, ElementCount=count)
    doc.recompute()
    placements = [App.Placement(V(*step) * i, App.Rotation()) for i in range(count)]
    if shown:
        for element, placement in zip(made.ElementList, placements):
            element.Placement = placement
    else:
        made.PlacementList = placements
    return made


def centre_of(leaf):
    c = leaf.global_solid().CenterOfMass
    return round(c.x, 6), round(c.y, 6), round(c.z, 6)


def by_name(reading):
    return {leaf.name: leaf for leaf in reading.leaves}


def host_documents():
    """Documents that come with the host: test data and examples, made by others."""
    return sorted(p for p in Path(App.getResourceDir()).rglob("*") if p.suffix.lower() == ".fcstd")
