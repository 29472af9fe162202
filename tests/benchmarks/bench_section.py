"""Free shapes against finite elements of the same accuracy, and the cost of many boards at once. Ratios only.

    python -m tests.benchmarks.bench_section [--sweep]

One run on one core. Judged: a board's profile at least 1000 times faster than the cheapest scikit-fem mesh
whose mid-surface is within 1/10,000 of the sag (the map itself is exact: the finer the mesh, the higher the
ratio); 100,000 boards in one call at no more than twice the bare numpy expression; flips of 14 boards all tried
within a second. ``--sweep`` adds how far 150 random panels are from finite elements, for the figures in
THEORY.md. Exit 1 when a figure is missed.
"""

# ruff: noqa: E402  (the threads must be told before numpy loads)
from __future__ import annotations

import os

for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")

import sys
import time

import numpy as np

from movement_core.section.arrangement import arrangement_study
from movement_core.section.board import Board
from movement_core.section.elastic import CrossStiffness
from movement_core.section.field import free_shape
from movement_core.section.lays import Candidate
from movement_core.section.panel import Panel
from tests.validation.section_fem import MODULI, Wood, line_at, random_pith, solve_section

FE_OVER_MAP, MANY_OVER_BARE, FLIPS_S = 1000.0, 2.0, 1.0
BOARDS, POINTS = 100_000, 9
CHANGE, TINY = -0.4, -0.004
TABLE_ACCURACY = 1e-4  # of the sag: the last digit of the published comparison (0.05769 mm)


def best_of(count, work):
    """(shortest seconds, last result)."""
    times = []
    for _ in range(count):
        start = time.perf_counter()
        result = work()
        times.append(time.perf_counter() - start)
    return min(times), result


