"""Keeps the labels of one document readable in its 3D view: draws them, places them, follows the camera.

While the camera moves each label keeps its distance on the screen from its part; once it rests, all are placed
anew. Nothing of the document is written, so labels cost no undo step and leave no trace in the file.
"""

from __future__ import annotations

from typing import Any

import FreeCAD as App
import FreeCADGui as Gui
import numpy as np
from pivy import coin

from workbench_pkg.host.density import device_ratio, pixel_ratio
from workbench_pkg.host.marks import objects_of_kind
from workbench_pkg.host.qt import QtCore
from workbench_pkg.views.label_art import label_picture
from workbench_pkg.views.label_layout import arrange
from workbench_pkg.views.label_nodes import LabelNodes
from workbench_pkg.views.screen import Screen, camera_pose, screen_of

translate = App.Qt.translate

KIND, RANK = "label", "HeartsideRank"
SPAN = (
    "HeartsideSpan"  # ends of the part along its grain, where known: a label stays while any of it is in view
)
SAMPLES = 25
REST_MS = 120
_NOTE_CORNER = (14.0, 14.0)
_NOTE = (300.0, 44.0)  # width and height to keep free of labels for what the note says
_CUBE = 150.0  # the host's cube of views, where it stands unless moved: the upper right corner


class Labels:
    """The labels of one document and the view that shows them."""

    def __init__(self, name: str) -> None:
        self.name = name  # of the document
        self.objects: list[Any] = []
        self.nodes: dict[str, LabelNodes] = {}
        self.content: dict[str, tuple[Any, ...]] = {}
        self.choice = np.zeros(0, dtype=np.int64)
        self.offsets = np.zeros((0, 2))
        self.shown = np.zeros(0, dtype=bool)
        self.anchors = np.zeros((0, 3))
        self.view: Any = None
        self.seen: tuple[Any, ...] = ()
        self.pose: tuple[Any, ...] | None = None
        self.note = LabelNodes()
        self.note_in: Any = None
        self.crowded = 0
        self.sensor = coin.SoNodeSensor(self._moved, None)
        self.rest = QtCore.QTimer()
        self.rest.setSingleShot(True)
        self.rest.timeout.connect(self.settle)

    # ---- what there is ----------------------------------------------------------------------------------

    def read(self) -> int:
        """Look at the document again: which labels there are and what they say. Returns their number."""
        doc = App.listDocuments().get(self.name)
        self.objects = [] if doc is None else [o for o in objects_of_kind(doc, KIND) if o.ViewObject]
        names = {obj.Name for obj in self.objects}
        for name in [name for name in self.nodes if name not in names]:
            del self.nodes[name], self.content[name]
        for obj in self.objects:
            root = obj.ViewObject.RootNode
            nodes = self.nodes.get(obj.Name)
            if nodes is None:
                nodes, self.content[obj.Name] = LabelNodes(), ()
                self.nodes[obj.Name] = nodes
            if not nodes.is_attached(root):
                nodes.attach(root)
            content = (tuple(obj.LabelText), int(getattr(obj, RANK, 0)), pixel_ratio())
            if content != self.content[obj.Name]:
                nodes.draw(label_picture(*content))
                self.content[obj.Name] = content
        self.objects = [obj for obj in self.objects if obj.ViewObject.Visibility]
        if len(self.choice) != len(self.objects):
            self.choice = np.full(len(self.objects), -1, dtype=np.int64)
        self.settle()
        return len(self.nodes)

    def close(self) -> None:
        """Let go of the view."""
        self.rest.stop()
        if self.sensor.getAttachedNode() is not None:
            self.sensor.detach()
        self._take_note_down()

    # ---- where they go ----------------------------------------------------------------------------------

    def look(self) -> None:
        """Place anew where the view, its size or its camera is another one than before."""
        view = self._view()
        if view is None:
            return
        camera = view.getCameraNode()
        seen = (camera, tuple(view.getSize()))
        if self.seen and camera == self.seen[0] and seen[1] == self.seen[1]:
            return
        if self.sensor.getAttachedNode() is not None:
            self.sensor.detach()
        self.sensor.attach(camera)
        self.view, self.seen = view, seen
        self._place()

    def settle(self) -> None:
        """Place all labels anew in the view as it is."""
        self.look()
        if self.view is not None:
            self._place()

    def _view(self) -> Any | None:
        """The document's 3D view: the active one, or the first."""
        gui = Gui.getDocument(self.name) if self.name in App.listDocuments() else None
        if gui is None:
            return None
        if hasattr(gui.ActiveView, "getCameraNode"):
            return gui.ActiveView
        views = gui.mdiViewsOfType("Gui::View3DInventor")
        return views[0] if views else None

    def _moved(self, *_: Any) -> None:
        """The camera moved: carry the labels along, place them anew when it rests."""
        try:
            pose = None if self.view is None else camera_pose(self.view.getCameraNode())
            if pose == self.pose:
                return  # the host only fitted the clipping planes, as it does at every redraw
            self.pose = pose
            screen = self._screen()
            if screen is not None and len(self.offsets) == len(self.objects):
                pixels, depths = screen.pixels(self.anchors)
                self._put(screen, pixels + self.offsets, depths)
            self.rest.start(REST_MS)
        except Exception as error:  # raised into the scene's own loop it would come again at every frame
            self.close()
            told = App.Qt.translate("Heartside", "Labels stopped following the view ({error})")
            App.Console.PrintError(f"Heartside: {told.format(error=error)}\n")

    def _place(self) -> None:
        screen = self._screen()
        if screen is None or not self.objects:
            self._take_note_down()
            return
        self.pose = camera_pose(self.view.getCameraNode())
        spans = self._spans()
        self.anchors = visible_anchors(spans, screen)
        pixels, depths = screen.pixels(self.anchors)
        pixels[np.abs(depths) > 1.0] = -1e6  # behind the eye
        sizes = np.array([self.nodes[obj.Name].size for obj in self.objects], dtype=float)
        ranks = np.array([self.content[obj.Name][1] for obj in self.objects], dtype=np.int64)
        layout = arrange(
            pixels, sizes, screen.size, ranks, self.choice, _kept_free(screen), extents_px(spans, screen)
        )
        self.choice, self.shown, self.crowded = layout.choice, layout.shown, layout.crowded
        self.offsets = np.where(layout.shown[:, None], layout.centres - pixels, 0.0)
        self._put(screen, layout.centres, depths)

    def _put(self, screen: Screen, centres: np.ndarray, depths: np.ndarray) -> None:
        points = screen.points(centres, depths)
        for obj, anchor, point, shown in zip(self.objects, self.anchors, points, self.shown):
            nodes = self.nodes[obj.Name]
            if shown:
                nodes.put(anchor, point)
            else:
                nodes.hide()
        self._put_note(screen, float(np.median(depths)))

    def _screen(self) -> Screen | None:
        return None if self.view is None else screen_of(self.view)

    def _spans(self) -> np.ndarray:
        """(N, 3, 3): the point each label belongs to, and the ends of its part where they are known."""
        rows = []
        for obj in self.objects:
            base = tuple(obj.BasePosition)
            ends = [tuple(p) for p in obj.HeartsideSpan] if SPAN in obj.PropertiesList else []
            rows.append([base, *(ends if len(ends) == 2 else [base, base])])
        return np.array(rows, dtype=float).reshape(-1, 3, 3)

    # ---- how many found no room -------------------------------------------------------------------------

    def _put_note(self, screen: Screen, depth: float) -> None:
        if not self.crowded:
            self._take_note_down()
            return
        text = note_text(self.crowded)
        if self.content.get("") != (text,):
            self.note.draw(label_picture([text], 0, pixel_ratio()))
            self.content[""] = (text,)
        half = np.array(self.note.size) / 2.0
        (point,) = screen.points(np.array([np.array(_NOTE_CORNER) + half]), np.array([depth]))
        self.note.put(point, point)
        scene = self.view.getSceneGraph()
        if self.note_in is None or scene != self.note_in:
            self._take_note_down()
            scene.addChild(self.note.group)
            self.note_in = scene

    def _take_note_down(self) -> None:
        if self.note_in is not None:
            self.note_in.removeChild(self.note.group)
            self.note_in = None


