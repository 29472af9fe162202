"""Flat faces that look at each other: where they touch, and how wide the space between them is.

Each pair of faces is compared in the plane of the first: the shared region of the two outlines and the height of
the second above it. What lies nearer hides what lies behind, so a space filled by a third part is no gap.
"""

from __future__ import annotations

import itertools
from collections import defaultdict
from collections.abc import Callable, Hashable
from dataclasses import dataclass, replace

import numpy as np

from movement_core.piece.contact.alike import Alike
from movement_core.piece.contact.found import CONTACT_MM, FLAT, Contact, Gap
from movement_core.piece.contact.pairs import FacePairs
from movement_core.piece.contact.polygons import (
    Floats,
    area,
    centroid,
    half_plane,
    mean_width,
    outline,
    shared,
    without,
)
from movement_core.piece.contact.scene import Scene

Drawn = tuple[list[Floats], Floats, float]  # outline, centroid and area of a region

LEAST_GAP_WIDTH_MM = 0.5  # strips of gap narrower than this are edges passing each other (own judgement)


@dataclass(frozen=True, eq=False)
class Region:
    """Where two faces look at each other, in the frame of the first: height = h0 + slope · point, mm.

    Regions of one ``template`` are the same but for their place.
    """

    first: int
    second: int
    edges: Floats
    h0: float
    slope: Floats
    least: float
    most: float
    template: Hashable = None

    @property
    def touches(self) -> bool:
        return self.most <= CONTACT_MM

    def height(self, points: Floats) -> Floats:
        return np.asarray(self.h0 + points @ self.slope)


def flat_contacts_and_gaps(scene: Scene, pairs: FacePairs, reach: float) -> tuple[list[Contact], list[Gap]]:
    """Contacts and gaps between flat faces."""
    faces, alike = scene.faces, Alike(scene.bodies)
    kinds = alike.kinds(faces.body[pairs.first], faces.body[pairs.second])
    known: dict[Hashable, Region | None] = {}
    regions = []
    for a, b, kind in zip(pairs.first.tolist(), pairs.second.tolist(), kinds):
        template = (a, b) if kind is None else (kind, int(faces.number[a]), int(faces.number[b]))
        if template not in known:
            found = _region(scene, a, b, reach)
            known[template] = None if found is None else replace(found, template=template)
        region = known[template]
        if region is not None:
            regions.append(replace(region, first=a, second=b))
    regions = _unhidden(scene, regions)
    drawn: dict[int, Drawn] = {}  # by the array of edges: regions that are alike share it
    for region in regions:
        if id(region.edges) not in drawn:
            drawn[id(region.edges)] = outline(region.edges), centroid(region.edges), area(region.edges)
    contacts = [_contact(scene, region, *drawn[id(region.edges)]) for region in regions if region.touches]
    return contacts, [
        _gap(scene, region, *drawn[id(region.edges)]) for region in regions if not region.touches
    ]


def _region(scene: Scene, first: int, second: int, reach: float) -> Region | None:
    faces = scene.faces
    edges = shared(faces.regions[first], faces.region_in(second, first))
    if mean_width(edges) <= CONTACT_MM:
        return None
    normal, other = faces.normal[first], faces.normal[second]
    # A point p = o + u·across + v·up + h·normal lies in the second's plane where other · (p − o₂) = 0.
    tilt = float(other @ normal)
    h0 = float(other @ (faces.origin[second] - faces.origin[first])) / tilt
    slope = -np.array([other @ faces.across[first], other @ faces.up[first]]) / tilt
    return _within(Region(first, second, edges, h0, slope, 0.0, 0.0), reach)


def _within(region: Region, reach: float) -> Region | None:
    """The part of a region that lies within reach; None where there is none, or where the faces cross."""
    heights = region.height(region.edges.reshape(-1, 2))
    if heights.max() > reach and heights.min() < reach:
        near = half_plane(region.slope, reach - region.h0, region.edges.reshape(-1, 2))
        edges = shared(region.edges, near)
        if mean_width(edges) <= CONTACT_MM:
            return None
        heights = region.height(edges.reshape(-1, 2))
    else:
        edges = region.edges
    least, most = float(heights.min()), float(heights.max())
    if least < -CONTACT_MM or least > reach:
        return None
    if most > CONTACT_MM and mean_width(edges) < LEAST_GAP_WIDTH_MM:
        return None
    return Region(region.first, region.second, edges, region.h0, region.slope, least, most)


