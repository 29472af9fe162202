"""Things that must agree with each other across files."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from pathlib import Path

import movement_core
from movement_core.piece.tags import PROPERTY_WORDS, WORDS

ROOT = Path(__file__).parents[2]


def test_one_version_everywhere():
    project = re.search(
        r'^version = "(.+)"', (ROOT / "pyproject.toml").read_text(encoding="utf-8"), re.MULTILINE
    )
    package = ET.parse(ROOT / "package.xml").getroot()
    version = package.find("{*}version")
    assert version is not None and project is not None
    assert project.group(1) == version.text == movement_core.__version__


def test_every_word_and_property_of_a_tag_is_explained():
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    tagging = (ROOT / "workbench_pkg/host/tagging.py").read_text(encoding="utf-8")
    for word in WORDS:
        assert f"`{word}`" in readme, word
    for name in PROPERTY_WORDS:
        assert f'"{name}"' in tagging, name


def test_the_addon_points_at_folders_that_exist():
    package = ET.parse(ROOT / "package.xml").getroot()
    workbench = package.find("{*}content/{*}workbench")
    assert workbench is not None
    folder = ROOT / (workbench.findtext("{*}subdirectory") or "")
    assert folder.resolve() == (ROOT / "workbench_pkg/entry").resolve()
    assert (folder / (workbench.findtext("{*}icon") or "none")).is_file()
    assert (ROOT / (package.findtext("{*}icon") or "none")).is_file()
