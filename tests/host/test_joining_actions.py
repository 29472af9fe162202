"""What the joints, arrangement and today panels write: one undo step each, nothing on an error."""

from __future__ import annotations

import FreeCAD as App
import pytest

from movement_core.errors import InputError
from movement_core.piece.panels import glued_panels
from workbench_pkg.actions.arrange import lay_boards, words_said
from workbench_pkg.actions.check import solve_document, work_out
from workbench_pkg.actions.joint import confirm_joints
from workbench_pkg.actions.tag import tag
from workbench_pkg.actions.year import keep_today, settings_of
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.property_dump import differences, property_dump


@pytest.fixture
def top(doc):
    """Three boards edge to edge on a bearer across them."""
    boards = []
    for i, (y, looks) in enumerate(((-60, 2), (80, -1), (-45, 3))):
        box = doc.addObject("Part::Box", f"Board{i + 1}")
        box.Length, box.Width, box.Height = 900, 120, 25
        box.Placement.Base = App.Vector(0, 120 * i, 0)
        tag([box], species="white oak", grain="x", show="z", pith=(5 * i, y), built=9, looks=looks)
        boards.append(box)
    bearer = doc.addObject("Part::Box", "Bearer")
    bearer.Length, bearer.Width, bearer.Height = 60, 360, 40
    bearer.Placement.Base = App.Vector(100, 0, -40)
    tag([bearer], species="white oak", grain="y", show="x", cut="rift", built=9)
    doc.recompute()
    doc.UndoMode = 1
    return boards


def panel_of(doc):
    return glued_panels(solve_document(doc)[1])[0]


def test_joints_are_confirmed_several_at_once_and_taken_back(doc, top):
    joints = work_out(doc).entry["joints"]
    across = [tuple(joint["keys"]) for joint in joints if joint["kind"] == "unknown"]
    assert len(across) == 3
    before, steps = property_dump(doc), doc.UndoCount
    assert confirm_joints(doc, [(*across[0], "slides"), (*across[1], "screwed")]) == 2
    assert doc.UndoCount == steps + 1
    kinds = {tuple(j["keys"]): (j["kind"], j["origin"]) for j in work_out(doc).entry["joints"]}
    assert kinds[across[0]] == ("slides", "confirmed") and kinds[across[1]] == ("screwed", "confirmed")
    assert kinds[across[2]][1] == "inferred"
    confirm_joints(doc, [(*across[0][::-1], None)])
    assert dict(kept(doc)) == {tuple(sorted(across[1])): "screwed"}
    doc.undo()
    assert len(kept(doc)) == 2
    doc.undo()
    assert differences(before, property_dump(doc)) == []


def kept(doc):
    from workbench_pkg.objects.joints import kept_joints

    return kept_joints(doc)


@pytest.mark.parametrize(
    "joints",
    [[], [("Board1/0", "nobody", "slides")], [("Board1/0", "Board1/0", "slides")], [("A", "B", "welded")]],
)
def test_joints_that_are_none_change_nothing(doc, top, joints):
    before = property_dump(doc)
    with pytest.raises(InputError):
        confirm_joints(doc, joints)
    assert differences(before, property_dump(doc)) == []


def test_laid_boards_are_what_the_model_says_then(doc, top):
    panel = panel_of(doc)
    keys = [board.part.key for board in panel.boards]
    before, steps = property_dump(doc), doc.UndoCount
    places = [box.Placement for box in top]
    lay_boards(doc, keys, (2, 0, 1), (False, True, False), (False, False, True), (1.0, 2.0, 3.0))
    assert doc.UndoCount == steps + 1
    assert [box.Placement for box in top] == places
    said = {leaf.key: words_said(leaf) for leaf in read_leaves(doc).leaves}
    laid = [said[key] for key in keys]
    old = [tuple(board.pith_mm) for board in panel.panel.boards]
    assert laid[0]["pith"] == pytest.approx(old[2])
    assert laid[1]["pith"] == pytest.approx((-old[0][0], -old[0][1]))
    assert laid[2]["pith"] == pytest.approx((-old[1][0], old[1][1]))
    assert [words["looks"] for words in laid] == [3.0, -1.0, 2.0]
    doc.undo()
    assert differences(before, property_dump(doc)) == []


def test_a_label_that_would_stay_behind_is_refused(doc, top):
    top[0].Label = "First wood{white oak; slope 0.05}"
    panel = panel_of(doc)
    keys = [board.part.key for board in panel.boards]
    order = (1, 0, 2) if top[0].Name in keys[0] else (0, 2, 1)
    before = property_dump(doc)
    with pytest.raises(InputError, match="label says slope"):
        lay_boards(doc, keys, order, (False,) * 3, (False,) * 3)
    with pytest.raises(InputError, match="no panel"):
        lay_boards(doc, keys[:2], (0, 1), (True, False), (False, False))
    assert differences(before, property_dump(doc)) == []


def test_today_is_kept_and_undone(doc, top):
    before = property_dump(doc)
    keep_today(doc, "2026-11-03", 7.5)
    assert settings_of(doc).today_mc == 7.5 and settings_of(doc).today.isoformat() == "2026-11-03"
    keep_today(doc, "", None)
    assert settings_of(doc).today_mc is None
    for bad in (("soon", 8.0), ("2026-11-03", 60.0)):
        with pytest.raises(InputError):
            keep_today(doc, *bad)
    doc.undo()
    assert settings_of(doc).today_mc == 7.5
    doc.undo()
    assert differences(before, property_dump(doc)) == []


def test_a_fixed_line_is_a_fact_like_others(doc, top):
    tag([top[0]], fixed="+y")
    part = next(p for p in solve_document(doc)[0].parts if p.name == "Board1")
    assert abs(part.fixed_mm) == pytest.approx(60)
    assert part.frame.axes[0][1] * part.fixed_mm > 0
