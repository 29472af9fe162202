"""A drilling template as data, and as the two files it is printed from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from html import escape
from typing import Any

from movement_core.errors import UnknownName
from movement_core.holding.plan_model import Plan
from movement_core.piece.hardware_bodies import Hardware
from movement_core.piece.top_plan import TopPlans
from movement_core.sheet.pages.html import FONT
from movement_core.sheet.pages.lengths import MM, Lengths
from movement_core.sheet.pages.model import Picture
from movement_core.sheet.pages.names import bare, clean
from movement_core.sheet.pages.pdf import pdf_file
from movement_core.sheet.pages.pdf_items import Drawn, Page
from movement_core.sheet.pages.svg import picture_svg
from movement_core.sheet.pages.wish import PAPERS
from movement_core.sheet.template.marks import TemplateMarks, template_marks
from movement_core.sheet.template.overview import overview_picture
from movement_core.sheet.template.picture import tile_picture
from movement_core.sheet.template.tiles import OVERLAP_MM, Tiling, tiling
from movement_core.wording import say, word

SCHEMA = "heartside-template-1"


@dataclass(frozen=True, eq=False)
class Template:
    """``pages``: the overview, then a picture of each sheet, all as large as the paper. ``data``: the same as JSON."""

    title: str
    marks: TemplateMarks
    tiling: Tiling
    pages: tuple[Picture, ...]
    data: dict[str, Any]


def drilling_template(
    plans: TopPlans,
    plan: Plan,
    entry: Mapping[str, Any],
    hardware: Hardware,
    paper: str = "a4",
    units: str = MM,
) -> Template:
    """The template of a plan. ``paper``: "a4" or "letter". ``units``: of the distances that are written.

    Raises
    ------
    UnknownName : no such paper or unit.
    """
    if paper not in PAPERS:
        raise UnknownName(
            say("no paper is called {paper!r}", paper=paper), where=say("paper"), allowed=", ".join(PAPERS)
        )
    lengths = Lengths(units)
    marks = template_marks(plans, plan, entry, hardware)
    tiles = tiling(marks, PAPERS[paper])
    pages = [overview_picture(marks, tiles, lengths)]
    pages += [tile_picture(marks, tiles, tile, lengths) for tile in tiles.tiles]
    title = say("Drilling template, {name}", name=clean(marks.name))
    return Template(title, marks, tiles, tuple(pages), _data(marks, tiles, plan.kind))


def template_html(template: Template) -> str:
    """One HTML file, a page for each sheet, its drawings sized in mm."""
    paper = template.tiling.paper
    size = f"{paper.width_mm:g}mm", f"{paper.height_mm:g}mm"
    pages = "\n".join(f'<section class="sheet">\n{picture_svg(p)}\n</section>' for p in template.pages)
    title = escape(bare(template.title))
    return f"""<!DOCTYPE html>
<html lang="{word("en")}">
<head>
<meta charset="utf-8">
<meta name="generator" content="Heartside">
<title>{title}</title>
<style>
@page {{ size: {size[0]} {size[1]}; margin: 0; }}
html {{ background: #ffffff; }}
body {{ margin: 0; }}
h1 {{ position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; white-space: nowrap; }}
.sheet {{ width: {size[0]}; height: {size[1]}; overflow: hidden; break-inside: avoid; }}
.sheet + .sheet {{ break-before: page; }}
svg {{ display: block; height: {size[1]}; max-width: none; font-family: {FONT}; }}
@media screen {{ .sheet {{ margin: 4mm auto; outline: 1px solid #9a9a9a; }} }}
@media print {{ html {{ -webkit-print-color-adjust: exact; }} }}
</style>
</head>
<body>
<main>
<h1>{title}</h1>
{pages}
</main>
</body>
</html>
"""


def template_pdf(template: Template) -> bytes:
    """One PDF, a page for each sheet.

    Raises
    ------
    HeartsideError : the plotting library is not installed.
    """
    pages = [Page((Drawn(picture, 0.0, 0.0),)) for picture in template.pages]
    return pdf_file(template.title, template.tiling.paper, lambda fonts: pages)


def _data(marks: TemplateMarks, tiles: Tiling, kind: str) -> dict[str, Any]:
    """Everything that is drawn, with units in the names; distances count from the datum end and edge as of today."""
    paper = tiles.paper
    return {
        "schema": SCHEMA,
        "top": marks.name,
        "plan": kind,
        "seen_from": "below",
        "datum": dict(marks.datum),
        "length_mm": round(marks.length_mm, 3),
        "width_today_mm": round(marks.width_today_mm, 3),
        "paper": {"name": paper.name, "width_mm": paper.width_mm, "height_mm": paper.height_mm},
        "overlap_mm": OVERLAP_MM,
        "tiles": [
            {
                "name": tile.name,
                "from_end_mm": [round(tile.low[0], 3), round(tile.high[0], 3)],
                "from_edge_today_mm": [round(tile.low[1], 3), round(tile.high[1], 3)],
            }
            for tile in tiles.tiles
        ],
        "screws": [
            {
                "number": screw.number,
                "kind": screw.kind,
                "rail": screw.rail,
                "from_end_mm": round(screw.place[0], 3),
                "from_edge_today_mm": round(screw.place[1], 3),
                "hole_diameter_mm": None if screw.hole_mm is None else round(screw.hole_mm, 3),
                "tile": next(tile.name for tile in tiles.tiles if tile.owns(screw.place)),
            }
            for screw in marks.screws
        ],
        "cuts": [
            {
                "purpose": cut.purpose,
                "number": cut.number,
                "from_end_mm": _range([point[0] for point in cut.points]),
                "from_edge_today_mm": _range([point[1] for point in cut.points]),
            }
            for cut in marks.cuts
        ],
        "not_cut": list(marks.refused),
    }


def _range(values: list[float]) -> list[float]:
    return [round(min(values), 3), round(max(values), 3)]