def finite_elements_within(board, accuracy):
    """(seconds, columns, error) of the coarsest mesh whose whole mid-surface is within a share of the sag.

    At a change so small (TINY) that small strain itself costs less than the accuracy asked for.
    """
    exact = board.profile(TINY, samples=2001)[:, 1].max()
    for columns in (8, 12, 16, 24, 32, 48, 64, 96):
        rows = 2 * max(1, columns // 8)
        seconds, (before, after) = best_of(
            3, lambda c=columns, r=rows: solve_section([board], TINY, columns=c, rows=r)
        )
        mapped = line_at(before, board.moved(before, TINY), 0.0)
        error = np.abs(line_at(before, after, 0.0) - mapped)[:, 1].max() / exact
        if error <= accuracy:
            return seconds, columns, error
    raise RuntimeError(f"no mesh came within {accuracy:g} of the exact shape")


def bare(points, pith, a, b):
    """The formula and nothing else: no checks, no frame of its own."""
    shift = points - pith[:, None, :]
    reference = np.arctan2(-pith[:, 1], -pith[:, 0])[:, None]
    angle = np.arctan2(shift[..., 1], shift[..., 0]) - reference
    angle = (angle + np.pi) % (2 * np.pi) - np.pi
    angle = reference + angle * ((1 + b) / (1 + a))[:, None]
    radius = np.hypot(shift[..., 0], shift[..., 1]) * (1 + a)[:, None]
    return pith[:, None, :] + np.stack((radius * np.cos(angle), radius * np.sin(angle)), axis=-1)


def many_boards():
    """Seconds of one call for all boards, and of the bare expression."""
    rng = np.random.default_rng(0)
    points = rng.uniform((-60, -10), (60, 10), (BOARDS, POINTS, 2))
    piths = np.stack(
        (rng.uniform(-80, 80, BOARDS), rng.choice([-1, 1], BOARDS) * rng.uniform(15, 200, BOARDS)), axis=-1
    )
    change = rng.uniform(-6, 6, BOARDS)
    a, b = 0.0013 * change, 0.0027 * change
    ours, moved = best_of(7, lambda: free_shape(points, piths, a, b))
    plain, same = best_of(7, lambda: bare(points, piths, a, b))
    assert np.abs(moved - same).max() < 1e-9
    return ours, plain


def fourteen_flips():
    """Seconds of the study of 14 boards, and how many layouts it tried."""
    rng = np.random.default_rng(3)
    boards = []
    for _ in range(14):
        board = Board(Wood(), rng.uniform(60, 120), 20, random_pith(rng, 120, 20))
        boards.append(Candidate(board, *(float(score) for score in rng.integers(0, 4, 2))))
    start = time.process_time()  # of this process: a second is judged, so a busy machine must not count
    study = arrangement_study(boards, -4, 2)
    return time.process_time() - start, study.tried


def sweep(count=50):
    """How far random panels are from finite elements, percent of the range, for three ways of settling."""
    for name, moduli in MODULI.items():
        own = CrossStiffness(moduli.radial, moduli.tangential, moduli.shear, moduli.poisson_rt)
        rows = []
        for number in range(count):
            rng = np.random.default_rng(9000 + number)
            thickness = rng.uniform(15, 40)
            widths = rng.uniform(50, 180, rng.integers(2, 8))
            panel = Panel([Board(Wood(), w, thickness, random_pith(rng, w, thickness)) for w in widths])
            solved = line_at(*solve_section(panel.boards, CHANGE, moduli, columns=16, rows=8), 0.0)
            row = []
            for settled in ({"settle": False}, {}, {"stiffness": own}):
                ours = panel.shape(CHANGE, **settled).profile
                off = np.abs(np.interp(solved[:, 0], ours[:, 0], ours[:, 1]) - solved[:, 1]).max()
                row.append(100 * off / np.ptp(solved[:, 1]))
            rows.append(row)
        table = np.array(rows)
        for label, values in zip(("chain alone", "middling wood", "own stiffness"), table.T):
            print(
                f"  {name:9s} {label:14s} median {np.median(values):.2f} %, nine in ten below "
                f"{np.quantile(values, 0.9):.2f} %, worst {values.max():.2f} %; "
                f"above 3 %: {(values > 3).sum()} of {count}"
            )


def main():
    board = Board(Wood(), 200, 20, (0, 50))
    map_s, _ = best_of(500, lambda: board.profile(TINY))
    for accuracy in (1e-3, TABLE_ACCURACY, 1e-5):
        seconds, columns, error = finite_elements_within(board, accuracy)
        print(
            f"board profile within {accuracy:g} of its sag: finite elements ({columns} columns, off by {error:.1g}) "
            f"÷ exact map = {seconds / map_s:.0f}"
        )
        if accuracy == TABLE_ACCURACY:
            fe_s, judged = seconds, columns
    ours, plain = many_boards()
    print(f"{BOARDS} boards of {POINTS} points in one call ÷ bare expression = {ours / plain:.2f}")
    print(f"per board in that call: finite elements ÷ map = {fe_s / (ours / BOARDS):.3g}")
    flips_s, tried = fourteen_flips()
    print(f"14 boards, {tried} layouts: {flips_s:.2f} s of this core")
    panel_s, _ = best_of(5, lambda: Panel([board] * 5).shape(-4))
    panel_fe, _ = best_of(3, lambda: solve_section([board] * 5, CHANGE, columns=judged // 2, rows=6))
    print(f"panel of 5, settled: scikit-fem ÷ ours = {panel_fe / panel_s:.1f}")
    if "--sweep" in sys.argv:
        sweep()
    missed = [
        text
        for text, bad in (
            (f"board profile less than {FE_OVER_MAP:g} times faster", fe_s / map_s < FE_OVER_MAP),
            (f"many boards above {MANY_OVER_BARE:g} × bare", ours / plain > MANY_OVER_BARE),
            (f"flips above {FLIPS_S:g} s", flips_s > FLIPS_S),
        )
        if bad
    ]
    for text in missed:
        print("MISSED:", text)
    return 1 if missed else 0


if __name__ == "__main__":
    sys.exit(main())
