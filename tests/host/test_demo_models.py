"""The demo models as they lie on disk: whole, tagged, put together without overlap, faults where they are listed.

Expected volumes and sizes are worked out here by hand from the drawn measures.
"""

from __future__ import annotations

import itertools
import re

import bench  # noqa: F401  (puts the host's own modules on the path)
import FreeCAD as App
import Part
import pytest

from movement_core.piece.tag_sources import merge, tags_from_properties, tags_from_table, tags_from_text
from workbench_pkg.demo.build import build_demo
from workbench_pkg.demo.faults import BENCH, FAULTS, SIDEBOARD, TABLE, UNTOLD, faults_of
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.tagging import read_tags

FAULTY, REPAIRED = False, True
VARIANTS = pytest.mark.parametrize("repaired", [FAULTY, REPAIRED], ids=["faulty", "repaired"])
PIECES = pytest.mark.parametrize("stem", [TABLE, SIDEBOARD])
LEAVES = {(TABLE, FAULTY): 34, (TABLE, REPAIRED): 34, (SIDEBOARD, FAULTY): 49, (SIDEBOARD, REPAIRED): 53}


@pytest.fixture(scope="module")
def folders(tmp_path_factory):
    made = {repaired: tmp_path_factory.mktemp("demo") for repaired in (FAULTY, REPAIRED)}
    for repaired, folder in made.items():
        build_demo(folder, repaired)
    return made


@pytest.fixture
def opened(folders):
    return lambda stem, repaired: App.openDocument(str(folders[repaired] / f"{stem}.FCStd"), True)


@pytest.fixture
def parts(opened):
    """Opens a model and gives its leaves by bare name; parts of several drawers stand under 'Drawer 1 / …'."""
    return lambda stem, repaired: {
        bare(leaf.name): leaf for leaf in read_leaves(opened(stem, repaired)).leaves
    }


def bare(name):
    return re.sub(r"\s*wood\{[^}]*\}", "", name)


def tags_of(leaf):
    raw = read_tags(leaf)
    name = bare(leaf.name)
    texts = [tags_from_text(name, text, "label") for text in raw.texts]
    return merge(tags_from_properties(name, raw.properties), *texts)


def box_of(leaf):
    return leaf.global_solid().optimalBoundingBox(False)


def pressed_in(moving, still, step):
    """Area on which one solid lies against another, from the overlap after a small step into it."""
    solid = moving.global_solid()
    solid.translate(App.Vector(*step))
    return solid.common(still.global_solid()).Volume / App.Vector(*step).Length


# ---- as files --------------------------------------------------------------------------------------------


def test_three_models_and_no_backups(folders):
    wanted = {"trestle_table.FCStd", "sideboard.FCStd", "hall_bench.step", "hall_bench.wood.csv"}
    for repaired, folder in folders.items():
        again = build_demo(folder, repaired)
        assert {path.name for path in again} < wanted
        assert {path.name for path in folder.iterdir()} == wanted


@PIECES
@VARIANTS
def test_opens_whole(opened, stem, repaired):
    doc = opened(stem, repaired)
    doc.recompute()
    assert [obj.Label for obj in doc.Objects if "Invalid" in obj.State] == []
    reading = read_leaves(doc, hidden=True)  # nothing stands about that only helped to make something else
    assert reading.unreadable == ()
    assert len(reading.leaves) == LEAVES[stem, repaired] == len(read_leaves(doc).leaves)
    for leaf in reading.leaves:
        solid = leaf.global_solid()
        assert solid.isValid() and len(solid.Solids) == 1, leaf.name


@PIECES
def test_says_that_it_is_invented(opened, stem):
    assert "Invented" in opened(stem, FAULTY).Comment


def test_made_in_many_ways(opened):
    kinds = {obj.TypeId for stem in (TABLE, SIDEBOARD) for obj in opened(stem, FAULTY).Objects}
    assert kinds >= {
        "App::Part", "App::Link", "Part::Box", "Part::Cylinder", "Part::Cut", "Part::MultiFuse",
        "Part::Feature", "PartDesign::Body", "PartDesign::Pad", "PartDesign::Pocket",
    }  # fmt: skip


