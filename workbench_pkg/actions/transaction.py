"""One undo step: everything inside is undone together, and nothing of it stays when it fails."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any


@contextmanager
def one_step(doc: Any, name: str) -> Iterator[None]:
    """Open a transaction, commit it at the end, abort it when anything is raised."""
    doc.openTransaction(name)
    try:
        yield
    except BaseException:
        doc.abortTransaction()
        raise
    doc.commitTransaction()
