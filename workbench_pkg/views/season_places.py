"""Places marked in the model by number, and the cards that stand in the corners of the view."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from pivy import coin

from movement_core.sheet.margins import Margin
from workbench_pkg.host.density import pixel_ratio
from workbench_pkg.panels.palette import PAPER, Colour, fraction
from workbench_pkg.panels.season_colours import share_colour
from workbench_pkg.views.label_art import Picture
from workbench_pkg.views.season_art import badge, card
from workbench_pkg.views.season_figure import Figure

RIM = 0.98  # of half the view: where cards begin


class Places:
    """Outlines and numbers, each carried by the figure of its part."""

    def __init__(self) -> None:
        self.root = coin.SoSwitch()
        self.nodes: list[tuple[Figure, Any]] = []

    def show(self, on: bool) -> None:
        self.root.whichChild = coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE

    def add(self, number: int, margin: Margin, figure: Figure) -> None:
        axes, centre = figure.motion.axes, figure.motion.centre
        colour = share_colour(margin.used)
        top, matrix = coin.SoAnnotation(), coin.SoMatrixTransform()
        matrix.matrix.connectFrom(figure.matrix.matrix)
        figure.carries = True
        top.addChild(matrix)
        if margin.outline and margin.used is not None:  # what only asks gets its number
            loops = [(np.vstack([loop, loop[:1]]) - centre) @ axes.T for loop in margin.outline]
            for paint, width in ((PAPER, 5.0), (colour, 2.5)):
                top.addChild(_loops(loops, paint, width))
        spot = coin.SoTranslation()
        spot.translation.setValue(*map(float, (margin.place - centre) @ axes.T))
        top.addChild(spot)
        top.addChild(image(badge(str(number), colour, pixel_ratio())))
        self.root.addChild(top)
        self.nodes.append((figure, top))

    def drop(self, figure: Figure) -> None:
        """Take away what a figure carries."""
        for own, node in [pair for pair in self.nodes if pair[0] is figure]:
            self.root.removeChild(node)
            self.nodes.remove((own, node))


class Cards:
    """A caption in the upper left corner of the view and a legend in the lower left one, the same in every view."""

    def __init__(self) -> None:
        self.root = coin.SoSwitch()
        top, camera = coin.SoAnnotation(), coin.SoOrthographicCamera()
        camera.viewportMapping = coin.SoCamera.LEAVE_ALONE
        camera.height, camera.aspectRatio = 2.0, 1.0
        camera.position.setValue(0, 0, 1)
        camera.nearDistance, camera.farDistance = 0.1, 2.0
        flat = coin.SoLightModel()
        flat.model = coin.SoLightModel.BASE_COLOR
        self.caption, self.legend = coin.SoImage(), coin.SoImage()
        self.said: dict[str, object] = {}
        self.caption_switch, self.legend_switch = coin.SoSwitch(), coin.SoSwitch()
        top.addChild(camera)
        top.addChild(flat)
        for switch, node, place, vertical in (
            (self.caption_switch, self.caption, (-RIM, RIM, 0.0), coin.SoImage.TOP),
            (self.legend_switch, self.legend, (-RIM, -RIM, 0.0), coin.SoImage.BOTTOM),
        ):
            node.horAlignment, node.vertAlignment = coin.SoImage.LEFT, vertical
            spot, corner = coin.SoTranslation(), coin.SoSeparator()
            spot.translation.setValue(*place)
            corner.addChild(spot)
            corner.addChild(node)
            switch.addChild(corner)
            top.addChild(switch)
        self.root.addChild(top)

    def show(self, on: bool) -> None:
        self.root.whichChild = coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE

    def show_caption(self, on: bool) -> None:
        self.caption_switch.whichChild = coin.SO_SWITCH_ALL if on else coin.SO_SWITCH_NONE

    def say(self, lines: Sequence[str]) -> None:
        """Write the caption."""
        ratio = pixel_ratio()
        if self.said.get("caption") != (tuple(lines), ratio):
            self.said["caption"] = (tuple(lines), ratio)
            _put(self.caption, card(lines, (), ratio))

    def explain(self, title: str, swatches: Sequence[tuple[Colour, str, str]]) -> None:
        """Write the legend; none where there is nothing to explain."""
        ratio = pixel_ratio()
        self.legend_switch.whichChild = coin.SO_SWITCH_ALL if swatches else coin.SO_SWITCH_NONE
        said = (title, tuple(swatches), ratio)
        if swatches and self.said.get("legend") != said:
            self.said["legend"] = said
            _put(self.legend, card([title], swatches, ratio))


def image(picture: Picture) -> Any:
    """A picture that stands at a point, facing the eye."""
    node = coin.SoImage()
    node.horAlignment, node.vertAlignment = coin.SoImage.CENTER, coin.SoImage.HALF
    _put(node, picture)
    return node


def _put(node: Any, picture: Picture) -> None:
    node.image.setValue(coin.SbVec2s(picture.width, picture.height), 4, picture.data)


def _loops(loops: Sequence[np.ndarray], colour: Colour, width: float) -> Any:
    flat, paint, style = coin.SoLightModel(), coin.SoBaseColor(), coin.SoDrawStyle()
    flat.model = coin.SoLightModel.BASE_COLOR
    paint.rgb.setValue(*fraction(colour))
    style.lineWidth = width * pixel_ratio()
    coordinates, lines = coin.SoCoordinate3(), coin.SoLineSet()
    points = np.concatenate(loops)
    coordinates.point.setValues(0, len(points), points.tolist())
    counts = [len(loop) for loop in loops]
    lines.numVertices.setValues(0, len(counts), counts)
    drawn = coin.SoSeparator()
    for node in (flat, paint, style, coordinates, lines):
        drawn.addChild(node)
    return drawn