def visible_anchors(spans: np.ndarray, screen: Screen) -> np.ndarray:
    """(N, 3) where each leader ends: the label's own point, or the middle of what is in view of its part."""
    anchors = spans[:, 0].copy()
    steps = np.linspace(0.0, 1.0, SAMPLES)[:, None]
    points = np.concatenate(
        [spans[:, :1], spans[:, 1, None] + steps * (spans[:, 2] - spans[:, 1])[:, None]], axis=1
    )
    pixels, depths = screen.pixels(points.reshape(-1, 3))
    margin = 0.03 * np.asarray(screen.size, dtype=float)
    inside = np.all((pixels >= margin) & (pixels <= screen.size - margin), axis=1) & (np.abs(depths) <= 1.0)
    inside = inside.reshape(len(spans), -1)
    for i in np.flatnonzero(~inside[:, 0] & inside.any(axis=1)):
        seen = np.flatnonzero(inside[i])
        anchors[i] = points[i, seen[len(seen) // 2]]
    return anchors


def extents_px(spans: np.ndarray, screen: Screen) -> np.ndarray:
    """(N,) length of each part along its grain on the screen; endless where its ends are not known."""
    first, _ = screen.pixels(spans[:, 1])
    last, _ = screen.pixels(spans[:, 2])
    known = np.any(spans[:, 1] != spans[:, 2], axis=1)
    # A part seen along its grain is as important as ever: count its true length at this scale.
    per_mm = np.hypot(*(last - first).T) / np.maximum(np.linalg.norm(spans[:, 2] - spans[:, 1], axis=1), 1e-9)
    scale = float(per_mm[known].max()) if known.any() else 0.0
    return np.where(known, scale * np.linalg.norm(spans[:, 2] - spans[:, 1], axis=1), np.inf)


def note_text(count: int) -> str:
    """What stands in the corner while some labels find no room."""
    if count == 1:
        return str(translate("Heartside", "1 more label: zoom in to read"))
    return str(translate("Heartside", "{count} more labels: zoom in to read").format(count=count))


def _kept_free(screen: Screen) -> np.ndarray:
    """Corners of the view that something else stands in: the host's cube, and our note."""
    width, height = screen.size
    side = _CUBE * device_ratio()
    wide, high = (each * pixel_ratio() for each in _NOTE)
    return np.array([[width - side, height - side, width, height], [0.0, 0.0, wide, high]])
