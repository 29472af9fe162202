"""Hostile and damaged documents: one clear line each, exit code 2, in time; nothing else is touched."""

from __future__ import annotations

import contextlib
import hashlib
import os
import shutil
import subprocess
import sys
import warnings
from pathlib import Path

import FreeCAD as App
import pytest
from bench import box
from hostile import hostile, odd_places, zipped

from workbench_pkg.host.guard import check_file
from workbench_pkg.setup.standing import HostEnded, StandingHost

ROOT = Path(__file__).resolve().parents[2]
LIMIT_S = 20.0
FROZEN = sorted((ROOT / "tests" / "documents").glob("*.FCStd"))


def job(path):
    plain = dict.fromkeys(
        (
            "year",
            "date",
            "moisture",
            "shop",
            "built_on",
            "date_order",
            "temperature_unit",
            "columns",
            "complete_with",
        )
    )
    return {
        "command": "check",
        "file": str(path),
        "shown": str(path),
        "rooms": {},
        "forms": ["text"],
        **plain,
    }


@pytest.fixture(scope="module")
def good(tmp_path_factory):
    doc = App.newDocument("good", hidden=True)
    box(doc, "Shelf wood{white oak; cut flat; heart show; built 9}")
    doc.recompute()
    path = tmp_path_factory.mktemp("good") / "good.FCStd"
    doc.saveAs(str(path))
    App.closeDocument(doc.Name)
    return path.read_bytes()


@pytest.fixture(scope="module")
def cases(good):
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        made = hostile(good)
    return made


def test_each_gets_one_clear_line_from_one_host_that_lives_on(cases, good, tmp_path):
    assert len(cases) >= 60
    paths = []
    for number, (_what, content) in enumerate(cases.items()):
        paths.append(tmp_path / f"case-{number}.FCStd")
        paths[-1].write_bytes(content)
    before = [hashlib.sha256(path.read_bytes()).digest() for path in paths]
    bad = []
    host = StandingHost("workbench_pkg.batch.worker")
    with contextlib.closing(host):
        for what, path in zip(cases, paths):
            try:
                answer = host.ask(job(path), LIMIT_S)
            except HostEnded as error:
                bad.append(f"{what}: the host is gone ({error})")
                break
            errors = [error["message"] for error in answer.get("errors", ())]
            if len(errors) != 1 or "\n" in errors[0] or path.name not in errors[0] or "Error" in errors[0]:
                bad.append(f"{what}: {errors or answer.get('text', '')[:200]}")
        whole = tmp_path / "good.FCStd"
        whole.write_bytes(good)
        if not bad:
            assert not host.ask(job(whole), LIMIT_S).get("errors")
    assert not bad, "\n".join(bad)
    assert [hashlib.sha256(path.read_bytes()).digest() for path in paths] == before
    assert {path.name for path in tmp_path.iterdir()} == {path.name for path in [*paths, whole]}


def test_the_command_line_says_it_and_ends_with_two(cases, good, tmp_path):
    paths = []
    for what in ("cut at 60 %", "entities that multiply", "one folder up", "missing shapes"):
        paths.append(tmp_path / f"{len(paths)}.FCStd")
        paths[-1].write_bytes(cases[what])
    paths += odd_places(tmp_path, good)
    run = subprocess.run(
        [sys.executable, "-m", "workbench_pkg", "check", *map(str, paths)],
        cwd=ROOT, capture_output=True, encoding="utf-8", timeout=120, stdin=subprocess.DEVNULL,
    )  # fmt: skip
    assert run.returncode == 2, run.stderr
    told = run.stdout + run.stderr
    assert "Traceback" not in told and all(str(path) in told for path in paths)


@pytest.mark.parametrize("name", ["store.zip", "pipe", "store.FCStd"])
def test_what_the_host_would_open_along_is_checked_whatever_it_is_called(tmp_path, name):
    xml = f'<?xml version="1.0"?><Document><XLink file="{name}" name="Box"/></Document>'
    path = tmp_path / "main.FCStd"
    path.write_bytes(zipped(("Document.xml", xml)))
    assert check_file(path) == "document"
    os.mkfifo(tmp_path / name) if name == "pipe" else (tmp_path / name).write_bytes(b"no archive")
    with pytest.raises(OSError, match=name):
        check_file(path)


@pytest.mark.parametrize("path", FROZEN, ids=lambda path: path.stem)
def test_documents_of_earlier_releases_pass(path, tmp_path):
    copy = tmp_path / "frozen.FCStd"
    shutil.copyfile(path, copy)
    assert check_file(copy) == "document"
