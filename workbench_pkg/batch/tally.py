"""How many models hold, and what a run comes to. Standard library only."""

from __future__ import annotations

from typing import Any

from workbench_pkg.batch.html_index import SEVERITIES
from workbench_pkg.setup.speech import say


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
        told = ", ".join(
            [
                say("1 holds") if self.hold == 1 else say("{count} hold", count=self.hold),
                say("{count} with findings", count=self.with_findings),
                say("{count} could not be checked", count=self.not_checked),
                *([say("{count} as kept from before", count=self.found_again)] if self.found_again else []),
            ]
        )
        many = say("{count} models: {told}.", count=self.models, told=told)
        text = [say("1 model: {told}.", told=told) if self.models == 1 else many]
        if self.known or self.gone:
            text.append(
                say(
                    "Known findings: {known} accepted, {gone} no longer there.",
                    known=self.known,
                    gone=self.gone,
                )
            )
        if self.lesser == 1:
            text.append(say("1 finding is too slight to fail on."))
        elif self.lesser:
            text.append(say("{count} findings are too slight to fail on.", count=self.lesser))
        return " ".join(text)
