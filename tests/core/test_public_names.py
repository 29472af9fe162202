"""What every public name of the library says of itself: units, shapes, errors, sources, and an example that runs.

The rules, for each name in ``movement_core.__all__``:

- the first paragraph says what it is, and an example (``>>>``) runs as written;
- every parameter is named in the docstring;
- a number whose name does not end in its unit has a unit, or "share", "slope", "points" or such, beside its name;
- what takes or gives arrays tells their shape;
- what raises errors of ours has ``Raises`` with their names;
- where a figure of the world stands in its code (a number with a point other than a plain one, in its body or in a
  constant of its module that it uses; not the ends of a range that is checked), its docstring, its module's, or a
  comment beside the figure tells where it is from.
"""

from __future__ import annotations

import ast
import dataclasses
import doctest
import inspect
import re
import sys
from pathlib import Path

import pytest

import movement_core
from tests.core.test_doctests import KNOWN

ROOT = Path(__file__).resolve().parents[2]
NAMES = [name for name in movement_core.__all__ if not name.startswith("_")]
UNIT_ENDINGS = re.compile(
    r"_(mm|mm2|mpa|n|deg|degrees|c|days|hours|percent|mc|sd|rh|g_m3|per_c|12|strain|coefficient|shrinkage)$"
)
UNIT_WORDS = re.compile(
    r"\b(mm|MPa|percent|points|degrees?|days|hours|fractions?|strain|shares?|slope|index|indices|scale|number|ratio"
    r"|factor|scales|boards?|coefficient|place|difference|seed|restarts|mass|figure|score)\b|°C|%|[+−]1|÷"
)
SHAPE_WORDS = re.compile(r"\(…|\(N|\(\d|broadcast|scalar|0-d|shape", re.IGNORECASE)
SOURCE_WORDS = re.compile(
    r"\b(read|recalled|from memory|own (judgement|assumption)|common practice|derived|source|sources)\b|Eq\.|THEORY",
    re.IGNORECASE,
)
PLAIN = {0.0, 0.25, 0.5, 1.0, 2.0, 3.0, 4.0, 6.0, 10.0, 12.0, 24.0, 90.0, 100.0, 180.0, 360.0, 365.0, 1000.0}
ERRORS = ("InputError", "UnknownName")


def _tree(thing):
    """The syntax of a function or class, and of its module."""
    module = sys.modules[thing.__module__]
    whole = ast.parse(inspect.getsource(module))
    kinds = ast.FunctionDef | ast.ClassDef
    return next(n for n in whole.body if isinstance(n, kinds) and n.name == thing.__name__), whole, module


def _parameters(thing):
    """Names and annotations of what a caller passes."""
    if dataclasses.is_dataclass(thing):
        return {f.name: str(f.type) for f in dataclasses.fields(thing) if f.init}
    signature = inspect.signature(thing)
    return {name: str(p.annotation) for name, p in signature.parameters.items() if name != "self"}


def _reached(node, whole):
    """The part of the syntax that a call runs: its own or __post_init__, and what it calls in its own module."""
    own = {n.name: n for n in whole.body if isinstance(n, ast.FunctionDef | ast.ClassDef)}
    begun = [node] if isinstance(node, ast.FunctionDef) else [
        n for n in node.body if isinstance(n, ast.FunctionDef) and n.name in ("__init__", "__post_init__")
    ]  # fmt: skip
    reached, waiting = [], list(begun)
    while waiting:
        one = waiting.pop()
        if one in reached:
            continue
        reached.append(one)
        called = {n.id for n in ast.walk(one) if isinstance(n, ast.Name)}
        waiting += [own[name] for name in called if name in own and isinstance(own[name], ast.FunctionDef)]
    return reached


def _errors_raised(reached):
    """Names of our errors that stand in a ``raise``, and whether ranges are checked by ``within``."""
    found = set()
    for part in reached:
        for node in ast.walk(part):
            if isinstance(node, ast.Raise) and isinstance(node.exc, ast.Call):
                name = getattr(node.exc.func, "id", "")
                found |= {name} & set(ERRORS)
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "within":
                found.add("InputError")
    return found


def _odd_lines(parts):
    """Lines of numbers with a point that are not plain; ends of checked ranges and guards against rounding excepted."""
    found, waiting = set(), list(parts)
    while waiting:
        node = waiting.pop()
        checks = isinstance(node, ast.Compare) or (
            isinstance(node, ast.Call)
            and getattr(node.func, "id", "") in ("within", "_within", "checked_size")
        )
        if isinstance(node, ast.Constant) and isinstance(node.value, float):
            if node.value not in PLAIN and not 0 < abs(node.value) < 1e-4:
                found.add(node.lineno)
        elif not checks:
            waiting += ast.iter_child_nodes(node)
    return sorted(found)


