"""The spectral year against time marching of equal accuracy, in one run on one core. Ratios only.

    python -m tests.benchmarks.bench_moisture [--quick]

Prints the measured ratios; exit code 1 when a figure is missed.
"""

# ruff: noqa: E402  (the threads must be told before numpy loads)
from __future__ import annotations

import os

for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")

import numpy as np
from scipy.integrate import solve_ivp
from scipy.linalg import solve_banded

from movement_core.air.logger import read_logger
from movement_core.air.logger_days import logged_days
from movement_core.air.year import Year
from movement_core.moisture.response import SlabTransport, slab_year, wood_year
from tests.benchmarks.rows import Curve, Measured, Row, finish, shortest

BOARDS = 10_000
ACCURACY = 1e-3  # of the air's amplitude
DAY = np.arange(365)


def _air(t):
    return 8 + 2.5 * np.cos(2 * np.pi * np.asarray(t) / 365) + 0.6 * np.sin(4 * np.pi * np.asarray(t) / 365)


def _grid(thickness: float, cells: int):
    widths = np.diff(thickness * (1 - np.cos(np.pi * np.linspace(0, 1, cells + 1))) / 2)
    return widths, (widths[1:] + widths[:-1]) / 2


def _rates(widths, gaps, rate: float, h_back: float, h_show: float):
    between = rate / gaps
    back = 1 / (1 / h_back + widths[0] / 2 / rate)
    show = 1 / (1 / h_show + widths[-1] / 2 / rate)
    return np.append(back, between), np.append(between, show)


def banded_march(thickness, rate, h_back, h_show, cells: int, step_days: float, years: int):
    """Crank–Nicolson with a banded solve a step: the plain way, done well. Mean on each day of the last
    year.
    """
    widths, gaps = _grid(thickness, cells)
    into, out = _rates(widths, gaps, rate, h_back, h_show)
    into, out = into / widths, out / widths
    half = step_days / 2
    band = np.zeros((3, cells))
    band[0, 1:], band[1], band[2, :-1] = -half * out[:-1], 1 + half * (into + out), -half * into[1:]
    state = np.full(cells, _air(DAY).mean())
    steps = round(365 * years / step_days)
    mean = np.empty(steps + 1)
    mean[0] = state @ widths / thickness
    air = _air(np.arange(steps + 1) * step_days)
    for i in range(steps):
        flow = -(into + out) * state
        flow[1:] += into[1:] * state[:-1]
        flow[:-1] += out[:-1] * state[1:]
        both = air[i] + air[i + 1]
        right = state + half * flow
        right[0] += half * into[0] * both
        right[-1] += half * out[-1] * both
        state = solve_banded((1, 1), band, right, check_finite=False)
        mean[i + 1] = state @ widths / thickness
    times = np.arange(steps + 1) * step_days
    return np.interp(365 * (years - 1) + DAY, times, mean)


def stiff_march(thickness, rate, h_back, h_show, cells: int, years: int, tolerance: float):
    """scipy's stiff integrator with the banded Jacobian told to it."""
    widths, gaps = _grid(thickness, cells)
    into, out = _rates(widths, gaps, rate, h_back, h_show)

    def slope(t, m):
        air = _air(t)
        flow = np.concatenate(
            [[into[0] * (air - m[0])], into[1:] * (m[:-1] - m[1:]), [out[-1] * (m[-1] - air)]]
        )
        return (flow[:-1] - flow[1:]) / widths

    solution = solve_ivp(
        slope, (0, 365 * years), np.full(cells, _air(DAY).mean()), method="LSODA", lband=1, uband=1,
        t_eval=365 * (years - 1) + DAY, rtol=tolerance, atol=tolerance,
    )  # fmt: skip
    return (solution.y * widths[:, None]).sum(0) / thickness


def all_boards_march(thickness, rate, h_back, h_show, cells: int, step_days: float, years: int):
    """The hardest rival: the same Crank–Nicolson for all boards at once, the elimination done beforehand."""
    share = np.diff((1 - np.cos(np.pi * np.linspace(0, 1, cells + 1))) / 2)[:, None]
    widths = share * thickness
    gaps = (widths[1:] + widths[:-1]) / 2
    between = rate / gaps
    back, show = (1 / (1 / h + w / 2 / rate) for h, w in ((h_back, widths[0]), (h_show, widths[-1])))
    into = np.concatenate([back[None], between]) / widths
    out = np.concatenate([between, show[None]]) / widths
    half = step_days / 2
    factor = np.empty_like(into)
    pivot = np.empty_like(into)
    pivot[0] = 1 + half * (into[0] + out[0])
    for i in range(1, cells):
        factor[i] = -half * into[i] / pivot[i - 1]
        pivot[i] = 1 + half * (into[i] + out[i]) + factor[i] * half * out[i - 1]
    state = np.full(into.shape, _air(DAY).mean())
    steps = round(365 * years / step_days)
    mean = np.empty((steps + 1, thickness.size))
    mean[0] = (state * share).sum(0)
    air = _air(np.arange(steps + 1) * step_days)
    for n in range(steps):
        right = state * (1 - half * (into + out))
        right[1:] += half * into[1:] * state[:-1]
        right[:-1] += half * out[:-1] * state[1:]
        right[0] += half * into[0] * (air[n] + air[n + 1])
        right[-1] += half * out[-1] * (air[n] + air[n + 1])
        for i in range(1, cells):
            right[i] -= factor[i] * right[i - 1]
        state[-1] = right[-1] / pivot[-1]
        for i in range(cells - 2, -1, -1):
            state[i] = (right[i] + half * out[i] * state[i + 1]) / pivot[i]
        mean[n + 1] = (state * share).sum(0)
    return mean


