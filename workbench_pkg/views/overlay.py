"""What is drawn over a model: in every 3D view, through everything in front of it, and in nobody's way."""

from __future__ import annotations

from typing import Any

from pivy import coin

from workbench_pkg.views.zooming import views_of


def through_everything(root: Any) -> None:
    """Let what is added to a node next be seen through the model and not be picked."""
    if hasattr(coin, "SoDepthBuffer"):
        through = coin.SoDepthBuffer()
        through.test = False
        root.addChild(through)
    pick = coin.SoPickStyle()
    pick.style = coin.SoPickStyle.UNPICKABLE
    root.addChild(pick)


def attach_everywhere(document: str, *nodes: Any) -> int:
    """Show nodes in every 3D view of the document, also in those opened since; how many views there are."""
    views = views_of(document)
    for view in views:
        scene = view.getSceneGraph()
        for node in nodes:
            if scene.findChild(node) < 0:
                scene.addChild(node)
    return len(views)
