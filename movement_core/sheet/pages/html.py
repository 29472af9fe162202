"""A sheet as one HTML file: no script, nothing from elsewhere, for the screen and for A4 and Letter."""

from __future__ import annotations

from html import escape

from movement_core.sheet.pages import model
from movement_core.sheet.pages.colours import COLOURS
from movement_core.sheet.pages.model import (
    Block,
    Column,
    Field,
    Form,
    Heading,
    Listing,
    Paper,
    Paragraph,
    Picture,
    Pictures,
    Row,
    Sheet,
    Table,
    Text,
)
from movement_core.sheet.pages.names import CLOSE, OPEN, bare
from movement_core.sheet.pages.svg import picture_svg
from movement_core.wording import say

FONT = '"Liberation Sans", Arial, Helvetica, "DejaVu Sans", sans-serif'


def sheet_html(sheet: Sheet) -> str:
    """The whole file as text."""
    title = escape(bare(sheet.title.words))
    body = "\n".join(_block(block) for block in sheet.blocks)
    return f"""<!DOCTYPE html>
<html lang="{escape(sheet.language, quote=True)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="Heartside">
<title>{title}</title>
<style>
{style(sheet.paper)}</style>
</head>
<body>
<main>
<h1>{_words(sheet.title)}</h1>
{body}
</main>
<footer><p>{_words(sheet.foot)}</p></footer>
</body>
</html>
"""


def _block(block: Block) -> str:
    if isinstance(block, Heading):
        new = ' class="new-page"' if block.new_page else ""
        return f"<h{block.level}{new}>{_marked(block.words)}</h{block.level}>"
    if isinstance(block, Paragraph):
        kind = "" if block.kind == model.PLAIN else f' class="{block.kind}"'
        return f"<p{kind}>{_words(block.text)}</p>"
    if isinstance(block, Listing):
        kind = "" if block.kind == model.PLAIN else f' class="{block.kind}"'
        return f"<ul{kind}>\n" + "\n".join(f"<li>{_words(item)}</li>" for item in block.items) + "\n</ul>"
    if isinstance(block, Form):
        return _form(block)
    if isinstance(block, Table):
        return _table(block)
    return _pictures(block)


def _form(form: Form) -> str:
    return (
        f'<dl class="form columns-{form.columns}">\n' + "\n".join(_field(f) for f in form.fields) + "\n</dl>"
    )


def _field(field: Field) -> str:
    label = f"<dt>{_marked(field.label)}</dt>"
    if field.value is None:
        blank = escape(say("to fill in"))
        return f'<div>{label}<dd class="blank"><span class="unseen">{blank}</span></dd></div>'
    return f"<div>{label}<dd>{_words(field.value)}</dd></div>"


def _table(table: Table) -> str:
    total = sum(column.share for column in table.columns)
    widths = "".join(f'<col style="width:{100 * c.share / total:.2f}%">' for c in table.columns)
    rows = "\n".join(_row(row, table.columns) for row in table.rows)
    return (
        f'<div class="table" role="region" tabindex="0" aria-label="{escape(bare(table.caption), quote=True)}">\n'
        f"<table>\n<caption>{_marked(table.caption)}</caption>\n<colgroup>{widths}</colgroup>\n"
        f"<thead>\n{_heads(table.columns)}\n</thead>\n<tbody>\n{rows}\n</tbody>\n</table>\n</div>"
    )


def _heads(columns: tuple[Column, ...]) -> str:
    if not any(column.group for column in columns):
        return f"<tr>{''.join(_head(c) for c in columns)}</tr>"
    upper, lower = [], []
    place = 0
    while place < len(columns):
        column = columns[place]
        if not column.group:
            upper.append(_head(column, ' rowspan="2"'))
            place += 1
            continue
        span = 1
        while place + span < len(columns) and columns[place + span].group == column.group:
            span += 1
        upper.append(f'<th scope="colgroup" colspan="{span}" class="centre">{_marked(column.group)}</th>')
        lower += [_head(c) for c in columns[place : place + span]]
        place += span
    return f"<tr>{''.join(upper)}</tr>\n<tr>{''.join(lower)}</tr>"


def _head(column: Column, more: str = "") -> str:
    return f'<th scope="col"{more}{_align(column)}>{_marked(column.title)}</th>'


def _row(row: Row, columns: tuple[Column, ...]) -> str:
    cells = [
        f'<th scope="row"{_align(c)}>{_words(cell)}</th>' if i == 0 else f"<td{_align(c)}>{_words(cell)}</td>"
        for i, (cell, c) in enumerate(zip(row.cells, columns))
    ]
    mark = f' class="{row.mark}"' if row.mark else ""
    return f"<tr{mark}>{''.join(cells)}</tr>"


def _align(column: Column) -> str:
    return "" if column.align == model.LEFT else f' class="{column.align}"'


def _pictures(block: Pictures) -> str:
    return '<div class="pictures">\n' + "\n".join(_figure(p) for p in block.pictures) + "\n</div>"


