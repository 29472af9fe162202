"""Free shapes against finite elements of the same accuracy, and the cost of many boards at once. Ratios only.

    python -m tests.benchmarks.bench_section [--quick] [--sweep N]

One run on one core. Judged: a board's profile at least 1000 times faster than the cheapest scikit-fem mesh
whose mid-surface is within 1/10,000 of the sag (the map itself is exact: the finer the mesh, the higher the
ratio); 100,000 boards in one call at no more than twice the bare numpy expression; flips of 14 boards all tried
within a second. ``--sweep 50`` adds how far 50 random panels of each wood are from finite elements, for the
figures in THEORY.md. Exit 1 when a figure is missed.
"""

# ruff: noqa: E402  (the threads must be told before numpy loads)
from __future__ import annotations

import os

for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")

import numpy as np

from movement_core.section.arrangement import arrangement_study
from movement_core.section.board import Board
from movement_core.section.elastic import CrossStiffness
from movement_core.section.field import free_shape
from movement_core.section.lays import Candidate
from movement_core.section.panel import Panel
from tests.benchmarks.rows import Curve, Measured, Row, finish, shortest
from tests.validation.section_fem import MODULI, Wood, line_at, random_pith, solve_section

FE_OVER_MAP, MANY_OVER_BARE, FLIPS_S = 1000.0, 2.0, 1.0
BOARDS, POINTS = 100_000, 9
CHANGE, TINY = -0.4, -0.004
TABLE_ACCURACY = 1e-4  # of the sag: the last digit of the published comparison (0.05769 mm)


def finite_elements_within(board, accuracy):
    """(seconds, columns, error) of the coarsest mesh whose whole mid-surface is within a share of the sag.

    At a change so small (TINY) that small strain itself costs less than the accuracy asked for.
    """
    exact = board.profile(TINY, samples=2001)[:, 1].max()
    for columns in (8, 12, 16, 24, 32, 48, 64, 96):
        rows = 2 * max(1, columns // 8)
        seconds, (before, after) = shortest(
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


def many_boards(count):
    """Seconds of one call for so many boards, and of the bare expression."""
    rng = np.random.default_rng(0)
    points = rng.uniform((-60, -10), (60, 10), (count, POINTS, 2))
    piths = np.stack(
        (rng.uniform(-80, 80, count), rng.choice([-1, 1], count) * rng.uniform(15, 200, count)), axis=-1
    )
    change = rng.uniform(-6, 6, count)
    a, b = 0.0013 * change, 0.0027 * change
    ours, moved = shortest(7, lambda: free_shape(points, piths, a, b))
    plain, same = shortest(7, lambda: bare(points, piths, a, b))
    assert np.abs(moved - same).max() < 1e-9
    return ours, plain


def fourteen_flips():
    """Seconds of the study of 14 boards, and how many layouts it tried."""
    rng = np.random.default_rng(3)
    boards = []
    for _ in range(14):
        board = Board(Wood(), rng.uniform(60, 120), 20, random_pith(rng, 120, 20))
        boards.append(Candidate(board, *(float(score) for score in rng.integers(0, 4, 2))))
    seconds, study = shortest(1, lambda: arrangement_study(boards, -4, 2))
    return seconds, study.tried


def by_boards(few):
    """Seconds of one call by boards, and of one panel's settled shape by its boards."""
    calls = [(count, many_boards(count)[0]) for count in (100, 1000, 10_000, BOARDS)]
    board = Board(Wood(), 100, 20, (0, 50))
    panels = [
        (count, shortest(few, lambda n=count: Panel([board] * n).shape(-4))[0])
        for count in (2, 5, 10, 20, 40)
    ]
    return [
        Curve("section: free shapes in one call", "boards", "s", tuple(calls)),
        Curve("section: a panel, settled", "boards", "s", tuple(panels)),
    ]


def sweep(count):
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


def measure(asked):
    few = 1 if asked.quick else 3
    board = Board(Wood(), 200, 20, (0, 50))
    map_s, _ = shortest(500, lambda: board.profile(TINY))
    told = Measured()
    for accuracy in (TABLE_ACCURACY,) if asked.quick else (1e-3, TABLE_ACCURACY, 1e-5):
        seconds, columns, error = finite_elements_within(board, accuracy)
        print(f"finite elements within {accuracy:g} of the sag: {columns} columns, off by {error:.1g}")
        least = FE_OVER_MAP if accuracy == TABLE_ACCURACY else None
        against = f"finite elements within {accuracy:g} of its sag"
        told.rows.append(Row("a board's profile: times as fast", against, seconds / map_s, least))
        if accuracy == TABLE_ACCURACY:
            fe_s, judged = seconds, columns
    ours, plain = many_boards(BOARDS)
    flips_s, tried = fourteen_flips()
    panel_s, _ = shortest(5, lambda: Panel([board] * 5).shape(-4))
    panel_fe, _ = shortest(few, lambda: solve_section([board] * 5, CHANGE, columns=judged // 2, rows=6))
    told.rows += [
        Row(
            f"{BOARDS:,} boards of {POINTS} points",
            "the bare numpy expression",
            ours / plain,
            most=MANY_OVER_BARE,
        ),
        Row("a board of those: times as fast", "finite elements", fe_s / (ours / BOARDS)),
        Row(f"14 boards, {tried:,} layouts", "seconds, no ratio", flips_s, most=FLIPS_S, unit="s"),
        Row("panel of 5, settled: times as fast", "finite elements", panel_fe / panel_s),
    ]
    told.curves += by_boards(few)
    if asked.sweep:
        sweep(asked.sweep)
    return told


WORDS = (("--sweep", 0, 0, "random panels of each wood against finite elements"),)

if __name__ == "__main__":
    finish(measure, __doc__, WORDS)
