"""Short ways to make the demo's objects: blocks, prisms, joints cut by booleans, bodies, links.

Everything is made inside a container (App::Part); sizes and places are in its frame, mm. What is only used to
make something else is hidden, as a modeller would leave it.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import Any

import FreeCAD as App
import Part

from movement_core.piece.tags import PROPERTY_WORDS
from workbench_pkg.host.tagging import write_tags

Point = tuple[float, float, float]
Flat = tuple[float, float]

PROPERTY_OF = {word: name for name, word in PROPERTY_WORDS.items()}


def at(x: float = 0, y: float = 0, z: float = 0, axis: Point = (0, 0, 1), angle: float = 0) -> Any:
    """A placement: moved to a point, turned by an angle in degrees about an axis."""
    return App.Placement(App.Vector(x, y, z), App.Rotation(App.Vector(*axis), angle))


def name_for(label: str) -> str:
    """An object name from a label: its words run together, any tag left out."""
    words = re.findall(r"[A-Za-z0-9]+", label.split("wood{")[0])
    return "".join(word[0].upper() + word[1:] for word in words)


def new(home: Any, kind: str, label: str) -> Any:
    """A new object in a container, or in the document itself when `home` is one."""
    doc = home if isinstance(home, App.Document) else home.Document
    made = doc.addObject(kind, name_for(label))
    made.Label = label
    if home is not doc:
        home.addObject(made)
    return made


def container(home: Any, label: str, placement: Any = None) -> Any:
    made = new(home, "App::Part", label)
    if placement is not None:
        made.Placement = placement
    _hide_origin(made)
    return made


def block(home: Any, label: str, low: Point, high: Point, placement: Any = None) -> Any:
    """A Part box between two corners, or, with a placement, between them in the placed frame."""
    made = new(home, "Part::Box", label)
    made.Length, made.Width, made.Height = (b - a for a, b in zip(low, high))
    corner = App.Placement(App.Vector(*low), App.Rotation())
    made.Placement = corner if placement is None else placement.multiply(corner)
    return made


def prism(home: Any, label: str, outline: Iterable[Point], run: Point) -> Any:
    """A polygon pushed along a vector."""
    points = [App.Vector(*point) for point in outline]
    made = new(home, "Part::Feature", label)
    made.Shape = _face(points).extrude(App.Vector(*run))
    return made


def turned(home: Any, label: str, profile: Sequence[Flat], curve: Sequence[Flat]) -> Any:
    """Turned about z: `profile` is straight from point to point (radius, z), `curve` closes it, smoothly."""
    corners = [App.Vector(radius, 0, z) for radius, z in profile]
    smooth = Part.BSplineCurve()
    smooth.interpolate([App.Vector(radius, 0, z) for radius, z in (profile[-1], *curve, profile[0])])
    edges = [Part.makeLine(a, b) for a, b in pairwise(corners)]
    face = Part.Face(Part.Wire([*edges, smooth.toShape()]))
    made = new(home, "Part::Feature", label)
    made.Shape = face.revolve(App.Vector(0, 0, 0), App.Vector(0, 0, 1), 360)
    return made


def fuse(home: Any, label: str, pieces: Sequence[Any]) -> Any:
    made = new(home, "Part::MultiFuse", label)
    made.Shapes = list(pieces)
    made.Refine = True
    _hide(pieces)
    return made


def cut(home: Any, label: str, base: Any, tools: Sequence[Any]) -> Any:
    """A piece with all tools taken away. A tool may serve several pieces."""
    made = new(home, "Part::Cut", label)
    made.Base = base
    made.Tool = tools[0] if len(tools) == 1 else fuse(home, f"Cutters of {label.split(' wood{')[0]}", tools)
    made.Refine = True
    _hide([base, *tools, made.Tool])
    return made


def link(home: Any, label: str, target: Any, placement: Any) -> Any:
    made = new(home, "App::Link", label)
    made.LinkedObject = target
    made.Placement = placement
    return made


def link_array(home: Any, label: str, target: Any, placements: Sequence[Any]) -> Any:
    """A row of links in one object; the elements are not objects of their own."""
    made = new(home, "App::Link", label)
    made.LinkedObject = target
    made.ShowElement = False
    made.ElementCount = len(placements)
    made.PlacementList = list(placements)
    return made


def body(
    home: Any,
    label: str,
    pads: Sequence[tuple[Sequence[Flat], float]],
    pockets: Sequence[tuple[Sequence[Flat], float]] = (),
) -> Any:
    """A PartDesign body: outlines in its y–z plane, each padded or pocketed by a thickness centred on x = 0."""
    made = new(home, "PartDesign::Body", label)
    _hide_origin(made)
    for kind, features in (("Pad", pads), ("Pocket", pockets)):
        for outline, thickness in features:
            # A pad goes along the sketch's normal (+x), a pocket against it.
            start = -thickness / 2 if kind == "Pad" else thickness / 2
            sketch = made.newObject("Sketcher::SketchObject", f"{made.Name}Sketch")
            sketch.Placement = at(start, 0, 0, axis=(1, 1, 1), angle=120)
            points = [App.Vector(y, z, 0) for y, z in outline]
            for a, b in zip(points, [*points[1:], points[0]]):
                sketch.addGeometry(Part.LineSegment(a, b), False)
            feature = made.newObject(f"PartDesign::{kind}", f"{made.Name}{kind}")
            feature.Profile = sketch
            feature.Length = thickness
            _hide([sketch])
    _hide([feature for feature in made.Group if feature != made.Tip])
    return made


def wood(obj: Any, **facts: object) -> Any:
    """Tag an object by typed properties; the words are those of the text tag."""
    write_tags(obj, {PROPERTY_OF[word]: value for word, value in facts.items()})
    return obj


def said(label: str, text: str) -> str:
    """A label that carries its tag as text."""
    return f"{label} wood{{{text}}}"


def _face(points: list[Any]) -> Any:
    return Part.Face(Part.makePolygon([*points, points[0]]))


def _hide(objects: Iterable[Any]) -> None:
    for obj in objects:
        obj.Visibility = False


def _hide_origin(made: Any) -> None:
    if made.Origin is not None:
        made.Origin.Visibility = False