def _unsourced(reached, whole, module):
    """Lines with a figure of the world, in the code reached or a constant that it uses, and no source beside it."""
    used = {n.id for part in reached for n in ast.walk(part) if isinstance(n, ast.Name)}
    constants = [
        node
        for node in whole.body
        if isinstance(node, ast.Assign)
        and used & {n.id for target in node.targets for n in ast.walk(target) if isinstance(n, ast.Name)}
    ]
    lines = inspect.getsource(module).splitlines()
    near = {
        line: "\n".join(lines[max(line - 3, 0) : line + 2]) for line in _odd_lines([*reached, *constants])
    }
    return [line for line, text in near.items() if not SOURCE_WORDS.search(text)]


@pytest.mark.parametrize("name", NAMES)
def test_it_says_what_it_is_and_shows_it(name):
    thing = getattr(movement_core, name)
    text = inspect.getdoc(thing) or ""
    first = text.split("\n\n")[0].strip()
    assert len(first) > 20 and (first[0].isupper() or first[0].isdigit()) and first[-1] in ".:", first
    assert not first.startswith(f"{name}("), "the docstring was made by the dataclass"
    examples = doctest.DocTestParser().get_examples(text)
    assert examples, "no example"
    test = doctest.DocTestParser().get_doctest(text, dict(KNOWN), name, None, 0)
    result = doctest.DocTestRunner().run(test)
    assert result.failed == 0 and result.attempted == len(examples)
    assert any(example.want for example in examples), "the example shows no answer"


@pytest.mark.parametrize("name", NAMES)
def test_it_names_every_parameter_and_its_unit(name):
    thing = getattr(movement_core, name)
    text = inspect.getdoc(thing) or ""
    prose = text.split(">>>")[0]
    for parameter, kind in _parameters(thing).items():
        stem = parameter.removeprefix("back_")
        assert re.search(rf"\b({parameter}|{stem})\b", prose), f"{parameter} is not in the docstring"
        if re.search(r"\b(float|ArrayLike|Array)\b", kind) and not UNIT_ENDINGS.search(parameter):
            where = re.search(rf"\b({parameter}|{stem})\b", prose)
            assert UNIT_WORDS.search(prose[where.end() : where.end() + 220]), f"{parameter} has no unit"
        if re.search(r"\b(ArrayLike|Array|Floats)\b", kind):
            assert SHAPE_WORDS.search(prose), f"{parameter}: no shape"


@pytest.mark.parametrize("name", NAMES)
def test_it_names_its_errors(name):
    thing = getattr(movement_core, name)
    text = inspect.getdoc(thing) or ""
    node, whole, _ = _tree(thing)
    raised = _errors_raised(_reached(node, whole))
    told = text.lower().partition("raises")[2]
    missing = sorted(error for error in raised if error.lower() not in told)
    assert not missing, f"raises {', '.join(missing)}"


@pytest.mark.parametrize("name", NAMES)
def test_its_figures_have_a_source(name):
    thing = getattr(movement_core, name)
    node, whole, module = _tree(thing)
    bare = _unsourced(_reached(node, whole), whole, module)
    told = SOURCE_WORDS.search(f"{inspect.getdoc(thing)}\n{inspect.getdoc(module)}")
    assert not bare or told, f"{module.__name__}: figures without a source in lines {bare}"


def test_the_rules_find_what_breaks_them():
    whole = ast.parse(
        "LIMIT = 7.3\n"
        "def inner(x):\n    raise InputError('no')\n"
        "def outer(x):\n    within(x, 'x', 0.0, 1.7, '')\n    return inner(x) * LIMIT + 4.7\n"
    )
    reached = _reached(whole.body[2], whole)
    assert {part.name for part in reached} == {"inner", "outer"}
    assert _errors_raised(reached) == {"InputError"}
    assert _odd_lines(reached) == [6]


@pytest.mark.parametrize(
    "block", re.findall(r"```python\n(.*?)```", (ROOT / "README.md").read_text("utf-8"), re.S)
)
def test_the_library_part_of_the_readme_runs(block, monkeypatch, tmp_path):
    if "movement_core" not in block:
        pytest.skip("not about the library")
    exec(compile(block, "README.md", "exec"), {})
