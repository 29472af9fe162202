"""Imports run one way: read from the source of both packages, without importing them."""

from __future__ import annotations

import ast
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]

BOTTOM = {"errors", "sources", "tables", "names", "wording"}
CORE_STREET = [
    {"sheet"},
    {"checks"},
    {"piece"},
    {"holding"},
    {"section"},
    {"moisture"},
    {"air", "wood"},
    BOTTOM,
]
"""Rooms of the core from top to bottom: each may import what lies below it, and itself."""

CORE = "movement_core"
EXTENSION = "workbench_pkg"
DOWN_TO_ACTIONS = {"actions", "objects", "host"}
EXTENSION_MAY = {
    "entry": {"commands", "panels", "views"} | DOWN_TO_ACTIONS,
    "commands": {"panels", "views"} | DOWN_TO_ACTIONS,
    "views": {"panels"} | DOWN_TO_ACTIONS,
    "panels": DOWN_TO_ACTIONS,
    "batch": DOWN_TO_ACTIONS | {"setup", "demo", "translations"},
    "demo": DOWN_TO_ACTIONS | {"setup"},
    "actions": {"objects", "host"},
    "objects": {"host"},
    "host": {"setup"},
    "setup": set(),
    "translations": set(),
    "host_tests": DOWN_TO_ACTIONS,
    "__main__": {"setup", "batch"},
}
"""Rooms of the extension, and the rooms of the extension that each may import besides itself."""

BEFORE_SET_UP = {
    "workbench_pkg.__main__",
    "workbench_pkg.setup",
    "workbench_pkg.batch.answering",
    "workbench_pkg.batch.caching",
    "workbench_pkg.batch.cli",
    "workbench_pkg.batch.commands",
    "workbench_pkg.batch.comparing",
    "workbench_pkg.batch.forms",
    "workbench_pkg.batch.html_index",
    "workbench_pkg.batch.known",
    "workbench_pkg.setup.speech",
    "workbench_pkg.batch.output",
    "workbench_pkg.batch.parsing",
    "workbench_pkg.batch.pool",
    "workbench_pkg.batch.progress",
    "workbench_pkg.batch.selecting",
    "workbench_pkg.batch.shared_words",
    "workbench_pkg.batch.tally",
    "workbench_pkg.batch.targets",
    "workbench_pkg.batch.values",
    "workbench_pkg.batch.words",
    "workbench_pkg.demo.faults",
    "workbench_pkg.translations.data_words",
    "workbench_pkg.translations.files",
    "workbench_pkg.translations.literals",
}
"""Modules that run before numpy is known to be there: standard library and one another, nothing else."""

ONLY_INSIDE_FUNCTIONS = {("objects", "views")}
"""Objects attach views only when the window is up."""

INSIDE_HOST = "workbench_pkg.setup.asking"
"""A script that set-up hands to the host."""


@dataclass(frozen=True)
class Import:
    """One import: the module it stands in, the dotted name, the line, and whether it is inside a function."""

    module: str
    name: str
    line: int
    in_function: bool


def imports(path: Path, root: Path) -> Iterator[Import]:
    """Every import in a file, dotted names made absolute."""
    parts = path.relative_to(root).with_suffix("").parts
    package = parts[:-1]
    module = ".".join(package if parts[-1] == "__init__" else parts)

    def walk(node: ast.AST, in_function: bool) -> Iterator[Import]:
        for child in ast.iter_child_nodes(node):
            inside = in_function or isinstance(child, ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda)
            if isinstance(child, ast.Import):
                for alias in child.names:
                    yield Import(module, alias.name, child.lineno, in_function)
            elif isinstance(child, ast.ImportFrom):
                base = child.module or ""
                if child.level:
                    parents = package[: len(package) - child.level + 1]
                    base = ".".join([*parents, base]).rstrip(".")
                for alias in child.names:
                    yield Import(module, f"{base}.{alias.name}", child.lineno, in_function)
            else:
                yield from walk(child, inside)

    yield from walk(ast.parse(path.read_text(encoding="utf-8")), False)


