"""Identities of findings, which stay the same from one run to the next, so that two runs can be compared.

A finding is the same finding as long as the same check says it of the same parts. Its sentence, severity and figures
may change with the year, the limits, the wood or the sizes. A part of a FreeCAD document is known by its key (the
host's own name of the object and the path to it), which stays when it is given another label; a part of a model that
is read anew each time (STEP, BREP) by its name in the file, since the host numbers such parts as it likes. Where one
check says two things of the same parts, they are numbered in the order in which it says them.
"""

from __future__ import annotations

import hashlib
import json
from collections import Counter
from collections.abc import Iterable, Sequence

from movement_core.checks.finding import Finding

READ_ANEW = (".step", ".stp", ".brep", ".brp")
_DIGITS = 10  # hexadecimal: two of 10,000 findings are alike once in 20,000 models


def finding_ids(findings: Sequence[Finding], path: str = "") -> list[str]:
    """One identity for each finding, in their order: the check's name and a hash of its parts.

    ``path``: the file they are of, whose ending tells how its parts are known.
    """
    by_name = path.lower().endswith(READ_ANEW)
    seen: Counter[str] = Counter()
    made = []
    for finding in findings:
        known_by = finding.parts if by_name and finding.parts else finding.keys or finding.parts
        one = finding_id(finding.check, known_by)
        seen[one] += 1
        made.append(one if seen[one] == 1 else f"{one}-{seen[one]}")
    return made


def finding_id(check: str, parts: Iterable[str]) -> str:
    """The identity of what a check says of some parts, in whatever order they are named.

    >>> finding_id("gap-closes", ["Door", "Post"]) == finding_id("gap-closes", ["Post", "Door"])
    True
    """
    text = json.dumps([check, sorted(set(parts))])
    return f"{check}-{hashlib.sha256(text.encode('ascii')).hexdigest()[:_DIGITS]}"
