"""Faces for the PDF: what the plotting library brings, then whatever the computer has for letters that it lacks.

The plotting library is imported inside functions only: the core works without it.
"""

from __future__ import annotations

import logging
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from movement_core.errors import HeartsideError
from movement_core.sheet.pages.script import visual
from movement_core.wording import say

FACE = "DejaVu Sans"  # comes with the plotting library
LEFT_TO_RIGHT = "\u200e"  # a mark without width
LACKING = "□"  # stands for a letter that no face here has
POINT_MM = 25.4 / 72
_UNITS = 100.0  # points at which words are measured: they grow in proportion


class Fonts:
    """Measures words, and says in which faces they are to be drawn.

    Raises
    ------
    HeartsideError : the plotting library is not installed.
    """

    def __init__(self) -> None:
        try:
            from matplotlib import font_manager, ft2font
        except ImportError:
            raise HeartsideError(
                say("a PDF needs the plotting library matplotlib, which is not installed here"),
                where=say("sheet"),
                todo=say("install matplotlib, or write the sheet as .html"),
            ) from None
        self._manager, self._ft = font_manager, ft2font
        self._faces: dict[tuple[str, bool], Any] = {}
        self.families: list[str] = [FACE]
        self.lacking: set[str] = set()
        self._known: dict[str, bool] = {}
        self._properties: dict[tuple[float, bool, int], Any] = {}
        self._letters: dict[tuple[str, bool], float] = {}
        self._widths: dict[tuple[str, bool], float] = {}

    def width_mm(self, text: str, size_mm: float, bold: bool = False) -> float:
        """Width of words on one line, mm, by the faces' own tables."""
        key = (text, bold)
        if key not in self._widths:
            self._widths[key] = sum(self._advance(c, bold) for c in text)
        return self._widths[key] * size_mm

    def properties(self, points: float, bold: bool) -> Any:
        """The faces at a size, as the library takes them; made once for each."""
        key = (points, bold, len(self.families))
        if key not in self._properties:
            weight = "bold" if bold else "normal"
            self._properties[key] = self._manager.FontProperties(
                family=list(self.families), weight=weight, size=points
            )
        return self._properties[key]

    @property
    def shapes(self) -> bool:
        """Whether the library itself turns and joins the letters of scripts that need it."""
        return hasattr(self._ft, "__libraqm_version__")

    def ready(self, text: str) -> str:
        """Words as they are handed to the library: what it cannot draw replaced, in the order in which it draws."""
        drawn = self.drawable(text)
        if not self.shapes:
            return self.drawable(visual(drawn))
        # The library would take the direction of the first letter for that of the whole line.
        return drawn if visual(drawn) == drawn else LEFT_TO_RIGHT + drawn

    def drawable(self, text: str) -> str:
        """The words with a sign in place of each letter that no face here has."""
        return "".join(c if self._has(c) else LACKING for c in text)

    def _advance(self, c: str, bold: bool) -> float:
        key = (c, bold)
        if key not in self._letters:
            self._letters[key] = self._measured(c, bold)
        return self._letters[key]

    def _measured(self, c: str, bold: bool) -> float:
        """Width of one letter, in sizes of the font."""
        for family in self.families:
            face = self._face(family, bold)
            if face is not None and ord(c) in face[1]:
                face[0].set_size(_UNITS, 72)
                glyph = face[0].load_char(ord(c), flags=_no_hinting(self._ft))
                return float(glyph.linearHoriAdvance) / 65536 / _UNITS
        return 1.0

    def _has(self, c: str) -> bool:
        if c not in self._known:
            self._known[c] = self._find(c)
            if not self._known[c]:
                self.lacking.add(c)
        return self._known[c]

    def _find(self, c: str) -> bool:
        """Whether a face has the letter; a face of the computer's that does is taken up."""
        for family in self.families:
            face = self._face(family, False)
            if face is not None and ord(c) in face[1]:
                return True
        for entry in _by_name(self._manager):
            if entry.name in self.families or _is_symbol_face(entry.name):
                continue
            face = self._face(entry.name, False)
            if face is not None and ord(c) in face[1]:
                self.families.append(entry.name)
                return True
        return False

    def _face(self, family: str, bold: bool) -> Any:
        """(face, its letters) of a family, or None where its file cannot be read."""
        key = (family, bold)
        if key not in self._faces:
            how = self._manager.FontProperties(family=[family], weight="bold" if bold else "normal")
            try:
                path = self._manager.findfont(how, fallback_to_default=False)
                face = self._ft.FT2Font(path)
                self._faces[key] = (face, frozenset(face.get_charmap()))
            except (ValueError, RuntimeError, OSError):
                self._faces[key] = None
        return self._faces[key]


@contextmanager
def quiet() -> Iterator[None]:
    """The library says nothing of faces that lack a weight: the nearest it has will do."""
    log = logging.getLogger("matplotlib.font_manager")
    before = log.level
    log.setLevel(logging.ERROR)
    try:
        yield
    finally:
        log.setLevel(before)


def _no_hinting(ft: Any) -> Any:
    """Letters measured as they are designed, under the older and the newer name of that wish."""
    flags = getattr(ft, "LoadFlags", None)
    return flags.NO_HINTING if flags is not None else ft.LOAD_NO_HINTING


def _by_name(manager: Any) -> list[Any]:
    """Faces of the computer, each family once, in the order of their names: the same sheet on every run."""
    families = {entry.name: entry for entry in manager.fontManager.ttflist}
    return [families[name] for name in sorted(families)]


def _is_symbol_face(name: str) -> bool:
    """Faces whose letters are not what their places say, or are boxes, or that have none beyond the usual face's."""
    return name.startswith(("cm", "STIX", "Last Resort", "DejaVu"))
