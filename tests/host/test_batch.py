"""An archive checked as a user would: folders, cache, baseline, settings, and hosts that die or hang."""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import signal
import subprocess
import sys
import time

import pytest

from movement_core.sheet.identity import finding_id
from tests.host.test_command_line import GOOD, ROOT, save

DAY = ("--date", "2026-03-15", "--year", "museum")
UNTOLD = "Rail"


@pytest.fixture(scope="module")
def cache(tmp_path_factory):
    return tmp_path_factory.mktemp("cache")


@pytest.fixture(scope="module")
def shop(tmp_path_factory):
    """Three models that hold, one of them BREP in a folder below, and one with something left unsaid."""
    import FreeCAD as App
    import Part

    folder = tmp_path_factory.mktemp("shop")
    save(folder, "a.FCStd", GOOD)
    save(folder, "b.FCStd", GOOD, UNTOLD)
    (folder / "deep").mkdir()
    Part.makeBox(900, 120, 20).exportBrep(str(folder / "deep" / "c.brep"))
    box = Part.makeBox(900, 120, 20)
    box.Placement.Base = App.Vector(0, 0, 50)
    box.exportStep(str(folder / "deep" / "d.step"))
    return folder


@pytest.fixture(scope="module")
def program(tmp_path_factory):
    """A copy of the program: the cache knows it to the last byte, and somebody may be working on it just now."""
    copy = tmp_path_factory.mktemp("program")
    (copy / "pyproject.toml").touch()
    for package in ("movement_core", "workbench_pkg"):
        shutil.copytree(ROOT / package, copy / package, ignore=shutil.ignore_patterns("__pycache__"))
    return copy


@pytest.fixture
def check(shop, cache, program):
    def run(*arguments, root=program):
        if "--jobs" not in arguments:
            arguments = ("--jobs", 1, *arguments)
        return subprocess.run(
            [sys.executable, "-m", "workbench_pkg", "check", *map(str, arguments)],
            cwd=shop, capture_output=True, encoding="utf-8", timeout=120, stdin=subprocess.DEVNULL,
            env={**os.environ, "PYTHONPATH": str(root), "XDG_CACHE_HOME": str(cache)},
        )  # fmt: skip

    return run


