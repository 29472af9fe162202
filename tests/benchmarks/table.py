"""What the benchmarks gave, as one table in text and as a picture of the curves."""

from __future__ import annotations

import math
from collections.abc import Mapping
from pathlib import Path

from tests.benchmarks.rows import Curve, Measured

WORDS = {True: "yes", False: "NO", None: "–"}
HEADING = ("benchmark", "figure of", "compared with", "figure", "asked", "met")


def table_text(found: Mapping[str, Measured], *, quick: bool) -> str:
    """The table, the curves, what was left out, and a line that adds up."""
    lines = ["A quick run: smaller and fewer; its figures scatter more."] if quick else []
    rows = [HEADING]
    rows += [
        (name, row.name, row.against, f"{row.figure:,.4g} {row.unit}".strip(), row.asked, WORDS[row.met])
        for name, each in found.items()
        for row in each.rows
    ]
    lines += [*_columns(rows, right={3, 4}), "", "How it grows"]
    for curve in _curves(found):
        lines.append(f"  {curve.name} [{curve.unit}], as {curve.size}^{curve.exponent:.2f}")
        sizes = (curve.size, *(f"{size:,.0f}" for size, _ in curve.points))
        figures = (curve.unit, *(f"{figure:.3g}" for _, figure in curve.points))
        lines += ["    " + line for line in _columns([sizes, figures], right=set(range(1, len(sizes))))]
    left_out = [f"left out of {name}: {text}" for name, each in found.items() for text in each.left_out]
    lines += ["", *left_out] if left_out else []
    verdicts = [row.met for each in found.values() for row in each.rows]
    counts = {word: verdicts.count(word) for word in (True, False, None)}
    lines += [
        "",
        f"{counts[True]} met, {counts[False]} missed, {counts[None]} told only, {len(left_out)} left out",
    ]
    return "\n".join(lines)


def plot_curves(found: Mapping[str, Measured], path: Path) -> str:
    """Draw every curve, both axes logarithmic, with the line of proportion; where it went, or why there is none."""
    curves = [curve for curve in _curves(found) if len(curve.points) > 1]
    if not curves:
        return "no curves to draw"
    try:
        from matplotlib.figure import Figure
    except ImportError:
        return "no picture of the curves: matplotlib is not installed"
    across = min(3, len(curves))
    down = -(-len(curves) // across)
    figure = Figure(figsize=(4.4 * across, 3.2 * down), layout="constrained")
    for axes, curve in zip(figure.subplots(down, across, squeeze=False).flat, curves):
        sizes, figures = zip(*curve.points)
        axes.loglog(
            sizes, figures, "o-", color="#1f5f8b", label=f"measured: {curve.size}^{curve.exponent:.2f}"
        )
        ideal = [figures[0] * size / sizes[0] for size in sizes]
        axes.loglog(sizes, ideal, "--", color="#888888", label="in proportion")
        axes.set_title(curve.name, fontsize=10)
        axes.set_xlabel(curve.size)
        axes.set_ylabel(curve.unit)
        axes.grid(True, which="major", alpha=0.3)
        axes.legend(fontsize=8, loc="upper left")
        axes.set_xticks(sizes, [f"{size:,.0f}" for size in sizes])
        axes.tick_params(which="minor", labelbottom=False, labelleft=False)
        axes.yaxis.set_major_formatter("{x:g}")
        low, high = min(*figures, *ideal), max(*figures, *ideal)
        axes.set_ylim(
            10 ** math.floor(math.log10(low)), 10 ** math.ceil(math.log10(high))
        )  # whole powers are labelled
    for axes in figure.axes[len(curves) :]:
        axes.set_axis_off()
    figure.savefig(path, dpi=110)
    return str(path)


def _curves(found: Mapping[str, Measured]) -> list[Curve]:
    return [curve for each in found.values() for curve in each.curves]


def _columns(rows: list[tuple[str, ...]], right: set[int]) -> list[str]:
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]))]
    return [
        "  ".join(
            cell.rjust(width) if column in right else cell.ljust(width)
            for column, (cell, width) in enumerate(zip(row, widths))
        ).rstrip()
        for row in rows
    ]
