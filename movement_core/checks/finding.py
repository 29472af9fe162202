"""What a check found: where, what, how much, when, and what to do."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

# By consequence, worst first.
BREAKS = "breaks"  # something splits, is crushed or comes loose
JAMS = "jams"  # something no longer does its work in some season
SHOWS = "seen"  # a gap, step or cup that shows
UNKNOWN = "unknown"  # cannot be judged until something is said
SEVERITIES = (BREAKS, JAMS, SHOWS, UNKNOWN)


@dataclass(frozen=True)
class Finding:
    """One finding of one check.

    Attributes
    ----------
    check : name of the check that found it.
    severity : one of ``SEVERITIES``.
    parts : names of the parts concerned; ``keys`` their keys in the document.
    message : one sentence for the maker.
    remedy : what to do about it.
    month : month 0–11 in which it is worst, or None.
    figures : named numbers behind the sentence, unit in the name.
    """

    check: str
    severity: str
    parts: tuple[str, ...]
    keys: tuple[str, ...]
    message: str
    remedy: str
    month: int | None = None
    figures: Mapping[str, float] = field(default_factory=dict)

    def __post_init__(self) -> None:
        if self.severity not in SEVERITIES:
            raise ValueError(f"severity {self.severity!r} is not one of {', '.join(SEVERITIES)}")
