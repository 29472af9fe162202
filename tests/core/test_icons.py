"""Our drawings and the add-on's description file, read as a stranger's program would read them."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
ENTRY = ROOT / "workbench_pkg" / "entry"
ICONS = sorted([*ENTRY.glob("*.svg"), *(ROOT / "icons").glob("*.svg")])
COMMAND_ICONS = (
    "tag_wood",
    "untag",
    "copy_wood",
    "accept_inferred",
    "hints",
    "joints",
    "lay_boards",
    "gaps_today",
    "set_year",
    "annotate",
    "remove",
    "report",
    "hold_top",
    "cut_slots",
    "take_hardware",
    "see_year",
    "make_sheet",
    "drilling_template",
    "schedule",
    "draw_top",
    "export_cut",
    "remove_papers",
)
TREE_ICONS = ("study", "study_stale")
SVG = "{http://www.w3.org/2000/svg}"
METADATA = "{https://wiki.freecad.org/Package_Metadata}"
PLAIN = {"svg", "title", "path", "rect", "circle"}  # what the host's small SVG reader draws for certain


def test_every_icon_is_there():
    assert {path.stem for path in ENTRY.glob("*.svg")} == {"heartside", *COMMAND_ICONS, *TREE_ICONS}


def test_the_workbench_icon_is_the_same_in_both_places():
    assert (ENTRY / "heartside.svg").read_bytes() == (ROOT / "icons" / "heartside.svg").read_bytes()


@pytest.mark.parametrize("path", ICONS, ids=lambda path: f"{path.parent.name}/{path.stem}")
class TestIcon:
    def test_is_a_square_of_64(self, path):
        drawing = ET.parse(path).getroot()
        assert drawing.tag == f"{SVG}svg"
        assert drawing.get("viewBox") == "0 0 64 64"
        assert (drawing.get("width"), drawing.get("height")) == ("64", "64")

    def test_has_plain_shapes_only(self, path):
        used = {element.tag.removeprefix(SVG) for element in ET.parse(path).getroot().iter()}
        assert used <= PLAIN
        assert used & {"path", "rect", "circle"}

    def test_asks_for_nothing_from_elsewhere(self, path):
        text = path.read_text(encoding="utf-8")
        assert not re.search(r"<!DOCTYPE|<!ENTITY|href|url\(|style=|class=|on\w+=|font", text, re.IGNORECASE)
        addresses = set(re.findall(r"https?://[^\"'\s]+", text))
        assert addresses == {"http://www.w3.org/2000/svg"}

    def test_stays_inside_its_square(self, path):
        # Every absolute coordinate pair of a move, line or arc end, and every box and disc.
        for element in ET.parse(path).getroot().iter():
            kind = element.tag.removeprefix(SVG)
            spread = float(element.get("stroke-width", "0")) / 2
            if kind == "rect":
                x, y, w, h = (float(element.get(k, "nan")) for k in ("x", "y", "width", "height"))
                assert min(x, y) - spread >= 0 and max(x + w, y + h) + spread <= 64
            elif kind == "circle":
                x, y, r = (float(element.get(k, "nan")) for k in ("cx", "cy", "r"))
                assert min(x, y) - r - spread >= 0 and max(x, y) + r + spread <= 64
            elif kind == "path":
                commands = re.findall(r"([MLHVAZ])([^MLHVAZ]*)", element.get("d", ""))
                assert commands, "an empty path"
                for _, numbers in commands:
                    values = [float(v) for v in re.findall(r"-?[\d.]+", numbers)]
                    assert all(0 <= v <= 64 for v in values)

    def test_shows_on_light_and_on_dark(self, path):
        # Some paint must stand off from a light toolbar, some from a dark one (W3C contrast ratio of 3 to 1).
        colours = set(re.findall(r"#[0-9a-f]{6}", path.read_text(encoding="utf-8")))
        light, dark = _luminance("#f4f4f4"), _luminance("#2b2b2b")
        assert any(_contrast(_luminance(c), light) > 3 for c in colours)
        assert any(_contrast(_luminance(c), dark) > 3 for c in colours)


def _luminance(colour: str) -> float:
    """Relative luminance of sRGB, as the W3C's accessibility guidelines define it."""
    channels = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def _contrast(a: float, b: float) -> float:
    return (max(a, b) + 0.05) / (min(a, b) + 0.05)


class TestDescription:
    def test_names_files_that_exist(self):
        package = ET.parse(ROOT / "package.xml").getroot()
        assert (ROOT / package.findtext(f"{METADATA}icon")).is_file()
        assert (ROOT / package.find(f"{METADATA}license").get("file")).is_file()
        bench = package.find(f".//{METADATA}workbench")
        folder = ROOT / bench.findtext(f"{METADATA}subdirectory")
        assert folder.resolve() == ENTRY
        # A path that does not exist makes one host version stop at start with a message box.
        assert (folder / bench.findtext(f"{METADATA}icon")).is_file()

    def test_agrees_with_the_distribution(self):
        package = ET.parse(ROOT / "package.xml").getroot()
        project = (ROOT / "pyproject.toml").read_text(encoding="utf-8")
        version = re.search(r'^version = "([^"]+)"', project, re.MULTILINE)
        python = re.search(r'^requires-python = ">=([^"]+)"', project, re.MULTILINE)
        assert version and package.findtext(f"{METADATA}version") == version.group(1)
        assert python and package.findtext(f".//{METADATA}pythonmin") == python.group(1)
        assert package.findtext(f"{METADATA}license") in project

    def test_class_name(self):
        package = ET.parse(ROOT / "package.xml").getroot()
        assert package.findtext(f".//{METADATA}classname") == "HeartsideWorkbench"
