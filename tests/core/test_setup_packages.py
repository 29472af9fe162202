"""Set-up installs only with leave, only as root, and says what to type otherwise. The package manager is a fake."""

from __future__ import annotations

import os

import pytest

from workbench_pkg.setup import SetupError, ensure_host, ensure_packages, find_host, hostrun, packages

DPKG_QUERY = """#!/bin/sh
for name in $(cat "$STATE/installed"); do echo "$name installed"; done
"""
APT_GET = """#!/bin/sh
echo "$@" >>"$STATE/calls"
[ -e "$STATE/broken" ] && { echo "E: no network"; exit 100; }
case "$*" in
*install*) for last; do case "$last" in -*|install) ;; *) echo "$last" >>"$STATE/installed";; esac; done ;;
esac
"""


@pytest.fixture
def debian(tmp_path, monkeypatch):
    """A system whose package manager only writes down what it was told; python3 is installed."""
    for name, text in (("dpkg-query", DPKG_QUERY), ("apt-get", APT_GET)):
        program = tmp_path / name
        program.write_text(text, encoding="utf-8")
        program.chmod(0o755)
    (tmp_path / "installed").write_text("python3\n", encoding="utf-8")
    (tmp_path / "calls").write_text("", encoding="utf-8")
    monkeypatch.setenv("STATE", str(tmp_path))
    monkeypatch.setenv("PATH", f"{tmp_path}:/usr/bin:/bin")
    monkeypatch.setattr(packages, "is_root", lambda: True)
    return tmp_path


def ask(names: list[str], install: bool) -> None:
    """What the commands of ours do."""
    ensure_packages(names, install=install, why="testing", again="python3 -m tests --install")


def test_nothing_is_done_where_all_is_there(debian):
    ask(["python3"], install=True)
    assert (debian / "calls").read_text(encoding="utf-8") == ""


def test_without_leave_nothing_is_installed_and_the_command_is_said(debian):
    with pytest.raises(SetupError) as caught:
        ask(["python3", "freecad"], install=False)
    assert "python3 -m tests --install" in str(caught.value)
    assert "freecad is needed for testing" in str(caught.value)
    assert (debian / "calls").read_text(encoding="utf-8") == ""


def test_without_root_the_commands_are_printed(debian, monkeypatch):
    monkeypatch.setattr(packages, "is_root", lambda: False)
    with pytest.raises(SetupError) as caught:
        ask(["freecad", "xvfb"], install=True)
    assert "apt-get update && apt-get install -y --no-install-recommends freecad xvfb" in str(caught.value)
    assert (debian / "calls").read_text(encoding="utf-8") == ""


def test_with_leave_only_what_is_missing_is_installed_without_extras(debian):
    ask(["python3", "freecad"], install=True)
    calls = (debian / "calls").read_text(encoding="utf-8").splitlines()
    assert calls[0].endswith("update")
    assert calls[1].endswith("install -y --no-install-recommends freecad")
    assert len(calls) == 2


def test_a_failure_of_the_package_manager_is_told(debian):
    (debian / "broken").touch()
    with pytest.raises(SetupError, match="no network"):
        ask(["freecad"], install=True)


def test_a_system_without_apt_says_what_to_do(tmp_path, monkeypatch):
    monkeypatch.setenv("PATH", str(tmp_path))
    with pytest.raises(SetupError, match="FREECADCMD"):
        ask(["freecad"], install=True)


def test_a_host_that_was_named_but_is_not_there_is_an_error(monkeypatch):
    monkeypatch.setenv("FREECADCMD", "no-such-host")
    with pytest.raises(SetupError, match=r"FREECADCMD: no such program: no-such-host"):
        find_host()


def test_a_bare_system_is_told_how_to_get_the_host(debian, monkeypatch):
    monkeypatch.delenv("FREECADCMD", raising=False)
    monkeypatch.setenv("PATH", str(debian))
    monkeypatch.setattr(hostrun, "PLACES", ())
    with pytest.raises(SetupError, match="heartside demo --install"):
        ensure_host(install=False, again="heartside demo --install")


@pytest.mark.parametrize(
    ("version", "good"), [("0.19.4", False), ("0.20.2", True), ("1.0.0", True), ("1.1.3", True)]
)
def test_which_hosts_are_supported(version, good):
    assert hostrun.HostFacts(version, "3.11.2", "").supported is good


def test_root_is_told_by_the_user_id(monkeypatch):
    monkeypatch.setattr(os, "geteuid", lambda: 1000)
    assert not packages.is_root()
    monkeypatch.setattr(os, "geteuid", lambda: 0)
    assert packages.is_root()
