"""A wardrobe of 301 solids: links carry what was found once, and nothing is invented or lost by it."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from wardrobe import DRAWERS, wardrobe

from movement_core.piece.contact.contacts import contacts_of
from workbench_pkg.actions.check import check_document
from workbench_pkg.host.faces import faces_of
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.meshing import mesh_of

SOLIDS = 301


def numbers(found):
    """Contacts, gaps and overlaps as rows: the pair, then what was measured."""
    rows = [(0, c.first, c.second, *c.faces, c.area_mm2, 0.0, *c.normal, *c.centre) for c in found.contacts]
    rows += [
        (1, g.first, g.second, *g.faces, g.area_mm2, g.least_mm, *g.normal, *g.centre) for g in found.gaps
    ]
    return np.array(rows)


def test_what_links_carry_is_what_each_pair_would_give(doc):
    wardrobe(doc)
    leaves = [leaf for leaf in read_leaves(doc).leaves if leaf.visible]
    assert len(leaves) == SOLIDS
    assert len({leaf.own for leaf in leaves}) < SOLIDS / 4
    read = faces_of(leaves)
    carried = contacts_of(read.bodies, 10.0, read)
    plain = contacts_of([replace(body, placed=None) for body in read.bodies], 10.0, read)
    assert numbers(carried) == pytest.approx(numbers(plain), abs=1e-4)
    # The drawers' sides run on their runners, each of them, and no solids stand in each other.
    names = [leaf.name for leaf in leaves]
    runs = [c for c in carried.contacts if {"Runner"} & {names[i].split(" ")[0] for i in (c.first, c.second)}]
    assert len(runs) >= 2 * DRAWERS
    assert [o for o in carried.overlaps if o.volume_mm3 > 1.0] == [] == [
        o for o in plain.overlaps if o.volume_mm3 > 1.0
    ]  # fmt: skip


def test_its_report_misses_nothing(doc):
    wardrobe(doc)
    report = check_document(doc)
    assert len(report["parts"]) == SOLIDS and report["errors"] == []
    assert [part["name"] for part in report["parts"] if part["missing"]] == []
    assert {f["check"] for f in report["findings"]} & {"overlap", "missing-facts"} == set()


def test_turned_faces_are_meshed_within_the_chord(doc):
    """Every curved face of it: no middle of a side or of a triangle lies farther off the face than the chord."""
    import Part

    wardrobe(doc)
    chord, met = 0.02, 0
    for own in {leaf.own for leaf in read_leaves(doc).leaves}:
        for face in (one.shape for one in own.faces if not one.flat):
            points, corners = mesh_of(face, chord)
            triangles = points[corners]
            middles = np.concatenate([triangles.mean(axis=1), (triangles[:, 0] + triangles[:, 1]) / 2])
            for middle in middles[:: max(1, len(middles) // 12)]:
                assert face.distToShape(Part.Vertex(*middle))[0] <= chord
            area = np.linalg.norm(
                np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0]), axis=1
            ).sum() / 2  # fmt: skip
            assert area == pytest.approx(face.Area, rel=0.01)
            met += 1
    assert met > 30
