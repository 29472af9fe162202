"""Odd and degenerate documents made in the host, each from its number alone, with the host's own means."""

from __future__ import annotations

import math
import random
from typing import Any

import FreeCAD as App
import Part

SIZES = (1e-6, 1e-4, 1e-2, 0.5, 3.0, 20.0, 120.0, 900.0, 1e5, 1e7)
LABELS = (
    "Shelf wood{white oak; cut flat; heart show; built 9}", "Rail wood{oak; grain x; pith 0 -70}", "wood{",
    "wood{}", "Äste 中𝔘 \u202e",
    "x" * 5000, "Lid wood{" + "oak; " * 500 + "}", "Part wood{no such wood; grain 0 0 0; built nan}", "<b>&amp;</b>",
    "%s%n", " ",
)  # fmt: skip


def _solid(rng: random.Random) -> Any:
    """A shape, sound or not."""
    size = [rng.choice(SIZES) if rng.random() < 0.5 else rng.uniform(5, 500) for _ in range(3)]
    how = rng.randrange(16)
    if how < 4:
        return Part.makeBox(*size)
    if how == 4:
        return Part.Shape()
    if how == 5:
        return Part.Compound([])  # makeCompound of nothing ends version 1.0.0
    if how == 6:
        return Part.makePlane(size[0], size[1])
    if how == 7:  # a shell that lacks a face
        return Part.Shell(Part.makeBox(*size).Faces[:-1])
    if how == 8:  # a solid of an open shell
        return Part.Solid(Part.Shell(Part.makeBox(*size).Faces[:-1]))
    if how == 9:
        return Part.makeBox(*size).reversed()
    if how == 10:
        return Part.makeSphere(size[0])
    if how == 11:
        return Part.makeTorus(20, rng.choice((5, 20, 25)))  # the last cuts through itself
    if how == 12:  # an outline that crosses itself
        points = [(0, 0), (50, 50), (50, 0), (0, 50), (0, 0)]
        wire = Part.makePolygon([App.Vector(x, y, 0) for x, y in points])
        return Part.Face(wire).extrude(App.Vector(0, 0, 20))
    if how == 13:
        return Part.Compound([Part.makeBox(20, 20, 20), Part.Compound([]), Part.Vertex(0, 0, 0)])
    if how == 14:
        one = Part.makeBox(300, 80, 20)
        other = Part.makeBox(20, 20, 20, App.Vector(rng.uniform(-10, 310), 30, rng.uniform(-10, 15)))
        return rng.choice((one.cut, one.fuse, one.common))(other)
    return Part.makeCylinder(
        size[0], size[1], App.Vector(), App.Vector(0, 0, 1), rng.choice((0.001, 90, 360))
    )


def _placement(rng: random.Random) -> Any:
    if rng.random() < 0.6:
        return App.Placement(App.Vector(20 * rng.randrange(-3, 4), 0, 20 * rng.randrange(3)), App.Rotation())
    far = rng.choice((0.0, 1e-7, 1e6, 1e12, math.nan, math.inf))
    return App.Placement(
        App.Vector(far, 0, 0), App.Rotation(App.Vector(1, 1, rng.random()), rng.uniform(0, 360))
    )


def make(number: int, recompute: bool = True) -> Any:
    """An open, hidden document; what the host itself refuses to make is left out of it."""
    rng = random.Random(number)
    doc = App.newDocument("odd", hidden=True)
    made: list[Any] = []
    for index in range(rng.choice((1, 2, 3, 6))):
        obj = doc.addObject("Part::Feature", "Odd")
        made.append(obj)
        obj.Label = rng.choice(LABELS)
        try:
            obj.Shape = _solid(rng)
            obj.Placement = _placement(rng)
        except Exception:  # the host has no common error; without a shape it is odd enough
            continue
        if rng.random() < 0.2:
            obj.addProperty("App::PropertyString", "HeartsideSpecies")
            obj.HeartsideSpecies = rng.choice(("white oak", "nonsense", "", "\u202e"))
        if rng.random() < 0.1:
            obj.addProperty("App::PropertyFloat", "HeartsideBuilt")
            obj.HeartsideBuilt = rng.choice((9.0, math.nan, -1e300))
        if index and rng.random() < 0.2:
            obj.setExpression(
                "Placement.Base.x", rng.choice((f"{made[0].Name}.Placement.Base.y + 1", "1/0", "nothing.x"))
            )
    how = rng.randrange(8)
    if how == 0:  # parts in parts
        inner: Any = made[0]
        for _ in range(rng.choice((3, 10, 200))):
            outer = doc.addObject("App::Part", "Nest")
            outer.addObject(inner)
            inner = outer
    elif how in (1, 2):
        links = [doc.addObject("App::Link", "Link") for _ in range(3)]
        links[0].LinkedObject, links[1].LinkedObject = links[1], rng.choice((links[0], made[0]))
        links[2].LinkedObject, links[2].ElementCount = made[0], rng.choice((0, 2, 50))
        links[2].Scale = rng.choice((1.0, -1.0, 1e-9, 1e9))
    elif how == 3:
        mirror = doc.addObject("Part::Mirroring", "Mirror")
        mirror.Source = made[0]
    elif how == 4:
        cut = doc.addObject("Part::Cut", "Cut")
        cut.Base, cut.Tool = made[0], made[-1]
    elif how == 5:
        group = doc.addObject("Part::Compound", "Group")
        group.Links = made * rng.choice((1, 20))
    try:
        if recompute:
            doc.recompute()
    except Exception:  # a circle of links, for one: it is kept as it is
        pass
    return doc
