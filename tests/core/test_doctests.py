"""Examples in docstrings run as written."""

from __future__ import annotations

import doctest
import importlib
import pkgutil

import pytest

import movement_core

MODULES = [info.name for info in pkgutil.walk_packages(movement_core.__path__, "movement_core.")]


@pytest.mark.parametrize("name", MODULES)
def test_examples(name):
    result = doctest.testmod(importlib.import_module(name))
    assert result.failed == 0


def test_there_are_examples():
    finder = doctest.DocTestFinder()
    found = sum(len(t.examples) for name in MODULES for t in finder.find(importlib.import_module(name)))
    assert found >= 6
