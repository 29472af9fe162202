"""Pointing at wood in the 3D views of a document: rings, grain arrows and the centre of the tree drawn on chosen parts,
and the mouse as rays. All of it is scene nodes and a listener: no property, no undo step, nothing to save.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import partial
from types import SimpleNamespace
from typing import Any

import numpy as np
from numpy.typing import NDArray
from pivy import coin

from movement_core.piece.part import Part
from movement_core.sheet.grain_marks import grain_marks
from workbench_pkg.actions.pointing import end_outlines, place_on_end, ray_between
from workbench_pkg.host.density import pixel_ratio
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.panels.palette import INK, PAPER
from workbench_pkg.panels.season_colours import POINTED
from workbench_pkg.panels.tag_pointing import Eye, Shown
from workbench_pkg.views.overlay import attach_everywhere
from workbench_pkg.views.pointing_mouse import Mouse, viewport_of
from workbench_pkg.views.screen import Screen, screen_of
from workbench_pkg.views.season_art import badge
from workbench_pkg.views.season_hiding import Unseen
from workbench_pkg.views.season_lines import styled
from workbench_pkg.views.season_places import image
from workbench_pkg.views.season_scene import skipped_group
from workbench_pkg.views.zooming import views_of, zoom_to

Floats = NDArray[np.float64]
ROOT = "HeartsidePointing"
END_SLACK = 2.2  # of the end's size, to be seen around it


class Pointing:
    """Drawn over one document until ``close``; ``hand`` gets what the mouse does over its views."""

    def __init__(self, name: str) -> None:
        """name : of the document."""
        self.name = name
        self.root = coin.SoSeparator()
        self.root.setName(ROOT)
        # "Fit all" passes over what stands away from the wood. The marks on it count, or the near plane cuts them off.
        away, self._keeper = skipped_group()
        self.marks, self.over = coin.SoSeparator(), coin.SoAnnotation()
        untouched = coin.SoPickStyle()
        untouched.style = coin.SoPickStyle.UNPICKABLE
        for node in (untouched, self.marks, away):
            self.root.addChild(node)
        away.addChild(self.over)
        self.unseen = Unseen()
        self._camera: tuple[Any, Any] | None = None
        self._mice: list[Mouse] = []
        self._outlines: dict[tuple[str, bytes], Any] = {}

    # ---- drawing ------------------------------------------------------------------------------------------

    def show(self, shown: Sequence[Shown]) -> None:
        """Draw these parts' marks in place of what was drawn before."""
        self.attach()
        self.marks.removeAllChildren()
        self.over.removeAllChildren()
        for one in shown:
            self.marks.addChild(self._drawn(one.leaf, one.part))
            for place, text in one.badges:
                self.over.addChild(_at(place, image(badge(text, POINTED, pixel_ratio()))))
            if len(one.line):
                lines = styled(_polylines([one.line]), POINTED, 1.5, 0xF0F0)
                self.over.addChild(lines)

    def _drawn(self, leaf: Leaf, part: Part) -> Any:
        frame = part.frame
        marks = grain_marks(part, self._ends(leaf, part))
        group, place = coin.SoSeparator(), coin.SoMatrixTransform()
        matrix = np.eye(4)
        matrix[:3, :3], matrix[3, :3] = frame.axes, frame.centre  # row vectors
        place.matrix.setValue(*matrix.reshape(-1).tolist())
        group.addChild(place)
        for lines, width in ((marks.rings, 1.5), (marks.arrow, 2.5)):
            if lines:
                drawn = _polylines(lines)
                group.addChild(styled(drawn, INK, width))
                group.addChild(styled(drawn, PAPER, width + 2.0))
        return group

    def _ends(self, leaf: Leaf, part: Part) -> Any:
        """Outlines of a part's ends, asked of the kernel once as long as it lies the same way."""
        key = leaf.key, np.round(part.frame.axes, 9).tobytes()
        if key not in self._outlines:
            self._outlines[key] = end_outlines(leaf, part) if part.frame.grain.known else None
        return self._outlines[key]

    # ---- views --------------------------------------------------------------------------------------------

    def attach(self) -> int:
        """Draw in every 3D view of the document; how many there are."""
        return attach_everywhere(self.name, self.root)

    def listen(self, hand: Any) -> None:
        """Let the mouse over the views be heard: hand.press(eye) says whether the click is ours."""
        for view in views_of(self.name):
            self._mice.append(Mouse(viewport_of(view), hand, partial(eye_at, view)))

    def close(self) -> None:
        """Take everything away again, also what hides other parts."""
        self.show_all()
        for mouse in self._mice:
            mouse.close()
        self._mice.clear()
        for view in views_of(self.name):
            scene = view.getSceneGraph()
            if scene.findChild(self.root) >= 0:
                scene.removeChild(self.root)

    # ---- looking ------------------------------------------------------------------------------------------

    def zoom(self, leaves: Iterable[Leaf]) -> bool:
        """Bring parts close."""
        boxes = [leaf.global_solid().BoundBox for leaf in leaves]
        if not boxes:
            return False
        low = np.min([(b.XMin, b.YMin, b.ZMin) for b in boxes], axis=0)
        high = np.max([(b.XMax, b.YMax, b.ZMax) for b in boxes], axis=0)
        return zoom_to(self.name, low.tolist(), high.tolist())

    def look_at_end(self, leaf: Leaf, part: Part, others: Iterable[Leaf], far: bool) -> bool:
        """Look squarely at an end, its show face up, the other parts out of sight; False where there is no view."""
        views = views_of(self.name)
        if not views or not part.frame.grain.known:
            return False
        self.show_all()
        camera = views[0].getCameraNode()
        self._camera = camera, camera.copy()
        self.unseen.hide(others)
        x, y, z = part.frame.axes
        # The eye looks along its own −z: against the grain's arrow at the far end, along it at the near one.
        right, back = (x, z) if far else (-x, -z)
        matrix = np.eye(4)
        matrix[:3, :3] = np.array([right, y, back])
        camera.orientation.setValue(coin.SbRotation(coin.SbMatrix(*matrix.reshape(-1).tolist())))
        reach = max(part.frame.width_mm, part.frame.thickness_mm) / 2 * END_SLACK
        middle = place_on_end(part, 0.0, 0.0, far)
        box = coin.SbBox3f(*map(float, middle - reach), *map(float, middle + reach))
        width, height = (max(int(v), 1) for v in views[0].getSize())
        camera.viewBoundingBox(box, width / height, 1.0)
        return True

    @property
    def is_at_end(self) -> bool:
        return self._camera is not None

    def show_all(self) -> None:
        """Show the other parts again, and look from where one looked before."""
        self.unseen.restore()
        if self._camera is not None:
            camera, before = self._camera
            self._camera = None
            if camera.getTypeId() == before.getTypeId():
                camera.copyContents(before, False)


