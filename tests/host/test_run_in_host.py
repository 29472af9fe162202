"""Work run in a host process of its own: clean stdout, the true exit code, a profile that is not the user's."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from workbench_pkg.setup import ask_host, find_host, run_in_host
from workbench_pkg.setup.hostrun import CRASHED


@pytest.fixture
def script(tmp_path):
    """Writes a script and gives its path."""

    def write(text: str) -> Path:
        path = tmp_path / "some work.py"
        path.write_text(text, encoding="utf-8")
        return path

    return write


def test_the_host_program_is_the_version_of_the_library(host_version):
    facts = ask_host(find_host())
    assert facts.version == ".".join(str(part) for part in host_version)
    assert facts.supported


def test_stdout_holds_what_the_work_printed_and_nothing_else(script):
    work = script(
        "import os, FreeCAD, Part\n"
        "doc = FreeCAD.newDocument(); doc.addObject('Part::Box', 'Box'); doc.recompute()\n"
        "os.write(1, b'chatter of the host')\n"
        "print('the answer ✓')\n"
    )
    run = run_in_host(work, capture=True)
    assert (run.returncode, run.crashed, run.stdout) == (0, False, "the answer ✓\n")
    assert "chatter of the host" in run.chatter


def test_arguments_arrive_as_given(script):
    given = ["two words", "--flag", "Tür ½\"'", "", "-c"]
    run = run_in_host(script("import json, sys; print(json.dumps(sys.argv[1:]))"), given, capture=True)
    assert json.loads(run.stdout) == given


@pytest.mark.parametrize(
    ("text", "code"),
    [("pass", 0), ("raise SystemExit", 0), ("import sys; sys.exit(7)", 7), ("raise SystemExit('no')", 1)],
)
def test_exit_code_is_the_works_own(script, text, code):
    run = run_in_host(script(text), capture=True)
    assert (run.returncode, run.crashed) == (code, False)


def test_exception_gives_code_1_and_its_traceback_on_stderr(script, capfd):
    run = run_in_host(script("def deep():\n    return 1 / 0\ndeep()"), capture=True)
    assert (run.returncode, run.crashed, run.stdout) == (1, False, "")
    assert "in deep" in capfd.readouterr().err


def test_syntax_error_and_missing_script_are_failures(script, tmp_path, capfd):
    assert run_in_host(script("def"), capture=True).returncode == 1
    assert run_in_host(tmp_path / "absent.py", capture=True).returncode == 1
    assert "absent.py" in capfd.readouterr().err


def test_a_crash_is_told_apart_from_an_answer(script):
    run = run_in_host(script("print('half', flush=True)\nimport ctypes; ctypes.string_at(0)"), capture=True)
    assert (run.returncode, run.crashed, run.stdout) == (CRASHED, True, "half\n")


def test_work_that_hangs_is_stopped(script):
    run = run_in_host(script("import time; time.sleep(60)"), capture=True, timeout_s=2)
    assert run.crashed


def test_profile_is_private_and_has_the_add_on(script, tmp_path):
    work = script(
        "import FreeCAD, json, workbench_pkg\n"
        "print(json.dumps([FreeCAD.getUserAppDataDir(), workbench_pkg.__file__]))"
    )
    data, package = json.loads(run_in_host(work, profile=tmp_path / "mine", capture=True).stdout)
    assert Path(data) == tmp_path / "mine"
    assert Path(package) == tmp_path / "mine/Mod/Heartside/workbench_pkg/__init__.py"


def test_a_module_runs_as_main(script):
    run = run_in_host("json.tool", ["--help"], capture=True)
    assert run.returncode == 0
    assert "usage" in run.stdout


def test_names_with_accents_work_without_a_locale(script, tmp_path, monkeypatch):
    for name in ("LC_ALL", "LC_CTYPE", "LANG"):
        monkeypatch.delenv(name, raising=False)
    (tmp_path / "Täfelung.txt").write_text("x", encoding="utf-8")
    work = script("import os, sys; print(os.listdir(sys.argv[1]), flush=True)")
    assert "Täfelung.txt" in run_in_host(work, [str(tmp_path)], capture=True).stdout
