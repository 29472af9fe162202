"""The window's half of a document that was saved without a window.

On every version the window hides each object that the file's GuiDocument.xml does not speak of: all of them in
a document made without a window, and those that a run without a window added to one that was made with it.
This writes the little that is needed: what is visible, colours, a view of it all.
"""

from __future__ import annotations

import re
import zipfile
from collections.abc import Mapping
from pathlib import Path
from typing import Any
from xml.sax.saxutils import quoteattr, unescape

from workbench_pkg.host.leaves import read_leaves

Colour = tuple[float, float, float]

GUI_HALF = "GuiDocument.xml"
_FROM = (3**-0.5, -(3**-0.5), 3**-0.5)  # from the model to the eye: front, right, above
_COUNT = re.compile(r'<ViewProviderData\b[^>]*?\bCount="(\d+)"[^>]*>')
_NAME = re.compile(r'<ViewProvider\b[^>]*?\bname="([^"]*)"')
_QUOTES = {"&quot;": '"', "&apos;": "'"}
_BREAKS = {"\n": "&#10;"}
_TURN = "0.74290609 0.30772209 0.59447283 1.2171158"  # what the host's own isometric view turns its camera by


def add_window_half(saved: Path, doc: Any, colours: Mapping[str, Colour] | None = None) -> bool:
    """Add what the window needs to a file that was saved from this document; False if the file has it already.

    Parameters
    ----------
    saved : the FCStd file; it is written to, so it must be ours.
    colours : by object name, three numbers 0 to 1; other objects keep the host's colour.
    """
    with zipfile.ZipFile(saved, "a", zipfile.ZIP_DEFLATED) as archive:
        if GUI_HALF in archive.namelist():
            return False
        archive.writestr(GUI_HALF, window_half(doc, colours or {}))
    return True


def window_half(doc: Any, colours: Mapping[str, Colour]) -> str:
    """The text of GuiDocument.xml: visibility of every object, colours, an isometric view of the whole."""
    lines = [
        "<?xml version='1.0' encoding='utf-8'?>",
        '<Document SchemaVersion="1">',
        f'<ViewProviderData Count="{len(doc.Objects)}">',
        *(_entry(obj, colours.get(obj.Name)) for obj in doc.Objects),
        "</ViewProviderData>",
        f"<Camera settings={quoteattr(_camera(doc), _BREAKS)}/>",
        "</Document>",
    ]
    return "\n".join(lines) + "\n"


def complete_window_half(text: str, doc: Any, colours: Mapping[str, Colour] | None = None) -> str:
    """A GuiDocument.xml that also speaks of the objects of `doc` which it left out; theirs are added last."""
    start = _COUNT.search(text)
    end = text.rfind("</ViewProviderData>")
    if start is None or end < start.end():
        return text
    named = {unescape(name, _QUOTES) for name in _NAME.findall(text[start.end() : end])}
    added = [_entry(obj, (colours or {}).get(obj.Name)) for obj in doc.Objects if obj.Name not in named]
    count = int(start[1]) + len(added)
    new = "".join(f"{entry}\n" for entry in added)
    return f"{text[: start.start(1)]}{count}{text[start.end(1) : end]}{new}{text[end:]}"


def _entry(obj: Any, colour: Colour | None) -> str:
    shown = "true" if obj.Visibility else "false"
    facts = [f'<Property name="Visibility" type="App::PropertyBool"><Bool value="{shown}"/></Property>']
    if colour is not None:
        value = f'<PropertyColor value="{_packed(colour)}"/>'
        facts.append(f'<Property name="ShapeColor" type="App::PropertyColor">{value}</Property>')
    inside = f'<Properties Count="{len(facts)}" TransientCount="0">{"".join(facts)}</Properties>'
    return f'<ViewProvider name={quoteattr(obj.Name)} expanded="0">{inside}</ViewProvider>'


def _packed(colour: Colour) -> int:
    # No alpha: every version reads that as opaque in this property.
    red, green, blue = (round(255 * channel) for channel in colour)
    return red << 24 | green << 16 | blue << 8


def _camera(doc: Any) -> str:
    box = None
    for leaf in read_leaves(doc).leaves:
        bounds = leaf.global_solid().BoundBox
        if box is None:
            box = bounds
        else:
            box.add(bounds)
    if box is None:
        return ""
    size = max(box.DiagonalLength, 1.0)
    x, y, z = (c + d * size for c, d in zip((box.Center.x, box.Center.y, box.Center.z), _FROM))
    return (
        "OrthographicCamera {\n  viewportMapping ADJUST_CAMERA\n"
        f"  position {x:.9g} {y:.9g} {z:.9g}\n  orientation {_TURN}\n"
        f"  nearDistance 0\n  farDistance {2 * size:.9g}\n  aspectRatio 1\n"
        f"  focalDistance {size:.9g}\n  height {0.85 * size:.9g}\n}}\n"
    )
