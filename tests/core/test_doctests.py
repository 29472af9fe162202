"""Examples in docstrings run as written; all public names, and np and datetime, are known in them."""

from __future__ import annotations

import datetime
import doctest
import importlib
import pkgutil

import numpy as np
import pytest

import movement_core

KNOWN = {name: getattr(movement_core, name) for name in movement_core.__all__}
KNOWN |= {"np": np, "datetime": datetime}
MODULES = [info.name for info in pkgutil.walk_packages(movement_core.__path__, "movement_core.")]


@pytest.mark.parametrize("name", MODULES)
def test_examples(name):
    result = doctest.testmod(importlib.import_module(name), extraglobs=KNOWN)
    assert result.failed == 0


def test_there_are_examples():
    finder = doctest.DocTestFinder()
    found = sum(len(t.examples) for name in MODULES for t in finder.find(importlib.import_module(name)))
    assert found >= 6
