"""The sheet as HTML: valid, alone in the world, readable by everyone, and the same as the page data."""

from __future__ import annotations

import re
from html import unescape
from itertools import pairwise

import pytest

from movement_core.sheet.pages import colours
from movement_core.sheet.pages.html import sheet_html
from movement_core.sheet.pages.model import Field, Form, Heading, Label, Listing, Paragraph, Pictures, Table
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from tests.core.sheet_pieces import ALL, HOSTILE, hostile, table

html5lib = pytest.importorskip(
    "html5lib", reason="html5lib parses HTML by its standard; install it to run these"
)

CASES = [(name, client) for name in ALL for client in (False, True)]
HTML = "{http://www.w3.org/1999/xhtml}"
SVG = "{http://www.w3.org/2000/svg}"


def written(name, client=False):
    return sheet_html(movement_sheet(ALL[name](), SheetWish(job=HOSTILE[0], client=client)))


def parsed(text):
    """The document; the strict parser raises at the first thing the standard does not allow."""
    return html5lib.HTMLParser(strict=True, namespaceHTMLElements=True).parse(text)


def text_of(element):
    return "".join(element.itertext())


@pytest.mark.parametrize("name, client", CASES)
def test_it_is_valid(name, client):
    parsed(written(name, client))


def test_the_strict_parser_finds_a_fault():
    with pytest.raises(html5lib.html5parser.ParseError):
        parsed(written("one").replace("</main>", "</man>"))


@pytest.mark.parametrize("name, client", CASES)
def test_it_needs_nothing_from_elsewhere_and_runs_nothing(name, client):
    document = parsed(written(name, client))
    for element in document.iter():
        tag = str(element.tag).rpartition("}")[2]
        assert tag not in (
            "script",
            "link",
            "iframe",
            "img",
            "object",
            "embed",
            "base",
            "form",
            "use",
            "image",
            "a",
        )
        for attribute in element.attrib:
            assert not str(attribute).lower().startswith("on")
            assert str(attribute).rpartition("}")[2] not in ("href", "src", "srcset", "action")
    style = text_of(document.find(f".//{HTML}style"))
    assert "url(" not in style and "@import" not in style


@pytest.mark.parametrize("name, client", CASES)
def test_everyone_can_read_it(name, client):
    document = parsed(written(name, client))
    assert document.get("lang") == "en"
    levels = [
        int(e.tag[-1])
        for e in document.iter()
        if re.fullmatch(HTML.replace("{", r"\{") + r"h[1-6]", str(e.tag))
    ]
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))
    for head in document.iter(f"{HTML}th"):
        assert head.get("scope") in ("col", "row", "colgroup")
    tables = list(document.iter(f"{HTML}table"))
    for each in tables:
        assert text_of(each.find(f"{HTML}caption")).strip()
        for row in each.iter(f"{HTML}tr"):
            assert row[0].tag == f"{HTML}th"
    named = {e.get("id") for e in document.iter() if e.get("id")}
    ids = [e.get("id") for e in document.iter() if e.get("id")]
    assert len(ids) == len(named)
    for drawing in document.iter(f"{SVG}svg"):
        assert drawing.get("role") == "img"
        for told in drawing.get("aria-labelledby").split():
            assert told in named
        assert text_of(drawing.find(f"{SVG}title")).strip() and text_of(drawing.find(f"{SVG}desc")).strip()


def test_words_have_contrast_on_every_ground_they_stand_on():
    for word in colours.WORDS:
        for ground in colours.GROUNDS:
            found = colours.contrast(colours.COLOURS[word], colours.COLOURS[ground])
            assert found >= colours.LEAST_CONTRAST, (word, ground, found)
    assert colours.contrast("#000000", "#ffffff") == pytest.approx(21.0)  # WCAG 2.1: the greatest there is
    assert colours.contrast("#777777", "#ffffff") == pytest.approx(
        4.48, abs=0.01
    )  # just too little, often quoted