def _best(function, repeats: int = 3) -> float:
    return shortest(repeats, function)[0]


def whole_years() -> Measured:
    """Boards a second, and seconds by boards: whole years, daily, two unequal faces."""
    rng = np.random.default_rng(5)
    thickness = rng.uniform(8, 45, BOARDS)
    gravity = rng.uniform(0.35, 0.85, BOARDS)
    year = Year("benchmark", (20,) * 12, (28, 30, 35, 40, 48, 55, 60, 58, 52, 45, 36, 30), "invented")
    points = [
        (count, _best(lambda n=count: wood_year(year, thickness[:n], gravity[:n], "varnish 2", "bare")))
        for count in (10, 100, 1000, BOARDS)
    ]
    speed = BOARDS / points[-1][1]
    row = Row("whole daily years on one core", "boards a second, no ratio", speed, 10_000.0, unit="boards/s")
    return Measured([row], [Curve("moisture: a year, daily", "boards", "s", tuple(points))])


def against_marching() -> list[Row]:
    """Each way of marching in time: times slower a board, and how far off."""
    slab = SlabTransport(
        np.full(1000, 22.0), np.full(1000, 2.0), np.full(1000, 0.5), np.full(1000, 4.0), "bench"
    )
    spectral = slab_year(_air(DAY), slab).mean_mc[0]
    per_board = _best(lambda: slab_year(_air(DAY), slab)) / 1000
    amplitude = np.ptp(_air(DAY)) / 2
    board = (22.0, 2.0, 4.0, 0.5)
    rivals = (
        ("scipy's stiff integrator (LSODA, banded)", lambda: stiff_march(*board, 40, 3, 1e-5)),
        ("Crank–Nicolson with scipy's banded solver", lambda: banded_march(*board, 40, 2.5, 3)),
    )
    rows = []
    for name, rival in rivals:
        seconds, marched = shortest(2, rival)
        off = np.abs(marched - spectral).max() / amplitude
        rows.append(Row("a year of a board: times as fast", name, seconds / per_board, 100.0))
        rows.append(
            Row("a year of a board, apart", name, 100 * off, most=100 * ACCURACY, unit="% of amplitude")
        )
    many = np.full(1000, 22.0), np.full(1000, 2.0), np.full(1000, 4.0), np.full(1000, 0.5)
    seconds, together = shortest(1, lambda: all_boards_march(*many, 40, 2.5, 3))
    last = np.interp(2 * 365 + DAY, np.arange(together.shape[0]) * 2.5, together[:, 0])
    off = np.abs(last - spectral).max() / amplitude
    name = "1000 boards marched at once in numpy"  # for fairness; nothing is asked of it
    rows.append(Row("a year of a board: times as fast", name, seconds / 1000 / per_board))
    rows.append(Row("a year of a board, apart", name, 100 * off, unit="% of amplitude"))
    return rows


def logger_lines(count: int) -> Row:
    """Reading a logger's file against splitting its lines."""
    lines = ["Date,Time,Temp °C,RH"]
    moments = np.datetime64("2023-01-01T00:00:00") + (np.arange(count) * 30).astype("timedelta64[s]")
    text = np.datetime_as_string(moments)
    lines += [f"{t[:10]},{t[11:]},20.{i % 9},45.{i % 7}" for i, t in enumerate(text)]
    data = "\n".join(lines)
    plain = _best(lambda: [line.split(",") for line in data.split("\n")], 1)
    reading = _best(lambda: logged_days(read_logger(data)), 1)
    return Row(
        f"logger of {count:,} lines, read and made into days",
        "splitting its lines",
        reading / plain,
        most=20.0,
    )


def measure(asked) -> Measured:
    told = whole_years()
    told.rows += [*against_marching(), logger_lines(asked.lines)]
    return told


WORDS = (("--lines", 1_000_000, 100_000, "lines of the logger's file"),)

if __name__ == "__main__":
    finish(measure, __doc__, WORDS)
