"""Look a logger's readings over: order, repeats, gaps, jumps, stuck sensors. Each is a finding with its
line.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import FileError
from movement_core.wording import say

Array = NDArray[np.float64]
Whole = NDArray[np.int64]
Bools = NDArray[np.bool_]

GAP_STEPS = 3.5  # a step this many times the usual one is a gap …
GAP_SECONDS = 3 * 3600  # … if it is also this long
JUMP_C, JUMP_RH = 8.0, 25.0  # between readings at most an hour apart: a door, a hand, the sun, or a fault
JUMP_SECONDS = 3600
STUCK_SECONDS = 48 * 3600  # both readings unchanged for so long
STUCK_READINGS = 12
WORST_DISORDER = 0.02  # share of steps backward beyond which the clock cannot be trusted


@dataclass(frozen=True)
class LoggerFinding:
    """Something odd in a logger's file.

    Attributes
    ----------
    kind : "left out", "order", "repeat", "gap", "jump", "stuck", "few".
    line, column : 1-based place in the file; 0 where it concerns more than one.
    what : in words.
    """

    kind: str
    line: int
    column: int
    what: str

    def __str__(self) -> str:
        place = (
            say("line {line}", line=self.line)
            + (say(", column {column}", column=self.column) if self.column else "")
            + ": "
            if self.line
            else ""
        )
        return f"{place}{self.what}"


def spoken(second: int | np.int64) -> str:
    """A moment in words a maker can look up in the file."""
    moment = datetime.datetime(1970, 1, 1) + datetime.timedelta(seconds=int(second))
    return moment.isoformat(" ", "minutes")


def review(
    seconds: Whole, temperature: Array, rh: Array, lines: Whole, name: str, most: int
) -> tuple[Whole, Array, Array, Whole, list[LoggerFinding]]:
    """Readings in rising time without repeats, and the findings; at most ``most`` of each kind written out."""
    findings: list[LoggerFinding] = []
    if seconds.size == 0:
        raise FileError(say("no usable reading"), where=name, allowed=say("at least one reading"))
    seconds, temperature, rh, lines = _sorted(seconds, temperature, rh, lines, name, findings, most)
    seconds, temperature, rh, lines = _without_repeats(seconds, temperature, rh, lines, findings, most)
    if seconds.size < 2:
        findings.append(LoggerFinding("few", int(lines[0]), 0, say("a single reading")))
        return seconds, temperature, rh, lines, findings
    steps = np.diff(seconds)
    usual = float(np.median(steps))
    gap = (steps > GAP_STEPS * usual) & (steps > GAP_SECONDS)
    _tell(
        findings,
        "gap",
        np.nonzero(gap)[0] + 1,
        lines,
        most,
        lambda i: say(
            "nothing for {seconds:.0f} h after {spoken}",
            seconds=(seconds[i] - seconds[i - 1]) / 3600,
            spoken=spoken(seconds[i - 1]),
        ),
    )
    close = steps <= JUMP_SECONDS
    jump = close & ((np.abs(np.diff(temperature)) > JUMP_C) | (np.abs(np.diff(rh)) > JUMP_RH))
    _tell(
        findings,
        "jump",
        np.nonzero(jump)[0] + 1,
        lines,
        most,
        lambda i: say(
            "jumps from {temperature:.1f} °C, {rh:.0f} % to {temperature2:.1f} °C, {rh2:.0f} %",
            temperature=temperature[i - 1],
            rh=rh[i - 1],
            temperature2=temperature[i],
            rh2=rh[i],
        ),
    )
    same_rh = np.diff(rh) == 0
    _stuck(findings, same_rh & (np.diff(temperature) == 0) & ~gap, seconds, lines, say("both readings"), most)
    _stuck(findings, same_rh & ~gap, seconds, lines, say("the humidity"), most, varies=temperature)
    return seconds, temperature, rh, lines, findings


def _tell(
    findings: list[LoggerFinding],
    kind: str,
    places: Whole,
    lines: Whole,
    most: int,
    words: Callable[[int], str],
) -> None:
    for i in places[:most]:
        findings.append(LoggerFinding(kind, int(lines[i]), 0, words(int(i))))
    if places.size > most:
        findings.append(
            LoggerFinding(kind, 0, 0, say("{kind}: {size} more", kind=kind, size=places.size - most))
        )


def _sorted(
    seconds: Whole,
    temperature: Array,
    rh: Array,
    lines: Whole,
    name: str,
    findings: list[LoggerFinding],
    most: int,
) -> tuple[Whole, Array, Array, Whole]:
    steps = np.diff(seconds)
    backward = int((steps < 0).sum())
    if not backward:
        return seconds, temperature, rh, lines
    if backward > 0.9 * np.count_nonzero(steps):
        seconds, temperature, rh, lines = seconds[::-1], temperature[::-1], rh[::-1], lines[::-1]
        findings.append(LoggerFinding("order", int(lines[-1]), 0, say("newest reading first: turned round")))
        steps = np.diff(seconds)
        backward = int((steps < 0).sum())
    if backward > max(3, WORST_DISORDER * seconds.size):
        at = int((steps < 0).argmax()) + 1
        half_days = int((np.abs(steps + 12 * 3600) < 2 * 3600).sum())
        clock = half_days > 0.5 * backward
        raise FileError(
            say(
                "{backward} readings are older than the one before; the first is {spoken}",
                backward=backward,
                spoken=spoken(seconds[at]),
            )
            + (say(": the hours run from 1 to 12 twice a day without AM or PM") if clock else ""),
            where=say("{name}, line {lines}", name=name, lines=lines[at]),
            allowed=say("readings in order of time, newest last or newest first"),
            todo=say("export with a 24-hour clock") if clock else say("check the dates, or export again"),
        )
    if backward:
        _tell(
            findings,
            "order",
            np.nonzero(steps < 0)[0] + 1,
            lines,
            most,
            lambda i: say(
                "{spoken} comes after {spoken2}: clock set back; put in order",
                spoken=spoken(seconds[i]),
                spoken2=spoken(seconds[i - 1]),
            ),
        )
        by_time = np.argsort(seconds, kind="stable")
        seconds, temperature, rh, lines = seconds[by_time], temperature[by_time], rh[by_time], lines[by_time]
    return seconds, temperature, rh, lines


def _without_repeats(
    seconds: Whole, temperature: Array, rh: Array, lines: Whole, findings: list[LoggerFinding], most: int
) -> tuple[Whole, Array, Array, Whole]:
    again = np.concatenate([[False], np.diff(seconds) == 0])
    if not again.any():
        return seconds, temperature, rh, lines
    differs = again & np.concatenate([[False], (np.diff(temperature) != 0) | (np.diff(rh) != 0)])
    _tell(
        findings, "repeat", np.nonzero(again)[0], lines, most,
        lambda i: (
            say("{spoken} once more, with other readings: the first kept", spoken=spoken(seconds[i]))
            if differs[i]
            else say("{spoken} once more: the first kept", spoken=spoken(seconds[i]))
        ),
    )  # fmt: skip
    keep = ~again
    return seconds[keep], temperature[keep], rh[keep], lines[keep]


def _stuck(
    findings: list[LoggerFinding],
    same: Bools,
    seconds: Whole,
    lines: Whole,
    what: str,
    most: int,
    varies: Array | None = None,
) -> None:
    """Runs of unchanged readings; with ``varies``, only where that other reading moved by more than 2."""
    edges = np.diff(np.concatenate([[0], same.astype(np.int8), [0]]))
    starts, ends = np.nonzero(edges == 1)[0], np.nonzero(edges == -1)[0]
    found = 0
    for start, end in zip(starts, ends):
        if seconds[end] - seconds[start] < STUCK_SECONDS or end - start < STUCK_READINGS:
            continue
        if varies is not None and np.ptp(varies[start : end + 1]) <= 2:
            continue
        found += 1
        if found <= most:
            hours = (seconds[end] - seconds[start]) / 3600
            findings.append(
                LoggerFinding(
                    "stuck",
                    int(lines[start]),
                    0,
                    say(
                        "{what} unchanged for {hours:.0f} h from {spoken}",
                        what=what,
                        hours=hours,
                        spoken=spoken(int(seconds[start])),
                    ),
                )
            )
