"""Compare with the world and keep the comparison: each call asserts, and becomes a row of the report.

Calls of one test file under one name (the cells of a table, cases of one test) become one row, with the worst
difference and the root of the mean square. The provenance is a word of movement_core/sources.py and tells how
the *expected* value came here: read at its source, recalled from memory, common practice without a source,
derived (computed from a formula or by a reference library while the test runs), own (computed beforehand).
"""

from __future__ import annotations

import sys
from dataclasses import dataclass, field

import numpy as np

from movement_core.sources import PROVENANCES

WORDS = PROVENANCES
IN_RANGE, OWN_ROOM = "within the range", "as far apart as we allow"


@dataclass
class Comparison:
    """One row: arrays (N,) of what was expected and what we gave; ``low`` and ``high`` (N,) what was allowed."""

    file: str
    name: str
    source: str
    provenance: str
    unit: str
    allowed: str
    notes: list[str] = field(default_factory=list)
    low: list[float] = field(default_factory=list)
    high: list[float] = field(default_factory=list)
    expected: list[float] = field(default_factory=list)
    ours: list[float] = field(default_factory=list)

    @property
    def key(self) -> tuple[str, str, str, str]:
        """What must be the same in every run."""
        return self.file, self.name, self.source, self.provenance


RECORDS: dict[tuple[str, str], Comparison] = {}


def compared(name, source, provenance, expected, ours, unit, *, within=None, share=None, note=""):
    """Assert that ``ours`` is ``expected`` (numbers or arrays of one shape) and record it.

    within: allowed difference in the unit; share: allowed difference as a part of the expected value. With
    both, the greater counts, value by value. ``note`` explains a difference that stands.
    """
    wanted, given = np.broadcast_arrays(np.asarray(expected, float), np.asarray(ours, float))
    if within is None and share is None:
        raise ValueError("a comparison needs a tolerance: within or share")
    room = np.maximum(0.0 if within is None else within, 0.0 if share is None else share * np.abs(wanted))
    words = ([f"± {_bound(within)} {unit}".strip()] if within is not None else []) + (
        [f"± {_bound(100 * share)} %"] if share is not None else []
    )
    _record(
        2,
        name,
        source,
        provenance,
        unit,
        " or ".join(words),
        note,
        wanted,
        wanted - room,
        wanted + room,
        given,
    )


def within_range(name, source, provenance, low, high, ours, unit, *, published=None, note=""):
    """Assert that ``ours`` lies from ``low`` to ``high``, which is the published range.

    Where the range is how far apart we may stand, ``published`` is the figure that the source gives: the report then
    shows that one and the distance to it.
    """
    told = np.nan if published is None else published
    low, high, given, told = np.broadcast_arrays(*(np.asarray(v, float) for v in (low, high, ours, told)))
    wanted = (low + high) / 2 if published is None else told
    allowed = IN_RANGE if published is None else OWN_ROOM
    _record(2, name, source, provenance, unit, allowed, note, wanted, low, high, given)


def _record(depth, name, source, provenance, unit, allowed, note, wanted, low, high, given):
    if provenance not in WORDS:
        raise ValueError(f"provenance {provenance!r}; words: {', '.join(WORDS)}")
    if given.size == 0:
        raise ValueError(f"{name}: nothing was compared")
    file = sys._getframe(depth).f_globals["__name__"].rsplit(".", 1)[-1]
    row = RECORDS.setdefault(
        (file, name), Comparison(file, name, source, provenance, unit, allowed)
    )  # fmt: skip
    assert (row.source, row.provenance, row.unit) == (source, provenance, unit), (
        f"{name}: two rows of one name"
    )
    if note and note not in row.notes:
        row.notes.append(note)
    if allowed != row.allowed and allowed not in row.allowed:
        row.allowed += f"; {allowed}"
    for kept, values in ((row.low, low), (row.high, high), (row.expected, wanted), (row.ours, given)):
        kept.extend(np.ravel(values).tolist())
    bad = ~((given >= low) & (given <= high))  # not-a-number is bad
    if np.any(bad):
        worst = np.argmax(np.where(bad, np.nan_to_num(np.abs(given - wanted), nan=np.inf), -1.0))
        raise AssertionError(
            f"{name}: ours {given.flat[worst]:.9g}, expected {wanted.flat[worst]:.9g} {unit} "
            f"(allowed {low.flat[worst]:.9g} to {high.flat[worst]:.9g}); {int(bad.sum())} of {given.size} off; "
            f"source: {source}"
        )


def _bound(value):
    values = np.ravel(np.asarray(value, float))
    low, high = float(values.min()), float(values.max())
    return f"{low:.3g}" if low == high else f"{low:.3g} to {high:.3g}"