# ---- measures --------------------------------------------------------------------------------------------


def test_measures_of_the_table(parts):
    table = parts(TABLE, FAULTY)
    widths = (142, 128, 150, 136, 146, 124, 134)
    for number, width in enumerate(widths, start=1):
        assert table[f"Top board {number}"].solid.Volume == pytest.approx(1900 * width * 28)
    button = 35 * 30 * 19.5 + 10 * 30 * 7.5
    buttons = [leaf for name, leaf in table.items() if "button" in name]
    assert len(buttons) == 14
    assert all(leaf.solid.Volume == pytest.approx(button) for leaf in buttons)
    # Stretcher: core, two tenons of 85 mm, less two tusk mortises through 50 mm that widen from
    # 2 + 14 + 6·20/100 to 2 + 14 + 6·70/100 mm.
    mortise = 12 * 50 * (16 + (6 * 0.2 + 6 * 0.7) / 2)
    wanted = 1370 * 36 * 80 + 2 * (85 * 18 * 50 - mortise)
    assert table["Stretcher"].solid.Volume == pytest.approx(wanted)
    whole = Part.makeCompound([leaf.global_solid() for leaf in table.values()])
    assert whole.BoundBox.ZMin == pytest.approx(0, abs=1e-9)
    assert whole.BoundBox.ZMax == pytest.approx(750)


def test_the_table_lies_off_the_axes(parts):
    """Turned 15 degrees in the room, the legs splayed 6 degrees as well."""
    from math import cos, radians, sin

    table = parts(TABLE, FAULTY)
    along = table["Top board 1"].matrix.col(0)
    assert (along.x, along.y) == pytest.approx((cos(radians(15)), sin(radians(15))))
    for number in range(1, 5):
        assert table[f"Leg {number}"].matrix.col(2).z == pytest.approx(cos(radians(6)))


@VARIANTS
def test_dovetails_fill_their_sockets(parts, repaired):
    """Top, bottom and sides together are the whole shell, less what was cut for divider, back, rails and so on."""
    case = parts(SIDEBOARD, repaired)
    boards = sum(
        case[n].solid.Volume for n in ("Case top", "Case bottom", "Case side left", "Case side right")
    )
    shell = 420 * (1150 * 592 - 1106 * 548)
    rabbet = 7 * (1120 * 562 - 1106 * 548)
    divider = 2 * 6 * 22 * (413 - 12)
    feet = 4 * 3.141592653589793 * 12.5**2 * 15
    hinges = 2 * 1.2 * 16 * 50
    rails = 2 * 6 * 60 * 22
    runners = 2 * 6.4 * (413 - 60) * 22.4 if repaired else 0
    assert boards == pytest.approx(shell - rabbet - divider - feet - hinges - rails - runners, rel=1e-9)


def test_measures_of_the_sideboard(parts):
    case = parts(SIDEBOARD, FAULTY)
    assert case["Lower drawer rail"].solid.Volume == pytest.approx(616 * 60 * 22 - 2 * 8**3)
    assert case["Door stop"].solid.Volume == pytest.approx(24**3)
    for number in (1, 2, 3):
        assert case[f"Drawer {number} / Drawer bottom"].solid.Volume == pytest.approx(590 * 373 * 8)
    # A 1150 mm front of 18 mm projection and 28 mm height, bevelled 12 × 14, mitred at both ends: the length
    # at each depth runs from 1150 at the case to 1186 in front.
    profile_volume = 1150 * (18 * 28 - 12 * 14 / 2) + 2 * (28 * 18**2 / 2 - 12 * 14 / 2 * (18 - 12 / 3))
    assert case["Base moulding front"].solid.Volume == pytest.approx(profile_volume)
    for number in (1, 2, 3, 4):
        foot = box_of(case[f"Foot {number}"])
        assert (foot.ZMin, foot.ZMax) == pytest.approx((0, 164), abs=1e-6)  # 150 below the case, its pin 14
        assert (foot.XLength, foot.YLength) == pytest.approx((54, 54), abs=0.2)  # a smooth curve through 27


