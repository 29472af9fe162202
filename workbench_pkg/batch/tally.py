"""How many models hold, and what a run comes to. Standard library only."""

from __future__ import annotations

from typing import Any

from workbench_pkg.batch.html_index import SEVERITIES


class Tally:
    """Counts models by what was found in them; ``fail_on`` is the least grave severity that counts, or "never"."""

    def __init__(self, fail_on: str) -> None:
        self._counting = SEVERITIES[: SEVERITIES.index(fail_on) + 1] if fail_on in SEVERITIES else ()
        self.models = self.hold = self.with_findings = self.not_checked = self.found_again = 0
        self.known = self.gone = self.lesser = 0
        self.failing = False

    def add(self, entry: dict[str, Any], answer: dict[str, Any], gone: int = 0) -> None:
        new = [finding["severity"] for finding in entry["findings"] if not finding.get("known")]
        counting = [severity for severity in new if severity in self._counting]
        self.models += 1
        self.known += len(entry["findings"]) - len(new)
        self.lesser += len(new) - len(counting)
        self.found_again += bool(answer.get("found"))
        self.failing = self.failing or bool(counting)
        if entry["errors"]:
            self.not_checked += 1
        else:
            self.gone += gone
            self.with_findings += bool(new)
            self.hold += not new

    def summary(self) -> str:
        """One or two sentences."""
        told = [
            f"{self.hold} {'holds' if self.hold == 1 else 'hold'}",
            f"{self.with_findings} with findings",
            f"{self.not_checked} could not be checked",
        ]
        if self.found_again:
            told.append(f"{self.found_again} as kept from before")
        text = f"{self.models} model{'' if self.models == 1 else 's'}: {', '.join(told)}."
        if self.known or self.gone:
            text += f" Known findings: {self.known} accepted, {self.gone} no longer there."
        if self.lesser:
            text += f" {self.lesser} finding{' is' if self.lesser == 1 else 's are'} too slight to fail on."
        return text