def _figure(picture: Picture) -> str:
    width = f"{picture.width_mm:.1f}mm"
    return (
        f'<figure style="max-width:{width}">\n{picture_svg(picture)}\n'
        f"<figcaption>{_marked(picture.title)}</figcaption>\n</figure>"
    )


def _words(text: Text) -> str:
    return _marked(text.words)


def _marked(words: str) -> str:
    """Words escaped; names stand in elements of their own direction."""
    return escape(words).replace(OPEN, "<bdi>").replace(CLOSE, "</bdi>").replace("\n", "<br>")


def style(paper: Paper) -> str:
    """The style of a sheet on a paper."""
    c = COLOURS
    return f"""@page {{ size: {paper.width_mm:g}mm {paper.height_mm:g}mm; margin: {paper.margin_mm:g}mm; }}
* {{ box-sizing: border-box; }}
html {{ background: {c["paper"]}; color: {c["ink"]}; font: 10pt/1.35 {FONT}; }}
body {{ margin: 0 auto; padding: 6mm; max-width: {paper.content_mm + 12:g}mm; overflow-wrap: anywhere; }}
h1 {{ font-size: 17pt; line-height: 1.15; margin: 0 0 3mm; }}
h2 {{ font-size: 12.5pt; margin: 6mm 0 2mm; border-bottom: 0.4mm solid {c["ink"]}; break-after: avoid; }}
h3 {{ font-size: 10.5pt; margin: 4mm 0 1.5mm; break-after: avoid; }}
p, ul {{ margin: 1.5mm 0; max-width: 180mm; orphans: 2; widows: 2; }}
ul {{ padding-left: 5mm; }}
li {{ margin: 0.8mm 0; }}
.note {{ color: {c["quiet"]}; font-size: 8.5pt; }}
.caution {{ border-left: 1mm solid {c["grave"]}; padding-left: 3mm; }}
ul.caution {{ padding-left: 7mm; }}
.form {{ display: grid; gap: 0.8mm 8mm; margin: 2mm 0; }}
.columns-2 {{ grid-template-columns: 1fr 1fr; }}
.columns-3 {{ grid-template-columns: 1fr 1fr 1fr; }}
.form div {{ display: flex; gap: 2mm; align-items: baseline; break-inside: avoid; }}
dt {{ color: {c["quiet"]}; flex: none; max-width: 50%; }}
dd {{ margin: 0; flex: 1; min-width: 0; }}
dd.blank {{ border-bottom: 0.25mm solid {c["ink"]}; min-height: 6.5mm; }}
.unseen {{ position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; white-space: nowrap; }}
.table {{ overflow-x: auto; margin: 2mm 0 4mm; }}
table {{ border-collapse: collapse; width: 100%; table-layout: fixed; font-size: 8pt; line-height: 1.25; }}
caption {{ break-after: avoid; text-align: left; font-size: 8.5pt; color: {c["quiet"]}; padding-bottom: 1mm; }}
th, td {{ padding: 0.7mm 1mm; text-align: left; vertical-align: top; font-weight: normal; }}
thead th {{ background: {c["shade"]}; font-weight: bold; vertical-align: bottom; }}
tbody th {{ font-weight: bold; }}
tr {{ break-inside: avoid; }}
tbody tr {{ border-top: 0.15mm solid {c["rule"]}; }}
tbody tr:last-child {{ border-bottom: 0.15mm solid {c["rule"]}; }}
thead {{ display: table-header-group; break-inside: avoid; break-after: avoid; }}
th.right, td.right {{ text-align: right; font-variant-numeric: tabular-nums; }}
th.centre, td.centre {{ text-align: center; }}
tr.grave {{ background: {c["grave shade"]}; }}
tr.mild {{ background: {c["mild shade"]}; }}
.pictures {{ display: flex; flex-wrap: wrap; gap: 4mm 6mm; margin: 2mm 0; align-items: flex-end; }}
figure {{ margin: 0; break-inside: avoid; width: 100%; }}
.pictures figure {{ flex: 0 1 auto; }}
svg {{ display: block; max-width: 100%; height: auto; font-family: {FONT}; }}
figcaption {{ font-size: 8.5pt; color: {c["quiet"]}; margin-top: 0.8mm; }}
footer {{ max-width: {paper.content_mm + 12:g}mm; margin: 0 auto; padding: 0 6mm 6mm; font-size: 8pt; }}
footer p {{ color: {c["quiet"]}; }}
@media (max-width: 160mm) {{
  .columns-2, .columns-3 {{ grid-template-columns: 1fr; }}
  table {{ min-width: 170mm; }}
}}
@media print {{
  body, footer {{ padding: 0; max-width: none; }}
  html {{ -webkit-print-color-adjust: exact; }}
  .new-page {{ break-before: page; margin-top: 0; }}
  .table {{ overflow: visible; }}
}}
"""
