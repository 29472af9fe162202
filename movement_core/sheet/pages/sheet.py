"""Puts a movement sheet together: for the bench, or the page for the client."""

from __future__ import annotations

from pathlib import PurePath

from movement_core.sheet.pages.client import client_blocks
from movement_core.sheet.pages.gap_table import gap_blocks
from movement_core.sheet.pages.head import day, head_form
from movement_core.sheet.pages.hold_blocks import hold_blocks
from movement_core.sheet.pages.lengths import INCH, MM, Lengths
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import NOTE, Block, Heading, Paragraph, Pictures, Sheet, Text, tell
from movement_core.sheet.pages.names import isolated
from movement_core.sheet.pages.part_table import marks, part_blocks
from movement_core.sheet.pages.piece_view import piece_pictures
from movement_core.sheet.pages.rests import (
    basis_blocks,
    caution_blocks,
    doubt_blocks,
    finding_blocks,
    signature_blocks,
)
from movement_core.sheet.pages.section_view import section_pictures
from movement_core.sheet.pages.wish import SheetWish
from movement_core.sheet.pages.year_view import year_pictures
from movement_core.wording import say, word

NARROWEST_MM = 254.0  # content of the narrower paper, lying: pictures fit on either
PIECE_MM = (126.0, 104.0)  # one of two side by side
CROWDED = 70  # parts from which a picture of the piece takes a page of its own
PAGE_MM = (250.0, 150.0)
PLAN_MM = (240.0, 105.0)


def movement_sheet(material: Material, wish: SheetWish | None = None) -> Sheet:
    """The sheet as frozen page data.

    Parameters
    ----------
    material : the worked-out piece. wish : job, place, paper, units, and whether it is the client's page.
    """
    wish = wish or SheetWish()
    lengths = Lengths(wish.units)
    name = isolated(wish.job or PurePath(material.report["path"]).stem or say("piece"), 60.0)
    date = day(material.report["today"]["date"])
    if wish.client:
        title = tell("Through the seasons: {name}", name=name)
        blocks = client_blocks(material, wish, lengths)
    else:
        title = tell("Movement sheet: {name}", name=name)
        blocks = _bench(material, wish, lengths)
    foot = tell(
        "{name} · {date} · made with Heartside; figures are estimates for movement only", name=name, date=date
    )
    return Sheet(title, tuple(blocks), wish.sheet_of_paper, foot, word("en"))


def _bench(material: Material, wish: SheetWish, lengths: Lengths) -> list[Block]:
    blocks: list[Block] = [head_form(material, wish)]
    blocks += _piece(material)
    blocks += part_blocks(material, lengths)
    blocks += gap_blocks(material, lengths)
    blocks += hold_blocks(material, lengths, PLAN_MM)
    sections = section_pictures(material, lengths, NARROWEST_MM)
    if sections:
        blocks += [Heading(say("Sections and cup")), Pictures(sections)]
    years = year_pictures(material, lengths)
    if years:
        note = tell("Shaded: where the width lies two times in three. Dashed: as built. Dotted: today.")
        blocks += [Heading(say("Width through the year")), Pictures(years), Paragraph(note, NOTE)]
    blocks += finding_blocks(material)
    if wish.units != material.units:
        told = {
            MM: tell("Sentences of findings and plans give millimetres; 1 inch is 25.4 mm."),
            INCH: tell("Sentences of findings and plans give inches; 1 inch is 25.4 mm."),
        }
        blocks.append(Paragraph(told[material.units], NOTE))
    blocks += doubt_blocks(material, lengths)
    blocks += basis_blocks(material)
    blocks += caution_blocks(material)
    return [*blocks, *signature_blocks()]


def _piece(material: Material) -> list[Block]:
    """Pictures of the piece; a sentence where its faces are not known."""
    heading = Heading(say("The piece and its parts"))
    if not material.bodies:
        return [heading, Paragraph(tell("The faces of its solids are not known, so it is not drawn."))]
    size = PAGE_MM if len(material.parts) > CROWDED else PIECE_MM
    pictures, left = piece_pictures(material.bodies, material.number, marks(material), size)
    blocks: list[Block] = [heading, Pictures(pictures)]
    if left:
        numbers = ", ".join(str(number) for number in left)
        blocks.append(Paragraph(Text(say("In none of the pictures: {numbers}.", numbers=numbers)), NOTE))
    return blocks
