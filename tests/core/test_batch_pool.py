"""Many jobs for a few hosts. The host is a fake: Python itself, running a worker that misbehaves as it is told."""

from __future__ import annotations

import os
import sys
import time

import pytest

from workbench_pkg.batch import pool
from workbench_pkg.batch.pool import answers
from workbench_pkg.setup import HostEnded, HostHung, SetupError, StandingHost

WORKER = "tests.core.fake_worker"
pytestmark = pytest.mark.skipif(os.name != "posix", reason="the fake host is a shell script")


@pytest.fixture(autouse=True)
def fake_host(tmp_path, monkeypatch):
    program = tmp_path / "fakecmd"
    program.write_text(f'#!/bin/sh\necho banner of the host\nexec {sys.executable} "$1"\n', encoding="utf-8")
    program.chmod(0o755)
    monkeypatch.setenv("FREECADCMD", str(program))
    monkeypatch.setattr(pool, "WORKER", WORKER)
    return program


@pytest.fixture
def spool(tmp_path):
    folder = tmp_path / "spool"
    folder.mkdir()
    return folder


def jobs(*what):
    return [{"do": one, "shown": f"{i}.FCStd"} for i, one in enumerate(what)]


def names(found):
    return [answer.get("name") or answer["errors"][0]["message"].partition(":")[0] for answer in found]


def alive(process):
    """Whether a process runs (one that ended and was not fetched yet does not)."""
    try:
        with open(f"/proc/{process}/stat", encoding="ascii") as file:
            return file.read().rpartition(")")[2].split()[0] != "Z"
    except OSError:
        return False


def test_answers_come_in_the_order_of_the_jobs_and_hosts_are_used_again(spool):
    found = list(answers(jobs("wait", "", "", "", ""), 2, spool))
    assert names(found) == [f"{i}.FCStd" for i in range(5)]
    assert len({answer["process"] for answer in found}) == 2
    assert list(spool.iterdir()) == []


def test_a_crash_costs_its_own_job(spool):
    noted = []
    found = list(
        answers(jobs("", "crash", "", "leave", ""), 1, spool, failed=lambda *fact: noted.append(fact))
    )
    assert names(found) == [f"{i}.FCStd" for i in range(5)]
    (crash,), (left,) = found[1]["errors"], found[3]["errors"]
    assert "signal 11" in crash["message"] and "code 3" in left["message"] and "To do" in crash["message"]
    assert [key for key, _ in noted] == ["key of 1.FCStd", "key of 3.FCStd"] and "signal 11" in noted[0][1]


def test_what_only_a_used_host_dies_of_is_tried_again_in_a_new_one(spool):
    found = list(answers(jobs("", "crash when used", ""), 1, spool))
    assert names(found) == ["0.FCStd", "1.FCStd", "2.FCStd"] and all("process" in one for one in found)
    assert found[0]["process"] != found[1]["process"] == found[2]["process"]


def test_a_hang_is_stopped_and_said_as_such_while_others_go_on(spool):
    began = time.monotonic()
    noted = []
    found = list(answers(jobs("hang", "", "", ""), 2, spool, 1.0, failed=lambda *fact: noted.append(fact)))
    assert time.monotonic() - began < 20
    (error,) = found[0]["errors"]
    assert (
        error["message"].startswith("0.FCStd: it took longer than 1 s") and "--time-limit" in error["message"]
    )
    assert all("process" in answer for answer in found[1:]) and noted[0][0] == "key of 0.FCStd"


@pytest.mark.parametrize(("what", "hosts"), [("", 3), ("grow", 5)])
def test_hosts_are_started_anew_after_many_jobs_or_much_memory(spool, monkeypatch, what, hosts):
    monkeypatch.setattr(pool, "MOST_JOBS", 2)
    found = list(answers(jobs(*[what] * 5), 1, spool))
    assert len({answer["process"] for answer in found}) == hosts


def test_who_stops_listening_ends_the_hosts(spool):
    coming = answers(jobs("", "hang", "hang"), 2, spool)
    process = next(coming)["process"]
    began = time.monotonic()
    coming.close()
    assert time.monotonic() - began < 10 and not alive(process)


def test_an_exception_while_waiting_ends_the_hosts(spool):
    def tick(done):
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        list(answers(jobs("hang"), 1, spool, tick=tick))


def test_a_host_that_never_comes_up_is_said_so_and_not_tried_for_ever(spool, fake_host):
    fake_host.write_text("#!/bin/sh\nexit 7\n", encoding="utf-8")
    found = []
    with pytest.raises(SetupError, match="does not come up"):
        for answer in answers(jobs(*[""] * 9), 1, spool):
            found.append(answer)
    assert len(found) <= pool.MOST_FAILED_STARTS
    assert all("code 7" in answer["errors"][0]["message"] for answer in found)


def test_a_standing_host_by_itself():
    host = StandingHost(WORKER)
    process = host.ask({"do": "", "shown": "a"})["process"]
    assert alive(process) and host.answered == 1 and host.ready == {"memory_mb": 100.0}
    with pytest.raises(HostHung) as hung:
        host.ask({"do": "hang", "shown": "b"}, 0.3)
    assert hung.value.begun == {"key": "key of b"} and not alive(process)
    host = StandingHost(WORKER)
    with pytest.raises(HostEnded, match="signal 11"):
        host.ask({"do": "crash", "shown": "c"})
    host = StandingHost(WORKER)
    process = host.ask({"do": "", "shown": "d"})["process"]
    host.close()
    assert not alive(process)