def test_only_colours_with_contrast_are_written_in():
    grey = set(colours.COLOURS.values()) - {colours.COLOURS[word] for word in colours.WORDS}
    for name in ALL:
        text = written(name)
        used = set(re.findall(r'<text[^>]*fill="(#[0-9a-f]{6})"', text))
        used |= set(re.findall(r"[^-]color: (#[0-9a-f]{6})", text))
        assert used and not used & grey


@pytest.mark.parametrize("name, client", CASES)
def test_tables_hold_what_the_page_data_hold(name, client):
    sheet = movement_sheet(ALL[name](), SheetWish(client=client))
    document = parsed(sheet_html(sheet))
    tables = [block for block in sheet.blocks if isinstance(block, Table)]
    shown = list(document.iter(f"{HTML}table"))
    assert len(tables) == len(shown)
    for block, element in zip(tables, shown):
        rows = list(element.find(f"{HTML}tbody"))
        assert len(rows) == len(block.rows)
        for row, told in zip(rows, block.rows):
            assert [text_of(cell) for cell in row] == [
                bare(cell.words).replace("\n", "") for cell in told.cells
            ]
        widths = sum(
            float(re.search(r"([\d.]+)%", col.get("style"))[1]) for col in element.iter(f"{HTML}col")
        )
        assert widths == pytest.approx(100, abs=0.5)


@pytest.mark.parametrize("name, client", CASES)
def test_everything_else_is_there_too(name, client):
    sheet = movement_sheet(ALL[name](), SheetWish(client=client))
    document = parsed(sheet_html(sheet))
    said = re.sub(r"\s+", " ", text_of(document))

    def there(text):
        return re.sub(r"\s+", " ", bare(text)).strip() in said

    for block in sheet.blocks:
        if isinstance(block, Paragraph):
            assert there(block.text.words)
        elif isinstance(block, Heading):
            assert there(block.words)
        elif isinstance(block, Listing):
            assert all(there(item.words) for item in block.items)
        elif isinstance(block, Form):
            assert all(there(f.value.words) for f in block.fields if isinstance(f, Field) and f.value)
        elif isinstance(block, Pictures):
            for picture in block.pictures:
                labels = [bare(s.text.words) for s in picture.shapes if isinstance(s, Label)]
                (drawing,) = [
                    d
                    for d in document.iter(f"{SVG}svg")
                    if d.get("aria-labelledby").startswith(f"{picture.name}-title")
                ]
                assert [text_of(t) for t in drawing.iter(f"{SVG}text")] == labels


def test_hostile_names_stay_text():
    sheet = movement_sheet(hostile(), SheetWish(job='"><svg onload=alert(1)>', place="</dd><h1>x"))
    text = sheet_html(sheet)
    document = parsed(text)
    assert "<script" not in text and "onload=alert(1)>" not in text.replace("&gt;", "")
    names = [text_of(name) for name in document.iter(f"{HTML}bdi")]
    assert any("<script>alert('x')</script>" in name for name in names)
    assert any("דלת ימנית עליונה" in name for name in names)
    assert "\u202e" not in unescape(text) and "\u2066" not in text
    assert [text_of(h) for h in document.iter(f"{HTML}h1")] == ['Movement sheet: "><svg onload=alert(1)>']


def test_names_of_any_direction_are_isolated():
    document = parsed(sheet_html(movement_sheet(hostile())))
    (parts, *_) = document.iter(f"{HTML}table")
    for row in parts.find(f"{HTML}tbody"):
        assert row[1].find(f"{HTML}bdi") is not None


@pytest.mark.parametrize("paper, size", [("a4", "297mm 210mm"), ("letter", "279.4mm 215.9mm")])
def test_it_prints_on_its_paper(paper, size):
    text = sheet_html(movement_sheet(table(), SheetWish(paper=paper)))
    assert f"@page {{ size: {size};" in text
    assert "thead { display: table-header-group;" in text  # heads again on every page
    upright = sheet_html(movement_sheet(table(), SheetWish(paper=paper, client=True)))
    assert f"@page {{ size: {' '.join(reversed(size.split()))};" in upright