# ---- put together ----------------------------------------------------------------------------------------


@PIECES
@VARIANTS
def test_no_overlap_and_nothing_floats(parts, stem, repaired):
    """No two solids share volume, and every part can be reached from every other through parts that touch."""
    solids = {name: leaf.global_solid() for name, leaf in parts(stem, repaired).items()}
    boxes = {name: solid.copy().BoundBox for name, solid in solids.items()}
    group = {name: {name} for name in solids}
    overlaps = []
    for a, b in itertools.combinations(solids, 2):
        if _boxes_share(boxes[a], boxes[b], 1e-6):
            shared = solids[a].common(solids[b]).Volume
            if abs(shared) > 1e-3:
                overlaps.append((a, b, shared))
        if group[a] is group[b] or not _boxes_share(boxes[a], boxes[b], -1e-3):
            continue
        if solids[a].section(solids[b]).Edges:  # edges where they touch; far quicker than their distance
            joined = group[a] | group[b]
            for name in joined:
                group[name] = joined
    assert overlaps == []
    assert len({frozenset(names) for names in group.values()}) == 1


def _boxes_share(a, b, least):
    """Two boxes have a space in common that is more than `least` wide in each direction."""
    return (
        min(a.XMax, b.XMax) - max(a.XMin, b.XMin) > least
        and min(a.YMax, b.YMax) - max(a.YMin, b.YMin) > least
        and min(a.ZMax, b.ZMax) - max(a.ZMin, b.ZMin) > least
    )


# ---- faults ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize("stem", [TABLE, SIDEBOARD])
def test_listed_parts_exist(parts, stem):
    names = {name.split(" / ")[-1] for name in parts(stem, FAULTY)}
    listed = {part for fault in faults_of(stem) for part in fault.parts}
    assert listed and listed <= names
    assert {part for model, part in UNTOLD if model == stem} <= names
    assert {fault.model for fault in FAULTS} == {TABLE, SIDEBOARD}


@VARIANTS
def test_pith_in_a_leg(parts, repaired):
    table = parts(TABLE, repaired)
    inside = []
    for number in range(1, 5):
        x, y = tags_of(table[f"Leg {number}"]).pith_mm
        if abs(x) <= 35 and abs(y) <= 25:  # the section under the bearer
            inside.append(number)
    assert inside == ([] if repaired else [3])


@VARIANTS
def test_finish_of_the_top(parts, repaired):
    from movement_core.moisture.finish import read_faces

    table = parts(TABLE, repaired)
    for number in range(1, 8):
        show, back = read_faces(tags_of(table[f"Top board {number}"]).finish)
        assert (show == back) is repaired


@VARIANTS
def test_panel_and_door_fit(parts, repaired):
    case = parts(SIDEBOARD, repaired)
    panel, left, right = (box_of(case[n]) for n in ("Door panel", "Door stile left", "Door stile right"))
    room = 4.0 if repaired else 0.0
    assert panel.XMin - (left.XMax - 12) == pytest.approx(room, abs=1e-6)  # grooves are 12 mm deep
    assert (right.XMin + 12) - panel.XMax == pytest.approx(room, abs=1e-6)
    assert box_of(case["Divider"]).XMin - right.XMax == pytest.approx(2.0 if repaired else 0.6, abs=1e-6)
    assert left.XMin - box_of(case["Case side left"]).XMax == pytest.approx(
        1.5 if repaired else 0.6, abs=1e-6
    )


@pytest.mark.parametrize(("side", "out"), [("left", -1), ("right", 1)])
@VARIANTS
def test_moulding_on_the_side(parts, side, out, repaired):
    case = parts(SIDEBOARD, repaired)
    area = pressed_in(case[f"Base moulding {side}"], case[f"Case side {side}"], (-out * 0.1, 0, 0))
    assert area == pytest.approx((60 if repaired else 420) * 20, rel=1e-6)


