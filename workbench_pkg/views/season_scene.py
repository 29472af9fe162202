"""The piece through the year in the 3D views of its document: figures of its parts in place of the host's own, with
what may be laid over them. All of it is scene nodes: no property, no placement, no undo step, nothing to save.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import FreeCAD as App
import numpy as np
from pivy import coin

from movement_core.piece.part import Part
from movement_core.sheet.carried import Carrier
from movement_core.sheet.grain_marks import GrainMarks, grain_marks
from movement_core.sheet.margins import Margin
from movement_core.sheet.motion import PieceMotion
from workbench_pkg.actions.pointing import end_outlines
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.panels.palette import INK, PAPER, Colour, fraction
from workbench_pkg.panels.season_colours import DRY, POINTED, WET, share_colour
from workbench_pkg.views.overlay import attach_everywhere
from workbench_pkg.views.season_figure import Figure, Surfaces
from workbench_pkg.views.season_hiding import Unseen
from workbench_pkg.views.season_lines import DASHED, SOLID, Lines, Reach, styled
from workbench_pkg.views.season_mesh import MeshReader
from workbench_pkg.views.season_places import Cards, Places
from workbench_pkg.views.zooming import views_of, zoom_to

USUAL_COLOUR = (0.8, 0.68, 0.5)
GLOW = 0.5
REACH_MM, REACH_SHARE = (
    1.0,
    0.02,
)  # beyond the edges: marks stand proud, and a bend may be largest on other days
EDGE: Colour = (24, 20, 16)
LAYERS = ("colours", "ghosts", "rings", "places", "caption")  # the caption is written by who shows a day


class SeasonScene:
    """Built once for a worked-out piece; ``show`` moves it to a day. ``close`` takes everything away again."""

    def __init__(self, name: str, motion: PieceMotion, parts: Sequence[Part], leaves: Iterable[Leaf]) -> None:
        """name : of the document. motion : of the parts, in their order. leaves : the solids, by their keys."""
        self.name, self.motion, self.parts = name, motion, tuple(parts)
        self.day, self.factor = motion.today, 1.0
        self.layers = dict.fromkeys(LAYERS, False)
        self.leaves = {leaf.key: leaf for leaf in leaves}
        self._names = {key: _names_of(leaf) for key, leaf in self.leaves.items()}
        self.figures: dict[int, Figure] = {}
        self.moved = 0  # vectors, since it was made
        self.shares: Mapping[str, float | None] = {}
        self.unmeshed: list[str] = []
        self.root, self._keeper = skipped_group()
        self.carrier = Carrier(motion)
        self.surfaces = Surfaces(self.carrier)
        self.edge_lines: dict[int, list[Any]] = {}
        self._make_figures()
        self.edges = self._lines(self.edge_lines)
        self.pointed = coin.SoIndexedLineSet()
        self.marks: list[Lines] = []
        self.ghosts: list[tuple[int, Lines]] = []
        self.mark_switch, self.ghost_switch = coin.SoSwitch(), coin.SoSwitch()
        self.places, self.cards = Places(), Cards()
        self.reach = Reach()
        self.unseen = Unseen()
        bold = styled(self.pointed, POINTED, 4.0)
        self.edges.group.addChild(bold)  # below the coordinates that it shares
        for node in (
            self.surfaces.root,
            styled(self.edges.group, EDGE, 1.0),
            self.mark_switch,
            self.ghost_switch,
            self.places.root,
            self.cards.root,
        ):
            self.root.addChild(node)
        self._reach_out()
        self.unseen.hide(self.leaves[motion.parts[index].key] for index in self.figures)
        self.attach()

    def _make_figures(self) -> None:
        reader = MeshReader()
        for index, part in enumerate(self.motion.parts):
            leaf = self.leaves.get(part.key)
            if leaf is None:
                continue
            try:
                mesh = reader.read(leaf)
            except (
                Exception
            ):  # whatever the host fails at costs this figure only; the host's own stays in view
                self.unmeshed.append(part.name)
                continue
            figure = self.figures[index] = Figure(part, colour_of(leaf))
            self.surfaces.add(index, figure, mesh)
            self.edge_lines[index] = [(edge - part.centre) @ part.axes.T for edge in mesh.edges]
        self.surfaces.made()

    def _lines(self, lines: Mapping[int, Sequence[Any]]) -> Lines:
        return Lines(self.carrier, lines, {index: self.figures[index].slices for index in lines})

    # ---- views --------------------------------------------------------------------------------------------

    def attach(self) -> int:
        """Show in every 3D view of the document, also in those opened since; how many there are."""
        return attach_everywhere(self.name, self.root, self.reach.root)

    def close(self) -> None:
        """Take everything out of every view and show the parts themselves again."""
        if self.name in App.listDocuments():
            for view in views_of(self.name):
                scene = view.getSceneGraph()
                for node in (self.root, self.reach.root):
                    if scene.findChild(node) >= 0:
                        scene.removeChild(node)
        self.unseen.restore()

    # ---- the year -----------------------------------------------------------------------------------------

    def show(self, day: int, factor: float) -> None:
        """Move every figure to a day, its movement magnified."""
        if factor != self.factor:
            self.factor = factor
            self._place_ghosts()
            self._reach_out()
        self.day = day
        moves = self.carrier.on(day, factor)
        self.moved += self.surfaces.move(moves) + self.edges.move(moves)
        if self.layers["rings"]:
            self.moved += sum(lines.move(moves) for lines in self.marks)
        matrices = moves.matrices.reshape(-1, 16)
        for index, figure in self.figures.items():
            if figure.carries:
                figure.place(matrices[index].tolist())

    def _reach_out(self) -> None:
        """Tell the views how far the parts go, or their near and far planes would cut what the host does not draw."""
        gathered = self.edges.vectors.gathered
        there = np.empty((2, gathered.count, 3), dtype=np.float32)
        for day, out in zip((self.motion.driest_day, self.motion.wettest_day), there):
            gathered.write(self.carrier.on(day, self.factor).points, out)
        if there.size:
            low, high = there.min(axis=(0, 1)), there.max(axis=(0, 1))
            slack = REACH_MM + REACH_SHARE * float(np.linalg.norm(high - low))
            self.reach.set(self.carrier.origin + low - slack, self.carrier.origin + high + slack)

    def _place_ghosts(self) -> None:
        if self.layers["ghosts"]:
            for day, lines in self.ghosts:
                lines.move(self.carrier.on(day, self.factor))

    # ---- what lies over it --------------------------------------------------------------------------------

    def switch(self, layer: str, on: bool) -> None:
        """Lay something over the piece or take it off; one of ``LAYERS``."""
        self.layers[layer] = on
        if layer == "colours":
            self._paint()
        elif layer == "ghosts":
            self._make_ghosts()
            self._place_ghosts()
            self.ghost_switch.whichChild = coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE
        elif layer == "rings":
            self._show_rings(on)
        elif layer == "places":
            self.places.show(on)

    def mark(self, margins: Sequence[Margin], shares: Mapping[str, float | None]) -> None:
        """What the colours and the marked places tell. The places are numbered in the order of the margins."""
        self.shares = shares
        index = {part.key: number for number, part in enumerate(self.motion.parts)}
        for number, margin in enumerate(margins, start=1):
            figure = self.figures.get(index.get(margin.keys[0], -1))
            if figure is not None:
                self.places.add(number, margin, figure)
        self._paint()
        self.show(self.day, self.factor)

    def _paint(self) -> None:
        for index, figure in self.figures.items():
            part = self.motion.parts[index]
            if not self.layers["colours"]:
                figure.own_colour()
            elif not part.known:
                figure.untold_colour()
            else:
                figure.paint(fraction(share_colour(self.shares.get(part.key, 0.0))), glow=GLOW)

    def _make_ghosts(self) -> None:
        if self.ghosts or not self.layers["ghosts"]:
            return
        moving = {
            index: lines
            for index, lines in self.edge_lines.items()
            if index in self.figures and np.ptp(self.motion.strain[index], axis=0).max() > 0
        }
        for day, colour, pattern in (
            (self.motion.driest_day, DRY, DASHED),
            (self.motion.wettest_day, WET, SOLID),
        ):
            ghost = self._lines(moving)
            self.ghosts.append((day, ghost))
            self.ghost_switch.addChild(styled(ghost.group, colour, 1.5, pattern))

    def _show_rings(self, on: bool) -> None:
        if on and not self.marks:
            marks = {index: self._grain_marks(index) for index in self.figures}
            for name, width in (("rings", 1.5), ("arrow", 2.5)):
                lines = self._lines({index: getattr(mark, name) for index, mark in marks.items()})
                self.marks.append(lines)
                # The rim after the ink: at the same depth, what is drawn first stays.
                self.mark_switch.addChild(styled(lines.group, INK, width))
                self.mark_switch.addChild(styled(lines.group, PAPER, width + 2.0))
        self.mark_switch.whichChild = coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE
        if on:
            self.show(self.day, self.factor)

    def _grain_marks(self, index: int) -> GrainMarks:
        part = self.parts[index]
        return grain_marks(
            part, end_outlines(self.leaves[part.key], part) if part.frame.grain.known else None
        )

    # ---- single parts -------------------------------------------------------------------------------------

    def point_at(self, keys: Iterable[str]) -> None:
        """Draw the edges of these parts boldly, and of no others."""
        wanted = set(keys)
        self.edges.draw(
            self.pointed, {index for index, each in self.figures.items() if each.motion.key in wanted}
        )

    def zoom(self, margin: Margin) -> bool:
        """Bring the place of a margin close."""
        points = np.concatenate([margin.place[None], *margin.outline])
        low, high = points.min(axis=0), points.max(axis=0)
        grow = max(0.0, 120.0 - float((high - low).max())) / 2  # mm: the least to be seen around a place
        return zoom_to(self.name, (low - grow).tolist(), (high + grow).tolist())

    def zoom_parts(self, keys: Iterable[str]) -> bool:
        """Bring parts close."""
        wanted = set(keys)
        corners = [
            figure.motion.centre + sign * figure.motion.axes.T @ (figure.motion.size_mm / 2 * mask)
            for figure in self.figures.values()
            if figure.motion.key in wanted
            for sign in (-1, 1)
            for mask in ((1, 1, 1), (1, 1, -1), (1, -1, 1), (-1, 1, 1))
        ]
        if not corners:
            return False
        return zoom_to(self.name, np.min(corners, axis=0).tolist(), np.max(corners, axis=0).tolist())

    def drop(self, objects: Iterable[str]) -> int:
        """Take away the figures of document objects that are gone, by name; how many were."""
        names = set(objects)
        gone = [index for index in self.figures if self._names[self.motion.parts[index].key] & names]
        for index in gone:
            figure = self.figures.pop(index)
            self.places.drop(figure)
            self.surfaces.drop(figure)
            for lines in (self.edges, *self.marks, *(ghost for _, ghost in self.ghosts)):
                lines.drop(index)
        return len(gone)


def _names_of(leaf: Leaf) -> set[str]:
    """Names of the objects that a leaf needs."""
    return {part for part in leaf.sub.split(".") if part} | {
        o.Name for o in (leaf.root, leaf.owner, leaf.source)
    }


def skipped_group() -> tuple[Any, Any]:
    """A group that the host's "fit all" passes over, and what must be kept so that it lives."""
    kind = coin.SoType.fromName("SoSkipBoundingGroup")
    keeper = coin.SoGroup()
    if kind.isBad():
        group = coin.SoSeparator()
    else:
        group = kind.createInstance()
        group.getField("mode").setValue(1)  # EXCLUDE_BBOX
    keeper.addChild(group)
    return group, keeper


def colour_of(leaf: Leaf) -> tuple[float, float, float]:
    """The colour that the host shows a leaf in."""
    for obj in (leaf.owner, leaf.source):
        view = getattr(obj, "ViewObject", None)
        if view is None:
            continue
        if getattr(view, "OverrideMaterial", False):
            red, green, blue = view.ShapeMaterial.DiffuseColor[:3]
            return red, green, blue
        if "ShapeColor" in view.PropertiesList:
            red, green, blue = view.ShapeColor[:3]
            return red, green, blue
    return USUAL_COLOUR
