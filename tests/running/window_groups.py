"""Runs the window suite in several hosts, one after another: python3 window_groups.py COMMAND ARGUMENT...

COMMAND starts the host, which runs pytest as HEARTSIDE_WINDOW says (see tests/gui/window_session.py). Each group of
test files gets a host of its own, so that a host that dies takes only its group with it. Such a group is run once
more, and that is told in the report: a host that dies twice on the same group has failed. The groups' reports are
put together into the one that was asked for. Standard library only: it runs on the Python of any host.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from collections.abc import Sequence
from pathlib import Path

GROUPS = 6
VARIABLE = "HEARTSIDE_WINDOW"
FOLDER = "tests/gui"
REPORT = "--junitxml="
NO_TESTS = 5  # pytest's code where a filter leaves a group none


def groups(arguments: Sequence[str]) -> list[list[str]]:
    """Pytest's arguments for each host: the folder shared out by files; what names files itself stays together."""
    if FOLDER not in arguments:
        return [list(arguments)]
    files = sorted(str(path) for path in Path(FOLDER).glob("test_*.py"))
    others = [word for word in arguments if word != FOLDER]
    size = -(-len(files) // GROUPS)
    return [[*others, *files[at : at + size]] for at in range(0, len(files), size)]


def run_group(command: Sequence[str], task: dict[str, object], arguments: list[str], report: Path) -> int:
    """Exit code of one host; it leaves the report unless it dies."""
    report.unlink(missing_ok=True)
    words = [word for word in arguments if not word.startswith(REPORT)] + [f"{REPORT}{report}"]
    environment = {**os.environ, VARIABLE: json.dumps({**task, "arguments": words})}
    return subprocess.call(list(command), env=environment)


def merged(reports: Sequence[Path], remarks: Sequence[str]) -> ElementTree.ElementTree:
    """One report of all groups; what is to be told of the run stands in it as properties."""
    root = ElementTree.Element("testsuites")
    for report in reports:
        root.extend(ElementTree.parse(report).getroot().iter("testsuite"))
    if remarks:
        told = ElementTree.SubElement(root, "testsuite", name="hosts", tests="0")
        properties = ElementTree.SubElement(told, "properties")
        for remark in remarks:
            ElementTree.SubElement(properties, "property", name="remark", value=remark)
    return ElementTree.ElementTree(root)


def main(command: Sequence[str]) -> int:
    """Exit code of the suite: of the first group that failed, else 0; no report where a host died twice."""
    task = json.loads(os.environ[VARIABLE])
    arguments = list(task["arguments"])
    target = Path(next(word for word in arguments if word.startswith(REPORT)).removeprefix(REPORT))
    codes: list[int] = []
    reports, remarks = [], []
    for number, words in enumerate(groups(arguments), 1):
        report = target.with_name(f"report-{number}.xml")
        one = run_group(command, task, words, report)
        if not report.exists():
            remarks.append(f"a host died (code {one}) in group {number} and was started anew")
            print(f"\n{remarks[-1]}: {' '.join(words)}", flush=True)
            one = run_group(command, task, words, report)
        if not report.exists():
            print(f"\nthe host died again in group {number}: no report", flush=True)
            return one or 1
        reports.append(report)
        codes.append(one)
    merged(reports, remarks).write(target, encoding="utf-8", xml_declaration=True)
    return next((code for code in codes if code not in (0, NO_TESTS)), min(codes))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
