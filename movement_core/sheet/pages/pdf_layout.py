"""Where everything of a sheet stands on its pages: words, forms, tables, pictures over their captions."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from movement_core.sheet.pages import model
from movement_core.sheet.pages.model import Block, Form, Heading, Listing, Paragraph, Picture, Pictures, Sheet
from movement_core.sheet.pages.pdf_flow import (
    ASCENT,
    BLANK_MM,
    BODY,
    FOOT_MM,
    GAP_MM,
    INNER,
    KEEP_MM,
    LINE,
    MEASURE_MM,
    SECTION,
    SMALL,
    TITLE,
    Flow,
    Width,
    wrap,
)
from movement_core.sheet.pages.pdf_items import Drawn, Page, Rule, Words
from movement_core.sheet.pages.pdf_table import lay_table


def lay_out(sheet: Sheet, width: Width) -> list[Page]:
    """The pages of a sheet. ``width(text, size_mm, bold)``: width of words on one line, mm."""
    flow = Flow(sheet, width)
    flow.lines(wrap(sheet.title.words, flow.across, TITLE, width, True), flow.left, TITLE, bold=True)
    flow.y += 2.5
    for place, block in enumerate(sheet.blocks):
        if isinstance(block, model.Table):
            lay_table(flow, block)
        elif isinstance(block, Heading):
            _heading(flow, block, sheet.blocks[place + 1] if place + 1 < len(sheet.blocks) else None)
        elif isinstance(block, Paragraph):
            _paragraph(flow, block)
        elif isinstance(block, Listing):
            _listing(flow, block)
        elif isinstance(block, Form):
            _form(flow, block)
        else:
            _pictures(flow, block)
    return _footed(flow)


def _footed(flow: Flow) -> list[Page]:
    count = len(flow.pages)
    y = flow.bottom + FOOT_MM - 1.0
    pages = []
    for number, items in enumerate(flow.pages, 1):
        of = f"{number} / {count}"
        room = flow.across - flow.width(of, SMALL, False) - 6.0
        foot = wrap(flow.sheet.foot.words, room, SMALL, flow.width)[0]
        end = Words(of, flow.right, y, SMALL, "quiet", anchor=model.END)
        pages.append(Page((*items, Words(foot, flow.left, y, SMALL, "quiet"), end)))
    return pages


def _heading(flow: Flow, block: Heading, following: Block | None) -> None:
    size = SECTION if block.level == 2 else INNER
    lines = wrap(block.words, flow.across, size, flow.width, True)
    if block.new_page:
        flow.new_page()
    keep = KEEP_MM
    if isinstance(following, Pictures) and following.pictures:
        tallest = following.pictures[0].height_mm * _fit(flow, following.pictures[0])
        keep = min(tallest + 8.0, flow.bottom - flow.top - 20.0)
    flow.need(len(lines) * size * LINE + keep)
    flow.skip(4.5 if block.level == 2 else 2.5)
    flow.lines(lines, flow.left, size, bold=True)
    if block.level == 2:
        flow.put(Rule(flow.left, flow.y + 0.4, flow.right, flow.y + 0.4, "ink", 0.35))
        flow.y += 0.8
    flow.y += 1.2


def _paragraph(flow: Flow, block: Paragraph) -> None:
    size, colour = (SMALL, "quiet") if block.kind == model.NOTE else (BODY, "ink")
    indent = 3.5 if block.kind == model.CAUTION else 0.0
    lines = wrap(block.text.words, min(flow.across, MEASURE_MM) - indent, size, flow.width)
    flow.need(min(len(lines), 2) * size * LINE)
    _barred(flow, block.kind, lambda: flow.lines(lines, flow.left + indent, size, colour))
    flow.y += 1.4


def _barred(flow: Flow, kind: str, draw: Callable[[], None]) -> None:
    """What is drawn gets a bar beside it where it is a caution, on each page that it stands on."""
    first, start = len(flow.pages) - 1, flow.y
    draw()
    if kind != model.CAUTION:
        return
    for page in range(first, len(flow.pages)):
        top = start if page == first else flow.top
        bottom = flow.y if page == len(flow.pages) - 1 else flow.bottom
        if bottom - top > 0.5:
            flow.pages[page].append(Rule(flow.left + 0.5, top, flow.left + 0.5, bottom, "grave", 0.9))


def _listing(flow: Flow, block: Listing) -> None:
    size, colour = (SMALL, "quiet") if block.kind == model.NOTE else (BODY, "ink")
    indent = 7.0 if block.kind == model.CAUTION else 4.5

    def draw() -> None:
        for item in block.items:
            lines = wrap(item.words, min(flow.across, MEASURE_MM) - indent, size, flow.width)
            flow.need(min(len(lines), 2) * size * LINE)
            flow.put(
                Words("•", flow.left + indent - 3.0, flow.y + size * (ASCENT + (LINE - 1) / 2), size, colour)
            )
            flow.lines(lines, flow.left + indent, size, colour)
            flow.y += 0.5

    _barred(flow, block.kind, draw)
    flow.y += 1.2


def _form(flow: Flow, block: Form) -> None:
    gap = 8.0
    wide = (flow.across - gap * (block.columns - 1)) / block.columns
    for start in range(0, len(block.fields), block.columns):
        row = block.fields[start : start + block.columns]
        laid = []
        for one in row:
            label = wrap(one.label, wide * 0.5, BODY, flow.width)
            used = max(flow.width(line, BODY, False) for line in label) + 2.0
            value = [] if one.value is None else wrap(one.value.words, wide - used, BODY, flow.width)
            laid.append((label, used, value, one.value is None))
        height = max(
            max(len(label), len(value)) * BODY * LINE
            if not blank
            else max(BLANK_MM, len(label) * BODY * LINE)
            for label, _, value, blank in laid
        )
        flow.need(height)
        y = flow.y
        for place, (label, used, value, blank) in enumerate(laid):
            x = flow.left + place * (wide + gap)
            drop = max(0.0, BLANK_MM - len(label) * BODY * LINE) if blank else 0.0
            _block(flow, label, x, y + drop, BODY, "quiet")
            if blank:
                base = y + max(BLANK_MM, len(label) * BODY * LINE) - 1.0
                flow.put(Rule(x + used, base, x + wide, base, "ink", 0.2))
            else:
                _block(flow, value, x + used, y, BODY, "ink")
        flow.y = y + height + 0.8
    flow.y += 1.0


def _block(flow: Flow, lines: Sequence[str], x: float, y: float, size: float, colour: str) -> None:
    for place, line in enumerate(lines):
        flow.put(Words(line, x, y + size * (LINE * place + ASCENT + (LINE - 1) / 2), size, colour))


def _fit(flow: Flow, picture: Picture) -> float:
    """How far a picture must shrink to fit a page with its caption."""
    tallest = flow.bottom - flow.top - 14.0
    return min(1.0, flow.across / picture.width_mm, tallest / picture.height_mm)


def _pictures(flow: Flow, block: Pictures) -> None:
    """Pictures from left to right as far as they fit, each over its caption, the bottoms level."""
    row: list[tuple[Picture, float, list[str]]] = []
    used = 0.0
    for picture in block.pictures:
        scale = _fit(flow, picture)
        wide = picture.width_mm * scale
        if row and used + GAP_MM + wide > flow.across + 1e-6:
            _row(flow, row)
            row, used = [], 0.0
        used += wide + (GAP_MM if row else 0.0)
        row.append((picture, scale, wrap(picture.title, max(wide, 40.0), SMALL, flow.width)))
    if row:
        _row(flow, row)


def _row(flow: Flow, row: Sequence[tuple[Picture, float, list[str]]]) -> None:
    tallest = max(picture.height_mm * scale for picture, scale, _ in row)
    captions = max(len(lines) for _, _, lines in row) * SMALL * LINE
    flow.need(tallest + captions + 1.0)
    x = flow.left
    for picture, scale, lines in row:
        flow.put(Drawn(picture, x, flow.y + tallest - picture.height_mm * scale, scale))
        _block(flow, lines, x, flow.y + tallest + 0.8, SMALL, "quiet")
        x += picture.width_mm * scale + GAP_MM
    flow.y += tallest + captions + 3.0