def _unhidden(scene: Scene, regions: list[Region]) -> list[Region]:
    """The regions less what nearer ones hide, seen from either face."""
    at_face: dict[int, list[Region]] = defaultdict(list)
    for region in sorted(regions, key=lambda r: r.most):
        at_face[region.first].append(region)
        at_face[region.second].append(region)
    result = []
    known: dict[Hashable, Region | None] = {}
    for region in regions:
        if region.touches:
            result.append(region)
            continue
        hiding = [
            (face, nearer)
            for face in (region.first, region.second)
            for nearer in itertools.takewhile(_nearer_than(region), at_face[face])
        ]
        # What hides a region shares a face with it, so how they stand to each other is in their templates.
        key = (
            region.template,
            *((face == region.first, nearer.first == face, nearer.template) for face, nearer in hiding),
        )
        if key not in known:
            known[key] = _less(scene, region, [nearer for _, nearer in hiding])
        left = known[key]
        if left is not None:
            result.append(replace(left, first=region.first, second=region.second))
    return result


def _nearer_than(region: Region) -> Callable[[Region], bool]:
    return lambda other: other is not region and other.most <= region.least + CONTACT_MM


def _less(scene: Scene, region: Region, hiding: list[Region]) -> Region | None:
    """A region less what nearer ones hide; None where no more than a strip is left."""
    edges = region.edges
    for nearer in hiding:
        edges = without(edges, _seen(scene, nearer, region.first))
    if edges is region.edges:
        return region
    if mean_width(edges) < LEAST_GAP_WIDTH_MM:
        return None
    heights = region.height(edges.reshape(-1, 2))
    return replace(region, edges=edges, least=float(heights.min()), most=float(heights.max()))


def _seen(scene: Scene, region: Region, plane: int) -> Floats:
    """The edges of a region in the frame of another face."""
    if region.first == plane:
        return region.edges
    faces = scene.faces
    flat = faces.onto(faces.back(region.edges, region.first), plane)
    return flat[:, ::-1] if faces.normal[region.first] @ faces.normal[plane] < 0 else flat


def _contact(scene: Scene, region: Region, loops: list[Floats], middle_of: Floats, size: float) -> Contact:
    faces = scene.faces
    first, second, sense = _in_order(scene, region)
    height = region.height(middle_of) / 2
    middle = height * faces.normal[region.first]
    return Contact(
        first=int(faces.body[first]),
        second=int(faces.body[second]),
        faces=(int(faces.number[first]), int(faces.number[second])),
        surface=FLAT,
        area_mm2=size,
        normal=sense * faces.normal[region.first],
        centre=faces.back(middle_of, region.first) + middle,
        outline=tuple(faces.back(loop, region.first) + middle for loop in loops),
    )


def _gap(scene: Scene, region: Region, loops: list[Floats], middle_of: Floats, size: float) -> Gap:
    faces = scene.faces
    first, second, sense = _in_order(scene, region)
    middle = region.height(middle_of) / 2 * faces.normal[region.first]
    return Gap(
        first=int(faces.body[first]),
        second=int(faces.body[second]),
        faces=(int(faces.number[first]), int(faces.number[second])),
        surface=FLAT,
        least_mm=max(0.0, region.least),
        most_mm=region.most,
        area_mm2=size,
        normal=sense * faces.normal[region.first],
        centre=faces.back(middle_of, region.first) + middle,
        outline=tuple(faces.back(loop, region.first) + middle for loop in loops),
    )


def _in_order(scene: Scene, region: Region) -> tuple[int, int, float]:
    """The two faces, the lower body's first, and the sign that makes the region's normal point from it."""
    if scene.faces.body[region.first] < scene.faces.body[region.second]:
        return region.first, region.second, 1.0
    return region.second, region.first, -1.0