def room_of(dotted: str, root: Path) -> str | None:
    """Room that a dotted name of ours lies in; None for the package itself and the names it gives."""
    top, *rest = dotted.split(".")
    known = rest and ((root / top / rest[0]).is_dir() or (root / top / f"{rest[0]}.py").exists())
    return rest[0] if known else None


def rank(room: str) -> int:
    """Place of a core room on the street, 0 at the top; a room without a place stands above all."""
    return next((place for place, rooms in enumerate(CORE_STREET) if room in rooms), -1)


def lies_in(dotted: str, modules: set[str]) -> bool:
    """Whether a dotted name is one of the modules, or inside one."""
    return any(dotted == module or dotted.startswith(f"{module}.") for module in modules)


def core_fault(own: str | None, each: Import, root: Path) -> str | None:
    """What is wrong with an import in the core, or None."""
    top = each.name.split(".")[0]
    if top == CORE:
        room = room_of(each.name, root)
        if own is None or room == own:  # the package's own front door may look everywhere
            return None
        if room is None:
            return "goes through the front door"
        below = rank(room) > rank(own) or (own in BOTTOM and room in BOTTOM)
        return None if below else f"{own} may not import {room}"
    if top == "matplotlib":
        return None if each.in_function else "imports matplotlib outside a function"
    return None if top == "numpy" or top in sys.stdlib_module_names else f"imports {top}"


def extension_fault(own: str | None, each: Import, root: Path) -> str | None:
    """What is wrong with an import in the extension, or None."""
    top = each.name.split(".")[0]
    if lies_in(each.module, BEFORE_SET_UP) and each.module != INSIDE_HOST:
        allowed = top in sys.stdlib_module_names or lies_in(each.name, BEFORE_SET_UP)
        return None if allowed else f"{each.module} runs before set-up and imports {each.name}"
    if top in EXTENSION_MAY:
        return f"imports {top} bare"
    if top != EXTENSION:
        return None
    room = room_of(each.name, root)
    if room is None or room == own:
        return None
    if own is None:
        return f"the package's front door imports {room}"
    if (own, room) in ONLY_INSIDE_FUNCTIONS:
        return None if each.in_function else f"{own} imports {room} outside a function"
    return None if room in EXTENSION_MAY.get(own, set()) else f"{own} may not import {room}"


def faults(root: Path) -> list[str]:
    """Every import that goes the wrong way, with its file and line."""
    found = []
    for top, judge in ((CORE, core_fault), (EXTENSION, extension_fault)):
        for path in sorted((root / top).rglob("*.py")):
            inner = path.relative_to(root / top)
            first = inner.parts[0].removesuffix(".py")
            own = None if first == "__init__" else first
            for each in imports(path, root):
                fault = judge(own, each, root)
                if fault:
                    found.append(f"{top}/{inner}:{each.line}: {fault} ({each.name})")
    return found


def test_no_import_goes_up():
    assert faults(ROOT) == []


def rooms(package: Path) -> set[str]:
    """Names of the files and subpackages of a package."""
    inside = (path for path in package.iterdir() if path.suffix == ".py" or (path / "__init__.py").exists())
    return {path.name.removesuffix(".py") for path in inside} - {"__init__"}


def test_every_room_has_its_place():
    assert rooms(ROOT / CORE) <= set.union(*CORE_STREET)
    assert rooms(ROOT / EXTENSION) <= set(EXTENSION_MAY)


