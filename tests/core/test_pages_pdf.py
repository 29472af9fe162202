"""The sheet as PDF: laid out inside its margins, nothing over anything else, the same words as the page data."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest

from movement_core.errors import HeartsideError
from movement_core.sheet.pages.model import END, MIDDLE, Label, Listing, Paragraph, Pictures, Table
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.pdf import laid_out, page_figure, sheet_pdf
from movement_core.sheet.pages.pdf_flow import POINT_MM, wrap
from movement_core.sheet.pages.pdf_fonts import LACKING, LEFT_TO_RIGHT, Fonts
from movement_core.sheet.pages.pdf_items import Drawn, Fill, Rule, Words
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from tests.core.sheet_pieces import ALL, hostile, table, three_hundred

pytest.importorskip("matplotlib", reason="the PDF is drawn by matplotlib; install it to run these")
CASES = [
    (name, client, paper)
    for name in ALL
    for client, paper in ((False, "a4"), (True, "letter"), (False, "letter"))
]


def drawn_texts(page, sheet, fonts):
    """A renderer, and what it was given to draw: (x, y, text, face, angle, whether as a formula), in points."""
    import io

    from matplotlib.backends.backend_pdf import PdfFile, RendererPdf

    drawn = []

    class Recorded(RendererPdf):
        def draw_text(self, gc, x, y, s, prop, angle, ismath=False, mtext=None):
            drawn.append((x, y, s, prop, angle, ismath))

    file = PdfFile(io.BytesIO())
    renderer = Recorded(file, 72, sheet.paper.height_mm / POINT_MM, sheet.paper.width_mm / POINT_MM)
    file.newPage(1, 1)
    page_figure(page, sheet.paper, fonts).draw(renderer)
    return renderer, drawn


def made(name, client=False, paper="a4"):
    material = three_hundred() if name == "three hundred" else ALL[name]()
    sheet = movement_sheet(
        material, SheetWish(client=client, paper=paper, units="inch" if paper == "letter" else "mm")
    )
    fonts = Fonts()
    return sheet, fonts, laid_out(sheet, fonts)


def box(words, fonts):
    wide = fonts.width_mm(fonts.ready(words.text), words.size_mm, words.bold)
    left = words.x - (wide if words.anchor == END else wide / 2 if words.anchor == MIDDLE else 0)
    return left, words.y - 0.76 * words.size_mm, left + wide, words.y + 0.24 * words.size_mm


def boxes(page, fonts):
    found = [(one.text, box(one, fonts)) for one in page.items if isinstance(one, Words)]
    for one in page.items:
        if isinstance(one, Drawn):
            p = one.picture
            found.append(
                (p.name, (one.x, one.y, one.x + p.width_mm * one.scale, one.y + p.height_mm * one.scale))
            )
    return found


@pytest.mark.parametrize("name, client, paper", [*CASES, ("three hundred", False, "a4")])
def test_nothing_leaves_the_margins_and_nothing_lies_over_anything(name, client, paper):
    sheet, fonts, pages = made(name, client, paper)
    width, height, margin = sheet.paper.width_mm, sheet.paper.height_mm, sheet.paper.margin_mm
    for page in pages:
        found = boxes(page, fonts)
        for words, (x0, y0, x1, y1) in found:
            assert x0 >= margin - 0.1 and x1 <= width - margin + 0.1, words
            assert y0 >= margin - 0.1 and y1 <= height - margin + 0.1, words
        for one in page.items:
            if isinstance(one, (Rule, Fill)):
                assert margin - 0.1 <= min(one.x0, one.x1) and max(one.x0, one.x1) <= width - margin + 0.1
                assert margin - 0.1 <= min(one.y0, one.y1) and max(one.y0, one.y1) <= height - margin + 0.1
        found.sort(key=lambda item: item[1][1])
        for i, (words, one) in enumerate(found):
            for other, two in found[i + 1 :]:
                if two[1] >= one[3]:
                    break
                across = min(one[2], two[2]) - max(one[0], two[0])
                down = min(one[3], two[3]) - max(one[1], two[1])
                assert across <= 0.1 or down <= 0.1, (words, other)


@pytest.mark.parametrize("name", ["table", "hostile", "door"])
def test_the_library_draws_words_as_wide_as_they_were_measured(name):
    sheet, fonts, pages = made(name)
    renderer, drawn = drawn_texts(pages[0], sheet, fonts)
    words = [one for one in pages[0].items if isinstance(one, Words)]
    labels = [
        s
        for one in pages[0].items
        if isinstance(one, Drawn)
        for s in one.picture.shapes
        if isinstance(s, Label)
    ]
    assert len(drawn) == len(words) + len(labels)
    for x, y, text, face, angle, _ in drawn:
        width, height, descent = renderer.get_text_width_height_descent(text, face, ismath=False)
        across, up = (height, width) if angle else (width, height)
        left, low = (x - height + descent, y) if angle else (x, y - descent)
        assert left >= 0 and left + across <= renderer.width
        assert low >= 0 and low + up <= renderer.height
        expected = fonts.width_mm(text, face.get_size_in_points() * POINT_MM, face.get_weight() == "bold")
        assert width * POINT_MM == pytest.approx(expected, rel=0.04, abs=0.4)


def test_picture_labels_are_no_wider_than_the_pictures_took_them_for():
    """Pictures are laid out by a table of widths, before any face is at hand."""
    from movement_core.sheet.pages.measure import width_mm

    fonts = Fonts()
    for name in ALL:
        sheet = movement_sheet(ALL[name]())
        for block in sheet.blocks:
            for picture in block.pictures if isinstance(block, Pictures) else ():
                for shape in picture.shapes:
                    if isinstance(shape, Label) and bare(shape.text.words).isascii():
                        words = bare(shape.text.words)
                        real = fonts.width_mm(words, shape.size_mm, shape.bold)
                        assert real <= width_mm(words, shape.size_mm, shape.bold) * 1.02 + 0.05


def said(pages):
    """All words of the pages, joined as they were before they were wrapped."""
    return re.sub(r"\s+", "", "".join(w.text for page in pages for w in page.items if isinstance(w, Words)))


@pytest.mark.parametrize("name, client", [(name, client) for name in ALL for client in (False, True)])
def test_every_word_of_the_page_data_is_on_the_pages(name, client):
    sheet, _, pages = made(name, client)
    words = said(pages)

    def there(text):
        # Cells stand beside each other, so only their lines are looked for.
        return all(piece in words for piece in re.split(r"\s+", bare(text)) if piece and len(piece) < 12)

    for block in sheet.blocks:
        if isinstance(block, Table):
            for row in block.rows:
                for cell in row.cells:
                    for figure in cell.figures:
                        assert re.sub(r"\s+", "", figure.shown) in words
                    assert there(cell.words)
        elif isinstance(block, Paragraph):
            assert there(block.text.words)
        elif isinstance(block, Listing):
            assert all(there(item.words) for item in block.items)
        elif isinstance(block, Pictures):
            drawn = {one.picture.name for page in pages for one in page.items if isinstance(one, Drawn)}
            assert {picture.name for picture in block.pictures} <= drawn


def test_heads_of_tables_stand_on_every_page_they_go_on():
    sheet, _, pages = made("three hundred")
    (parts,) = [b for b in sheet.blocks if isinstance(b, Table) and b.caption.startswith("Numbers are those")]
    with_rows = [
        p for p in pages if sum(w.text.startswith("Slat ") for w in p.items if isinstance(w, Words)) > 3
    ]
    assert len(with_rows) > 5
    for page in with_rows:
        assert any(w.text == "today" and w.bold for w in page.items if isinstance(w, Words))
    numbers = {w.text for p in with_rows for w in p.items if isinstance(w, Words) and w.bold}
    assert {str(n) for n in range(1, len(parts.rows) + 1)} <= numbers


def test_the_file_is_a_pdf_with_a_title_and_the_same_each_time():
    sheet = movement_sheet(ALL["one"]())
    first = sheet_pdf(sheet)
    assert first.startswith(b"%PDF-") and b"Movement sheet" in first
    assert first == sheet_pdf(sheet)
    assert b"/MediaBox [ 0 0 841.8" in first  # A4 lying: 297 mm are 841.89 points


def test_letters_that_no_face_has_are_shown_and_told():
    fonts = Fonts()
    assert fonts.drawable("a\U000e0fff\u0378b") == f"a{LACKING}{LACKING}b"  # never assigned, so in no face
    sheet = movement_sheet(ALL["one"](), SheetWish(job="x\U00012000y"))
    words = [w.text for p in laid_out(sheet, Fonts()) for w in p.items if isinstance(w, Words)]
    assert any(text.startswith(f"{LACKING} stands for letters") for text in words)
    plain = [
        w.text
        for p in laid_out(movement_sheet(ALL["one"]()), Fonts())
        for w in p.items
        if isinstance(w, Words)
    ]
    assert not any("stands for letters" in text for text in plain)


def test_words_from_right_to_left_keep_their_line():
    fonts = Fonts()
    ready = fonts.ready("\u05d0\u05d1 left")
    assert ready in (f"{LEFT_TO_RIGHT}\u05d0\u05d1 left", "\u05d1\u05d0 left")
    assert fonts.ready("left") == "left"


def test_lines_fit_and_lose_nothing():
    fonts = Fonts()

    def width(text, size, bold):
        return fonts.width_mm(text, size, bold)

    text = "Some words, a-very-long/word and Donaudampfschifffahrtsgesellschaft 桌面板第一块 end"
    for wide in (6.0, 15.0, 40.0, 200.0):
        lines = wrap(text, wide, 3.0, width)
        assert all(width(line, 3.0, False) <= wide for line in lines)
        assert "".join(lines).replace(" ", "") == text.replace(" ", "")


def test_dollars_and_backslashes_are_no_formulas():
    sheet, fonts, pages = made("hostile")
    drawn = [text for page in pages for text in drawn_texts(page, sheet, fonts)[1]]
    assert any("$\\frac" in text for _, _, text, _, _, _ in drawn)
    assert not any(formula for _, _, _, _, _, formula in drawn)
    assert sheet_pdf(sheet)  # a formula would be refused here


def test_without_the_plotting_library_it_is_told_what_to_do(monkeypatch):
    import sys

    monkeypatch.setitem(sys.modules, "matplotlib", None)
    with pytest.raises(HeartsideError, match="install matplotlib"):
        sheet_pdf(movement_sheet(table()))


def test_importing_the_pages_loads_no_plotting_library():
    import subprocess
    import sys

    code = "import sys, movement_core.sheet.pages.pdf; sys.exit('matplotlib' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0
    assert hostile()  # the pieces themselves need none either


def test_no_line_ends_within_a_fraction_or_between_a_sign_and_its_number():
    said = "about 19/64 inch, moves -2.6 to +2.1; 1,604.5 in all; oak/ash, well-kept"
    for width in range(8, 60):
        lines = wrap(said, float(width), 1.0, lambda text, size, bold: float(len(text)))
        for line, after in pairwise(lines):
            assert not (line[-1] in "/-," and after[0].isdigit()), (line, after)