def eye_at(view: Any, x: float, y: float) -> Eye | None:
    """The ray through a place of a view, from 0 to 1 to the right and upward, and how far points are from it."""
    port = viewport_of(view)
    size = (port.width(), port.height())
    screen = screen_of(SimpleNamespace(getSize=lambda: size, getCameraNode=view.getCameraNode))
    if screen is None:
        return None
    return eye_on(screen, np.array([x * size[0], y * size[1]]))


def eye_on(screen: Screen, pixel: Floats) -> Eye:
    """The ray through a pixel, y upwards."""
    near, beyond = screen.points(np.array([pixel, pixel]), np.array([-1.0, 1.0]))

    def pixels_to(point: Floats) -> float:
        places, depths = screen.pixels(np.asarray(point, dtype=float)[None])
        return float(np.hypot(*(places[0] - pixel))) if depths[0] <= 1.0 else float("inf")

    return Eye(ray_between(near, beyond), pixels_to)


def _at(place: Floats, node: Any) -> Any:
    group, spot = coin.SoSeparator(), coin.SoTranslation()
    spot.translation.setValue(*map(float, place))
    group.addChild(spot)
    group.addChild(node)
    return group


def _polylines(lines: Sequence[Floats]) -> Any:
    points = np.concatenate(lines)
    coordinates, drawn, group = coin.SoCoordinate3(), coin.SoLineSet(), coin.SoGroup()
    coordinates.point.setValues(0, len(points), points.tolist())
    counts = [len(line) for line in lines]
    drawn.numVertices.setValues(0, len(counts), counts)
    group.addChild(coordinates)
    group.addChild(drawn)
    return group
