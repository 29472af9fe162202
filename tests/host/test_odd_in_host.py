"""Sixty odd documents in one host that stays; five hundred by ``python -m tests.benchmarks.odd_in_host``."""

from __future__ import annotations

from tests.benchmarks.odd_in_host import run

# Links in a circle: 0.20 was once seen to give no answer within 30 s; the time limit of the batch ends such a file.
MAY_HANG = {33}


def test_odd_documents_are_answered_or_refused_in_words(tmp_path):
    problems, figures = run([number for number in range(60) if number not in MAY_HANG], tmp_path)
    assert problems == []
    assert figures["answered"] > 20
