"""Runs what a click means through the host's recorded channel: a macro that is being recorded gets the same lines."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import FreeCADGui as Gui


def run(module: str, name: str, *arguments: str) -> None:
    """Import a function of ``workbench_pkg.actions`` and call it; arguments are Python source.

    What the function raises is raised here. Importing afresh each time costs nothing and lets every recorded
    line stand by itself.
    """
    Gui.doCommand(f"from workbench_pkg.actions.{module} import {name}")
    Gui.doCommand(f"{name}({', '.join(arguments)})")


def note(module: str, name: str, *arguments: str) -> None:
    """Put the same lines into a macro that is being recorded, and carry nothing out: the work is done in a thread.

    A host that cannot record without carrying out (before 1.1) gets them as comments.
    """
    lines = (f"from workbench_pkg.actions.{module} import {name}", f"{name}({', '.join(arguments)})")
    skip = getattr(Gui, "doCommandSkip", None)
    for line in lines:
        if skip is not None:
            skip(line)
        else:
            Gui.doCommand(f"# {line}")


def document(doc: Any) -> str:
    """Source that names a document."""
    return f"FreeCAD.getDocument({doc.Name!r})"


def objects(targets: Iterable[tuple[Any, int | None]]) -> str:
    """Source that lists document objects, and elements of link arrays as pairs of object and number."""
    listed = []
    for obj, element in targets:
        source = f"{document(obj.Document)}.getObject({obj.Name!r})"
        listed.append(source if element is None else f"({source}, {element})")
    return f"[{', '.join(listed)}]"


def parts_with_facts(parts: Iterable[tuple[Any, int | None, dict[str, object]]]) -> str:
    """Source that lists parts as (object, number of an element or None, facts)."""
    listed = [
        f"({document(obj.Document)}.getObject({obj.Name!r}), {element!r}, {values!r})"
        for obj, element, values in parts
    ]
    return f"[{', '.join(listed)}]"


def facts(values: dict[str, object]) -> list[str]:
    """Source of keyword arguments."""
    return [f"{word}={value!r}" for word, value in values.items()]