def hashes(folder):
    return {
        path.relative_to(folder): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


def test_a_folder_by_two_hosts_found_again_and_never_written_to(shop, check):
    before = hashes(shop)
    began = time.monotonic()
    run = check(".", *DAY, "--jobs", 2, "--format", "json")
    first_s = time.monotonic() - began
    assert run.returncode == 1, run.stdout + run.stderr
    report = json.loads(run.stdout)
    assert [one["path"] for one in report["files"]] == [
        "a.FCStd",
        "b.FCStd",
        "deep/c.brep",
        "deep/d.step",
    ]
    assert all(one["parts"] and not one["errors"] for one in report["files"]) and run.stderr == ""
    again = check(".", *DAY, "--format", "json")
    assert json.loads(again.stdout) == report and again.returncode == 1, (
        f"took {first_s:.1f} s the first time"
    )
    text = check("**/*", *DAY)
    assert "4 models: 1 holds, 3 with findings, 0 could not be checked, 4 as kept from before." in text.stdout
    assert "as kept" not in check("a.FCStd", "b.FCStd", *DAY, "--no-cache").stdout
    assert hashes(shop) == before


def test_what_a_report_rests_on_makes_it_anew(shop, check, tmp_path):
    def kept(*arguments):
        return "as kept" in check("deep", "a.FCStd", *DAY, *arguments, "--cache", tmp_path).stdout

    assert not kept() and kept()
    assert not kept("--moisture", "9")
    beside = shop / "a.wood.csv"
    beside.write_text("part,finish\nShelf,none\n", encoding="utf-8")
    try:
        run = check("a.FCStd", "nix.step", *DAY, "--cache", tmp_path)
        assert "as kept" not in run.stdout
    finally:
        beside.unlink()
    assert kept()
    for path in tmp_path.glob("??/*.gz"):
        path.write_bytes(path.read_bytes()[:40])
    assert not kept() and kept(), "a damaged cache is as good as none"


def test_a_baseline_accepts_what_is_there(shop, check, tmp_path):
    known = tmp_path / "known.json"
    assert check(".", *DAY, "--write-known", known).returncode == 0
    run = check(".", *DAY, "--known", known)
    assert run.returncode == 0 and "Known findings: 3 accepted, 0 no longer there." in run.stdout
    models = json.loads(known.read_text(encoding="utf-8"))
    name = next(name for name in models["models"] if name.endswith("b.FCStd"))
    del models["models"][name]
    known.write_text(json.dumps(models), encoding="utf-8")
    run = check(".", *DAY, "--known", known, "--format", "json")
    findings = {one["path"]: one["findings"] for one in json.loads(run.stdout)["files"]}
    assert run.returncode == 1 and [f["known"] for f in findings["b.FCStd"]] == [False]
    assert all(f["known"] for path, found in findings.items() for f in found if path != "b.FCStd")
    run = check(".", *DAY, "--write-known", known)
    assert run.returncode == 2 and "--force" in run.stderr and run.stdout == ""


def test_only_what_is_grave_fails(check):
    assert check("b.FCStd", *DAY, "--fail-on", "jams").returncode == 0
    assert check("b.FCStd", *DAY, "--fail-on", "unknown").returncode == 1
    assert check("b.FCStd", "gone.FCStd", *DAY, "--fail-on", "never").returncode == 2


def test_outputs_come_whole_and_replace_nothing_unasked(check, shop, tmp_path):
    for form, name in (
        ("html", "i.html"),
        ("jsonl", "r.jsonl"),
    ):
        run = check(".", *DAY, "--format", form, "--output", tmp_path / name)
        assert run.returncode == 1 and "Written: " in run.stdout and (tmp_path / name).stat().st_size > 200
        assert check(".", *DAY, "--format", form, "--output", tmp_path / name).returncode == 2
    assert sorted(path.name for path in tmp_path.iterdir()) == ["i.html", "r.jsonl"]
    before = hashes(shop)
    for name in ("a.FCStd", "deep/d.step", "new.wood.csv", "heartside.json", "deep", "no/where.html"):
        run = check(".", *DAY, "--output", name, "--force")
        assert run.returncode == 2 and run.stdout == "" and "To do" in run.stderr
    assert hashes(shop) == before


def test_settings_beside_the_models(shop, check):
    own = shop / "deep" / "heartside.json"
    own.write_text('{\n "year": "Oslo",\n "heating": 22\n}', encoding="utf-8")

    def years(*arguments):
        files = json.loads(check(".", "--date", "2026-03-15", "--format", "json", *arguments).stdout)["files"]
        return [one["year"]["name"] for one in files]

    try:
        usual, _, *deep = years()
        assert deep == ["indoors in Oslo"] * 2 and usual != "indoors in Oslo"
        assert years("--year", "museum") == ["museum"] * 4, "what is typed outranks it, with its rooms"
        assert years("--no-settings") == [usual] * 4
        assert years("--settings", own) == ["indoors in Oslo"] * 4
        own.write_text('{\n "limits": {\n  "gap mos": 3\n }\n}', encoding="utf-8")
        run = check(".", "--date", "2026-03-15")
        assert run.returncode == 2 and run.stdout.count("deep/heartside.json, line 3: ") == 2
        assert "2 models" not in run.stdout and "2 could not be checked" in run.stdout
    finally:
        own.unlink()


def test_limits_of_the_maker_s_own_count(tmp_path, check):
    import FreeCAD as App

    path = save(tmp_path, "wide.FCStd", "Board wood{white oak; show y; cut flat; heart show; built 9}")
    doc = App.openDocument(str(path), True)
    doc.Objects[0].Width, doc.Objects[0].Height = 20, 190
    doc.recompute()
    doc.save()
    App.closeDocument(doc.Name)
    path.with_name("wide.FCStd1").unlink(missing_ok=True)
    said = ("--date", "2026-03-15", "--format", "json")

    def found():
        return {one["check"] for one in json.loads(check(path, *said).stdout)["files"][0]["findings"]}

    usual = found()
    (tmp_path / "heartside.json").write_text(
        '{"limits": {"free width": 100, "free cup": 0.2}}', encoding="utf-8"
    )
    assert found() - usual == {"wide-free-board"}


CRASHING = """

import ctypes

_whole = check_file


def check_file(path, settings, shown=""):
    if path.name.startswith("crash"):
        ctypes.string_at(0)
    if path.name.startswith("hang"):
        ctypes.PyDLL(None).sleep(60)  # keeps the interpreter to itself, as the host's own code does
    return _whole(path, settings, shown=shown)
"""


@pytest.fixture
def sick(program, tmp_path):
    """A copy of the program that crashes and hangs at models of such names, while it opens them."""
    copy = tmp_path / "sick"
    shutil.copytree(program, copy)
    with (copy / "workbench_pkg" / "actions" / "check.py").open("a", encoding="utf-8") as file:
        file.write(CRASHING)
    return copy


def test_a_crash_and_a_hang_cost_their_own_models_only(shop, check, tmp_path, sick):
    models = tmp_path / "models"
    models.mkdir()
    for name in ("a.FCStd", "crash.FCStd", "hang.FCStd", "z.FCStd"):
        (models / name).write_bytes((shop / "a.FCStd").read_bytes())
    say = (models, *DAY, "--jobs", 2, "--time-limit", 10, "--cache", tmp_path / "c")
    run = check(*say, root=sick)
    assert run.returncode == 2 and "Traceback" not in run.stdout + run.stderr
    assert "2 hold, 0 with findings, 2 could not be checked" in run.stdout, run.stdout
    lines = run.stdout.splitlines()
    assert any("crash.FCStd: the CAD host stopped without an answer (" in line for line in lines)
    assert any("hang.FCStd: it took longer than 10 s and was stopped" in line for line in lines)
    run = check(*say, "--resume", root=sick)
    assert run.stdout.count("not tried again") == 2 and "2 as kept from before" in run.stdout
    run = check(
        models / "hang.FCStd", *DAY, "--time-limit", 11, "--resume", "--cache", tmp_path / "c", root=sick
    )
    assert "longer than 11 s" in run.stdout, "with more time it is worth another try"


def test_stopped_and_gone_on_with(shop, check, program, tmp_path):
    """Asked to end in the middle: said in a word, nothing half written, no host left; then it goes on from there."""
    for number in range(12):
        (tmp_path / f"m{number:02}.FCStd").write_bytes((shop / "b.FCStd").read_bytes())
    kept = tmp_path / "kept"
    process = subprocess.Popen(
        [sys.executable, "-m", "workbench_pkg", "check", str(tmp_path), *DAY, "--jobs", "1", "--cache", str(kept),
         "--format", "jsonl", "--output", str(tmp_path / "r.jsonl")],
        stdout=subprocess.PIPE, stderr=subprocess.PIPE, encoding="utf-8", cwd=shop,
        env={**os.environ, "PYTHONPATH": str(program)},
    )  # fmt: skip
    try:
        until = time.monotonic() + 60
        while len(list(kept.glob("??/*.gz"))) < 2:
            assert time.monotonic() < until and process.poll() is None, "it never began"
            time.sleep(0.02)
        with open(f"/proc/{process.pid}/task/{process.pid}/children", encoding="ascii") as file:
            hosts = file.read().split()
        process.send_signal(signal.SIGTERM)
        _, told = process.communicate(timeout=60)
    finally:
        process.kill()
    assert process.returncode == 130 and told == "heartside: stopped\n"
    assert not (tmp_path / "r.jsonl").exists() and not list(tmp_path.glob(".heartside-*"))
    assert not [pid for pid in hosts if os.path.exists(f"/proc/{pid}")]
    done = len(list(kept.glob("??/*.gz")))
    run = check(tmp_path, *DAY, "--cache", kept)
    assert (
        f"12 models: 0 hold, 12 with findings, 0 could not be checked, {done} as kept from before"
        in run.stdout
    )


def test_two_reports_are_compared(shop, check, tmp_path):
    old, new = tmp_path / "old.json", tmp_path / "new.json"
    model = tmp_path / "m.FCStd"
    model.write_bytes((shop / "a.FCStd").read_bytes())
    check(model, *DAY, "--format", "json", "--output", old)
    model.write_bytes((shop / "b.FCStd").read_bytes())
    check(model, *DAY, "--format", "json", "--output", new)
    run = subprocess.run(
        [sys.executable, "-m", "workbench_pkg", "compare", old, new],
        capture_output=True, encoding="utf-8", cwd=ROOT, env={**os.environ, "FREECADCMD": "/no/such/host"},
    )  # fmt: skip
    assert run.returncode == 1 and "1 new, 0 gone" in run.stdout and "Rail" in run.stdout, (
        run.stdout + run.stderr
    )


def test_identities_are_the_same_where_names_and_boards_move(tmp_path, check):
    import FreeCAD as App

    path = save(tmp_path, "m.FCStd", "Silent", "Rail wood{white oak; pith 0 0; built 9}")

    def ids():
        report = json.loads(check(path, *DAY, "--format", "json", "--no-cache").stdout)
        return sorted(one["id"] for one in report["files"][0]["findings"])

    before = ids()
    assert len(before) == len(set(before)) == 2
    doc = App.openDocument(str(path), True)
    doc.Objects[0].Label, doc.Objects[1].Placement.Base.z = "Another name", 500
    doc.Objects[0].Length = 700
    doc.recompute()
    doc.save()
    App.closeDocument(doc.Name)
    assert ids() == before


def test_identities_are_the_same_on_every_host(tmp_path, check):
    """A STEP file's parts are numbered by the host as it likes: they are known by their names in the file."""
    from workbench_pkg.demo.bench import write_bench

    report = json.loads(check(write_bench(tmp_path, False), *DAY, "--format", "json", "--no-cache").stdout)
    (finding,) = report["files"][0]["findings"]
    assert finding["id"] == finding_id("missing-facts", ["Stretcher"]) == "missing-facts-80580014ba"


def test_a_report_rests_on_linked_files_and_the_program_too(tmp_path, monkeypatch):
    import FreeCAD as App

    from movement_core.piece.limits import own_limits
    from workbench_pkg.batch.inside import cache as kept
    from workbench_pkg.batch.inside.asked import Asked

    part = save(tmp_path, "part.FCStd", GOOD)
    far, doc = App.openDocument(str(part), True), App.newDocument("whole", hidden=True)
    doc.saveAs(str(tmp_path / "whole.FCStd"))
    doc.addObject("App::Link", "Link").LinkedObject = far.Objects[0]
    doc.recompute()
    doc.save()
    for name in ("whole", far.Name):
        App.closeDocument(name)
    asked = Asked({"year": "museum"}, own_limits({}), None)

    def key(asked=asked, day="2026-01-01", model="whole.FCStd"):
        return kept.content_key(tmp_path / model, asked, day)

    first = key()
    assert first is not None and first == key()
    others = {
        key(day="2026-01-02"),
        key(Asked({"year": "Oslo"}, own_limits({}), None)),
        key(Asked({"year": "museum"}, own_limits({"gap most": 5}), None)),
        key(model="part.FCStd"),
    }
    part.write_bytes(save(tmp_path, "other.FCStd", GOOD, UNTOLD).read_bytes())
    others.add(key())
    months = tmp_path / "months.csv"
    for humidity in ("40", "41"):
        months.write_text("temperature_c,rh_percent\n" + f"20,{humidity}\n" * 12, encoding="utf-8")
        others.add(key(Asked({"year": str(months)}, own_limits({}), None)))
    monkeypatch.setattr(kept, "_program", lambda: "another")
    others.add(key())
    assert len(others) == 8 and first not in others
    months.unlink()
    assert key(Asked({"year": str(months)}, own_limits({}), None)) is None and key(model="gone.FCStd") is None
