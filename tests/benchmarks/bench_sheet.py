"""How long a sheet takes past the analysis: page data, HTML and PDF, of a piece of 300 parts and of a few.

    python -m tests.benchmarks.bench_sheet

Ratios to the analysis of the same piece, in processor time; nothing is asked of them.
"""

from __future__ import annotations

from movement_core.sheet.pages.html import sheet_html
from movement_core.sheet.pages.pdf import sheet_pdf
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from tests.benchmarks.rows import Curve, Measured, Row, finish, shortest
from tests.core.sheet_pieces import material as worked_out
from tests.core.sheet_pieces import named_boards, table, three_hundred


def measure(asked) -> Measured:
    sheet_pdf(movement_sheet(worked_out(named_boards(["warm-up"]))))
    told, points = Measured(), []
    for make in (table, three_hundred):
        analysis, material = shortest(1, make.__wrapped__)
        pages, sheet = shortest(1, lambda material=material: movement_sheet(material, SheetWish()))
        html, _ = shortest(1, lambda sheet=sheet: sheet_html(sheet))
        pdf, _ = shortest(1, lambda sheet=sheet: sheet_pdf(sheet))
        count, total = len(material.parts), pages + html + pdf
        print(
            f"{count} parts: analysis {analysis:.2f} s, pages {pages:.2f} s, HTML {html:.2f} s, PDF {pdf:.2f} s"
        )
        told.rows.append(Row(f"sheet of {count} parts", "its analysis", total / analysis))
        points.append((count, total))
    told.curves.append(Curve("sheet: pages, HTML and PDF", "parts", "s", tuple(points)))
    return told


if __name__ == "__main__":
    finish(measure, __doc__)
