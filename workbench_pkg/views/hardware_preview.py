"""Shows hardware in the 3D view before it is placed, through the wood: nodes of the scene, nothing in the document."""

from __future__ import annotations

from typing import Any

from pivy import coin

from movement_core.piece.hardware_bodies import BOX, CYLINDER, Body, Hardware
from workbench_pkg.panels.palette import fraction
from workbench_pkg.views.overlay import through_everything
from workbench_pkg.views.zooming import views_of

STEEL, WOODEN, AWAY = (92, 102, 116), (214, 166, 92), (46, 134, 171)


class HardwarePreview:
    """Hardware drawn over the model of one document until ``close``."""

    def __init__(self, document: str) -> None:
        self.document = document
        self.root = coin.SoSeparator()
        self.root.setName("HeartsideHardwarePreview")
        self.graph: Any = None

    def show(self, hardware: Hardware | None) -> None:
        """Draw this in place of what was drawn before; None draws nothing."""
        self.root.removeAllChildren()
        if hardware is None:
            return
        self._attach()
        through_everything(self.root)
        for cut in hardware.cuts:
            self.root.addChild(_drawn((cut.body,), AWAY, 0.75))
        for marker in hardware.markers:
            colour = WOODEN if marker.wooden else STEEL
            self.root.addChild(_drawn(marker.bodies, colour, 0.1))

    def close(self) -> None:
        """Take it out of the view."""
        self.root.removeAllChildren()
        if self.graph is not None:
            if self.graph.findChild(self.root) >= 0:
                self.graph.removeChild(self.root)
            self.graph = None

    def _attach(self) -> None:
        if self.graph is not None:
            return
        views = views_of(self.document)
        if views:
            self.graph = views[0].getSceneGraph()
            self.graph.addChild(self.root)


def _drawn(bodies: tuple[Body, ...], colour: tuple[int, int, int], transparency: float) -> Any:
    node = coin.SoSeparator()
    material = coin.SoMaterial()
    material.diffuseColor.setValue(*fraction(colour))
    material.transparency.setValue(transparency)
    node.addChild(material)
    for body in bodies:
        node.addChild(_solid(body))
    return node


def _solid(body: Body) -> Any:
    """A body in its own frame; a slot is a block with two rounds."""
    node, (x, y, z) = coin.SoSeparator(), body.size_mm
    (a, b, c), place = body.axes, body.centre_mm
    frame = coin.SoMatrixTransform()
    frame.matrix.setValue(coin.SbMatrix(*a, 0.0, *b, 0.0, *c, 0.0, *place, 1.0))  # rows: it takes row vectors
    node.addChild(frame)
    if body.shape == BOX:
        node.addChild(_block(x, y, z))
    elif body.shape == CYLINDER:
        node.addChild(_round(0.0, y, z))
    else:
        node.addChild(_block(max(x - y, 1e-3), y, z))
        for side in (-1, 1):
            node.addChild(_round(side * (x - y) / 2, y, z))
    return node


def _block(x: float, y: float, z: float) -> Any:
    block = coin.SoCube()
    block.width, block.height, block.depth = x, y, z
    return block


def _round(at: float, diameter: float, height: float) -> Any:
    """The host's cylinder stands along y; ours along z."""
    node, place = coin.SoSeparator(), coin.SoTransform()
    place.translation.setValue(at, 0.0, 0.0)
    place.rotation.setValue(coin.SbVec3f(1, 0, 0), 1.5707963267948966)
    cylinder = coin.SoCylinder()
    cylinder.radius, cylinder.height = diameter / 2, height
    node.addChild(place)
    node.addChild(cylinder)
    return node
