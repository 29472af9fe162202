"""Sixty odd documents in one host that stays; five hundred by ``python -m tests.benchmarks.odd_in_host``."""

from __future__ import annotations

from tests.benchmarks.odd_in_host import run


def test_odd_documents_are_answered_or_refused_in_words(tmp_path):
    problems, figures = run(range(60), tmp_path)
    assert problems == []
    assert figures["answered"] > 20 and figures["not made"] < 6
