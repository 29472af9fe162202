"""Files beside a model are read whole within bounds, or refused: nothing is waited for, nothing swells."""

from __future__ import annotations

import os
import resource
import socket
import sys
import time
from pathlib import Path

import pytest

from movement_core.errors import FileError
from workbench_pkg.host.plain_reading import LARGEST_BYTES, read_plain

SOON_S = 2.0


@pytest.mark.parametrize(
    "content", [b"", b"a", b"part,width\r\n", b"\xff\xfe\0\0\n", bytes(range(256)) * 300]
)
def test_the_bytes_come_as_they_are(tmp_path, content):
    path = tmp_path / "table.wood.csv"
    path.write_bytes(content)
    assert read_plain(path) == content
    link = tmp_path / "link.csv"
    link.symlink_to(path)
    assert read_plain(link) == content


def test_one_byte_more_than_allowed_is_refused(tmp_path):
    path = tmp_path / "table.csv"
    path.write_bytes(b"x" * 1000)
    assert len(read_plain(path, largest_bytes=1000)) == 1000
    with pytest.raises(FileError, match="far too large") as refused:
        read_plain(path, largest_bytes=999)
    assert refused.value.where == str(path) and refused.value.allowed.startswith("up to ")


def test_the_usual_bound_is_told_in_mib_and_a_hole_of_it_is_not_read(tmp_path):
    path = tmp_path / "hole.csv"
    path.touch()
    os.truncate(path, 1 << 40)  # a terabyte that takes no room
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    with pytest.raises(FileError, match=f"Allowed: up to {LARGEST_BYTES >> 20} MiB"):
        read_plain(path)
    assert resource.getrusage(resource.RUSAGE_SELF).ru_maxrss - before < 10_000  # kB


@pytest.mark.skipif(not os.path.exists("/proc/self/pagemap"), reason="a file of Linux's own")
def test_a_file_that_says_it_is_empty_and_never_ends_is_refused(tmp_path):
    path = tmp_path / "table.csv"
    path.symlink_to("/proc/self/pagemap")
    assert path.stat().st_size == 0
    with pytest.raises(FileError, match="far too large"):
        read_plain(path, largest_bytes=1 << 16)


@pytest.mark.parametrize("kind", ["pipe", "socket", "device", "link to a device"])
def test_what_is_no_ordinary_file_is_refused_at_once(tmp_path, monkeypatch, kind):
    monkeypatch.chdir(tmp_path)  # the name of a socket must be short
    path = Path("odd.csv")
    held = None
    if kind == "pipe":
        os.mkfifo(path)
    elif kind == "socket":
        held = socket.socket(socket.AF_UNIX)
        held.bind(str(path))
    elif kind == "device":
        path = Path("/dev/zero")
    else:
        path.symlink_to("/dev/zero")
    began = time.monotonic()
    with pytest.raises(FileError, match=r"not an ordinary file\..*To do: put a file of that name"):
        read_plain(path)
    assert time.monotonic() - began < SOON_S
    if held is not None:
        held.close()


@pytest.mark.parametrize(
    "kind", ["missing", "folder", "link to itself", "link to nothing", "name of 300 letters"]
)
def test_what_the_system_refuses_is_told_by_the_system(tmp_path, kind):
    path = tmp_path / "table.csv"
    if kind == "folder":
        path.mkdir()
    elif kind == "link to itself":
        path.symlink_to(path)
    elif kind == "link to nothing":
        path.symlink_to(tmp_path / "gone.csv")
    elif kind == "name of 300 letters":
        path = tmp_path / ("x" * 300)
    with pytest.raises(OSError) as refused:
        read_plain(path)
    assert not isinstance(refused.value, FileError) and refused.value.strerror


@pytest.mark.skipif(sys.platform == "win32", reason="needs names that are bytes")
def test_a_name_of_bytes_that_are_no_letters_can_be_told(tmp_path):
    path = tmp_path / os.fsdecode(b"caf\xe9.csv")
    os.mkfifo(path)
    with pytest.raises(FileError) as refused:
        read_plain(path)
    assert str(refused.value).encode("utf-8")