@pytest.mark.parametrize(
    ("runner", "board", "out"),
    [("Lower runner left", "Divider", -1), ("Upper runner right", "Case side right", 1)],
)
@VARIANTS
def test_runner_on_its_board(parts, runner, board, out, repaired):
    case = parts(SIDEBOARD, repaired)
    area = pressed_in(case[runner], case[board], (out * 0.1, 0, 0))
    assert area == pytest.approx(0 if repaired else (405 - 60) * 22, abs=1e-3)


@VARIANTS
def test_drawer_bottom_runs_the_right_way(parts, repaired):
    case = parts(SIDEBOARD, repaired)
    for number in (1, 2, 3):
        bottom = case[f"Drawer {number} / Drawer bottom"]
        assert tags_of(bottom).grain == ((1, 0, 0) if repaired else (0, 1, 0))
        side = case[f"Drawer {number} / Drawer side left"]
        area = pressed_in(bottom, side, (-0.1, 0, 0))
        # Tight, its edge fills the groove from the front's groove to the back: 373 × 8 mm.
        assert area == pytest.approx(0 if repaired else 373 * 8, abs=1e-3)


# ---- tags ------------------------------------------------------------------------------------------------


@PIECES
@VARIANTS
def test_what_is_told_and_what_is_not(parts, stem, repaired):
    untold = set()
    for name, leaf in parts(stem, repaired).items():
        tags = tags_of(leaf)
        assert tags.problems == (), name
        if tags.species is None:
            untold.add((stem, name))
            continue
        if tags.species.kind != "wood":
            continue
        if tags.fitted_mc is None:
            untold.add((stem, name))
        if tags.grain is None:
            untold.add((stem, name))
        if (tags.cut, tags.ring_angle_deg, tags.pith_mm) == (None, None, None):
            untold.add((stem, name))
    assert untold == (set() if repaired else {key for key in UNTOLD if key[0] == stem})


def test_tags_come_as_properties_and_as_text(opened):
    for stem in (TABLE, SIDEBOARD):
        objects = opened(stem, FAULTY).Objects
        assert any("HeartsideSpecies" in obj.PropertiesList for obj in objects)
        assert any("wood{" in obj.Label for obj in objects)


def test_an_instance_takes_its_masters_facts(parts):
    table = parts(TABLE, FAULTY)
    second, first = tags_of(table["Leg 2"]), tags_of(table["Leg 1"])
    assert second.pith_mm != first.pith_mm
    assert (second.species, second.grain, second.fitted_mc) == (first.species, first.grain, first.fitted_mc)


def test_the_foot_came_through_a_file(parts):
    """Its tag is in the label where the host reads labels from STEP, in properties where it does not."""
    case = parts(SIDEBOARD, FAULTY)
    for number in (1, 2, 3, 4):
        tags = tags_of(case[f"Foot {number}"])
        assert tags.species.name == "Cherry, black"
        assert tags.grain == (0, 0, 1)
        assert tags.fitted_mc == 8


# ---- the STEP model --------------------------------------------------------------------------------------


@VARIANTS
def test_the_bench(folders, repaired):
    path = folders[repaired] / f"{BENCH}.step"
    shape = Part.Shape()
    shape.read(str(path))
    solids = shape.Solids
    assert len(solids) == 5
    seat_board = 150 * 26 * 1000 - 2 * 8 * 26 * 140
    assert [solid.Volume for solid in solids[:2]] == pytest.approx([seat_board, seat_board])
    assert solids[4].Volume == pytest.approx(694 * 24 * 80 + 2 * 16 * 10 * 56)
    assert all(abs(a.common(b).Volume) < 1e-3 for a, b in itertools.combinations(solids, 2))

    tags, problems = tags_from_table(path.with_suffix(".wood.csv").read_text(encoding="utf-8"), "table")
    assert problems == ()
    assert all(one.problems == () and one.species.name == "Ash, European" for one in tags.values())
    names = re.findall(r"PRODUCT\('([^']*)'", path.read_text(encoding="utf-8"))
    assert [name for name in names if name in tags] == list(tags)  # the order of the solids
    told = {part for part, one in tags.items() if one.fitted_mc is not None}
    assert set(tags) - told == (set() if repaired else {part for model, part in UNTOLD if model == BENCH})
