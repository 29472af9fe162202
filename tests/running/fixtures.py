"""What the tests inside the host share, windowed or not. Import only where FreeCAD can be imported."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import FreeCAD
import numpy
import pytest

from tests.running.places import output_folder


def version() -> tuple[int, ...]:
    """The host's version, as (0, 20, 2)."""
    return tuple(int(part) for part in FreeCAD.Version()[:3])


@pytest.fixture(scope="session")
def host_version() -> tuple[int, ...]:
    """The host's version, as (0, 20, 2)."""
    return version()


@pytest.fixture(scope="session", autouse=True)
def note_where(record_testsuite_property: Callable[[str, object], None]) -> None:
    """Writes into the report which host really ran the suite."""
    host = ".".join(str(part) for part in version())
    python = ".".join(str(part) for part in sys.version_info[:3])
    record_testsuite_property("where", f"FreeCAD {host}, Python {python}, numpy {numpy.__version__}")


@pytest.fixture
def doc() -> Iterator[FreeCAD.Document]:
    """A new document with undo switched on; it and any other that the test opened are closed afterwards."""
    document = FreeCAD.newDocument("Trial")
    document.UndoMode = 1
    yield document
    close_documents()


@pytest.fixture(autouse=True)
def documents_closed() -> Iterator[None]:
    """No test leaves a document to the next one."""
    yield
    close_documents()


def close_documents() -> None:
    """Close every document without asking."""
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)


def output() -> Path:
    """Folder where a test may leave pictures and logs for whoever looks at the run afterwards."""
    named = os.environ.get("HEARTSIDE_TEST_OUTPUT")
    folder = Path(named) if named else output_folder()
    folder.mkdir(parents=True, exist_ok=True)
    return folder
