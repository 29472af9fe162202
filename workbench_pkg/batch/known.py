"""The baseline: findings that are known and accepted, so that only new ones count. Standard library only.

The file names each model as seen from the folder it lies in, so that an archive can be moved with it.
"""

from __future__ import annotations

import json
import os
from collections.abc import Iterable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from workbench_pkg.setup import UseError, written_whole
from workbench_pkg.setup.speech import say, word

SCHEMA = "heartside-known-1"


@dataclass
class Known:
    """Findings accepted: model as seen from ``path``'s folder → identity → severity at which it was accepted."""

    path: Path
    models: dict[str, dict[str, str]] = field(default_factory=dict)

    def of(self, shown: str) -> dict[str, str]:
        """Those of one model."""
        return self.models.get(self._name(shown), {})

    def gone(self, shown: str, findings: Iterable[dict[str, Any]]) -> int:
        """How many of a model's were not found any more."""
        return len(set(self.of(shown)) - {finding["id"] for finding in findings})

    def note(self, shown: str, findings: Iterable[dict[str, Any]]) -> None:
        """Accept these findings of a model, and no others."""
        noted = {finding["id"]: finding["severity"] for finding in findings}
        if noted:
            self.models[self._name(shown)] = noted

    def write(self, replace: bool) -> None:
        """Write it whole or not at all."""
        report = {
            "schema": SCHEMA,
            "models": {name: dict(sorted(ids.items())) for name, ids in sorted(self.models.items())},
        }
        with written_whole(self.path, replace=replace) as made:
            made.write_text(json.dumps(report, indent=1, ensure_ascii=True) + "\n", encoding="ascii")

    def _name(self, shown: str) -> str:
        path = os.path.relpath(os.path.abspath(shown), os.path.abspath(self.path.parent))
        return Path(path).as_posix()


def read_known(path: Path) -> Known:
    """The findings that a file accepts. Raises UseError where it is not such a file."""
    where = str(path)
    try:
        said = json.loads(path.read_bytes().decode("utf-8-sig"))
    except OSError as error:
        raise UseError(
            say("the known findings cannot be read ({reason})", reason=word(str(error.strerror))),
            where=where,
            todo=say("write the file with --write-known first, or check its name"),
        ) from None
    except (ValueError, RecursionError) as error:
        if isinstance(error, json.JSONDecodeError):
            where = say("{name}, line {line}", name=where, line=error.lineno)
        raise UseError(
            say("it is not JSON"), where=where, todo=say("write it anew with --write-known")
        ) from None
    models = said.get("models") if isinstance(said, dict) and said.get("schema") == SCHEMA else None
    if not isinstance(models, dict) or not all(
        isinstance(ids, dict) and all(isinstance(severity, str) for severity in ids.values())
        for ids in models.values()
    ):
        raise UseError(
            say("it holds no known findings"), where=where, todo=say("write it with --write-known")
        )
    return Known(path, models)
