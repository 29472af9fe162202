"""What the user reads at the end: a table, the failures' logs, one line that adds up."""

from __future__ import annotations

from tests.running.suites import Outcome

TAIL = 60


def line(outcome: Outcome) -> str:
    """One line when a suite is done."""
    verdict = "FAILED" if outcome.failed else "ok"
    counts = "" if outcome.is_tool else f"{outcome.passed} passed, {outcome.failed} failed; "
    remark = f" ({outcome.remark})" if outcome.remark else ""
    return f"{verdict:6} {outcome.suite} on {outcome.where}: {counts}{outcome.seconds:.0f} s{remark}"


def tail(outcome: Outcome) -> str:
    """The end of a failed suite's log."""
    if not outcome.failed or outcome.log is None or not outcome.log.exists():
        return ""
    lines = outcome.log.read_text(encoding="utf-8", errors="replace").splitlines()
    shown = "\n".join(f"    {each}" for each in lines[-TAIL:])
    return f"{shown}\n    whole log: {outcome.log}" if lines else ""


def table(outcomes: list[Outcome]) -> str:
    """Suite by host: passed, failed, skipped, time."""
    rows = [("suite", "where", "passed", "failed", "skipped", "time", "")]
    for each in outcomes:
        counts: tuple[str, str, str] = (str(each.passed), str(each.failed), str(each.skipped))
        if each.is_tool:
            counts = ("-" if each.failed else "ok", "failed" if each.failed else "-", "-")
        rows.append((each.suite, each.where, *counts, f"{each.seconds:.0f} s", each.remark.split("\n")[0]))
    widths = [max(len(row[column]) for row in rows) for column in range(7)]
    text = []
    for row in rows:
        cells = [row[0].ljust(widths[0]), row[1].ljust(widths[1])]
        cells += [row[column].rjust(widths[column]) for column in range(2, 6)]
        text.append("  ".join([*cells, row[6]]).rstrip())
    return "\n".join(text)


def total(outcomes: list[Outcome]) -> str:
    """The last line. A tool that found fault counts as failed; one that did not is no test that passed."""
    passed = sum(each.passed for each in outcomes if not each.is_tool)
    failed = sum(each.failed for each in outcomes)
    skipped = sum(each.skipped for each in outcomes)
    return f"{passed} passed, {failed} failed, {skipped} skipped"
