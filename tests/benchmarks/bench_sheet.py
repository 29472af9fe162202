"""How long a sheet takes past the analysis: page data, HTML and PDF, of a piece of 300 parts and of a few.

    python -m tests.benchmarks.bench_sheet

Prints seconds of processor time, for the machine may be busy, and, as what holds on any machine, their ratio to the
analysis of the same piece.
"""

from __future__ import annotations

import time

from movement_core.sheet.pages.html import sheet_html
from movement_core.sheet.pages.pdf import sheet_pdf
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from tests.core.sheet_pieces import material as worked_out
from tests.core.sheet_pieces import named_boards, table, three_hundred


def timed(work):
    start = time.process_time()
    answer = work()
    return time.process_time() - start, answer


def main() -> None:
    sheet_pdf(movement_sheet(worked_out(named_boards(["warm-up"]))))
    print(
        f"{'piece':14}{'parts':>6}{'analysis':>10}{'pages':>8}{'HTML':>8}{'PDF':>8}{'sum':>8}{'sum/analysis':>14}"
    )
    for name, make in (("table", table), ("three hundred", three_hundred)):
        analysis, material = timed(make.__wrapped__)
        pages, sheet = timed(lambda material=material: movement_sheet(material, SheetWish()))
        html, _ = timed(lambda sheet=sheet: sheet_html(sheet))
        pdf, _ = timed(lambda sheet=sheet: sheet_pdf(sheet))
        total = pages + html + pdf
        print(
            f"{name:14}{len(material.parts):6}{analysis:9.2f}s{pages:7.2f}s{html:7.2f}s{pdf:7.2f}s{total:7.2f}s"
            f"{total / analysis:14.2f}"
        )


if __name__ == "__main__":
    main()