@pytest.fixture
def house(tmp_path):
    """A small house in order: one file in each room that matters here."""
    rooms = {
        "movement_core/__init__.py": "from movement_core.wood.species import find_species\n",
        "movement_core/errors.py": "import math\n",
        "movement_core/air/year.py": "import numpy as np\n",
        "movement_core/wood/species.py": "from ..errors import InputError\nfrom . import table\n",
        "movement_core/wood/table.py": "",
        "movement_core/sheet/draw.py": "from movement_core.wood import species\ndef f():\n    import matplotlib\n",
        "workbench_pkg/__init__.py": "",
        "workbench_pkg/__main__.py": "import os\nfrom workbench_pkg.batch.cli import run\n",
        "workbench_pkg/batch/cli.py": "from workbench_pkg.setup import run_in_host\n",
        "workbench_pkg/batch/worker.py": "import numpy\nfrom workbench_pkg.actions import tag\n",
        "workbench_pkg/setup/__init__.py": "",
        "workbench_pkg/host/leaves.py": "import FreeCAD\nfrom movement_core import find_species\n",
        "workbench_pkg/objects/proxies.py": "def attach():\n    from workbench_pkg.views import look\n",
        "workbench_pkg/views/look.py": "from workbench_pkg.panels import tag\n",
        "workbench_pkg/panels/tag.py": "from workbench_pkg.actions import tag\n",
        "workbench_pkg/actions/tag.py": "from workbench_pkg.host import leaves\n",
        "workbench_pkg/commands/all.py": "from workbench_pkg import panels\n",
    }  # fmt: skip
    for name, text in rooms.items():
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    return tmp_path


def test_a_house_in_order_has_no_fault(house):
    assert faults(house) == []


@pytest.mark.parametrize(
    ("file", "line", "fault"),
    [
        ("movement_core/wood/species.py", "from movement_core.sheet import draw", "wood may not import sheet"),
        ("movement_core/wood/species.py", "from ..sheet.draw import f", "wood may not import sheet"),
        ("movement_core/wood/species.py", "import movement_core.air.year", "wood may not import air"),
        ("movement_core/errors.py", "def f():\n    from movement_core import wood", "errors may not import wood"),
        ("movement_core/air/year.py", "from movement_core import find_species", "goes through the front door"),
        ("movement_core/air/year.py", "import FreeCAD", "imports FreeCAD"),
        ("movement_core/air/year.py", "import workbench_pkg.host", "imports workbench_pkg"),
        ("movement_core/air/year.py", "import scipy.optimize", "imports scipy"),
        ("movement_core/sheet/draw.py", "from movement_core import attic", "sheet may not import attic"),
        ("movement_core/sheet/draw.py", "import matplotlib", "imports matplotlib outside a function"),
        ("workbench_pkg/host/leaves.py", "from workbench_pkg.commands import all", "host may not import commands"),
        ("workbench_pkg/host/leaves.py", "from workbench_pkg import actions", "host may not import actions"),
        ("workbench_pkg/actions/tag.py", "from workbench_pkg.panels import tag", "actions may not import panels"),
        ("workbench_pkg/objects/proxies.py", "import workbench_pkg.views", "objects imports views outside a function"),
        ("workbench_pkg/panels/tag.py", "from actions import tag", "imports actions bare"),
        ("workbench_pkg/__main__.py", "import numpy", "runs before set-up and imports numpy"),
        ("workbench_pkg/__main__.py", "from workbench_pkg.batch import worker", "runs before set-up"),
        ("workbench_pkg/batch/cli.py", "from workbench_pkg.actions import tag", "runs before set-up"),
        ("workbench_pkg/batch/worker.py", "from workbench_pkg import commands", "batch may not import commands"),
        ("workbench_pkg/setup/__init__.py", "from movement_core import errors", "runs before set-up"),
    ],
)  # fmt: skip
def test_a_planted_fault_is_caught(house, file, line, fault):
    (house / "movement_core/attic").mkdir()
    (house / file).write_text((house / file).read_text(encoding="utf-8") + line + "\n", encoding="utf-8")
    found = faults(house)
    assert len(found) == 1
    assert found[0].startswith(f"{file}:")
    assert fault in found[0]
