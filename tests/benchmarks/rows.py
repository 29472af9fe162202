"""What a benchmark gives, in one form: rows (a figure and what is asked of it), curves (a figure against size), and
what could not be measured. A script here has a ``measure(asked) -> Measured`` and ends with ``finish(measure)``.
"""

from __future__ import annotations

import argparse
import json
import math
import os
import sys
import time
from collections.abc import Callable, Sequence
from dataclasses import asdict, dataclass, field
from pathlib import Path
from typing import TypeVar

Result = TypeVar("Result")


@dataclass(frozen=True)
class Row:
    """One figure: what was measured, compared with what, and at least or at most how much was asked.

    Without either it is told and not judged; a figure that is not a number is a miss.
    """

    name: str
    against: str
    figure: float
    least: float | None = None
    most: float | None = None
    unit: str = "×"

    @property
    def met(self) -> bool | None:
        """Whether what was asked holds; None where nothing was asked."""
        if self.least is None and self.most is None:
            return None
        enough = self.least is None or self.figure >= self.least
        return enough and (self.most is None or self.figure <= self.most)

    @property
    def asked(self) -> str:
        """What was asked, as a text."""
        told = [f"≥ {self.least:g}"] if self.least is not None else []
        return ", ".join(told + ([f"≤ {self.most:g}"] if self.most is not None else [])) or "–"

    def line(self) -> str:
        """The row in a line."""
        word = {True: "met", False: "MISSED", None: "told"}[self.met]
        return f"{word:6s} {self.name} against {self.against}: {self.figure:.4g} {self.unit} ({self.asked})"


@dataclass(frozen=True)
class Curve:
    """How a figure grows: ``points`` are (size, figure), ``size`` says what is counted, ``unit`` what is measured."""

    name: str
    size: str
    unit: str
    points: tuple[tuple[float, float], ...]

    @property
    def exponent(self) -> float:
        """Slope of the straight line through the logarithms: 1 is in proportion, not a number below two points."""
        if len(self.points) < 2:
            return math.nan
        logs = [(math.log(size), math.log(figure)) for size, figure in self.points]
        mean_x, mean_y = (sum(pair[axis] for pair in logs) / len(logs) for axis in (0, 1))
        return sum((x - mean_x) * (y - mean_y) for x, y in logs) / sum((x - mean_x) ** 2 for x, _ in logs)

    def line(self) -> str:
        """The curve in a line."""
        told = ", ".join(f"{size:g}: {figure:.3g}" for size, figure in self.points)
        return f"{self.name} [{self.unit}] by {self.size}: {told} (grows as size^{self.exponent:.2f})"


@dataclass
class Measured:
    """All that one script gives; ``left_out``: what could not be measured, and why."""

    rows: list[Row] = field(default_factory=list)
    curves: list[Curve] = field(default_factory=list)
    left_out: list[str] = field(default_factory=list)

    def joined(self, other: Measured) -> Measured:
        """Both together."""
        return Measured(self.rows + other.rows, self.curves + other.curves, self.left_out + other.left_out)


def to_json(measured: Measured) -> str:
    """The measured as JSON."""
    return json.dumps(asdict(measured))


def from_json(text: str) -> Measured:
    """Back from JSON; a text that is not complete raises ValueError, KeyError or TypeError."""
    data = json.loads(text)
    curves = [Curve(**{**one, "points": tuple(map(tuple, one["points"]))}) for one in data["curves"]]
    return Measured([Row(**one) for one in data["rows"]], curves, list(data["left_out"]))


def shortest(
    count: int, work: Callable[[], Result], clock: Callable[[], float] = time.process_time
) -> tuple[float, Result]:
    """(shortest seconds of ``count`` runs, last result); processor time, so that a busy machine counts little."""
    times = []
    for _ in range(count):
        start = clock()
        result = work()
        times.append(clock() - start)
    return min(times), result


def finish(
    measure: Callable[[argparse.Namespace], Measured],
    description: str | None,
    words: Sequence[tuple[str, int, int, str]] = (),
) -> None:
    """Measure, print, keep as JSON where ``--kept`` says so, and end: 0 all met, 1 something missed.

    words: (option, default, default of ``--quick``, help) of the script's own numbers.
    """
    parser = argparse.ArgumentParser(description=(description or "").split("\n")[0])
    parser.add_argument("--quick", action="store_true", help="smaller and fewer: minutes instead of an hour")
    parser.add_argument("--kept", type=Path, metavar="FILE", help="write the rows and curves there as JSON")
    for option, whole, quick, told in words:
        parser.add_argument(option, type=int, help=f"{told} (default {whole}, quick {quick})")
    asked = parser.parse_args()
    for option, whole, quick, _ in words:
        name = option.removeprefix("--").replace("-", "_")
        if getattr(asked, name) is None:
            setattr(asked, name, quick if asked.quick else whole)
    measured = measure(asked)
    print(*[curve.line() for curve in measured.curves], *[row.line() for row in measured.rows], sep="\n")
    for text in measured.left_out:
        print("LEFT OUT:", text)
    if asked.kept:
        asked.kept.write_text(to_json(measured), encoding="utf-8")
    sys.stdout.flush()
    sys.stderr.flush()
    os._exit(int(any(row.met is False for row in measured.rows)))  # the host's own clean-up may crash at exit
