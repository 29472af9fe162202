"""Twenty-five runs killed at random moments; the whole sweep is ``python -m tests.benchmarks.kill_runs``."""

from __future__ import annotations

from tests.benchmarks.kill_runs import kill_runs


def test_killed_runs_leave_input_and_earlier_output_whole(tmp_path):
    tally = kill_runs(25, tmp_path, seed=7)
    assert tally.problems == []
    assert tally.killed >= 10
