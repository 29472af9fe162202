"""The published schemas of what is written as JSON: JSON Schema, draft 2020-12, one file a form."""

from __future__ import annotations

import json
from importlib import resources
from typing import Any

from movement_core.errors import UnknownName
from movement_core.wording import say

_PREFIX = "urn:heartside:schema:"
_NAMES = (
    "heartside-arrange-1",
    "heartside-check-1",
    "heartside-check-line-1",
    "heartside-compare-1",
    "heartside-diagnose-1",
    "heartside-hold-1",
    "heartside-measured-1",
    "heartside-sheet-1",
    "heartside-stock-1",
    "heartside-template-1",
)


def schema_names() -> tuple[str, ...]:
    """Names of all published schemas: what stands under ``schema`` in what is written. The number is the version.

    >>> schema_names()[0]
    'heartside-arrange-1'
    """
    return _NAMES


def schema(name: str) -> dict[str, Any]:
    """A schema that stands by itself: those that it refers to lie within it, under ``$defs``.

    Parameters
    ----------
    name : one of ``schema_names()``.

    Raises
    ------
    UnknownName : no such schema.

    >>> schema("heartside-stock-1")["title"]
    'Stock on the rack'
    """
    found = _read(name)
    within: dict[str, Any] = {}
    waiting = _referred(found)
    while waiting:
        other = waiting.pop()
        if other not in within and other != name:
            within[other] = _read(other)
            waiting |= _referred(within[other])
    return {**found, "$defs": {**found.get("$defs", {}), **within}} if within else found


def _read(name: str) -> dict[str, Any]:
    if name not in _NAMES:
        raise UnknownName(
            say("no schema is called {name!r}", name=name), where=say("schema"), allowed=", ".join(_NAMES)
        )
    file = resources.files("movement_core").joinpath("data", "schema", f"{name}.json")
    return dict(json.loads(file.read_text(encoding="utf-8")))


def _referred(node: Any) -> set[str]:
    """Names of the schemas that one refers to."""
    if isinstance(node, list):
        return set().union(*(_referred(one) for one in node))
    if not isinstance(node, dict):
        return set()
    target = node.get("$ref", "")
    own = {target.removeprefix(_PREFIX).partition("#")[0]} if target.startswith(_PREFIX) else set()
    return own.union(*(_referred(one) for one in node.values()))
